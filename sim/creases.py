"""The upper panel's middle, and the crease an earlier move has left in the skin: what a push makes of it.

A strip pressed along its length bows as it is bowed already: a bow w0 grows to w0 / (1 - P / Pcr), with its
sign [timoshenko-gere-1961].  A door's skin is crowned outboard, so a crease has to be deeper than the crown
before a push along the car takes it further in.  Nothing here decides that: it is read off the metal.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.model import DoorModel
from sim.outcome import limit
from sim.record import Frame

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

REACH_M = 0.07  # metal nearer than this to a place speaks for it: a hand's breadth
BELOW_BELT_M = 0.03  # as low as a tip is deep, set as high as it goes
LEAST_M = 0.020  # less is a dent and no crease, assumed
FACING = {"skin": "outer_skin", "inner": "inner_panel"}


@dataclass(frozen=True)
class Crease:
    """Where the skin stands furthest inboard of where it was made.

    nodes : of the skin round it, shape (k,);  deep_m : how far in they stand on average, above zero
    """

    nodes: Ints
    deep_m: float


def _near(model: DoorModel, sheet: str, x_m: float, z_m: float) -> Ints:
    """Return the nodes of the front door's skin or inner panel near a place, three at least."""
    panel = model.panels()["front"]
    nodes = panel.nodes_of((FACING[sheet],))
    rest = model.start.points[nodes] - panel.shift_m
    away = np.hypot(rest[:, 0] - x_m, rest[:, 2] - z_m)
    near: Ints = nodes[away <= max(REACH_M, float(np.sort(away)[2]))]
    return near


def upper_nodes(model: DoorModel, sheet: str) -> Ints:
    """Return the nodes of the middle of the upper panel, half-way from bar to belt, of "skin" or "inner"."""
    shape = model.mesh.shape
    return _near(model, sheet, 0.5 * shape.length_m, 0.5 * (shape.bar_height_m + shape.height_m))


def belt_nodes(model: DoorModel) -> Ints:
    """Return the skin's nodes close under the belt, half-way along the door: where a high push presses it."""
    shape = model.mesh.shape
    return _near(model, "skin", 0.5 * shape.length_m, shape.height_m - BELOW_BELT_M)


def upper_moved_m(model: DoorModel, start: Frame, end: Frame) -> dict[str, float]:
    """Return how far the upper panel's skin and inner panel went outboard between two moments [m]."""
    out = {}
    for sheet in FACING:
        nodes = upper_nodes(model, sheet)
        out[sheet] = model.outboard(end.points, nodes) - model.outboard(start.points, nodes)
    return out


def crease_in(model: DoorModel, points: Floats) -> Crease | None:
    """Return the deepest crease inboard of the front door's skin; None where there is none."""
    panel = model.panels()["front"]
    nodes = panel.nodes_of((FACING["skin"],))
    rest = model.start.points[nodes]
    inboard = -model.outboard_sign * (points[nodes, 1] - rest[:, 1])
    deepest = rest[int(inboard.argmax())] - panel.shift_m
    near = _near(model, "skin", float(deepest[0]), float(deepest[2]))
    deep = -model.outboard(points, near)
    return Crease(near, deep) if deep >= LEAST_M else None


def crease_words(model: DoorModel, start: Frame, end: Frame) -> str:
    """Return what a push did to a crease it found, with a space before it; empty when it found none."""
    crease = crease_in(model, start.points)
    if crease is None:
        return ""
    further = -model.outboard(end.points, crease.nodes) - crease.deep_m
    found = f"The crease that was there before, {crease.deep_m * 1e3:.0f} mm in,"
    if abs(further) <= limit("moved_m"):
        return f" {found} stayed as it was."
    if further < 0.0:
        return f" {found} came {-further * 1e3:.0f} mm back out."
    return f" {found} went {further * 1e3:.0f} mm further in: a bend grows under a push along it."
