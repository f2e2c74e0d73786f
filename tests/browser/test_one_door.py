"""The same message gets the same bytes from CPython and from Python in the browser."""

import json

import pytest

import sawside
from tests.browser.conftest import ROOT
from tests.core.door.every_message import messages

SCRIPT = (ROOT / "tests/browser/door.js").read_text(encoding="utf-8")


@pytest.mark.parametrize("way", ["slow", "snapshot"])
def test_the_browser_answers_every_message_with_the_bytes_of_cpython(phone, server, way):
    """A core restored from a snapshot has no file at first, and hardly a question in its memory."""
    page = phone().pages[0]
    page.goto(server.address)
    texts = [json.dumps(message, separators=(",", ":")) for message in messages()]
    ask = f"([way, texts]) => {{ {SCRIPT}\nreturn sawsideAsk(way, texts); }}"
    answers = page.evaluate(ask, [way, texts])
    for text, answer in zip(texts, answers, strict=True):
        assert answer == sawside.handle_json(text), text
