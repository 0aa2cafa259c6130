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
WELL = 0.7  # well within a line of sight: this part of half its breadth
GUESSED = 120_000  # as many of these points are made room for at first
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


@kernel
def sow(
    points: Floats, triangles: Ints, place: Floats, radius_m: float, grain_m: float, out: Floats, came: Ints
) -> int:
    """Fill ``out`` (k, 3) with points on triangles near a place; return how many there are, all told or not.

    Each triangle's own lattice, its spacing ``grain_m`` at most along the longest edge; ``came`` (k, 4): the
    triangle, two steps from its third corner towards the first and the second, and steps along an edge.
    """
    found, room = 0, out.shape[0]
    spot = np.zeros(3)
    for row in range(triangles.shape[0]):
        far2, size2 = 0.0, 0.0
        for i in range(3):
            mean = points[triangles[row, 0], i] + points[triangles[row, 1], i] + points[triangles[row, 2], i]
            far2 += (mean / 3.0 - place[i]) ** 2
        for k in range(3):
            edge2 = 0.0
            for i in range(3):
                edge2 += (points[triangles[row, k], i] - points[triangles[row, k - 1], i]) ** 2
            size2 = max(size2, edge2)
        size = np.sqrt(size2)
        if far2 > (radius_m + size) ** 2:
            continue
        count = max(int(np.ceil(size / grain_m)), 1)
        for a in range(count + 1):
            for b in range(count + 1 - a):
                first, second, third = a / count, b / count, (count - a - b) / count
                apart2 = 0.0
                for i in range(3):
                    spot[i] = first * points[triangles[row, 0], i] + second * points[triangles[row, 1], i]
                    spot[i] += third * points[triangles[row, 2], i]
                    apart2 += (spot[i] - place[i]) ** 2
                if apart2 > radius_m * radius_m:
                    continue
                if found < room:
                    out[found] = spot
                    came[found, 0], came[found, 1], came[found, 2], came[found, 3] = row, a, b, count
                found += 1
    return found


def sown(points: Floats, triangles: Ints, place: Floats, radius_m: float) -> tuple[Floats, Ints]:
    """Return points at most `GRAIN_M` apart on triangles near a place, and what each is: see `sow`."""
    where, rows = np.ascontiguousarray(points, dtype=float), np.ascontiguousarray(triangles, dtype=np.int64)
    room = GUESSED
    while True:
        out, came = np.empty((room, 3)), np.empty((room, 4), dtype=np.int64)
        found = sow(where, rows, place, radius_m, GRAIN_M, out, came)
        if found <= room:
            return out[:found], came[:found]
        room = found


def grains(points: Floats, triangles: Ints, place: Floats, radius_m: float) -> Floats:
    """Return points at most `GRAIN_M` apart on the triangles near a place, shape (k, 3)."""
    return sown(points, triangles, place, radius_m)[0]


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
    spots: Floats, place: Floats, ways: Floats, own_m: float, half_m: float, blocked: Bools, by: Ints
) -> None:
    """Fill along which ways, unit vectors (k, 3), a spot stands between a place and the open, and which one.

    A spot stands in the way when it lies within ``half_m`` of the line, further out than ``own_m``; one well
    within is told rather than one at the rim, which the next step of the metal may take out of the way.
    """
    rim2, well2 = half_m * half_m, (WELL * half_m) ** 2
    for w in range(ways.shape[0]):
        blocked[w] = False
        by[w] = -1
        for k in range(spots.shape[0]):
            along, far2 = 0.0, 0.0
            for i in range(3):
                d = spots[k, i] - place[i]
                along += d * ways[w, i]
                far2 += d * d
            off2 = far2 - along * along
            if along > own_m and off2 < rim2:
                blocked[w] = True
                by[w] = k
                if off2 < well2:
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


def view_of(
    pin: Floats, spots: Floats, outboard_sign: float, opening_m: float, by: Ints | None = None
) -> View | None:
    """Return how a fitting can be seen and reached; None where it cannot.

    Parameters
    ----------
    pin : shape (2, 3), its two seats [m];  spots : shape (k, 3), points of all metal near it [m]
    by : filled with which spot stands in the way of each place and way it is looked from, or -1
    """
    ways = looks(outboard_sign)
    by = np.zeros((len(ALONG_PIN), len(ways)), dtype=np.int64) if by is None else by
    by[:] = -1
    for share, mine in zip(ALONG_PIN, by, strict=True):
        place = pin[0] + share * (pin[1] - pin[0])
        blocked = np.zeros(len(ways), dtype=bool)
        blocked_ways(spots, place, ways, NEAR_M, SIGHT_M, blocked, mine)
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
