"""The command that draws room against progress: from finished runs and from plans, one start only."""

from __future__ import annotations

import csv
from pathlib import Path

import msgspec
import numpy as np
import pytest
from PIL import Image

from tests.ui.state.test_room_curve import result, series
from ui import command
from ui.state.plotting import spread_out, tick

PLAN = """schema_version = 1
title = "{title}"
[car]
extent = "side"
lattice_spacing_m = 0.09
[[moves]]
move = "spread"
opening_m = {opening}
[moves.door]
at = "edge"
edge = "latch_edge"
depth_m = 0.05
"""


@pytest.fixture
def runs(tmp_path) -> list[Path]:
    """Return two finished runs of one start, and one of another."""
    out = []
    for name, start, hip in (("fold", "ab", 0.005), ("rip", "ab", -0.001), ("other", "cd", 0.0)):
        folder = tmp_path / name
        folder.mkdir()
        (folder / "result.json").write_bytes(msgspec.json.encode(result(start=32 * start, title=name)))
        (folder / "series.csv").write_text(series([0.015 + hip * k for k in range(9)]), encoding="utf-8")
        out.append(folder)
    return out


def test_two_runs_of_one_start_are_drawn_and_tabled(runs, tmp_path, capsys):
    out = tmp_path / "room.png"
    assert command.main(["room", str(runs[0]), str(runs[1]), "--out", str(out)]) == 0
    said = capsys.readouterr().out
    assert "A fold: never less room" in said and "B rip: less room" in said
    assert f"start {32 * 'ab'}, the same for all" in said
    with Image.open(out) as image:
        assert image.size == (1600, 900)
        assert "abababababab" in image.text["Description"] and "not a real car" in image.text["Description"]
        ink = np.asarray(image.convert("L")) < 100
    # the large plot's line of the first plan rises to the upper right, the other's falls below the start
    assert ink[100:300, 800:920].any() and ink[500:690, 600:920].any()
    with (tmp_path / "room.csv").open(encoding="utf-8", newline="") as file:
        assert {row["plan"] for row in csv.DictReader(file)} == {"fold", "rip"}


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["fold", "other", "--out", "room.png"], "do not begin with one start"),
        (["fold", "--out", "room.gif"], "a name ending in .png"),
        (["fold", "--out", "no/room.png"], "lies in a folder that does not exist"),
        (["no.toml", "--out", "room.png"], "no.toml"),
        ([".", "--out", "room.png"], "."),
        ([*5 * ["fold"], "--out", "room.png"], "give one to 4"),
    ],
)
def test_what_cannot_be_compared_is_refused_in_one_sentence(words, said, runs, tmp_path, capsys, monkeypatch):
    monkeypatch.chdir(tmp_path)
    before = sorted(tmp_path.rglob("*"))
    assert command.main(["room", *words]) == 2
    shown = capsys.readouterr()
    assert said in shown.err and len(shown.err.splitlines()) == 1 and shown.out == ""
    assert sorted(tmp_path.rglob("*")) == before


def test_plans_are_solved_and_their_start_is_told(tmp_path, capsys):
    plans = []
    for title, opening in (("Little", 0.001), ("More", 0.0025)):
        plans.append(tmp_path / f"{title}.toml")
        plans[-1].write_text(PLAN.format(title=title, opening=opening), encoding="utf-8")
    assert command.main(["room", *map(str, plans), "--out", str(tmp_path / "room.png")]) == 0
    said = capsys.readouterr().out
    assert "A Little" in said and "B More" in said and "the same for all" in said
    with (tmp_path / "room.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert float(rows[-1]["way_m"]) == pytest.approx(0.0025)
    assert float(rows[-1]["progress_ratio"]) == 1.0


def test_words_beside_lines_keep_apart_in_their_order():
    placed = spread_out([50.0, 10.0, 52.0, 51.0], 20.0, 0.0, 100.0)
    assert placed[1] < placed[0] < placed[3] < placed[2]
    assert np.diff(sorted(placed)).min() >= 20.0
    assert max(placed) <= 100.0
    low = spread_out([5.0, 95.0, 96.0, 97.0], 20.0, 0.0, 100.0)
    assert low == [5.0, 60.0, 80.0, 100.0]  # the crowd at the foot moves up, the lone word stays
    assert tick(0.0, 0.3, 7) == 0.05
