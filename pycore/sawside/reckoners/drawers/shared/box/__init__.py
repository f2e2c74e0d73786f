"""A drawer box: its fields, sizes and parts, what is refused, and how it is told."""
