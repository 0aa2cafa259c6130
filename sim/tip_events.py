"""What the tips themselves did in an increment: cut through a sheet, slipped, came off."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from sim import outcome
from sim.increment import Point
from sim.record import OFF, SLIPPING, Event
from sim.regrip import Hold


def tip_events(
    hold: Hold | None, told: Sequence[Event], before: Point, at_m: float, halt: str, cut: tuple[str, float]
) -> list[Event]:
    """Return the tips' events of an increment that ended at an opening.

    Parameters
    ----------
    told : events of the move so far;  before : point before the increment
    halt : "cut" when a sheet was cut through;  cut : which part, and at which force [N]
    """
    events = []
    if halt == "cut":
        events.append(Event("tip shearing through", cut[0], at_m, cut[1]))
    force = float(np.max(before.force_n, initial=0.0))
    if hold is not None and hold.tips is not None:
        tips = hold.tips
        other = tips.push.seats[1]
        slipped = {event.part == other for event in told if event.kind == SLIPPING}
        for slid, part in zip(tips.slid_m, (tips.push.pads[0].part, other), strict=True):
            if slid >= outcome.limit("slid_m") and (part == other) not in slipped:
                events.append(Event(SLIPPING, part, at_m, force))
    if hold is not None and hold.off:
        events.append(Event(OFF, "tip", at_m, force))
    return events
