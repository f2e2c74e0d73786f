"""The hinges of a door: how many, where, and how that is worked out and told."""
