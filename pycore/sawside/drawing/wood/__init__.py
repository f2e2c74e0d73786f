"""Wood that moves with the seasons, and what lets it."""
