"""Cases of a project in a test: short ways to keep their lines, and what is drawn of them."""

from projects import acts, begun, view

from tests.core.reckoners.case.carcasses import CABINET

FRAME = {"size_of": "case", "kick": "3 1/2", "side": "3/4", "left_past": "1/4"}


def line(name, reckoner, **values):
    return "keep_line", {"name": name, "reckoner": reckoner, "values": values}


def cases(*lines):
    """The cases of a project with such lines."""
    return view(acts(begun(), *lines))["cases"]


def carcass(name="Carcass", **values):
    return line(name, "carcass", **CABINET | values)


def frame(of, **values):
    sizes = {"width": f"[{of}: Outside width]", "height": f"[{of}: Outside height]"}
    return line("Face frame", "face_frame", **FRAME | sizes | values)


def spacing(of, name="Shelf spacing", **values):
    height = f"[{of}: Inside height]"
    return line(name, "shelf_layout", height=height, thickness="3/4", **values)


def drawn(case):
    """{key of the view: its drawing}."""
    return {each["key"]: each["drawing"] for each in case["views"]}


def texts(drawing, kind):
    return [shape["text"] for shape in drawing["shapes"] if shape["kind"] == kind]


def outlines(drawing, part, role=None):
    """The outlines of a part of the first line, as (left, top, right, bottom)."""
    for shape in drawing["shapes"]:
        if shape.get("part", "").endswith(f"/{part}") and role in (None, shape["role"]):
            xs, ys = zip(*shape["points"], strict=True)
            yield min(xs), min(ys), max(xs), max(ys)
