"""Questions about shelves: where they go, what holds them, and how far they sag."""

HEADING = "Shelves"
PLACE = 3
