"""Boards and panels as they are measured: the fields that nearly every question about them has."""

from dataclasses import replace

from sawside.reckoners.fields import length, material


def thickness(key="thickness", label="Thickness", **more):
    """A thickness as measured; where nothing is typed, that of the usual panel."""
    usual = {"help": "Measure it.", "default": '3/4"', "metric": "18 mm"}
    return length(key, label, **usual | {"least": "1/64 in", "most": "6 in"} | more)


def weighed(key, label, **more):
    """What something is made of, asked for its weight alone: one of the person's own may have none,
    and all else is told all the same."""
    field = material(key, label, figure="weight", **{"help": "For the weight."} | more)
    return replace(field, figure=None)
