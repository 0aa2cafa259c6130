"""The rigid body: closed prisms beside the door, a shut line of given width, a rim under the inner face."""

from __future__ import annotations

import numpy as np
import pytest

from meshes.body import FACES, SEATS, BodyShape, BodyStub, build_body
from meshes.door import DoorMesh, DoorShape
from meshes.files import inspect_surface
from meshes.part import MeshError, triangle_areas_and_normals

PRISMS = ("latch_pillar", "latch_pillar_upper", "hinge_pillar", "hinge_pillar_upper", "rocker", "roof_rail")
TOWARDS = dict(zip(FACES, ([0, 1, 0], [0, -1, 0], [-1, 0, 0], [1, 0, 0], [0, 0, -1], [0, 0, 1]), strict=True))


@pytest.fixture(scope="module")
def body() -> BodyStub:
    return build_body(DoorShape())


@pytest.mark.parametrize("name", PRISMS)
@pytest.mark.parametrize("mirrored", [False, True])
def test_every_prism_is_closed_and_its_faces_point_where_their_names_say(
    body: BodyStub, name: str, mirrored: bool
) -> None:
    surface = (body.mirrored() if mirrored else body).surfaces[name]
    report = inspect_surface(surface)
    assert report.is_watertight
    assert report.is_winding_consistent
    assert report.volume_m3 is not None
    assert report.volume_m3 > 0
    for face, direction in TOWARDS.items():
        flip = np.array([1, -1, 1]) if mirrored else np.ones(3)
        normal = triangle_areas_and_normals(surface.points, surface.triangles_of(face))[1]
        assert (normal @ (direction * flip) > 0.5).all()


def test_a_straight_prism_has_length_times_section(body: BodyStub) -> None:
    """Cavalieri: an upright prism of constant section, leaning or not, holds section x height."""
    shape, door = body.shape, body.door
    found = inspect_surface(body.surfaces["latch_pillar"]).volume_m3
    expected = shape.pillar_width_m * shape.pillar_depth_m * (door.height_m + shape.gap_m)
    np.testing.assert_allclose(found, expected, rtol=1e-12)


@pytest.mark.parametrize("edge", ["latch_edge", "hinge_edge", "sill_edge"])
@pytest.mark.parametrize("along", [0.1, 0.36, 0.6])
def test_the_seat_across_the_gap_is_a_shut_line_away_from_the_lip(
    door: DoorMesh, body: BodyStub, edge: str, along: float
) -> None:
    seat = body.opposite_seat(edge, along)
    first, last = door.surface.points[door.hem_skin[list(door.edges[edge])]]
    direction = (last - first) / np.linalg.norm(last - first)
    away = np.linalg.norm(np.cross(seat - first, direction))  # distance from a line
    np.testing.assert_allclose(away, body.shape.gap_m, rtol=1e-9)
    assert 0.005 <= away <= 0.008  # shut lines of 5 to 8 mm: common practice, no source
    deeper = body.opposite_seat(edge, along, 0.04)
    np.testing.assert_allclose(deeper - seat, [0.0, -0.04, 0.0], rtol=0, atol=1e-15)


@pytest.mark.parametrize("seat", SEATS)
def test_every_seat_lies_on_the_body(body: BodyStub, seat: str) -> None:
    along = 0.6 if SEATS[seat] == 0 else 0.3
    point = body.seat_point(seat, along)
    assert point[SEATS[seat]] == pytest.approx(along, abs=1e-12)
    gaps = []
    for name in PRISMS:
        surface = body.surfaces[name]
        corner = surface.points[surface.triangles[:, 0]]
        normal = triangle_areas_and_normals(surface.points, surface.triangles)[1]
        gaps.append(((point - corner) * normal).sum(axis=1).max())  # convex: the greatest plane distance
    assert min(gaps) == pytest.approx(0.0, abs=1e-12)


def test_no_part_of_the_body_cuts_into_the_closed_door(door: DoorMesh, body: BodyStub) -> None:
    points = door.surface.points[np.unique(door.surface.triangles)]
    for name in PRISMS:
        surface = body.surfaces[name]
        corner = surface.points[surface.triangles[:, 0]]
        normal = triangle_areas_and_normals(surface.points, surface.triangles)[1]
        depth = ((points[:, None] - corner) * normal).sum(axis=2).max(axis=1)
        least = (
            body.shape.gap_m if not name.endswith("_upper") else 0.5 * body.shape.gap_m
        )  # raked past a corner
        assert depth.min() > 0.999 * least


def test_the_rim_lies_under_the_inner_face_just_inside_the_bend(door: DoorMesh, body: BodyStub) -> None:
    np.testing.assert_allclose(body.rim[:, 1], -door.shape.shut_face_depth_m, rtol=1e-14)
    distance = door.locate(body.rim, ("inner_panel",))[2]
    np.testing.assert_allclose(distance, 0.0, rtol=0, atol=1e-12)
    bend = door.surface.points[door.wall[-1]]
    middle = 0.5 * (body.rim[:-1] + body.rim[1:])
    away = np.linalg.norm(middle[:, None] - bend, axis=2).min(axis=1)
    assert (away > 0.4 * body.shape.flange_m).all()
    assert (away < body.shape.flange_m + 0.5 * door.shape.spacing_m).all()
    flange = body.surfaces["flange"]
    normal = triangle_areas_and_normals(flange.points, flange.triangles)[1]
    np.testing.assert_allclose(normal, [[0, 1, 0]] * 6, rtol=0, atol=1e-12)
    np.testing.assert_allclose(
        flange.points[:, 1], -door.shape.shut_face_depth_m - body.shape.seal_m, rtol=1e-14
    )


def test_the_left_hand_body_mirrors_every_seat(body: BodyStub) -> None:
    left = body.mirrored()
    for seat, axis in SEATS.items():
        along = 0.6 if axis == 0 else 0.3
        np.testing.assert_array_equal(left.seat_point(seat, along), body.seat_point(seat, along) * [1, -1, 1])
    np.testing.assert_array_equal(left.mirrored().rim, body.rim)


@pytest.mark.parametrize(
    ("call", "parameter"),
    [
        (lambda body: body.opposite_seat("roof_edge", 0.1), "edge"),
        (lambda body: body.seat_point("bonnet", 0.1), "seat"),
        (lambda body: body.seat_point("pillar_edge", 0.9), "along_m"),
        (lambda body: body.opposite_seat("latch_edge", 0.3, 0.5), "depth_m"),
        (lambda body: build_body(body.door, BodyShape(gap_m=0.0)), "gap_m"),
        (lambda body: build_body(body.door, BodyShape(rail_height_m=float("nan"))), "rail_height_m"),
        (lambda _: build_body(DoorShape(length_m=-1.0)), "length_m"),
    ],
)
def test_what_is_not_there_is_refused_by_name(body: BodyStub, call: object, parameter: str) -> None:
    with pytest.raises(MeshError) as caught:
        call(body)  # type: ignore[operator]
    assert caught.value.parameter == parameter
