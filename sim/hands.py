"""Hands that move what they hold: steps of their way, halved until the books close, snaps measured.

The work of hands is the mean of their force at both ends of a step times their way, so a step is as good as
one of a tool (`sim.increment`) and is halved like it: what a bent door does as it comes round, an edge that
drops off the metal beside it, a dent that snaps out, is a jump, and is measured and not left over.

What a door's edges press on is chosen anew whenever a step has converged (`sim.edging`).  Metal that this has
put out of balance first comes to rest with the hands held; what it stores less then is spent, or released in
a jump.  On a whole way a bent door loses a quarter of the hands' work so.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.grounds import PROP_FORCE
from sim.increment import Point, Stepper
from sim.losses import carried_drag_j
from sim.newton import balance_limit_n
from sim.state import Evaluation, Load, State

Floats = NDArray[np.float64]

RESTS = 4  # times the metal comes to rest before a step: each may put another edge down


@dataclass
class HandsStepper(Stepper):
    """Carries a network along the way of a prop that hands move; its travel is the way gone [m].

    prop : its place in the structure's list;  way : place of the hands, (3,) [m], after a travel
    tool_travel_m : of tips that may stand in the metal meanwhile
    """

    prop: int = 0
    way: Callable[[float], Floats] = lambda _: np.zeros(3)
    tool_travel_m: float = 0.0

    def load(self, travel_m: float, state: State) -> Load:
        """Return the load of one step that starts from a state: the tips stand, the hands go on."""
        return replace(super().load(self.tool_travel_m, state), places={self.prop: self.way(travel_m)})

    def advance(self, start: Point, travel_m: float, depth: int = 0) -> Point:
        """Return the point at ``travel_m``, the metal brought to rest before the hands go on."""
        return super().advance(self._rested(start), travel_m, depth)

    def _passage(self, start: Point, travel_m: float, ev: Evaluation) -> tuple[float, dict[str, float]]:
        _, lines = super()._passage(start, start.travel_m, ev)
        before, now = (one.read[PROP_FORCE][self.prop] for one in (start.evaluation, ev))
        return 0.5 * float((before + now) @ (self.way(travel_m) - self.way(start.travel_m))), lines

    def _given_j(self, start: Point, travel_m: float) -> float:
        force = start.evaluation.read[PROP_FORCE][self.prop]
        return float(force @ (self.way(travel_m) - self.way(start.travel_m)))

    def _rested(self, point: Point) -> Point:
        """Return the point with the hands held until nothing is out of balance any more."""
        for _ in range(RESTS):
            point = replace(point, state=self.look(point.state))
            load = self.load(point.travel_m, point.state)
            drag = 0.0
            if point.before is not None:
                drag = self.viscous_n_per_m * float(np.abs(point.state.points - point.before).max())
            held = self.network.evaluate(point.state.points, point.state, load)
            if float(np.abs(self.network.residual(held)).max()) <= drag + balance_limit_n(held):
                break
            point = self._at_rest(point, load, held)
        return point

    def _at_rest(self, point: Point, load: Load, held: Evaluation) -> Point:
        """Return where the metal comes to rest from a place where it is held up by nothing but drag."""
        start = point.state.points
        answer, lines = self.rested(point.state, load)
        ev = answer.evaluation
        carried = 0.0
        if point.before is not None:
            moved = start - point.before, ev.points - start
            carried = max(carried_drag_j(*moved, self.viscous_n_per_m), -lines["viscous"])
        lines["viscous"] += carried
        lines["released in a jump"] = max(held.potential_j - ev.potential_j - carried, 0.0)
        return self.accept(point, point.travel_m, ev, lines, 0.0)
