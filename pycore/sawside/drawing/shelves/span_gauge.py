"""A gauge of a span: how far a shelf goes of the longest that keeps its limit."""

from sawside.drawing.shapes import dimension, label, line, rectangle


def span_gauge(show, span, longest, place):
    """The shapes; `place` is (left, top, width, pixel) of the bar: what is past the longest span
    is drawn as waste, and the span of now is measured above it, to the line across it."""
    left, top, wide, pixel = place
    scale = wide / (max(float(span), float(longest)) * 10 / 9)
    end, mark, high = left + float(longest) * scale, left + float(span) * scale, 10 * pixel
    most = f"longest {show.text(show.rounded(longest, 'stay under'))}"
    now = dimension((left, top), (mark, top), 9 * pixel, f"span {show.brief(span)}", field="span")
    return [
        rectangle(left, top, left + wide, top + high, "waste"),
        rectangle(left, top, end, top + high),
        line((mark, top - 4 * pixel), (mark, top + high + 2 * pixel), "cut"),
        now,
        label((end, top + high + 12 * pixel), most, "name", "end" if end > wide / 2 else "start"),
    ]
