"""The given numbers of a drawing know the field that they were typed into."""

from asking import reckon

RAIL = {"known": "31 5/8", "known_face": "inside", "width": "2 1/4"}


def ties(question, **values):
    """Texts of the drawing by the field that they open."""
    shapes = reckon(question, **values)["drawing"]["shapes"]
    return {shape["field"]: shape["text"] for shape in shapes if "field" in shape}


def test_a_given_number_opens_the_field_it_was_typed_into():
    assert ties("mitered_length", **RAIL) == {
        "known": "short point 31 5/8″",
        "width": "2 1/4″ wide",
    }


def test_a_number_that_was_answered_opens_nothing():
    assert "36 1/8″" not in " ".join(ties("mitered_length", **RAIL).values())


def test_a_number_within_a_longer_one_is_not_taken_for_it():
    assert ties("mitered_length", **RAIL | {"known": "31 5/8", "width": "5/8"}) == {
        "known": "short point 31 5/8″",
        "width": "5/8″ wide",
    }


def test_two_fields_of_one_number_are_told_apart_by_their_labels_or_open_nothing():
    same = ties("over_or_under", aimed="34 7/8", measured="34 7/8", cut="stop")
    assert same == {"aimed": "target 34 7/8″", "measured": "measured 34 7/8″"}
    assert ties("mitered_length", **RAIL | {"known": "2 1/4"}) == {}


def test_a_field_that_is_not_asked_is_not_opened():
    square = ties("shelf_length", width="36", width_is="inside", joint="fixed", depth="9")
    assert "left_depth" not in square
