"""The side of a case that holes or dadoes are laid out on: its fields."""

from sawside.reckoners.declaration import length

SIDE = length("side", "Length of the side", help="From its lower to its upper end.", least="1 in")
SIDE_DEPTH = length("depth", "Depth of the side", help="From front to back edge.", least="1 in")
