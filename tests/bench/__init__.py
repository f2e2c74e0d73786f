"""What `build.py bench` measures: one module for each thing, each with `measure()`,
which yields (name, number) as it comes.

Every number is a ratio, or is judged by one, between two things measured in turn in the same
browser: milliseconds alone say more of the machine than of Sawside.
"""
