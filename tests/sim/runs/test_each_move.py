"""What is told of a move happened in that move: what an earlier one did is no event of it.

Sources
-------
None: the events against the moments they are told of.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from types import SimpleNamespace

import pytest

from sim import course
from sim.door_model import build_model
from sim.found import Found
from sim.ledger import Ledger
from sim.many import first_give
from sim.outcome import limit, push_sentence, rung_words
from sim.plan import Car, Ease, EdgePoint, Plan, Spread
from sim.push import make_push
from sim.record import LEFT_TEARING, Event
from sim.run import Begin, MoveRun, solve_plan
from tests.once import once

CAR = Car(lattice_spacing_m=0.09)
LIP = Spread(EdgePoint("latch_edge", 0.36, 0.005), opening_m=0.02)
BESIDE = Spread(EdgePoint("latch_edge", 0.55, 0.005), opening_m=0.02)
GONE = {"inner panel": 0.04}
PLAN = Plan(car=CAR, moves=(LIP, BESIDE))


@cache
def records():
    """Two pushes on the hem lip, one beside the other: both take skin off its seam."""
    return once(lambda: solve_plan(PLAN, with_residual=False)[1], "each move", PLAN)


@pytest.mark.parametrize("index", [0, 1])
def test_the_seam_parts_in_every_move_that_parts_it(index):
    record = records()[index]
    start = record.frames[0].parted_length_m
    parted = [f for f in record.frames if f.parted_length_m - start >= limit("parted_m")]
    told = [event for event in record.result.events if event.kind == "seam parting"]
    assert (start >= limit("parted_m")) == (index == 1)
    assert [event.opening_m for event in told] == [parted[0].opening_m]


@pytest.mark.parametrize(
    ("before_m", "gone_m", "seam_m", "said"),
    [
        (0.0, 0.0, None, "with the skin still on its seam"),
        (0.083, 0.0, None, "with no more of the seam parted"),
        (2.053, 0.158, 0.003, "the seam had begun to part before, 158 mm in all"),
        (0.0, 0.158, 0.095, "the seam parted only after, 158 mm in all"),
        (0.0, 0.158, 0.09, "the seam parted with it, 158 mm in all"),
    ],
)
def test_latch_and_seam_are_told_in_the_order_they_went(before_m, gone_m, seam_m, said):
    first = replace(records()[0].frames[0], parted_length_m=before_m)
    last = replace(first, parted_length_m=before_m + gone_m)
    events = [Event("latch free", "latch", 0.09, 16e3)]
    if seam_m is not None:
        events.append(Event("seam parting", "seam", seam_m, 9e3))
    sentence = push_sentence(first, last, 1.0, events, make_push(build_model(CAR), LIP))
    assert sentence.startswith("The latch let go at 90 mm")
    assert said in sentence


@pytest.mark.parametrize(
    ("found", "due", "kind"),
    [(True, "inner panel", LEFT_TEARING), (True, "", "skin tearing"), (False, "inner panel", "skin tearing")],
)
def test_what_a_wreck_left_about_to_tear_is_not_the_first_moves_doing(monkeypatch, found, due, kind):
    """The line runs when the metal next comes to rest; a strip does not tear a pillar."""
    run = MoveRun(build_model(CAR), Ease(), Begin(build_model(CAR).start, Ledger()))
    run.step(run.model.network)
    if found:
        run.begin = replace(run.begin, found=Found(0.0, 0.0, 0.0, 0.0, 0.0, 0, ()))
    monkeypatch.setattr(course, "due_part", lambda *_: due)
    monkeypatch.setattr(course.torn, "torn_parts", lambda _, state: {} if state is run.begin.state else GONE)
    events = run.tear_events(SimpleNamespace(travel_m=0.0, state=None), 0.0, set())
    assert [(event.kind, event.part) for event in events] == [(kind, "inner panel")]
    assert (first_give(events) is None) == (kind == LEFT_TEARING)
    assert rung_words("pillar", "skin tearing") == "pillar: sheet tearing"
