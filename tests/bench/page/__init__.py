"""What is measured of the page: starts, keys, kills."""
