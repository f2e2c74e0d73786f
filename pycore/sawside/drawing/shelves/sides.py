"""Both sides of a case, inside faces up, side by side as mirror images: front edges outside.

Heights are true to each other; the width is what is good to look at, unless it is smaller.
"""

from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.real import nearby

_LABELS = 11


class Sides:
    """Two sides, lower ends down, to which bands and holes are added; measures in inches."""

    def __init__(self, length, depth):
        self.high = nearby(length)
        self.wide = min(max(nearby(depth), self.high / 4), self.high * 2 / 5)
        self.scale = self.wide / nearby(depth)
        self.gap = self.high / 16
        self.shapes = [
            rectangle(x, -self.high, x + self.wide, 0) for x in (0, self.wide + self.gap)
        ]
        self._told = []
        self.figure(0, "0", "name")

    def _both(self, from_front):
        """The places in the drawing of a line so far from the front edge, left and right."""
        x = nearby(from_front) * self.scale
        return x, 2 * self.wide + self.gap - x

    def band(self, low, high, role, stopped=0):
        """A band across both sides, stopped so far from the front edge."""
        for front, back in zip(self._both(stopped), (self.wide, self.wide + self.gap), strict=True):
            corners = [(front, low), (back, low), (back, high), (front, high)]
            self.shapes.append(polygon([(x, -nearby(y)) for x, y in corners], role))

    def holes(self, from_front, centers, diameter):
        """A row of holes in both sides; a small one is drawn as large as can be seen."""
        radius = max(nearby(diameter) / 2, self.high / 160)
        for x in self._both(from_front):
            for y in (-nearby(center) for center in centers):
                tips = [(x - radius, y), (x, y - radius), (x + radius, y), (x, y + radius)]
                self.shapes.append(polygon(tips, "hatch"))

    def axis(self, from_front, low, high):
        """The center line of a row in both sides."""
        for x in self._both(from_front):
            self.shapes.append(line((x, -nearby(low)), (x, -nearby(high)), "center"))

    def figure(self, place, text, role="note"):
        """A figure at the right of a height, from the lower end, where none before it is in the
        way."""
        y = nearby(place)
        room = self.high / _LABELS
        if all(abs(y - other) >= (room if other else room * 2 / 3) for other in self._told):
            self._told.append(y)
            right = 2 * self.wide + self.gap
            self.shapes.append(line((right, -y), (right + self.gap / 2, -y), "center"))
            self.shapes.append(label((right + self.gap * 3 / 4, -y), text, role, "start"))

    def drawn(self, words, length_text):
        """The drawing, with the length of a side at the left and the names of the sides."""
        x = 2 * self.wide + self.gap
        for middle, name in ((self.wide / 2, "Left"), (x - self.wide / 2, "Right")):
            self.shapes.append(label((middle, self.high * 7 / 100), name, "name"))
        for place, name, align in ((0, "front", "start"), (x, "front", "end")):
            self.shapes.append(label((place, -self.high * 53 / 50), name, "note", align))
        origin = (x / 2, self.high * 15 / 100), "marks from the bottom end"
        self.shapes.append(label(*origin, "note"))
        self.shapes.append(dimension((0, 0), (0, -self.high), self.high / 5, length_text))
        margin = self.high * 12 / 100
        box = (-self.high * 3 / 10, -self.high - margin, x + self.high * 2 / 5, margin * 3 / 2)
        return drawing(words, box, self.shapes)
