"""The stiles and rails of a face frame, over a case or by itself, and the openings in it."""

from sawside.drawing.case.face_frame import face_frame_drawing
from sawside.reckoners.case.shared.frame.cautions import cautions
from sawside.reckoners.case.shared.frame.cut_list import (
    kinds_of,
    lengths_cut,
    parts_of,
    shoulders,
    stock_by_width,
)
from sawside.reckoners.case.shared.frame.fields import FIELDS
from sawside.reckoners.case.shared.frame.joints import added_by
from sawside.reckoners.case.shared.frame.layout import jointed, layout_of
from sawside.reckoners.case.shared.frame.placed import placed_frame
from sawside.reckoners.case.shared.frame.working import working
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.shared.numbered import numbered


def compute(given, show):
    """Every stile and rail with its length, the openings, and what the frame covers of the case."""
    layout = layout_of(given, show)
    layout = jointed(layout, added_by(given, show, layout))
    kinds, outline = kinds_of(layout), layout.outline
    stock, fitting = stock_by_width(kinds), show.by("go in")
    tenoned = shoulders(kinds)
    return Reckoning(
        answers={
            "rails": lengths_cut(kinds, upright=False),
            "stiles": lengths_cut(kinds, upright=True),
            **({"shoulders": tenoned} if tenoned else {}),
            "opening_widths": _numbered("Column", "left", layout.widths),
            "opening_heights": _heights(layout),
            "frame_width": outline.width,
            "frame_height": outline.height,
            **_on_the_case(outline),
            "stock": [(f"{fitting.text(width)} wide", long) for width, long in stock.items()],
            "total": sum(stock.values()),
        },
        working=tuple(working(given, show, layout, kinds)),
        drawing=face_frame_drawing(
            show,
            given,
            layout,
            _words(show, layout),
            {each: kind.key for kind in kinds for each in kind.all},
        ),
        cautions=tuple(cautions(given, show, layout, kinds)),
        parts=parts_of(given, show, layout, kinds),
        place=_place(given, layout, kinds),
        verdict=f"Rails ({_openings_text(show.bare, layout)})",
    )


def _place(given, layout, kinds):
    """Where it stands in front of its case; None where no case was told of."""
    if given.size_of == "frame":
        return None
    return lambda _shelving: placed_frame(given, layout, kinds)


def _numbered(name, start, sizes):
    if len(sizes) == 1:
        return [("Every opening", sizes[0])]
    return [(f"{each} from the {start}", size) for each, size in numbered(name, sizes)]


def _heights(layout):
    """The openings by row, or where the columns differ by column, each from the top."""
    if layout.alike:
        return _numbered("Row", "top", layout.heights[0])
    return [
        (f"Column {column}" + (f", opening {number}" if len(heights) > 1 else ""), height)
        for column, heights in enumerate(layout.heights, 1)
        for number, height in enumerate(heights, 1)
    ]


def _on_the_case(outline):
    """The answers about what the frame covers of a case, or leaves showing."""
    if outline.insides is None:
        return {}
    sides = list(zip(("Left", "Right"), outline.insides, strict=True))
    answers = {
        "covers": [(name, inside) for name, inside in sides if inside >= 0],
        "shows": [(name, -inside) for name, inside in sides if inside < 0],
    }
    answers = {key: values for key, values in answers.items() if values}
    return answers | {"lip" if outline.lip >= 0 else "below": abs(outline.lip)}


def _openings_text(told, layout):
    """The openings in a few words, each length by `told`."""
    heights = [height for column in layout.heights for height in column]
    count, wide, high = len(heights), set(layout.widths), set(heights)
    if len(wide) > 1 or len(high) > 1:
        return f"{count} openings"
    size = f"{told(wide.pop(), 'go in')} × {told(high.pop(), 'go in')}"
    return f"opening {size}" if count == 1 else f"{count} openings, {size}"


def _words(show, layout):
    outline = layout.outline
    wide, *stacks = (
        ", ".join(show.brief(each, "go in") for each in sizes)
        for sizes in (layout.widths, *layout.heights)
    )
    high = f"from the top: {stacks[0]} high."
    if not layout.alike:
        columns = (f"{stack} in column {column}" for column, stack in enumerate(stacks, 1))
        high = f"from the top, high: {'; '.join(columns)}."
    return (
        f"A face frame {show.brief(outline.width)} wide and {show.brief(outline.height)} high. "
        f"Openings from the left: {wide} wide; {high}"
    )


RECKONER = Reckoner(
    key="face_frame",
    title="Face frame",
    asks="What stiles and rails do I cut for this face frame, and what openings come out?",
    words=(
        "face frame, faceframe, stile, stiles, rail, rails, stiles and rails, cabinet front, front "
        "frame, frame on a case, middle stile, mullion, middle rail, columns of "
        "openings, overhang, reveal, scribe, pocket screws, pocket holes, stub tenon, through "
        "tenon, shoulder to shoulder, mortise and tenon, built-in, toe kick"
    ),
    order=640,
    job="cases",
    picture={
        "wood": "M5 4h5v32H5zM30 4h5v32h-5zM10 4h20v5H10zM10 31h20v5H10zM10 15h20v4H10z",
        "ink": "M10 4v32M30 4v32",
        "chalk": "M20 19v12M10 25h20",
    },
    basic=("size_of", "width", "height", "kick", "middle_stiles", "middle_rails"),
    makes_parts=True,
    fields=FIELDS,
    answers=(
        Answer("rails", "Rails", "lengths", must="go in"),
        Answer("stiles", "Stiles", "lengths", must="go in"),
        Answer("shoulders", "Shoulder to shoulder", "lengths", must="go in"),
        Answer("opening_widths", "Opening width", "lengths", must="go in"),
        Answer("opening_heights", "Opening height", "lengths", must="go in"),
        Answer("frame_width", "Frame width", must="agree"),
        Answer("frame_height", "Frame height", must="agree"),
        Answer("covers", "Stile past the side’s inside", "lengths", must="agree"),
        Answer("shows", "Side’s edge showing", "lengths", must="agree"),
        Answer("lip", "Bottom rail above the case bottom", must="agree"),
        Answer("below", "Case bottom’s edge showing", must="agree"),
        Answer("stock", "Stock by width, before kerfs and waste", "lengths", must="reach"),
        Answer("total", "Total stock, before kerfs and waste", must="reach"),
    ),
    source=(
        "Arithmetic: a frame is its stiles and openings across, its rails and openings down; a "
        "tenon adds its length at each end. Equal openings that would be off your marks go to the "
        "marks beside, so rails fill the frame. Stiles through from top to bottom, rails between "
        "them, 1 1/2″ members, 1/8″ left past a stub tenon and pocket screws or dowels without "
        "any added length are shop practice."
    ),
    compute=compute,
    example={
        "size_of": "case",
        "width": "36",
        "height": "34 1/2",
        "kick": "3 1/2",
        "middle_stiles": "1",
        "widths": ["14 1/2 in"],
        "middle_rails": "1",
        "heights": ["5 1/2 in"],
        "side": "23/32",
        "left_past": "1/4",
        "reveal": "1/4",
        "tenon": "3/8",
        "lip": "1/4",
    },
)
