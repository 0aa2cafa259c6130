"""A latch checked and held open between other moves: what a look changes (nothing), what a held one leaves.

Sources
-------
Floors of latch and hinges: UN R11 / GTR 1 [un-regulation-2010], 11 kN across the latch's face, 9 kN along the
fork.  What a hand has to overcome: statics of dry friction, no source; its numbers (friction .2, half of the
wedge on the pawl, a gain of 4 at the handle) are assumed, as `sim.latch` says.  That a held latch leaves the
jam alone, and that a bent one may not be freed by its handle: common practice, no source.
"""

import re
from dataclasses import replace
from functools import cache

import msgspec
import numpy as np
import pytest

from sim import latching
from sim.door_model import build_model
from sim.latch import FORK_DEPTH_M, pawl_holds
from sim.ledger import Ledger
from sim.plan import BeltPoint, Car, Ease, EdgePoint, Latch, Plan, Spread
from sim.planfile import dumps_plan, loads_plan, plan_sha256
from sim.problems import PlanError
from sim.results import result_json
from sim.run import Begin, MoveRun, solve_plan
from tests.once import once

CAR = Car(lattice_spacing_m=0.09)
CHECK, HOLD = Latch(), Latch(way="hold")
DEEP = Spread(EdgePoint("latch_edge", 0.36, 0.12), opening_m=0.015)
BEND = Spread(BeltPoint(along_m=0.8, lip="inner"), opening_m=0.03)
"""A push that leaves the latch loaded when the tool is off: the metal round it has yielded."""


def car(**numbers):
    return msgspec.structs.replace(CAR, **numbers)


@cache
def came(of, *moves):
    """Return the records of moves on a car, solved once for all workers."""
    plan = Plan(car=of, moves=moves)
    return once(lambda: solve_plan(plan, with_residual=False)[1], "at the latch", plan)


def only(of, move):
    """Return one move on an untouched door: its run and its result."""
    model = build_model(of)
    run = MoveRun(model, move, Begin(model.start, Ledger()))
    list(run)
    return run, run.result()


class TestChecked:
    def test_a_look_changes_nothing_and_lets_no_tool_off(self):
        with_look, without = came(CAR, BEND, CHECK, Ease()), came(CAR, BEND, Ease())
        before, look, after = with_look
        assert look.result.start_sha256 == before.end_state.sha256() == look.end_state.sha256()
        assert look.result.seats == before.result.seats
        assert look.frames[0].opening_m == look.frames[-1].opening_m == before.frames[-1].opening_m
        np.testing.assert_array_equal(look.frames[-1].points, before.frames[-1].points)
        assert look.result.ledger_j["work of the tips"] == look.result.ledger_j["gap"] == 0.0
        assert look.result.plan_effect == "done"
        assert look.result.events == ()
        assert after.end_state.sha256() == without[1].end_state.sha256()
        assert after.result.sentence == without[1].result.sentence
        assert after.frames[-1].ledger_j == without[1].frames[-1].ledger_j

    def test_it_tells_what_the_latch_carries_and_holds(self):
        before, look, _ = came(CAR, BEND, CHECK, Ease())
        carried = np.linalg.norm(before.frames[-1].reactions["latch"])
        note = look.result.latch
        assert note.pawl_n == pytest.approx(0.5 * carried)
        assert note.needed_n == pytest.approx(0.2 * 0.5 * carried / 4.0)
        assert note.jam_n == pytest.approx(2.0 * 0.2 * carried)
        # by UN R11: the car's latch is 1.25 times the floors
        assert note.holds_n == pytest.approx((1.25 * 9.0e3, 1.25 * 11.0e3))
        assert "While the pawl is in it holds 11.2 to 13.8 kN." in look.result.sentence
        assert f"{note.needed_n:.0f} N at the handle" in look.result.sentence

    @pytest.mark.parametrize(
        ("numbers", "state", "said"),
        [
            ({}, "shut", r"^The latch is free to open; nothing presses on its pawl.*Nothing jams"),
            ({"latch": "half"}, "shut", r"free to open; .*it holds 5\.6 kN\.$"),
            ({"latch_wedge_n": 6e3}, "shut", r"free to open; 150 N .*the jam is left: 2\.4 kN"),
            ({"latch_wedge_n": 12e3}, "jammed", r"still holds; .*6\.0 kN, .*300 N .*the hand gives 250 N"),
            ({"latch": "open", "latch_wedge_n": 6e3}, "open", r"pawl is out already.*2\.4 kN"),
            ({"latch": "open"}, "open", r"pawl is out already\. Nothing jams its striker\.$"),
        ],
        ids=lambda value: str(value)[:20],
    )
    def test_the_sentence_is_what_statics_say(self, numbers, state, said):
        of = car(**numbers)
        _, result = only(of, CHECK)
        assert result.latch.state == state
        assert re.search(said, result.sentence)
        if numbers.get("latch_wedge_n") and state != "open":  # as the car's own jam is told apart
            jam = msgspec.structs.replace(of, latch="jammed")
            assert pawl_holds(jam) == (state == "jammed")

    def test_a_latch_that_has_let_go_holds_nothing(self):
        stop = msgspec.structs.replace(DEEP, opening_m=0.03, stop_at=("latch free",))
        gone, look = came(CAR, stop, CHECK)
        assert "latch free" in {event.kind for event in gone.result.events}
        assert look.result.latch.state == "gone"
        assert look.result.sentence.startswith("The latch no longer holds.")


class TestHeldOpen:
    @pytest.mark.parametrize("numbers", [{}, {"latch_wedge_n": 6e3}], ids=["free", "wedged"])
    def test_held_by_hand_is_the_field_held_open_for_what_follows(self, numbers):
        drawn, after = came(car(**numbers), HOLD, DEEP)
        (field,) = came(car(latch="open", **numbers), DEEP)
        assert drawn.result.latch.state == latching.HELD_OPEN
        assert [(e.kind, e.part) for e in drawn.result.events] == [("held open", "latch")]
        assert [f.opening_m for f in after.frames] == [f.opening_m for f in field.frames]
        for mine, other in zip(after.frames, field.frames, strict=True):
            np.testing.assert_allclose(mine.points, other.points, rtol=0.0, atol=1e-9)
            assert mine.force_n == pytest.approx(other.force_n, rel=1e-6, abs=1e-3)
        told, told_of_field = (
            [(e.kind, e.part, e.opening_m) for e in record.result.events] for record in (after, field)
        )
        assert told == told_of_field
        # and what is left is the jam alone: the door comes, the latch never carries
        assert after.result.latch_demand_ratio == 0.0
        assert ("striker out" in after.result.metal) == bool(numbers)

    def test_a_pull_that_is_not_enough_leaves_everything_as_it_is(self):
        run, result = only(car(latch_wedge_n=12e3), HOLD)
        start = run.model.start
        np.testing.assert_allclose(run.end.state.points, start.points, rtol=0.0, atol=1e-12)
        assert run.end.state.holding.all()
        assert [(e.kind, e.part) for e in result.events] == [("stalled", "handle")]
        assert result.events[0].force_n == pytest.approx(300.0)
        assert result.plan_effect == "spent"
        stronger, freed = only(car(latch_wedge_n=12e3), Latch(way="hold", handle_n=310.0))
        assert freed.latch.state == latching.HELD_OPEN
        assert not stronger.end.state.holding.all()

    @pytest.mark.parametrize("side", ["right", "left"])
    def test_a_bent_latch_goes_on_as_the_jam_of_what_it_carried(self, side):
        bent, held = came(car(side=side), BEND, HOLD)
        rest, end = held.frames[0], held.frames[-1]
        carried = float(np.linalg.norm(rest.reactions["latch"]))
        assert carried > 500.0  # the tool is off and the bent metal still loads it
        assert rest.opening_m == end.opening_m == 0.0  # the tips are shut
        note = held.result.latch
        assert note.jam_n == pytest.approx(0.4 * carried)
        # the friction holds no more than its limit, and the metal comes to rest against it
        assert np.linalg.norm(end.reactions["wedged striker"]) <= 1.001 * note.jam_n
        assert np.linalg.norm(end.reactions["latch"]) == 0.0
        assert abs(held.result.ledger_j["gap"]) < 1e-6
        assert held.result.ledger_j["released in a jump"] > 0.0
        assert held.result.solver.failed_count == 0
        assert bent.end_state.sha256() != held.end_state.sha256()

    def test_left_and_right_are_each_others_mirror_image(self):
        right, left = (came(car(side=side), BEND, HOLD)[1] for side in ("right", "left"))
        mirrored = left.frames[-1].points * np.array([1.0, -1.0, 1.0])
        np.testing.assert_allclose(mirrored, right.frames[-1].points, rtol=0.0, atol=1e-7)
        assert left.result.sentence == right.result.sentence

    def test_a_striker_wedged_before_is_not_wedged_twice(self):
        run, result = only(car(latch_wedge_n=6e3), HOLD)
        assert result.latch.jam_n == pytest.approx(2.4e3)
        assert run.end.model.structure.sliders == build_model(car(latch_wedge_n=6e3)).structure.sliders
        model = build_model(CAR)
        pull = latching.Pull(_tie(model), None, 1e3, 400.0, holds=True)
        structure, state = latching.wedged_with(model.structure, model.start, pull, "front")
        (made,) = structure.sliders
        assert (made.name, made.force_n, made.travel_m) == ("wedged striker", 400.0, FORK_DEPTH_M)
        # half slid out already, and pressed harder now: it goes on from where it is, with what presses it
        kept = {**state.kept, "rubbing slip": np.array([[0.0, 0.0, 0.0, 0.5 * FORK_DEPTH_M]])}
        slid = replace(state, kept=kept)
        more = latching.Pull(_tie(model), 0, 2e3, 800.0, holds=True)
        grown, after = latching.wedged_with(structure, slid, more, "front")
        assert latching.left_n(grown.sliders[0], 0.5 * FORK_DEPTH_M) == pytest.approx(800.0)
        assert after.kept["rubbing slip"][0, 3] == 0.5 * FORK_DEPTH_M


def _tie(model):
    return next(i for i, tie in enumerate(model.structure.ties) if tie.name == "latch")


@pytest.mark.parametrize(
    ("move", "field", "said"),
    [
        (Latch(door="rear"), "door", "the car is one door"),
        (Latch(handle_n=5e3), "handle_n", "use 0 to 1000"),
        (Latch(handle_n=float("nan")), "handle_n", "use 0 to 1000"),
    ],
    ids=["rear", "pull", "nan"],
)
def test_what_cannot_be_pulled_at_is_refused(move, field, said):
    model = build_model(CAR)
    with pytest.raises(PlanError, match=said) as told:
        MoveRun(model, move, Begin(model.start, Ledger()))
    assert told.value.field == field


def test_it_goes_to_a_file_and_back_and_a_wrong_word_is_told_with_the_right_ones():
    plan = Plan(moves=(CHECK, Latch(way="hold", door="rear", handle_n=300.0)))
    assert loads_plan(dumps_plan(plan)) == plan
    assert plan_sha256(plan) != plan_sha256(Plan(moves=(CHECK, HOLD)))
    head = 'schema_version = 1\n[[moves]]\nmove = "latch"\n'
    with pytest.raises(PlanError, match=r"moves\[0\]\.way is 'peek'; use one of: 'check', 'hold'"):
        loads_plan(f'{head}way = "peek"')
    with pytest.raises(PlanError, match=r"moves\[0\]\.door is 'left'; use one of: 'front', 'rear'"):
        loads_plan(f'{head}door = "left"')
    with pytest.raises(PlanError, match="give a number instead"):
        loads_plan(f"{head}handle_n = true")


def test_its_figures_stand_in_the_results_of_this_move_alone():
    text = result_json(Plan(car=CAR, moves=(CHECK,)), came(CAR, CHECK))
    assert '"latch": {' in text
    assert '"state": "shut"' in text
    assert '"latch": {' not in result_json(Plan(car=CAR, moves=(Ease(),)), came(CAR, Ease()))
