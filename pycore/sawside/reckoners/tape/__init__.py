"""Questions about lengths, the tape that measures them, and whether things are square."""
