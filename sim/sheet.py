"""Sheets at rest: hinges, patches and the constant matrices of every triangle.

Plain numpy, the slow and obvious form; `sim.kernels` evaluates the same laws.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


WORST_CONDITION = 1.0e6  # of a patch's hinge angles by curvature; near-equilateral ones are below 10


@dataclass(frozen=True)
class RestSheet:
    """Constant data of all triangles and hinges.

    hinges : shape (k, 4), (a, b, c, f);  rest_angle : shape (k,) [rad]
    triangle_hinges : shape (m, 3), -1 at a rim;  patch : shape (m, 6), corners then flaps (-1: none)
    rest_length2 : shape (m, 3) [m^2], edge i opposite corner i
    to_strain : shape (m, 3, 3), edge strains to Voigt strain
    to_curvature : shape (m, 3, 3) [1/m], hinge angles to curvature (kxx, kyy, 2 kxy)
    area : shape (m,) [m^2]
    """

    hinges: Ints
    rest_angle: Floats
    triangle_hinges: Ints
    patch: Ints
    rest_length2: Floats
    to_strain: Floats
    to_curvature: Floats
    area: Floats


def find_hinges(triangles: Ints) -> tuple[Ints, Ints]:
    """Return hinges (k, 4) and, per triangle, the hinge of each edge (m, 3), -1 at a rim.

    Raises
    ------
    ValueError
        When an edge belongs to more than two triangles, or two neighbours turn opposite ways.
    """
    owner: dict[tuple[int, int], tuple[int, int]] = {}
    for t, corners in enumerate(triangles.tolist()):
        for i in range(3):
            key = (corners[(i + 1) % 3], corners[(i + 2) % 3])
            if key in owner:
                raise ValueError(f"edge {key} is used twice the same way round: not a manifold sheet")
            owner[key] = (t, i)
    hinges: list[tuple[int, int, int, int]] = []
    of_triangle = np.full(triangles.shape, -1, dtype=np.int64)
    for (a, b), (t, i) in owner.items():
        if a < b and (b, a) in owner:
            s, j = owner[(b, a)]
            of_triangle[t, i] = of_triangle[s, j] = len(hinges)
            hinges.append((a, b, triangles[t, i], triangles[s, j]))
    return np.array(hinges, dtype=np.int64).reshape(-1, 4), of_triangle


def hinge_angle(points: Floats, hinges: Ints) -> Floats:
    """Return signed hinge angles, shape (k,) [rad]."""
    a, b, c, f = (points[hinges[:, i]] for i in range(4))
    e = b - a
    n1, n2 = np.cross(e, c - a), np.cross(f - a, e)
    sine = np.einsum("ij,ij->i", np.cross(n2, n1), e) / np.linalg.norm(e, axis=1)
    angle: Floats = np.arctan2(sine, np.einsum("ij,ij->i", n1, n2))
    return angle


def _flat_corners(points: Floats, triangles: Ints) -> Floats:
    """Return each triangle's corners in its own plane, shape (m, 3, 2) [m]."""
    a, b, c = (points[triangles[:, i]] for i in range(3))
    u = b - a
    length = np.linalg.norm(u, axis=1)
    u = u / length[:, None]
    w = c - a
    along = np.einsum("ij,ij->i", w, u)
    height = np.linalg.norm(w - along[:, None] * u, axis=1)
    flat = np.zeros((len(triangles), 3, 2))
    flat[:, 1, 0] = length
    flat[:, 2, 0] = along
    flat[:, 2, 1] = height
    return flat


def strain_matrices(flat: Floats) -> Floats:
    """Return the 3x3 from edge strains to Voigt strain of triangles; ``flat`` shape (m, 3, 2)."""
    d = flat[:, [2, 0, 1]] - flat[:, [1, 2, 0]]
    c, s = np.moveaxis(d / np.linalg.norm(d, axis=2, keepdims=True), 2, 0)
    inverse: Floats = np.asarray(np.linalg.inv(np.stack([c * c, s * s, c * s], axis=2)), dtype=float)
    return inverse


def _gradients(corners: Floats, values: Floats) -> Floats:
    """Return the gradients of linear fields with these corner values; shapes (m, 3, 2), (m, 3), (m, 2)."""
    edges = corners[:, 1:] - corners[:, :1]
    rise = (values[:, 1:] - values[:, :1])[..., None]
    slope: Floats = np.asarray(np.linalg.solve(edges, rise)[..., 0], dtype=float)
    return slope


def curvature_matrices(flat: Floats, flaps: Floats) -> Floats:
    """Return W with kappa = W theta for flat six-node patches, shape (m, 3, 3).

    The three hinge angles of w = (kxx x^2 + kyy y^2 + 2 kxy x y) / 2 are theta = B kappa; W = B^-1.

    Parameters
    ----------
    flat, flaps : shape (m, 3, 2) [m], corners and unfolded opposite corners

    Raises
    ------
    ValueError
        When the six corners of a patch lie on one conic (condition above 1e6): names the triangle.
    """
    b = np.zeros((len(flat), 3, 3))
    for column, field in enumerate(np.eye(3)):

        def w(p: Floats, field: Floats = field) -> Floats:
            x, y = p[..., 0], p[..., 1]
            value: Floats = 0.5 * (field[0] * x * x + field[1] * y * y + field[2] * x * y)
            return value

        own = _gradients(flat, w(flat))
        for i in range(3):
            start, end = flat[:, (i + 1) % 3], flat[:, (i + 2) % 3]
            d = (end - start) / np.linalg.norm(end - start, axis=1, keepdims=True)
            outward = np.stack([d[:, 1], -d[:, 0]], axis=1)
            corners = np.stack([end, start, flaps[:, i]], axis=1)
            b[:, i, column] = np.einsum("mi,mi->m", _gradients(corners, w(corners)) - own, outward)
    worst = int(np.argmax(np.linalg.cond(b))) if len(b) else 0
    if len(b) and not np.linalg.cond(b[worst]) < WORST_CONDITION:
        raise ValueError(
            f"triangle {worst}: it and its three neighbours have six corners on one conic, so their hinge "
            "angles cannot tell its curvature; move a node or keep the lattice near-equilateral"
        )
    inverse: Floats = np.asarray(np.linalg.inv(b), dtype=float)
    return inverse


def plate_matrix(poisson_ratio: float) -> Floats:
    """Return the isotropic plane-stress matrix over E / (1 - nu^2), Voigt, shape (3, 3)."""
    nu = poisson_ratio
    return np.array([[1.0, nu, 0.0], [nu, 1.0, 0.0], [0.0, 0.0, (1.0 - nu) / 2.0]])


def free_edges(w: Floats, free: NDArray[np.bool_], poisson_ratio: float) -> Floats:
    """Return W with the hinge angles at free edges eliminated by their natural condition.

    No moment acts on a free edge, so its angle takes the value of least energy for the other angles.
    """
    if not free.any():
        return w
    if free.all():
        return np.zeros((3, 3))
    k = w.T @ plate_matrix(poisson_ratio) @ w
    follow = np.eye(3)
    follow[free, :] = 0.0
    block = -np.linalg.solve(k[np.ix_(free, free)], k[np.ix_(free, ~free)])
    follow[np.ix_(free, ~free)] = block
    follow[:, free] = 0.0
    reduced: Floats = w @ follow
    return reduced


def rest_sheet(points: Floats, triangles: Ints, poisson_ratio: Floats) -> RestSheet:
    """Return the constant data of a sheet at rest.

    Parameters
    ----------
    points : shape (n, 3) [m];  triangles : shape (m, 3);  poisson_ratio : shape (m,)

    Raises
    ------
    ValueError
        When a triangle has no area or the sheet is not a manifold.
    """
    flat = _flat_corners(points, triangles)
    area = 0.5 * flat[:, 1, 0] * flat[:, 2, 1]
    if len(triangles) and area.min() <= 0.0:
        raise ValueError("a triangle has no area")
    hinges, of_triangle = find_hinges(triangles)
    patch, flaps = _patches(points, triangles, flat, hinges, of_triangle)
    length2 = np.sum((flat[:, [2, 0, 1]] - flat[:, [1, 2, 0]]) ** 2, axis=2)
    to_curvature = curvature_matrices(flat, flaps)
    for t in np.flatnonzero((of_triangle < 0).any(axis=1)):
        to_curvature[t] = free_edges(to_curvature[t], of_triangle[t] < 0, float(poisson_ratio[t]))
    return RestSheet(
        hinges,
        hinge_angle(points, hinges),
        of_triangle,
        patch,
        length2,
        strain_matrices(flat),
        to_curvature,
        area,
    )


def _patches(
    points: Floats, triangles: Ints, flat: Floats, hinges: Ints, of_triangle: Ints
) -> tuple[Ints, Floats]:
    """Return six nodes (m, 6), -1 for none, and unfolded opposite corners (m, 3, 2) of each triangle.

    At a free edge the triangle's own mirror image stands in; its angle is eliminated afterwards.
    """
    patch = np.full((len(triangles), 6), -1, dtype=np.int64)
    patch[:, :3] = triangles
    flaps = np.zeros((len(triangles), 3, 2))
    for i in range(3):
        ia, ib = (i + 1) % 3, (i + 2) % 3
        start, d = flat[:, ia], flat[:, ib] - flat[:, ia]
        size = np.linalg.norm(d, axis=1, keepdims=True)
        outward = np.stack([d[:, 1], -d[:, 0]], axis=1) / size
        h = of_triangle[:, i]
        has = h >= 0
        back = flat[:, i] - start
        along = np.einsum("mi,mi->m", back, d) / size[:, 0]
        rise = np.abs(np.einsum("mi,mi->m", back, outward))
        own_side = (
            (hinges[h, 2] == triangles[:, i]) & (hinges[h, 0] == triangles[:, ia]) if len(hinges) else has
        )
        tip = np.where(own_side, hinges[h, 3], hinges[h, 2]) if len(hinges) else triangles[:, i]
        edge = points[triangles[:, ib]] - points[triangles[:, ia]]
        unit = edge / np.linalg.norm(edge, axis=1, keepdims=True)
        reach = points[tip] - points[triangles[:, ia]]
        far = np.einsum("mi,mi->m", reach, unit)
        high = np.linalg.norm(reach - far[:, None] * unit, axis=1)
        along, rise = np.where(has, far, along), np.where(has, high, rise)
        patch[has, 3 + i] = tip[has]
        flaps[:, i] = start + along[:, None] * d / size + rise[:, None] * outward
    return patch, flaps
