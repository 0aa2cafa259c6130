"""What every test shares: one hypothesis profile, and the process in which Qt and VTK cannot be imported."""

import os
import sys

from hypothesis import settings

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
