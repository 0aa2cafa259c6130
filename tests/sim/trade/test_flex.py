"""A forcible-entry bar: the lever's statics, and what a hand can and cannot do with one on a door.

Sources
-------
Moments about the heel and virtual work: any textbook of statics, from memory. A hand pulls 400 to 700 N on a
bar of 0.75 to 0.9 m, 3 to 15 kN at its tip over 80 to 26 mm; a window frame flexes at 0.7 to 1.5 kN, 20 to
60 mm: estimates of the trade, no source. That a bar flexes a frame and does not pull a latch: common
practice, no source.
"""

import math

import numpy as np
import pytest

from sim.door_model import build_model
from sim.flexing import make_bar
from sim.lever import MOST_TURN_RAD, Lever
from sim.plan import Car, Ease, EdgePoint, EntryBar, Flex, FramePoint, Plan
from sim.problems import PlanError
from sim.run import solve_plan

CAR = Car(lattice_spacing_m=0.06)
BEHIND_THE_BEND = EdgePoint(depth_m=0.12)


def flexed(*moves, car=CAR):
    return solve_plan(Plan(car=car, moves=moves), with_residual=False)[1]


@pytest.mark.parametrize(("length_m", "tip_m"), [(0.75, 0.08), (0.8, 0.05), (0.9, 0.026)])
def test_work_of_the_hand_is_work_of_the_tip(length_m, tip_m):
    """Over the whole turn, by the trapezoid on a fine grid of the tip's way."""
    lever = Lever(length_m, tip_m, 500.0)
    way = np.linspace(0.0, lever.reach_m, 20001)
    tip = np.array([lever.tip_n(float(x)) for x in way])
    work = float(np.sum(0.5 * (tip[1:] + tip[:-1]) * np.diff(way)))
    assert lever.hand_way_m(lever.reach_m) == pytest.approx((length_m - tip_m) * MOST_TURN_RAD)
    assert work == pytest.approx(500.0 * (length_m - tip_m) * MOST_TURN_RAD, rel=1e-4)


def test_moments_about_the_heel_balance():
    lever = Lever(0.8, 0.05, 500.0)
    for degrees in (0.0, 20.0, 50.0):
        turn = math.radians(degrees)
        way = 0.05 * math.sin(turn)
        assert lever.tip_n(way) * 0.05 * math.cos(turn) == pytest.approx(500.0 * 0.75)


def test_a_hand_makes_the_tip_force_the_trade_tells():
    """3 to 15 kN at first, but for the strongest hand on the longest bar with the shortest heel (23 kN)."""
    for hand in (400.0, 700.0):
        assert 3.0e3 < Lever(0.75, 0.08, hand).tip_n(0.0) < 15.0e3
        assert 3.0e3 < Lever(0.9, 0.05, hand).tip_n(0.0) < 15.0e3
    assert Lever(0.9, 0.026, 400.0).tip_n(0.0) < 15.0e3


@pytest.fixture(scope="module")
def frame():
    bar = EntryBar(tip_m=0.08)
    # on 60 mm the frame's rear foot reaches 27 mm down the shut face and gives there, on 45 mm it reaches 40
    return flexed(Flex(on=FramePoint(along_m=0.4), opening_m=0.06, bar=bar), Ease(), car=Car())


def test_a_bar_flexes_the_window_frame_at_its_upper_corner(frame):
    """60 mm with a hand's pull, at the force the trade estimates.

    Most of it stays when the bar is let off.
    """
    flex = frame[0]
    last = flex.frames[-1]
    assert last.opening_m == pytest.approx(0.06)
    assert 0.7e3 < max(f.force_n for f in flex.frames) < 1.5e3
    start = flex.frames[0].points
    moved = [np.abs(record.frames[-1].points[:, 1] - start[:, 1]).max() for record in frame]
    assert moved[0] > 0.055
    assert 0.4 < moved[1] / moved[0] < 1.0
    assert not flex.result.events
    assert flex.result.ledger_closure_ratio < 0.02
    assert "N at the end of 0.8 m of bar" in flex.result.sentence


def test_it_does_not_pull_a_whole_latch_behind_the_bend():
    """The bar stops at what a hand can do, the latch below half of what it holds."""
    (record,) = flexed(Flex(on=BEHIND_THE_BEND, tilt_rad=0.7854, opening_m=0.04))
    kinds = [event.kind for event in record.result.events]
    assert kinds == ["stalled"]
    assert record.result.latch_demand_ratio < 0.6
    last = record.frames[-1]
    assert last.force_n == pytest.approx(Lever(0.8, 0.05, 500.0).tip_n(last.opening_m), rel=0.011)


@pytest.mark.parametrize(
    ("move", "field"),
    [
        (Flex(opening_m=0.06), "opening_m"),
        (Flex(bar=EntryBar(hand_n=5.0e3)), "bar.hand_n"),
        (Flex(bar=EntryBar(length_m=float("nan"))), "bar.length_m"),
        (Flex(on=FramePoint(along_m=9.0)), "on.along_m"),
        (Flex(on=EdgePoint(depth_m=-0.1)), "on.depth_m"),
        (Flex(tilt_rad=3.0), "tilt_deg"),
        (Flex(bar=EntryBar(length_m=0.3, tip_m=0.2)), "bar.tip_m"),
    ],
)
def test_what_cannot_be_done_is_refused_with_field_and_remedy(move, field):
    with pytest.raises(PlanError) as told:
        flexed(move)
    assert told.value.field == f"moves[0].{field}"
    assert len(told.value.message) > 20


@pytest.mark.parametrize(("spacing", "stands"), [(0.09, False), (0.08, True)])
def test_a_frame_on_a_single_node_is_refused_and_does_not_swing_for_nothing(spacing, stands):
    """On 90 mm a side's frame is a hinge at its feet: 30 mm of way for 0 N was told before."""
    model = build_model(Car(extent="side", lattice_spacing_m=spacing))
    if stands:
        assert make_bar(model, Flex()).seats[0] == "window frame"
        return
    with pytest.raises(PlanError) as told:
        make_bar(model, Flex())
    assert told.value.field == "on"
    assert "lattice_spacing_m" in told.value.message
