"""Scenarios: read from files, run by workers, kept and taken up again, told in words."""

import math
from pathlib import Path

import msgspec
import pytest

from sim import scenario_told, workers
from sim.answers import Answer, answer
from sim.likely import TELLS, likelihood
from sim.plan import Car, EdgePoint, Plan, Spread
from sim.planfile import save_plan
from sim.problems import PlanError
from sim.run import solve_plan
from sim.scenario import Asked, load_scenario, loads_scenario
from sim.scenario_runs import Job, ScenarioRuns, Store, TooLong, key_of, try_run
from sim.traces import CURVES, traced
from tests.sim.many import fakes

READY = Path(__file__).resolve().parents[3] / "assets" / "scenarios"
TEXT = """schema_version = 1
title = "Lip and bend"
runs = 4
seed = 3

[plans]
lip = "lip.toml"
bend = "bend.toml"

[[asks]]
ask = "happens"
words = "The seam parts"
of = "lip"
event = ["seam parting"]
"""


@pytest.fixture
def asked(tmp_path) -> Asked:
    for name, depth in (("lip", 0.005), ("bend", 0.12)):
        save_plan(Plan(title=name, moves=(Spread(door=EdgePoint(depth_m=depth)),)), tmp_path / f"{name}.toml")
    file = tmp_path / "scenario.toml"
    file.write_text(TEXT, encoding="utf-8")
    return load_scenario(file)


def follow(runs: ScenarioRuns) -> ScenarioRuns:
    for _ in runs:
        pass
    return runs


def stand_in(asked, tmp_path, count=4, job=fakes.trace, **other) -> ScenarioRuns:
    store = Store(tmp_path / "runs")
    return ScenarioRuns(asked, count, store=store, worker_count=2, job=job, prepare=workers.nothing, **other)


@pytest.mark.parametrize("file", sorted(READY.glob("*.toml")), ids=lambda file: file.stem)
def test_every_ready_scenario_can_be_read_and_drawn(file):
    ready = load_scenario(file)
    assert ready.scenario.licence and ready.scenario.words
    draws = ready.draws(2)
    assert all(len(draws[name]) == 2 and draws[name][0].values for name in ready.plans)


def test_the_lattice_of_a_scenario_is_that_of_all_its_plans(asked, tmp_path):
    file = tmp_path / "coarse.toml"
    file.write_text(TEXT.replace("runs = 4", "runs = 4\nlattice_spacing_m = 0.08"), encoding="utf-8")
    assert {plan.car.lattice_spacing_m for plan in load_scenario(file).plans.values()} == {0.08}
    assert {plan.car.lattice_spacing_m for plan in asked.plans.values()} == {Car().lattice_spacing_m}


def test_a_plan_may_end_where_nothing_that_is_asked_comes_after(asked, tmp_path):
    file = tmp_path / "short.toml"
    stops = '[stops]\nlip = ["seam parting", "latch free"]\n\n[[asks]]'
    file.write_text(TEXT.replace("[[asks]]", stops), encoding="utf-8")
    short = load_scenario(file).plans
    assert short["lip"].moves[-1].stop_at == ("seam parting", "latch free")
    assert short["bend"] == asked.plans["bend"]


def test_runs_are_kept_and_only_new_ones_are_made(asked, tmp_path):
    first = follow(stand_in(asked, tmp_path, 4))
    again = follow(stand_in(asked, tmp_path, 4, job=fakes.never_trace))
    assert again.runs == first.runs
    more = stand_in(asked, tmp_path, 8)
    told = [progress.done for progress in more]
    assert (told[0], told[-1]) == (8, 16) and more.whole
    assert {name: runs[:4] for name, runs in more.runs.items()} == dict(first.runs)


def test_same_runs_whatever_the_number_of_workers(asked, tmp_path):
    store = Store(tmp_path / "one")
    one = ScenarioRuns(asked, 4, store=store, job=fakes.trace, prepare=workers.nothing)
    assert follow(one).runs == follow(stand_in(asked, tmp_path)).runs


def test_a_line_cut_off_in_the_file_is_passed_over(asked, tmp_path):
    follow(stand_in(asked, tmp_path))
    file = tmp_path / "runs" / "lip.jsonl"
    text = file.read_bytes()
    file.write_bytes(text[: len(text) - 40])
    runs = stand_in(asked, tmp_path)
    assert next(iter(runs)).done == 7
    assert follow(stand_in(asked, tmp_path)).whole


def test_a_run_that_breaks_is_counted_and_not_kept(asked, tmp_path):
    runs = follow(stand_in(asked, tmp_path, job=fakes.trace_raises_on_third))
    assert [bool(run.why) for run in runs.runs["lip"]] == [False, False, True, False]
    got = answer(asked.scenario.asks, runs.runs)[0]
    assert (got.unsure, got.total) == (1, 4)
    assert follow(stand_in(asked, tmp_path)).runs["lip"][2].why == ""


def test_a_run_is_kept_under_what_it_solved():
    plan = Plan(moves=(Spread(),))
    other = plan.with_car(msgspec.structs.replace(plan.car, skin_thickness_m=0.00071))
    assert key_of(plan) == key_of(msgspec.structs.replace(plan)) != key_of(other)


def test_a_changed_start_is_another_run(tmp_path):
    file = tmp_path / "start.npz"
    plan = Plan(moves=(Spread(),), start=str(file))
    file.write_bytes(b"one")
    before = key_of(plan)
    file.write_bytes(b"two")
    assert key_of(plan) != before


@pytest.fixture(scope="module")
def small():
    plan = Plan(seed=3, car=Car(lattice_spacing_m=0.09), moves=(Spread(opening_m=0.01),))
    return plan, solve_plan(plan)[1]


def draw_of(plan: Plan):
    asked = Asked(loads_scenario(TEXT), {"lip": plan, "bend": plan})
    return asked.draws(1)["lip"][0]


class TestTrace:
    def test_curves_are_those_of_the_frames(self, small):
        plan, records = small
        (move,) = traced(plan, records).moves
        frames = records[0].frames
        assert move.curves["force_n"] == pytest.approx([frame.force_n for frame in frames], rel=1e-5)
        assert move.curves["parted_length_m"] == pytest.approx([f.parted_length_m for f in frames], rel=1e-5)
        assert {len(curve) for curve in move.curves.values()} == {len(frames)}
        assert "ram_angle_rad" not in move.curves and set(move.curves) <= set(CURVES)
        assert move.events == records[0].result.events and move.move == "spread"

    def test_it_is_the_same_after_it_was_kept(self, small, tmp_path):
        plan, records = small
        trace, store = traced(plan, records), Store(tmp_path)
        store.add("a", "key", trace)
        assert store.load("a") == {"key": trace}

    def test_letting_off_for_the_residual_changes_nothing_that_is_read(self, small):
        plan, records = small
        assert traced(plan, solve_plan(plan, with_residual=False)[1]) == traced(plan, records)

    def test_a_run_that_takes_too_long_is_given_up_with_its_reason(self, small):
        got = try_run(Job(draw_of(small[0]), 0.0))
        assert isinstance(got, TooLong) and "s of CPU" in got.trace.why

    def test_a_run_that_cannot_be_made_says_why(self, small):
        tool = msgspec.structs.replace(small[0].moves[0].tool, tip_width_m=1.0)
        bad = small[0].with_move(0, msgspec.structs.replace(small[0].moves[0], tool=tool))
        got = try_run(Job(draw_of(bad), math.inf))
        assert not isinstance(got, TooLong) and "tip_width_m" in got.why and not got.moves


class TestTold:
    def came(self, asked, tmp_path):
        runs = dict(follow(stand_in(asked, tmp_path)).runs)
        return scenario_told.came_to(asked, runs, answer(asked.scenario.asks, runs))

    def test_the_file_reads_back(self, asked, tmp_path):
        came = self.came(asked, tmp_path)
        assert scenario_told.from_json(scenario_told.to_json(came)) == came
        assert came.run_count == 4 and came.plans["bend"].file == "bend.toml"

    def test_the_table_has_a_row_an_ask_with_count_and_word(self, asked, tmp_path):
        table = scenario_told.markdown(self.came(asked, tmp_path))
        assert table.count("\n| The seam parts | ") == 1
        assert "of 4" in table and "lattice 45 mm" in table

    @pytest.mark.parametrize(
        ("value", "unit", "words"),
        [(0.0123, "mm", "12"), (4560.0, "kN", "4.6"), (0.456, "", "0.46"), (0.256, "%", "26")],
    )
    def test_figures_are_told_in_their_unit(self, value, unit, words):
        assert scenario_told.number_words(value, unit) == words

    def test_so_many_runs_are_needed_for_a_word(self):
        fewer, enough = (likelihood("w", n, n) for n in (TELLS - 1, TELLS))
        assert (fewer.word, enough.word) == ("too few runs", "nearly always")

    def test_a_share_is_told_with_its_interval_and_a_difference_without_a_word(self):
        share = Answer("w", "happens", count=3, unsure=1, total=8, low=0.1, high=0.9, word="not settled")
        assert scenario_told.cells(share, "") == ("w", "3 of 8, 1 unsure", "10 to 90 %", "not settled")
        apart = Answer("w", "apart", total=8, low=-0.2, high=0.7, middle=0.25)
        assert scenario_told.cells(apart, "")[3] == "apart by 25 %"


@pytest.mark.parametrize(
    ("change", "field"),
    [
        (("runs = 4", "runs = 0"), "runs"),
        (("seed = 3", "seed = -1"), "seed"),
        (("runs = 4", "lattice_spacing_m = 0.5"), "lattice_spacing_m"),
        (('of = "lip"', 'of = "hinge"'), "asks[0].of"),
        (("seam parting", "seam opens"), "asks[0].event"),
        (('ask = "happens"', 'ask = "looks"'), "asks[0]"),
        (("schema_version = 1", "schema_version = 9"), "schema_version"),
        (("[plans]", "[plans"), "scenario"),
        (("[plans]", '[stops]\nhinge = ["latch free"]\n[plans]'), "stops.hinge"),
        (("[plans]", '[stops]\nlip = ["latch opens"]\n[plans]'), "stops.lip"),
    ],
)
def test_a_scenario_that_cannot_be_is_refused_by_its_field(change, field):
    with pytest.raises(PlanError) as found:
        loads_scenario(TEXT.replace(*change))
    assert found.value.field.startswith(field)


def test_a_plan_that_is_not_there_is_named(tmp_path):
    file = tmp_path / "scenario.toml"
    file.write_text(TEXT, encoding="utf-8")
    with pytest.raises(PlanError, match=r"plans\.lip: lip\.toml.*does not exist"):
        load_scenario(file)
