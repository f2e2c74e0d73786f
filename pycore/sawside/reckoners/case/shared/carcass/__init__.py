"""A case taken apart: its sizes, its panels with the joints cut in each, and what they come to."""
