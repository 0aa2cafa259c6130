"""The rear door's upper hinge, which hangs on the pillar between the doors: skinned past, or forced.

Sources
-------
Tips on the lip at a hinge edge part the seam and leave the hinge; past the lip the push goes through the
inner structure to the hinge: common practice, no source.
A hinge holds at least 11 kN along the car (UN R11 / GTR 1, from memory).
"""

import pytest

from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import Car, EdgePoint, Spread, Tool
from sim.run import Begin, MoveRun
from sim.whole_side import WholeSide

CAR = Car(
    lattice_spacing_m=0.09,
    extent="side",
    latch="open",
    whole_side=WholeSide(rear_latch="open", trim=False, seals=False),
)
HINGE_UP_M, WIDE_TIPS = 0.5, Tool(tip_width_m=0.1)
FLOOR_N = 11.0e3


@pytest.fixture(scope="module")
def model():
    return build_model(CAR)


def pushed(model, depth_m, opening_m):
    """Return the result of wide tips opened straight along the car, level with the rear upper hinge."""
    place = EdgePoint(panel="rear", edge="hinge_edge", along_m=HINGE_UP_M, depth_m=depth_m)
    move = Spread(door=place, tilt_rad=0.0, opening_m=opening_m, tool=WIDE_TIPS)
    run = MoveRun(model, move, Begin(model.start, Ledger()))
    list(run)
    result = run.result(with_residual=False)
    assert result.solver.failed_count == 0 and result.ledger_closure_ratio < 0.02
    return result


def test_tips_past_the_lip_free_the_hinge_and_leave_the_seam_whole(model):
    result = pushed(model, 0.05, 0.004)
    first = result.events[0]
    assert (first.kind, first.part) == ("hinge free", "rear upper hinge")
    assert first.force_n > FLOOR_N
    assert result.parted_length_m == 0.0


def test_tips_just_past_the_hem_part_the_seam_and_the_hinge_holds(model):
    result = pushed(model, 0.014, 0.015)
    assert result.events[0].kind == "seam parting"
    assert not any(event.kind == "hinge free" for event in result.events)
