"""What the worker says, as frozen values; each carries the number of the request it answers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.plan import Car, Plan

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.record import Frame, MoveRecord


@dataclass(frozen=True)
class DoorReady:
    """A car's door has been set out, with the frame of its untouched start."""

    number: int
    car: Car
    model: DoorModel
    start: Frame


@dataclass(frozen=True)
class FramesReady:
    """More moments of the move that is running."""

    number: int
    move: int
    frames: tuple[Frame, ...]


@dataclass(frozen=True)
class MoveReady:
    """A move has ended; `plan` holds it with the opening it reached."""

    number: int
    move: int
    plan: Plan
    record: MoveRecord


@dataclass(frozen=True)
class Ended:
    """Nothing more comes for this request."""

    number: int
    seconds: float = 0.0


@dataclass(frozen=True)
class Stopped:
    """The request was given up, as asked; what was shown so far stays."""

    number: int


@dataclass(frozen=True)
class Refused:
    """The request cannot be done; `sentence` says why, `report` holds the details for a fault report."""

    number: int
    sentence: str
    report: str = ""


Answer = DoorReady | FramesReady | MoveReady | Ended | Stopped | Refused
