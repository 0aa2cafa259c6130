"""Small compiled helpers that the laws inline: cross product, a row times a column, adding a block."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import kernel

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


@kernel
def cross(a: Floats, b: Floats, out: Floats) -> None:
    """Fill a x b."""
    out[0] = a[1] * b[2] - a[2] * b[1]
    out[1] = a[2] * b[0] - a[0] * b[2]
    out[2] = a[0] * b[1] - a[1] * b[0]


@kernel
def dot6(a: Floats, b: Floats) -> float:
    """Return the sum of six products, added up in order."""
    value = 0.0
    for k in range(6):
        value += a[k] * b[k]
    return value


@kernel
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
