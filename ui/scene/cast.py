"""Everything that stands on the stage besides the door: who is there, by name."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from vtkmodules.vtkCommonDataModel import vtkPlane

from ui.scene.drawn import Drawn, Shading

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


class Cast:
    """Named drawn things on one renderer, with the line scale and the cut they share."""

    def __init__(self, renderer) -> None:
        self.renderer = renderer
        self.line_scale = 1.0
        self.things: dict[str, Drawn] = {}
        self._plane: vtkPlane | None = None

    def __contains__(self, name: str) -> bool:
        return name in self.things

    def __getitem__(self, name: str) -> Drawn:
        """Return one thing."""
        return self.things[name]

    def admit(self, name: str, thing: Drawn, *, pointable: bool = False) -> Drawn:
        """Bring a thing on under a name, in place of what had it."""
        self.drop(name)
        self.things[name] = thing
        thing.scale_lines(self.line_scale)
        thing.actor.SetPickable(pointable)
        if self._plane is not None and not _uncut(name):
            thing.mapper.AddClippingPlane(self._plane)
        self.renderer.AddActor(thing.actor)
        return thing

    def solid(self, name: str, points: Floats, triangles: Ints, normals: Floats) -> Drawn:
        """Bring on a lit solid."""
        thing = Drawn(name, points, triangles=triangles)
        thing.move(points, normals)
        return self.admit(name, thing)

    def plain(self, name: str, points: Floats, triangles: Ints) -> Drawn:
        """Bring on a solid that shows its own colour, unlit."""
        return self.admit(name, Drawn(name, points, triangles=triangles, shading=Shading.PLAIN))

    def lines(self, name: str, segments: Floats, width: float) -> Drawn:
        """Bring on polylines of equal length, shape (k, count, 3) [m]."""
        count = segments.shape[1]
        ids = np.arange(len(segments) * count).reshape(-1, count)
        flat = segments.reshape(-1, 3)
        return self.admit(name, Drawn(name, flat, lines=ids, shading=Shading.PLAIN, width=width))

    def lines_anew(self, name: str, segments: Floats, width: float) -> Drawn:
        """Give other polylines to who is on under a name, or bring them on: making an actor costs more."""
        if name not in self.things:
            return self.lines(name, segments, width)
        ids = np.arange(segments.shape[0] * segments.shape[1]).reshape(segments.shape[:2])
        self.things[name].reshape(segments.reshape(-1, 3), lines=ids)
        return self.things[name]

    def plain_anew(self, name: str, points: Floats, triangles: Ints) -> Drawn:
        """Give another shape to the unlit solid that is on under a name, or bring one on."""
        if name not in self.things:
            return self.plain(name, points, triangles)
        self.things[name].reshape(points, triangles=triangles)
        return self.things[name]

    def drop(self, *names: str) -> None:
        """Send things off; a name nobody has is passed over."""
        for name in names:
            thing = self.things.pop(name, None)
            if thing is not None:
                self.renderer.RemoveActor(thing.actor)

    def clear(self) -> None:
        """Send everybody off."""
        self.drop(*list(self.things))

    def set_line_scale(self, scale: float) -> None:
        """Draw lines ``scale`` times as wide."""
        self.line_scale = scale
        for thing in self.things.values():
            thing.scale_lines(scale)

    def cut(self, normal: Floats | None, place_m: float = 0.0) -> None:
        """Leave out what lies before a plane through a place on an axis [m], or nothing.

        ``normal`` is the unit vector along or against the axis, towards what is kept, shape (3,).
        """
        self._plane = None
        if normal is not None:
            self._plane = vtkPlane()
            self._plane.SetOrigin(*(np.abs(normal) * place_m))
            self._plane.SetNormal(*normal)
        for name, thing in self.things.items():
            thing.mapper.RemoveAllClippingPlanes()
            if self._plane is not None and not _uncut(name):
                thing.mapper.AddClippingPlane(self._plane)


def _uncut(name: str) -> bool:
    """Tell what no plane cuts: its own faces, the ground and what is said."""
    return name.startswith(("cut_", "pen", "measure")) or name in ("grid", "marks", "shadow", "car")
