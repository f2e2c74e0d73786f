"""What is said of a panel in its list: grain, edging, and each joint, from which end."""

from itertools import groupby

from sawside.lengths.words import listed
from sawside.reckoners.case.shared.carcass.as_measured import measured_text
from sawside.reckoners.case.shared.carcass.places import places
from sawside.reckoners.case.shared.carcass.strips import band_of

_FACES = {
    "inside": "in the inside face",
    "upper": "in the upper face",
    "lower": "in the lower face",
    "both": "in both faces",
}


_TURNED = (
    "Left is as it goes in the case: lower face up, front edge toward you, the left end is on your "
    "right."
)


def about_panel(panel, sizes, show):
    """The sentences, in the order in which one needs them."""
    grain = "Grain runs up, along the length." if panel.upright else "Grain runs along the length."
    return (
        grain,
        *_edging(panel, sizes, show),
        *((_TURNED,) if panel.turned else ()),
        *(_cut(panel, cuts, show) for cuts in _alike(panel.cuts)),
        *places(panel, sizes, show),
        *_pin_holes(panel, sizes),
        *panel.notes,
    )


def _edging(panel, sizes, show):
    thick = band_of(panel, sizes)
    if panel.bands and thick:
        taken = "in front of the width" if sizes.proud else "already taken off the width"
        without = _measured_without_it(panel)
        yield f"Edging {measured_text(thick, show)} thick on the front edge, {taken}.{without}"
    elif panel.bands:
        yield "Edging on the front edge."


def _measured_without_it(panel):
    """What is cut so far from the front edge of the panel itself."""
    found = {
        "notch": any(cut.kind == "notch" for cut in panel.cuts),
        "stops": any(cut.across[0] for cut in panel.cuts if cut.purpose != "the back"),
    }
    what = " and ".join(name for name, is_there in found.items() if is_there)
    return f" Measure the {what} from the panel, without it." if what else ""


def _pin_holes(panel, sizes):
    if sizes.adjustable and panel.key in ("side", "divider"):
        where = _FACES["inside" if panel.key == "side" else "both"]
        yield f"Holes for shelf pins {where}: lay them out in Shelf pin holes."


def _alike(cuts):
    """The cuts, those for shelves as one list: they are the same but for their places."""
    for purpose, several in groupby(cuts, key=lambda cut: cut.purpose):
        if purpose == "a fixed shelf":
            yield list(several)
        else:
            yield from ([cut] for cut in several)


def _cut(panel, cuts, show):
    cut = cuts[0]
    if cut.kind == "notch":
        high, deep = (show.brief(upper) for _, upper in (cut.along, cut.across))
        return f"Notch {high} high, {deep} deep in the bottom front corner, for {cut.purpose}."
    low, high = cut.across if cut.purpose == "the back" else cut.along
    wide = high - low
    size = f"{measured_text(wide, show)} wide, {measured_text(cut.deep, show)} deep"
    face = _FACES[cut.face]
    if len(cuts) > 1:
        where = _at_heights(cuts, show)
        return f"{cut.kind.capitalize()}es {size} {face}, {where}, for the fixed shelves."
    where = _where(panel, cut, show)
    return f"{cut.kind.capitalize()} {size} {face}, {where}, for {cut.purpose}."


def _where(panel, cut, show):
    if cut.purpose == "the back":
        return _along_the_back(panel, cut, show)
    first, last, edge = ("bottom", "top", "bottom") if panel.upright else ("left", "right", "left")
    if cut.along[0] == 0:
        where = f"across the {first} end"
    elif cut.along[1] == panel.length:
        where = f"across the {last} end"
    else:
        where = f"{edge} edge {measured_text(cut.along[0], show)} from the {first} end"
    return _stopped(where, cut, show)


def _at_heights(cuts, show):
    """Where the dadoes of several shelves are, from the bottom end."""
    places = listed([measured_text(cut.along[0], show) for cut in cuts])
    return _stopped(f"bottom edges {places} from the bottom end", cuts[0], show)


def _stopped(where, cut, show):
    stop = cut.across[0]
    return f"{where}, stopped {show.brief(stop)} from the front edge" if stop else where


def _along_the_back(panel, cut, show):
    behind = panel.width - cut.across[1]
    where = f"{show.brief(behind)} from the back edge" if behind else "along the back edge"
    low, high = cut.along[0], panel.length - cut.along[1]
    if low:
        return f"{where}, stopped {show.brief(low)} from both ends"
    return f"{where}, stopped {show.brief(high)} from the top end" if high else where
