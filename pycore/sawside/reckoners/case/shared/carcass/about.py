"""What is said of a panel in its list: grain, edging, and each joint, from which end."""

from sawside.reckoners.case.shared.carcass.as_measured import measured_text
from sawside.reckoners.case.shared.carcass.places import places

_FACES = {
    "inside": "in the inside face",
    "upper": "in the upper face",
    "lower": "in the lower face",
    "both": "in both faces",
}


def about_panel(panel, sizes, show):
    """The sentences, in the order in which one needs them."""
    grain = "Grain runs up, along the length." if panel.upright else "Grain runs along the length."
    return (
        grain,
        *_edging(panel, sizes, show),
        *(_cut(panel, cut, show) for cut in panel.cuts),
        *places(panel, sizes, show),
        *_pin_holes(panel, sizes),
        *panel.notes,
    )


def _edging(panel, sizes, show):
    if panel.bands:
        shelf = panel.key.startswith(("fixed", "adjustable"))
        thick = sizes.shelf_band if shelf else sizes.case_band
        solid = f", {measured_text(thick, show)} thick, not part of the width" if thick else ""
        yield f"Edging on the front edge{solid}."
        if thick and panel.bands != panel.length:
            yield _strip(panel, sizes, show)


def _strip(panel, sizes, show):
    """How long a solid strip is that is shorter than its panel: joints go in, strips don't."""
    long = f"{show.brief(panel.bands, 'go in')} long"
    if panel.key == "side":
        end = "top end" if sizes.top == "between" else "underside of the top"
        return f"Its strip is {long}, from the {end} down."
    where = "between the sides"
    if panel.key == "divider":
        where = "between bottom and top"
    elif sizes.dividers and panel.key.startswith("fixed"):
        where = "into its bay"
    return f"Fit its strip {where} once the case is together: {long}."


def _pin_holes(panel, sizes):
    if sizes.adjustable and panel.key in ("side", "divider"):
        where = _FACES["inside" if panel.key == "side" else "both"]
        yield f"Holes for shelf pins {where}: lay them out in Shelf pin holes."


def _cut(panel, cut, show):
    if cut.kind == "notch":
        high, deep = (show.brief(upper) for _, upper in (cut.along, cut.across))
        return f"Notch {high} high, {deep} deep in the bottom front corner, for {cut.purpose}."
    wide = cut.across[1] - cut.across[0] if cut.purpose == "the back" else _wide(cut)
    size = f"{measured_text(wide, show)} wide, {measured_text(cut.deep, show)} deep"
    face, where = _FACES[cut.face], _where(panel, cut, show)
    return f"{cut.kind.capitalize()} {size} {face}, {where}, for {cut.purpose}."


def _wide(cut):
    return cut.wide if cut.along is None else cut.along[1] - cut.along[0]


def _where(panel, cut, show):
    if cut.purpose == "the back":
        return _along_the_back(panel, cut, show)
    first, last, edge = ("bottom", "top", "bottom") if panel.upright else ("left", "right", "left")
    if cut.along is None:
        heights = "height" if cut.count == 1 else f"{cut.count} heights"
        where = f"at the {heights} you lay out in Shelf spacing"
    elif cut.along[0] == 0:
        where = f"across the {first} end"
    elif cut.along[1] == panel.length:
        where = f"across the {last} end"
    else:
        where = f"{edge} edge {measured_text(cut.along[0], show)} from the {first} end"
    stop = cut.across[0]
    return f"{where}, stopped {show.brief(stop)} from the front edge" if stop else where


def _along_the_back(panel, cut, show):
    behind = panel.width - cut.across[1]
    where = f"{show.brief(behind)} from the back edge" if behind else "along the back edge"
    low, high = cut.along[0], panel.length - cut.along[1]
    if low:
        return f"{where}, stopped {show.brief(low)} from both ends"
    return f"{where}, stopped {show.brief(high)} from the top end" if high else where
