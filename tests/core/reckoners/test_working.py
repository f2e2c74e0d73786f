"""Every line of working is true as it is printed: read again, and worked out anew.

Of the examples and of forms filled in at random, in inches and in millimeters, on several marks.
"""

import random
import re

import pytest

import sawside
from tests.core.door.random_forms import DESCRIBED, random_form
from tests.core.reckoners.working_checked import relations

STEPS = {"1/16": 1 / 16, "1/64": 1 / 64, "1 mm": 1 / 25.4, ".001 in": 0.001}
FORMS = 80
"""Random forms of each question; about half of them are answered."""

FORMULAS = re.compile(
    r"kb·W·L³|^Sag now, by the formulas|Σ E·|^1800 ÷ W ×|r = |^(Board|Edging): E = |→ hole \d"
)
"""Formulas in letters and choices of a hole: the tests of those questions check their numbers."""
NOT_ARITHMETIC = re.compile(
    "|".join(
        (
            r"^Smallest of ",
            r"^Mark k is ",
            r"^Square when ",
            r"a 45° end adds the ",
            r"^As closely as you measured",
            r"^The back of (each layer|the rabbet)",
            r"^With the other joints pulled tight",
            r"^All the corners turn",
            r"^To picture it:",
            r": flush with the panel",
            r": laps the next strip, adds its",
            r"^As you gave it:",
            r"^Bottom [\d≈]",
            r"^(Bottom edge|Top edge|Center line) of each shelf",
            r"^Load: ",
            r"^Source, ",
            r"^The cleat holds the back edge",
            r"^The edging twists",
            r"^Shape of least energy",
            r"^Sag now, the most anywhere",
            r"^The cleat carries",
            r"^The board alone",
            r": one opening of",
            r": at least .* shel(f|ves)$",
            r"^At least .* at the top →",
            r"^T = .*, h = ",
            r"^The fixed shelf’s bottom",
            r"^Skipped next to",
            r"^A shelf sits ",
            r"^Nothing is figured",
            r"^(Thickness|Width)(, [a-z ]+)?:",
            r"^One more degree",
            r"^Within the limit from ",
            r"^The (long-term sag|sag now) reaches the limit",
            r"^Read in the bend:",
            r"^Up to the next whole foot",
            r"^The last kerf takes",
            r"^Not even one fits",
            r"^No furniture anchor is asked",
            r"^By its height, ",
            r"^Wood \d+: \S+ × \d+ measures ",
        )
    )
)
"""Lines that state something and work nothing out."""


def lines(key, values, display, mark):
    said = sawside.handle(
        {
            "do": "reckon",
            "reckoner": key,
            "values": values,
            "settings": {"display": display, "mark": mark},
        }
    )
    assert said["ok"] or said["error"]["kind"] != "internal", said
    metric = display == "mm" or mark == "1 mm"
    for line in said["working"] if said["ok"] else ():
        yield line["text"], metric, STEPS[mark]


def judged(line, metric, step):
    """(relations, whether nothing of it had to be left unread)."""
    if FORMULAS.search(line):
        return [], True
    checked, unread = relations(line, metric=metric, step=step)
    known = bool(NOT_ARITHMETIC.search(line))
    return checked, known or (bool(checked) and not unread)


def check(key, forms):
    """(how many relations were checked, how many only loosely); fails at the first untrue one."""
    count = loose = 0
    for values, display, mark in forms:
        for line, metric, step in lines(key, values, display, mark):
            checked, read = judged(line, metric, step)
            for each in checked:
                assert each.agrees, (line, each, values, display, mark)
            assert read, (line, values, display, mark)
            count += len(checked)
            loose += sum(each.open_by > 0.02 for each in checked)
    return count, loose


@pytest.mark.parametrize("question", DESCRIBED.values(), ids=lambda each: each["key"])
def test_the_working_of_every_question_is_true_as_it_is_printed(question):
    key = question["key"]
    example = [(question["example"], display, mark) for display in ("in", "mm") for mark in STEPS]
    rng = random.Random(f"working of {key}")
    forms = [
        (random_form(rng, question), rng.choice(("in", "mm")), rng.choice(list(STEPS)))
        for _ in range(FORMS)
    ]
    count, loose = check(key, example + forms)
    states_only = {"piece_by_hand", "equilibrium_moisture", "sold_sizes"}
    assert count >= 8 or key in states_only
    assert loose <= count / 5


@pytest.mark.parametrize("question", DESCRIBED.values(), ids=lambda each: each["key"])
def test_the_judge_is_not_blind(question):
    """A number of a line that was checked, made a tenth larger, is seen."""
    for line, metric, step in lines(question["key"], question["example"], "in", "1/64"):
        checked, _ = judged(line, metric, step)
        for each in checked:
            number = re.match(r"[\d,]*\.?\d+", each.right)
            if number is None or "→" in line or each.right.startswith("0") or each.open_by > 0.02:
                continue
            more = f"{float(number[0].replace(',', '')) * 1.1 + 0.1:.4f}"
            wrong = line.replace(
                f"= {each.right}", f"= {each.right.replace(number[0], more, 1)}", 1
            )
            if wrong == line:
                continue
            again, _ = judged(wrong, metric, step)
            assert not all(other.agrees for other in again), (line, wrong)


@pytest.mark.parametrize(
    "line",
    [
        "Depth: 3/8 × tan 45° = 1; 3/8 × 1 = 3/8",
        "To cut: 338.1375 ÷ 25.5468… = 336.1942… → 336.169 mm",
        "(38 − 8) ÷ 1 1/4 = 25",
    ],
)
def test_lines_that_were_once_told_and_are_not_true_are_seen(line):
    checked, _ = relations(line, metric="mm" in line, step=1 / 64)
    assert not all(each.agrees for each in checked)
