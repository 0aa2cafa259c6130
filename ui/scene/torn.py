"""Torn metal: which node each new one was, and what follows it.

A tear opens the sheet along edges of the network: triangles keep their order and change node ids, and the new
nodes come after the old ones.
"""

from __future__ import annotations

import dataclasses

import numpy as np
from numpy.typing import NDArray

from ui.scene.seam import Stitches

Ints = NDArray[np.int64]


def origins(whole: Ints, torn: Ints, count: int) -> Ints:
    """Return the node of the whole sheet that each node was, shape (nodes now,).

    Parameters
    ----------
    whole, torn
        Triangles before and after, shape (m, 3), row for row.
    count
        Number of nodes of the whole model.
    """
    out = np.arange(max(count, int(torn.max()) + 1))
    changed = torn >= count
    out[torn[changed]] = whole[changed]
    return out


def stitches_after(stitches: Stitches, whole: Ints, torn: Ints) -> Stitches:
    """Return the stitches on the torn sheet: each follows the triangle whose edge it stood on."""
    if np.array_equal(whole, torn):
        return stitches
    return dataclasses.replace(
        stitches,
        skin=_moved_pairs(stitches.skin, whole, torn),
        inner=_moved_pairs(stitches.inner, whole, torn),
        deeper=_moved_pairs(stitches.deeper, whole, torn),
    )


def _moved_pairs(pairs: Ints, whole: Ints, torn: Ints) -> Ints:
    """Return node pairs with the ids they have now in a triangle that holds both."""
    out = pairs.copy()
    affected = np.unique(whole[(whole != torn).any(axis=1)])
    for k in np.flatnonzero(np.isin(pairs, affected).any(axis=1)):
        held = (whole == pairs[k, 0]).any(axis=1) & (whole == pairs[k, 1]).any(axis=1)
        if held.any():
            row = int(np.argmax(held))
            out[k] = [torn[row][whole[row] == node][0] for node in pairs[k]]
    return out
