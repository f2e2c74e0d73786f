"""Drawings of a whole case, of its parts, and of how it comes into its place and stays there."""
