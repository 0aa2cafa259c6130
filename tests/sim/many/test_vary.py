"""The table of what is not known, and draws from it."""

import math

import msgspec
import numpy as np
import pytest
from scipy import stats

from sim import vary
from sim.plan import (
    BeltPoint,
    Car,
    Crush,
    Ease,
    EdgePoint,
    FacePoint,
    PillarSpot,
    Plan,
    Press,
    Spread,
    Squeeze,
)
from sim.planfile import check_plan
from sim.problems import PlanError

EDGE = Plan(seed=7, moves=(Spread(door=EdgePoint(depth_m=0.005)),))


def paths(plan: Plan) -> set[str]:
    return {item.path for item in vary.inputs(plan)}


def test_every_row_says_where_its_range_comes_from():
    for row in vary.TABLE:
        assert row.source.strip(), row.path
        assert any(word in row.source for word in ("assumed", "from memory", "no source", "public")), row.path


def test_only_what_plays_a_part_is_varied():
    deep = Plan(moves=(Spread(door=EdgePoint(depth_m=0.12)),))
    welded = Plan(car=Car(seam="welded", latch="open"), moves=EDGE.moves)
    belt = Plan(moves=(Spread(door=BeltPoint()),))
    assert "moves[0].door.lip_share_ratio" in paths(EDGE) - paths(deep)
    assert {"car.seam_energy_j_per_m", "car.latch_strength_ratio"} <= paths(EDGE) - paths(welded)
    assert "car.weld_pitch_m" in paths(welded) - paths(EDGE)
    assert "moves[0].door.along_m" in paths(belt)
    assert "moves[0].door.depth_m" not in paths(belt)
    assert not [p for p in paths(Plan(moves=(Squeeze(), Ease()))) if p.startswith("moves")]
    assert "moves[0].tool.friction_ratio" in paths(belt)


def test_friction_and_the_bow_of_a_wreck_are_varied():
    wreck = Plan(moves=(Crush(travel_m=0.12), EDGE.moves[0]))
    found = {item.path: item for item in vary.inputs(wreck)}
    bow, friction = found["moves[0].travel_m"], found["moves[1].tool.friction_ratio"]
    assert (bow.low, bow.high) == pytest.approx((0.11, 0.13))
    assert (friction.low, friction.high) == (0.3, 0.6)
    assert "moves[0].tool.friction_ratio" not in found and "moves[1].travel_m" not in found
    draw = vary.draws(wreck, 1)[0].plan
    assert draw.moves[0].travel_m != 0.12 and draw.moves[1].tool.friction_ratio != 0.4


def test_a_rams_grip_place_and_base_are_varied_and_no_other_moves():
    plan = Plan(moves=(EDGE.moves[0], Press(), Press(head=FacePoint(side="inner"), foot=PillarSpot())))
    found = paths(plan)
    assert {"moves[1].grip_ratio", "moves[1].head.off_m", "moves[1].foot.wall_m"} <= found
    assert {"moves[2].grip_ratio", "moves[2].head.height_m"} <= found
    assert not {"moves[0].grip_ratio", "moves[2].head.off_m", "moves[2].foot.wall_m"} & found
    (wall,) = [item for item in vary.inputs(plan) if item.path == "moves[1].foot.wall_m"]
    assert (wall.low, wall.high) == (0.001, 0.002)


def test_each_push_has_tips_of_its_own():
    two = Plan(moves=(EDGE.moves[0], Ease(), EDGE.moves[0]))
    assert {"moves[0].door.depth_m", "moves[2].door.depth_m"} <= paths(two)
    words = [item.words for item in vary.inputs(two) if item.path.startswith("moves[2]")]
    assert all(word.endswith("in move 3") for word in words)


def test_bounds_hold_the_plan_s_own_value_and_the_law_s_floor():
    for latch in (1.0, 1.25, 3.9):
        plan = msgspec.structs.replace(EDGE, car=Car(latch_strength_ratio=latch))
        for item in vary.inputs(plan):
            assert item.low <= item.base <= item.high, item.path
        (item,) = [i for i in vary.inputs(plan) if i.path == "car.latch_strength_ratio"]
        assert item.low >= 1.0 and item.high <= 4.0  # UN R11 / GTR 1 floor; the plan file's own limit
    at_lip = Plan(moves=(Spread(door=EdgePoint(depth_m=0.0)),))
    (depth,) = [i for i in vary.inputs(at_lip) if i.path.endswith("depth_m")]
    assert (depth.low, depth.high) == (0.0, 0.005)


def test_path_is_read_and_written():
    changed = vary.written(EDGE, "moves[0].door.depth_m", 0.0071)
    assert vary.read(changed, "moves[0].door.depth_m") == 0.0071
    assert vary.written(changed, "moves[0].door.depth_m", 0.005) == EDGE
    assert vary.written(EDGE, "car.latch_strength_ratio", 2.0).car.latch_strength_ratio == 2.0


def test_same_seed_same_draws_and_more_of_them_begin_alike():
    assert vary.draws(EDGE, 8) == vary.draws(EDGE, 8)
    assert vary.draws(EDGE, 16)[:8] == vary.draws(EDGE, 8)
    other = msgspec.structs.replace(EDGE, seed=8)
    assert vary.draws(other, 8)[0].values != vary.draws(EDGE, 8)[0].values


def test_draws_are_plans_that_may_be_made_and_differ_in_what_was_drawn_alone():
    for draw in vary.draws(EDGE, 64):
        check_plan(draw.plan)
        back = draw.plan
        for item in vary.inputs(EDGE):
            assert item.low <= draw.values[item.path] <= item.high
            assert vary.read(draw.plan, item.path) == draw.values[item.path]
            back = vary.written(back, item.path, item.base)
        hem = msgspec.structs.replace(back.car, seam_seed=EDGE.car.seam_seed)
        assert back.with_car(hem) == EDGE
    assert len({draw.plan.car.seam_seed for draw in vary.draws(EDGE, 64)}) == 64


def test_draws_fill_each_range_evenly():
    """Of 64 points of a Sobol sequence each 64th of a range holds one: what a net in base two is."""
    values = np.array([draw.values["moves[0].door.depth_m"] for draw in vary.draws(EDGE, 64)])
    assert sorted(np.floor(values / 0.010 * 64).astype(int)) == list(range(64))


@pytest.mark.parametrize("share", [0.0, 0.1, 0.25, 0.5, 0.9, 1.0])
def test_quantiles_are_those_of_their_laws(share):
    low, base, high = 2.0, 3.0, 8.0
    assert vary.even(share, low, base, high) == pytest.approx(low + 6.0 * share, rel=1e-12)
    triangle = vary.peaked(share, low, base, high)
    # the triangle's own distribution function, typed from its definition
    at = (
        (triangle - low) ** 2 / (6.0 * 1.0)
        if triangle <= base
        else 1.0 - (high - triangle) ** 2 / (6.0 * 5.0)
    )
    assert at == pytest.approx(share, abs=1e-12)
    in_log = vary.peaked_ratio(share, low, base, high)
    reference = stats.triang.cdf(math.log(in_log), math.log(1.5) / math.log(4), math.log(2), math.log(4))
    assert reference == pytest.approx(share, abs=1e-12)


@pytest.mark.parametrize("count", [1, 2, 3, 5, 64])
def test_any_number_of_draws(count):
    assert len(vary.draws(EDGE, count)) == count


def test_no_draws_are_refused():
    with pytest.raises(ValueError, match="ask for one run"):
        vary.draws(EDGE, 0)


def test_a_seed_below_zero_is_refused():
    with pytest.raises(PlanError, match="seed is -1"):
        vary.draws(msgspec.structs.replace(EDGE, seed=-1), 2)


def test_preview_is_coarse_and_never_finer_than_the_plan():
    assert vary.preview(EDGE).car.lattice_spacing_m == vary.PREVIEW_SPACING_M
    coarser = msgspec.structs.replace(EDGE, car=Car(lattice_spacing_m=0.08))
    assert vary.preview(coarser) == coarser
