"""Short ways to make a tally beside a project in a test."""

from fractions import Fraction

from projects import acts, begun

import sawside


def project(**readings):
    """A project with readings by their names."""
    kept = [("keep_reading", {"name": name, "text": text}) for name, text in readings.items()]
    return acts(begun(), *kept)


def told(document, tally, act=None, of="one", **more):
    """The answer to an act on a tally, whatever it is."""
    message = {"do": "tally", "tally": tally, "act": act, "document": document, "project": of}
    return sawside.handle(message | more)


def after(document, tally, *acts, **more):
    """The answer to the last of several acts, all of which must succeed."""
    for act in acts:
        said = told(document, tally, act, **more)
        assert said["ok"], said
        tally = said["tally"]
    return said


def enter(text):
    return {"act": "enter", "text": text}


def name(identity, given):
    return {"act": "name", "id": identity, "name": given}


def values(said):
    """What the lines come to, exactly; None for one in error."""
    return [line["value"] and Fraction(line["value"]["exact"]) for line in said["lines"]]


def texts(said):
    return [line["text"] for line in said["lines"]]
