"""From text to an exact value: the grammar, its refusals, and names in sums."""
