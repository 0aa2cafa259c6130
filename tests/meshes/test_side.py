"""The whole side: boxes against closed forms, and builds that fit together.

Volumes and areas are typed here from the prismatoid formula; winding and openings come from an independent
library (trimesh). Sizes of real cars are from memory or common practice, and say so.
"""

from __future__ import annotations

import dataclasses
import pickle
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from meshes.box import WALLS, Cut, build_box
from meshes.door import DoorShape
from meshes.files import inspect_surface
from meshes.part import MeshError, Surface, triangle_areas_and_normals
from meshes.pillar import PARTS, PillarMesh, PillarShape, build_pillar
from meshes.side import SideMesh, build_side, member_cuts
from meshes.side_shape import SIDES, SideShape

CLOSED = (*WALLS[2], "striker_patch", "lower_hinge_patch", "upper_hinge_patch")


@pytest.fixture(scope="module")
def pillar() -> PillarMesh:
    return build_pillar()


def volume_below_lids(surface: Surface, parts: tuple[str, ...]) -> float:
    """Return the volume [m^3] inside an upright member, its level ends closed by the divergence theorem.

    The flux of (x, y, 0) / 2 through a level lid is nothing, so the walls alone give the volume.
    """
    triangles = np.concatenate([surface.triangles_of(part) for part in parts])
    corner = surface.points[triangles]
    normal = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]) / 2.0
    middle = corner.mean(axis=1)
    return float((0.5 * (middle[:, 0] * normal[:, 0] + middle[:, 1] * normal[:, 1])).sum())


def prismatoid(height: float, low: tuple[float, float], high: tuple[float, float]) -> float:
    """Return the volume [m^3] between two parallel rectangles: h / 6 (A0 + 4 Am + A1)."""
    middle = [(a + b) / 2 for a, b in zip(low, high, strict=True)]
    return height / 6 * (low[0] * low[1] + 4 * middle[0] * middle[1] + high[0] * high[1])


class TestBox:
    def test_a_straight_member_is_a_closed_prism_but_for_its_ends(self) -> None:
        box = build_box([Cut(0.0, (0.0, 0.0), (0.12, 0.08)), Cut(1.0, (0.0, 0.0), (0.12, 0.08))], 2, 0.03)
        report = inspect_surface(box.surface)
        rings = sum(len(box.surface.nodes[name]) for name in ("start_ring", "end_ring"))
        assert report.is_winding_consistent
        assert (report.open_edge_count, report.crowded_edge_count) == (rings, 0)
        np.testing.assert_allclose(report.area_m2, 2 * (0.12 + 0.08), rtol=1e-12)
        np.testing.assert_allclose(volume_below_lids(box.surface, WALLS[2]), 0.12 * 0.08, rtol=1e-12)

    @pytest.mark.parametrize("axis", [0, 2])
    def test_walls_face_where_their_names_say(self, axis: int) -> None:
        box = build_box([Cut(0.0, (0.0, 0.0), (0.1, 0.2)), Cut(0.5, (0.0, 0.0), (0.1, 0.2))], axis, 0.05)
        facing = {
            "outer": (1, 1.0),
            "inner": (1, -1.0),
            "rear": (0, 1.0),
            "front": (0, -1.0),
            "upper": (2, 1.0),
            "lower": (2, -1.0),
        }
        for wall in WALLS[axis]:
            normal = triangle_areas_and_normals(box.surface.points, box.surface.triangles_of(wall))[1]
            direction, sign = facing[wall]
            np.testing.assert_allclose(normal[:, direction], sign, rtol=1e-12)

    def test_long_edges_are_chains_where_two_walls_meet(self) -> None:
        box = build_box([Cut(0.0, (0.0, -0.1), (0.1, 0.0)), Cut(0.5, (0.02, -0.08), (0.1, 0.0))], 2, 0.03)
        line = box.surface.points[box.surface.chains["front_outer_edge"]]
        np.testing.assert_allclose(line[:, 1], 0.0, atol=1e-15)
        np.testing.assert_allclose(line[:, 0], 0.04 * line[:, 2], atol=1e-15)
        assert (np.diff(line[:, 2]) > 0).all()

    def test_the_section_tapers_straight(self) -> None:
        box = build_box([Cut(0.0, (0.0, 0.0), (0.12, 0.09)), Cut(1.0, (0.0, 0.0), (0.08, 0.05))], 2, 0.03)
        np.testing.assert_allclose(box.section_at(0.25), (0.11, 0.08), rtol=1e-12)
        with pytest.raises(MeshError, match="along_m"):
            box.section_at(1.1)

    @pytest.mark.parametrize(
        "cuts",
        [
            [Cut(0.0, (0.0, 0.0), (0.1, 0.1))],
            [Cut(0.0, (0.0, 0.0), (0.1, 0.1)), Cut(0.0, (0.0, 0.0), (0.1, 0.1))],
            [Cut(0.0, (0.0, 0.0), (0.1, 0.1)), Cut(1.0, (0.0, 0.0), (-0.1, 0.1))],
        ],
    )
    def test_bad_cuts_are_refused(self, cuts: list[Cut]) -> None:
        with pytest.raises(MeshError, match="cuts"):
            build_box(cuts, 2, 0.03)


class TestPillar:
    def test_it_encloses_what_two_prismatoids_do(self, pillar: PillarMesh) -> None:
        shape = pillar.shape
        foot = (shape.foot_width_m, shape.foot_depth_m)
        belt = (shape.belt_width_m, shape.belt_depth_m)
        head = (shape.head_width_m, shape.head_depth_m)
        wanted = prismatoid(shape.belt_height_m, foot, belt) + prismatoid(shape.upper_height_m, belt, head)
        np.testing.assert_allclose(volume_below_lids(pillar.surface, CLOSED), wanted, rtol=1e-12)

    def test_an_independent_library_finds_it_closed_but_for_foot_and_head(self, pillar: PillarMesh) -> None:
        walls, whole = inspect_surface(pillar.surface, CLOSED), inspect_surface(pillar.surface)
        rings = sum(len(pillar.surface.nodes[name]) for name in ("start_ring", "end_ring"))
        assert walls.is_winding_consistent and whole.is_winding_consistent
        assert (walls.open_edge_count, walls.crowded_edge_count) == (rings, 0)
        assert whole.crowded_edge_count == 0

    def test_normals_point_out(self, pillar: PillarMesh) -> None:
        middle = pillar.cuts[:, [1, 2]] / 2 + pillar.cuts[:, [3, 4]] / 2
        triangles = np.concatenate([pillar.surface.triangles_of(part) for part in CLOSED])
        centre = pillar.surface.points[triangles].mean(axis=1)
        axis = np.column_stack([np.interp(centre[:, 2], pillar.cuts[:, 0], middle[:, k]) for k in range(2)])
        normal = triangle_areas_and_normals(pillar.surface.points, triangles)[1]
        assert (((centre[:, :2] - axis) * normal[:, :2]).sum(axis=1) > 0).all()

    def test_triangles_are_near_equilateral(
        self, pillar: PillarMesh, angles_deg: Callable[..., np.ndarray]
    ) -> None:
        angle = angles_deg(pillar.surface.points, pillar.surface.triangles)
        assert angle.max() < 110.0 and angle.min() > 20.0  # half triangles beside the edges have 30 and 90
        assert 55.0 < np.median(angle) < 65.0

    def test_sections_lie_in_the_remembered_ranges(self, pillar: PillarMesh) -> None:
        # lower 90-140 x 60-100 mm, upper 60-90 x 40-60 mm: from memory
        low, high = pillar.section_at(0.0), pillar.section_at(pillar.shape.height_m)
        assert 0.09 <= low[0] <= 0.14 and 0.06 <= low[1] <= 0.10
        assert 0.06 <= high[0] <= 0.09 and 0.04 <= high[1] <= 0.06

    def test_spots_lie_on_their_flange_at_the_pitch(self, pillar: PillarMesh) -> None:
        assert len(pillar.welds) == 8
        for name, spots in pillar.welds.items():
            on = np.einsum("kc,kci->ki", spots.weights, pillar.surface.points[spots.nodes])
            np.testing.assert_allclose(on, spots.points, atol=1e-12)
            assert set(spots.nodes.ravel().tolist()) <= set(pillar.surface.nodes[name].tolist())
            step = np.linalg.norm(np.diff(spots.points, axis=0), axis=1)
            assert ((step > 0.02) & (step < 0.06)).all()  # 30-60 mm between spots: common practice, no source
            np.testing.assert_allclose(np.linalg.norm(spots.away, axis=1), 1.0, rtol=1e-12)

    def test_flanges_lap_or_turn_outward_and_peel_off_what_they_are_welded_to(
        self, pillar: PillarMesh
    ) -> None:
        points, shape = pillar.surface.points, pillar.shape
        foot = points[pillar.surface.nodes["foot_outer"]]
        np.testing.assert_allclose(foot[:, 1], 0.0, atol=1e-15)
        np.testing.assert_allclose(foot[:, 2].min(), -shape.flange_m, rtol=1e-12)
        rear = points[pillar.surface.nodes["foot_rear"]]
        np.testing.assert_allclose(rear[:, 2], 0.0, atol=1e-15)
        np.testing.assert_allclose(rear[:, 0].max(), shape.foot_width_m + shape.flange_m, rtol=1e-12)
        np.testing.assert_array_equal(pillar.welds["foot_rear"].away[0], [0, 0, 1])
        np.testing.assert_array_equal(pillar.welds["head_rear"].away[0], [0, 0, -1])
        np.testing.assert_array_equal(pillar.welds["foot_inner"].away[0], [0, -1, 0])

    @pytest.mark.parametrize("spacing", [0.018, 0.026, 0.033])
    def test_patches_keep_their_size_on_any_lattice(self, spacing: float) -> None:
        made = build_pillar(PillarShape(spacing_m=spacing))
        for name, (wall, low, high) in made.shape.patches().items():
            side = 0 if wall in ("inner", "outer") else 1
            wanted = (high - low) * made.section_at(0.5 * (low + high))[side]
            triangles = made.surface.triangles_of(name)
            area = triangle_areas_and_normals(made.surface.points, triangles)[0]
            # the wall leans by a few hundredths, which lengthens it by less than a thousandth
            np.testing.assert_allclose(area.sum(), wanted, rtol=2e-3)

    def test_the_mirror_image_faces_the_other_way(self, pillar: PillarMesh) -> None:
        left = pillar.mirrored()
        assert (pillar.outboard_sign, left.outboard_sign) == (1.0, -1.0)
        np.testing.assert_allclose(
            volume_below_lids(left.surface, CLOSED), volume_below_lids(pillar.surface, CLOSED), rtol=1e-12
        )
        np.testing.assert_array_equal(left.welds["foot_outer"].away[0], [0, -1, 0])
        again = pickle.loads(pickle.dumps(left))
        assert np.array_equal(again.surface.points, left.surface.points)

    @pytest.mark.parametrize("name", [item.name for item in dataclasses.fields(PillarShape)])
    @pytest.mark.parametrize("value", [-1.0, 9.0, float("nan")])
    def test_a_dimension_out_of_range_is_named_with_its_remedy(self, name: str, value: float) -> None:
        with pytest.raises(MeshError) as error:
            build_pillar(replace(PillarShape(), **{name: value}))
        assert error.value.parameter == name
        assert "allowed are" in error.value.message

    def test_a_pillar_that_grows_upwards_is_refused(self) -> None:
        with pytest.raises(MeshError, match="does not grow upwards"):
            build_pillar(PillarShape(belt_width_m=0.14))


class TestSide:
    @pytest.mark.parametrize("name", SIDES)
    def test_each_build_stays_within_the_solver_s_nodes(self, sides: dict[str, SideMesh], name: str) -> None:
        assert sides[name].sheet_node_count <= 4000

    @pytest.mark.parametrize("name", SIDES)
    def test_each_build_has_remembered_sizes(self, sides: dict[str, SideMesh], name: str) -> None:
        shape = sides[name].shape
        belt = shape.front.height_m + shape.sill_height_m
        low, high = (1.05, 1.15) if name == "tall car" else (0.90, 0.98)  # from memory
        assert low <= belt <= high
        low, high = (0.65, 0.75) if name == "tall car" else (0.48, 0.56)  # from memory
        assert low <= shape.hip_height_m <= high
        assert 1.05 <= shape.front.length_m <= 1.20  # from memory
        assert 0.90 <= shape.rear.length_m <= 1.05  # from memory
        assert 0.12 <= shape.ground_clearance_m <= 0.26  # common practice, no source

    @pytest.mark.parametrize("name", SIDES)
    def test_doors_meet_the_pillar_across_the_gap_and_nothing_overlaps(
        self, sides: dict[str, SideMesh], name: str
    ) -> None:
        side = sides[name]
        gap = side.shape.body.gap_m
        belt = side.shape.front.height_m
        pillar = side.placed("pillar")
        for door, edge, chain, sign in (
            ("front", "latch_edge", "front_outer_edge", 1.0),
            ("rear", "hinge_edge", "outer_rear_edge", -1.0),
        ):
            mesh = getattr(side, door)
            first, last = mesh.edges[edge]
            lip = side.placed(door).points[mesh.hem_skin[first : last + 1]]
            line = pillar.points[pillar.chains[chain]]
            below = line[:, 2] <= belt + gap
            wide = sign * (np.interp(lip[:, 2], line[below, 2], line[below, 0]) - lip[:, 0])
            assert (wide > 0.5 * gap).all()
            assert (wide < gap + 0.004).all()

    def test_members_enclose_what_their_sections_say(self, sides: dict[str, SideMesh]) -> None:
        side = sides["low car"]
        for name, (axis, cuts) in member_cuts(side.shape).items():
            box = side.members[name]
            report = inspect_surface(box.surface)
            assert report.is_winding_consistent and report.crowded_edge_count == 0
            for cut in cuts:
                wanted = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
                np.testing.assert_allclose(box.section_at(cut.along_m), wanted, rtol=1e-12)
            assert box.axis == axis

    def test_the_pillar_stands_on_the_rocker_and_under_the_rail(self, sides: dict[str, SideMesh]) -> None:
        for side in sides.values():
            pillar = side.placed("pillar")
            foot, head = (pillar.points[pillar.nodes[ring]] for ring in ("start_ring", "end_ring"))
            rocker, rail = side.members["rocker"].surface, side.members["roof_rail"].surface
            np.testing.assert_allclose(foot[:, 2], rocker.points[:, 2].max(), atol=1e-12)
            np.testing.assert_allclose(head[:, 2], rail.points[:, 2].min(), atol=1e-12)
            np.testing.assert_allclose(head[:, 1].max(), rail.points[:, 1].max(), atol=1e-12)
            np.testing.assert_allclose(head[:, 1].min(), rail.points[:, 1].min(), atol=1e-12)

    def test_the_ground_lies_under_the_rocker(self, sides: dict[str, SideMesh]) -> None:
        for side in sides.values():
            clearance = side.ground_gap_m(side.members["rocker"].surface.points)
            np.testing.assert_allclose(clearance, side.shape.ground_clearance_m, rtol=1e-12)
            assert clearance > 0

    def test_the_left_side_is_the_mirror_image(self, sides: dict[str, SideMesh]) -> None:
        side = sides["low car"]
        for name, surface in side.mirrored().surfaces().items():
            right = side.surfaces()[name]
            np.testing.assert_array_equal(surface.points, right.points * [1, -1, 1])
            assert set(surface.nodes) == set(right.nodes)

    def test_a_rear_door_that_does_not_fit_is_refused_with_the_length_that_does(self) -> None:
        with pytest.raises(MeshError, match=r"rear\.length_m.*use 0\.9") as error:
            build_side(SideShape(rear=replace(SIDES["low car"].rear, length_m=1.04)))
        fit = float(error.value.message.split("use ")[1].split(" m")[0])
        assert build_side(SideShape(rear=replace(SIDES["low car"].rear, length_m=fit))).sheet_node_count > 0

    @pytest.mark.parametrize(
        ("change", "parameter"),
        [
            ({"sill_height_m": 9.0}, "sill_height_m"),
            ({"body": replace(SideShape().body, rocker_height_m=0.31)}, "sill_height_m"),
            ({"rear": DoorShape(height_m=0.7)}, "rear.height_m"),
            ({"pillar": PillarShape(foot_width_m=0.01)}, "pillar.foot_width_m"),
            ({"front": DoorShape(spacing_m=0.03)}, "front.spacing_m"),
            ({"rear": replace(SIDES["low car"].rear, frame_rake_m=0.4)}, "rear.frame_rake_m"),
        ],
    )
    def test_what_does_not_fit_is_named(self, change: dict[str, object], parameter: str) -> None:
        with pytest.raises(MeshError) as error:
            build_side(replace(SideShape(), **change))
        assert error.value.parameter == parameter


def test_parts_of_the_pillar_are_all_used() -> None:
    surface = build_pillar().surface
    assert {PARTS[index] for index in np.unique(surface.triangle_part)} == set(PARTS)
