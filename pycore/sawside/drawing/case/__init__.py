"""Drawings of a whole case, and of how it comes into its place."""
