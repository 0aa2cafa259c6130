"""Raw edges: where sheet has torn or was cut, a line with teeth, seen as sharp with no colour too."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ui.scene.cast import Cast
from ui.scene.colours import OKABE_ITO, rgb
from ui.scene.torn import origins

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

WIDTH = 3.0
TOOTH_M, TEETH_APART_M = 0.007, 0.012
ASIDE_M = 2.0
"""Further out [m] lies only a piece that was cut out (2.5 m, `sim.pieces`): no door swings so far."""
TONE = OKABE_ITO["vermillion"]
"""The hue of skin that tears."""


def raw_edges(whole: Ints, torn: Ints, count: int) -> tuple[Ints, Ints]:
    """Return the edges that are free and were not, shape (k, 2), and the third corner of each one's triangle.

    Parameters
    ----------
    whole, torn : triangles before and after, (m, 3), row for row;  count : nodes there were before
    """
    first = origins(whole, torn, count)
    pairs, rows = _free(torn)
    before, _ = _free(whole)
    known = {tuple(pair) for pair in before.tolist()}
    own = np.sort(first[pairs], axis=1)
    new = np.array([tuple(pair) not in known for pair in own.tolist()], dtype=bool)
    pairs, rows = pairs[new], rows[new]
    corner = torn[rows]
    third = corner[(corner[:, :, None] != pairs[:, None, :]).all(axis=2)]
    return pairs, third


def _free(triangles: Ints) -> tuple[Ints, Ints]:
    pairs = np.sort(triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1)
    ends, index, count = np.unique(pairs, axis=0, return_index=True, return_counts=True)
    return ends[count == 1], index[count == 1] // 3


def teeth(points: Floats, pairs: Ints, third: Ints) -> Floats:
    """Return short strokes off the edges, away from their sheet, shape (k, 2, 3) [m]."""
    start, end = points[pairs[:, 0]], points[pairs[:, 1]]
    along = end - start
    size = np.maximum(np.linalg.norm(along, axis=1), 1e-9)[:, None]
    unit = along / size
    inside = points[third] - start
    out = -(inside - (inside * unit).sum(axis=1)[:, None] * unit)
    out /= np.maximum(np.linalg.norm(out, axis=1), 1e-9)[:, None]
    strokes = [np.zeros((0, 2, 3))]
    for k, length in enumerate(size[:, 0].tolist()):
        at = (np.arange(max(1, round(length / TEETH_APART_M))) + 0.5) * TEETH_APART_M
        foot = start[k] + np.minimum(at, length)[:, None] * unit[k]
        strokes.append(np.stack((foot, foot + TOOTH_M * out[k]), axis=1))
    return np.concatenate(strokes)


def laid_aside(points: Floats) -> NDArray[np.bool_]:
    """Return which points [m], shape (n, 3), belong to a piece that was cut out and laid aside."""
    return np.abs(points[:, 1]) > ASIDE_M


class RawEdges:
    """The raw edges of one stage."""

    def __init__(self, cast: Cast) -> None:
        self.cast = cast
        self._of: tuple[int, int] = (0, 0)
        self._found: tuple[Ints, Ints] = (np.zeros((0, 2), np.int64), np.zeros(0, np.int64))

    def show(self, points: Floats, whole: Ints, torn: Ints | None, count: int) -> None:
        """Show the raw edges of a torn sheet at its points [m]; none where nothing has torn."""
        self.cast.drop("raw_edges")
        if torn is None:
            return
        if (id(whole), id(torn)) != self._of:
            self._found = raw_edges(whole, torn, count)
            self._of = id(whole), id(torn)
            self._kept = whole, torn  # a number stands for one object only while it is kept
        pairs, third = self._found
        here = ~laid_aside(points[third])
        pairs, third = pairs[here], third[here]
        if len(pairs):
            lines = np.concatenate((points[pairs], teeth(points, pairs, third)))
            drawn = self.cast.lines("raw_edges", lines, WIDTH)
            drawn.paint(rgb(TONE))
