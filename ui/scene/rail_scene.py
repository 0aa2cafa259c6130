"""Roof rail and rocker where they give: the walls of their boxes as they stand."""

from __future__ import annotations

import numpy as np

from sim.rail import Rail
from ui.scene.colours import Theme, rgb
from ui.scene.pick import Solid
from ui.scene.walls import Floats, Walls

RAIL, ROCKER = "roof_rail", "rocker"
LAYER = "body"


class RailScene(Walls):
    """All that is drawn of the rail, or of the rocker; ``layers`` maps "body" to the drawn things."""

    def __init__(self, model, name: str = RAIL) -> None:
        rail: Rail = model.rail if name == RAIL else model.rocker
        rows = slice(rail.first_triangle, rail.first_triangle + len(rail.triangles))
        super().__init__(name, LAYER, model, rail.triangles, rows)
        self.layers = {LAYER: [self.metal, self.lines]}
        self.move(self.start)

    def tone(self, theme: Theme) -> Floats:
        """Return its tone, between inner panel and body."""
        return np.asarray(0.5 * rgb(theme.inner) + 0.5 * rgb(theme.body))

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer: each is one part."""
        return [(LAYER, Solid.of(self.name, self.points, self.triangles))]
