"""Whatever text an act on the tally is given: what is kept can be opened and taken back."""

from hostile_text import DOCUMENT, hostile_texts, plain, respaced, texts, with_texts
from hypothesis import given
from hypothesis import strategies as st
from typed_acts import TALLY_TYPED

import sawside
from sawside.tally.acts import ACTS


def tally_told(tally, act):
    message = {"do": "tally", "tally": tally, "act": act, "settings": {}}
    return sawside.handle(message | {"document": DOCUMENT, "project": "1"})


def tally_after(*made):
    tally = None
    for act in made:
        said = tally_told(tally, act)
        assert said["ok"], said
        tally = said["tally"]
    return tally


TALLY = tally_after(
    {"act": "enter", "text": "31 5/8 + 2 1/4"},
    {"act": "name", "id": "1", "name": "Long side"},
    {"act": "enter", "text": "Long side + Case width + 2 × [1]"},
    {"act": "enter", "text": "Long side - Case width" + " + Long side - Case width" * 6},
)
TALLY_CASES = [{"act": name} | more for name, all_ in TALLY_TYPED.items() for more in all_]


def test_hostile_text_is_tried_with_every_act_of_the_tally():
    assert set(TALLY_TYPED) == set(ACTS)


def must_open_tally(tally):
    assert tally_told(tally, None)["tally"] == tally


@given(st.data(), st.sampled_from(TALLY_CASES))
def test_any_space_in_the_tally_is_kept_as_typed_or_as_a_plain_one(data, act):
    hostile = with_texts(act, {path: respaced(text, data.draw) for path, text in texts(act)})
    said, usual = tally_told(TALLY, hostile), tally_told(TALLY, act)
    assert said["ok"], said
    assert plain(said["tally"]) == plain(usual["tally"])
    assert [line["value"] for line in said["lines"]] == [line["value"] for line in usual["lines"]]
    must_open_tally(said["tally"])
    assert tally_told(said["tally"], said["undo"])["tally"]["lines"] == TALLY["lines"]


@given(st.data(), st.sampled_from(TALLY_CASES))
def test_a_tally_with_any_text_can_be_opened(data, act):
    said = tally_told(TALLY, with_texts(act, data.draw(hostile_texts(act))))
    if said["ok"]:
        must_open_tally(said["tally"])
        assert tally_told(said["tally"], said["undo"])["tally"]["lines"] == TALLY["lines"]
        return
    assert said["error"]["kind"] != "internal", said
    if act["act"] not in ("put", "restore"):
        assert "damaged" not in said["error"]["message"], said
