"""What fields were taken to be that were left blank, until documents had schema 4, and clearances
until they had schema 7."""

ANYWHERE = {
    "shelf_sag": {"load": "records_12", "limit": "cabinet_test"},
    "longest_shelf_span": {"load": "records_12", "limit": "cabinet_test"},
    "thinnest_shelf": {"load": "records_12", "limit": "cabinet_test"},
    "heaviest_shelf_load": {"limit": "cabinet_test"},
    "shelf_edge_strip": {"load": "records_12", "limit": "cabinet_test"},
}
"""By question and field, in every unit."""

METRIC_LINES = {
    "burned_inch": {"start": "1 in"},
    "burned_inch_mark": {"start": "1 in"},
    "inside_measure": {"doubt": "1/16 in"},
    "corrected_reading": {"start": "1 in"},
    "corner_setting": {"length_off": "1/32 in"},
    "frame_around": {"reveal": "3/16 in", "stick": "8 ft"},
    "frame_of_equal_sides": {"reveal": "3/16 in", "stick": "8 ft"},
    "error_shows": {"length_off": "1/32 in"},
    "set_up_by_lengths": {"run": "12 in", "bar": "10 in"},
    "two_strips": {"thickness": "3/4 in", "least": "3/4 in"},
    "scarf": {"thickness": "3/4 in"},
    "edge_strip": {"thickness": "1/4 in"},
    "equal_shelf_spacing": {"thickness": '3/4"', "bottom": '3/4"', "top": '3/4"'},
    "graduated_shelf_spacing": {"thickness": '3/4"', "bottom": '3/4"', "top": '3/4"'},
    "shelf_sag": {"thickness": '3/4"', "strip_thickness": '3/4"', "strip_height": '1 1/2"'},
    "shelves_to_fit": {"thickness": '3/4"', "bottom": '3/4"', "top": '3/4"'},
    "longest_shelf_span": {
        "thickness": '3/4"',
        "strip_thickness": '3/4"',
        "strip_height": '1 1/2"',
    },
    "thinnest_shelf": {"strip_thickness": '3/4"', "strip_height": '1 1/2"'},
    "heaviest_shelf_load": {
        "thickness": '3/4"',
        "strip_thickness": '3/4"',
        "strip_height": '1 1/2"',
    },
    "shelf_edge_strip": {"thickness": '3/4"', "strip_thickness": '3/4"'},
    "shelves_around_a_fixed_one": {"thickness": '3/4"', "bottom": '3/4"', "top": '3/4"'},
    "shelves_on_a_hole_grid": {
        "thickness": '3/4"',
        "pitch": "1",
        "own_pitch": '1"',
        "rest": '1/8"',
        "bottom": '3/4"',
        "top": '3/4"',
    },
    "pin_holes": {
        "pitch": "1",
        "own_pitch": '1"',
        "front": '2"',
        "back": '2"',
        "diameter": '1/4"',
        "hole_depth": '3/8"',
        "thickness": '3/4"',
        "rest": '1/8"',
        "clear": '1/2"',
    },
    "dado_layout": {"side_thickness": '3/4"', "shelf": '3/4"', "stop": '1/2"', "panel": '3/4"'},
    "shelf_length": {
        "side_thickness": '3/4"',
        "left_depth": '1/4"',
        "right_depth": '1/4"',
        "depth": '12"',
        "thickness": '3/4"',
    },
    "cleats": {
        "thickness": '3/4"',
        "height": '1 1/2"',
        "setback": '1"',
        "side": '3/4"',
        "spare": '1/8"',
        "end": '1 1/2"',
        "spacing": '6"',
    },
    "slots_for_a_fixed_top": {"shank": '3/16"'},
    "breadboard_ends": {"pin": '1/4"'},
}
"""Where a bare number was in millimeters, centimeters or meters."""

METRIC_ROWS = {"pin_holes": {"keep": {"thick": '3/4"'}}}
"""The same of fields in rows."""

MARGINS = dict.fromkeys(("top", "bottom", "left", "right"), "10 mm")
"""The margins of a sheet of stickers, whatever a bare number was."""

METRIC_SETTINGS = {"kerf": "1/8 in"}
"""The same of the settings."""

METRIC_CLEARANCES = {
    "clearance_in_dado": "1/32 in",
    "clearance_on_pins": "1/16 in",
    "clearance_in_groove": "1/32 in",
    "clearance_in_frame": "1/16 in",
    "clearance_above": "1/2 in",
}
"""The clearances of the settings, which were in inches whatever a bare number was."""
