"""The messages about a project, from the message to what is answered.

{"do": "change", "document", "act", "follows"?}   changed, how to undo it, and what follows
{"do": "view", "document", "order"?, "drawings"?}  everything worked out
{"do": "entry", "document", "id"}                  one entry with all that belongs to it
"""

from sawside.project.asking import entry_in_full
from sawside.project.change import change
from sawside.project.document import read_document
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


MESSAGES = {
    "change": _change,
    "view": _view,
    "entry": _entry,
}
