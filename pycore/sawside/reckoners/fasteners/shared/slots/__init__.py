"""Slots for biscuits and loose tenons: where they go, how deep, and what is refused."""
