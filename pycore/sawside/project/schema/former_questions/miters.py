"""Questions of the subject miters that became part of another one."""

from dataclasses import dataclass

from sawside.project.schema.former_questions.became import Became

_RUN = "molding_run"
_ENDS = {"wall": "wall", "board": "board", "self_return": "return", "none": "wall"}
_CASE = {"turn": "outside"}
_ALCOVE = {"turn": "inside", "joint": "miter"}
_COPED = {"turn": "inside", "joint": "cope"}
_MOST_LAYERS = 6


def _is_none(values, side):
    return values.get(f"{side}_side") == "none"


def _is_blank(value):
    return value is None or (isinstance(value, str) and not value.strip())


def _wall(length, corner, turn):
    return {"length": length, "corner": corner} | turn


def _of_a_wrap(values):
    """The sides of a case, or of an alcove, as walls; a right depth left blank was the left one."""
    rest = dict(values)
    turn = _ALCOVE if rest.pop("around", None) == "alcove" else _CASE
    width, lefts, rights = (
        rest.pop("width", ""),
        [rest.pop(f"left_{each}", "") for each in ("depth", "corner")],
        [rest.pop(f"right_{each}", "") for each in ("depth", "corner")],
    )
    walls = [_wall(width, rights[1], turn)]
    if not _is_none(values, "left"):
        walls.insert(0, _wall(*lefts, turn))
    if not _is_none(values, "right"):
        depth = lefts[0] if _is_blank(rights[0]) and not _is_none(values, "left") else rights[0]
        walls.append({"length": depth} | turn)
    ends = {}
    for side in ("left", "right"):
        kind = rest.pop(f"{side}_side", "")
        ends[f"{side}_end"] = _ENDS.get(kind, kind) if isinstance(kind, str) else kind
    return rest | {"around": "open", "walls": walls} | ends


def _of_coped_walls(values):
    """Walls that all met in coped inside corners, with a molding of one layer."""
    rest = dict(values)
    walls = rest.get("walls", [])
    layer = {key: rest.pop(key, "") for key in ("projection", "height")}
    closed = rest.get("around") == "room"
    if isinstance(walls, list):
        walls = [wall | _COPED if isinstance(wall, dict) else wall for wall in walls]
    return rest | {"around": "closed" if closed else "open", "walls": walls, "layers": [layer]}


def _parts_of_a_wrap(values):
    """The keys of its pieces: walls are counted from the left."""
    front = 1 if _is_none(values, "left") else 2
    walls = {"front": front}
    for run in ("return", "wall"):
        walls |= {f"left_{run}": 1, f"right_{run}": front + 1}
    return {
        f"layer_{layer}_{name}": f"layer_{layer}_wall_{wall}"
        for layer in range(1, _MOST_LAYERS + 1)
        for name, wall in walls.items()
    }


@dataclass(frozen=True, slots=True)
class _FromWrap(Became):
    """Which wall a piece was on hangs on what was filled in."""

    def brought_up(self, entry):
        values = entry.get("values")
        parts = _parts_of_a_wrap(values) if isinstance(values, dict) else {}
        return Became(self.question, parts=parts, more=_of_a_wrap).brought_up(entry)


def _error(values):
    """What was off was a choice of its own."""
    kept = {key: value for key, value in values.items() if key != "error"}
    return kept | {"asked": "length" if values.get("error") == "length" else "angle"}


MERGED: dict[str, Became] = {
    "wrap": _FromWrap(_RUN),
    "coped_corner": Became(
        _RUN,
        parts={f"wall_{wall}": f"layer_1_wall_{wall}" for wall in range(1, 13)},
        more=_of_coped_walls,
    ),
    "frame_around": Became("mitered_frame", {"shape": "rectangle"}),
    "frame_of_equal_sides": Became("mitered_frame", {"shape": "polygon"}),
    "error_shows": Became("miter_gap", more=_error),
    "fault_of_a_gap": Became("miter_gap", {"asked": "cause"}),
}
