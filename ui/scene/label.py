"""A word in the scene that always faces the viewer."""

from __future__ import annotations

from functools import cache
from importlib.util import find_spec
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from vtkmodules.vtkRenderingCore import vtkBillboardTextActor3D, vtkTextActor, vtkTextRenderer

from ui.scene.colours import Theme, rgb
from ui.scene.naming import on_picture
from ui.state.tongue import tr

Floats = NDArray[np.float64]

VTK_FONT_FILE = 4
SIZE_PX, BESIDE_PX = 22, 16
"""Type of a word that stands alone, and of names beside what they name."""
WIDE_RATIO, HIGH_RATIO, EDGE_PX = 0.34, 0.65, 6
"""Half a letter's width and half a line's height, by the size of the type; room left at the edge."""
REACH = 0.75
"""A word is brought back into the picture from no further outside it than this share of the picture."""


@cache
def typeface(*, strong: bool) -> str:
    """Return a plain font file, for the drawing library's own face is like none of the window's.

    One comes with the plotting library that the drawing library asks for; "" where it is not found.
    """
    name = "DejaVuSans-Bold.ttf" if strong else "DejaVuSans.ttf"
    found = find_spec("matplotlib")
    places = (found.submodule_search_locations or ()) if found is not None else ()
    files = (Path(place) / "mpl-data" / "fonts" / "ttf" / name for place in places)
    return next((str(file) for file in files if file.is_file()), "")


def on_pixels(renderer, points: Floats) -> Floats:
    """Return where points [m] stand on the picture, pixels from its lower left corner, shape (k, 2)."""
    size = np.array(renderer.GetSize(), dtype=np.float64)
    return np.asarray(0.5 * (1.0 + on_picture(renderer, points)) * size)


def at_pixels(renderer, pixels: Floats, near: Floats) -> Floats:
    """Return the point [m] that is seen at pixels (2,), as far away as another point, shape (3,)."""
    renderer.SetWorldPoint(*near, 1.0)
    renderer.WorldToDisplay()
    depth = renderer.GetDisplayPoint()[2]
    renderer.SetDisplayPoint(*(np.array(renderer.GetOrigin()) + pixels), depth)
    renderer.DisplayToWorld()
    found = np.array(renderer.GetWorldPoint())
    return np.asarray(found[:3] / found[3])


class Label:
    """One word or number at a place, or beside it; hidden until it has something to say."""

    def __init__(
        self, renderer, *, on_top: bool = False, beside: bool = False, kept_in: bool = False
    ) -> None:
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
        self._place: Floats = np.zeros(3)
        self._at: Floats = self._place
        # kept in: a word at the edge of the picture is moved inward, never cut
        self._watch = renderer.AddObserver("StartEvent", self._keep_in) if kept_in else None

    def say(self, words: str, point: Floats, colour: Floats, theme: Theme, *, run: str = "both") -> None:
        """Show words at a point [m] on the theme's plate; on top, nothing in front covers them.

        ``run`` says which way they run from there: to "both" sides, "left" or "right".
        """
        self.hide()
        self.words = words = tr(words)
        self._place = np.asarray(point, dtype=np.float64)
        self._put(self._place)
        actor = self._above if self.on_top else self._inside
        actor.SetInput(words)
        look = actor.GetTextProperty()
        look.SetFontSize(round((BESIDE_PX if self._beside else SIZE_PX) * self.scale))
        file = typeface(strong=not self._beside)
        if file:
            look.SetFontFamily(VTK_FONT_FILE)
            look.SetFontFile(file)
        else:
            look.BoldOn()
        look.SetColor(*colour)
        look.SetBackgroundColor(*rgb(theme.plate))
        look.SetBackgroundOpacity(0.88)
        way = {"left": look.SetJustificationToRight, "right": look.SetJustificationToLeft}
        way.get(run, look.SetJustificationToCentered)()
        look.SetVerticalJustificationToCentered()
        if self._beside:
            look.SetVerticalJustificationToBottom()
        actor.VisibilityOn()

    def size(self) -> tuple[float, float]:
        """Return how wide and high the words are on the picture, in pixels."""
        look = (self._above if self.on_top else self._inside).GetTextProperty()
        box = [0, 0, 0, 0]
        dpi = self._renderer.GetRenderWindow().GetDPI()
        vtkTextRenderer.GetInstance().GetBoundingBox(look, self.words, box, dpi)
        return float(box[1] - box[0]), float(box[3] - box[2])

    def box(self) -> tuple[float, float, float, float] | None:
        """Return what the words take of the picture: left, low, right, high in pixels; None of nothing."""
        if not self.words:
            return None
        renderer, (wide, high) = self._renderer, self.size()
        x, y = on_pixels(renderer, np.array(self._at)[None])[0]
        low = y if self._beside else y - high / 2
        look = (self._above if self.on_top else self._inside).GetTextProperty()
        left = x - wide * (0.0, 0.5, 1.0)[look.GetJustification()]
        return left, low, left + wide, low + high

    def put(self, point: Floats) -> None:
        """Move the words to a point [m]."""
        self._place = np.asarray(point, dtype=np.float64)
        self._put(self._place)

    def hide(self) -> None:
        """Say nothing."""
        self.words = ""
        self._inside.VisibilityOff()
        self._above.VisibilityOff()

    def _put(self, point: Floats) -> None:
        self._at = point
        self._inside.SetPosition(*point)
        self._above.GetPositionCoordinate().SetValue(*point)

    def _keep_in(self, *_: object) -> None:
        """Before a frame is drawn: move the word so far inward that all of it is in the picture."""
        if not self.words:
            return
        renderer = self._renderer
        renderer.SetWorldPoint(*self._place, 1.0)
        renderer.WorldToDisplay()
        x, y, depth = renderer.GetDisplayPoint()
        left, low = renderer.GetOrigin()
        wide, high = renderer.GetSize()
        size = (
            (BESIDE_PX if self._beside else SIZE_PX) * self.scale * renderer.GetRenderWindow().GetDPI() / 72.0
        )
        half = (WIDE_RATIO * size * len(self.words) + EDGE_PX, HIGH_RATIO * size + EDGE_PX)
        near_x = min(max(x, left + half[0]), left + wide - half[0])
        near_y = min(max(y, low + half[1]), low + high - half[1])
        far = max(abs(near_x - x) / wide, abs(near_y - y) / high)
        if far > REACH or wide < 2.0 * half[0] or not 0.0 < depth < 1.0:
            near_x, near_y = x, y
        if (near_x, near_y) == (x, y):
            self._put(self._place)
            return
        renderer.SetDisplayPoint(near_x, near_y, depth)
        renderer.DisplayToWorld()
        found = np.array(renderer.GetWorldPoint())
        self._put(found[:3] / found[3])

    def remove(self) -> None:
        """Leave the scene."""
        if self._watch is not None:
            self._renderer.RemoveObserver(self._watch)
            self._watch = None
        self._renderer.RemoveActor(self._inside)
        self._renderer.RemoveActor(self._above)
