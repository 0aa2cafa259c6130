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
        if self._plane is not None:
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

    def cut(self, height_m: float | None) -> None:
        """Leave out everything above a height [m], or nothing."""
        self._plane = None
        if height_m is not None:
            self._plane = vtkPlane()
            self._plane.SetOrigin(0.0, 0.0, height_m)
            self._plane.SetNormal(0.0, 0.0, -1.0)
        for thing in self.things.values():
            thing.mapper.RemoveAllClippingPlanes()
            if self._plane is not None:
                thing.mapper.AddClippingPlane(self._plane)
