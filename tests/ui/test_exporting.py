"""The command that writes a moment for other programs."""

from __future__ import annotations

import csv
from pathlib import Path

import meshio
import pytest

from sim.exports import FILES
from ui import command

PLAN = """schema_version = 1
[car]
lattice_spacing_m = 0.09
[[moves]]
move = "spread"
opening_m = 0.01
[moves.door]
at = "edge"
edge = "latch_edge"
along_m = 0.36
[[moves]]
move = "ease"
"""


@pytest.fixture
def plan(tmp_path) -> Path:
    path = tmp_path / "plan.toml"
    path.write_text(PLAN, encoding="utf-8")
    return path


def test_export_writes_start_and_the_moment_asked_for(plan, tmp_path, capsys):
    out = tmp_path / "out"
    words = ["export", str(plan), "--out", str(out), "--move", "1", "--opening", "0.006"]
    assert command.main(words) == 0
    assert sorted(p.name for p in out.iterdir()) == sorted(FILES)
    assert "Move 1 at 5.0 mm" in capsys.readouterr().out
    with (out / "series.csv").open(encoding="utf-8", newline="") as file:
        rows = [row for row in csv.DictReader(file) if row["move_index"] == "0"]
    at = next(row for row in rows if float(row["opening_m"]) == 0.005)
    moved = meshio.read(out / "moment.vtu").point_data["displacement_m"]
    # the tips have opened 5 mm along a line aslant: the lip has moved a few, and nothing much more
    assert 0.003 < abs(moved).max() < 0.03
    assert float(at["force_n"]) > 0.0


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--move", "3"], "--move 3: is not in the plan; use 1 to 2."),
        (["--move", "0"], "--move 0: is not in the plan; use 1 to 2."),
        (["--opening", "-0.1"], "--opening -0.1: cannot be; use metres from 0 on."),
    ],
)
def test_words_that_cannot_be_are_refused(words, said, plan, tmp_path, capsys):
    assert command.main(["export", str(plan), "--out", str(tmp_path / "out"), *words]) == 2
    shown = capsys.readouterr()
    assert shown.out == "" and shown.err.strip() == said
    assert not (tmp_path / "out").exists()


def test_a_folder_with_other_files_is_left_alone(plan, tmp_path, capsys):
    out = tmp_path / "out"
    out.mkdir()
    (out / "notes.txt").write_text("mine", encoding="utf-8")
    assert command.main(["export", str(plan), "--out", str(out)]) == 2
    assert "holds other files such as notes.txt" in capsys.readouterr().err
    assert [p.name for p in out.iterdir()] == ["notes.txt"]
