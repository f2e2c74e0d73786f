"""Where a face frame stands in front of its case: boxes in exact inches, as `geometry/placed.py`
says. A rail or stile is there from shoulder to shoulder: its tenons are in the others."""

from itertools import chain

from sawside.geometry.placed import Box, Placed


def placed_frame(given, layout, kinds):
    """The `Placed` frame of a form that was asked over a case."""
    outline = layout.outline
    foot = 0 if given.stiles_run == "floor" else given.kick
    front = -given.thickness

    def box(left, right, low, high):
        left, right = left - given.left_past, right - given.left_past
        return Box(left, right, foot + low, foot + high, front, 0)

    return Placed(
        {
            kind.key: tuple(box(each.left, each.right, each.low, each.high) for each in kind.all)
            for kind in kinds
        },
        box(0, outline.width, 0, outline.height),
        spaces=dict(_spaces(layout, box)),
    )


def _spaces(layout, box):
    """The openings by the number of their column and of their height, as the answers list them."""
    opened = [
        [box(*ends, *level) for level in stack]
        for ends, stack in zip(layout.columns, layout.stacks, strict=True)
    ]
    for number, column in enumerate(opened, 1):
        yield ("opening_widths", number), tuple(column)
    heights = zip(*opened, strict=True) if layout.alike else ((each,) for each in chain(*opened))
    for number, boxes in enumerate(heights, 1):
        yield ("opening_heights", number), tuple(boxes)
