"""A crush as a move: a rigid body goes in on a grid of travel."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from sim import outcome
from sim.course import UnderWay
from sim.crush import RANGES, ReadyCrush, increments, make_crush
from sim.model import DoorModel
from sim.plan import Crush
from sim.record import Frame


class CrushCourse:
    """Press a rigid body into the side."""

    def __init__(self, run: UnderWay) -> None:
        self.run = run
        self.body: ReadyCrush = make_crush(run.model, run.move, run.begin.state.points)
        run.push = self.body

    @staticmethod
    def ready(model: DoorModel, move: Crush) -> object:
        """Make the crush ready; PlanError when it cannot be made."""
        return make_crush(model, move)

    @staticmethod
    def limit_m(model: DoorModel, move: Crush) -> float:
        """Return the longest travel [m]."""
        del model, move
        return RANGES["travel_m"][1]

    def frames(self) -> Iterator[Frame]:
        """Yield the start, every grid increment, each place where something let go, and the end."""
        run = self.run
        rest = run.at_rest()
        network = run.model.network
        run.push = body = self.body.touching(rest.state.points, network.structure.triangles)
        stepper = run.step(network.with_barrier(body.barrier))
        before = stepper.first_point(rest.state, rest.ledger)
        yield run.emit(before, body, 0)
        for grid, point in increments(body, stepper, before, lambda: run.stopping):
            events = run.metal_events(before, point)
            before = point
            yield run.emit(point, body, grid, events)
            if run.stop_here(events):
                break
        run.finish(before)

    def sentence(self) -> str:
        """Return how far it went in and what let go."""
        return outcome.crush_sentence(*self.run.ends, self.run.events, self.body.seats[0])

    def effect(self) -> str:
        """Return that it is wrecked."""
        return "wrecked"

    def result_fields(self) -> dict[str, Any]:
        """Return nothing."""
        return {}
