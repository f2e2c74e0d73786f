"""What is said of a part of a door in its list: grain, joints, groove, edging."""

from sawside.reckoners.doors.shared.doors.frame import added

_JOINTED = {
    "cope": "Cope both ends: tongue {} long.",
    "stub": "Stub tenon {} long at both ends.",
    "mortise": "Tenon {} long at both ends.",
}
_RABBETED = {
    "cope": "Cut away the back lip of its groove after glue-up.",
    "stub": "Cut away the back lip of its groove after glue-up.",
    "lap": "Rout the rabbet after glue-up, and square its corners.",
}
_FACE_GRAIN = "Face grain up and down, if it has one."
_MORTISED_RABBET = (
    "Make its back shoulders {} longer, to fill the rabbet they meet, or rout the rabbet after "
    "glue-up."
)


def about_member(given, show, doors, member):
    """The sentences about a stile or rail, in the order in which one needs them."""
    lines = ["Grain runs along the length.", *_joint(given, show, member)]
    held = _held(given)
    edges = "both long edges" if member.key.startswith("middle") else "the inside edge"
    stick = "Stick and groove" if given.joint == "cope" else held
    lines.append(f"{stick} {show.brief(given.groove)} deep along {edges}.")
    if held == "Rabbet":
        lines += _rabbeted(given, show, member)
    else:
        lines += _ends_of_groove(given, show, member)
    if given.trim and not member.key.startswith("middle"):
        lines.append(f"{show.brief(given.trim)} to trim off the outside edge.")
    if given.fit == "lipped" and not member.key.startswith("middle"):
        lines.append(_lip(given, show, doors.count))
    return tuple(lines)


def _held(given):
    return "Rabbet" if given.made == "glass" or given.hold == "rabbet" else "Groove"


def _joint(given, show, member):
    """The joint at its ends; a stile's groove takes the tongues of the rails as it is."""
    if given.joint == "miter":
        yield "Mitered at both ends."
    elif given.joint == "lap":
        crossed = {"rail": "stile", "stile": "rail"}.get(given.middle)
        middle = crossed and not member.key.startswith("middle") and crossed in member.key
        where = f" and where the middle {given.middle} crosses" if middle else ""
        yield f"Half lap at both ends{where}, half its thickness."
    elif member.key != "stile":
        yield _JOINTED[given.joint].format(show.brief(added(given)))
    elif given.joint == "mortise" and not _in_the_groove(given):
        yield f"Mortises {show.brief(added(given))} deep, or a little more, in the inside edge."


def _in_the_groove(given):
    """Whether a tenon is so short that the panel's groove is all of its mortise."""
    return _held(given) == "Groove" and given.tenon <= given.groove


def _ends_of_groove(given, show, member):
    """What keeps a groove from showing at the end of a stile."""
    if given.joint == "lap":
        yield "Stop it at the laps."
    elif given.joint != "mortise" or _in_the_groove(given):
        return
    elif not member.upright and not member.key.startswith("middle"):
        yield f"A haunch {show.brief(given.groove)} long fills the groove at the stile’s end."


def _rabbeted(given, show, member):
    """What else a rabbet takes where it runs past a joint."""
    if given.joint in _RABBETED:
        yield _RABBETED[given.joint]
    elif given.joint == "mortise" and member.key != "stile":
        yield _MORTISED_RABBET.format(show.brief(given.groove))


def _lip(given, show, count):
    wide = show.brief(given.lip_rabbet)
    where = (
        "the outside edges" if count == 1 else "the edges that lap the case, not where doors meet"
    )
    return f"Lip: rabbet {wide} wide in the back of {where}, after glue-up."


def about_panel(given, show):
    """The sentences about a panel, glass or mirror."""
    if given.made == "glass":
        return ("Order it cut, with its edges smoothed. Set it on shims, behind stops.",)
    clearance = f"{show.brief(given.clearance)} clearance at each edge"
    thick = given.hold == "groove" and 2 * given.panel > given.thickness
    tongue = ("Thin its edges to a tongue that fits the groove.",) if thick else ()
    if given.made == "sheet":
        return (_FACE_GRAIN, *tongue, f"{clearance}.")
    return (
        _grain(given),
        *tongue,
        f"{clearance}, at its tightest.",
        "No glue at its edges: pin or spot-glue it at the center only.",
    )


def _grain(given):
    return f"Grain runs {'left to right' if given.grain == 'across' else 'up and down'}."


def about_slab(given, show):
    """The sentences about a slab."""
    lines = [_FACE_GRAIN if given.made == "slab" else _grain(given)]
    if given.banding:
        lines.append(f"Band all four edges, {show.brief(given.banding)} thick.")
    if given.trim:
        lines.append(f"{show.brief(given.trim)} to trim off each edge.")
    if given.fit == "lipped":
        lines.append(_lip(given, show, given.doors))
    return tuple(lines)
