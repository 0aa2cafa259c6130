"""Room on the side of the occupant: clearance to each body part, and the width left to bring them out by.

**Exit width.** Look from the side at the band between the height of the occupant's hips and that of the
shoulders, between the front pillar's rear edge and the rear pillar's front edge. Metal blocks a stretch of
that length where any of it lies in the band, from the middle of the occupant to ``OUT_M`` outboard of the
sill. The exit width is the longest stretch with nothing in it. Shut doors block all of it; a pillar folded
down below the hips, or a door swung wide, blocks only what still stands in the opening.

**In the way.** Read the same band height by height: each has a longest stretch of its own with nothing in it,
and the height where that is shortest is where the opening is narrowest. A width can be nothing although every
height has some: the free stretches then do not lie over one another.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from meshes.occupant import part_clearance
from sim.side import PILLAR, REAR, SideModel

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

OUT_M = 0.2  # how far outboard of the sill metal still stands in the way: half a person's depth, assumed

STEP_M = 0.025  # about so high is a height at which the opening is read by itself, assumed
LEAST_SHARE = 0.02  # of the opening's length: metal that blocks less is not named


@dataclass(frozen=True)
class InTheWay:
    """What stands in the way out.

    metal : what blocks the opening, the widest first: "front door", "pillar", "roof rail" and so on
    shares : how much of the opening's length each blocks, 0 .. 1
    heights_m : heights of the band, above the sill, the lowest first [m]
    free_m : the longest free stretch along the car at each of them [m]
    """

    metal: tuple[str, ...]
    shares: tuple[float, ...]
    heights_m: tuple[float, ...]
    free_m: tuple[float, ...]

    @property
    def narrowest(self) -> tuple[float, float]:
        """Height at which the opening is narrowest, and how long its free stretch is there [m]."""
        free = min(self.free_m)
        return self.heights_m[self.free_m.index(free)], free


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


def in_the_way(model: SideModel, points: Floats, triangles: Ints) -> InTheWay:
    """Return which metal stands in the way out, and where the opening is narrowest."""
    band, sign, metal = exit_band(model), model.outboard_sign, _metal(model)
    count = max(1, round((band.up[1] - band.up[0]) / STEP_M))
    edges = np.linspace(*band.up, count + 1)
    height = points[triangles][:, :, 2]
    lowest, highest = height.min(axis=1), height.max(axis=1)
    free = []
    for low, high in pairwise(edges.tolist()):
        reach = (highest >= low) & (lowest <= high)
        at = replace(band, up=(low, high))
        free.append(widest_gap(blocked(points, triangles[reach], at, sign), band.along))
    found = _shares(points, triangles, metal, band, sign)
    middle = 0.5 * (edges[1:] + edges[:-1])
    return InTheWay(tuple(found), tuple(found.values()), tuple(middle.tolist()), tuple(free))


def _shares(
    points: Floats, triangles: Ints, metal: NDArray[np.str_], band: Band, outboard_sign: float
) -> dict[str, float]:
    """Return how much of a band's length each metal blocks, 0 .. 1, the most first."""
    low, high = band.along
    found = {}
    for name in np.unique(metal):
        spans = np.clip(blocked(points, triangles[metal == name], band, outboard_sign), low, high)
        share = float((spans[:, 1] - spans[:, 0]).sum()) / (high - low)
        if share >= LEAST_SHARE:
            found[str(name)] = share
    return dict(sorted(found.items(), key=lambda one: -one[1]))


METALS = {REAR: "rear door", PILLAR: "pillar", "rail ": "roof rail", "rocker ": "rocker"}
"""Words by the beginning of a part's name; every other part is the front door's."""


@lru_cache(maxsize=2)
def _metal(model: SideModel) -> NDArray[np.str_]:
    """Return the word of each triangle's metal, shape (triangles,)."""
    surface = model.surface
    words = [
        next((word for begin, word in METALS.items() if name.startswith(begin)), "front door")
        for name in surface.part_names
    ]
    return np.array(words)[surface.triangle_part]
