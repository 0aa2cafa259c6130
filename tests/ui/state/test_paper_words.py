"""What stands on a sheet about a plan of several moves: each move, the width and why, the view that fits."""

from pathlib import Path

import pytest
from msgspec.structs import replace

from sim.kept import Kept, Told
from sim.outcome import tip_stands
from sim.plan import BeltPoint, Crush, EdgePoint, Plan, Press, Spread
from sim.units import Units
from ui.state.lesson_results import FIGURES, PlanResult
from ui.state.sheet import camera_of
from ui.state.sheets import bridge, rival_words


def told(**changes):
    plain = {"first": "nothing gave", "effect": "spent", "metal": ("holding",), "sentence": ""}
    return Told(**{**plain, "settled": True, "seats": ("a", "b"), **changes})


def kept(*moves):
    return Kept("4", "0" * 64, "A plan", "", moves)


def test_a_plan_of_several_moves_is_told_move_by_move():
    moves = (
        told(metal=("seam parting", "latch free"), sentence="The latch let go."),
        told(metal=("bending",), sentence="The metal bent.", exit_width_m=0.0),
    )
    plan = Plan(title="Two", moves=(Spread(), Spread(BeltPoint())))
    sheet = bridge([PlanResult("two", "two", plan, kept(*moves), "", Path())], "A lesson")
    words = sheet.plain
    assert "1 Spread at the latch edge: seam parting, latch free" in words
    assert "2 Spread at the belt: bending" in words
    assert "Width to bring the patient out by: none yet (metal stands all along the way out)" in words
    one = bridge([PlanResult("one", "one", plan, kept(moves[1]), "", Path())], "A lesson")
    assert "Width to bring the patient out by" not in one.plain


def test_sharp_edges_left_at_the_end_stand_on_the_sheet_also_of_one_move():
    plan = Plan(title="One", moves=(Spread(),))
    for counts, words in (((2,), "Sharp edges: 2"), ((4, 0), ""), ((), "")):
        moves = tuple(told(metal=("tearing",), sentence="The skin tore.") for _ in counts or (0,))
        found = replace(kept(*moves), results=tuple({"sharp_edge_count": count} for count in counts))
        plain = bridge([PlanResult("one", "one", plan, found, "", Path())], "A lesson").plain
        assert words in plain
        assert ("Sharp edges: " in plain) is bool(words)


def test_a_width_of_nothing_says_why():
    width = FIGURES["width"][1]
    assert width(told(exit_width_m=0.0), Units.METRIC).startswith("none yet (")
    assert width(told(exit_width_m=0.83), Units.METRIC) == "830\u00a0mm"


@pytest.mark.parametrize(
    ("margin", "said"), [(0.0, "skin tearing, just as near"), (0.4, "skin tearing, 40 % away")]
)
def test_what_was_as_near_is_not_said_to_be_no_per_cent_away(margin, said):
    assert rival_words(told(rival="skin tearing", margin_ratio=margin)) == said


@pytest.mark.parametrize(
    ("plan", "camera"),
    [
        (Plan(moves=(Spread(),)), "latch"),
        (Plan(moves=(Spread(EdgePoint("hinge_edge")),)), "hinge"),
        (Plan(moves=(Spread(BeltPoint()),)), "top"),
        (Plan(moves=(Press(),)), "three_quarter"),
        (Plan(wreck=(Crush(),), moves=(Spread(),)), "three_quarter"),
    ],
)
def test_the_view_fits_what_the_plan_works_on(plan, camera):
    assert camera_of(plan) == camera


@pytest.mark.parametrize(
    ("seat", "said"),
    [
        ("behind the inner bend", "The tip is behind the inner bend."),
        ("hem lip", "The tip is on the hem lip."),
        ("belt, both lips", "The tip is on the belt, both lips."),
    ],
)
def test_where_the_tip_stands_is_a_sentence(seat, said):
    assert tip_stands(seat) == said
