"""What is made only when it is asked for: a picture, or the working in words.

A project works out hundreds of answers after a change and shows few of them.
"""

from functools import wraps


class Lazy:
    """The result of a call that was put off; made once, by `force`."""

    __slots__ = ("_call", "_result")

    def __init__(self, call):
        self._call = call
        self._result = None

    def __eq__(self, other):
        return isinstance(other, Lazy) and self.force() == other.force()

    __hash__ = None

    def force(self):
        """The result itself."""
        if self._call is not None:
            self._result, self._call = self._call(), None
        return self._result


def lazy(function):
    """A function whose calls are put off: each gives a `Lazy`."""

    @wraps(function)
    def put_off(*arguments, **named):
        return Lazy(lambda: function(*arguments, **named))

    return put_off


def force(value):
    """The result of a call that was put off; anything else as it is."""
    return value.force() if isinstance(value, Lazy) else value
