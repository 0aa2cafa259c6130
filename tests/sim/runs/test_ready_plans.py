"""The two ready plans: one difference, opposite outcomes, every field there, the same answer each time.

Sources
-------
Which of the two parts the seam and which frees the latch: common practice, no source.
Latch floors 11 kN along the car and 9 kN across: UN R11 / GTR 1, load tests one and two, from memory.
The rest compares the program with itself.
"""

import json
import math

import msgspec
import numpy as np
import pytest

from sim.door_model import build_model
from sim.ledger import Ledger
from sim.planfile import load_plan, plan_sha256
from sim.results import MODEL_VERSION, result_json
from sim.run import Begin, MoveRun, solve_plan
from tests.sim.runs.solved import CAR, DEEP_M, LETS_GO, PLANS, edge, first_of, ready_records, solved

TIMES = ("factor_s", "assemble_s", "wall_s")
NUMBERS = (
    "ledger_closure_ratio", "viscous_ratio", "parted_length_m", "torn_length_m", "latch_demand_ratio",
    "skin_mid_outboard_m", "inner_mid_outboard_m", "inner_residual_outboard_m",
)  # fmt: skip
METAL = (
    "holding", "bending", "seam parting", "skin tearing", "tip shearing through", "latch free", "hinge free",
    "folding out (skin)", "folding out (inner)", "folding in (skin)", "folding in (inner)", "tip slipping",
    "tip off", "stalled",
)  # fmt: skip
EFFECT = ("gained", "spent", "lost ground", "stop here")


def ready(name):
    """Return a ready plan."""
    return load_plan(PLANS / f"{name}.toml")


def without_times(text):
    """Return result.json as plain values, the times taken out."""
    raw = json.loads(text)
    for move in raw["moves"]:
        for name in TIMES:
            del move["solver"][name]
    return raw


@pytest.fixture(scope="module")
def answers():
    """Return plan, records and result.json of both plans by name."""
    out = {}
    for name in ("edge-at-latch", "behind-the-bend"):
        plan, records = ready(name), ready_records(name)
        out[name] = plan, records, json.loads(result_json(plan, records))
    return out


def test_the_two_plans_differ_in_the_tips_depth_alone():
    lip, deep = ready("edge-at-latch"), ready("behind-the-bend")
    assert lip.moves[0].door.depth_m != deep.moves[0].door.depth_m
    door = msgspec.structs.replace(lip.moves[0].door, depth_m=deep.moves[0].door.depth_m)
    move = msgspec.structs.replace(lip.moves[0], door=door)
    # title and words say what each is for; the metal never sees them
    assert msgspec.structs.replace(lip, title=deep.title, words=deep.words, moves=(move,)) == deep


@pytest.mark.slow
class TestOutcomes:
    def test_both_start_from_the_same_metal(self, answers):
        starts = {raw["moves"][0]["start_sha256"] for _, _, raw in answers.values()}
        assert len(starts) == 1
        assert next(iter(starts)) == build_model(ready("edge-at-latch").car).start.sha256()

    def test_lip_spends_the_seam_and_leaves_the_latch(self, answers):
        result = answers["edge-at-latch"][1][0].result
        assert first_of(result.events).kind == "seam parting"
        assert "latch free" not in result.metal
        assert result.latch_demand_ratio < 0.5
        assert result.parted_length_m > 0.1
        assert result.plan_effect != "gained"

    def test_deep_frees_the_latch_and_leaves_the_seam(self, answers):
        result = answers["behind-the-bend"][1][0].result
        assert first_of(result.events).kind == "latch free"
        assert "seam parting" not in result.metal
        assert result.parted_length_m == 0.0
        assert result.plan_effect == "gained"

    def test_verdicts_stand_on_no_failed_increment(self, answers):
        assert [records[0].result.solver.failed_count for _, records, _ in answers.values()] == [0, 0]


@pytest.mark.slow
@pytest.mark.parametrize("name", ["edge-at-latch", "behind-the-bend"])
class TestResultFile:
    def test_the_plan_is_named(self, answers, name):
        plan, _, raw = answers[name]
        assert (raw["model_version"], raw["plan_sha256"]) == (MODEL_VERSION, plan_sha256(plan))
        assert (raw["seed"], raw["title"]) == (plan.seed, plan.title)
        assert len(raw["moves"]) == len(plan.moves)

    def test_numbers_are_there_and_finite(self, answers, name):
        (move,) = answers[name][2]["moves"]
        assert all(math.isfinite(move[field]) for field in NUMBERS)
        assert set(move["clearance_m"]) == {"start", "least", "end"}
        assert move["clearance_m"]["least"] <= min(move["clearance_m"]["start"], move["clearance_m"]["end"])
        assert all(math.isfinite(value) for value in move["ledger_j"].values())
        assert 0.0 <= move["latch_demand_ratio"] <= 1.1
        assert 0.0 <= move["ledger_closure_ratio"] <= 0.02
        assert 0.0 <= move["viscous_ratio"] <= 0.05

    def test_words_are_of_the_fixed_lists(self, answers, name):
        (move,) = answers[name][2]["moves"]
        assert len(move["seats"]) == 2
        assert move["metal"]
        assert set(move["metal"]) <= set(METAL)
        assert move["plan_effect"] in EFFECT
        assert move["sentence"].endswith(".")

    def test_events_say_kind_part_opening_and_force(self, answers, name):
        plan, _, raw = answers[name]
        events = raw["moves"][0]["events"]
        assert events
        for event in events:
            assert set(event) == {"kind", "part", "opening_m", "force_n"}
            assert event["kind"] and event["part"]
            assert 0.0 < event["opening_m"] <= plan.moves[0].opening_m
            assert 0.0 <= event["force_n"] <= max(plan.moves[0].tool.force_n)
        openings = [event["opening_m"] for event in events]
        assert openings == sorted(openings)

    def test_ladder_falls_from_the_part_that_gave(self, answers, name):
        (move,) = answers[name][2]["moves"]
        ratios = [rung["demand_ratio"] for rung in move["ladder"]]
        assert all(set(rung) == {"part", "event", "demand_ratio"} for rung in move["ladder"])
        assert ratios == sorted(ratios, reverse=True)
        gave = next(event["kind"] for event in move["events"] if event["kind"] in LETS_GO)
        assert gave in {rung["event"] for rung in move["ladder"] if rung["demand_ratio"] >= 1.0}

    def test_the_solver_tells_what_it_did(self, answers, name):
        solver = answers[name][2]["moves"][0]["solver"]
        counts = ("node_count", "increment_count", "iteration_count")
        assert solver["name"] and solver["kernels"]
        assert all(isinstance(solver[count], int) and solver[count] > 0 for count in counts)
        assert solver["failed_count"] == 0
        assert all(math.isfinite(solver[time]) and solver[time] >= 0.0 for time in TIMES)


# ---- the same answer each time -----------------------------------------------------------------------------


@pytest.mark.slow
def test_the_same_plan_gives_the_same_answer_bit_for_bit(answers):
    plan, records, _ = answers["behind-the-bend"]
    build_model.cache_clear()
    _, again = solve_plan(plan)
    assert without_times(result_json(plan, records)) == without_times(result_json(plan, again))
    for one, other in zip(records[0].frames, again[0].frames, strict=True):
        np.testing.assert_array_equal(one.points, other.points)
        assert one.force_n == other.force_n
    assert records[0].end_state.sha256() == again[0].end_state.sha256()


@pytest.mark.parametrize(("move", "count"), [(edge(), 5), (edge(depth_m=DEEP_M), 8)], ids=["lip", "deep"])
def test_a_push_let_go_by_hand_is_the_push_of_its_opening(move, count):
    move = msgspec.structs.replace(move, stop_at=())
    model = build_model(CAR)
    live = MoveRun(model, move, Begin(model.start, Ledger()))
    for index, _ in enumerate(live):
        if index == count:
            live.stop()
    opening_m = live.end.opening_m
    assert 0.0 < opening_m < move.opening_m
    rerun = MoveRun(model, msgspec.structs.replace(move, opening_m=opening_m), Begin(model.start, Ledger()))
    for _ in rerun:
        pass
    for one, other in zip(live.frames, rerun.frames, strict=True):
        np.testing.assert_array_equal(one.points, other.points)
    assert live.end.state.sha256() == rerun.end.state.sha256()
    assert live.end.ledger.as_dict() == rerun.end.ledger.as_dict()


# ---- the latch ---------------------------------------------------------------------------------------------

FLOOR_N = np.array([11.0e3, 9.0e3, 9.0e3])  # vertical: assumed equal to the one across


def test_the_latch_lets_go_at_its_own_strength_and_not_below_the_rule():
    answer = solved(CAR, edge(depth_m=DEEP_M))
    (latch,) = [tie for tie in answer.run._point.freed if tie.name == "latch"]
    over_floor = float(np.linalg.norm(latch.reaction_n / FLOOR_N))
    # let go within 2 % past the limit: the solver's own tolerance for the place of a release
    assert CAR.latch_strength_ratio <= over_floor <= 1.02 * CAR.latch_strength_ratio
    assert over_floor >= 1.0
