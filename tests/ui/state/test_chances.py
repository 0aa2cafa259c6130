"""Wishes for many runs: only the newest counts, an answer stays with its plan, a stopped one has none."""

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st

from sim.plan import Ease, Plan, Spread
from ui.state.chances import (
    ChanceAnswer,
    ChanceProgress,
    Chances,
    ChanceTrouble,
    Wish,
    progress_words,
)

PLAN = Plan(moves=(Spread(),))
OTHER = msgspec.structs.replace(PLAN, seed=1)


def heard(chances: Chances) -> list:
    out = []
    chances.asked.connect(out.append)
    return out


def test_an_answer_stands_beside_the_plan_it_was_asked_for():
    chances = Chances()
    asked = heard(chances)
    chances.ask(Wish.LIKELY, PLAN)
    (request,) = asked
    assert request.plan == PLAN and chances.busy
    assert chances.take(ChanceProgress(request.number, 3, 64, 20.0))
    assert chances.progress.done == 3
    assert chances.take(ChanceAnswer(request.number, "The seam gives first, nearly always."))
    assert not chances.busy and chances.progress is None
    assert chances.answer(Wish.LIKELY, PLAN).sentence.startswith("The seam")
    assert chances.answer(Wish.LIKELY, OTHER) is None
    assert chances.answer(Wish.FLIP, PLAN) is None


def test_a_preview_is_shown_only_where_one_is_wanted_and_nothing_better_is_there():
    chances = Chances()
    chances.ask(Wish.LIKELY, PLAN, coarse=True)
    chances.take(ChanceAnswer(chances.current.number, "preview"))
    assert chances.answer(Wish.LIKELY, PLAN) is None
    assert chances.answer(Wish.LIKELY, PLAN, coarse=True).sentence == "preview"
    chances.ask(Wish.LIKELY, PLAN)
    chances.take(ChanceAnswer(chances.current.number, "whole"))
    assert chances.answer(Wish.LIKELY, PLAN, coarse=True).sentence == "whole"


def test_trouble_is_told_and_forgotten_with_the_next_wish():
    chances = Chances()
    chances.ask(Wish.FLIP, PLAN)
    chances.take(ChanceTrouble(chances.current.number, "Workers were lost."))
    assert not chances.busy and chances.trouble.sentence == "Workers were lost."
    chances.ask(Wish.FLIP, PLAN)
    assert chances.trouble is None


def test_what_can_be_asked():
    chances = Chances()
    assert chances.can_ask(PLAN)
    assert not chances.can_ask(Plan(moves=(Ease(),)))
    chances.ask(Wish.LIKELY, PLAN)
    assert not chances.can_ask(PLAN)


@given(st.lists(st.one_of(st.sampled_from(["ask", "stop"]), st.integers(0, 6)), max_size=25))
def test_only_the_newest_wish_counts_in_any_order(steps):
    chances, live, dropped = Chances(), None, []
    chances.dropped.connect(lambda: dropped.append(1))
    asked, ended = heard(chances), 0
    for step in steps:
        before = len(dropped)
        if step == "ask":
            chances.ask(Wish.LIKELY, PLAN)
            assert len(dropped) == before + (live is not None)  # what was under way is told to end
            live = asked[-1].number
        elif step == "stop":
            chances.stop()
            assert len(dropped) == before + (live is not None)
            live = None
        else:
            counts = chances.take(ChanceAnswer(step, "done"))
            assert counts == (step == live)
            ended += counts
            live = None if counts else live
        assert chances.busy == (live is not None)
    assert (chances.answer(Wish.LIKELY, PLAN) is not None) == (ended > 0)


@pytest.mark.parametrize(
    ("done", "left", "words"),
    [
        (0, None, "0 of 64 runs"),
        (8, 41.3, "8 of 64 runs, about 41 s left"),
        (8, 400.0, "8 of 64 runs, about 7 min left"),
        (64, 0.0, "64 of 64 runs"),
    ],
)
def test_progress_in_words(done, left, words):
    assert progress_words(ChanceProgress(1, done, 64, left)) == words
