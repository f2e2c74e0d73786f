"""A view of a case with its dimensions around it, line by line."""

from sawside.drawing.case.seen import flat
from sawside.drawing.shapes import dimension, drawing

_WIDE, _HIGH = 200, 220
"""So large a view is drawn at the most, in pixels of a narrow phone."""
_LINE = 18
"""How far a line of dimensions is from the case or the line before it, in those pixels."""
_MOST = 4
"""So many bays or openings each have their length; of more the first one has."""


class ViewSheet:
    """Looks at some outsides one way; dimensions go around all of them."""

    def __init__(self, show, way, outsides):
        self._show, self._lines = show, []
        boxes = [flat(box, way) for box in outsides]
        pick = (min, min, max, max)
        self._box = tuple(end(box[at] for box in boxes) for at, end in enumerate(pick))
        left, top, right, bottom = self._box
        self._pixel = max((right - left) / _WIDE, (bottom - top) / _HIGH)
        self._out = dict.fromkeys(("left", "above", "right", "below"), 0)

    def dimensions(self, side, spans):
        """One more line of dimensions at a side ("left", "above", "right" or "below"): (from, to)
        of each in exact inches along the view."""
        if not spans:
            return
        self._out[side] += _LINE * self._pixel
        first = "first " if len(spans) > _MOST else ""
        for low, high in spans[:1] if first else spans:
            text = f"{first}{self._show.brief(high - low)}"
            self._lines.append(self._dimension(side, low, high, text))

    def _dimension(self, side, low, high, text):
        left, top, right, bottom = self._box
        ends = {
            "left": ((left, -low), (left, -high)),
            "above": ((low, top), (high, top)),
            "right": ((right, -high), (right, -low)),
            "below": ((high, bottom), (low, bottom)),
        }
        return dimension(*ends[side], self._out[side], text)

    def drawn(self, what, seen, case):
        """The drawing of (outlines, letters); `what` is said of it to who can't see it."""
        outlines, letters = seen
        free = 8 * self._pixel
        room = [out + free for out in self._out.values()]
        box = [
            place + (way * each)
            for place, each, way in zip(self._box, room, (-1, -1, 1, 1), strict=True)
        ]
        outside = case.outside
        sizes = ", ".join(
            f"{self._show.brief(end - start)} {word}"
            for (start, end), word in (
                (outside.across, "wide"),
                (outside.upward, "high"),
                (outside.inward, "deep"),
            )
        )
        return drawing(f"{what}: {sizes}.", box, [*outlines, *self._lines, *letters])
