"""Every message by its name: what is sent, and what is answered beside `"ok": true`."""

from typing import NamedTuple

from sawside.contract.answered import (
    BroughtUp,
    Described,
    File,
    Labeled,
    Read,
    Restored,
    SumKept,
    Table,
    Tallied,
)
from sawside.contract.asked import (
    Bare,
    ToBackUp,
    ToBringUp,
    ToCalendar,
    ToChange,
    ToDoubt,
    ToDraw,
    ToKeep,
    ToLabel,
    ToMerge,
    ToPlan,
    ToPrint,
    ToRead,
    ToReckon,
    ToRestore,
    ToTabulate,
    ToTakeTable,
    ToTally,
    ToTellNow,
    ToView,
)
from sawside.contract.pictures import Strip
from sawside.contract.plans import Planned
from sawside.contract.projects import Change, EntryInFull, Merged, Sure, View
from sawside.contract.questions import OnPaper, Reckoning


class Message(NamedTuple):
    """What is sent, and what is answered."""

    asks: type
    answers: type


MESSAGES = {
    "describe": Message(Bare, Described),
    "strip": Message(ToDraw, Strip),
    "read": Message(ToRead, Read),
    "reckon": Message(ToReckon, Reckoning),
    "paper": Message(ToPrint, OnPaper),
    "tally": Message(ToTally, Tallied),
    "tally_sum": Message(ToKeep, SumKept),
    "labels": Message(ToLabel, Labeled),
    "change": Message(ToChange, Change),
    "view": Message(ToView, View),
    "today": Message(ToBringUp, BroughtUp),
    "entry": Message(ToTellNow, EntryInFull),
    "sure": Message(ToDoubt, Sure),
    "plan": Message(ToPlan, Planned),
    "csv": Message(ToTabulate, Table),
    "take_csv": Message(ToTakeTable, Change),
    "calendar": Message(ToCalendar, File),
    "backup": Message(ToBackUp, File),
    "restore": Message(ToRestore, Restored),
    "merge": Message(ToMerge, Merged),
}
