"""The core's contract, written for TypeScript; that the file is up to date see test_style.py."""

from typing import Any, Literal, NamedTuple, NotRequired, TypedDict

import pytest

from web.build import contract_types


class Piece(TypedDict):
    """A piece.

    Its length is as typed.
    """

    name: str
    cut: bool
    count: int | None
    of: NotRequired[list["str | None"]]


class Note(TypedDict):
    kind: Literal["short", True]
    beside: dict[str, list[Piece]]
    more: Any


class Message(NamedTuple):
    asks: type
    answers: type


Either = Piece | Note


class Both(TypedDict):
    """Either, or neither."""

    entries: list[Either | None]


def written(*shapes, **others):
    """The declarations of shapes, with no messages."""
    named = contract_types.named([{shape.__name__: shape for shape in shapes}, others])
    return contract_types.declarations(named, {"add": Message(shapes[0], shapes[-1])})


def test_shapes_are_written_as_typescript_has_them():
    """In order of their names, docstrings as comments, and what may be missing with a ?."""
    text = written(Piece, Note, Both, Either=Either)
    assert (
        """\
/** Either, or neither. */
export interface Both {
  entries: (Either | null)[];
}

export type Either = Piece | Note;

export interface Note {
  kind: "short" | true;
  beside: Record<string, Piece[]>;
  more: any;
}

/**
 * A piece.
 *
 * Its length is as typed.
 */
export interface Piece {
  name: string;
  cut: boolean;
  count: number | null;
  of?: (string | null)[];
}

export interface Asks {
  add: Piece;
}

export interface Answers {
  add: Both;
}
"""
        in text
    )


@pytest.mark.parametrize("odd", [set[str], tuple[int, int], dict[int, str], bytes, Literal['"']])
def test_a_type_without_words_stops_the_build(odd):
    """Else the page would be checked against less than the core says."""
    with pytest.raises(TypeError, match="no words for"):
        written(TypedDict("Odd", {"key": odd}))


def test_a_shape_from_outside_the_contract_stops_the_build():
    with pytest.raises(TypeError, match="no words for"):
        written(Both, Either=Either)


def test_two_shapes_of_one_name_stop_the_build():
    with pytest.raises(TypeError, match="Two shapes are called Piece"):
        contract_types.named([{"Piece": Piece}, {"Piece": Note}])


def test_every_message_of_the_core_is_written():
    """By its name, in what is asked and in what is answered."""
    shapes, messages = contract_types.contract()
    text = contract_types.declarations(shapes, messages)
    asks, answers = text.split("export interface Asks")[1].split("export interface Answers")
    for name in messages:
        assert f"\n  {name}: " in asks
        assert f"\n  {name}: " in answers
