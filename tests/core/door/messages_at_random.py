"""Messages to the door at random: each kind of them, about the project of a session.

A session (`door_at_random`) has its `chance`, `document`, `tally`, `undos` and the `names` that its
texts may use.
"""

import sawside
from sawside.project.acts.table import ACTS
from sawside.project.schema.former_questions import MERGED
from sawside.tally.acts import ACTS as TALLY_ACTS
from tests.core.door.typed_at_random import (
    LABELS,
    MOMENTS,
    QUESTIONS,
    settings,
    text,
    values,
    values_of,
)
from tests.core.hostile import WHEN, backup_text, mutant, project

TABLES = ["parts", "readings", "cuts", "stock", "buy"]
PART_KEYS = {
    key: [
        part["key"]
        for part in sawside.handle(
            {"do": "reckon", "reckoner": key, "values": question["example"]}
        )["parts"]
    ]
    for key, question in QUESTIONS.items()
}
SAMPLE = project()
BACKUP = backup_text(SAMPLE)
STEP_KEYS = {
    key: [
        step["key"]
        for step in sawside.handle(
            {"do": "reckon", "reckoner": key, "values": QUESTIONS[key]["example"]}
        )["steps"]
    ]
    for key in ("coats", "before_finish")
}
OFTEN = ("keep_reading", "keep_line", "correct", "cut", "trial", "tick", "save_offcuts")
TICKS = ("tick", "untick")
AT_THE_SAW = ("cut", "spoil", "recut", "about", "trial")
EXACT = ["289/8", "1/0", "1e5000000", "9" * 199, "nan", "1/3", "-7", "9" * 3000, 3, None, "1/" * 9]


def _nothing(_session):
    return {}


def _read(session):
    chance = session.chance
    message = {"text": text(chance, session.names)}
    if chance.random() < 0.7:
        message["document"] = session.document
    if chance.random() < 0.2:
        message |= {"id": _entry(session).get("id"), "unit": chance.choice(["mm", "in", "ft"])}
    if chance.random() < 0.1:
        kind = chance.choice(["length", "count", "area", "volume", "angle"])
        message["names"] = {"A": {"exact": chance.choice(EXACT), "kind": kind}}
        message["text"] = text(chance, ["[A]", "A"])
    return message


def _reckon(session):
    chance, question = session.chance, _question(session)
    linked = chance.random() < 0.7
    names = session.names if linked else ()
    message = {"reckoner": question["key"], "values": values(chance, question, names)}
    return message | ({"document": session.document} if linked else {})


def _paper(session):
    return _reckon(session) | {"paper": session.chance.choice(["letter", "a4", "a5"])}


def _labels(session):
    chance = session.chance
    filled = {"values": values_of(chance, LABELS)} if chance.random() < 0.5 else {}
    return {"document": session.document, "paper": chance.choice(["letter", "a4"])} | filled


def _tally(session):
    chance = session.chance
    message = {"tally": session.tally, "project": "one"}
    if chance.random() < 0.7:
        message["document"] = session.document
    if chance.random() < 0.9:
        message["act"] = _tally_act(session)
    return message


def _tally_sum(session):
    """What a project can keep of a line of the tally, or of a sum being typed."""
    chance, tally = session.chance, session.tally
    lines = (tally or {}).get("lines", [])
    message = {"tally": tally, "project": "one", "document": session.document}
    if lines and chance.random() < 0.7:
        return message | {"id": chance.choice(lines)["id"]}
    known = [f"[{each['name'] or each['id']}]" for each in lines] + session.names
    return message | {"text": text(chance, chance.sample(known, min(2, len(known))))}


def _tally_act(session):
    """Any act on the tally, with all that any of them takes."""
    chance = session.chance
    lines = (session.tally or {}).get("lines", [])
    known = [f"[{each['name'] or each['id']}]" for each in lines] + session.names
    names = chance.sample(known, min(2, len(known)))
    line = chance.choice(lines) if lines else {"id": "1"}
    return {
        "act": chance.choice([*TALLY_ACTS, *["enter"] * 8]),
        "id": line["id"],
        "at": chance.randint(0, len(lines)),
        "text": text(chance, names),
        "how": chance.choice(["half", "double", "kerf", "again", "sing"]),
        "name": chance.choice(["side", "depth", "", "shelf 2", text(chance)]),
        "names": {each[1:-1]: _name(session) for each in names},
        "line": {"id": line["id"], "name": "", "text": text(chance, names), "unit": "in"},
        "lines": lines[1:],
    }


def _change(session):
    chance, document = session.chance, session.document
    if chance.random() < 0.02:
        return {"act": {"act": "begin", "name": _name(session)}}
    act = _act(session)
    if session.undos and chance.random() < 0.1:
        act = session.undos.pop()
    elif chance.random() < 0.1:
        acts = [_act(session) for _ in range(chance.randint(0, 3))]
        act = {"act": "several", "acts": acts}
    quiet = {"follows": False} if chance.random() < 0.2 else {}
    return {"document": document, "act": act} | quiet


def _act(session):
    """Any act, with all that any of them takes."""
    chance, question = session.chance, _question(session)
    name = chance.choice([*ACTS, *OFTEN * 2])
    entry = _entry(session, "line" if name in AT_THE_SAW + TICKS else None)
    if name == "correct":
        question = QUESTIONS.get(entry.get("reckoner"), question)
    filled = values_of(chance, LABELS)
    if name in ("keep_line", "correct"):
        filled = values(chance, question, session.names)
    places = len(session.document["entries"])
    act = {
        "act": name,
        "id": entry.get("id", "1"),
        "name": _name(session),
        "text": text(chance, session.names),
        "unit": chance.choice(["in", "mm", "ft"]),
        "reckoner": question["key"],
        "values": filled,
        "settings": settings(chance),
        "when": chance.choice([WHEN, "", "2026-11-25"]),
        "at": chance.randint(0, places),
        "to": chance.randint(0, places),
        "entry": entry | {"id": str(chance.randint(1, session.document["next"]))},
        "entries": [entry | {"name": _name(session)}] if entry else [],
        "part": _part(session, entry),
        "by": chance.choice([1, 1, 1, -1]),
        "which": chance.choice([[0], [0], 0, [0, 1]]),
        "measured": text(chance),
        "board": chance.choice(["1", "1", "2", "9"]),
        "about": {"material": _name(session), "rough_length": chance.choice(["1/2", text(chance)])},
    }
    if name in TICKS:
        act |= _ticked(session)
    if name == "keep_line":
        act["about"] = dict.fromkeys(PART_KEYS[question["key"]][:1], act["about"])
    for key in ("where", "tape", "off", "photo", "side", "fineness"):
        if chance.random() < 0.1:
            act[key] = chance.choice(["Yellow", "heavy", "1/32", "p1", "1/64", text(chance)])
    return {key: each for key, each in act.items() if chance.random() < 0.98}


def _ticked(session):
    """What is told of a step; a line with steps, mostly."""
    chance = session.chance
    lines = [each for each in session.document["entries"] if each.get("reckoner") in STEP_KEYS]
    line = chance.choice(lines or [{}])
    keys = STEP_KEYS.get(line.get("reckoner")) or ["coat1"]
    told = {"step": chance.choice(keys), "done_at": chance.choice(MOMENTS)}
    for key, typed in (("temperature", "68 F"), ("humidity", "45"), ("note", "Oak")):
        if chance.random() < 0.4:
            told[key] = chance.choice([typed, text(chance)])
    return told | ({"id": line["id"]} if lines else {})


def _part(session, entry):
    return session.chance.choice(PART_KEYS.get(entry.get("reckoner")) or ["piece"])


def _name(session):
    chance = session.chance
    return text(chance) if chance.random() < 0.1 else chance.choice(["Alcove", "Frame", "Side"])


def _entry(session, kind=None):
    """An entry, of a kind where there is one; {} where there is none at all."""
    entries = session.document["entries"]
    chosen = [each for each in entries if each["kind"] == kind]
    return session.chance.choice(chosen or entries or [{}])


def _question(session):
    return session.chance.choice([*QUESTIONS.values()])


def _about(session):
    return {"document": session.document}


def _view(session):
    chance = session.chance
    order = chance.choice(["set-up", "board", "part"])
    return _about(session) | {"order": order, "drawings": chance.random() < 0.3} | _now(session)


def _now(session):
    chance = session.chance
    return {"now": chance.choice([*MOMENTS, 3])} if chance.random() < 0.3 else {}


def _today(session):
    chance = session.chance
    typed = values(chance, _question(session), ())
    forms = [{"reckoner": chance.choice([*MERGED, "sing"]), "values": typed}]
    return _about(session) | {"forms": forms}


def _one_entry(session):
    return _about(session) | {"id": _entry(session).get("id")}


def _sure(session):
    tape = {"tape": session.chance.choice(["", "h44", "II"])}
    return _one_entry(session) | (tape if session.chance.random() < 0.3 else {})


def _plan(session):
    return _about(session) | {"effort": session.chance.choice([0, 0, 1])}


def _csv(session):
    return _about(session) | {"what": session.chance.choice(TABLES)}


def _take_csv(session):
    message = _csv(session)
    table = sawside.handle({"do": "csv"} | message).get("text", "")
    return message | {"text": _file(session, table), "when": WHEN}


def _calendar(session):
    when = {"when": session.chance.choice([WHEN, f"{WHEN}Z", "2026-11-25"])}
    return (_one_entry(session) if session.chance.random() < 0.3 else _about(session)) | when


def _backup(session):
    return _about(session) | {"when": WHEN, "photos": {}}


def _restore(session):
    return {"text": _file(session, backup_text(session.document))}


def _merge(session):
    return _about(session) | {"text": _file(session, BACKUP), "when": WHEN}


def _file(session, good):
    chance = session.chance
    return mutant(good, chance) if good and chance.random() < 0.5 else good


MESSAGES = {
    "describe": (0.2, _nothing),
    "strip": (1, _nothing),
    "read": (38, _read),
    "reckon": (18, _reckon),
    "paper": (2, _paper),
    "tally": (12, _tally),
    "tally_sum": (3, _tally_sum),
    "labels": (1, _labels),
    "change": (28, _change),
    "view": (2, _view),
    "today": (1, _today),
    "entry": (3, lambda session: _one_entry(session) | _now(session)),
    "sure": (3, _sure),
    "plan": (0.7, _plan),
    "csv": (1, _csv),
    "take_csv": (2, _take_csv),
    "calendar": (1, _calendar),
    "backup": (1, _backup),
    "restore": (1, _restore),
    "merge": (1, _merge),
}
"""How often each is made, of some hundred, and by what."""
