"""Sparse Cholesky: one symbolic analysis per connectivity, one numeric factor per iteration.

CHOLMOD through cvxopt where it is installed, scipy's SuperLU where it is not (same answers, slower).
CHOLMOD turns a NaN into a NaN answer without a word, so values are checked before every factor.
"""

from __future__ import annotations

import time
from typing import Protocol

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.linalg import SuperLU, splu

try:
    from cvxopt import cholmod, matrix, spmatrix
except ImportError:  # a platform without the wheel: SuperLU stands in
    cholmod = None

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


class NotPositiveError(ArithmeticError):
    """The matrix is not positive definite: the state it belongs to is not stable."""


class Factor(Protocol):
    """A factorised symmetric matrix of fixed pattern."""

    name: str
    seconds: float
    count: int

    def refactor(self, values: Floats) -> None:
        """Factor anew; raise NotPositiveError when the matrix is not positive definite."""

    def solve(self, right: Floats) -> Floats:
        """Return the solution for one right-hand side, shape (n,)."""


class CholmodFactor:
    """Lower-triangle CSC pattern factored by CHOLMOD."""

    name = "CHOLMOD"

    def __init__(self, rows: Ints, columns: Ints, size: int) -> None:
        self.seconds = 0.0
        self.count = 0
        self._size = size
        ones = matrix(np.where(rows == columns, float(size), 1.0 / size))
        self._matrix = spmatrix(ones, matrix(rows), matrix(columns), (size, size))
        self._factor = cholmod.symbolic(self._matrix)

    def refactor(self, values: Floats) -> None:
        """Factor anew; raise NotPositiveError when the matrix is not positive definite."""
        """Factor anew; see `Factor`."""
        if not np.isfinite(values).all():
            raise NotPositiveError("the stiffness is not finite")
        start = time.perf_counter()
        self._matrix.V = matrix(values)
        self.count += 1
        try:
            cholmod.numeric(self._matrix, self._factor)
        except ArithmeticError as error:
            raise NotPositiveError(str(error)) from error
        finally:
            self.seconds += time.perf_counter() - start

    def solve(self, right: Floats) -> Floats:
        """Return the solution for one right-hand side, shape (n,)."""
        """Return the solution; see `Factor`."""
        start = time.perf_counter()
        x = matrix(np.ascontiguousarray(right))
        cholmod.solve(self._factor, x)
        answer: Floats = np.array(x, dtype=float).ravel()
        self.seconds += time.perf_counter() - start
        return answer


class SuperluFactor:
    """The same pattern factored by SuperLU in symmetric mode; the pivots' signs tell stability."""

    name = "SuperLU"

    def __init__(self, rows: Ints, columns: Ints, size: int) -> None:
        self.seconds = 0.0
        self.count = 0
        self._rows, self._columns, self._size = rows, columns, size
        self._lu: SuperLU | None = None

    def refactor(self, values: Floats) -> None:
        """Factor anew; raise NotPositiveError when the matrix is not positive definite."""
        """Factor anew; see `Factor`."""
        if not np.isfinite(values).all():
            raise NotPositiveError("the stiffness is not finite")
        start = time.perf_counter()
        self.count += 1
        lower = sparse.csc_matrix((values, (self._rows, self._columns)), shape=(self._size, self._size))
        full = (lower + sparse.tril(lower, -1).T).tocsc()
        options = {"SymmetricMode": True, "DiagPivotThresh": 0.0}
        try:
            lu = splu(full, permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options=options)
        except RuntimeError as error:
            raise NotPositiveError(str(error)) from error
        finally:
            self.seconds += time.perf_counter() - start
        self._lu = lu
        if lu.U.diagonal().min() <= 0.0:
            raise NotPositiveError("negative pivot")

    def solve(self, right: Floats) -> Floats:
        """Return the solution for one right-hand side, shape (n,)."""
        """Return the solution; see `Factor`."""
        if self._lu is None:
            raise NotPositiveError("nothing factored yet")
        start = time.perf_counter()
        answer: Floats = self._lu.solve(right)
        self.seconds += time.perf_counter() - start
        return answer


def make_factor(rows: Ints, columns: Ints, size: int) -> Factor:
    """Return CHOLMOD's factor when it is installed, else SuperLU's."""
    if cholmod is None:
        return SuperluFactor(rows, columns, size)
    return CholmodFactor(rows, columns, size)
