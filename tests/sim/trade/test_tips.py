"""Facts of the trade on tips: wide ones need more before they tear, thin ones shear, slick ones slip.

Each at three seats 10 mm apart along the edge at one depth.

Sources
-------
Wide tips, larger force before tearing than narrow ones at one place and depth: common practice, no source.
Thin tips shear sheet where wide ones do not: common practice, no source.
Tips slide on a rubber seal left on: common practice, no source.
"""

import msgspec
import pytest

from sim.plan import EdgePoint
from sim.shear import edges_under
from tests.sim.runs.solved import CAR, DEEP_M, edge, solved, tool

SEATS = (0.19, 0.20, 0.21)  # below the latch, whose patch of 2.5 mm wraps the bend and is cut by no tip
BROAD = tool(tip_width_m=0.06, tip_depth_m=0.01)
# 20 mm are at the verge there: cut at 24 mm of opening at 0.21 m, while the latch goes first at 0.20 m
THIN = tool(name="thin tips", tip_width_m=0.012, tip_depth_m=0.01)
SHEARS = "tip shearing through"
TEARS = (SHEARS, "skin tearing")


def before_tearing_n(answer):
    """Return the force at which the tips first tear a sheet, or the most they pushed with when none tore."""
    cut = [event.force_n for event in answer.result.events if event.kind in TEARS]
    return cut[0] if cut else max(frame.force_n for frame in answer.frames)


def pushed(along_m, tips):
    """Return a push of 15 mm behind the bend that ends where a sheet tears."""
    return solved(CAR, edge(along_m, DEEP_M, tool=tips, opening_m=0.015, stop_at=TEARS))


@pytest.mark.parametrize("along_m", SEATS)
def test_wide_tips_need_more_force_before_tearing_than_narrow_ones(along_m):
    # pads of one length, 60 and 12 mm wide; the wide ones have not torn yet: their force is a lower bound
    wide, narrow = pushed(along_m, BROAD), pushed(along_m, THIN)
    assert SHEARS in {event.kind for event in narrow.result.events}
    assert before_tearing_n(wide) > 1.05 * before_tearing_n(narrow)


@pytest.mark.parametrize("along_m", SEATS)
def test_thin_tips_shear_where_wide_ones_do_not(along_m):
    assert SHEARS in {event.kind for event in pushed(along_m, THIN).result.events}
    assert SHEARS not in {event.kind for event in pushed(along_m, BROAD).result.events}


@pytest.mark.parametrize("along_m", SEATS)
def test_a_cut_is_booked_once_as_long_as_the_pad_and_loses_the_seat(along_m):
    answer = pushed(along_m, THIN)
    (edge_cut,) = edges_under(answer.model, answer.run._set)
    (event,) = [event for event in answer.result.events if event.kind == SHEARS]
    last = answer.frames[-1]
    # the tool is at its cutting force to a hundredth, the solver's tolerance for a limit
    assert event.force_n == pytest.approx(edge_cut.tip_n, rel=0.011)
    assert last.torn_length_m == pytest.approx(edge_cut.length_m, rel=1e-12)
    assert last.ledger_j["tear"] == pytest.approx(event.force_n * edge_cut.thickness_m, rel=1e-9)
    # behind the inner sheet there is nothing: the tip is off and the push has ended
    assert [e.kind for e in last.events][-2:] == [SHEARS, "tip off"]
    assert last.force_n == 0.0
    assert last.opening_m < answer.run.move.opening_m
    assert answer.run.end.engaged is None


@pytest.mark.slow
@pytest.mark.parametrize("along_m", SEATS)
def test_a_seal_left_on_slips_more_than_paint(along_m):
    slid = {}
    for surface in ("rubber", "painted"):
        place = EdgePoint(along_m=along_m, depth_m=0.05, surface=surface)
        move = edge(opening_m=0.0025, stop_at=(), tool=tool(hold_n_m=1e5))
        move = msgspec.structs.replace(move, door=place)
        slid[surface] = solved(CAR, move).frames[-1].seat.slid_m
    assert slid["rubber"] > slid["painted"]
