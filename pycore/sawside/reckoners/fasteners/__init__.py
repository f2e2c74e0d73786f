"""Fasteners: screws and nails through one piece into another, and the hinges of a door."""
