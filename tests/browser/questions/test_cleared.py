"""A form that has its answer is cleared from beside it, and nothing typed is lost by a slip."""

from tests.browser.hand import try_example

ANSWER = "output[name=result]:not(.waiting) .main-answer"
TYPED = "() => [...document.querySelectorAll('.form input')].map((each) => each.value)"


def test_an_answered_form_is_cleared_from_beside_its_answer_and_comes_back_by_undo(page, server):
    page.goto(f"{server.address}#work-out/opening")
    page.locator('#place[data-shows="work-out/opening"]').wait_for()
    example = page.locator("button[name=example]")
    try_example(page)
    page.locator(ANSWER).wait_for()
    example.wait_for(state="hidden")
    filled = page.evaluate(TYPED)
    page.get_by_role("button", name="Clear", exact=True).tap()
    example.wait_for()
    assert page.locator(ANSWER).count() == 0
    page.get_by_role("button", name="Undo", exact=True).tap()
    page.locator(ANSWER).wait_for()
    now = page.evaluate(TYPED)
    assert now == filled
    assert any(filled)
