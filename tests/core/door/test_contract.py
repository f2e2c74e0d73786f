"""Every answer has the shape that the contract gives it, and every message is in the contract."""

import pytest
from typeguard import CollectionCheckStrategy, TypeCheckError, check_type

import sawside
from sawside.contract.answered import Refused
from sawside.contract.messages import MESSAGES
from sawside.door import AT_ONCE
from sawside.messages import MESSAGES as ANSWERED
from tests.core.door.door_at_random import Session
from tests.core.door.every_message import messages


def held(message, answer):
    """Hold an answer to its shape, whole; raises `TypeCheckError`."""
    shape = Refused
    if answer["ok"]:
        shape, answer = MESSAGES[message["do"]].answers, {**answer}
        del answer["ok"]
    check_type(answer, shape, collection_check_strategy=CollectionCheckStrategy.ALL_ITEMS)


def test_the_contract_lists_the_messages_that_are_answered_and_no_others():
    assert MESSAGES.keys() == ANSWERED.keys() | AT_ONCE.keys()


def test_every_message_and_its_answer_have_their_shapes():
    for message in messages():
        answer = sawside.handle(message)
        held(message, answer)
        if answer["ok"]:
            asks = MESSAGES[message["do"]].asks
            check_type(message, asks, collection_check_strategy=CollectionCheckStrategy.ALL_ITEMS)


@pytest.mark.parametrize("number", range(1000, 1006))
def test_whatever_is_sent_the_answer_has_its_shape(number):
    session = Session(number)
    for _ in range(120):
        message = session.message()
        session.call(message)
        held(message, sawside.handle(message))


def test_an_answer_of_another_shape_is_found():
    message = {"do": "read", "text": "31 5/8"}
    answer = sawside.handle(message)
    value = answer["value"]
    bad = [
        answer | {"more": 1},
        {"ok": True, "value": value},
        answer | {"value": value | {"mark": 31.625}},
        answer | {"value": {key: value[key] for key in value if key != "words"}},
    ]
    for each in bad:
        with pytest.raises(TypeCheckError):
            held(message, each)
