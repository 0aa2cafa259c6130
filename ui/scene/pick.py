"""What lies under the pointer: a search tree over what is shown, rebuilt only when the metal has moved."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray
from vtkmodules.util.numpy_support import numpy_to_vtk
from vtkmodules.vtkCommonCore import mutable, vtkPoints
from vtkmodules.vtkCommonDataModel import vtkPolyData, vtkStaticCellLocator

from ui.scene.drawn import cells

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


class Pointed(NamedTuple):
    """The place under the pointer [m], shape (3,), and the name of the part it lies on."""

    point: Floats
    part: str


class Solid(NamedTuple):
    """Triangles that can be pointed at, with the part of each as an index into ``names``."""

    points: Floats
    triangles: Ints
    part: Ints
    names: tuple[str, ...]

    def moved(self, shift: Floats) -> Solid:
        """Return the solid shifted [m], shape (3,); itself where there is no shift."""
        return self._replace(points=self.points + shift) if shift.any() else self

    def holds(self, name: str) -> bool:
        """Tell whether some of its triangles belong to a part of a name."""
        return name in self.names and bool((self.part == self.names.index(name)).any())

    @staticmethod
    def of(name: str, points: Floats, triangles: Ints) -> Solid:
        """Return a solid that is one part."""
        return Solid(points, triangles, np.zeros(len(triangles), dtype=np.int64), (name,))


class Picker:
    """A ray against named solids."""

    def __init__(self) -> None:
        self._data = vtkPolyData()
        self._locator = vtkStaticCellLocator()
        self._names: tuple[str, ...] = ()
        self._part = np.zeros(0, dtype=np.int64)

    def load(self, solids: list[Solid]) -> None:
        """Take other solids."""
        names: list[str] = []
        points, triangles, part = [], [], []
        shift = 0
        for solid in solids:
            points.append(solid.points)
            triangles.append(solid.triangles + shift)
            part.append(solid.part + len(names))
            names.extend(solid.names)
            shift += len(solid.points)
        self._names = tuple(names)
        self._part = np.concatenate(part) if part else np.zeros(0, dtype=np.int64)
        where = vtkPoints()
        if points:
            where.SetData(numpy_to_vtk(np.ascontiguousarray(np.concatenate(points)), deep=True))
        data = vtkPolyData()
        data.SetPoints(where)
        data.SetPolys(cells(np.concatenate(triangles) if triangles else np.zeros((0, 3), dtype=np.int64)))
        self._data = data
        self._locator = vtkStaticCellLocator()
        self._locator.SetDataSet(data)
        if len(self._part):
            self._locator.BuildLocator()

    def first_hit(self, start: Floats, end: Floats) -> Pointed | None:
        """Return the first part that the segment meets, or None."""
        if not len(self._part):
            return None
        along, sub, cell = mutable(0.0), mutable(0), mutable(-1)
        at, local = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        if not self._locator.IntersectWithLine(start, end, 1e-6, along, at, local, sub, cell):
            return None
        return Pointed(np.array(at), self._names[self._part[int(cell)]])
