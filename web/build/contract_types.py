"""The shapes of `pycore/sawside/contract/` for TypeScript: `web/python/contract.d.ts`.

`python3 build.py format` writes it again. It is for checks of the page alone: no phone gets it.
"""

import importlib
import inspect
import pkgutil
import sys
import types
import typing
from collections.abc import Iterable, Mapping
from typing import Any, Literal, NotRequired, Union, get_args, get_origin, is_typeddict

from web.build.environment import ROOT

FILE = ROOT / "web/python/contract.d.ts"
PLAIN = {
    str: "string",
    int: "number",
    float: "number",
    bool: "boolean",
    types.NoneType: "null",
    Any: "any",
}
HEAD = "/** What the core is asked and answers. Made of pycore/sawside/contract. */"
TAIL = """\
export type Name = keyof Asks;

/** A message, by its name. */
export type Message<N extends Name = Name> = Asks[N] & { do: N };

/** An answer: what was asked for, or why it is refused. */
export type Answered<Answer> = (Answer & { ok: true }) | Refused;

/** Asks the core; the promise is never rejected. */
export type Ask = <N extends Name>(message: Message<N>) => Promise<Answered<Answers[N]>>;
"""


def contract() -> tuple[dict[str, Any], Mapping[str, Any]]:
    """Return the shapes and aliases of the core's contract by name, and its table of messages."""
    package = importlib.import_module("sawside.contract")
    names = [f"{package.__name__}.{each.name}" for each in pkgutil.iter_modules(package.__path__)]
    modules = {name: importlib.import_module(name) for name in names}
    messages = modules[f"{package.__name__}.messages"].MESSAGES
    return named(vars(module) for module in modules.values()), messages


def named(modules: Iterable[Mapping[str, Any]]) -> dict[str, Any]:
    """Return the shapes and aliases of several modules; raise TypeError on two of one name."""
    found = {}
    for name, value in (each for module in modules for each in module.items()):
        if not (is_typeddict(value) or _is_alias(value)):
            continue
        if found.setdefault(name, value) != value:
            raise TypeError(f"Two shapes are called {name}: give one of them another name.")
    return dict(sorted(found.items()))


def declarations(shapes: Mapping[str, Any], messages: Mapping[str, Any]) -> str:
    """Return the whole file; raise TypeError on a type that it has no words for."""
    writer = _Writer(shapes)
    parts = [writer.declared(name, shape) for name, shape in shapes.items()]
    for title, attribute in (("Asks", "asks"), ("Answers", "answers")):
        lines = [
            f"  {name}: {writer.text(getattr(message, attribute))};"
            for name, message in messages.items()
        ]
        parts.append("\n".join([f"export interface {title} {{", *lines, "}"]))
    return "\n\n".join([HEAD, *parts, TAIL])


class _Writer:
    def __init__(self, shapes: Mapping[str, Any]) -> None:
        self._shapes = shapes
        unions = [(name, get_args(shape)) for name, shape in shapes.items() if _is_union(shape)]
        self._largest_first = sorted(unions, key=lambda union: -len(union[1]))

    def declared(self, name: str, shape: Any) -> str:
        if not is_typeddict(shape):
            members = [self.text(each) for each in get_args(shape)] if _is_union(shape) else None
            return f"export type {name} = {' | '.join(members or [self.text(shape)])};"
        members = typing.get_type_hints(shape, include_extras=True).items()
        lines = [f"  {self._member(key, hint)};" for key, hint in members]
        return "\n".join([*_comment(shape), f"export interface {name} {{", *lines, "}"])

    def _member(self, key: str, hint: Any) -> str:
        if get_origin(hint) is NotRequired:
            return f"{key}?: {self.text(get_args(hint)[0])}"
        return f"{key}: {self.text(hint)}"

    def text(self, hint: Any) -> str:
        """Return a type as TypeScript says it."""
        origin, inside = get_origin(hint), get_args(hint)
        if is_typeddict(hint) and self._shapes.get(hint.__name__) is hint:
            return hint.__name__
        if origin is list:
            item = self.text(inside[0])
            return f"({item})[]" if "|" in item else f"{item}[]"
        if origin is dict and inside[0] is str:
            return f"Record<string, {self.text(inside[1])}>"
        if origin is Literal:
            return " | ".join(_literal(each) for each in inside)
        if _is_union(hint):
            return " | ".join(self._union(inside))
        if hint in PLAIN:
            return PLAIN[hint]
        raise TypeError(f"There are no words for {hint} in {__name__}: add them.")

    def _union(self, members: tuple[Any, ...]) -> list[str]:
        """Name what has a name as a whole, and then what is left."""
        for name, inside in self._largest_first:
            if set(inside) <= set(members):
                left = tuple(each for each in members if each not in inside)
                return [name, *(self._union(left) if left else [])]
        return [self.text(each) for each in members]


def _is_union(hint: Any) -> bool:
    return get_origin(hint) in (Union, types.UnionType)


def _is_alias(value: Any) -> bool:
    return _is_union(value) or get_origin(value) in (Literal, list, dict)


def _literal(value: Any) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, str) and value.isprintable() and not set(value) & set('"\\'):
        return f'"{value}"'
    raise TypeError(f"There are no words for the literal {value!r} in {__name__}: add them.")


def _comment(shape: type) -> list[str]:
    lines = inspect.cleandoc(shape.__doc__ or "").splitlines()
    if len(lines) < 2:
        return [f"/** {line} */" for line in lines]
    return ["/**", *(f" * {line}".rstrip() for line in lines), " */"]


def main(options: list[str]) -> int:
    """Write the file; with `--check` only say whether it is up to date. Return the exit code."""
    text = declarations(*contract())
    if FILE.exists() and FILE.read_text(encoding="utf-8") == text:
        return 0
    if "--check" in options:
        print(f"{FILE.relative_to(ROOT)} is not what the core's contract says.")
        return 1
    FILE.write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT / "pycore"))
    sys.exit(main(sys.argv[1:]))
