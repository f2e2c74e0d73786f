"""A project: what was typed, as a small readable document. Answers are always worked out anew.

Imports: everything up to reckoning.
"""
