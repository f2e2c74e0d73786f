"""What is asked about a butt hinge in its gains, or a cup hinge in its bore."""

from sawside.reckoners.fields import choice, length
from sawside.reckoners.shared.board_fields import thickness

_BUTT, _CUP = ("kind", ("butt",)), ("kind", ("cup",))

FIELDS = (
    choice("kind", "Hinge", {"butt": "Butt hinge", "cup": "Cup hinge"}),
    length(
        "leaf",
        "Leaf thickness",
        help="Measure one leaf.",
        default='1/16"',
        metric="1.5 mm",
        least="1/128 in",
        most="1/2 in",
        shown_when=_BUTT,
    ),
    length(
        "between",
        "Between closed leaves",
        help="With the leaves parallel.",
        default='1/16"',
        metric="1.5 mm",
        most="1/2 in",
        shown_when=_BUTT,
    ),
    choice(
        "gains",
        "Gains",
        {
            "both": "Alike in door and frame",
            "door": "All in the door",
            "none": "None, leaves on the surface",
        },
        shown_when=_BUTT,
    ),
    length(
        "gap",
        "Gap at the hinge side",
        default='1/16"',
        metric="2 mm",
        most="1 in",
        shown_when=(_BUTT, ("gains", ("both", "door"))),
    ),
    choice(
        "sits", "Door sits", {"over": "Over the side", "in": "Inset"}, shown_when=_CUP
    ),
    length(
        "overlay",
        "Overlay",
        help="How far the door covers the side.",
        default="11/16 in",
        metric="17 mm",
        most="2 in",
        shown_when=(_CUP, ("sits", ("over",))),
    ),
    length(
        "reveal",
        "Gap beside the inset door",
        default='3/32"',
        metric="2 mm",
        most="1 in",
        shown_when=(_CUP, ("sits", ("in",))),
    ),
    length(
        "constant",
        "Hinge’s constant",
        help="From the maker: overlay = tab + this − plate height.",
        default="13 mm", metric="13 mm",
        most="2 in",
        least="-2 in",
        shown_when=_CUP,
    ),
    length(
        "plate",
        "Plate height",
        help="From the maker.",
        default="0 mm", metric="0 mm",
        most="2 in",
        shown_when=_CUP,
    ),
    length(
        "tab_least",
        "Smallest tab",
        help="Door’s edge to the cup hole. From the maker.",
        default="3 mm", metric="3 mm",
        most="1 in",
        shown_when=_CUP,
    ),
    length(
        "tab_most",
        "Largest tab",
        default="6 mm", metric="6 mm",
        most="1 in",
        shown_when=_CUP,
    ),
    length(
        "cup",
        "Cup diameter",
        default="35 mm", metric="35 mm",
        least="10 mm",
        most="3 in",
        shown_when=_CUP,
    ),
    length(
        "deep",
        "Cup depth",
        help="From the maker.",
        default="12.5 mm", metric="12.5 mm",
        least="1 mm",
        most="2 in",
        shown_when=_CUP,
    ),
    thickness(
        "wood",
        "Wood behind the hinge",
        help="How deep: a stile’s width behind a butt hinge, the door’s thickness behind a cup.",
        most="12 in",
    ),
    length(
        "screw",
        "Hinge screw length",
        least="1/8 in",
        most="4 in",
        blank_means="The screws aren’t checked.",
    ),
)
