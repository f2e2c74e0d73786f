"""A nail: which one, its pilot hole and reach, what is refused, and how it is told."""
