"""A forcible-entry bar as a lever: what a hand's pull does at its tip, and how far that goes.

The bar turns about its heel, which stands on something that does not move; its tip, ``tip_m`` beyond the
heel, is behind the metal, its hand end ``length_m - tip_m`` on the other side.  Turned by phi from lying
square to the push, with the hand pulling square to the bar,

    way of the tip along the push   x = tip_m sin(phi),
    moments about the heel          F tip_m cos(phi) = hand (length_m - tip_m),

so hand way times hand force is tip way times tip force: nothing is gained but force for way.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

MOST_TURN_RAD = math.radians(60.0)  # beyond, the heel rolls and the tip comes out: common practice, no source


@dataclass(frozen=True)
class Lever:
    """A bar set: its length, the tip's arm and the most a hand pulls with."""

    length_m: float
    tip_m: float
    hand_n: float

    @property
    def reach_m(self) -> float:
        """How far the tip goes at most along the push [m]."""
        return self.tip_m * math.sin(MOST_TURN_RAD)

    def turn_rad(self, way_m: float) -> float:
        """Return how far the bar has turned when its tip has gone some way [rad]."""
        return math.asin(min(max(way_m / self.tip_m, 0.0), 1.0))

    def tip_n(self, way_m: float) -> float:
        """Return the most the tip pushes with along the push [N]."""
        return self.hand_n * self.gain(way_m)

    def gain(self, way_m: float) -> float:
        """Return force at the tip over force of the hand."""
        return (self.length_m - self.tip_m) / (self.tip_m * math.cos(self.turn_rad(way_m)))

    def hand_way_m(self, way_m: float) -> float:
        """Return the way of the hand on its arc [m]."""
        return (self.length_m - self.tip_m) * self.turn_rad(way_m)
