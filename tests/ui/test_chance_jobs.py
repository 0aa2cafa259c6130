"""The thread behind "how likely": it tells how far it is, answers once, and stops with no process left."""

import multiprocessing
import time

import pytest

pytest.importorskip("PySide6")

from sim.plan import Car, EdgePoint, Plan, Spread, Tool
from tests.ui.boxes import ended, wait
from ui.chance_jobs import ChanceWorker
from ui.state.chances import ChanceAnswer, ChanceProgress, ChanceRequest, ChanceTrouble, Wish

pytestmark = pytest.mark.timeout(320)

SMALL = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(door=EdgePoint(), opening_m=0.005),))


@pytest.fixture
def worker():
    with ended(ChanceWorker()) as made:
        yield made


def test_runs_are_counted_up_and_answered_once(worker):
    worker.submit(ChanceRequest(1, Wish.LIKELY, SMALL, count=2))
    found = wait(worker, lambda said: isinstance(said, ChanceAnswer))
    assert [said.done for said in found[:-1] if isinstance(said, ChanceProgress)] == [0, 1, 2]
    assert "what gives first" in found[-1].sentence
    assert any("of 2 (true share" in line for line in found[-1].lines)


def test_a_plan_that_cannot_be_judged_is_told_in_a_sentence(worker):
    worker.submit(ChanceRequest(2, Wish.FLIP, Plan()))
    (said,) = wait(worker, lambda said: isinstance(said, ChanceTrouble))
    assert said.sentence.startswith("Moves hold no push") and said.report == ""


def test_a_draw_that_cannot_be_made_does_not_stop_the_answer(worker):
    bad = SMALL.with_move(0, Spread(door=EdgePoint(), opening_m=0.005, tool=Tool(tip_width_m=1.0)))
    worker.submit(ChanceRequest(3, Wish.LIKELY, bad, count=2))
    found = wait(worker, lambda said: isinstance(said, ChanceAnswer))
    assert "2 runs of 2 failed or did not settle" in found[-1].sentence


def test_a_dropped_wish_ends_quickly_and_says_nothing_more(worker):
    worker.submit(ChanceRequest(4, Wish.LIKELY, SMALL, count=64))
    wait(worker, lambda said: isinstance(said, ChanceProgress))
    began = time.perf_counter()
    assert worker.close()
    assert time.perf_counter() - began < 0.3 + 0.2  # the promise, and a loaded machine's thread switch
    assert not multiprocessing.active_children()
    assert not [said for said in worker.waiting() if isinstance(said, ChanceAnswer)]


def test_going_on_against_a_cut_is_worked_out_in_a_process_and_answered_once(worker):
    worker.submit(ChanceRequest(6, Wish.CUT, SMALL, move=0))
    found = wait(worker, lambda said: isinstance(said, ChanceAnswer))
    assert found[-1].ways.at_m is None and found[-1].sentence == found[-1].ways.sentence()
    worker.submit(ChanceRequest(7, Wish.CUT, SMALL, move=3))
    (said,) = wait(worker, lambda said: isinstance(said, ChanceTrouble))
    assert "is no spread" in said.sentence and said.report == ""
