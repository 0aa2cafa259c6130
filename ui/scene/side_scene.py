"""The whole side on the stage: two doors, the pillar between them, what they hang in and what is inside."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.side import SideMesh
from sim.hidden import fittings_of
from sim.record import Frame
from ui.scene.colours import ColourMode, Theme
from ui.scene.door_scene import DoorPart, DoorScene
from ui.scene.drawn import Drawn
from ui.scene.inside import Inside
from ui.scene.metal import Sheet
from ui.scene.pick import Solid
from ui.scene.pillar_scene import PillarScene
from ui.scene.rail_scene import ROCKER, RailScene
from ui.scene.seam import COARSE_ROWS, COARSE_SIDES

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

DOOR_BUDGETS = {"front": 6000, "rear": 4500}
"""Most drawn triangles of each door's sheets: the whole side stays within what a processor can draw."""
HANGS_ON = {
    "front": {"latch": "striker_patch"},
    "rear": {"lower_hinge": "lower_hinge_patch", "upper_hinge": "upper_hinge_patch"},
}
"""Which patch of the pillar carries the other half of a door's latch and hinges."""


class SideScene:
    """All that is drawn of a side; what takes a `DoorScene` takes it in its place.

    ``layers`` maps every layer but "occupant" to the drawn things of each; of "body" what gives.
    """

    def __init__(self, model) -> None:
        self.model = model
        side: SideMesh = model.side
        self.start = np.array(model.start.points)
        self.sign = float(model.outboard_sign)
        first, self.points = dict(model.first), self.start
        rows, at = {}, 0
        for name in ("front", "rear", "pillar"):
            count = len(getattr(side, name).surface.triangles)
            rows[name] = slice(at, at + count)
            at += count
        patches = {name: ids + first["pillar"] for name, ids in side.pillar.surface.nodes.items()}
        self.doors = {
            name: DoorScene(
                model,
                DoorPart(
                    getattr(side, name), first[name], rows[name], name, DOOR_BUDGETS[name],
                    {half: patches[patch] for half, patch in HANGS_ON[name].items()},
                    (COARSE_SIDES, COARSE_ROWS),
                ),
            )
            for name in ("front", "rear")
        }  # fmt: skip
        self.front = self.doors["front"]
        self.pillar = PillarScene(model, side.pillar, first["pillar"], rows["pillar"])
        self.inside = Inside(model, side)
        rail = () if model.rail is None else (RailScene(model),)
        rail += () if model.rocker is None else (RailScene(model, ROCKER),)
        self.metal = (*self.doors.values(), self.pillar, *rail)
        self.members = (self.pillar, *rail)
        self.parts = (*self.metal, self.inside)
        self.layers: dict[str, list[Drawn]] = {}
        for part in self.parts:
            for layer, things in part.layers.items():
                self.layers.setdefault(layer, []).extend(things)

    @property
    def drawn(self) -> list[Drawn]:
        """Every drawn thing of the side."""
        return [thing for things in self.layers.values() for thing in things]

    @property
    def rest(self) -> Floats:
        """The start shape [m], shape (n, 3)."""
        return self.start

    @property
    def arrow_nodes(self) -> Ints:
        """Nodes of both outer skins, on which arrows of their motion may stand."""
        return np.concatenate([door.arrow_nodes for door in self.doors.values()])

    def set_triangles(self, triangles: Ints | None) -> None:
        """Take the model's connectivity as it is now, (m, 3): torn open, or whole again for None."""
        for part in self.metal:
            part.set_triangles(triangles)

    def take_fittings(self, frame: Frame) -> None:
        """Leave out panes, trim and seals that are off by a moment, where its state tells."""
        if frame.state is None:
            return
        fittings = fittings_of(self.model, frame.state)
        if fittings is not None and fittings.gone != self.inside.now.gone:
            self.inside.show_gone(fittings.gone)

    def move(self, points: Floats, damage: Floats | None = None, load: Floats | None = None) -> None:
        """Put the side where its nodes are [m], (n, 3), with the seams' damage and the sheets' load."""
        self.points = points
        for door in self.doors.values():
            door.move(points, damage, load)
        for member in self.members:
            member.move(points, load)

    def fold(self, work: Floats | None) -> None:
        """Take what the model's triangles were folded, (m,) [J/m^2], for the colours; None: not known."""
        for part in self.metal:
            part.fold(work)

    def paint(self, theme: Theme, mode: ColourMode, picked: Ints | None = None) -> None:
        """Colour everything for the theme and the colour mode, with some nodes picked out."""
        for part in self.metal:
            part.paint(theme, mode, picked)
        self.inside.paint(theme)

    def solids(self) -> list[tuple[str, Solid]]:
        """Return what can be pointed at, with its layer."""
        return [solid for part in self.parts for solid in part.solids()]

    def sheets(self) -> list[tuple[str, str, Drawn, Sheet]]:
        """Return the sheets with their layers and names, as they are cut by a plane."""
        return [one for part in self.metal for one in part.sheets()]

    def start_lines_of(self, begun: Floats | None = None) -> list[Floats]:
        """Return rims and sharp edges of the start shape of every part, each (k, count, 3) [m]."""
        return [part.lines_at(self.start if begun is None else begun) for part in self.metal]
