"""The two commands on a bare machine: what they say, what they need, and when they begin anew."""

from __future__ import annotations

import ast
import importlib.util
import os
import re
import resource
import shutil
import socket
import subprocess
import sys
from pathlib import Path

import pytest

from ui import environment
from ui.environment import Need, StartError

ROOT = Path(__file__).resolve().parents[2]
SCRIPTS = ("ui/start.py", "tests/run.py")
NOWHERE = Need("libhemline-nowhere.so.9", "libnowhere9")
LINUX_ONLY = pytest.mark.skipif(
    not sys.platform.startswith("linux"), reason="the check is made on Linux only"
)


def old_pythons() -> list[str]:
    """Return the interpreters older than 3.11 on this machine, by the usual names and in the usual place."""
    names = ["python2.7", *(f"python3.{minor}" for minor in range(4, 11))]
    found = [path for name in names if (path := shutil.which(name))]
    found += map(str, sorted((Path.home() / ".pyenv" / "versions").glob("[23].*/bin/python")))
    asked = "import sys; sys.stdout.write('%d' % (sys.version_info < (3, 11)))"
    # Asked, because a name on the path may be a switch that starts nothing.
    answers = [subprocess.run([path, "-c", asked], capture_output=True, check=False).stdout for path in found]
    return [path for path, answer in zip(found, answers, strict=True) if answer == b"1"]


@pytest.fixture
def place(tmp_path: Path) -> Path:
    """Return a copy of the bootstrap beside a pretended environment whose program tells how it was called."""
    root = tmp_path / "a place"
    for name in ("pyproject.toml", "ui/__init__.py", "ui/environment.py", *SCRIPTS):
        target = root / name
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / name, target)
    scripts = root / ".venv" / "bin"
    scripts.mkdir(parents=True)
    (scripts / "python").touch()
    (scripts / "hemline").write_text(
        '#!/bin/sh\necho "called with: $*"\necho "Qt: $QT_QPA_PLATFORM VTK: $VTK_DEFAULT_OPENGL_WINDOW"\n'
    )
    (scripts / "hemline").chmod(0o755)
    environment.write_mark(
        environment.ready_key(root.resolve(), sys.version), (), root / ".venv" / "ready.json"
    )
    return root


def start(root: Path, *words: str, **variables: str) -> subprocess.CompletedProcess[str]:
    """Return the finished ``ui/start.py`` of this root, run with nothing but these variables."""
    command = [sys.executable, str(root / "ui" / "start.py"), *words]
    clean = {"PATH": os.environ["PATH"], **variables}
    return subprocess.run(command, env=clean, capture_output=True, text=True, check=False, timeout=60)


class TestAnOldPython:
    """It reads no further than the check of its own age."""

    @pytest.mark.parametrize("script", SCRIPTS)
    def test_gets_a_sentence(self, script):
        pythons = old_pythons()
        if not pythons:
            pytest.skip(
                "no Python older than 3.11 on this machine; the next test looks at the syntax instead"
            )
        for python in pythons:
            done = subprocess.run([python, str(ROOT / script)], capture_output=True, text=True, check=False)
            assert done.returncode == 1, python
            assert done.stdout == "", python
            assert done.stderr.count("\n") == 1, done.stderr
            assert "needs Python 3.11 or newer" in done.stderr or "need Python 3.11 or newer" in done.stderr

    @pytest.mark.parametrize("script", SCRIPTS)
    def test_can_read_the_file(self, script):
        """No syntax younger than Python 2.7 (its language reference; the list is from memory)."""
        source = (ROOT / script).read_text(encoding="utf-8")
        assert source.isascii(), "Python 2 refuses other letters without a coding line"
        young = (
            ast.JoinedStr, ast.AnnAssign, ast.NamedExpr, ast.Nonlocal, ast.AsyncFunctionDef, ast.Await,
            ast.YieldFrom, ast.Match, ast.TryStar, ast.MatMult,
        )  # fmt: skip
        for node in ast.walk(ast.parse(source)):
            assert not isinstance(node, young), ast.dump(node)
            if isinstance(node, ast.FunctionDef):
                arguments = node.args
                assert not arguments.kwonlyargs, node.name
                assert not arguments.posonlyargs, node.name
                assert node.returns is None, node.name
                assert all(argument.annotation is None for argument in arguments.args), node.name
            if isinstance(node, ast.Raise):
                assert node.cause is None, ast.dump(node)
            if isinstance(node, ast.List | ast.Tuple | ast.Set) and isinstance(node.ctx, ast.Load):
                assert not any(isinstance(item, ast.Starred) for item in node.elts), ast.dump(node)

    @pytest.mark.parametrize("script", SCRIPTS)
    def test_meets_the_path_then_the_check_then_the_imports(self, script):
        body = ast.parse((ROOT / script).read_text(encoding="utf-8")).body
        docstring, first, path, check = body[:4]
        assert isinstance(docstring, ast.Expr)
        assert ast.unparse(first) == "import sys"
        assert ast.unparse(path).startswith("sys.path[0:")
        assert ast.unparse(check).startswith("if sys.version_info < (3, 11):")


@LINUX_ONLY
class TestStart:
    """``python3 ui/start.py`` where the environment stands already."""

    def test_draws_the_demo_where_no_screen_answers(self, place):
        done = start(place)
        assert done.returncode == 0, done.stderr
        root = place.resolve()
        out = root / "out" / "edge-at-latch"
        assert f"called with: run {root}/assets/plans/edge-at-latch.toml --out {out}\n" in done.stdout
        assert "Qt: offscreen VTK: vtkEGLRenderWindow" in done.stdout
        assert done.stdout.strip().endswith(f"in {out}")

    def test_takes_a_dead_screen_for_none(self, place):
        assert "called with: run " in start(place, DISPLAY=":987").stdout

    def test_opens_the_window_where_a_screen_answers(self, place):
        with socket.socket(socket.AF_UNIX, socket.SOCK_STREAM) as screen:
            screen.bind("\0/tmp/.X11-unix/X4711")
            screen.listen(5)
            done = start(place, DISPLAY=":4711.0")
        assert done.stdout == "called with: \nQt: xcb VTK: \n", done.stderr

    def test_passes_arguments_on_and_keeps_yes(self, place):
        done = start(place, "--yes", "run", "my plan.toml", "--out", "there")
        assert done.stdout.startswith("called with: run my plan.toml --out there\n"), done.stderr

    def test_fails_when_the_demo_fails(self, place):
        (place / ".venv" / "bin" / "hemline").write_text("#!/bin/sh\nexit 3\n")
        done = start(place)
        assert done.returncode == 3
        assert "pictures and the results" not in done.stdout

    def test_is_not_misled_by_a_file_named_like_one_of_pythons(self, place):
        for name in ("json", "subprocess", "fnmatch", "socket"):
            (place / "ui" / f"{name}.py").write_text("raise SystemExit('shadowed')\n")
        done = start(place)
        assert done.returncode == 0, done.stderr

    def test_drops_another_pythons_variables(self, place, tmp_path):
        (tmp_path / "json.py").write_text("raise SystemExit('shadowed')\n")
        script = place / ".venv" / "bin" / "hemline"
        script.write_text('#!/bin/sh\necho "[$PYTHONPATH$PYTHONHOME]"\n')
        done = start(place, "anything", PYTHONPATH=str(tmp_path / "none"))
        assert done.stdout == "[]\n", done.stderr

    def test_is_quick(self, place):
        """Own work under 0.1 s of processor time; measured 0.03 s."""

        def seconds(*command: str) -> float:
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            subprocess.run(command, env={"PATH": os.environ["PATH"]}, capture_output=True, check=True)
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
            return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime

        script = str(place / "ui" / "start.py")
        seconds(sys.executable, script, "x")  # writes the bytecode
        bare = min(seconds(sys.executable, "-c", "pass") for _ in range(4))
        whole = min(seconds(sys.executable, script, "x") for _ in range(4))
        assert whole - bare < 0.1


class TestTheSystemsLibraries:
    """Looked for before Qt or VTK are imported, which would crash without them."""

    def test_the_linkers_list_is_read(self):
        listing = (
            "2 libs found in cache `/etc/ld.so.cache'\n"
            "\tlibGL.so.1 (libc6,x86-64) => /lib/x86_64-linux-gnu/libGL.so.1\n"
            "\tlibEGL.so.1 (libc6,x86-64) => /lib/x86_64-linux-gnu/libEGL.so.1\n"
        )
        assert environment.linker_names(listing) == {"libGL.so.1", "libEGL.so.1"}

    @LINUX_ONLY
    def test_only_the_absent_ones_are_missing(self):
        here = (*environment.HEADLESS, *environment.WINDOW, *environment.TESTING)
        assert environment.missing_needs((*here, NOWHERE)) == (NOWHERE,)

    @LINUX_ONLY
    def test_a_library_outside_the_linkers_list_counts_when_it_loads(self):
        assert environment.missing_needs(environment.HEADLESS, known=frozenset()) == ()

    @pytest.mark.parametrize("need", [*environment.HEADLESS, *environment.WINDOW], ids=lambda need: need.name)
    def test_debian_agrees_on_the_package(self, need):
        """Against the distribution's own file lists (dpkg); since 2024 some names end in t64."""
        if shutil.which("dpkg") is None:
            pytest.skip("not a Debian: nobody to ask")
        answer = subprocess.run(
            ["dpkg", "-S", f"*/{need.name}"], capture_output=True, text=True, check=True
        ).stdout
        assert need.package in {line.split(":")[0].removesuffix("t64") for line in answer.splitlines()}

    def test_a_missing_environment_maker_is_a_package_too(self, monkeypatch):
        monkeypatch.setattr(importlib.util, "find_spec", lambda _name: None)
        major, minor = sys.version_info[:2]
        assert [need.package for need in environment.missing_venv()] == [f"python{major}.{minor}-venv"]


class TestProvide:
    """Install where it may, else say the one line that does it."""

    @pytest.fixture
    def apt(self, monkeypatch):
        """Record the package manager's calls in place of making them; it installs nothing and says it did."""
        calls = []

        def run(command, **_options):
            calls.append(command)
            return subprocess.CompletedProcess(command, 0, stdout="")

        monkeypatch.setattr(subprocess, "run", run)
        monkeypatch.setattr(shutil, "which", lambda name, **_options: f"/usr/bin/{name}")
        monkeypatch.setattr(environment, "is_root", lambda: True)
        return calls

    def test_not_root_prints_the_one_line(self, apt, monkeypatch):
        monkeypatch.setattr(environment, "is_root", lambda: False)
        with pytest.raises(StartError) as told:
            environment.provide((NOWHERE,), assume_yes=True)
        assert NOWHERE.name in str(told.value)
        assert "\n    sudo apt-get update && sudo apt-get install -y libnowhere9\n" in str(told.value)
        assert apt == []

    def test_without_apt_the_libraries_are_named(self, apt, monkeypatch):
        monkeypatch.setattr(shutil, "which", lambda _name, **_options: None)
        with pytest.raises(StartError, match=r"libhemline-nowhere\.so\.9"):
            environment.provide((NOWHERE,), assume_yes=True)
        assert apt == []

    def test_root_with_no_terminal_goes_on(self, apt, monkeypatch):
        monkeypatch.setattr(sys, "stdin", None)
        environment.provide((NOWHERE, NOWHERE), assume_yes=False)
        assert apt == [
            ["apt-get", "update"],
            ["apt-get", "install", "-y", "--no-install-recommends", "libnowhere9"],
        ]

    @pytest.mark.parametrize(("answer", "call_count"), [("", 2), ("y", 2), ("n", 0), ("what?", 0)])
    def test_root_at_a_terminal_is_asked(self, apt, monkeypatch, answer, call_count):
        class Terminal:
            def isatty(self):
                return True

        monkeypatch.setattr(sys, "stdin", Terminal())
        monkeypatch.setattr("builtins.input", lambda _question: answer)
        if call_count:
            environment.provide((NOWHERE,), assume_yes=False)
        else:
            with pytest.raises(StartError, match="Nothing was installed"):
                environment.provide((NOWHERE,), assume_yes=False)
        assert len(apt) == call_count

    def test_a_failing_apt_is_told_with_the_line(self, apt, monkeypatch):
        monkeypatch.setattr(subprocess, "run", lambda command, **_: subprocess.CompletedProcess(command, 100))
        with pytest.raises(StartError, match="apt-get update failed") as told:
            environment.provide((NOWHERE,), assume_yes=True)
        assert "    apt-get update && apt-get install -y libnowhere9" in str(told.value)

    @LINUX_ONLY
    def test_what_is_still_missing_afterwards_is_told(self, apt, monkeypatch):
        monkeypatch.setattr(environment, "HEADLESS", (NOWHERE,))
        with pytest.raises(StartError, match="Still missing after the installation: libhemline-nowhere"):
            environment.provide((NOWHERE,), assume_yes=True)


class TestTheReadyMark:
    """Written last, and worth nothing once anything that the environment was made from has changed."""

    def test_the_key_holds_the_packages_the_python_and_the_folder(self, tmp_path):
        first, second = tmp_path / "first", tmp_path / "second"
        for root in (first, second):
            root.mkdir()
            (root / "pyproject.toml").write_text("[project]\n")
        key = environment.ready_key(first, "3.11.2")
        assert key == environment.ready_key(first, "3.11.2")
        assert key != environment.ready_key(first, "3.12.1")
        assert key != environment.ready_key(second, "3.11.2")
        (first / "pyproject.toml").write_text("[project] \n")
        assert key != environment.ready_key(first, "3.11.2")

    def test_it_must_be_whole_and_hold_the_extras(self, tmp_path):
        mark, python = tmp_path / "ready.json", tmp_path / "python"
        python.touch()

        def ready(*extras: str, key: str = "k") -> bool:
            return environment.is_ready(extras, key=key, mark=mark, python=python)

        assert not ready()
        environment.write_mark("k", ("test",), mark)
        assert ready()
        assert ready("test")
        assert not ready("test", "dev")
        assert not ready(key="other")
        python.unlink()
        assert not ready()
        python.touch()
        mark.write_text(mark.read_text()[:-3])
        assert not ready()

    @pytest.fixture
    def workshop(self, tmp_path, monkeypatch):
        """Point the bootstrap at an empty folder; record its steps, and fail those that hold a given word."""
        venv = tmp_path / ".venv"
        venv.mkdir()
        monkeypatch.setattr(environment, "ROOT", tmp_path)
        monkeypatch.setattr(environment, "VENV", venv)
        monkeypatch.setattr(environment, "MARK", venv / "ready.json")
        steps: list[list[str]] = []
        failing: set[str] = set()

        def run(command, **_options):
            assert not environment.MARK.exists(), (
                "the mark must fall before the first step and come after the last"
            )
            steps.append(command)
            return subprocess.CompletedProcess(command, int(bool(failing.intersection(command))))

        monkeypatch.setattr(subprocess, "run", run)
        return steps, failing

    def test_without_a_mark_the_folder_is_cleared(self, workshop, tmp_path):
        steps, _ = workshop
        environment.build(("test",), key="k")
        assert steps[0] == [sys.executable, "-m", "venv", "--clear", str(environment.VENV)]
        assert steps[1][-2:] == ["--editable", f"{tmp_path}[test]"]
        assert environment.read_mark(environment.MARK) == ("k", {"test"})

    def test_more_extras_are_added_without_clearing(self, workshop, tmp_path):
        steps, _ = workshop
        environment.write_mark("k", ("video",), environment.MARK)
        environment.build(("test", "dev"), key="k")
        assert not any("venv" in step for step in steps)
        assert steps[0][-1] == f"{tmp_path}[dev,test,video]"
        assert environment.read_mark(environment.MARK) == ("k", {"dev", "test", "video"})

    def test_a_changed_key_begins_anew(self, workshop, tmp_path):
        steps, _ = workshop
        environment.write_mark("old", ("test",), environment.MARK)
        environment.build((), key="k")
        assert "--clear" in steps[0]
        assert steps[1][-1] == str(tmp_path)

    @pytest.mark.parametrize("word", ["venv", "pip"])
    def test_a_failed_step_leaves_no_mark(self, workshop, word):
        _, failing = workshop
        environment.write_mark("old", (), environment.MARK)
        failing.add(word)
        with pytest.raises(StartError):
            environment.build((), key="k")
        assert not environment.MARK.exists()

    def test_kernels_are_compiled_once_they_exist(self, workshop, tmp_path):
        steps, failing = workshop
        environment.build((), key="k")
        assert not any("sim.warm" in step for step in steps)
        (tmp_path / "sim").mkdir()
        (tmp_path / "sim" / "warm.py").touch()
        failing.add("sim.warm")
        environment.build((), key="another")
        assert any("sim.warm" in step for step in steps)
        assert environment.MARK.exists(), "a failed warm-up costs seconds later and nothing else"

    def test_kernels_are_left_to_who_compiles_them_beside_something_else(self, workshop, tmp_path):
        steps, _ = workshop
        (tmp_path / "sim").mkdir()
        (tmp_path / "sim" / "warm.py").touch()
        environment.build((), key="k", compiled=False)
        assert not any("sim.warm" in step for step in steps)

    def test_a_folder_that_cannot_be_written_is_told(self, tmp_path):
        with (
            pytest.raises(StartError, match="cannot be written"),
            environment.alone(tmp_path / "absent" / ".venv.lock"),
        ):
            pytest.fail("the lock was taken in a folder that is not there")


class TestTheTestRunner:
    """Which process runs which tests, and when the whole counts as failed."""

    @pytest.fixture
    def runner(self, monkeypatch, tmp_path):
        """Return the runner as a module, looking at a tree that has every kind of test folder."""
        monkeypatch.setattr(sys, "path", list(sys.path))
        spec = importlib.util.spec_from_file_location("hemline_test_runner", ROOT / "tests" / "run.py")
        module = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(module)
        for folder in (*module.WITHOUT_GRAPHICS, "tests/system", "sim"):
            (tmp_path / folder).mkdir(parents=True)
        (tmp_path / "tests" / "system" / "test_one.py").touch()
        monkeypatch.setattr(environment, "ROOT", tmp_path)
        monkeypatch.chdir(tmp_path)
        return module

    def test_by_default_both_processes_run_and_share_no_test(self, runner):
        blocked, screen = runner.test_runs([]).values()
        assert blocked[: len(runner.BLOCKED)] == runner.BLOCKED
        assert blocked[-3:] == ["tests/meshes", "tests/sim", "tests/ui/state"]
        shared = blocked[len(runner.BLOCKED) : -3]
        cores = os.cpu_count() or 1
        assert shared == runner.spread(cores)
        left_out = [f"--ignore={folder}" for folder in runner.WITHOUT_GRAPHICS]
        # both at once: those with a screen wait half of their time
        assert screen == [*runner.spread(cores // 2), *left_out, "tests"]

    def test_all_tests_are_shared_among_the_cores_and_a_selection_is_not(self, runner):
        assert runner.spread(0)[:2] == runner.spread(1)[:2] == ["-n", "1"]
        assert runner.spread(2) == ["-n", "2", "--dist", "loadgroup", "--no-loadscope-reorder"]
        assert runner.spread(64)[1] == str(runner.MOST_WORKERS)
        (selected,) = runner.test_runs(["tests/meshes"]).values()
        assert "-n" not in selected

    def test_a_path_goes_to_its_own_process(self, runner):
        (name,) = runner.test_runs(["tests/sim", "-x"])
        assert name == "tests without Qt and VTK"
        (name,) = runner.test_runs(["tests/system/test_one.py::TestStart", "-q"])
        assert name == "tests with a screen"

    def test_a_folder_above_goes_to_both(self, runner):
        runs = runner.test_runs(["tests"])
        assert len(runs) == 2
        words = runs["tests without Qt and VTK"]
        assert words[len(runner.BLOCKED) :] == ["tests/meshes", "tests/sim", "tests/ui/state"]

    def test_the_folder_of_the_window_brings_its_state_along(self, runner):
        runs = runner.test_runs(["tests/ui"])
        assert runs["tests without Qt and VTK"][len(runner.BLOCKED) :] == ["tests/ui/state"]
        assert runs["tests with a screen"][-1].endswith("tests/ui")

    def test_the_value_of_an_option_is_no_path(self, runner):
        _, screen = runner.test_runs(["-k", "sim"]).values()
        assert screen[-2:] == ["-k", "sim"]

    @pytest.mark.parametrize("at_once", [False, True])
    def test_each_process_is_counted_and_none_mixes_its_words_into_another_s(
        self, runner, capfd, monkeypatch, at_once
    ):
        monkeypatch.setattr(environment, "PYTHON", sys.executable)
        (environment.ROOT / "tests" / "meshes" / "test_pure.py").write_text(
            "import os\ndef test_is_pure():\n    assert os.environ['HEMLINE_TESTS_WITHOUT_GRAPHICS']\n"
        )
        (environment.ROOT / "tests" / "system" / "test_one.py").write_text(
            "import os\ndef test_fails():\n    assert os.environ['HEMLINE_TESTS_WITHOUT_GRAPHICS']\n"
        )
        plain = ["-p", "no:cacheprovider", "-p", "no:xvfb", "-p", "no:pytest-qt"]
        runs = {"one": [*runner.BLOCKED, "tests/meshes"], "two": [*plain, "tests/system"]}
        one, two = runner.run_tests(runs, at_once=at_once)
        assert (one.name, one.code, one.counts) == ("one", 0, {"passed": 1, "failed": 0, "skipped": 0})
        assert (two.name, two.code, two.counts) == ("two", 1, {"passed": 0, "failed": 1, "skipped": 0})
        assert min(one.seconds, two.seconds) > 0.0
        first, second = capfd.readouterr().out.split("\n== two")
        assert first.startswith("\n== one") and "1 passed" in first and "1 failed" in second

    def test_the_exit_code_says_what_happened(self, runner, capsys):
        def code(*results) -> int:
            return runner.summary([runner.Result("n", number, 0.1, counts) for number, counts in results])

        some, none = {"passed": 3, "failed": 0, "skipped": 1}, {"passed": 0, "failed": 0, "skipped": 0}
        assert code((0, {}), (0, some)) == 0
        assert capsys.readouterr().out.endswith("\n3 passed, 0 failed, 1 skipped\n")
        assert code((1, {}), (0, some)) == 1
        assert code((0, some), (runner.NO_TESTS_FOUND, none)) == 0
        assert code((runner.NO_TESTS_FOUND, none), (runner.NO_TESTS_FOUND, none)) == 1
        assert code((0, some), (1, {"passed": 2, "failed": 1, "skipped": 0})) == 1
        assert code((0, some), (-11, runner.read_counts("no such report"))) == 1


class TestContinuousIntegration:
    """The script that checks a fresh clone on a bare Debian."""

    def test_it_is_whole_and_executable(self):
        script = ROOT / ".ci" / "run"
        assert os.access(script, os.X_OK)
        subprocess.run(["bash", "-n", str(script)], check=True)
        assert script.read_text().rstrip().endswith("python3 tests/run.py --yes")

    def test_packages_made_beforehand_are_those_the_tests_ask_for(self):
        asked = ast.literal_eval(re.search(r"^EXTRAS = (.*)$", (ROOT / "tests/run.py").read_text(), re.M)[1])
        assert f"python3 -m ui.environment {' '.join(asked)} &\n" in (ROOT / ".ci" / "run").read_text()

    def test_its_package_list_comes_from_the_bootstrap(self):
        command = [sys.executable, "-m", "ui.environment"]
        printed = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout.split()
        assert {"libegl1", "libxcb-cursor0", "xvfb"} <= set(printed)
        assert len(printed) == len(set(printed))
