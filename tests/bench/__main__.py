"""Measure everything and write one flat JSON object, name to number."""

import argparse
import sys
from functools import partial
from pathlib import Path

from tests.bench.core import (
    boards,
    case,
    door,
    doors,
    drawers,
    lengths,
    miters,
    project,
    sheets,
    shelves,
)
from tests.bench.figures import Figures
from tests.bench.page import first_visit, growth, hand, idle, keys, kills, relaunch

MEASURES = {
    **{f"relaunch.{name}": partial(relaunch.measure, name) for name in relaunch.ENGINES},
    **{
        module.__name__.rpartition(".")[2]: module.measure
        for module in (
            first_visit,
            growth,
            idle,
            keys,
            hand,
            lengths,
            miters,
            shelves,
            case,
            drawers,
            doors,
            boards,
            sheets,
            project,
            door,
            kills,
        )
    },
}


def main():
    """Take every figure; the exit code is 1 where some could not be had."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--json", type=Path, required=True, metavar="FILE")
    parser.add_argument("--only", nargs="*", default=[], metavar="NAME", help="such as keys")
    options = parser.parse_args()
    figures = Figures(options.json)
    for name, measure in MEASURES.items():
        if not options.only or name.partition(".")[0] in options.only:
            figures.take(name, measure)
    if figures.failed:
        print(f"Not measured: {', '.join(figures.failed)}", file=sys.stderr)
    return 1 if figures.failed else 0


if __name__ == "__main__":
    sys.exit(main())
