"""What is made only when it is asked for: a picture, or the working in words.

A project works out hundreds of answers after a change and shows few of them.
"""

from functools import wraps


class Later:
    """The result of a call that was put off; made once, by `made`."""

    __slots__ = ("_call", "_result")

    def __init__(self, call):
        self._call = call
        self._result = None

    def made(self):
        """The result itself."""
        if self._call is not None:
            self._result, self._call = self._call(), None
        return self._result


def later(function):
    """A function whose calls are put off: each gives a `Later`."""

    @wraps(function)
    def put_off(*arguments, **named):
        return Later(lambda: function(*arguments, **named))

    return put_off


def made(value):
    """The result of a call that was put off; anything else as it is."""
    return value.made() if isinstance(value, Later) else value
