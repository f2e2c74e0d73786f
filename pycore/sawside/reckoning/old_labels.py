"""What schema 4 called the answers that a name can stand for: texts call them so for ever.

A project, or a line of the pad, keeps `[Top rail: Short side]` as it was typed. So an answer keeps
the label that it had, and is found by it where no answer is called so now. An answer whose label
is changed from here on gets another line.
"""

_OLD = """\
slots_for_a_top.proud Top beyond the end at its dampest, each side
slots_for_a_top.short Top short of the end at its driest, each side
slots_for_a_top.slots Slot lengths
slots_for_a_top.pin_away Slot runs toward the edge by
slots_for_a_top.pin_towards Slot runs toward the center by
burned_inch.length Length
burned_inch.mark Mark at
chamfer.width Width of the chamfer
chamfer.face Set-back on the face
chamfer.edge Depth down the edge
chamfer.flat Blade tilt, face flat on the table
chamfer.on_edge Blade tilt, board on edge
cleats.side_cleat Side cleats, two for each shelf
cleats.back_cleat Back cleat
cleats.longest Longest screw
cleats.sold Longest screw that is sold
cleats.sold_reach The sold screw's reach into the side
cleats.reach The screw's reach into the side
cleats.left Wood left before the point
cleats.screws Screws from the end of a side cleat
cleats.back_screws Screws from the end of the back cleat
cleats.back_screw Screw to buy for the back cleat
corner_setting.setting Saw setting, from square
corner_setting.between_faces Angle between edge and cut
corner_setting.corner Corner on the side of the room
corner_setting.between Angle between the pieces
corner_setting.least Setting at least, by the reading
corner_setting.most Setting at most, by the reading
tape_error.true True length
tape_error.off The tape is off here by
tape_error.aim To mark off a true length of what it reads, mark at
crown.miter Saw turned, molding flat
crown.tilt Blade tilted, molding flat
crown.right_miter Saw turned for the right end
crown.right_tilt Blade tilted for the right end
crown.tips From tip to tip: the molding it takes
crown.top Top edge
crown.bottom Bottom edge
crown.held Saw turned, molding held in its place
crown.right_held Held in its place, right end
crown.spring Spring, from the wall
crown.width Face width
crown.drop Drop down the wall
crown.projection Projection along the ceiling
dado_layout.lower Lower edges, from the lower end
dado_layout.upper Upper edges, from the lower end
dado_layout.width Width of a dado
dado_layout.depth Depth
dado_layout.left Wood left behind it
dado_layout.longer A shelf in two dadoes is longer by
square.diagonal Both diagonals
edge_strip.long_side Cut length
edge_strip.panel_side Length at the panel
edge_strip.face_side Length at the face
edge_strip.left_set_back Left set-back, between panel side and face
edge_strip.right_set_back Right set-back, between panel side and face
equal_parts.part Each part
equal_parts.marks Marks, all from the same end
equal_parts.difference Largest difference between parts, by the marks
equal_parts.sizes Parts as the marks give them
fractions.mark On your marks
fractions.neighbors Neighbors on every division
miter_gap.gap Gap at each joint
miter_gap.closing The whole ring closes wrong by
miter_gap.last_heel Last joint, all others tight: heel
miter_gap.last_toe Last joint, all others tight: toe
miter_gap.setting_off Each cut is off by
miter_gap.all_off Or, other joints pulled tight, by
miter_gap.length_off A piece is short by
mitered_frame.long_sides Long sides
mitered_frame.short_sides Short sides
mitered_frame.setting Saw setting, from square
mitered_frame.between_faces Angle between edge and cut
mitered_frame.inside Inside
mitered_frame.outside Outside
mitered_frame.rabbet_size Between the backs of the rabbets
mitered_frame.total Stock used, with the cuts
how_many_fit.pieces Pieces
how_many_fit.left Left over
how_many_fit.cuts Cuts
how_many_fit.missing Missing for one piece more
opening.inside Inside
opening.least At least
opening.most At most
tape_marks.mark On the tape
middle.middle Middle, on the tape
middle.marks Marks, on the same tape
middle.side At each side
middle.span Span
mitered_length.long_side Long side
mitered_length.short_side Short side
mitered_length.rabbet_side At the back of the rabbet
mitered_length.left_allowance Left end adds
mitered_length.right_allowance Right end adds
mitered_length.left_setting Left saw setting
mitered_length.right_setting Right saw setting
mitered_length.left_corner Left angle between edge and cut
mitered_length.right_corner Right angle between edge and cut
square.offset Top off to one side by
square.angle Out of square by
square.goal Both diagonals, once pushed
square.square Both diagonals, by width and height
molding_run.first First piece to cut, long side
molding_run.first First piece to cut, long point
molding_run.first First piece, along its wall
molding_run.pieces Long sides, in the order of cutting
molding_run.pieces Long points, in cutting order
molding_run.pieces Lengths along the wall, in the order of fitting
molding_run.pieces Lengths along the wall, in fitting order
molding_run.short_sides Short sides
molding_run.faces Lengths in sight, without what springs in
molding_run.faces Visible lengths, without the spring
molding_run.faces Visible lengths
molding_run.first_setting Saw at the left corner, from square
molding_run.first_setting Miter angle, left corner
molding_run.setting Saw at the left corner, from square
molding_run.setting Miter angle, left corner
molding_run.last_setting Saw at the right corner, from square
molding_run.last_setting Miter angle, right corner
molding_run.setting Saw at the right corner, from square
molding_run.setting Miter angle, right corner
molding_run.stock Stock to buy, with the kerfs
over_or_under.difference Off by
panel_in_its_groove.width Cut the panel
panel_in_its_groove.gap Gap at each edge now
panel_in_its_groove.held Held at each edge when driest
panel_in_its_groove.growth It grows
panel_in_its_groove.shrinkage It shrinks
piece_by_hand.length Length
piece_by_hand.count How many
piece_by_hand.short_side Short side
pin_holes.holes Center of each hole, from the lower end
pin_holes.shelves Bottom edge of each shelf, from the lower end
pin_holes.count Holes in a row
pin_holes.total Holes in all
pin_holes.apart Front row to back row
pin_holes.behind Wood left behind a hole
tape_marks.length Length
scarf.first First joint, from the left end to its middle
scarf.joints Middle of each joint, from the left end
scarf.pieces Pieces, tip to tip
scarf.overlap Overlap of a joint
scarf.face Joint face, from edge to edge of the cut
scarf.setting Saw setting, from square
scarf.extra Extra length for all joints
scarf.stock Stock, with the kerfs
scarf.count Sticks, one for each piece
seasonal_movement.whole Movement through the year
seasonal_movement.narrowest Width at its driest
seasonal_movement.widest Width at its dampest
set_up_by_lengths.rise Rise
set_up_by_lengths.rise_angle Angle at the mark of the rise
set_up_by_lengths.rise_worst A mark of error there
set_up_by_lengths.spacer Spacer under one pin
set_up_by_lengths.spacer_angle Angle at the mark of the spacer
set_up_by_lengths.spacer_worst A mark of error there
set_up_by_lengths.other_angle The rest of a square
shelf_layout.above Shelves above
shelf_layout.below Shelves below
shelf_layout.difference Largest difference between openings
shelf_layout.height Inside height
shelf_layout.highest Highest opening
shelf_layout.left_over Left over
shelf_layout.lowest Lowest opening
shelf_layout.marks Marks of the shelves
shelf_layout.needed Inside height that the things need
shelf_layout.opening Opening
shelf_layout.opening_above Opening above
shelf_layout.opening_below Opening below
shelf_layout.openings Openings as the marks give them
shelf_layout.overall Overall height of the case
shelf_layout.shelf_count Shelves
shelf_layout.side Length of a side
shelf_layout.step Each opening is smaller by
shelf_length.shelf Shelf length
shelf_length.inside Inside width
shelf_length.width Width of the case
shelf_length.change Shelf length less the inside width
shelf_strength.sag Sag at once
shelf_strength.sag_after_years Sag after years
shelf_strength.sag_back Back edge, at once
shelf_strength.sag_between Between the edges, at once
shelf_strength.sag_front Front edge, at once
shelf_strength.span Longest span
shelf_strength.strip_height Strip's height
shelf_strength.thickness Thinnest board
shelves_on_a_hole_grid.holes Hole of each shelf, from the inside bottom
shelves_on_a_hole_grid.holes Shelf holes, from the inside bottom
shelves_on_a_hole_grid.marks Marks of the shelves
shelves_on_a_hole_grid.moved Farthest that a shelf moved to its hole
shelves_on_a_hole_grid.holes_needed Holes that a row has room for
shelves_on_a_hole_grid.openings Openings as the marks give them
shelves_on_a_hole_grid.difference Largest difference between openings
shelves_on_a_hole_grid.side Length of a side
shelves_on_a_hole_grid.overall Overall height of the case
fractions.table Decimals and millimeters
sloped_box.miter Saw or gauge turned, from square
sloped_box.tilt Blade tilted
sloped_box.top Top edge, outside
sloped_box.bottom Bottom edge, outside
sloped_box.slant Width of the outside face
sloped_box.blank_width Width of a blank
sloped_box.blanks Length of a blank
sloped_box.edge Edges tilted to lie level
sloped_box.slope Slope, from upright
slots_for_a_top.away It moves out from where it is now
slots_for_a_top.towards It moves in from where it is now
opening.fits What goes in
opening.smallest Smallest reading
opening.largest Largest reading
opening.apart They lie apart by
opening.mean Mean of the readings
sold_sizes.sizes As it measures
tape_error.least The true length is at least
tape_error.most The true length is at most
tape_error.rules By each rule
square.between Between the two marks
square.along Mark along the first wall
square.across Mark along the second wall
square.others Between the marks, this one and smaller
two_strips.rip_setting Fence to blade
two_strips.wide Wider strip
two_strips.narrow Narrower strip
two_strips.board Board width
two_strips.height Height, put together
two_strips.projection Projection, put together
two_strips.least_board Smallest board that will do
"""


def _read():
    labels = {}
    for line in _OLD.splitlines():
        place, _, label = line.partition(" ")
        reckoner, _, answer = place.partition(".")
        labels.setdefault(reckoner, []).append((label.casefold(), answer))
    return labels


OLD_LABELS = _read()
"""{question: [(label in small letters, answer)]}."""
ALONE = {"getting_it_in": "diagonal"}
"""{question: answer, one that it always has} of those that lead with words now: the name of a line
alone stands for the number that it stood for."""
