"""What was filled in with names of one project says so where it is met in another."""

from tests.browser.hand import open_question, type_into
from tests.browser.project.in_project import fill_linked_rail, keep_reading
from tests.browser.project.test_project_bound import begin_project

NOTE = "These names were picked in another project."


def test_names_picked_in_one_project_do_not_silently_stand_for_numbers_of_another(page):
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    assert page.get_by_text(NOTE).is_hidden()
    begin_project(page, "Second")
    keep_reading(page, "Alcove width", "30")
    open_question(page, "picture frame", "Mitered length")
    page.get_by_text(NOTE).wait_for()
    type_into(page, "Stock width", "3")
    page.get_by_text(NOTE).wait_for(state="hidden")
