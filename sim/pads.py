"""Pads on any door of a model: the footprint of a door's own axes, put where that door stands."""

from __future__ import annotations

from dataclasses import replace

from sim.model import DoorModel, Panel
from sim.plan import BeltPoint, EdgePoint, FacePoint, Tool
from sim.tip import Footprint, belt_footprint, footprint, slid_footprint


def _placed(pad: Footprint, panel: Panel) -> Footprint:
    if panel.first == 0:
        return pad
    return replace(pad, nodes=pad.nodes + panel.first, pad=pad.pad + panel.shift_m)


def pad_on(
    model: DoorModel, place: EdgePoint | BeltPoint | FacePoint, tool: Tool, lean_rad: float = 0.0
) -> Footprint:
    """Return the pad of a tip on the door its place names; errors as `sim.tip.footprint`."""
    panel = model.panel(place)
    return _placed(footprint(panel.mesh, place, tool, lean_rad), panel)


def slid_pad_on(
    model: DoorModel, place: EdgePoint, tool: Tool, lean_rad: float = 0.0, *, lip: bool = True
) -> Footprint:
    """Return the pad of a tip that has slid along an edge; errors as `sim.tip.slid_footprint`."""
    panel = model.panel(place)
    return _placed(slid_footprint(panel.mesh, place, tool, lean_rad, lip=lip), panel)


def belt_pad_on(model: DoorModel, place: BeltPoint, tool: Tool) -> Footprint:
    """Return the pad of a tip on a belt; errors as `sim.tip.belt_footprint`."""
    panel = model.panel(place)
    return _placed(belt_footprint(panel.mesh, place, tool), panel)
