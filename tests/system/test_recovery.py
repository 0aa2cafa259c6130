"""A window is killed in the middle of the work and opened again: everything stands as it stood."""

import json
import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

pytest.importorskip("PySide6")

pytestmark = [pytest.mark.gl, pytest.mark.timeout(400)]

CHILD = Path(__file__).with_name("sitting_child.py")
ROOT = CHILD.parents[2]
BACK_S = 10.0
"""Processor time until all is there again: the clock on the wall hangs on what else the machine does."""


def started(what: str, folder: Path) -> subprocess.Popen:
    """Start a window in a process of its own."""
    variables = os.environ | {"PYTHONPATH": str(ROOT)}
    return subprocess.Popen(
        [sys.executable, str(CHILD), what, str(folder)], stdout=subprocess.PIPE, text=True, env=variables
    )


def killed_at_work(folder: Path, what: str = "work") -> dict:
    """Return how a window stood when it was killed with no warning."""
    with started(what, folder) as child:
        line = child.stdout.readline()
        child.send_signal(signal.SIGKILL)
        assert child.wait() == -signal.SIGKILL
    return json.loads(line)


def come_back(folder: Path) -> dict:
    """Return how the next window stands."""
    with started("back", folder) as child:
        told = json.loads(child.stdout.readline())
        assert child.wait(60) == 0
    return told


def test_a_killed_window_comes_back_to_the_same_step(tmp_path):
    before = killed_at_work(tmp_path)
    after = come_back(tmp_path)
    assert after.pop("cpu_s") < BACK_S
    assert after.pop("notice").startswith("Hemline was not closed the last time.")
    assert after.pop("camera") == pytest.approx(before.pop("camera"), abs=1e-6)
    assert after == before
    assert (before["asking"], before["lesson_step"], before["moment"]) == ("locked", 2, 3)
    # a window that was closed leaves nothing behind, and the next one begins anew
    assert not list((tmp_path / "sittings").glob("*.json"))


def test_plane_measuring_the_form_and_the_plan_beside_come_back_too(tmp_path):
    before = killed_at_work(tmp_path, "look")
    after = come_back(tmp_path)
    stood = before["open"]
    assert stood["form_page"] == 1
    assert stood["picture"]["way"] == "across"
    assert len(stood["picture"]["marks"]["measures"]) == len(stood["picture"]["marks"]["strokes"]) == 1
    assert (stood["beside"]["place"], stood["beside"]["known"]) == (3, 1)
    assert after["open"] == stood
    assert after.pop("camera") == pytest.approx(before.pop("camera"), abs=1e-6)
    assert (after["moment"], after["moments"], after["plan"]) == tuple(
        before[name] for name in ("moment", "moments", "plan")
    )
