"""Many runs: the same answer each time, nothing dropped, no process left behind.

Most runs here are stand-ins that solve nothing; their outcomes are known beforehand.
"""

import multiprocessing
import os
import time

import msgspec
import pytest

from sim import likely, many, workers
from sim.many import FAILED, SETTLED, UNSETTLED, Many, Tried, answered, force_drops
from sim.plan import Car, Ease, EdgePoint, Plan, Spread
from sim.problems import PlanError
from sim.vary import draws
from tests.sim.many import fakes

PLAN = Plan(seed=3, moves=(Spread(door=EdgePoint(depth_m=0.005)),))
SMALL = Plan(
    seed=3,
    car=Car(lattice_spacing_m=0.09),
    moves=(Spread(door=EdgePoint(depth_m=0.005), opening_m=0.015, stop_at=("seam parting",)),),
)
CANCEL_S = 0.3
"""How soon after the wish no process may be left: what the window promises."""


def follow(runs: Many) -> many.Answer:
    for _ in runs:
        pass
    return runs.answer


def stand_in(job, count=8, worker_count=2, **other) -> Many:
    return Many(PLAN, count, worker_count=worker_count, job=job, prepare=workers.nothing, **other)


def nobody_left() -> bool:
    return not multiprocessing.active_children()


@pytest.fixture(autouse=True)
def no_process_stays():
    yield
    assert nobody_left()


def test_counts_are_those_of_the_model_behind_them():
    answer = follow(stand_in(fakes.quick, 16))
    for draw, run in zip(draws(PLAN, 16), answer.runs, strict=True):
        assert run == fakes.quick(draw)
    latch = sum(run.first == "latch free" for run in answer.runs)
    assert 0 < latch < 16
    (item,) = [item for item in answer.first if item.what == "latch free"]
    assert (item.count, item.total, item.unsure) == (latch, 16, 0)
    assert sum(item.count for item in answer.first) == sum(item.count for item in answer.effect) == 16


def test_same_answer_whatever_the_number_of_workers():
    assert follow(stand_in(fakes.quick, 8, 1)) == follow(stand_in(fakes.quick, 8, 3))


def test_short_runs_end_where_a_part_gives_and_draw_as_the_whole_ones():
    whole, short = stand_in(fakes.quick, 4), stand_in(fakes.quick, 4, short=True)
    for one, other in zip(whole.draws, short.draws, strict=True):
        assert one.values == other.values
        assert set(many.MANY_GIVES) <= set(other.plan.moves[0].stop_at)
        assert one.plan.moves[0].stop_at == ()
    assert follow(short).short and not follow(whole).short


def test_a_whole_side_is_run_less_often():
    assert many.runs_of(PLAN) == 64
    assert many.runs_of(PLAN.with_car(Car(extent="side"))) == 16


def test_known_chance_lies_in_its_interval_and_gets_its_word_or_none():
    answer = follow(stand_in(fakes.chance, 64))
    (item,) = [item for item in answer.first if item.what == "latch free"]
    assert item.low <= 0.3 <= item.high
    assert item.word in (likely.band(0.3), likely.NOT_SETTLED)


def test_progress_counts_up_and_tells_the_time_left():
    told = list(stand_in(fakes.quick, 6))
    assert [p.done for p in told] == sorted(p.done for p in told)
    assert (told[-1].done, told[-1].total, told[-1].seconds_left) == (6, 6, 0.0)
    assert all((p.seconds_left is None) == (p.done == 0) for p in told)


@pytest.mark.parametrize("job", [fakes.dies_on_third, fakes.raises_on_third])
def test_a_run_that_breaks_is_counted_and_the_others_go_on(job):
    answer = follow(stand_in(job, 8))
    assert [run.standing for run in answer.runs] == [SETTLED, SETTLED, FAILED, *[SETTLED] * 5]
    assert answer.runs[2].why
    assert answer.runs[2].values == draws(PLAN, 8)[2].values
    assert all(item.unsure == 1 for item in answer.first)
    assert "one run of 8 failed or did not settle" in many.sentence(answer).replace("1 run", "one run")


def test_workers_that_cannot_start_are_no_endless_loop():
    with pytest.raises(workers.WorkersLostError, match="exit code 3"):
        follow(Many(PLAN, 4, worker_count=2, job=fakes.quick, prepare=fakes.die))


def test_cancel_leaves_no_process_within_its_time():
    wish: list[float] = []
    runs = stand_in(fakes.slow, 8, cancelled=lambda: bool(wish))
    for progress in runs:
        assert not wish, "told progress after it was asked to stop"
        if len(runs.workers.process_ids) == 2 and progress.seconds > 2.0:
            wish.append(time.perf_counter())
    assert nobody_left()
    assert time.perf_counter() - wish[0] <= CANCEL_S
    assert not runs.whole
    with pytest.raises(ValueError, match="0 of 8 runs"):
        _ = runs.answer


def test_closing_the_iterator_leaves_no_process():
    runs = stand_in(fakes.slow, 4)
    following = iter(runs)
    next(following)
    assert runs.workers.process_ids
    following.close()
    assert nobody_left()


def test_each_worker_has_one_thread_and_the_parent_keeps_its_own(monkeypatch):
    monkeypatch.setenv("OMP_NUM_THREADS", "7")
    monkeypatch.delenv("NUMBA_NUM_THREADS", raising=False)
    answer = follow(stand_in(fakes.threads, 4))
    assert {run.metal for run in answer.runs} == {("1", "1")}
    assert os.environ["OMP_NUM_THREADS"] == "7" and "NUMBA_NUM_THREADS" not in os.environ


def test_a_plan_without_a_push_is_refused_in_a_sentence():
    with pytest.raises(PlanError, match="hold no push"):
        Many(Plan(moves=(Ease(),)))


def made(standing: str, first: str = "seam parting", effect: str = "spent") -> Tried:
    return Tried(0, {}, standing, (first,), effect, first)


class TestSentence:
    def sentence(self, runs, **other):
        return many.sentence(answered(PLAN, tuple(runs), 0, **other))

    def test_all_alike(self):
        words = self.sentence([made(SETTLED)] * 64)
        assert words == (
            "With what is not known well varied, the seam gives first, nearly always; "
            "for the plan: spent, nearly always."
        )

    def test_halves_are_not_settled_and_both_are_named(self):
        words = self.sentence([*[made(SETTLED)] * 32, *[made(SETTLED, "latch free", "gained")] * 32])
        assert "what gives first is not settled (the seam or the latch)" in words
        assert "for the plan: not settled" in words

    def test_too_few_runs_say_so(self):
        words = self.sentence([made(SETTLED)] * 8)
        assert "too few to say what gives first (so far the seam each time)" in words

    def test_uncertain_runs_are_said_and_may_unsettle(self):
        words = self.sentence([*[made(SETTLED)] * 56, *[made(UNSETTLED)] * 8])
        assert "8 runs of 64 failed or did not settle and count as such" in words
        assert "nearly always" not in words

    def test_nothing_gives(self):
        nothing = made(SETTLED, many.NOTHING_GAVE)
        assert "nothing gives, nearly always" in self.sentence([nothing] * 64)
        few = self.sentence([made(SETTLED), nothing])
        assert "too few to say what gives first (so far the seam or nothing)" in few
        assert "for the plan: too few runs" in few

    def test_preview_says_so(self):
        assert self.sentence([made(SETTLED)] * 64, coarse=True).startswith(
            "On a coarse lattice, as a preview"
        )

    def test_runs_that_ended_where_a_part_gave_say_nothing_of_the_plan(self):
        answer = answered(PLAN, (made(SETTLED),) * 64, 0, short=True)
        assert many.sentence(answer).endswith("the seam gives first, nearly always; the runs ended there.")
        assert all(line.startswith("gives first") for line in many.counts(answer).splitlines())

    def test_counts_are_given_when_asked(self):
        lines = many.counts(answered(PLAN, (made(SETTLED),) * 64, 0)).splitlines()
        assert "gives first: seam parting: 64 of 64 (true share 94 to 100 %): nearly always" in lines
        assert any("latch free: 0 of 64" in line and "hardly ever" in line for line in lines)


@pytest.fixture(scope="module")
def door_answer():
    return follow(Many(SMALL, 4, worker_count=2))


class TestDoor:
    """A few real runs on a coarse lattice."""

    def test_records_hold_what_the_metal_did(self, door_answer):
        assert len(door_answer.runs) == 4
        for run in door_answer.runs:
            assert run.standing == SETTLED, run.why
            assert 0.0 < run.opening_m <= 0.015
            assert 200.0 < run.peak_force_n < 20e3
            assert 0.0 < run.peak_latch_ratio < 1.0
            assert run.ledger_closure_ratio < 0.02
            assert (run.first == many.NOTHING_GAVE) == (run.first_opening_m is None)
        assert len({run.peak_force_n for run in door_answer.runs}) == 4

    def test_a_run_solved_here_is_the_same_bit_for_bit(self, door_answer):
        draw = draws(SMALL, 4)[1]
        assert many.try_draw(draw) == door_answer.runs[1]

    def test_a_draw_that_cannot_be_made_fails_with_its_reason(self):
        tool = msgspec.structs.replace(SMALL.moves[0].tool, tip_width_m=1.0)
        bad = SMALL.with_move(0, msgspec.structs.replace(SMALL.moves[0], tool=tool))
        run = many.try_draw(draws(bad, 1)[0])
        assert run.standing == FAILED
        assert "tip_width_m" in run.why


def test_jerks_of_the_force_are_summed_and_steady_falls_are_not():
    # peak 4: 15 % of it is 0.6, so of the falls 2.0, 0.5 and 1.0 two count
    assert force_drops([0.0, 4.0, 2.0, 3.0, 2.5, 2.5, 1.5]) == pytest.approx(3.0)
    assert force_drops([1.0, 2.0, 3.0]) == 0.0
