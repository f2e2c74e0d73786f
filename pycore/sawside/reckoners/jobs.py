"""The jobs that questions are for: a tile each in the list of questions, in this order.

A question declares one of them by its name here, which is also its title. Imports: nothing.
"""

JOBS = {
    "tape": {
        "wood": "M4 28V10l4-4h10l4 4v18zM22 21h14v7H22z",
        "ink": "M9 16a4 4 0 1 0 8 0a4 4 0 1 0-8 0zM36 19v13",
        "chalk": "M26 28v-4M31 28v-4",
    },
    "layout": {"wood": "M3 14h34v12H3z", "chalk": "M11.5 9v22M20 9v22M28.5 9v22"},
    "cases": {
        "wood": "M5 4h4v32H5zM31 4h4v32h-4zM9 4h22v4H9zM9 27h22v4H9z",
        "ink": "M9 33h22M9 17.5h22",
        "chalk": "M5 38.5h30M38.5 4v32",
    },
    "doors and drawers": {
        "wood": "M4 5h15v30H4zM22 5h14v8H22zM22 16h14v8H22zM22 27h14v8H22z",
        "ink": "M16 19v3M27 9h4M27 20h4M27 31h4",
        "chalk": "M4 38.5h32",
    },
    "miters and frames": {
        "wood": "M4 6h32v28H4zM12 14v12h16V14z",
        "chalk": "M4 6l8 8M36 6l-8 8M36 34l-8-8M4 34l8-8",
    },
    "molding": {
        "wood": "M6 5h29v4h-3c0 8-6 8-10 10s-8 4-8 11h-3v4H6z",
        "ink": "M3 37V2h35",
        "chalk": "M35 9h-3c0 8-6 8-10 10s-8 4-8 11h-3v4",
    },
    "boxes and edges": {
        "wood": "M5 15h30v20H5zM5 15l6-9h18l6 9z",
        "ink": "M11 6v9M29 6v9",
        "chalk": "M5 15h30",
    },
    "shelves": {
        "wood": "M6 4h3v32H6zM31 4h3v32h-3zM9 4h22v3H9zM9 14h22v3H9zM9 26h22v3H9z",
        "chalk": "M20 17v9m-3-3l3 3 3-3M17 20l3-3 3 3",
    },
    "screws and hinges": {
        "wood": "M2 5h8v30H2zM30 5h8v30h-8z",
        "ink": "M10 9h20v22H10zM20 5v30",
        "chalk": "M15 14v3M15 23v3M25 14v3M25 23v3",
    },
    "putting it up": {
        "wood": "M6 3h4v34H6zM30 3h4v34h-4zM13 12h14v22H13z",
        "ink": "M2 37h36M13 19h14",
        "chalk": "M3 8h34M18 8h4",
    },
    "wood": {
        "wood": "M4 8h32v18H4z",
        "ink": "M12 26a10 10 0 0 1 16 0M5.2 26a16 16 0 0 1 29.6 0M4 16.9a22 22 0 0 1 32 0",
        "chalk": "M4 33h32m-3-3l3 3-3 3M7 30l-3 3 3 3",
    },
    "boards": {
        "wood": "M2 7h36v6H2zM2 17h36v6H2zM2 27h36v6H2z",
        "ink": "M14 7v6M26 7v6M20 17v6M17 27v6",
        "chalk": "M32 4v12M32 14v12M32 24v12",
    },
    "finish": {
        "wood": "M4 24h32v12H4z",
        "ink": "M17 3h6v9h-6zM13 12h14v7H13zM13 19v4M18 19v3M23 19v4M27 19v2",
        "chalk": "M4 28h20q6 0 6 4",
    },
    "tables": {
        "wood": "M6 5h28v8H6z",
        "ink": "M6 5h28v30H6zM6 20h28M6 27.5h28M17 5v30",
        "chalk": "M21.5 23.8h8",
    },
}
"""The picture of each job by its name.

A picture is drawn on a field of 40 by 40, y down, in path data of SVG: "wood" is filled, "ink" is
drawn over it, and "chalk", the accent, over both. Lines are 2 wide. It is seen as small as 40
pixels: a handful of strokes that show the wood, and in chalk what is asked of it.
"""
