"""How the tests are shared among workers, and what becomes of one whose process dies.

A file's tests stay in one worker, so that what its fixtures hold is made once; tests of other files that look
at the same thing are kept with it by `pytest.mark.xdist_group`. The longest go first. A test in which a
process dies counts as one that failed, with the trace the interpreter left, and the rest goes on.
"""

from __future__ import annotations

import faulthandler
import os
from pathlib import Path

from xdist.scheduler import LoadGroupScheduling

LONGEST = (
    "tests/sim/verification/test_catalogue.py",
    "tests/sim/trade/test_not_scripted.py",
    "tests/sim/regression/test_lattices.py",
    "tests/sim/trade/test_door_test.py",
    "tests/sim/trade/test_push_back.py",
    "tests/sim/runs/test_crush.py",
    "tests/sim/trade/test_facts.py",
    "tests/sim/trade/test_builds.py",
    "tests/sim/regression/test_planted_faults.py",
    "tests/system/test_no_mouse.py",
    "tests/ui/test_many_runs.py",
)
"""Files that take longest: begun first, so that no worker sits over one of them when the others are done."""
TRACE_LINES = 60


class Sharing(LoadGroupScheduling):
    """Hands whole files to workers; a test whose process died is not run again."""

    def _split_scope(self, nodeid):
        group = super()._split_scope(nodeid)
        return nodeid.partition("::")[0] if group == nodeid else group

    def _reschedule(self, node):
        # A worker that stands in for a dead one is given work once it has told which tests it found.
        if node in self.registered_collections:
            super()._reschedule(node)

    def remove_node(self, node):
        """Take a dead worker out and return the test it died in, if it was in one."""
        given = self.assigned_work.pop(node)
        died = next((name for unit in given.values() for name, done in unit.items() if not done), None)
        if died is None:
            return None
        for unit in given.values():
            if died in unit:
                unit[died] = True
        self.workqueue.update({scope: unit for scope, unit in given.items() if not all(unit.values())})
        for other in self.assigned_work:
            self._reschedule(other)
        return died


def longest_first(items):
    """Put the longest files first, then those with a test marked slow, each in the order it had."""
    slow = {item.path for item in items if item.get_closest_marker("slow")}
    place = {name: k for k, name in enumerate(LONGEST)}

    def rank(item):
        name = item.nodeid.partition("::")[0]
        return place.get(name, len(place) + (item.path not in slow))

    items.sort(key=rank)


def keep_trace(path):
    """Let the interpreter write where it was when its process dies; return what ends that."""
    file = Path(path).open("w")  # noqa: SIM115 - open as long as the process lives
    faulthandler.enable(file)

    def end():
        faulthandler.disable()
        file.close()

    return end


def trace_of(folder, worker):
    """Return what a dead worker's interpreter wrote, or a sentence that says why it is nothing."""
    path = trace_path(folder, worker)
    lines = path.read_text(errors="replace").splitlines() if path.exists() else []
    if not lines:
        return "It left no trace: it was killed from outside, or ended itself."
    return os.linesep.join(lines[:TRACE_LINES])


def trace_path(folder, worker):
    """Return where a worker's trace is written."""
    return Path(folder) / f"{worker}.trace"
