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
Bools = NDArray[np.bool_]


@njit(cache=True)
def cross(a: Floats, b: Floats, out: Floats) -> None:
    """Fill a x b."""
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
    both = np.empty(3)
    e = np.empty(3)
    p = np.empty(3)
    q = np.empty(3)
    for k in range(hinges.shape[0]):
        a, b, c, f = hinges[k, 0], hinges[k, 1], hinges[k, 2], hinges[k, 3]
        for i in range(3):
            e[i] = points[b, i] - points[a, i]
            p[i] = points[c, i] - points[a, i]
            q[i] = points[f, i] - points[a, i]
        cross(e, p, n1)
        cross(q, e, n2)
        cross(n2, n1, both)
        length2 = e[0] * e[0] + e[1] * e[1] + e[2] * e[2]
        length = np.sqrt(length2)
        sine = (both[0] * e[0] + both[1] * e[1] + both[2] * e[2]) / length
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
    n2 = normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]
    t = (p[0] * e[0] + p[1] * e[1] + p[2] * e[2]) / length2
    scale = length / n2
    for i in range(3):
        d_t[i] = (p[i] - 2.0 * t * e[i]) / length2
    for block in range(2):
        v0 = e[0] if block == 0 else p[0] - e[0]
        v1 = e[1] if block == 0 else p[1] - e[1]
        v2 = e[2] if block == 0 else p[2] - e[2]
        for j in range(3):
            # column j of sign * [v]x
            c0, c1, c2 = 0.0, 0.0, 0.0
            if j == 0:
                c1, c2 = v2, -v1
            elif j == 1:
                c0, c2 = -v2, v0
            else:
                c0, c1 = v1, -v0
            along = 2.0 * (normal[0] * c0 + normal[1] * c1 + normal[2] * c2) / n2
            col0 = scale * sign * (c0 - along * normal[0])
            col1 = scale * sign * (c1 - along * normal[1])
            col2 = scale * sign * (c2 - along * normal[2])
            if block == 0:
                d_tip[0, j] = col0
                d_tip[1, j] = col1
                d_tip[2, j] = col2
            else:
                back = e[j] / (length * n2)
                d_a[0, j] = col0 - normal[0] * back
                d_a[1, j] = col1 - normal[1] * back
                d_a[2, j] = col2 - normal[2] * back
    return float(t)


@njit(cache=True)
def hinge_hessian(a: Floats, b: Floats, c: Floats, f: Floats, hessian: Floats, room: Floats) -> None:
    """Fill the Hessian of one hinge angle, shape (12, 12) [rad/m^2], order a, b, c, f.

    Every row but the last pair (c, f), whose blocks are zero, is filled; ``room`` is (19, 3) of working room.
    """
    e, p, q, n1, n2 = room[0], room[1], room[2], room[3], room[4]
    dt1, dt2 = room[5], room[6]
    cc, ca, ff, fa = room[7:10], room[10:13], room[13:16], room[16:19]
    for i in range(3):
        e[i] = b[i] - a[i]
        p[i] = c[i] - a[i]
        q[i] = f[i] - a[i]
    cross(e, p, n1)
    cross(q, e, n2)
    t1 = _flap_derivatives(e, p, n1, 1.0, cc, ca, dt1)
    t2 = _flap_derivatives(e, q, n2, -1.0, ff, fa, dt2)
    length = np.sqrt(e[0] * e[0] + e[1] * e[1] + e[2] * e[2])
    s1 = length / (n1[0] * n1[0] + n1[1] * n1[1] + n1[2] * n1[2])
    s2 = length / (n2[0] * n2[0] + n2[1] * n2[1] + n2[2] * n2[2])
    # translation invariance gives every block from d u / d tip, d u / d a and d t / d b
    for i in range(3):
        for j in range(3):
            cb = -cc[i, j] - ca[i, j]
            fb = -ff[i, j] - fa[i, j]
            bb = -n1[i] * s1 * dt1[j] - t1 * cb - n2[i] * s2 * dt2[j] - t2 * fb
            ba = -bb - (-cc[j, i] - ca[j, i]) - (-ff[j, i] - fa[j, i])
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
def section_forces(
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
    scratch: Floats,
) -> tuple[float, float, bool]:
    """Return stored and newly dissipated energy per area [J/m^2] and whether a layer flows; fill resultants.

    The forces of `section_response` without its stiffness.
    """
    resultant[:] = 0.0
    strain = scratch[0]
    stress = scratch[1]
    tangent = scratch[2:5]
    bulk = metal[0] / (1.0 - metal[1])
    shear = metal[0] / (2.0 * (1.0 + metal[1]))
    stored = 0.0
    dissipated = 0.0
    flowing = False
    for layer in range(heights.shape[0]):
        z = heights[layer] * thickness_m * form_ratio
        w = weights[layer] * thickness_m
        old = plastic_old[layer]
        for i in range(3):
            strain[i] = membrane[i] + z * curvature[i]
        e0, e1, e2 = strain[0] - old[0], strain[1] - old[1], strain[2] - old[2]
        plus = bulk * (e0 + e1) / 2.0
        minus = shear * (e0 - e1)
        tau = shear * e2
        flow = metal[2] + metal[3] * hardening_old[layer]
        if plus * plus + 3.0 * (minus * minus + tau * tau) <= flow * flow:
            stress[0] = plus + minus
            stress[1] = plus - minus
            stress[2] = tau
            stored += w * 0.5 * (stress[0] * e0 + stress[1] * e1 + tau * e2)
            hardening[layer] = hardening_old[layer]
            for i in range(3):
                plastic[layer, i] = old[i]
        else:
            flowing = True
            new, psi, heat = plane_stress_return(
                strain, old, hardening_old[layer], metal[0], metal[1], metal[2], metal[3],
                stress, plastic[layer], tangent,
            )  # fmt: skip
            hardening[layer] = new
            stored += w * psi
            dissipated += w * heat
        for i in range(3):
            resultant[i] += w * stress[i]
            resultant[3 + i] += w * z * stress[i]
    return stored, dissipated, flowing


@njit(cache=True)
def _strains(
    points: Floats,
    corners: Ints,
    own_hinges: Ints,
    angle: Floats,
    rest_angle: Floats,
    rest_length2: Floats,
    to_strain: Floats,
    to_curvature: Floats,
    q: Floats,
    strain: Floats,
    curvature: Floats,
) -> None:
    """Fill the six spring extensions (e0, e1, e2, th0, th1, th2), strain and curvature of one triangle."""
    for i in range(3):
        a = corners[(i + 1) % 3]
        b = corners[(i + 2) % 3]
        l2 = 0.0
        for k in range(3):
            d = points[b, k] - points[a, k]
            l2 += d * d
        q[i] = 0.5 * (l2 / rest_length2[i] - 1.0)
        h = own_hinges[i]
        q[3 + i] = angle[h] - rest_angle[h] if h >= 0 else 0.0
    for i in range(3):
        strain[i] = 0.0
        curvature[i] = 0.0
        for j in range(3):
            strain[i] += to_strain[i, j] * q[j]
            curvature[i] += to_curvature[i, j] * q[3 + j]


@njit(cache=True)
def _is_virgin(plastic: Floats, hardening: Floats) -> bool:
    for layer in range(hardening.shape[0]):
        if hardening[layer] != 0.0 or plastic[layer, 0] != 0.0:
            return False
        if plastic[layer, 1] != 0.0 or plastic[layer, 2] != 0.0:
            return False
    return True


@njit(cache=True)
def _face_yields(strain: Floats, curvature: Floats, z: float, metal: Floats) -> bool:
    bulk = metal[0] / (1.0 - metal[1])
    shear = metal[0] / (2.0 * (1.0 + metal[1]))
    e0 = strain[0] + z * curvature[0]
    e1 = strain[1] + z * curvature[1]
    plus = bulk * (e0 + e1) / 2.0
    minus = shear * (e0 - e1)
    tau = shear * (strain[2] + z * curvature[2])
    return bool(plus * plus + 3.0 * (minus * minus + tau * tau) > metal[2] * metal[2])


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
    elastic: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    springs: Floats,
    flowing: Bools,
    stored: Floats,
    dissipated: Floats,
) -> None:
    """Fill per triangle the six spring forces and the energies.

    A triangle that never flowed and whose two faces do not yield is elastic throughout (the equivalent stress
    is convex in height): its springs are then the constant ``elastic`` times the six extensions.

    Parameters
    ----------
    triangle_hinges : shape (m, 3), hinge of each edge (edge i is opposite corner i), -1 at a rim
    elastic : shape (m, 6, 6), stiffness of the six springs while nothing flows
    springs : filled, shape (m, 6), derivative of the energy by (e0, e1, e2, th0, th1, th2)
    flowing : filled, shape (m,), whether a layer flows here (the stiffness is then not ``elastic``)
    stored, dissipated : filled, shape (m,) [J]
    """
    q = np.empty(6)
    strain = np.empty(3)
    curvature = np.empty(3)
    resultant = np.empty(6)
    scratch = np.empty((5, 3))
    for t in range(triangles.shape[0]):
        _strains(
            points, triangles[t], triangle_hinges[t], angle, rest_angle, rest_length2[t], to_strain[t],
            to_curvature[t], q, strain, curvature,
        )  # fmt: skip
        top = heights[heights.shape[0] - 1] * thickness[t] * form_ratio[t]
        if (
            _is_virgin(plastic_old[t], hardening_old[t])
            and not _face_yields(strain, curvature, top, metal[t])
            and not _face_yields(strain, curvature, -top, metal[t])
        ):
            energy = 0.0
            for i in range(6):
                value = 0.0
                for j in range(6):
                    value += elastic[t, i, j] * q[j]
                springs[t, i] = value
                energy += value * q[i]
            stored[t] = 0.5 * energy
            dissipated[t] = 0.0
            flowing[t] = False
            plastic[t] = 0.0
            hardening[t] = 0.0
            continue
        psi, heat, flowing[t] = section_forces(
            strain, curvature, thickness[t], form_ratio[t], metal[t], heights, weights, plastic_old[t],
            hardening_old[t], plastic[t], hardening[t], resultant, scratch,
        )  # fmt: skip
        stored[t] = psi * area[t]
        dissipated[t] = heat * area[t]
        for i in range(3):
            edge = 0.0
            turn = 0.0
            for j in range(3):
                edge += to_strain[t, j, i] * resultant[j]
                turn += to_curvature[t, j, i] * resultant[3 + j]
            springs[t, i] = edge * area[t]
            springs[t, 3 + i] = turn * area[t]


@njit(cache=True)
def triangle_stiffness(
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
    wanted: Bools,
    stiffness: Floats,
) -> None:
    """Fill the second derivative of the energy by the six springs, shape (m, 6, 6), where ``wanted``."""
    q = np.empty(6)
    strain = np.empty(3)
    curvature = np.empty(3)
    resultant = np.empty(6)
    section = np.empty((6, 6))
    scratch = np.empty((5, 3))
    g = np.zeros((6, 6))
    half = np.empty((6, 6))
    plastic = np.empty((heights.shape[0], 3))
    hardening = np.empty(heights.shape[0])
    for t in range(triangles.shape[0]):
        if not wanted[t]:
            continue
        _strains(
            points, triangles[t], triangle_hinges[t], angle, rest_angle, rest_length2[t], to_strain[t],
            to_curvature[t], q, strain, curvature,
        )  # fmt: skip
        section_response(
            strain, curvature, thickness[t], form_ratio[t], metal[t], heights, weights, plastic_old[t],
            hardening_old[t], plastic, hardening, resultant, section, scratch,
        )  # fmt: skip
        for i in range(3):
            for j in range(3):
                g[i, j] = to_strain[t, i, j]
                g[3 + i, 3 + j] = to_curvature[t, i, j]
        for i in range(6):
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
def _spring_rows(
    points: Floats, corners: Ints, own_hinges: Ints, hinges: Ints, gradient: Floats, rest_length2: Floats,
    patch: Ints, edge: Floats, turn: Floats, flap: Floats,
) -> None:  # fmt: skip
    """Fill how the six springs of one triangle change with its nodes.

    edge, turn : shape (3, 9), by the corners;  flap : shape (3, 3), of each hinge by its own flap
    """
    edge[:, :] = 0.0
    turn[:, :] = 0.0
    flap[:, :] = 0.0
    for i in range(3):
        ia = (i + 1) % 3
        ib = (i + 2) % 3
        for k in range(3):
            d = (points[corners[ib], k] - points[corners[ia], k]) / rest_length2[i]
            edge[i, 3 * ib + k] = d
            edge[i, 3 * ia + k] = -d
        h = own_hinges[i]
        if h < 0:
            continue
        for j in range(4):
            node = hinges[h, j]
            slot = -1
            for s in range(3):
                if patch[s] == node:
                    slot = s
            for k in range(3):
                if slot < 0:
                    flap[i, k] = gradient[h, j, k]
                else:
                    turn[i, 3 * slot + k] = gradient[h, j, k]


@njit(cache=True)
def _put(values: Floats, code: int, part: Floats) -> None:
    """Add a 3x3 part to a block, transposed where the code is a complement."""
    if code < 0:
        block = values[~code]
        for i in range(3):
            for j in range(3):
                block[j, i] += part[i, j]
    else:
        block = values[code]
        for i in range(3):
            for j in range(3):
                block[i, j] += part[i, j]


@njit(cache=True)
def assemble_triangles(
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    hinges: Ints,
    gradient: Floats,
    rest_length2: Floats,
    springs: Floats,
    elastic: Floats,
    flowing: Bools,
    stiffness: Floats,
    patch: Ints,
    patch_block: Ints,
    membrane_floor: float,
    values: Floats,
) -> None:
    """Add the material and membrane-geometric stiffness of all triangles to ``values``.

    Parameters
    ----------
    springs : shape (m, 6), spring forces of the geometric part
    elastic, stiffness : shape (m, 6, 6), of the springs; the second where ``flowing``
    patch : shape (m, 6), the triangle's corners then the opposite corner of each neighbour (-1: none)
    patch_block : shape (m, 6, 6), block index of each node pair; bit-complement (~index) when the stored
        block is the transpose
    membrane_floor : lower limit of the membrane spring forces in the geometric part (0 keeps
        the positive part alone, -inf all)
    values : shape (blocks, 3, 3), added to
    """
    g = np.empty((6, 9))
    kg = np.empty((6, 9))
    flap = np.empty((3, 3))
    part = np.empty((3, 3))
    edge, turn = g[:3], g[3:]
    for t in range(triangles.shape[0]):
        _spring_rows(
            points,
            triangles[t],
            triangle_hinges[t],
            hinges,
            gradient,
            rest_length2[t],
            patch[t],
            edge,
            turn,
            flap,
        )
        k6 = stiffness[t] if flowing[t] else elastic[t]
        code = patch_block[t]
        for i in range(6):
            for c in range(9):
                value = 0.0
                for k in range(6):
                    value += k6[i, k] * g[k, c]
                kg[i, c] = value
        for p in range(3):
            for q in range(p + 1):
                for i in range(3):
                    for j in range(3):
                        value = 0.0
                        for k in range(6):
                            value += g[k, 3 * p + i] * kg[k, 3 * q + j]
                        part[i, j] = value
                _put(values, code[p, q], part)
        for p in range(3):
            if patch[t, 3 + p] < 0:
                continue
            for q in range(3):  # a flap moves its own hinge only
                for i in range(3):
                    for j in range(3):
                        part[i, j] = flap[p, i] * kg[3 + p, 3 * q + j]
                _put(values, code[3 + p, q], part)
            for q in range(p + 1):
                if patch[t, 3 + q] < 0:
                    continue
                shared = p != q and patch[t, 3 + p] == patch[t, 3 + q]  # two neighbours share a corner
                for i in range(3):
                    for j in range(3):
                        part[i, j] = flap[p, i] * k6[3 + p, 3 + q] * flap[q, j]
                _put(values, code[3 + p, 3 + q], part)
                if shared:
                    _put(values, code[3 + p, 3 + q], part.T)
        for i in range(3):
            ia = (i + 1) % 3
            ib = (i + 2) % 3
            s = max(springs[t, i], membrane_floor) / rest_length2[t, i]
            off = code[max(ia, ib), min(ia, ib)]
            off = ~off if off < 0 else off
            for k in range(3):
                values[code[ia, ia], k, k] += s
                values[code[ib, ib], k, k] += s
                values[off, k, k] -= s


@njit(cache=True)
def assemble_hinges(points: Floats, hinges: Ints, moments: Floats, hinge_block: Ints, values: Floats) -> None:
    """Add the geometric stiffness moment * d2 theta of all hinges to ``values`` (blocks, 3, 3)."""
    hessian = np.empty((12, 12))
    room = np.empty((19, 3))
    part = np.empty((3, 3))
    for h in range(hinges.shape[0]):
        m = moments[h]
        if m == 0.0:
            continue
        hinge_hessian(
            points[hinges[h, 0]],
            points[hinges[h, 1]],
            points[hinges[h, 2]],
            points[hinges[h, 3]],
            hessian,
            room,
        )
        for p in range(4):
            for q in range(p + 1):
                if p == 3 and q == 2:
                    continue
                for i in range(3):
                    for j in range(3):
                        part[i, j] = m * hessian[3 * p + i, 3 * q + j]
                _put(values, hinge_block[h, p, q], part)


@njit(cache=True)
def hinge_moments(triangle_hinges: Ints, springs: Floats, moments: Floats) -> None:
    """Fill the moment of each hinge [N m]: the sum of its two triangles' springs."""
    moments[:] = 0.0
    for t in range(triangle_hinges.shape[0]):
        for i in range(3):
            h = triangle_hinges[t, i]
            if h >= 0:
                moments[h] += springs[t, 3 + i]
