"""How a ram's head bears on the metal under it: where its push goes in, square to what, and whether it rolls.

A head is a rigid round plate of radius R on a hinge a height h behind its face.  It lies on the metal as it
is now, read at points of its triangles, as on a bed of springs [winkler-1867] that the push dents by a mean
of `sim.tip.SEAT_DENT_M`.  In the plane square to the ram's line u, with s the place of a point, z its height
along u and psi the plate's tilt, the pressure, the middle of it and what a tilt does to that are

    p = <c - psi . s - z>,   sum(p A) = dent pi R^2,   C = sum(p A s) / sum(p A),   dC = -M dpsi,
    M = sum over what bears of A (s - mean)(s - mean)' / sum(p A).

The plate does not slide while it tilts, so its hinge goes aside by -h psi; the push runs through hinge and
middle along u when

    C + h psi = 0   (h sin of the tilt, to be exact),

and the head comes back to that when tilted only where M - h > 0.

On a flat spot M is about R^2 / 4 dent and nothing happens until h tan(angle) reaches the rim.  On a bow of
radius r it is r: the contact is small, its normal turns as the head rolls, the angle between line and normal
becomes angle / (1 - h / r), and where r < h the head rolls over at once.  Nothing of this is put in; it is
what the metal's shape under the head makes of the balance.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.rigid import reading_points
from sim.tip import SEAT_DENT_M

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SPLIT = 8  # a triangle under a head is read in the middles of SPLIT^2 equal ones
LARGEST_STEP_RAD = 0.02
STEPS = 400
OVER_RAD = 0.8  # a head tipped this far from how it lay on the metal does not come back
SETTLED_M = 1.0e-5
LEAST_RIGHTING_M, RUNAWAY_M = 1.0e-4, 1.0e-6  # below the first a tilt is as good as running away
RIM_RATIO = 0.97  # of the radius: a push that goes in further out stands on the rim
FACING_COSINE = 0.05  # a sheet seen more edge-on than this does not bear


@dataclass(frozen=True)
class Plate:
    """A head or a foot by its numbers: radius, and height of its hinge behind the face [m]."""

    radius_m: float
    hinge_m: float


@dataclass(frozen=True)
class Bearing:
    """How a head bears.

    nodes, weights : shape (k,), what its pressure is shared onto; the weights sum to one
    place : shape (3,), middle of the pressure [m];  normal : unit vector into the metal there, shape (3,)
    tilt_rad : of the plate, from square to the line;  patch_m2 : of the metal that bears
    rolled : whether the head has rolled onto its rim or over: it then holds at no angle
    """

    nodes: Ints
    weights: Floats
    place: Floats
    normal: Floats
    tilt_rad: float
    patch_m2: float
    rolled: bool

    def angle_rad(self, line: Floats) -> float:
        """Return the angle between a line and the normal of the metal it goes into [rad]."""
        return angle_between(self.normal, line)


def angle_between(a: Floats, b: Floats) -> float:
    """Return the angle between two unit vectors [rad]; exact near nothing too."""
    return math.atan2(float(np.linalg.norm(np.cross(a, b))), float(a @ b))


@dataclass(frozen=True)
class _Bed:
    """Points of the metal under a head: places (k, 2) and heights (k,) by the line, area, corner, share."""

    spot: Floats
    height: Floats
    area: Floats
    nodes: Ints
    shares: Floats
    normal: Floats


def across(line: Floats) -> Floats:
    """Return two unit vectors square to a line and to one another, shape (2, 3)."""
    first = np.cross(line, np.eye(3)[int(np.argmin(np.abs(line)))])
    first = first / np.linalg.norm(first)
    return np.stack([first, np.cross(line, first)])


def _bed(points: Floats, triangles: Ints, centre: Floats, line: Floats, radius_m: float) -> _Bed:
    corner = points[triangles]
    reach = np.linalg.norm(corner - corner.mean(axis=1)[:, None], axis=2).max(axis=1)
    near = np.linalg.norm(corner.mean(axis=1) - centre, axis=1) <= radius_m + reach
    corner, nodes = corner[near], triangles[near]
    twice = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
    size = np.linalg.norm(twice, axis=1)
    facing = twice @ line
    into = np.where(facing >= 0.0, 1.0, -1.0)[:, None] * twice / size[:, None]
    weights = reading_points(SPLIT)
    place = np.einsum("qi,kij->kqj", weights, corner) - centre
    spot = np.einsum("kqj,aj->kqa", place, across(line))
    height = place @ line
    # what lies deeper than the plate is wide is another wall
    under = (np.linalg.norm(spot, axis=2) <= radius_m) & (np.abs(height) <= radius_m)
    under &= (np.abs(facing) > FACING_COSINE * size)[:, None]
    row, reading = np.nonzero(under)
    # area as the line sees it: pressure is counted along the line
    area = (0.5 * np.abs(facing) / len(weights))[row]
    return _Bed(spot[under], height[under], area, nodes[row], weights[reading], into[row])


def _pressed(height: Floats, area: Floats, volume: float) -> Floats:
    """Return the depth of each spring of a bed that takes a volume: <c - height>, shape (k,)."""
    order = np.argsort(height, kind="stable")
    level, share = height[order], area[order]
    total, moment = np.cumsum(share), np.cumsum(share * level)
    # with the first i springs touched the level is (volume + moment) / total
    reached = (volume + moment) / total
    nxt = np.append(level[1:], np.inf)
    first = int(np.argmax(reached <= nxt))
    return np.maximum(float(reached[first]) - height, 0.0)


def bearing(
    points: Floats,
    triangles: Ints,
    centre: Floats,
    line: Floats,
    plate: Plate,
    dent_m: float = SEAT_DENT_M,
) -> Bearing | None:
    """Return how a head bears on some triangles as they are now; None where there is no metal under it.

    Parameters
    ----------
    points : shape (n, 3) [m];  triangles : shape (m, 3), the sheets it may touch
    centre : shape (3,), the metal under the middle of its face;  line : unit vector of the push, shape (3,)
    """
    bed = _bed(points, triangles, centre, line, plate.radius_m)
    if not len(bed.area):
        return None
    volume = dent_m * math.pi * plate.radius_m**2
    tilt, depth, rolled = _settled(bed, plate, volume)
    load = depth * bed.area
    on = depth > 0.0
    nodes, slot = np.unique(bed.nodes[on], return_inverse=True)
    weights = np.bincount(slot.ravel(), (bed.shares[on] * load[on, None]).ravel()) / volume
    middle, normal = (load @ bed.spot) / volume, load @ bed.normal
    high = float(load @ bed.height) / volume
    place = centre + middle @ across(line) + high * line
    return Bearing(
        nodes,
        weights / weights.sum(),
        place,
        normal / np.linalg.norm(normal),
        math.atan(float(np.linalg.norm(tilt))),
        float(bed.area[on].sum()),
        rolled,
    )


def _settled(bed: _Bed, plate: Plate, volume: float) -> tuple[Floats, Floats, bool]:
    """Return tilt (2,), depth of each spring, and whether the head ran onto its rim."""
    laid = tilt = _lying(bed)
    longest, last = LARGEST_STEP_RAD, np.zeros(2)
    for _ in range(STEPS):
        depth = _under(bed, plate, tilt, volume)
        middle = (depth * bed.area) @ bed.spot / volume
        on_rim = math.hypot(float(np.linalg.norm(middle)), float(tilt @ middle)) > RIM_RATIO * plate.radius_m
        if on_rim or math.atan(float(np.linalg.norm(tilt - laid))) > OVER_RAD:
            return tilt, depth, True
        # the hinge stands h behind the face along the face's own normal, so it goes aside by h sin(tilt)
        lean = math.sqrt(1.0 + float(tilt @ tilt))
        out = middle + plate.hinge_m * tilt / lean
        if float(np.linalg.norm(out)) <= SETTLED_M:
            return tilt, depth, False
        longest *= 0.5 if float(out @ last) < 0.0 else 1.0
        last = out
        aside = plate.hinge_m * (np.eye(2) / lean - np.outer(tilt, tilt) / lean**3)
        values, ways = np.linalg.eigh(_righting(bed, depth, volume) - aside)
        # where a tilt runs away it is followed downhill, a short way at a time
        step = ways @ ((ways.T @ out) / np.where(values > LEAST_RIGHTING_M, values, RUNAWAY_M))
        tilt = tilt + step * min(1.0, longest / max(float(np.linalg.norm(step)), 1.0e-12))
    return tilt, depth, False


def _under(bed: _Bed, plate: Plate, tilt: Floats, volume: float) -> Floats:
    """Return the depth of each spring under a plate with a tilt, 0 beside it."""
    along = bed.spot @ tilt
    inside = np.einsum("ka,ka->k", bed.spot, bed.spot) + along * along <= plate.radius_m**2
    depth = np.zeros(len(bed.area))
    if inside.any():
        depth[inside] = _pressed((bed.height + along)[inside], bed.area[inside], volume)
    return depth


def _righting(bed: _Bed, depth: Floats, volume: float) -> Floats:
    """Return by how much the middle of the pressure goes back for a tilt, M (2, 2) [m/rad]."""
    on = depth > 0.0
    mean = bed.area[on] @ bed.spot[on] / bed.area[on].sum()
    arm = (bed.spot[on] - mean) * np.sqrt(bed.area[on])[:, None]
    out: Floats = arm.T @ arm / volume
    return out


def _lying(bed: _Bed) -> Floats:
    """Return the tilt of a plate laid on the metal: the plane of least squares through it, (2,)."""
    mean = bed.area @ bed.spot / bed.area.sum()
    arm = bed.spot - mean
    square = (arm * bed.area[:, None]).T @ arm
    tilt: Floats = -np.linalg.lstsq(square, (arm * bed.area[:, None]).T @ bed.height, rcond=None)[0]
    return tilt
