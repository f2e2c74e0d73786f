"""A molding around a case, as the tests of the wrap ask for it."""


def wrap(**more):
    """A case 36 7/8 wide and 15 1/4 deep, in one layer 3/4 thick."""
    return {"width": "36 7/8", "left_depth": "15 1/4", "layers": [{"projection": "3/4"}]} | more


def stack(*projections):
    """Layers as thick as these, in inches, from the case outward."""
    return [{"projection": f"{each} in"} for each in projections]


def parts(said):
    """The pieces of an answer by key."""
    return {part["key"]: part for part in said["parts"]}


def sides(part):
    """The texts of a piece's long side and short side."""
    return part["long_side"]["text"], part["short_side"]["text"]
