"""Trim, seals, panes and restraint parts on the stage: not what is gone, nor what trim hides."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.fittings import Fitting, Fittings, build_fittings
from meshes.side import SideMesh
from sim.plan import Car
from ui.scene import tubes
from ui.scene.colours import Theme, rgb
from ui.scene.drawn import Drawn
from ui.scene.metal import shade
from ui.scene.pick import Solid

Floats = NDArray[np.float64]

LAYER = "trim_glass"
KINDS = {"trim": "trim", "seal": "seal", "glass": "glass", "restraint": "restraint"}
"""Kinds of fitting drawn in the layer; seats stand with the body."""
GLASS_OPACITY = 0.14


class Inside:
    """One drawn thing for each kind of fitting; ``layers`` maps "trim_glass" to them."""

    def __init__(self, model, side: SideMesh) -> None:
        self.sign = float(model.outboard_sign)
        self.all: Fittings = build_fittings(side).without(*gone_from(model.car, build_fittings(side)))
        self.things: dict[str, Drawn] = {}
        for kind in KINDS:
            points, triangles, _ = _joined([item for item in self.all.items if item.kind == kind])
            self.things[kind] = Drawn(kind, points, triangles=triangles)
        self.things["glass"].own_opacity = GLASS_OPACITY
        self.things["glass"].hide_backs()
        self.layers = {LAYER: list(self.things.values())}
        self.show_gone(self.all.gone)

    def show_gone(self, gone: frozenset[str]) -> None:
        """Leave out what has been taken away, and bring to light what it hid."""
        self.now = Fittings(self.all.items, frozenset(gone))
        seen = self.now.seen()
        for kind, thing in self.things.items():
            points, triangles, normals = _joined([item for item in seen if item.kind == kind])
            thing.reshape(points, triangles=triangles)
            thing.move(points, normals)

    def paint(self, theme: Theme) -> None:
        """Colour it: rubber and trim dark and dull, panes faint, restraint parts near-black with a rim."""
        tones = {
            "trim": 0.25 * rgb(theme.bar) + 0.75 * rgb(theme.occupant),
            "seal": rgb(theme.fittings),
            "glass": rgb(theme.body_edge),
            "restraint": rgb(theme.fittings),
        }
        for kind, thing in self.things.items():
            normals = np.asarray(thing.normals, dtype=np.float64)
            thing.paint(shade(normals, tones[kind], self.sign, contrast=0.8))

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer."""
        return [
            (LAYER, Solid.of(item.name.replace(" ", "_"), item.surface.points, item.surface.triangles))
            for item in self.now.seen()
            if item.kind in KINDS
        ]


def gone_from(car: Car, fittings: Fittings) -> tuple[str, ...]:
    """Return the names of trim, seals and panes that a car is said to have lost before anything is done."""
    whole = car.whole_side
    lost = {"trim": not whole.trim, "seal": not whole.seals, "glass": not whole.glass}
    return tuple(item.name for item in fittings.items if lost.get(item.kind, False))


def _joined(items: list[Fitting]) -> tuple[Floats, NDArray[np.int64], Floats]:
    if not items:
        return np.zeros((1, 3)), np.zeros((0, 3), dtype=np.int64), np.array([[0.0, 0.0, 1.0]])
    return tubes.joined([tubes.flat_shaded(item.surface.points, item.surface.triangles) for item in items])
