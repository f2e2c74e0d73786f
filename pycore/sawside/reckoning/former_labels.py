"""What answers were called before: a name in a text that was kept goes on meaning the same answer.

By question: {its label once, in small letters: the key of the answer}. Whoever gives an answer
another label adds the old one here.
"""

FORMER = {
    "corrected_reading": {
        "the tape is off here by": "off",
        "to mark off a true length of what it reads, mark at": "aim",
    },
    "equal_parts": {
        "largest difference between parts, by the marks": "difference",
        "parts as the marks give them": "sizes",
    },
    "fraction_ladder": {"neighbors on every division": "neighbors"},
    "how_many_fit": {"missing for one piece more": "missing"},
    "middle": {"middle, on the tape": "middle", "at each side": "side"},
    "out_of_square": {
        "top off to one side by": "offset",
        "both diagonals, once pushed": "goal",
        "both diagonals, by width and height": "square",
    },
    "smallest_of": {
        "smallest reading": "smallest",
        "largest reading": "largest",
        "they lie apart by": "apart",
        "mean of the readings": "mean",
    },
    "tape_tolerance": {
        "the true length is at least": "least",
        "the true length is at most": "most",
        "by each rule": "rules",
    },
    "three_four_five": {"between the marks, this one and smaller": "others"},
}
