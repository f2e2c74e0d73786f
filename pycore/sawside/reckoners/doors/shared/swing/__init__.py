"""The swing of a door: fields, geometry, cautions and working."""
