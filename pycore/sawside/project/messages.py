"""The messages about a project: what answers each, and what it needs and may have.

`change` gives a project changed, how to undo it, and what follows; `view` everything worked out;
`today` a document and forms of an earlier version as this one has them;
`entry` one entry with all that belongs to it; `sure` how far a number may be off, and why; `plan`
what to buy and which piece comes out of which board; `csv` a table of its parts, readings, cuts or
wood on hand, or of what its plan buys, and `take_csv` a project changed by one; `calendar` its
steps as events; `backup` all of it as the text of one file, `restore` a document out of such a
text, and `merge` a project changed by what such a text has more. Their shapes are in
`contract/messages.py`.
"""

from sawside.needs import Message, an_object, index, some, text, yes_or_no
from sawside.project.acts.change import change
from sawside.project.acts.table import an_act
from sawside.project.entry_in_full import entry_in_full
from sawside.project.files.backup import backup, restore
from sawside.project.files.merge import merge
from sawside.project.files.tables.tables import csv_in, csv_out
from sawside.project.kinds.checks import moment_given
from sawside.project.of_today import MOST_FORMS, a_form, of_today
from sawside.project.plans.make import plan
from sawside.project.schema.given import document
from sawside.project.steps.calendar import calendar
from sawside.project.steps.steps_ahead import now_given
from sawside.project.uncertainty.sure import sure
from sawside.project.view import view

_OF = {"document": document}
_ENTRY = _OF | {"id": text}
_WHEN = {"when": moment_given}
_NOW = {"now": now_given}
MESSAGES = {
    "change": Message(change, needs={"act": an_act}, may=_OF | {"follows": yes_or_no}),
    "view": Message(view, needs=_OF, may=_NOW | {"order": text, "drawings": yes_or_no}),
    "today": Message(of_today, may=_OF | {"forms": some(MOST_FORMS, a_form)}),
    "entry": Message(entry_in_full, needs=_ENTRY, may=_NOW),
    "sure": Message(sure, needs=_ENTRY, may={"answer": text, "tape": text}),
    "plan": Message(plan, needs=_OF, may={"effort": index}),
    "csv": Message(csv_out, needs=_OF | {"what": text}),
    "take_csv": Message(csv_in, needs=_OF | {"what": text, "text": text}, may=_WHEN),
    "calendar": Message(calendar, needs=_OF | {"when": text}, may={"id": text, "project": text}),
    "backup": Message(backup, needs=_OF, may=_WHEN | {"photos": an_object}),
    "restore": Message(restore, needs={"text": text}),
    "merge": Message(merge, needs=_OF | {"text": text}, may=_WHEN),
}
