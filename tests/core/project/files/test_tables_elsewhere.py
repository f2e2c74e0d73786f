"""Tables in a spreadsheet of another country: nothing in ours runs there, and its own are read."""

import csv
import io
import re
from decimal import Decimal
from fractions import Fraction

import pytest
from hostile import project
from hypothesis import example, given, settings
from hypothesis import strategies as st
from projects import acts, ask, begun, changed, entry, headlines, lasting
from test_project_tables import table, taken

SIGNS = "=+-@＝＋－＠−"
NASTY = [
    "=1+1",
    "＝1+1",
    "＋1",
    "－1",
    "＠a",
    "−1",
    "a;=1+1",
    "a;'=1",
    "a; =1+1",
    "a;'",
    "a;-",
    'a; "=1+1',
    '"=1+1"',
    "'=1",
    "''=1",
    ";=1",
    "a;;+1",
    "'",
    "''",
    "=",
]
SPREADSHEETS = (",", ";", "\t")


def opened(text, separator):
    """The cells as a spreadsheet with this separator has them, quotes minded and not minded."""
    yield from (cell for row in csv.reader(io.StringIO(text), delimiter=separator) for cell in row)
    if separator != ",":  # a line's end in a quoted cell ends the row for a careless one
        yield from (cell for row in text.splitlines() for cell in row.split(separator))


def could_be_a_formula(cell):
    return re.sub(r'^["\s\u200b\ufeff]+', "", cell)[:1] in [*SIGNS]


def is_safe(text):
    assert text.strip()
    for separator in SPREADSHEETS:
        unsafe = [cell for cell in opened(text, separator) if could_be_a_formula(cell)]
        assert not unsafe, (separator, unsafe)


@pytest.mark.parametrize("nasty", NASTY)
def test_no_cell_can_be_taken_for_a_formula_and_each_comes_back(nasty):
    ends = {"length": "30", "left_end": "told", "left_told": nasty}
    document = acts(
        begun(),
        ("keep_reading", {"name": nasty, "text": "-3 + 4", "where": nasty}),
        ("keep_reading", {"name": "Sum", "text": f"[{nasty}]\n+ 1"}),
        ("keep_line", {"name": f"{nasty} too", "reckoner": "piece_by_hand", "values": ends}),
    )
    for what in ("readings", "parts"):
        text, _ = table(document, what)
        is_safe(text)
        again = taken(begun(), what, text)["document"]
        assert table(again, what)[0] == text
    text, _ = table(document, "readings")
    here = taken(begun(), "readings", text)["document"]["entries"]
    assert here == document["entries"][:2]


SHOWN = st.characters(exclude_categories=["C", "Z"])
CELL = st.text(st.sampled_from("a1=+-@＝－'\" ;|,") | SHOWN, max_size=8).filter(str.strip)
TEXT = st.sampled_from(["-3 + 4", "3\n+ 4", "3\t-1", "+3", "3 \n\n - 1", "\t5", "\n-1", " - 2"])


@settings(max_examples=150)
@given(CELL, CELL, TEXT)
@example("a", "a;=1", "3\n+ 4")
def test_any_table_is_safe_and_comes_back(name, where, text):
    document = changed(begun(), "keep_reading", name="R", text=text, where=where)
    document = changed(
        document,
        "keep_line",
        name="P",
        reckoner="piece_by_hand",
        values={"length": "3"},
        about={"piece": {"material": name}},
    )
    for what in ("readings", "parts"):
        written = table(document, what)[0]
        is_safe(written)
        again = taken(begun(), what, written)["document"]
        assert table(again, what)[0] == written
    kept = taken(begun(), "readings", table(document, "readings")[0])["document"]["entries"][0]
    assert (kept["text"], kept["where"]) == (text, document["entries"][0]["where"])


DIALECTS = st.fixed_dictionaries(
    {
        "delimiter": st.sampled_from([",", ";", "\t"]),
        "quoting": st.sampled_from([csv.QUOTE_MINIMAL, csv.QUOTE_ALL]),
        "lineterminator": st.sampled_from(["\r\n", "\n", "\r"]),
    }
)


def rewritten(text, *, sep=False, **dialect):
    """A table as another program writes it."""
    out = io.StringIO()
    if sep:
        out.write(f"sep={dialect['delimiter']}{dialect['lineterminator']}")
    csv.writer(out, **dialect).writerows(csv.reader(io.StringIO(text, newline="")))
    return out.getvalue()


@settings(max_examples=60)
@given(DIALECTS, st.booleans(), st.sampled_from(["", "\ufeff"]))
def test_a_table_between_semicolons_or_tabs_is_the_same_table(dialect, sep, mark):
    document = project()
    for what in ("parts", "readings", "cuts"):
        text, _ = table(document, what)
        elsewhere = mark + rewritten(text, sep=sep, **dialect)
        blank = document if what == "cuts" else begun()
        if what == "cuts":
            blank = acts(document, ("cut", {"id": "3", "part": "piece", "by": -1}))
        here = taken(blank, what, text)["document"]
        assert lasting(taken(blank, what, elsewhere)["document"]) == lasting(here)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("sep=;\nName;Text\nA;3//4", "Row 3: "),
        ("Name;Text\nA;3\nB;3//4", "Row 3: "),
        ("Name;Text\nA;3;;x", "Row 2 has more cells"),
        ("sep=;\nName,Text\nA,3", "Row 2 has no column “Name”"),
        ("sep=|\nName|Text\nA|3", "Row 1 names a separator Sawside doesn’t read."),
        ("Name|Text\nA|3", "Row 1 has no column “Name”"),
    ],
)
def test_what_is_wrong_in_such_a_table_is_told_with_its_row(text, message):
    assert message in ask("take_csv", begun(), what="readings", text=text)["error"]["message"]


def read_elsewhere(number, separator=";", more=""):
    """What a reading comes to whose text is a number in a table of another country."""
    row = [f'"{cell}"' for cell in ("A", number)]
    text = f"Name{separator}Text\n{separator.join(row)}{more}\n"
    return ask("take_csv", begun(), what="readings", text=text)


@pytest.mark.parametrize(
    ("number", "inches"),
    [
        ("31,5", "63/2"),
        ("0,125", "1/8"),
        ("1200,125", "9601/8"),
        (",5", None),
        ("31,", None),
        ("1,125", None),
        ("1.125", None),
        ("1.024.000", None),
        ("1'024", None),
        ("1’024", None),
        ("1.024,5", None),
        ("1\u00a0024,5", None),
        ("1\u202f024", None),
        ("12.125 + 1", None),
        ("31.5", "63/2"),
        ("12.0625", "193/16"),
        ("0.125", "1/8"),
        (".125", "1/8"),
        ("31 1/2", "63/2"),
        ("1'024.5", None),
        ("1125", "1125"),
        ("2 × 1,5 + 3", "6"),
    ],
)
@pytest.mark.parametrize("separator", [";", "\t"])
def test_a_number_of_another_country_is_read_as_it_is_meant_or_refused_by_its_row(
    number, inches, separator
):
    said = read_elsewhere(number, separator)
    if inches is None:
        assert said["error"]["message"].startswith("Row 2: ")
        assert said["error"]["kind"] == "unreadable"
    else:
        assert entry(said["document"], "A")["headline"]["exact"] == inches


@st.composite
def written_numbers(draw):
    """(a number, how it is written in some country)."""
    number = Decimal(draw(st.integers(1, 60_000_000))).scaleb(-draw(st.integers(0, 4)))
    point, group = draw(
        st.sampled_from(
            [
                (".", ""),
                (",", ""),
                (",", "."),
                (".", ","),
                (".", "'"),
                (".", "’"),
                (",", "\u00a0"),
                (",", "\u202f"),
                (",", " "),
            ]
        )
    )
    whole, _, decimals = f"{number:f}".partition(".")
    if group:
        whole = f"{int(whole):,}".replace(",", group)
    return number, whole + (point + decimals if decimals else "")


@given(written_numbers(), st.sampled_from([";", "\t"]))
def test_no_number_of_another_country_is_read_as_another_one(written, separator):
    number, text = written
    said = read_elsewhere(text, separator)
    if said["ok"]:
        exact = Fraction(entry(said["document"], "A")["headline"]["exact"])
        assert exact == Fraction(number)
    else:
        assert said["error"]["message"].startswith("Row 2: ")


def test_a_name_with_a_comma_in_its_brackets_stays_as_it_is():
    document = changed(begun(), "keep_reading", name="Shelf 1,5", text="3")
    text = "Name;Text\nSum;[Shelf 1,5] + 0,5\n"
    assert headlines(taken(document, "readings", text)["document"])["Sum"] == "3 1/2″"


def test_between_commas_a_point_is_a_point_unless_the_table_has_decimal_commas():
    said = taken(begun(), "readings", "Name,Text\nA,1.125\n")["document"]
    assert headlines(said) == {"A": "1 1/8″"}
    text = 'Name,Text,Length in\nA,1.125,"1,125"\n'
    error = ask("take_csv", begun(), what="readings", text=text)["error"]
    assert error["message"] == "Row 2: “1.125” could mean two things in this table."


def test_what_was_not_changed_elsewhere_is_taken_as_it_is():
    document = changed(begun(), "keep_reading", name="A", text="12.125", where="left")
    text = "Name;Text;Where\nA;12.125;right\n"
    assert taken(document, "readings", text)["document"]["entries"][0]["where"] == "right"


@pytest.mark.parametrize(
    ("row", "told"),
    [
        ("P;3;1.000;", "“1.000”"),
        ("P;1.125;;", "“1.125”"),
        ("P;3;;1.125 mm", "“1.125”"),
        ("P;31,5;2;0,25", None),
    ],
)
def test_parts_are_read_as_carefully(row, told):
    text = f"Name;Length;Count;Rough length\n{row}\n"
    said = ask("take_csv", begun(), what="parts", text=text)
    if told:
        assert said["error"]["message"] == f"Row 2: {told} could mean two things in this table."
    else:
        line = said["document"]["entries"][0]
        assert (line["values"]["length"], line["about"]["piece"]["rough_length"]) == (
            "31.5",
            "0.25",
        )


def test_names_are_found_with_any_space_and_a_date_of_no_calendar_is_refused():
    document = changed(project(), "rename", id="1", name="Alcove at the floor")
    text = "Name\u00a0;Text\nAlcove\u00a0at the\u202ffloor;37\n"
    assert headlines(taken(document, "readings", text)["document"])["Alcove at the floor"] == "37″"
    text = "Name;Part;When\nTop\u00a0rail;piece;2026-99-99\n"
    error = ask("take_csv", document, what="cuts", text=text)["error"]
    assert error["message"] == "Row 2: “2026-99-99” can’t be read."
