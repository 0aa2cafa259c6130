"""From a car's numbers to a model that can be pushed: one door, or the whole side."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from meshes.body import BodyStub, build_body
from meshes.door import build_door
from meshes.occupant import seated_occupant
from meshes.rail import rail_over_door
from sim.door_structure import door_shape, door_structure
from sim.joined import Part, first_nodes, joined
from sim.model import DoorModel
from sim.network import Network
from sim.plan import Car
from sim.rail import Rail, rail_structure, yields
from sim.side import as_front, build_side_model
from sim.structure import Structure

__all__ = ["DoorModel", "build_model"]


@lru_cache(maxsize=8)
def build_model(car: Car) -> DoorModel:
    """Return the model of a car (kept for the last few cars).

    Raises
    ------
    MeshError
        When the door cannot be meshed: names the parameter and the remedy.
    PlanError
        When the side cannot be.
    """
    if car.extent == "side":
        return build_side_model(car)
    mesh = build_door(door_shape(car))
    body = build_body(mesh.shape)
    occupant = seated_occupant(mesh.shape)
    if car.side == "left":
        mesh, body = mesh.mirrored(), body.mirrored()
        occupant = tuple(part.mirrored() for part in occupant)
    structure, rail = door_structure(car, mesh), None
    if yields(car):
        structure, rail = _under_rail(car, structure, body)
    network = Network(structure)
    return DoorModel(car, mesh, structure, body, occupant, network, network.initial_state(), rail=rail)


def _under_rail(car: Car, door: Structure, body: BodyStub) -> tuple[Structure, Rail]:
    """Return a door's structure with the roof rail over it as sheet, and the rail."""
    mesh, sign = rail_over_door(body), door.outboard_sign
    none = np.zeros(3)
    parts = [Part("front", door, none), Part("rail", rail_structure(car, mesh, sign), none)]
    return as_front(joined(parts)), Rail(mesh, first_nodes(parts)["rail"], len(door.triangles))
