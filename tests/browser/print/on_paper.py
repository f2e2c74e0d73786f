"""What a browser prints, measured in pixels as with a rule laid on the paper."""

import numpy as np
import pypdfium2

DOTS = 600 / 25.4
"""Pixels in a millimeter: as a usual printer prints."""


def pages(page):
    """Each page that the browser prints of a page on the screen, as (width, height, ink).

    Sizes are millimeters; ink is 0 (white) to 1 (black) by row and column.
    """
    printed = pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True))
    for sheet in printed:
        width, height = (points / 72 * 25.4 for points in sheet.get_size())
        dots = sheet.render(scale=DOTS * 25.4 / 72, grayscale=True).to_numpy()
        yield width, height, 1 - np.squeeze(dots).astype(float) / 255


def texts(page):
    """The text of each page that the browser prints."""
    printed = pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True))
    return [" ".join(sheet.get_textpage().get_text_range().split()) for sheet in printed]


def says(text, words):
    """Whether a page's text has the words: how wide a gap is a space is the reader's own guess."""
    return "".join(words.split()) in "".join(text.split())


def lines(ink, across, up, least, most=1.01):
    """Where lines that run across stand, in millimeters from the upper edge of a part of a page.

    The part is from `across[0]` to `across[1]` and from `up[0]` to `up[1]`, in millimeters. A line
    has ink over `least` to `most` of the part's width; its place is the middle of its ink.
    """
    rows, columns = (slice(*(round(at * DOTS) for at in ends)) for ends in (up, across))
    part = ink[rows, columns].mean(axis=1)
    dark = np.flatnonzero(part > least / 3)
    runs = np.split(dark, np.flatnonzero(np.diff(dark) > 1) + 1) if dark.size else []
    return [
        up[0] + (np.average(run, weights=part[run]) + 0.5) / DOTS
        for run in runs
        if least <= part[run].max() <= most
    ]


def upright(ink, across, up, least):
    """The same for upright lines, in millimeters from the left edge."""
    return lines(ink.T, up, across, least)
