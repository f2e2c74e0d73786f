"""Open joints of a mitered ring: the gap that an error makes, and the error behind a gap."""
