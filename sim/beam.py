"""Beams of positions only: the reinforcement bar, the belt strips and the window frame.

A beam is a chain of nodes.  Each link stretches like a bar, E A e^2 / 2 per length with the same strain
measure as a sheet's edge.  Each inner node bends by its curvature binormal

    kb = 2 e x f / (|e||f| + e.f),     |kb| = 2 tan(angle / 2),

which lies across e and is read in two directions that turn with the metal: towards a reference node beside
the chain, and square to that.  The energy is E I |k - k0 - kp|^2 / (2 l) on these two components; kp is the
plastic turn, which flows when the moment passes the plastic moment Mp (return along the moment).  Twist costs
nothing but what turns a bent chain against its reference.

Source: curvature binormal [bergou-2008] (from memory); Mp = Zp sy [tube table of the verification tests].
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NO_REFERENCE = (0.36, 0.48, 0.80)  # direction where a chain stands alone (a straight one does not feel it)
HARDENING = 0.01  # of the elastic bending stiffness, assumed: keeps a plastic bend unique


@kernel
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


@kernel
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


@inlined
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


@inlined
def _frame(v: Floats, across: Floats, third: Floats) -> tuple[float, float, float]:
    """Fill the two directions across the first segment; return |e|, the reach across and along it.

    v : shape (9,), segments e and f and the vector d to the reference node;  across points towards d
    """
    length = np.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2])
    along = (v[6] * v[0] + v[7] * v[1] + v[8] * v[2]) / length
    reach = 0.0
    for i in range(3):
        across[i] = v[6 + i] - along * v[i] / length
        reach += across[i] * across[i]
    reach = np.sqrt(reach)
    for i in range(3):
        across[i] /= reach
    for i in range(3):
        j, k = (i + 1) % 3, (i + 2) % 3
        third[i] = (v[j] * across[k] - v[k] * across[j]) / length
    return length, reach, along


@kernel
def bend_curvature(v: Floats, kappa: Floats) -> None:
    """Fill the curvature binormal's two components in the frame of the reference node, shape (2,) [rad]."""
    kb, across, third = np.empty(3), np.empty(3), np.empty(3)
    by_e, by_f = np.empty((3, 3)), np.empty((3, 3))
    binormal(v[:3], v[3:6], kb, by_e, by_f)
    _frame(v, across, third)
    kappa[0] = kb[0] * across[0] + kb[1] * across[1] + kb[2] * across[2]
    kappa[1] = kb[0] * third[0] + kb[1] * third[1] + kb[2] * third[2]


@inlined
def _bend_gradient(
    v: Floats, rest: Floats, turn_old: Floats, bending: float, limit: float, turn: Floats, moment: Floats,
    room: Floats, gradient: Floats,
) -> tuple[float, float]:  # fmt: skip
    """Fill the gradient by (e, f, d), shape (9,); return stored and dissipated energy of one bend.

    ``room`` shape (9, 3) is working room.
    """
    kb, across, third, by_e, by_f = room[0], room[1], room[2], room[3:6], room[6:9]
    binormal(v[:3], v[3:6], kb, by_e, by_f)
    length, reach, along = _frame(v, across, third)
    k0 = kb[0] * across[0] + kb[1] * across[1] + kb[2] * across[2]
    k1 = kb[0] * third[0] + kb[1] * third[1] + kb[2] * third[2]
    turn[0], turn[1] = turn_old[0], turn_old[1]
    moment[0] = bending * (k0 - rest[0] - turn_old[0])
    moment[1] = bending * (k1 - rest[1] - turn_old[1])
    size = np.sqrt(moment[0] * moment[0] + moment[1] * moment[1])
    dissipated = 0.0
    if size > limit:
        hardening = HARDENING * bending
        flow = (size - limit) / (bending + hardening)
        for i in range(2):
            unit = moment[i] / size
            turn[i] += flow * unit
            moment[i] -= bending * flow * unit
        dissipated = limit * flow + 0.5 * hardening * flow * flow
        size -= bending * flow
    # the frame turns about e by w = [third.dd - (d.e / |e|) third.de / |e|] / reach
    spin = (moment[0] * k1 - moment[1] * k0) / reach
    for j in range(3):
        gradient[j] = -spin * along / length * third[j]
        gradient[3 + j] = 0.0
        gradient[6 + j] = spin * third[j]
        for i in range(3):
            pull = moment[0] * across[i] + moment[1] * third[i]
            gradient[j] += pull * by_e[i, j]
            gradient[3 + j] += pull * by_f[i, j]
    return 0.5 * size * size / bending, dissipated


@inlined
def bend_vectors(points: Floats, bend: Ints, v: Floats) -> None:
    """Fill segments e, f and reference vector d of one bend (a, b, c, r), shape (9,) [m]."""
    for i in range(3):
        v[i] = points[bend[1], i] - points[bend[0], i]
        v[3 + i] = points[bend[2], i] - points[bend[1], i]
        v[6 + i] = points[bend[3], i] - points[bend[1], i] if bend[3] >= 0 else NO_REFERENCE[i]


@kernel
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
    """Evaluate all bends (a, b, c, r).

    Parameters
    ----------
    bends : shape (k, 4); r is the node whose direction the curvature is read against, -1 for a fixed one
    rest, turn_old : shape (k, 2), rest curvature and committed plastic turn [rad]
    bending : shape (k,), E I / l [N m]; limit : shape (k,), plastic moment [N m]
    turn, moment, stored, dissipated : filled
    forces : added to
    """
    room = np.empty((9, 3))
    gradient = np.empty(9)
    v = np.empty(9)
    for k in range(bends.shape[0]):
        bend_vectors(points, bends[k], v)
        stored[k], dissipated[k] = _bend_gradient(
            v, rest[k], turn_old[k], bending[k], limit[k], turn[k], moment[k], room, gradient
        )
        for i in range(3):
            forces[bends[k, 0], i] -= gradient[i]
            forces[bends[k, 1], i] += gradient[i] - gradient[3 + i]
            forces[bends[k, 2], i] += gradient[3 + i]
            if bends[k, 3] >= 0:
                forces[bends[k, 1], i] -= gradient[6 + i]
                forces[bends[k, 3], i] += gradient[6 + i]


@kernel
def bend_stiffness(
    points: Floats,
    bends: Ints,
    rest: Floats,
    bending: Floats,
    limit: Floats,
    turn_old: Floats,
    stiffness: Floats,
) -> None:
    """Fill the stiffness (k, 12, 12) of all bends: central differences of the exact gradient.

    A chain has few bends, and the plastic return is in the gradient already.
    """
    room = np.empty((9, 3))
    plus, minus, v = np.empty(9), np.empty(9), np.empty(9)
    moment, turn = np.empty(2), np.empty(2)
    slope = np.empty((9, 9))
    # e = b - a, f = c - b, d = r - b
    share = np.array([[-1.0, 1.0, 0.0, 0.0], [0.0, -1.0, 1.0, 0.0], [0.0, -1.0, 0.0, 1.0]])
    for k in range(bends.shape[0]):
        bend_vectors(points, bends[k], v)
        step = 1.0e-6 * np.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2])
        free = 9 if bends[k, 3] >= 0 else 6
        slope[:, :] = 0.0
        for j in range(free):
            keep = v[j]
            v[j] = keep + step
            _bend_gradient(v, rest[k], turn_old[k], bending[k], limit[k], turn, moment, room, plus)
            v[j] = keep - step
            _bend_gradient(v, rest[k], turn_old[k], bending[k], limit[k], turn, moment, room, minus)
            v[j] = keep
            for i in range(free):
                slope[i, j] = (plus[i] - minus[i]) / (2.0 * step)
        stiffness[k] = 0.0
        for p in range(4):
            for q in range(4):
                for m in range(3):
                    for n in range(3):
                        weight = 0.5 * share[m, p] * share[n, q]
                        if weight == 0.0:
                            continue
                        for i in range(3):
                            for j in range(3):
                                value = slope[3 * m + i, 3 * n + j] + slope[3 * n + j, 3 * m + i]
                                stiffness[k, 3 * p + i, 3 * q + j] += weight * value
