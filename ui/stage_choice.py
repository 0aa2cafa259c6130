"""Which stage this machine can have: the moving one, still pictures, or none."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING, Any

from ui.machine import picture_window, window_gl
from ui.state.machine import GL_LEAST

if TYPE_CHECKING:
    from ui.main_window import MainWindow

HELP = "Help, Will it run here: says what helps."
STILLS = (
    "No window can draw in three dimensions here, so the stage shows still pictures; "
    f"all else works as it does. {HELP}"
)
NONE = (
    "Nothing can be drawn in three dimensions here. "
    f"Section, ladder, work, force and sentence work as they do. {HELP}"
)


def draw_from_the_start(window: MainWindow) -> None:
    """Have the window made as one that can draw in three dimensions; call it before the window is shown.

    A moving stage in a window made otherwise has Qt make it anew, two seconds after it came up: it goes
    black for a moment, and what is typed into the old one meanwhile is lost.
    """
    if window_gl()[0] >= GL_LEAST:
        from PySide6.QtOpenGLWidgets import QOpenGLWidget

        sign = QOpenGLWidget(window)  # never shown: that it is there is enough
        sign.setObjectName("draws")
        sign.hide()


def stage_view(window: MainWindow) -> Any:
    """Return the view this machine can show, with a sentence said where it is not the moving one; or None."""
    version, _ = window_gl()
    if version >= GL_LEAST:
        from ui.stage_side import StageView

        return StageView(window)
    way = picture_window()
    window.notice.say(NONE if way is None else STILLS)
    if way is None:
        window.show_no_stage(NONE)
        return None
    if way:
        os.environ["VTK_DEFAULT_OPENGL_WINDOW"] = way
    from ui.scene.still_view import StillView

    return StillView(window)
