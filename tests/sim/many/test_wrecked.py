"""Many runs of plans that begin with a wreck, solved in every run, or with a saved start, taken as it is."""

import msgspec
import pytest

from sim import many, wreck
from sim.plan import Car, Crush, EdgePoint, Plan, Spread
from sim.scenario_runs import Job, try_run
from sim.starts import save_start
from sim.vary import draws

WRECK = (Crush(shape="pole", size_m=0.25, tall_m=0.42, height_m=0.14, travel_m=0.02),)
PUSH = Spread(door=EdgePoint(depth_m=0.12), opening_m=0.005)
WRECKED = Plan(seed=2, car=Car(lattice_spacing_m=0.09), wreck=WRECK, moves=(PUSH,))


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
