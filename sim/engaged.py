"""What may stand in the metal between two moves, besides a spreader's tips (`sim.push.Push`)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.model import DoorModel
from sim.network import Network, State
from sim.rigid import Barrier

Floats = NDArray[np.float64]


class Start(Protocol):
    """What the metal starts from: a state and the books so far."""

    @property
    def state(self) -> State:
        """Return the state."""

    @property
    def ledger(self) -> Ledger:
        """Return the books."""

    @property
    def opening_m(self) -> float:
        """Return how far the last tool had opened [m]."""


class Engaged(Protocol):
    """A rigid body, a ram: what holds the metal as it is until the next move lets it off."""

    @property
    def seats(self) -> tuple[str, ...]:
        """What bears on what, in words."""

    @property
    def direction(self) -> Floats:
        """Unit vector of the push, shape (3,)."""

    @property
    def barrier(self) -> Barrier | None:
        """The rigid body to be drawn, if it is one."""

    def contacts(self, network: Network, point: Point) -> tuple[Floats, Floats]:
        """Return where it pushes (k, 3) [m] and with what force (k, 3) [N], for a frame."""

    def let_off(self, model: DoorModel, begin: Start, make: Callable[[Network], Stepper]) -> Point:
        """Return the metal at rest after it has been drawn back; ``make`` gives the stepper on a network."""
