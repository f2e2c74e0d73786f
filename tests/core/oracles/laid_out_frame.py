"""A face frame laid out again from its cut list alone, as rectangles in exact rationals."""

import re
from itertools import pairwise, product

from asking import exact

KEY = "face_frame"
CABINET = {"width": "36", "height": "34 1/2", "kick": "3 1/2", "side": "3/4"}
ALONE = {"size_of": "frame", "width": "30", "height": "24"}
OUTER = "Top rail and bottom rail, 2 pieces"
NAMED = re.compile(r"((?:\w+ )?(?:stile|rail))(?: \(bays? ([\d, and]+)\))?", re.IGNORECASE)


def items(said, key):
    """{label: exact length} of an answer that is a list."""
    return {each["label"]: exact(each) for each in said["by_key"][key]["items"]}


def by_name(said, key):
    """{(name, bay or None): exact length} of the same, whatever shares a length."""
    return {name: length for label, length in items(said, key).items() for name in named(label)}


def named(label):
    """Each (name, bay or None) that a label names."""
    for name, bays in NAMED.findall(label.replace(" and ", ", ")):
        for bay in re.findall(r"\d+", bays) or [None]:
            yield name.capitalize(), bay and int(bay)


# An oracle that knows only the cut list, the openings and how a frame goes together.


def pieces(said):
    """{(name, bay or None): (shoulder, width)} of the list as it is told."""
    widths = {}
    for part in said["parts"]:
        widths |= dict.fromkeys(named(part["name"]), exact(part["width"]))
    told = by_name(said, "stiles") | by_name(said, "rails")
    if "shoulders" in said["by_key"]:
        told |= by_name(said, "shoulders")
    return {key: (length, widths[key]) for key, length in told.items()}


def laid_out(said, *, through, foot):
    """(rectangles of wood, rectangles of the openings) from the upper left corner, y down."""
    found = pieces(said)
    wide, high = (exact(said["by_key"][key]) for key in ("frame_width", "frame_height"))
    columns, rows = (list(items(said, f"opening_{key}").values()) for key in ("widths", "heights"))
    stile = {side: found.get((f"{side} stile", None)) or found["Stile", None] for side in SIDES}
    wood = [
        (0, 0, stile["Left"][1], stile["Left"][0]),
        (wide - stile["Right"][1], 0, wide, stile["Right"][0]),
    ]
    rail = {
        name: next(each for (kind, _), each in found.items() if kind == name)
        for name in ("Top rail", "Bottom rail", "Middle rail")
        if any(kind == name for kind, _ in found)
    }
    lefts, x = [], stile["Left"][1]
    for width in columns:
        lefts.append(x)
        x += width + found.get(("Middle stile", None), (0, 0))[1]
    tops, y = [], rail["Top rail"][1]
    for height in rows:
        tops.append(y)
        y += height + rail.get("Middle rail", (0, 0))[1]
    for left, width in list(zip(lefts, columns, strict=True))[:-1]:
        long, across = found["Middle stile", None]
        start = 0 if through else rail["Top rail"][1]
        wood.append((left + width, start, left + width + across, start + long))
    levels = {"Top rail": [0], "Bottom rail": [high - foot - rail["Bottom rail"][1]]}
    levels["Middle rail"] = [top + height for top, height in zip(tops, rows, strict=True)][:-1]
    for name, places in levels.items():
        split = len(columns) > 1 and (through or name == "Middle rail")
        for place, bay in product(places, range(len(columns)) if split else [0]):
            long, across = found.get((name, bay + 1)) or found[name, None]
            wood.append((lefts[bay], place, lefts[bay] + long, place + across))
    openings = [
        (left, top, left + width, top + height)
        for (top, height), (left, width) in product(
            zip(tops, rows, strict=True), list(zip(lefts, columns, strict=True))
        )
    ]
    return wood, openings


SIDES = ("Left", "Right")
CROSSED = {"joint": "tenon", "middle_stiles": "1", "middle_rails": "1"}


def covered_once(box, rectangles):
    """Whether rectangles fill the box, and no two have a point inside in common."""
    xs = sorted({*box[::2], *(x for each in rectangles for x in each[::2])})
    ys = sorted({*box[1::2], *(y for each in rectangles for y in each[1::2])})
    for (left, right), (top, low) in product(pairwise(xs), pairwise(ys)):
        inside = [
            each
            for each in rectangles
            if each[0] <= left and right <= each[2] and each[1] <= top and low <= each[3]
        ]
        within = box[0] <= left and right <= box[2] and box[1] <= top and low <= box[3]
        if len(inside) != within:
            return False
    return True
