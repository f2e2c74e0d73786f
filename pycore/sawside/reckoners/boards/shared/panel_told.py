"""A glued-up panel in words: its verdict, clamps, lay-up, and how it adds up."""

from sawside.drawing.lazy import lazy
from sawside.lengths.words import counted, listed
from sawside.reckoners.shared.numbered import numbered

_LAY_UP = {
    "match": "Lay the best faces up, the grain running one way, and mark a triangle across them.",
    "alternate": "Turn every other strip over, so the rings curve up and down in turn, and mark a "
    "triangle across them.",
}


def lay_up(given):
    """How the strips go beside each other, a sentence."""
    return _LAY_UP[given.grain]


def verdict(given, show, strips):
    """What to rip, or which boards to glue."""
    if strips.places is not None:
        names = listed([str(place + 1) for place in strips.places])
        if strips.number == 1:
            return f"Board {names} is wide enough by itself"
        return f"Glue up boards {names}"
    number = strips.number * given.panels
    if strips.number == 1:
        return f"One board will do, ripped to {show.bare(strips.rip)}"
    return f"{counted(number, 'strip')}, ripped to {show.bare(strips.rip)}"


def clamps_text(show, clamping):
    """How many clamps, how far apart, how many under and over, against what, and the cauls."""
    under = -(-clamping.clamps // 2)
    batten = ""
    if clamping.batten:
        wide = show.brief(clamping.batten, "reach")
        batten = f", against a stiff batten at least {wide} wide along each edge"
    return (
        f"{clamping.clamps} clamps {show.brief(clamping.apart, 'stay under')} on center, {under} "
        f"under and {clamping.clamps - under} over{batten}; {clamping.cauls} pairs of cauls across"
    )


@lazy
def working(given, show, strips, clamping):
    """Widths, then lengths and thickness, then clamps."""
    joint, number = show.number(given.joint), show.number
    lines = [
        f"{name} jointed: {number(board)} − 2 × {joint} = {number(usable)}"
        for (name, board), usable in zip(
            numbered("Board", given.boards), strips.usable, strict=True
        )
    ]
    width, extra = number(given.width), number(given.extra_width)
    lines.append(f"Width to glue: {width} + {extra} = {number(strips.needed)}")
    lines += (_alike if strips.places is None else _own)(show, strips, joint)
    for name, size, more in (
        ("length", given.length, given.extra_length),
        ("thickness", given.thickness, given.extra_thickness),
    ):
        rounded = show.rounded(size + more, "reach")
        lines.append(f"Strip {name}: {number(size)} + {number(more)}{show.equals(rounded)}")
    if clamping:
        lines += _clamps(show, clamping)
    return tuple(lines)


def _alike(show, strips, joint):
    needed, usable = show.number(strips.needed), show.number(strips.usable[0])
    ratio = show.pure(strips.needed / strips.usable[0], decimals=True)
    yield f"{needed} ÷ {usable} = {ratio} → {counted(strips.number, 'strip')}"
    strip = show.number(strips.strip)
    if strips.strip < strips.usable[0]:
        yield f"Ripped: {needed} ÷ {strips.number} + 2 × {joint}{show.equals(strips.rip)}"
        yield f"Each strip, jointed: {show.number(strips.rip.mark)} − 2 × {joint} = {strip}"
    if strips.number > 1:
        yield f"Glued up: {strips.number} × {strip} = {show.number(strips.glued)}"


def _own(show, strips, _joint):
    widths = " + ".join(show.number(strips.usable[place]) for place in strips.places)
    if strips.number > 1:
        yield f"Glued up: {widths} = {show.number(strips.glued)}"


def _clamps(show, clamping):
    span, most = show.number(clamping.span), show.number(clamping.most)
    spaces = clamping.clamps - 1
    ratio = show.pure(clamping.span / clamping.most, decimals=True)
    yield (
        f"Clamps, {show.number(clamping.end)} from the ends: {span} ÷ {most} = {ratio} → {spaces}"
    )
    if clamping.batten:
        wide = show.rounded(clamping.batten, "reach")
        yield f"Apart: {span} ÷ {spaces} = {show.number(clamping.apart)}"
        yield (
            f"Batten: {show.number(clamping.apart)} ÷ 2 − {show.number(clamping.outer)}"
            f"{show.equals(wide)}"
        )
