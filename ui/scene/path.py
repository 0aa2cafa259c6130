"""The load path as it is drawn: the push's own flow of force, from the tip to where it leaves the metal.

A frame brings the flow from node to node (`sim.path`). Nodes that lie close together in one part are taken
as one cell and their flows summed. From where force leaves the metal it is followed back along the flow to
the tip, and what runs the same way is drawn as one: a river seen from its mouths. No step is drawn that the
flow does not take, and each is as wide as what leaves the metal at the ends it leads to.

Metal that has yielded or torn keeps forces of its own that run in circles, in sum a hundred times the push
and no part of it. So only what leaves the metal is followed, as straight as the flow allows, and a way that
winds is left out: it follows those circles.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import dijkstra

from sim.record import Frame
from ui.scene import tubes
from ui.scene.torn import origins

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid = tuple[Floats, Ints, Floats]

LEAST_N = 60.0
"""A push weaker than this has no path worth drawing."""
HELD_SHARE, LOOSE_SHARE = 0.015, 0.12
"""Least share of the push that leaves the metal in a cell: where something holds it, and elsewhere."""
OUTLET_M, LEAST_OUTLET = 0.16, 0.10
"""Cells nearer than this to a stronger one are one outlet; one that takes less of the push is not drawn."""
WINDING = 1.8
"""A way longer than this much of the shortest through the metal, and a cell more, winds."""
BROAD_SHARE = 0.05
"""Ways are chosen by length over force; below this share of the push, and above all of it, length counts."""
CELL_M = 0.07
"""Nodes nearer than this are drawn as one."""
RADIUS_M, LEAST_RADIUS_M = 0.023, 0.0035
"""Of a strand with all of the force of a push, and of the thinnest."""
FULL_N, THIN_RATIO = 4000.0, 0.4
"""Force of a push that is drawn at full width, and how much thinner the weakest is drawn."""
RINGS = 3
"""Rings of a tube for each step from cell to cell."""
SIDES = 6
ROUNDING = 40
"""How often the corners of a way are rounded: it follows cells, the force does not."""
MOUTH_RATIO = 1.7
"""Of the ball at the end of a way, where force leaves the metal, to the way's own radius."""
LEAD = 2
"""Steps that a side branch is drawn along with its stem, so that it leaves it smoothly."""


@dataclass(frozen=True)
class Strand:
    """One way of the force, from the tip's side outward.

    Parameters
    ----------
    cells : the cells it passes, shape (k,)
    force_n : what passes each step, shape (k - 1,) [N]
    """

    cells: tuple[int, ...]
    force_n: tuple[float, ...]

    def after(self, first: int) -> Strand:
        """Return what is left of it from its step number ``first`` on."""
        return Strand(self.cells[first:], self.force_n[first:])


class LoadPath:
    """Flows over one door model."""

    def __init__(self, model) -> None:
        self.whole = np.asarray(model.structure.triangles)
        self.start = np.asarray(model.start.points)
        self.cells = _cells(self.start, _sheet_of(model))
        self.count = int(self.cells.max()) + 1
        self.least = np.full(self.count, LOOSE_SHARE)
        self.least[np.unique(self.cells[_held_nodes(model.structure)])] = HELD_SHARE

    def cells_of(self, frame: Frame) -> Ints:
        """Return the cell of every node there is now, shape (nodes,); a torn node stays in its cell."""
        if frame.triangles is None:
            return self.cells
        return self.cells[origins(self.whole, np.asarray(frame.triangles), len(self.start))]

    def ways(self, frame: Frame) -> list[Strand]:
        """Return the whole ways from the tip to where force leaves the metal, the strongest first."""
        if not len(frame.path_pairs) or frame.force_n < LEAST_N:
            return []
        flow = _Flow.between(frame, self.cells_of(frame), self.count)
        return flow.followed(flow.near(frame), frame.force_n, self.least)

    def strands(self, frame: Frame) -> list[Strand]:
        """Return the ways with each step in the first of them alone; none where nothing is pushed."""
        ways = self.ways(frame)
        cut = [way.after(first) for way, first in zip(ways, _branchings(ways), strict=True)]
        return [strand for strand in cut if len(strand.cells) > 1]

    def ribbons(self, frame: Frame) -> Solid | None:
        """Return the ways of a frame as one solid; None where nothing is drawn."""
        ways = self.ways(frame)
        if not ways:
            return None
        return _solid(ways, _middles(frame, self.cells_of(frame), self.count), frame.force_n)


def _held_nodes(structure) -> Ints:
    """Return the nodes at which something holds the metal: ties, the rim, what stands still."""
    still = [] if structure.fixed is None else [np.flatnonzero(structure.fixed.any(axis=1))]
    return np.concatenate([np.asarray(structure.rim), *(tie.nodes for tie in structure.ties), *still]).astype(
        np.int64
    )


def radius_of(force_n: float, whole_n: float) -> float:
    """Return how thick a strand is drawn [m]: its section by its share of the push, less in a weak one."""
    push = THIN_RATIO + (1.0 - THIN_RATIO) * min(whole_n / FULL_N, 1.0)
    share = min(force_n / whole_n, 1.0)
    return float(max(LEAST_RADIUS_M, push * RADIUS_M * np.sqrt(share)))


def _sheet_of(model) -> Ints:
    """Return a number for what each node belongs to: an outer skin, all else of a door, pillar or rail."""
    sheet = np.zeros(len(model.start.points), dtype=np.int64)
    side = getattr(model, "side", None)
    doors = {"front": model.mesh} if side is None else {"front": side.front, "rear": side.rear}
    for index, (name, mesh) in enumerate(doors.items()):
        first = 0 if side is None else model.first[name]
        sheet[first : first + mesh.surface.node_count] = 2 * index
        sheet[first + mesh.surface.nodes_of(("outer_skin",))] = 2 * index + 1
    if side is not None:
        sheet[model.first["pillar"] :] = 2 * len(doors)
    if model.rail is not None:
        sheet[model.rail.nodes] = 2 * len(doors) + 1
    if model.rocker is not None:
        sheet[model.rocker.nodes] = 2 * len(doors) + 2
    return sheet


def _cells(points: Floats, sheet: Ints) -> Ints:
    """Return the cell of each node, shape (nodes,): a box of the start shape in one sheet."""
    box = np.floor(points / CELL_M).astype(np.int64)
    _, cell = np.unique(np.column_stack((box, sheet)), axis=0, return_inverse=True)
    return np.asarray(cell, dtype=np.int64).reshape(-1)


@dataclass(frozen=True)
class _Flow:
    """The flow of a frame between cells.

    Parameters
    ----------
    ends : shape (k, 2), from cell to cell;  force_n : shape (k,), what passes [N]
    length_m : shape (k,), how far each step goes
    net : shape (cells,), what ends in each cell [N];  middles : shape (cells, 3) [m]
    cells : shape (nodes,), the cell of each node
    """

    ends: Ints
    force_n: Floats
    length_m: Floats
    net: Floats
    cells: Ints
    middles: Floats

    @classmethod
    def between(cls, frame: Frame, cells: Ints, count: int) -> _Flow:
        """Return the flow of a frame, what goes both ways between two cells taken off against each other."""
        ends, flow = cells[frame.path_pairs], np.asarray(frame.path_flow_n)
        both = sparse.coo_array((flow, (ends[:, 0], ends[:, 1])), shape=(count, count)).tocsr()
        net = (both - both.T).tocoo()
        keep = net.data > 0.0
        a, b, flow = net.row[keep], net.col[keep], net.data[keep]
        middles = _middles(frame, cells, count)
        length = np.linalg.norm(middles[a] - middles[b], axis=1) + 1e-4
        lost = np.bincount(b, flow, minlength=count) - np.bincount(a, flow, minlength=count)
        return cls(np.column_stack((a, b)), flow, length, lost, cells, middles)

    def near(self, frame: Frame) -> Ints:
        """Return the cells under the tip that take up what it pushes with; all under it where none does."""
        tip = np.asarray(frame.drive_points).reshape(-1, 3)[0]
        nodes = np.unique(frame.path_pairs[:, 0])
        away = np.linalg.norm(frame.points[nodes] - tip, axis=1)
        under = np.unique(self.cells[nodes[away < max(CELL_M, float(away.min()) + 0.01)]])
        giving = under[self.net[under] < -LEAST_OUTLET * frame.force_n]
        return giving if len(giving) else under

    def followed(self, roots: Ints, whole_n: float, least: Floats) -> list[Strand]:
        """Return the ways from the roots to where at least a share of the push, (cells,), leaves."""
        leaving = np.where(self.net >= least * whole_n, self.net, 0.0)
        leaving[roots] = 0.0
        share = np.minimum(self.force_n / whole_n, 1.0)
        far, before, _ = self._from(roots, self.length_m / (share + BROAD_SHARE))
        straight, _, _ = self._from(roots, self.length_m, directed=False)
        steps_to = _index(self.ends, len(self.net))
        ways = []
        for cells, force in self._outlets(leaving):
            if force < LEAST_OUTLET * whole_n:
                continue
            for cell in [cell for cell in cells if np.isfinite(far[cell])]:
                way = _cells_to(cell, before)
                long = self.length_m[_steps(way, steps_to)].sum()
                if long <= WINDING * straight[cell] + CELL_M:
                    ways.append((way, force))
                    break
        return _bundled(ways)

    def _from(self, roots: Ints, cost: Floats, *, directed: bool = True) -> tuple[Floats, Ints, Ints]:
        """Return how far each cell is from the nearest root, the cell before it and that root."""
        size = len(self.net)
        graph = sparse.csr_array((cost, self.ends.T), shape=(size, size))
        return dijkstra(graph, directed, roots, return_predecessors=True, min_only=True)

    def _outlets(self, leaving: Floats) -> list[tuple[list[int], float]]:
        """Return where force leaves the metal: neighbouring cells, the strongest first, and their sum [N]."""
        out: list[list[int]] = []
        for cell in np.argsort(-leaving, kind="stable")[: np.count_nonzero(leaving)].tolist():
            away = [np.linalg.norm(self.middles[one[0]] - self.middles[cell]) for one in out]
            if away and min(away) < OUTLET_M:
                out[int(np.argmin(away))].append(cell)
            else:
                out.append([cell])
        return [(cells, float(leaving[cells].sum())) for cells in out]


def _index(ends: Ints, size: int) -> sparse.csr_array:
    """Return the number, from one, of the step from one cell to another."""
    return sparse.csr_array((np.arange(1, len(ends) + 1), ends.T), shape=(size, size))


def _bundled(ways: list[tuple[tuple[int, ...], float]]) -> list[Strand]:
    """Return ways and what they bring as strands, the strongest first, each step with all that passes it."""
    through: dict[tuple[int, int], float] = {}
    for cells, force in ways:
        for step in itertools.pairwise(cells):
            through[step] = through.get(step, 0.0) + force
    ways = sorted(ways, key=lambda way: -way[1])
    return [Strand(cells, tuple(through[step] for step in itertools.pairwise(cells))) for cells, _ in ways]


def _cells_to(cell: int, before: Ints) -> tuple[int, ...]:
    """Return the cells of a tree of ways from its root to a cell."""
    cells = [cell]
    while before[cells[-1]] >= 0:
        cells.append(int(before[cells[-1]]))
    return tuple(reversed(cells))


def _steps(cells: tuple[int, ...], index: sparse.csr_array) -> Ints:
    """Return the steps from each of some cells to the next."""
    return np.asarray(index[list(cells[:-1]), list(cells[1:])]).reshape(-1).astype(np.int64) - 1


def _branchings(ways: list[Strand]) -> list[int]:
    """Return how many steps at its beginning each way shares with the ways before it."""
    known: set[tuple[int, int]] = set()
    out = []
    for way in ways:
        steps = list(itertools.pairwise(way.cells))
        shared = next((k for k, step in enumerate(steps) if step not in known), len(steps))
        known.update(steps)
        out.append(shared)
    return out


def _middles(frame: Frame, cells: Ints, count: int) -> Floats:
    """Return the middle of what flows through each cell, on the moved points, shape (cells, 3) [m]."""
    nodes = np.asarray(frame.path_pairs).ravel()
    weight = np.repeat(np.asarray(frame.path_flow_n), 2)
    total = np.bincount(cells[nodes], weight, minlength=count)
    sums = [np.bincount(cells[nodes], weight * frame.points[nodes, i], minlength=count) for i in range(3)]
    return np.stack(sums, axis=1) / np.maximum(total, 1e-12)[:, None]


def _solid(ways: list[Strand], middles: Floats, whole_n: float) -> Solid:
    """Return ways as round ribbons, their corners rounded, as one solid; what they share is drawn once."""
    knots = np.array([len(way.cells) for way in ways])
    counts = RINGS * (knots - 1) + 1
    ends = np.cumsum(knots) - 1
    radii = [np.array([radius_of(force, whole_n) for force in way.force_n]) for way in ways]
    wide = np.concatenate([np.concatenate((r[:1], 0.5 * (r[:-1] + r[1:]), r[-1:])) for r in radii])
    # all ways on one scale, one behind the other: knots at whole numbers
    at = np.concatenate([
        np.linspace(end - knot + 1, end, count) for end, knot, count in zip(ends, knots, counts, strict=True)
    ])  # fmt: skip
    where = np.arange(len(wide))
    place = middles[np.concatenate([way.cells for way in ways])]
    curve = np.stack([np.interp(at, where, place[:, i]) for i in range(3)], axis=1)
    last = np.cumsum(counts) - 1
    fixed = np.concatenate((last - counts + 1, last))
    held = curve[fixed]
    for _ in range(ROUNDING):
        curve[1:-1] = 0.25 * curve[:-2] + 0.5 * curve[1:-1] + 0.25 * curve[2:]
        curve[fixed] = held
    left_out = RINGS * np.maximum(np.array(_branchings(ways)) - LEAD, 0)
    place_in_way = np.arange(len(curve)) - np.repeat(last - counts + 1, counts)
    drawn = place_in_way >= np.repeat(left_out, counts)
    reach = np.interp(at, where, wide)
    ribbons = tubes.tubes_of(curve[drawn], counts - left_out, reach[drawn], SIDES, (0.31, 0.83, 0.46))
    mouths = [tubes.ball(curve[end], MOUTH_RATIO * reach[end], 4, 8) for end in last]
    return tubes.joined([ribbons, *mouths])
