"""A ram as a two-force member: it can only push along the line between its two ends, wherever they are now.

With g from foot to head, l = |g|, u = g / l, and the length L it has been driven to,

    E = k <L - l>^2 / 2,   force on the head  f u,  f = k <L - l>,   on the foot  -f u;
    E'' by g = k u u' - (f / l) (1 - u u').

So the line of action turns with the part: nothing else makes a ram walk in line.  Across the line it gives
way, and the last term says by how much: pressed hard enough between ends that can move aside it kicks out.

The foot may stand on a wall that dents (`sim.base`).  Its depth s along the wall's own normal n lengthens the
way, g = g0 + s n, and is found within the law: elastic up to the wall's force, then the dent q grows,

    E(g0) = min over s, q of  k <L - |g0 + s n|>^2 / 2 + kb (s - q)^2 / 2 + int_q0^q P(z) dz,    q >= q0.

The inner minimum is condensed: E'' = A - A n n' A / (n' A n + p'), A the second derivative above, p' the
slope of the wall's force.  The dent stays when the ram is eased.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.base import Wall

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

INNER_STEPS = 60
INNER_TOLERANCE = 1.0e-13  # of the dent, relative to the length


@dataclass(frozen=True)
class Strut:
    """A ram set between its ends, for one step of the grid.

    foot_m : shape (3,), where the foot stands on the rigid body at rest [m]; zero when it stands on the
        metal, where the drive's negative weights place it
    length_m : from end to end at travel 0 [m]
    wall : what the foot stands on, None where it cannot dent
    normal : unit vector, shape (3,), from that wall towards the ram
    """

    foot_m: Floats
    length_m: float
    wall: Wall | None = None
    normal: Floats | None = None

    def answer(self, between: Floats, travel_m: float, dent_m: float, stiffness: float) -> Pushed:
        """Return what the ram does when its head is ``between`` (3,) off its undented foot [m].

        Parameters
        ----------
        dent_m : depth of the wall's dent so far;  stiffness : of the ram [N/m]
        """
        length = self.length_m + travel_m
        if self.wall is None or self.normal is None:
            return pushed(between, length, stiffness)
        return sunk(between, length, stiffness, self.wall, self.normal, dent_m)


@dataclass(frozen=True)
class Pushed:
    """What a ram does at one place of its ends.

    force_n : along its line, never below 0;  line : unit vector from foot to head, shape (3,)
    length_m : from end to end now
    stored_j, spent_j : elastic of ram and wall; in the dent since the last commit
    sink_m, dent_m : how deep the foot is now, and how deep the dent stays
    tangent : shape (3, 3), second derivative by the head's place [N/m];  positive : without what is negative
    """

    force_n: float
    line: Floats
    length_m: float
    stored_j: float
    spent_j: float
    sink_m: float
    dent_m: float
    tangent: Floats
    positive: Floats


def pushed(between: Floats, length_m: float, stiffness: float) -> Pushed:
    """Return what a ram of that length does between ends that do not dent."""
    now = float(np.linalg.norm(between))
    line = between / now
    force = stiffness * max(length_m - now, 0.0)
    along = np.outer(line, line)
    positive = stiffness * along if force > 0.0 else np.zeros((3, 3))
    tangent = positive - force / now * (np.eye(3) - along)
    return Pushed(force, line, now, 0.5 * force**2 / stiffness, 0.0, 0.0, 0.0, tangent, positive)


def sunk(
    between: Floats, length_m: float, stiffness: float, wall: Wall, normal: Floats, dent_m: float
) -> Pushed:
    """Return what a ram does whose foot stands on a wall with a dent ``dent_m`` deep."""
    own = wall.stiffness_n_per_m
    sink, dent = dent_m, dent_m
    # the ram's force along the wall's normal falls and the wall's grows with the depth: one crossing
    elastic = _crossing(between, length_m, stiffness, normal, dent_m, lambda s: (own * (s - dent_m), own))
    if own * (elastic - dent_m) <= wall.force_n(dent_m):
        sink = elastic
        slope = own
    else:

        def plastic(depth: float) -> tuple[float, float]:
            grown = _dent_at(wall, depth, dent_m)
            rate = wall.slope_n_per_m(grown)
            return own * (depth - grown), rate * own / (rate + own)

        sink = _crossing(between, length_m, stiffness, normal, dent_m, plastic)
        dent = _dent_at(wall, sink, dent_m)
        rate = wall.slope_n_per_m(dent)
        slope = rate * own / (rate + own)
    ram = pushed(between + sink * normal, length_m, stiffness)
    return Pushed(
        ram.force_n,
        ram.line,
        ram.length_m,
        ram.stored_j + 0.5 * own * (sink - dent) ** 2,
        wall.work_j(dent) - wall.work_j(dent_m),
        sink,
        dent,
        _condensed(ram.tangent, normal, slope),
        _condensed(ram.positive, normal, slope),
    )


def _condensed(tangent: Floats, normal: Floats, slope: float) -> Floats:
    """Return a second derivative with the foot's depth taken out."""
    row = tangent @ normal
    whole = float(normal @ row) + slope
    out: Floats = tangent - np.outer(row, row) / whole if whole > 0.0 else tangent
    return out


def _dent_at(wall: Wall, depth_m: float, least_m: float) -> float:
    """Return the dent whose wall force balances its elastic part at a depth, not below ``least_m``."""
    own, dent = wall.stiffness_n_per_m, least_m
    for _ in range(INNER_STEPS):
        rest = own * (depth_m - dent) - wall.force_n(dent)
        if rest <= 0.0 and dent == least_m:
            break
        step = rest / (own + wall.slope_n_per_m(dent))
        dent = max(dent + step, least_m)
        if abs(step) <= INNER_TOLERANCE:
            break
    return dent


def _crossing(
    between: Floats,
    length_m: float,
    stiffness: float,
    normal: Floats,
    least_m: float,
    wall: Callable[[float], tuple[float, float]],
) -> float:
    """Return the depth at which the ram's push along the wall's normal meets the wall's force."""
    low, high = least_m, least_m + length_m
    depth = least_m
    for _ in range(INNER_STEPS):
        ram = pushed(between + depth * normal, length_m, stiffness)
        held, slope = wall(depth)
        over = ram.force_n * float(ram.line @ normal) - held
        if over > 0.0:
            low = depth
        else:
            high = depth
        rate = float(normal @ ram.tangent @ normal) + slope
        new = depth + over / rate if rate > 0.0 else np.inf
        if not low <= new <= high:
            new = 0.5 * (low + high)
        if abs(new - depth) <= INNER_TOLERANCE * length_m:
            return new
        depth = new
    return depth
