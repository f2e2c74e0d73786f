"""A strip that is scribed to a wall beside a case that is up."""
