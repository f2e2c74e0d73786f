"""Files made to take all memory, and the most that Python held while each was looked at."""

import json
import tracemalloc

import sawside
from sawside.project.files.backup_text import MOST_MARKS

SIZE = 20_000_000
MOST_TIMES = 12
LEAST_ROOM = 300_000_000
"""The stated bound: so many times the size of a file is the most that is held to look at it, or so
many bytes where that is more."""

_HEAD = '{"sawside": "backup", "schema": 8, "when": "2026-11-25", "document": '


BOMBS = {
    "nested arrays": lambda: "[" * SIZE,
    "nested arrays, closed": lambda: "[" * (SIZE // 2) + "]" * (SIZE // 2),
    "nested objects": lambda: '{"a":' * (SIZE // 5),
    "flat arrays": lambda: f"[{'[],' * (SIZE // 3)}[]]",
    "flat objects": lambda: f"[{'{},' * (SIZE // 3)}{{}}]",
    "short numbers": lambda: f"[{'1,' * (SIZE // 2)}1]",
    "a run of digits": lambda: f"{_HEAD}{'9' * SIZE}}}",
    "a run of decimals": lambda: f"{_HEAD}0.{'9' * SIZE}}}",
    "a string": lambda: f'{_HEAD}"{"x" * SIZE}"}}',
    "a key": lambda: f'{{"{"x" * SIZE}": 1}}',
    "a key twice": lambda: f'{{"{"x" * (SIZE // 2)}": 1, "{"x" * (SIZE // 2)}": 1}}',
    "a string of wide characters": lambda: f'{_HEAD}"{"x" * SIZE}\U0001f4d0"}}',
    "a million keys": lambda: f"{_HEAD}{{{_keys(1_000_000)}}}}}",
    "as many keys as may be": lambda: f"{_HEAD}{{{_keys(MOST_MARKS - 10)}}}{' ' * SIZE}}}",
    "as many objects as may be": lambda: f"[{'{},' * (MOST_MARKS // 2 - 2)}{' ' * SIZE}1]",
    "as many keys as may be, nothing else": lambda: f"{{{_keys(MOST_MARKS - 10)}}}",
    "quotation marks": lambda: '"' * SIZE,
}
"""What each is, and what makes its text, most of 20 MB or a little more."""


def _keys(count):
    return ",".join(f'"{number}": 1' for number in range(count))


def looked_at(text, do="restore", **more):
    """(the answer to a file, what was held at most as a part of the stated bound)."""
    message = json.dumps({"do": do, "text": text} | more)
    tracemalloc.start()
    try:
        answer = sawside.handle_json(message)
        _, most = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    return json.loads(answer), most / max(MOST_TIMES * len(text), LEAST_ROOM)
