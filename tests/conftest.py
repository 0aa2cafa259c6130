"""What every test shares: one hypothesis profile, nothing left behind, the process without Qt and VTK."""

import importlib.util
import os
import sys
from pathlib import Path

import pytest
from hypothesis import settings

# by its file: these tests also run where the project's folder is not on the path
_spec = importlib.util.spec_from_file_location("leftovers", Path(__file__).with_name("leftovers.py"))
leftovers = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(leftovers)

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


_last = []
"""The test that ran last: what its fixtures gave it is let go before its module is looked at."""


def _whole_program(request):
    """Tell whether the whole program runs in a test: its closed windows are let go with the next one."""
    return "system" in request.path.parts


@pytest.fixture(autouse=True)
def _nothing_left(request):
    """Fail a test that leaves a thread, a process or a window behind."""
    _last[:] = [request.node]
    before = leftovers.AfterEach()
    yield
    left = before.left(windows_too=not _whole_program(request))
    assert not left, f"left behind: {', '.join(left)}"


@pytest.fixture(autouse=True, scope="module")
def _nothing_left_of_a_module(request):
    """Fail a module of tests that leaves a running timer or a VTK object behind."""
    before = leftovers.AfterModule()
    yield
    for test in _last:
        test.funcargs.clear()
    left = () if _whole_program(request) else before.left()
    assert not left, f"left behind: {', '.join(left)}"
