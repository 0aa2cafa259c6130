"""What can be seen and reached with blades: hinges, strikers, the foot; from where the metal is, and no more.

A fitting is a pin between two seats, one on the door and one on what it hangs on.  It is *exposed* when
somewhere along the pin

* a line of sight leads out of the car past all metal, and
* along that line the blades have room: a slab as wide as they open, from 20 mm behind the pin out to 250 mm,
  holds no metal; it is 10 mm thick at the pin, where blades taper, and 30 mm from 50 mm out on.

Metal is read as points at most 7 mm apart on its triangles; what lies within 18 mm of the pin is the
fitting's own seat and not in the blades' way.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.blades import Blades, section
from sim.compiled import kernel
from sim.network import Network
from sim.problems import PlanError

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

ROOM_M = 0.030  # a blade's thickness with what it needs to be moved, common practice, no source
TIP_M, TAPER_M = 0.010, 0.050  # its thickness at the tip, and how far out it has grown to the whole, assumed
SIGHT_M, NEAR_M = 0.005, 0.004  # half the breadth of what one sees a pin through, half its own, assumed
BEHIND_M, OUT_M = 0.020, 0.250  # how far the blades reach past the pin, and their own length, assumed
OWN_M = 0.018  # round the pin: its own seat, assumed
GRAIN_M = 0.007  # distance of the points metal is read at
JAW_M = 0.05  # breadth of one blade, assumed
ALONG_PIN = (0.3, 0.5, 0.7)  # where on the pin the blades may close
LEANS = (0.0, 1.0, -1.0)  # blades square to the pin, or leaning so that either flank lies along a wall
LOOKS_DEG = (0.0, 20.0, 40.0, 60.0)  # off straight outboard
ROUND = 12  # looks on each cone
ROLLS = 6  # ways the blades may be turned about the line of sight


@dataclass(frozen=True)
class View:
    """How a fitting is reached: where the blades close, the way out, the normal of their plane, (3,) each."""

    place: Floats
    way_out: Floats
    normal: Floats


def grains(points: Floats, triangles: Ints, place: Floats, radius_m: float) -> Floats:
    """Return points at most `GRAIN_M` apart on the triangles near a place, shape (k, 3)."""
    corner = points[triangles]
    size = np.linalg.norm(corner - np.roll(corner, 1, axis=1), axis=2).max(axis=1)
    near = np.linalg.norm(corner.mean(axis=1) - place, axis=1) <= radius_m + size
    corner, size = corner[near], size[near]
    if not len(corner):
        return np.zeros((0, 3))
    # long thin triangles (rigid members) are cut to what is near by sampling their own lattice
    out = []
    counts = np.maximum(np.ceil(size / GRAIN_M).astype(int), 1)
    for count in np.unique(counts).tolist():
        mine = corner[counts == count]
        i, j = np.meshgrid(np.arange(count + 1), np.arange(count + 1), indexing="ij")
        keep = i + j <= count
        share = np.stack([i[keep], j[keep], count - i[keep] - j[keep]], axis=1) / count
        for some in np.array_split(mine, max(1, len(mine) * len(share) // 200_000)):
            spots = np.einsum("sc,tcx->tsx", share, some).reshape(-1, 3)
            out.append(spots[np.linalg.norm(spots - place, axis=1) <= radius_m])
    return np.concatenate(out)


def looks(outboard_sign: float) -> Floats:
    """Return the ways one may look from, unit vectors out of the car, shape (k, 3)."""
    out = []
    for off in LOOKS_DEG:
        for k in range(ROUND if off else 1):
            a, b = np.radians(off), 2.0 * np.pi * k / ROUND
            out.append([np.sin(a) * np.cos(b), outboard_sign * np.cos(a), np.sin(a) * np.sin(b)])
    return np.array(out)


@kernel
def blocked_ways(
    spots: Floats, place: Floats, ways: Floats, own_m: float, half_m: float, blocked: Bools
) -> None:
    """Fill along which ways, unit vectors (k, 3), a spot stands between a place and the open.

    A spot stands in the way when it lies within ``half_m`` of the line, further out than ``own_m``.
    """
    for w in range(ways.shape[0]):
        blocked[w] = False
        for k in range(spots.shape[0]):
            along, far2 = 0.0, 0.0
            for i in range(3):
                d = spots[k, i] - place[i]
                along += d * ways[w, i]
                far2 += d * d
            if along > own_m and far2 - along * along < half_m * half_m:
                blocked[w] = True
                break


def room_round(spots: Floats, place: Floats, way: Floats, opening_m: float) -> Floats | None:
    """Return the normal of a plane in which open blades have room, a unit vector (3,); None without room."""
    apart = spots - place
    apart = apart[np.linalg.norm(apart, axis=1) > OWN_M]
    along = apart @ way
    apart = apart[(along > -BEHIND_M) & (along < OUT_M)]
    first = np.cross(way, [0.0, 0.0, 1.0] if abs(way[2]) < 0.9 else [1.0, 0.0, 0.0])
    first /= np.linalg.norm(first)
    second = np.cross(way, first)
    u, v = apart @ first, apart @ second
    half = 0.5 * np.clip(TIP_M + (ROOM_M - TIP_M) * apart @ way / TAPER_M, TIP_M, ROOM_M)
    for k in range(ROLLS):
        angle = np.pi * k / ROLLS
        beside = np.abs(-np.sin(angle) * u + np.cos(angle) * v) < 0.5 * opening_m
        off, thick = (np.cos(angle) * u + np.sin(angle) * v)[beside], half[beside]
        for lean in LEANS:
            if not (np.abs(off - lean * (thick - 0.5 * TIP_M)) < thick).any():
                normal: Floats = np.cos(angle) * first + np.sin(angle) * second
                return normal
    return None


def view_of(pin: Floats, spots: Floats, outboard_sign: float, opening_m: float) -> View | None:
    """Return how a fitting can be seen and reached; None where it cannot.

    Parameters
    ----------
    pin : shape (2, 3), its two seats [m];  spots : shape (k, 3), points of all metal near it [m]
    """
    for share in ALONG_PIN:
        place = pin[0] + share * (pin[1] - pin[0])
        ways = looks(outboard_sign)
        blocked = np.zeros(len(ways), dtype=bool)
        blocked_ways(spots, place, ways, NEAR_M, SIGHT_M, blocked)
        for way in ways[~blocked]:
            normal = room_round(spots, place, way, opening_m)
            if normal is not None:
                return View(place, way, normal)
    return None


def room_for(
    network: Network,
    points: Floats,
    blades: Blades,
    others: Sequence[tuple[Floats, Ints]],
) -> bool:
    """Return whether open blades can be brought round a section: it is narrow enough, nothing in the way.

    Beside the section, a blade's breadth on either side of it, and before it, the blades' own length, nothing
    but the part itself may stand within half their thickness of the plane.

    Parameters
    ----------
    others : points (n, 3) [m] and triangles (m, 3) of what else there is
    """
    try:
        found = section(network, points, blades)
    except PlanError:
        return False
    if found.width_m > blades.opening_m:
        return False
    rest = network.structure.triangles[~blades.rows]
    radius = OUT_M + found.far_m - found.near_m
    spots = np.concatenate([grains(*one, blades.place, radius) for one in ((points, rest), *others)])
    apart = spots - blades.place
    along, across = apart @ blades.way, apart @ blades.across
    flat = np.abs(apart @ blades.normal) < 0.5 * ROOM_M
    beside = (across > found.low_m - JAW_M) & (across < found.high_m + JAW_M)
    reached = (along > found.near_m - OUT_M) & (along < found.far_m + BEHIND_M)
    return not bool((flat & beside & reached).any())
