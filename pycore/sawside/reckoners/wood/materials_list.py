"""Everything that is on file about one wood or panel, each value with where it was read."""

from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import Choice, Field
from sawside.wood.materials import MATERIALS, PSI_IN, SHRINKAGE
from sawside.wood.numbers import metric, number_text
from sawside.wood.strength.sag_limits import usual_creep
from sawside.wood.tables import cited

_MISSING = "Not on file."
_CAUTIONS = (
    "These are averages from small, clear, dry samples in short tests. Knots or sloping grain make "
    "a board weaker, and even clear boards of one species vary: 22% in stiffness, 16% in strength.",
)


def compute(given, show):
    """Stiffness, strength, movement, shrinkage and creep, each with its source."""
    made = given.material
    figures = [
        (name, each)
        for name, each in (("stiffness", made.stiffness), ("strength", made.strength))
        if each is not None
    ]
    return Reckoning(
        answers={
            "stiffness": _psi(made.stiffness, show),
            "strength": _psi(made.strength, show),
            "movement": _movement(made.movement),
            "shrinkage": _shrinkage(SHRINKAGE.get(made.key)),
            "creep": _creep(made),
        },
        working=tuple(
            f"MPa of {name}: {number_text(each.least)} psi ÷ {number_text(PSI_IN['MPa'], 3)} ≈ "
            f"{number_text(each.least / PSI_IN['MPa'])}"
            for name, each in figures
        )
        or ("Nothing is figured here: these are the numbers on file",),
        cautions=_CAUTIONS,
        verdict=f"{made.spoken[0].upper()}{made.spoken[1:]}: stiffness",
    )


def _psi(figure, show):
    if figure is None:
        return _MISSING
    ends = dict.fromkeys((figure.least, figure.most))
    psi = " to ".join(number_text(each) for each in ends)
    mega = " to ".join(number_text(each / PSI_IN["MPa"]) for each in ends)
    told = f"{mega}\u00a0MPa" if metric(show) else f"{psi}\u00a0psi ({mega}\u00a0MPa)"
    return f"{told}. {_source(figure.cited)}"


def _movement(moves):
    if moves is None:
        return _MISSING
    flat, quarter = (number_text(each, 5) for each in (moves.tangential, moves.radial))
    return (
        f"Flat sawn {flat}, quarter sawn {quarter} of the width per 1% moisture change, from 6 to "
        f"14%. {_source(moves.cited)}"
    )


def _shrinkage(row):
    if row is None:
        return _MISSING
    parts = (
        f"{name} {row[column]}%"
        for name, column in (
            ("across the rings", "radial"),
            ("along the rings", "tangential"),
            ("by volume", "volumetric"),
        )
        if row[column]
    )
    return f"From green to oven dry: {', '.join(parts)}. {_source(cited(row))}"


def _creep(made):
    entry = usual_creep([made])
    return f"{number_text(entry.number, 2)} times the sag now. {_source(entry.cited)}"


def _source(cited_as):
    return f"{cited_as[0].upper()}{cited_as[1:]}."


def _label(made):
    known = [each.status for each in (made.stiffness, made.strength, made.movement) if each]
    guessed = [status for status in known if "from memory" in status]
    if not guessed:
        return made.name
    return f"{made.name} ({'some of it ' if len(guessed) < len(known) else ''}unchecked)"


_LISTED = sorted(MATERIALS.values(), key=lambda each: (each.kind != "panel", each.name.lower()))
RECKONER = Reckoner(
    key="materials_list",
    title="Wood and panel data",
    asks="What numbers does Sawside use for this wood, and where are they from?",
    words=(
        "species, material properties, properties, wood data, stiffness, modulus of elasticity, "
        "modulus, MOE, strength, shrinkage, panel, MDF, particleboard, plywood, oak, red oak, "
        "white oak, maple, cherry, walnut, birch, ash, poplar, pine, fir, cedar, data, source, "
        "table"
    ),
    order=410,
    job="tables",
    picture={
        "wood": "M4 4h13v8H4zM4 16h13v8H4zM4 28h13v8H4z",
        "ink": "M23 8h13M23 32h13M4 20q6-3 13 0",
        "chalk": "M23 20h9",
    },
    fields=(
        Field(
            "material",
            "material",
            "Material",
            choices=tuple(Choice(each.key, _label(each)) for each in _LISTED),
            choices_from="materials",
            default="maple_red",
            help="Unchecked: not yet compared with the printed table. Add your own in Settings.",
        ),
    ),
    answers=(
        Answer("stiffness", "Stiffness (modulus of elasticity)", "text"),
        Answer("strength", "Bending strength", "text"),
        Answer("movement", "Movement across the grain", "text"),
        Answer("shrinkage", "Shrinkage", "text"),
        Answer("creep", "Long-term sag", "text"),
    ),
    source="Each number names its own table, edition and page. “From a copy” is from a reprint of "
    "that table; “unchecked” hasn’t been compared with it yet. How much boards vary, as "
    "coefficients of variation: Wood Handbook, Table 5-6, unchecked.",
    compute=compute,
    example={"material": "maple_red"},
)
