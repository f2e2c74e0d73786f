"""Naming a line of the tally: no line below comes to mean anything else by it."""

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.names import check_name
from sawside.lengths.reading.refusals import MOST_CHARACTERS
from sawside.lengths.reading.scanner import plain_spaces
from sawside.lengths.reading.uses import renamed
from sawside.project.kinds.checks import MOST_NAME
from sawside.tally.names import called, longest_in, of_project


def name_line(lines, at, name):
    """The lines with another name for one, "" for none; those below call it by that.

    Refusals: "message" for one that is too long, "conflict" for one that a sum can't hold, that
    another line has or that a line below took from a project, "range" where a line gets too long.
    """
    if len(name) > MOST_NAME:
        raise Refusal("message", "That name is too long.", "Shorten it.")
    line, name = lines[at], plain_spaces(name).strip()
    if name:
        check_name(name)
        _refuse_taken([*lines[:at], *lines[at + 1 :]], lines[at + 1 :], name)
    new = [*lines[:at], line | {"name": name}]
    for each in lines[at + 1 :]:
        above = called(lines[: len(new)]) if line["name"] else ()
        new.append(_calling(each, line["name"], name or line["id"], above))
    return new


def _refuse_taken(others, below, name):
    key = name.casefold()
    if any(each["name"].casefold() == key for each in others):
        raise _conflict(f"There’s already a line named {quoted(name)}.")
    for each in below:
        if key in of_project(each):
            called, project = each["name"] or each["id"], each["project"]["name"]
            raise _conflict(f"Line {called} uses {quoted(name)} from {project}.")


def _conflict(message):
    return Refusal("conflict", message, "Choose another name.", field="name")


def _calling(line, old, new, above):
    """A line that calls another by its new name; what it took from its project stays."""
    old = old.casefold()
    if not old or old in of_project(line):
        return line
    name = {old: new}.get
    text = renamed(line["text"], longest_in(line, above), lambda written: name(written.casefold()))
    if len(text) > MOST_CHARACTERS:
        raise Refusal(
            "range",
            f"With that name, line {line['name'] or line['id']} gets too long.",
            "Choose a shorter name.",
            field="name",
        )
    return line | {"text": text}
