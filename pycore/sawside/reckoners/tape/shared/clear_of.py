"""What is left of an opening beside a clearance."""

from sawside.errors import Refusal


def clear_of(opening, room, show):
    """The opening less the clearance, inches; refused where nothing is left."""
    left = opening - room
    if left <= 0:
        raise Refusal(
            "impossible",
            f"A clearance of {show.text(room)} leaves nothing of {show.text(opening)}.",
            "Use less clearance.",
            field="room",
        )
    return left
