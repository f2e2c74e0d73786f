"""Boards and panels as they are measured: the fields that nearly every question about them has."""

from sawside.reckoners.fields import length


def thickness(key="thickness", label="Thickness", **more):
    """A thickness as measured; where nothing is typed, that of the usual panel."""
    usual = {"help": "Measure it.", "default": '3/4"', "metric": "18 mm"}
    return length(key, label, **usual | {"least": "1/64 in", "most": "6 in"} | more)
