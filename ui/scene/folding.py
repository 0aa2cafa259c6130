"""How metal is papered with what it was folded: steps of plastic work, each a tone with a pattern of its own.

The paper's width is the step, on a logarithm within each; its height is one period of slanting lines, laid on
the metal by where it was at rest, so that lines stay on the metal they were drawn on. A step is told by tone,
by how much of it the lines take, and by its word and numbers in the legend.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from ui.scene.colours import FOLD_PAPERS as PAPERS
from ui.scene.colours import rgb
from ui.scene.drawn import Drawn
from ui.scene.metal import Sheet, shade
from ui.state.folds import STEPS_J_PER_M2

Floats = NDArray[np.float64]
Bytes = NDArray[np.uint8]

PERIOD_M = 0.026
"""From line to line on the metal: wide enough for a wall."""
WIDE_PX, HIGH_PX = 160, 32
LEAST_SHARE = 0.05
"""Of the first bound: less has no place of its own on the logarithm."""


@cache
def paper() -> Bytes:
    """Return the picture the metal is papered with, shape (`HIGH_PX`, `WIDE_PX`, 3), least folded first."""
    step = np.arange(WIDE_PX) * len(PAPERS) // WIDE_PX
    line = (np.arange(HIGH_PX) + 0.5) / HIGH_PX
    ground = np.array([rgb(ground) for ground, _, _ in PAPERS])[step]
    ink = np.array([rgb(ink) for _, ink, _ in PAPERS])[step]
    share = np.array([share for _, _, share in PAPERS])[step]
    lined = (np.abs(line[:, None] - 0.5) < 0.5 * share)[..., None]
    return np.asarray(np.rint(255.0 * np.where(lined, ink, ground)), dtype=np.uint8)


def across(work: Floats) -> Floats:
    """Return where plastic work [J/m^2] stands across the paper, 0 .. 1; any shape."""
    bounds = np.array(STEPS_J_PER_M2)
    knots = np.concatenate(([LEAST_SHARE * bounds[0]], bounds, [bounds[-1] ** 2 / bounds[-2]]))
    place = np.interp(np.log(np.maximum(work, knots[0])), np.log(knots), np.linspace(0.0, 1.0, len(knots)))
    return np.asarray(place)


def along(rest: Floats) -> Floats:
    """Return how many lines lie between the origin and places at rest (k, 3) [m], shape (k,)."""
    lines: Floats = (rest[:, 2] + rest[:, 0]) / (np.sqrt(2.0) * PERIOD_M)
    return lines


@dataclass(frozen=True, eq=False)
class Folding:
    """What one moment's metal has been folded: plastic work of the model's triangles, (m,) [J/m^2]."""

    work: Floats

    def dress(self, sheet: Sheet, metal: Drawn, rest: Floats, sign: float) -> tuple[Floats, Floats]:
        """Paper a sheet that stood at rest (n, 3) [m]; return its light and its tones, (d, 3)."""
        place = across(sheet.values_at_points(self.work))
        metal.wear(paper(), np.column_stack((place, along(sheet.drawn_points(rest)))))
        light = shade(np.asarray(metal.normals, dtype=np.float64), np.ones(3), sign, contrast=0.45)
        return light, light * tones(place)


def tones(place: Floats) -> Floats:
    """Return the ground's tone at places across the paper, shape (k, 3)."""
    step = np.minimum((place * len(PAPERS)).astype(int), len(PAPERS) - 1)
    return np.array([rgb(ground) for ground, _, _ in PAPERS])[step]
