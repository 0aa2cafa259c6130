"""What several tests of the meshes need."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import numpy.typing as npt
import pytest

from meshes.door import DoorMesh, DoorShape, build_door
from meshes.side import SideMesh, build_side
from meshes.side_shape import SIDES

Array = npt.NDArray[np.float64]


@pytest.fixture(scope="session")
def door() -> DoorMesh:
    """Return the default door."""
    return build_door(DoorShape())


@pytest.fixture(scope="session")
def sides() -> dict[str, SideMesh]:
    """Return the ready sides by name."""
    return {name: build_side(shape) for name, shape in SIDES.items()}


@pytest.fixture(scope="session")
def angles_deg() -> Callable[[Array, npt.NDArray[np.int64]], Array]:
    """Return a function giving the angles [degrees] of triangles (m, 3), by the law of cosines."""

    def measure(points: Array, triangles: npt.NDArray[np.int64]) -> Array:
        corner = points[triangles]
        side = np.linalg.norm(np.roll(corner, -1, axis=1) - np.roll(corner, 1, axis=1), axis=2)
        a, b, c = side, np.roll(side, -1, axis=1), np.roll(side, 1, axis=1)
        return np.degrees(np.arccos(np.clip((b**2 + c**2 - a**2) / (2 * b * c), -1, 1)))

    return measure


@pytest.fixture(scope="session")
def edge_counts() -> Callable[[npt.NDArray[np.int64]], tuple[npt.NDArray[np.int64], npt.NDArray[np.int64]]]:
    """Return a function giving the edges (k, 2), sorted ids, and how many triangles each one has (k,)."""

    def count(triangles: npt.NDArray[np.int64]) -> tuple[npt.NDArray[np.int64], npt.NDArray[np.int64]]:
        pairs = np.sort(
            np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]]), axis=1
        )
        return np.unique(pairs, axis=0, return_counts=True)

    return count
