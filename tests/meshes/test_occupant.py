"""The occupant: sizes against the published survey, distances against closed forms and another library.

Source of the sizes: C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel (ANSUR II),
NATICK/TR-15/007; percentiles of its public data (4082 men, 1986 women), in millimetres, typed here again.
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest
import trimesh

from meshes import occupant
from meshes.door import DoorMesh, DoorShape
from meshes.occupant import (
    BODY_SIZES,
    MAX_LEAN_RAD,
    SEATS,
    Capsule,
    Posture,
    clearance,
    seated_occupant,
    sheet_clearance,
    side_occupant,
)
from meshes.part import MeshError
from meshes.side_shape import SIDES

ANSUR_II_MM = {  # sitting height, eye, shoulder, elbow, hip, bideltoid, buttock-knee, popliteal, thigh
    "male_p5": (860, 750, 552, 197, 333, 459, 569, 390, 157),
    "male_p50": (918, 804, 603, 246, 378, 509, 617, 430, 180),
    "male_p95": (977, 860, 653, 291, 431, 567, 669, 471, 207),
    "female_p5": (803, 698, 515, 189, 348, 406, 541, 350, 145),
    "female_p50": (857, 748, 564, 233, 397, 450, 589, 387, 167),
    "female_p95": (912, 799, 609, 276, 456, 499, 646, 428, 191),
}
ERECT = Posture(torso_angle_rad=0.0, thigh_angle_rad=0.0, heel_drop_m=0.4)


def extent(capsules: list[Capsule], axis: int) -> tuple[float, float]:
    """Return the least and greatest coordinate [m] of capsules along an axis."""
    ends = [
        (end[axis] - item.radius_m, end[axis] + item.radius_m)
        for item in capsules
        for end in (item.start, item.end)
    ]
    return min(low for low, _ in ends), max(high for _, high in ends)


def named(capsules: tuple[Capsule, ...]) -> dict[str, Capsule]:
    return {item.name: item for item in capsules}


@pytest.mark.parametrize("who", ANSUR_II_MM)
def test_sizes_are_those_of_the_survey(who: str) -> None:
    size = BODY_SIZES[who]
    found = (
        size.sitting_height_m,
        size.eye_height_m,
        size.shoulder_height_m,
        size.elbow_height_m,
        size.hip_breadth_m,
        size.shoulder_breadth_m,
        size.buttock_knee_m,
        size.popliteal_height_m,
        size.thigh_clearance_m,
    )
    np.testing.assert_allclose(found, np.array(ANSUR_II_MM[who]) / 1000, rtol=1e-12)


@pytest.mark.parametrize("who", ANSUR_II_MM)
def test_capsules_sitting_erect_measure_what_the_survey_measures(who: str) -> None:
    sitting, eye, shoulder, elbow, hip, deltoids, buttock_knee, popliteal, thigh = (
        np.array(ANSUR_II_MM[who]) / 1000
    )
    part = named(seated_occupant(DoorShape(), BODY_SIZES[who], ERECT))
    seat, _ = extent([part["pelvis"]], 2)
    left, right = extent([part["pelvis"]], 1)
    centre = 0.5 * (left + right)
    head_low, head_top = extent([part["head"]], 2)
    measured = [
        head_top - seat,
        0.5 * (head_low + head_top) - seat,
        extent([part["near_arm"]], 2)[1] - seat,
        extent([part["near_arm"]], 2)[0] - seat,
        right - left,
        2 * (extent([part["near_arm"]], 1)[1] - centre),
        extent([part["near_thigh"]], 2)[1] - seat,
    ]
    np.testing.assert_allclose(measured, [sitting, eye, shoulder, elbow, hip, deltoids, thigh], rtol=1e-12)
    back = extent([part["pelvis"]], 0)[1]
    knee = part["near_thigh"].end
    np.testing.assert_allclose(back - knee[0] + occupant.KNEE_SETBACK_M, buttock_knee, rtol=1e-12)
    shin = part["near_lower_leg"]
    length = np.linalg.norm(shin.end - shin.start) + shin.radius_m
    np.testing.assert_allclose(length - part["near_thigh"].radius_m, popliteal, rtol=1e-12)


def test_the_median_man_is_near_the_dummy_built_to_that_idea() -> None:
    """Hybrid III 50th male: sitting height 34.8 in (NHTSA, page on the Hybrid III); it sits less erect."""
    assert 0.95 < 34.8 * 0.0254 / BODY_SIZES["male_p50"].sitting_height_m < 1.0


def test_the_default_posture_keeps_the_hip_gap_and_lies_inside_remembered_ranges() -> None:
    """Hip to trim 80-150 mm, hip to heel 250-300 mm, trunk at 25 degrees: from memory, no table seen."""
    part = named(seated_occupant(DoorShape()))
    near = extent([part["pelvis"], part["near_thigh"]], 1)[1]
    gap = -DoorShape().shut_face_depth_m - near
    np.testing.assert_allclose(gap, 0.12, rtol=1e-12)
    assert 0.08 <= gap <= 0.15
    foot = extent([part["near_lower_leg"]], 2)[0]
    assert 0.25 <= part["pelvis"].start[2] - foot <= 0.32
    trunk = part["chest"].end - part["chest"].start
    np.testing.assert_allclose(np.degrees(np.arctan2(trunk[0], trunk[2])), 25.0, rtol=1e-12)
    assert part["near_thigh"].end[0] < part["near_thigh"].start[0]  # knees forward
    assert part["head"].start[0] > part["pelvis"].start[0]  # head rearward of the hips


def test_a_trunk_leaned_away_from_the_door_turns_about_the_hips_and_leaves_the_legs() -> None:
    door, turn = DoorShape(), np.radians(30.0)
    upright, leaned = (
        named(seated_occupant(door, None, Posture(torso_inboard_rad=angle))) for angle in (0.0, turn)
    )
    hip = 0.5 * (upright["pelvis"].start + upright["pelvis"].end)
    c, s = np.cos(turn), np.sin(turn)
    about_x = np.array([[1.0, 0.0, 0.0], [0.0, c, -s], [0.0, s, c]])  # z to -y: inboard on the right side
    for name in ("head", "neck", "chest", "near_arm"):
        for end in ("start", "end"):
            turned = hip + about_x @ (getattr(upright[name], end) - hip)
            np.testing.assert_allclose(getattr(leaned[name], end), turned, atol=1e-12)
    for name in ("pelvis", "near_thigh", "near_lower_leg"):
        np.testing.assert_array_equal(leaned[name].start, upright[name].start)


def test_the_thigh_and_leg_meet_and_the_heel_is_at_its_height() -> None:
    pose = Posture(heel_drop_m=0.30)
    part = named(seated_occupant(DoorShape(), posture=pose))
    np.testing.assert_array_equal(part["near_thigh"].end, part["near_lower_leg"].start)
    shin = part["near_lower_leg"]
    sole = shin.end + shin.radius_m * (shin.end - shin.start) / np.linalg.norm(shin.end - shin.start)
    np.testing.assert_allclose(sole[2], pose.hip_z_m - pose.heel_drop_m, rtol=0, atol=1e-12)


def test_clearance_of_points_about_one_capsule_by_hand() -> None:
    capsule = Capsule("arm", np.array([0.0, 0, 0]), np.array([0.0, 0, 1.0]), 0.1)
    points = [[0.5, 0, 0.5], [0, 0, 1.5], [0.3, 0.4, -1.2], [0, 0, 0.5], [0, 0.1, 0.9]]
    np.testing.assert_allclose(
        clearance(points, (capsule,))[:, 0], [0.4, 0.4, 1.2, -0.1, 0.0], rtol=0, atol=1e-15
    )


def test_clearance_of_a_sphere_is_that_of_its_centre() -> None:
    ball = Capsule("ball", np.ones(3), np.ones(3), 0.25)
    np.testing.assert_allclose(clearance([[1.0, 1, 3]], (ball,)), [[1.75]], rtol=1e-15)


def test_clearance_against_a_densely_sampled_axis() -> None:
    capsules = seated_occupant(DoorShape())
    points = np.random.default_rng(7).uniform(-0.5, 1.5, (200, 3))
    found = clearance(points, capsules)
    share = np.linspace(0, 1, 4001)[:, None]
    for column, item in enumerate(capsules):
        axis = item.start + share * (item.end - item.start)
        sampled = np.linalg.norm(points[:, None] - axis, axis=2).min(axis=1) - item.radius_m
        assert (sampled - found[:, column] >= -1e-12).all()
        np.testing.assert_allclose(
            found[:, column], sampled, rtol=0, atol=1e-6
        )  # half a step squared / 2 distance


def test_clearance_against_an_independent_capsule_mesh() -> None:
    """A faceted capsule, 48 facets round: sagitta r (1 - cos(pi / 48)) = 0.26 mm; 0.4 mm with the caps."""
    height, radius = 0.6, 0.12
    mesh = trimesh.creation.capsule(height=height, radius=radius, count=[48, 48])
    low, high = np.array(mesh.bounds[:, 2])
    capsule = Capsule("leg", np.array([0, 0, low + radius]), np.array([0, 0, high - radius]), radius)
    np.testing.assert_allclose(high - low, height + 2 * radius, rtol=1e-9)
    points = np.random.default_rng(3).uniform(-0.8, 1.2, (60, 3))
    points = points[clearance(points, (capsule,))[:, 0] > 0.01]
    faceted = trimesh.proximity.closest_point_naive(mesh, points)[1]
    difference = faceted - clearance(points, (capsule,))[:, 0]
    assert difference.min() > -1e-9  # facets lie inside
    assert difference.max() < 4e-4


def test_clearance_of_a_sheet_by_hand() -> None:
    plate = np.array([[-1.0, 0, -1], [1, 0, -1], [1, 0, 1], [-1, 0, 1]])
    cells = np.array([[0, 1, 2], [0, 2, 3]])
    capsules = (
        Capsule("parallel", np.array([-0.5, 0.4, 0]), np.array([0.5, 0.4, 0]), 0.1),
        Capsule("end on", np.array([0.2, 0.3, 0.1]), np.array([0.2, 2.0, 0.1]), 0.1),
        Capsule("piercing", np.array([0.3, -1.0, 0.2]), np.array([0.3, 1.0, 0.2]), 0.1),
        Capsule("beyond", np.array([4.0, -1, 5.0]), np.array([4.0, 1, 5.0]), 0.5),  # 3-4-5 from a corner
        Capsule("across", np.array([1.5, -1.0, 0.0]), np.array([1.5, 1.0, 0.0]), 0.2),  # beside an edge
    )
    np.testing.assert_allclose(
        sheet_clearance(plate, cells, capsules), [0.3, 0.2, -0.1, 4.5, 0.3], rtol=0, atol=1e-14
    )


def test_clearance_of_sheets_against_densely_sampled_triangles_and_axes() -> None:
    rng = np.random.default_rng(11)
    a, b = np.meshgrid(np.linspace(0, 1, 41), np.linspace(0, 1, 41))
    inside = a + b <= 1
    weights = np.column_stack((1 - a[inside] - b[inside], a[inside], b[inside]))
    for _ in range(40):
        points = rng.uniform(-1, 1, (3, 3))
        item = Capsule("any", rng.uniform(-1, 1, 3), rng.uniform(-1, 1, 3), 0.05)
        found = sheet_clearance(points, np.array([[0, 1, 2]]), (item,))[0]
        sampled = clearance(weights @ points, (item,)).min()
        assert (
            -1e-12 <= sampled - found < 0.03
        )  # half a sample step of at most 3.5 m / 40, at the worst slope


def test_the_closed_door_keeps_the_hip_gap(door: DoorMesh) -> None:
    capsules = seated_occupant(door.shape)
    gaps = dict(
        zip(
            [item.name for item in capsules],
            sheet_clearance(door.surface.points, door.surface.triangles, capsules),
            strict=True,
        )
    )
    np.testing.assert_allclose(gaps["pelvis"], 0.12, rtol=1e-12)
    assert min(gaps.values()) > 0.05
    sheet = np.unique(door.surface.triangles)
    nodes = clearance(door.surface.points[sheet], capsules).min(axis=0)
    assert (nodes >= np.array(list(gaps.values())) - 1e-12).all()  # a node is never nearer than its sheet


def test_an_inner_panel_pushed_past_the_hip_gap_turns_the_clearance_negative(door: DoorMesh) -> None:
    capsules = seated_occupant(door.shape)
    for inward, sign in ((0.11, 1), (0.13, -1)):
        moved = door.surface.points - [0.0, inward, 0.0]
        gap = sheet_clearance(moved, door.surface.triangles_of("inner_panel"), capsules)
        pelvis = [item.name for item in capsules].index("pelvis")
        assert np.sign(gap[pelvis]) == sign
        np.testing.assert_allclose(gap[pelvis], 0.12 - inward, rtol=0, atol=1e-12)


def test_the_mirrored_occupant_has_the_mirrored_clearances(door: DoorMesh) -> None:
    capsules = seated_occupant(door.shape)
    mirrored = tuple(item.mirrored() for item in capsules)
    left = door.mirrored().surface
    np.testing.assert_allclose(
        clearance(left.points, mirrored), clearance(door.surface.points, capsules), rtol=0, atol=1e-15
    )


@pytest.mark.parametrize(
    ("call", "parameter"),
    [
        (lambda: Capsule("arm", np.zeros(3), np.ones(3), 0.0), "radius_m"),
        (lambda: Capsule("arm", np.zeros(2), np.ones(3), 0.1), "arm start"),
        (lambda: seated_occupant(DoorShape(), posture=Posture(hip_gap_m=-0.1)), "hip_gap_m"),
        (lambda: seated_occupant(DoorShape(), posture=Posture(torso_angle_rad=2.0)), "torso_angle_rad"),
        (
            lambda: seated_occupant(DoorShape(), posture=Posture(heel_drop_m=0.5, thigh_angle_rad=0.8)),
            "heel_drop_m",
        ),
        (lambda: clearance(np.zeros((1, 3)), ()), "capsules"),
    ],
)
def test_what_cannot_be_is_refused_by_name(call: object, parameter: str) -> None:
    with pytest.raises(MeshError) as caught:
        call()  # type: ignore[operator]
    assert caught.value.parameter == parameter


@pytest.mark.parametrize("lean_rad", [0.0, Posture.torso_angle_rad, MAX_LEAN_RAD])
def test_everybody_sits_in_every_seat_of_every_car(lean_rad: float) -> None:
    for shape, size, seat in itertools.product(SIDES, BODY_SIZES, SEATS):
        side = SIDES[shape]
        part = named(side_occupant(side, size=size, seat=seat, lean_rad=lean_rad))
        leg, thigh = part["near_lower_leg"], part["near_thigh"]
        down = (leg.end - leg.start) / np.linalg.norm(leg.end - leg.start)
        sole_z = leg.end[2] + leg.radius_m * down[2]
        floor_z = side.hip_height_m - side.sill_height_m - side.heel_drop_m
        # a foot on the floor, or hanging over it by less than a shoe's sole: common practice, no source
        assert floor_z - 1e-12 <= sole_z < floor_z + 0.03, (shape, size, seat)
        length_m = np.linalg.norm(leg.end - leg.start) + leg.radius_m
        popliteal_m = BODY_SIZES[size].popliteal_height_m  # ANSUR II, NATICK/TR-15/007
        np.testing.assert_allclose(length_m, popliteal_m + thigh.radius_m, rtol=0, atol=1e-12)


def test_only_the_short_leg_in_the_tall_car_hangs() -> None:
    hanging = []
    for shape, size in itertools.product(SIDES, BODY_SIZES):
        side = SIDES[shape]
        leg = named(side_occupant(side, size=size))["near_lower_leg"]
        down = (leg.end - leg.start) / np.linalg.norm(leg.end - leg.start)
        sole_z = leg.end[2] + leg.radius_m * down[2]
        if sole_z > side.hip_height_m - side.sill_height_m - side.heel_drop_m + 1e-9:
            hanging.append((shape, size))
    assert hanging == [("tall car", "female_p5")]
