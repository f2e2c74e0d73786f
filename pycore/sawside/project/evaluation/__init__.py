"""Every entry worked out, each after what it uses, and what its names stand for."""
