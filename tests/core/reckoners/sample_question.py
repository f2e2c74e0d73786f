"""A question as a newcomer would add it: one file that uses every kind of field."""

from sawside.drawing.shapes import dimension, drawing, polygon
from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, End, Part, Reckoner, Reckoning
from sawside.reckoners.fields import angle, choice, count, length, lengths, material, rows


def compute(given, show):
    """The sum of a stack of layers and spacers, so many times over."""
    layers = sum(row.repeat * row.thickness for row in given.layers)
    spacers = sum(given.spacers or [])
    height = given.times * (layers + spacers)
    if given.most is not None and height > given.most:
        raise Refusal("impossible", "The stack is too high.", "Take a layer away.", field="layers")
    picture = drawing(
        "A stack.",
        (-1, -1, 5, height + 1),
        [
            polygon([(0, 0), (4, 0), (4, height), (0, height)]),
            dimension((0, height), (0, 0), 1, show.text(height), "answer"),
        ],
    )
    square = End("square", "0°")
    return Reckoning(
        answers={
            "height": height,
            "steps": [(f"Layer {at}", row.thickness) for at, row in enumerate(given.layers, 1)],
            "layers": len(given.layers),
            "lean": given.lean,
            "of": given.wood.name,
        },
        working=(f"{given.times} × ({show.number(layers)} + {show.number(spacers)})",),
        drawing=picture,
        parts=(Part("stick", "Stick", height, square, square, picture, count=given.times),),
    )


RECKONER = Reckoner(
    key="sample_question",
    title="Sample question",
    asks="How high is a stack of layers?",
    words="stack, layers",
    fields=(
        count("times", "Times over", least="1", most="9", default="1"),
        rows(
            "layers",
            "Layers",
            (
                length("thickness", "Thickness", least="1/64 in"),
                count("repeat", "How many", default="1"),
                choice("face", "Face", {"up": "Up", "down": "Down"}),
            ),
            row_label="Layer",
            most_rows=4,
        ),
        lengths(
            "spacers",
            "Spacers",
            row_label="Spacer",
            most_rows=3,
            may_be_blank=True,
            blank_means="No spacers.",
        ),
        angle("lean", "Lean", default="0"),
        material("wood", "Wood", default="plywood"),
        length("most", "Room", may_be_blank=True, blank_means="There is room enough."),
    ),
    answers=(
        Answer("height", "Height", must="agree"),
        Answer("steps", "Layers from below", "lengths", must="agree"),
        Answer("layers", "How many layers", "count"),
        Answer("lean", "Lean", "angle"),
        Answer("of", "Made of", "text"),
    ),
    source="Addition.",
    compute=compute,
    job="layout",
    example={"layers": [{"thickness": "3/4", "repeat": "2"}], "spacers": ["1/8"]},
    makes_parts=True,
)
