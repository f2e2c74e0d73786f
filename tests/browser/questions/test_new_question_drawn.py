"""A question is one file: dropped into the folder, the page draws it and the core answers it.

The file is the sample of the core's own test; no other file of the copy is touched.
"""

import shutil

import pytest

from tests.browser.conftest import ROOT
from tests.browser.hand import open_question
from web.build import environment, serving, site

SAMPLE = ROOT / "tests/core/reckoners/sample_question.py"


@pytest.fixture(scope="module")
def site_with_sample(tmp_path_factory):
    """A copy of the sources with the sample beside the other questions, built."""
    copy = tmp_path_factory.mktemp("copy")
    leave = shutil.ignore_patterns("node_modules", "__pycache__")
    for part in ("web", "pycore"):
        shutil.copytree(ROOT / part, copy / part, ignore=leave)
    (copy / "web/node_modules").symlink_to(ROOT / "web/node_modules")
    shutil.copy(SAMPLE, copy / "pycore/sawside/reckoners/tape")
    (copy / ".build").mkdir()
    shutil.copytree(ROOT / ".build/fetched", copy / ".build/fetched")
    shutil.copy(ROOT / ".build/fetched.key", copy / ".build")
    return site.build(environment.ready(), copy)


def test_a_new_question_is_drawn_from_its_file_and_answered(phone, site_with_sample):
    with serving.started(site_with_sample) as server:
        page = phone().pages[0]
        page.goto(server.address)
        open_question(page, "how high is the stack", "Sample question")
        layer = page.get_by_role("group", name="Layer 1")
        layer.get_by_label("Thickness").fill("3/4")
        layer.get_by_label("How many", exact=True).fill("2")
        page.get_by_role("button", name="Done").tap()
        page.get_by_role("button", name="Add layer").tap()
        page.get_by_role("group", name="Layer 2").get_by_label("Thickness").fill("5/8")
        page.get_by_role("button", name="Done").tap()
        answer = page.locator("output[name=result]")
        # 2 × 3/4 + 5/8
        answer.locator(".main-answer").get_by_text("two and one eighth inches").wait_for()
        assert page.get_by_role("img", name="A stack.").is_visible()
