"""A car's door ready to be pushed, and one of its panels with what stands round it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from meshes.body import BodyStub
from meshes.door import DoorMesh
from meshes.occupant import Capsule
from meshes.part import Surface
from sim.network import Network, State
from sim.plan import BeltPoint, Car, EdgePoint, FacePoint, FramePoint
from sim.problems import PlanError
from sim.rail import Rail
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Seat = tuple[Ints, Floats]
"""Nodes and weights, summing to one, of a tip on metal that gives."""


@dataclass(frozen=True, eq=False)
class Panel:
    """One door of the model, in its own axes, and where it stands in the whole.

    mesh, body : the door, and the body round it, in the door's own axes
    first, first_triangle : where its nodes and its triangles begin in the structure
    shift_m : where its origin stands [m], shape (3,)
    """

    mesh: DoorMesh
    body: BodyStub
    first: int
    first_triangle: int
    shift_m: Floats

    def nodes_of(self, parts: tuple[str, ...]) -> Ints:
        """Return the nodes of parts of its surface, as the structure counts them."""
        nodes: Ints = self.mesh.surface.nodes_of(parts) + self.first
        return nodes

    @property
    def triangles(self) -> Ints:
        """Its triangles at rest, shape (m, 3), nodes as the structure counts them."""
        triangles: Ints = self.mesh.surface.triangles + self.first
        return triangles


@dataclass(frozen=True, eq=False)
class DoorModel:
    """A car's door ready to be pushed: geometry, structure and network.

    ``start`` is the untouched state; node ids are those of ``mesh.surface`` throughout, and then the rail's.

    rail, rocker : the roof rail and the rocker where they give
    """

    car: Car
    mesh: DoorMesh
    structure: Structure
    body: BodyStub
    occupant: tuple[Capsule, ...]
    network: Network
    start: State
    rail: Rail | None = field(default=None, kw_only=True)
    rocker: Rail | None = field(default=None, kw_only=True)

    @property
    def outboard_sign(self) -> float:
        """+1 when outboard is +y (right side), -1 on the left."""
        return self.structure.outboard_sign

    @property
    def whole_count(self) -> int:
        """How many nodes the model has before any sheet has torn."""
        return len(self.mesh.surface.points) + (0 if self.rail is None else self.rail.count)

    @property
    def surface(self) -> Surface:
        """Every sheet at rest with its parts named; node ids are the structure's."""
        if self.rail is None:
            return self.mesh.surface
        own = self.mesh.surface
        return with_rail(self.start.points, own.triangles, own.triangle_part, own.part_names, self.rail)

    @property
    def hem_length_m(self) -> float:
        """Length of all hems [m]."""
        return float(self.mesh.hem_station_m[-1])

    @property
    def rigid(self) -> Mapping[str, Surface]:
        """Surfaces of the car's body that cannot yield, by name."""
        # the strip the closed door rests on lies behind the door itself
        gone = ("flange",) if self.rail is None else ("flange", "roof_rail")
        return {name: surface for name, surface in self.body.surfaces.items() if name not in gone}

    @property
    def inner_nodes(self) -> Ints:
        """Nodes of the metal that faces the occupant."""
        rail = () if self.rail is None else (self.rail.nodes,)
        return np.concatenate(
            [self.panels()["front"].nodes_of(INNER_PARTS), self.mesh.surface.chains["frame"], *rail]
        )

    def panels(self) -> Mapping[str, Panel]:
        """Return its doors by name."""
        return {"front": Panel(self.mesh, self.body, 0, 0, np.zeros(3))}

    def panel(self, place: EdgePoint | BeltPoint | FacePoint | FramePoint) -> Panel:
        """Return the door a place lies on.

        Raises
        ------
        PlanError
            When the model has no such door.
        """
        name = getattr(place, "panel", "front")
        panels = self.panels()
        if name not in panels:
            raise PlanError(
                "panel",
                f"is {name!r}, but the car is one door; use panel = 'front', or extent = 'side' for the car",
            )
        return panels[name]

    def yielding(self, seat: str, panel: str, point: Floats, tip_m: tuple[float, float]) -> Seat | None:
        """Return what carries the other tip where the body itself gives; None where it stands still.

        Parameters
        ----------
        seat : its name;  panel : the door it is seen from;  point : where the tip stands, shape (3,) [m]
        tip_m : width and depth of the tip
        """
        del panel
        if self.rail is None or seat != "roof_rail":
            return None
        return self.rail.seat(self.start.points, point, tip_m)

    def outboard(self, points: Floats, nodes: Ints) -> float:
        """Return how far the mean of some nodes has moved outboard since the start [m]."""
        return self.outboard_sign * float(np.mean(points[nodes, 1] - self.start.points[nodes, 1]))


def with_rail(
    points: Floats, triangles: Ints, part: Ints, names: tuple[str, ...], rail: Rail, word: str = "rail"
) -> Surface:
    """Return sheets at rest with a member's walls after them, named "rail lower" and so on."""
    own = rail.mesh.surface
    return Surface(
        points,
        np.concatenate([triangles, rail.triangles]),
        np.concatenate([part, own.triangle_part + len(names)]),
        (*names, *(f"{word} {name}" for name in own.part_names)),
    )


INNER_PARTS = ("shut_face", "inner_panel", "latch_patch", "hinge_patch", "latch_wrap")
"""Parts of a door's surface that face the occupant or the gap: all but the outer skin."""
