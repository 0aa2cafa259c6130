"""Check Hemline on a machine that has nothing but Python.

    python3 tests/run.py                    every gate, then every test
    python3 tests/run.py tests/sim -k seam  only these tests, no gates (arguments as pytest takes them)
    python3 tests/run.py --whole            the same, with the evidence that takes minutes more
    python3 tests/run.py --yes ...          install missing system packages without asking

The tests run in two rounds: mechanics, geometry and the window's state where Qt and VTK cannot be imported,
and all the rest with a screen. Where all tests are asked for both run at once, the first in the background of
the second, whose tests often wait for a window. Each round shares its files among workers, every one with a
screen of its own; a test in which a worker dies counts as failed, and the rest goes on (tests/spreading.py).
"""

# First of all, this script's own folder leaves the path: tests/sim would hide the package sim.
import sys

sys.path[0 : 0 if getattr(sys.flags, "safe_path", False) else 1] = [
    (__file__.replace("\\", "/").rpartition("/")[0] or ".") + "/.."
]

if sys.version_info < (3, 11):
    sys.exit(
        "Hemline's tests need Python 3.11 or newer; this is Python %d.%d. "
        "Install a newer Python and start this file with it." % sys.version_info[:2]
    )

import os
import shutil
import subprocess
import tempfile
import time
import xml.etree.ElementTree as ElementTree

from ui import environment

EXTRAS = ("test", "dev")
WITHOUT_GRAPHICS = ("tests/meshes", "tests/sim", "tests/ui/state")
NO_TESTS_FOUND = 5
WHOLE = "--whole"
# Options of pytest whose value could be mistaken for a path: -k sim.
WITH_VALUE = ("-k", "-m", "-p", "-o", "-W", "-c", "-r")


BLOCKED = ["-p", "no:pytest-qt", "-p", "no:xvfb"]
SLOWEST = ["--durations=30", "--durations-min=5"]
# A door and its runs take half a gigabyte in each worker.
MOST_WORKERS = 4
# How far the tests without a screen stand back while those with one run.
BEHIND = "5"


class Result:
    """One finished check: its name, its exit code, its seconds and, for tests, its counts."""

    def __init__(self, name, code, seconds, counts=None):
        self.name = name
        self.code = code
        self.seconds = seconds
        self.counts = counts or {}

    def line(self):
        """Return the check's line in the summary."""
        word = "passed" if self.code == 0 else "FAILED"
        if self.code == NO_TESTS_FOUND and self.counts:
            word = "no tests"
        counts = ", ".join("%d %s" % (number, what) for what, number in self.counts.items() if number)
        return "  %-28s %-9s %6.1f s  %s" % (self.name, word, self.seconds, counts)


def gates():
    """Return the linters' commands by name."""
    python = str(environment.PYTHON)
    linter = str(environment.SCRIPTS / ("lint-imports.exe" if os.name == "nt" else "lint-imports"))
    return {
        "ruff check": [python, "-P", "-m", "ruff", "check", "."],
        "ruff format": [python, "-P", "-m", "ruff", "format", "--check", "--output-format", "concise", "."],
        "mypy": [python, "-P", "-m", "mypy"],
        "import contracts": [linter],
    }


def begin_compiling():
    """Start compiling the mechanics beside the linters, which use one core: no worker has to do it then."""
    command = [str(environment.PYTHON), "-m", "sim.warm"]
    return subprocess.Popen(command, env=environment.clean_variables(screen=False), cwd=str(environment.ROOT))


def run_gate(name, command):
    """Return the result of one linter."""
    environment.say("\n== " + name)
    began = time.monotonic()
    code = subprocess.call(command, env=environment.clean_variables(screen=False), cwd=str(environment.ROOT))
    return Result(name, code, time.monotonic() - began)


def split(arguments):
    """Return the paths for the process without graphics, those for the other, and the remaining arguments."""
    without, others, options = [], [], []
    for before, word in zip([""] + arguments, arguments):
        path = word.partition("::")[0]
        where = os.path.abspath(path)
        if word.startswith("-") or before in WITH_VALUE or not os.path.exists(where):
            options.append(word)
            continue
        inside = os.path.relpath(where, str(environment.ROOT)).replace(os.sep, "/") + "/"
        pure = any(inside.startswith(folder + "/") for folder in WITHOUT_GRAPHICS)
        (without if pure else others).append(where + word[len(path) :])
        if not pure:
            without.extend(folder for folder in present() if folder.startswith(inside))
    return without, others, options


def present():
    """Return the folders of tests without graphics that exist."""
    return [folder for folder in WITHOUT_GRAPHICS if (environment.ROOT / folder).is_dir()]


def everything(arguments):
    """Tell whether all tests are asked for, with or without what is evidence only."""
    return all(word == WHOLE for word in arguments)


def spread(workers):
    """Return pytest's arguments for sharing the tests among some workers: see tests/spreading.py."""
    # One worker is of use too: a test in which the process dies is then one that failed.
    return ["-n", str(max(1, min(workers, MOST_WORKERS))), "--dist", "loadgroup", "--no-loadscope-reorder"]


def test_runs(arguments):
    """Return the pytest arguments of each process by name, for these arguments or for all tests."""
    without, others, options = split(arguments)
    runs = {}
    every, cores = everything(arguments), os.cpu_count() or 1
    if without or (present() and not others):
        shared = spread(cores) if every else []
        runs["tests without Qt and VTK"] = BLOCKED + shared + (without or present()) + options
    if others or not without:
        shared = spread(cores // 2) if every else []
        left_out = ["--ignore=" + folder for folder in WITHOUT_GRAPHICS]
        runs["tests with a screen"] = shared + left_out + (others or ["tests"]) + options
    return runs


class Round:
    """One pytest process under way; ``beside``, another one runs at the same time."""

    def __init__(self, name, arguments, beside=False):
        self.name = name
        # tests/conftest.py reads this one and puts the import hook in place.
        without = arguments[: len(BLOCKED)] == BLOCKED
        variables = environment.clean_variables(screen=True)
        # The tests bring their own screen, whatever this machine draws on.
        if sys.platform.startswith("linux"):
            variables["QT_QPA_PLATFORM"] = "xcb"
        variables["HEMLINE_TESTS_WITHOUT_GRAPHICS"] = "1" if without else ""
        if not without:
            # Memory given back is filled with rubbish: what is used after it is seen (glibc only).
            variables.setdefault("MALLOC_PERTURB_", "165")
        self.folder = tempfile.TemporaryDirectory()
        self.report = os.path.join(self.folder.name, "report.xml")
        # Two at once would mix their words: the second one's come when it has ended.
        self.words = None
        if beside and not without:
            self.words = open(os.path.join(self.folder.name, "words"), "w+")  # noqa: SIM115 - read at the end
        else:
            environment.say("\n== " + name)
        command = [str(environment.PYTHON), "-P", "-m", "pytest"]
        if beside and without and shutil.which("nice"):
            # Tests with a screen wait for windows: they go first, and the others take what is left.
            command = ["nice", "-n", BEHIND] + command
        asked = ["--junitxml=" + self.report] + SLOWEST + arguments
        self.began = time.monotonic()
        self.process = subprocess.Popen(
            command + asked,
            env=variables,
            cwd=str(environment.ROOT),
            stdout=self.words,
            stderr=None if self.words is None else subprocess.STDOUT,
        )
        self.seconds = 0.0

    def ended(self):
        """Tell whether the process has ended, and remember how long it took."""
        code = self.process.poll()
        if code is not None and not self.seconds:
            self.seconds = time.monotonic() - self.began
        return code is not None

    def result(self):
        """Return the result of the ended process, with its counts taken from its own report."""
        if self.words is not None:
            environment.say("\n== " + self.name)
            self.words.seek(0)
            environment.say(self.words.read())
            self.words.close()
        counts = read_counts(self.report)
        self.folder.cleanup()
        return Result(self.name, self.process.returncode, self.seconds, counts)


def run_tests(runs, at_once):
    """Return the results of the pytest processes, one after the other or all at the same time."""
    if not at_once:
        return [result for name in runs for result in run_tests({name: runs[name]}, True)]
    rounds = [Round(name, runs[name], beside=len(runs) > 1) for name in runs]
    while sum(one.ended() for one in rounds) < len(rounds):
        time.sleep(0.1)
    return [one.result() for one in rounds]


def read_counts(report):
    """Return the counts of a JUnit report; nothing when the process died before writing it."""
    try:
        suite = ElementTree.parse(report).getroot().find("testsuite")
    except (OSError, ElementTree.ParseError):
        return {"failed": 1}
    tests, failures, errors, skipped = (
        int(suite.get(key, "0")) for key in ("tests", "failures", "errors", "skipped")
    )
    return {"passed": tests - failures - errors - skipped, "failed": failures + errors, "skipped": skipped}


def summary(results):
    """Return the exit code, after the closing words."""
    total = dict.fromkeys(("passed", "failed", "skipped"), 0)
    for result in results:
        for what, number in result.counts.items():
            total[what] += number
    ran = total["passed"] + total["failed"] > 0
    # No test found in one of the two processes is no fault while the other has some: -k may mean just those.
    bad = [r for r in results if r.code and not (r.code == NO_TESTS_FOUND and r.counts and ran)]
    environment.say("\n== Summary")
    for result in results:
        environment.say(result.line())
    environment.say("\nFailed: " + ", ".join(r.name for r in bad) if bad else "\nAll checks passed.")
    environment.say("%(passed)d passed, %(failed)d failed, %(skipped)d skipped" % total)
    return 1 if bad or not ran else 0


def main(arguments):
    """Return the exit code: 0 when every check passed, 1 when one failed (2: they could not start)."""
    assume_yes = "--yes" in arguments
    arguments = [word for word in arguments if word != "--yes"]
    needs = environment.HEADLESS + environment.WINDOW + environment.TESTING
    every = everything(arguments)
    environment.prepare(EXTRAS, needs, assume_yes=assume_yes, compiled=not every)
    results = []
    if every:
        compiling = begin_compiling()
        results = [run_gate(name, command) for name, command in gates().items()]
        compiling.wait()  # a fault of it is one of the tests' too
    return summary(results + run_tests(test_runs(arguments), at_once=every))


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except environment.StartError as problem:
        sys.stderr.write("\n" + str(problem) + "\n")
        sys.exit(2)
    except KeyboardInterrupt:
        sys.exit("\nStopped.")
