"""Which piece comes out of which board, and what to buy for it. Imports: nothing of the core."""
