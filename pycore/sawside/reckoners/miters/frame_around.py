"""The pieces of a rectangular mitered frame around something, and the stock that they take."""

from sawside.drawing.miters.frame import rectangle_drawing
from sawside.geometry.frame import rectangle
from sawside.lengths.show import angle_equals, angle_text
from sawside.reckoners.declaration import Answer, Reckoner, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.frame_fields import (
    FIRST_ANSWERS,
    FITS,
    LAST_ANSWERS,
    MEASURED,
    OFFSETS,
    STOCK,
    WIDTH,
)
from sawside.reckoners.miters.shared.frame_pieces import (
    check_inside,
    check_rabbet,
    fitting,
    framed,
    grown,
    grown_text,
    setting,
    settings_text,
)


def compute(given, show):
    """Every piece with its long and short side in inches, its settings, and the sticks to buy."""
    widths = upright, top, bottom = _widths(given)
    check_rabbet(given, show, min(widths))
    wide, high = (("width", 2 * upright), ("height", top + bottom))
    inside, inside_worked = _inside(given, show, (wide, high))
    outside = (inside[0] + 2 * upright, inside[1] + top + bottom)
    sides = rectangle(*inside, *widths)
    alike = upright == top == bottom
    said = "; ".join(f"{side.name}: {settings_text(side)}" for side in sides)
    return framed(
        given,
        show,
        sides,
        list(zip(("Width", "Height"), inside, outside, strict=True)),
        setting(sides) if alike else {"settings": said},
        [
            *inside_worked,
            *_outside_worked(fitting(given, show), inside, outside, widths),
            *([] if alike else _settings_worked(show, sides)),
        ],
        _drawing(fitting(given, show), inside, outside, widths, sides, said),
    )


def _widths(given):
    """The widths of an upright, the top and the bottom."""
    top = given.stock if given.top_stock is None else given.top_stock
    return given.stock, top, top if given.bottom_stock is None else given.bottom_stock


def _inside(given, show, directions):
    inside, working = [], []
    for key, wood in directions:
        known = getattr(given, key)
        if given.around == "outside":
            size, line = known - wood, f"{show.number(known)} − {show.number(wood)}"
        else:
            size = known + 2 * grown(given)
            line = f"{show.number(known)}{grown_text(given, show, 2)}"
        check_inside(given, show, size, key, wood)
        inside.append(size)
        working.append(f"Inside {key}: {line}{fitting(given, show).equals(size)}")
    return inside, working


def _outside_worked(show, inside, outside, widths):
    upright, top, bottom = (show.number(width) for width in widths)
    wide, high = (show.number(each) for each in inside)
    yield f"Outside width: {wide} + {upright} + {upright}{show.equals(outside[0])}"
    yield f"Outside height: {high} + {top} + {bottom}{show.equals(outside[1])}"


def _settings_worked(show, sides):
    """How each piece's settings are found, once where both of its ends are alike."""
    for side in sides:
        ends = ((side.left_adds, side.left), (side.right_adds, side.right))
        own = show.number(side.width)
        ratios = dict.fromkeys(
            f"arctan ({show.number(meets)} ÷ {own}){angle_equals(degrees)}"
            for meets, degrees in ends
        )
        yield f"{side.name}, arctan of the width it meets ÷ its own: {'; '.join(ratios)}"


def _drawing(show, inside, outside, widths, sides, said):
    texts = [show.brief(each) for each in (*outside, *inside)]
    words = (
        f"A frame {texts[0]} wide and {texts[1]} high outside, {texts[2]} by {texts[3]} inside. "
        f"Miter angles: {said}."
    )
    angles = [angle_text(side.left) for side in sides[:2]]
    return rectangle_drawing(words, inside, widths, texts, angles)


RECKONER = Reckoner(
    key="frame_around",
    title="Mitered frame",
    asks="What pieces do I cut to frame a mirror, panel, picture or opening?",
    words=(
        "picture frame, mirror frame, mirror, window casing, door casing, door frame, window "
        "trim, casing, trim, opening, panel, glass, rabbet, reveal, miter, clearance"
    ),
    order=220,
    job="miters and frames",
    picture={
        "wood": "M4 6h32v28H4zM12 14v12h16V14z",
        "ink": "M12 26l5-6 4 4 3-3 4 5",
        "chalk": "M12 14h16v12H12z",
    },
    fields=(
        MEASURED,
        length("width", "Width", help="Of what you measured, left to right.", least="1/8 in"),
        length("height", "Height", help="Of what you measured, bottom to top.", least="1/8 in"),
        length("stock", "Stock width", help="Across the face of the sides.", **WIDTH),
        *OFFSETS,
        length("top_stock", "Top width", **blank("Same as Stock width."), **WIDTH),
        length("bottom_stock", "Bottom width", **blank("Same as Top width."), **WIDTH),
        *STOCK,
    ),
    answers=(*FIRST_ANSWERS, Answer("settings", "Miter angles", "text"), *LAST_ANSWERS),
    source=(
        "Inside = panel + 2 × clearance − 2 × rabbet, or opening + 2 × reveal; outside = inside + "
        "the widths: arithmetic. Miters of unequal widths: plane trigonometry. A clearance of "
        "1/16″ and a reveal of 3/16″ are shop practice."
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
