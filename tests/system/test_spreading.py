"""Tests shared among workers: a file stays together, and a worker that dies costs one test."""

import shutil
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path
from types import SimpleNamespace
from unittest.mock import Mock

import pytest

from tests.spreading import Sharing

TESTS = Path(__file__).resolve().parents[1]
DIES = """
import ctypes, os, signal

def test_before():
    pass

def test_reads_where_nothing_is():
    ctypes.string_at(0)

def test_after():
    pass
"""
IS_KILLED = """
import os, signal

def test_one():
    pass

def test_is_killed():
    os.kill(os.getpid(), signal.SIGKILL)
"""
TOGETHER = """
import os

import pytest

SEEN = []

@pytest.mark.parametrize("number", range(6))
def test_in_one_worker(number):
    SEEN.append(number)
    assert SEEN == list(range(number + 1))
"""


@pytest.fixture(scope="module")
def report(tmp_path_factory):
    """Return exit code and report of three small files, run by two workers under this project's rules."""
    folder = tmp_path_factory.mktemp("shared")
    (folder / "tests").mkdir()
    for name in ("conftest.py", "spreading.py", "leftovers.py"):
        shutil.copy(TESTS / name, folder / "tests")
    for name, text in {"dies": DIES, "is_killed": IS_KILLED, "together": TOGETHER}.items():
        (folder / "tests" / f"test_{name}.py").write_text(text)
    command = [sys.executable, "-P", "-m", "pytest", "-p", "no:pytest-qt", "-p", "no:xvfb"]
    command += [
        "-p",
        "no:cacheprovider",
        "-n",
        "2",
        "--dist",
        "loadgroup",
        "--no-loadscope-reorder",
        "--junitxml=report.xml",
        "tests",
    ]
    done = subprocess.run(command, cwd=folder, capture_output=True, text=True, check=False, timeout=120)
    suite = ElementTree.parse(folder / "report.xml").getroot().find("testsuite")
    return done, suite


def test_each_death_is_one_failed_test_and_every_other_test_is_run_once(report):
    done, suite = report
    assert done.returncode == 1
    # a report tells a death as an error
    assert (suite.get("tests"), suite.get("failures"), suite.get("errors")) == ("11", "0", "2"), done.stdout


def test_the_trace_stands_under_the_test(report):
    told = "\n".join(error.text for error in report[1].iter("error"))
    assert "crashed while running 'tests/test_dies.py::test_reads_where_nothing_is'" in told
    assert 'test_dies.py", line 8 in test_reads_where_nothing_is' in told
    assert "It left no trace" in told


def test_a_worker_that_stands_in_gets_no_work_before_it_has_told_what_it_found():
    sharing = Sharing(SimpleNamespace(getvalue=lambda _: ["popen"]), None)
    sharing.workqueue["a file"] = {"a test": False}
    stand_in = Mock(shutting_down=False)
    sharing.add_node(stand_in)
    sharing._reschedule(stand_in)
    assert sharing.workqueue == {"a file": {"a test": False}}
    stand_in.send_runtest_some.assert_not_called()
