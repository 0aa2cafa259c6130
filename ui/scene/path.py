"""The load path as it is drawn: the push's own flow of force, from the tip to where it leaves the metal.

A frame brings the flow from node to node (`sim.path`). Nodes that lie close together in one part are taken
as one cell and their flows summed. What ends in each cell is followed back along the flow to the tip, and
what runs the same way is drawn as one: a river seen from its mouths. No step is drawn that is not in the
flow, and none thicker than what flows there.
"""

from __future__ import annotations

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
LEAST_SHARE = 0.03
"""Steps with less than this share of the tip's force are left out."""
ROUNDS, WAYS, LEAST_WAY = 12, 8, 0.004
"""The flow is followed in so many rounds of so many ways, none weaker than this share of the tip's force."""
BROAD_SHARE = 0.05
"""Ways are chosen by length over force; below this share of the push only length counts."""
CELL_M = 0.07
"""Nodes nearer than this are drawn as one."""
RADIUS_M, LEAST_RADIUS_M = 0.023, 0.0035
"""Of a strand with all of the force of a push, and of the thinnest."""
FULL_N, THIN_RATIO = 4000.0, 0.4
"""Force of a push that is drawn at full width, and how much thinner the weakest is drawn."""
RINGS = 3
"""Rings of a tube for each step from cell to cell."""
SIDES = 6
ROUNDING = 14
"""How often the corners of a way are rounded: it follows cells, the force does not."""


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


class LoadPath:
    """Flows over one door model."""

    def __init__(self, model) -> None:
        self.whole = np.asarray(model.structure.triangles)
        self.start = np.asarray(model.start.points)
        self.cells = _cells(self.start, _sheet_of(model))

    def cells_of(self, frame: Frame) -> Ints:
        """Return the cell of every node there is now, shape (nodes,); a torn node stays in its cell."""
        if frame.triangles is None:
            return self.cells
        return self.cells[origins(self.whole, np.asarray(frame.triangles), len(self.start))]

    def strands(self, frame: Frame) -> list[Strand]:
        """Return the strands of a frame; none where nothing is pushed."""
        if not len(frame.path_pairs) or frame.force_n < LEAST_N:
            return []
        flow = _Flow.between(frame, self.cells_of(frame), int(self.cells.max()) + 1)
        through = flow.followed(flow.near(frame), frame.force_n)
        keep = through >= LEAST_SHARE * frame.force_n
        ends, through = flow.ends[keep], through[keep]
        held = _held(ends, flow.near(frame), int(self.cells.max()) + 1)
        return _runs(ends[held], through[held])

    def ribbons(self, frame: Frame) -> Solid | None:
        """Return the strands of a frame as one solid; None where nothing is drawn."""
        strands = self.strands(frame)
        if not strands:
            return None
        middles = _middles(frame, self.cells_of(frame), int(self.cells.max()) + 1)
        return _solid(strands, middles, frame.force_n)


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
    net : shape (cells,), what ends in each cell [N]
    """

    ends: Ints
    force_n: Floats
    length_m: Floats
    net: Floats
    cells: Ints

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
        return cls(np.column_stack((a, b)), flow, length, lost, cells)

    def near(self, frame: Frame) -> Ints:
        """Return the cells under the tip, from which something goes on."""
        tip = np.asarray(frame.drive_points).reshape(-1, 3)[0]
        nodes = np.unique(frame.path_pairs[:, 0])
        away = np.linalg.norm(frame.points[nodes] - tip, axis=1)
        return np.unique(self.cells[nodes[away < max(CELL_M, float(away.min()) + 0.01)]])

    def followed(self, roots: Ints, whole_n: float) -> Floats:
        """Return what is followed of each step's force from the roots to where it ends, shape (k,) [N].

        One way after another is taken out of the flow, each as strong as its weakest step, the short and
        broad ones first, until what is left is too fine to be seen.
        """
        left = self.force_n.copy()
        ends = np.maximum(self.net, 0.0)
        ends[roots] = 0.0
        size = len(self.net)
        index = sparse.csr_array((np.arange(1, len(left) + 1), self.ends.T), shape=(size, size))
        for _ in range(ROUNDS):
            open_steps = left > 0.0
            cost = self.length_m[open_steps] / (left[open_steps] / whole_n + BROAD_SHARE)
            graph = sparse.csr_array((cost, self.ends[open_steps].T), shape=(size, size))
            far, before, _ = dijkstra(graph, indices=roots, return_predecessors=True, min_only=True)
            sinks = np.flatnonzero((ends > LEAST_WAY * whole_n) & np.isfinite(far))
            sinks = sinks[np.argsort(-ends[sinks], kind="stable")][:WAYS]
            taken = 0.0
            for sink in sinks.tolist():
                steps = _steps_to(sink, before, index)
                force = min(float(ends[sink]), float(left[steps].min()))
                if force >= LEAST_WAY * whole_n:
                    left[steps] -= force
                    ends[sink] -= force
                    taken += force
            if taken <= 0.0:
                break
        return self.force_n - left


def _steps_to(cell: int, before: Ints, index: sparse.csr_array) -> Ints:
    """Return the steps of a tree of ways that lead to a cell."""
    cells = [cell]
    while before[cells[-1]] >= 0:
        cells.append(int(before[cells[-1]]))
    return np.asarray(index[cells[1:], cells[:-1]]).reshape(-1).astype(np.int64) - 1


def _held(ends: Ints, roots: Ints, count: int) -> NDArray[np.bool_]:
    """Return which steps hang together with the tip, shape (k,).

    Where fine ways that are not drawn come together again there would else be pieces that float.
    """
    graph = sparse.csr_array((np.ones(len(ends)), ends.T), shape=(count, count))
    far = dijkstra(graph, indices=roots, unweighted=True, min_only=True)
    return np.isfinite(far[ends[:, 0]])


def _runs(ends: Ints, force_n: Floats) -> list[Strand]:
    """Return steps as strands, each step in one: the strongest first, and on along the strongest step."""
    after: dict[int, list[int]] = {}
    for step in np.argsort(-force_n, kind="stable").tolist():
        after.setdefault(int(ends[step, 0]), []).append(step)
    goals = set(ends[:, 1].tolist())
    waiting = [cell for cell in after if cell not in goals] or list(after)[:1]
    out = []
    while waiting or any(after.values()):
        if not waiting:
            waiting = [next(cell for cell, steps in after.items() if steps)]
        start = waiting.pop()
        while after.get(start):
            cells, force = [start], []
            while after.get(cells[-1]):
                step = after[cells[-1]].pop(0)
                force.append(float(force_n[step]))
                cells.append(int(ends[step, 1]))
            out.append(Strand(tuple(cells), tuple(force)))
            waiting += cells[1:]
    return out


def _middles(frame: Frame, cells: Ints, count: int) -> Floats:
    """Return the middle of what flows through each cell, on the moved points, shape (cells, 3) [m]."""
    nodes = np.asarray(frame.path_pairs).ravel()
    weight = np.repeat(np.asarray(frame.path_flow_n), 2)
    total = np.bincount(cells[nodes], weight, minlength=count)
    sums = [np.bincount(cells[nodes], weight * frame.points[nodes, i], minlength=count) for i in range(3)]
    return np.stack(sums, axis=1) / np.maximum(total, 1e-12)[:, None]


def _solid(strands: list[Strand], middles: Floats, whole_n: float) -> Solid:
    """Return the strands as round ribbons, the corners of their ways rounded, as one solid."""
    knots = np.array([len(strand.cells) for strand in strands])
    counts = RINGS * (knots - 1) + 1
    ends = np.cumsum(knots) - 1
    radii = [np.array([radius_of(force, whole_n) for force in strand.force_n]) for strand in strands]
    wide = np.concatenate([np.concatenate((r[:1], 0.5 * (r[:-1] + r[1:]), r[-1:])) for r in radii])
    # all strands on one scale, one behind the other: knots at whole numbers
    at = np.concatenate([
        np.linspace(end - knot + 1, end, count) for end, knot, count in zip(ends, knots, counts, strict=True)
    ])  # fmt: skip
    where = np.arange(len(wide))
    place = middles[np.concatenate([strand.cells for strand in strands])]
    curve = np.stack([np.interp(at, where, place[:, i]) for i in range(3)], axis=1)
    last = np.cumsum(counts) - 1
    fixed = np.concatenate((last - counts + 1, last))
    held = curve[fixed]
    for _ in range(ROUNDING):
        curve[1:-1] = 0.25 * curve[:-2] + 0.5 * curve[1:-1] + 0.25 * curve[2:]
        curve[fixed] = held
    return tubes.tubes_of(curve, counts, np.interp(at, where, wide), SIDES, (0.31, 0.83, 0.46))
