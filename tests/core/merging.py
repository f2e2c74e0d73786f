"""Projects to merge, and what is read of them after."""

from hostile import backup_text
from projects import acts, answered, begun, change, lasting, view

from tests.core.oracles.spreadsheet import NAMES, random_cell

OLD = {"name": "Old", "distance": "8 ft", "distance_reads": "8 ft"}
STRETCHED = OLD | {"distance_reads": "8 ft 1/4 in"}


def merged(mine, theirs):
    """The answer to a merge, which must succeed and be undone by one act."""
    said = answered("merge", mine, text=backup_text(theirs))
    if said["undo"] is not None:
        undone = answered("change", said["document"], act=said["undo"])
        assert lasting(undone["document"]) == lasting(mine)
    return said


def sums(*readings):
    """A project of sums, each (name, text)."""
    return acts(begun(), *(("keep_reading", {"name": n, "text": t}) for n, t in readings))


def by_tape(tape, text="30", **set_to):
    """A project with a reading by a tape of its settings."""
    return acts(
        begun(),
        ("set", {"settings": set_to | {"tapes": [tape]}}),
        ("keep_reading", {"name": "Width", "text": text, "tape": tape["name"]}),
        ("keep_reading", {"name": "Half", "text": "[Width] / 2"}),
    )


def shelf(figure):
    """A project with a board of an own material."""
    material = {"name": "Plank", "tangential": figure, "radial": "0.001"}
    return acts(
        begun(),
        ("set", {"settings": {"materials": [material]}}),
        (
            "keep_line",
            {
                "name": "Top",
                "reckoner": "seasonal_movement",
                "values": {"width": "20", "species": "own: Plank", "now": "8", "year": "most"},
            },
        ),
    )


def copy_with(chance, document):
    """A project after some random changes: kept, corrected, renamed, deleted, another tape."""
    for _ in range(chance.randint(0, 6)):
        entries = document["entries"]
        names = [each["name"] for each in entries]
        act = chance.choice(["keep", "keep", "correct", "correct", "delete", "rename", "tapes"])
        more = {}
        if act == "tapes":
            tape = chance.choice([OLD, STRETCHED])
            act, more = "set", {"settings": {"tapes": [tape]} if chance.random() < 0.8 else {}}
        elif act == "rename" and entries:
            more = {"id": chance.choice(entries)["id"], "name": chance.choice(NAMES)}
        elif act == "delete" and entries:
            more = {"id": chance.choice(entries)["id"]}
        else:
            known = chance.choice(entries) if entries and act == "correct" else None
            cell = random_cell(chance, names or ["Side"])
            text = cell.text(chance.random() < 0.5)
            more = {"text": text, "values": {"known": text, "width": "2 1/4"}}
            if known is not None:
                more |= {"id": known["id"]}
            else:
                act = chance.choice(["keep_reading", "keep_line"])
                more |= {"name": chance.choice(NAMES), "reckoner": "mitered_length"}
                if not cell.terms and chance.random() < 0.5:
                    more |= {"tape": "Old"}
        said = change(document, act, **more)
        document = said["document"] if said["ok"] else document
    return document


def exact(document):
    """The exact number of every entry by its id; None for one that has none."""
    return {
        each["id"]: each["headline"] and each["headline"]["exact"]
        for each in view(document, drawings=False)["entries"]
    }
