"""The list of questions is searched by a person's own words."""

from playwright.sync_api import expect


def test_words_that_find_nothing_say_so_and_lead_back_to_the_whole_list(page, server):
    page.goto(f"{server.address}#work-out")
    page.locator(".tile").first.wait_for()
    whole = page.locator(".tile").count()
    box = page.get_by_role("searchbox", name="Find a question")

    box.fill("toe kicks")
    expect(page.locator(".question-link").first).to_contain_text("Shelf spacing")
    expect(page.locator(".tile")).to_have_count(0)
    box.fill("concrete")
    expect(page.locator(".question-link")).to_have_count(0)
    page.get_by_text("Nothing matches. Try fewer or different words.").wait_for()

    page.get_by_role("button", name="All questions").tap()
    expect(page.locator(".tile")).to_have_count(whole)
    expect(box).to_have_value("")
    expect(box).to_be_focused()
