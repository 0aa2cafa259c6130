"""Checking a latch and holding it open, as moves: a hand pulls at the handle, and statics say what that does.

What presses the striker into the fork is what the latch carries as the metal lies, or what is left of the
wedge that a wreck has set, whichever is more: a wedge that was set by a bent latch is that same force and
must not count twice. Its share on the pawl is what the hand has to overcome (`sim.latch`).

A check reads and changes nothing: tools stay where they are, and the next move begins as if nobody had
looked. Holding draws the pawl, where the pull is enough: the tie lets go, and what had pressed the striker
into the fork goes on as the friction that draws it out, the jam. Where it is not enough the latch holds on.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from sim import outcome
from sim.carcheck import RANGES
from sim.course import AtOnce, UnderWay
from sim.holding import latch_end
from sim.increment import Point
from sim.latch import (
    FITTING_STIFFNESS_N_PER_M,
    FORK_DEPTH_M,
    PAWL_LOAD_SHARE,
    WEDGED,
    friction_n,
    pawl_stays,
    release_n,
    wedge_n,
)
from sim.model import DoorModel
from sim.network import Evaluation, State
from sim.plan import Latch
from sim.ranges import check_ranges
from sim.record import Event, Frame, LatchNote
from sim.rubbing import SLIP, WAY, left_n
from sim.structure import Slider, Structure, Tie

HELD_OPEN = "held open"
"""Kind of the event: the pawl is drawn and stays out."""
STALLED = "stalled"
TELLING_N = 50.0  # a pull, a jam or a load below this is not told: a finger's
SPRANG_M = 0.001  # less is not seen at a door's edge, assumed
SAME_RATIO = 1.01  # a wedge that has grown by less is the one that was set before


@dataclass(frozen=True)
class Pull:
    """What a hand at the handle meets.

    tie, slider : places of the latch and of its wedged striker in the structure; None where there is none
    wedge_n : what presses the striker into the fork;  jam_n : what draws it out once the pawl is out [N]
    holds : whether the pawl is in
    """

    tie: int | None
    slider: int | None
    wedge_n: float
    jam_n: float
    holds: bool

    @property
    def pawl_n(self) -> float:
        """What the fork leans on the pawl with [N]."""
        return PAWL_LOAD_SHARE * self.wedge_n if self.holds else 0.0

    @property
    def needed_n(self) -> float:
        """The pull on the handle that draws the pawl [N]."""
        return release_n(self.wedge_n) if self.holds else 0.0


def names_of(door: str) -> tuple[str, str]:
    """Return what a door's latch and its wedged striker are called in a structure."""
    word = "" if door == "front" else f"{door} "
    return f"{word}latch", f"{word}{WEDGED}"


def felt_at(structure: Structure, state: State, ev: Evaluation, door: str) -> Pull:
    """Return what a pull at a door's handle meets, from the forces in the metal as it lies."""
    latch, wedged = names_of(door)
    tie = next((i for i, one in enumerate(structure.ties) if one.name == latch), None)
    slider = next((i for i, one in enumerate(structure.sliders) if one.name == wedged), None)
    holds = tie is not None and bool(state.holding[tie])
    left = 0.0 if slider is None else left_n(structure.sliders[slider], _row(structure, state, slider)[WAY])
    pressed = wedge_n(left)
    if tie is not None and holds:
        pressed = max(pressed, float(np.linalg.norm(ev.tie_force[tie])))
    return Pull(tie, slider, pressed, friction_n(pressed), holds)


def _rows(structure: Structure, state: State) -> np.ndarray[Any, np.dtype[np.float64]]:
    """Return the slip rows of all sliders, shape (k, 4)."""
    return state.kept.get(SLIP, np.zeros((len(structure.sliders), WAY + 1)))


def _row(structure: Structure, state: State, index: int) -> np.ndarray[Any, np.dtype[np.float64]]:
    row: np.ndarray[Any, np.dtype[np.float64]] = _rows(structure, state)[index]
    return row


def wedged_with(structure: Structure, state: State, pull: Pull, door: str) -> tuple[Structure, State]:
    """Return structure and state with the striker wedged by what presses it; as they are where it is already.

    A striker that was wedged before goes on from where it has slid to; another is set on the metal as it is.
    """
    if pull.tie is None or pull.jam_n < friction_n(1.0):
        return structure, state
    rows, tie = _rows(structure, state), structure.ties[pull.tie]
    if pull.slider is None:
        made = _slider(names_of(door)[1], tie, pull.jam_n)
        at = tie.weights @ (state.points[tie.nodes] - structure.points[tie.nodes])
        sliders, rows = (*structure.sliders, made), np.vstack([rows, np.append(at, 0.0)])
    else:
        old = structure.sliders[pull.slider]
        left = left_n(old, float(rows[pull.slider, WAY]))
        if left <= 0.0 or pull.jam_n <= SAME_RATIO * left:
            return structure, state
        grown = replace(old, force_n=old.force_n * pull.jam_n / left)
        sliders = tuple(grown if i == pull.slider else one for i, one in enumerate(structure.sliders))
    return replace(structure, sliders=sliders), replace(state, kept={**state.kept, SLIP: rows})


def _slider(name: str, tie: Tie, force_n: float) -> Slider:
    return Slider(name, tie.nodes, tie.weights, FITTING_STIFFNESS_N_PER_M, force_n, FORK_DEPTH_M)


class LatchCourse(AtOnce):
    """Pull at a handle: look, or hold the pawl out."""

    def __init__(self, run: UnderWay) -> None:
        super().__init__(run)
        self.move: Latch = run.move
        self.ready(run.model, self.move)
        if self.move.way == "check":
            run.push = run.begin.engaged  # whoever looks lets no tool off
        self._pull: Pull | None = None
        self._drawn = self._told = False

    @staticmethod
    def ready(model: DoorModel, move: Any) -> object:
        """Refuse a pull out of range, and a door the car has not got."""
        check_ranges({"handle_n": RANGES["handle_n"]}, move)
        return latch_end(model, move.door)

    def _felt(self, point: Point) -> Pull:
        structure = self.run.model.structure
        self._pull = felt_at(structure, point.state, point.evaluation, self.move.door)
        return self._pull

    def frames(self) -> Iterator[Frame]:
        """Yield the same metal before and after a look; a pawl held open as its metal comes to rest."""
        if self.move.way == "hold":
            yield from super().frames()
            return
        run, begin = self.run, self.run.begin
        looked = run.step(run.model.network).first_point(begin.state, begin.ledger)
        point = replace(looked, state=begin.state, travel_m=begin.opening_m)
        self._felt(looked)
        for number in (0, 1):
            yield run.emit(point, None, number)
        run.finish(point)

    def rest(self) -> Point:
        """Return the metal at rest, the last tool off and its tips shut."""
        return replace(super().rest(), travel_m=0.0)

    def change(self, rest: Point) -> tuple[DoorModel, State]:
        """Return model and state with the pawl drawn; as they were where the pull is not enough."""
        model, state, pull = self.run.model, rest.state, self._felt(rest)
        if pull.tie is None or not pull.holds or pawl_stays(pull.wedge_n, self.move.handle_n):
            return model, state
        self._drawn = True
        structure, state = wedged_with(model.structure, state, pull, self.move.door)
        if structure is not model.structure:
            model = replace(model, structure=structure, network=model.network.among(structure))
        return model, model.network.release_tie(state, pull.tie)

    def events(self, before: Point, point: Point) -> tuple[Event, ...]:
        """Return once that the pawl is held open, or that the handle could not draw it."""
        del before, point
        pull = self._pull
        if self._told or pull is None or not pull.holds:
            return ()
        self._told = True
        if self._drawn:
            return (Event(HELD_OPEN, names_of(self.move.door)[0], 0.0, pull.needed_n),)
        return (Event(STALLED, "handle", 0.0, pull.needed_n),)

    # --- words -------------------------------------------------------------------------------------------

    @property
    def _state(self) -> str:
        pull = self._pull
        if pull is None or pull.tie is None:
            return "open"
        if self._drawn:
            return HELD_OPEN
        if not pull.holds:
            return "gone"
        return "jammed" if pawl_stays(pull.wedge_n, self.move.handle_n) else "shut"

    def _limits(self) -> tuple[float, float]:
        pull = self._pull
        if pull is None or pull.tie is None or not pull.holds:
            return 0.0, 0.0
        limit = self.run.model.structure.ties[pull.tie].limit_n
        return float(limit.min()), float(limit.max())

    def sentence(self) -> str:
        """Return whether the latch is free, what it still holds, and what the hand came up against."""
        pull, state, latch = self._pull, self._state, names_of(self.move.door)[0]
        assert pull is not None
        jam = _jam_words(pull)
        if state == "open":
            return f"The {latch} does not hold; its pawl is out already. {jam}"
        if state == "gone":
            return f"The {latch} no longer holds. {jam}"
        low, high = (f"{value / 1e3:.1f}" for value in self._limits())
        holds = f"While the pawl is in it holds {low if low == high else f'{low} to {high}'} kN."
        hand = f"the hand gives {self.move.handle_n:.0f} N"
        if state == "jammed":
            leans = f"its fork leans on the pawl with {pull.pawl_n / 1e3:.1f} kN"
            needs = f"drawing it takes {pull.needed_n:.0f} N at the handle"
            return f"The {latch} still holds; {leans}, {needs}, {hand}. {holds}"
        if pull.needed_n < TELLING_N and pull.jam_n < TELLING_N:
            why = "nothing presses on its pawl, a light pull at the handle draws it"
        else:
            why = f"{pull.needed_n:.0f} N at the handle draw its pawl, {hand}"
        if state == HELD_OPEN:
            return f"The {latch} is held open; {why}{self._sprung()}. {jam}"
        return f"The {latch} is free to open; {why}. {jam} {holds}"

    def _sprung(self) -> str:
        """Return by how much the door's latch end sprang when the pawl went, as a clause."""
        run = self.run
        nodes = latch_end(run.model, self.move.door)
        start, end = (run.model.outboard(frame.points, nodes) for frame in run.ends)
        if abs(end - start) < SPRANG_M:
            return ""
        sprang = f"{abs(end - start) * 1e3:.0f} mm"
        if end > start:
            return f"; the door's latch end sprang {sprang} out"
        return f"; the door's latch end sprang {sprang} in"

    def effect(self) -> str:
        """Return what it means for the plan: a look costs nothing, a pawl that stays was pulled in vain."""
        if self.move.way == "check":
            return "done"
        if not self._drawn:
            return "spent"
        return "lost ground" if outcome.room_lost(*self.run.ends) else "gained"

    def result_fields(self) -> dict[str, Any]:
        """Return what was found, in numbers."""
        pull = self._pull
        assert pull is not None
        limits = self._limits()
        note = LatchNote(self.move.door, self._state, pull.pawl_n, pull.needed_n, limits, pull.jam_n)
        return {"latch": note}


def _jam_words(pull: Pull) -> str:
    if pull.jam_n < TELLING_N:
        return "Nothing jams its striker."
    jam = f"{pull.jam_n / 1e3:.1f} kN to draw the striker out of the fork"
    return f"With the pawl out the jam is left: {jam}."
