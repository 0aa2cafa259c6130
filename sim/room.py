"""Room on the side of the occupant: clearance to each body part, and the width left to bring them out by.

**Exit width.** Look from the side at the band between the height of the occupant's hips and that of the
shoulders, between the front pillar's rear edge and the rear pillar's front edge. Metal blocks a stretch of
that length where any of it lies in the band, from the middle of the occupant to ``OUT_M`` outboard of the
sill. The exit width is the longest stretch with nothing in it. Shut doors block all of it; a pillar folded
down below the hips, or a door swung wide, blocks only what still stands in the opening.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from meshes.occupant import part_clearance
from sim.side import SideModel

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

OUT_M = 0.2  # how far outboard of the sill metal still stands in the way: half a person's depth, assumed


@dataclass(frozen=True)
class Band:
    """Where the exit width is read: along the car, outboard and up, each low and high [m]."""

    along: tuple[float, float]
    outboard: tuple[float, float]
    up: tuple[float, float]


def exit_band(model: SideModel) -> Band:
    """Return the band of a model, from its occupant and its pillars."""
    capsules = {one.name: one for one in model.occupant}
    hip, neck = capsules["pelvis"], capsules["neck"]
    low, high = float(hip.start[2]), float(min(neck.start[2], neck.end[2]))
    middle = 0.5 * float((hip.start + hip.end)[1]) * model.outboard_sign
    level = 0.5 * (low + min(high, model.mesh.shape.height_m))
    front = _edge(model, "front_pillar", level).max()
    rear = _edge(model, "rear_pillar", level).min()
    return Band((float(front), float(rear)), (middle, OUT_M), (low, high))


def _edge(model: SideModel, name: str, level_m: float) -> Floats:
    corners = model.side.members[name].corners_at(level_m)
    along: Floats = corners[:, 0]
    return along


def blocked(points: Floats, triangles: Ints, band: Band, outboard_sign: float) -> Floats:
    """Return the stretches along the car that metal blocks, merged and in order, shape (k, 2) [m].

    A triangle blocks what its edges cover inside the band.
    """
    corner = points[triangles] * np.array([1.0, outboard_sign, 1.0])
    start = corner.reshape(-1, 3)
    way = np.roll(corner, -1, axis=1).reshape(-1, 3) - start
    low, high = np.zeros(len(start)), np.ones(len(start))
    for axis, (least, most) in ((1, band.outboard), (2, band.up)):
        still = np.abs(way[:, axis]) < 1.0e-12
        step = np.where(still, 1.0, way[:, axis])
        one, two = (least - start[:, axis]) / step, (most - start[:, axis]) / step
        inside = (start[:, axis] >= least) & (start[:, axis] <= most)
        low = np.maximum(low, np.where(still, np.where(inside, 0.0, 2.0), np.minimum(one, two)))
        high = np.minimum(high, np.where(still, 1.0, np.maximum(one, two)))
    on = low <= high
    owner = np.repeat(np.arange(len(triangles)), 3)[on]
    if not len(owner):
        return np.zeros((0, 2))
    ends = start[on, :1] + np.stack([low[on], high[on]], axis=1) * way[on, :1]
    from_m, to_m = np.full(len(triangles), np.inf), np.full(len(triangles), -np.inf)
    np.minimum.at(from_m, owner, ends.min(axis=1))
    np.maximum.at(to_m, owner, ends.max(axis=1))
    mine = from_m <= to_m
    return _merged(np.column_stack([from_m[mine], to_m[mine]]))


def _merged(spans: Floats) -> Floats:
    spans = spans[np.argsort(spans[:, 0], kind="stable")]
    reach = np.maximum.accumulate(spans[:, 1])
    new = np.concatenate([[True], spans[1:, 0] > reach[:-1]])
    first = np.flatnonzero(new)
    last = np.concatenate([first[1:] - 1, [len(spans) - 1]])
    return np.column_stack([spans[first, 0], reach[last]])


def widest_gap(spans: Floats, along: tuple[float, float]) -> float:
    """Return the longest stretch of a length with nothing in it [m]."""
    low, high = along
    edges = np.concatenate([[low], np.clip(spans, low, high).ravel(), [high]]).reshape(-1, 2)
    return float(np.maximum(edges[:, 1] - edges[:, 0], 0.0).max())


def exit_width_m(model: SideModel, points: Floats, triangles: Ints) -> float:
    """Return the width left to bring the occupant out by [m]: the module says how it is read."""
    band = exit_band(model)
    return widest_gap(blocked(points, triangles, band, model.outboard_sign), band.along)


def clearance_by_part(model: SideModel, points: Floats, triangles: Ints) -> dict[str, float]:
    """Return the least distance from metal to head, trunk, hip, thigh and lower leg [m], negative inside."""
    return part_clearance(points, triangles, model.occupant)
