"""Rams and squeezes on the pillar of a whole side, one move from the metal the last one left.

Sources
-------
A hard foot asks 2.5 times the ram's force of a soft one, or its base gives; a smooth head wants a flat spot,
which squeezing makes; a ram goes on where the pillar has been cut free: common practice, no source.
"""

from pathlib import Path

import msgspec
import pytest

import assets
from sim.plan import BaseSpot, Car, Cut, Ease, PillarSpot, Plan, Press, Ram, Squeeze
from sim.planfile import load_plan
from sim.problems import PlanError
from sim.run import solve_plan
from sim.whole_side import WholeSide

PLANS = Path(assets.__file__).parent / "plans"
SOFT = WholeSide(
    pillar_pressed_m=0.0012,
    pillar_closing_m=0.001,
    pillar_pressed_yield_pa=350.0e6,
    head_held=False,
    rear_latch="open",
)
CAR = Car(extent="side", latch="open", lattice_spacing_m=0.06, whole_side=SOFT)
SPOT = PillarSpot(height_m=0.3, off_m=0.01)


def on(**fields):
    return msgspec.structs.replace(CAR, whole_side=msgspec.structs.replace(SOFT, **fields))


def solved(car, *moves):
    records = solve_plan(Plan(car=car, moves=moves), with_residual=False)[1]
    for record in records:
        assert record.result.solver.failed_count == 0
        work = abs(record.result.ledger_j["work of the tips"])  # a tool let off takes work back
        assert abs(record.result.ledger_j["gap"]) < 0.02 * max(work, 10.0)
    return records


@pytest.mark.slow
@pytest.mark.timeout(600)
def test_a_smooth_head_slips_on_a_bowed_wall_and_holds_where_it_has_been_squeezed():
    """From the far pillar at the head's height, so that only the wall's own shape turns the angle."""
    level = BaseSpot(base="far_pillar", raised_m=-0.1)
    press = Press(head=SPOT, foot=level, ram=Ram(head="flat"), surface="painted", extension_m=0.01)
    bowed = on(pillar_bow_m=0.02)
    (slipped,) = solved(bowed, press)
    assert "seat slipping" in {event.kind for event in slipped.result.events}
    squeeze, ease, held = solved(bowed, Squeeze(on=SPOT, closing_m=0.03), Ease(), press)
    assert held.result.start_sha256 == ease.end_state.sha256()
    assert "across the pillar" in squeeze.result.sentence
    assert held.frames[0].ram.angle_rad < 0.75 * slipped.frames[0].ram.angle_rad
    assert "seat slipping" not in {event.kind for event in held.result.events}
    assert held.frames[-1].opening_m == pytest.approx(0.01)
    assert held.frames[-1].force_n > 3.0e3


@pytest.mark.slow
@pytest.mark.timeout(600)
def test_a_ram_stands_on_the_pillar_that_has_been_cut():
    """Cut near its head, held there before: the ram moves it out as one whose head is free from the start."""
    press = Press(head=PillarSpot(height_m=0.35), extension_m=0.01)
    _, after = solved(on(head_held=True), Cut(), press)
    (free,) = solved(CAR, press)
    (stiff,) = solved(on(head_held=True), press)
    force = [record.frames[-1].force_n for record in (after, free, stiff)]
    assert force[0] == pytest.approx(force[1], rel=0.1)
    assert force[0] < force[2]


def test_a_squeeze_on_a_pillar_needs_a_car_with_one():
    with pytest.raises(PlanError) as told:
        solve_plan(Plan(car=Car(lattice_spacing_m=0.09), moves=(Squeeze(on=SPOT),)))
    assert told.value.field == "moves[0].on"


@pytest.fixture(scope="module")
def bases():
    """Return soft and hard foot, flared over a rocker that gives, pressed at 0.6 m until they yield."""
    out = {}
    for name, out_m in (("soft-base", 0.025), ("hard-base", 0.04)):
        plan = load_plan(PLANS / f"{name}.toml")
        short = msgspec.structs.replace(plan.moves[-1], extension_m=out_m)
        out[name] = solved(plan.car, *plan.moves[1:-1], short)[-1]
    return out


def parts(record, kind):
    return [event.part for frame in record.frames for event in frame.events if event.kind == kind]


@pytest.mark.slow
@pytest.mark.timeout(600)
def test_a_hard_foot_asks_two_and_a_half_times_as_much_and_its_base_gives(bases):
    soft, hard = (max(f.force_n for f in bases[name].frames) for name in ("soft-base", "hard-base"))
    assert hard > 2.5 * soft
    assert parts(bases["hard-base"], "base giving") == ["rocker"]
    assert parts(bases["soft-base"], "base giving") == []
    assert "rocker under the pillar" in bases["hard-base"].result.sentence


@pytest.mark.slow
@pytest.mark.timeout(600)
def test_on_a_flared_foot_metal_yields_and_spots_hold(bases):
    for name, folds in (("soft-base", "folding pillar"), ("hard-base", "folding rocker")):
        books = bases[name].frames[-1].ledger_j
        folding = {key: value for key, value in books.items() if key.startswith("folding")}
        assert max(folding, key=folding.get) == folds
        assert parts(bases[name], "spot popped") == []
