"""Everyday jobs take at most half of a plain calculator's keys and steps.

The table is tests/bench/page/everyday_jobs.csv; the keys that it counts are pressed here.
"""

import re

import pytest

from tests.bench.page.everyday import jobs
from tests.browser.hand import KEY_NAMES, field_called

MOST = 0.5
FIELD = "field:"


def press(page, token):
    """One press of the table."""
    if not (token.startswith("[") and token.endswith("]")):
        keypad = page.get_by_role("group", name="Keypad")
        name = KEY_NAMES.get(token, LABELS.get(token, token))
        return keypad.get_by_role("button", name=name, exact=True).tap()
    named = token[1:-1].replace("_", " ")
    if named.startswith(FIELD):
        return field_called(page, named.removeprefix(FIELD)).tap()
    starts = re.compile(f"^{re.escape(named)}")
    link = page.get_by_role("link", name=starts)
    choice = page.get_by_role("button", name=starts).or_(page.get_by_role("radio", name=starts))
    return link.or_(choice).first.tap()


LABELS = {"÷": "divided by", "more": "more keys", "123": "digits", "mm": "mm, millimeters"}


@pytest.mark.parametrize("job", jobs(), ids=lambda job: job.name)
def test_the_keys_of_a_job_lead_to_its_answer(page, job):
    page.locator("output[name=pad-answer]").wait_for(state="attached")
    for token in job.keys:
        press(page, token)
    answer = page.locator("output[name=pad-answer], output[name=result] .main-answer")
    answer.get_by_text(job.answer).first.wait_for()


def test_no_job_takes_more_than_half_of_a_plain_calculators_time():
    assert len(jobs()) >= 12
    assert {job.name: job.share for job in jobs() if job.share > MOST} == {}


def test_a_job_that_is_slower_is_seen():
    (first, *_) = jobs()
    slower = type(first)(first.name, first.keys, (), first.keys, ("find the question",), "")
    assert slower.share > 1
