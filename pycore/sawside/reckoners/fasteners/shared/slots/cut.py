"""The slots of a joint: their centers, their depth and the wood that they leave. Exact inches."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.errors import impossible
from sawside.lengths.fine import fine_text, limit_text


@dataclass(frozen=True, slots=True)
class Slots:
    """The slots of one part; `centers` are from the joint's end, `behind` is the wood under the
    bottom of one, None where that was not asked for."""

    centers: list[Fraction]
    depth: Fraction
    from_face: Fraction
    at_faces: tuple[Fraction, Fraction]
    behind: Fraction | None

    @property
    def apart(self):
        """From center to center, or None where there is one."""
        return self.centers[1] - self.centers[0] if len(self.centers) > 1 else None


def slots_of(given, show):
    """The `Slots` of a form; "impossible" where they meet, or come out of an end, face or back."""
    if given.along > given.long:
        raise impossible(
            f"A slot {fine_text(given.along, show)} long is longer than the joint, "
            f"{fine_text(given.long, show)}.",
            f"Use one of {limit_text(given.long, show, 'stay under')} or less.",
            "along",
        )
    depth = given.across / 2 + given.play
    from_face = given.thickness / 2 if given.from_face is None else given.from_face
    faces = from_face - given.thick / 2, given.thickness - from_face - given.thick / 2
    _check_faces(given, show, faces)
    if given.behind is not None and depth >= given.behind:
        raise impossible(
            f"A slot {fine_text(depth, show)} deep comes through "
            f"{fine_text(given.behind, show)} of wood.",
            "Use a smaller biscuit or tenon, less glue room, or thicker wood.",
            "behind",
        )
    left = None if given.behind is None else given.behind - depth
    return Slots(_centers(given, show), depth, from_face, faces, left)


def _check_faces(given, show, faces):
    if min(faces) > 0:
        return
    thick, stock = fine_text(given.thick, show), fine_text(given.thickness, show)
    half = fine_text(given.thick / 2, show)
    raise impossible(
        f"A slot {thick} thick breaks out of a face of stock {stock} thick.",
        f"Use a thinner slot, and keep its center more than {half} from both faces.",
        "thick" if given.from_face is None else "from_face",
    )


def _centers(given, show):
    """The centers from the joint's end: evenly from inset to inset, or one in the middle."""
    span = given.long - 2 * given.inset
    many = given.count
    if many is None:
        many = ceil(span / given.spacing) + 1 if span > given.along else 1
    if many == 1:
        return [given.long / 2]
    if given.inset < given.along / 2:
        half = limit_text(given.along / 2, show, "reach")
        raise impossible(
            f"A slot {fine_text(given.along, show)} long comes out of the end of the joint.",
            f"Enter an inset of {half} or more.",
            "inset",
        )
    if span <= (many - 1) * given.along:
        crowded = given.count is not None
        raise impossible(
            f"{many} slots {fine_text(given.along, show)} long run into each other.",
            "Use fewer or shorter slots, or a smaller inset.",
            "count" if crowded else "spacing",
        )
    return [given.inset + span * number / (many - 1) for number in range(many)]
