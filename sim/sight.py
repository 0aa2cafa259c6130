"""What stood in the way at the last look: while it still does, nothing has come to light and none need look.

A place is hidden when along every way out some point of the metal stands before it. Which one does not
matter, so as long as the points that did still do, where they are now, a look would answer the same.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.exposed import GRAIN_M

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class Blockers:
    """The points that stood in the way, one for each of n lines of sight.

    row : shape (n,), triangle of the structure it lies on, or -1 for metal that stands still
    first, second, count : shape (n,), where on it: see `sim.exposed.sow`
    still : shape (n, 3), where it is if it stands still [m]
    triangle_count : of the structure they were found on
    """

    row: Ints
    first: Ints
    second: Ints
    count: Ints
    still: Floats
    triangle_count: int

    def now(self, points: Floats, triangles: Ints) -> tuple[Floats, Bools]:
        """Return where they are now, (n, 3) [m], and which are still points at which metal is read, (n,)."""
        corner = points[triangles[self.row]]
        size = np.linalg.norm(corner - np.roll(corner, 1, axis=1), axis=2).max(axis=1)
        count = np.maximum(np.ceil(size / GRAIN_M).astype(np.int64), 1)
        third = self.count - self.first - self.second
        share = np.stack([self.first, self.second, third], axis=1) / self.count[:, None]
        moves = self.row >= 0
        where = np.where(moves[:, None], np.einsum("nc,ncx->nx", share, corner), self.still)
        return where, ~moves | (count == self.count)


def blockers(by: Ints, rows: Ints, came: Ints, spots: Floats, triangle_count: int) -> Blockers | None:
    """Return what stood in the way; None where some line of sight was free.

    Parameters
    ----------
    by : which spot, an entry a line of sight, or -1;  spots : (k, 3) [m], those that move first
    rows, came : of the spots that move, the triangle of the structure, and what `sow` says of each
    """
    index = by.ravel()
    if (index < 0).any():
        return None
    moves = index < len(rows)
    at = np.where(moves, index, 0)
    if not len(rows):
        rows, came = np.zeros(1, dtype=np.int64), np.ones((1, 4), dtype=np.int64)
    return Blockers(
        np.where(moves, rows[at], -1), came[at, 1], came[at, 2], came[at, 3], spots[index], triangle_count
    )


def in_the_way(spots: Floats, places: Floats, ways: Floats, own_m: float, half_m: float) -> Bools:
    """Return which spots stand in the way, one a line of sight: places (p, 3) first, ways (w, 3) within."""
    apart = spots.reshape(len(places), len(ways), 3) - places[:, None]
    along = (apart * ways).sum(axis=2)
    out: Bools = (along > own_m) & ((apart**2).sum(axis=2) - along**2 < half_m**2)
    return out.ravel()
