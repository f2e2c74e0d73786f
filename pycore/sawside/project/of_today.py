"""What an earlier version kept, as this one keeps it."""

from sawside.needs import an_object, require, text
from sawside.project.schema.former_questions import line_of_today

MOST_FORMS = 200


def a_form(value, place):
    """What was typed into the fields of a question, of now or of before."""
    form = an_object(value, place)
    for key, check in (("reckoner", text), ("values", an_object)):
        require(form.get(key), f"{place}.{key}")
        check(form[key], f"{place}.{key}")
    return {"reckoner": form["reckoner"], "values": form["values"]}


def of_today(document=None, forms=()):
    """The contract of `today`: a checked document, which is in this schema by that, and forms of
    `a_form` that ask the same of the questions of now."""
    return {"document": document, "forms": [line_of_today(form) for form in forms]}
