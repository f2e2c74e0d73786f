"""Runs of molding around a case and along walls, as the tests of them ask for one."""

from asking import ask, reckon

QUESTION = "molding_run"


def case(*lengths, corners=("90", "90"), turn="outside", layers=("3/4",), **more):
    """A case 36 7/8 wide and 15 1/4 deep, or walls of other `lengths` with like corners."""
    lengths = lengths or ("15 1/4", "36 7/8", "15 1/4")
    joint = {"joint": "miter"} if turn == "inside" else {}
    walls = [
        {"length": f"{long} in", "turn": turn, "corner": f"{corner}"} | joint
        for long, corner in zip(lengths, [*corners, "90"], strict=False)
    ]
    return {"walls": walls, "layers": stack(*layers)} | more


def stack(*projections):
    """Layers as thick as these, in inches, from the case outward."""
    return [{"projection": f"{each} in"} for each in projections]


def answered(values, settings=None):
    """The answer to a run, which must succeed."""
    return reckon(QUESTION, settings, **values)


def asked(values):
    """The answer to a run, whatever it is."""
    return ask(QUESTION, **values)


def parts(said):
    """The pieces of an answer by key."""
    return {part["key"]: part for part in said["parts"]}


def sides(part):
    """The texts of a piece's long side and short side."""
    return part["long_side"]["text"], part["short_side"]["text"]
