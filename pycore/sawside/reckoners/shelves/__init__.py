"""Questions about shelves: where they go, what holds them, and how far they sag."""
