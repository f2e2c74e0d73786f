"""A beam by finite elements, and a section by slices: shares nothing with the core.

Elements are two-node Timoshenko elements, whose nodes are exact for loads at nodes and for even
loads given as their fixed-end forces.
"""

import numpy as np


def _element(bending, shear, long):
    soft = 12 * bending / (shear * long**2)
    a, b = 6 * long, long**2
    shape = [
        [12, a, -12, a],
        [a, (4 + soft) * b, -a, (2 - soft) * b],
        [-12, -a, 12, -a],
        [a, (2 - soft) * b, -a, (4 + soft) * b],
    ]
    return np.array(shape) * bending / (long**3 * (1 + soft))


def drops(supports, spread, span, load, overhang, bending, shear, parts=8):
    """(drop of the middle, drop of an end) below the supports."""
    places = set(np.linspace(0, span, 4 * parts + 1))
    if overhang:
        places |= set(np.linspace(-overhang, 0, parts + 1))
        places |= set(np.linspace(span, span + overhang, parts + 1))
    nodes = np.array(sorted(places))
    stiff = np.zeros((2 * len(nodes),) * 2)
    force = np.zeros(2 * len(nodes))
    each = load / (span + 2 * overhang)
    for at, long in enumerate(np.diff(nodes)):
        where = slice(2 * at, 2 * at + 4)
        stiff[where, where] += _element(bending, shear, long)
        if spread == "even":
            force[where] += each * long / 2 * np.array([1, long / 6, 1, -long / 6])
    loaded = {"even": (), "middle": (0.5,), "quarters": (0.25, 0.75)}[spread]
    for part in loaded:
        force[2 * np.argmin(abs(nodes - part * span))] += load / len(loaded)
    held = [2 * np.argmin(abs(nodes - place)) for place in (0, span)]
    if supports == "fixed":
        held += [each + 1 for each in held]
    free = [each for each in range(2 * len(nodes)) if each not in held]
    moved = np.zeros(2 * len(nodes))
    moved[free] = np.linalg.solve(stiff[np.ix_(free, free)], force[free])
    return moved[2 * np.argmin(abs(nodes - span / 2))], moved[0]


def section(rectangles, slices=4000):
    """(E I about the neutral axis, G A', largest stress per unit moment of each rectangle).

    Rectangles are (E, breadth, height, top); each is cut into thin slices that only stretch.
    """
    pull, depth, edges = [], [], []
    for stiffness, breadth, height, top in rectangles:
        cut = np.linspace(top, top + height, slices + 1)
        pull.append(np.full(slices, stiffness * breadth * height / slices))
        depth.append((cut[:-1] + cut[1:]) / 2)
        edges.append((stiffness, top, top + height))
    pull, depth = np.concatenate(pull), np.concatenate(depth)
    axis = (pull * depth).sum() / pull.sum()
    bending = (pull * (depth - axis) ** 2).sum()
    stresses = [e * max(abs(a - axis), abs(b - axis)) / bending for e, a, b in edges]
    return bending, pull.sum() / 16 * 5 / 6, stresses
