"""The answers of a case in the order in which they are told: the one that was asked for first."""


def main_answer(reckoner, found):
    """The `Answer` that was asked for: its value is always in `found.answers`."""
    key = found.main or reckoner.answers[0].key
    return next(answer for answer in reckoner.answers if answer.key == key)


def answers_of(reckoner, found):
    """The `Answer`s that this case has, the one that was asked for first."""
    main = main_answer(reckoner, found)
    others = (answer for answer in reckoner.answers if answer.key in found.answers)
    return [main, *(answer for answer in others if answer is not main)]
