"""Which tools and supports stand on the stage at a moment: the move's own, and what was put up before."""

from __future__ import annotations

import numpy as np

from sim.door_model import DoorModel
from sim.plan import Flex, Move, Plan, Press, Support
from sim.record import Frame
from sim.standing import BLOCKS_M
from ui.scene import tools
from ui.scene.tools import Solid


def solids_at(model: DoorModel, plan: Plan, index: int, frame: Frame) -> list[Solid]:
    """Return the drawn solids of a moment in the move of a number of a plan."""
    out: list[Solid] = []
    moves = plan.moves[: index + 1]
    move = moves[index] if 0 <= index < len(moves) else None
    if isinstance(move, Press) and frame.ram is not None:
        out.append(tools.ram_solid(frame.ram, move.ram))
    if isinstance(move, Flex) and len(frame.drive_points):
        out.append(_bar(model, move, frame))
    side = getattr(model, "side", None)
    if side is not None and _on_blocks(moves):
        under = float(side.members["rocker"].surface.points[:, 2].min())
        ground = float(side.shape.ground_z_m)
        out += [tools.block_solid(x, model.outboard_sign, ground, under) for x in BLOCKS_M]
    return out


def _on_blocks(moves: tuple[Move, ...]) -> bool:
    supports = [move for move in moves if isinstance(move, Support)]
    return bool(supports) and supports[-1].on == "blocks"


def _bar(model: DoorModel, move: Flex, frame: Frame) -> Solid:
    """Return the bar, its hand's end away from the door's middle."""
    push = np.array([-np.cos(move.tilt_rad), model.outboard_sign * np.sin(move.tilt_rad), 0.0])
    tip = np.asarray(frame.drive_points).reshape(-1, 3)[0]
    middle = model.start.points[model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
    away = np.array([1.0 if tip[0] > middle[0] else -1.0, 0.0, 0.15])
    return tools.bar_solid(tip, push, frame.opening_m, move.bar, away)
