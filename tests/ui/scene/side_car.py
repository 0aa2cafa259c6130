"""A whole side for the scene's tests, put together once: the scene only draws what it is given."""

from __future__ import annotations

from functools import cache
from types import SimpleNamespace

from meshes.occupant import side_occupant
from meshes.side import build_side
from meshes.side_shape import SIDES
from sim.door_model import build_model
from sim.plan import Car
from sim.side_model import side_structure


@cache
def side_model(name: str = "low car"):
    """Return a ready right-hand side by name, with what a scene asks of a model."""
    car, mesh = Car(), build_side(SIDES[name])
    made = side_structure(car, mesh)
    return SimpleNamespace(
        car=car, mesh=mesh.front, side=mesh, structure=made.structure, first=made.first,
        body=build_model(car).body, occupant=side_occupant(mesh.shape),
        start=SimpleNamespace(points=made.structure.points), outboard_sign=made.structure.outboard_sign,
        rail=None, rocker=None, rigid={name: one.surface for name, one in mesh.members.items()},
    )  # fmt: skip
