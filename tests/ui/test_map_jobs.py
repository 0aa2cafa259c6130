"""The thread behind the outcome map: it tells how far it is, answers once, and stops with no process left."""

import multiprocessing
import time

import pytest

pytest.importorskip("PySide6")

from sim.map_file import MapStore
from sim.map_grid import Grid
from sim.outcome_map import Ask, asked
from sim.plan import Car, Plan, Spread
from tests.ui.boxes import ended, wait
from ui.map_jobs import MapWorker
from ui.state.maps import MapReady, MapRequest, MapStep

pytestmark = pytest.mark.timeout(320)

PLAN = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.004),))


def small(rows: int) -> Ask:
    grid = Grid(("latch_edge",), tuple(0.06 * (row + 0.5) for row in range(rows)), (0.005,), 0.06)
    return Ask(asked(PLAN).plan, grid, (0.09, 0.0901))


@pytest.fixture
def worker(tmp_path):
    with ended(MapWorker(tmp_path)) as made:
        yield made


def test_runs_are_counted_up_kept_and_answered_once(worker, tmp_path):
    ask = small(2)
    worker.submit(MapRequest(1, ask))
    found = wait(worker, lambda said: isinstance(said, MapReady))
    done = [said.done for said in found[:-1] if isinstance(said, MapStep)]
    assert done == sorted(set(done)) and done[0] == 0
    outcome = found[-1].outcome
    assert outcome.key == ask.key and len(outcome.told) == 2
    assert MapStore(tmp_path).whole(ask) == outcome


def test_a_dropped_wish_ends_quickly_and_says_nothing_more(worker):
    worker.submit(MapRequest(2, small(10)))
    wait(worker, lambda said: isinstance(said, MapStep))
    began = time.perf_counter()
    worker.drop()
    while multiprocessing.active_children():
        assert time.perf_counter() - began < 5.0
        time.sleep(0.01)
    time.sleep(0.2)
    assert not any(isinstance(said, MapReady) for said in worker.waiting())
