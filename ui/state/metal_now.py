"""The metal of a moment, put together for measuring on it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from ui.state.measuring import Metal

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.record import Frame

Ints = NDArray[np.int64]


def metal_now(model: DoorModel, frame: Frame) -> Metal:
    """Return the metal of a model at a moment: each sheet of a door, pillar, rail, rocker."""
    whole = np.asarray(model.structure.triangles)
    triangles = whole if frame.triangles is None else np.asarray(frame.triangles)
    return Metal(
        np.asarray(frame.points), triangles, _parts(model), whole, np.asarray(model.start.points),
        tuple(model.occupant),
    )  # fmt: skip


def _parts(model: DoorModel) -> Ints:
    """Return a number for the sheet each triangle belongs to, shape (m,)."""
    side = getattr(model, "side", None)
    meshes = [model.mesh] if side is None else [side.front, side.rear]
    parts = []
    for index, mesh in enumerate(meshes):
        skin = mesh.surface.triangle_part == mesh.surface.part_index("outer_skin")
        parts.append(2 * index + skin.astype(np.int64))
    if side is not None:
        parts.append(np.full(len(side.pillar.surface.triangles), 2 * len(meshes), dtype=np.int64))
    if model.rail is not None:
        parts.append(np.full(len(model.rail.triangles), 2 * len(meshes) + 1, dtype=np.int64))
    if model.rocker is not None:
        parts.append(np.full(len(model.rocker.triangles), 2 * len(meshes) + 2, dtype=np.int64))
    return np.concatenate(parts)
