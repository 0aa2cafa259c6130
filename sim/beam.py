"""Beams of positions only: the reinforcement bar, the belt strips and the window frame.

A beam is a chain of nodes.  Each link stretches like a bar, E A e^2 / 2 per length with the same strain
measure as a sheet's edge.  Each inner node bends by its curvature binormal

    kb = 2 e x f / (|e||f| + e.f),     |kb| = 2 tan(angle / 2),

with energy E I |kb - kb0 - kp|^2 / (2 l); kp is the plastic turn, which flows when the moment passes the
plastic moment Mp (return along the moment).  Twist costs nothing.

Source: curvature binormal [bergou-2008] (from memory); Mp = Zp sy [tube table of the verification tests].
"""

from __future__ import annotations

import numpy as np
from numba import njit
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

HARDENING = 0.01  # of the elastic bending stiffness, assumed: keeps a plastic bend unique


@njit(cache=True)
def link_forces(
    points: Floats,
    links: Ints,
    rest_length: Floats,
    axial: Floats,
    stored: Floats,
    tension: Floats,
    forces: Floats,
) -> None:
    """Evaluate all links: energy E A L e^2 / 2, e = (l^2 - L^2) / (2 L^2).

    ``axial`` is E A [N]; ``stored`` [J] and ``tension`` [N] are filled (k,), ``forces`` (n, 3) is added to.
    """
    d = np.empty(3)
    for k in range(links.shape[0]):
        a, b = links[k, 0], links[k, 1]
        l2 = 0.0
        for i in range(3):
            d[i] = points[b, i] - points[a, i]
            l2 += d[i] * d[i]
        length = rest_length[k]
        e = 0.5 * (l2 / (length * length) - 1.0)
        n = axial[k] * e
        tension[k] = n
        stored[k] = 0.5 * n * e * length
        for i in range(3):
            forces[b, i] += n / length * d[i]
            forces[a, i] -= n / length * d[i]


@njit(cache=True)
def link_stiffness(
    points: Floats,
    links: Ints,
    rest_length: Floats,
    axial: Floats,
    tension: Floats,
    positive: bool,
    stiffness: Floats,
) -> None:
    """Fill the stiffness (k, 6, 6) of all links; ``positive`` leaves out what compression takes away."""
    for k in range(links.shape[0]):
        a, b = links[k, 0], links[k, 1]
        length = rest_length[k]
        s = tension[k] / length
        kept = max(s, 0.0) if positive else s
        for i in range(3):
            for j in range(3):
                value = axial[k] / length**3 * (points[b, i] - points[a, i]) * (points[b, j] - points[a, j])
                if i == j:
                    value += kept
                stiffness[k, i, j] = value
                stiffness[k, 3 + i, 3 + j] = value
                stiffness[k, i, 3 + j] = -value
                stiffness[k, 3 + i, j] = -value


@njit(cache=True)
def binormal(e: Floats, f: Floats, out: Floats, by_e: Floats, by_f: Floats) -> None:
    """Fill the curvature binormal of two segments and its derivatives (3, 3) by each."""
    le = np.sqrt(e[0] ** 2 + e[1] ** 2 + e[2] ** 2)
    lf = np.sqrt(f[0] ** 2 + f[1] ** 2 + f[2] ** 2)
    chi = le * lf + e[0] * f[0] + e[1] * f[1] + e[2] * f[2]
    out[0] = 2.0 * (e[1] * f[2] - e[2] * f[1]) / chi
    out[1] = 2.0 * (e[2] * f[0] - e[0] * f[2]) / chi
    out[2] = 2.0 * (e[0] * f[1] - e[1] * f[0]) / chi
    for i in range(3):
        for j in range(3):
            by_e[i, j] = -out[i] * (lf * e[j] / le + f[j]) / chi
            by_f[i, j] = -out[i] * (le * f[j] / lf + e[j]) / chi
    c = 2.0 / chi
    # d(e x f) = de x f + e x df
    by_e[0, 1] += c * f[2]
    by_e[0, 2] -= c * f[1]
    by_e[1, 0] -= c * f[2]
    by_e[1, 2] += c * f[0]
    by_e[2, 0] += c * f[1]
    by_e[2, 1] -= c * f[0]
    by_f[0, 1] -= c * e[2]
    by_f[0, 2] += c * e[1]
    by_f[1, 0] += c * e[2]
    by_f[1, 2] -= c * e[0]
    by_f[2, 0] -= c * e[1]
    by_f[2, 1] += c * e[0]


@njit(cache=True)
def _bend_gradient(
    e: Floats, f: Floats, rest: Floats, turn_old: Floats, bending: float, limit: float, hardening: float,
    turn: Floats, moment: Floats, by_e: Floats, by_f: Floats, gradient: Floats,
) -> tuple[float, float]:  # fmt: skip
    """Fill the gradient by (e, f), shape (6,); return stored and dissipated energy of one bend."""
    binormal(e, f, moment, by_e, by_f)
    size = 0.0
    for i in range(3):
        turn[i] = turn_old[i]
        moment[i] = bending * (moment[i] - rest[i] - turn_old[i])
        size += moment[i] * moment[i]
    size = np.sqrt(size)
    dissipated = 0.0
    if size > limit:
        flow = (size - limit) / (bending + hardening)
        for i in range(3):
            unit = moment[i] / size
            turn[i] += flow * unit
            moment[i] -= bending * flow * unit
        dissipated = limit * flow + 0.5 * hardening * flow * flow
        size -= bending * flow
    for j in range(3):
        gradient[j] = 0.0
        gradient[3 + j] = 0.0
        for i in range(3):
            gradient[j] += moment[i] * by_e[i, j]
            gradient[3 + j] += moment[i] * by_f[i, j]
    return 0.5 * size * size / bending, dissipated


@njit(cache=True)
def _segments(points: Floats, bend: Ints, v: Floats) -> None:
    for i in range(3):
        v[i] = points[bend[1], i] - points[bend[0], i]
        v[3 + i] = points[bend[2], i] - points[bend[1], i]


@njit(cache=True)
def bend_forces(
    points: Floats,
    bends: Ints,
    rest: Floats,
    bending: Floats,
    limit: Floats,
    turn_old: Floats,
    turn: Floats,
    moment: Floats,
    stored: Floats,
    dissipated: Floats,
    forces: Floats,
) -> None:
    """Evaluate all bends (a, b, c).

    Parameters
    ----------
    rest, turn_old : shape (k, 3), rest binormal and committed plastic turn [rad]
    bending : shape (k,), E I / l [N m]; limit : shape (k,), plastic moment [N m]
    turn, moment, stored, dissipated : filled
    forces : added to
    """
    by_e = np.empty((3, 3))
    by_f = np.empty((3, 3))
    gradient = np.empty(6)
    v = np.empty(6)
    for k in range(bends.shape[0]):
        _segments(points, bends[k], v)
        stored[k], dissipated[k] = _bend_gradient(
            v[:3], v[3:], rest[k], turn_old[k], bending[k], limit[k], HARDENING * bending[k], turn[k],
            moment[k], by_e, by_f, gradient,
        )  # fmt: skip
        for i in range(3):
            forces[bends[k, 0], i] -= gradient[i]
            forces[bends[k, 1], i] += gradient[i] - gradient[3 + i]
            forces[bends[k, 2], i] += gradient[3 + i]


@njit(cache=True)
def bend_stiffness(
    points: Floats,
    bends: Ints,
    rest: Floats,
    bending: Floats,
    limit: Floats,
    turn_old: Floats,
    stiffness: Floats,
) -> None:
    """Fill the stiffness (k, 9, 9) of all bends: central differences of the exact gradient.

    A chain has few bends, and the plastic return is in the gradient already.
    """
    by_e = np.empty((3, 3))
    by_f = np.empty((3, 3))
    plus = np.empty(6)
    minus = np.empty(6)
    moment = np.empty(3)
    turn = np.empty(3)
    v = np.empty(6)
    h6 = np.empty((6, 6))
    for k in range(bends.shape[0]):
        _segments(points, bends[k], v)
        hardening = HARDENING * bending[k]
        step = 1.0e-6 * np.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2])
        for j in range(6):
            keep = v[j]
            v[j] = keep + step
            _bend_gradient(
                v[:3],
                v[3:],
                rest[k],
                turn_old[k],
                bending[k],
                limit[k],
                hardening,
                turn,
                moment,
                by_e,
                by_f,
                plus,
            )
            v[j] = keep - step
            _bend_gradient(
                v[:3],
                v[3:],
                rest[k],
                turn_old[k],
                bending[k],
                limit[k],
                hardening,
                turn,
                moment,
                by_e,
                by_f,
                minus,
            )
            v[j] = keep
            for i in range(6):
                h6[i, j] = (plus[i] - minus[i]) / (2.0 * step)
        for i in range(3):
            for j in range(3):
                ee = 0.5 * (h6[i, j] + h6[j, i])
                ff = 0.5 * (h6[3 + i, 3 + j] + h6[3 + j, 3 + i])
                ef = 0.5 * (h6[i, 3 + j] + h6[3 + j, i])
                fe = 0.5 * (h6[3 + i, j] + h6[j, 3 + i])
                stiffness[k, i, j] = ee
                stiffness[k, i, 3 + j] = ef - ee
                stiffness[k, i, 6 + j] = -ef
                stiffness[k, 3 + i, j] = fe - ee
                stiffness[k, 3 + i, 3 + j] = ee - ef - fe + ff
                stiffness[k, 3 + i, 6 + j] = ef - ff
                stiffness[k, 6 + i, j] = -fe
                stiffness[k, 6 + i, 3 + j] = fe - ff
                stiffness[k, 6 + i, 6 + j] = ff
