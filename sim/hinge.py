"""Hinges compiled: the angle between two triangles over their common edge, and its slope.

Tested against `sim.sheet.hinge_angle` and finite differences.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel
from sim.small import cross

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
