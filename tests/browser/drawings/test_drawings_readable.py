"""Every drawing can be read on a narrow phone whose font is a quarter wider than usual.

The page's own widget draws what the core sends; `drawn.js` says once what can't be read: a text
cut off by the edge of the drawing, crossed by any line, or lying on another text.
"""

from pathlib import Path

import pytest

import sawside
from sawside.reckoners import RECKONERS
from tests.browser.conftest import CHROMIUM, FLAGS, ROOT, SMALL
from web.build import serving

HERE = Path(__file__).parent
WIDER = 1.25
FONT = """
(wider) => {
    const text = document.createElementNS("http://www.w3.org/2000/svg", "text");
    text.textContent = "long point 36 1/8″";
    const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    svg.setAttribute("class", "drawing");
    svg.append(text);
    document.getElementById("place").append(svg);
    const wide = () => text.getComputedTextLength();
    document.adoptedStyleSheets = [];
    const usual = wide();
    const sheet = new CSSStyleSheet();
    document.adoptedStyleSheets = [sheet];
    let spacing = 0;
    while (wide() < usual * wider) {
        spacing += 0.01;
        sheet.replaceSync(`.drawing text { letter-spacing: ${spacing}em; }`);
    }
    const found = wide() / usual;
    svg.remove();
    return found;
}
"""
DRAWN = """
async (drawings) => {
    const { drawing } = await import("/widgets/pictures/drawing.js");
    const { boldDrawing } = await import("/widgets/pictures/bold-drawing.js");
    const { faultsOf } = await import("/drawn.js");
    const { HIGH } = await import("/places/question/question-picture.js");
    const overFields = (drawn) => drawing(drawn, { high: HIGH });
    const onScreen = await import("/widgets/project/case-drawing.js");
    const onPaper = await import("/widgets/project/case-sheet.js");
    const case_ = (drawn) => drawing(drawn, { high: onScreen.HIGH });
    const caseOnPaper = (drawn) => drawing(drawn, { high: onPaper.HIGH });
    const draw = { drawing, boldDrawing, overFields, case: case_, caseOnPaper };
    return drawings.map(([name, how, drawn]) => {
        const node = draw[how](drawn);
        document.getElementById("place").replaceChildren(node);
        return [name, how, faultsOf(node)];
    });
}
"""
BY_HAND = """
async (svg) => {
    const { faultsOf } = await import("/drawn.js");
    const page = new DOMParser().parseFromString(svg, "image/svg+xml");
    document.getElementById("place").replaceChildren(page.documentElement);
    return faultsOf(document.querySelector("svg"));
}
"""
SVG = '<svg class="drawing" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 100">{}</svg>'


@pytest.fixture(scope="module")
def paper(player):
    """A page of 360 px with the page's modules and styles, and nothing drawn on it yet."""
    browser = player.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
    page = browser.new_page(viewport={"width": SMALL[0], "height": SMALL[1]})
    for name in ("drawn.html", "drawn.js"):
        page.route(f"**/{name}", fulfill)
    with serving.started(ROOT / "web") as server:
        page.goto(f"{server.address}drawn.html")
        yield page
        browser.close()


def fulfill(route):
    """Answer with a file of this folder."""
    route.fulfill(path=HERE / Path(route.request.url).name)


def answered(message):
    """The core's answer, which must be one."""
    said = sawside.handle(message)
    assert said["ok"], said
    return said


def drawings(settings):
    """(question, how it is drawn, drawing) of every example, and of each piece that it makes."""
    for key, reckoner in RECKONERS.items():
        typed = {"reckoner": key, "values": reckoner.example}
        said = answered({"do": "reckon", "settings": settings} | typed)
        if said["drawing"]:
            yield key, "drawing", said["drawing"]
            yield key, "overFields", said["drawing"]
        document = None
        for act, more in (
            ("begin", {"name": "Record cabinet"}),
            ("set", {"settings": settings}),
            ("keep_line", {"name": "Kept"} | typed),
        ):
            change = {"do": "change", "document": document, "act": {"act": act} | more}
            document = answered(change)["document"]
        shown = answered({"do": "view", "document": document})
        for case in shown["cases"]:
            yield from cases_views(key, case)
        for piece in shown["pieces"]:
            if piece["drawing"]:
                yield f"{key}, {piece['name']}", "drawing", piece["drawing"]
                yield f"{key}, {piece['name']}", "boldDrawing", piece["drawing"]


def cases_views(name, case):
    """The same of the views of a case, as high as on the screen and as on paper."""
    for each in case["views"]:
        for how in ("case", "caseOnPaper"):
            yield f"{name}, {each['title']}", how, each["drawing"]


def unreadable(paper, drawn):
    """What can't be read in drawings, one sentence each."""
    found = paper.evaluate(DRAWN, drawn)
    assert len(found) == len(drawn)
    return [f"{name} ({how}): {fault}" for name, how, faults in found for fault in faults]


@pytest.mark.parametrize("settings", [{}, {"display": "mm", "mark": "0.1 mm"}], ids=["in", "mm"])
def test_no_text_of_any_example_is_cut_off_crossed_or_on_another(paper, settings):
    drawn = list(drawings(settings))
    assert len({name.split(",")[0] for name, _, _ in drawn}) > len(RECKONERS) * 3 / 4
    assert paper.evaluate(FONT, WIDER) >= WIDER
    assert unreadable(paper, drawn) == []


def test_the_usual_font_of_this_browser_is_read_as_well(paper):
    drawn = list(drawings({}))
    paper.evaluate("document.adoptedStyleSheets = []")
    assert unreadable(paper, drawn) == []


BOARD = {"form": "board", "thickness": "13/16", "width": "6 3/8", "length": "85 1/2"}
ODD_BOARDS = {
    "wood_on_hand": {
        "wood": [
            BOARD | {"material": "cherry", "bad": "0 to 1 1/2, 40 to 44"},
            BOARD | {"form": "sheet", "width": "48", "note": "scuffed, good face for the sides"},
            BOARD | {"width": "1/2", "length": "20 ft", "bad": "31 to 36"},
            BOARD | {"form": "sheet", "width": "9", "length": "11", "count": "7"},
        ]
    },
    "sticks": {
        "pieces": [
            {"length": "3", "count": "60", "name": "peg"},
            {"length": "40", "count": "3", "name": "rail with a long name"},
        ],
        "sold": "8 ft",
    },
    "sheets": {
        "pieces": [
            {"length": "10", "width": "6", "count": "40", "name": "drawer side"},
            {"length": "90", "width": "1", "count": "9", "name": "edging"},
        ]
    },
    "glued_panel": {
        "length": "60",
        "width": "40",
        "thickness": "1",
        "boards": ["5 1/2", "6", "4", "3 1/2", "7", "2 1/4", "3", "5", "6", "4"],
    },
}

SHEETS = {
    "wood": [
        {"form": "sheet", "thickness": "3/4 in", "width": "4 ft", "length": "8 ft", "count": "3"}
    ]
}


def odd_boards(settings):
    """The same of boards with long, thin and many parts, and of those of a plan."""
    for key, values in ODD_BOARDS.items():
        message = {"do": "reckon", "settings": settings, "reckoner": key, "values": values}
        yield key, "overFields", answered(message)["drawing"]
    document = None
    pieces = (("90", "1", "12"), ("10", "6", "30"), ("28 1/2", "15 1/4", "2"))
    for act, more in (
        ("begin", {"name": "Record cabinet"}),
        ("set", {"settings": settings}),
        ("keep_line", {"name": "Wood on hand", "reckoner": "wood_on_hand", "values": SHEETS}),
        *(("keep_line", {"name": f"Panel {each}"} | by_hand(*each)) for each in pieces),
    ):
        change = {"do": "change", "document": document, "act": {"act": act} | more}
        document = answered(change)["document"]
    for group in answered({"do": "plan", "document": document, "effort": 0})["plan"]["groups"]:
        for board in group["boards"]:
            for how in ("case", "boldDrawing"):
                yield board["name"], how, board["drawing"]


def by_hand(length, width, count):
    """What is kept of pieces of this size in inches."""
    sizes = {"length": f"{length} in", "width": f"{width} in", "thickness": "3/4 in"}
    ends = {"left_end": "square", "right_end": "square"}
    return {"reckoner": "piece_by_hand", "values": sizes | ends | {"count": count}}


@pytest.mark.parametrize("settings", [{}, {"display": "mm", "mark": "0.1 mm"}], ids=["in", "mm"])
def test_no_text_of_an_odd_board_is_cut_off_crossed_or_on_another(paper, settings):
    drawn = list(odd_boards(settings))
    assert len(drawn) > len(ODD_BOARDS) + 1
    assert paper.evaluate(FONT, WIDER) >= WIDER
    assert unreadable(paper, drawn) == []


@pytest.mark.parametrize(
    ("shapes", "faults"),
    [
        ('<text x="10" y="50">36 1/8</text>', []),
        ('<text x="-4" y="50">36 1/8</text>', ['"36 1/8" is cut off']),
        ('<text x="10" y="4">36 1/8</text>', ['"36 1/8" is cut off']),
        ('<text x="10" y="50">36</text><text x="18" y="54">1/8</text>', ['"36" lies on "1/8"']),
        (
            '<text x="10" y="50">36 1/8</text><polyline class="line-cut" points="0,47 300,43"/>',
            ['"36 1/8" is crossed by line-cut'],
        ),
        (
            '<polygon class="shape-stock" points="20,0 90,0 90,90 20,90"/><text x="10" y="50">36'
            "</text>",
            ['"36" is crossed by shape-stock'],
        ),
        (
            '<polygon class="shape-stock" points="0,0 90,0 90,90 0,90"/><text x="10" y="50">36'
            "</text>",
            [],
        ),
    ],
)
def test_what_can_not_be_read_is_found(paper, shapes, faults):
    paper.evaluate("document.adoptedStyleSheets = []")
    assert paper.evaluate(BY_HAND, SVG.format(shapes)) == faults
