"""Cases: the space that one goes into, its carcass, its face frame, and whether it stands."""
