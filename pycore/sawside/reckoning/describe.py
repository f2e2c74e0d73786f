"""Declarations as data: what the page draws a question from."""

from sawside.reckoners import RECKONERS
from sawside.reckoners.fields import Choice, Field, length, number, rows
from sawside.reckoners.jobs import JOBS
from sawside.reckoning.asked_once import twins_of
from sawside.reckoning.metric_example import in_millimeters
from sawside.settings.clearances import CLEARANCES
from sawside.settings.handled import HANDLED
from sawside.settings.own_material import FIGURES
from sawside.settings.settings import CHOICES, KERF, MOST_MATERIALS, MOST_TAPES
from sawside.settings.tape_rows import PARTS
from sawside.wood.own import PREFIX

_SETTINGS = {
    "unit": ("Plain numbers are in", "The unit when you type just a number."),
    "mark": ("Round to", "The smallest mark on your tape or rule."),
    "rounding": (
        "Rounding",
        "Halfway rounds to the even mark. What has to fit or be enough is rounded that way, "
        "whatever you choose here.",
    ),
    "display": ("Show lengths in", "Marks in millimeters always show in millimeters."),
}
_CUTS = {
    "first_cut": ("First cuts of a sheet", "Which way you break sheets down."),
    "rounds": ("Rounds of cuts", "Rips are one round, the crosscuts after them the next."),
}
_PLAN = {"label": "Cutting plan", "help": "How a plan of the project’s cuts uses sheets."}


_TAPE_HELP = {
    "case": "Back of the case to where the blade comes out. Added for inside measurements.",
    "block": "A short length you’re sure of, such as a gauge block or a square’s blade.",
    "block_reads": "Hooked on, read as close as you can.",
    "distance": "A long distance you’re sure of, 6 ft or more.",
    "distance_reads": "Also from the hook.",
}


_MATERIAL_HELP = {
    "stiffness": "For sag. If your data sheet gives GPa: 1 GPa is 0.145 million psi.",
    "strength": "1 MPa is 145 psi.",
    "tangential": "For movement: change in width per 1% change in moisture.",
    "radial": "",
    "weight": "Adds a shelf’s own weight to its sag. 16 kg/m³ is 1 lb per cubic foot.",
}


_CLEARANCES = {
    "label": "Clearances",
    "help": "Used when you leave a question’s clearance blank. The starting values are shop "
    "practice.",
}
"""The heading under which those fields stand."""


def settings_told():
    """The settings as fields; the first choice of each is its default.

    Those that belong under one heading say so in `group`.
    """
    for key, told in _SETTINGS.items():
        yield _chosen(key, *told)
    yield _set_length(KERF)
    for key, told in _CUTS.items():
        yield _chosen(key, *told) | {"group": _PLAN}
    for each in HANDLED:
        yield _set_length(each) | {"group": _PLAN}
    for each in CLEARANCES.values():
        yield _set_length(each) | {"group": _CLEARANCES}
    yield field_told(_tapes())
    yield field_told(_materials())


def _chosen(key, label, help_):
    """A choice of the settings as a field; the first one is its default."""
    choices = tuple(Choice(value, text) for value, text in CHOICES[key].items())
    return field_told(Field("choice", key, label, help_, default=choices[0].value, choices=choices))


def _set_length(each):
    """A length of the settings as a field."""
    start = {"blank_means": "Any."}
    if each.default:
        start = {"default": f"{each.default} in", "metric": each.metric or None}
    limits = {"least": each.least, "most": each.most}
    return field_told(length(each.key, each.label, help=each.help, **limits, **start))


def _materials():
    """The rows of the person's own materials."""
    parts = [
        Field("text", "name", "Name", help="Whatever you call it."),
        *(
            number(
                part,
                label,
                unit,
                help=_MATERIAL_HELP[part],
                least=least,
                most=most,
                may_be_blank=True,
                blank_means="Unknown.",
            )
            for part, (label, unit, least, most) in FIGURES.items()
        ),
        Field("text", "note", "Note", help="Where the numbers come from. Shown with answers."),
    ]
    return rows(
        "materials",
        "My materials",
        parts,
        row_label="Material",
        most_rows=MOST_MATERIALS,
        help="Woods and panels not in the list, with numbers from a data sheet or your own test.",
        may_be_blank=True,
        blank_means="None of your own.",
    )


def _tapes():
    """The rows of the person's own tapes."""
    parts = [
        length(
            part,
            label,
            help=_TAPE_HELP[part],
            least=least,
            most=most,
            may_be_blank=True,
            blank_means="Not measured.",
        )
        if least
        else Field("text", part, label, help="Whatever you call it.")
        for part, (label, least, most) in PARTS.items()
    ]
    return rows(
        "tapes",
        "My tapes",
        parts,
        row_label="Tape",
        most_rows=MOST_TAPES,
        help="Add a tape if you’ve checked its error or you measure with its case.",
        may_be_blank=True,
        blank_means="None of your own.",
    )


def jobs_told():
    """Every job in its order: its name, which is what a question is for, its title and picture."""
    return [
        {"key": job, "title": job.capitalize(), "picture": picture} for job, picture in JOBS.items()
    ]


def reckoners_told():
    """Every reckoner's declaration, in the order in which they are offered."""
    return [_reckoner_told(reckoner) for reckoner in RECKONERS.values()]


def _reckoner_told(reckoner):
    return {
        "key": reckoner.key,
        "title": reckoner.title,
        "job": reckoner.job,
        "picture": reckoner.picture or JOBS[reckoner.job],
        "asks": reckoner.asks,
        "words": reckoner.words.split(", "),
        "fields": [
            field_told(field) | {"basic": _is_basic(reckoner, field)} | twins_of(reckoner, field)
            for field in reckoner.fields
        ],
        "solve_one_of": list(reckoner.solve_one_of),
        "answers": [
            {"key": answer.key, "label": answer.label, "kind": answer.kind}
            for answer in reckoner.answers
        ],
        "source": reckoner.source,
        "makes_parts": reckoner.makes_parts,
        "offered": reckoner.offered,
        "example": reckoner.example,
        "example_metric": in_millimeters(reckoner.fields, reckoner.example),
    }


def _is_basic(reckoner, field):
    """Whether the plain case needs it: as declared, or where it has to be filled in and hangs on
    nothing that folds."""
    if not reckoner.basic or field.key in reckoner.basic:
        return True
    by_key = {each.key: each for each in reckoner.fields}
    is_needed = field.default is None and not field.may_be_blank
    return is_needed and all(_is_basic(reckoner, by_key[key]) for key, _ in field.conditions)


def field_told(field):
    """One field's declaration as the contract's FIELD."""
    data = {
        "key": field.key,
        "label": field.label,
        "kind": field.kind,
        "help": field.help,
        "default": field.default,
        "unit": "deg" if field.kind == "angle" else field.unit,
        "least": field.least,
        "most": field.most,
        "may_be_blank": field.may_be_blank,
        "blank_means": field.blank_means,
        "shown_when": [{"field": key, "is": list(shown_by)} for key, shown_by in field.conditions],
        "basic": True,
    }
    if field.metric:
        data["default_metric"] = field.metric
    if field.setting:
        data["setting"] = field.setting
    if field.choices_from:
        data |= {"choices_from": field.choices_from, "choices": []}
    if field.kind == "tape":
        data["kind"] = "choice"
    if field.kind == "material":
        data["choices_prefix"] = PREFIX
    if field.choices:
        data["choices"] = [_choice_told(choice) for choice in field.choices]
    if field.most_rows is not None:
        data |= {"row_label": field.row_label, "most_rows": field.most_rows}
    if field.fields:
        data["fields"] = [field_told(each) for each in field.fields]
    return data


def _choice_told(choice):
    data = {"value": choice.value, "label": choice.label}
    if choice.help:
        data["help"] = choice.help
    if choice.picture:
        data["picture"] = choice.picture
    return data
