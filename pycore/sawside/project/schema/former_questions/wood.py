"""Questions of the subject wood that became part of another one."""

from sawside.project.schema.former_questions.became import Became

MERGED: dict[str, Became] = {
    "slots_for_a_fixed_top": Became("slots_for_a_top", {"held": "screws"}),
    "breadboard_ends": Became("slots_for_a_top", {"held": "pins"}),
}
