"""How a shelf bends under its load: as a beam, or as a plate with strips along its edges."""
