"""The roof rail where it gives: the walls of its box as they stand."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.rail import Rail
from ui.scene.colours import MAPS, ColourMode, Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.metal import Sheet, make_sheet, shade
from ui.scene.pick import Solid

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NAME = "roof_rail"
LAYER = "body"
LEVELS = 0
"""How often its triangles are split for drawing: they are 30 by 40 mm already."""


class RailScene:
    """All that is drawn of the rail; ``layers`` maps "body" to the drawn things."""

    def __init__(self, model) -> None:
        rail: Rail = model.rail
        self.rail = rail
        self.rows = slice(rail.first_triangle, rail.first_triangle + len(rail.triangles))
        self.start = np.asarray(model.start.points)
        self.sign = float(model.outboard_sign)
        self.points, self.triangles = self.start, rail.triangles
        self.load: Floats | None = None
        self.sheet: Sheet = make_sheet(self.start, rail.triangles, np.arange(len(rail.triangles)), LEVELS)
        self.whole_sheet = self.sheet
        flat = np.zeros((len(self.sheet.source), 3))
        self.metal = Drawn(NAME, flat, triangles=self.sheet.triangles)
        lines = self.sheet.lines[self.sheet.always]
        self.lines = Drawn(NAME, flat, lines=lines, shading=Shading.PLAIN, width=1.3)
        self.layers = {LAYER: [self.metal, self.lines]}
        self.move(self.start)

    def set_triangles(self, triangles: Ints | None) -> None:
        """Take the model's connectivity as it is now; a rail that has torn takes other triangles."""
        wanted = self.rail.triangles if triangles is None else np.asarray(triangles)[self.rows]
        if np.array_equal(wanted, self.triangles):
            return
        self.triangles = wanted
        rest = np.zeros((max(len(self.start), int(wanted.max()) + 1), 3))
        rest[: len(self.start)] = self.start
        changed = wanted != self.rail.triangles
        rest[wanted[changed]] = self.start[self.rail.triangles[changed]]
        self.sheet = make_sheet(rest, wanted, np.arange(len(wanted)), LEVELS)
        flat = np.zeros((len(self.sheet.source), 3))
        self.metal.reshape(flat, triangles=self.sheet.triangles)
        self.lines.reshape(flat, lines=self.sheet.lines[self.sheet.always])

    def move(self, points: Floats, load: Floats | None = None) -> None:
        """Put the rail where its nodes are [m], shape (n, 3), with its walls' load."""
        self.points = points
        self.load = None if load is None else np.asarray(load)[self.rows]
        place = self.sheet.drawn_points(points)
        self.metal.move(place, self.sheet.drawn_normals(place))
        self.lines.move(self.metal.points)

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour it for the theme and the colour mode, with some nodes picked out."""
        normals = np.asarray(self.metal.normals, dtype=np.float64)
        tone = 0.5 * rgb(theme.inner) + 0.5 * rgb(theme.body)
        colours = shade(normals, tone, self.sign, contrast=1.25)
        if mode in (ColourMode.OUTBOARD, ColourMode.LOAD):
            colours = shade(normals, MAPS[mode](self._values(mode)), self.sign, contrast=0.45)
        if picked is not None and len(picked):
            mask = np.isin(self.sheet.nodes, picked).astype(np.float64)
            share = np.clip(self.sheet.to_drawn @ mask, 0.0, 1.0)[:, None] * 0.75
            colours = (1.0 - share) * colours + share * rgb(theme.outline)
        self.metal.paint(colours)
        self.lines.paint(rgb(theme.crease))

    def _values(self, mode: ColourMode) -> Floats:
        nodes = self.sheet.nodes
        if mode is ColourMode.OUTBOARD:
            rest = np.where(nodes < len(self.start), nodes, 0)
            moved = self.sign * (self.points[nodes, 1] - self.start[rest, 1])
            return np.asarray(self.sheet.to_drawn @ np.where(nodes < len(self.start), moved, 0.0))
        if self.load is None:
            return np.zeros(len(self.sheet.source))
        return self.sheet.values_at_points(self.load)

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer: the rail is one part."""
        return [(LAYER, Solid.of(NAME, self.points, self.triangles))]

    def sheets(self) -> list[tuple[str, str, Drawn, Sheet]]:
        """Return the sheet with its layer and name, as it is cut by a plane."""
        return [(LAYER, NAME, self.metal, self.sheet)]

    def lines_at(self, points: Floats) -> Floats:
        """Return sharp edges of a whole shape, shape (k, count, 3) [m]."""
        sheet = self.whole_sheet
        return sheet.drawn_points(points[: len(self.start)])[sheet.lines[sheet.always]]
