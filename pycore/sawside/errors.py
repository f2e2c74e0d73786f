"""Every error that a person can meet: a kind, a plain sentence, a remedy, and the place.

An error is raised where it is found, gets its field where the field is known, and becomes data
at the door. Anything that is not one of these is a bug and is told as kind "internal".
"""

KINDS = {
    "message": "the message or document itself is malformed",
    "unknown": "no such question, field, choice or entry",
    "missing": "a field that is needed was left blank",
    "unreadable": "the text could not be read",
    "range": "it was read, but it is too small or too large",
    "impossible": "no such piece can be made",
    "conflict": "too much or too little was given, or a name is taken",
    "newer": "the document was written by a newer version",
    "internal": "a fault of this program",
}


class Refusal(Exception):
    """One refusal: what is wrong in a plain sentence, and what to do about it.

    `field` is the key of the field, `at` the index of the character in that field's text,
    `row` (from 0) and `part` the place within a field that holds a list or rows. `unfinished`
    says that the text is the beginning of one that can be read: the person may still be typing.
    """

    def __init__(
        self, kind, message, remedy, *, field=None, at=None, row=None, part=None, unfinished=False
    ):
        if kind not in KINDS:
            raise ValueError(f"unknown kind of error: {kind}")
        super().__init__(message)
        self.kind = kind
        self.message = message
        self.remedy = remedy
        self.field = field
        self.at = at
        self.row = row
        self.part = part
        self.unfinished = unfinished

    def of(self, field, **place):
        """The same refusal, told of a field unless it already names one."""
        if self.field is None:
            self.field = field
            for name, value in place.items():
                setattr(self, name, value)
        return self

    def as_data(self):
        """As JSON-native data; `row`, `part` and `unfinished` only where they say something."""
        data = {
            "kind": self.kind,
            "field": self.field,
            "at": self.at,
            "message": self.message,
            "remedy": self.remedy,
        }
        if self.row is not None:
            data["row"] = self.row
        if self.part is not None:
            data["part"] = self.part
        if self.unfinished:
            data["unfinished"] = True
        return data


def impossible(message, remedy, field):
    """The refusal of what can't be made, told of the field to change."""
    return Refusal("impossible", message, remedy, field=field)


class Refusals(Exception):
    """Several refusals at once, so that every bad field hears of its own."""

    def __init__(self, refusals):
        super().__init__("; ".join(refusal.message for refusal in refusals))
        self.refusals = tuple(refusals)


def each_of(fault):
    """Every `Refusal` of one that was raised, or of several."""
    return fault.refusals if isinstance(fault, Refusals) else (fault,)


def message_fault(field, wanted):
    """The refusal of a part of a message that isn't what the message needs: no person meets it."""
    return Refusal("message", f"“{field}” isn’t {wanted}.", f"Send {wanted}.", field=field)


def left_blank(label, remedy, field=None):
    """The refusal of what is needed and was left blank."""
    return Refusal("missing", f"{label} is blank.", remedy, field=field)


def out_of_range(field, message):
    """The refusal of a length that was read and is too small or too large; `message` says how far
    it may go."""
    return Refusal("range", message, "Check the number and its unit.", field=field)


def quoted(text, most=40):
    """What was typed, in quotation marks, shortened so that a sentence stays a sentence."""
    shown = on_one_line(text[: most + 1])
    return f"“{shown if len(shown) <= most else shown[: most - 1] + '…'}”"


def on_one_line(text):
    """A text as it can stand in a sentence: plain spaces, and � for what can't be shown."""
    if text.isprintable():
        return text
    return "".join(each if each.isprintable() else " " if each.isspace() else "�" for each in text)
