"""One inch divided in several ways, one below the other, and a place that crosses them all."""

from sawside.drawing.shapes import drawing, label, line
from sawside.drawing.tape.ruler import WIDTH, Ruler
from sawside.lengths.display import decimal_text
from sawside.lengths.real import nearby

_LEFT, _ROW, _TALL = 46, 30, 20


def ladder(length, divisions):
    """The drawing of the inch that holds `length` (exact inches), a row for each division."""
    inch = nearby(length).__floor__()
    ruler = Ruler(inch, inch + 1, _LEFT, WIDTH - 8)
    shapes = []
    for row, parts in enumerate(divisions):
        top = row * _ROW
        shapes.append(line((_LEFT, top), (WIDTH - 8, top), "edge"))
        shapes.append(label((_LEFT - 10, top + _TALL / 2), f"1/{parts}", "note", "end"))
        for number in range(parts + 1):
            x = ruler.at(inch + nearby(number) / parts)
            shapes.append(line((x, top), (x, top + _TALL), "edge"))
    bottom = len(divisions) * _ROW
    x = ruler.at(length)
    shapes += [
        line((x, -10), (x, bottom), "cut"),
        label((_LEFT, bottom + 10), str(inch), "note"),
        label((WIDTH - 8, bottom + 10), str(inch + 1), "note"),
    ]
    text = f"{decimal_text(length, 4)}″"
    align = "start" if x < WIDTH / 2 else "end"
    shapes.append(label((x, -22), text, "name", align))
    words = (
        f"The inch from {inch} to {inch + 1} in halves down to sixty-fourths, with {text} on it."
    )
    return drawing(words, (0, -36, WIDTH, bottom + 24), shapes)
