"""Closest points on triangles: hand cases, and the slow routine of an independent library (trimesh)."""

from __future__ import annotations

import numpy as np
import pytest

from meshes import nearest
from meshes.door import INNER_PARTS, DoorMesh
from meshes.files import closest_points
from meshes.nearest import nearest_on_triangles
from meshes.part import MeshError

CORNER = np.array([[0.0, 0, 0], [4.0, 0, 0], [0, 3.0, 0]])


@pytest.mark.parametrize(
    ("query", "weights", "distance"),
    [
        ([1.0, 1.0, 2.0], [5 / 12, 1 / 4, 1 / 3], 2.0),  # over the face
        ([2.0, -1.0, 0.0], [0.5, 0.5, 0.0], 1.0),  # beside an edge
        ([3.2, 4.4, 0.0], [0.0, 0.32, 0.68], None),  # beside the slanted edge, see below
        ([-3.0, -4.0, 0.0], [1.0, 0.0, 0.0], 5.0),  # beyond a corner: 3-4-5
        ([0.0, 3.0, 0.0], [0.0, 0.0, 1.0], 0.0),  # on a corner
    ],
)
def test_hand_cases(query: list[float], weights: list[float], distance: float | None) -> None:
    if distance is None:  # foot on the line 3x + 4y = 12: (9.6 + 17.6 - 12) / 5 = 3.04
        distance = 3.04
        foot = np.array(query) - 3.04 * np.array([0.6, 0.8, 0.0])
        weights = [0.0, foot[0] / 4, foot[1] / 3]
    row, found, gap = nearest_on_triangles(np.array([query]), CORNER, np.array([[0, 1, 2]]))
    assert row.tolist() == [0]
    np.testing.assert_allclose(found[0], weights, rtol=0, atol=1e-14)
    np.testing.assert_allclose(gap, distance, rtol=0, atol=1e-14)


@pytest.mark.parametrize("parts", [("outer_skin",), INNER_PARTS])
def test_locate_agrees_with_an_independent_library(door: DoorMesh, parts: tuple[str, ...]) -> None:
    rng = np.random.default_rng(20)
    points = rng.uniform([-0.3, -0.4, -0.3], [1.3, 0.3, 0.9], (120, 3))
    triangle, weights, distance = door.locate(points, parts)
    foot = np.einsum("kc,kcx->kx", weights, door.surface.points[door.surface.triangles[triangle]])
    expected, gap, _ = closest_points(door.surface, points, parts)
    np.testing.assert_allclose(distance, gap, rtol=0, atol=1e-12)  # both round at 1e-16 of a metre
    np.testing.assert_allclose(
        foot, expected, rtol=0, atol=1e-8
    )  # root of that: feet on a ridge may differ more
    assert (weights >= -1e-15).all()
    np.testing.assert_allclose(weights.sum(axis=1), 1.0, rtol=1e-14)
    names = {door.surface.part_names[i] for i in door.surface.triangle_part[triangle]}
    assert names <= set(parts)


def test_points_of_the_sheets_are_found_where_they_are(door: DoorMesh) -> None:
    corner = door.surface.points[door.surface.triangles]
    rng = np.random.default_rng(4)
    weights = rng.dirichlet((2, 2, 2), len(corner))
    triangle, found, distance = door.locate(np.einsum("kc,kcx->kx", weights, corner))
    np.testing.assert_allclose(distance, 0.0, rtol=0, atol=1e-12)
    assert np.array_equal(triangle, np.arange(len(corner)))
    np.testing.assert_allclose(found, weights, rtol=0, atol=1e-11)


def test_blocks_change_nothing(door: DoorMesh, monkeypatch: pytest.MonkeyPatch) -> None:
    points = np.random.default_rng(1).uniform(-0.5, 1.5, (37, 3))
    whole = door.locate(points)
    monkeypatch.setattr(nearest, "PAIRS_AT_ONCE", 1)
    for one, other in zip(whole, door.locate(points), strict=True):
        assert np.array_equal(one, other)


def test_bad_queries_are_refused(door: DoorMesh) -> None:
    with pytest.raises(MeshError, match="points"):
        door.locate(np.zeros(3))
    with pytest.raises(MeshError, match="parts"):
        door.locate(np.zeros((1, 3)), ())
    with pytest.raises(MeshError, match="outer_skin"):
        door.locate(np.zeros((1, 3)), ("bonnet",))
    assert [len(part) for part in door.locate(np.zeros((0, 3)))] == [0, 0, 0]
