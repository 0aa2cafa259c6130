"""How large the window opens on the screen at hand."""

from __future__ import annotations

from PySide6.QtCore import QSize

FIRST_SHARE = 0.85
"""Share of the screen that the window opens with."""
FIRST_PX = (1280, 720)
"""The least it opens with, where the screen is large enough."""


FRAME_PX = 80
"""What a window manager may put round a window, and a bar on the screen that it does not tell of."""


def fills(screen: QSize) -> bool:
    """Tell whether a window opens as large as the screen: with less the frame would not fit."""
    return screen.width() < FIRST_PX[0] + FRAME_PX or screen.height() < FIRST_PX[1] + FRAME_PX


def first_size(screen: QSize) -> QSize:
    """Return the size a window opens with: most of the screen, with room for both columns if there is."""
    width = min(screen.width(), max(FIRST_PX[0], round(FIRST_SHARE * screen.width())))
    height = min(screen.height(), max(FIRST_PX[1], round(FIRST_SHARE * screen.height())))
    return QSize(width, height)


def beside_stage(room: int, left: float, right: float) -> tuple[int, int]:
    """Return how wide both columns are [px]: as wished, or less where that cuts the stage's controls.

    Parameters
    ----------
    room : what the controls of the stage leave;  left, right : as wished, 0 for a column that is away
    """
    share = min(1.0, max(room, 0) / max(left + right, 1.0))
    return round(share * left), round(share * right)
