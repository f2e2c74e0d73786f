"""What is asked of shellac, in US or in metric measure."""

from sawside.reckoners.fields import choice, number

_US, _METRIC = (("measured", (way,)) for way in ("us", "metric"))
_HAND = "The alcohol you have, or the shellac you change."


def _both(key, label, units, limits, usual, *shown, **more):
    """A number in each measure, where the conditions `shown` hold; `limits` are (least, most) of
    each, `usual` its defaults."""
    return tuple(
        number(
            f"{key}_{way}",
            label,
            unit,
            default=default,
            least=least,
            most=most,
            shown_when=(condition, *shown),
            **more,
        )
        for way, unit, default, (least, most), condition in zip(
            ("us", "metric"), units, usual, limits, (_US, _METRIC), strict=True
        )
    )


_CUT = ("lb cut", "g/L"), (("0.25", "8"), ("20", "1000"))
_AMOUNT = ("fl oz", "ml"), (("0.5", "1280"), ("10", "40000"))
FIELDS = (
    choice("way", "To do", {"mix": "Dissolve flakes", "change": "Thin or strengthen"}),
    *_both("have", "Cut now", *_CUT, (None, None), ("way", ("change",)), in_short="a {} now"),
    *_both("cut", "Cut wanted", *_CUT, ("2", "240"), in_short="a {} wanted"),
    choice("known", "Start from", {"made": "Shellac to make", "hand": "What’s on hand"}),
    *_both("made", "Shellac to make", *_AMOUNT, ("16", "500"), ("known", ("made",))),
    *_both("hand", "On hand", *_AMOUNT, (None, None), ("known", ("hand",)), help=_HAND),
    choice(
        "measured",
        "Measures",
        {"us": "Ounces and pounds", "metric": "Grams and milliliters"},
        metric="metric",
    ),
)
BASIC = ("way", "have_us", "have_metric", "cut_us", "cut_metric", "made_us", "made_metric")
