"""No number gets so long that it takes seconds, or can't be written: in readings, tally, questions.

Squares of squares double their digits from line to line: 40 lines would be a number of a trillion
digits. The sums are worked by hand.
"""

from fractions import Fraction

import pytest
from projects import acts, ask, begun, changed, view

import sawside
from sawside.lengths.bounded import MOST_BITS
from sawside.reckoning.links import BITS, rational, total

DESCRIBED = sawside.handle({"do": "describe"})
QUESTIONS = DESCRIBED["reckoners"]
each_question = pytest.mark.parametrize("question", QUESTIONS, ids=[q["key"] for q in QUESTIONS])
STEPS = {
    "square": "[{0}] × [{0}] ÷ 1 in",
    "product with itself, halved": "1/2 of [{0}] × [{0}] ÷ 1 in",
    "division by a third": "[{0}] ÷ 1 1/3 ÷ 1 1/3 ÷ 1 1/3 ÷ 1 1/3 ÷ 1 1/3 ÷ 1 1/3 ÷ 1 1/3 ÷ 1 1/3",
    "difference of squares": "([{0}] × [{0}] − 1/7 in × 1/11 in) ÷ 1 in",
    "into millimeters": "(([{0}] × 1 mm ÷ 1 in) × 1 mm ÷ 1 in) × 1 mm ÷ 1 in",
}
LINES = 120


def chain(step):
    """Readings that each use the one above, put into a document from elsewhere."""
    texts = ["2/3 in", *(step.format(f"Step {at}") for at in range(1, LINES))]
    entries = [
        {"id": str(at), "kind": "reading", "name": f"Step {at}", "unit": "in", "text": text}
        for at, text in enumerate(texts, 1)
    ]
    return begun() | {"entries": entries, "next": LINES + 1}


@pytest.mark.parametrize("step", STEPS.values(), ids=STEPS)
def test_a_chain_of_readings_ends_where_its_numbers_get_too_long(step):
    seen = view(chain(step))["entries"]
    good = [each for each in seen if each["ok"]]
    first_bad = seen[len(good)]
    for each in good:
        value = Fraction(each["headline"]["exact"])
        assert max(value.numerator.bit_length(), value.denominator.bit_length()) <= MOST_BITS
    assert first_bad["error"]["kind"] == "range"
    assert "300 digits" in first_bad["error"]["message"]
    assert "rounded" in first_bad["error"]["remedy"]
    assert all("Waiting on" in each["error"]["message"] for each in seen[len(good) + 1 :])
    assert len(good) > 5


@pytest.mark.parametrize("step", STEPS.values(), ids=STEPS)
def test_so_does_one_of_the_tally_and_the_line_is_not_taken(step):
    said = sawside.handle({"do": "tally", "tally": None, "act": {"act": "enter", "text": "2/3 in"}})
    for at in range(1, LINES):
        enter = {"act": "enter", "text": step.format(at)}
        said = sawside.handle({"do": "tally", "tally": said["tally"], "act": enter})
        if not said["ok"]:
            break
    assert (said["error"]["kind"], said["error"]["field"]) == ("range", "text")
    assert "300 digits" in said["error"]["message"]
    assert "unfinished" not in said["error"]


def test_irrational_numbers_of_one_line_are_added_however_often():
    """Each is a fraction of 49 digits: what they have in common is taken out first."""
    frame = {"solve": "diagonal", "width": "36 1/8", "height": "41 1/4"}
    document = changed(begun(), "keep_line", name="A", reckoner="square", values=frame)
    texts = ["[A]", "+".join(["[A]"] * 50)]
    one, fifty = (Fraction(ask("read", document, text=text)["value"]["exact"]) for text in texts)
    assert one.denominator.bit_length() > BITS - 3
    assert fifty == 50 * one


@pytest.mark.parametrize(
    ("exact", "good"),
    [
        ("289/8", True),
        ("-7", True),
        ("9" * 300, True),
        ("9" * 309, True),
        ("9" * 310, False),
        ("1/" + "9" * 5000, False),
        ("1e5000000", False),
        ("1e-5000000", False),
        ("1e9", False),
        ("1_000", False),
        (" 3", False),
        ("3.5", False),
        ("1/0", False),
        ("٣", False),
        ("", False),
    ],
)
def test_a_name_that_is_sent_is_a_fraction_written_out(exact, good):
    names = {"A": {"exact": exact, "kind": "area"}}
    said = sawside.handle({"do": "read", "text": "1 in", "names": names})
    assert said["ok"] is good
    if not good:
        assert (said["error"]["kind"], said["error"]["field"]) == ("message", "names")


def test_a_name_as_long_as_may_be_is_refused_in_the_sum_that_makes_it_longer():
    names = {"A": {"exact": "1/" + "7" * 300, "kind": "length"}}
    said = sawside.handle({"do": "read", "text": "[A] × [A]", "names": names})
    assert (said["error"]["kind"], said["error"]["at"]) == ("range", 4)


def fine():
    """A project with a length of 55 digits below the line, and one of three times as many."""
    texts = {
        "Inch": "1 in",
        "Fine": " ÷ ".join(["1 in", *["27"] * 38]),
        "Finer": "[Fine] × [Fine] × [Fine] ÷ 1 in ÷ 1 in",
    }
    kept = [("keep_reading", {"name": name, "text": text}) for name, text in texts.items()]
    return acts(begun(), *kept)


def a_little_more(field, value, name):
    """A value of an example, longer by a reading; an angle or count stays as it is."""
    if not value:
        return value
    if field["kind"] == "length":
        return f"{value} + [{name}]"
    if field["kind"] == "number":
        return f"{value} + [{name}] ÷ [Inch]"
    if field["kind"] == "lengths":
        return [f"{each} + [{name}]" for each in value]
    if field["kind"] == "rows":
        return [with_a_little_more(field, row, name) for row in value]
    return value


def with_a_little_more(declared, values, name):
    fields = {field["key"]: field for field in declared["fields"]}
    return {key: a_little_more(fields[key], value, name) for key, value in values.items()}


@each_question
@pytest.mark.parametrize("name", ["Fine", "Finer"])
def test_a_question_answers_with_fractions_of_hundreds_of_digits(question, name):
    """What comes out longer than a fraction is written is told like an irrational number."""
    document = fine()
    values = with_a_little_more(question, question["example"], name)
    said = ask("reckon", document, reckoner=question["key"], values=values)
    assert said["ok"] or said["error"]["kind"] in ("range", "impossible", "conflict"), said
    if not said["ok"]:
        return
    document = changed(document, "keep_line", reckoner=question["key"], values=values, name="Line")
    for what in ("parts", "readings", "cuts"):
        assert ask("csv", document, what=what)["ok"]
    identity = view(document)["entries"][-1]["id"]
    sure = ask("sure", document, id=identity)
    assert sure["ok"] or sure["error"]["kind"] != "internal", sure


def test_what_is_too_long_to_be_written_is_told_and_linked_like_an_irrational_number():
    """A width and a change of moisture, each with a fraction of some 165 digits, are multiplied."""
    question = next(each for each in QUESTIONS if each["key"] == "seasonal_movement")
    plain, longer = question["example"], with_a_little_more(question, question["example"], "Finer")
    kept = {"reckoner": question["key"]}
    document = acts(
        fine(),
        ("keep_line", kept | {"name": "Plain", "values": plain}),
        ("keep_line", kept | {"name": "Longer", "values": longer}),
    )
    one, other = (
        ask("entry", document, id=each["id"])["reckoning"]["answers"]
        for each in document["entries"][-2:]
    )
    assert [each["text"] for each in one] == [each["text"] for each in other]
    widest = next(each for each in other if each["key"] == "widest")
    assert (widest["exact"], widest["rational"], widest["exact_plain"]) == (None, False, None)
    assert widest["dropped"].startswith("≈")
    assert widest["decimals"].endswith("…")
    label = f"Longer: {widest['label']}"
    linked = Fraction(ask("read", document, text=f"[{label}]")["value"]["exact"])
    assert linked.denominator.bit_length() <= BITS + 2
    before = Fraction(next(each for each in one if each["key"] == "widest")["exact"])
    assert abs(linked - before) < Fraction(1, 10**40)


def test_a_sum_of_many_fractions_stays_as_short():
    numbers = [Fraction(1, 10**12 + at) for at in range(1, 400)]
    found = total(numbers)
    assert max(found.numerator.bit_length(), found.denominator.bit_length()) <= MOST_BITS
    assert abs(found - sum(numbers)) < Fraction(1, 10**40)
    assert total([Fraction(1, 3), Fraction(1, 6), 1]) == Fraction(3, 2)
    assert rational(Fraction(1, 3)) == Fraction(1, 3)
