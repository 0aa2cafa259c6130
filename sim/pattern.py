"""The fixed sparsity of a network: which 3x3 blocks exist and where each element adds to them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@dataclass(frozen=True)
class Pattern:
    """Blocks, their scalar lower-triangle order and the element maps.

    blocks : per element group (k, m, m), block of each local pair, ~block where stored transposed
    means : per weighted mean the blocks of its pairs of nodes and the two places of each pair
    diagonal : shape (n,), block of each node with itself
    rows, columns : scalar pattern, columns sorted, lower triangle;  gather : index into blocks.ravel()
    blank, unit : scalar positions of held directions (zero) and of their diagonal (unit)
    """

    block_count: int
    blocks: tuple[Ints, ...]
    means: tuple[tuple[Ints, Ints, Ints], ...]
    diagonal: Ints
    rows: Ints
    columns: Ints
    gather: Ints
    blank: Ints
    unit: Ints

    def add_outer(self, values: Floats, mean: int, weights: Floats, stiffness: Floats) -> None:
        """Add weights_i weights_j K of one weighted mean; K symmetric, shape (3, 3)."""
        block, i, j = self.means[mean]
        # a mean's nodes are distinct, so no block comes twice
        values[block] += (weights[i] * weights[j])[:, None, None] * stiffness


def _pairs(nodes: Ints) -> Ints:
    """Return all ordered pairs (high, low) of one group, shape (k, m, m, 2), -1 where a slot is empty."""
    a = nodes[:, :, None]
    b = nodes[:, None, :]
    high, low = np.maximum(a, b), np.minimum(a, b)
    empty = np.minimum(a, b) < 0
    out: Ints = np.stack([np.where(empty, -1, high), np.where(empty, -1, low)], axis=-1)
    return out


def _lower(codes: Ints) -> tuple[Ints, Ints, Ints]:
    """Return block, row and column of every pair of one mean's nodes, each pair once."""
    i, j = np.tril_indices(len(codes))
    return np.where(codes[i, j] < 0, ~codes[i, j], codes[i, j]), i, j


def build_pattern(count: int, groups: Sequence[Ints], means: Sequence[Ints], fixed: Bools) -> Pattern:
    """Return the pattern of a network.

    Parameters
    ----------
    count : number of nodes
    groups : element node lists, each shape (k, m), -1 for an empty slot
    means : node lists of weighted means (distinct nodes each)
    fixed : shape (count, 3)

    Raises
    ------
    ValueError
        When a mean names a node twice.
    """
    for nodes in means:
        if len(np.unique(nodes)) != len(nodes):
            raise ValueError("a weighted mean names a node twice: add up its weights")
    lists = [*groups, *[m[None, :] for m in means]]
    keys = [np.arange(count) * count + np.arange(count)]
    pair_sets = []
    for nodes in lists:
        pair = _pairs(nodes)
        key = np.where(pair[..., 0] < 0, -1, pair[..., 1] * count + pair[..., 0])
        pair_sets.append((nodes, key))
        keys.append(key[key >= 0].ravel())
    unique = np.unique(np.concatenate(keys))
    column, row = unique // count, unique % count  # low node, high node
    maps = []
    for nodes, key in pair_sets:
        index = np.searchsorted(unique, np.where(key < 0, 0, key))
        swap = nodes[:, :, None] < nodes[:, None, :]
        maps.append(np.where(key < 0, -1, np.where(swap, ~index, index)).astype(np.int64))
    own = np.arange(count) * count + np.arange(count)
    diagonal = np.searchsorted(unique, own).astype(np.int64)
    block = np.repeat(np.arange(len(unique)), 9)
    i = np.tile(np.repeat(np.arange(3), 3), len(unique))
    j = np.tile(np.arange(3), 3 * len(unique))
    r, c = 3 * row[block] + i, 3 * column[block] + j
    keep = r >= c
    r, c, source = r[keep], c[keep], (9 * block + 3 * i + j)[keep]
    order = np.lexsort((r, c))
    r, c, source = r[order], c[order], source[order]
    held = fixed.ravel()
    touched = held[r] | held[c]
    return Pattern(
        len(unique), tuple(maps[: len(groups)]), tuple(_lower(m[0]) for m in maps[len(groups) :]), diagonal,
        r.astype(np.int64), c.astype(np.int64), source.astype(np.int64),
        np.flatnonzero(touched), np.flatnonzero(touched & (r == c)),
    )  # fmt: skip
