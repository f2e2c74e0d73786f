"""Questions of the subject tape that became part of another one."""

from sawside.project.schema.former_questions.became import Became

MERGED: dict[str, Became] = {
    "diagonal": Became("square", {"solve": "diagonal"}),
    "out_of_square": Became("square", {"solve": "out"}, {"width": "bottom", "height": "side"}),
    "three_four_five": Became("square", {"solve": "triangle"}, blank={"step": "1 in"}),
    "read_the_tape": Became("tape_marks", {"solve": "length"}, {"division": "smallest"}),
    "marks_to_count": Became("tape_marks", {"solve": "mark"}),
    "burned_inch_mark": Became("burned_inch", {"solve": "mark"}),
    "fraction_ladder": Became("fractions", {"solve": "nearest"}),
    "sixty_fourths": Became("fractions", {"solve": "table"}),
    "corrected_reading": Became("tape_error", {"solve": "true"}, blank={"which": "mine"}),
    "tape_tolerance": Became("tape_error", {"solve": "allowed"}, {"length": "reading"}),
    "inside_measure": Became("opening", blank={"way": "case"}),
    "smallest_of": Became("opening", {"way": "spots"}),
}
