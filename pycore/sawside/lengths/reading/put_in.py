"""One sum written into another in the place of a name, with parentheses only where they count.

Both are echoes of the reader: their signs are + − × of ÷, and every length has its unit.
"""

import re

_NAME = re.compile(r"\[[^\[\]]*\]")
_INSIDE = re.compile(r"\([^()]*\)")
_PLACE = re.compile("\x01(.*?)\x02")
_ADDS = re.compile(r"[+−]")
_TIMES = re.compile(r"[×÷]|\bof\b")


def place(key):
    """What stands in an echo where the sum called `key` is to be put in."""
    return f"\x01{key}\x02"


def put_in(echo, sums):
    """An echo with the sum of `sums`, {key: text}, put into each `place`; the value is the same."""

    def put(found):
        text = sums[found[1]]
        before, after = echo[: found.start()].rstrip(), echo[found.end() :].lstrip()
        return f"({text})" if _parted(text, before, after) else text

    return _PLACE.sub(put, echo)


def _parted(text, before, after):
    """Whether a sum would be read as another one without parentheses around it."""
    bare = _NAME.sub("", text)
    while (inner := _INSIDE.sub("", bare)) != bare:
        bare = inner
    times = before.endswith(("×", "÷", "of"))
    if _ADDS.search(bare):
        return times or before.endswith("−") or after.startswith(("×", "÷", "of"))
    return times and _TIMES.search(bare) is not None
