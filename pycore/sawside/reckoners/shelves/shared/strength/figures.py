"""Stress beside strength, and where every figure of a shelf comes from."""

from sawside.reckoners.shelves.shared.strength.working import plate_figures
from sawside.wood.materials import started
from sawside.wood.numbers import metric, number_text, stress_text
from sawside.wood.strength.loads import density_text
from sawside.wood.strength.sag_limits import LIMITS
from sawside.wood.tables import noted

_MILLION = 10**6


def stresses_text(case, shelf, show):
    """Bending stress beside the published strength of each part, with what that leaves."""
    return " ".join(
        _one_stress(name, made_of, stress, show)
        for (name, made_of), stress in zip(case.materials, shelf.stresses, strict=False)
    )


def _one_stress(name, made_of, stress, show):
    told = f"{name}: {stress_text(stress, show)}."
    if made_of.strength is None:
        return f"{told} There’s no strength on file for {made_of.spoken}."
    strength = made_of.strength
    return (
        f"{told} {started(made_of.spoken)} fails at about {stress_text(strength.least, show)}, "
        f"{number_text(strength.least / stress, 1)} times this, in short tests of small clear "
        f"samples{noted(strength.cited)}."
    )


def _stiff(psi, show):
    """A stiffness as tables have it: "1.01 million psi", "6,964 MPa"."""
    if metric(show):
        return stress_text(psi, show)
    return f"{number_text(psi / _MILLION, 2)} million psi"


def figures_text(case, show):
    """Where the figures come from, and what a range would change."""
    told = []
    for name, made_of in case.materials:
        stiffness = made_of.stiffness
        least, most = stiffness.least, stiffness.most
        ranged = f", the low end of a range up to {_stiff(most, show)}" if most > least else ""
        told.append(
            f"{name} stiffness, {made_of.spoken}: {_stiff(least, show)}{ranged} "
            f"({stiffness.cited})."
        )
    told += plate_figures(case)
    told += [
        f"Strength of {made_of.spoken}: {stress_text(made_of.strength.least, show)} "
        f"({made_of.strength.cited})."
        for _, made_of in case.materials
        if made_of.strength
    ]
    told += [
        f"Weight of {made_of.spoken}: {density_text(made_of.weight.most, show)} "
        f"({made_of.weight.cited})."
        for _, made_of in case.materials
        if made_of.weight
    ]
    if case.load_cited:
        told.append(f"Load: {case.load_cited}.")
    told.append(f"Creep: {number_text(case.creep, 2)} times ({case.creep_cited}).")
    if case.given.limit != "own":
        told.append(f"Limit: {LIMITS[case.given.limit].cited}.")
    return " ".join(dict.fromkeys(told))
