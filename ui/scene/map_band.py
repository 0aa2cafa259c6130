"""The outcome map on the door itself: a band of cells along its edges, drawn on the skin where the metal is.

The nearer to the edge, the shallower: the shut face, which is hidden in the gap, is laid out over the skin,
each depth as wide as the others.  What is drawn on it comes as a picture, one for each edge.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from vtkmodules.util.numpy_support import numpy_to_vtk
from vtkmodules.vtkCommonDataModel import vtkImageData
from vtkmodules.vtkRenderingCore import vtkTexture

from sim.map_grid import Grid
from sim.plan import Edge
from ui.scene.cast import Cast
from ui.scene.colours import Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.label import Label, at_pixels, on_pixels
from ui.scene.word_room import GAP_PX, Box, meet

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bytes = NDArray[np.uint8]

COLUMN_M = 0.034
"""How wide a depth is drawn on the skin: wide enough for its pattern to be seen on a wall."""
LIFT_M = 0.004
BESIDE_M = 0.008
"""How far from the band, further in, a word begins that finds no room on it."""
PER_ROW, PER_COLUMN = 3, 1
"""Pieces of the band along and across a cell, so that it follows the skin."""
NEAR_M = 0.03
"""How far from a cell's middle a place on the metal may be and still belong to it."""
_PARTS = ("outer_skin",)


class Papered(Drawn):
    """A surface that shows a picture, unlit."""

    def __init__(self, name: str, points: Floats, triangles: Ints, places: Floats) -> None:
        super().__init__(name, points, triangles=triangles, shading=Shading.PLAIN)
        where = numpy_to_vtk(np.ascontiguousarray(places, dtype=np.float32), deep=True)
        where.SetName("place on the picture")
        self.data.GetPointData().SetTCoords(where)
        self.mapper.ScalarVisibilityOff()
        self.texture = vtkTexture()
        self.texture.InterpolateOn()
        self.texture.MipmapOn()
        self.actor.SetTexture(self.texture)
        self.mapper.SetRelativeCoincidentTopologyPolygonOffsetParameters(-2.0, -2.0)

    def show_picture(self, image: Bytes) -> None:
        """Show another picture, shape (height, width, 3)."""
        height, width, _ = image.shape
        data = vtkImageData()
        data.SetDimensions(width, height, 1)
        flat = np.ascontiguousarray(image[::-1]).reshape(-1, 3)
        scalars = numpy_to_vtk(flat, deep=True)
        scalars.SetName("picture")
        data.GetPointData().SetScalars(scalars)
        self.texture.SetInputData(data)
        self.texture.Modified()


class MapBand:
    """The band of one stage; nothing is shown until a grid is set."""

    def __init__(self, cast: Cast) -> None:
        self.cast = cast
        self.grid: Grid | None = None
        self._mesh: object = None
        self._panel: Any = None
        self._seats: dict[Edge, tuple[Ints, Floats, Ints, Floats]] = {}
        self._first = 0
        self._centres: tuple[Ints, Floats] | None = None
        self._points: Floats | None = None
        self._sign = 1.0
        self._labels: list[Label] = []
        self._named: tuple[Sequence[tuple[Edge, float, str]], Theme, float] | None = None

    def set_out(self, panel, grid: Grid, points: Floats, sign: float) -> None:
        """Lay the band of a grid out on a door (a `sim.model.Panel`), its metal at points, (n, 3) [m]."""
        if self.grid != grid or self._mesh is not panel.mesh:
            self.hide()
            self.grid, self._mesh, self._first, self._sign = grid, panel.mesh, panel.first, sign
            self._panel = panel
            self._seats = {edge: _sheet(panel.mesh, grid, edge) for edge in grid.edges}
            self._centres = _centres(panel.mesh, grid)
        self._points = points
        for edge, (nodes, weights, triangles, places) in self._seats.items():
            name = f"map {edge}"
            here = self._on_metal(nodes, weights)
            if name in self.cast:
                self.cast[name].move(here)
            else:
                self.cast.admit(name, Papered(name, here, triangles, places))

    def _on_metal(self, nodes: Ints, weights: Floats) -> Floats:
        assert self._points is not None
        here: Floats = np.einsum("ks,ksi->ki", weights, self._points[nodes + self._first])
        return here + np.array([0.0, LIFT_M * self._sign, 0.0])

    def move(self, points: Floats) -> None:
        """Follow the metal to other points, (n, 3) [m]; nothing without a band."""
        if self.grid is not None:
            self.set_out(self._panel, self.grid, points, self._sign)
            if self._named is not None:
                self.name(*self._named)

    def paper(self, images: Mapping[Edge, Bytes]) -> None:
        """Show a picture on each edge's band, as it is seen from outside, the sill at its foot."""
        for edge, image in images.items():
            thing = self.cast[f"map {edge}"]
            assert isinstance(thing, Papered)
            thing.show_picture(image)

    def name(self, words: Sequence[tuple[Edge, float, str]], theme: Theme, scale: float) -> None:
        """Write words beside the band, further in on the skin: edge, height above the sill [m], word."""
        self._named = words, theme, scale
        while len(self._labels) < len(words):
            self._labels.append(Label(self.cast.renderer, on_top=True, beside=True))
        for label in self._labels:
            label.hide()
        if not words or self.grid is None:
            return
        into = np.array([COLUMN_M * len(self.grid.depth_m) + BESIDE_M])
        spots = [_spots(self._mesh, edge, np.array([up]), into)[0] for edge, up, _ in words]
        here = self._on_metal(*_seats(self._mesh, np.array(spots)))
        for label, (edge, _, word), place in zip(self._labels, words, here, strict=False):
            label.scale = scale
            # away from their band, as it is seen from outside: those of both edges do not meet
            run = "right" if (edge == "latch_edge") == (self._sign > 0.0) else "left"
            label.say(word, place, rgb(theme.plate_text), theme, run=run)
        self._move_apart(here)

    def _move_apart(self, here: Floats) -> None:
        """Put a word that lies over one before it below that one: where the door is seen narrow they meet."""
        renderer, taken = self.cast.renderer, list[Box]()
        for label, place in zip(self._labels, here, strict=False):
            box = label.box()
            for other in sorted(taken, key=lambda one: -one[1]):
                if box is not None and meet(box, other):
                    low = other[1] - GAP_PX - (box[3] - box[1])
                    foot = np.array([on_pixels(renderer, place[None])[0, 0], low])
                    label.put(at_pixels(renderer, foot, place))
                    box = label.box()
            if box is not None:
                taken.append(box)

    def hide(self) -> None:
        """Take the band away."""
        self.cast.drop(*[name for name in list(self.cast.things) if name.startswith("map ")])
        self.grid = self._mesh = self._centres = None
        self._seats = {}
        self._named = None
        for label in self._labels:
            label.hide()

    def close(self) -> None:
        """Leave the scene."""
        self.hide()
        for label in self._labels:
            label.remove()

    @property
    def shown(self) -> bool:
        """Whether a band is on the door."""
        return self.grid is not None

    def cell_at(self, point: Floats) -> int | None:
        """Return the cell that lies at a place on the metal, (3,) [m]; None off the band."""
        if self._centres is None:
            return None
        nodes, weights = self._centres
        middles = self._on_metal(nodes, weights)
        far = np.abs(middles - np.asarray(point, dtype=float))
        inside = (far[:, 0] <= 0.5 * COLUMN_M + 0.002) & (far[:, 1] < NEAR_M)
        inside &= far[:, 2] <= 0.5 * self.grid.tall_m + 0.002 if self.grid is not None else False
        if not inside.any():
            return None
        distance = np.where(inside, np.linalg.norm(far, axis=1), np.inf)
        return int(distance.argmin())


def _across(grid: Grid, steps: int) -> Floats:
    return np.linspace(0.0, COLUMN_M * len(grid.depth_m), steps)


def _spots(mesh, edge: Edge, along: Floats, into: Floats) -> Floats:
    """Return places on the skin at rest, by height above the sill and way in from the lip, (k, 3) [m]."""
    first, last = mesh.edges[edge]
    lip = mesh.surface.points[mesh.hem_skin[first : last + 1]]
    order = np.argsort(lip[:, 2])
    lip = lip[order]
    way = 1.0 if edge == "hinge_edge" else -1.0
    height = np.clip(along, lip[0, 2], lip[-1, 2])
    x = np.interp(height, lip[:, 2], lip[:, 0]) + way * np.maximum(into, 0.001)
    skin = mesh.shape.skin_point(x, height)
    return np.column_stack((x, skin[:, 1] * mesh.outboard_sign, height))


def _seats(mesh, spots: Floats) -> tuple[Ints, Floats]:
    triangle, weights, _ = mesh.locate(spots, _PARTS)
    return mesh.surface.triangles[triangle], weights


def _sheet(mesh, grid: Grid, edge: Edge) -> tuple[Ints, Floats, Ints, Floats]:
    """Return the band of an edge: nodes and weights of its points, triangles, places on the picture."""
    rows, columns = PER_ROW * len(grid.along_m) + 1, PER_COLUMN * len(grid.depth_m) + 1
    up = np.linspace(0.0, 1.0, rows)
    along, into = np.meshgrid(up * grid.tall_m * len(grid.along_m), _across(grid, columns), indexing="ij")
    nodes, weights = _seats(mesh, _spots(mesh, edge, along.ravel(), into.ravel()))
    across = np.linspace(0.0, 1.0, columns)
    rightward = (edge == "latch_edge") == (mesh.outboard_sign > 0.0)  # as it is seen from outside
    v, u = np.meshgrid(up, across if rightward else 1.0 - across, indexing="ij")
    corner = np.arange(rows * columns).reshape(rows, columns)
    a, b, c, d = (
        part.ravel() for part in (corner[:-1, :-1], corner[:-1, 1:], corner[1:, 1:], corner[1:, :-1])
    )
    triangles = np.concatenate((np.column_stack((a, b, c)), np.column_stack((a, c, d))))
    return nodes, weights, triangles, np.column_stack((u.ravel(), v.ravel()))


def _centres(mesh, grid: Grid) -> tuple[Ints, Floats]:
    """Return nodes and weights of every cell's middle on the skin."""
    spots = []
    for index in range(len(grid.cells)):
        edge, row, column = grid.place(index)
        along, into = np.array([grid.along_m[row]]), np.array([(column + 0.5) * COLUMN_M])
        spots.append(_spots(mesh, edge, along, into)[0])
    return _seats(mesh, np.array(spots))
