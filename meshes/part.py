"""Surfaces: frozen triangle meshes whose parts, node sets and polylines are named."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import numpy.typing as npt

FloatArray = npt.NDArray[np.float64]
IntArray = npt.NDArray[np.int64]


class MeshError(ValueError):
    """A shape that cannot be meshed: which parameter is at fault, and what to do about it."""

    def __init__(self, parameter: str, message: str) -> None:
        super().__init__(f"{parameter}: {message}")
        self.parameter = parameter
        self.message = message

    def __reduce__(self) -> tuple[type[MeshError], tuple[str, str]]:
        """Return the recipe that carries both fields through a process boundary."""
        return type(self), (self.parameter, self.message)


def frozen_floats(values: npt.ArrayLike, shape: tuple[int | None, ...], name: str) -> FloatArray:
    """Return a read-only float64 copy of `values`, checked for shape (None: any length) and finiteness.

    Raises
    ------
    MeshError
        If the shape does not fit or an entry is not finite.
    """
    array = np.array(values, dtype=np.float64, order="C")
    _check_shape(array.shape, shape, name)
    if not bool(np.isfinite(array).all()):
        raise MeshError(name, "holds a number that is not finite; check the dimensions it was made from")
    array.flags.writeable = False
    return array


def frozen_ids(values: npt.ArrayLike, shape: tuple[int | None, ...], name: str, limit: int) -> IntArray:
    """Return a read-only int64 copy of `values`, checked for shape (None: any length) and 0 <= id < limit.

    Raises
    ------
    MeshError
        If the shape does not fit, an entry is not a whole number, or an id is out of range.
    """
    given = np.asarray(values)
    if given.size and not np.issubdtype(given.dtype, np.integer):
        raise MeshError(name, f"must hold whole numbers, not {given.dtype}; pass integer ids")
    array = np.array(given, dtype=np.int64, order="C")
    _check_shape(array.shape, shape, name)
    if array.size and (int(array.min()) < 0 or int(array.max()) >= limit):
        raise MeshError(name, f"ids run from {array.min()} to {array.max()}, allowed are 0 to {limit - 1}")
    array.flags.writeable = False
    return array


def _check_shape(found: tuple[int, ...], wanted: tuple[int | None, ...], name: str) -> None:
    fits = len(found) == len(wanted) and all(w is None or w == f for f, w in zip(found, wanted, strict=True))
    if not fits:
        raise MeshError(name, f"has shape {found}, expected {wanted} (None: any length)")


class NamedIds(Mapping[str, IntArray]):
    """Read-only mapping from a name to an array of ids; survives pickling, unlike a mapping proxy."""

    __slots__ = ("_sets",)

    def __init__(self, sets: Mapping[str, npt.ArrayLike], limit: int) -> None:
        self._sets = {name: frozen_ids(ids, (None,), name, limit) for name, ids in sets.items()}

    def __getitem__(self, name: str) -> IntArray:
        """Return the ids of one set, shape (k,)."""
        try:
            return self._sets[name]
        except KeyError:
            raise KeyError(f"no set named {name!r}; there are {sorted(self._sets)}") from None

    def __iter__(self) -> Iterator[str]:
        """Iterate over the names."""
        return iter(self._sets)

    def __len__(self) -> int:
        """Return the number of sets."""
        return len(self._sets)

    def __reduce__(self) -> tuple[Any, ...]:
        """Return the recipe that makes the arrays read-only again after unpickling."""
        limit = 1 + max((int(ids.max()) for ids in self._sets.values() if ids.size), default=-1)
        return NamedIds, (dict(self._sets), limit)


@dataclass(frozen=True, eq=False)
class Frozen:
    """Base of the frozen dataclasses that hold arrays: unpickling checks and freezes them again."""

    def __reduce__(self) -> tuple[Any, ...]:
        """Return class and field values, so that `__post_init__` runs on the other side."""
        return type(self), tuple(getattr(self, item.name) for item in dataclasses.fields(self))


@dataclass(frozen=True, eq=False)
class Surface(Frozen):
    """A triangle mesh whose parts, node sets and polylines are named; every array is read-only.

    Parameters
    ----------
    points
        Node positions [m], shape (n, 3).
    triangles
        Node ids, shape (m, 3), wound so that the right-hand normal points outward.
    triangle_part
        Index into `part_names` of each triangle, shape (m,).
    part_names
        Names of the parts, each once.
    nodes
        Named node sets, each of shape (k,).
    chains
        Named polylines, ordered ids of shape (k,) with k >= 2; their nodes may belong to no triangle.

    Raises
    ------
    MeshError
        If a shape, an id or a name does not fit.
    """

    points: FloatArray
    triangles: IntArray
    triangle_part: IntArray
    part_names: tuple[str, ...]
    nodes: Mapping[str, IntArray] = field(default_factory=dict)
    chains: Mapping[str, IntArray] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Check and freeze every field."""
        points = frozen_floats(self.points, (None, 3), "points")
        triangles = frozen_ids(self.triangles, (None, 3), "triangles", len(points))
        names = tuple(self.part_names)
        if len(set(names)) != len(names):
            raise MeshError("part_names", f"a name occurs twice in {names}; name each part once")
        part = frozen_ids(self.triangle_part, (len(triangles),), "triangle_part", len(names))
        if triangles.size and bool((triangles == np.roll(triangles, 1, axis=1)).any()):
            raise MeshError("triangles", "a triangle names one node twice; remove it")
        chains = NamedIds(self.chains, len(points))
        for name, ids in chains.items():
            if len(ids) < 2 or bool((ids[1:] == ids[:-1]).any()):
                raise MeshError(name, "a chain needs two nodes or more, and no node twice in a row")
        checked = {
            "points": points,
            "triangles": triangles,
            "triangle_part": part,
            "part_names": names,
            "nodes": NamedIds(self.nodes, len(points)),
            "chains": chains,
        }
        for key, value in checked.items():
            object.__setattr__(self, key, value)

    @property
    def node_count(self) -> int:
        """Number of nodes, those of the chains included."""
        return len(self.points)

    def part_index(self, part: str) -> int:
        """Return the index of a part in `part_names`; raises MeshError for a name that is not there."""
        if part not in self.part_names:
            raise MeshError("part", f"no part named {part!r}; there are {self.part_names}")
        return self.part_names.index(part)

    def triangles_of(self, part: str) -> IntArray:
        """Return the node ids of the triangles of one part, shape (k, 3)."""
        chosen: IntArray = self.triangles[self.triangle_part == self.part_index(part)]
        return chosen

    def nodes_of(self, parts: Iterable[str]) -> IntArray:
        """Return the sorted ids of the nodes used by the triangles of the named parts, shape (k,)."""
        found = [self.triangles_of(part).ravel() for part in parts]
        return np.unique(np.concatenate(found)) if found else np.empty(0, dtype=np.int64)

    def with_nodes(self, name: str, ids: npt.ArrayLike) -> Surface:
        """Return a copy in which the node set `name` holds `ids`."""
        return dataclasses.replace(self, nodes={**self.nodes, name: np.asarray(ids)})

    def with_points(self, points: npt.ArrayLike) -> Surface:
        """Return a copy whose nodes stand at `points` [m], shape (n, 3)."""
        moved = frozen_floats(points, self.points.shape, "points")
        return dataclasses.replace(self, points=moved)

    def mirrored(self) -> Surface:
        """Return the mirror image in y = 0: normals stay outward, names and the order of ids are kept."""
        return dataclasses.replace(
            self, points=self.points * np.array([1.0, -1.0, 1.0]), triangles=self.triangles[:, ::-1]
        )


def triangle_areas_and_normals(points: FloatArray, triangles: IntArray) -> tuple[FloatArray, FloatArray]:
    """Return the areas [m^2], shape (m,), and unit normals, shape (m, 3), of triangles with non-zero area."""
    first, second, third = (points[triangles[:, corner]] for corner in range(3))
    cross = np.cross(second - first, third - first)
    length = np.linalg.norm(cross, axis=1)
    return 0.5 * length, cross / length[:, None]
