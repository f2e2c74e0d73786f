"""Fields that are asked for once while both are alike, such as both ends of a piece."""


def twins_of(reckoner, field):
    """{"twin": ...} of a field that another one is as a rule filled in like (`Alike`), or {}."""
    keys = {each.key for each in reckoner.fields}
    for alike in reckoner.alike:
        other = alike.other + field.key.removeprefix(alike.one)
        if field.key.startswith(alike.one) and other in keys:
            return {"twin": _twin(alike, other, field.label)}
    return {}


def _twin(alike, other, label):
    return {
        "key": other,
        "label": _of_both(alike, label),
        "apart": f"Different {alike.noun}",
        "together": f"Same {alike.noun}",
    }


def _of_both(alike, label):
    """The label of one, as it is said of both: Left end is Both ends, Left chamfer is Chamfer."""
    side, one = alike.one.removesuffix("_"), alike.noun.removesuffix("s")
    both = label.replace(f"the {side} {one}", f"both {alike.noun}")
    both = both.replace(f"{side.capitalize()} {one}", f"Both {alike.noun}")
    both = both.removeprefix(f"{side.capitalize()} ")
    return both[0].upper() + both[1:]
