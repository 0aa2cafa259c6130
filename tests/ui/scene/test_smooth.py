"""Rounded metal: it stays on its nodes, and its masks are the published ones.

Sources
-------
[dyn-gregory-levin-1987] Comput. Aided Geom. Des. 4, 257-268: the four-point mask, w = 1/16, gives back cubics
[dyn-levin-gregory-1990] ACM Trans. Graph. 9(2), 160-169: the butterfly mask with w = 1/16 on a regular net of
three directions does so too
trimesh's own splitting of triangles counts points and triangles independently
"""

from __future__ import annotations

import numpy as np
import pytest
import trimesh

from ui.scene import smooth


def net(columns: int, rows: int):
    """Return points (n, 2) of a regular net of three directions, and its triangles."""
    place = np.array([[c + 0.5 * r, r * np.sqrt(0.75)] for r in range(rows + 1) for c in range(columns + 1)])
    at = np.arange(len(place)).reshape(rows + 1, columns + 1)
    low = np.stack((at[:-1, :-1], at[:-1, 1:], at[1:, :-1]), axis=-1).reshape(-1, 3)
    high = np.stack((at[:-1, 1:], at[1:, 1:], at[1:, :-1]), axis=-1).reshape(-1, 3)
    return place, np.concatenate((low, high))


CUBE = trimesh.creation.box((1.0, 1.0, 1.0))


@pytest.mark.parametrize("levels", [0, 1, 2])
def test_nodes_stay_and_weights_sum_to_one(model, levels):
    surface = model.mesh.surface
    for part in (("outer_skin",), ("shut_face", "inner_panel", "latch_patch", "hinge_patch")):
        triangles = np.concatenate([surface.triangles_of(name) for name in part])
        nodes, local = np.unique(triangles, return_inverse=True)
        fine = smooth.refine(surface.points[nodes], local.reshape(-1, 3), levels)
        moved = np.random.default_rng(3).normal(size=(len(nodes), 3))
        np.testing.assert_array_equal((fine.to_fine @ moved)[: len(nodes)], moved)
        np.testing.assert_allclose(fine.to_fine.sum(axis=1), 1.0, rtol=0, atol=1e-14)
        np.testing.assert_array_equal(fine.along[:, [0, -1]], smooth.find_edges(local.reshape(-1, 3)).ends)


def test_split_counts_are_those_of_an_independent_library(model):
    triangles = model.mesh.surface.triangles_of("outer_skin")
    nodes, local = np.unique(triangles, return_inverse=True)
    points, local = model.mesh.surface.points[nodes], local.reshape(-1, 3)
    fine = smooth.refine(points, local, 1)
    theirs, faces = trimesh.remesh.subdivide(points, local)
    assert fine.to_fine.shape[0] == len(theirs)
    assert len(fine.triangles) == len(faces)


@pytest.mark.parametrize("power", [(1, 0), (1, 1), (2, 1), (0, 3), (3, 0), (1, 2)])
def test_cubics_are_given_back_inside_a_regular_net(power):
    place, triangles = net(8, 8)
    height = place[:, 0] ** power[0] * place[:, 1] ** power[1]
    fine = smooth.refine(np.column_stack((place, 0 * height)), triangles, 1)
    new = fine.to_fine @ np.column_stack((place, height))
    edges = smooth.find_edges(triangles)
    rim = np.unique(edges.ends[edges.sides[:, 1] < 0])
    away = [not np.isin(triangles[np.isin(triangles, pair).any(axis=1)], rim).any() for pair in edges.ends]
    inside = len(place) + np.flatnonzero(away)
    assert len(inside) > 20
    exact = new[inside, 0] ** power[0] * new[inside, 1] ** power[1]
    np.testing.assert_allclose(new[inside, 2], exact, rtol=1e-12, atol=1e-10)


def test_cubics_are_given_back_along_a_rim():
    place, triangles = net(8, 3)
    fine = smooth.refine(np.column_stack((place, np.zeros(len(place)))), triangles, 1)
    cubic = lambda x: x**3 - 4.0 * x**2 + x  # noqa: E731
    new = fine.to_fine @ np.column_stack((place, cubic(place[:, 0])))
    along = [
        k for k, (a, b) in enumerate(smooth.find_edges(triangles).ends) if b == a + 1 and a >= 1 and b <= 7
    ]
    middle = len(place) + np.array(along)
    np.testing.assert_allclose(new[middle, 2], cubic(new[middle, 0]), rtol=1e-12, atol=1e-10)


def test_a_cube_keeps_its_corners_sharp():
    """Three faces meet in each of eight corners: flat shading needs 24 points; a flat net needs none more."""
    edges = smooth.find_edges(CUBE.faces)
    sharp = smooth.fold_angles(CUBE.vertices, CUBE.faces, edges) > smooth.SHARP_ANGLE_RAD
    assert sharp.sum() == 12
    triangles, source = smooth.split_corners(CUBE.faces, edges, sharp)
    assert len(source) == 24
    np.testing.assert_array_equal(source[triangles], CUBE.faces)
    place, flat = net(4, 4)
    edges = smooth.find_edges(flat)
    assert len(smooth.split_corners(flat, edges, np.zeros(len(edges.ends), bool))[1]) == len(place)


def test_fold_angles_are_an_independent_librarys():
    shape = trimesh.creation.icosphere(subdivisions=2)
    edges = smooth.find_edges(shape.faces)
    ours = smooth.fold_angles(np.asarray(shape.vertices), np.asarray(shape.faces), edges)
    theirs = dict(
        zip(map(tuple, np.sort(shape.face_adjacency_edges, axis=1)), shape.face_adjacency_angles, strict=True)
    )
    expected = [theirs[tuple(pair)] for pair in edges.ends]
    np.testing.assert_allclose(ours, expected, rtol=0, atol=1e-7)  # arccos near 1 loses half the digits


def test_three_triangles_on_an_edge_are_refused():
    with pytest.raises(ValueError, match="three triangles"):
        smooth.find_edges(np.array([[0, 1, 2], [0, 1, 3], [1, 0, 4]]))
