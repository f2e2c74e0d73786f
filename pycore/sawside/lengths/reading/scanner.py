"""The words of the grammar: one number with its unit, or one sign between numbers.

Everything is matched by two patterns whose runs are possessive, so no text makes them go back:
scanning is linear. Characters that mean the same are first made the same, one for one, so that
a place in the scanned text is the place in what was typed.
"""

import re
import unicodedata

VULGAR = {
    character: tuple(unicodedata.normalize("NFKC", character).split("⁄"))
    for character in "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉"
}
"""The Unicode vulgar fractions: the digits above and below the line."""

RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹"
LOWERED = "₀₁₂₃₄₅₆₇₈₉"
_DIGITS = str.maketrans(RAISED + LOWERED, "0123456789" * 2)

_ALIKE = str.maketrans(
    {
        **dict.fromkeys("’‘′ʹ", "'"),
        **dict.fromkeys("”“″ʺ", '"'),
        **dict.fromkeys("×·⋅∙", "*"),
        **dict.fromkeys("‐‑–", "-"),
        **dict.fromkeys("⁄∕", "/"),
    }
)

NUMBER = re.compile(
    rf"""
    [ ]*+
    (?:
        (?P<pointed>[0-9]++\.[0-9]*+|\.[0-9]++)          # 31.5, 22., .0625
      |
        (?:(?P<whole>[0-9]++)(?:[ ]++|-))?               # 7 13/16, 7-13/16
        (?P<over>[0-9]++)/(?P<under>[0-9]++)(?![.0-9])   # 13/16
      |
        (?:(?P<before>[0-9]++)(?:[ ]*+|-))?              # 5½, 5 ½, 5-½, 5³⁄₄
        (?:
            (?P<vulgar>[{"".join(VULGAR)}])
          |
            (?:(?P<raised>[{RAISED}]++)/|⅟)(?P<lowered>[{LOWERED}]++|[0-9]++)
        )
      |
        (?P<alone>[0-9]++)                               # 31
    )
    (?:
        [ ]*+
        (?!(?:x|of)(?![a-z]))                            # signs, not units
        (?P<unit>''|["'°]|[a-zµ]++)
        (?:\.(?![0-9]))?+                                # in. ft.
    )?
    """,
    re.VERBOSE | re.IGNORECASE | re.ASCII,
)

SIGN = re.compile(r"[ ]*+([-+−*/÷()]|x(?![a-z])|of(?![a-z]))", re.IGNORECASE | re.ASCII)


def alike(text):
    """The text with characters of one meaning made one; every place stays where it was."""
    return plain_spaces(text).translate(_ALIKE)


def plain_spaces(text):
    """The text with plain spaces for no-break and thin ones, tabs and line ends, one for one."""
    if text.isprintable():  # of all spaces only the plain one is
        return text
    return "".join(" " if each.isspace() else each for each in text)


def digits(run):
    """Raised or lowered digits as ordinary ones."""
    return run.translate(_DIGITS)
