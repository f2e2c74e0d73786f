"""Questions about what to buy, and which piece comes out of which board."""
