"""A record cabinet as a project, and short ways to change and see one in a test."""

import sawside

RAIL = {"known": "31 5/8", "width": "2 1/4"}


def ask(do, document, **more):
    """The answer to a message about a project, whatever it is."""
    return sawside.handle({"do": do, "document": document} | more)


def answered(do, document, **more):
    """The answer to a message about a project, which must succeed."""
    said = ask(do, document, **more)
    assert said["ok"], said
    return said


def change(document, act, **more):
    """The answer to an act, whatever it is."""
    return ask("change", document, act={"act": act} | more)


def changed(document, act, **more):
    """The document after an act, which must succeed."""
    said = change(document, act, **more)
    assert said["ok"], said
    return said["document"]


def acts(document, *made):
    """The document after several acts, each (act, what it is given)."""
    for act, more in made:
        document = changed(document, act, **more)
    return document


def begun():
    """An empty project."""
    return changed(None, "begin", name="Record cabinet")


def cabinet():
    """A reading and two mitered pieces that do not depend on it."""
    return acts(
        begun(),
        ("keep_reading", {"name": "Alcove width", "text": "37 9/16"}),
        ("keep_line", {"name": "Top rail", "reckoner": "mitered_length", "values": RAIL}),
        ("keep_line", {"name": "", "reckoner": "mitered_length", "values": RAIL | {"known": "40"}}),
    )


def linked():
    """An alcove's width, the case that stands in it, its top rail, and a piece of the rail's."""
    return acts(
        begun(),
        ("keep_reading", {"name": "Alcove width", "text": "37 9/16"}),
        ("keep_reading", {"name": "Case width", "text": "Alcove width - 2 × 1/8"}),
        (
            "keep_line",
            {
                "name": "Top rail",
                "reckoner": "mitered_length",
                "values": {"known": "[Case width]", "known_face": "outside", "width": "2 1/4"},
            },
        ),
        (
            "keep_line",
            {
                "name": "Panel",
                "reckoner": "mitered_length",
                "values": {
                    "known": "[Top rail: Short side] + 2 × 3/8",
                    "width": "1",
                    "left_end": "square",
                    "right_end": "square",
                },
            },
        ),
    )


def view(document, **more):
    """A project with everything worked out."""
    return answered("view", document, **more)


def headlines(document):
    """What the entries of a project come to, as text by name; None for one in error."""
    return {
        entry["name"]: entry["headline"] and entry["headline"]["text"]
        for entry in view(document)["entries"]
    }


def lasting(document):
    """A document without what only ever grows."""
    return {key: value for key, value in document.items() if key not in ("next", "log")}


def name_of(document, identity):
    """The name of an entry."""
    return next(entry["name"] for entry in document["entries"] if entry["id"] == identity)


def entry(document, name):
    """An entry of a view by its name."""
    return next(each for each in view(document)["entries"] if each["name"] == name)
