"""What stands on and in the side: solids that come to light, and clearance told for each body part."""

from __future__ import annotations

import numpy as np
import pytest

from meshes.door import DoorShape
from meshes.files import inspect_surface
from meshes.fittings import Fittings, build_fittings
from meshes.occupant import BODY_PARTS, part_clearance, seated_occupant, side_occupant
from meshes.part import MeshError
from meshes.side import SideMesh
from meshes.side_shape import SideShape


@pytest.fixture(scope="module")
def fittings(sides: dict[str, SideMesh]) -> Fittings:
    return build_fittings(sides["low car"])


class TestFittings:
    def test_every_solid_is_closed_and_faces_outward(self, sides: dict[str, SideMesh]) -> None:
        for side in (sides["tall car"], sides["long door"].mirrored()):
            for item in build_fittings(side).items:
                report = inspect_surface(item.surface)
                assert report.is_watertight and report.is_winding_consistent, item.name
                assert report.volume_m3 is not None and report.volume_m3 > 0, item.name

    def test_restraint_parts_come_to_light_when_their_trim_is_stripped(self, fittings: Fittings) -> None:
        restraints = {item.name for item in fittings.of("restraint")}
        assert restraints == {"roof inflator", "roof bag", "belt tensioner", "belt anchor"}
        assert not restraints & {item.name for item in fittings.seen()}
        assert {item.name for item in fittings.hidden()} == restraints
        stripped = fittings.without("lower pillar trim")
        assert {item.name for item in stripped.seen()} & restraints == {"belt tensioner"}
        names = {item.behind for item in fittings.of("restraint")}
        assert names <= {item.name for item in fittings.of("trim")}

    def test_panes_and_seals_can_be_gone_and_seats_cannot(self, fittings: Fittings) -> None:
        bare = fittings.without("front pane", "rear door seal")
        assert [item.name for item in bare.of("glass")] == ["rear pane"]
        assert [item.name for item in bare.of("seal")] == ["front door seal"]
        with pytest.raises(MeshError, match="cannot be stripped"):
            fittings.without("front cushion")
        with pytest.raises(MeshError, match="gone"):
            fittings.without("third pane")

    def test_trim_lies_inboard_of_the_metal(self, fittings: Fittings, sides: dict[str, SideMesh]) -> None:
        inner = sides["low car"].front.surface.points[sides["low car"].front.wall[-1], 1].min()
        trim = next(item for item in fittings.items if item.name == "front door trim")
        assert trim.surface.points[:, 1].max() < inner

    def test_the_tensioner_lies_inside_the_pillar_s_foot(
        self, fittings: Fittings, sides: dict[str, SideMesh]
    ) -> None:
        side = sides["low car"]
        item = next(item for item in fittings.items if item.name == "belt tensioner")
        points = item.surface.points - side.shape.pillar_shift
        for x, y, z in points:
            low_x, low_y, high_x, high_y = (
                np.interp(z, side.pillar.cuts[:, 0], row) for row in side.pillar.cuts.T[1:]
            )
            assert low_x < x < high_x and low_y < y < high_y


class TestOccupants:
    def test_clearance_is_told_for_each_body_part(self, sides: dict[str, SideMesh]) -> None:
        side = sides["low car"]
        metal = side.placed("front")
        found = part_clearance(metal.points, metal.triangles, side_occupant(side.shape))
        assert set(found) == set(BODY_PARTS)
        np.testing.assert_allclose(found["hip"], 0.12, atol=1e-9)  # as the posture asks
        assert found["head"] > 0 and found["trunk"] > 0

    def test_every_capsule_belongs_to_one_body_part(self) -> None:
        names = [name for part in BODY_PARTS.values() for name in part]
        assert sorted(names) == sorted(item.name for item in seated_occupant(DoorShape()))

    def test_metal_pushed_in_is_told_for_the_part_it_meets(self, sides: dict[str, SideMesh]) -> None:
        side = sides["low car"]
        metal = side.placed("front")
        hip = next(item for item in side_occupant(side.shape) if item.name == "pelvis")
        points = metal.points.copy()
        near = (np.abs(points[:, 2] - hip.start[2]) < 0.06) & (np.abs(points[:, 0] - hip.start[0]) < 0.06)
        points[near, 1] -= 0.15
        before = part_clearance(metal.points, metal.triangles, side_occupant(side.shape))
        after = part_clearance(points, metal.triangles, side_occupant(side.shape))
        assert after["hip"] < 0 < before["hip"]
        np.testing.assert_allclose(after["head"], before["head"], rtol=1e-9)

    def test_a_rear_occupant_sits_behind_the_pillar_and_a_front_one_before_it(
        self, sides: dict[str, SideMesh]
    ) -> None:
        for side in sides.values():
            middle = side.shape.pillar_shift[0] + 0.5 * side.shape.pillar.foot_width_m
            front, rear = (
                next(item for item in side_occupant(side.shape, seat=seat) if item.name == "pelvis")
                for seat in ("front", "rear")
            )
            assert front.start[0] < middle < rear.start[0]
            height = front.start[2] - side.shape.ground_z_m
            np.testing.assert_allclose(height, side.shape.hip_height_m, rtol=1e-12)

    def test_a_leaning_trunk_takes_the_head_rearward_and_down(self) -> None:
        upright, leaning = (
            next(item for item in side_occupant(SideShape(), lean_rad=lean) if item.name == "head")
            for lean in (0.0, 0.6)
        )
        assert leaning.end[0] > upright.end[0] and leaning.end[2] < upright.end[2]

    @pytest.mark.parametrize(
        ("asked", "parameter"),
        [({"seat": "middle"}, "seat"), ({"size": "giant"}, "size"), ({"lean_rad": 2.0}, "lean_rad")],
    )
    def test_bad_input_is_named(self, asked: dict[str, object], parameter: str) -> None:
        with pytest.raises(MeshError) as error:
            side_occupant(SideShape(), **asked)
        assert error.value.parameter == parameter
