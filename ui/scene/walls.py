"""The walls of a box of sheet as they stand: what pillar and roof rail have in common when drawn."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ui.scene.colours import MAPS, ColourMode, Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.folding import Folding
from ui.scene.metal import Sheet, make_sheet, shade
from ui.scene.raw_edges import laid_aside

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

OUT_OF_SIGHT = (0.0, 0.0, -60.0)
"""Where a piece is drawn that was cut out, in one point under the ground [m]."""
LEVELS = 0
"""How often their triangles are split for drawing: nodes stand 26 to 40 mm apart already."""


class Walls:
    """Walls drawn as one sheet with its sharp edges; a child says in which tone, and what else there is.

    Parameters
    ----------
    name, layer : of what is drawn
    model : the side, at its start
    whole : triangles of the walls as built, shape (k, 3);  rows : where they stand among the model's
    """

    def __init__(self, name: str, layer: str, model, whole: Ints, rows: slice) -> None:
        self.name, self.layer, self.whole, self.rows = name, layer, whole, rows
        self.start = np.asarray(model.start.points)
        self.sign = float(model.outboard_sign)
        self.points, self.triangles, self._rest = self.start, whole, self.start
        self.load: Floats | None = None
        self.folding: Folding | None = None
        self.sheet: Sheet = make_sheet(self.start, whole, np.arange(len(whole)), LEVELS)
        self.whole_sheet = self.sheet
        flat = np.zeros((len(self.sheet.source), 3))
        self.metal = Drawn(name, flat, triangles=self.sheet.triangles)
        lines = self.sheet.lines[self.sheet.always]
        self.lines = Drawn(name, flat, lines=lines, shading=Shading.PLAIN, width=1.3)

    def tone(self, theme: Theme) -> Floats:
        """Return the colour of the bare metal, shape (3,)."""
        raise NotImplementedError

    def set_triangles(self, triangles: Ints | None) -> None:
        """Take the model's connectivity as it is now; walls that were cut or torn take other triangles."""
        wanted = self.whole if triangles is None else np.asarray(triangles)[self.rows]
        if np.array_equal(wanted, self.triangles):
            return
        self.triangles = wanted
        rest = np.zeros((max(len(self.start), int(wanted.max()) + 1), 3))
        rest[: len(self.start)] = self.start
        changed = wanted != self.whole
        rest[wanted[changed]] = self.start[self.whole[changed]]
        self._rest = rest
        self.sheet = make_sheet(rest, wanted, np.arange(len(wanted)), LEVELS)
        flat = np.zeros((len(self.sheet.source), 3))
        self.metal.reshape(flat, triangles=self.sheet.triangles)
        self.lines.reshape(flat, lines=self.sheet.lines[self.sheet.always])

    def move(self, points: Floats, load: Floats | None = None) -> None:
        """Put the walls where their nodes are [m], shape (n, 3), with the load of the model's triangles."""
        self.points = points
        self.load = None if load is None else np.asarray(load)[self.rows]
        place = self.sheet.drawn_points(points)
        normals = self.sheet.drawn_normals(place)
        place[laid_aside(place)] = OUT_OF_SIGHT
        self.metal.move(place, normals)
        self.lines.move(self.metal.points)

    def fold(self, work: Floats | None) -> None:
        """Take what the model's triangles were folded, (m,) [J/m^2], for the colours; None: not known."""
        self.folding = None if work is None else Folding(work[self.rows])

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour them for the theme and the colour mode, with some nodes picked out."""
        normals = np.asarray(self.metal.normals, dtype=np.float64)
        colours = shade(normals, self.tone(theme), self.sign, contrast=1.25)
        if mode in (ColourMode.OUTBOARD, ColourMode.LOAD):
            colours = shade(normals, MAPS[mode](self._values(mode)), self.sign, contrast=0.45)
        if mode is ColourMode.FOLDED and self.folding is not None:
            colours, _ = self.folding.dress(self.sheet, self.metal, self._rest, self.sign)
        else:
            self.metal.wear(None)
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

    def sheets(self) -> list[tuple[str, str, Drawn, Sheet]]:
        """Return the sheet with its layer and name, as it is cut by a plane."""
        return [(self.layer, self.name, self.metal, self.sheet)]

    def lines_at(self, points: Floats) -> Floats:
        """Return sharp edges of a whole shape, shape (k, count, 3) [m]."""
        sheet = self.whole_sheet
        return sheet.drawn_points(points[: len(self.start)])[sheet.lines[sheet.always]]
