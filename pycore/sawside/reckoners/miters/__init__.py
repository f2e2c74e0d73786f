"""Questions about pieces with ends or edges at an angle, and what they make together."""
