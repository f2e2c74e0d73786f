"""Rectangles sawn edge to edge out of sheets and wide boards, and what to buy for them."""
