"""The load path as it is drawn: from the tip, along the hardest loaded metal, to what holds the door.

Widths are the forces at latch, hinges and bar feet as the model found them. The routes between are for the
eye: the shortest way where hard loaded sheet counts as short.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import dijkstra

from sim.record import Frame
from ui.scene import tubes
from ui.scene.seam import GONE_DAMAGE, Stitches

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid = tuple[Floats, Ints, Floats]

LEAST_N = 60.0
"""Smaller shares are not drawn."""
RADIUS_M_PER_N = 2.2e-6
LEAST_RADIUS_M, MOST_RADIUS_M = 0.0024, 0.020
UNLOADED_RATIO = 0.02
"""Load that a sheet without any is given, so that there is always a way."""
PIECES = 30
SIDES = 7
HOLDS = {
    "latch": "latch_core", "upper hinge": "upper_hinge_core", "lower hinge": "lower_hinge_core",
}  # fmt: skip
"""Node set of each thing that holds the door."""


class LoadPath:
    """Routes over one door model."""

    def __init__(self, model) -> None:
        surface = model.mesh.surface
        self.sets = surface.nodes
        self.whole = np.asarray(surface.triangles)
        bar = surface.chains["bar"]
        feet = [
            np.column_stack((np.full(len(self.sets[name]), end), self.sets[name]))
            for name, end in (("bar_foot_front", bar[0]), ("bar_foot_rear", bar[-1]))
        ]
        self.bar = np.concatenate((np.column_stack((bar[:-1], bar[1:])), *feet))

    def ribbons(self, frame: Frame, seam: Stitches) -> Solid | None:
        """Return the ribbons of a frame as one solid; None where nothing is pushed."""
        drives = np.asarray(frame.drive_points).reshape(-1, 3)
        if not len(drives) or frame.force_n < LEAST_N:
            return None
        graph = self._graph(frame, seam)
        solids = []
        for name, nodes in HOLDS.items():
            force = float(np.linalg.norm(frame.reactions.get(name, (0.0, 0.0, 0.0))))
            if force >= LEAST_N:
                route = self._route(graph, frame, drives[0], self.sets[nodes])
                if route is not None:
                    solids.append(_ribbon(route, force))
        return tubes.joined(solids) if solids else None

    def _triangles(self, frame: Frame) -> Ints:
        return self.whole if frame.triangles is None else np.asarray(frame.triangles)

    def _graph(self, frame: Frame, seam: Stitches) -> sparse.csr_array:
        t = self._triangles(frame)
        ends = np.concatenate((t[:, [0, 1]], t[:, [1, 2]], t[:, [2, 0]]))
        load = np.tile(np.asarray(frame.load), 3)
        length = np.linalg.norm(frame.points[ends[:, 0]] - frame.points[ends[:, 1]], axis=1)
        whole = np.asarray(frame.seam_damage) < GONE_DAMAGE
        stitch = np.column_stack((seam.skin[whole, 0], seam.inner[whole, 0]))
        bar_length = np.linalg.norm(frame.points[self.bar[:, 0]] - frame.points[self.bar[:, 1]], axis=1)
        pairs = np.concatenate((ends, stitch, self.bar))
        cost = np.concatenate(
            (
                length / (load + UNLOADED_RATIO),
                np.full(len(stitch), 0.05),
                bar_length / (2.0 * UNLOADED_RATIO),
            )
        )
        size = len(frame.points)
        order = np.lexsort(
            (-cost, pairs[:, 1], pairs[:, 0])
        )  # the cheapest of double edges comes last and stays
        pairs, cost = pairs[order], cost[order]
        keep = np.ones(len(pairs), dtype=bool)
        keep[:-1] = (pairs[1:] != pairs[:-1]).any(axis=1)
        return sparse.csr_array((cost[keep], (pairs[keep, 0], pairs[keep, 1])), shape=(size, size))

    def _route(self, graph: sparse.csr_array, frame: Frame, start: Floats, goal: Ints) -> Floats | None:
        points, metal = frame.points, np.unique(self._triangles(frame))
        first = int(metal[np.argmin(np.linalg.norm(points[metal] - start, axis=1))])
        cost, before = dijkstra(graph, directed=False, indices=first, return_predecessors=True)
        last = int(goal[np.argmin(cost[goal])])
        if not np.isfinite(cost[last]):
            return None
        chain = [last]
        while chain[-1] != first:
            chain.append(int(before[chain[-1]]))
        line = np.vstack((start, points[chain[::-1]]))
        return line if len(line) > 2 else np.vstack((line, line[-1:] + 1e-4))


def _ribbon(route: Floats, force_n: float) -> Solid:
    radius = float(np.clip(RADIUS_M_PER_N * force_n, LEAST_RADIUS_M, MOST_RADIUS_M))
    step = np.linalg.norm(np.diff(route, axis=0), axis=1)
    along = np.concatenate(([0.0], np.cumsum(np.maximum(step, 1e-6))))
    at = np.linspace(0.0, along[-1], PIECES)
    line = np.stack([np.interp(at, along, route[:, i]) for i in range(3)], axis=1)
    for _ in range(4):  # the route follows the network's edges: round its corners
        line[1:-1] = 0.25 * line[:-2] + 0.5 * line[1:-1] + 0.25 * line[2:]
    points, normals = tubes.tube_points(line[None], radius, SIDES, up=(0.31, 0.83, 0.46))
    return points, tubes.tube_triangles(1, PIECES, SIDES), normals
