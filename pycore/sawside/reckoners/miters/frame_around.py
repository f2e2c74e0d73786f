"""The pieces of a rectangular mitered frame around something, and the stock that they take."""

from sawside.drawing.miters.frame import rectangle_drawing
from sawside.geometry.frame import rectangle
from sawside.lengths.show import angle_equals, angle_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length
from sawside.reckoners.miters.shared.frame_pieces import (
    FIRST_ANSWERS,
    FITS,
    LAST_ANSWERS,
    MEASURED,
    OFFSETS,
    STOCK,
    STOCK_WIDTH,
    check_inside,
    check_rabbet,
    grown,
    grown_text,
    parts,
    setting,
    settings_text,
    sizes,
    stock,
    told_by,
)
from sawside.wood.saw import cautions_at_the_saw


def compute(given, show):
    """Every piece with its long and short side in inches, its settings, and the sticks to buy."""
    upright = given.stock
    top = upright if given.top_stock is None else given.top_stock
    bottom = top if given.bottom_stock is None else given.bottom_stock
    check_rabbet(given, show, min(upright, top, bottom))
    inside, working = _inside(given, show, (("width", 2 * upright), ("height", top + bottom)))
    sides = rectangle(*inside, upright, top, bottom)
    outside = (inside[0] + 2 * upright, inside[1] + top + bottom)
    fitted = told_by(given, show)
    u, t, b = (show.number(each) for each in (upright, top, bottom))
    working += [
        f"Outside width: {show.number(inside[0])} + {u} + {u}{fitted.equals(outside[0])}",
        f"Outside height: {show.number(inside[1])} + {t} + {b}{fitted.equals(outside[1])}",
    ]
    alike = upright == top == bottom
    if not alike:
        working += [
            f"{each.name}, arctan of the width that it meets ÷ its own: {_settings(show, each)}"
            for each in sides
        ]
    told = "; ".join(f"{each.name}: {settings_text(each)}" for each in sides)
    bought, stock_lines = stock(given, show, sides)
    answers = {
        **sizes(fitted, sides),
        **(setting(sides) if alike else {"settings": told}),
        "inside": _both(fitted, inside),
        "outside": _both(fitted, outside),
        **bought,
    }
    if given.around == "panel":
        answers["rabbet_size"] = _both(fitted, [each + 2 * given.rabbet for each in inside])
    return Reckoning(
        answers=answers,
        working=(*working, *stock_lines),
        drawing=_drawing(fitted, inside, outside, (upright, top, bottom), sides, told),
        cautions=cautions_at_the_saw(*(side.inside for side in sides)),
        parts=parts(fitted, sides),
    )


def _both(show, measures):
    return list(zip(("Width", "Height"), map(show.rounded, measures), strict=True))


def _inside(given, show, directions):
    inside, working = [], []
    for key, wood in directions:
        known = getattr(given, key)
        if given.around == "outside":
            found, line = known - wood, f"{show.number(known)} − {show.number(wood)}"
        else:
            found = known + 2 * grown(given)
            line = f"{show.number(known)}{grown_text(given, show, 2)}"
        check_inside(given, show, found, key, wood)
        inside.append(found)
        working.append(f"Inside {key}: {line}{told_by(given, show).equals(found)}")
    return inside, working


def _drawing(show, inside, outside, widths, sides, told):
    texts = [show.brief(each) for each in (*outside, *inside)]
    words = (
        f"A frame {texts[0]} wide and {texts[1]} high outside, {texts[2]} by {texts[3]} inside. "
        f"From square, {told}."
    )
    angles = [angle_text(each) for each in (sides[0].left, sides[1].left)]
    return rectangle_drawing(words, inside, widths, texts, angles)


def _settings(show, side):
    """How each end's setting is found, once where both are alike."""
    ends = ((side.left_adds, side.left), (side.right_adds, side.right))
    return "; ".join(
        dict.fromkeys(
            f"arctan ({show.number(meets)} ÷ {show.number(side.width)}){angle_equals(degrees)}"
            for meets, degrees in ends
        )
    )


RECKONER = Reckoner(
    key="frame_around",
    title="Frame around something",
    asks="Which pieces make a rectangular frame around a mirror, panel, picture or opening?",
    words=(
        "frame, mirror, picture, panel, opening, casing, trim, rabbet, reveal, clearance, miter, "
        "stock, sticks, door frame, window"
    ),
    order=220,
    fields=(
        *MEASURED,
        length("width", "Width", help="Of what was measured, left to right.", least="1/8 in"),
        length("height", "Height", help="Of what was measured, bottom to top.", least="1/8 in"),
        length(
            "stock",
            "Stock width",
            help="Across the face of the left and right pieces.",
            **STOCK_WIDTH,
        ),
        *OFFSETS,
        length(
            "top_stock",
            "Width of the top piece",
            may_be_blank=True,
            blank_means="As the stock width.",
            **STOCK_WIDTH,
        ),
        length(
            "bottom_stock",
            "Width of the bottom piece",
            may_be_blank=True,
            blank_means="As the top piece.",
            **STOCK_WIDTH,
        ),
        *STOCK,
    ),
    answers=(
        *FIRST_ANSWERS,
        Answer("settings", "Saw settings, from square", "text"),
        *LAST_ANSWERS,
    ),
    source=(
        "Inside = thing + 2 × clearance − 2 × rabbet, or opening + 2 × reveal; outside = inside + "
        "the widths: arithmetic. Settings of unequal widths: plane trigonometry. A clearance of "
        "1/16″ and a reveal of 3/16″ are common practice, no source."
    ),
    compute=compute,
    example={
        "around": "panel",
        "width": "14 1/2",
        "height": "20 3/4",
        "stock": "2 1/4",
        "rabbet": "3/8",
        "stick": "96",
    },
    makes_parts=True,
    fits=FITS,
)
