"""A face frame laid out again from its cut list alone, as rectangles in exact rationals."""

import re
from itertools import accumulate, pairwise, product

from asking import as_number, exact

KEY = "face_frame"
CABINET = {"width": "36", "height": "34 1/2", "kick": "3 1/2", "side": "3/4"}
ALONE = {"size_of": "frame", "width": "30", "height": "24"}
OUTER = "Top rail and bottom rail, 2 pieces"
NAMED = re.compile(
    r"((?:\w+ )?(?:stile|rail))(?: \((?:right of )?bays? ([\d, and]+)\))?", re.IGNORECASE
)
SPAN = re.compile(r"(\w+ (?:rail|stile)) (?:≈ )?([\d/. ]+)″ to (?:≈ )?([\d/. ]+)″")


def items(said, key):
    """{label: exact length} of an answer that is a list."""
    return {each["label"]: exact(each) for each in said["by_key"][key]["items"]}


def by_name(said, key):
    """{(name, bay or None): exact length} of the same, whatever shares a length."""
    return {name: length for label, length in items(said, key).items() for name in named(label)}


def named(label):
    """Each (name, bay or None) that a label names."""
    label = re.sub(r" below openings? [\d, and]+(?:; bay)?", ",", label).replace(",)", ")")
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
    columns = list(items(said, "opening_widths").values())
    stacks = stacks_of(items(said, "opening_heights"), len(columns))
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
        x += width + next(
            (across for (kind, _), (_, across) in found.items() if kind == "Middle stile"), 0
        )
    middle = rail.get("Middle rail", (0, 0))[1]
    steps = [[rail["Top rail"][1], *(high + middle for high in stack[:-1])] for stack in stacks]
    tops = [list(accumulate(each)) for each in steps]
    for bay, (left, width) in enumerate(list(zip(lefts, columns, strict=True))[:-1], 1):
        long, across = found.get(("Middle stile", bay)) or found["Middle stile", None]
        start = 0 if through else rail["Top rail"][1]
        wood.append((left + width, start, left + width + across, start + long))
    levels = [
        (name, place, bay)
        for name, place in (("Top rail", 0), ("Bottom rail", high - foot - rail["Bottom rail"][1]))
        for bay in range(len(columns) if through else 1)
    ]
    openings = []
    for bay, (stack, starts) in enumerate(zip(stacks, tops, strict=True)):
        ends = [top + height for top, height in zip(starts, stack, strict=True)]
        levels += [("Middle rail", end, bay) for end in ends[:-1]]
        right = lefts[bay] + columns[bay]
        openings += [(lefts[bay], top, right, end) for top, end in zip(starts, ends, strict=True)]
    for name, place, bay in levels:
        long, across = found.get((name, bay + 1)) or found[name, None]
        wood.append((lefts[bay], place, lefts[bay] + long, place + across))
    return wood, openings


def stacks_of(heights, columns):
    """The openings of each column from the top, of what is told of rows or of columns."""
    if not any(label.startswith("Column") for label in heights):
        return [list(heights.values())] * columns
    return [
        [height for label, height in heights.items() if re.match(rf"Column {column}\b", label)]
        for column in range(1, columns + 1)
    ]


def spans_told(part, edge):
    """[(name, from, to)] of what meets an edge of a piece, as its list says."""
    line = next((each for each in part["about"] if each.startswith(f"On {edge}")), "")
    return [(name, as_number(start), as_number(end)) for name, start, end in SPAN.findall(line)]


def spans_there(wood, stile, side):
    """[(from, to)] above the bottom end of a stile of the rails at its "left" or "right"."""
    left, _, right, foot = stile
    touching = [
        (foot - low, foot - top)
        for start, top, end, low in wood
        if (start == right if side == "right" else end == left) and (start, top, end, low) != stile
    ]
    return sorted(touching)


def through_total(wood, stiles):
    """What all pieces are cut to together with through tenons; of so many stiles, the first ones.
    Each goes through what its end touches, half way where another piece touches that across."""
    total = 0
    for number, (left, top, right, low) in enumerate(wood):
        if number < stiles:
            rails = [each for each in wood[stiles:] if each[0] <= left and right <= each[2]]
            touched = [each for each in rails if each[3] == top or each[1] == low]
            total += low - top + sum(each[3] - each[1] for each in touched)
            continue
        total += right - left
        for stile in wood[:stiles]:
            if stile[2] == left or stile[0] == right:
                far = stile[0] if stile[2] == left else stile[2]
                across = [each for each in wood[stiles:] if far in (each[0], each[2])]
                met = any(each[1] < low and top < each[3] for each in across)
                total += (stile[2] - stile[0]) / (2 if met else 1)
    return total


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
