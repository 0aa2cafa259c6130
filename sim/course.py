"""One move under way: what every move shares, and what a type of move brings of its own.

`UnderWay` holds the metal, the books, the frames and the events of a move; `sim.run.MoveRun` is the one
that is made.  A type of move is a `Course`, found in the table of `sim/moves.py`.  Two kinds:

* *driven*: its `frames` go along a grid of travel (a spread, a crush, a ram); its struct has a field that
  says how far, named in `sim/move_words.py`;
* *done at once* (`AtOnce`): it changes model or state (a cut, a support, a strip), and then the metal comes
  to rest in a few frames.

`frames` begins with the metal at rest and the last tool off, calls ``run.step(network)`` for a `Stepper`, and
yields ``run.emit(point, ...)``; at its end it calls ``run.finish(point)``.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from sim import ladder, outcome, torn
from sim.drawn import drawn_out
from sim.engaged import Engaged
from sim.events import motion_events, seam_events
from sim.fall import at_rest, way_down
from sim.found import Found
from sim.frames import LATCHES, FrameMaker
from sim.grounding import ground_events
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.letoff import let_off
from sim.lookout import Watch
from sim.model import DoorModel
from sim.move_words import title_of
from sim.network import Network, State
from sim.push import Push
from sim.record import LEFT_TEARING, Event, Frame, Rung
from sim.regrip import Hold
from sim.tearing import due_part, tear_on, torn_model

Ints = NDArray[np.int64]

AT_REST_DRAG = (400.0, 20.0)
"""How many times the usual drag the first frames of a move done at once come to rest with (assumed).

They show the way down; the last frame comes to rest with the usual drag.
"""


def never() -> bool:
    """Return False: nobody asked to stop."""
    return False


@dataclass(frozen=True)
class Begin:
    """What a move starts from."""

    state: State
    ledger: Ledger
    engaged: Push | Engaged | None = None
    opening_m: float = 0.0
    model: DoorModel | None = None  # the model as torn or changed so far; None is the untouched one
    cut_m: float = 0.0  # length of sheet the tips have sheared through
    found: Found | None = None  # how a wrecked car was found, before the first move


def _without_tool(model: DoorModel) -> DoorModel:
    """Return the model with no tool on its network: one torn under a tool still knows its tips.

    What stands in the metal is in `Begin.engaged`, and is put on anew by whoever needs it.
    """
    network = model.network
    return replace(model, network=network.with_drives([])) if network.drives else model


class UnderWay:
    """What a move under way has gathered, and what it is made with.

    Attributes
    ----------
    model, move, begin, move_index : the metal as it is now, the move, its start, its place in the plan
    push : what stands in the metal, for the next move to let off; None when nothing does
    hold : the tips that grip, where the tool has such
    cut_m, cut : length of sheet sheared through, and where and by what force last
    stopping : whether the user has let go
    peak_latch : the most the latch has carried of what it can hold
    """

    def __init__(
        self, model: DoorModel, move: Any, begin: Begin, move_index: int, cancelled: Callable[[], bool]
    ) -> None:
        self.first_model = model
        self.model = _without_tool(model if begin.model is None else begin.model)
        self.move, self.begin, self.move_index = move, begin, move_index
        self.push: Push | Engaged | None = None
        self.hold: Hold | None = None
        self.cut_m, self.cut = begin.cut_m, ("", 0.0)
        self.stopping = False
        self.events: list[Event] = []
        self.stepper: Stepper
        self._cancelled = cancelled
        self._frames: list[Frame] = []
        self._network: Network
        self.peak_latch = 0.0
        self._started = time.perf_counter()
        self._point: Point | None = None
        self._watch: Watch | None = None
        self._torn: dict[str, float] | None = None  # by part, at the start of the move
        self._due: str | None = None  # the part that was about to tear at the start of the first move
        self._factor_s = self._assemble_s = 0.0
        self._tally_increments = self._tally_iterations = self._tally_failed = 0

    @property
    def network(self) -> Network:
        """The network the last frame was read from."""
        return self._network

    def step(self, network: Network) -> Stepper:
        """Return a stepper on a network, which becomes the one in hand; its counts start from nothing."""
        network.factor.seconds = 0.0
        network.assemble_seconds = 0.0
        self.take(Stepper(network, self._cancelled))
        return self.stepper

    def take(self, stepper: Stepper) -> None:
        """Go on with a stepper whose network has changed; its counts stay."""
        self.stepper, self._network = stepper, stepper.network

    def at_rest(self) -> Point:
        """Return the metal at rest before the move, the last tool let off."""
        begin = self.begin
        if begin.engaged is None:
            point = self.step(self.model.network).first_point(begin.state, begin.ledger)
        else:
            point = let_off(self.model, begin.engaged, begin, self.step)
        return point if self.model.structure.surround is None else at_rest(self.stepper, point)

    def emit(
        self,
        point: Point,
        push: Push | Engaged | None,
        increment: int,
        events: tuple[Event, ...] = (),
        *,
        rungs: tuple[Rung, ...] = (),
        **fields: Any,
    ) -> Frame:
        """Return the frame of a point, kept with its events.

        Parameters
        ----------
        rungs : competitors of the ladder that only this type of move has
        fields : fields of `Frame` that only this type of move fills
        """
        maker = FrameMaker(self.model, self._network, self.move_index)
        seat = None if self.hold is None else self.hold.now(point.state.points)
        frame = maker.frame(point, push, increment, events, self.cut_m, seat)
        if rungs:
            both = sorted((*frame.ladder, *rungs), key=lambda rung: -rung.demand_ratio)
            frame = replace(frame, ladder=tuple(both))
        frame = replace(frame, **fields) if fields else frame
        self._point = point
        self._frames.append(frame)
        self.events.extend(events)
        self.peak_latch = max(self.peak_latch, frame.latch_demand_ratio)
        return frame

    def stop_here(self, events: tuple[Event, ...]) -> bool:
        """Tell whether the plan asks the move to end at one of these events."""
        return bool(set(getattr(self.move, "stop_at", ())) & {event.kind for event in events})

    @property
    def frames(self) -> tuple[Frame, ...]:
        """The frames so far."""
        return tuple(self._frames)

    @property
    def ends(self) -> tuple[Frame, Frame]:
        """The first frame and the last so far."""
        return self._frames[0], self._frames[-1]

    @property
    def metal_words(self) -> tuple[str, ...]:
        """What the metal has done so far, in the fixed words."""
        return outcome.metal_words(*self.ends, self.events)

    @property
    def seen(self) -> set[str]:
        """Kind and part, run together, of every event so far."""
        return {event.kind + event.part for event in self.events}

    def metal_events(self, before: Point, point: Point) -> tuple[Event, ...]:
        """Return what the metal did between two points, whatever pushed it: ties, seam, sheets that fold."""
        force, at = float(np.max(point.force_n, initial=0.0)), point.travel_m
        events = []
        for tie in point.freed:
            events.append(Event(ladder.tie_event(tie.name), tie.name, at, tie.tool_n))
            if tie.name in LATCHES:
                self.peak_latch = max(self.peak_latch, tie.ratio)
        events += drawn_out(self._network, before, point)
        peak = max(float(np.max(before.force_n, initial=0.0)), force)
        first, seen = self._frames[0], self.seen
        events += seam_events(self.model, self._network, before, point, peak, first, seen)
        events += motion_events(self.model, point, first, seen)
        events += ground_events(self.model, before.state, point)
        if self._watch is None:
            start = self.first_model if self.begin.model is None else self.begin.model
            self._watch = Watch(start, self.begin.state)
        events += self._watch.events(self._network, point.state, at, peak)
        return tuple(events)

    def tear_events(self, point: Point, force_n: float, seen: set[str]) -> tuple[Event, ...]:
        """Return the sheets that have begun to tear in this move and are not in ``seen``."""
        if self._torn is None:
            start = self.first_model if self.begin.model is None else self.begin.model
            self._torn = torn.torn_parts(start.network, self.begin.state)
        before, limit = self._torn, outcome.limit("torn_m")
        return tuple(
            Event(self._tear_kind(point, part), part, point.travel_m, force_n)
            for part, length in torn.torn_parts(self._network, point.state).items()
            if length - before.get(part, 0.0) >= limit
            and not {"skin tearing" + part, LEFT_TEARING + part} & seen
        )

    def _tear_kind(self, point: Point, part: str) -> str:
        """Return "skin tearing", or the other kind for what a wreck had left about to tear.

        Nothing tears while a body is pressed in, so such a line runs when the metal next comes to rest: in
        the first move after the wreck, with no tool at work.
        """
        found = self.begin.found
        if found is None or point.travel_m > 0.0 or self.push is not None:
            return "skin tearing"
        if self._due is None:
            start = self.first_model if self.begin.model is None else self.begin.model
            self._due = due_part(start.network, self.begin.state)
        return LEFT_TEARING if part == self._due else "skin tearing"

    def finish(self, point: Point) -> None:
        """Make ``point`` the move's end and take the solver's counts."""
        self._point = point
        tally = self.stepper.tally
        self._tally_increments, self._tally_iterations = tally.increments, tally.iterations
        self._tally_failed = tally.failed
        self._factor_s, self._assemble_s = self._network.factor.seconds, self._network.assemble_seconds


class Course(Protocol):
    """How one type of move is made; made ready without solving, then iterated for frames.

    Parameters
    ----------
    run : the move under way; a course may set ``run.push`` to what will stand in the metal at its end

    Raises
    ------
    PlanError
        When the move cannot be made.
    """

    def __init__(self, run: UnderWay) -> None: ...

    @staticmethod
    def ready(model: DoorModel, move: Any) -> object:
        """Make the move ready on an untouched car, to see whether its numbers make sense; or PlanError."""

    @staticmethod
    def limit_m(model: DoorModel, move: Any) -> float:
        """Return how far the move could go at most [m]; nothing for a move done at once."""

    def frames(self) -> Iterator[Frame]:
        """Yield the start, what comes on the way, and the end."""

    def sentence(self) -> str:
        """Return the sentence told after the move."""

    def effect(self) -> str:
        """Return what it means for the plan, in a word or two."""

    def result_fields(self) -> dict[str, Any]:
        """Return fields of `MoveResult` that only this type of move fills."""


class AtOnce:
    """A move done at once: override `change`, the words, and `ready`; the rest is here.

    The books of coming to rest close by their definition: no tool works, so what the metal stores less is
    spent (folding, seams, ties) or released in a jump; what it stores more (never without weight or a spring
    that was set) counts as work.
    """

    def __init__(self, run: UnderWay) -> None:
        self.run = run

    @staticmethod
    def ready(model: DoorModel, move: Any) -> object:
        """Make the move ready; here there is nothing that could be wrong."""
        del model, move
        return None

    @staticmethod
    def limit_m(model: DoorModel, move: Any) -> float:
        """Return nothing: it has no travel."""
        del model, move
        return 0.0

    def rest(self) -> Point:
        """Return the metal at rest before the change, the last tool let off."""
        return self.run.at_rest()

    def change(self, rest: Point) -> tuple[DoorModel, State]:
        """Return model and state after the change, not yet at rest; the state fits the model's network."""
        return self.run.model, rest.state

    def paid(self, ledger: Ledger) -> Ledger:
        """Return the books with what the change itself cost entered; nothing here."""
        return ledger

    def events(self, before: Point, point: Point) -> tuple[Event, ...]:
        """Return events of this type of move for one frame; none here."""
        del before, point
        return ()

    def frames(self) -> Iterator[Frame]:
        """Yield the metal before the change and on its way to rest after it."""
        run = self.run
        point = self.rest()
        yield run.emit(point, None, 0)
        model, state = self.change(point)
        if model is not run.model:
            run.model = model
            tally = run.stepper.tally
            run.step(model.network).tally = tally
        point = replace(point, state=state, ledger=self.paid(point.ledger), before=None)
        before = point
        for number, (stepper, now) in enumerate(to_rest(run.stepper, point), start=1):
            point = now
            if stepper.network is not run.network:
                run.model = torn_model(run.model, stepper.network)
            run.take(stepper)
            seen = run.seen
            events = run.metal_events(before, point)
            events += run.tear_events(point, 0.0, seen) + self.events(before, point)
            yield run.emit(point, None, number, events)
            before = point
        run.finish(point)

    def sentence(self) -> str:
        """Return what let go while the metal came to rest."""
        gone = [outcome.rung_words(event.part, event.kind) for event in self.run.events]
        return f"{title_of(self.run.move)}; {', '.join(gone) if gone else 'nothing let go'}."

    def effect(self) -> str:
        """Return "done", or "lost ground" where the occupant has less room."""
        return "lost ground" if outcome.room_lost(*self.run.ends) else "done"

    def result_fields(self) -> dict[str, Any]:
        """Return nothing."""
        return {}


def to_rest(stepper: Stepper, point: Point) -> Iterator[tuple[Stepper, Point]]:
    """Yield stepper and point on the way to rest, the last at rest; what has weight is followed down."""
    none = np.zeros(0, dtype=np.int64)
    if stepper.network.structure.surround is None:
        for drag in (*AT_REST_DRAG, 1.0):
            stepper, point = come_to_rest(stepper, point, drag)
            yield stepper, point
        return
    for now in way_down(stepper, point):
        point = now
        yield stepper, point
    torn_on, point = tear_on(stepper, replace(point, freed=()), none)
    if torn_on is not stepper:
        yield torn_on, at_rest(torn_on, point)


def come_to_rest(
    stepper: Stepper, point: Point, drag_ratio: float = 1.0, barred: Ints | None = None
) -> tuple[Stepper, Point]:
    """Return stepper and point after the metal has come to rest as it is held; ties let go, sheets tear on.

    Parameters
    ----------
    drag_ratio : of the usual drag; above one the metal stops on its way down
    barred : nodes that do not split
    """
    slow = replace(stepper, viscous_n_per_m=stepper.viscous_n_per_m * drag_ratio)
    point = slow.come_to_rest(point)
    none = np.zeros(0, dtype=np.int64)
    torn_on, point = tear_on(slow, point, none if barred is None else barred)
    return replace(torn_on, viscous_n_per_m=stepper.viscous_n_per_m), point
