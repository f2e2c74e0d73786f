"""The same message gets the same bytes from CPython and from Python in the browser."""

import json

import sawside
from tests.browser.conftest import ROOT
from tests.core.door.every_message import messages

SCRIPT = (ROOT / "tests/browser/door.js").read_text(encoding="utf-8")


def test_the_browser_answers_every_message_with_the_bytes_of_cpython(phone, server):
    page = phone().pages[0]
    page.goto(server.address)
    texts = [json.dumps(message, separators=(",", ":")) for message in messages()]
    answers = page.evaluate(f"(texts) => {{ {SCRIPT}\nreturn sawsideAsk(texts); }}", texts)
    for text, answer in zip(texts, answers, strict=True):
        assert answer == sawside.handle_json(text), text
