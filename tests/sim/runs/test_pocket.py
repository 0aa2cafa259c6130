"""Tips between the raw ends of a cut: how far they go in, whether their faces hold, and what they push.

Sources
-------
A wedge between two edges holds by itself while half its angle is below the friction angle [coulomb-1785].
One cut leaves no seat for tips, a second just under it does: common practice, no source.
"""

from __future__ import annotations

import math

import msgspec
import numpy as np
import pytest

from sim import raw_seat
from sim.checks import side_facts
from sim.cut_plan import Cut, PillarCut
from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import Car, CutSpread, Plan, Tool
from sim.pocket import TIPS_M
from sim.problems import PlanError
from sim.raw_seat import NOSE_M, TAPER_M, RawSeat, TipEnd, entry_m, face_angle_rad
from sim.run import Begin, MoveRun, solve_plan

CAR = Car(lattice_spacing_m=0.08, extent="side", latch="open", whole_side=side_facts.SOFT)
TOP, UNDER = Cut(PillarCut(0.95)), Cut(PillarCut(0.89))
OPEN = CutSpread(height_m=0.92, depth_m=0.08, opening_m=0.01)


@pytest.mark.parametrize("gap", [NOSE_M, 0.014, 0.02, 0.03, TIPS_M])
def test_tips_go_in_until_they_are_as_thick_as_the_gap(gap):
    entered = entry_m(gap, 1.0 if gap < TIPS_M else TAPER_M)
    assert NOSE_M + (TIPS_M - NOSE_M) * entered / TAPER_M == pytest.approx(gap, abs=1e-12)


def test_no_further_than_wanted_and_not_at_all_into_a_kerf():
    assert entry_m(0.06, 0.05) == 0.05 and entry_m(0.03, 0.01) == 0.01
    assert entry_m(0.002, 0.05) == 0.0


def test_the_round_of_a_nose_meets_edges_square_to_the_radius():
    """A circle as thick as the nose on two edges a gap apart touches them where its normal is drawn."""
    gap = 0.006
    off_axis = math.cos(face_angle_rad(gap, 0.0)) * 0.5 * NOSE_M
    assert off_axis == pytest.approx(0.5 * gap, rel=1e-12)
    assert face_angle_rad(0.0, 0.0) == pytest.approx(0.5 * math.pi)


def _seat(gap, friction):
    end = TipEnd(np.array([0]), np.ones(1), "")
    entered = entry_m(gap, 0.05)
    return RawSeat(end, end, gap, entered, face_angle_rad(gap, entered), math.atan(friction))


@pytest.mark.parametrize(("gap", "friction", "holds"), [
    (0.02, 0.30, False), (0.02, 0.33, True),  # half the wedge's angle: tan 17.35 deg = .3125
    (0.002, 0.8, False), (0.06, 0.05, True),
])  # fmt: skip
def test_a_wedge_holds_while_half_its_angle_is_below_the_friction_angle(gap, friction, holds):
    assert (_seat(gap, friction).margin_rad(Tool(), 0.0) >= 0.0) == holds


def test_faces_turn_with_the_arms_and_let_go_when_they_have_turned_past_their_friction_angle():
    """Tips 2 a sin(beta) apart: faces flat in a pocket turn by beta."""
    seat, tool = _seat(TIPS_M, 0.3), msgspec.structs.replace(Tool(), arm_m=0.45)
    just = 2.0 * 0.45 * math.sin(math.atan(0.3))
    assert seat.margin_rad(tool, just - 1e-6) > 0.0 > seat.margin_rad(tool, just + 1e-6)


def made(*moves):
    """Return the runs of some moves, each from where the one before left the metal."""
    model = build_model(CAR)
    begin, runs = Begin(model.start, Ledger()), []
    for number, move in enumerate(moves):
        run = MoveRun(model, move, begin, number)
        for _ in run:
            pass
        begin = run.end
        runs.append(run)
    return runs


@pytest.fixture(scope="module")
def once():
    return made(TOP, msgspec.structs.replace(OPEN, height_m=0.95))


@pytest.fixture(scope="module")
def twice():
    return made(TOP, UNDER, OPEN)


def test_after_one_cut_tips_slip_off_and_the_metal_never_feels_them(once):
    assert [event.kind for event in once[-1].events] == ["tip slipping", "tip off"]
    first, last = once[-1].ends
    np.testing.assert_array_equal(first.points, last.points)


def test_after_a_second_cut_they_go_in_hold_and_push_both_ends_alike(twice):
    result, frame = twice[-1].result(with_residual=True), twice[-1].frames[-1]
    assert not {"tip slipping", "tip off"} & {event.kind for event in result.events}
    np.testing.assert_allclose(frame.drive_forces.sum(axis=0), 0.0, atol=1e-9)
    apart = frame.drive_points[0] - frame.drive_points[1]
    assert np.linalg.norm(np.cross(apart, frame.drive_forces[0])) < 1e-6 * frame.force_n
    assert frame.drive_forces[0][2] < 0.0 and frame.force_n > 500.0
    assert result.solver.failed_count == 0 and result.ledger_closure_ratio < 0.02


def test_tips_stand_on_raw_metal_of_either_end(twice):
    model, state = twice[1].model, twice[1].frames[-1].state
    seat = raw_seat.seat_on_raw(model, state, OPEN)
    lower, upper = (set(end.nodes.tolist()) for end in (seat.lower, seat.upper))
    raw = [set(edge.nodes.tolist()) for edge in model.structure.raw]
    assert not lower & upper
    assert sorted([lower <= raw[0], lower <= raw[1], upper <= raw[0], upper <= raw[1]]) == [
        False,
        False,
        True,
        True,
    ]
    assert seat.gap_m == pytest.approx(0.06, abs=0.025)  # two cuts, each within half a row of its place


@pytest.mark.parametrize(("move", "field"), [
    (OPEN, "height_m"),
    (msgspec.structs.replace(OPEN, height_m=3.0), "height_m"),
    (msgspec.structs.replace(OPEN, depth_m=0.0), "depth_m"),
    (msgspec.structs.replace(OPEN, opening_m=0.9), "opening_m"),
])  # fmt: skip
def test_what_cannot_be_done_is_refused_by_its_field(move, field):
    with pytest.raises(PlanError) as refused:
        solve_plan(Plan(car=CAR, moves=(move,)))
    assert refused.value.field.endswith(field)


def test_a_door_alone_has_no_pillar_to_spread():
    with pytest.raises(PlanError) as refused:
        solve_plan(Plan(car=Car(lattice_spacing_m=0.09), moves=(OPEN,)))
    assert refused.value.field.endswith("height_m")
