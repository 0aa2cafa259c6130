"""What every test shares: workers, a hypothesis profile, nothing left behind, a process with no Qt or VTK."""

import gc
import importlib.util
import os
import shutil
import sys
import tempfile
from pathlib import Path

import pytest
from hypothesis import settings


# by its file: these tests also run where the project's folder is not on the path
def _beside(name):
    spec = importlib.util.spec_from_file_location(name, Path(__file__).with_name(f"{name}.py"))
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


leftovers = _beside("leftovers")

GRAPHICS = frozenset(
    {"PySide6", "shiboken6", "qtpy", "vtk", "vtkmodules", "pyvista", "pyvistaqt", "pyqtgraph"},
)


class NoGraphics:
    """An import hook, first in line, that refuses every graphics library."""

    def find_spec(self, name, path=None, target=None):
        """Raise for a graphics library; leave every other name to Python's own finders."""
        if name.partition(".")[0] in GRAPHICS:
            raise ModuleNotFoundError(f"{name} is out of reach in the tests without Qt and VTK", name=name)


if os.environ.get("HEMLINE_TESTS_WITHOUT_GRAPHICS"):
    early = GRAPHICS.intersection(sys.modules)
    if early:
        raise RuntimeError(f"already imported before the tests began: {', '.join(sorted(early))}")
    sys.meta_path.insert(0, NoGraphics())

# No deadline: the first call of a compiled kernel takes seconds. In CI the same examples every time.
settings.register_profile("hemline", deadline=None, derandomize=bool(os.environ.get("CI")), print_blob=True)
settings.load_profile("hemline")


# ---- workers ----------------------------------------------------------------------------------------------

FOLDER = "HEMLINE_TESTS_SOLVED"
"""What is solved once for all workers lies in the folder of this name, and their traces: tests/once.py."""


def _shares(config):
    """Tell whether this is the process that hands the tests to workers."""
    return config.getoption("dist", "no") != "no" and not hasattr(config, "workerinput")


@pytest.hookimpl(trylast=True)
def pytest_configure(config):
    """Make the workers' folder; in a worker write traces to it."""
    if _shares(config):
        os.environ[FOLDER] = config.hemline_folder = tempfile.mkdtemp(prefix="hemline-tests-")
    elif hasattr(config, "workerinput") and os.environ.get(FOLDER):
        spreading = _beside("spreading")
        path = spreading.trace_path(os.environ[FOLDER], config.workerinput["workerid"])
        config.add_cleanup(spreading.keep_trace(path))


def pytest_unconfigure(config):
    """Take the workers' folder away."""
    folder = getattr(config, "hemline_folder", None)
    if folder:
        shutil.rmtree(folder, ignore_errors=True)


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config, log):
    """Hand whole files to workers, however the tests were asked to be shared."""
    return _beside("spreading").Sharing(config, log)


@pytest.hookimpl(optionalhook=True)
def pytest_handlecrashitem(report):
    """Put a dead worker's trace under the test it died in."""
    trace = _beside("spreading").trace_of(os.environ[FOLDER], report.node.gateway.id)
    report.longrepr = f"{report.longrepr}\n{trace}"


def pytest_addoption(parser):
    """Let the whole of the evidence be asked for."""
    parser.addoption("--whole", action="store_true", help="also run what takes minutes and is evidence only")


def pytest_collection_modifyitems(config, items):
    """Leave out what is evidence only, unless asked for; begin with the longest where workers share tests."""
    if not config.getoption("whole"):
        left_out = [item for item in items if item.get_closest_marker("whole")]
        items[:] = [item for item in items if not item.get_closest_marker("whole")]
        config.hook.pytest_deselected(items=left_out)
    if hasattr(config, "workerinput"):
        _beside("spreading").longest_first(items)


def pytest_collection_finish():
    """Leave what was imported out of every later search for garbage: it stays for good."""
    gc.collect()
    gc.freeze()


# ---- nothing left behind ----------------------------------------------------------------------------------

_last = []
"""The test that ran last: what its fixtures gave it is let go before its module is looked at."""


@pytest.fixture(autouse=True)
def _nothing_left(request):
    """Fail a test that leaves a thread, a process or a window behind."""
    _last[:] = [request.node]
    before = leftovers.AfterEach()
    yield
    left = before.left()
    assert not left, f"left behind: {', '.join(left)}"


@pytest.fixture(autouse=True, scope="module")
def _nothing_left_of_a_module(request):
    """Fail a module of tests that leaves a running timer or a VTK object behind."""
    before = leftovers.AfterModule()
    yield
    for test in _last:
        test.funcargs.clear()
    left = before.left()
    assert not left, f"left behind: {', '.join(left)}"
