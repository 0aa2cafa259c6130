"""One thing on the stage: an actor whose points, normals and colours are changed in place.

The only file besides the stage and the view that speaks VTK. Colours are baked per point, so that a change
of theme, map or shape is a write into an array.
"""

from __future__ import annotations

from enum import Enum

import numpy as np
from numpy.typing import ArrayLike, NDArray
from vtkmodules.util.numpy_support import numpy_to_vtk, numpy_to_vtkIdTypeArray, vtk_to_numpy
from vtkmodules.vtkCommonCore import vtkDataArray, vtkPoints
from vtkmodules.vtkCommonDataModel import vtkCellArray, vtkImageData, vtkPolyData
from vtkmodules.vtkRenderingCore import vtkActor, vtkPolyDataMapper, vtkTexture

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bytes = NDArray[np.uint8]

FRONT_OFFSET = -66000.0
"""Offset in units of depth that brings any polygon to the front."""


class Shading(Enum):
    """How light falls on a thing."""

    SMOOTH = "smooth"
    """One light on top of the baked tone, smooth over the given normals."""
    PLAIN = "plain"
    """The baked colour as it is: lines, grids, arrows."""


def cells(ids: ArrayLike) -> vtkCellArray:
    """Return cells of equal size from point ids of shape (k, size)."""
    table = np.ascontiguousarray(ids, dtype=np.int64)
    array = vtkCellArray()
    if table.size == 0:
        return array
    offsets = np.arange(0, table.size + 1, table.shape[1], dtype=np.int64)
    array.SetData(
        numpy_to_vtkIdTypeArray(offsets, deep=True), numpy_to_vtkIdTypeArray(table.ravel(), deep=True)
    )
    return array


def paper_of(image: Bytes) -> vtkTexture:
    """Return a picture (height, width, 3) to be worn, its top row last, mirrored beyond its ends."""
    height, width, _ = image.shape
    data = vtkImageData()
    data.SetDimensions(width, height, 1)
    scalars = numpy_to_vtk(np.ascontiguousarray(image[::-1]).reshape(-1, 3), deep=True)
    scalars.SetName("picture")
    data.GetPointData().SetScalars(scalars)
    out = vtkTexture()
    out.SetInputData(data)
    out.InterpolateOn()
    out.MipmapOn()
    out.SetWrap(vtkTexture.MirroredRepeat)  # its ends do not run into each other
    return out


class Drawn:
    """Triangles or lines over one array of points.

    Parameters
    ----------
    name
        Name of the thing, used when it is pointed at.
    points
        shape (n, 3) [m]
    triangles, lines
        Point ids, shape (m, 3) and (k, any fixed count); give one of them.
    shading
        See `Shading`; smooth things need normals.
    width
        Of lines, in pixels at scale 1.
    """

    def __init__(
        self,
        name: str,
        points: ArrayLike,
        *,
        triangles: ArrayLike | None = None,
        lines: ArrayLike | None = None,
        shading: Shading = Shading.SMOOTH,
        width: float = 1.0,
    ) -> None:
        self.name = name
        self.width = width
        self._smooth = shading is Shading.SMOOTH
        self.data = vtkPolyData()
        self.reshape(points, triangles=triangles, lines=lines)
        self._paper: vtkTexture | None = None
        self._where: tuple[vtkDataArray, Floats] | None = None
        self.mapper = vtkPolyDataMapper()
        self.mapper.SetInputData(self.data)
        self.mapper.SetScalarModeToUsePointData()
        self.mapper.SetColorModeToDirectScalars()
        self.actor = vtkActor()
        self.actor.SetMapper(self.mapper)
        self._set_property(shading)
        if triangles is not None:  # lines lie on metal: push the metal back a little, for them to show
            self.mapper.SetResolveCoincidentTopologyToPolygonOffset()
            self.mapper.SetRelativeCoincidentTopologyPolygonOffsetParameters(1.0, 1.0)

    def reshape(
        self, points: ArrayLike, *, triangles: ArrayLike | None = None, lines: ArrayLike | None = None
    ) -> None:
        """Take other points and cells, as after a tear; the actor stays."""
        start = np.ascontiguousarray(points, dtype=np.float32)
        self._vtk_points = vtkPoints()
        self._vtk_points.SetData(numpy_to_vtk(start, deep=True))
        self.points = vtk_to_numpy(self._vtk_points.GetData())
        self.data.SetPoints(self._vtk_points)
        if triangles is not None:
            self.data.SetPolys(cells(triangles))
        if lines is not None:
            self.data.SetLines(cells(lines))
        self._add_arrays(len(start), smooth=self._smooth)

    def _add_arrays(self, count: int, *, smooth: bool) -> None:
        colours = numpy_to_vtk(np.full((count, 3), 128, dtype=np.uint8), deep=True)
        colours.SetName("colour")
        self.data.GetPointData().SetScalars(colours)
        self._vtk_colours, self.colours = colours, vtk_to_numpy(colours)
        self._vtk_normals = None
        if smooth:
            self._vtk_normals = numpy_to_vtk(np.tile(np.float32([0, 0, 1]), (count, 1)), deep=True)
            self._vtk_normals.SetName("normal")
            self.data.GetPointData().SetNormals(self._vtk_normals)
            self.normals = vtk_to_numpy(self._vtk_normals)

    def _set_property(self, shading: Shading) -> None:
        look = self.actor.GetProperty()
        look.SetLineWidth(self.width)
        if shading is Shading.PLAIN:
            look.LightingOff()
            return
        look.SetInterpolationToPhong()
        look.SetAmbient(0.32)
        look.SetDiffuse(0.64)
        look.SetSpecular(0.09)
        look.SetSpecularPower(18.0)

    def move(self, points: ArrayLike, normals: ArrayLike | None = None) -> None:
        """Put the points [m], shape (n, 3), and their normals, in place."""
        self.points[:] = points
        self._vtk_points.GetData().Modified()
        self._vtk_points.Modified()
        if normals is not None and self._vtk_normals is not None:
            self.normals[:] = normals
            self._vtk_normals.Modified()
        self.data.Modified()

    def paint(self, colours: ArrayLike) -> None:
        """Set the colours, triples from 0 to 1, shape (n, 3) or (3,) for all, in place."""
        self.colours[:] = np.clip(np.asarray(colours) * 255.0 + 0.5, 0, 255).astype(np.uint8)
        self._vtk_colours.Modified()
        self.data.Modified()

    def wear(self, image: Bytes | None, places: Floats | None = None) -> None:
        """Wear a picture (height, width, 3) that its colours darken, or none.

        places : shape (n, 2), where each point lies on it, across from 0 to 1 and up in whole pictures
        """
        if image is None or places is None:
            if self.actor.GetTexture() is not None:
                self.actor.SetTexture(None)
                self.data.GetPointData().SetTCoords(None)  # with places left it would be drawn black
            return
        if self._paper is None:
            self._paper = paper_of(image)
        if self._where is None or len(self._where[1]) != len(places):
            made = numpy_to_vtk(np.zeros((len(places), 2), dtype=np.float32), deep=True)
            made.SetName("place on the picture")
            self._where = made, vtk_to_numpy(made)
        self._where[1][:] = places
        self._where[0].Modified()
        self.data.GetPointData().SetTCoords(self._where[0])
        self.actor.SetTexture(self._paper)

    def set_lines(self, ids: Ints) -> None:
        """Replace the line cells by point ids of shape (k, count)."""
        self.data.SetLines(cells(ids))
        self.data.Modified()

    def set_triangles(self, ids: Ints) -> None:
        """Replace the triangles by point ids of shape (m, 3)."""
        self.data.SetPolys(cells(ids))
        self.data.Modified()

    def show(self, on: bool) -> None:
        """Show or hide it."""
        self.actor.SetVisibility(on)

    @property
    def is_lines(self) -> bool:
        """Whether it has no triangles."""
        return self.data.GetNumberOfPolys() == 0

    @property
    def is_empty(self) -> bool:
        """Whether nothing is left to draw of it."""
        return self.data.GetNumberOfCells() == 0

    @property
    def shown(self) -> bool:
        """Whether it is shown."""
        return bool(self.actor.GetVisibility())

    def set_light(self, ambient: float, diffuse: float) -> None:
        """Set how much of its tone shows unlit, and how much the light adds; without gloss."""
        look = self.actor.GetProperty()
        look.SetAmbient(ambient)
        look.SetDiffuse(diffuse)
        look.SetSpecular(0.0)

    def stand_behind(self) -> None:
        """Give way to what lies on its surface, as a flange does that is welded on."""
        self.mapper.SetRelativeCoincidentTopologyPolygonOffsetParameters(4.0, 4.0)

    def hide_backs(self) -> None:
        """Draw only the sides that face the viewer, so that a viewer inside sees out."""
        self.actor.GetProperty().BackfaceCullingOn()

    def shine_through(self, opacity: float) -> None:
        """Draw it faintly in front of everything, so that it shows through what covers it."""
        self.mapper.SetRelativeCoincidentTopologyPolygonOffsetParameters(0.0, FRONT_OFFSET)
        self.set_opacity(opacity)

    def lie_over(self, share: float) -> None:
        """Draw lines in front of everything, the more so the larger the share, 0 .. 1."""
        self.mapper.SetResolveCoincidentTopologyToPolygonOffset()
        self.mapper.SetRelativeCoincidentTopologyLineOffsetParameters(0.0, (1.0 + share) * FRONT_OFFSET)

    def lie_before(self, share: float) -> None:
        """Draw lines a share of the depth, 0 .. 1, before where they are: over a wider line there."""
        self.mapper.SetResolveCoincidentTopologyToPolygonOffset()
        self.mapper.SetRelativeCoincidentTopologyLineOffsetParameters(0.0, share * FRONT_OFFSET)

    def set_opacity(self, opacity: float) -> None:
        """Set the opacity, 1 for solid."""
        self.actor.GetProperty().SetOpacity(opacity)

    def scale_lines(self, factor: float) -> None:
        """Draw its lines ``factor`` times as wide as at scale 1."""
        self.actor.GetProperty().SetLineWidth(self.width * factor)
