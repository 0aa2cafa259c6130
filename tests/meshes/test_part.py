"""Surfaces: what they refuse, that nobody can write into them, and that two mirror images undo each other."""

from __future__ import annotations

import pickle

import numpy as np
import pytest

from meshes.part import MeshError, Surface, triangle_areas_and_normals

POINTS = np.array([[0.0, 0.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0], [1.0, 0.0, 1.0], [2.0, 1.0, 0.0]])
TRIANGLES = np.array([[0, 2, 1], [1, 2, 3]])


def plate(**changes: object) -> Surface:
    values: dict[str, object] = {
        "points": POINTS,
        "triangles": TRIANGLES,
        "triangle_part": [0, 1],
        "part_names": ("left", "right"),
        "nodes": {"rim": [0, 1]},
        "chains": {"rod": [3, 4]},
    }
    return Surface(**{**values, **changes})  # type: ignore[arg-type]


def test_parts_and_nodes_are_found_by_name() -> None:
    surface = plate()
    assert surface.triangles_of("right").tolist() == [[1, 2, 3]]
    assert surface.nodes_of(["left"]).tolist() == [0, 1, 2]
    assert surface.nodes_of(["left", "right"]).tolist() == [0, 1, 2, 3]
    assert surface.with_nodes("end", [4]).nodes["end"].tolist() == [4]
    assert "end" not in surface.nodes
    assert surface.node_count == 5


@pytest.mark.parametrize(
    ("changes", "parameter"),
    [
        ({"points": POINTS[:, :2]}, "points"),
        ({"points": np.full((5, 3), np.nan)}, "points"),
        ({"triangles": np.array([[0, 1, 5]]), "triangle_part": [0]}, "triangles"),
        ({"triangles": np.array([[0, 1, -1]]), "triangle_part": [0]}, "triangles"),
        ({"triangles": np.array([[0.5, 1, 2]]), "triangle_part": [0]}, "triangles"),
        ({"triangles": np.array([[0, 1, 1]]), "triangle_part": [0]}, "triangles"),
        ({"triangle_part": [0]}, "triangle_part"),
        ({"triangle_part": [0, 2]}, "triangle_part"),
        ({"part_names": ("left", "left")}, "part_names"),
        ({"nodes": {"rim": [5]}}, "rim"),
        ({"chains": {"rod": [3]}}, "rod"),
        ({"chains": {"rod": [3, 3]}}, "rod"),
    ],
)
def test_what_does_not_fit_is_refused_by_name(changes: dict[str, object], parameter: str) -> None:
    with pytest.raises(MeshError) as caught:
        plate(**changes)
    assert caught.value.parameter == parameter
    assert str(caught.value).startswith(parameter)


def test_unknown_names_are_refused_with_the_known_ones() -> None:
    with pytest.raises(MeshError, match="left"):
        plate().triangles_of("roof")
    with pytest.raises(KeyError, match="rim"):
        plate().nodes["roof"]


def test_nothing_can_be_written_into_a_surface_and_nothing_shines_through() -> None:
    given = POINTS.copy()
    surface = plate(points=given)
    given[0] = 9.0
    assert surface.points[0].tolist() == [0.0, 0.0, 0.0]
    for array in (
        surface.points,
        surface.triangles,
        surface.triangle_part,
        surface.nodes["rim"],
        surface.chains["rod"],
    ):
        with pytest.raises(ValueError, match="read-only"):
            array[0] = 0


def test_a_surface_that_went_through_a_process_boundary_is_equal_and_still_read_only() -> None:
    surface = plate()
    twin = pickle.loads(pickle.dumps(surface))
    assert np.array_equal(twin.points, surface.points)
    assert np.array_equal(twin.triangles, surface.triangles)
    assert twin.part_names == surface.part_names
    assert twin.nodes["rim"].tolist() == [0, 1]
    assert not (twin.points.flags.writeable or twin.nodes["rim"].flags.writeable)
    error = pickle.loads(pickle.dumps(MeshError("length_m", "is too short")))
    assert (error.parameter, str(error)) == ("length_m", "length_m: is too short")


def test_the_mirror_image_turns_normals_with_the_sheet_and_is_undone_by_another() -> None:
    surface = plate()
    _, normal = triangle_areas_and_normals(surface.points, surface.triangles)
    mirrored = surface.mirrored()
    _, turned = triangle_areas_and_normals(mirrored.points, mirrored.triangles)
    assert np.array_equal(turned, normal * [1, -1, 1])
    twice = mirrored.mirrored()
    assert np.array_equal(twice.points, surface.points)
    assert np.array_equal(twice.triangles, surface.triangles)
    assert twice.nodes["rim"].tolist() == surface.nodes["rim"].tolist()


def test_area_and_normal_of_a_3_4_5_triangle() -> None:
    area, normal = triangle_areas_and_normals(
        np.array([[0.0, 0, 0], [3, 0, 0], [0, 4, 0]]), np.array([[0, 1, 2]])
    )
    assert area.tolist() == [6.0]  # half of 3 x 4
    assert normal.tolist() == [[0.0, 0.0, 1.0]]
