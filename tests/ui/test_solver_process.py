"""The solver's process gives the thread's answers, hears a stop, and is gone when it is no longer wanted.

Sources
-------
None: one program against itself.
"""

import threading
import time
from types import SimpleNamespace

import pytest

from sim.plan import Car, Plan, Spread
from ui.bench import Bench
from ui.solver_process import LOST, NEWEST, SolverProcess
from ui.state.answers import DoorReady, Ended, FramesReady, MoveReady, Refused, Stopped
from ui.state.solve_queue import Job, Request

PLAN = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.0025),))
LONG = Plan(car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.5),))


class Said:
    """What the process says, waited for."""

    def __init__(self):
        self.answers, self._more = [], threading.Condition()

    def __call__(self, answer):
        with self._more:
            self.answers.append(answer)
            self._more.notify_all()

    def wait_for(self, kind, most_s=60.0):
        with self._more:
            assert self._more.wait_for(lambda: any(isinstance(a, kind) for a in self.answers), most_s)
            return next(a for a in self.answers if isinstance(a, kind))


@pytest.fixture
def solver():
    """Return a solver's process and what it says; afterwards nothing of it is left."""
    said = Said()
    made = SolverProcess(said, None)
    yield made, said
    assert made.close()
    assert not any(thread.name == "solver's answers" for thread in threading.enumerate())


def test_the_same_request_gets_the_threads_answer_bit_for_bit(solver):
    made, said = solver
    request = Request(1, Job.SOLVE, PLAN, first=0, last=0)
    made.flag(NEWEST, 1)
    made.submit(request)
    said.wait_for(Ended)
    here = []
    Bench(here.append).do(request, bool, float)
    ready = said.wait_for(MoveReady)
    mine = next(answer for answer in here if isinstance(answer, MoveReady))
    assert ready.record.end_state.sha256() == mine.record.end_state.sha256()
    assert ready.record.result.start_sha256 == mine.record.result.start_sha256
    frames = [answer for answer in said.answers if isinstance(answer, FramesReady)]
    assert len(frames) == len([answer for answer in here if isinstance(answer, FramesReady)])
    assert not any(isinstance(answer, DoorReady) for answer in said.answers)  # the window sets it out itself


def test_a_stop_is_heard_and_a_process_that_dies_is_told_and_replaced(solver):
    made, said = solver
    made.flag(NEWEST, 2)
    made.submit(Request(2, Job.SOLVE, LONG, first=0, last=0))
    said.wait_for(FramesReady)
    made.flag(NEWEST, 3)
    began = time.monotonic()
    assert said.wait_for(Stopped).number == 2
    assert time.monotonic() - began < 20.0
    made.submit(Request(3, Job.SOLVE, LONG, first=0, last=0))
    made._process.kill()
    refused = said.wait_for(Refused)
    assert (refused.number, refused.sentence) == (3, LOST)
    said.answers.clear()
    made.flag(NEWEST, 4)
    made.submit(Request(4, Job.SOLVE, PLAN, first=0, last=0))
    assert said.wait_for(Ended).number == 4


def test_it_is_closed_while_another_thread_is_still_starting_it():
    made = SolverProcess(Said(), None)
    inner, at_it = made._context.Process, threading.Event()

    def slow(**given):
        at_it.set()
        time.sleep(0.3)
        return inner(**given)

    made._context = SimpleNamespace(Process=slow, Pipe=made._context.Pipe)
    starts = threading.Thread(target=made.start)
    starts.start()
    assert at_it.wait(10.0)
    assert made.close()
    starts.join()
    assert not made.alive
