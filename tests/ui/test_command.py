"""The command line: every refusal is one sentence with field and remedy, and leaves nothing behind."""

from __future__ import annotations

import csv
import errno
import json
import os
import subprocess
import sys
from pathlib import Path
from types import SimpleNamespace

import numpy as np
import pytest
from PIL import Image

from sim.plan import Crush, Cut, Ease, Plan, Press, Spread
from ui import command
from ui.solving import Progress, expected_frames

ROOT = Path(__file__).resolve().parents[2]
HEAD = "schema_version = 1\n"
CAR = "[car]\nlattice_spacing_m = 0.09\n"
MOVE = """
[[moves]]
move = "spread"
opening_m = 0.005
[moves.door]
at = "edge"
edge = "latch_edge"
along_m = 0.36
"""


def hemline(*words: str) -> subprocess.CompletedProcess[str]:
    """Return the finished command, run as a user runs it."""
    variables = {
        k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    }
    call = [
        sys.executable,
        "-P",
        "-c",
        "import sys; sys.path.insert(0, '.'); from ui.command import main; sys.exit(main())",
    ]
    return subprocess.run(
        [*call, *words], cwd=ROOT, env=variables, capture_output=True, text=True, check=False, timeout=150
    )


@pytest.fixture
def refuse(tmp_path, capsys):
    """Return a call that runs a plan, asserts exit code 2 and one sentence, and returns that sentence."""

    def call(text: str, out: str = "out") -> str:
        plan = tmp_path / "plan.toml"
        plan.write_text(text, encoding="utf-8")
        before = sorted(tmp_path.rglob("*"))
        assert command.main(["run", str(plan), "--out", str(tmp_path / out)]) == 2
        shown = capsys.readouterr()
        assert shown.out == ""
        assert sorted(tmp_path.rglob("*")) == before  # nothing half-written, no hidden folder
        lines = [line for line in shown.err.splitlines() if "solved" not in line]
        assert len(lines) == 1
        assert lines[0].endswith((".", "program."))
        assert "Traceback" not in shown.err and "Error" not in lines[0]
        return lines[0]

    return call


@pytest.mark.parametrize(
    ("text", "field", "remedy"),
    [
        (HEAD + "colour = 3\n" + MOVE, "colour", "check its spelling"),
        (HEAD + "[car]\nskin_thickness_mm = 1.0\n" + MOVE, "car.skin_thickness_mm", "skin_thickness_m"),
        (MOVE, "schema_version", "schema_version = 1"),
        ("schema_version = 9\n" + MOVE, "schema_version", "update the program"),
        (HEAD + CAR + MOVE + "depth_m = -0.02\n", "moves[0].door.depth_m", "use 0 or more"),
        (HEAD + CAR + MOVE.replace("0.36", "3.0"), "moves[0].door.along_m", "stay within it"),
        (HEAD + "[car]\nskin_thickness_m = 0.0\n" + MOVE, "car.skin_thickness_m", "use 0.0003"),
        (HEAD + "[car]\nshut_face_depth_m = 0.9\n" + MOVE, "car.shut_face_depth_m", "use 0.065"),
        (HEAD + "[car]\nlattice_spacing_m = 0.5\n" + MOVE, "car.lattice_spacing_m", "use 0.02 to"),
        (HEAD + "[car]\nlattice_spacing_m = 0.001\n" + MOVE, "car.lattice_spacing_m", "use 0.02 to"),
        (HEAD + CAR, "moves", "add a [[moves]] table"),
        ("schema_version = \n", "plan", "mend that line"),
    ],
    ids=["unknown field", "unit", "no version", "newer", "in the air", "off the edge", "no thickness",
         "no mesh", "coarse", "fine", "no moves", "no TOML"],
)  # fmt: skip
def test_a_plan_that_cannot_be_done_is_refused(refuse, text, field, remedy):
    sentence = refuse(text)
    assert field in sentence
    assert remedy in sentence
    assert "plan.toml" in sentence


def test_tips_on_one_point_are_refused(refuse, monkeypatch):
    """The two seats of a door never meet by themselves: let every distance count as one point."""
    from sim import push

    monkeypatch.setattr(push, "SAME_POINT_M", 1.0)
    sentence = refuse(HEAD + CAR + MOVE)
    assert "moves[0].against" in sentence
    assert "move one of the two" in sentence


def test_the_second_move_is_refused_before_the_first_is_solved(refuse, monkeypatch):
    from sim import run

    monkeypatch.setattr(
        run, "solve_plan", lambda *_args, **_options: pytest.fail("solved before it was checked")
    )
    assert "moves[1].door.depth_m" in refuse(HEAD + CAR + MOVE + MOVE + "depth_m = -0.01\n")


@pytest.mark.parametrize(
    ("number", "words"),
    [(errno.ENOSPC, "disk is full"), (errno.EACCES, "may not be used by you"), (errno.EROFS, "read-only")],
)
def test_a_disk_that_cannot_be_written_leaves_nothing(refuse, monkeypatch, number, words):
    """At the second file, so that the first one is there already."""
    write = Path.write_text

    def fail(self, *args, **options):
        if self.name.startswith("series.csv"):
            raise OSError(number, os.strerror(number))
        return write(self, *args, **options)

    def solved(_plan, _folder):
        from types import SimpleNamespace

        return None, (SimpleNamespace(frames=(), result=None),)

    monkeypatch.setattr(command, "solve", solved)
    call = refuse
    monkeypatch.setattr(Path, "write_text", lambda self, *a, **o: fail(self, *a, **o))
    sentence = call(HEAD + CAR + MOVE, out="deep/er/out")
    assert words in sentence
    assert "--out" in sentence


def test_a_missing_plan_is_refused(tmp_path, capsys):
    assert command.main(["run", str(tmp_path / "no.toml"), "--out", str(tmp_path / "o")]) == 2
    shown = capsys.readouterr().err
    assert shown.count("\n") == 1
    assert "does not exist; check the path" in shown
    assert list(tmp_path.iterdir()) == []


def test_a_folder_with_other_files_is_left_alone(refuse, tmp_path):
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / "thesis.txt").write_text("years of work")
    sentence = refuse(HEAD + CAR + MOVE)
    assert "thesis.txt" in sentence
    assert (tmp_path / "out" / "thesis.txt").read_text() == "years of work"


def test_a_file_in_place_of_the_folder_is_left_alone(refuse, tmp_path):
    (tmp_path / "out").write_text("a file")
    assert "name a folder" in refuse(HEAD + CAR + MOVE)


@pytest.mark.parametrize(
    "words", [["run"], ["run", "a.toml"], ["run", "a.toml", "--out", "o", "--fast"], ["--nonsense"]]
)
def test_words_that_mean_nothing_are_refused(words, capsys):
    assert command.main(words) == 2
    shown = capsys.readouterr()
    assert shown.err.count("\n") == 1
    assert "hemline --help" in shown.err


def test_the_version_comes_at_once_and_without_heavy_libraries():
    """0.3 s is taken for at once (common practice, no source); half as much again on a shared machine.

    Processor time counts, not the clock: the least of several tries.
    """
    resource = pytest.importorskip("resource")  # not on Windows
    costs = []
    for _ in range(4):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        done = hemline("--version")
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        costs.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
        assert done.returncode == 0
        assert done.stdout.startswith("hemline ")
    assert min(costs) < 0.45
    code = (
        "import sys; sys.path.insert(0, '.'); import ui.command\n"
        "heavy = {'PySide6', 'vtkmodules', 'pyvista', 'numba', 'scipy', 'pyqtgraph'} & set(sys.modules)\n"
        "sys.exit(', '.join(heavy) or 0)"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-c", code], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")


def test_a_broken_plan_is_named_before_the_heavy_imports(tmp_path):
    plan = tmp_path / "plan.toml"
    plan.write_text(HEAD + "colour = 3\n")
    code = (
        "import sys; sys.path.insert(0, '.'); from ui.command import main\n"
        f"code = main(['run', {str(plan)!r}, '--out', {str(tmp_path / 'o')!r}])\n"
        "heavy = {'PySide6', 'vtkmodules', 'pyvista', 'numba'} & set(sys.modules)\n"
        "sys.exit(f'{code} {sorted(heavy)}')"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-c", code], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.stderr.splitlines()[-1] == "2 []"


def test_help_names_the_commands_and_the_limits():
    done = hemline("--help")
    assert done.returncode == 0
    for word in ("run", "--version", "not a real car", "local procedure first"):
        assert word in " ".join(done.stdout.split())


def test_a_run_writes_everything_with_no_screen_and_can_be_repeated(tmp_path):
    """Also a second time into the same folder; progress on the error stream, the sentence on the other."""
    plan = tmp_path / "plan.toml"
    plan.write_text(HEAD + 'title = "Short"\n' + CAR + MOVE + '[[moves]]\nmove = "ease"\n')
    for _ in range(2):
        done = hemline("run", str(plan), "--out", str(tmp_path / "new" / "out"))
        assert done.returncode == 0, done.stderr
        assert "100 % solved" in done.stderr
        assert done.stdout.splitlines()[-1] == str(tmp_path / "new" / "out")
        assert sorted(p.name for p in (tmp_path / "new").iterdir()) == ["out"]
    folder = tmp_path / "new" / "out"
    assert sorted(p.name for p in folder.iterdir()) == sorted(command.OURS)
    result = json.loads((folder / "result.json").read_text())
    assert len(result["moves"]) == 2
    assert result["moves"][0]["sentence"] in done.stdout
    with (folder / "series.csv").open(newline="") as file:
        rows = list(csv.DictReader(file))
    assert float(rows[2]["opening_m"]) == pytest.approx(0.0005, abs=1e-9)
    with Image.open(folder / "picture.png") as image:
        assert image.size == (1600, 900)
        assert "local procedure first" in image.text["Description"]
    with Image.open(folder / "film.png") as image:
        assert image.size == (1600, 900)
        assert np.asarray(image.convert("L")).std() > 15.0


def test_stopping_leaves_nothing(tmp_path, capsys, monkeypatch):
    plan = tmp_path / "plan.toml"
    plan.write_text(HEAD + CAR + MOVE)

    def stop(_plan, _folder):
        raise KeyboardInterrupt

    monkeypatch.setattr(command, "solve", stop)
    assert command.main(["run", str(plan), "--out", str(tmp_path / "a" / "out")]) == 130
    assert capsys.readouterr().err == "Stopped; nothing was written.\n"
    assert [p.name for p in tmp_path.iterdir()] == ["plan.toml"]


@pytest.mark.parametrize("words", [[], ["PLAN"]])
def test_without_a_command_the_window_opens(tmp_path, monkeypatch, words):
    import types

    plan = tmp_path / "plan.toml"
    plan.write_text(HEAD + MOVE)
    given = []
    fake = types.ModuleType("ui.app")
    fake.main = lambda arguments: given.append(arguments) or 0
    monkeypatch.setitem(sys.modules, "ui.app", fake)
    monkeypatch.setattr("ui.app", fake, raising=False)
    assert command.main([str(plan) for _ in words]) == 0
    assert given == [[str(plan)] if words else []]


def test_a_fault_of_the_program_is_one_sentence():
    code = (
        "import sys; sys.path.insert(0, '.'); import ui.command as c\n"
        "def broken(*_): raise TypeError('planted')\n"
        "c.read_plan = broken; sys.argv = ['hemline', 'run', 'a.toml', '--out', 'o']\n"
        "sys.exit(c.main())"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-c", code], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 1
    assert done.stderr.count("\n") == 1
    assert "planted" in done.stderr and "report it" in done.stderr


# cars -------------------------------------------------------------------------------------------------------


def test_the_fields_of_a_plan_are_told_and_a_word_that_names_none_is_refused(capsys):
    assert command.main(["fields", "press"]) == 0
    assert "extension_m = 0.1" in capsys.readouterr().out
    assert command.main(["fields", "hammer"]) == 2
    told = capsys.readouterr()
    assert "'hammer'" in told.err and "press" in told.err and told.out == ""


def test_progress_counts_what_a_move_travels_and_not_how_far_blades_open():
    """40 steps of 2.5 mm for a ram, 30 of 5 mm for a body; 20 of 0.25 mm and 10 of 2.5 for tips that grip."""
    moves = (
        Cut(opening_m=0.18),
        Press(extension_m=0.1),
        Crush(travel_m=0.15),
        Ease(),
        Spread(opening_m=0.03),
    )
    assert expected_frames(Plan(moves=moves)) == [1, 41, 31, 1, 31]


def test_the_time_left_does_not_count_what_it_took_to_make_the_mechanics_ready(monkeypatch, capsys):
    """50 s until the first of 50 moments, then 0.2 s each: 8 s are left after the tenth, not 4 min."""
    clock = iter([0.0, 50.0, 50.0, 51.8])
    monkeypatch.setattr("ui.solving.time.perf_counter", lambda: next(clock))
    progress = Progress([50])
    progress.step(SimpleNamespace(move_index=0, increment=0))
    progress.step(SimpleNamespace(move_index=0, increment=9))
    first, tenth = capsys.readouterr().err.splitlines()
    assert first == "move 1 of 1, 2 % solved"
    assert tenth == "move 1 of 1, 20 % solved, about 8 s left"


def test_the_builds_are_listed_by_name(capsys):
    from sim.builds import BUILDS

    assert command.main(["builds"]) == 0
    shown = capsys.readouterr().out
    assert [line for name in BUILDS for line in shown.splitlines() if line.startswith(f"  {name}:")] != []
    assert all(f"  {name}: " in shown for name in BUILDS)


def test_the_contrast_of_two_plans_is_told_field_by_field(capsys):
    plans = ROOT / "assets" / "plans"
    words = ["contrast", str(plans / "edge-at-latch.toml"), str(plans / "behind-the-bend.toml")]
    assert command.main(words) == 0
    shown = capsys.readouterr().out
    assert "1 thing differs" in shown
    assert "depth from the lip: 5 mm against 120 mm (moves[0].door.depth_m)" in shown


def test_a_contrast_with_a_plan_that_is_not_there_is_refused(capsys):
    plans = ROOT / "assets" / "plans"
    assert command.main(["contrast", str(plans / "edge-at-latch.toml"), "nothing.toml"]) == 2
    assert capsys.readouterr().err.startswith("nothing.toml")


def test_blades_that_met_what_trim_hid_are_told_whatever_came_after():
    """The last push alone was told: a caution two moves before was in the file and in no sentence."""

    def record(sentence, seats=(), kinds=()):
        events = [SimpleNamespace(kind=kind) for kind in kinds]
        return SimpleNamespace(result=SimpleNamespace(sentence=sentence, seats=seats, events=events))

    cut = record(
        "The pillar is cut open; trim still hid a restraint part there.", kinds=("caution", "cut open")
    )
    plain = record("The pillar is cut open.", kinds=("cut open",))
    press, off = record("The ram went out.", ("head",)), record("The tool is off.")
    assert command.told([plain, press, off]) == "The ram went out. The tool is off."
    assert command.told([cut, press, off]).startswith("Move 1: The pillar is cut open; trim still hid")
    assert command.told([cut, press, off]).endswith(" The ram went out. The tool is off.")
    assert command.told([cut]) == cut.result.sentence
