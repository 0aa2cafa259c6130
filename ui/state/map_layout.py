"""Where the cells of an outcome map lie on a flat chart, and which of them belong together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from sim.map_grid import Grid
from sim.plan import Edge

GAP_SHARE = 0.2
"""Share of the chart's width between two edges: there the door's middle is left out."""


@dataclass(frozen=True)
class Box:
    """A rectangle, from its upper left corner [px]."""

    x: float
    y: float
    wide: float
    tall: float

    def holds(self, x: float, y: float) -> bool:
        """Tell whether a point lies in it."""
        return self.x <= x < self.x + self.wide and self.y <= y < self.y + self.tall

    @property
    def middle(self) -> tuple[float, float]:
        """Its middle."""
        return self.x + 0.5 * self.wide, self.y + 0.5 * self.tall


@dataclass(frozen=True)
class Layout:
    """A chart laid out: the door seen from outside, each edge with its lip outermost.

    blocks : where each edge's cells lie;  rightward : whether an edge's depth grows to the right
    """

    grid: Grid
    blocks: dict[Edge, Box]
    rightward: dict[Edge, bool]

    def cell(self, index: int) -> Box:
        """Return where a cell lies."""
        edge, row, column = self.grid.place(index)
        block, rows, columns = self.blocks[edge], len(self.grid.along_m), len(self.grid.depth_m)
        wide, tall = block.wide / columns, block.tall / rows
        across = column if self.rightward[edge] else columns - 1 - column
        return Box(block.x + across * wide, block.y + (rows - 1 - row) * tall, wide, tall)

    def at(self, x: float, y: float) -> int | None:
        """Return the cell under a point; None where there is none."""
        return next((k for k in range(len(self.grid.cells)) if self.cell(k).holds(x, y)), None)

    def level(self, edge: Edge, along_m: float) -> float:
        """Return how far down the chart a height above the sill lies [px]."""
        block = self.blocks[edge]
        whole = self.grid.tall_m * len(self.grid.along_m)
        return block.y + block.tall * (1.0 - along_m / whole)

    def step(self, index: int | None, right: int, up: int) -> int:
        """Return the cell so many to the right and up of one, on over the gap to the other edge."""
        if index is None:
            return self.grid.index(self.grid.edges[0], len(self.grid.along_m) - 1, 0)
        edge, row, column = self.grid.place(index)
        row = min(max(row + up, 0), len(self.grid.along_m) - 1)
        column += right if self.rightward[edge] else -right
        last = len(self.grid.depth_m) - 1
        if column > last and len(self.grid.edges) > 1:
            others = [one for one in self.grid.edges if one != edge]
            return self.grid.index(others[0], row, last)
        return self.grid.index(edge, row, min(max(column, 0), last))


def lay_out(
    grid: Grid, wide: float, tall: float, type_px: float, gap_px: float = 0.0, *, left_side: bool = False
) -> Layout:
    """Return the chart of a door laid out in an area; a line of type is left free above and below.

    ``gap_px`` is the least gap between two edges, for what is written there; ``left_side`` is a door on the
    left of the car: seen from outside its latch edge is on the right.
    """
    top, foot = 1.8 * type_px, 1.8 * type_px
    order: list[Edge] = [edge for edge in ("latch_edge", "sill_edge", "hinge_edge") if edge in grid.edges]
    if left_side:
        order.reverse()
    gap = min(max(GAP_SHARE * wide, gap_px), 0.5 * wide) if len(order) > 1 else 0.0
    each = (wide - gap * (len(order) - 1)) / len(order)
    blocks = {
        edge: Box(k * (each + gap), top, each, max(8.0, tall - top - foot)) for k, edge in enumerate(order)
    }
    return Layout(grid, blocks, {edge: k == 0 for k, edge in enumerate(order)})


def regions(grid: Grid, words: Sequence[str]) -> tuple[tuple[int, ...], ...]:
    """Return the cells that bear one word and hang together, largest region first."""
    left = set(range(len(words)))
    found = []
    while left:
        seed = min(left)
        region, edge_cells = {seed}, [seed]
        while edge_cells:
            here = edge_cells.pop()
            for near in grid.beside(here):
                if near in left and near not in region and words[near] == words[seed]:
                    region.add(near)
                    edge_cells.append(near)
        left -= region
        found.append(tuple(sorted(region)))
    return tuple(sorted(found, key=lambda region: (-len(region), region)))


def label_spot(layout: Layout, region: Sequence[int], wide: float) -> tuple[float, float] | None:
    """Return the middle of the spot where a region's word is written [px]: near its middle, where it fits.

    ``wide`` is the room the word takes; None when no level of the region has that much.
    """
    runs = [run for run in _level_runs(layout.grid, region) if len(run) * layout.cell(run[0]).wide >= wide]
    if not runs:
        return None
    middles = [layout.cell(index).middle for index in region]
    x, y = (sum(middle[k] for middle in middles) / len(middles) for k in (0, 1))
    spots = [_middle_of(layout, run) for run in runs]
    return min(spots, key=lambda spot: ((spot[0] - x) ** 2 + (spot[1] - y) ** 2, spot))


def _level_runs(grid: Grid, region: Sequence[int]) -> list[list[int]]:
    """Return a region's unbroken rows of cells."""
    inside = set(region)
    out: list[list[int]] = []
    for index in sorted(region):
        _, _, column = grid.place(index)
        if column and index - 1 in inside:
            out[-1].append(index)
        else:
            out.append([index])
    return out


def _middle_of(layout: Layout, run: Sequence[int]) -> tuple[float, float]:
    first, last = layout.cell(run[0]).middle, layout.cell(run[-1]).middle
    return 0.5 * (first[0] + last[0]), first[1]
