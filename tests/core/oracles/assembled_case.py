"""A case put together from its parts and the joints cut in them, as boxes in exact inches.

It knows what a carpenter knows who was given the list: which part goes where, that it bottoms out
in its joint but for the back, which stands in the middle of its room, and what was asked for. It
shares no formula with the question. Space is divided at every face into cells; each cell must hold
as many parts as it should: one in wood, none in a bay.

x goes from the left outside, y from the finished front to the back, z up from the floor.
"""

from itertools import pairwise

from sawside.reckoners.case.shared.carcass.panels import panels_of
from sawside.reckoners.case.shared.carcass.sizes import sizes_of
from sawside.reckoners.case.shared.carcass.strips import strips_of
from tests.core.asking import given_of
from tests.core.oracles.cells import Assembly


def panels_cut(values):
    """The panels and strips of a form by their keys, with their joints, before anything is
    rounded."""
    sizes = sizes_of(*given_of("carcass", values))
    panels = panels_of(sizes)
    return {panel.key: panel for panel in (*panels, *strips_of(panels, sizes))}


class Asked:
    """What was asked for, in exact inches, with the outside of the case. See `random_case`."""

    def __init__(self, **asked):
        self.__dict__.update(asked)

    @property
    def foot(self):
        """Where the sides stand."""
        return self.kick_height if self.kick == "base" else 0

    @property
    def front(self):
        """Where the panels of the case begin: behind strips that are part of its depth."""
        return 0 if self.proud else self.case_band

    @property
    def low(self):
        """The underside of the bottom."""
        return 0 if self.kick == "none" else self.kick_height


def cut_for(panel, purpose):
    """The joint in a panel for something; None without."""
    return next((cut for cut in panel.cuts if cut.purpose == purpose), None)


def deep_for(panel, purpose):
    """How deep it is, 0 without."""
    cut = cut_for(panel, purpose)
    return cut.deep if cut else 0


def assembled(asked, panels):
    """(the `Assembly`, the clear bays as (left, right), floor, ceiling): as the joints say."""
    made, side = Assembly(), panels["side"]
    t, front = asked.thickness, asked.front
    joint = cut_for(side, "the bottom")
    low = asked.foot + joint.along[0] if joint else asked.low
    floor = low + t
    joint = cut_for(side, "the top")
    if asked.top == "over":
        ceiling = asked.foot + side.length - deep_for(panels["top"], "the left side")
    else:
        ceiling = asked.foot + joint.along[0] if joint else asked.height - t
    bottom_left = t - deep_for(side, "the bottom")
    top_left = 0 if asked.top == "over" else t - deep_for(side, "the top")
    bays = _bays(asked, panels, bottom_left)
    _sides(made, asked, side)
    for name, left, face, into in (
        ("bottom", bottom_left, floor, -1),
        ("top", top_left, ceiling, 1),
    ):
        panel = panels[name]
        box = (left, left + panel.length, front, front + panel.width, *_span(face, into * t))
        cuts = [
            (
                left + cut.along[0],
                left + cut.along[1],
                front + cut.across[0],
                front + cut.across[1],
                *_span(face, into * cut.deep),
            )
            for cut in panel.cuts
        ]
        made.add(name, box, cuts)
    _dividers(made, asked, panels, bays, floor)
    _shelves(made, asked, panels, bays, floor)
    _back(made, asked, panels, low)
    _kick(made, asked, panels)
    _strips(made, asked, panels, bays, (low, floor, ceiling))
    return made, bays, floor, ceiling


def _span(face, by):
    return (face, face + by) if by > 0 else (face + by, face)


def _bays(asked, panels, bottom_left):
    """Between the sides and the dadoes in the bottom; butted dividers stand as the bays say."""
    dadoes = [cut for cut in panels["bottom"].cuts if "divider" in cut.purpose]
    left, bays, t = asked.thickness, [], asked.thickness
    for number in range(asked.dividers):
        if dadoes:
            along = dadoes[number].along
            face, after = bottom_left + along[0], bottom_left + along[1]
        else:
            face = left + asked.bays[number]
            after = face + t
        bays.append((left, face))
        left = after
    return [*bays, (left, asked.width - t)]


def _dadoes(asked, panel, foot, span):
    """Those for fixed shelves in a panel whose bottom end is at `foot`, over `span` along x."""
    for cut in panel.cuts:
        if cut.purpose == "a fixed shelf":
            across = (asked.front + cut.across[0], asked.front + cut.across[1])
            yield (*span(cut.deep), *across, foot + cut.along[0], foot + cut.along[1])


def _sides(made, asked, side):
    t, foot, front = asked.thickness, asked.foot, asked.front
    for name, face, into in (("left side", t, -1), ("right side", asked.width - t, 1)):

        def span(deep, face=face, into=into):
            return _span(face, into * deep)

        cuts = [
            (
                *span(cut.deep),
                front + cut.across[0],
                front + cut.across[1],
                foot + cut.along[0],
                foot + cut.along[1],
            )
            for cut in side.cuts
            if cut.purpose != "a fixed shelf"
        ]
        cuts += _dadoes(asked, side, foot, span)
        made.add(name, (*span(t), front, front + side.width, foot, foot + side.length), cuts)


def _dividers(made, asked, panels, bays, floor):
    t, front = asked.thickness, asked.front
    for number in range(asked.dividers):
        panel, left = panels["divider"], bays[number][1]
        purpose = "the divider" if asked.dividers == 1 else f"divider {number + 1}"
        low = floor - deep_for(panels["bottom"], purpose)
        cuts = [
            *_dadoes(asked, panel, low, lambda deep, x=left: (x, x + deep)),
            *_dadoes(asked, panel, low, lambda deep, x=left + t: (x - deep, x)),
        ]
        box = (left, left + t, front, front + panel.width, low, low + panel.length)
        made.add(f"divider {number + 1}", box, cuts)


def shelf_of_bay(panels, kind, bay):
    """The shelf of a bay: its own list may say of which bays it is."""
    for key, panel in panels.items():
        named = panel.name.partition("bay")[2].lstrip("s ").split(", ")
        if key.startswith(kind) and (named == [""] or str(bay + 1) in named):
            return panel
    return None


def _shelves(made, asked, panels, bays, floor):
    strip = asked.setback - asked.shelf_band if asked.proud else asked.setback
    front = max(strip + asked.shelf_band, asked.front)
    for bay, (left, _) in enumerate(bays):
        for kind, lows in (
            ("fixed", asked.shelves[bay][: asked.fixed]),
            ("adjustable", asked.shelves[bay][asked.fixed :]),
        ):
            panel = shelf_of_bay(panels, kind, bay)
            owner = panels["side"] if bay == 0 else panels.get("divider")
            for low in lows:
                into = -asked.gap if kind == "adjustable" else deep_for(owner, "a fixed shelf")
                start = left - into
                z = (floor + low, floor + low + panel.thickness)
                made.add(
                    f"{kind} shelf in bay {bay + 1}",
                    (start, start + panel.length, front, front + panel.width, *z),
                )
                if asked.shelf_band:
                    own = panels[f"strip_{panel.key}"]
                    spare = (panel.length - own.length) / 2
                    x = (start + spare, start + panel.length - spare)
                    y = (strip, strip + own.thickness)
                    z = (floor + low, floor + low + own.width)
                    made.add(f"strip of a {kind} shelf in bay {bay + 1}", (*x, *y, *z))


def _back(made, asked, panels, low):
    if asked.back == "none":
        return
    panel, side = panels["back"], panels["side"]
    t, deep = asked.thickness, deep_for(side, "the back")
    cut = cut_for(side, "the back")
    front = asked.front + (cut.across[0] if cut else side.width)
    free = asked.room / 2
    left = 0 if asked.back == "on" else t - deep + free
    foot = (low + t - deep if asked.back == "groove" else low) + free
    made.add(
        "back",
        (left, left + panel.width, front, front + panel.thickness, foot, foot + panel.length),
    )


def _kick(made, asked, panels):
    t, front = asked.thickness, asked.front
    if asked.kick == "notched":
        notch, board = cut_for(panels["side"], "the toe kick"), panels["kick"]
        y = front + notch.across[1]
        made.add("toe kick", (t, t + board.length, y, y + t, 0, board.width))
    if asked.kick == "base":
        rail, piece, left = panels["base_rail"], panels["base_crosspiece"], asked.end_recess
        for name, y in (("front", asked.recess), ("back", asked.recess + t + piece.length)):
            made.add(f"{name} rail", (left, left + rail.length, y, y + t, 0, rail.width))
        places = [left, left + rail.length - t, left + (rail.length - t) / 2]
        for x in places[: piece.count]:
            y = asked.recess + t
            made.add("crosspiece", (x, x + t, y, y + piece.length, 0, piece.width))


def _strips(made, asked, panels, bays, levels):
    """Solid edging in front of the case, as long as the list says."""
    low, floor, ceiling = levels
    if not asked.case_band:
        return
    wide, own = asked.width, panels["strip_side"]
    y = (asked.front - own.thickness, asked.front)
    for x in ((0, own.width), (wide - own.width, wide)):
        made.add("strip of a side", (*x, *y, low, low + own.length))
    for name, z in (("bottom", low), ("top", ceiling)):
        own = panels[f"strip_{name}"]
        left = (wide - own.length) / 2
        made.add(f"strip of the {name}", (left, wide - left, *y, z, z + own.width))
    for before, _ in pairwise(bays):
        own = panels["strip_divider"]
        x = (before[1], before[1] + own.width)
        made.add("strip of a divider", (*x, *y, floor, floor + own.length))
