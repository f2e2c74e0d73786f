"""What is said of a coat that was put on early, or in air that no finish dries in, and of what
spoils one: all of it common practice, no source."""

from sawside.reckoners.finish.shared.drying import COLDEST, DAMPEST
from sawside.wood.caution import Caution

_BLUSHES = ("shellac", "lacquer")
_BLUSH, _HOT, _COARSE = 70, 90, 180
_EARLY = {
    "sand": "Done {} early: if it gums up, let it dry first. ",
    "coat": "Done {} early: if the coat under it was soft, let this one dry longer. ",
    "cure": "Ticked {} early: go easy on it until then. ",
}
"""By how a step's key begins, what is said of one that was done before what's under it was dry."""


def early(key, how_much):
    """What is said of the step with this key, done too early by so much; "" of most."""
    return _EARLY.get(key[:4], "").format(how_much)


def air_said(done):
    """What is said of a coat by the air that was written down when it was put on; "" of most."""
    if done is None:
        return ""
    said = ""
    if done.fahrenheit is not None and done.fahrenheit < COLDEST:
        said += f"It was below {COLDEST} °F (10 °C): it may not dry or hold. "
    if done.humidity is not None and done.humidity > DAMPEST:
        said += f"It was above {DAMPEST}% humidity: it may turn cloudy or stay soft. "
    return said


def spoils(plan, finish, air):
    """Cautions of what spoils the coats of a plan in some `Air`; `finish` is the key of its
    finish."""
    if finish in _BLUSHES and air.humidity > _BLUSH:
        yield _caution(
            "Damp air can turn it cloudy.",
            f"Above {_BLUSH}% humidity wait for a drier day, or stop if a wet coat turns white "
            "(shop practice).",
        )
    if air.fahrenheit > _HOT:
        yield _caution(
            "In such heat it may set before it levels.",
            f"Most cans stop at {_HOT} °F (32 °C): finish in the morning, out of the sun.",
        )
    if plan.coats > 1 and 0 < plan.grit < _COARSE:
        yield _caution(
            "So coarse a grit can cut through the coat.",
            f"Most shops use {_COARSE} grit or finer between coats, 320 as a rule (shop practice).",
        )
    if plan.finish.grit and not plan.grit and plan.coats > 1 and plan.finish.dries != "solvent":
        yield _caution(
            "Unsanded, the next coat may not stick.",
            "Put it on within the hours that the can gives for that, or scuff the coat dull first.",
        )


def _caution(short, more):
    return Caution(short, f"{short} {more}")
