"""Lines with steps in a project, for the tests of what is ticked."""

from projects import acts, answered, begun

START = "2026-11-30T18:00"
OIL = {"finish": "linseed", "start": START}


def finishing(reckoner="coats", **values):
    line = {"name": "Finish", "reckoner": reckoner, "values": values}
    return acts(begun(), ("keep_line", line))


def steps(document, **more):
    """The steps of the first line by their keys."""
    told = answered("entry", document, id="1", **more)["reckoning"]["steps"]
    return {step["key"]: step for step in told}


def due(document):
    return {key: step["due"] and step["due"]["at"] for key, step in steps(document).items()}


def states(document, **more):
    return {key: each["state"] for key, each in steps(document, **more).items()}
