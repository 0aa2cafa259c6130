"""A word in the scene that always faces the viewer."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from vtkmodules.vtkRenderingCore import vtkBillboardTextActor3D, vtkTextActor

from ui.scene.colours import Theme, rgb

Floats = NDArray[np.float64]

SIZE_PX, BESIDE_PX = 22, 16
"""Type of a word that stands alone, and of names beside what they name."""


class Label:
    """One word or number at a place, or beside it; hidden until it has something to say."""

    def __init__(self, renderer, *, on_top: bool = False, beside: bool = False) -> None:
        self._renderer = renderer
        self._inside, self._above = vtkBillboardTextActor3D(), vtkTextActor()
        self._above.GetPositionCoordinate().SetCoordinateSystemToWorld()
        for actor in (self._inside, self._above):
            actor.PickableOff()
            actor.VisibilityOff()
            renderer.AddActor(actor)
        self.scale = 1.0
        self.words = ""
        self._beside = beside
        self.on_top = on_top

    def say(self, words: str, point: Floats, colour: Floats, theme: Theme) -> None:
        """Show words at a point [m] on the theme's plate; on top, nothing in front covers them."""
        self.hide()
        self.words = words
        self._inside.SetPosition(*point)
        self._above.GetPositionCoordinate().SetValue(*point)
        actor = self._above if self.on_top else self._inside
        actor.SetInput(words)
        look = actor.GetTextProperty()
        look.SetFontSize(round((BESIDE_PX if self._beside else SIZE_PX) * self.scale))
        look.BoldOn()
        look.SetColor(*colour)
        look.SetBackgroundColor(*rgb(theme.plate))
        look.SetBackgroundOpacity(0.88)
        look.SetJustificationToCentered()
        look.SetVerticalJustificationToCentered()
        if self._beside:
            look.SetVerticalJustificationToBottom()
        actor.VisibilityOn()

    def hide(self) -> None:
        """Say nothing."""
        self.words = ""
        self._inside.VisibilityOff()
        self._above.VisibilityOff()

    def remove(self) -> None:
        """Leave the scene."""
        self._renderer.RemoveActor(self._inside)
        self._renderer.RemoveActor(self._above)
