"""Whole pushes with tips that hold and slip: the seat's place, what is booked, and the neutral numbers.

Sources
-------
None: the program against itself, and against the geometry of the arms (a circle's chord).
"""

import msgspec
import numpy as np
import pytest

from sim import arms
from sim.grips import PRESSED, just_set
from sim.increment import Stepper
from sim.ledger import SPENT, Ledger
from sim.plan import BeltPoint, EdgePoint
from sim.planfile import dumps_plan, loads_plan
from sim.problems import PlanError
from sim.push import make_push
from sim.run import never
from sim.slide import LEAST_SLIDE_M
from tests.sim.runs.solved import DEEP_M, build_model, car, edge, solved, tool

CAR = car(lattice_spacing_m=0.09)
"""Nothing here is a claim about a real door: what is asked holds on any lattice."""

STICKS = tool(friction_ratio=10.0, hold_n_m=1e5)
FREE = tool(friction_ratio=0.0, hold_n_m=1e5, arm_m=100.0)
STIFF_N_PER_M = 2.0e7


def across_m(answer, frame):
    """Return how far the pad's metal has gone across the line it was set to push along [m]."""
    push = answer.run._set
    way = push.weights @ (frame.points - answer.frames[0].points)[push.nodes]
    return float(np.linalg.norm(way - (way @ push.direction) * push.direction))


def test_tips_that_never_slide_are_close_to_a_pin_driven_along_the_line():
    # close to: the metal under the pad keeps to the line but for the give of the pad's own spring, force over
    # stiffness; it never slides
    answer = solved(CAR, edge(depth_m=DEEP_M, opening_m=0.01, stop_at=(), tool=STICKS))
    for frame in answer.frames[1:]:
        force = float(np.linalg.norm(frame.drive_forces[0]))
        assert across_m(answer, frame) <= force / STIFF_N_PER_M + 1e-9
        assert frame.seat.slid_m == 0.0
    assert answer.frames[-1].ledger_j["friction"] == pytest.approx(0.0, abs=1e-12)


def test_tips_without_friction_push_as_a_line_that_is_free_across():
    move = edge(opening_m=0.0025, stop_at=(), tool=FREE)
    model, answer = build_model(CAR), solved(CAR, move)
    push = make_push(model, move)
    stepper = Stepper(model.network.with_drives([push.drive(model.start.points)]), never)
    start = stepper.first_point(just_set(model.start), Ledger())
    plain = stepper.advance(start, 0.0025)
    # the first step only: later the pad has gone along the metal. The pad holds for the first of its substeps
    assert answer.frames[-1].seat.slid_m > LEAST_SLIDE_M
    assert answer.frames[-1].force_n == pytest.approx(float(plain.force_n[0]), rel=0.1)


@pytest.mark.parametrize("along_m", [0.35, 0.36, 0.37])
def test_on_the_flat_a_push_beyond_the_friction_angle_slides_towards_the_lip(along_m):
    # 2.5 mm, before the latch lets go: pushed square to the shut face, and at 45 degrees to the car's line
    square, tilted = (
        solved(CAR, edge(along_m, 0.05, tilt_rad=tilt, opening_m=0.0025, stop_at=(), tool=tool(hold_n_m=1e5)))
        for tilt in (0.0, 0.7854)
    )
    last = tilted.frames[-1].seat
    # while friction catches up with the force the pad creeps by hundredths of a millimetre
    assert square.frames[-1].seat.slid_m < 0.1e-3
    assert last.slid_m > 0.0008
    # a pad that has not yet slid far enough for other nodes still stands in its last place
    assert last.place.depth_m == pytest.approx(0.05 - last.slid_m, abs=LEAST_SLIDE_M + 1e-4)
    assert last.place.depth_m < 0.05 - LEAST_SLIDE_M
    demand = [r.demand_ratio for r in square.frames[-1].ladder if r.event == "tip slipping"]
    assert demand and demand[0] < 1.0


@pytest.fixture(scope="module")
def slick():
    """Return the edge attack with tips as slick as on a wet seal."""
    return solved(CAR, edge(opening_m=0.015, stop_at=(), tool=tool(friction_ratio=0.15)))


def test_a_pad_that_slides_is_told_and_its_share_changes(slick):
    first, last = slick.frames[0].seat, slick.frames[-1].seat
    assert [event.kind for event in slick.result.events].count("tip slipping") == 1
    assert last.slid_m > 0.005
    # the skin goes outboard more readily than the tip does: the tip is left further in, and off the lip
    assert last.place.depth_m > first.place.depth_m + 0.005
    assert last.skin_share < first.skin_share
    assert "tip slipping" in slick.result.metal
    assert f"slipped {last.slid_m * 1e3:.0f} mm along the metal" in slick.result.sentence


def test_friction_only_takes_and_the_books_close(slick):
    lines = [frame.ledger_j["friction"] for frame in slick.frames]
    assert lines[-1] > 0.0
    assert min(np.diff(lines)) >= -1e-9
    books = slick.frames[-1].ledger_j
    assert abs(books["gap"]) <= 0.02 * books["work of the tips"]
    assert min(books[name] for name in SPENT) >= -1e-9


def test_the_force_across_is_never_above_friction(slick):
    grip = slick.run.hold.tips.drive.grip
    force = slick.frames[-1].drive_forces[0]
    pressed = float(force @ grip.bearing)
    across = float(np.linalg.norm(force - pressed * grip.bearing))
    # the force pressed with is the one before the last step
    assert across <= 0.15 * max(pressed, float(slick.frames[-2].state.kept[PRESSED][0])) * 1.01 + 1.0


def test_a_standing_tool_draws_its_tip_outboard_on_its_arc():
    place = BeltPoint(along_m=0.5)
    at = {"opening_m": 0.02, "stop_at": (), "tool": STICKS}
    comes, stands = (
        solved(CAR, msgspec.structs.replace(edge(**at), door=place, tool_body=body))
        for body in ("comes", "stands")
    )
    push = stands.run._set
    back = [arms.drawn_back_m(push.reach_m + s, push.tool.arm_m) for s in (0.0, 0.02)]
    ways = [a.frames[-1].seat.tips[0] - a.frames[0].seat.tips[0] for a in (comes, stands)]
    assert np.linalg.norm(ways[1] - ways[0]) == pytest.approx(back[1] - back[0], rel=1e-9)
    assert ways[1][1] > ways[0][1]
    books = stands.frames[-1].ledger_j
    assert abs(books["gap"]) <= 0.02 * books["work of the tips"]


def test_a_tool_the_crew_cannot_hold_turns_after_the_metal():
    held, loose = (
        solved(CAR, edge(opening_m=0.01, stop_at=(), tool=tool(hold_n_m=hold))) for hold in (1e5, 1.0)
    )
    turned = [np.linalg.norm(a.frames[-1].seat.line - a.run._set.direction) for a in (held, loose)]
    assert turned[0] < 1e-6 < 0.05 < turned[1]


# ---- plans -------------------------------------------------------------------------------------------------

PLAN = """
schema_version = 1
[[moves]]
move = "spread"
tilt_deg = 45.0
{move}
[moves.door]
at = "edge"
edge = "latch_edge"
along_m = 0.36
depth_m = 0.005
{door}
[moves.tool]
name = "by hand"
{tool}
"""


def made(text):
    """Return the push of the first move of a plan's text."""
    plan = loads_plan(text)
    return make_push(build_model(plan.car), plan.moves[0])


def refused(move="", door="", of_tool=""):
    """Return the error of a plan with some lines more."""
    with pytest.raises(PlanError) as caught:
        made(PLAN.format(move=move, door=door, tool=of_tool))
    return caught.value


AGAINST = '[moves.against]\nat = "{}"\n{}'


@pytest.mark.parametrize(
    ("lines", "path", "remedy"),
    [
        ({"of_tool": "friction_ratio = -0.1"}, "tool.friction_ratio", "0.3 to 0.6"),
        ({"of_tool": "friction_ratio = 11.0"}, "tool.friction_ratio", "0.3 to 0.6"),
        ({"of_tool": "hold_n_m = -1.0"}, "tool.hold_n_m", "use 0"),
        ({"of_tool": "arm_m = 0.2"}, "tool.arm_m", "more than 0.33 m"),
        ({"move": "lean_deg = 60.0"}, "lean_deg", "-28"),
        ({"move": 'lean_deg = "much"'}, "moves[].lean_deg", "number of degrees"),
        ({"move": 'tool_body = "floats"'}, "moves[0].tool_body", "'comes', 'stands'"),
        ({"door": 'surface = "wet"'}, "moves[0].door.surface", "'rubber'"),
        ({"move": AGAINST.format("edge", "along_m = 0.36\ndepth_m = 0.005")}, "against", "same point"),
        ({"move": AGAINST.format("edge", "along_m = 0.38\ndepth_m = 0.005")}, "against", "0.05 m apart"),
        ({"move": AGAINST.format("edge", "along_m = 9.0\ndepth_m = 0.005")}, "against.along_m", "in the air"),
    ],
    ids=lambda value: str(value)[:40],
)
def test_what_cannot_be_done_is_refused_by_name_with_a_remedy(lines, path, remedy):
    error = refused(**lines)
    assert error.field.endswith(path)
    assert remedy in str(error)


def test_tips_on_two_places_of_the_door_push_it_apart():
    text = PLAN.format(move=AGAINST.format("edge", "along_m = 0.55\ndepth_m = 0.005"), door="", tool="")
    plan = loads_plan(text)
    push = make_push(build_model(plan.car), plan.moves[0])
    assert float(push.weights.sum()) == pytest.approx(0.0, abs=1e-12)
    # along the line between them, down from the upper one
    assert push.direction[2] < -0.9
    assert loads_plan(dumps_plan(plan)) == plan


def test_new_numbers_are_written_in_degrees_and_come_back():
    lines = {"move": "lean_deg = 5.0", "door": 'surface = "rubber"', "tool": "friction_ratio = 0.3"}
    plan = loads_plan(PLAN.format(**lines))
    move = plan.moves[0]
    assert (move.lean_rad, move.door.surface) == (pytest.approx(np.radians(5.0)), "rubber")
    again = loads_plan(dumps_plan(plan))
    assert again.moves[0].tool == move.tool
    assert again.moves[0].lean_rad == pytest.approx(move.lean_rad, rel=1e-12)
    assert isinstance(again.moves[0].door, EdgePoint)
