"""A project: what was typed, as a small readable document. Answers are always worked out anew.

Its rooms, each importing those before it: kinds, schema, evaluation, then pieces and uncertainty,
acts, files; the modules beside them may use all. Imports: everything up to reckoning.
"""
