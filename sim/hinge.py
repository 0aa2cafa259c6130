"""Hinges compiled: the angle between two triangles over their common edge, its slope and curvature.

Tested against `sim.sheet.hinge_angle` and finite differences.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.small import cross, put

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@kernel
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


@kernel
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


@kernel
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


@kernel
def hinge_moments(triangle_hinges: Ints, springs: Floats, moments: Floats) -> None:
    """Fill the moment of each hinge [N m]: the sum of its two triangles' springs."""
    moments[:] = 0.0
    for t in range(triangle_hinges.shape[0]):
        for i in range(3):
            h = triangle_hinges[t, i]
            if h >= 0:
                moments[h] += springs[t, 3 + i]


@kernel
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
                put(values, hinge_block[h, p, q], part)
