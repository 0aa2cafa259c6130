"""Places at which an outcome map asks what a push would do: cells along the door's edges, by depth."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from typing import TYPE_CHECKING

import msgspec

from sim.plan import Edge, PanelName

if TYPE_CHECKING:
    from meshes.door_shape import DoorShape

EDGES: tuple[Edge, ...] = ("latch_edge", "hinge_edge")
TALL_M = 0.06
"""Wanted height of a cell, about the width of a wide tip: little lies between two cells unseen."""
FACE_SHARES = (0.2, 0.4, 0.7)
"""Depths between lip and inner bend, as shares of the shut face: closer where its load changes hands."""
BEHIND_SHARE = 0.05
"""How far past the inner bend the deepest cell's pad has its middle, as a share of the shut face."""


class Cell(msgspec.Struct, frozen=True, order=True):
    """One place for the tip on the door.

    edge : which edge;  along_m : height above the sill [m];  depth_m : from the lip to the pad's middle [m]
    """

    edge: Edge
    along_m: float
    depth_m: float


class Grid(msgspec.Struct, frozen=True):
    """The cells of a map: edges, by places along each, by depths.

    along_m, depth_m : middles of the cells, rising [m];  tall_m : height of a cell [m]
    panel : which door of a whole side
    """

    edges: tuple[Edge, ...]
    along_m: tuple[float, ...]
    depth_m: tuple[float, ...]
    tall_m: float
    panel: PanelName = "front"

    @property
    def cells(self) -> tuple[Cell, ...]:
        """Every cell, edge by edge, from the sill up, from the lip inboard."""
        return tuple(
            Cell(edge, along, depth)
            for edge in self.edges
            for along in self.along_m
            for depth in self.depth_m
        )

    def index(self, edge: Edge, row: int, column: int) -> int:
        """Return the number of a cell by its edge, its row from the sill and its column from the lip."""
        across = len(self.depth_m)
        return (self.edges.index(edge) * len(self.along_m) + row) * across + column

    def place(self, index: int) -> tuple[Edge, int, int]:
        """Return edge, row and column of a cell's number."""
        rest, column = divmod(index, len(self.depth_m))
        edge, row = divmod(rest, len(self.along_m))
        return self.edges[edge], row, column

    def beside(self, index: int) -> tuple[int, ...]:
        """Return the numbers of the cells that touch a cell along the edge or in depth."""
        edge, row, column = self.place(index)
        near = ((row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1))
        rows, columns = len(self.along_m), len(self.depth_m)
        return tuple(self.index(edge, r, c) for r, c in near if 0 <= r < rows and 0 <= c < columns)

    def depth_bounds(self) -> tuple[float, ...]:
        """Return where the cells of one depth end and the next begin [m], from the lip on."""
        depth = self.depth_m
        between = [0.5 * (a + b) for a, b in itertools.pairwise(depth)]
        last = depth[-1] + 0.5 * (depth[-1] - depth[-2]) if len(depth) > 1 else 2.0 * depth[0]
        return (0.0, *between, last)


def grid_of(shape: DoorShape, *, panel: PanelName = "front", edges: Sequence[Edge] = EDGES) -> Grid:
    """Return the cells of a door: from sill to belt, from the lip to behind the inner bend."""
    rows = max(3, round(shape.height_m / TALL_M))
    tall = shape.height_m / rows
    face = shape.shut_face_depth_m
    depths = (0.5 * shape.hem_width_m, *(share * face for share in FACE_SHARES), (1.0 + BEHIND_SHARE) * face)
    return Grid(
        tuple(edges),
        tuple(round((row + 0.5) * tall, 4) for row in range(rows)),
        tuple(round(depth, 4) for depth in depths),
        tall,
        panel,
    )


def at(grid: Grid, edge: Edge, along_m: float, depth_m: float) -> int | None:
    """Return the number of the cell in which a place lies; None off the map."""
    bounds = grid.depth_bounds()
    row = int(along_m // grid.tall_m)
    column = next((k for k in range(len(grid.depth_m)) if bounds[k] <= depth_m < bounds[k + 1]), None)
    if edge not in grid.edges or column is None or not 0 <= row < len(grid.along_m):
        return None
    return grid.index(edge, row, column)
