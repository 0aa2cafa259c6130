"""The command that checks the computation: its table, its exit code, its file, and that it can fail."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from sim.checks import catalogue, report
from sim.checks.catalogue import Check
from sim.checks.row import Row
from sim.checks.specimens import NotSolvedError
from ui import command

ROOT = Path(__file__).resolve().parents[2]
GOOD = Row("peel load", "kendall-1975", 2.0, 2.05, "N/mm", 0.05, spacing="45 mm")
POOR = Row("latch lets go", "un-regulation-2010", 11.0, 10.0, "kN", 0.01, spacing="60 mm door")
KNOWN = Row("plate", "timoshenko-plates-1959", 1.0, 1.3, "", 0.06, spacing="12 x 12", known="coarse")


def not_solved():
    raise NotSolvedError("residual 3 N")


@pytest.fixture
def checked(monkeypatch, capsys):
    """Return a call that runs the command on given makers of rows: exit code, table and progress."""

    def call(*makers, words=()):
        checks = tuple(Check("a family", make, fast) for make, fast in makers)
        monkeypatch.setattr(catalogue, "catalogue", lambda: checks)
        code = command.main(["check", *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err

    return call


def test_rows_that_hold_end_with_nought_and_progress_stands_aside(checked):
    code, out, err = checked((lambda: GOOD, True), (lambda: KNOWN, True))
    assert code == 0
    assert "2 of 2 checks" in err
    assert "checks, a family" not in out
    for word in ("claim", "authority", "expected", "got", "error", "Kendall 1975", "+2.5 %", "pass"):
        assert word in out
    assert "FAIL, known" in out
    assert "Known to miss: coarse" in out
    assert "Thin-film peeling" in out  # the source in full
    assert "1 of 2 rows hold, 1 known to miss, none unexpected" in out


def test_columns_are_aligned(checked):
    _, out, _ = checked((lambda: GOOD, True), (lambda: POOR, True))
    lines = out.splitlines()
    assert lines[0] == "A FAMILY"
    claim, authority = lines[1].index("claim"), lines[1].index("authority")
    assert [line[authority:].split()[0] for line in lines[2:4]] == ["Kendall", "UN"]
    assert [line[claim:].split()[0] for line in lines[2:4]] == ["peel", "latch"]
    assert [line.split()[0] for line in lines[1:4]] == ["verdict", "pass", "FAIL"]


def singular():
    raise ValueError("no area")


@pytest.mark.parametrize(
    "make", [lambda: POOR, not_solved, singular], ids=["off", "not solved", "not even built"]
)
def test_a_row_that_fails_ends_with_one(checked, make):
    code, out, _ = checked((lambda: GOOD, True), (make, True))
    assert code == 1
    assert "FAIL" in out
    assert "1 unexpected" in out
    assert out.splitlines()[-2:][0] == "  Unexpected"  # and is named last, where one looks
    assert out.splitlines()[-1].endswith(": FAIL")


def test_a_miss_that_has_come_right_is_news(checked):
    row = Row("plate", "timoshenko-plates-1959", 1.0, 1.0, "", 0.06, spacing="12 x 12", known="coarse")
    code, out, _ = checked((lambda: row, True))
    assert code == 1
    assert "1 of 1 rows hold, 1 unexpected" in out
    assert out.splitlines()[-1] == "    plate, 12 x 12: pass, was known to fail"


def test_full_takes_all_and_the_plain_command_the_fast(checked):
    slow = (lambda: POOR, False)
    assert checked((lambda: GOOD, True), slow)[0] == 0
    assert checked((lambda: GOOD, True), slow, words=["--full"])[0] == 1


def test_rows_go_to_a_file_with_their_source_in_full(checked, tmp_path):
    file = tmp_path / "rows.json"
    code, _, _ = checked((lambda: GOOD, True), (lambda: POOR, True), words=["--json", str(file)])
    assert code == 1
    good, poor = json.loads(file.read_text(encoding="utf-8"))
    assert (good["got"], good["passed"], poor["passed"]) == (2.05, True, False)
    assert good["source"].startswith("Kendall, Thin-film peeling")
    assert [p.name for p in tmp_path.iterdir()] == ["rows.json"]


@pytest.mark.parametrize("relation", ["equal", "within", "at least", "at most"])
def test_a_row_computed_in_numpy_is_written_as_any_other(checked, tmp_path, relation):
    """Its figure is numpy's own float, and so was the answer whether it holds."""
    file = tmp_path / "rows.json"
    row = replace(GOOD, got=np.float64(2.05), expected=np.float64(2.05), relation=relation)
    assert checked((lambda: row, True), words=["--json", str(file)])[0] == 0
    assert json.loads(file.read_text(encoding="utf-8"))[0]["passed"] is True


def test_a_file_that_cannot_be_written_is_refused(checked, tmp_path):
    code, _, err = checked((lambda: GOOD, True), words=["--json", str(tmp_path / "no" / "rows.json")])
    assert code == 2
    assert "--json" in err
    assert "check the path" in err


@pytest.mark.parametrize(
    ("plant", "claim"),
    [
        # the latch of a car set to the floor holds a tenth too little
        (
            "import sim.latch as d; d.LATCH_FLOOR_N = (9.9e3, 9.0e3, 9.0e3)",
            "latch fully latched pulled along",
        ),
        # sheets read their curvature a tenth too small
        (
            """import sim.sheet as s
f = s.curvature_matrices
s.curvature_matrices = lambda *a: 0.9 * f(*a)""",
            "free plate twisted",
        ),
    ],
    ids=["latch", "hinges"],
)
def test_a_planted_fault_turns_its_row_to_fail(plant, claim):
    code = (
        f"import sys; sys.path.insert(0, '.'); {plant}\n"
        "from sim.checks import catalogue\n"
        f"kept = tuple(c for c in catalogue.catalogue() if c.family in ('latch and hinges', 'free edges'))\n"
        "catalogue.catalogue = lambda: kept\n"
        "from ui import command; sys.exit(command.main(['check']))"
    )
    done = subprocess.run(
        [sys.executable, "-P", "-c", code],
        cwd=ROOT,
        env={**os.environ, "PYTHONUTF8": "1"},
        capture_output=True,
        text=True,
        check=False,
        timeout=170,
    )
    assert done.returncode == 1, done.stderr
    rows = [line for line in done.stdout.splitlines() if f"  {claim}" in line]
    assert any(line.startswith("FAIL ") for line in rows), done.stdout


def test_every_installed_row_can_be_told(monkeypatch):
    rows = [check.run() for check in catalogue.catalogue()[:8]]
    told = report.table([("stretched sheet", rows)])
    assert len(told.splitlines()) == len(rows) + 2


@pytest.mark.parametrize(("name", "begins"), [("card.md", "# Model card"), ("card.html", "<!doctype html>")])
def test_the_card_is_written_with_its_checks(checked, tmp_path, monkeypatch, name, begins):
    monkeypatch.setattr(catalogue, "catalogue", lambda: (Check("a family", lambda: GOOD),))
    assert command.main(["card", str(tmp_path / name)]) == 0
    text = (tmp_path / name).read_text(encoding="utf-8")
    assert text.startswith(begins)
    for words in ("peel load", "Kendall 1975", "skin steel, yield stress", "220 MPa", "not settled"):
        assert words in text
    assert [p.name for p in tmp_path.iterdir()] == [name]


@pytest.mark.parametrize(
    ("name", "remedy"), [("card.pdf", ".html, .htm or .md"), ("no/card.md", "check the path")]
)
def test_a_card_that_cannot_be_written_is_refused_before_anything_is_computed(tmp_path, capsys, name, remedy):
    assert command.main(["card", str(tmp_path / name)]) == 2
    shown = capsys.readouterr()
    assert remedy in shown.err
    assert shown.err.count("\n") == 1
    assert list(tmp_path.iterdir()) == []
