"""Lines of the tally follow when what they use is renamed in the project."""

from sawside.errors import Refusal
from sawside.lengths.uses import renamed
from sawside.project.checks import MOST_NAME
from sawside.project.tally_document import read_line
from sawside.project.tally_lines import called
from sawside.project.vocabulary import Vocabulary


def rename_used(tally, act, around):
    """Names of the open project that were changed there, {old: new}: its lines follow."""
    names = act.get("names")
    if not isinstance(names, dict) or not all(map(_is_name, names.values())):
        raise Refusal("message", "Those are no names.", "Send the new by the old.", field="names")
    vocabulary = Vocabulary((new, old) for old, new in names.items())
    lines = [*tally["lines"]]
    for at, line in enumerate(lines):
        if "project" in line and around.project.is_of(line["project"]):
            nearer = {each.casefold() for each in called(lines[:at])}
            text = renamed(line["text"], vocabulary.longest, _new(vocabulary, nearer))
            lines[at] = read_line(line | {"text": text}, "line")
    return tally | {"lines": lines}, {"act": "put", "lines": tally["lines"]}


def _is_name(new):
    return isinstance(new, str) and 0 < len(new) <= MOST_NAME


def _new(vocabulary, nearer):
    """The new name of a use as it is written; None where a line of the tally is called so."""

    def new(written):
        target = vocabulary.target(written)
        if target is None or written.casefold() in nearer:
            return None
        label = written.rpartition(":")[2].strip()
        return f"{target.entry}: {label}" if target.answer else target.entry

    return new
