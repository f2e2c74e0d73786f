"""The pieces of a base, a band, a crown or a strip that goes around a case or along its front."""

from sawside.reckoners.case.shared.molding.crown import crown_told
from sawside.reckoners.case.shared.molding.fields import BASIC, FIELDS
from sawside.reckoners.case.shared.molding.flat import flat_told
from sawside.reckoners.declaration import Alike, Answer, Reckoner


def compute(given, show):
    """Every piece with its inside edge on the case and its outside edge, in inches."""
    return crown_told(given, show) if given.molding == "crown" else flat_told(given, show)


RECKONER = Reckoner(
    key="case_molding",
    title="Molding on a case",
    asks="How long are the base, crown or strips around this case?",
    words=(
        "case molding, cabinet molding, molding on a cabinet, cabinet base, "
        "cabinet crown, case base, case crown, base on a cabinet, crown on a cabinet, top molding, "
        "waist molding, shelf strip, face strip, toe kick molding, packing, furring, "
        "return into the side"
    ),
    order=660,
    job="cases",
    picture={
        "wood": "M8 11h24v20H8zM4 4h32l-4 7H8zM5 31h30v5H5z",
        "ink": "M8 11h24",
        "chalk": "M4 4l4 7M36 4l-4 7",
    },
    basic=BASIC,
    makes_parts=True,
    alike=(Alike(),),
    fields=FIELDS,
    answers=(
        Answer("first", "First piece", must="case"),
        Answer("pieces", "Lengths in cutting order", "lengths", must="case"),
        Answer("insides", "Inside edges, on the case", "lengths", must="case"),
        Answer("bottoms", "Bottom edges, on the case", "lengths", must="case"),
        Answer("tops", "Top edges", "lengths", must="case"),
        Answer("setting", "Miter angle", "angle", sets="turned"),
        Answer("miter", "Miter, cut flat", "angle", sets="turned"),
        Answer("tilt", "Bevel, cut flat", "angle", sets="tilted", with_turn="miter"),
        Answer("held", "Miter, cut nested", "angle", sets="turned"),
        Answer("top_line", "Top edge, above the floor", must="agree"),
        Answer("bottom_line", "Bottom edge, above the floor", must="agree"),
        Answer("packing", "Packing behind the side pieces", "lengths", must="agree"),
        Answer("stock", "Molding to buy, with waste", must="reach"),
        Answer("order", "Cutting order", "text"),
        Answer("at_the_saw", "At the saw", "text"),
        Answer("how", "How to cope", "text"),
        Answer("left_flat", "Left end, cut flat", "text"),
        Answer("right_flat", "Right end, cut flat", "text"),
        Answer("left_up", "Left end, nested upside down", "text"),
        Answer("right_up", "Right end, nested upside down", "text"),
        Answer("spring", "Spring angle", "angle"),
        Answer("width", "Face width", must="agree"),
        Answer("drop", "Drop down the case", must="agree"),
        Answer("projection", "Projection", must="agree"),
    ),
    source=(
        "A square corner adds the molding’s projection to the outside edge at each miter: plane "
        "trigonometry. Wrapping the face frame where it stands past the side, square ends at the "
        "wall and returns as long as the projection are shop practice. Crown: as in Crown molding."
    ),
    compute=compute,
    example={
        "molding": "base",
        "built": "free",
        "case_width": "36",
        "case_depth": "15 1/2",
        "thickness": "3/4",
        "frame": "3/4",
        "frame_left": "1/4",
        "molding_height": "4 1/2",
        "bottom_at": "0",
    },
)
