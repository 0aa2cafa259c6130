"""Where a tip of a given depth lies: stations along the hem, and the way inboard over bend to inner face."""

from __future__ import annotations

import numpy as np
import pytest

from meshes.door import INNER_PARTS, DoorMesh
from meshes.part import MeshError
from meshes.section import inward_direction

EDGES = ("hinge_edge", "sill_edge", "latch_edge")


@pytest.mark.parametrize("edge", EDGES)
@pytest.mark.parametrize("share", [0.02, 0.3, 0.5, 0.77, 0.98])
def test_a_height_or_distance_comes_back_from_its_station(door: DoorMesh, edge: str, share: float) -> None:
    axis, along = (
        (0, share * door.shape.sill_length_m) if edge == "sill_edge" else (2, share * door.shape.height_m)
    )
    station = door.edge_station(edge, along)
    assert door.edge_of_station(station) == edge
    kind, point = door.section_point(station, 0.0)
    assert kind == "hem_lip"
    np.testing.assert_allclose(point[axis], along, rtol=0, atol=1e-12)
    assert point[1] == 0.0


@pytest.mark.parametrize("edge", EDGES)
def test_the_way_inboard_is_continuous_and_as_long_as_the_depth(door: DoorMesh, edge: str) -> None:
    """A millimetre of depth is one along the inner face, and sqrt(1 + lean^2) along the leaning shut face."""
    shape = door.shape
    station = door.edge_station(edge, 0.4)
    depth = np.linspace(0.0, 0.25, 1001)
    kind, point = zip(*(door.section_point(station, d) for d in depth), strict=True)
    step = np.linalg.norm(np.diff(np.array(point), axis=0), axis=1) / np.diff(depth)
    lean = np.hypot(1.0, shape.shut_face_inset_m / shape.shut_face_depth_m)
    on_face = depth[1:] <= shape.shut_face_depth_m
    np.testing.assert_allclose(step[on_face], lean, rtol=1e-9)
    np.testing.assert_allclose(step[~on_face][1:], 1.0, rtol=1e-9)
    assert step.max() <= lean * (1 + 1e-9)  # no jump at hem width or bend
    expected = np.where(
        depth <= shape.hem_width_m,
        "hem_lip",
        np.where(depth <= shape.shut_face_depth_m, "shut_face", "inner_face"),
    )
    assert list(kind) == expected.tolist()


@pytest.mark.parametrize("edge", EDGES)
def test_the_tip_lies_on_the_inner_structure_and_square_to_the_edge(door: DoorMesh, edge: str) -> None:
    station = door.edge_station(edge, 0.35)
    first, last = door.surface.points[door.hem_skin[list(door.edges[edge])]]
    along = (last - first) / np.linalg.norm(last - first)
    lip = door.section_point(station, 0.0)[1]
    for depth in (0.0, 0.005, 0.03, 0.05, 0.08, 0.1, 0.12, 0.2):
        point = door.section_point(station, depth)[1]
        assert door.locate(point[None], INNER_PARTS)[2][0] < 1e-12
        assert abs((point - lip) @ along) < 1e-12
    middle = door.surface.points[door.surface.nodes["inner_mid"]].mean(axis=0)
    assert inward_direction(door, station) @ (middle - lip) > 0


def test_corners_and_ends_of_the_hem_have_sections_too(door: DoorMesh) -> None:
    for station in (0.0, *(door.hem_station_m[door.edges[edge][1]] for edge in EDGES)):
        for depth in (0.0, 0.05, 0.1, 0.2):
            assert np.isfinite(door.section_point(station, depth)[1]).all()
    assert door.edge_of_station(float(door.hem_station_m[-1]) + 1e-12) == "latch_edge"
    assert door.edge_of_station(-1e-12) == "hinge_edge"


@pytest.mark.parametrize("mirrored", [False, True])
def test_the_outline_runs_from_skin_over_lip_and_bend_to_the_inner_panel(
    door: DoorMesh, mirrored: bool
) -> None:
    shown = door.mirrored() if mirrored else door
    for edge in EDGES:
        outline = shown.section_outline(shown.edge_station(edge, 0.3))
        assert set(outline) == {"skin", "hem", "shut_face", "bend", "inner_panel"}
        assert outline["skin"][-1].tolist() == pytest.approx([0.0, 0.0], abs=1e-12)
        assert (outline["skin"][:-1, 1] > 0).all()
        assert outline["hem"][:, 0].max() == door.shape.hem_width_m
        np.testing.assert_allclose(
            outline["shut_face"][[0, -1]], [[0.0, 0.0], [0.012, -0.1]], rtol=0, atol=1e-9
        )
        np.testing.assert_array_equal(outline["bend"][0], outline["shut_face"][-1])
        np.testing.assert_array_equal(outline["inner_panel"][0], outline["bend"][0])


@pytest.mark.parametrize(
    ("call", "parameter"),
    [
        (lambda door: door.edge_station("roof_edge", 0.3), "edge"),
        (lambda door: door.edge_station("latch_edge", 0.7), "along_m"),
        (lambda door: door.edge_station("sill_edge", -0.1), "along_m"),
        (lambda door: door.section_point(-0.1, 0.0), "station_m"),
        (lambda door: door.section_point(9.0, 0.0), "station_m"),
        (lambda door: door.section_point(float("nan"), 0.0), "station_m"),
        (lambda door: door.section_point(0.3, -0.001), "depth_m"),
        (lambda door: door.section_point(0.3, 0.9), "depth_m"),
    ],
)
def test_places_off_the_door_are_refused_by_name(door: DoorMesh, call: object, parameter: str) -> None:
    with pytest.raises(MeshError) as caught:
        call(door)  # type: ignore[operator]
    assert caught.value.parameter == parameter
