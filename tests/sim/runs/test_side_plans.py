"""Plans on the whole side: moves on either door one after another, books, balance, mirror and start hashes.

Sources
-------
Balance, mirror images and the books are laws of statics, no source. Body sizes: ANSUR II, through
`meshes.occupant`.
"""

from itertools import pairwise

import msgspec
import numpy as np
import pytest

from sim.door_model import build_model
from sim.ledger import Ledger
from sim.network import Load
from sim.plan import BeltPoint, BodyPoint, Car, Crush, Ease, EdgePoint, Plan, Spread, Squeeze
from sim.planfile import plan_sha256
from sim.planhash import _hashed
from sim.problems import PlanError
from sim.push import make_push
from sim.room import Band, blocked, exit_band, exit_width_m, in_the_way, widest_gap
from sim.run import Begin, MoveRun, solve_plan
from sim.side import SideModel
from sim.whole_side import WholeSide

CAR = Car(extent="side", lattice_spacing_m=0.09, whole_side=WholeSide(pillar_pressed_yield_pa=350e6))
REAR = Spread(door=EdgePoint(panel="rear", depth_m=0.05, along_m=0.34), opening_m=0.005)
FRONT = Spread(door=EdgePoint(depth_m=0.05), opening_m=0.005)
PLAN = Plan(car=CAR, moves=(REAR, FRONT, Ease()))


@pytest.fixture(scope="module")
def answer():
    return solve_plan(PLAN, with_residual=False)


def test_every_move_starts_from_what_the_last_one_left_and_its_books_close(answer):
    model, records = answer
    assert records[0].result.start_sha256 == model.start.sha256()
    for before, after in pairwise(records):
        assert after.result.start_sha256 == before.end_state.sha256()
    for record in records[:2]:
        assert record.result.ledger_closure_ratio < 0.02
        assert record.result.solver.failed_count == 0
        assert record.result.ledger_j["released in a jump"] >= 0.0


def test_the_same_plan_gives_the_same_answer_and_undo_restores_the_state(answer):
    _, records = answer
    run = MoveRun(build_model(CAR), REAR, Begin(build_model(CAR).start, Ledger()))
    list(run)
    assert run.end.state.sha256() == records[0].end_state.sha256()  # as left before the second move


def test_the_left_side_is_the_mirror_image(answer):
    model, records = answer
    _, left = solve_plan(PLAN.with_car(msgspec.structs.replace(CAR, side="left")), with_residual=False)
    for here, there in zip(records, left, strict=True):
        assert there.frames[-1].force_n == pytest.approx(here.frames[-1].force_n, rel=1e-3, abs=1.0)
        moved = there.end_state.points - here.end_state.points * [1.0, -1.0, 1.0]
        rigid = np.abs(here.end_state.points[:, 1] - 1.0) < 1e-9  # a rigid node along +y stays where it is
        # the first push to round-off; a door that swings free takes up what the solver leaves over, and so
        # does a window frame on a lattice so coarse that it stands on single nodes
        frames = np.concatenate([
            model.mesh.surface.chains["frame"],
            model.side.rear.surface.chains["frame"] + model.first["rear"],
        ])  # fmt: skip
        stiff = ~rigid
        stiff[frames] = False
        assert np.abs(moved[~rigid]).max() < 1.0e-4
        assert here is not records[0] or np.abs(moved[stiff]).max() < 1.0e-7
        for part, value in here.frames[-1].part_clearance_m.items():
            assert there.frames[-1].part_clearance_m[part] == pytest.approx(value, abs=1e-5)


def test_tips_between_door_and_pillar_push_the_pillar_back_with_as_much(answer):
    model, _ = answer
    push = make_push(model, FRONT)
    nodes, weights = push.both()
    assert weights.sum() == pytest.approx(0.0, abs=1e-12)
    pillar = nodes >= model.first["pillar"]
    assert weights[pillar].sum() == pytest.approx(-1.0)
    seat = -weights[pillar] @ model.start.points[nodes[pillar]]
    assert np.abs(seat - push.other).max() < 0.03  # on the pillar, where the tip stands
    assert make_push(model, REAR).on is None  # the rear pillar stands still
    hinge = Spread(door=EdgePoint(edge="hinge_edge", panel="rear", along_m=0.3, depth_m=0.05))
    assert make_push(model, hinge).on is not None
    belt = Spread(door=BeltPoint(panel="rear", along_m=0.4), against=BodyPoint("roof_rail", 0.4))
    place = make_push(model, belt)
    assert place.on is None
    assert place.nodes.min() >= model.first["rear"]
    assert place.nodes.max() < model.first["pillar"]


def test_what_holds_the_side_still_takes_no_force_of_tips_that_push_on_each_other(answer):
    model, _ = answer
    run = MoveRun(model, FRONT, Begin(model.start, Ledger()))
    list(run)
    network, point = run.network, run._point
    ev, s = point.evaluation, network.structure
    total = np.where(network.free, 0.0, ev.forces).sum(axis=0)
    for tie, force in zip(s.ties, ev.tie_force, strict=True):
        total -= force if tie.name in ("upper hinge", "lower hinge", "rear latch") else 0.0
    total[1] += s.outboard_sign * ev.rim_push.sum()
    total -= run.stepper.viscous_n_per_m * (point.state.points - point.before).sum(axis=0)
    for law in network.laws:  # what weight, checks and the car's stands put on it from outside
        if law.name in ("weight", "check", "stands"):
            alone = network.blank()
            law.forces(point.state.points, point.state, Load(), alone)
            total -= alone.forces.sum(axis=0)
    assert np.abs(total).max() < 2e-3 * float(point.force_n[0])


def test_a_door_alone_has_no_rear_door():
    with pytest.raises(PlanError, match=r"door.panel is 'rear', but the car is one door"):
        make_push(build_model(Car(lattice_spacing_m=0.09)), REAR)


def test_a_body_that_would_push_rocker_rail_or_outer_pillars_in_is_refused(answer):
    model, _ = answer
    face = Crush(shape="face", size_m=0.5, tall_m=0.5, along_m=1.07, height_m=0.1, travel_m=0.05)
    MoveRun(model, face, Begin(model.start, Ledger()))  # the pillar between the doors may be pushed in
    low = msgspec.structs.replace(face, height_m=-0.1)
    with pytest.raises(PlanError, match="reach the rocker"):
        MoveRun(model, low, Begin(model.start, Ledger()))


class TestRoom:
    def test_bodies_of_three_sizes_stand_where_the_survey_puts_them(self):
        wide = {}
        for size in ("female_p5", "male_p50", "male_p95"):
            whole = msgspec.structs.replace(CAR.whole_side, occupant=size)
            model = build_model(msgspec.structs.replace(CAR, whole_side=whole))
            hip = next(one for one in model.occupant if one.name == "pelvis")
            wide[size] = float(np.abs(hip.end - hip.start).max() + 2.0 * hip.radius_m)
        # hip breadth, sitting, ANSUR II (NATICK/TR-15/007): 348, 378 and 431 mm
        for size, breadth in (("female_p5", 0.348), ("male_p50", 0.378), ("male_p95", 0.431)):
            assert wide[size] == pytest.approx(breadth, abs=1e-9)

    def test_gaps_are_read_as_geometry_says(self):
        points = np.array(
            [[0.4, 0.0, 0.2], [0.5, 0.0, 0.2], [0.4, 0.0, 0.8], [1.2, 0.0, 2.0], [1.3, 0.1, 2.0]]
        )
        triangles = np.array([[0, 1, 2], [1, 3, 4]])
        band = Band((0.0, 1.5), (-0.3, 0.2), (0.1, 0.6))
        spans = blocked(points, triangles, band, 1.0)
        # the first triangle blocks 0.4 to 0.5; of the second what lies below 0.6: up to .5 + .4/1.8 x .8
        assert spans.tolist() == [pytest.approx([0.4, 0.5 + 0.4 / 1.8 * 0.8])]
        assert widest_gap(spans, band.along) == pytest.approx(1.5 - spans[0, 1])
        assert widest_gap(np.zeros((0, 2)), band.along) == 1.5

    def test_shut_doors_leave_no_way_out_and_doors_taken_away_the_opening_beside_the_pillar(self, answer):
        model, _ = answer
        assert isinstance(model, SideModel)
        assert exit_width_m(model, model.start.points, model.structure.triangles) == 0.0
        low, high = exit_band(model).along
        pillar = exit_width_m(model, model.start.points, model.pillar_triangles)
        at = model.start.points[np.unique(model.pillar_triangles)]
        level = at[(at[:, 2] > 0.2) & (at[:, 2] < 0.7)]
        assert pillar == pytest.approx(max(level[:, 0].min() - low, high - level[:, 0].max()), abs=0.03)

    def test_what_stands_in_the_way_out_is_named_and_goes_with_the_metal(self, answer):
        model, _ = answer
        points, triangles = model.start.points, model.structure.triangles
        shut = in_the_way(model, points, triangles)
        assert set(shut.metal) == {"front door", "rear door", "pillar"}
        assert max(shut.free_m[:-2]) < 0.1  # gaps round the doors at the most
        assert shut.heights_m[-1] > model.mesh.shape.height_m
        assert shut.free_m[-1] > 0.3  # above the belt the window is open
        assert sum(shut.shares) == pytest.approx(1.0, abs=0.1)
        low, high = exit_band(model).up
        assert low < shut.heights_m[0] < shut.heights_m[-1] < high
        # the front door taken right away: what is left of its opening is the width, and it is named no more
        off, front = points.copy(), slice(0, model.first["rear"])
        off[front, 1] += 2.0 * model.outboard_sign
        one = in_the_way(model, off, triangles)
        assert set(one.metal) == {"rear door", "pillar"}
        assert one.narrowest[1] >= exit_width_m(model, off, triangles) > 0.3
        # lifted by half the band it blocks the upper heights, and the width is nothing again
        off[front] = points[front] + [0.0, 0.0, 0.5 * (high - low) - points[front, 2].min() + low]
        half = in_the_way(model, off, triangles)
        assert exit_width_m(model, off, triangles) < 0.1
        assert half.narrowest[0] > low + 0.5 * (high - low)
        assert half.narrowest[1] < 0.1
        assert half.free_m[0] == one.free_m[0]


class TestRearSqueeze:
    """A squeeze across the rear door's panel: the mechanics of the front door's, on the other door."""

    def test_both_pads_lie_on_the_rear_door_and_no_older_plan_has_another_hash(self):
        model = build_model(CAR)
        move = Squeeze(along_m=0.4, height_m=0.4, closing_m=0.005, panel="rear")
        push = make_push(model, move)
        rear = model.panels()["rear"]
        own = range(rear.first, rear.first + rear.mesh.surface.node_count)
        assert set(push.nodes) <= set(own)
        assert push.seats[0] != push.seats[1]
        front = make_push(model, msgspec.structs.replace(move, panel="front"))
        assert max(front.nodes) < rear.first
        plan = Plan(car=CAR, moves=(msgspec.structs.replace(move, panel="front"),))
        assert "panel" not in str(_hashed(plan)["moves"])
        assert plan_sha256(plan) != plan_sha256(plan.with_move(0, move))
        alone = msgspec.structs.replace(CAR, extent="door")
        with pytest.raises(PlanError, match="the car is one door"):
            make_push(build_model(alone), move)

    def test_it_closes_the_rear_panel_leaves_the_front_door_alone_and_its_books_close(self):
        move = Squeeze(along_m=0.4, height_m=0.4, closing_m=0.005, panel="rear")
        model, (record,) = solve_plan(Plan(car=CAR, moves=(move,)), with_residual=False)
        push = make_push(model, move)
        gap = [
            float(np.linalg.norm(push.pads[0].point(points) - push.pads[1].point(points)))
            for points in (record.frames[0].points, record.frames[-1].points)
        ]
        assert gap[0] - gap[1] == pytest.approx(move.closing_m, rel=0.1)
        assert record.frames[-1].force_n > 0.0
        moved = np.linalg.norm(record.frames[-1].points - record.frames[0].points, axis=1)
        rear = model.panels()["rear"]
        own = slice(rear.first, rear.first + rear.mesh.surface.node_count)
        assert moved[own].max() > 5.0 * moved[: rear.first].max()
        assert record.result.ledger_closure_ratio < 0.02
        assert record.result.solver.failed_count == 0
