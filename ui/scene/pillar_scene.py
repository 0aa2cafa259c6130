"""The pillar between the doors: walls and flanges as they stand, and the spots that hold it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from meshes.pillar import PillarMesh
from sim.rail import Rail
from ui.scene import tubes
from ui.scene.colours import SEAM, ColourMode, Theme, rgb
from ui.scene.drawn import Drawn
from ui.scene.pick import Solid
from ui.scene.raw_edges import laid_aside
from ui.scene.walls import Walls

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NAME = "middle_pillar"
SPOT_M = 0.006
"""Drawn radius of a spot weld, about that of a real one (5-8 mm across, from memory)."""
POPPED_M = 0.003
"""A spot whose flange stands further off its place than this is drawn as gone."""
POPPED_RATIO = 1.7
"""A spot that has gone is drawn so much larger, to be told with no colour."""


@dataclass(frozen=True)
class Hung:
    """Spots on a member that gives: which, nodes and weights under each, their start [m]."""

    spots: Ints
    nodes: Ints
    weights: Floats
    start: Floats

    def places(self, points: Floats) -> Floats:
        """Return where the member's metal under each spot is [m], shape (k, 3)."""
        return np.asarray(np.einsum("kc,kci->ki", self.weights, points[self.nodes]))


class PillarScene(Walls):
    """All that is drawn of the pillar; ``layers`` maps "pillar" to the drawn things."""

    def __init__(self, model, mesh: PillarMesh, first: int, rows: slice) -> None:
        super().__init__(NAME, "pillar", model, np.asarray(mesh.surface.triangles) + first, rows)
        self.mesh, self.first = mesh, first
        self._make_spots()
        self.hung = [
            self._hang_on(end, member) for end, member in (("head", model.rail), ("foot", model.rocker))
        ]
        self.layers = {self.layer: [self.metal, self.lines, self.spots]}
        self.move(self.start)

    def tone(self, theme: Theme) -> Floats:
        """Return the pillar's tone, between skin and inner panel."""
        return np.asarray(0.6 * rgb(theme.inner) + 0.4 * rgb(theme.skin))

    def _make_spots(self) -> None:
        welds = list(self.mesh.welds.values())
        self.spot_nodes = np.concatenate([w.nodes for w in welds]) + self.first
        self.spot_weights = np.concatenate([w.weights for w in welds])
        self.spot_start = self._spot_places(self.start)
        self.spot_away = np.concatenate([w.away for w in welds])
        count = len(self.spot_start)
        self.spots = Drawn(
            "spot_welds", np.zeros((count * 16, 3)), triangles=tubes.tube_triangles(count, 2, 8)
        )

    def _spot_places(self, points: Floats) -> Floats:
        return np.asarray(np.einsum("kc,kci->ki", self.spot_weights, points[self.spot_nodes]))

    @property
    def popped(self) -> NDArray[np.bool_]:
        """Which spots have let go of their flange at the moment shown, shape (spots,)."""
        away = self._spot_places(self.points) - self.spot_start
        for hung in self.hung:
            if hung is not None:
                away[hung.spots] -= hung.places(self.points) - hung.start
        return np.asarray(np.linalg.norm(away, axis=1) > POPPED_M)

    def _hang_on(self, end: str, member: Rail | None) -> Hung | None:
        """Return where an end's spots lie on a rail or rocker that gives: they go along with it."""
        if member is None:
            return None
        names = [name for name, spots in self.mesh.welds.items() for _ in spots.points]
        spots = np.flatnonzero([name.startswith(end) for name in names])
        row, weights, _ = nearest_on_triangles(self.spot_start[spots], self.start, member.triangles)
        nodes = member.triangles[row]
        return Hung(spots, nodes, weights, np.einsum("kc,kci->ki", weights, self.start[nodes]))

    def move(self, points: Floats, load: Floats | None = None) -> None:
        """Put the pillar where its nodes are [m], shape (n, 3), with its sheets' load."""
        super().move(points, load)
        middle, thin = self._spot_places(points), 0.0015 * self.spot_away
        line = np.stack((middle - thin, middle + thin), axis=1)
        wide = np.where(self.popped, POPPED_RATIO, 1.0)[:, None] * SPOT_M * np.ones((1, 2))
        self.spots.move(*tubes.tube_points(line, wide, 8, up=(0.31, 0.52, 0.79)))

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour it for the theme and the mode, with some nodes picked out; popped spots by themselves."""
        super().paint(theme, mode, picked)
        tones = np.where(self.popped[:, None], rgb(SEAM), rgb(theme.thread))
        self.spots.paint(np.repeat(tones, 16, axis=0))

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer."""
        surface = self.mesh.surface
        names = tuple(f"{NAME}_{name}" for name in surface.part_names)
        here = ~laid_aside(self.points[self.triangles[:, 0]])
        return [("pillar", Solid(self.points, self.triangles[here], surface.triangle_part[here], names))]
