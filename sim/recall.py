"""Curvature remembered from past steps: limited-memory BFGS on top of one factorised tangent.

A tangent factored at one place misses what changes on the way from there: metal that starts to flow, a
contact that closes, a bond that softens.  Each accepted step tells how the forces really changed along it,
and the two-loop recursion folds the last few of these into the factor's own direction, for the price of
a back-substitution.

Source: two-loop recursion [nocedal-1980] (from memory).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.compiled import inlined, kernel

Floats = NDArray[np.float64]


@inlined
def _dot(a: Floats, b: Floats) -> float:
    """Return a.b, added up in eight lanes: the same sum every time, and fit for vector instructions."""
    n = a.shape[0]
    lanes = np.zeros(8)
    for i in range(0, n - 7, 8):
        for j in range(8):
            lanes[j] += a[i + j] * b[i + j]
    total = 0.0
    for j in range(8):
        total += lanes[j]
    for i in range(n - n % 8, n):
        total += a[i] * b[i]
    return total


@kernel
def _before(
    steps: Floats, changes: Floats, product: Floats, first: int, count: int, share: Floats, vector: Floats
) -> None:
    """Take from ``vector`` what the remembered steps answer for, newest first; keep their shares."""
    room = steps.shape[0]
    for j in range(count - 1, -1, -1):
        k = (first + j) % room
        part = _dot(steps[k], vector) / product[k]
        share[k] = part
        for i in range(vector.shape[0]):
            vector[i] -= part * changes[k, i]


@kernel
def _after(
    steps: Floats, changes: Floats, product: Floats, first: int, count: int, share: Floats, vector: Floats
) -> None:
    """Give the remembered steps back to ``vector``, oldest first."""
    room = steps.shape[0]
    for j in range(count):
        k = (first + j) % room
        back = share[k] - _dot(changes[k], vector) / product[k]
        for i in range(vector.shape[0]):
            vector[i] += back * steps[k, i]


class Recall:
    """The last few steps and force changes of one descent.

    room : how many are kept;  size : number of unknowns
    """

    def __init__(self, room: int, size: int) -> None:
        self._steps, self._changes = np.zeros((room, size)), np.zeros((room, size))
        self._product, self._share = np.zeros(room), np.zeros(room)
        self._room, self._first, self.count = room, 0, 0

    def clear(self) -> None:
        """Forget everything: the factor is new."""
        self._first = self.count = 0

    def add(self, step: Floats, change: Floats) -> None:
        """Remember how the forces changed along a step; one without positive curvature is passed over."""
        product = float(_dot(step, change))
        if not product > 1.0e-8 * float(np.sqrt(_dot(step, step) * _dot(change, change))):
            return
        if self.count == self._room:
            self._first = (self._first + 1) % self._room
        else:
            self.count += 1
        k = (self._first + self.count - 1) % self._room
        self._steps[k], self._changes[k], self._product[k] = step, change, product

    def before(self, vector: Floats) -> None:
        """Take the remembered part out of a residual, in place; the factor solves for what is left."""
        _before(self._steps, self._changes, self._product, self._first, self.count, self._share, vector)

    def after(self, vector: Floats) -> None:
        """Put the remembered part back onto the factor's answer, in place."""
        _after(self._steps, self._changes, self._product, self._first, self.count, self._share, vector)
