"""Bonds: a line law for seams, welds and pads, and the pressure of sheets that touch.

Two points that coincide (or touch) at rest are r = x_upper - x_lower apart, n is the lower sheet's
normal there.  Opening is d_n = r.n, slip d_t^2 = r.r - d_n^2, and the effective opening

    d^2 = <d_n - offset>^2 + rho d_t^2,      rho = (shear strength / peel strength)^2

drives one trapezoid of force against opening, so that both peel and slip end at the same energy per
metre and the strengths meet on the ellipse (F_n / F_n0)^2 + (F_s / F_s0)^2 = 1.  What is kept, whatever
the lattice, is the energy per metre of seam: the area of the trapezoid times the tributary length.
Closing past `offset` meets a stiff pressure that never pulls.

Source: trapezoid form, energy kept on coarse meshes [turon-2007]; ellipse for welds, common form (from memory).
"""

from __future__ import annotations

import numpy as np
from numba import njit
from numpy.typing import NDArray

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


@njit(cache=True)
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


@njit(cache=True)
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


@njit(cache=True)
def separation(r: Floats, p: Floats, q: Floats, plane: bool, gradient: Floats, hessian: Floats) -> float:
    """Return the signed normal distance d_n = r.n; fill its derivatives by (r, p, q).

    ``plane``: n = p x q / |p x q| (a triangle's normal); else n = p / |p| (a wall's depth line).
    ``gradient`` shape (9,), ``hessian`` shape (9, 9), both filled.
    """
    hessian[:, :] = 0.0
    gradient[:] = 0.0
    if not plane:
        size = np.sqrt(p[0] * p[0] + p[1] * p[1] + p[2] * p[2])
        dn = (r[0] * p[0] + r[1] * p[1] + r[2] * p[2]) / size
        for i in range(3):
            n_i = p[i] / size
            gradient[i] = n_i
            gradient[3 + i] = (r[i] - dn * n_i) / size
        for i in range(3):
            for j in range(3):
                n_i, n_j = gradient[i], gradient[j]
                proj = (1.0 if i == j else 0.0) - n_i * n_j
                hessian[i, 3 + j] = proj / size
                hessian[3 + j, i] = proj / size
                t_i, t_j = gradient[3 + i], gradient[3 + j]
                hessian[3 + i, 3 + j] = -(t_i * n_j + n_i * t_j) / size - dn * proj / (size * size)
        return dn
    # V = r.(p x q), J = |p x q|, d_n = V / J
    normal = np.cross(p, q)
    j0 = np.sqrt(normal[0] ** 2 + normal[1] ** 2 + normal[2] ** 2)
    n = normal / j0
    v = r[0] * normal[0] + r[1] * normal[1] + r[2] * normal[2]
    dv = np.empty(9)
    dv[0:3] = normal
    dv[3:6] = np.cross(q, r)
    dv[6:9] = np.cross(r, p)
    dj = np.zeros(9)
    dj[3:6] = np.cross(q, n)
    dj[6:9] = np.cross(n, p)
    d2v = np.zeros((9, 9))
    d2j = np.zeros((9, 9))
    # mixed second derivatives of triple products: d2(r.(p x q)) etc. as cross matrices
    for i in range(3):
        for j in range(3):
            if i == j:
                continue
            k = 3 - i - j
            sign = 1.0 if (i + 1) % 3 == j else -1.0  # epsilon_ijk
            d2v[i, 3 + j] = sign * q[k]
            d2v[3 + j, i] = sign * q[k]
            d2v[6 + i, j] = sign * p[k]
            d2v[j, 6 + i] = sign * p[k]
            d2v[3 + i, 6 + j] = sign * r[k]
            d2v[6 + j, 3 + i] = sign * r[k]
            d2j[3 + i, 6 + j] = sign * n[k]
            d2j[6 + j, 3 + i] = sign * n[k]
    # d N by (p, q): columns
    dnormal = np.zeros((3, 9))
    for j in range(3):
        unit = np.zeros(3)
        unit[j] = 1.0
        dnormal[:, 3 + j] = np.cross(unit, q)
        dnormal[:, 6 + j] = np.cross(p, unit)
    for a in range(3, 9):
        for b in range(3, 9):
            value = 0.0
            for i in range(3):
                value += dnormal[i, a] * dnormal[i, b]
            d2j[a, b] += (value - dj[a] * dj[b]) / j0
    dn = v / j0
    for a in range(9):
        gradient[a] = (dv[a] - dn * dj[a]) / j0
    for a in range(9):
        for b in range(9):
            hessian[a, b] = (d2v[a, b] - gradient[a] * dj[b] - dj[a] * gradient[b] - dn * d2j[a, b]) / j0
    return dn


@njit(cache=True)
def bond_forces(
    points: Floats,
    nodes: Ints,
    coefficients: Floats,
    plane: Bools,
    law: Floats,
    worst_old: Floats,
    touching: Bools,
    soften: bool,
    active: Bools,
    worst: Floats,
    opening: Floats,
    normal_force: Floats,
    stored: Floats,
    dissipated: Floats,
    forces: Floats,
    stiffness: Floats,
) -> None:
    """Evaluate all bonds.

    Parameters
    ----------
    nodes : shape (k, 6); coefficients : shape (k, 3, 6), of r, p and q on those nodes
    worst_old : shape (k,), committed largest effective opening [m]
    touching : shape (k,), whether pressure may act
    soften : False replaces a falling slope by the secant (always positive)
    active : filled, shape (k,), False where nothing holds or presses (its stiffness is then not filled)
    worst, opening, normal_force, stored, dissipated : filled, shape (k,); opening is d_n [m]
    forces : shape (n, 3), gradient added [N]
    stiffness : filled, shape (k, 18, 18) [N/m]
    """
    variables = np.empty((3, 3))
    gradient = np.empty(9)
    hessian = np.empty((9, 9))
    g9 = np.empty(9)
    h9 = np.empty((9, 9))
    for k in range(nodes.shape[0]):
        for v in range(3):
            for i in range(3):
                value = 0.0
                for s in range(6):
                    value += coefficients[k, v, s] * points[nodes[k, s], i]
                variables[v, i] = value
        r = variables[0]
        dn = separation(r, variables[1], variables[2], plane[k], gradient, hessian)
        size = law[k, LENGTH]
        rho = law[k, RHO]
        r2 = r[0] * r[0] + r[1] * r[1] + r[2] * r[2]
        slip2 = max(r2 - dn * dn, 0.0)
        offset = law[k, OFFSET]
        gap = dn - offset
        pressed = touching[k] and gap < 0.0
        active[k] = pressed or law[k, STIFFNESS] > 0.0 and worst_old[k] < law[k, END]
        if not active[k]:
            worst[k], opening[k] = worst_old[k], dn
            normal_force[k] = stored[k] = 0.0
            dissipated[k] = bond_response(0.0, worst_old[k], law[k])[1] * law[k, LENGTH]
            continue
        open_ = max(gap, 0.0)
        effective = np.sqrt(open_ * open_ + rho * slip2)
        elastic, heat, force, slope = bond_response(effective, worst_old[k], law[k])
        worst[k] = max(effective, worst_old[k])
        opening[k] = dn
        # as a function of y = effective^2 / 2: F / effective = secant, and its derivative by y
        if effective > 1.0e-12:
            secant = force / effective
            bend = (slope - secant) / (effective * effective)
        else:
            secant = law[k, STIFFNESS] if worst_old[k] < law[k, END] else 0.0
            bend = 0.0
        if not soften and bend < 0.0:
            bend = 0.0
        energy = elastic
        # y = ( <gap>^2 + rho (r2 - dn^2) ) / 2
        is_open = 1.0 if gap > 0.0 else 0.0
        c_1 = is_open * gap - rho * dn
        c_2 = is_open - rho
        for a in range(9):
            g9[a] = c_1 * gradient[a]
            if a < 3:
                g9[a] += rho * r[a]
        for a in range(9):
            for b in range(9):
                value = c_2 * gradient[a] * gradient[b] + c_1 * hessian[a, b]
                if a == b and a < 3:
                    value += rho
                h9[a, b] = secant * value + bend * g9[a] * g9[b]
        push = 0.0
        if pressed:
            stiff = law[k, PRESSURE]
            push = stiff * gap
            energy += 0.5 * stiff * gap * gap
            for a in range(9):
                for b in range(9):
                    h9[a, b] += stiff * gradient[a] * gradient[b] + push * hessian[a, b]
        for a in range(9):
            g9[a] = secant * g9[a] + push * gradient[a]
        normal_force[k] = (secant * open_ + push) * size
        stored[k] = energy * size
        dissipated[k] = heat * size
        for s in range(6):
            for i in range(3):
                value = 0.0
                for v in range(3):
                    value += coefficients[k, v, s] * g9[3 * v + i]
                forces[nodes[k, s], i] += value * size
        for s in range(6):
            for t in range(6):
                for i in range(3):
                    for j in range(3):
                        value = 0.0
                        for v in range(3):
                            cv = coefficients[k, v, s]
                            if cv == 0.0:
                                continue
                            for w in range(3):
                                value += cv * coefficients[k, w, t] * h9[3 * v + i, 3 * w + j]
                        stiffness[k, 3 * s + i, 3 * t + j] = value * size


@njit(cache=True)
def scatter_dense(nodes: Ints, blocks: Ints, active: Bools, stiffness: Floats, values: Floats) -> None:
    """Add dense element matrices (k, 3 m, 3 m) to block values; ``blocks`` (k, m, m), complement = transpose.

    Slots with node -1 are passed over.
    """
    m = nodes.shape[1]
    for k in range(nodes.shape[0]):
        if not active[k]:
            continue
        for p in range(m):
            if nodes[k, p] < 0:
                continue
            for q in range(p + 1):
                if nodes[k, q] < 0:
                    continue
                code = blocks[k, p, q]
                swap = code < 0
                block = ~code if swap else code
                same = p != q and nodes[k, p] == nodes[k, q]
                for i in range(3):
                    for j in range(3):
                        value = stiffness[k, 3 * p + i, 3 * q + j]
                        if swap:
                            values[block, j, i] += value
                        else:
                            values[block, i, j] += value
                        if same:
                            values[block, j, i] += value
