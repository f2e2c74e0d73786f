"""Measure everything and write one flat JSON object, name to number."""

import argparse
import json
from pathlib import Path

from tests.bench import first_visit, keys, kills, lengths, miters, project, relaunch, shelves

MEASURES = [relaunch, first_visit, keys, lengths, miters, shelves, project, kills]


def main():
    """Run every module's `measure()`; the file has what was measured even if a later one fails."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--json", type=Path, required=True, metavar="FILE")
    parser.add_argument("--only", nargs="*", default=[], metavar="NAME", help="such as keys")
    options = parser.parse_args()
    numbers = {}
    for module in MEASURES:
        name = module.__name__.rpartition(".")[2]
        if options.only and name not in options.only:
            continue
        numbers |= {each: round(number, 4) for each, number in module.measure().items()}
        options.json.write_text(json.dumps(numbers, indent=1) + "\n")
        print(json.dumps(numbers, indent=1), flush=True)


main()
