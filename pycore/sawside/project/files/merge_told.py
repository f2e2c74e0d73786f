"""The numbers that come out otherwise by a merge, told before it is accepted."""

from sawside.errors import Refusal, Refusals
from sawside.project.evaluation.evaluate import Evaluation

MOST_TOLD = 20


def otherwise(document, other, new, places):
    """Sentences on the numbers that are not as they were here, or not as in the backup.

    `places` are the ids that the entries of the other document have in the new one.
    """
    after = Evaluation(new)
    here = {entry["id"]: entry["id"] for entry in document["entries"]}
    return _sentence("These change here", _changes(Evaluation(document), after, here)) + _sentence(
        "With this project’s settings these differ from the backup",
        _changes(Evaluation(other), after, places),
    )


def _sentence(what, told):
    if not told:
        return ""
    more = f", and {len(told) - MOST_TOLD} more" if len(told) > MOST_TOLD else ""
    return f" {what}: {', '.join(told[:MOST_TOLD])}{more}."


def _changes(before, after, places):
    """[“name before → after”] of each entry whose numbers are other ones."""
    told = []
    for identity, old in before.worked.items():
        new = after.worked[places[identity]]
        if old is new:
            continue
        was, now = _numbers(old), _numbers(new)
        label = next((key for key in {**was, **now} if was.get(key) != now.get(key)), None)
        if label is not None:
            name = after.names[places[identity]]
            told.append(f"{_called(name, label)} {_text(was, label)} → {_text(now, label)}")
    return told


def _called(name, label):
    return f"{name}: {label}" if label else name


def _text(numbers, label):
    return numbers[label][0] if label in numbers else "nothing"


def _numbers(worked):
    """{label, "" for the first answer: (text, exact number or None)} of a worked entry."""
    if not worked.ok:
        return {}
    try:
        answers = worked.answers
    except (Refusal, Refusals):
        answers = [worked.headline]
    return {
        each["label"] if at else "": (each["text"], each.get("exact"))
        for at, each in enumerate(answers)
    }
