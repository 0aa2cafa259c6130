"""From a car's numbers to a model that can be pushed: one door, or the whole side."""

from __future__ import annotations

from functools import lru_cache

from meshes.body import build_body
from meshes.door import build_door
from meshes.occupant import seated_occupant
from sim.door_structure import door_shape, door_structure
from sim.model import DoorModel
from sim.network import Network
from sim.plan import Car
from sim.side import build_side_model

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
    structure = door_structure(car, mesh)
    network = Network(structure)
    return DoorModel(car, mesh, structure, body, occupant, network, network.initial_state())
