"""Where the person has chosen the colors of all pages, keys, strip and answer are told by them."""

import pytest

COLORS = """(selector) => {
  const { stroke, fill, color, backgroundColor, borderTopWidth } = getComputedStyle(
    document.querySelector(selector),
  );
  return { stroke, fill, color, backgroundColor, borderTopWidth };
}"""
SYSTEM = """(name) => {
  const probe = document.createElement("i");
  probe.style.color = name;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}"""


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_keys_strip_and_answer_are_told_in_the_colors_that_were_chosen(phone, server, dark):
    page = phone(dark=dark, forced_colors="active", service_workers="block").pages[0]
    page.goto(server.address)
    page.get_by_role("textbox", name="Length or sum").fill("31 5/8")
    page.locator("output[name=pad-answer] .tape").wait_for()
    page.locator(".strip-cursor:not([hidden])").wait_for(state="attached")

    def of(selector):
        return page.evaluate(COLORS, selector)

    def system(name):
        return page.evaluate(SYSTEM, name)

    text, ground, accent = (system(name) for name in ("CanvasText", "Canvas", "Highlight"))
    assert len({text, ground, accent}) == 3
    for ticks in (".strip .tape-tick", ".pad-answer .tape-tick"):
        assert of(ticks)["stroke"] == text
    for marked in (".strip-cursor", ".pad-answer .tape-mark"):
        assert of(marked)["stroke"] == accent
    assert of(".pad-answer .tape-label")["fill"] == text
    assert of(".strip-face")["backgroundColor"] == ground
    assert of(".pad-answer .fraction")["color"] == text
    enter = of(".key-enter")
    assert (enter["backgroundColor"], enter["color"]) == (accent, system("HighlightText"))
    assert of(".key")["borderTopWidth"] != "0px"
