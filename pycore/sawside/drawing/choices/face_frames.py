"""Where the inner edge of a stile is on a case's side, from above; and how middle stiles run."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import rectangle


def _edge(words, inner):
    return small(words, rectangle(0.3, 0, 0.5, 0.48), rectangle(0.3, 0.48, inner, 0.68, "hatch"))


STILE_EDGES = {
    "width": _edge("A side from above with a stile of any width on its front edge.", 0.72),
    "flush": _edge("A side from above with a stile that is flush with its inside.", 0.5),
    "past": _edge("A side from above with a stile that goes a little past its inside.", 0.58),
}
"""The inner edge of a stile by its width, flush, and past the side by a little."""

_RAILS = ((0.06, 0.22), (0.53, 0.69))
MIDDLE_STILES = {
    "between": small(
        "A middle stile that ends at the top and bottom rails.",
        *(rectangle(0.1, low, 0.9, high) for low, high in _RAILS),
        rectangle(0.42, 0.22, 0.58, 0.53, "hatch"),
    ),
    "through": small(
        "A middle stile that runs past the ends of the top and bottom rails.",
        *(
            rectangle(*side, high)
            for low, high in _RAILS
            for side in ((0.1, low, 0.42), (0.58, low, 0.9))
        ),
        rectangle(0.42, 0.06, 0.58, 0.69, "hatch"),
    ),
}
"""Middle stiles between the rails, and through."""
