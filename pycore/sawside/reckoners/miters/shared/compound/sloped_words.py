"""What is said and drawn of a sloping box: its working, and the picture of a side."""

from sawside.drawing.miters.compound import box_drawing, face_view
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.miters.shared.compound.saw import OTHER


def working_of(given, show, box, width):
    """The lines of working; `width` is that of a blank as it is told."""
    slope, high = f"{degrees_text(box.lean.degrees)}°", show.number(given.height)
    if given.found == "reach":
        yield f"Slope: arctan ({show.number(box.out)} ÷ {high}){angle_equals(box.lean.degrees)}"
    yield from _settings_worked(given, show, box, slope)
    yield f"Face: {high} ÷ cos {slope}{show.equals(box.slant)}"
    if given.found == "slope":
        yield f"Reach of a side: {high} × tan {slope}{show.equals(box.out)}"
    yield from _sides_worked(given, show, box, slope)
    yield (
        f"Width of the blank: {show.number(box.slant)} + {show.number(given.thickness)} × tan "
        f"{slope}{show.equals(width)}, so you can bevel both edges level"
    )


def _settings_worked(given, show, box, slope):
    sine, cosine = show.pure(box.lean.sine), show.pure(box.lean.cosine)
    turn, cut = degrees_text(box.turn), box.cuts[0]
    miter, tilt = angle_equals(cut.miter), angle_equals(cut.tilt)
    yield f"Miter: arctan (sin {slope} × tan {turn}°) = arctan ({sine} × tan {turn}°){miter}"
    if given.joint == "butt":
        yield f"Bevel, butt joint: arcsin ((sin {slope})²) = arcsin ({sine}²){tilt}"
    else:
        yield f"Bevel: arcsin (cos {slope} × sin {turn}°) = arcsin ({cosine} × sin {turn}°){tilt}"


def _sides_worked(given, show, box, slope):
    adds, turn = show.number(box.adds), degrees_text(box.turn)
    yield f"Each end of the wide edge: {show.number(box.out)} × tan {turn}°{show.equals(box.adds)}"
    if given.joint == "butt":
        yield (
            f"A side between loses, at each end, {show.number(given.thickness)} ÷ cos {slope}"
            f"{show.equals(box.butted)}"
        )
    for side in box.sides:
        narrow, wide = sorted((side.top, side.bottom), key=nearby)
        yield (
            f"{side.name}: {show.number(narrow)} + 2 × {adds} = {show.number(wide)}; "
            f"top {show.text(side.top)}, bottom {show.text(side.bottom)}"
        )


def picture_of_box(given, show, box):
    """The section of a side, and the face of the first one."""
    lean, wide_top = box.lean.degrees, given.wide == "top"
    slope, face = f"slope {angle_text(lean)}", f"face {show.brief(box.slant)}"
    texts = (slope, show.brief(given.height), face, wide_top)
    side = box.sides[0]
    words = _described(given, show, box, side)
    return box_drawing(words, float(nearby(lean)), texts, _face(given, show, box, side))


def picture_of_side(given, show, box, side):
    """The face of one kind of side."""
    return face_view(_described(given, show, box, side), _face(given, show, box, side))


def _face(given, show, box, side):
    roles = {given.size_at: "given", OTHER[given.size_at]: "answer"}
    texts = [
        (f"{edge} {show.brief(getattr(side, edge))}", roles[edge]) for edge in ("top", "bottom")
    ]
    ratio = float(nearby(box.adds / box.slant)) * (1 if given.wide == "top" else -1)
    ends = [(ratio, cut.brief) for cut in box.cuts]
    return side.name.lower(), texts, ends, f"{show.brief(box.slant)} wide"


def _described(given, show, box, side):
    return (
        f"A side leans {angle_text(box.lean.degrees)} from upright, and the box is wider "
        f"at the {given.wide}. Outside face of {side.name.lower()}: {show.brief(side.top)} long "
        f"at the top, {show.brief(side.bottom)} at the bottom, {show.brief(box.slant)} wide; "
        f"both ends {box.cuts[0].brief}."
    )
