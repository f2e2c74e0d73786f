"""Exact lengths: reading, arithmetic, marks, and how a length is told.

The unit inside is the inch, as an exact rational (1 mm = 5/127 in). What no rational can tell is
a `Real`: an enclosure that is refined until the mark is certain. `unit_definitions` is the
only file that knows pint. Imports: `errors` and each other, nothing above.
"""
