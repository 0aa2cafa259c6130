"""Bonds: a line law for seams, welds and pads, and the pressure of sheets that touch.

Two points that coincide (or touch) at rest are r = x_upper - x_lower apart, n is the lower sheet's
normal there.  Opening is d_n = r.n, slip d_t^2 = r.r - d_n^2, and the effective opening

    d^2 = <d_n - offset>^2 + rho d_t^2,      rho = (shear strength / peel strength)^2

drives one trapezoid of force against opening, so that both peel and slip end at the same energy per
metre and the strengths meet on the ellipse (F_n / F_n0)^2 + (F_s / F_s0)^2 = 1.  What is kept, whatever
the lattice, is the energy per metre of seam: the area of the trapezoid times the tributary length.
Closing past `offset` meets a stiff pressure that never pulls.

Source: trapezoid form, energy kept on coarse meshes [turon-2007]; ellipse for welds, common form
(from memory).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel
from sim.small import cross

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

# columns of a bond's law row
STIFFNESS, RISE, PLATEAU, END, RHO, PRESSURE, OFFSET, LENGTH = range(8)


def bond_law(
    *,
    strength: float,
    energy: float,
    shear_ratio: float,
    rise_m: float,
    plateau_share: float = 0.05,
    pressure: float,
    offset_m: float = 0.0,
    length_m: float = 1.0,
) -> Floats:
    """Return the law row of one bond.

    Parameters
    ----------
    strength : peel strength, [N/m] for a line (times ``length_m``) or [N] for a weld with length 1
    energy : area of the trapezoid, [J/m] or [J]
    shear_ratio : shear strength over peel strength, > 0
    rise_m : opening at which the strength is reached, [m]
    plateau_share : end of the plateau as a share of the way from ``rise_m`` to the end opening
    pressure : stiffness against closing, [N/m per m] or [N/m]

    Raises
    ------
    ValueError
        When the energy is smaller than the elastic rise alone, 0.5 strength rise_m.
    """
    # area = strength (end + plateau - rise) / 2 with plateau = rise + share (end - rise)
    end = (2.0 * energy / strength + plateau_share * rise_m) / (1.0 + plateau_share)
    if end <= rise_m:
        raise ValueError("bond energy too small for its strength: lower the strength or the rise")
    plateau = rise_m + plateau_share * (end - rise_m)
    return np.array(
        [strength / rise_m, rise_m, plateau, end, shear_ratio**2, pressure, offset_m, length_m], dtype=float
    )


def touch_law(*, pressure: float, offset_m: float) -> Floats:
    """Return the law row of two sheets that only press on each other, never nearer than ``offset_m``."""
    return np.array([0.0, 1.0, 2.0, 3.0, 0.0, pressure, offset_m, 1.0])


@inlined
def envelope(opening: float, law: Floats) -> tuple[float, float, float]:
    """Return energy, force and slope of the trapezoid, per metre, at a first-time ``opening``."""
    k, d1, d2, d3 = law[0], law[1], law[2], law[3]
    top = k * d1
    if opening <= d1:
        return 0.5 * k * opening * opening, k * opening, k
    if opening <= d2:
        return 0.5 * top * d1 + top * (opening - d1), top, 0.0
    full = 0.5 * top * (d3 + d2 - d1)
    if opening < d3:
        left = (d3 - opening) / (d3 - d2)
        return full - 0.5 * top * left * (d3 - opening), top * left, -top / (d3 - d2)
    return full, 0.0, 0.0


@inlined
def bond_response(opening: float, worst: float, law: Floats) -> tuple[float, float, float, float]:
    """Return stored and dissipated energy, force and slope, per metre, with the worst opening so far."""
    if opening > worst:
        total, force, slope = envelope(opening, law)
        stored = 0.5 * force * opening
        return stored, total - stored, force, slope
    total, force, _ = envelope(worst, law)
    secant = law[0] if worst <= law[1] else force / worst
    stored = 0.5 * secant * opening * opening
    return stored, total - 0.5 * secant * worst * worst, secant * opening, secant


@inlined
def _dot3(a: Floats, b: Floats) -> float:
    return float(a[0] * b[0] + a[1] * b[1] + a[2] * b[2])


@inlined
def separation(variables: Floats, plane: bool, gradient: Floats, room: Floats) -> float:
    """Return the signed normal distance d_n = r.n; fill its gradient by (r, p, q).

    ``plane``: n = p x q / |p x q| (a triangle's normal); else n = p / |p| (a wall's depth line).

    Parameters
    ----------
    variables : shape (3, 3), rows r, p, q [m]
    gradient : filled, shape (3, 3);  room : shape (3, 3) of working room, its first row is n afterwards
    """
    r, p, q = variables[0], variables[1], variables[2]
    normal = room[0]
    if plane:
        cross(p, q, normal)
    else:
        normal[:] = p
    size = np.sqrt(_dot3(normal, normal))
    dn = _dot3(r, normal) / size
    for i in range(3):
        normal[i] /= size
        gradient[0, i] = normal[i]
    if not plane:
        for i in range(3):
            gradient[1, i] = (r[i] - dn * normal[i]) / size
            gradient[2, i] = 0.0
        return float(dn)
    # d_n = V / J with V = r.(p x q) and J = |p x q|: dp = q x (r - dn n) / J, dq = (r - dn n) x p / J
    slip = room[1]
    for i in range(3):
        slip[i] = r[i] - dn * normal[i]
    cross(q, slip, gradient[1])
    cross(slip, p, gradient[2])
    for i in range(3):
        gradient[1, i] /= size
        gradient[2, i] /= size
    return float(dn)


@inlined
def _wall_curvature(p: Floats, dn: float, gradient: Floats, hessian: Floats) -> None:
    """Fill the second derivatives of d_n = r.p / |p|, shape (9, 9)."""
    size = np.sqrt(_dot3(p, p))
    for i in range(3):
        for j in range(3):
            n_i, n_j = gradient[0, i], gradient[0, j]
            t_i, t_j = gradient[1, i], gradient[1, j]
            part = (1.0 if i == j else 0.0) - n_i * n_j
            hessian[i, 3 + j] = part / size
            hessian[3 + j, i] = part / size
            hessian[3 + i, 3 + j] = -(t_i * n_j + n_i * t_j) / size - dn * part / (size * size)


@inlined
def _plane_curvature(variables: Floats, dn: float, gradient: Floats, hessian: Floats) -> None:
    """Fill the second derivatives of d_n = V / J, shape (9, 9)."""
    r, p, q = variables[0], variables[1], variables[2]
    n = gradient[0]
    normal, dj = np.empty(3), np.zeros((3, 3))
    cross(p, q, normal)
    size = np.sqrt(_dot3(normal, normal))
    cross(q, n, dj[1])
    cross(n, p, dj[2])
    # d2 J = P - dJ dJ^T over J, with P of the components of p x q, plus n's own triple product
    pp, qq, pq = _dot3(p, p), _dot3(q, q), _dot3(p, q)
    for i in range(3):
        for j in range(3):
            one = 1.0 if i == j else 0.0
            hessian[3 + i, 3 + j] = -dn * (one * qq - q[i] * q[j] - dj[1, i] * dj[1, j]) / size
            hessian[6 + i, 6 + j] = -dn * (one * pp - p[i] * p[j] - dj[2, i] * dj[2, j]) / size
            hessian[3 + i, 6 + j] = -dn * (p[i] * q[j] - one * pq - dj[1, i] * dj[2, j]) / size
            if i != j:  # epsilon_ijk
                k = 3 - i - j
                sign = 1.0 if (i + 1) % 3 == j else -1.0
                hessian[i, 3 + j] = sign * q[k]
                hessian[6 + i, j] = sign * p[k]
                hessian[3 + i, 6 + j] += sign * (r[k] - dn * n[k])
    for i in range(3):
        for j in range(3):
            hessian[3 + j, i] = hessian[i, 3 + j]
            hessian[j, 6 + i] = hessian[6 + i, j]
            hessian[6 + j, 3 + i] = hessian[3 + i, 6 + j]
    for a in range(9):
        for b in range(9):
            g_a, g_b = gradient[a // 3, a % 3], gradient[b // 3, b % 3]
            value = hessian[a, b] - g_a * dj[b // 3, b % 3] - dj[a // 3, a % 3] * g_b
            hessian[a, b] = value / size


@inlined
def separation_curvature(
    variables: Floats, plane: bool, dn: float, gradient: Floats, hessian: Floats
) -> None:
    """Fill the second derivatives (9, 9) of the distance whose value and gradient `separation` gave."""
    hessian[:, :] = 0.0
    if plane:
        _plane_curvature(variables, dn, gradient, hessian)
    else:
        _wall_curvature(variables[1], dn, gradient, hessian)


@inlined
def _combine(points: Floats, nodes: Ints, weights: Floats) -> tuple[float, float, float]:
    """Return one weighted sum of six nodes."""
    x, y, z = 0.0, 0.0, 0.0
    for s in range(6):
        x += weights[s] * points[nodes[s], 0]
        y += weights[s] * points[nodes[s], 1]
        z += weights[s] * points[nodes[s], 2]
    return x, y, z


@inlined
def _variables(points: Floats, nodes: Ints, coefficients: Floats, variables: Floats) -> None:
    """Fill r, p, q of one bond from its six nodes."""
    for v in range(3):
        variables[v, 0], variables[v, 1], variables[v, 2] = _combine(points, nodes, coefficients[v])


@inlined
def _normal_distance(points: Floats, nodes: Ints, coefficients: Floats, plane: bool) -> float:
    """Return d_n of `separation` alone."""
    r0, r1, r2 = _combine(points, nodes, coefficients[0])
    p0, p1, p2 = _combine(points, nodes, coefficients[1])
    if plane:
        q0, q1, q2 = _combine(points, nodes, coefficients[2])
        p0, p1, p2 = p1 * q2 - p2 * q1, p2 * q0 - p0 * q2, p0 * q1 - p1 * q0
    return float((r0 * p0 + r1 * p1 + r2 * p2) / np.sqrt(p0 * p0 + p1 * p1 + p2 * p2))


@kernel
def bond_forces(
    points: Floats,
    nodes: Ints,
    coefficients: Floats,
    plane: Bools,
    law: Floats,
    worst_old: Floats,
    touching: Bools,
    active: Bools,
    worst: Floats,
    opening: Floats,
    normal_force: Floats,
    stored: Floats,
    dissipated: Floats,
    forces: Floats,
) -> None:
    """Evaluate energy and forces of all bonds.

    Parameters
    ----------
    nodes : shape (k, 6); coefficients : shape (k, 3, 6), of r, p and q on those nodes
    worst_old : shape (k,), committed largest effective opening [m]
    touching : shape (k,), whether pressure may act
    active : filled, shape (k,), False where nothing holds or presses
    worst, opening, normal_force, stored, dissipated : filled, shape (k,); opening is d_n [m]
    forces : shape (n, 3), gradient added [N]
    """
    variables = np.empty((3, 3))
    gradient = np.empty((3, 3))
    room = np.empty((3, 3))
    for k in range(nodes.shape[0]):
        dn = _normal_distance(points, nodes[k], coefficients[k], plane[k])
        size, rho = law[k, LENGTH], law[k, RHO]
        gap = dn - law[k, OFFSET]
        pressed = touching[k] and gap < 0.0
        active[k] = pressed or (law[k, STIFFNESS] > 0.0 and worst_old[k] < law[k, END])
        opening[k] = dn
        if not active[k]:
            worst[k] = worst_old[k]
            normal_force[k] = stored[k] = 0.0
            dissipated[k] = bond_response(0.0, worst_old[k], law[k])[1] * size
            continue
        _variables(points, nodes[k], coefficients[k], variables)
        separation(variables, plane[k], gradient, room)
        r = variables[0]
        open_ = max(gap, 0.0)
        effective = np.sqrt(open_ * open_ + rho * max(_dot3(r, r) - dn * dn, 0.0))
        elastic, heat, force, _ = bond_response(effective, worst_old[k], law[k])
        worst[k] = max(effective, worst_old[k])
        secant = _secant(effective, force, worst_old[k], law[k])
        push = law[k, PRESSURE] * gap if pressed else 0.0
        normal_force[k] = (secant * open_ + push) * size
        stored[k] = (elastic + 0.5 * push * gap) * size
        dissipated[k] = heat * size
        # y = (<gap>^2 + rho (r.r - dn^2)) / 2; the force is the secant times its gradient
        along = secant * (open_ - rho * dn) + push
        for v in range(3):
            for i in range(3):
                gradient[v, i] *= along
        for i in range(3):
            gradient[0, i] += secant * rho * r[i]
        for s in range(6):
            c0, c1, c2 = coefficients[k, 0, s], coefficients[k, 1, s], coefficients[k, 2, s]
            for i in range(3):
                value = c0 * gradient[0, i] + c1 * gradient[1, i] + c2 * gradient[2, i]
                forces[nodes[k, s], i] += value * size


@inlined
def _secant(effective: float, force: float, worst_old: float, law: Floats) -> float:
    if effective > 1.0e-12:
        return float(force / effective)
    return float(law[STIFFNESS]) if worst_old < law[END] else 0.0


@inlined
def bond_curvature(
    variables: Floats, plane: bool, law: Floats, worst_old: float, touching: bool, soften: bool, h9: Floats
) -> None:
    """Fill the second derivatives (9, 9) of one bond's energy by (r, p, q), per metre.

    ``soften`` False replaces a falling slope by the secant (always positive).
    """
    gradient, room, g9 = np.empty((3, 3)), np.empty((3, 3)), np.empty(9)
    dn = separation(variables, plane, gradient, room)
    separation_curvature(variables, plane, dn, gradient, h9)
    rho = law[RHO]
    r = variables[0]
    gap = dn - law[OFFSET]
    open_ = max(gap, 0.0)
    effective = np.sqrt(open_ * open_ + rho * max(_dot3(r, r) - dn * dn, 0.0))
    _, _, force, slope = bond_response(effective, worst_old, law)
    secant = _secant(effective, force, worst_old, law)
    # as a function of y = effective^2 / 2: the derivative of the secant
    bend = (slope - secant) / (effective * effective) if effective > 1.0e-12 else 0.0
    if not soften and bend < 0.0:
        bend = 0.0
    stiff = law[PRESSURE] if touching and gap < 0.0 else 0.0
    along = open_ - rho * dn
    first = secant * along + stiff * min(gap, 0.0)
    second = secant * ((1.0 if gap > 0.0 else 0.0) - rho) + stiff
    for a in range(9):
        g9[a] = along * gradient[a // 3, a % 3] + (rho * r[a] if a < 3 else 0.0)
    for a in range(9):
        for b in range(9):
            value = first * h9[a, b] + second * gradient[a // 3, a % 3] * gradient[b // 3, b % 3]
            if a == b and a < 3:
                value += secant * rho
            h9[a, b] = value + bend * g9[a] * g9[b]


@kernel
def bond_stiffness(
    points: Floats,
    nodes: Ints,
    coefficients: Floats,
    plane: Bools,
    law: Floats,
    worst_old: Floats,
    touching: Bools,
    soften: bool,
    active: Bools,
    stiffness: Floats,
) -> None:
    """Fill the stiffness (k, 18, 18) [N/m] of the active bonds."""
    variables = np.empty((3, 3))
    h9 = np.empty((9, 9))
    half = np.empty((9, 18))
    for k in range(nodes.shape[0]):
        if not active[k]:
            continue
        _variables(points, nodes[k], coefficients[k], variables)
        bond_curvature(variables, plane[k], law[k], worst_old[k], touching[k], soften, h9)
        c = coefficients[k]
        for a in range(9):
            for t in range(6):
                for j in range(3):
                    half[a, 3 * t + j] = h9[a, j] * c[0, t] + h9[a, 3 + j] * c[1, t] + h9[a, 6 + j] * c[2, t]
        size = law[k, LENGTH]
        for s in range(6):
            for i in range(3):
                for b in range(18):
                    value = c[0, s] * half[i, b] + c[1, s] * half[3 + i, b] + c[2, s] * half[6 + i, b]
                    stiffness[k, 3 * s + i, b] = value * size
