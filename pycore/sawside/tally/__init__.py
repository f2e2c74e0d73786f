"""The tally of the pad: lines entered one after another, each may use those above and the project.

Imports: everything up to project.
"""
