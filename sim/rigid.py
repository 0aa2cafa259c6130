"""Pressing a rigid body on the sheets: signed distance, penalty pressure, force and stiffness.

A barrier is a core and a rounding: all points within ``rounding`` of a solid upright cylinder (radius, half
length; a pole is one of radius nothing, so its ends are half balls) or of a box (three half lengths).  Its
signed distance phi is smooth just inside, where metal that is pressed stands.

The metal is read at points on its triangles, not at its nodes, so that a coarse lattice does not let an edge
of the body sink between nodes.  With x = sum(w x_node) and a share A of the sheet's area at rest

    energy = k A <-phi(x - c)>^2 / 2,   force on the metal = k A <-phi> grad(phi),
    second derivative = k A (grad phi grad phi^T + phi d2phi)  where phi < 0.

The energy hangs on where metal and body are and on nothing else: pressing never pulls, and metal that
slides off and comes back makes no energy, so this contact needs no memory.  There is no friction in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.law import Into
from sim.state import Evaluation, Load, State
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

PRESSURE_N_PER_M3 = 1.0e10  # penalty: 0.1 mm deep under 1 N/mm^2; ten times more or less moved no result
SPLIT = 3  # a triangle is read in the middles of SPLIT^2 equal ones


def reading_points(split: int = SPLIT) -> Floats:
    """Return the barycentric weights of the middles of split^2 equal triangles, shape (split^2, 3)."""
    out = []
    for i in range(split):
        for j in range(split - i):
            out.append((i + 1 / 3, j + 1 / 3))
            if j < split - i - 1:
                out.append((i + 2 / 3, j + 2 / 3))
    uv = np.array(out) / split
    return np.column_stack([1.0 - uv.sum(axis=1), uv])


@dataclass(frozen=True)
class Barrier:
    """A rigid body that moves along a line and presses on some triangles of a network.

    core : shape (3,), half lengths [m]: across the line, along it, upright; of a round core the first is
        its radius and the second is not used
    rounding_m : distance from core to surface [m];  is_box : a box, else round
    centre : shape (3,), where its middle stands at travel nothing [m];  direction : level unit vector (3,)
    triangles : rows of the structure's triangles it can touch
    """

    core: Floats
    rounding_m: float
    is_box: bool
    centre: Floats
    direction: Floats
    triangles: Ints
    pressure_n_per_m3: float = PRESSURE_N_PER_M3

    @property
    def frame(self) -> Floats:
        """Return its own axes as rows: across, along the line, up; shape (3, 3)."""
        along = self.direction
        across = np.array([along[1], -along[0], 0.0])
        return np.stack([across, along, np.array([0.0, 0.0, 1.0])])

    def at(self, travel_m: float) -> Floats:
        """Return where its middle stands, shape (3,) [m]."""
        centre: Floats = self.centre + travel_m * self.direction
        return centre

    def drawn_back(self, distance_m: float) -> Barrier:
        """Return the barrier started further back along its line."""
        return replace(self, centre=self.at(-distance_m))

    def distance(self, points: Floats, travel_m: float) -> Floats:
        """Return the signed distance of points from its surface, shape (k,) [m]; negative inside."""
        return distances(np.ascontiguousarray(points), *self.placed(travel_m))

    def placed(self, travel_m: float) -> tuple[Floats, float, bool, Floats, Floats]:
        """Return core, rounding, kind, axes and middle at a travel, as the compiled laws take them."""
        return self.core, self.rounding_m, self.is_box, self.frame, self.at(travel_m)


class Pressing:
    """A barrier on a network's triangles: a `sim.law.Law` that remembers nothing and spends nothing.

    The barrier's travel is the ``index``-th of the load; its force along the line goes to that place of
    ``ev.drive_force``.  Only the positive part of its stiffness is added: what is left out is the depth
    over the body's radius, a hundredth.
    """

    name, line = "barrier", ""
    means: Sequence[Ints] = ()

    def __init__(self, barrier: Barrier, structure: Structure, area_m2: Floats, index: int) -> None:
        self.barrier, self._index = barrier, index
        self._corners = np.ascontiguousarray(structure.triangles[barrier.triangles])
        self._weights = reading_points()
        self._share = barrier.pressure_n_per_m3 * area_m2[barrier.triangles] / len(self._weights)
        count = len(self._corners)
        self._active, self._room = np.zeros(count, dtype=np.bool_), np.zeros((count, 9, 9))

    def places(self, points: Floats) -> Floats:
        """Return the points at which the metal is read, shape (triangles, readings, 3) [m]."""
        out: Floats = np.einsum("qi,kij->kqj", self._weights, points[self._corners])
        return out

    def forces(self, points: Floats, _: State, load: Load, ev: Evaluation) -> None:
        """Add what the body pushes with; fill ``ev.read["barrier push"]`` (triangles, readings) [N], >= 0."""
        push, total = np.zeros((len(self._corners), len(self._weights))), np.zeros(3)
        ev.stored[self.name] = press_forces(
            points,
            self._corners,
            self._weights,
            self._share,
            *self.barrier.placed(load.travel_m[self._index]),
            push,
            ev.forces,
            total,
        )
        ev.drive_force[self._index] = total @ self.barrier.direction
        ev.read["barrier push"] = push

    def stiffness(self, ev: Evaluation, _: State, load: Load, into: Into) -> None:
        """Add the triangles that are pressed."""
        press_stiffness(
            ev.points,
            self._corners,
            self._weights,
            self._share,
            *self.barrier.placed(load.travel_m[self._index]),
            True,
            self._active,
            self._room,
        )
        on = self._active
        into.triangles(self.barrier.triangles[on], self._corners[on], self._room[on])

    def commit(self, state: State, _: Evaluation) -> State:
        """Return the state as it is."""
        return state


def first_touch(barrier: Barrier, points: Floats, triangles: Ints) -> float:
    """Return the travel at which a barrier first touches the metal [m]; inf when it misses it.

    Found by steps no longer than the distance left.

    Parameters
    ----------
    points : shape (n, 3) [m];  triangles : shape (m, 3), of the whole structure
    """
    corners = points[triangles[barrier.triangles]]
    places = np.einsum("qi,kij->kqj", reading_points(), corners).reshape(-1, 3)
    travel, reach = 0.0, float(np.abs(places - barrier.centre).max()) * 4.0 + 1.0
    for _ in range(10_000):
        gap = float(barrier.distance(places, travel).min())
        if gap <= 1.0e-9:
            return travel
        travel += gap
        if travel > reach:
            return np.inf
    return travel


@kernel
def signed_distance(
    own: Floats, core: Floats, rounding: float, is_box: bool, gradient: Floats, hessian: Floats
) -> float:
    """Return the signed distance at a point in the body's own axes; fill gradient (3,) and Hessian (3, 3).

    Outside the core: |p - nearest point of the core| - rounding, whose second derivative is the projector
    across the gradient over the distance, in the directions the nearest point does not follow.
    """
    if is_box:
        return _from_box(own, core, rounding, gradient, hessian)
    return _from_round(own, core, rounding, gradient, hessian)


@kernel
def _from_box(own: Floats, core: Floats, rounding: float, gradient: Floats, hessian: Floats) -> float:
    over = np.zeros(3)
    deepest, axis = -np.inf, 0
    for i in range(3):
        past = abs(own[i]) - core[i]
        if past > deepest:
            deepest, axis = past, i
        over[i] = np.sign(own[i]) * max(past, 0.0)
    gradient[:] = 0.0
    hessian[:] = 0.0
    if deepest <= 0.0:
        gradient[axis] = 1.0 if own[axis] >= 0.0 else -1.0
        return float(deepest - rounding)
    size = np.sqrt(over[0] ** 2 + over[1] ** 2 + over[2] ** 2)
    for i in range(3):
        gradient[i] = over[i] / size
    for i in range(3):
        for j in range(3):
            if over[i] != 0.0 and over[j] != 0.0:
                hessian[i, j] = ((1.0 if i == j else 0.0) - gradient[i] * gradient[j]) / size
    return float(size - rounding)


@kernel
def _from_round(own: Floats, core: Floats, rounding: float, gradient: Floats, hessian: Floats) -> float:
    x, y, z = own[0], own[1], own[2]
    rho = np.sqrt(x * x + y * y)
    ex, ey = (x / rho, y / rho) if rho > 0.0 else (0.0, 1.0)
    side, end = rho - core[0], abs(z) - core[2]
    up = 1.0 if z >= 0.0 else -1.0
    if side <= 0.0 and end <= 0.0:  # inside the core: the nearer of side and end
        size = max(side, end)
        out, rise = (1.0, 0.0) if side > end else (0.0, up)
    else:
        side, end = max(side, 0.0), max(end, 0.0)
        size = np.sqrt(side * side + end * end)
        out, rise = side / size, up * end / size
    gradient[0], gradient[1], gradient[2] = out * ex, out * ey, rise
    # round the axis the gradient turns by out / rho; on the rounding it turns in its own upright plane too
    turn = out / rho if rho > 0.0 else 0.0
    roll = 1.0 / size if side > 0.0 and end > 0.0 else 0.0
    ax, ay, az = rise * ex, rise * ey, -out
    hessian[0, 0] = turn * ey * ey + roll * ax * ax
    hessian[0, 1] = -turn * ex * ey + roll * ax * ay
    hessian[1, 1] = turn * ex * ex + roll * ay * ay
    hessian[0, 2], hessian[1, 2], hessian[2, 2] = roll * ax * az, roll * ay * az, roll * az * az
    hessian[1, 0], hessian[2, 0], hessian[2, 1] = hessian[0, 1], hessian[0, 2], hessian[1, 2]
    return float(size - rounding)


@kernel
def _own_point(
    points: Floats, corners: Ints, weight: Floats, frame: Floats, centre: Floats, own: Floats
) -> None:
    """Fill a reading point in the body's own axes."""
    own[:] = 0.0
    for j in range(3):
        value = -centre[j]
        for i in range(3):
            value += weight[i] * points[corners[i], j]
        for a in range(3):
            own[a] += frame[a, j] * value


@kernel
def distances(
    points: Floats, core: Floats, rounding: float, is_box: bool, frame: Floats, centre: Floats
) -> Floats:
    """Return signed distances of points, shape (k,) [m]."""
    out = np.empty(points.shape[0])
    gradient, hessian = np.empty(3), np.empty((3, 3))
    for k in range(points.shape[0]):
        out[k] = signed_distance(frame @ (points[k] - centre), core, rounding, is_box, gradient, hessian)
    return out


@kernel
def press_forces(
    points: Floats,
    corners: Ints,
    weights: Floats,
    share: Floats,
    core: Floats,
    rounding: float,
    is_box: bool,
    frame: Floats,
    centre: Floats,
    push: Floats,
    forces: Floats,
    total: Floats,
) -> float:
    """Return the energy [J]; fill ``push`` (k, q) [N], add to ``forces`` (n, 3) and ``total`` (3,) [N].

    ``total`` is the force of the body on the metal, ``forces`` the energy's gradient at the nodes.
    """
    own, gradient, hessian = np.empty(3), np.empty(3), np.empty((3, 3))
    energy = 0.0
    for k in range(corners.shape[0]):
        for q in range(weights.shape[0]):
            push[k, q] = 0.0
            _own_point(points, corners[k], weights[q], frame, centre, own)
            phi = signed_distance(own, core, rounding, is_box, gradient, hessian)
            if phi >= 0.0:
                continue
            push[k, q] = -share[k] * phi
            energy += 0.5 * share[k] * phi * phi
            for j in range(3):
                along = 0.0
                for a in range(3):
                    along += frame[a, j] * gradient[a]
                total[j] += push[k, q] * along
                for i in range(3):
                    forces[corners[k, i], j] -= weights[q, i] * push[k, q] * along
    return energy


@kernel
def press_stiffness(
    points: Floats,
    corners: Ints,
    weights: Floats,
    share: Floats,
    core: Floats,
    rounding: float,
    is_box: bool,
    frame: Floats,
    centre: Floats,
    positive: bool,
    active: NDArray[np.bool_],
    stiffness: Floats,
) -> None:
    """Fill which triangles are pressed (k,) and their second derivatives (k, 9, 9)."""
    own, gradient, hessian = np.empty(3), np.empty(3), np.empty((3, 3))
    turned = np.ascontiguousarray(frame.T)
    for k in range(corners.shape[0]):
        active[k] = False
        for q in range(weights.shape[0]):
            _own_point(points, corners[k], weights[q], frame, centre, own)
            phi = signed_distance(own, core, rounding, is_box, gradient, hessian)
            if phi >= 0.0:
                continue
            if not active[k]:
                active[k] = True
                stiffness[k] = 0.0
            n = turned @ gradient
            curve = turned @ hessian @ frame
            for i in range(3):
                for j in range(3):
                    part = n[i] * n[j]
                    if not positive:
                        part += phi * curve[i, j]
                    for a in range(3):
                        for b in range(3):
                            stiffness[k, 3 * a + i, 3 * b + j] += (
                                share[k] * weights[q, a] * weights[q, b] * part
                            )
