"""A striker drawn right out of its fork: told when the friction of a wedge has nothing left to hold with."""

from __future__ import annotations

import numpy as np

from sim.increment import Point
from sim.network import Network
from sim.record import Event
from sim.rubbing import SLIP, WAY

OUT = "striker out"
"""Kind of the event."""


def drawn_out(network: Network, before: Point, point: Point) -> list[Event]:
    """Return an event for every slider that slid past the end of its way in this increment."""
    events = []
    nothing = np.zeros((len(network.structure.sliders), 4))
    was, now = (p.state.kept.get(SLIP, nothing)[:, WAY] for p in (before, point))
    for index, slider in enumerate(network.structure.sliders):
        if was[index] < slider.travel_m <= now[index]:
            events.append(Event(OUT, slider.name, point.travel_m, float(point.force_n.max(initial=0.0))))
    return events
