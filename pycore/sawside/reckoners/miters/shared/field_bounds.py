"""Bounds that many fields have, so that a declaration reads like a table."""

ACROSS = {"least": "1/64 in", "most": "4 ft"}
"""Of a width across the face."""
THROUGH = {"least": "1/64 in", "most": "1 ft"}
"""Of a thickness that a blade goes through."""
STRIP = {"least": "1/64 in", "most": "6 in"}
"""Of a thin strip."""


def blank(means):
    """The field may be left blank, and what that means."""
    return {"may_be_blank": True, "blank_means": means}
