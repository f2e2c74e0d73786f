"""A reading of one of the person's own tapes, as long as it truly is."""


def by_own_tape(tape, reading, show):
    """(true length in inches, the lines of working of it); as it was read without a tape."""
    true = tape.true(reading) if tape else reading
    if true == reading:
        return reading, []
    return true, [
        f"{tape.name} reads {show.number(reading)}; with its scale and its hook: "
        f"{show.number(tape.scale * reading)} + {show.number(tape.hook)} = {show.number(true)}"
    ]
