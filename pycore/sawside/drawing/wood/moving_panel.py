"""A board or panel across its width: as it is now, at its driest and at its dampest."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.real import nearby

_SCREEN = 328
_LARGER = (1, 2, 5, 10, 20, 50, 100, 200, 500)


@lazy
def moving_panel(show, width, changes, told):
    """Three boards under each other; `changes` and `told` are (driest, dampest) in inches and text.

    The change is drawn larger than it is, shared between the two edges; the drawing says how much.
    """
    wide = float(nearby(width))
    pixel = wide * 5 / 4 / _SCREEN
    shown = [float(nearby(change)) for change in changes]
    far = max(abs(change) for change in shown)
    times = max(size for size in _LARGER if size == 1 or far * size <= 40 * pixel)
    shapes = []
    rows = (("Driest", shown[0], told[0]), ("Now", 0.0, None), ("Wettest", shown[1], told[1]))
    bottom = 0.0
    for number, (name, change, text) in enumerate(rows):
        top = (30 + 76 * number) * pixel
        half = change * times / 2
        bottom = top + 26 * pixel
        shapes.append(rectangle(-half, top, wide + half, bottom))
        caption = f"{name}: {text}" if text else f"{name}: {show.brief(width)}"
        shapes.append(label((wide / 2, top - 16 * pixel), caption, "name"))
    shapes += [line((x, 30 * pixel), (x, bottom), "hidden") for x in (0, wide)]
    larger = f"exaggerated {times}×" if times > 1 else "drawn to scale"
    words = (
        f"A board {show.brief(width)} wide now. At its driest {told[0]}, at its wettest {told[1]}. "
        f"The movement is {larger}."
    )
    shapes.append(label((wide / 2, bottom + 18 * pixel), f"movement {larger}", "note"))
    return drawing(words, (-wide / 8, 0, wide * 9 / 8, bottom + 34 * pixel), shapes)


@lazy
def panel_in_groove(gap, depth, held, texts):
    """One edge of a panel in its groove, enlarged: the gap now and what is left to hold.

    `gap`, `depth` and `held` are exact inches; `texts` are those of gap now, depth, held when dry.
    """
    deep, away, keep = (float(nearby(each)) for each in (depth, gap, held))
    pixel = deep * 5 / 2 / _SCREEN
    thick, back, right = deep / 2, deep / 2, deep * 3 / 2
    lip, top = thick / 2, 46 * pixel
    low = top + lip * 2 + thick
    upper, lower = top + lip, low - lip
    # The rail from its upper edge around: its lips, and the groove between them.
    rail = [(-back, top), (deep, top), (deep, upper), (0, upper)]
    rail += [(0, lower), (deep, lower), (deep, low), (-back, low)]
    dry, held_text = deep - keep, f"left in the groove at driest {texts[2]}"
    shapes = [
        polygon(rail, "hatch"),
        rectangle(away, upper, right, lower),
        line((dry, upper), (dry, lower), "hidden"),
        dimension((0, top), (deep, top), 24 * pixel, f"deep {texts[1]}", "given"),
        dimension((away, low), (0, low), 22 * pixel, "", "answer"),
        label((away / 2, low + 42 * pixel), f"gap {texts[0]}", "name", "start"),
        label((4 * pixel - back, low + 64 * pixel), held_text, "note", "start"),
    ]
    words = (
        f"One edge of the panel in its groove {texts[1]} deep. The gap behind it now is "
        f"{texts[0]}; at its driest, {texts[2]} of it is left in the groove."
    )
    return drawing(words, (-back, 0, right, low + 80 * pixel), shapes)
