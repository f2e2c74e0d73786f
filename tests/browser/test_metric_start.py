"""A project in millimeters: what a question starts with, its example, and the kerf."""

from tests.browser.hand import choose, try_example
from tests.browser.start.start_support import eventually


def test_in_millimeters_a_question_starts_with_metric_stock_and_shows_a_metric_example(
    phone, server
):
    page = phone(service_workers="block").pages[0]
    page.goto(server.address)
    page.get_by_role("link", name="Settings").tap()
    kerf = page.get_by_label("Kerf", exact=True)
    assert kerf.input_value() == "1/8 in"
    choose(page, "Plain numbers are in", "Millimeters")
    eventually(lambda: kerf.input_value() == "3 mm")

    page.goto(f"{server.address}#work-out/shelf_strength")
    thickness = page.get_by_label("Thickness", exact=True)
    thickness.wait_for()
    assert thickness.input_value() == "18 mm"
    try_example(page)
    eventually(lambda: page.get_by_label("Span", exact=True).input_value() == "803 mm")
    page.get_by_role("button", name="Clear", exact=True).tap()
    eventually(lambda: thickness.input_value() == "18 mm")

    page.goto(f"{server.address}#work-out/how_many_fit")
    blank = page.get_by_label("Kerf", exact=True)
    blank.wait_for()
    assert blank.get_attribute("placeholder") == "3 mm (Settings)"
