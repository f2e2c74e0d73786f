"""Questions of the subject miters that became part of another one."""

from sawside.project.schema.merged.became import Became


def _error(values):
    """What was off was a choice of its own."""
    kept = {key: value for key, value in values.items() if key != "error"}
    return kept | {"asked": "length" if values.get("error") == "length" else "angle"}


MERGED: dict[str, Became] = {
    "frame_around": Became("mitered_frame", {"shape": "rectangle"}),
    "frame_of_equal_sides": Became("mitered_frame", {"shape": "polygon"}),
    "error_shows": Became("miter_gap", more=_error),
    "fault_of_a_gap": Became("miter_gap", {"asked": "cause"}),
}
