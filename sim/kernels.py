"""Compiled sheet laws: hinge angles, triangle forces and stiffness, block assembly.

One triangle carries three edge springs and three hinge springs.  The edge strains
e = (l^2 - L^2) / (2 L^2) give the Green strain T e; the three hinge angles give the curvature
W (theta - theta0).  The section (seven layers, plane stress) couples the three of each, so the
sheet is isotropic with the metal's own Poisson ratio.

Every kernel is tested against the plain functions of `sim.sheet` and `sim.yielding`.
"""

from __future__ import annotations

import numpy as np
from numba import njit
from numpy.typing import NDArray

from sim.yielding import plane_stress_return

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@njit(cache=True)
def _cross(a: Floats, b: Floats, out: Floats) -> None:
    out[0] = a[1] * b[2] - a[2] * b[1]
    out[1] = a[2] * b[0] - a[0] * b[2]
    out[2] = a[0] * b[1] - a[1] * b[0]


@njit(cache=True)
def hinge_angles(points: Floats, hinges: Ints, angle: Floats, gradient: Floats) -> None:
    """Fill hinge angles [rad] and their gradients.

    A hinge is (a, b, c, f): the edge a-b counter-clockwise in its own triangle (a, b, c) and the
    opposite corner f of the neighbour (b, a, f).  Positive when the flap rises to the normal's side.

    Parameters
    ----------
    points : shape (n, 3), [m]
    hinges : shape (k, 4)
    angle, gradient : filled, shapes (k,) [rad] and (k, 4, 3) [rad/m]
    """
    n1 = np.empty(3)
    n2 = np.empty(3)
    cross = np.empty(3)
    e = np.empty(3)
    p = np.empty(3)
    q = np.empty(3)
    for k in range(hinges.shape[0]):
        a, b, c, f = hinges[k, 0], hinges[k, 1], hinges[k, 2], hinges[k, 3]
        for i in range(3):
            e[i] = points[b, i] - points[a, i]
            p[i] = points[c, i] - points[a, i]
            q[i] = points[f, i] - points[a, i]
        _cross(e, p, n1)
        _cross(q, e, n2)
        _cross(n2, n1, cross)
        length2 = e[0] * e[0] + e[1] * e[1] + e[2] * e[2]
        length = np.sqrt(length2)
        sine = (cross[0] * e[0] + cross[1] * e[1] + cross[2] * e[2]) / length
        cosine = n1[0] * n2[0] + n1[1] * n2[1] + n1[2] * n2[2]
        angle[k] = np.arctan2(sine, cosine)
        s1 = length / (n1[0] * n1[0] + n1[1] * n1[1] + n1[2] * n1[2])
        s2 = length / (n2[0] * n2[0] + n2[1] * n2[1] + n2[2] * n2[2])
        tc = (p[0] * e[0] + p[1] * e[1] + p[2] * e[2]) / length2
        tf = (q[0] * e[0] + q[1] * e[1] + q[2] * e[2]) / length2
        for i in range(3):
            u1 = n1[i] * s1
            u2 = n2[i] * s2
            gradient[k, 0, i] = -(1.0 - tc) * u1 - (1.0 - tf) * u2
            gradient[k, 1, i] = -tc * u1 - tf * u2
            gradient[k, 2, i] = u1
            gradient[k, 3, i] = u2


@njit(cache=True)
def _flap_derivatives(
    e: Floats, p: Floats, normal: Floats, sign: float, d_tip: Floats, d_a: Floats, d_t: Floats
) -> float:
    """Fill d u / d tip, d u / d a and d t / d b of one flap; return t.

    u = |e| n / |n|^2 with n = sign * e x p, t = p.e / |e|^2, p = tip - a, e = b - a.
    """
    length2 = e[0] * e[0] + e[1] * e[1] + e[2] * e[2]
    length = np.sqrt(length2)
    n2 = normal[0] ** 2 + normal[1] ** 2 + normal[2] ** 2
    t = (p[0] * e[0] + p[1] * e[1] + p[2] * e[2]) / length2
    scale = length / n2
    for i in range(3):
        d_t[i] = (p[i] - 2.0 * t * e[i]) / length2
    v = np.empty(3)
    for block in range(2):
        for i in range(3):
            v[i] = e[i] if block == 0 else p[i] - e[i]
        for j in range(3):
            # column j of sign * [v]x
            c0, c1, c2 = 0.0, 0.0, 0.0
            if j == 0:
                c1, c2 = v[2], -v[1]
            elif j == 1:
                c0, c2 = -v[2], v[0]
            else:
                c0, c1 = v[1], -v[0]
            c0 *= sign
            c1 *= sign
            c2 *= sign
            along = 2.0 * (normal[0] * c0 + normal[1] * c1 + normal[2] * c2) / n2
            col0 = scale * (c0 - along * normal[0])
            col1 = scale * (c1 - along * normal[1])
            col2 = scale * (c2 - along * normal[2])
            if block == 0:
                d_tip[0, j] = col0
                d_tip[1, j] = col1
                d_tip[2, j] = col2
            else:
                back = e[j] / (length * n2)
                d_a[0, j] = col0 - normal[0] * back
                d_a[1, j] = col1 - normal[1] * back
                d_a[2, j] = col2 - normal[2] * back
    return t


@njit(cache=True)
def hinge_hessian(a: Floats, b: Floats, c: Floats, f: Floats, hessian: Floats) -> None:
    """Fill the Hessian of one hinge angle, shape (12, 12) [rad/m^2], order a, b, c, f."""
    e = b - a
    p = c - a
    q = f - a
    n1 = np.empty(3)
    n2 = np.empty(3)
    _cross(e, p, n1)
    _cross(q, e, n2)
    cc = np.empty((3, 3))
    ca = np.empty((3, 3))
    dt1 = np.empty(3)
    ff = np.empty((3, 3))
    fa = np.empty((3, 3))
    dt2 = np.empty(3)
    t1 = _flap_derivatives(e, p, n1, 1.0, cc, ca, dt1)
    t2 = _flap_derivatives(e, q, n2, -1.0, ff, fa, dt2)
    length = np.sqrt(e[0] ** 2 + e[1] ** 2 + e[2] ** 2)
    s1 = length / (n1[0] ** 2 + n1[1] ** 2 + n1[2] ** 2)
    s2 = length / (n2[0] ** 2 + n2[1] ** 2 + n2[2] ** 2)
    # translation invariance gives every block from d u / d tip, d u / d a and d t / d b
    for i in range(3):
        for j in range(3):
            cb = -cc[i, j] - ca[i, j]
            fb = -ff[i, j] - fa[i, j]
            bb = -n1[i] * s1 * dt1[j] - t1 * cb - n2[i] * s2 * dt2[j] - t2 * fb
            hessian[6 + i, 6 + j] = cc[i, j]
            hessian[6 + i, j] = ca[i, j]
            hessian[j, 6 + i] = ca[i, j]
            hessian[6 + i, 3 + j] = cb
            hessian[3 + j, 6 + i] = cb
            hessian[9 + i, 9 + j] = ff[i, j]
            hessian[9 + i, j] = fa[i, j]
            hessian[j, 9 + i] = fa[i, j]
            hessian[9 + i, 3 + j] = fb
            hessian[3 + j, 9 + i] = fb
            hessian[6 + i, 9 + j] = 0.0
            hessian[9 + i, 6 + j] = 0.0
            hessian[3 + i, 3 + j] = bb
    for i in range(3):
        for j in range(3):
            ba = -hessian[3 + i, 3 + j] - hessian[3 + i, 6 + j] - hessian[3 + i, 9 + j]
            hessian[3 + i, j] = ba
            hessian[j, 3 + i] = ba
    for i in range(3):
        for j in range(3):
            hessian[i, j] = -hessian[i, 3 + j] - hessian[i, 6 + j] - hessian[i, 9 + j]


@njit(cache=True)
def section_response(
    membrane: Floats,
    curvature: Floats,
    thickness_m: float,
    form_ratio: float,
    metal: Floats,
    heights: Floats,
    weights: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    resultant: Floats,
    stiffness: Floats,
    scratch: Floats,
) -> tuple[float, float]:
    """Return stored and newly dissipated energy per area [J/m^2]; fill resultants and stiffness.

    ``resultant`` is (N, M), shape (6,) [N/m, N]; ``stiffness`` shape (6, 6); ``metal`` is
    (E, nu, yield stress, hardening modulus); ``scratch`` shape (5, 3) is working room.
    """
    resultant[:] = 0.0
    stiffness[:, :] = 0.0
    strain = scratch[0]
    stress = scratch[1]
    tangent = scratch[2:5]
    stored = 0.0
    dissipated = 0.0
    for layer in range(heights.shape[0]):
        z = heights[layer] * thickness_m * form_ratio
        w = weights[layer] * thickness_m
        for i in range(3):
            strain[i] = membrane[i] + z * curvature[i]
        new, psi, heat = plane_stress_return(
            strain, plastic_old[layer], hardening_old[layer], metal[0], metal[1], metal[2], metal[3],
            stress, plastic[layer], tangent,
        )  # fmt: skip
        hardening[layer] = new
        stored += w * psi
        dissipated += w * heat
        for i in range(3):
            resultant[i] += w * stress[i]
            resultant[3 + i] += w * z * stress[i]
            for j in range(3):
                c = w * tangent[i, j]
                stiffness[i, j] += c
                stiffness[i, 3 + j] += z * c
                stiffness[3 + i, 3 + j] += z * z * c
    for i in range(3):
        for j in range(3):
            stiffness[3 + i, j] = stiffness[j, 3 + i]
    return stored, dissipated


@njit(cache=True)
def triangle_forces(
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    angle: Floats,
    rest_angle: Floats,
    rest_length2: Floats,
    to_strain: Floats,
    to_curvature: Floats,
    area: Floats,
    thickness: Floats,
    form_ratio: Floats,
    metal: Floats,
    heights: Floats,
    weights: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    springs: Floats,
    stiffness: Floats,
    stored: Floats,
    dissipated: Floats,
) -> None:
    """Fill per triangle the six spring forces, their 6x6 stiffness and the energies.

    Parameters
    ----------
    triangle_hinges : shape (m, 3), hinge of each edge (edge i is opposite corner i), -1 at a rim
    springs : filled, shape (m, 6), derivative of the energy by (e0, e1, e2, th0, th1, th2)
    stiffness : filled, shape (m, 6, 6), second derivative by the same
    stored, dissipated : filled, shape (m,) [J]
    """
    e = np.empty(3)
    th = np.empty(3)
    strain = np.empty(3)
    curvature = np.empty(3)
    resultant = np.empty(6)
    section = np.empty((6, 6))
    scratch = np.empty((5, 3))
    g = np.zeros((6, 6))
    half = np.empty((6, 6))
    for t in range(triangles.shape[0]):
        for i in range(3):
            a = triangles[t, (i + 1) % 3]
            b = triangles[t, (i + 2) % 3]
            l2 = 0.0
            for k in range(3):
                d = points[b, k] - points[a, k]
                l2 += d * d
            e[i] = 0.5 * (l2 / rest_length2[t, i] - 1.0)
            h = triangle_hinges[t, i]
            th[i] = angle[h] - rest_angle[h] if h >= 0 else 0.0
        for i in range(3):
            strain[i] = 0.0
            curvature[i] = 0.0
            for j in range(3):
                strain[i] += to_strain[t, i, j] * e[j]
                curvature[i] += to_curvature[t, i, j] * th[j]
                g[i, j] = to_strain[t, i, j]
                g[3 + i, 3 + j] = to_curvature[t, i, j]
        psi, heat = section_response(
            strain, curvature, thickness[t], form_ratio[t], metal[t], heights, weights, plastic_old[t],
            hardening_old[t], plastic[t], hardening[t], resultant, section, scratch,
        )  # fmt: skip
        stored[t] = psi * area[t]
        dissipated[t] = heat * area[t]
        for i in range(6):
            value = 0.0
            for j in range(6):
                value += g[j, i] * resultant[j]
            springs[t, i] = value * area[t]
            for j in range(6):
                value = 0.0
                for k in range(6):
                    value += section[i, k] * g[k, j]
                half[i, j] = value
        for i in range(6):
            for j in range(6):
                value = 0.0
                for k in range(6):
                    value += g[k, i] * half[k, j]
                stiffness[t, i, j] = value * area[t]


@njit(cache=True)
def gather_triangle_forces(
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    hinges: Ints,
    gradient: Floats,
    rest_length2: Floats,
    springs: Floats,
    forces: Floats,
    moments: Floats,
) -> None:
    """Add the energy gradient of all triangles to ``forces`` (n, 3) [N]; fill hinge moments (k,) [N m]."""
    moments[:] = 0.0
    for t in range(triangles.shape[0]):
        for i in range(3):
            a = triangles[t, (i + 1) % 3]
            b = triangles[t, (i + 2) % 3]
            s = springs[t, i] / rest_length2[t, i]
            for k in range(3):
                f = s * (points[b, k] - points[a, k])
                forces[b, k] += f
                forces[a, k] -= f
            h = triangle_hinges[t, i]
            if h >= 0:
                moments[h] += springs[t, 3 + i]
    for h in range(hinges.shape[0]):
        m = moments[h]
        for j in range(4):
            node = hinges[h, j]
            for k in range(3):
                forces[node, k] += m * gradient[h, j, k]


@njit(cache=True)
def assemble_triangles(
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    hinges: Ints,
    gradient: Floats,
    rest_length2: Floats,
    springs: Floats,
    springs_guess: Floats,
    stiffness: Floats,
    patch: Ints,
    patch_block: Ints,
    membrane_floor: float,
    values: Floats,
) -> None:
    """Add the material and membrane-geometric stiffness of all triangles to ``values``.

    Parameters
    ----------
    patch : shape (m, 6), the triangle's corners then the opposite corner of each neighbour (-1: none)
    patch_block : shape (m, 6, 6), block index of each node pair; bit-complement (~index) when the stored
        block is the transpose
    springs_guess : shape (m, 6), spring forces used for the geometric part
    membrane_floor : lower limit of the membrane spring forces in the geometric part (0 keeps
        the positive part alone, -inf all)
    values : shape (blocks, 3, 3), added to
    """
    g = np.empty((6, 18))
    kg = np.empty((6, 18))
    for t in range(triangles.shape[0]):
        g[:, :] = 0.0
        for i in range(3):
            ia = (i + 1) % 3
            ib = (i + 2) % 3
            a = triangles[t, ia]
            b = triangles[t, ib]
            inv = 1.0 / rest_length2[t, i]
            for k in range(3):
                d = (points[b, k] - points[a, k]) * inv
                g[i, 3 * ib + k] += d
                g[i, 3 * ia + k] -= d
            h = triangle_hinges[t, i]
            if h >= 0:
                for j in range(4):
                    node = hinges[h, j]
                    slot = -1
                    for s in range(6):
                        if patch[t, s] == node and (s < 3 or s == 3 + i):
                            slot = s
                            break
                    for k in range(3):
                        g[3 + i, 3 * slot + k] += gradient[h, j, k]
        for i in range(6):
            for c in range(18):
                value = 0.0
                for k in range(6):
                    value += stiffness[t, i, k] * g[k, c]
                kg[i, c] = value
        for p in range(6):
            if patch[t, p] < 0:
                continue
            for q in range(p + 1):
                if patch[t, q] < 0:
                    continue
                code = patch_block[t, p, q]
                swap = code < 0
                block = ~code if swap else code
                for i in range(3):
                    for j in range(3):
                        value = 0.0
                        for k in range(6):
                            value += g[k, 3 * p + i] * kg[k, 3 * q + j]
                        if swap:
                            values[block, j, i] += value
                        else:
                            values[block, i, j] += value
                        if p != q and patch[t, p] == patch[t, q]:  # two neighbours share a corner
                            values[block, j, i] += value
        for i in range(3):
            ia = (i + 1) % 3
            ib = (i + 2) % 3
            s = max(springs_guess[t, i], membrane_floor) / rest_length2[t, i]
            low, high = min(ia, ib), max(ia, ib)
            off = patch_block[t, high, low]
            off = ~off if off < 0 else off
            for k in range(3):
                values[patch_block[t, ia, ia], k, k] += s
                values[patch_block[t, ib, ib], k, k] += s
                values[off, k, k] -= s


@njit(cache=True)
def assemble_hinges(
    points: Floats, hinges: Ints, moments: Floats, hinge_block: Ints, values: Floats
) -> None:
    """Add the geometric stiffness moment * d2 theta of all hinges to ``values`` (blocks, 3, 3)."""
    hessian = np.empty((12, 12))
    for h in range(hinges.shape[0]):
        m = moments[h]
        if m == 0.0:
            continue
        hinge_hessian(
            points[hinges[h, 0]], points[hinges[h, 1]], points[hinges[h, 2]], points[hinges[h, 3]], hessian
        )
        for p in range(4):
            for q in range(p + 1):
                if p == 3 and q == 2:
                    continue
                code = hinge_block[h, p, q]
                swap = code < 0
                block = ~code if swap else code
                for i in range(3):
                    for j in range(3):
                        value = m * hessian[3 * p + i, 3 * q + j]
                        if swap:
                            values[block, j, i] += value
                        else:
                            values[block, i, j] += value


@njit(cache=True)
def spring_change(
    step: Floats,
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    hinges: Ints,
    gradient: Floats,
    rest_length2: Floats,
    stiffness: Floats,
    change: Floats,
) -> None:
    """Fill the linear change of the six spring forces of each triangle under a node step (n, 3) [m]."""
    turn = np.empty(hinges.shape[0])
    for h in range(hinges.shape[0]):
        value = 0.0
        for j in range(4):
            for k in range(3):
                value += gradient[h, j, k] * step[hinges[h, j], k]
        turn[h] = value
    d = np.empty(6)
    for t in range(triangles.shape[0]):
        for i in range(3):
            a = triangles[t, (i + 1) % 3]
            b = triangles[t, (i + 2) % 3]
            value = 0.0
            for k in range(3):
                value += (points[b, k] - points[a, k]) * (step[b, k] - step[a, k])
            d[i] = value / rest_length2[t, i]
            h = triangle_hinges[t, i]
            d[3 + i] = turn[h] if h >= 0 else 0.0
        for i in range(6):
            value = 0.0
            for j in range(6):
                value += stiffness[t, i, j] * d[j]
            change[t, i] = value
