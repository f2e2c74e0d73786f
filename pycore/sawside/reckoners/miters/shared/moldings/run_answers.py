"""The answers of a run of molding: lengths, settings, order and stock."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.miter import half_corner
from sawside.geometry.sticks import fewest_sticks
from sawside.reckoners.miters.shared.moldings.run_parts import told
from sawside.reckoners.miters.shared.moldings.run_words import (
    AT_THE_SAW,
    corners_text,
    ends_text,
    how_to_cope,
    order_of,
)


def answers_of(given, show, run, named):
    """`named` are (name, piece) in the order of cutting."""
    pieces = [piece for _, piece in named]
    taken = _taken_by_layer(pieces, given.kerf)
    answers = {
        "first": told(show, pieces[0], pieces[0].tip_to_tip),
        "pieces": _lengths(show, named, lambda piece: piece.tip_to_tip, tips=True),
        **_other_lengths(show, named),
        **_settings(run.corners),
        "order": order_of(pieces, len(given.layers), closed=run.closed),
        "at_the_saw": AT_THE_SAW,
        "stock": [(f"Layer {layer}", sum(long, Fraction(0))) for layer, long in taken.items()],
        "net": sum((piece.tip_to_tip for piece in pieces), Fraction(0)),
    }
    if any(piece.is_coped for piece in pieces):
        answers |= {"ends": ends_text(pieces), "how": how_to_cope(run.corners)}
    if given.stick is not None:
        answers["sticks"] = _sticks(given, show, named, taken)
    return answers


def _lengths(show, named, length_of, *, tips=False):
    return [
        (
            f"{number}. {name}{', tip to tip' if tips and piece.is_between else ''}",
            told(show, piece, length_of(piece)),
        )
        for number, (name, piece) in enumerate(named, 1)
    ]


def _other_lengths(show, named):
    """The short points where an end is cut at an angle, the face lengths where one is coped."""
    kinds = {joint.kind for _, piece in named for joint in piece.leg.joints}
    answers = {}
    if kinds & {"mitered", "returned", "scarfed"}:
        answers["short_sides"] = _lengths(show, named, lambda piece: piece.sides[1])
    if "coped" in kinds:
        answers["faces"] = _lengths(show, named, lambda piece: piece.face - piece.extra)
    return answers


def _settings(corners):
    """The miter of all corners where they are alike, else that of the first and of the last."""
    settings = [half_corner(corner.degrees) for corner in corners]
    if not settings:
        return {}
    if len(set(settings)) == 1:
        answers = {"setting": settings[0]}
    else:
        answers = {"first_setting": settings[0], "last_setting": settings[-1]}
    return answers | ({"corners": corners_text(corners)} if len(corners) > 1 else {})


def _taken_by_layer(pieces, kerf):
    """{layer: what each of its pieces takes}."""
    layers = {}
    for piece in pieces:
        layers.setdefault(piece.layer, []).append(piece.off_a_stick(kerf))
    return layers


def _sticks(given, show, named, taken):
    for name, piece in named:
        if (takes := piece.off_a_stick(given.kerf)) > given.stick:
            raise Refusal(
                "impossible",
                f"{name} takes {show.text(takes)} with its kerfs, more than a stick of "
                f"{show.text(given.stick)}.",
                "Use longer sticks, or leave Stick length blank and find where to join two in "
                "“Scarf joint over a long run”.",
                field="stick",
            )
    return "; ".join(
        f"layer {layer}: {fewest_sticks(lengths, given.stick)} of {show.text(given.stick)}"
        for layer, lengths in taken.items()
    ).capitalize()
