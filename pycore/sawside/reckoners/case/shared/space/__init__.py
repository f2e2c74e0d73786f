"""The space that a case goes into: its walls, its floor and ceiling, and what is told of them."""
