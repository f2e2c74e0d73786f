"""Labels for the pieces of a project, on a sheet of stickers whose grid the person sets."""

from fractions import Fraction
from types import SimpleNamespace

from sawside.drawing.paper.sheets import find_paper
from sawside.drawing.paper.stickers import (
    LEAST_HEIGHT,
    LEAST_WIDTH,
    Grid,
    letters_across,
    millimeters,
    sticker_sheets,
)
from sawside.errors import Refusal, Refusals
from sawside.lengths.show import Show
from sawside.lengths.units import INCHES_PER
from sawside.project.kinds.checks import unit_checked
from sawside.project.schema.document import settings_of, unit_of
from sawside.project.schema.label_grid import FIELDS
from sawside.project.view import view
from sawside.reckoning.values import read_values

MOST_LABELS = 2000


_FORM = SimpleNamespace(fields=FIELDS, solve_one_of=())


def labels(document, paper, values=None, unit=None):
    """The label sheets of a checked document (without "ok"): one label for each piece.

    `values` are those of `FIELDS` as typed, `unit` is what a bare number in them means (None: what
    it means in the project); without values the grid is the project's own. Raises `Refusals` for
    bad fields, "impossible" where the stickers come out too small, "missing" where the project has
    no pieces.
    """
    paper = find_paper(paper)
    if values is None:
        kept = document.get("labels", {"values": {}, "unit": None})
        values, unit = kept["values"], kept["unit"]
    settings = settings_of(document, unit_checked(unit or unit_of(document), "unit"))
    given = read_values(_FORM, values, settings).given
    grid = Grid(
        paper,
        given.columns,
        given.rows,
        **{
            key: millimeters(getattr(given, key))
            for key in ("top", "bottom", "left", "right", "across_gap", "up_gap")
        },
    )
    across, down = _told_size(paper, given, Show(settings))
    _check(grid, given, across, down)
    stickers = list(_stickers(document["name"], view(document, drawings=False)["pieces"]))
    _check_lengths(grid, stickers, across)
    return {
        "paper": paper.key,
        "sheets": sticker_sheets(grid, stickers, given.first, given.outline == "yes"),
        "said": f"{_counted(len(stickers))} {across} × {down}.",
    }


def _counted(many):
    return "1 label," if many == 1 else f"{many} labels, each"


def _told_size(paper, given, show):
    """How wide and how high a label is, each as text in the project's unit."""
    wide, high = (Fraction(str(side)) * INCHES_PER["mm"] for side in (paper.width, paper.height))
    across = wide - given.left - given.right - (given.columns - 1) * given.across_gap
    down = high - given.top - given.bottom - (given.rows - 1) * given.up_gap
    return tuple(
        show.brief(max(room / many, Fraction(0)))
        for room, many in ((across, given.columns), (down, given.rows))
    )


def _check(grid, given, across, down):
    """Refuse stickers that are too small to be written on, and a first one that isn't there."""
    refusals = [
        Refusal(
            "impossible",
            f"{many} labels {way} come out {told}, too small to write on.",
            "Use fewer, or smaller margins and gaps.",
            field=field,
        )
        for field, many, way, size, told, least in (
            ("columns", given.columns, "across", grid.width, f"{across} wide", LEAST_WIDTH),
            ("rows", given.rows, "down", grid.height, f"{down} high", LEAST_HEIGHT),
        )
        if size < least
    ]
    if given.first > given.columns * given.rows:
        refusals.append(
            Refusal(
                "range",
                f"There’s no label {given.first} on a sheet of {given.columns * given.rows}.",
                "Count left to right, top to bottom.",
                field="first",
            )
        )
    if refusals:
        raise Refusals(refusals)


def _check_lengths(grid, stickers, across):
    """Refuse stickers on which a length would not stand whole: half a number is a wrong one."""
    lengths = [text for lines in stickers for role, text in lines if role == "length"]
    longest = max(lengths, key=len)
    if len(longest) > letters_across(grid, "length"):
        raise Refusal(
            "impossible",
            f"{longest} won’t fit on a label {across} wide.",
            "Use fewer columns or smaller margins.",
            field="columns",
        )


def _stickers(project, pieces):
    """The lines of each label: name, length, section, ends, project and number."""
    if not pieces:
        raise Refusal(
            "missing",
            "There are no pieces to label.",
            "Solve for a piece and save it to the project.",
            field="document",
        )
    if sum(piece["count"] for piece in pieces) > MOST_LABELS:
        raise Refusal(
            "range",
            f"There are more than {MOST_LABELS} pieces to label.",
            "Use a project with fewer pieces.",
            field="document",
        )
    for piece in pieces:
        section = " × ".join(
            piece[measure]["brief"] for measure in ("width", "thickness") if piece[measure]
        )
        if section and not piece["width"]:
            section += " thick"
        about = (piece["length_along"], section, piece["material"], piece["place"])
        about = ", ".join(filter(None, about))
        ends = [("note", f"{side} {_end(end)}") for side, end in (piece["ends"] or {}).items()]
        for number in range(1, piece["count"] + 1):
            yield [
                ("name", piece["name"]),
                ("length", piece["length"]["brief"]),
                *([("note", about)] if about else []),
                ("note", f"{number} of {piece['count']}, {project}"),
                *ends,
            ]


def _end(end):
    return f"{end['cut']} {end['angle']}".strip()
