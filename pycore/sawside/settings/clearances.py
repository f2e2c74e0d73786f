"""The room that is left free in a fit, as a shop usually leaves it; each is a setting.

A row here is a setting of the project, drawn and read with the others; a question takes it where
its field names the key (`clearance` in `reckoners.declaration`). The defaults are common practice,
no source. The limits are close enough to refuse most inches that were meant as millimeters.
"""

from sawside.settings.set_length import SetLength

CLEARANCES = {
    each.key: each
    for each in (
        SetLength(
            "clearance_in_dado",
            "Shelf end in a dado",
            "At each end, for glue.",
            "1/32",
            "0 in",
            "1/4 in",
            "1 mm",
        ),
        SetLength(
            "clearance_on_pins",
            "Shelf on pins",
            "At each end, so you can tilt it out.",
            "1/16",
            "0 in",
            "1/2 in",
            "1.5 mm",
        ),
        SetLength(
            "clearance_in_groove",
            "Panel in a groove",
            "Gap left at each edge when the panel is at its wettest.",
            "1/32",
            "0 in",
            "1/2 in",
            "1 mm",
        ),
        SetLength(
            "clearance_in_frame",
            "Item in a frame",
            "On each side of a mirror, panel or picture in its rabbet.",
            "1/16",
            "0 in",
            "3/4 in",
            "1.5 mm",
        ),
        SetLength(
            "clearance_above",
            "Above items on a shelf",
            "From the tallest item to the shelf above it.",
            "1/2",
            "0 in",
            "12 in",
            "12 mm",
        ),
        SetLength(
            "clearance_slide",
            "Drawer slide",
            "On each side of the box, as the slide’s maker says.",
            "1/2",
            "0 in",
            "2 in",
            "13 mm",
        ),
        SetLength(
            "clearance_at_door",
            "Inset door",
            "Between a door or drawer front and the opening, on each side.",
            "3/32",
            "0 in",
            "1/2 in",
            "2 mm",
        ),
        SetLength(
            "clearance_between_doors",
            "Between doors",
            "Where two doors or drawer fronts meet.",
            "1/8",
            "0 in",
            "1/2 in",
            "3 mm",
        ),
    )
}
