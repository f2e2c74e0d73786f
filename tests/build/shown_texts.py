"""Every text that a person may see, found where it is written: in the core and in the page."""

import ast
import json
import re
from html.parser import HTMLParser

from web.build.environment import ROOT

_TOKEN = re.compile(
    r"""(?P<left> //[^\n]* | /\*.*?\*/ )
      | (?P<string> "(?:\\.|[^"\\\n])*" | '(?:\\.|[^'\\\n])*' )
      | (?P<regex> (?<=[(,=:\[!&|?{};>])\s*/(?![/*])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n])+/ )
      | (?P<template> ` ) | (?P<open> \{ ) | (?P<close> \} ) | (?P<other> . )""",
    re.VERBOSE | re.DOTALL,
)
_PART = re.compile(r"(?P<text>(?:\\.|\$(?!\{)|[^`\\$])+)|(?P<value>\$\{)|(?P<end>`)", re.DOTALL)


def core_texts():
    """(file, line, text) of every literal of the core that reads as a text."""
    for path in sorted((ROOT / "pycore/sawside").rglob("*.py")):
        for line, text in python_texts(path.read_text(encoding="utf-8")):
            if is_text(text):
                yield str(path.relative_to(ROOT)), line, text


def python_texts(code):
    """(line, text) of every literal of Python; what an f-string fills in is {}.

    Left out are docstrings, sources, and what a fault of the program says to who mends it.
    """
    return list(_of_python(ast.parse(code)))


def _is_left_out(node):
    if isinstance(node, ast.Expr):
        return isinstance(node.value, ast.Constant)
    if isinstance(node, ast.Raise):
        return "Error(" in ast.unparse(node)
    if isinstance(node, ast.Assign):
        return "SOURCE" in ast.unparse(node.targets[0])
    return isinstance(node, ast.keyword) and node.arg == "source"


def _of_python(node):
    if _is_left_out(node):
        return
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.lineno, node.value
    elif isinstance(node, ast.JoinedStr):
        parts = (each.value if isinstance(each, ast.Constant) else "{}" for each in node.values)
        yield node.lineno, "".join(parts)
    for child in _below(node):
        yield from _of_python(child)


def _below(node):
    """What stands in a node; of an f-string only what is filled in."""
    if isinstance(node, ast.JoinedStr):
        return [each.value for each in node.values if isinstance(each, ast.FormattedValue)]
    return ast.iter_child_nodes(node)


def is_text(text):
    """Whether it is said to a person: a key has no space and no capital."""
    return " " in text or text[:1].isupper()


def page_texts():
    """(file, line, text) of every literal of the page that reads as a text."""
    web = ROOT / "web"
    for path in sorted(web.rglob("*.js")):
        if path.relative_to(web).parts[0] in ("node_modules", "build"):
            continue
        code = path.read_text(encoding="utf-8")
        for at, text in literals(code):
            if is_text(text):
                yield str(path.relative_to(ROOT)), code.count("\n", 0, at) + 1, text
    for text in _Html.texts_of((web / "index.html").read_text(encoding="utf-8")):
        yield "web/index.html", 0, text
    manifest = json.loads((web / "manifest.webmanifest").read_text(encoding="utf-8"))
    for text in strings(manifest):
        yield "web/manifest.webmanifest", 0, text


def literals(code):
    """(place, text) of every string and template of JavaScript; what is filled in is {}."""
    found = []
    assert _code(code, 0, found) == len(code), "lost the way in this code"
    return sorted(found)


def _code(code, at, found):
    """Look through code up to its end, or to the brace that closes it; return where that is."""
    depth = 0
    while at < len(code):
        token = _TOKEN.match(code, at)
        start, at = at, token.end()
        if token["string"]:
            found.append((start, token["string"][1:-1]))
        elif token["template"]:
            at = _template(code, at, found)
        elif token["open"]:
            depth += 1
        elif token["close"]:
            depth -= 1
            if depth < 0:
                return at
    return at


def _template(code, at, found):
    """Look through a template from behind its first sign; return where it ends."""
    start, text = at, ""
    while (part := _PART.match(code, at)) and not part["end"]:
        text += part["text"] or "{}"
        at = _code(code, part.end(), found) if part["value"] else part.end()
    found.append((start, text))
    return at + 1


class _Html(HTMLParser):
    """The texts between tags, and those of attributes that are shown or read aloud."""

    def __init__(self):
        super().__init__()
        self.texts = []

    @classmethod
    def texts_of(cls, page):
        parser = cls()
        parser.feed(page)
        return parser.texts

    def handle_starttag(self, _tag, attrs):
        shown = ("aria-label", "title", "placeholder", "alt", "content")
        self.texts += [value for name, value in attrs if name in shown and value]

    def handle_data(self, data):
        self.texts.append(data.strip())


def strings(data, left_out=frozenset()):
    """Every string in JSON data, but for what stands under some keys."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for key, value in data.items():
            if key not in left_out:
                yield from strings(value, left_out)
    elif isinstance(data, list):
        for value in data:
            yield from strings(value, left_out)
