"""What happens between two converged points of a move: the seam that parts, the sheets that move."""

from __future__ import annotations

from collections.abc import Set as AbstractSet

import numpy as np

from sim import outcome
from sim.bond import END
from sim.frames import seam_share_m
from sim.increment import Point
from sim.model import DoorModel
from sim.network import Network
from sim.pillar import WELD_KIND
from sim.record import Event, Frame

SPOT = "spot popped"
"""Kind of event of a spot of the pillar's foot or head."""
PARTED_EVENT_M = 0.020
"""Length of seam that must have parted in a move before it counts as an event [m]."""


def seam_events(
    model: DoorModel,
    network: Network,
    before: Point,
    point: Point,
    peak_n: float,
    start: Frame,
    seen: AbstractSet[str],
) -> list[Event]:
    """Return the seam's first parting in this move and the welds that broke.

    Parameters
    ----------
    peak_n : the higher tip force [N]
    start : the move's first moment: what had parted by then is no event of this move
    seen : kind and part, run together, of the move's past events
    """
    new, old = network.parted(point.state), np.zeros(len(point.state.worst), dtype=bool)
    ends = network.structure.bonds.law[: len(before.state.worst), END]
    old[: len(ends)] = before.state.worst >= ends  # necks of tears come at the end of the list
    events, share = [], seam_share_m(model)
    parted = float(share[new].sum()) - start.parted_length_m
    if parted >= PARTED_EVENT_M and "seam parting" + "seam" not in seen:
        events.append(Event("seam parting", "seam", point.travel_m, peak_n))
    for index in np.flatnonzero(network.structure.bonds.of("weld") & new & ~old):
        station = float(network.structure.bonds.station[index])
        events.append(Event("weld broken", f"weld at {station:.2f} m of hem", point.travel_m, peak_n))
    popped = network.structure.bonds.of(WELD_KIND) & new & ~old
    if popped.any():
        nodes = network.structure.bonds.nodes[popped, 0]
        height = network.structure.points[nodes, 2]
        middle = 0.5 * (network.structure.points[:, 2].min() + network.structure.points[:, 2].max())
        for end, here in (("pillar foot", height < middle), ("pillar head", height >= middle)):
            events += [Event(SPOT, end, point.travel_m, peak_n)] * int(here.sum())
    return events


def motion_events(model: DoorModel, point: Point, start: Frame, seen: AbstractSet[str]) -> list[Event]:
    """Return which sheet's middle has begun to fold out or in; ``seen`` holds kind + part of past events."""
    force_n = float(np.max(point.force_n, initial=0.0))
    events = []
    for part, nodes, base in (
        ("outer skin", "skin_mid", start.skin_mid_outboard_m),
        ("inner panel", "inner_mid", start.inner_mid_outboard_m),
    ):
        moved = model.outboard(point.state.points, model.structure.names[nodes]) - base
        kind = "folding out" if moved > 0.0 else "folding in"
        if abs(moved) > outcome.limit("moved_m") and kind + part not in seen:
            events.append(Event(kind, part, point.travel_m, force_n))
    return events
