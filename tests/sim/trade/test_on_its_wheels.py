"""The car on its stands: what moves it, what does not, and that support first is right.

Sources
-------
Unsupported, the car moves more and a stroke opens less; support first: common practice, no source.  A push
whose two ends stand on one body moves that body by nothing: statics.
"""

import numpy as np
import pytest

from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import BodyPoint, Car, EdgePoint, Hold, Spread, Support
from sim.problems import PlanError
from sim.run import Begin, MoveRun
from sim.whole_side import WholeSide


def car(**side):
    return Car(lattice_spacing_m=0.09, extent="side", latch="open", whole_side=WholeSide(**side))


def made(model, *moves):
    begin, runs = Begin(model.start, Ledger()), []
    for index, move in enumerate(moves):
        run = MoveRun(model, move, begin, index)
        list(run)
        result = run.result(with_residual=False)
        assert result.solver.failed_count == 0
        begin = run.end
        runs.append((run, result))
    return runs


FROM_THE_GROUND = Spread(
    door=EdgePoint(edge="sill_edge", along_m=0.5, depth_m=0.09),
    against=BodyPoint(seat="ground", along_m=0.5),
    tilt_rad=0.0,
    opening_m=0.004,
)


def opening(model, run):
    """Return how far the sill has been pushed up in the car's own axes [m]."""
    first, last = model.mesh.edges["sill_edge"]
    nodes = model.mesh.wall[-1, first:last]
    return float((run.frames[-1].points[nodes, 2] - run.frames[0].points[nodes, 2]).max())


@pytest.fixture(scope="module")
def wheels():
    model = build_model(car())
    return model, made(model, FROM_THE_GROUND)[0]


@pytest.fixture(scope="module")
def blocks():
    model = build_model(car())
    return model, made(model, Support(), FROM_THE_GROUND)[1]


def test_unsupported_the_same_stroke_moves_the_car_more_and_opens_less(wheels, blocks):
    rises = [run.frames[-1].body_rise_m - run.frames[0].body_rise_m for _, (run, _) in (wheels, blocks)]
    openings = [opening(model, run) for model, (run, _) in (wheels, blocks)]
    assert rises[0] > rises[1]
    assert openings[0] < openings[1]
    forces = [run.frames[-1].force_n for _, (run, _) in (wheels, blocks)]
    # on springs a car is lifted with a tenth of the force that takes it off its blocks
    assert forces[1] > 3.0 * forces[0]


def test_the_books_of_a_push_from_the_ground_close(wheels, blocks):
    for _, (_, result) in (wheels, blocks):
        assert result.ledger_closure_ratio < 0.02


def test_a_push_with_both_ends_on_the_car_hardly_moves_it(wheels):
    """What it does move is its changed weight: a door of 27 kg some centimetres out."""
    model, _ = wheels
    (run, _), = made(model, Spread(door=EdgePoint(depth_m=0.115), opening_m=0.01))  # fmt: skip
    assert run.frames[-1].opening_m == pytest.approx(0.01)  # it was pushed all the way
    assert abs(run.frames[-1].body_rise_m) < 0.3e-3


def test_a_door_swung_out_lowers_its_side_by_its_own_moment(wheels):
    """W dy (y / sum k y^2): the near wheels' middle sinks by a millimetre or two; and blocks hold it."""
    model, _ = wheels
    (run, _), = made(model, Hold(angle_rad=0.5))  # fmt: skip
    sunk = -run.frames[-1].body_rise_m
    inner = model.mesh.surface.nodes_of(("inner_panel", "outer_skin"))
    out = float(np.mean(run.frames[-1].points[inner, 1] - run.frames[0].points[inner, 1]))
    wanted = 27.0 * 9.81 * out * 0.75 / (4.0 * 22.0e3 * 0.75**2)
    assert sunk == pytest.approx(wanted, rel=0.3)


@pytest.mark.parametrize("move", [
    Spread(door=EdgePoint(), against=BodyPoint(seat="ground")),
    Spread(door=EdgePoint(edge="sill_edge", along_m=0.5), against=BodyPoint(seat="ground", along_m=3.0)),
])  # fmt: skip
def test_a_tip_on_the_ground_that_is_not_under_the_sill_is_refused(wheels, move):
    model, _ = wheels
    with pytest.raises(PlanError, match="against"):
        MoveRun(model, move, Begin(model.start, Ledger()))


def test_a_door_alone_has_no_ground():
    model = build_model(Car(lattice_spacing_m=0.09))
    move = Spread(door=EdgePoint(edge="sill_edge", along_m=0.5), against=BodyPoint(seat="ground"))
    with pytest.raises(PlanError, match="extent = 'side'"):
        MoveRun(model, move, Begin(model.start, Ledger()))


@pytest.mark.parametrize("lies", ["this side up", "this side down"])
def test_on_its_side_the_doors_lie_in_their_frame_or_on_the_ground(lies):
    """Gravity along the car's width; the body stands still.  Weight closes the upper side's doors."""
    model = build_model(car(lies=lies))
    (run, _), = made(model, Hold(way="let go"))  # fmt: skip
    weight = 27.0 * 9.81
    frame = run.frames[-1]
    if lies == "this side up":
        assert not frame.grounded_n
        rests = abs(frame.reactions["rim"][1]) + abs(frame.reactions["upper hinge"][1])
        assert rests > 0.3 * weight
        with pytest.raises(PlanError, match="does not stand on its wheels"):
            MoveRun(model, Support(), Begin(model.start, Ledger()))
    else:
        assert sum(frame.grounded_n.values()) > 50.0
    assert np.isfinite(frame.points).all()
