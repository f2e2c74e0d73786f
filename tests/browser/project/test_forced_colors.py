"""With colors that the person forces, what only a tint told is told by a line or another color."""

from tests.browser.hand import keep_as, open_place
from tests.browser.project.in_project import fill_linked_rail, keep_reading, open_projects

SYSTEM = """(names) => {
    const probe = document.body.appendChild(document.createElement("i"));
    const colors = names.map((name) => {
        probe.style.color = name;
        return getComputedStyle(probe).color;
    });
    probe.remove();
    return colors;
}"""


def style(locator, name):
    """A computed style of the first of some elements."""
    return locator.first.evaluate("(node, name) => getComputedStyle(node)[name]", name)


def test_tabs_keys_notices_dialogs_and_drawings_keep_what_their_tints_told(page):
    page.emulate_media(forced_colors="active")
    canvas, text, chosen = page.evaluate(SYSTEM, ["Canvas", "CanvasText", "Highlight"])
    keep_reading(page, "Alcove width", "37 9/16")
    assert style(page.locator(".notice"), "borderBottomWidth") == "2px"
    # Behind a text the browser lays the canvas: in the canvas’s own color none is seen.
    assert style(page.locator(".notice"), "backgroundColor") == canvas
    for said in (".notice p", ".notice .button"):
        assert style(page.locator(said), "color") == text
    fill_linked_rail(page)
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, "Top rail")
    open_place(page, "At the saw")
    page.locator(".piece").wait_for()
    tabs = page.get_by_role("navigation", name="Places")
    assert style(tabs.locator("a[aria-current]"), "borderTopColor") == chosen
    assert style(tabs.locator("a:not([aria-current])"), "borderTopColor") == canvas
    assert style(page.locator(".saw-main"), "backgroundColor") == chosen
    assert style(page.locator(".saw-key:disabled"), "backgroundColor") == canvas
    assert style(page.locator(".drawing-bold .shape-stock"), "stroke") == text
    open_projects(page)
    opened = page.locator(".project-open[aria-current=true]")
    opened.wait_for()
    assert style(opened, "borderTopColor") == chosen
    page.get_by_role("button", name="New project").tap()
    assert style(page.get_by_role("dialog"), "borderTopWidth") == "2px"
