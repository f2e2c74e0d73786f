"""What a question's answer looks like on paper at true size: sheets, and marks to transfer."""

from sawside.drawing.paper.sheets import PAPERS, find_paper
from sawside.drawing.paper.stick_on_paper import stick_on_paper
from sawside.errors import Refusal
from sawside.lengths.show import Show
from sawside.reckoning.values import read_values


def papers_told():
    """The papers to choose from."""
    return [
        {"key": each.key, "label": each.label, "width": each.width, "height": each.height}
        for each in PAPERS.values()
    ]


def on_paper(reckoner, values, settings, paper, names=None):
    """The sheets of a reckoner's answer (without "ok"); `paper` is the key of one of `PAPERS`.

    `names` may stand in the texts of the values. Raises as `reckon` does, and "impossible" for a
    question that has nothing to print.
    """
    paper = find_paper(paper)
    form = read_values(reckoner, values, settings, names)
    stick = reckoner.compute(form.given, Show(settings, form.lengths(reckoner))).stick
    if stick is None:
        raise Refusal(
            "impossible",
            f"{reckoner.title} has nothing to print at true size.",
            "Choose a question about shelves, dadoes or pin holes.",
            field="reckoner",
        )
    unit = "mm" if settings.display == "mm" else "in"
    return {
        "title": stick["name"],
        "summary": form.summary,
        "paper": paper.key,
        "sheets": stick_on_paper(stick, paper, unit),
        "start": stick["start"],
        "marks": [
            {key: mark[key] for key in ("name", "text", "dropped_text")} for mark in stick["marks"]
        ],
    }
