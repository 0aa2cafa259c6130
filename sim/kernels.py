"""Triangles compiled: forces, stiffness, block assembly.

One triangle carries three edge springs and three hinge springs.  The edge strains
e = (l^2 - L^2) / (2 L^2) give the Green strain T e; the three hinge angles give the curvature
W (theta - theta0).  The section (seven layers, plane stress) couples the three of each, so the
sheet is isotropic with the metal's own Poisson ratio.

Every kernel is tested against the plain functions of `sim.sheet` and `sim.yielding`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.section import face_yields, is_virgin, section_forces, section_response
from sim.small import dot6, put

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@kernel
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


@kernel
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
            is_virgin(plastic_old[t], hardening_old[t])
            and not face_yields(strain, curvature, top, metal[t])
            and not face_yields(strain, curvature, -top, metal[t])
        ):
            energy = 0.0
            for i in range(6):
                value = dot6(elastic[t, i], q)
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


@kernel
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
                half[i, j] = dot6(section[i], g[:, j])
        for i in range(6):
            for j in range(6):
                stiffness[t, i, j] = dot6(g[:, i], half[:, j]) * area[t]


@kernel
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


@kernel
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


@kernel
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
                kg[i, c] = dot6(k6[i], g[:, c])
        for p in range(3):
            for q in range(p + 1):
                for i in range(3):
                    for j in range(3):
                        part[i, j] = dot6(g[:, 3 * p + i], kg[:, 3 * q + j])
                put(values, code[p, q], part)
        for p in range(3):
            if patch[t, 3 + p] < 0:
                continue
            for q in range(3):  # a flap moves its own hinge only
                for i in range(3):
                    for j in range(3):
                        part[i, j] = flap[p, i] * kg[3 + p, 3 * q + j]
                put(values, code[3 + p, q], part)
            for q in range(p + 1):
                if patch[t, 3 + q] < 0:
                    continue
                shared = p != q and patch[t, 3 + p] == patch[t, 3 + q]  # two neighbours share a corner
                for i in range(3):
                    for j in range(3):
                        part[i, j] = flap[p, i] * k6[3 + p, 3 + q] * flap[q, j]
                put(values, code[3 + p, 3 + q], part)
                if shared:
                    put(values, code[3 + p, 3 + q], part.T)
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
