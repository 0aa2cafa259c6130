"""Every word of the command line with what it cannot use: one sentence, exit code 2, nothing written.

Each call is refused before anything is solved, so that all of them together take seconds.
"""

import errno

import pytest

from sim.planfile import loads_plan
from sim.problems import PlanError
from ui import command
from ui.many_runs import MOST_WORKERS
from ui.refusal import Refusal
from ui.seats import seat_numbers

PLAN = "schema_version = 1\n[car]\nlattice_spacing_m = 0.09\n[[moves]]\nmove = 'spread'\nopening_m = 0.01\n"
TWO = "schema_version = 1\n[car]\n[[moves]]\nmove = 'crush'\ntravel_m = 0.01\n"
FILES = {
    "good.toml": PLAN.encode(),
    "bytes.toml": bytes(range(256)),
    "empty.toml": b"",
    "not.toml": b"this is = = not [[",
    "crush.toml": TWO.encode(),
    "list.toml": b"schema_version = 1\nmoves = 3\n",
    "nan.toml": b"schema_version = 1\n[car]\nlattice_spacing_m = nan\n",
    "huge.toml": b"schema_version = 1\n[car]\nlattice_spacing_m = 1e300\n",
    "digits.toml": PLAN.replace("0.01\n", "9" * 400 + "\n").encode(),
    "word.toml": PLAN.replace("'spread'", "'explode'").encode(),
    "true.toml": PLAN.replace("0.01\n", "true\n").encode(),
    "stop.toml": (PLAN + "stop_at = ['latch gone']\n").encode(),
    "newer.toml": b"schema_version = 99\n",
    "key.toml": b"schema_version = 1\nbanana = 1\n",
    "lost.toml": b"schema_version = 1\nstart = 'none.npz'\n[[moves]]\nmove = 'spread'\n",
    "other.toml": b"schema_version = 1\nstart = 'bytes.toml'\n[[moves]]\nmove = 'spread'\n",
}
SPREAD = "schema_version = 1\n[car]\nlattice_spacing_m = 0.09\n[[moves]]\nmove = 'spread'\n"
OF_THE_CAR = {
    "lattice_spacing_m = -0.05": "car.lattice_spacing_m is -0.05; use 0.02 to 0.09",
    "lattice_spacing_mm = 60": "car.lattice_spacing_mm has the unit 'mm'; give 'lattice_spacing_m'",
    "skin_thickness_m = 'thin'": "car.skin_thickness_m is the text 'thin'; give a plain number",
    "skin_thickness_m = inf": "car.skin_thickness_m is inf; use a finite number",
    "skin_thickness_m = 1e300": "car.skin_thickness_m is 1e+300; use 0.",
    f"seam = '{'x' * 4000}'": f"car.seam is '{'x' * 60}...'; use one of: 'bonded', 'mixed', 'welded'.",
    "seam = 'glued'": "car.seam is 'glued'; use one of: 'bonded', 'mixed', 'welded'",
    "seam_seed = 1.5": "car.seam_seed is a number; give a whole number instead",
    "bead_gaps = 3": "car.bead_gaps is a whole number; give a list instead",
    "bead_gaps = [{start_m = 9.0}]": "car.bead_gaps[0].start_m is 9.0; the hem runs from 0 to",
    "build = 'wooden'": "'wooden', which is not a ready build; use one of:",
    "whole_side = {occupant_lean_deg = 500}": "car.whole_side.occupant_lean_deg is 500; use 0 to 60 (",
    "wheels = 4": "car.wheels is not a field of a plan; check its spelling, or remove it",
}
OF_A_MOVE = {
    "opening_m = -0.1": "moves[0].opening_m is -0.1",
    "opening_m = 1e300": "moves[0].opening_m is 1e+300",
    "opening_m = '10 mm'": "moves[0].opening_m is the text '10 mm'; give a plain number",
    "tilt_deg = 500.0": "moves[0].tilt_deg is 500; use -90 (inboard) to 90 (outboard)",
    "tilt_deg = 'up'": "tilt_deg is 'up'; use a number of degrees",
    "tilt_rad = nan": "moves[0].tilt_rad is nan; use a finite number",
    "door = {at = 'edge', edge = 'latch'}": "moves[0].door.edge is 'latch'; use one of: 'hinge_edge'",
    "door = {at = 'roof'}": "moves[0].door.at is 'roof'; use one of: 'edge'",
    "door = {at = 'edge', edge = 'latch_edge', along_m = 40}": "moves[0].door.along_m is 40",
    "door = [1, 2]": "moves[0].door is a list; give a table instead",
    "tool = {opening_m = [-1.0, 1.0], force_n = [1e4, 1e4]}": "tool.opening_m begins at -1.0 m; use 0",
    "tool = {opening_m = [], force_n = []}": "moves[0].tool.force_n needs as many forces",
    "tool = {tip_width_m = 0}": "moves[0].tool.tip_width_m is 0.0 m; use 0.005 to 0.15 m",
}
OF_A_SCENARIO = {
    "title = 4": "title is a whole number; give text in quotes instead",
    "title = 'A'\nplans = {lip = 3}\nasks = []": "plans.lip is a whole number; give text in quotes instead",
    "title = 'A'\nplans = {lip = 'none.toml'}\nasks = [{ask = 'x'}]": "asks[0].ask is 'x'; use one of: ",
    "title = 'A'\nplans = {}\nasks = []": "plans is empty; name one plan or more",
    "title = 'A'\nplans = {}\nasks = []\nruns = 'many'": "runs is text in quotes; give a whole number",
}
OF_A_LESSON = {
    "title = 4": "title is a whole number; give text in quotes instead",
    "title = 'A'\nauthor = 'B'\nlicence = 'C'": "steps are missing; add a [[steps]] table",
    "steps = 'one'": "steps is text in quotes; give a list instead",
    "steps = [{phase = 'sing', title = 'A'}]": "steps[0].phase is 'sing'; use one of: 'check', 'open'",
}
SOLVES = ("run {} --out o", "export {} --out o", "many {} --out o", "flip {} --out o", "map {} --out o")
READS = (
    *SOLVES,
    "start {} --out s.npz",
    "contrast {} good.toml",
    "contrast good.toml {}",
    "room {} --out r.png",
)
OTHERS = (
    "scenario {} --out o",
    "figures {} --out o",
    "lesson check {}",
    "lesson solve {}",
    "lesson record {} --out r.csv",
    "lesson sheet {} --out s.pdf",
)
BAD_PLANS = [name for name in FILES if name not in ("good.toml", "crush.toml", "lost.toml", "other.toml")]


@pytest.fixture
def refused(tmp_path, monkeypatch, capsys):
    """Return a call that must be refused in one sentence and touch no file; it gives what was said."""
    monkeypatch.chdir(tmp_path)
    for name, data in FILES.items():
        (tmp_path / name).write_bytes(data)
    (tmp_path / "folder").mkdir()
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "thesis.txt").write_text("years of work")
    (tmp_path / "file").write_text("a file")

    def lie():
        return {path: path.read_bytes() if path.is_file() else None for path in tmp_path.rglob("*")}

    def call(words):
        before = lie()
        code = command.main([word if word != "''" else "" for word in words.split(" ")])
        shown = capsys.readouterr()
        assert code == command.REFUSED, words
        assert shown.err.count("\n") == 1 and shown.err.endswith(".\n"), shown.err
        for jargon in ("Errno", "Traceback", "codec", "Error:", "object has no"):
            assert jargon not in shown.err
        assert lie() == before
        return shown.err

    return call


@pytest.mark.parametrize("words", READS)
def test_a_plan_that_cannot_be_used_is_refused_by_every_word_that_takes_one(refused, words):
    for name in (*BAD_PLANS, "none.toml", "folder"):
        said = refused(words.format(name))
        assert name in said


@pytest.mark.parametrize(
    ("call", "text", "why"),
    [
        *(("run {} --out o", f"schema_version = 1\n[car]\n{x}\n", y) for x, y in OF_THE_CAR.items()),
        *(("run {} --out o", f"{SPREAD}{x}\n", y) for x, y in OF_A_MOVE.items()),
        *(("scenario {} --out o", f"schema_version = 1\n{x}\n", y) for x, y in OF_A_SCENARIO.items()),
        *(("lesson check {}", f"schema_version = 1\n{x}\n", y) for x, y in OF_A_LESSON.items()),
    ],
)
def test_a_value_that_cannot_be_is_told_with_its_field_and_the_remedy(refused, tmp_path, call, text, why):
    (tmp_path / "bad.toml").write_text(text, encoding="utf-8")
    assert why in refused(call.format("bad.toml"))


@pytest.mark.parametrize("words", SOLVES)
def test_a_start_that_is_not_there_or_is_none_is_refused_before_anything_is_solved(refused, words):
    assert "start names 'none.npz'" in refused(words.format("lost.toml"))
    assert "is not a saved start" in refused(words.format("other.toml"))


@pytest.mark.parametrize("words", OTHERS)
def test_other_files_that_cannot_be_used_are_refused(refused, words):
    for name in ("bytes.toml", "empty.toml", "not.toml", "key.toml", "newer.toml", "none.toml"):
        said = refused(words.format(name))
        assert said.count(name) == 1, said


@pytest.mark.parametrize("words", SOLVES)
@pytest.mark.parametrize(
    ("out", "why"),
    [
        ("file", "is a file; name a folder"),
        ("full", "thesis.txt"),
        ("x" * 300, "too long a name"),
    ],
)
def test_a_folder_that_cannot_be_used_is_refused_before_anything_is_solved(refused, words, out, why):
    assert why in refused(words.replace("--out o", f"--out {out}").format("good.toml"))


@pytest.mark.parametrize(
    ("words", "why"),
    [
        ("export good.toml --out o --move 0", "use 1 to 1"),
        ("export good.toml --out o --opening nan", "use metres from 0 on"),
        ("export good.toml --out o --opening inf", "use metres from 0 on"),
        ("many good.toml --out o --runs 0", "--runs 0"),
        ("many good.toml --out o --runs some", "--runs"),
        ("many good.toml --out o --workers 0", f"use 1 to {MOST_WORKERS}"),
        ("many good.toml --out o --workers 100000", f"use 1 to {MOST_WORKERS}"),
        ("flip good.toml --out o --only car.colour", "is not varied on this plan"),
        ("map crush.toml --out o", "no spread"),
        ("map good.toml --out o --other none.toml", "none.toml"),
        ("room --out r.png", "names 0 plans"),
        ("room good.toml --out r.jpg", "ending in .png"),
        ("room good.toml --out none/r.png", "folder that does not exist"),
        ("room folder --out r.png", "hemline run"),
        ("start good.toml --out s.npz", "wreck is empty"),
        ("card page.txt", "ending in .html, .htm or .md"),
        ("card none/page.html", "folder that does not exist"),
        ("check --json rows.txt", "ending in .json"),
        ("check --json none/rows.json", "folder that does not exist"),
        ("lesson check none", "does not exist"),
        ("lesson sheet 01-first-bite --out s.txt", "ending in .pdf"),
        ("lesson sheet 01-first-bite --out none/s.pdf", "folder that does not exist"),
        ("lesson sheet 01-first-bite --out s.pdf --kind poster", "bridge"),
        ("lesson sheet 01-first-bite --out s.pdf --rules none.toml", "none.toml"),
        ("lesson sheet 01-first-bite --out s.pdf --rules bytes.toml", "UTF-8"),
        ("lesson record 01-first-bite --out r.csv --seats 0", "write 1-12"),
        ("lesson record 01-first-bite --out r.csv --seats 5-1", "write 1-12"),
        ("builds now", "hemline --help"),
        ("dance", "dance"),
    ],
)
def test_an_option_that_cannot_be_is_refused(refused, words, why):
    assert why in refused(words)


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("title = 5", "title is a whole number; give text in quotes instead"),
        ("moves = 3", "moves is a whole number; give a list instead"),
        ("moves = [1]", "moves[0] is a whole number; give a table instead"),
        ("[[moves]]\nmove = 'explode'", "moves[0].move is 'explode'; use one of: 'spread'"),
        (
            "[[moves]]\nmove = 'spread'\nopening_m = true",
            "opening_m is true or false; give a number",
        ),
        ("[[moves]]\nmove = 'spread'\nstop_at = ['latch gone']", "moves[0].stop_at names 'latch gone'"),
    ],
)
def test_a_value_of_another_type_is_told_in_the_words_of_the_file(line, words):
    with pytest.raises(PlanError) as told:
        loads_plan(f"schema_version = 1\n{line}\n")
    assert words in str(told.value)


@pytest.mark.parametrize("words", ["0", "3-1", "1-201", "\N{SUPERSCRIPT TWO}", "1-", "-3", "1,,2", "a-b"])
def test_seats_that_cannot_be_are_refused(words):
    with pytest.raises(Refusal, match="write 1-12"):
        seat_numbers(words)


def test_every_command_has_a_help_and_no_switch_a_counterpart(capsys):
    """What a switch does is left undone by leaving it out; a `--no-...` beside each is only in the way."""
    names = [name for name in command.app.resolved_commands() if not name.startswith("-")]
    assert len(names) > 10
    for name in (*names, "lesson check", "lesson solve", "lesson sheet", "lesson record"):
        command.app([*name.split(), "--help"], exit_on_error=False, result_action="return_value")
        shown = " ".join(capsys.readouterr().out.split())
        assert f"Usage: hemline {name}" in shown, name
        assert "--no-" not in shown and "--empty-" not in shown, name


@pytest.mark.parametrize(
    ("error", "code", "words"),
    [
        (BrokenPipeError(errno.EPIPE, "Broken pipe"), 0, ""),
        (OSError(errno.ENOSPC, "No space"), 2, "what it says: the disk is full"),
        (PermissionError(errno.EACCES, "Permission denied", "/a/file"), 2, "/a/file: may not be used by you"),
    ],
)
def test_words_that_nobody_can_take_are_no_fault_of_the_program(monkeypatch, capsys, error, code, words):
    def break_off():
        raise error

    monkeypatch.setattr("sim.twins.builds_told", break_off)
    assert command.main(["builds"]) == code
    said = capsys.readouterr().err
    assert words in said and said.count("\n") == bool(words)
