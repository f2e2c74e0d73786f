"""Doors in an opening: fields, sizes, parts, cautions and working."""
