"""What works on the metal or carries the car: ram, forcible-entry bar, blocks; no maker's shape or colour."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from sim.plan import EntryBar, Ram
from ui.scene import tubes

Floats = NDArray[np.float64]
Solid = tuple[Floats, NDArray[np.int64], Floats]

BARREL_M, STAGE_M, SIDES = 0.044, (0.034, 0.027, 0.020, 0.015), 14
"""Drawn radii of a ram's body and of its stages; their lengths are the ram's own."""
PLATE_M = 0.012
BAR_M = 0.012
ARM_M, NOSE_M = 0.016, 0.04
"""Drawn half thickness of a spreader's arm, and how far its nose reaches past what it bears on."""
TIMBER_M = (0.10, 0.45)
"""Section and length of a drawn timber."""
PROP_M, STRAP_M = 0.022, (0.05, 0.004)
"""Drawn radius of a prop's tube; width and thickness of a strap."""


def ram_solid(ends: Floats, out_m: float, ram: Ram) -> Solid:
    """Return a ram between its ends: plate, body, the stages as far as they are out, and head.

    Parameters
    ----------
    ends : head and foot, shape (2, 3) [m];  out_m : how far it is driven out [m]
    """
    head, foot = np.asarray(ends, dtype=np.float64)
    whole = float(np.linalg.norm(head - foot))
    line = (head - foot) / whole
    at = max(PLATE_M, whole - out_m - PLATE_M)
    solids = [_disc(foot, line, PLATE_M, 0.5 * ram.plate_m), _disc(foot, line, at, BARREL_M)]
    left = out_m
    for stage, radius in zip(reversed(ram.stage_m), STAGE_M, strict=False):
        out = min(stage, left)  # the thin ones stand outermost
        left -= out
        if out > 1e-4:
            solids.append(_disc(foot + at * line, line, out, radius))
            at += out
    solids.append(_disc(head - PLATE_M * line, line, PLATE_M, 0.5 * ram.head_m))
    return tubes.joined(solids)


def _disc(start: Floats, line: Floats, length: float, radius: float) -> Solid:
    ends = np.stack((start, start + length * line))[None]
    points, normals = tubes.tube_points(ends, radius, SIDES, up=(0.31, 0.52, 0.79))
    return points, tubes.tube_triangles(1, 2, SIDES), normals


def bar_solid(tip: Floats, push: Floats, way_m: float, bar: EntryBar, away: Floats) -> Solid:
    """Return a forcible-entry bar turned about its heel until its tip has gone some way along the push.

    Parameters
    ----------
    tip : where its tip is now (3,) [m];  push : unit vector of the tip's way;  way_m : how far it has gone
    away : which way the hand's end lies from the tip, (3,); only its part square to the push counts
    """
    side = away - (away @ push) * push
    side = side / max(float(np.linalg.norm(side)), 1e-12)
    turn = math.asin(min(max(way_m / bar.tip_m, 0.0), 1.0))
    along = math.cos(turn) * side - math.sin(turn) * push
    heel = tip + bar.tip_m * along
    hand = tip + bar.length_m * along
    shaft = np.stack((tip, heel, hand))[None]
    points, normals = tubes.tube_points(
        shaft, np.array([[0.5, 1.0, 1.0]]) * BAR_M, SIDES, up=(0.31, 0.52, 0.79)
    )
    return tubes.joined([(points, tubes.tube_triangles(1, 3, SIDES), normals), tubes.ball(heel, 1.5 * BAR_M)])


def prop_solid(head: Floats, ground_m: float) -> Solid:
    """Return a prop that stands upright on the ground and bears at a head (3,) [m]: plates, tube, sleeve.

    A head that lies on the ground leaves the plate alone.
    """
    up = np.array([0.0, 0.0, 1.0])
    foot = np.array([head[0], head[1], ground_m])
    tall = max(float(head[2]) - ground_m, PLATE_M)
    solids = [
        _disc(foot, up, PLATE_M, 3.0 * PROP_M),
        _disc(foot, up, tall, PROP_M),
        _disc(foot, up, 0.55 * tall, 1.35 * PROP_M),
        _disc(foot + (tall - PLATE_M) * up, up, PLATE_M, 2.0 * PROP_M),
    ]
    return tubes.joined(solids)


def strap_solid(door: Floats, body: Floats) -> Solid:
    """Return a strap drawn tight between a place on a door and one on the body, (3,) each [m]."""
    line = body - door
    length = max(float(np.linalg.norm(line)), 1e-6)
    along = line / length
    wide = np.cross(along, [0.0, 1.0, 0.0])
    if float(np.linalg.norm(wide)) < 1e-3:
        wide = np.array([1.0, 0.0, 0.0])
    wide = wide / np.linalg.norm(wide)
    axes = np.stack([along, wide, np.cross(along, wide)])
    half = 0.5 * np.array([length, *STRAP_M])
    band = tubes.flat_shaded(tubes.box_corners(0.5 * (door + body), axes, half), tubes.box_triangles())
    ends = [tubes.ball(end, 0.4 * STRAP_M[0], 5, 10) for end in (door, body)]
    return tubes.joined([band, *ends])


def arms_solid(tips: Floats, out: Floats, arm_m: float) -> Solid:
    """Return a spreader's two arms from its tips (2, 3) [m] to the pivot they turn about.

    Parameters
    ----------
    out : unit vector from the metal to the tool's body, shape (3,);  arm_m : from pivot to tip
    """
    half = 0.5 * float(np.linalg.norm(tips[1] - tips[0]))
    pivot = tips.mean(axis=0) + math.sqrt(max(arm_m**2 - half**2, 0.0)) * out
    solids = []
    for tip, other in ((tips[0], tips[1]), (tips[1], tips[0])):
        way = tip - other
        flat = ARM_M * way / max(float(np.linalg.norm(way)), 1e-12)
        line = np.stack((tip - flat - NOSE_M * out, tip - flat, pivot))[None]
        points, normals = tubes.tube_points(
            line, np.array([[0.4, 1.0, 1.0]]) * ARM_M, SIDES, up=(0.31, 0.52, 0.79)
        )
        solids.append((points, tubes.tube_triangles(1, 3, SIDES), normals))
    return tubes.joined([*solids, tubes.ball(pivot, 2.0 * ARM_M)])


def block_solid(x_m: float, sign: float, ground_m: float, under_m: float) -> Solid:
    """Return a stack of timbers on the ground under the rocker, laid crosswise, up to its underside [m]."""
    count = max(1, round((under_m - ground_m) / TIMBER_M[0]))
    high = (under_m - ground_m) / count
    solids = []
    for row in range(count):
        for side in (-1.0, 1.0):
            out, along = side * 0.5 * (TIMBER_M[1] - TIMBER_M[0]), 0.5 * TIMBER_M[1]
            centre = np.array([x_m, -0.16 * sign, ground_m + (row + 0.5) * high])
            half = np.array([along, 0.5 * TIMBER_M[0], 0.5 * high])
            if row % 2:
                half[[0, 1]] = half[[1, 0]]
                centre[0] += out
            else:
                centre[1] += out
            solids.append(
                tubes.flat_shaded(tubes.box_corners(centre, np.eye(3), half), tubes.box_triangles())
            )
    return tubes.joined(solids)
