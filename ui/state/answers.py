"""What the worker says, as frozen values; each carries the number of the request it answers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sim.plan import Car, Move, Plan

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.elastic import Elastic
    from sim.found import Found
    from sim.record import Frame, MoveRecord, Touch


@dataclass(frozen=True)
class DoorReady:
    """A car's door has been set out, with the frame of its untouched start."""

    number: int
    car: Car
    model: DoorModel
    start: Frame


@dataclass(frozen=True)
class FoundReady:
    """How a car was found after what stands before a plan's first move; numbered by the request.

    moves : the frames of each move of the wreck; () where they are not at hand
    """

    number: int
    car: Car
    before: tuple[object, ...]
    start: Frame
    told: Found
    moves: tuple[tuple[Frame, ...], ...] = ()


@dataclass(frozen=True)
class FramesReady:
    """More moments of the move that is running; moves of a wreck count down to -1."""

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


@dataclass(frozen=True)
class ElasticReady:
    """The elastic answer of the metal as a car's earlier moves left it; numbered by the wish for a touch."""

    number: int
    before: tuple[Car, tuple[Move, ...]]
    elastic: Elastic


@dataclass(frozen=True)
class Touched:
    """A push has been tried on that metal."""

    number: int
    before: tuple[Car, tuple[Move, ...]]
    move: Move
    touch: Touch


@dataclass(frozen=True)
class Untouched:
    """A touch was given up or cannot be made; `report` holds the details of a fault."""

    number: int
    report: str = ""


Aimed = ElasticReady | Touched | Untouched
Answer = DoorReady | FoundReady | FramesReady | MoveReady | Ended | Stopped | Refused | Aimed
