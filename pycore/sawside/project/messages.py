"""The messages about a project, from the message to what is answered.

{"do": "change", "document", "act", "follows"?}            changed, how to undo it, and what follows
{"do": "view", "document", "order"?, "drawings"?}          everything worked out
{"do": "entry", "document", "id"}                          one entry with all that belongs to it
{"do": "sure", "document", "id", "answer"?, "tape"?}       how far a number may be off, and why
{"do": "csv", "document", "what"}                          a table of its parts, readings or cuts
{"do": "take_csv", "document", "what", "text", "when"?}    changed by such a table
{"do": "backup", "document", "when"?, "photos"?}           all of it as the text of one file
{"do": "restore", "text"}                                  a document out of such a text
{"do": "merge", "document", "text", "when"?}               changed by what such a text has more
"""

from sawside.project.acts.change import change
from sawside.project.entry_in_full import entry_in_full
from sawside.project.files.backup import backup, restore
from sawside.project.files.merge import merge
from sawside.project.files.tables.tables import csv_in, csv_out
from sawside.project.schema.document import read_document
from sawside.project.uncertainty.sure import sure
from sawside.project.view import view


def _document(message):
    return read_document(message.get("document"))


def _change(message):
    data = message.get("document")
    document = None if data is None else read_document(data)
    return change(document, message.get("act"), tell=message.get("follows") is not False)


def _view(message):
    drawings = message.get("drawings") is not False
    return view(_document(message), message.get("order", "set-up"), drawings=drawings)


def _entry(message):
    return entry_in_full(_document(message), message.get("id"))


def _sure(message):
    return sure(_document(message), message.get("id"), message.get("answer"), message.get("tape"))


def _csv(message):
    return csv_out(_document(message), message.get("what"))


def _take_csv(message):
    return csv_in(_document(message), message.get("what"), message.get("text"), message.get("when"))


def _backup(message):
    return backup(_document(message), message.get("when"), message.get("photos"))


def _restore(message):
    return restore(message.get("text"))


def _merge(message):
    return merge(_document(message), message.get("text"), message.get("when"))


MESSAGES = {
    "change": _change,
    "view": _view,
    "entry": _entry,
    "sure": _sure,
    "csv": _csv,
    "take_csv": _take_csv,
    "backup": _backup,
    "restore": _restore,
    "merge": _merge,
}
