"""Doors in an opening, as the tests of that question fill them in."""

OPENING = {"width": "30", "height": "24"}
SOLID = {"species": "maple_red", "now": "8", "year": "own", "low": "6", "high": "12"}
