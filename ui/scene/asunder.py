"""Parts drawn asunder: each layer moved out of the car on the screen, by a number from 0 (together) to 1.

Only where things are drawn changes, never the metal's points: at 0 every picture is what it was.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

import numpy as np
from numpy.typing import NDArray

from ui.scene.cast import Cast
from ui.scene.colours import Theme, rgb
from ui.scene.drawn import Drawn
from ui.scene.label import Label
from ui.scene.layers import Mode

Floats = NDArray[np.float64]

OUT_M = {
    "skin": 1.0, "seam": 0.84, "trim_glass": 0.08, "bar": 0.62, "latch_hinges": 0.46, "inner": 0.28,
    "pillar": 0.14, "body": 0.0, "occupant": 0.0,
}  # fmt: skip
"""How far out each layer stands when asunder [m]."""
ONE_DOOR_REACH, SIDE_REACH = 0.55, 0.72
"""Factor on these where one door stands on the stage, which is seen from nearer, and where a side does."""
SAID = (
    "tips", "tip_edges", "rod", "share", "behind", "path", "path_covered", "clearance", "clearance_covered",
    "start", "barrier", "tools", "raw_edges", "map latch_edge", "map hinge_edge",
)  # fmt: skip
"""What is said about the metal where it is; hidden while it is not drawn there."""
NAMES = {
    "skin": "outer skin", "seam": "seam", "bar": "bar", "latch_hinges": "latch and hinges",
    "inner": "inner panel", "pillar": "pillar", "trim_glass": "trim and glass",
}  # fmt: skip
LOW = ("seam", "latch_hinges")
"""Layers whose name stands below them."""
REARWARD = ("bar", "latch_hinges")
"""Layers whose name stands at their rear end; the others' stand at the front, each beside its own part."""


class Asunder:
    """Moves the layers of one stage apart and names them."""

    def __init__(self, cast: Cast) -> None:
        self.cast = cast
        self.ratio = 0.0
        self.scale = 1.0
        self.reach = 1.0
        self._labels = {layer: Label(cast.renderer, on_top=True, kept_in=True) for layer in NAMES}

    def offset(self, layer: str, sign: float) -> Floats:
        """Return how far a layer is moved now [m], shape (3,)."""
        return np.array([0.0, sign * self.ratio * self.reach * OUT_M[layer], 0.0])

    def apply(
        self, things: Callable[[str], Iterable[Drawn]], modes: dict[str, Mode], sign: float, theme: Theme
    ) -> None:
        """Move everything of each layer, and name the layers that are shown while they are apart."""
        self.hush()
        for layer in OUT_M:
            shift = self.offset(layer, sign)
            found = list(things(layer))
            for thing in found:
                thing.actor.SetPosition(*shift)
            if layer in self._labels:
                shown = self.ratio > 0.0 and modes[layer] is not Mode.OFF
                there = [thing for thing in found if shown and len(thing.points) and not thing.is_empty]
                self._name(layer, there[0] if there else None, shift, theme)

    def hush(self) -> None:
        """Hide what is said about metal that is drawn elsewhere."""
        for name in SAID:
            if name in self.cast:
                self.cast[name].show(self.ratio == 0.0)

    def _name(self, layer: str, thing: Drawn | None, shift: Floats, theme: Theme) -> None:
        label = self._labels[layer]
        label.scale = self.scale
        if thing is None:
            label.hide()
            return
        points = np.asarray(thing.points, dtype=np.float64)
        high = points[:, 2].min() if layer in LOW else points[:, 2].max()
        end = points[:, 0].max() if layer in REARWARD else points[:, 0].min() - 0.02
        place = np.array([end, points[:, 1].mean(), high]) + shift
        label.say(NAMES[layer], place, rgb(theme.plate_text), theme)

    @property
    def names(self) -> tuple[str, ...]:
        """The names that stand beside parts now."""
        return tuple(label.words for label in self._labels.values() if label.words)

    def close(self) -> None:
        """Leave the scene."""
        for label in self._labels.values():
            label.remove()
