"""The ends of a part that is cut standing on edge, as its drawing shows them."""

from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import End


def edge_end(cut, side):
    """The end of a part that an `EdgeCut` at its "left" or "right" makes."""
    if sign(cut.degrees) == 0:
        return End("square", cut.setting)
    setting = f"{angle_text(abs(cut.degrees))} {cut.swung(side)}"
    return End("edge", setting, abs(cut.degrees))


def edge_ends(cuts):
    """Those of the left and of the right cut."""
    return [edge_end(cut, side) for cut, side in zip(cuts, ("left", "right"), strict=True)]
