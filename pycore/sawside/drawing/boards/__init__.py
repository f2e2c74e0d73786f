"""Drawings of boards and sticks with what is cut out of them."""
