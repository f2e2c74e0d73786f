"""Tallies of older schemas brought up to this one, a step a version."""

from sawside.project.evaluation.vocabulary import longest_of, uses_beside
from sawside.tally.names import called

OLDEST = 1


def with_names(lines):
    """From 1 to 2: lines whose mark also holds the names that they took from their project.

    Those are what no line above is called. Their entries are found by name (entry "") once that
    project is open: a tally of schema 1 knew no more.
    """
    new = []
    for line in lines:
        mark = line.get("project")
        if mark is not None and "names" not in mark:
            above = set(called(new))
            uses = uses_beside(line["text"], above, longest_of(()))
            written = [use.written.casefold() for use in uses]
            names = {each: {"entry": "", "answer": ""} for each in written if each not in above}
            line = line | {"project": mark | {"names": names}}
        new.append(line)
    return new
