"""The page's modules import only what stands below them; see the map in DEVELOPERS.md."""

import re
from graphlib import TopologicalSorter

import pytest

from web.build.environment import ROOT

WEB = ROOT / "web"
MAY = {
    "begin.js": {"python"},
    "main.js": {"places", "store", "python", "offline"},
    "places": {"places", "widgets", "store"},
    "widgets": {"widgets"},
    "store": {"store"},
    "python": {"python"},
    "offline": {"offline"},
}
SCRIPTS = ("begin.js", "main.js")
# What crosses to a worker has its shape beside that worker, for all who speak of it.
BOUNDARIES = {"python", "offline"}
IMPORT = re.compile(r"""(?:from|import)\s*\(?\s*["'](\.[^"']+)["']""")


def modules():
    """Every module of the page, and the layer that it belongs to."""
    yield from ((WEB / script, script) for script in SCRIPTS)
    for layer in MAY:
        for kind in ("*.js", "*.d.ts"):
            yield from ((each, layer) for each in sorted((WEB / layer).rglob(kind)))


@pytest.mark.parametrize(
    ("module", "layer"), list(modules()), ids=lambda each: getattr(each, "name", "")
)
def test_a_module_imports_only_from_the_layers_below_it(module, layer):
    for named in IMPORT.findall(module.read_text(encoding="utf-8")):
        target = (module.parent / named).resolve().relative_to(WEB)
        is_shape = target.name.endswith(".d.ts") and target.parts[0] in BOUNDARIES
        assert is_shape or target.parts[0] in MAY[layer], f"{module.name} imports {named}"


def room(path):
    """The folder of a module; one that stands beside rooms is a room of its own."""
    return path if path.parent.parent == WEB else path.parent


def test_no_rooms_import_each_other_in_a_circle():
    arrows = {}
    for module, layer in modules():
        if layer in SCRIPTS:
            continue
        targets = {
            room((module.parent / named).resolve())
            for named in IMPORT.findall(module.read_text(encoding="utf-8"))
        }
        arrows.setdefault(room(module), set()).update(targets - {room(module)})
    TopologicalSorter(arrows).prepare()


def test_no_module_of_the_page_uses_a_door_that_text_could_pass_as_html():
    closed = re.compile(
        r"innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function"
    )
    found = [str(each) for each, _ in modules() if closed.search(each.read_text(encoding="utf-8"))]
    assert found == []
