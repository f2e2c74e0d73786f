"""Questions about putting a case up: studs, level, plumb, scribing to the wall."""
