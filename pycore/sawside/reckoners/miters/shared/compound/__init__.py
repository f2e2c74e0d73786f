"""Pieces that lean as they are cut: crown and the sides of sloping boxes."""
