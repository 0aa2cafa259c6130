"""What a sitting knows: doors set out, cars as they were found wrecked, and moves worked out."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeVar

from sim.plan import Car, Plan

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.found import Found
    from sim.record import Frame, MoveRecord

RECORDS_KEPT = 40
"""Solved moves kept in memory, about 4 MB each; undo finds them without solving again."""
DOORS_KEPT = 6
FOUND_KEPT = 6

Key = tuple[Car, tuple[object, ...]]
K = TypeVar("K")
V = TypeVar("V")


@dataclass(frozen=True)
class FoundCar:
    """A wrecked car as a plan's first move finds it.

    start : the frame the plan begins with;  told : how it was found, in figures
    untouched : the frame of the car before;  moves : the frames of each wreck's move, () when they are not
        at hand (a start read from a file)
    """

    start: Frame
    told: Found
    untouched: Frame
    moves: tuple[tuple[Frame, ...], ...] = ()


class Known:
    """Doors, found cars and records by what they hang on; the oldest are forgotten."""

    def __init__(self) -> None:
        self._doors: OrderedDict[Car, tuple[DoorModel, Frame]] = OrderedDict()
        self._found: OrderedDict[Key, FoundCar] = OrderedDict()
        self._records: OrderedDict[Key, MoveRecord] = OrderedDict()

    def door(self, car: Car) -> tuple[DoorModel, Frame] | None:
        """Return a car's door and the frame of its untouched start, None before it has been set out."""
        return self._doors.get(car)

    def keep_door(self, car: Car, model: DoorModel, start: Frame) -> bool:
        """Keep a door; return whether it is new."""
        new = car not in self._doors
        _keep(self._doors, car, (model, start), DOORS_KEPT)
        return new

    def found(self, plan: Plan) -> FoundCar | None:
        """Return how a plan's car was found, None where that is not known or it was not wrecked."""
        return self._found.get((plan.car, plan.past(0)))

    def keep_found(self, car: Car, before: tuple[object, ...], found: FoundCar) -> None:
        """Keep how a car was found after what stands before a plan's first move."""
        _keep(self._found, (car, before), found, FOUND_KEPT)

    def record(self, plan: Plan, index: int) -> MoveRecord | None:
        """Return what was worked out for a move of a plan, None if nothing yet."""
        return self._records.get(key_of(plan, index))

    def keep_record(self, plan: Plan, index: int, record: MoveRecord) -> None:
        """Keep what was worked out for a move."""
        _keep(self._records, key_of(plan, index), record, RECORDS_KEPT)

    def records(self, plan: Plan) -> tuple[MoveRecord, ...]:
        """Return the records of a plan's leading moves, up to the first that is not worked out."""
        found: list[MoveRecord] = []
        for index in range(len(plan.moves)):
            record = self.record(plan, index)
            if record is None:
                break
            found.append(record)
        return tuple(found)

    def learn(self, plan: Plan, records: Sequence[MoveRecord]) -> None:
        """Take in records of leading moves from elsewhere; what is known already stays."""
        for index, record in enumerate(records):
            self._records.setdefault(key_of(plan, index), record)

    def forget_starts(self) -> None:
        """Forget what hangs on a start that was read from a file: the name may mean another file now."""
        for key in [key for key in self._found if _on_a_file(key)]:
            del self._found[key]
        for key in [key for key in self._records if _on_a_file(key)]:
            del self._records[key]


def key_of(plan: Plan, index: int) -> Key:
    """Return what a move's outcome hangs on: the car and what is done to it up to and including the move."""
    return plan.car, plan.past(index + 1)


def _on_a_file(key: Key) -> bool:
    return bool(key[1]) and str(key[1][0]).startswith("start ")


def _keep(kept: OrderedDict[K, V], key: K, value: V, most: int) -> None:
    kept[key] = value
    kept.move_to_end(key)
    while len(kept) > most:
        kept.popitem(last=False)
