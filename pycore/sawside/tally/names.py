"""What the names in a line of the tally stand for.

A name is a line's above, or else one of the project that is open when the line is entered. Which of
the two is settled then: the line's mark, `project`, holds each name that it took from there with
the entry and answer that it means, so that no name given later, here or there, makes it mean
another. An entry that is called otherwise since is followed, and the line's text with it.
"""

from sawside.lengths.reading.refusals import MOST_CHARACTERS
from sawside.lengths.reading.uses import renamed
from sawside.project.evaluation.vocabulary import Target, longest_beside, longest_of, uses_beside


def called(lines):
    """What some lines are called, in small letters: their numbers and their names."""
    return [each.casefold() for line in lines for each in (line["id"], line["name"]) if each]


def of_project(line):
    """{name in small letters: `Target`} of the names that a line took from its project."""
    names = line["project"]["names"] if "project" in line else {}
    return {key: Target(each["entry"], each["answer"]) for key, each in names.items()}


def longest_in(line, above):
    """What `uses` asks for in a line, of what it took from its project and what is `above` it."""
    own = longest_of(tuple(of_project(line)))
    return longest_beside(line["text"], above, own)


def uses_in(line, above):
    """Every `Use` of a name in a line; those `above` it are known by what they are called."""
    return uses_beside(line["text"], above, longest_of(tuple(of_project(line))))


def marked(line, above, project, taken=()):
    """A line with what its names mean: of what is called so `above` it, or of the open project.

    `taken` are names that are the project's also where a line above is called so.
    """
    bare = {key: value for key, value in line.items() if key != "project"}
    nearer, targets = set(above).difference(taken), {}
    for use in project.uses(line["text"], nearer):
        key = use.written.casefold()
        target = None if key in nearer else project.target(use.written)
        if target is not None:
            targets[key] = target
    return _with(bare, targets, {"id": project.identity, "name": project.name})


def up_to_date(tally, project):
    """A tally whose lines call what they use of the open project as that is called now.

    A name stays as it was written where the new one is a line's above it, or the text would get too
    long: it goes on meaning what it did.
    """
    lines, nearer = [], set()
    for line in tally["lines"]:
        follows = "project" in line and project.is_of(line["project"])
        lines.append(_up_to_date(line, nearer, project) if follows else line)
        nearer.update(called([line]))
    return tally | {"lines": lines}


def _up_to_date(line, nearer, project):
    mark = line["project"] | {"name": project.name}
    targets = {key: _there(key, each, project) for key, each in of_project(line).items()}
    if all(project.target(key) == target for key, target in targets.items()):
        return _with(line, targets, mark)
    names = []

    def new(written):
        target = targets.get(written.casefold())
        if target is None:
            return None
        name = name_now(written, target, project)
        if name.casefold() in nearer:
            name = written
        names.append((name.casefold(), target))
        return None if name == written else name

    text = renamed(line["text"], longest_in(line, nearer), new)
    if len(text) > MOST_CHARACTERS or len(dict(names)) < len(set(names)):
        return _with(line, targets, mark)
    return _with(line | {"text": text}, dict(names), mark)


def _there(key, target, project):
    """The same target; by its name where its entry is gone, as the project's own texts find it."""
    return target if project.called(target.entry) else project.target(key) or target


def name_now(written, target, project):
    """What a target is called now: as it is written, while that means it."""
    name = project.called(target.entry)
    if name is None or project.target(written) == target:
        return written
    label = written.rpartition(":")[2].strip() or target.answer
    return f"{name}: {label}" if target.answer else name


def _with(line, targets, mark):
    if not targets:
        return line
    names = {key: target._asdict() for key, target in targets.items()}
    return line | {"project": mark | {"names": names}}
