"""A person wraps molding in two layers around the record cabinet, whose corners are not square.

The lengths are worked here from the rule that a mitered end grows by the projection times the
tangent of half the turn (textbook trigonometry): a corner of c degrees turns the molding by
180 - c. Layer 2 lies on layer 1, so its inside is the outside of that one.
"""

from math import radians, tan

from tests.browser.hand import keep_as, open_place, open_question, tap_keys

WIDTH, DEPTH = 36 + 7 / 8, 15 + 1 / 4
WALLS, CORNERS = ("15 1/4", "36 7/8", "15 1/4"), ("90.5", "89")
LAYERS = [("3/4", "3 1/2"), ("1/2", "1 1/4")]
LEFT, RIGHT = (tan(radians((180 - corner) / 2)) for corner in (90.5, 89))


def sixteenths(inches):
    """As a tape shows it, to the nearest sixteenth: whole inches and a reduced fraction."""
    whole, over = divmod(round(inches * 16), 16)
    bottom = 16
    while over and over % 2 == 0:
        over, bottom = over // 2, bottom // 2
    return f"{whole} {over}/{bottom}″" if over else f"{whole}″"


def expected():
    """Long side of each piece, by name."""
    grown = 0
    for number, projection in enumerate((3 / 4, 1 / 2), 1):
        grown += projection
        yield f"Layer {number}: front", sixteenths(WIDTH + grown * (LEFT + RIGHT))
        yield f"Layer {number}: left return", sixteenths(DEPTH + grown * LEFT)
        yield f"Layer {number}: right return", sixteenths(DEPTH + grown * RIGHT)


def shown_length(piece):
    """The large number as it is drawn: whole inches and the two parts of the fraction."""
    whole = piece.locator(".fraction-giant .fraction-whole").text_content()
    parts = piece.locator(".fraction-giant .fraction-stack > span").all_text_contents()
    return f"{whole} {'/'.join(parts)}″" if parts else f"{whole}″"


def fill_run(page):
    """The whole form, key by key."""
    page.get_by_role("button", name="Add wall").tap()
    page.get_by_role("button", name="Done").tap()
    page.get_by_role("button", name="Add wall").tap()
    page.get_by_role("button", name="Done").tap()
    for number, (long, corner) in enumerate(zip(WALLS, (*CORNERS, None), strict=True), 1):
        wall = page.get_by_role("group", name=f"Wall {number}", exact=True)
        wall.get_by_label("Length", exact=True).tap()
        tap_keys(page, long)
        page.get_by_role("button", name="Done").tap()
        if corner:
            wall.get_by_label("Corner angle", exact=True).fill("")
            wall.get_by_label("Corner angle", exact=True).tap()
            tap_keys(page, corner)
            page.get_by_role("button", name="Done").tap()
    page.get_by_role("button", name="Add layer").tap()
    for number, sizes in enumerate(LAYERS, 1):
        layer = page.get_by_role("group", name=f"Layer {number}", exact=True)
        for label, size in zip(("Projection", "Height"), sizes, strict=True):
            layer.get_by_label(label, exact=True).tap()
            tap_keys(page, size)
    page.get_by_role("button", name="Done").tap()


def test_a_wrap_of_two_layers_brings_its_six_pieces_to_the_saw_with_names_and_drawings(
    phone, server
):
    page = phone().pages[0]
    page.goto(server.address)
    open_question(page, "molding around", "Molding run")
    fill_run(page)
    page.locator("output[name=result] .main-answer").wait_for()
    keep_as(page, "Crown band")
    open_place(page, "At the saw")
    seen = {}
    for turn in range(6):
        if turn:
            page.get_by_role("button", name="Next ›").tap()
        piece = page.locator(".piece")
        name = page.locator(".saw .piece-name").text_content()
        in_full = page.locator(".saw-tools svg.drawing").text_content()
        assert "long point" in in_full.lower(), name
        seen[name.split(": ", 1)[1]] = shown_length(piece)
    assert seen == dict(expected())
