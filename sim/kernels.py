"""Triangles compiled: their springs' forces and stiffness.

One triangle carries three edge springs and three hinge springs.  The edge strains
e = (l^2 - L^2) / (2 L^2) give the Green strain T e; the three hinge angles give the curvature
W (theta - theta0).  The section (seven layers, plane stress) couples the three of each, so the
sheet is isotropic with the metal's own Poisson ratio.

Every kernel is tested against the plain functions of `sim.sheet` and `sim.yielding`.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel
from sim.hinge import hinge_angles
from sim.section import face_yields, is_virgin, section_forces, section_response
from sim.small import dot6

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


def quick_table(
    elastic: Floats, to_strain: Floats, to_curvature: Floats, metal: Floats, top_m: Floats
) -> Floats:
    """Return what a triangle needs that does not flow, shape (m, 25).

    Columns, each six numbers a symmetric 3x3 form of three extensions: stiffness of membrane and bending,
    equivalent stress squared in the middle and, from bending alone, at the outermost layer (``top_m``, shape
    (m,)); last the yield stress squared.
    """
    bulk = metal[:, 0] / (1.0 - metal[:, 1])
    shear = metal[:, 0] / (2.0 * (1.0 + metal[:, 1]))
    form = np.zeros((len(elastic), 3, 3))
    form[:, 0, 0] = form[:, 1, 1] = 0.25 * bulk**2 + 3.0 * shear**2
    form[:, 0, 1] = form[:, 1, 0] = 0.25 * bulk**2 - 3.0 * shear**2
    form[:, 2, 2] = 3.0 * shear**2
    middle = np.einsum("mki,mkl,mlj->mij", to_strain, form, to_strain)
    outer = top_m[:, None, None] ** 2 * np.einsum("mki,mkl,mlj->mij", to_curvature, form, to_curvature)
    i, j = np.array([0, 1, 2, 1, 2, 2]), np.array([0, 1, 2, 0, 0, 1])
    parts = [elastic[:, i, j], elastic[:, 3 + i, 3 + j], middle[:, i, j], outer[:, i, j], metal[:, 2:3] ** 2]
    return np.ascontiguousarray(np.concatenate(parts, axis=1))


@inlined
def _form(row: Floats, at: int, x: float, y: float, z: float) -> float:
    """Return the value of a symmetric form kept as six numbers from ``at``."""
    plain = row[at] * x * x + row[at + 1] * y * y + row[at + 2] * z * z
    mixed = row[at + 3] * x * y + row[at + 4] * x * z + row[at + 5] * y * z
    return float(plain + 2.0 * mixed)


@inlined
def _surely_elastic(row: Floats, q: Floats) -> bool:
    """Return whether no layer can yield: (|middle| + |outermost|)^2 is at most twice the sum of squares."""
    sum2 = _form(row, 12, q[0], q[1], q[2]) + _form(row, 18, q[3], q[4], q[5])
    return bool(2.0 * sum2 <= row[24])


@inlined
def _elastic_springs(row: Floats, q: Floats, springs: Floats) -> float:
    """Fill the six spring forces of a triangle that does not flow; return its energy [J]."""
    energy = 0.0
    for part in range(2):
        at, o = 6 * part, 3 * part
        x, y, z = q[o], q[o + 1], q[o + 2]
        springs[o] = row[at] * x + row[at + 3] * y + row[at + 4] * z
        springs[o + 1] = row[at + 3] * x + row[at + 1] * y + row[at + 5] * z
        springs[o + 2] = row[at + 4] * x + row[at + 5] * y + row[at + 2] * z
        energy += springs[o] * x + springs[o + 1] * y + springs[o + 2] * z
    return 0.5 * energy


@inlined
def _edges(points: Floats, corners: Ints, sides: Floats) -> None:
    """Fill the edge vectors of a triangle, edge i from corner i + 1 to i + 2, shape (3, 3) [m]."""
    a, b, c = corners[0], corners[1], corners[2]
    for k in range(3):
        x, y, z = points[a, k], points[b, k], points[c, k]
        sides[0, k] = z - y
        sides[1, k] = x - z
        sides[2, k] = y - x


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
    quick: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    filled: Bools,
    springs: Floats,
    flowing: Bools,
    stored: Floats,
    dissipated: Floats,
    forces: Floats,
    moments: Floats,
) -> None:
    """Fill per triangle the six spring forces and the energies; add up forces of edges, moments of hinges.

    A triangle that never flowed and whose two faces do not yield is elastic throughout (the equivalent stress
    is convex in height): its springs are then constant forms of the six extensions.

    Parameters
    ----------
    triangle_hinges : shape (m, 3), hinge of each edge (edge i is opposite corner i), -1 at a rim
    quick : shape (m, 25), of `quick_table`
    filled : shape (m,), where ``plastic`` and ``hardening`` hold something; both are zero elsewhere
    springs : filled, shape (m, 6), derivative of the energy by (e0, e1, e2, th0, th1, th2)
    flowing : filled, shape (m,), whether a layer flows here (the stiffness is then not the elastic one)
    stored, dissipated : filled, shape (m,) [J]
    forces : added to, shape (n, 3) [N];  moments : added to, shape (k,) [N m]
    """
    q, sides = np.empty(6), np.empty((3, 3))
    strain, curvature, resultant = np.empty(3), np.empty(3), np.empty(6)
    last = heights.shape[0] - 1
    for t in range(triangles.shape[0]):
        _edges(points, triangles[t], sides)
        for i in range(3):
            l2 = sides[i, 0] * sides[i, 0] + sides[i, 1] * sides[i, 1] + sides[i, 2] * sides[i, 2]
            q[i] = 0.5 * (l2 / rest_length2[t, i] - 1.0)
            h = triangle_hinges[t, i]
            q[3 + i] = angle[h] - rest_angle[h] if h >= 0 else 0.0
        virgin = is_virgin(hardening_old[t])
        elastic = virgin and _surely_elastic(quick[t], q)
        if not elastic:
            for i in range(3):
                strain[i] = to_strain[t, i, 0] * q[0] + to_strain[t, i, 1] * q[1] + to_strain[t, i, 2] * q[2]
                curvature[i] = (
                    to_curvature[t, i, 0] * q[3] + to_curvature[t, i, 1] * q[4] + to_curvature[t, i, 2] * q[5]
                )
            top = heights[last] * thickness[t] * form_ratio[t]
            elastic = (
                virgin
                and not face_yields(strain, curvature, top, metal[t])
                and not face_yields(strain, curvature, -top, metal[t])
            )
        if elastic:
            stored[t] = _elastic_springs(quick[t], q, springs[t])
            dissipated[t] = 0.0
            flowing[t] = False
            if filled[t]:
                plastic[t] = 0.0
                hardening[t] = 0.0
                filled[t] = False
        else:
            filled[t] = True
            psi, heat, flowing[t] = section_forces(
                strain, curvature, thickness[t], form_ratio[t], metal[t], heights, weights, plastic_old[t],
                hardening_old[t], plastic[t], hardening[t], resultant,
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
        s0 = springs[t, 0] / rest_length2[t, 0]
        s1 = springs[t, 1] / rest_length2[t, 1]
        s2 = springs[t, 2] / rest_length2[t, 2]
        a, b, c = triangles[t, 0], triangles[t, 1], triangles[t, 2]
        for k in range(3):
            f0, f1, f2 = s0 * sides[0, k], s1 * sides[1, k], s2 * sides[2, k]
            forces[a, k] += f1 - f2
            forces[b, k] += f2 - f0
            forces[c, k] += f0 - f1
        for i in range(3):
            h = triangle_hinges[t, i]
            if h >= 0:
                moments[h] += springs[t, 3 + i]


@kernel
def sheet_forces(
    points: Floats,
    triangles: Ints,
    triangle_hinges: Ints,
    hinges: Ints,
    angle_old: Floats,
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
    quick: Floats,
    plastic_old: Floats,
    hardening_old: Floats,
    plastic: Floats,
    hardening: Floats,
    filled: Bools,
    springs: Floats,
    flowing: Bools,
    stored: Floats,
    dissipated: Floats,
    angle: Floats,
    gradient: Floats,
    moments: Floats,
    forces: Floats,
) -> None:
    """Evaluate all sheets: hinge angles and gradients, triangle springs, forces (n, 3) added up [N].

    angle_old : shape (k,) [rad], committed: an angle is known but for whole turns and stays next to it
    """
    hinge_angles(points, hinges, angle, gradient)
    whole = 2.0 * np.pi
    for h in range(hinges.shape[0]):
        angle[h] += whole * np.rint((angle_old[h] - angle[h]) / whole)
        moments[h] = 0.0
    triangle_forces(
        points, triangles, triangle_hinges, angle, rest_angle, rest_length2, to_strain, to_curvature, area,
        thickness, form_ratio, metal, heights, weights, quick, plastic_old, hardening_old, plastic, hardening,
        filled, springs, flowing, stored, dissipated, forces, moments,
    )  # fmt: skip
    for h in range(hinges.shape[0]):
        m = moments[h]
        for j in range(4):
            node = hinges[h, j]
            for k in range(3):
                forces[node, k] += m * gradient[h, j, k]


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
