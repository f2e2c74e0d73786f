"""A gauge of a span: how far a shelf goes of the longest that keeps its limit."""

from sawside.drawing.shapes import label, line, rectangle


def span_gauge(show, span, longest, place):
    """The shapes; `place` is (left, top, width, pixel) of the bar: what is past the longest span
    is drawn as waste, and the span of now is the line across it."""
    left, top, wide, pixel = place
    now, most = float(span), float(longest)
    scale = wide / (max(now, most) * 10 / 9)
    end, mark = left + most * scale, left + now * scale
    high = 12 * pixel
    most_text = f"longest {show.text(show.rounded(longest, 'stay under'))}"
    return [
        rectangle(left, top, left + wide, top + high, "waste"),
        rectangle(left, top, end, top + high),
        line((mark, top - 6 * pixel), (mark, top + high + 2 * pixel), "cut"),
        label((mark, top - 14 * pixel), f"span now {show.brief(span)}", "note", _side(now, most)),
        label((end, top + high + 14 * pixel), most_text, "name", _side(most, now)),
    ]


def _side(one, other):
    """On which side of its mark a text stands, so that it stays in the picture."""
    return "end" if one * 2 > max(one, other) else "start"
