"""One sheet of a strip that is drawn at true size: the part of it in one stretch up and across."""

from math import ceil

from sawside.drawing.paper.sheet_head import named, sheet_head
from sawside.drawing.paper.sheets import MARGIN
from sawside.drawing.shapes import circle, label, line

_LABEL_GAP = 4.2
_CROSS = 2.5
_RULERS = {"in": (25.4, 8, "″"), "mm": (10.0, 2, " cm")}
"""By unit: millimeters between labels, parts between them, what stands behind a label."""
_WAYS = {"below": "up", "left": "across"}


class StripSheet:
    """The part of a `strip` (a `true_size.Strip`) in a `column` and a `row`, both `Stretch`es."""

    def __init__(self, strip, paper, column, row):
        self.strip = strip
        self.paper = paper
        self.column = column
        self.row = row

    def sheet(self, number, many, unit):
        """This sheet as data, the `number`th of `many`, with a ruler in `unit`."""
        strip, paper = self.strip, self.paper
        title = f"{strip.title}: sheet {number} of {many}"
        notes = (*self._joining(), *strip.notes)
        marks = [mark for mark in strip.marks if self.row.low <= mark[2] <= self.row.high]
        shapes = [
            *sheet_head(paper, title, notes),
            *self._ends(),
            *self._edges(),
            *self._ruler(*_RULERS[unit]),
            *self._joints(),
            *self._marks(marks),
        ]
        names = ", ".join(f"{name} at {text}" for name, text, _ in marks) or "no mark on this sheet"
        return {
            "number": number,
            "of": many,
            "width": paper.width,
            "height": paper.height,
            "from": round(self.row.low, 4),
            "to": round(self.row.high, 4),
            "words": f"{title}, with {names}.",
            "shapes": shapes,
        }

    def _at(self, x, y):
        """A place of the strip on the sheet."""
        left, foot = MARGIN - self.column.low, self.paper.height - MARGIN + self.row.low
        return left + x, foot - y

    def _holds(self, x):
        return self.column.low <= x <= self.column.high

    def _level(self, y, left, right, role):
        """A level line as far as it is on this sheet."""
        left, right = max(left, self.column.low), min(right, self.column.high)
        if left < right:
            yield line(self._at(left, y), self._at(right, y), role)

    def _upright(self, x, role):
        if self._holds(x):
            yield line(self._at(x, self.row.low), self._at(x, self.row.high), role)

    def _text(self, x, y, text, role="note", align="start"):
        if self._holds(x):
            yield label(self._at(x, y), text, role, align)

    def _joining(self):
        """How this sheet is joined to those before it."""
        for way, stretch in (("below", self.row), ("left", self.column)):
            here = [number for number, _, at in stretch.joints if at < stretch.low + 1e-9]
            if here:
                lines = f"{_WAYS[way]} {here[0]}a and {here[0]}b"
                yield f"Cut along {_WAYS[way]} {here[0]}a, lay over the sheet {way}: {lines} meet."

    def _ends(self):
        for y in (0.0, self.strip.length):
            if self.row.low <= y <= self.row.high:
                yield from self._level(y, self.strip.left, self.strip.right, "end")

    def _edges(self):
        for x, text in self.strip.edges:
            yield from self._upright(x, "edge")
            yield from self._text(x + 1.5, self.row.low + 10, text)
        if self.strip.radius:
            yield from self._upright(0.0, "center")

    def _ruler(self, apart, parts, unit):
        yield from self._upright(self.strip.ruler, "ruler")
        small = apart / parts
        for tick in range(ceil(self.row.low / small - 1e-9), int(self.row.high / small + 1e-9) + 1):
            whole, part = divmod(tick, parts)
            long = 5.0 if part == 0 else 3.0 if 2 * part == parts else 1.8
            y, x = tick * small, self.strip.ruler
            for shape in self._level(y, x, x + long, "ruler"):
                yield named(shape, f"{whole}{unit}") if part == 0 else shape
            if part == 0:
                yield from self._text(x + 6, y, f"{whole}{unit}", "ruler")

    def _joints(self):
        for number, letter, y in self.row.joints:
            for shape in self._level(y, self.column.low, self.column.high, "join"):
                yield named(shape, f"up {number}{letter}")
            for x in self.strip.crosses:
                yield from self._cross(x, y)
            text = f"up {number}{letter}"
            yield from self._text(self.column.high - 1, y + 2.2, text, align="end")
        for number, letter, x in self.column.joints:
            for shape in self._upright(x, "join"):
                yield named(shape, f"across {number}{letter}")
            for part in (0.25, 0.75):
                yield from self._cross(x, self.row.low + part * self._high)
            text = f"across {number}{letter}"
            yield from self._text(x, self.row.high - 8, text, align="middle")

    @property
    def _high(self):
        return self.row.high - self.row.low

    def _cross(self, x, y):
        """A diagonal cross on a joining line, so that the sheets don't slip along it."""
        if not self._holds(x):
            return
        for way in (1, -1):
            start, end = (x - _CROSS, y - way * _CROSS), (x + _CROSS, y + way * _CROSS)
            yield line(self._at(*start), self._at(*end), "cross")

    def _marks(self, marks):
        strip = self.strip
        ends = [(strip.start, 0.0, None), (strip.end, strip.length, None)]
        labels = [(f"{name}: {text}", y, name) for name, text, y in marks]
        labels += [end for end in ends if self.row.low <= end[1] <= self.row.high]
        labels.sort(key=lambda label: label[1])
        for (text, y, name), shown_at in zip(labels, self._spread(labels), strict=True):
            if name:
                for shape in self._level(y, strip.mark_left, strip.mark_right, "mark"):
                    yield named(shape, name)
                if strip.radius and self._holds(0.0):
                    yield from self._hole(y, name)
            reach = (strip.mark_right, strip.label_at - 1)
            if self._holds(reach[0]) and self._holds(reach[1]):
                yield line(self._at(reach[0], y), self._at(reach[1], shown_at), "leader")
            yield from self._text(strip.label_at, shown_at, text, "mark" if name else "note")

    def _hole(self, y, name):
        reach = self.strip.radius + 2
        yield named(circle(self._at(0.0, y), self.strip.radius, "hole"), name)
        yield line(self._at(0.0, y - reach), self._at(0.0, y + reach), "mark")

    def _spread(self, labels):
        """Where the texts stand so that none covers another: near their marks, in their order."""
        if not labels:
            return []
        gap = min(_LABEL_GAP, self._high / len(labels))
        places = [y for _, y, _ in labels]
        for at in range(1, len(places)):
            places[at] = max(places[at], places[at - 1] + gap)
        places[-1] = min(places[-1], self.row.high)
        for at in range(len(places) - 2, -1, -1):
            places[at] = min(places[at], places[at + 1] - gap)
        return places
