"""The room a cut leaves: how far the raw ends stand apart, and whether closed tips or a ram's head go in.

One cut leaves its kerf; a second under it leaves the pocket.  Nothing here is told by the plan: the room is
read from where the raw edges are now, so an end that drifts off by itself makes room as well.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.spatial import cKDTree

from sim.structure import Structure

Floats = NDArray[np.float64]

TIPS_M = 0.035  # thickness of a pair of closed tips, or of what a ram's head needs to be set in, assumed


@dataclass(frozen=True)
class Room:
    """The room between two raw ends that face each other.

    edges : their places in `Structure.raw`;  gap_m : least distance between them
    place : shape (3,), half-way between the two where they are nearest [m]
    """

    edges: tuple[int, int]
    gap_m: float
    place: Floats

    @property
    def takes_tips(self) -> bool:
        """Whether closed tips or a head go in."""
        return self.gap_m >= TIPS_M


def rooms(structure: Structure, points: Floats) -> tuple[Room, ...]:
    """Return the room at every cut: each raw edge with the one nearest to it, widest room last.

    Edges of a cut that stops short share the node it ends at: their room is nothing.
    """
    places = [points[edge.nodes] for edge in structure.raw]
    found: dict[tuple[int, int], Room] = {}
    for i, mine in enumerate(places):
        best: Room | None = None
        for j, other in enumerate(places):
            if i == j:
                continue
            found_at = cKDTree(other).query(mine)
            away, row = np.atleast_1d(found_at[0]), np.atleast_1d(found_at[1])
            k = int(np.argmin(away))
            if best is None or float(away[k]) < best.gap_m:
                pair = (min(i, j), max(i, j))
                best = Room(pair, float(away[k]), 0.5 * (mine[k] + other[row[k]]))
        if best is not None:
            found[best.edges] = best
    return tuple(sorted(found.values(), key=lambda room: (room.gap_m, room.edges)))


def widest_m(structure: Structure, points: Floats) -> float:
    """Return the widest room at any cut [m]; nothing where nothing is cut."""
    return max((room.gap_m for room in rooms(structure, points)), default=0.0)
