"""Space divided at every face of some boxes into cells, so that one sees what is in each.

A box is (x0, x1, y0, y1, z0, z1) in exact inches. Nothing of the project is imported.
"""

from bisect import bisect_left


class Assembly:
    """Parts in their places: each a box (x0, x1, y0, y1, z0, z1), and boxes cut out of it."""

    def __init__(self):
        self.parts = []

    def add(self, name, box, cuts=()):
        """A part in its place."""
        assert box[0] < box[1], name
        self.parts.append((name, box, list(cuts)))

    def filled(self, more):
        """(faults, the planes on each axis, the cells with the name of what is in each).

        `more` are boxes whose faces divide the space as well.
        """
        boxes = [box for _, box, cuts in self.parts for box in (box, *cuts)] + list(more)
        planes = [
            sorted({box[2 * axis + end] for box in boxes for end in (0, 1)}) for axis in range(3)
        ]
        cells, faults = {}, set()
        for name, box, cuts in self.parts:
            own = set(cells_of(box, planes))
            for cut in cuts:
                own.difference_update(cells_of(cut, planes))
            for cell in own:
                if cell in cells:
                    faults.add(f"{name} and {cells[cell]} are in one place")
                cells[cell] = name
        return faults, planes, cells


def cells_of(box, planes):
    """The cells within a box, as whole numbers along each axis."""
    spans = [
        range(
            bisect_left(planes[axis], box[2 * axis]), bisect_left(planes[axis], box[2 * axis + 1])
        )
        for axis in range(3)
    ]
    for x in spans[0]:
        for y in spans[1]:
            for z in spans[2]:
                yield x, y, z
