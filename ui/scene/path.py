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
LEAST_SHARE = 0.06
"""Strands with less than this share of the tip's force are left out."""
CELL_M = 0.04
"""Nodes nearer than this are drawn as one."""
RADIUS_M, LEAST_RADIUS_M = 0.024, 0.0035
"""Of a strand with all of the force of a push, and of the thinnest."""
FULL_N, THIN_RATIO = 4000.0, 0.7
"""Force of a push that is drawn at full width, and how much thinner the weakest is drawn."""
HOLDS = ("latch_plate", "upper_hinge", "lower_hinge")
"""Node sets of what holds the door."""
RINGS = 4
"""Rings of a tube for each step from cell to cell."""
SIDES = 7


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
        surface = model.mesh.surface
        self.whole = np.asarray(surface.triangles)
        self.start = np.asarray(model.start.points)
        self.cells = _cells(self.start, surface)
        self.held = np.zeros(int(self.cells.max()) + 1, dtype=bool)
        for name in HOLDS:
            self.held[self.cells[surface.nodes[name]]] = True

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
        whole, least = frame.force_n, LEAST_SHARE * frame.force_n
        before, far = flow.ways(flow.near(frame))
        reached = np.isfinite(far)
        ends = flow.losses * reached
        held = np.where(self.held, ends, 0.0)
        held *= min(1.0, whole / max(float(held.sum()), 1e-9))
        other = ends - ends * self.held
        other *= min(1.0, (whole - float(held.sum())) / max(float(other.sum()), 1e-9))
        out = _runs(before, flow.capped(before, _gathered(before, far, held + other)), least)
        # what comes to latch and hinges in ways too fine to follow from the tip is shown where it gathers
        apart = np.flatnonzero(self.held & ~reached & (flow.losses > 0.0))
        if len(apart):
            before, far = flow.ways(apart, back=True)
            into = flow.gains * (np.isfinite(far) & ~reached)
            into *= min(1.0, float(flow.losses[apart].sum()) / max(float(into.sum()), 1e-9))
            through = flow.capped(before, _gathered(before, far, into), back=True)
            out += _runs(before, through, least)
        return out

    def ribbons(self, frame: Frame) -> Solid | None:
        """Return the strands of a frame as one solid; None where nothing is drawn."""
        strands = self.strands(frame)
        if not strands:
            return None
        middles = _middles(frame, self.cells_of(frame), int(self.cells.max()) + 1)
        return tubes.joined([_ribbon(strand, middles, frame.force_n) for strand in strands])


def radius_of(force_n: float, whole_n: float) -> float:
    """Return how thick a strand is drawn [m]: by its share of the tip's force, less so in a weak push."""
    push = THIN_RATIO + (1.0 - THIN_RATIO) * min(whole_n / FULL_N, 1.0)
    share = min(force_n / whole_n, 1.0)
    return float(max(LEAST_RADIUS_M, push * RADIUS_M * share**0.75))


def _cells(points: Floats, surface) -> Ints:
    """Return the cell of each node, shape (nodes,): a box of the start shape in one part of the door."""
    skin = np.zeros(len(points), dtype=np.int64)
    skin[surface.nodes_of(("outer_skin",))] = 1
    box = np.floor(points / CELL_M).astype(np.int64)
    _, cell = np.unique(np.column_stack((box, skin)), axis=0, return_inverse=True)
    return np.asarray(cell, dtype=np.int64).reshape(-1)


@dataclass(frozen=True)
class _Flow:
    """The flow of a frame between cells.

    Parameters
    ----------
    ends : shape (k, 2), from cell to cell;  force_n : shape (k,), what passes [N]
    cost : shape (k,), shorter where more passes
    net : shape (cells,), what ends in each cell, or is too fine to be followed beyond it [N]
    """

    ends: Ints
    force_n: Floats
    cost: Floats
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
        cost = length / (flow / frame.force_n + 0.01)
        return cls(np.column_stack((a, b)), flow, cost, lost, cells)

    @property
    def losses(self) -> Floats:
        """What ends in each cell [N]."""
        return np.maximum(self.net, 0.0)

    @property
    def gains(self) -> Floats:
        """What begins in each cell [N]."""
        return np.maximum(-self.net, 0.0)

    def near(self, frame: Frame) -> Ints:
        """Return the cells under the tip, from which something goes on."""
        tip = np.asarray(frame.drive_points).reshape(-1, 3)[0]
        nodes = np.unique(frame.path_pairs[:, 0])
        away = np.linalg.norm(frame.points[nodes] - tip, axis=1)
        return np.unique(self.cells[nodes[away < max(CELL_M, float(away.min()) + 0.01)]])

    def ways(self, roots: Ints, *, back: bool = False) -> tuple[Ints, Floats]:
        """Return the cell before each cell on its way from the roots (negative for none), and how far it is.

        ``back`` follows the flow against its direction.
        """
        a, b = (self.ends[:, 1], self.ends[:, 0]) if back else (self.ends[:, 0], self.ends[:, 1])
        graph = sparse.csr_array((self.cost, (a, b)), shape=(len(self.net), len(self.net)))
        far, before, _ = dijkstra(graph, indices=roots, return_predecessors=True, min_only=True)
        return before, far

    def capped(self, before: Ints, through: Floats, *, back: bool = False) -> Floats:
        """Return what is drawn into each cell, at most what flows on that very step, shape (cells,)."""
        a, b = (self.ends[:, 1], self.ends[:, 0]) if back else (self.ends[:, 0], self.ends[:, 1])
        own = before[b] == a
        most = np.full(len(through), np.inf)
        most[b[own]] = self.force_n[own]
        return np.minimum(through, most)


def _gathered(before: Ints, far: Floats, force_n: Floats) -> Floats:
    """Return what passes into each cell of a tree of ways, from what ends in each, shape (cells,)."""
    through = force_n.copy()
    for cell in np.argsort(-np.where(np.isfinite(far), far, -1.0)).tolist():  # the farthest first
        if before[cell] >= 0:
            through[before[cell]] += through[cell]
    return through


def _runs(before: Ints, through: Floats, least_n: float) -> list[Strand]:
    """Return the tree of ways as strands, each from its fork outward along the stronger branch."""
    strong = np.flatnonzero((through >= least_n) & (before >= 0))
    after: dict[int, list[int]] = {}
    for cell in strong[np.argsort(-through[strong], kind="stable")].tolist():
        after.setdefault(int(before[cell]), []).append(cell)
    roots = [cell for cell in after if before[cell] < 0]
    starts = [(root, branch) for root in roots for branch in after[root]]
    out = []
    while starts:
        run = list(starts.pop())
        while run[-1] in after:
            main, *others = after[run[-1]]
            starts += [(run[-1], other) for other in others]
            run.append(main)
        out.append(Strand(tuple(run), tuple(float(through[cell]) for cell in run[1:])))
    return out


def _middles(frame: Frame, cells: Ints, count: int) -> Floats:
    """Return the middle of what flows through each cell, on the moved points, shape (cells, 3) [m]."""
    nodes = np.asarray(frame.path_pairs).ravel()
    weight = np.repeat(np.asarray(frame.path_flow_n), 2)
    total = np.bincount(cells[nodes], weight, minlength=count)
    sums = [np.bincount(cells[nodes], weight * frame.points[nodes, i], minlength=count) for i in range(3)]
    return np.stack(sums, axis=1) / np.maximum(total, 1e-12)[:, None]


def _ribbon(strand: Strand, middles: Floats, whole_n: float) -> Solid:
    knots = middles[list(strand.cells)]
    radii = np.array([radius_of(force, whole_n) for force in strand.force_n])
    at_knot = np.concatenate((radii[:1], 0.5 * (radii[:-1] + radii[1:]), radii[-1:]))
    pieces = RINGS * (len(knots) - 1) + 1
    where, at = np.arange(len(knots)), np.linspace(0.0, len(knots) - 1.0, pieces)
    line = np.stack([np.interp(at, where, knots[:, i]) for i in range(3)], axis=1)
    wide = np.interp(at, where, at_knot)
    for _ in range(2 * RINGS):  # the way follows cells: round its corners
        line[1:-1] = 0.25 * line[:-2] + 0.5 * line[1:-1] + 0.25 * line[2:]
    points, normals = tubes.tube_points(line[None], wide[None], SIDES, up=(0.31, 0.83, 0.46))
    return points, tubes.tube_triangles(1, pieces, SIDES), normals
