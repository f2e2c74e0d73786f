"""What each act is typed with: good acts, on the document of `hostile_text.py` and on a tally."""

from hostile import WHEN

TYPED = {
    "begin": [{"name": "Record cabinet"}],
    "rename_project": [{"name": "Cabinet for an alcove"}],
    "set": [
        {"settings": {"unit": "mm", "kerf": "3 1/4 mm", "clearance_above": "0 1/32 in"}},
        {
            "settings": {
                "tapes": [{"name": "New tape", "case": "3 1/4 in"}, {"case": "", "block": ""}],
                "materials": [{"name": "Pear wood", "stiffness": "1 1/2", "note": "by the yard"}],
            }
        },
    ],
    "tolerance": [{"text": "1 / 32"}, {"text": " "}],
    "labels": [{"values": {"columns": "1 + 1", "top": "1 1/2 in", "first": " 3 "}}],
    "keep_reading": [
        {"name": "Left side", "text": "31 3/4", "where": "at the floor", "off": "0 + 1/16 in"},
        {"text": "[Top rail: Short side] - 1 1/2 in", "tape": "Old tape"},
        {"text": "Case width + 2 × Alcove width", "name": " Both of them "},
    ],
    "keep_line": [
        {
            "name": "Back edge",
            "reckoner": "mitered_length",
            "values": {"known": "Case width + 2 × 1/8", "width": "2 1/4"},
            "about": {"piece": {"material": "Plum wood", "rough_length": "1 1/2"}},
        },
        {
            "reckoner": "piece_by_hand",
            "values": {"length": "30 1/2", "left_end": "told", "left_told": "a round end"},
        },
        {"reckoner": "opening", "values": {"readings": ["37 15/32", "37 5/8"]}},
    ],
    "new_case": [{}],
    "keep_note": [{"text": "Glue up on Friday.\nThen sand.", "name": "For Friday"}],
    "rename": [{"id": "1", "name": "Alcove at the floor"}, {"id": "5", "name": "Not yet"}],
    "correct": [
        {"id": "1", "text": "37 3/4", "where": "at the top"},
        {"id": "2", "text": "Alcove width - 2 × 1/4"},
        {"id": "3", "values": {"known": "[Case width] - 1 1/2", "width": "2 1/2"}},
        {"id": "5", "text": "Glue up on Monday. \n"},
    ],
    "describe": [
        {"id": "1", "where": "over the sill", "off": "0 1/8", "tape": "Old tape", "read_at": WHEN}
    ],
    "delete": [{"id": "4"}],
    "restore": [
        {
            "at": 1,
            "entry": {
                "id": "8",
                "kind": "reading",
                "name": "Old one",
                "unit": "in",
                "text": "3 1/2",
                "where": "at the door",
                "earlier": [{"text": "3 1/4", "unit": "in"}],
            },
        }
    ],
    "move": [{"id": "4", "to": 0}],
    "put": [
        {
            "entries": [
                {
                    "id": "3",
                    "kind": "line",
                    "name": "Top of it",
                    "unit": "in",
                    "reckoner": "mitered_length",
                    "values": {"known": "31 5/8", "width": "2 1/4"},
                    "spoiled": {"piece": [{"length": "289/8 in", "ends": "a b; c d"}]},
                    "trials": {
                        "piece": [
                            {"aimed": "3 in", "measured": "3 1/16", "unit": "in", "cut": "stop"}
                        ]
                    },
                    "about": {"piece": {"place": "upper left"}},
                }
            ]
        }
    ],
    "cut": [{"id": "4", "part": "piece", "by": 1}],
    "spoil": [{"id": "3", "part": "piece"}],
    "recut": [{"id": "3", "part": "piece", "which": [0]}],
    "about": [
        {
            "id": "3",
            "part": "piece",
            "about": {
                "material": "red oak",
                "grain": "along it",
                "place": "upper left",
                "rough_length": "1 1/2",
                "rough_width": "0 + 1/4 in",
            },
        }
    ],
    "trial": [{"id": "3", "part": "piece", "aimed": "37 1/4", "measured": "37 9/32 in"}],
    "tick": [
        {
            "id": "7",
            "step": "coat2",
            "done_at": "2026-12-01T20:10",
            "temperature": "68 F",
            "humidity": "45 %",
            "note": "Two thin ones",
            "photo": "p2",
        },
        {"id": "7", "step": "sand2", "when": "2026-12-01T19:30", "temperature": "20 C"},
    ],
    "untick": [{"id": "7", "step": "coat1"}],
    "keep_plan": [
        {
            "plan": {
                "kerf": "1/8 in",
                "boards": [
                    {
                        "key": "1",
                        "form": "sheet",
                        "length": "96 in",
                        "width": "48 in",
                        "material": "white oak",
                        "name": "by the door",
                        "cuts": [{"way": "rip", "part": 0, "at": "45/4 in"}],
                        "pieces": [],
                    }
                ],
                "begun": [],
            }
        },
        {},
    ],
    "board_bad": [{"board": "1"}],
    "save_offcuts": [{"board": "2"}],
    "finish_parts": [{}],
    "several": [
        {
            "said": "Made of two.",
            "acts": [
                {"act": "correct", "id": "1", "text": "38 1/2"},
                {"act": "keep_reading", "name": "Depth of it", "text": "[Case width] ÷ 3"},
            ],
        }
    ],
}
"""By the name of the act on a project."""

TALLY_TYPED = {
    "enter": [{"text": "[Long side] + 1 1/2"}, {"text": "Case width - 0 1/8"}],
    "step": [{"how": "again"}, {"how": "kerf"}],
    "correct": [{"id": "1", "text": "31 3/4 + 2 × 1"}, {"id": "2", "text": "Long side ÷ 2"}],
    "name": [{"id": "2", "name": "Both sides"}, {"id": "1", "name": "Long one"}],
    "delete": [{"id": "1"}],
    "restore": [{"at": 0, "line": {"id": "9", "name": "End", "text": "3 1/2", "unit": "in"}}],
    "clear": [{}],
    "put": [
        {
            "lines": [
                {
                    "id": "2",
                    "name": "Side",
                    "text": "3 1/2",
                    "unit": "in",
                    "project": {"id": "1", "name": "Record cabinet"},
                }
            ]
        }
    ],
}
"""By the name of the act on the tally of `test_hostile_tally.py`, which has three lines."""
