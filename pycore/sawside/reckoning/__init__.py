"""From what was typed, by a reckoner's declaration, to the whole answer as data.

Imports: everything up to reckoners.
"""
