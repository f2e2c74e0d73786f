"""What no screw may be: too thick for an edge, sunk right through, its pilot wider than it."""

from sawside.errors import impossible
from sawside.lengths.fine import fine_text, limit_text
from sawside.lengths.real import sign
from sawside.wood.numbers import size_text


def refuse_too_thick_for_edge(given, show, shank):
    """ "impossible" above half of the edge it goes into (common practice, no source)."""
    if given.edge is not None and 2 * shank > given.edge:
        half = limit_text(given.edge / 2, show, "stay under")
        raise impossible(
            f"A screw {fine_text(shank, show)} thick is more than half of an edge "
            f"{fine_text(given.edge, show)} thick: it would split it (shop practice).",
            f"Use a screw of {half} or less, or a thicker piece.",
            "edge",
        )


def refuse_sunk_through(given, show, cone):
    """ "impossible" where the head is sunk through the first piece; `cone` is how deep it is."""
    deep = given.sink if cone is None else given.sink + cone
    if sign(deep - given.over) >= 0:
        raise impossible(
            f"A head sunk {fine_text(deep, show)} deep goes right through a piece "
            f"{fine_text(given.over, show)} thick.",
            "Use a thinner screw, sink it less, or use a thicker piece.",
            "sink" if given.sink else "over",
        )


def refuse_narrow_head(show, head, shank):
    """ "impossible" where a flat head isn't wider than what it is on."""
    if head <= shank:
        raise impossible(
            f"A head {fine_text(head, show)} wide isn’t wider than the shank, "
            f"{fine_text(shank, show)}.",
            f"Enter more than {fine_text(shank, show)}, or leave it blank.",
            "head_wide",
        )


def refuse_root_past_shank(show, root, shank):
    """ "impossible" where a screw would be thicker between its threads than it is."""
    if root >= shank:
        raise impossible(
            f"A root of {fine_text(root, show)} isn’t thinner than the shank, "
            f"{fine_text(shank, show)}.",
            f"Enter less than {fine_text(shank, show)}, or leave it blank.",
            "root",
        )


def refuse_pilot_past_root(given, show, root):
    """ "impossible" where the threads would hang in the air."""
    if given.pilot > root:
        raise impossible(
            f"A {fine_text(given.pilot, show)} pilot is wider than the root of the screw, "
            f"{size_text(root, show)}: the threads won’t hold.",
            f"Use a bit of {limit_text(root, show, 'stay under')} or less.",
            "pilot",
        )


def refuse_no_bit(show, root):
    """The refusal where every bit of the set is thicker than the root."""
    return impossible(
        f"No bit of that set is as thin as the root of the screw, {fine_text(root, show)}.",
        "Choose a finer drill set, or enter the bit you have.",
        "bits",
    )


def refuse_no_length(show, size, through, longest):
    """The refusal where no stock length of a size gets through the first piece and stays in the
    second, of which at most `longest` does."""
    name = f"{size.name} screw" if size.name else "screw"
    if size.longest <= through:
        return impossible(
            f"The longest stock {name}, {fine_text(size.longest, show)}, doesn’t get through the "
            "first piece.",
            "Use a thicker screw, sink its head deeper, or enter a length.",
            "over",
        )
    return impossible(
        f"No stock {name} holds here: at most {fine_text(longest, show)} stays clear of the far "
        "face.",
        "Use a thinner screw, leave less wood past the tip, sink it deeper, or enter a length.",
        "under",
    )
