"""Drawers: the box in its opening, fronts in a column, and the joints of the corners."""
