"""One moment as a picture without words: for sheets, and for lists of figures.

Call `ui.scene.headless.prepare` before importing this where there is no screen.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
import pyvista
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage

from sim.record import Aim, Frame
from ui.scene.naming import Floats, named_places
from ui.scene.picture import grab
from ui.scene.stage import Stage
from ui.scene.tools import Solid

SMOOTHING = 2
"""Drawn this many times as large and shrunk, for smooth edges without a graphics card."""
LINES = 1.25
"""Lines are this much thicker than on a screen: paper is read in worse light."""
BESIDE = 0.04
"""Space between two stills, as a share of the height."""


@dataclass(frozen=True)
class Look:
    """How a still looks.

    camera : a saved view;  colours : "material", "outboard", "seam" or "load"
    layers : mode of the layers that are not solid
    ghost : the outline of the start;  path : the load path;  room : the line to the occupant
    theme : "light" or "dark"
    """

    camera: str = "three_quarter"
    colours: str = "material"
    layers: Mapping[str, str] = field(default_factory=dict)
    ghost: bool = False
    path: bool = False
    room: bool = False
    theme: str = "light"


def still(
    model,
    frame: Frame,
    look: Look,
    size: tuple[int, int],
    *,
    aim: Aim | None = None,
    tool: object | None = None,
    share: bool = True,
    solids: Sequence[Solid] = (),
    names: dict[str, Floats] | None = None,
) -> QImage:
    """Return a moment drawn at a size [px], the same every time.

    Parameters
    ----------
    model, frame : a door model and the moment
    aim, tool : the push about to be made; None for neither
    share : whether its arrow, outward or inward, is drawn too
    solids : what else works on the metal or carries the car
    names : where given, filled with the parts in sight and their places, 0 .. 1 from the upper left corner
    """
    whole = [SMOOTHING * side for side in size]
    plotter = pyvista.Plotter(off_screen=True, window_size=whole, lighting="none")
    try:
        stage = Stage(plotter)
        stage.set_line_scale(SMOOTHING * LINES * max(0.75, size[0] / 1200.0))
        stage.set_theme(look.theme)
        stage.set_colour_mode(look.colours)
        stage.set_model(model)
        for layer, mode in look.layers.items():
            stage.set_layer(layer, mode)
        stage.view_preset(look.camera)
        stage.show_points(frame.points, frame)
        stage.show_start_ghost(look.ghost)
        stage.show_path(frame if look.path else None)
        stage.show_clearance(frame.clearance if look.room else None)
        stage.show_aim(aim, tool, share=share)
        stage.show_tools(*solids)
        data = np.ascontiguousarray(grab(plotter)[..., :3])
        if names is not None:
            names |= named_places(stage, model.structure, frame.points, look.layers)
        stage.close()
    finally:
        plotter.close()
    height, width, _ = data.shape
    image = QImage(data.data, width, height, 3 * width, QImage.Format.Format_RGB888).copy()
    return image.scaled(
        *size, Qt.AspectRatioMode.IgnoreAspectRatio, Qt.TransformationMode.SmoothTransformation
    )


def grey(image: QImage) -> QImage:
    """Return a picture without colour, as a copier would print it."""
    return image.convertToFormat(QImage.Format.Format_Grayscale8).convertToFormat(QImage.Format.Format_RGB32)
