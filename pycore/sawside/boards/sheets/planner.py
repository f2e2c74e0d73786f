"""The plan of sheets that buys least: what is had at once, then better ones in so many steps."""

from sawside.boards.sheets.plan import Cut, Part, PlannedSheet, SheetPlan

__all__ = ["Cut", "Part", "PlannedSheet", "SheetPlan", "plan_sheets"]

STEPS = 300_000
"""Steps of a plan that somebody waits for."""


def plan_sheets(request, most_steps=STEPS):
    """The best `SheetPlan` that is found in so many steps, the same one every time.

    Raises `NoRoomError` where a panel goes into no sheet, or where those too large for what is on
    sale don't go into what is on hand (or were not found to).
    """
    raise NotImplementedError
