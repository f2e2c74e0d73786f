"""A floor that was read from a level line, and what a base needs under it."""
