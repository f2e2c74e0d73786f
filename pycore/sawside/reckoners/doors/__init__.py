"""Questions about doors: what size, of what parts, and what they clear."""
