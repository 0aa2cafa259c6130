"""The pillar between the doors: walls and flanges as they stand, and the spots that hold it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from meshes.pillar import PillarMesh
from sim.rail import Rail
from ui.scene import tubes
from ui.scene.colours import MAPS, SEAM, ColourMode, Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.metal import Sheet, make_sheet, shade
from ui.scene.pick import Solid

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NAME = "middle_pillar"
SPOT_M = 0.006
"""Drawn radius of a spot weld, about that of a real one (5-8 mm across, from memory)."""
POPPED_M = 0.003
"""A spot whose flange stands further off its place than this is drawn as gone."""
POPPED_RATIO = 1.7
"""A spot that has gone is drawn so much larger, to be told with no colour."""
LEVELS = 0
"""How often the pillar's triangles are split for drawing: its nodes already stand 26 mm apart."""


class PillarScene:
    """All that is drawn of the pillar; ``layers`` maps "pillar" to the drawn things."""

    def __init__(self, model, mesh: PillarMesh, first: int, rows: slice) -> None:
        self.mesh, self.first, self.rows = mesh, first, rows
        self.whole = np.asarray(mesh.surface.triangles) + first
        self.start = np.asarray(model.start.points)
        self.sign = mesh.outboard_sign
        self.points, self.triangles = self.start, self.whole
        self.sheet: Sheet = make_sheet(self.start, self.whole, np.arange(len(self.whole)), LEVELS)
        self.whole_sheet = self.sheet
        flat = np.zeros((len(self.sheet.source), 3))
        self.metal = Drawn(NAME, flat, triangles=self.sheet.triangles)
        lines = self.sheet.lines[self.sheet.always]
        self.lines = Drawn(NAME, flat, lines=lines, shading=Shading.PLAIN, width=1.3)
        self._make_spots()
        self._hang_on(model.rail)
        self.layers = {"pillar": [self.metal, self.lines, self.spots]}
        self.move(self.start)

    def _make_spots(self) -> None:
        welds = list(self.mesh.welds.values())
        self.spot_nodes = np.concatenate([w.nodes for w in welds]) + self.first
        self.spot_weights = np.concatenate([w.weights for w in welds])
        self.spot_start = self._spot_places(self.start)
        self.spot_away = np.concatenate([w.away for w in welds])
        count = len(self.spot_start)
        self.spots = Drawn(
            "spot_welds", np.zeros((count * 16, 3)), triangles=tubes.tube_triangles(count, 2, 8)
        )

    def _spot_places(self, points: Floats) -> Floats:
        return np.asarray(np.einsum("kc,kci->ki", self.spot_weights, points[self.spot_nodes]))

    @property
    def popped(self) -> NDArray[np.bool_]:
        """Which spots have let go of their flange at the moment shown, shape (spots,)."""
        away = self._spot_places(self.points) - self.spot_start
        if self.rail is not None:
            away[self.on_rail] -= self._under(self.points) - self.under_start
        return np.asarray(np.linalg.norm(away, axis=1) > POPPED_M)

    def _hang_on(self, rail: Rail | None) -> None:
        """Take over where the head's spots lie on a rail that gives: they go along with it."""
        self.rail = rail
        if rail is None:
            return
        names = [name for name, spots in self.mesh.welds.items() for _ in spots.points]
        self.on_rail = np.flatnonzero([name.startswith("head") for name in names])
        places = self.spot_start[self.on_rail]
        row, self.under_weights, _ = nearest_on_triangles(places, self.start, rail.triangles)
        self.under_nodes = rail.triangles[row]
        self.under_start = self._under(self.start)

    def _under(self, points: Floats) -> Floats:
        return np.asarray(np.einsum("kc,kci->ki", self.under_weights, points[self.under_nodes]))

    def set_triangles(self, triangles: Ints | None) -> None:
        """Take the model's connectivity as it is now; a pillar that was cut takes other triangles."""
        wanted = self.whole if triangles is None else np.asarray(triangles)[self.rows]
        if np.array_equal(wanted, self.triangles):
            return
        self.triangles = wanted
        rest = np.zeros((max(len(self.start), int(wanted.max()) + 1), 3))
        rest[: len(self.start)] = self.start
        changed = wanted != self.whole
        rest[wanted[changed]] = self.start[self.whole[changed]]
        self.sheet = make_sheet(rest, wanted, np.arange(len(wanted)), LEVELS)
        flat = np.zeros((len(self.sheet.source), 3))
        self.metal.reshape(flat, triangles=self.sheet.triangles)
        self.lines.reshape(flat, lines=self.sheet.lines[self.sheet.always])

    def move(self, points: Floats, load: Floats | None = None) -> None:
        """Put the pillar where its nodes are [m], shape (n, 3), with its sheets' load."""
        self.points = points
        self.load = None if load is None else np.asarray(load)[self.rows]
        place = self.sheet.drawn_points(points)
        self.metal.move(place, self.sheet.drawn_normals(place))
        self.lines.move(self.metal.points)
        middle, thin = self._spot_places(points), 0.0015 * self.spot_away
        line = np.stack((middle - thin, middle + thin), axis=1)
        wide = np.where(self.popped, POPPED_RATIO, 1.0)[:, None] * SPOT_M * np.ones((1, 2))
        self.spots.move(*tubes.tube_points(line, wide, 8, up=(0.31, 0.52, 0.79)))

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour it for the theme and the colour mode, with some nodes picked out."""
        normals = np.asarray(self.metal.normals, dtype=np.float64)
        tone = 0.6 * rgb(theme.inner) + 0.4 * rgb(theme.skin)
        colours = shade(normals, tone, self.sign, contrast=1.25)
        if mode in (ColourMode.OUTBOARD, ColourMode.LOAD):
            colours = shade(normals, MAPS[mode](self._values(mode)), self.sign, contrast=0.45)
        if picked is not None and len(picked):
            mask = np.isin(self.sheet.nodes, picked).astype(np.float64)
            share = np.clip(self.sheet.to_drawn @ mask, 0.0, 1.0)[:, None] * 0.75
            colours = (1.0 - share) * colours + share * rgb(theme.outline)
        self.metal.paint(colours)
        self.lines.paint(rgb(theme.crease))
        tones = np.where(self.popped[:, None], rgb(SEAM), rgb(theme.thread))
        self.spots.paint(np.repeat(tones, 16, axis=0))

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
        """Return what can be pointed at, with its layer."""
        surface = self.mesh.surface
        names = tuple(f"{NAME}_{name}" for name in surface.part_names)
        return [("pillar", Solid(self.points, self.triangles, surface.triangle_part, names))]

    def sheets(self) -> list[tuple[str, str, Drawn, Sheet]]:
        """Return the sheet with its layer and name, as it is cut by a plane."""
        return [("pillar", NAME, self.metal, self.sheet)]

    def lines_at(self, points: Floats) -> Floats:
        """Return sharp edges of a whole shape, shape (k, count, 3) [m]."""
        sheet = self.whole_sheet
        return sheet.drawn_points(points[: len(self.start)])[sheet.lines[sheet.always]]
