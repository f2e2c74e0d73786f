"""What a message or an act needs and may have beside its name, and the one check of it.

A check is a function from a value and its place, the key that it is sent under, to what is asked
with; it raises a `Refusal`. Each message and act has a check for every key that it needs and for
every one that it may have. A key that is needed and not there is refused; one that may be there and
is null counts as left out; any other is left unread.

Imports: errors.
"""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import NamedTuple

from sawside.errors import Refusal, message_fault

NOTHING = MappingProxyType({})


class Message(NamedTuple):
    """What answers a message, called with its checked keys, and the checks of these."""

    answer: Callable
    needs: Mapping[str, Callable] = NOTHING
    may: Mapping[str, Callable] = NOTHING


def checked(data, asked):
    """{key: what its check made of it} of a message or an act; `asked` has its `needs` and `may`.

    Refusals: "message" naming the key that is not there, and those of the checks.
    """
    for key in asked.needs:
        require(data.get(key), key)
    checks = (*asked.needs.items(), *asked.may.items())
    return {key: check(data[key], key) for key, check in checks if data.get(key) is not None}


def require(value, key):
    """Refuse what is needed and is not there."""
    if value is None:
        raise Refusal("message", f"“{key}” isn’t there.", f"Send it as “{key}”.", field=key)


def of_type(kind, wanted):
    """The check of a value of one type of Python's; `wanted` says it: "a text"."""

    def check(value, place):
        if not isinstance(value, kind) or (kind is int and isinstance(value, bool)):
            raise message_fault(place, wanted)
        return value

    return check


text = of_type(str, "a text")
yes_or_no = of_type(bool, "true or false")
an_object = of_type(dict, "an object")
a_list = of_type(list, "a list")
_whole = of_type(int, "a whole number")


def index(value, place):
    """A place in a list, from 0; whether the list is so long is for the caller to see."""
    if _whole(value, place) < 0:
        raise message_fault(place, "a place in the list")
    return value


def one_of(*offered):
    """The check of one of a few values."""
    wanted = f"{', '.join(map(str, offered[:-1]))} or {offered[-1]}"

    def check(value, place):
        if not any(type(value) is type(each) and value == each for each in offered):
            raise message_fault(place, wanted)
        return value

    return check


def some(most, check=lambda value, _place: value):
    """The check of a list of 1 to `most` things that each pass one, with their place in it."""

    def each_checked(value, place):
        if not isinstance(value, list) or not 0 < len(value) <= most:
            raise message_fault(place, f"a list of 1 to {most}")
        return [check(each, f"{place}[{at}]") for at, each in enumerate(value)]

    return each_checked
