"""Many runs of plans that begin with a wreck, solved in every run, or with a saved start, taken as it is."""

import msgspec
import pytest

from sim import many, wreck
from sim.plan import Car, Crush, EdgePoint, Plan, Spread
from sim.scenario import Asked, loads_scenario
from sim.scenario_runs import Job, try_run
from sim.shared_wrecks import start_name
from sim.starts import save_start
from sim.vary import draws, draws_together

WRECK = (Crush(shape="pole", size_m=0.25, tall_m=0.42, height_m=0.14, travel_m=0.02),)
PUSH = Spread(door=EdgePoint(depth_m=0.12), opening_m=0.005)
WRECKED = Plan(seed=2, car=Car(lattice_spacing_m=0.09), wreck=WRECK, moves=(PUSH,))

SCENARIO = """schema_version = 1
title = "One wreck"
wrecks = "as planned"
[plans]
one = "one.toml"
[[asks]]
ask = "told"
words = "Most force"
of = "one"
figure = ["force_n"]
"""


@pytest.fixture(scope="module")
def started(tmp_path_factory) -> Plan:
    file = tmp_path_factory.mktemp("starts") / "dent.npz"
    save_start(file, WRECKED, wreck.wrecked(WRECKED, wreck.model_of(WRECKED)))
    return msgspec.structs.replace(WRECKED, wreck=(), start=str(file))


def test_each_run_has_a_wreck_of_its_own():
    tried = [many.try_draw(draw) for draw in draws(WRECKED, 2)]
    assert [run.standing for run in tried] == [many.SETTLED] * 2
    travel = [run.values["wreck[0].travel_m"] for run in tried]
    assert travel[0] != travel[1] and all(0.01 <= value <= 0.03 for value in travel)
    # the skin lies further in where the post went further in
    deeper = int(travel[1] > travel[0])
    assert tried[deeper].skin_mid_outboard_m < tried[1 - deeper].skin_mid_outboard_m < 0.0


def test_runs_on_a_saved_start_begin_with_its_metal_and_vary_the_moves_alone(started):
    drawn = draws(started, 2)
    runs = [try_run(Job(draw)) for draw in drawn]
    assert all(path.startswith("moves") for draw in drawn for path in draw.values)
    first = [run.moves[0].curves["skin_mid_outboard_m"][0] for run in runs]
    assert first[0] == first[1] < 0.0
    assert runs[0].moves[0].curves["force_n"] != runs[1].moves[0].curves["force_n"]
    assert many.try_draw(drawn[0]).standing == many.SETTLED


def test_a_start_of_another_car_is_a_run_that_could_not_be_made(started):
    other = started.with_car(msgspec.structs.replace(started.car, skin_thickness_m=0.0008))
    run = try_run(Job(draws(other, 1)[0]))
    assert not run.moves and "another car" in run.why


def test_plans_with_one_wreck_have_it_solved_once_and_stand_on_the_same_metal(tmp_path):
    other = WRECKED.with_move(0, Spread(door=EdgePoint(depth_m=0.11), opening_m=0.0025))
    drawn = draws_together({"one": WRECKED, "other": other}, 1, 2)
    plans = [drawn[name][0].plan for name in ("one", "other")]
    assert start_name(plans[0]) == start_name(plans[1])
    runs = [try_run(Job(drawn[name][0], starts=tmp_path)) for name in ("one", "other")]
    assert [file.name for file in tmp_path.iterdir()] == [start_name(plans[0])]
    first = [run.moves[0].curves["skin_mid_outboard_m"][0] for run in runs]
    assert first[0] == first[1] < 0.0
    assert runs[0] == try_run(Job(drawn["one"][0]))  # the same as with its wreck solved in the run


def test_a_wreck_that_is_not_drawn_is_that_of_the_plan(tmp_path):
    scenario = loads_scenario(SCENARIO)
    asked = Asked(scenario, {"one": WRECKED}).on_starts(tmp_path)
    assert asked.plans["one"].start == str(tmp_path / start_name(WRECKED)) and not asked.plans["one"].wreck
    draw = asked.draws(1)["one"][0]
    assert all(path.startswith("moves") for path in draw.values)
    assert Asked(loads_scenario(SCENARIO.replace("as planned", "drawn")), {"one": WRECKED}).on_starts(
        tmp_path
    ).plans == {"one": WRECKED}
