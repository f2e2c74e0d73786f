"""Which field a number of a drawing opens when it is touched.

A drawing ties a dimension to its field itself (`shapes.dimension(…, field=key)`) where it knows it.
Any other given number is tied here, to the one field that was filled in with it. Two fields with
one number are told apart by their labels, or neither opens.
"""

import re

_GIVEN = ("given", "note", "name")


def with_fields(drawing, reckoner, given, show):
    """The drawing with the fields of its given numbers; None as it is."""
    if drawing is None:
        return None
    texts = [
        (field, show.brief(value))
        for field in reckoner.fields
        if field.kind == "length" and (value := getattr(given, field.key)) is not None
    ]
    return drawing | {"shapes": [_tied(shape, texts) for shape in drawing["shapes"]]}


def _tied(shape, texts):
    if "field" in shape or shape.get("role") not in _GIVEN or not shape.get("text"):
        return shape
    found = [field for field, number in texts if _has(shape["text"], number)]
    if len(found) > 1:
        found = [field for field in found if field.label.lower() in shape["text"].lower()]
    return shape | {"field": found[0].key} if len(found) == 1 else shape


def _has(text, number):
    """Whether a number stands in a text by itself, not as the end of a longer one."""
    return bool(re.search(rf"(?<![\d./≈−])(?<![\d≈] ){re.escape(number)}(?![\d/])", text))
