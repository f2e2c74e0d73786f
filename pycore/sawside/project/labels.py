"""Labels for the pieces of a project, on a sheet of stickers whose grid the person sets."""

from types import SimpleNamespace

from sawside.drawing.paper import find_paper
from sawside.drawing.stickers import (
    LEAST_HEIGHT,
    LEAST_WIDTH,
    Grid,
    millimeters,
    sticker_sheets,
)
from sawside.errors import Refusal, Refusals
from sawside.lengths.settings import read_settings
from sawside.project.view import view
from sawside.reckoners.declaration import choice, count, length
from sawside.reckoning.values import read_values

MOST_LABELS = 2000


def _margin(key, label, default="10 mm", help_=""):
    return length(key, label, default=default, most="6 in", help=help_)


FIELDS = (
    count("columns", "Stickers across", default="3", least="1", most="10"),
    count("rows", "Stickers down", default="8", least="1", most="30"),
    _margin("top", "Upper margin", help_="From the paper's edge to the first sticker: measure it."),
    _margin("bottom", "Lower margin"),
    _margin("left", "Left margin"),
    _margin("right", "Right margin"),
    _margin("across_gap", "Gap between columns", "0 mm"),
    _margin("up_gap", "Gap between rows", "0 mm"),
    count(
        "first", "First free sticker", default="1", least="1", most="300",
        help="Counted along the rows, for a sheet that was begun before.",
    ),
    choice(
        "outline", "Lines around", {"no": "None", "yes": "Thin lines"},
        help="Thin lines to cut along, for plain paper.",
    ),
)  # fmt: skip
"""What is set of a sheet of stickers. The defaults are nobody's sheet: measure your own."""

_FORM = SimpleNamespace(fields=FIELDS, solve_one_of=())


def labels(document, paper, values):
    """The label sheets of a checked document (without "ok"): one label for each piece.

    `values` are those of `FIELDS` as typed. Raises `Refusals` for bad fields, "impossible" where
    the stickers come out too small, "missing" where the project has no pieces.
    """
    paper = find_paper(paper)
    settings = read_settings(document["settings"])
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
    _check(grid, given)
    stickers = list(_stickers(document["name"], view(document, drawings=False)["pieces"]))
    return {
        "paper": paper.key,
        "sheets": sticker_sheets(grid, stickers, given.first, given.outline == "yes"),
        "said": f"{len(stickers)} labels, each {grid.width:.1f} × {grid.height:.1f} mm.",
    }


def _check(grid, given):
    """Refuse stickers that are too small to be written on, and a first one that isn't there."""
    refusals = [
        Refusal(
            "impossible",
            f"{many} stickers {way} come out {max(size, 0):.1f} mm {measure}, less than "
            f"{least:g} mm.",
            "Give fewer, or smaller margins and gaps.",
            field=field,
        )
        for field, many, way, size, measure, least in (
            ("columns", given.columns, "across", grid.width, "wide", LEAST_WIDTH),
            ("rows", given.rows, "down", grid.height, "high", LEAST_HEIGHT),
        )
        if size < least
    ]
    if given.first > given.columns * given.rows:
        refusals.append(
            Refusal(
                "range",
                f"There is no sticker {given.first} on a sheet of {given.columns * given.rows}.",
                "Count along the rows, from the upper left.",
                field="first",
            )
        )
    if refusals:
        raise Refusals(refusals)


def _stickers(project, pieces):
    """The lines of each label: name, length, section, ends, project and number."""
    if not pieces:
        raise Refusal(
            "missing",
            "There are no pieces to label.",
            "Work out a piece and keep it in the project.",
            field="document",
        )
    if sum(piece["count"] for piece in pieces) > MOST_LABELS:
        raise Refusal(
            "range",
            f"There are more than {MOST_LABELS} pieces to label.",
            "Make a project with fewer pieces.",
            field="document",
        )
    for piece in pieces:
        section = " × ".join(
            piece[measure]["text"] for measure in ("width", "thickness") if piece[measure]
        )
        about = ", ".join(text for text in (section, piece["material"], piece["place"]) if text)
        ends = [("note", f"{side} {_end(end)}") for side, end in (piece["ends"] or {}).items()]
        for number in range(1, piece["count"] + 1):
            yield [
                ("name", piece["name"]),
                ("length", piece["length"]["text"]),
                *([("note", about)] if about else []),
                ("note", f"{number} of {piece['count']}, {project}"),
                *ends,
            ]


def _end(end):
    return f"{end['cut']} {end['angle']}".strip()
