"""Support and hold as moves: the car on blocks, a door swung, strapped, propped or let go."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from sim.course import AtOnce, UnderWay
from sim.grounding import body_rise_m
from sim.grounds import STAND_ROWS
from sim.handling import Grasp, around, grasp, opened_rad, strap, strut, swung, with_prop
from sim.hold_words import STALLED, hold_sentence
from sim.increment import Point
from sim.model import DoorModel
from sim.move_words import title_of
from sim.plan import Hold, Support
from sim.problems import PlanError
from sim.ranges import Range, check_ranges
from sim.record import Event, Frame
from sim.standing import stands_of
from sim.state import State
from sim.structure import Structure

Ints = NDArray[np.int64]

HOLD_RANGES: dict[str, Range] = {
    "angle_rad": (-2.0, 2.0, "a door opens by about 65 degrees"),
    "hands_n": (10.0, 2000.0, "one person pushes with 200 to 400 N"),
    "lift_m": (-0.05, 0.5, "0 is just under it"),
}
SHOWN_EVERY = 4  # points of a swing between two frames


def _with_structure(model: DoorModel, structure: Structure) -> DoorModel:
    return replace(model, structure=structure, network=model.network.among(structure))


class SupportCourse(AtOnce):
    """Put the car on blocks, or back on its wheels."""

    @staticmethod
    def ready(model: DoorModel, move: Support) -> object:
        """Refuse a car that stands still anyway."""
        if around(model.structure).body is None:
            raise PlanError(
                "on", "has nothing to do: this car does not stand on its wheels; leave the support out"
            )
        return stands_of(move.on, 1400.0, 1.0, 0.0)

    def __init__(self, run: UnderWay) -> None:
        super().__init__(run)
        self.ready(run.model, run.move)

    def change(self, rest: Point) -> tuple[DoorModel, State]:
        """Return the car on other stands, level again: whoever puts it there lets it down so."""
        structure = self.run.model.structure
        surround = around(structure)
        assert surround.body is not None
        z = float(surround.body.origin[2])
        stands = stands_of(self.run.move.on, surround.body.mass_kg, structure.outboard_sign, z)
        body = replace(surround.body, stands=stands)
        model = _with_structure(self.run.model, replace(structure, surround=replace(surround, body=body)))
        kept = {key: value for key, value in rest.state.kept.items() if key != STAND_ROWS}
        return model, replace(rest.state, kept=kept)

    def sentence(self) -> str:
        """Return what it stands on."""
        rise_mm = round(1e3 * body_rise_m(self.run.model.structure, self.run.ends[1].points), 1)
        level = f"its near side stands {rise_mm:+.1f} mm off level" if rise_mm else "it stands level"
        return f"{title_of(self.run.move)}; {level}."


class HoldCourse(AtOnce):
    """Take hold of a door."""

    def __init__(self, run: UnderWay) -> None:
        super().__init__(run)
        self.ready(run.model, run.move)
        self._grasp: Grasp | None = None
        self._start = run.begin.state.points

    @staticmethod
    def ready(model: DoorModel, move: Hold) -> object:
        """Refuse numbers out of range and a door the car has not got."""
        check_ranges(HOLD_RANGES, move)
        around(model.structure)
        return latch_end(model, move.door)

    def _hold(self, point: Point) -> Grasp:
        door = self.run.move.door
        word = "" if door == "front" else f"{door} "
        self._grasp = grasp(
            self.run.model.structure, point.state.points, latch_end(self.run.model, door), word
        )
        return self._grasp

    def _name(self) -> str:
        return f"{self.run.move.door} door"

    def change(self, rest: Point) -> tuple[DoorModel, State]:
        """Return the door strapped, propped or let go."""
        model, move, name = self.run.model, self.run.move, self._name()
        structure, grip = model.structure, self._hold(rest)
        if move.way == "let go":
            changed = replace(structure, surround=around(structure).without_prop(name))
        elif move.way == "strap":
            changed = with_prop(structure, strap(name, grip, rest.state.points))
        else:
            changed = with_prop(structure, strut(name, structure, grip, rest.state.points, move.lift_m))
        return _with_structure(model, changed), rest.state

    def frames(self) -> Iterator[Frame]:
        """Yield a swing point by point; what is done at once as it comes to rest."""
        if self.run.move.way != "swing":
            yield from super().frames()
            return
        run, move = self.run, self.run.move
        point = run.at_rest()
        yield run.emit(point, None, 0)
        stepper = run.stepper
        grip = self._hold(point)
        shown, freed = point, list(point.freed)
        sign = run.model.structure.outboard_sign
        number = 0
        for count, now in enumerate(
            swung(stepper, point, self._name(), grip, move.angle_rad, move.hands_n, sign), start=1
        ):
            freed += now.freed
            point = replace(now, freed=tuple(freed))
            if count % SHOWN_EVERY:
                continue
            number += 1
            run.take(stepper)
            yield run.emit(point, None, number, run.metal_events(shown, point))
            shown, freed = point, []
            point = replace(point, freed=())
            if run.stopping:
                break
        run.take(stepper)
        structure = stepper.network.structure
        run.model = replace(run.model, structure=structure, network=stepper.network)
        events = run.metal_events(shown, point)
        if abs(opened_rad(grip, self._start, point.state.points) - abs(move.angle_rad)) > math.radians(3.0):
            events += (Event(STALLED, self._name(), 0.0, move.hands_n),)
        yield run.emit(point, None, number + 1, events)
        run.finish(point)

    def sentence(self) -> str:
        """Return how the door stands, what holds it and what the ground carries."""
        return hold_sentence(self.run, self._grasp)


def latch_end(model: DoorModel, door: str) -> Ints:
    """Return the nodes by which a door is taken hold of.

    Raises
    ------
    PlanError
        When the car has no such door.
    """
    nodes = np.unique(model.mesh.surface.nodes["latch_plate"])
    if door == "front":
        return nodes
    side = getattr(model, "side", None)
    if side is None:
        raise PlanError("door", "is 'rear', but the car is one door; use door = 'front', or extent = 'side'")
    rear: Ints = np.unique(side.rear.surface.nodes["latch_plate"]) + model.first["rear"]  # type: ignore[attr-defined]
    return rear
