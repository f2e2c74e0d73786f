"""Moments of the person's own clock, read exactly and said as one says them."""

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.errors import Refusal
from sawside.moments import at, is_moment, lasting, read_moment, said

moments = st.datetimes(datetime(2000, 1, 1), datetime(2100, 12, 31))


@given(moments)
def test_what_a_page_gives_is_read_and_kept_as_it_is(moment):
    """HTML, 2.3.5.5: a local date and time, `T` between; strftime says the same in its own way."""
    text = moment.strftime("%Y-%m-%dT%H:%M")
    assert at(read_moment(text)) == text
    assert read_moment(f"{text}:59").minute == moment.minute
    told = said(moment.replace(second=0))
    assert told == f"{moment:%a %b} {moment.day}, {moment:%I:%M %p}".replace(", 0", ", ")


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("", "missing"),
        ("  ", "missing"),
        ("2026-11-30", "unreadable"),
        ("2026-11-30 18:00", "unreadable"),
        ("2026-11-30T18:00Z", "unreadable"),
        ("2026-11-30T18:00+01:00", "unreadable"),
        ("2026-02-30T18:00", "unreadable"),
        ("2026-11-30T24:00", "unreadable"),
        ("٢٠٢٦-11-30T18:00", "unreadable"),
        ("1999-12-31T23:59", "range"),
        ("2101-01-01T00:00", "range"),
        ("0000-01-01T00:00", "unreadable"),
    ],
)
def test_what_is_no_moment_is_refused_with_a_remedy(text, kind):
    with pytest.raises(Refusal) as refused:
        read_moment(text)
    assert refused.value.kind == kind
    assert refused.value.remedy.endswith(".")
    assert not is_moment(text)


@pytest.mark.parametrize(
    ("minutes", "told"),
    [
        (0, "0 min"),
        (20, "20 min"),
        (60, "1 h"),
        (150, "2 h 30 min"),
        (24 * 60, "24 h"),
        (71 * 60 + 59, "71 h 59 min"),
        (72 * 60, "3 days"),
        (72 * 60 + 1, "3 days 1 h"),
    ],
)
def test_a_stretch_of_time_is_told_no_shorter_than_it_is(minutes, told):
    assert lasting(timedelta(minutes=minutes)) == told
