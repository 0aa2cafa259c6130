"""Which tools and supports stand on the stage at a moment: the move's own, and what was put up before."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from meshes.side import SideMesh
from sim.door_model import DoorModel
from sim.hidden import fittings_of, names_of
from sim.holding import latch_end
from sim.plan import CutSpread, Flex, Hold, Move, Plan, Press, Strip, Support
from sim.pressing import make_ram
from sim.problems import PlanError
from sim.ram import Stand
from sim.record import Frame
from sim.standing import BLOCKS_M
from ui.scene import tools
from ui.scene.tools import Solid

if TYPE_CHECKING:
    from ui.state.session import Session

Floats = NDArray[np.float64]


def solids_at(model: DoorModel, plan: Plan, index: int, frame: Frame) -> list[Solid]:
    """Return the drawn solids of a moment in the move of a number of a plan."""
    out: list[Solid] = []
    moves = plan.moves[: max(index + 1, 0)]
    move = moves[index] if 0 <= index < len(moves) else None
    if isinstance(move, Press) and frame.ram is not None:
        out.append(tools.ram_solid(frame.ram.ends, frame.ram.out_m, move.ram))
    if isinstance(move, Flex) and len(frame.drive_points):
        out.append(_bar(model, move, frame))
    out += _held(model, moves, np.asarray(frame.points))
    if isinstance(move, CutSpread) and len(frame.drive_points) == 2:
        tips = np.asarray(frame.drive_points, dtype=np.float64)
        out.append(tools.arms_solid(tips, _out_of(model, move), move.tool.arm_m))
    side = getattr(model, "side", None)
    if side is not None and _on_blocks(moves):
        under = float(side.members["rocker"].surface.points[:, 2].min())
        ground = float(side.shape.ground_z_m)
        out += [tools.block_solid(x, model.outboard_sign, ground, under) for x in BLOCKS_M]
    return out


def shown_with(session: Session) -> list[Solid]:
    """Return what stands on the stage at the moment shown; a ram that is about to be driven out, too."""
    model, frame, line = session.model, session.timeline.frame, session.timeline
    if model is None or frame is None:
        return []
    out = solids_at(model, session.plan, line.move, frame)
    return out + ram_ahead(model, session.move, frame) if session.aiming else out


def ram_ahead(model: DoorModel, move: Move | None, frame: Frame) -> list[Solid]:
    """Return the ram of a press that is yet to come where its ends will stand; none where it cannot stand."""
    if not isinstance(move, Press):
        return []
    points = np.asarray(frame.points)
    try:
        ready = make_ram(model, move, points)
    except PlanError:
        return []
    foot = ready.foot.place if isinstance(ready.foot, Stand) else ready.foot.middle(points)
    ends = np.stack([ready.head.middle(points), foot])
    apart = float(np.linalg.norm(ends[0] - ends[1]))
    return [tools.ram_solid(ends, apart - move.ram.closed_m - move.ram.piece_m, move.ram)]


def _held(model: DoorModel, moves: tuple[Move, ...], points: Floats) -> list[Solid]:
    """Return what holds doors after the moves up to now: the last hold of each door counts."""
    side = getattr(model, "side", None)
    last = {move.door: move for move in moves if isinstance(move, Hold)}
    if side is None:
        return []
    out = []
    for door, move in last.items():
        held = points[latch_end(model, door)]
        if move.way == "prop":
            under = held[np.argmin(held[:, 2])]
            out.append(tools.prop_solid(under, float(side.shape.ground_z_m)))
        elif move.way == "strap":
            out.append(tools.strap_solid(held[np.argmax(held[:, 2])], _rail_over(side, held.mean(axis=0))))
    return out


def _rail_over(side: SideMesh, place: Floats) -> Floats:
    """Return the place on the roof rail that lies over a place (3,), where a strap goes to [m]."""
    rail = np.asarray(side.members["roof_rail"].surface.points)
    near = rail[np.abs(rail[:, 0] - place[0]) <= np.abs(rail[:, 0] - place[0]).min() + 0.03]
    out: Floats = near[np.argmin(np.linalg.norm(near - place, axis=1))]
    return out


def _on_blocks(moves: tuple[Move, ...]) -> bool:
    supports = [move for move in moves if isinstance(move, Support)]
    return bool(supports) and supports[-1].on == "blocks"


def _out_of(model: DoorModel, move: CutSpread) -> Floats:
    """Return the way from the cut to the tool's body, unit vector (3,)."""
    ways = {"front": (-1.0, 0.0, 0.0), "rear": (1.0, 0.0, 0.0)}
    return np.array(ways.get(move.tips_from, (0.0, model.outboard_sign, 0.0)))


def _bar(model: DoorModel, move: Flex, frame: Frame) -> Solid:
    """Return the bar, its hand's end away from the door's middle."""
    push = np.array([-np.cos(move.tilt_rad), model.outboard_sign * np.sin(move.tilt_rad), 0.0])
    tip = np.asarray(frame.drive_points).reshape(-1, 3)[0]
    middle = model.start.points[model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
    away = np.array([1.0 if tip[0] > middle[0] else -1.0, 0.0, 0.15])
    return tools.bar_solid(tip, push, frame.opening_m, move.bar, away)


def taken_off(model: DoorModel, plan: Plan, index: int, *, begun: bool) -> frozenset[str] | None:
    """Return the fittings that are off by a moment of a move, by the plan's words; None on a single door.

    Parameters
    ----------
    begun : whether the moment is past the beginning of its move
    """
    fittings = fittings_of(model, model.start)
    if fittings is None:
        return None
    done = plan.moves[: max(index + 1, 0) if begun else max(index, 0)]
    names = [name for move in done if isinstance(move, Strip) for name in names_of(fittings, move.what)]
    return fittings.gone | frozenset(names)
