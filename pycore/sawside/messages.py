"""What every message but the first of all asks for: from its keys to what is answered.

The door reads this file, and with it all below, when a message first needs it: what draws the
page's first keys does not wait for projects, paper and wood. Imports: everything below the door.
"""

from dataclasses import replace

from sawside.needs import Message, an_object, text
from sawside.project.evaluation.names_sent import names_sent
from sawside.project.kinds.checks import unit_checked
from sawside.project.labels import labels
from sawside.project.messages import MESSAGES as OF_PROJECTS
from sawside.project.read_in_project import (
    all_names,
    by_field_told,
    names_of_question,
    read_in_project,
)
from sawside.project.sample_case import sample_case
from sawside.project.schema.given import document, reckoner
from sawside.project.schema.label_grid import FIELDS as LABEL_FIELDS
from sawside.project.steps.steps_ahead import now_given, ticks_of
from sawside.reckoning.describe import field_told, jobs_told, reckoners_told, settings_told
from sawside.reckoning.on_paper import on_paper, papers_told
from sawside.reckoning.reckon import reckon
from sawside.reckoning.search_words import search_told
from sawside.settings.settings import read_settings, settings_sent
from sawside.tally.messages import MESSAGES as OF_THE_TALLY
from sawside.version import CONTRACT, VERSION


def _describe():
    return {
        "contract": CONTRACT,
        "version": VERSION,
        "settings": list(settings_told()),
        "papers": papers_told(),
        "labels": [field_told(field) for field in LABEL_FIELDS],
        "jobs": jobs_told(),
        "reckoners": reckoners_told(),
        "search": search_told(),
        "case": sample_case(),
    }


def _read(*, text, settings=None, unit=None, **around):
    return read_in_project(text, _settings(settings, unit), **around)


def _reckon(*, reckoner, values=None, settings=None, unit=None, now=None, **around):
    values = values or {}
    names, settings = names_of_question(reckoner, values, **around), _settings(settings, unit)
    ticks = ticks_of(reckoner, **around, now=now)
    told = reckon(reckoner, values, settings, all_names(names), ticks)
    return told | by_field_told(names, settings)


def _paper(*, reckoner, paper, values=None, settings=None, unit=None, **around):
    values = values or {}
    names = all_names(names_of_question(reckoner, values, **around))
    return on_paper(reckoner, values, _settings(settings, unit), paper, names)


def _settings(settings, unit):
    """The settings of a message; its own `unit`, if any, is what a bare number of it means."""
    settings = settings or read_settings(None)
    return settings if unit is None else replace(settings, unit=unit)


_AROUND = {"settings": settings_sent, "unit": unit_checked, "document": document, "id": text}
_QUESTION = {"values": an_object} | _AROUND
MESSAGES = {
    "describe": Message(_describe),
    "read": Message(_read, needs={"text": text}, may=_AROUND | {"names": names_sent}),
    "reckon": Message(_reckon, needs={"reckoner": reckoner}, may=_QUESTION | {"now": now_given}),
    "paper": Message(_paper, needs={"reckoner": reckoner, "paper": text}, may=_QUESTION),
    "labels": Message(
        labels,
        needs={"document": document, "paper": text},
        may={"values": an_object, "unit": unit_checked},
    ),
    **OF_THE_TALLY,
    **OF_PROJECTS,
}
"""The closed list, but for `strip`."""
