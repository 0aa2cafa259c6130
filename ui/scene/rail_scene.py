"""The roof rail where it gives: the walls of its box as they stand."""

from __future__ import annotations

import numpy as np

from sim.rail import Rail
from ui.scene.colours import Theme, rgb
from ui.scene.pick import Solid
from ui.scene.walls import Floats, Walls

NAME = "roof_rail"
LAYER = "body"


class RailScene(Walls):
    """All that is drawn of the rail; ``layers`` maps "body" to the drawn things."""

    def __init__(self, model) -> None:
        rail: Rail = model.rail
        rows = slice(rail.first_triangle, rail.first_triangle + len(rail.triangles))
        super().__init__(NAME, LAYER, model, rail.triangles, rows)
        self.layers = {LAYER: [self.metal, self.lines]}
        self.move(self.start)

    def tone(self, theme: Theme) -> Floats:
        """Return the rail's tone, between inner panel and body."""
        return np.asarray(0.5 * rgb(theme.inner) + 0.5 * rgb(theme.body))

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer: the rail is one part."""
        return [(LAYER, Solid.of(NAME, self.points, self.triangles))]
