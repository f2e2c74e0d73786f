"""Drawings of what holds pieces together, in scale."""
