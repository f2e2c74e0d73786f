"""A sum of the pad as a project can keep it: whole, with the names of the project, without lines.

Each line of the tally that it uses is written out in its place, in parentheses where they count,
and every bare number of it gets the unit that it was typed in. So it comes to the very number of
the tally, and follows a correction of each reading as the tally does.
"""

from typing import NamedTuple

from sawside.errors import Refusal
from sawside.lengths.display import mixed_text
from sawside.lengths.reading.put_in import place, put_in
from sawside.lengths.reading.reader import read
from sawside.lengths.reading.refusals import MOST_CHARACTERS
from sawside.needs import require
from sawside.project.schema.list_edits import with_id
from sawside.tally.lines import opened, refusal_of, stand_for, worked_out
from sawside.tally.names import called, marked, name_now, of_project, uses_in

_NUMBERS = ("{} in ÷ 1 in", "{}″", "{} in × 1 in", "{} in × 1 in × 1 in")
"""A number by its power, as a text that comes to it."""


class _Whole(NamedTuple):
    """A line written out: its text, "" where it is too long, and the `Target`s that it names."""

    text: str
    targets: frozenset


def tally_sum(id=None, text=None, **open_):
    """The contract of `tally_sum` (without "ok"): what to keep of a line by its `id`, or of `text`.

    What is open is as `lines.opened` takes it. Answers
    {"text", "unit" of its bare numbers, "value", "said" where only its number can be kept}.
    Refusals: as reading, "unknown", and "range" where even the number is too long.
    """
    tally, around = opened(**open_)
    lines = _with_used(*_asked(tally["lines"], id, text, around))
    told, stand = worked_out(tally | {"lines": lines}, around)
    if not told[-1]["ok"]:
        raise refusal_of(told[-1]["error"])
    return _kept(lines, stand, around.project) | {"value": told[-1]["value"]}


def _asked(lines, id, text, around):
    """(the lines above what is asked for, that as a line)."""
    if id is not None:
        there = with_id(lines, id)
        if there is None:
            message = "That line isn’t in the history."
            raise Refusal("unknown", message, "Choose another.", field="id")
        at, line = there
        return lines[:at], line
    require(text, "text")
    line = {"id": "", "name": "", "text": text.strip(), "unit": around.settings.unit}
    return lines, marked(line, called(lines), around.project)


def _with_used(above, line):
    """The lines that a line uses, directly or through others, in their order, and it at the end."""
    names = called(above)
    wanted, found = _calls(line, names), [line]
    for each in reversed(above):
        if not wanted.isdisjoint(called([each])):
            wanted |= _calls(each, names)
            found.append(each)
    return found[::-1]


def _calls(line, above):
    """What a line calls of the tally."""
    return {use.written.casefold() for use in uses_in(line, above)} - of_project(line).keys()


def _kept(lines, stand, project):
    """What is kept of the last line: all of it, or else with numbers for lines without names."""
    line = lines[-1]
    value = read(line["text"], line["unit"], stand_for(line, stand, project))
    whole, shorter = (_written_out(lines, stand, project, numbers) for numbers in (False, True))
    typed = "" if _calls(line, stand) else line["text"]
    for text in (typed, whole.text, shorter.text):
        if _comes_to(text, line["unit"], project) == (value.value, value.power, whole.targets):
            return {"text": text, "unit": line["unit"], "said": ""}
    text = _number(value)
    if _comes_to(text, line["unit"], project) is None:
        raise Refusal(
            "range",
            f"This sum is longer than {MOST_CHARACTERS} characters.",
            "Save a line above it first, then go on from it by name.",
            field="text",
        )
    return {"text": text, "unit": line["unit"], "said": _said(whole.targets, project)}


def _written_out(lines, stand, project, numbers):
    """The `_Whole` of the last line; with `numbers` each line above without names is its number."""
    done = {}
    for line in lines:
        own, names, targets = of_project(line), {}, set()
        for written, named in stand_for(line, stand, project).items():
            key = written.casefold()
            if key in own:
                echo = f"[{name_now(written, own[key], project)}]"
                targets.add(own[key])
            else:
                echo = place(key)
                targets |= done[key].targets
            names[written] = named._replace(echo=echo)
        reading = read(line["text"], line["unit"], names)
        if numbers and not targets and line is not lines[-1]:
            text = _number(reading)
        else:
            text = put_in(reading.echo, {key: each.text for key, each in done.items()})
        short = len(text) <= MOST_CHARACTERS and all(done[key].text for key in _calls(line, stand))
        whole = _Whole(text if short else "", frozenset(targets))
        done |= dict.fromkeys(called([line]), whole)
    return whole


def _number(reading):
    return _NUMBERS[reading.power].format(mixed_text(reading.value))


def _comes_to(text, unit, project):
    """(value, power, targets) of a text in the project; None where it can't be kept there."""
    targets = {use.written: project.target(use.written) for use in project.uses(text)}
    if not text or None in targets.values():
        return None
    names = {written: project.named(target, written) for written, target in targets.items()}
    try:
        reading = read(text, unit, names)
    except Refusal:
        return None
    return reading.value, reading.power, frozenset(targets.values())


def _said(targets, project):
    names = sorted({project.called(target.entry) for target in targets})
    follows = f" It won’t follow {' or '.join(names)}." if names else ""
    return f"The whole sum is too long to save, so only its number is saved.{follows}"
