"""Small compiled helpers that the laws inline: cross product, a row times a column, adding a block."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]


@inlined
def cross(a: Floats, b: Floats, out: Floats) -> None:
    """Fill a x b."""
    out[0] = a[1] * b[2] - a[2] * b[1]
    out[1] = a[2] * b[0] - a[0] * b[2]
    out[2] = a[0] * b[1] - a[1] * b[0]


@inlined
def dot6(a: Floats, b: Floats) -> float:
    """Return the sum of six products, added up in order."""
    value = 0.0
    for k in range(6):
        value += a[k] * b[k]
    return value


@inlined
def total(a: Floats) -> float:
    """Return the sum of all entries, added up in eight lanes."""
    n = a.shape[0]
    lanes = np.zeros(8)
    for i in range(0, n - 7, 8):
        for j in range(8):
            lanes[j] += a[i + j]
    value = 0.0
    for j in range(8):
        value += lanes[j]
    for i in range(n - n % 8, n):
        value += a[i]
    return value


@kernel
def totals(
    stored: tuple[Floats, Floats, Floats, Floats], spent: tuple[Floats, Floats, Floats]
) -> tuple[float, float]:
    """Return the sums of stored and of spent energies [J]."""
    return (
        total(stored[0]) + total(stored[1]) + total(stored[2]) + total(stored[3]),
        total(spent[0]) + total(spent[1]) + total(spent[2]),
    )


@inlined
def put(values: Floats, code: int, part: Floats) -> None:
    """Add a 3x3 part to a block, transposed where the code is a complement."""
    if code < 0:
        block = values[~code]
        for i in range(3):
            for j in range(3):
                block[j, i] += part[i, j]
    else:
        block = values[code]
        for i in range(3):
            for j in range(3):
                block[i, j] += part[i, j]


@kernel
def scatter_dense(nodes: Ints, blocks: Ints, active: Bools, stiffness: Floats, values: Floats) -> None:
    """Add dense element matrices (k, 3 m, 3 m) to block values; ``blocks`` (k, m, m), complement = transpose.

    Slots with node -1 are passed over.
    """
    m = nodes.shape[1]
    for k in range(nodes.shape[0]):
        if not active[k]:
            continue
        for p in range(m):
            if nodes[k, p] < 0:
                continue
            for q in range(p + 1):
                if nodes[k, q] < 0:
                    continue
                code = blocks[k, p, q]
                swap = code < 0
                block = ~code if swap else code
                same = p != q and nodes[k, p] == nodes[k, q]
                for i in range(3):
                    for j in range(3):
                        value = stiffness[k, 3 * p + i, 3 * q + j]
                        if swap:
                            values[block, j, i] += value
                        else:
                            values[block, i, j] += value
                        if same:
                            values[block, j, i] += value
