"""What the page needs to find a question by a person's own words, beside what each declares.

The page takes each word as it is, in its other forms, and with one slip of the finger; the rest is
said here. Source: the trade's own use of its words; common practice, no source.
"""

_SAME = """
miter, mitre
molding, moulding
center, centre, middle
center line, centerline
on center, on centre, OC, center to center
millimeters, millimetres, mm
long point, longpoint, LP, long side, tip to tip
short point, shortpoint, SP, short side
toe kick, toekick, kickboard, kick plate
story stick, storystick, story pole
edging, edge banding, edgebanding, banding, lipping, nosing
dado, housing joint, housed joint
rabbet, rebate, rabbit
bookcase, book case, bookshelf, bookshelves
case, cabinet, carcass, carcase, cupboard
slats, balusters, spindles, pickets
burned inch, burnt inch
3-4-5, 345, 3/4/5, 6-8-10
crown, cornice
picture frame, pictureframe
baseboard, base board, base molding, base moulding, base trim, shoe molding, quarter round, skirting
offcut, cutoff, waste, scrap, left over, leftover
tabletop, table top
breadboard, bread board
records, vinyl
adjustable, movable
plywood, ply
kerf, blade width, blade thickness
handle, knob, pull
bevel gauge, sliding bevel, T-bevel
moisture content, MC
diagonal, diagnol
concealed hinge, cup hinge
hinge gain, hinge mortise
trim nail, finish nail
board feet, board foot, bd ft
pilot drill, pilot bit, drill bit
"""
"""A line for each meaning: a question that is declared with one of these is found by all."""

_SMALL = """
a an the of for to in on at by with from and or not is are be it its this that do does did i im my
me you your we can cant could will wont would should need want get go goes up out off how what where
which when why much many too very per so if between into around find show check help figure
calculate calculator calculation calculating compute work formula math cut cutting size sizes sized
wood wooden saw degree degrees deg
"""
"""Words that alone mean little: they count only where the question has them too."""

_ELSEWHERE = """
apron bandsaw barn barrel basin bath bead beadboard beam bit blender bolt bore brick
carve cast caster chair chisel coat concrete countertop deck drain drywall
epoxy fender finish footing foundation frost garden gate girder grit grout gutter
hammer handrail hanger header hone house insulation jointer joist kitchen knife lacquer
laminate lamp laser latch latex lathe leather leg lever lock magnet mortar motor mount
newel nut oil paint pallet patio pipe plane planer plaster pole porch post pour power
primer pump purlin rafter ramp rebar resin ridge roof roofing router rust sand
sander sanding seal sealer shear shed shellac shelter shingle siding sill sink solder
spline spray stain staple steel stone stool stove stringer stucco tank thread tile tint
tool tooth torque track tread truss tub tube urethane valve varnish vent vise wainscot
washer water wax weld wheel wire
"""
"""Words of the shop and the building site that must never be taken for a slip of another one."""


def search_told():
    """The tables as lists: `same` of phrases, `small` and `elsewhere` of words."""
    return {
        "same": [line.split(", ") for line in _SAME.strip().splitlines()],
        "small": _SMALL.split(),
        "elsewhere": _ELSEWHERE.split(),
    }
