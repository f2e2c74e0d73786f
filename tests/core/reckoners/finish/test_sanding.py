"""Sanding: grits of a printed chart, every way through them tried, and what a veneer loses."""

import re
from fractions import Fraction
from itertools import combinations, pairwise

import pytest
from asking import ask, errors, reckon, texts
from hypothesis import given
from hypothesis import strategies as st

from sawside.wood.abrasives import GRITS, nearest, steps
from tables import rows

KEY = "sanding"
CHART = rows("grit_chart.csv")
MEAN = {
    (scale, int(row[column])): Fraction(row["micrometers"])
    for row in CHART
    for scale, column in (("P", "p"), ("CAMI", "cami"))
    if row[column]
}


def numbers(text):
    """The grits of an answer as numbers."""
    return [int(each.removeprefix("P")) for each in text.split(", ")]


def test_grains_are_those_of_another_printed_chart():
    """A finish maker's chart: within 3 %, 8 % of the coarsest, where charts differ."""
    on_file = {(scale, number) for scale, grits in GRITS.items() for number in grits}
    assert set(MEAN) == on_file
    for (scale, number), size in MEAN.items():
        off = abs(GRITS[scale][number].size / size - 1)
        assert off < (Fraction(8, 100) if number == 36 else Fraction(31, 1000)), (scale, number)


def test_finer_grits_have_finer_grains():
    for grits in GRITS.values():
        assert [*grits] == sorted(grits)
        assert all(one.size > two.size for one, two in pairwise(grits.values()))


def test_what_a_chart_prints_side_by_side_is_nearest():
    """The same chart: 180 and P180, 240 and P280, 320 and P400, 400 and P800, 600 and P1200."""
    pairs = [(int(row["cami"]), int(row["p"])) for row in CHART if row["cami"] and row["p"]]
    assert len(pairs) == 9
    for cami, p in pairs:
        assert nearest(GRITS["CAMI"][cami]).number == p
        assert nearest(GRITS["P"][p]).number == cami


@pytest.mark.parametrize(
    ("surface", "finish", "grits"),
    [
        # The usual sequence before an oil, and before a film from saw marks: common practice, no
        # source. 80 is as coarse as planed boards need (a reference work on sandpaper, read).
        ("planed", "linseed", [80, 120, 180, 220]),
        ("planed", "wiping", [80, 120, 180]),
        ("sawn", "lacquer", [60, 80, 120, 180]),
        ("planed", "paint", [80, 120, 150]),
        ("smooth", "water", [150, 220]),
        ("sheet", "blend", [180, 220]),
        ("sheet", "paint", [150]),
        ("planed", "oil_paint", [80, 120, 150]),
    ],
)
def test_the_grits_are_those_of_the_shop(surface, finish, grits):
    said = reckon(KEY, surface=surface, finish=finish)
    assert numbers(texts(said)["grits"]) == grits
    assert said["verdict"].startswith("Sand with P")


def test_the_step_is_explained_by_its_grains():
    """201 ÷ 125 = 1.608."""
    said = texts(reckon(KEY, surface="planed", finish="linseed"))["step"]
    assert said.startswith("1.61 times, P80 to P120: what 201 µm grains scratch, 125 µm ones")


limits = st.integers(140, 300).map(lambda hundredths: Fraction(hundredths, 100))


@given(st.sampled_from(["P", "CAMI"]), st.data(), limits)
def test_no_step_is_larger_than_the_limit_and_none_is_needless(scale, data, most):
    """Each way with fewer grits is tried, of all that are on file."""
    numbered = sorted(GRITS[scale])
    first, last = sorted(data.draw(st.tuples(*[st.sampled_from(numbered)] * 2)))
    way = [each.number for each in steps(GRITS[scale][first], GRITS[scale][last], most)]
    size = {number: GRITS[scale][number].size for number in numbered}
    assert (way[0], way[-1]) == (first, last)
    assert all(size[one] / size[two] <= most for one, two in pairwise(way))
    if len(way) < 3 or len(way) > 6:
        return
    seldom = {36, 50, 240, 280, 360, 500, 1200} if scale == "P" else {36, 50, 360, 500}
    carried = set(way) & seldom <= {first, last}
    between = [
        each for each in numbered if first < each < last and not (carried and each in seldom)
    ]
    for fewer in combinations(between, len(way) - 3):
        other = (first, *fewer, last)
        assert any(size[one] / size[two] > most for one, two in pairwise(other))


def test_a_thin_face_is_started_finer_so_that_no_more_than_the_limit_goes():
    """0.25 mm: half of 100 and 68 are 84 µm, 33.6 %; half of 82 and 68 are 75 µm, 30 %."""
    thin = {"surface": "sheet", "finish": "blend"}
    said = texts(reckon(KEY, **thin))
    assert said["face"] == "About 0.003″ of 0.0098″ (30%), so it starts finer"
    assert texts(reckon(KEY, **thin, face="usual"))["grits"] == "P150, P220"
    assert texts(reckon(KEY, **thin, share="20"))["grits"] == "P220"
    assert texts(reckon(KEY, **thin, face="own", own_face="1/32"))["grits"] == "P150, P220"


def test_a_first_grit_that_wears_a_veneer_through_is_warned_of():
    said = reckon(KEY, surface="sheet", finish="blend", first="80")
    assert said["cautions"][0].startswith("Sanded so far, the veneer may wear through")
    assert said["fixes"] == [{"label": "Start finer", "field": "first"}]
    solid = reckon(KEY, surface="planed", finish="blend", first="80")
    assert [each.split(",")[0] for each in solid["cautions"]] == ["Wear a dust respirator to sand"]


@given(st.sampled_from(["sheet", "veneer"]), st.integers(100, 3000), st.integers(5, 80))
def test_no_more_of_a_face_goes_than_the_limit_unless_one_grit_alone_takes_it(kind, face, share):
    values = {"face": "own", "own_face": f"{face / 1000} mm", "share": str(share)}
    said = reckon(KEY, surface=kind, finish="blend", **values)
    halves = sum(MEAN["P", each] / 2 for each in numbers(texts(said)["grits"]))
    over = halves > Fraction(face * share, 100)
    assert over == said["cautions"][0].startswith("Sanded so far")
    assert not over or texts(said)["grits"] == "P220"


def test_disks_are_counted_by_the_faces_of_the_parts():
    """2 × 2 × 30 × 12 = 1440 in² and 36 × 16 = 576: 14 ft², two disks of 10 for each grit."""
    parts = [
        {"length": "30", "width": "12", "count": "2"},
        {"length": "36", "width": "16", "sides": "one"},
    ]
    said = texts(reckon(KEY, surface="planed", finish="linseed", faces=parts))
    assert said["disks"] == "2 of each grit, 8 total, for 14 ft²"
    there = texts(reckon(KEY, {"unit": "mm"}, surface="planed", finish="linseed", faces=parts[:1]))
    assert there["disks"] == "1 of each grit, 4 total, for 0.0014 m²"
    larger = [{"length": "2000", "width": "800", "count": "2"}]
    there = texts(reckon(KEY, {"unit": "mm"}, surface="planed", finish="linseed", faces=larger))
    assert there["disks"] == "7 of each grit, 28 total, for 6.4 m²"


def test_before_and_after_assembly_the_joints_are_spared_and_leveled():
    said = texts(reckon(KEY, surface="planed", finish="linseed"))
    assert "P80 to P220. Outside faces: P80. Stay off the joints." in said["before"]
    assert (
        said["after"] == "Level the joints with P120, then all outside faces: P120, P180 and P220"
    )


@pytest.mark.parametrize("surface", ["planed", "sawn", "smooth", "sheet", "veneer"])
@pytest.mark.parametrize("finish", ["linseed", "lacquer", "paint"])
def test_an_outside_face_gets_every_grit_before_or_after_assembly(surface, finish):
    """What a coarse grit takes out, saw marks and ripples, no finer one does (common practice, no
    source)."""
    said = texts(reckon(KEY, surface=surface, finish=finish))
    outside = said["before"].partition("Outside faces: ")[2] + said["after"]
    there = [int(each) for each in re.findall(r"P(\d+)", outside)]
    assert sorted({*there}) == numbers(said["grits"])


@pytest.mark.parametrize("surface", ["sheet", "veneer"])
def test_no_joint_is_leveled_by_sanding_through_veneer(surface):
    """Common practice, no source: the thinner face gives first."""
    said = texts(reckon(KEY, surface=surface, finish="blend", face="usual"))["after"]
    assert "Level" not in said
    assert said.startswith("Outside faces, and eased edges of solid wood: P")


@pytest.mark.parametrize(
    ("values", "field", "kind", "remedy"),
    [
        ({"first": "90"}, "first", "impossible", "Use P80 or P100."),
        ({"last": "0"}, "last", "impossible", "Use P36 or P40."),
        ({"last": "700", "scale": "CAMI"}, "last", "impossible", "Use 500 or 600."),
        ({"first": "220", "last": "80"}, "first", "impossible", None),
        ({"first": "P80"}, "first", "unreadable", None),
        ({"step": "1"}, "step", "range", None),
        ({"surface": "sheet", "face": "own"}, "own_face", "missing", None),
        ({"faces": [{"length": "30"}]}, "faces", "missing", None),
        ({"surface": "steel"}, "surface", "unknown", None),
    ],
)
def test_bad_input_names_its_field(values, field, kind, remedy):
    found = errors(ask(KEY, **values))[field]
    assert found["kind"] == kind
    assert remedy in (None, found["remedy"])
