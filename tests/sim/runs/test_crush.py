"""A crush as a move: books, mirror, the same answer each time, what stays, and every field's refusal.

A lattice of 80 mm and 60 mm of travel: what is asked here holds on any.  Nothing in it is a claim about a
real door; the one outside check of a crush is in `tests/sim/trade/test_door_test.py`.
"""

import math
from functools import cache

import msgspec
import numpy as np
import pytest

from sim.crush import CRUSH_STEP_M, make_crush
from sim.door_model import build_model
from sim.plan import Car, Crush, Ease, Plan
from sim.planfile import dumps_plan, loads_plan
from sim.problems import PlanError
from sim.run import solve_plan

pytestmark = pytest.mark.timeout(
    900
)  # a crush takes ten seconds of processor time; on a busy machine minutes

CAR = Car(lattice_spacing_m=0.08)
PUSH = Crush(travel_m=0.06)
BODIES = {
    "cylinder": PUSH,
    "face": Crush("face", size_m=0.6, tall_m=0.3, height_m=0.2, along_m=0.48, travel_m=0.06),
    "pole": Crush("pole", size_m=0.25, tall_m=0.9, height_m=0.03, along_m=0.55, skew_rad=0.2, travel_m=0.06),
}


@cache
def wrecked(shape="cylinder"):
    """Return model and records of a crush and the let-off after it."""
    return solve_plan(Plan(car=CAR, moves=(BODIES[shape], Ease())))


@pytest.mark.parametrize("shape", BODIES)
def test_its_books_close_and_every_increment_settles(shape):
    """2 % of the work, as for every move; the parts of the ledger are added up here."""
    _, (pressed, eased) = wrecked(shape=shape)
    for record in (pressed, eased):
        assert record.result.solver.failed_count == 0
        books = dict(record.frames[-1].ledger_j)
        work = books.pop("work of the tips")
        gap = books.pop("gap")
        assert work > 100.0
        assert sum(books.values()) + gap == pytest.approx(work, rel=1e-9)
        assert abs(gap) < 0.02 * work
        assert books["released in a jump"] >= 0.0
        assert books["viscous"] < 0.05 * work


def test_it_goes_in_on_its_own_grid_and_always_pushes():
    _, (pressed, _) = wrecked()
    openings = [frame.opening_m for frame in pressed.frames if not frame.events or frame.increment]
    assert openings[0] == 0.0 and openings[-1] == pytest.approx(PUSH.travel_m)
    on_grid = [o / CRUSH_STEP_M for o in openings]
    np.testing.assert_allclose(on_grid, np.round(on_grid), atol=1e-9)
    assert all(frame.force_n >= 0.0 for frame in pressed.frames)
    assert pressed.frames[0].force_n == 0.0 < pressed.frames[-1].force_n
    assert pressed.result.plan_effect == "wrecked"
    assert "305 mm cylinder went in 60 mm" in pressed.result.sentence


def test_no_metal_stands_deeper_in_the_body_than_the_penalty_lets_it():
    """At the reading points; between them a flat triangle under a round body sinks by its sagitta at most."""
    model, (pressed, _) = wrecked()
    frame = pressed.frames[-1]
    corners = frame.points[model.structure.triangles]
    fine = np.array([[i, j, 12 - i - j] for i in range(13) for j in range(13 - i)]) / 12.0
    deepest = frame.barrier.distance(
        np.einsum("qi,kij->kqj", fine, corners).reshape(-1, 3), frame.opening_m
    ).min()
    spacing = 0.08 / 3.0  # between readings; sagitta of that chord on the cylinder, and 1 mm of penalty
    assert -0.001 - spacing**2 / (8.0 * 0.1525) - 0.0015 < deepest < 0.0


def test_the_bow_stays_when_the_body_is_drawn_back():
    """It springs back a part, stays bent in, nothing presses any more, and the next move starts there."""
    model, (pressed, eased) = wrecked()
    in_m, rest_m = pressed.frames[-1].skin_mid_outboard_m, eased.frames[-1].skin_mid_outboard_m
    assert in_m < rest_m < -0.002
    assert eased.frames[-1].force_n == 0.0
    assert eased.result.start_sha256 == pressed.end_state.sha256()
    assert float(np.abs(eased.end_state.plastic).max()) > 0.0
    again = make_crush(model, PUSH, eased.end_state.points)
    first = make_crush(model, PUSH)
    assert (again.barrier.centre - first.barrier.centre) @ again.direction > 0.002  # touches later


def test_a_left_hand_car_is_its_mirror_image():
    """Rounding differs by where a sum begins; the answer is the same to far less than can be seen."""
    _, (right, _) = wrecked()
    car = msgspec.structs.replace(CAR, side="left")
    (left,) = solve_plan(Plan(car=car, moves=(PUSH,)))[1]
    flip = np.array([1.0, -1.0, 1.0])
    np.testing.assert_allclose(right.frames[-1].points, left.frames[-1].points * flip, atol=1e-4)
    assert right.frames[-1].force_n == pytest.approx(left.frames[-1].force_n, rel=1e-3)


def test_the_same_plan_gives_the_same_metal_bit_for_bit():
    """Also where the travel asked for ends between two points of the grid: there it stops."""
    plan = Plan(car=CAR, moves=(msgspec.structs.replace(PUSH, travel_m=0.017),))
    one, other = (solve_plan(plan)[1][0] for _ in range(2))
    assert one.end_state.sha256() == other.end_state.sha256()
    assert [frame.opening_m for frame in one.frames][-2:] == pytest.approx([0.015, 0.017])


BAD = {
    "size_m": [(0.0, "0.05 to"), (math.nan, "0.05 to"), (9.0, "0.05 to")],
    "tall_m": [(-1.0, "0.05 to")],
    "height_m": [(5.0, "lower end")],
    "along_m": [(7.0, "hinge edge"), (1.9, "misses the door")],
    "skew_rad": [(1.5, "straight inboard")],
    "travel_m": [(0.0, "0.001 to"), (math.inf, "0.001 to"), (2.0, "0.001 to")],
}


@pytest.mark.parametrize(
    ("field", "value", "remedy"), [(f, *pair) for f, pairs in BAD.items() for pair in pairs]
)
def test_a_number_out_of_range_is_refused_by_name(field, value, remedy):
    with pytest.raises(PlanError) as error:
        make_crush(build_model(CAR), msgspec.structs.replace(PUSH, **{field: value}))
    assert error.value.field == field.replace("_rad", "_deg")  # as it stands in a file
    assert remedy in str(error.value)


def test_a_body_that_would_meet_the_rigid_car_is_refused():
    wide = msgspec.structs.replace(PUSH, shape="face", size_m=1.4)
    with pytest.raises(PlanError, match="pillar") as error:
        make_crush(build_model(CAR), wide)
    assert error.value.field == "size_m"


def test_a_pole_thicker_than_tall_is_refused():
    with pytest.raises(PlanError, match="thick") as error:
        make_crush(build_model(CAR), msgspec.structs.replace(PUSH, shape="pole", size_m=0.3, tall_m=0.2))
    assert error.value.field == "tall_m"


FILE = """schema_version = 1
[[moves]]
move = "crush"
shape = "pole"
size_m = 0.25
tall_m = 0.6
skew_deg = 12.5
travel_m = 0.1
"""


def test_a_crush_goes_through_a_file_unchanged_with_its_angle_in_degrees():
    plan = loads_plan(FILE)
    assert plan.moves == (Crush("pole", 0.25, 0.6, skew_rad=math.radians(12.5), travel_m=0.1),)
    assert loads_plan(dumps_plan(plan)) == plan
    assert "skew_deg = 12.5" in dumps_plan(plan, FILE)


@pytest.mark.parametrize(
    ("old", "new", "field", "remedy"),
    [
        ('"pole"', '"wedge"', "moves[0].shape", "wedge"),
        ("size_m = 0.25", "size_mm = 250", "moves[0].size_mm", "size_m"),
        ("size_m = 0.25", 'size_m = "wide"', "moves[0].size_m", "plain number"),
        ("skew_deg = 12.5", 'skew_deg = "left"', "moves[].skew_deg", "degrees"),
        ("travel_m = 0.1", "travel_m = nan", "moves[0].travel_m", "finite"),
        ("travel_m = 0.1", "speed_m = 1.0", "moves[0].speed_m", "spelling"),
    ],
)
def test_a_bad_field_in_a_file_is_named_with_its_remedy(old, new, field, remedy):
    with pytest.raises(PlanError) as error:
        loads_plan(FILE.replace(old, new))
    assert field in str(error.value)
    assert remedy in str(error.value)
