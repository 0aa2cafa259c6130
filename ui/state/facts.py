"""What can be read of a sitting: its plan, what is known of it, and what may be done next."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from sim.move_words import is_driven, opening_of, words_of
from sim.plan import Car, Move, Plan
from ui.state.aims import Aims, Before
from ui.state.asking import Asking
from ui.state.beside import Beside
from ui.state.document import Document
from ui.state.known import FoundCar, Known
from ui.state.locks import ARROW, MAP, Locks
from ui.state.reading import at_rest
from ui.state.selection import SelectionState
from ui.state.solve_queue import Job, SolveQueue, Standing
from ui.state.timeline import Timeline, cut_here
from ui.state.view_options import ViewState

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from sim.door_model import DoorModel
    from sim.record import Frame, MoveRecord, MoveResult

MOST_ALIKE_M = 1e-6
"""Openings that differ by less are one [m]."""


class Facts:
    """The parts of a sitting, and what follows from them."""

    def __init__(self, plan: Plan | None = None) -> None:
        self.document = Document(plan)
        self.timeline = Timeline()
        self.queue = SolveQueue()
        self.selection = SelectionState()
        self.view = ViewState()
        self.aims = Aims()
        self.asking, self.locks = Asking(), Locks()
        self.beside = Beside()
        self._known = Known()
        self.arrow_waits: Callable[[], bool] = lambda: False
        """Tells whether a lesson has yet to ask what the push shown will do: the arrow would tell."""
        self.map_waits: Callable[[], bool] = lambda: False
        """The same of the outcome map, which some lessons open themselves."""
        self.asks_now: Callable[[], bool] = lambda: False
        """Tells whether the step of the lesson shown is the one that asks, and nobody has answered yet."""
        self.unasked: Callable[[Plan], int | None] = lambda _plan: None
        """Tells the first move of a plan that a lesson has yet to ask about: nothing from it on is seen."""
        self.before_push: Callable[[int], int] = lambda last: last
        """Called when somebody has the plan shown run up to a move: what a lesson was to ask about it may be
        seen then. Returns up to which move it may be run: a later question of the lesson still waits."""
        self._let_go_early = (-1, 0.0, 0.0)
        """Of the move last held: its index, how far it came, how far it was to open [m]."""

    @property
    def plan(self) -> Plan:
        """The plan shown."""
        return self.document.plan

    @property
    def model(self) -> DoorModel | None:
        """The door of the plan's car, once it has been set out."""
        return self.model_of(self.plan)

    def model_of(self, plan: Plan) -> DoorModel | None:
        """Return the door of any plan's car, once it has been set out."""
        found = self._known.door(plan.car)
        return None if found is None else found[0]

    def is_set_out(self, car: Car) -> bool:
        """Tell whether a car's door or side is there to be shown."""
        return self._known.door(car) is not None

    @property
    def start(self) -> Frame | None:
        """What the plan's first move finds; of a wreck that is not worked out, the car before it."""
        return self.start_of(self.plan)

    def start_of(self, plan: Plan) -> Frame | None:
        """Return what any plan's first move finds; of a wreck not worked out, the car before it."""
        found = self.found_of(plan)
        if found is not None:
            return found.start
        record = self._known.record(plan, 0) if (plan.wreck or plan.start) and plan.moves else None
        if record is not None:  # known from elsewhere: its first moment is the metal at rest
            return record.frames[0]
        door = self._known.door(plan.car)
        return None if door is None else door[1]

    @property
    def untouched(self) -> Frame | None:
        """The car as it was built."""
        found = self._known.door(self.plan.car)
        return None if found is None else found[1]

    @property
    def compared_with(self) -> Frame | None:
        """What the moment shown is compared with: the plan's start, in a wreck the car as it was built."""
        return self.untouched if self.timeline.shows_wreck else self.start

    @property
    def begun(self) -> NDArray[np.float64] | None:
        """The places of the metal that the outline shows as the start (n, 3) [m]; None: as it was built."""
        found = None if self.timeline.shows_wreck else self.found
        return None if found is None else found.start.points

    @property
    def is_wrecked(self) -> bool:
        """Whether something happened to the plan's car before its first move."""
        return bool(self.plan.wreck or self.plan.start)

    @property
    def found(self) -> FoundCar | None:
        """How the plan's car was found; None where it was not wrecked or that is not worked out."""
        return self.found_of(self.plan)

    def found_of(self, plan: Plan) -> FoundCar | None:
        """Return how any plan's car was found; None where it was not wrecked or that is not worked out."""
        return self._known.found(plan) if plan.wreck or plan.start else None

    @property
    def start_is_known(self) -> bool:
        """Whether the start shown is what the first move finds, and not a car yet to be wrecked."""
        return not self.is_wrecked or (self.start is not None and self.start is not self.untouched)

    @property
    def move(self) -> Move | None:
        """The selected move."""
        index = self.selection.now.move
        return self.plan.moves[index] if index < len(self.plan.moves) else None

    def record(self, index: int) -> MoveRecord | None:
        """Return what was worked out for a move of the plan shown, None if nothing yet or not to be seen."""
        withheld = self.unasked(self.plan)
        if self.asking.hides(index) or (withheld is not None and index >= withheld):
            return None
        return self._known.record(self.plan, index)

    def hides(self, what: str) -> bool:
        """Tell whether answers, ladder, arrow or map are kept shut, by the teacher or by a prediction."""
        if (what == ARROW and self.arrow_waits()) or (what == MAP and self.map_waits()):
            return True
        return what in self.locks.shut or self.asking.unspoken

    @property
    def wanted_opening_m(self) -> float:
        """How far the selected move is to open [m]: as far as before it was held and let go early."""
        move, (index, reached, wanted) = self.move, self._let_go_early
        if move is None or not is_driven(move):
            return 0.0
        held = index == self.selection.now.move and opening_of(move) == reached
        return max(wanted, reached) if held else opening_of(move)

    @property
    def stands_let_go(self) -> bool:
        """Whether the moment shown is the end of a last move that was let go early."""
        move, index = self.move, self.selection.now.move
        if move is None or not is_driven(move) or index != len(self.plan.moves) - 1:
            return False
        return self.result_here is not None and self.wanted_opening_m > opening_of(move) + MOST_ALIKE_M

    @property
    def line(self) -> Timeline | Beside:
        """What plays and scrubs: the moments, or the clock of two plans while they stand side by side."""
        return self.beside if self.beside.rows is not None else self.timeline

    def records(self, plan: Plan | None = None) -> tuple[MoveRecord, ...]:
        """Return the records of a plan's leading moves: up to the first unknown or yet to be asked."""
        plan = self.plan if plan is None else plan
        return self.worked_out(plan)[: self.unasked(plan)]

    def worked_out(self, plan: Plan | None = None) -> tuple[MoveRecord, ...]:
        """Return all that is known of a plan's leading moves, whether it may be seen or not."""
        return self._known.records(self.plan if plan is None else plan)

    @property
    def solved_count(self) -> int:
        """How many leading moves have been worked out."""
        return len(self.worked_out())

    @property
    def result_here(self) -> MoveResult | None:
        """The result of the move whose end is shown; None on the way."""
        index = self.timeline.move
        if index < 0 or self.timeline.position != self.timeline.last_of(index):
            return None
        record = self.record(index)
        return record.result if record is not None else None

    @property
    def aiming(self) -> bool:
        """Whether the selected move has yet to begin at the moment shown: then the aim is drawn."""
        if self.move is None or not is_driven(self.move) or not self.start_is_known:
            return False
        return -1 <= self.timeline.move < self.selection.now.move

    def before(self, index: int) -> Before:
        """Return the metal that a move of the plan finds: the car and the moves before it."""
        return self.plan.car, self.plan.past(index)

    def wish_touch(self, index: int, move: Move) -> None:
        """Ask for a push to be tried in a move's place, if the worker is free and the metal known."""
        if not self.queue.busy and index <= self.solved_count and self.start_is_known:
            self.aims.wish(self.before(index), move)

    @property
    def tool_rests(self) -> bool:
        """Whether the moment shown is of a move that no tool is opened or pushes in: a cut, stripping."""
        index = self.timeline.move
        if not 0 <= index < len(self.plan.moves) or is_driven(self.plan.moves[index]):
            return False
        return at_rest(self.timeline.frames_of(index))

    # --- what may be done --------------------------------------------------------------------------------

    @property
    def can_open(self) -> bool:
        """Whether the tips can be opened (or closed) by hand now."""
        return (
            self.model is not None
            and self.move is not None
            and is_driven(self.move)
            and self.selection.now.move <= self.solved_count
            and self.start_is_known
            and not self.queue.busy
            and not self.asking.open
        )

    @property
    def can_run(self) -> bool:
        """Whether the plan has moves to work out."""
        return self.model is not None and bool(self.plan.moves) and not (self.queue.busy or self.asking.open)

    @property
    def can_find(self) -> bool:
        """Whether there is a wreck to work out, or to work out again so as to watch it."""
        watchable = self.found is not None and bool(self.found.moves)
        return self.model is not None and self.is_wrecked and not (self.queue.busy or watchable)

    @property
    def can_go_on_from_here(self) -> bool:
        """Whether the moment shown lies before the end, so that the plan can be cut there."""
        if self.queue.busy or self.timeline.move < 0:
            return False
        return cut_here(self.plan, self.timeline) != self.plan

    @property
    def can_stop(self) -> bool:
        """Whether there is work to give up."""
        return self.queue.busy

    @property
    def runs(self) -> bool:
        """Whether a move is being worked out: not while its metal is only set out."""
        request = self.queue.current
        return request is not None and request.job is not Job.PREPARE

    @property
    def works_aside(self) -> bool:
        """Whether a plan that is not the one shown is being worked out."""
        return self.queue.current is not None and self.queue.current.aside

    @property
    def busy_words(self) -> str:
        """What is going on, in a few words; empty when nothing is."""
        request = self.queue.current
        if request is None:
            return ""
        if request.job is Job.PREPARE:
            return "Setting out the door"
        if request.job is Job.FIND or self.timeline.move < -1:
            return "Wrecking the car"
        if request.aside:
            return "Working out the plan beside"
        if self.queue.standing is Standing.STOPPING:
            return "Letting go"
        verb = "Opening the tips" if self.move is None else words_of(self.move).verbs[1]
        return verb if self.queue.standing is Standing.RUNNING else "Getting ready"
