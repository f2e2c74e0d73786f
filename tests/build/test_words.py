"""No text that a person sees has a word that nobody says across an American shop."""

import re

import pytest

import sawside
from tests.build.shown_texts import core_texts, is_text, literals, page_texts, python_texts, strings

FORBIDDEN = re.compile(
    r"\b(?:reckon(?:s|ed|ing|ers?)?|anew|mend(?:s|ed|ing)?|prove[sdn]?|in\ all|for\ each"
    r"|take\ away|dampest|gapes?|aslant|told|so\ many|the\ thing|stands|lies|may\ be\ off"
    r"|is\ to\ be|from\ memory|no\ source)\b|\s%",
    re.IGNORECASE,
)
DESCRIBED = sawside.handle({"do": "describe"})
SEARCHED = {"words": "what a question is found by", "search": "how it is searched for"}
CITED = {
    "source": "a citation says as well what was read, what is from memory and what has no source",
    "figures": "the same of each figure of a material",
}
"""Keys of what may have such a word, with the reason; the first ones are never shown."""
UNSEEN = {
    "reckoning/old_labels.py": "labels of before, by which texts find their answers",
    "wood/tables/__init__.py": "what a table's column says, put into the shop's words here",
    "wood/materials.py": "a unit as a table's column has it",
    "reckoners/wood/materials_list.py": "what a table's column says, looked for",
}
"""Files of the core that name such a text and never show it, with the reason."""
UNITS = {"in": "example", "mm": "example_metric"}


def offences(texts):
    """A line for each (file, line, text) that has such a word."""
    for where, line, text in texts:
        if found := FORBIDDEN.findall(text):
            yield f"{where}:{line} {', '.join(sorted(set(found)))}: {text}"


def no_offences(texts):
    """Fail with all of them."""
    found = sorted(set(offences(texts)))
    assert not found, f"{len(found)} texts\n" + "\n".join(found)


def test_no_text_written_in_the_core_has_a_word_that_nobody_says():
    no_offences(
        (where, line, text)
        for where, line, text in core_texts()
        if where.removeprefix("pycore/sawside/") not in UNSEEN
    )


def test_no_text_written_in_the_page_has_a_word_that_nobody_says():
    no_offences(page_texts())


def test_no_text_that_is_described_has_a_word_that_nobody_says():
    texts = strings(DESCRIBED, {*SEARCHED, *CITED})
    no_offences(("describe", "", text) for text in texts if is_text(text))


def answered(question, unit):
    """The texts of a question's example in a unit, in the order of the answer."""
    message = {"do": "reckon", "reckoner": question["key"], "settings": {"unit": unit}}
    said = sawside.handle(message | {"values": question[UNITS[unit]]})
    assert said["ok"], said
    said["answers"] = [each for each in said["answers"] if each["key"] not in CITED]
    return [text for text in strings(said, CITED) if is_text(text)]


@pytest.mark.parametrize("question", DESCRIBED["reckoners"], ids=lambda each: each["key"])
def test_no_text_of_an_answer_has_a_word_that_nobody_says(question):
    no_offences(
        (question["key"], unit, text) for unit in UNITS for text in answered(question, unit)
    )


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("The load stands here", "stands"),
        ("12 % more", " %"),
        ("8 lb in all", "in all"),
        ("It is Told.", "Told"),
        ("This is reckoned", "reckoned"),
    ],
)
def test_such_a_word_is_found(text, word):
    assert FORBIDDEN.findall(text) == [word]


def test_what_is_no_such_word_is_left_alone():
    for text in ("standstill", "overall", "improve", "recommend", "12% more", "install"):
        assert not FORBIDDEN.search(text), text


def test_the_literals_of_the_page_are_found_past_comments_expressions_and_templates():
    code = (
        '// "no"\nconst a = /[\'"`]/.test(b) ? "One" : \'Two\'; /* `no` */\n'
        'const c = `Three ${d ? `four ${e}` : "five"} six`; const f = { g: () => `seven` };'
    )
    texts = [text for _, text in literals(code)]
    assert texts == ["One", "Two", "Three {} six", "four {}", "five", "seven"]


def test_the_literals_of_the_core_are_found_and_nothing_else():
    code = (
        '"""Doc."""\ndef f(x):\n    """Doc."""\n    if x: raise ValueError("Fault")\n'
        'SOURCE = "Cited"\nf(source="Cited", label="One " "two")\nf(f"Three {f(f\'four\')} five")\n'
        'raise Refusal("range", f"Six {x:.2f}")'
    )
    texts = [text for _, text in python_texts(code)]
    assert texts == ["One two", "Three {} five", "four", "range", "Six {}"]


def test_the_texts_that_are_shown_are_among_those_looked_at():
    core, page = ({text for _, _, text in texts} for texts in (core_texts(), page_texts()))
    assert {each["title"] for each in DESCRIBED["reckoners"]} <= core
    assert {field["label"] for field in DESCRIBED["settings"]} <= core
    assert {"Find a question", "Settings", "Pad"} <= page
