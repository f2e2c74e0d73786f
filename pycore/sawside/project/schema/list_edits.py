"""A list of things with ids (the entries of a project, the lines of a tally) with one changed."""

from sawside.errors import message_fault


def with_id(things, id):
    """(index, thing) of an id; None when it is not there."""
    return next(((at, each) for at, each in enumerate(things) if each["id"] == id), None)


def with_one(things, at, thing):
    """The list with another thing in one place."""
    return [*things[:at], thing, *things[at + 1 :]]


def without(things, at):
    """The list without the thing in one place."""
    return [*things[:at], *things[at + 1 :]]


def with_more(things, thing, at, key):
    """The list with one thing more; "message" of the `key` for a place that is none in it."""
    if at > len(things):
        raise message_fault(key, "a place in the list")
    return [*things[:at], thing, *things[at:]]
