"""Cases, from the front and cut through, and the panels that they are made of."""
