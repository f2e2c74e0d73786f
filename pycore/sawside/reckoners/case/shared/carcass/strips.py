"""The solid strips on the front edges of a case, as parts to cut. Veneer tape is none: it is only
a length to buy."""

from sawside.reckoners.case.shared.carcass.panel import Panel

_RIP = "Rip it a little wider than the panel is thick, then trim it flush (shop practice)."


def strips_of(panels, sizes):
    """A `Panel` for the strips of each panel that has solid edging, in their order."""
    for panel in panels:
        thick = band_of(panel, sizes)
        if panel.bands and thick:
            yield Panel(
                key=f"strip_{panel.key}",
                name=f"Edging, {panel.name[0].lower()}{panel.name[1:]}",
                length=panel.bands,
                width=panel.thickness,
                thickness=thick,
                count=panel.count,
                upright=panel.upright,
                must=panel.must or _must(panel, sizes),
                notes=(*_fitted(panel, sizes), _RIP),
            )


def band_of(panel, sizes):
    """How thick the edging of a panel is, None or 0 without a solid one."""
    return sizes.shelf_band if panel.is_shelf else sizes.case_band


def _must(panel, sizes):
    """A strip that is fitted between sides has to go in, others agree with their panels."""
    return "go in" if panel.bands == sizes.inside_width else None


def _fitted(panel, sizes):
    """Where a strip goes that is shorter than its panel: joints go in, strips don't."""
    if panel.bands == panel.length:
        return
    if panel.key == "side":
        end = "top end of the side" if sizes.top == "between" else "underside of the top"
        yield f"From the {end} down."
        return
    where = "between the sides"
    if panel.key == "divider":
        where = "between bottom and top"
    elif sizes.dividers and panel.key.startswith("fixed"):
        where = "into its bay"
    yield f"Fit it {where} once the case is together."
