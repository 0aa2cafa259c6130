"""The table of what is not known, and draws from it."""

import math

import msgspec
import numpy as np
import pytest
from scipy import stats

from sim import vary
from sim.cut_plan import DoorCut, FittingCut, PillarCut
from sim.plan import (
    BeltPoint,
    Car,
    Crush,
    Cut,
    Ease,
    EdgePoint,
    FacePoint,
    Flex,
    PillarSpot,
    Plan,
    Press,
    Spread,
    Squeeze,
    WholeSide,
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
    assert not [p for p in paths(Plan(moves=(Squeeze(on=PillarSpot()), Ease()))) if p.startswith("moves")]
    assert {"moves[0].along_m", "moves[0].height_m"} <= paths(Plan(moves=(Squeeze(),)))
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


def test_a_wreck_before_the_plan_is_varied_too():
    wrecked = msgspec.structs.replace(EDGE, wreck=(Crush(travel_m=0.18), Ease()))
    found = {item.path: item for item in vary.inputs(wrecked)}
    bow = found["wreck[0].travel_m"]
    assert (bow.low, bow.base, bow.high) == pytest.approx((0.17, 0.18, 0.19))
    draw = vary.draws(wrecked, 1)[0]
    assert draw.plan.wreck[0].travel_m == draw.values["wreck[0].travel_m"] != 0.18
    assert draw.plan.wreck[1] == Ease()


def test_on_a_saved_start_the_car_stays_and_the_moves_vary():
    started = msgspec.structs.replace(EDGE, start="wreck.npz")
    assert paths(started) == {path for path in paths(EDGE) if path.startswith("moves")} != set()
    assert all(draw.plan.car == EDGE.car for draw in vary.draws(started, 4))


class TestSide:
    SIDE = Car(extent="side", whole_side=WholeSide(soft_foot_m=0.3))

    def test_the_pillars_numbers_are_varied_on_a_side_alone(self):
        names = {"spot_sheet_m", "pillar_pressed_m", "pillar_closing_m", "pillar_pressed_yield_pa"}
        side = {f"car.whole_side.{name}" for name in (*names, "soft_foot_yield_pa")}
        assert side <= paths(Plan(car=self.SIDE, moves=(Press(),)))
        assert not side & paths(Plan(moves=(Press(),)))
        plain = Plan(car=Car(extent="side"), moves=(Press(),))
        assert "car.whole_side.soft_foot_yield_pa" not in paths(plain)

    def test_ranges_stay_within_what_a_side_may_be(self):
        strong = WholeSide(spot_sheet_m=0.004, pillar_pressed_yield_pa=1.5e9)
        plan = Plan(car=Car(extent="side", whole_side=strong), moves=(Press(),))
        found = {item.path: item for item in vary.inputs(plan)}
        assert found["car.whole_side.spot_sheet_m"].high == 0.004
        assert found["car.whole_side.pillar_pressed_yield_pa"].high == 1.6e9
        for draw in vary.draws(plan, 16):
            check_plan(draw.plan)

    def test_cuts_are_set_by_eye_and_end_by_eye_where_they_end_within_the_metal(self):
        through, short = Cut(), Cut(short_m=0.02)
        relief = Cut(depth_m=0.06, place=PillarCut(height_m=0.06))
        door = Cut(place=DoorCut(), depth_m=0.1)
        striker = Cut(place=FittingCut())
        plan = Plan(car=self.SIDE, moves=(through, short, relief, door, striker, Press()))
        of_cuts = {p for p in paths(plan) if p.startswith("moves") and not p.startswith("moves[5]")}
        assert of_cuts == {
            "moves[0].place.height_m",
            "moves[1].place.height_m",
            "moves[1].short_m",
            "moves[2].place.height_m",
            "moves[2].depth_m",
            "moves[3].place.along_m",
            "moves[3].depth_m",
        }

    def test_an_entry_bar_s_place_and_the_hand_on_it_are_varied(self):
        found = {item.path: item for item in vary.inputs(Plan(moves=(Flex(),)))}
        assert (found["moves[0].bar.hand_n"].low, found["moves[0].bar.hand_n"].high) == (400.0, 700.0)
        assert "moves[0].on.along_m" in found


def test_a_head_is_never_set_over_the_edge_of_the_wall_unless_the_plan_says_so():
    for off, low, high in ((0.0, -0.02, 0.02), (0.035, 0.015, 0.04), (0.045, 0.025, 0.045)):
        plan = Plan(moves=(Press(head=PillarSpot(off_m=off)),))
        (item,) = [i for i in vary.inputs(plan) if i.path == "moves[0].head.off_m"]
        assert (item.low, item.base, item.high) == pytest.approx((low, off, high))


class TestTogether:
    PLANS = {"lip": EDGE, "bend": Plan(seed=1, moves=(Spread(door=EdgePoint(depth_m=0.12)), Press()))}

    def test_what_two_plans_have_in_common_is_drawn_alike(self):
        both = vary.draws_together(self.PLANS, 8, 5)
        common = set(both["lip"][0].values) & set(both["bend"][0].values)
        assert "car.latch_strength_ratio" in common and "moves[0].tool.friction_ratio" in common
        for one, other in zip(both["lip"], both["bend"], strict=True):
            for path in common - {"moves[0].door.depth_m"}:
                assert one.values[path] == other.values[path]
            assert one.plan.car.seam_seed == other.plan.car.seam_seed
            # the same share of two ranges: 0 to 10 mm, and 115 to 125 mm
            share = one.values["moves[0].door.depth_m"] / 0.010
            assert other.values["moves[0].door.depth_m"] == pytest.approx(0.115 + 0.010 * share, abs=1e-12)

    def test_one_plan_alone_is_drawn_as_ever(self):
        alone = vary.draws_together({"x": EDGE}, 4, EDGE.seed)["x"]
        assert alone == vary.draws(EDGE, 4)

    def test_more_draws_begin_alike(self):
        few, more = (vary.draws_together(self.PLANS, count, 5)["bend"] for count in (4, 16))
        assert more[:4] == few


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
