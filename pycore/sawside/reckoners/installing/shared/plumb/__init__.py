"""How far a case that is up is out of plumb, and what brings it upright."""
