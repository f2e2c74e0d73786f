"""A wood screw: its holes, length and reach, what is refused, and how it is told."""
