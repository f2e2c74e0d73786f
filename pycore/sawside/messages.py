"""What every message but the first of all asks for: from the message to what is answered.

The door reads this file, and with it all below, when a message first needs it: what draws the
page's first keys does not wait for projects, paper and wood. Imports: everything below the door.
"""

from dataclasses import replace

from sawside.errors import Refusal
from sawside.project.labels import labels
from sawside.project.messages import MESSAGES as OF_PROJECTS
from sawside.project.read_in_project import (
    all_names,
    by_field_told,
    names_of_question,
    read_in_project,
)
from sawside.project.schema.checks import unit_checked
from sawside.project.schema.document import read_document
from sawside.project.schema.label_grid import FIELDS as LABEL_FIELDS
from sawside.reckoning.describe import field_told, reckoners_told, settings_told
from sawside.reckoning.on_paper import on_paper, papers_told
from sawside.reckoning.reckon import find, reckon
from sawside.settings.settings import read_settings
from sawside.tally.messages import tally_told
from sawside.tally.sum_kept import tally_sum
from sawside.version import CONTRACT, VERSION


def _describe(_message):
    return {
        "contract": CONTRACT,
        "version": VERSION,
        "settings": list(settings_told()),
        "papers": papers_told(),
        "labels": [field_told(field) for field in LABEL_FIELDS],
        "reckoners": reckoners_told(),
    }


def _read(message):
    text = message.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to read.", "Send it as “text”.", field="text")
    return read_in_project(message, text, _settings(message))


def _tally(message):
    return tally_told(
        message.get("tally"),
        message.get("act"),
        message.get("settings"),
        message.get("document"),
        message.get("project"),
    )


def _reckon(message):
    reckoner, values = find(message.get("reckoner")), message.get("values", {})
    names, settings = names_of_question(message, reckoner, values), _settings(message)
    return reckon(reckoner, values, settings, all_names(names)) | by_field_told(names, settings)


def _paper(message):
    reckoner, values = find(message.get("reckoner")), message.get("values", {})
    names = all_names(names_of_question(message, reckoner, values))
    return on_paper(reckoner, values, _settings(message), message.get("paper"), names)


def _settings(message):
    """The settings of a message; its own `unit`, if any, is what a bare number of it means."""
    settings = read_settings(message.get("settings"))
    unit = message.get("unit")
    return settings if unit is None else replace(settings, unit=unit_checked(unit, "unit"))


def _labels(message):
    document = read_document(message.get("document"))
    return labels(document, message.get("paper"), message.get("values"), message.get("unit"))


MESSAGES = {
    "describe": _describe,
    "read": _read,
    "tally": _tally,
    "tally_sum": tally_sum,
    "reckon": _reckon,
    "paper": _paper,
    "labels": _labels,
    **OF_PROJECTS,
}
"""The closed list, but for `strip`."""
