"""The section across the edge as lines to draw, in metres (inwards of the lip, outboard)."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from sim.plan import EdgePoint, Spread

if TYPE_CHECKING:
    from sim.door_model import DoorModel

Line = NDArray[np.float64]

STILL_WIDTH_M = 0.034
"""How much of what stands still is drawn beside the gap."""
TIP_THICKNESS_M = 0.010
"""Thickness a tip is drawn with; the model's tip has none."""


@dataclass(frozen=True)
class SectionView:
    """What is drawn: lines of shape (k, 2) [m].

    Parameters
    ----------
    skin, hem, shut_face, inner_panel : the sheets
    bend : the inner bend, shape (2,)
    still : outline of what stands still beside the door, closed
    pad : the face of the tip that bears on the door, two points
    tip : outline of the tip, closed
    push : direction of the push in this plane, a unit vector
    """

    skin: Line
    hem: Line
    shut_face: Line
    inner_panel: Line
    bend: Line
    still: Line
    pad: Line
    tip: Line
    push: Line


def section_view(model: DoorModel, move: Spread) -> SectionView | None:
    """Return the section through the tip of a move at an edge; None for a move at the belt."""
    if not isinstance(move.door, EdgePoint):
        return None
    door = model.panel(move.door)
    mesh = door.mesh
    station = mesh.edge_station(move.door.edge, move.door.along_m)
    outline = mesh.section_outline(station)
    path = np.vstack((outline["shut_face"], outline["inner_panel"][1:]))
    half = 0.5 * move.tool.tip_depth_m
    ends = (max(move.door.depth_m - half, 0.0), move.door.depth_m + half)
    pad = np.array([_along(path, depth) for depth in ends])
    gap = float(door.body.shape.gap_m)
    deep = float(door.body.shape.pillar_depth_m)
    still = np.array([[-gap, 0.0], [-gap - STILL_WIDTH_M, 0.0], [-gap - STILL_WIDTH_M, -deep], [-gap, -deep]])
    push = np.array([math.cos(move.tilt_rad), math.sin(move.tilt_rad)])
    return SectionView(
        outline["skin"], outline["hem"], outline["shut_face"], outline["inner_panel"], outline["bend"][0],
        still, pad, _tip(pad), push,
    )  # fmt: skip


def _along(path: Line, depth_m: float) -> Line:
    """Return the point at a depth: down the shut face by its inboard distance, then along the inner panel."""
    face_depth = -float(path[-2, 1])
    if depth_m <= face_depth:
        return np.array([np.interp(depth_m, -path[:-1, 1], path[:-1, 0]), -depth_m])
    point: Line = path[-2] + np.array([depth_m - face_depth, 0.0])
    return point


def _tip(pad: Line) -> Line:
    """Return the outline of a tip behind its pad: away from the metal it bears on."""
    along = pad[1] - pad[0]
    length = float(np.hypot(*along))
    if length == 0.0:
        return np.vstack((pad, pad[::-1]))
    away = np.array([along[1], -along[0]]) / length * TIP_THICKNESS_M
    return np.vstack((pad, pad[::-1] + away))
