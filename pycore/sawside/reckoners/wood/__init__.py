"""Questions about wood as a material: its moisture, its movement, its sizes and figures."""
