"""The command that runs a scenario: what it writes and says, what it takes up again, what it refuses."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from ui import command, scenarios

PLAN = """schema_version = 1
[car]
lattice_spacing_m = 0.09
[[moves]]
move = "spread"
opening_m = 0.01
"""
SCENARIO = """schema_version = 1
title = "A short push"
runs = 2
[plans]
push = "plan.toml"
[[asks]]
ask = "happens"
words = "The seam parts"
of = "push"
event = ["seam parting"]
[[asks]]
ask = "told"
words = "Most force"
of = "push"
figure = ["force_n"]
at = "most"
"""


@pytest.fixture
def file(tmp_path) -> Path:
    (tmp_path / "plan.toml").write_text(PLAN, encoding="utf-8")
    path = tmp_path / "scenario.toml"
    path.write_text(SCENARIO, encoding="utf-8")
    return path


def call(*words: object) -> int:
    return command.main(["scenario", *map(str, words)])


def test_it_writes_what_came_out_and_does_no_run_twice(file, tmp_path, capsys):
    out = tmp_path / "out"
    assert call(file, "--out", out, "--workers", 1) == 0
    shown = capsys.readouterr()
    assert "The seam parts: 2 of 2 (true share 16 to 100 %)" in shown.out and "kN" in shown.out
    assert sorted(p.name for p in out.iterdir()) == sorted(scenarios.OURS)
    raw = json.loads((out / scenarios.ANSWER).read_text(encoding="utf-8"))
    assert [a["words"] for a in raw["answers"]] == ["The seam parts", "Most force"]
    assert raw["answers"][1]["middle"] > 200.0 and raw["run_count"] == 2
    before = {name: (out / name).read_bytes() for name in (scenarios.ANSWER, scenarios.TABLE)}
    kept = (out / scenarios.RUNS / "push.jsonl").read_bytes()
    assert call(file, "--out", out, "--workers", 1) == 0
    assert {name: (out / name).read_bytes() for name in before} == before
    assert (out / scenarios.RUNS / "push.jsonl").read_bytes() == kept
    assert "runs: 2 of 2" in capsys.readouterr().err


def test_a_call_that_is_stopped_says_that_its_runs_are_kept(file, tmp_path, capsys, monkeypatch):
    def interrupted(_self):
        raise KeyboardInterrupt
        yield

    monkeypatch.setattr("sim.scenario_runs.ScenarioRuns.__iter__", interrupted)
    assert call(file, "--out", tmp_path / "out") == 130
    assert "runs made so far are kept" in capsys.readouterr().err
    assert not (tmp_path / "out" / scenarios.ANSWER).exists()


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--runs", "0"), "--runs 0: cannot be"),
        (("--workers", "0"), "--workers 0: cannot be"),
        (("--most-seconds", "0"), "--most-seconds 0.0: cannot be"),
    ],
)
def test_words_that_cannot_be_are_refused_in_a_sentence(file, tmp_path, capsys, words, told):
    assert call(file, "--out", tmp_path / "out", *words) == 2
    shown = capsys.readouterr().err
    assert shown.startswith(told) and shown.count("\n") == 1
    assert not (tmp_path / "out").exists()


def test_a_folder_with_other_things_in_it_is_left_alone(file, tmp_path, capsys):
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / "letter.txt").write_text("mine", encoding="utf-8")
    assert call(file, "--out", tmp_path / "out") == 2
    assert "holds other files such as letter.txt" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (('of = "push"', 'of = "pull"'), "asks[0].of is 'pull'"),
        (('push = "plan.toml"', 'push = "plan-b.toml"'), "plans.push: plan-b.toml"),
        (('ask = "happens"', 'ask = "hopes"'), "asks[0]"),
    ],
)
def test_a_scenario_that_cannot_be_is_refused_in_a_sentence(file, tmp_path, capsys, change, told):
    file.write_text(SCENARIO.replace(*change), encoding="utf-8")
    assert call(file, "--out", tmp_path / "out") == 2
    shown = capsys.readouterr().err
    assert told in shown and str(file) in shown and "Traceback" not in shown and shown.count("\n") == 1
