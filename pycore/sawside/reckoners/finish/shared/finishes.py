"""What is usual of each finish: coats, times at 70 °F and 50%, sanding between, what its rags do.

The can wins over all of it. Boiled linseed oil is dry to the touch in 12 to 24 hours (older
government paint bulletins, from memory); all else is common practice, no source.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Finish:
    """`recoat` is in hours and `cure` in days, the cautious end of what is usual.

    `wipe` is after how many minutes what is left on the wood is wiped off, 0 for not at all.
    `grit` is what is sanded with before a further coat, `primed` before the first after a primer;
    0 for no sanding. `dries` is how: "oxygen", "water" or "solvent". `rags` heat up by themselves.
    `first` and `further` are what a coat is called after its number. `fill` says whether nail holes
    are filled before the first coat or after it.
    """

    name: str
    coats: int
    recoat: int
    cure: int
    dries: str
    rags: bool
    flammable: bool
    wipe: int = 0
    grit: int = 0
    primed: int = 0
    fill: str = "after"
    how: str = "Thin and even, with the grain."


_OILED = "Flood it on, keep it wet, and let it soak in."
_PAINT = {"grit": 320, "primed": 220, "fill": "before"}
_WIPED_ON = "Wipe it on thin and even, with the grain."
FINISHES = {
    "linseed": Finish("Oil, boiled linseed", 3, 24, 30, "oxygen", True, True, wipe=20, how=_OILED),
    "tung": Finish("Oil, pure tung", 3, 48, 30, "oxygen", True, True, wipe=20, how=_OILED),
    "blend": Finish("Oil-varnish blend", 3, 24, 14, "oxygen", True, True, wipe=15, how=_OILED),
    "wiping": Finish("Wiping varnish", 4, 24, 28, "oxygen", True, True, grit=320, how=_WIPED_ON),
    "shellac": Finish(
        "Shellac",
        3,
        2,
        7,
        "solvent",
        False,
        True,
        grit=320,
        how="Quick and wet, without going back over it.",
    ),
    "lacquer": Finish("Lacquer", 3, 2, 7, "solvent", False, True, grit=320),
    "water": Finish("Water-borne finish", 3, 3, 21, "water", False, False, grit=320),
    "wax": Finish("Wax", 2, 24, 1, "solvent", True, True, wipe=15, how="Rub it on in a thin film."),
    "paint": Finish("Water-based paint with primer", 3, 4, 30, "water", False, False, **_PAINT),
    "oil_paint": Finish("Oil-based paint with primer", 3, 24, 30, "oxygen", True, True, **_PAINT),
}
"""By key. Paint is one coat of primer and two of paint; a solvent wax may hold a drying oil or
turpentine, so its rags are treated as oily ones."""
PAINTS = tuple(key for key, finish in FINISHES.items() if finish.primed)

WIPED = tuple(key for key, finish in FINISHES.items() if finish.wipe)
OILS = ("linseed", "tung", "blend")
SANDED = tuple(key for key, finish in FINISHES.items() if finish.grit)
NAMES = {key: finish.name for key, finish in FINISHES.items()}
