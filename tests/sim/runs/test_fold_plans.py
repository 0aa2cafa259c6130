"""A small fold-down as a plan of many moves: each starts where the last one ended, and any moment comes back.

Strip, cut at the head, ram, ease, ram again from another place, on a coarse side whose latches are open.

Sources
-------
Books, balance of what is carried on, mirror images: laws of statics, no source. The order of moves: common
practice, no source.
"""

from itertools import pairwise

import msgspec
import numpy as np
import pytest

from sim.cut_plan import PillarCut
from sim.ledger import SPENT
from sim.plan import BaseSpot, Car, Cut, Ease, PillarSpot, Plan, Press, Strip
from sim.run import MoveRun, solve_plan
from sim.whole_side import WholeSide
from sim.wreck import begin_of, model_of

CAR = Car(
    extent="side",
    latch="open",
    lattice_spacing_m=0.09,
    whole_side=WholeSide(
        rear_latch="open",
        pillar_pressed_m=0.0012,
        pillar_closing_m=0.001,
        pillar_pressed_yield_pa=350.0e6,
        spot_pitch_m=0.025,
        spot_sheet_m=0.0025,
    ),
)
FOOT = BaseSpot(base="far_pillar")
PLAN = Plan(
    car=CAR,
    moves=(
        Strip(what=("trim", "seals", "glass")),
        Cut(place=PillarCut(height_m=0.95)),
        Press(head=PillarSpot(height_m=0.55), foot=FOOT, extension_m=0.01),
        Ease(),
        Press(head=PillarSpot(height_m=0.45), foot=FOOT, extension_m=0.005),
    ),
)
RAM = 2  # the first press
MOMENT_M = 0.005


@pytest.fixture(scope="module")
def answer():
    return solve_plan(PLAN, with_residual=False)


@pytest.fixture(scope="module")
def again():
    """Return the states before each move of the plan run once more, the ram let go at 5 mm after that."""
    model = model_of(PLAN)
    begin = begin_of(PLAN, model)
    states = [begin.state]
    for index, move in enumerate(PLAN.moves[: RAM + 1]):
        run = MoveRun(model, move, begin, index)
        for frame in run:
            if index == RAM and frame.opening_m >= MOMENT_M - 1.0e-9:
                run.stop()
        begin = run.end
        states.append(begin.state)
    return states


def test_every_move_starts_with_the_hash_of_what_the_last_one_left(answer):
    model, records = answer
    assert records[0].result.start_sha256 == model.start.sha256()
    for before, after in pairwise(records):
        assert after.result.start_sha256 == before.end_state.sha256()
    assert len({record.end_state.sha256() for record in records}) == len(records)


def test_every_moves_books_close_and_lines_only_grow(answer):
    _, records = answer
    for record in records:
        result = record.result
        assert result.solver.failed_count == 0
        work = abs(result.ledger_j["work of the tips"])
        assert abs(result.ledger_j["gap"]) < 0.02 * max(work, 10.0)
        for name in SPENT:
            assert result.ledger_j[name] >= -1.0e-9, name
    assert records[RAM].result.ledger_j["work of the tips"] > 5.0


def test_undone_to_before_a_move_the_state_has_the_hash_it_had(answer, again):
    _, records = answer
    for index in range(RAM + 1):
        assert again[index].sha256() == records[index].result.start_sha256


def test_undone_to_a_moment_within_a_move_the_metal_is_the_one_seen_there(answer, again):
    _, records = answer
    seen = next(frame for frame in records[RAM].frames if frame.opening_m == pytest.approx(MOMENT_M))
    assert seen.state is not None
    assert again[-1].sha256() == seen.state.sha256()
    assert again[-1].sha256() != records[RAM].end_state.sha256()


def test_the_ram_moves_the_pillar_out_and_takes_no_room(answer):
    _, records = answer
    first, last = records[RAM].frames[0], records[RAM].frames[-1]
    assert last.force_n > 500.0
    for part, room in last.part_clearance_m.items():
        assert room >= first.part_clearance_m[part] - 0.002, part
    assert last.part_clearance_m["trunk"] > first.part_clearance_m["trunk"] + 0.002


@pytest.mark.slow
def test_the_left_side_is_the_mirror_image(answer):
    model, records = answer
    left_plan = PLAN.with_car(msgspec.structs.replace(CAR, side="left"))
    _, left = solve_plan(left_plan, with_residual=False)
    sheets = np.unique(model.structure.triangles)
    for here, there in zip(records, left, strict=True):
        a, b = here.end_state.points[sheets], there.end_state.points[sheets] * [1.0, -1.0, 1.0]
        # doors that hang free take up what the solver leaves over
        assert np.abs(a - b).max() < 2.0e-4
        assert there.frames[-1].force_n == pytest.approx(here.frames[-1].force_n, rel=0.01, abs=5.0)
        assert [e.kind for e in there.result.events] == [e.kind for e in here.result.events]
