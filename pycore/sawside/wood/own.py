"""Materials of the person's own, from the settings, as every other material is told."""

from sawside.errors import Refusal, quoted
from sawside.wood.materials import Figure, Material, Movement

PREFIX = "own: "
"""What a choice's value begins with where it names one of them, so that no key is taken."""


def own_material(value, materials, figure):
    """(material, its name) of a choice's value; `materials` are those of the settings.

    `figure` is what the question needs of it, if anything. Refusals: "unknown" for a name that is
    not there, "missing" for one without that figure.
    """
    name = value.removeprefix(PREFIX)
    found = next((each for each in materials if each.name == name), None)
    if found is None:
        raise Refusal(
            "unknown", f"There’s no material {quoted(name)}.", "Choose one, or add it in Settings."
        )
    made = made_of(found)
    if figure is not None and getattr(made, figure) is None:
        raise Refusal(
            "missing",
            f"{quoted(name)} has no {figure} in Settings.",
            "Fill it in there, or choose another material.",
        )
    return made, name


def made_of(own):
    """The `Material` of a `settings.own_material.OwnMaterial`; its note is its source."""
    cited = f"your own figure: {own.note}" if own.note else "your own figure"

    def figure(value):
        return value and Figure(value, value, cited, "your own figure")

    moves = own.tangential and Movement(own.radial, own.tangential, cited, "your own figure")
    return Material(
        "own",
        own.name,
        "own",
        figure(own.stiffness),
        figure(own.strength),
        moves or None,
        figure(own.weight),
    )
