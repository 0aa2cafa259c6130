"""A word in the scene that always faces the viewer."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from vtkmodules.vtkRenderingCore import vtkBillboardTextActor3D

from ui.scene.colours import Theme, rgb

Floats = NDArray[np.float64]

SIZE_PX = 22


class Label:
    """One word or number at a place; hidden until it has something to say."""

    def __init__(self, renderer) -> None:
        self._renderer = renderer
        self._actor = vtkBillboardTextActor3D()
        self._actor.PickableOff()
        self._actor.VisibilityOff()
        renderer.AddActor(self._actor)
        self.scale = 1.0

    def say(self, words: str, point: Floats, colour: Floats, theme: Theme) -> None:
        """Show words at a point [m] on a plate of the theme's paper."""
        self._actor.SetInput(words)
        self._actor.SetPosition(*point)
        look = self._actor.GetTextProperty()
        look.SetFontSize(round(SIZE_PX * self.scale))
        look.BoldOn()
        look.SetColor(*colour)
        look.SetBackgroundColor(*rgb(theme.paper))
        look.SetBackgroundOpacity(0.82)
        look.SetJustificationToCentered()
        look.SetVerticalJustificationToCentered()
        self._actor.VisibilityOn()

    def hide(self) -> None:
        """Say nothing."""
        self._actor.VisibilityOff()

    def remove(self) -> None:
        """Leave the scene."""
        self._renderer.RemoveActor(self._actor)
