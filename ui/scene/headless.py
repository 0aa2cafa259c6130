"""Draw with no screen: the two settings that must stand before Qt and VTK are imported."""

from __future__ import annotations

import os
import sys


def prepare() -> None:
    """Choose drawing without a window, unless the user's environment has chosen otherwise."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    if sys.platform.startswith("linux"):
        os.environ.setdefault("VTK_DEFAULT_OPENGL_WINDOW", "vtkEGLRenderWindow")
