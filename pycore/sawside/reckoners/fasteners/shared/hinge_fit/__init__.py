"""How a hinge is let in: the gains of a butt hinge, the bore of a cup hinge."""
