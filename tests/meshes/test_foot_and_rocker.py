"""The pillar's flared foot and the rocker it stands on: places, areas and spots against closed forms."""

import numpy as np
import pytest

from meshes.part import MeshError
from meshes.pillar import PillarShape, build_pillar
from meshes.rocker import rocker_box, rocker_of_side
from meshes.side import member_cuts
from meshes.side_shape import SideShape

FLARE_M, LAP_M, WIDTH_M, DEPTH_M = 0.25, 0.08, 0.125, 0.095


def area(points, triangles):
    a, b, c = (points[triangles[:, k]] for k in range(3))
    return float(0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1).sum())


def flange(mesh, name):
    """Return the triangles of a flange."""
    own = np.isin(mesh.surface.triangles, mesh.surface.nodes[name]).all(axis=1)
    word = f"{name[:4]}_flange"
    return mesh.surface.triangles[own & (mesh.surface.triangle_part == mesh.surface.part_index(word))]


@pytest.fixture(scope="module")
def flared():
    return build_pillar(PillarShape(foot_flare_m=FLARE_M))


def test_laps_of_a_flared_foot_are_trapezes_and_the_other_flanges_reach_as_far(flared):
    points = flared.surface.points
    for name, wanted in (
        ("foot_outer", 0.5 * (WIDTH_M + FLARE_M) * LAP_M),
        ("foot_inner", 0.5 * (WIDTH_M + FLARE_M) * LAP_M),
        ("foot_front", 0.5 * (FLARE_M - WIDTH_M) * DEPTH_M),
        ("foot_rear", 0.5 * (FLARE_M - WIDTH_M) * DEPTH_M),
    ):
        assert area(points, flange(flared, name)) == pytest.approx(wanted, rel=1e-9)
    edge = points[flared.surface.chains["foot_outer_edge"]]
    assert np.ptp(edge[:, 0]) == pytest.approx(FLARE_M)
    assert edge[:, 2] == pytest.approx(-LAP_M)
    foot = np.concatenate([points[flared.surface.nodes[f"foot_{side}"]] for side in ("front", "rear")])
    assert np.ptp(foot[:, 0]) == pytest.approx(FLARE_M)


def test_its_spots_stand_in_two_rows_a_pitch_apart_inside_the_flare(flared):
    spots = flared.welds["foot_outer"].points
    rows = np.unique(np.round(spots[:, 2], 9))
    assert rows == pytest.approx([-0.75 * LAP_M, -0.25 * LAP_M])
    for share, z in ((0.25, rows[1]), (0.75, rows[0])):
        x = np.sort(spots[np.abs(spots[:, 2] - z) < 1e-9, 0])
        width = WIDTH_M + share * (FLARE_M - WIDTH_M)
        assert len(x) == round(width / 0.035)
        assert np.diff(x) == pytest.approx(width / len(x))
        assert x.mean() == pytest.approx(0.5 * WIDTH_M)
    at = np.einsum("kc,kci->ki", flared.welds["foot_outer"].weights,
                   flared.surface.points[flared.welds["foot_outer"].nodes])  # fmt: skip
    np.testing.assert_allclose(at, spots, atol=1e-12)


def test_a_plain_foot_is_as_it_was_and_its_head_is_the_flared_one_s(flared):
    plain = build_pillar()
    assert len(np.unique(np.round(plain.welds["foot_outer"].points[:, 2], 9))) == 1
    assert area(plain.surface.points, flange(plain, "foot_outer")) == pytest.approx(WIDTH_M * 0.028)
    np.testing.assert_array_equal(plain.welds["head_front"].points, flared.welds["head_front"].points)


@pytest.mark.parametrize(
    ("fields", "word"),
    [
        ({"foot_flare_m": 0.1}, "foot_flare_m"),
        ({"foot_rows": 4}, "foot_rows"),
        ({"foot_lap_m": 0.5}, "foot_lap_m"),
    ],
)
def test_a_foot_that_cannot_be_is_refused_by_name(fields, word):
    with pytest.raises(MeshError) as caught:
        build_pillar(PillarShape(**fields))
    assert caught.value.parameter == word


def test_the_rocker_s_plates_stand_inside_and_close_its_section():
    shape = SideShape()
    mesh = rocker_of_side(shape)
    surface = mesh.surface
    depth, height = mesh.section_at(0.0)
    assert (depth, height) == pytest.approx((0.150, 0.130))
    length = float(np.ptp(surface.points[:, 0]))
    walls = area(surface.points, surface.triangles[surface.triangle_part < 4])
    assert walls == pytest.approx(2.0 * (depth + height) * length)
    web = surface.points[surface.nodes_of(("web",))]
    assert web[:, 1] == pytest.approx(-shape.pillar.foot_depth_m)
    assert area(surface.points, surface.triangles_of("web")) == pytest.approx(height * length)
    assert area(surface.points, surface.triangles_of("bulkhead")) == pytest.approx(2.0 * depth * height)
    x = shape.pillar_shift[0] + np.array([0.0, shape.pillar.foot_width_m])
    places = np.unique(np.round(surface.points[surface.nodes_of(("bulkhead",)), 0], 6))
    assert places == pytest.approx(x, abs=1e-6)


def test_triangles_are_near_equilateral_under_the_foot_and_the_nodes_few():
    shape = SideShape()
    mesh = rocker_of_side(shape)
    assert mesh.surface.node_count < 500  # with both doors and the pillar below 4000
    points, walls = mesh.surface.points, mesh.surface.triangles[mesh.surface.triangle_part < 4]
    corners = points[walls]
    middle = shape.pillar_shift[0] + 0.5 * shape.pillar.foot_width_m
    near = np.abs(corners[:, :, 0].mean(axis=1) - middle) < 0.1
    sides = np.linalg.norm(corners - np.roll(corners, 1, axis=1), axis=2)
    ratio = sides.max(axis=1) / sides.min(axis=1)
    assert (
        near.sum() > 40 and np.median(ratio[near]) < 1.3 and ratio[near].max() < 2.5
    )  # halves at the corners
    with pytest.raises(MeshError, match="nodes"):
        rocker_of_side(shape, 100)


def test_a_left_hand_rocker_is_the_mirror_image():
    shape = SideShape()
    right = rocker_box(member_cuts(shape)["rocker"][1], (0.0, 1.87), (0.8, 1.3), (-0.095, 1.0, 1.1))
    left = right.mirrored()
    np.testing.assert_array_equal(left.surface.points, right.surface.points * [1.0, -1.0, 1.0])
    assert set(left.surface.chains) == set(right.surface.chains)
