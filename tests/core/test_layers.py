"""Each layer imports only what stands below it, as the package says."""

import ast
from graphlib import TopologicalSorter
from importlib import import_module
from pathlib import Path

import pytest

import sawside
from sawside.reckoners import RECKONERS

CORE = Path(sawside.__file__).parent
BELOW = {
    "version": set(),
    "contract": set(),
    "errors": set(),
    "needs": {"errors"},
    "lengths": {"errors"},
    "settings": {"errors", "lengths"},
    "geometry": {"errors", "lengths"},
    "wood": {"errors", "lengths"},
    "boards": set(),
    "drawing": {"errors", "lengths", "geometry", "wood"},
}
BELOW["reckoners"] = set(BELOW) - {"version", "contract"}
BELOW["reckoning"] = set(BELOW) - {"version", "contract"}
BELOW["project"] = set(BELOW) - {"version", "contract"}
BELOW["tally"] = set(BELOW) - {"version", "contract"}
BELOW["messages"] = set(BELOW)
BELOW["door"] = set(BELOW)
BELOW["__init__"] = {"door", "version"}
OUTSIDE = {
    "bisect",
    "collections",
    "contextlib",
    "copy",
    "csv",
    "dataclasses",
    "datetime",
    "fractions",
    "functools",
    "graphlib",
    "heapq",
    "importlib",
    "io",
    "itertools",
    "json",
    "math",
    "operator",
    "pint",
    "pkgutil",
    "re",
    "textwrap",
    "types",
    "typing",
    "unicodedata",
}
MODULES = sorted(CORE.rglob("*.py"))


def imported(module):
    """Every module that a file imports, wherever in it the import stands."""
    for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, "imports name the whole path"
            yield node.module


def layer(path):
    return path.relative_to(CORE).parts[0].removesuffix(".py")


@pytest.mark.parametrize("module", MODULES, ids=lambda path: str(path.relative_to(CORE)))
def test_a_module_imports_only_from_below(module):
    for name in imported(module):
        package, _, rest = name.partition(".")
        if package == "sawside":
            assert rest.split(".")[0] in BELOW[layer(module)] | {layer(module)}, name
        else:
            assert package in OUTSIDE, name


def room(name):
    """The folder of what is imported under this name: a module, or something out of one."""
    path = CORE.parent.joinpath(*name.split("."))
    while not path.with_suffix(".py").is_file() and not path.is_dir():
        path = path.parent
    return path if path.is_dir() else path.parent


def test_no_rooms_import_each_other_in_a_circle():
    """A file beside rooms is a room of its own: what all of them know, or what knows them all."""
    arrows = {}
    for module in MODULES:
        here = module.parent if module.parent != CORE else module
        inside = {room(name) for name in imported(module) if name.startswith("sawside.")}
        arrows.setdefault(here, set()).update(inside - {module.parent, CORE})
    TopologicalSorter(arrows).prepare()


@pytest.mark.parametrize("module", sorted((CORE / "reckoners").rglob("*.py")), ids=lambda p: p.stem)
def test_a_question_imports_no_other_question(module):
    siblings = {name for name in imported(module) if name.startswith("sawside.reckoners")}
    assert not [name for name in siblings if hasattr(import_module(name), "RECKONER")]


def test_every_file_among_the_questions_is_one_and_what_they_share_lies_apart():
    files = [path for path in (CORE / "reckoners").rglob("*.py") if "shared" not in path.parts]
    assert {path.stem for path in files} - set(RECKONERS) == {
        "__init__",
        "declaration",
        "fields",
        "jobs",
    }


def test_the_rule_is_stated_where_the_package_is_opened():
    told = " ".join(line.strip() for line in sawside.__doc__.splitlines() if "<- " in line)
    order = [name for layer in told.split(" <- ") for name in layer.split(", ")]
    assert order == [name for name in BELOW if name != "__init__"]


def test_every_layer_exists():
    assert {layer(path) for path in MODULES} == set(BELOW)


def test_every_import_stands_at_the_top_so_that_nothing_is_loaded_after_the_start():
    for module in MODULES:
        tree = ast.parse(module.read_text(encoding="utf-8"))
        inner = [
            node
            for outer in ast.walk(tree)
            if isinstance(outer, (ast.FunctionDef, ast.ClassDef))
            for node in ast.walk(outer)
            if isinstance(node, (ast.Import, ast.ImportFrom))
        ]
        assert inner == [], module
