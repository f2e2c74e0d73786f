"""Dowels in a rail and a stile: where they go, what is refused, and how they are told."""
