"""Mitered frames: their fields, and their pieces by the shape of the frame."""
