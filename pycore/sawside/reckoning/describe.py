"""Declarations as data: what the page draws a question from."""

from sawside.lengths.settings import CHOICES
from sawside.reckoners import RECKONERS
from sawside.reckoners.declaration import Choice, Field

_SETTINGS = {
    "unit": ("A bare number means", "The unit of a number that is typed without one."),
    "mark": ("Round to", "The marks of the tape or rule at hand."),
    "rounding": ("Rounding", "An exact tie goes to the even mark."),
    "display": ("Show lengths in", "A mark in millimeters is always shown in millimeters."),
}


def settings_told():
    """The settings as fields of kind choice; the first choice is the default."""
    for key, (label, help_) in _SETTINGS.items():
        choices = tuple(Choice(value, text) for value, text in CHOICES[key].items())
        yield field_told(
            Field("choice", key, label, help_, default=choices[0].value, choices=choices)
        )


def reckoners_told():
    """Every reckoner's declaration, in the order in which they are offered."""
    return [_reckoner_told(reckoner) for reckoner in RECKONERS.values()]


def _reckoner_told(reckoner):
    return {
        "key": reckoner.key,
        "title": reckoner.title,
        "asks": reckoner.asks,
        "words": list(reckoner.words),
        "fields": [field_told(field) for field in reckoner.fields],
        "solve_one_of": list(reckoner.solve_one_of),
        "answers": [
            {"key": answer.key, "label": answer.label, "kind": answer.kind}
            for answer in reckoner.answers
        ],
        "source": reckoner.source,
        "makes_parts": reckoner.makes_parts,
        "example": reckoner.example,
    }


def field_told(field):
    """One field's declaration as the contract's FIELD."""
    data = {
        "key": field.key,
        "label": field.label,
        "kind": field.kind,
        "help": field.help,
        "default": field.default,
        "unit": "deg" if field.kind == "angle" else None,
        "least": field.least,
        "most": field.most,
        "may_be_blank": field.may_be_blank,
        "blank_means": field.blank_means,
        "shown_when": field.shown_when
        and {"field": field.shown_when[0], "is": list(field.shown_when[1])},
    }
    if field.choices:
        data["choices"] = [_choice_told(choice) for choice in field.choices]
    if field.most_rows is not None:
        data |= {"row_label": field.row_label, "most_rows": field.most_rows}
    if field.fields:
        data["fields"] = [field_told(each) for each in field.fields]
    return data


def _choice_told(choice):
    data = {"value": choice.value, "label": choice.label}
    return data | {"help": choice.help} if choice.help else data
