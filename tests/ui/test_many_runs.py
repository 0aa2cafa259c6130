"""The commands of many runs and of the search for flips: files, words, refusals, and nothing left behind."""

from __future__ import annotations

import contextlib
import csv
import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from sim.planfile import load_plan
from sim.vary import inputs
from ui import command, many_runs

ROOT = Path(__file__).resolve().parents[2]
PLAN = """schema_version = 1
seed = 5
[car]
lattice_spacing_m = 0.09
[[moves]]
move = "spread"
opening_m = 0.005
[moves.door]
at = "edge"
edge = "latch_edge"
along_m = 0.36
"""


@pytest.fixture
def plan(tmp_path) -> Path:
    path = tmp_path / "plan.toml"
    path.write_text(PLAN, encoding="utf-8")
    return path


def rows(path: Path) -> list[dict[str, str]]:
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_many_writes_answer_table_and_runs(plan, tmp_path, capsys):
    out = tmp_path / "out"
    assert command.main(["many", str(plan), "--out", str(out), "--runs", "3", "--workers", "1"]) == 0
    assert sorted(p.name for p in out.iterdir()) == sorted(many_runs.MANY_FILES)
    raw = json.loads((out / "many.json").read_text(encoding="utf-8"))
    shown = capsys.readouterr()
    assert raw["sentence"] in shown.out and "3 of 3" not in shown.out
    assert raw["seed"] == 5 and raw["preview"] is False and len(raw["runs"]) == 3
    paths = [item.path for item in inputs(load_plan(plan))]
    assert [item["path"] for item in raw["varied"]] == paths
    assert all(item["source"] for item in raw["varied"])
    table = rows(out / "many.csv")
    assert [int(row["run_index"]) for row in table] == [0, 1, 2]
    for row, run in zip(table, raw["runs"], strict=True):
        assert float(row["peak_force_n"]) == run["peak_force_n"] > 0.0
        assert float(row[paths[0]]) == run["values"][paths[0]]
        assert row["standing"] == "settled"
    # once more: the same answer, letter by letter, and counts because they are asked for
    before = {name: (out / name).read_bytes() for name in many_runs.MANY_FILES}
    words = ["many", str(plan), "--out", str(out), "--runs", "3", "--workers", "1", "--counts"]
    assert command.main(words) == 0
    assert {name: (out / name).read_bytes() for name in many_runs.MANY_FILES} == before
    assert "of 3 (true share" in capsys.readouterr().out


def test_many_may_end_where_a_part_gives(plan, tmp_path, capsys):
    out = tmp_path / "short"
    assert (
        command.main(["many", str(plan), "--out", str(out), "--runs", "1", "--workers", "1", "--first"]) == 0
    )
    raw = json.loads((out / "many.json").read_text(encoding="utf-8"))
    assert raw["ended_where_a_part_gave"] is True and raw["sentence"].endswith("the runs ended there.")
    assert raw["sentence"] in capsys.readouterr().out


def test_flip_writes_what_it_looked_at(plan, tmp_path, capsys):
    out = tmp_path / "out"
    path = "car.latch_strength_ratio"
    assert command.main(["flip", str(plan), "--out", str(out), "--only", path, "--workers", "1"]) == 0
    raw = json.loads((out / "flip.json").read_text(encoding="utf-8"))
    # 5 mm on the lip parts nothing yet, and a latch that carries little cannot change that
    assert raw["flips"] == [] and [item["path"] for item in raw["steady"]] == [path]
    assert "nothing within its range flips it" in raw["sentence"]
    assert raw["sentence"] in capsys.readouterr().out
    assert len(rows(out / "flip.csv")) == len(raw["runs"]) == 5  # the plan and two places on either side


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["many", "--runs", "0"], "--runs 0"),
        (["many", "--workers", "0"], "--workers 0"),
        (["flip", "--only", "car.bar"], "--only car.bar"),
    ],
)
def test_words_that_cannot_be_are_refused(words, said, plan, tmp_path, capsys):
    before = sorted(tmp_path.rglob("*"))
    assert command.main([words[0], str(plan), "--out", str(tmp_path / "out"), *words[1:]]) == 2
    shown = capsys.readouterr()
    assert shown.out == "" and said in shown.err and len(shown.err.splitlines()) == 1
    assert sorted(tmp_path.rglob("*")) == before


@pytest.mark.parametrize("what", ["many", "flip"])
def test_plan_without_a_push_is_refused(what, tmp_path, capsys):
    plan = tmp_path / "plan.toml"
    plan.write_text('schema_version = 1\n[[moves]]\nmove = "ease"\n', encoding="utf-8")
    assert command.main([what, str(plan), "--out", str(tmp_path / "out")]) == 2
    assert "hold no push" in capsys.readouterr().err
    assert not (tmp_path / "out").exists()


def children_of(process_id: int) -> list[int]:
    """Return the children of a process, from the fourth word of each process's own record."""
    found = []
    for entry in Path("/proc").glob("[0-9]*/stat"):
        with contextlib.suppress(OSError):
            words = entry.read_text(encoding="utf-8").rpartition(")")[2].split()
            if int(words[1]) == process_id:
                found.append(int(entry.parent.name))
    return found


def gone(process_id: int) -> bool:
    try:
        os.kill(process_id, 0)
    except ProcessLookupError:
        return True
    state = Path(f"/proc/{process_id}/stat").read_text(encoding="utf-8").rpartition(")")[2].split()[0]
    return state == "Z"


@pytest.mark.skipif(not Path("/proc/self/stat").exists(), reason="looks for processes in /proc")
@pytest.mark.parametrize("how", [signal.SIGINT, signal.SIGKILL])
def test_stopped_in_the_middle_it_leaves_no_file_and_no_process(how, plan, tmp_path):
    # a shell that starts the tests in the background has all they start ignore this signal: here it is heard
    hears = "import signal, sys; signal.signal(signal.SIGINT, signal.default_int_handler); "
    code = hears + "sys.path.insert(0, '.'); from ui.command import main; sys.exit(main())"
    call = [sys.executable, "-P", "-c", code, "many", str(plan), "--out", str(tmp_path / "out")]
    process = subprocess.Popen([*call, "--runs", "500"], cwd=ROOT, stderr=subprocess.PIPE, text=True)
    try:
        next(line for line in process.stderr if line.startswith("runs: 0 of 500"))
        deadline = time.monotonic() + 60.0
        children: list[int] = []
        while not children and time.monotonic() < deadline:
            children = children_of(process.pid)
        assert children
        process.send_signal(how)
        assert process.wait(timeout=60) == (130 if how == signal.SIGINT else -signal.SIGKILL)
    finally:
        process.kill()
        process.wait()
        process.stderr.close()
    deadline = time.monotonic() + 10.0  # a killed parent tells nobody: the workers notice by themselves
    while not all(gone(child) for child in children) and time.monotonic() < deadline:
        pass
    assert all(gone(child) for child in children)
    if how == signal.SIGINT:
        assert sorted(p.name for p in tmp_path.iterdir()) == ["plan.toml"]
