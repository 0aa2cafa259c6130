"""The worker thread: a held push is the same push however often it is let go, and giving up is quick."""

import time

import numpy as np
import pytest

from sim.aim import TOUCH_M
from sim.door_model import build_model
from sim.plan import Car, EdgePoint, Plan, Spread, Tool
from sim.push import make_push
from sim.run import solve_plan
from ui.jobs import Ahead, Answers, Worker
from ui.state.aims import TouchWish
from ui.state.answers import (
    Aimed,
    DoorReady,
    ElasticReady,
    Ended,
    FramesReady,
    MoveReady,
    Refused,
    Stopped,
    Touched,
    Untouched,
)
from ui.state.solve_queue import Job, Request

pytestmark = pytest.mark.timeout(170)

DEEP = Plan(moves=(Spread(door=EdgePoint(depth_m=0.12), opening_m=0.015),))


@pytest.fixture(scope="module")
def worker():
    made = Worker()
    yield made
    assert made.close()


numbers = iter(range(1, 1000))


def ask(worker, job, plan, **words):
    request = Request(next(numbers), job, plan, **words)
    worker.submit(request)
    return request


def wait(worker, request, until, seconds=100.0):
    """Return the answers to a request up to the first for which `until` is true."""
    found, end = [], time.perf_counter() + seconds
    while time.perf_counter() < end:
        for answer in worker.answers.empty():
            if answer.number == request.number:
                found.append(answer)
                if until(answer):
                    return found
        time.sleep(0.002)
    raise AssertionError(f"no such answer in {seconds} s; there were {[type(a).__name__ for a in found]}")


class Clock:
    """The worker thread's own CPU time [s]: how much it did between being told to stop and having stopped.

    Wall time would tell how busy the machine is with other work.
    """

    def __init__(self, worker):
        self._clock = time.pthread_getcpuclockid(worker._thread.ident)
        self._put, self._answers, self.at = worker.answers.put, worker.answers, {}
        self._answers.put = self._note
        self.began = 0.0

    def _note(self, answer):
        self.at[type(answer), answer.number] = time.thread_time()
        return self._put(answer)

    def now(self):
        return time.clock_gettime(self._clock)

    def close(self):
        self._answers.put = self._put


@pytest.fixture
def clock(worker):
    made = Clock(worker)
    yield made
    made.close()


def is_last(answer):
    return isinstance(answer, (Ended, Stopped, Refused))


def held_until(worker, request, opening_m):
    """Hold a push until an opening is reached, let go, and return the move's record."""
    wait(worker, request, lambda a: isinstance(a, FramesReady) and a.frames[-1].opening_m >= opening_m - 1e-9)
    worker.let_go()
    answers = wait(worker, request, is_last)
    assert isinstance(answers[-1], Ended)
    return next(answer for answer in answers if isinstance(answer, MoveReady))


def test_the_first_answer_in_an_empty_box_rings():
    box = Answers()
    assert box.put(Ended(1))
    assert not box.put(Ended(2))
    assert [answer.number for answer in box.empty()] == [1, 2]
    assert box.put(Ended(3))


def test_a_door_is_set_out(worker):
    request = ask(worker, Job.PREPARE, DEEP)
    answers = wait(worker, request, is_last)
    assert isinstance(answers[0], DoorReady)
    assert answers[0].start.opening_m == 0.0


def test_a_push_let_go_and_gone_on_with_is_the_push_run_in_one(worker):
    """Letting go keeps the metal's state: the same increments follow, to the last bit."""
    first = held_until(worker, ask(worker, Job.PUSH, DEEP, last=0), 0.005)
    reached = first.record.frames[-1].opening_m
    assert first.plan.moves[0].opening_m == reached
    request = ask(worker, Job.PUSH, first.plan, last=0, shown_from_m=reached)
    second = held_until(worker, request, reached + 0.005)
    whole = ask(worker, Job.SOLVE, second.plan, last=0)
    solved = next(a for a in wait(worker, whole, is_last) if isinstance(a, MoveReady))
    mine, theirs = second.record.frames, solved.record.frames
    assert [f.opening_m for f in mine] == [f.opening_m for f in theirs]
    for one, other in zip(mine, theirs, strict=True):
        np.testing.assert_array_equal(one.points, other.points)
        assert one.force_n == other.force_n
    assert second.record.result.sentence == solved.record.result.sentence


def test_giving_up_takes_less_than_three_tenths_of_a_second(worker, clock):
    request = ask(worker, Job.SOLVE, Plan(moves=(Spread(opening_m=0.1),)), last=0)
    wait(worker, request, lambda a: isinstance(a, FramesReady) and a.frames[-1].opening_m > 0.0)
    began = clock.now()
    worker.drop()
    answers = wait(worker, request, is_last)
    assert isinstance(answers[-1], Stopped)
    assert clock.at[Stopped, request.number] - began < 0.3


def test_a_newer_request_is_taken_up_at_once(worker, clock):
    old = ask(worker, Job.SOLVE, Plan(moves=(Spread(opening_m=0.1, tilt_rad=0.5),)), last=0)
    wait(worker, old, lambda a: isinstance(a, FramesReady))
    began = clock.now()
    new = ask(worker, Job.PREPARE, DEEP)
    wait(worker, new, is_last)
    assert clock.at[Ended, new.number] - began < 0.3


def test_a_plan_that_cannot_be_done_is_refused_in_a_sentence_that_names_the_field(worker):
    bad = Plan(moves=(Spread(tool=Tool(tip_width_m=3.0)),))
    answer = wait(worker, ask(worker, Job.SOLVE, bad, last=0), is_last)[-1]
    assert isinstance(answer, Refused)
    assert "tip_width_m" in answer.sentence
    assert answer.report == ""


def test_a_fault_of_the_program_is_told_with_a_report_and_the_worker_lives_on(worker):
    answer = wait(worker, ask(worker, Job.SOLVE, DEEP, last=7), is_last)[-1]
    assert isinstance(answer, Refused)
    assert "IndexError" in answer.report
    assert isinstance(wait(worker, ask(worker, Job.PREPARE, DEEP), is_last)[-1], Ended)


def test_what_is_shown_leaves_the_solvers_state_behind(worker):
    plan = Plan(moves=(Spread(opening_m=0.005, tilt_rad=0.5),))
    answers = wait(worker, ask(worker, Job.SOLVE, plan, last=0), is_last)
    frames = [frame for a in answers if isinstance(a, FramesReady) for frame in a.frames]
    record = next(a.record for a in answers if isinstance(a, MoveReady))
    assert all(one is other for one, other in zip(frames, record.frames, strict=True))
    assert all(frame.state is None for frame in frames)
    assert record.end_state is not None


def touched(worker, wish, seconds=60.0):
    """Return the answers to a wish up to Touched or Untouched, and whatever else came meanwhile."""
    found, others, end = [], [], time.perf_counter() + seconds
    while time.perf_counter() < end:
        for answer in worker.answers.empty():
            aimed = isinstance(answer, Aimed)
            (found if aimed and answer.number == wish.number else others).append(answer)
            if aimed and answer.number == wish.number and not isinstance(answer, ElasticReady):
                return found, others
        time.sleep(0.002)
    raise AssertionError("the touch was never answered")


def test_a_touch_says_the_elastic_answer_first_and_changes_no_later_run(worker):
    plan = DEEP.with_move(1, Spread(opening_m=0.01))
    wait(worker, ask(worker, Job.SOLVE, plan, first=0, last=0), is_last)
    before = plan.car, plan.moves[:1]
    wish = TouchWish(1001, before, plan.moves[1])
    worker.try_touch(wish)
    found, _ = touched(worker, wish)
    assert [type(answer) for answer in found] == [ElasticReady, Touched]
    model, rest = build_model(plan.car), found[0].elastic
    assert np.isfinite(rest.way(make_push(model, plan.moves[1]))).all()
    assert found[1].touch.opening_m == pytest.approx(TOUCH_M) and found[1].touch.force_n > 0.0
    answers = wait(worker, ask(worker, Job.SOLVE, plan, first=1, last=1), is_last)
    ready = next(answer for answer in answers if isinstance(answer, MoveReady))
    _, alone = solve_plan(plan)
    np.testing.assert_array_equal(ready.record.frames[-1].points, alone[1].frames[-1].points)


def test_a_touch_gives_way_to_a_push_and_to_a_newer_touch(worker):
    wait(worker, ask(worker, Job.PREPARE, DEEP), is_last)
    first, second = (TouchWish(1002 + k, (DEEP.car, ()), DEEP.moves[0]) for k in range(2))
    worker.try_touch(first)
    worker.try_touch(second)
    found, _ = touched(worker, first)
    assert isinstance(found[-1], Untouched) and not found[-1].report
    request = ask(worker, Job.PREPARE, DEEP)
    answers = wait(worker, request, is_last)
    assert isinstance(answers[-1], Ended)


def test_a_touch_of_a_push_that_cannot_be_made_is_no_fault(worker):
    wait(worker, ask(worker, Job.PREPARE, DEEP), is_last)
    wish = TouchWish(1010, (DEEP.car, ()), Spread(door=EdgePoint(depth_m=5.0), opening_m=0.01))
    worker.try_touch(wish)
    found, _ = touched(worker, wish)
    assert isinstance(found[-1], Untouched) and not found[-1].report


def test_a_car_that_may_be_shown_next_is_set_out_unless_something_is_asked_for_first():
    worker = Worker()
    try:
        cars = [Car(lattice_spacing_m=0.09), Car(lattice_spacing_m=0.085), Car(lattice_spacing_m=0.08)]
        worker.look_ahead(Plan(car=cars[0]))
        worker.look_ahead(Plan(car=Car(lattice_spacing_m=-1.0)))  # cannot be set out: nothing is said
        worker.look_ahead(Plan(car=cars[1]))
        asked = Request(1, Job.PREPARE, Plan(car=cars[2]))
        found, end = [], time.perf_counter() + 60.0
        while len(found) < 2 and time.perf_counter() < end:
            found += worker.answers.empty()
            time.sleep(0.01)
        assert [(type(one), one.car) for one in found] == [(DoorReady, cars[0]), (DoorReady, cars[1])]
        worker.submit(asked)
        worker._requests.put(Ahead(0, Plan(car=Car(lattice_spacing_m=0.07))))  # thought of before it
        said = wait(worker, asked, is_last)
        assert said[0].car == cars[2]
    finally:
        assert worker.close()
    assert worker.answers.empty() == []
