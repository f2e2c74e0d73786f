"""Drawings in real units: shapes, and the pieces that several questions draw.

Imports: errors, lengths, geometry, wood.
"""
