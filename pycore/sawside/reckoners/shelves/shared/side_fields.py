"""The side of a case that holes or dadoes are laid out on: its fields."""

from sawside.reckoners.fields import length

SIDE = length("side", "Side length", help="Bottom end to top end.", least="1 in")
SIDE_DEPTH = length("depth", "Side depth", help="Front edge to back edge.", least="1 in")
