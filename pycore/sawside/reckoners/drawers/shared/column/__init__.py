"""Drawer fronts in a column: their heights on the marks, and how they are told."""
