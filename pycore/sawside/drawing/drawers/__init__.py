"""Drawings of drawers and of the joints at their corners."""
