"""Trim, seals, panes and restraint parts on the stage: not what is gone, nor what trim hides."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.fittings import Fitting, Fittings, build_fittings
from meshes.side import SideMesh
from sim.plan import Car
from ui.scene import tubes
from ui.scene.colours import Theme, rgb
from ui.scene.drawn import Drawn, Shading
from ui.scene.metal import shade
from ui.scene.pick import Solid

Floats = NDArray[np.float64]

LAYER = "trim_glass"
KINDS = {"trim": "trim", "seal": "seal", "glass": "glass", "restraint": "restraint"}
"""Kinds of fitting drawn in the layer; seats stand with the body."""
OUTER_FACE = (2, 3, 7, 6)
"""Corners of a pane's slab that face outward, round about."""
GLINTS = (((0.24, 0.34), (0.44, 0.78)), ((0.32, 0.34), (0.52, 0.78)), ((0.62, 0.46), (0.73, 0.70)))
"""Strokes on a pane, ends as shares along its lower edge and up: a pane is told by lines, for a faint sheet
costs a second drawing of the scene and is lost on a projector."""


class Inside:
    """One drawn thing for each kind of fitting; ``layers`` maps "trim_glass" to them."""

    def __init__(self, model, side: SideMesh) -> None:
        self.sign = float(model.outboard_sign)
        self.all: Fittings = build_fittings(side).without(*gone_from(model.car, build_fittings(side)))
        self.things: dict[str, Drawn] = {}
        for kind in KINDS:
            points, triangles, _ = _joined([item for item in self.all.items if item.kind == kind])
            if kind != "glass":
                self.things[kind] = Drawn(kind, points, triangles=triangles)
                continue
            flat = np.zeros((2, 3))
            self.things[kind] = Drawn(kind, flat, lines=[[0, 1]], shading=Shading.PLAIN, width=1.6)
        self.layers = {LAYER: list(self.things.values())}
        self.show_gone(self.all.gone)

    def show_gone(self, gone: frozenset[str]) -> None:
        """Leave out what has been taken away, and bring to light what it hid."""
        self.now = Fittings(self.all.items, frozenset(gone))
        seen = self.now.seen()
        for kind, thing in self.things.items():
            shown = [item for item in seen if item.kind == kind]
            if kind == "glass":
                lines = np.concatenate([np.zeros((0, 2, 3)), *(pane_lines(item) for item in shown)])
                thing.reshape(lines.reshape(-1, 3), lines=np.arange(2 * len(lines)).reshape(-1, 2))
                continue
            points, triangles, normals = _joined(shown)
            thing.reshape(points, triangles=triangles)
            thing.move(points, normals)

    def paint(self, theme: Theme) -> None:
        """Colour it: rubber and trim dark and dull, panes by lines, restraint parts near-black with a rim."""
        tones = {
            "trim": 0.25 * rgb(theme.bar) + 0.75 * rgb(theme.occupant),
            "seal": rgb(theme.fittings),
            "glass": rgb(theme.body_edge),
            "restraint": rgb(theme.fittings),
        }
        for kind, thing in self.things.items():
            if kind == "glass":
                thing.paint(tones[kind])
                continue
            normals = np.asarray(thing.normals, dtype=np.float64)
            thing.paint(shade(normals, tones[kind], self.sign, contrast=0.8))

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer."""
        return [
            (LAYER, Solid.of(item.name.replace(" ", "_"), item.surface.points, item.surface.triangles))
            for item in self.now.seen()
            if item.kind in KINDS
        ]


def pane_lines(pane: Fitting) -> Floats:
    """Return a pane's outline and the glints on it, shape (k, 2, 3) [m]."""
    low_front, low_rear, high_rear, high_front = pane.surface.points[list(OUTER_FACE)]
    ring = np.array([low_front, low_rear, high_rear, high_front])
    outline = np.stack((ring, np.roll(ring, -1, axis=0)), axis=1)
    share = np.array(GLINTS)[..., None]
    low = low_front + share[:, :, 0] * (low_rear - low_front)
    high = high_front + share[:, :, 0] * (high_rear - high_front)
    glints = low + share[:, :, 1] * (high - low)
    return np.concatenate((outline, glints))


def gone_from(car: Car, fittings: Fittings) -> tuple[str, ...]:
    """Return the names of trim, seals and panes that a car is said to have lost before anything is done."""
    whole = car.whole_side
    lost = {"trim": not whole.trim, "seal": not whole.seals, "glass": not whole.glass}
    return tuple(item.name for item in fittings.items if lost.get(item.kind, False))


def _joined(items: list[Fitting]) -> tuple[Floats, NDArray[np.int64], Floats]:
    if not items:
        return np.zeros((1, 3)), np.zeros((0, 3), dtype=np.int64), np.array([[0.0, 0.0, 1.0]])
    return tubes.joined([tubes.flat_shaded(item.surface.points, item.surface.triangles) for item in items])
