"""One sitting at the window: the plan, what has been worked out for it, and what may be done next."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Sequence
from typing import TYPE_CHECKING

import msgspec

from sim.move_words import is_driven, opened, opening_of, words_of
from sim.plan import Car, Move, Plan, Spread, Squeeze, Tool
from sim.units import length_text
from ui.state.aims import Aims, Before
from ui.state.answers import Aimed, Answer, DoorReady, Ended, FramesReady, MoveReady, Refused, Stopped
from ui.state.asking import Asking
from ui.state.beside import Beside
from ui.state.document import Document
from ui.state.locks import Locks
from ui.state.selection import SelectionState
from ui.state.signal import Signal
from ui.state.solve_queue import Job, Request, SolveQueue, Standing, still_wanted
from ui.state.timeline import Timeline, cut_here
from ui.state.view_options import ViewState

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.record import Frame, MoveRecord, MoveResult

RECORDS_KEPT = 40
"""Solved moves kept in memory, about 4 MB each; undo finds them without solving again."""
DOORS_KEPT = 6

Key = tuple[Car, tuple[object, ...]]


class Session:
    """All state of the window, with no Qt: views read it, and wishes go through its methods.

    Attributes
    ----------
    asked : emitted with each request to hand to the worker
    released : emitted when held tips are let go
    dropped : emitted when the work in hand is to be given up
    changed : emitted when a door, a record or the standing has changed
    said : emitted with a sentence for the reader and the details of a fault (mostly empty)
    """

    def __init__(self, plan: Plan | None = None) -> None:
        self.document = Document(plan)
        self.timeline = Timeline()
        self.queue = SolveQueue()
        self.selection = SelectionState()
        self.view = ViewState()
        self.aims = Aims()
        self.asking, self.locks = Asking(), Locks()
        self.beside = Beside()
        self.seconds = 0.0
        self._run_again = False
        self._doors: OrderedDict[Car, tuple[DoorModel, Frame]] = OrderedDict()
        self._records: OrderedDict[Key, MoveRecord] = OrderedDict()
        self.asked: Signal[[Request]] = Signal()
        self.released: Signal[[]] = Signal()
        self.dropped: Signal[[]] = Signal()
        self.changed: Signal[[]] = Signal()
        self.said: Signal[[str, str]] = Signal()
        self.document.changed.connect(self._plan_changed)
        self.aims.failed.connect(self.said.emit)

    # --- what is known -----------------------------------------------------------------------------------

    @property
    def plan(self) -> Plan:
        """The plan shown."""
        return self.document.plan

    @property
    def model(self) -> DoorModel | None:
        """The door of the plan's car, once it has been set out."""
        found = self._doors.get(self.plan.car)
        return None if found is None else found[0]

    @property
    def start(self) -> Frame | None:
        """The untouched start of the plan's car."""
        found = self._doors.get(self.plan.car)
        return None if found is None else found[1]

    @property
    def move(self) -> Move | None:
        """The selected move."""
        index = self.selection.now.move
        return self.plan.moves[index] if index < len(self.plan.moves) else None

    def record(self, index: int) -> MoveRecord | None:
        """Return what was worked out for a move of the plan shown, None if nothing yet or it is foretold."""
        return None if self.asking.hides(index) else self._records.get(key_of(self.plan, index))

    def hides(self, what: str) -> bool:
        """Tell whether answers, ladder, arrow or map are kept shut, by the teacher or by a prediction."""
        return what in self.locks.shut or self.asking.unspoken

    @property
    def line(self) -> Timeline | Beside:
        """What plays and scrubs: the moments, or the clock of two plans while they stand side by side."""
        return self.beside if self.beside.rows is not None else self.timeline

    def records(self, plan: Plan | None = None) -> tuple[MoveRecord, ...]:
        """Return the records of a plan's leading moves, up to the first that is not worked out."""
        found: list[MoveRecord] = []
        plan = self.plan if plan is None else plan
        for index in range(len(plan.moves)):
            record = self._records.get(key_of(plan, index))
            if record is None:
                break
            found.append(record)
        return tuple(found)

    @property
    def solved_count(self) -> int:
        """How many leading moves have been worked out."""
        return len(self.records())

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
        if self.move is None or not is_driven(self.move):
            return False
        return self.timeline.move < self.selection.now.move

    def before(self, index: int) -> Before:
        """Return the metal that a move of the plan finds: the car and the moves before it."""
        return self.plan.car, self.plan.past(index)

    def wish_touch(self, index: int, move: Move) -> None:
        """Ask for a push to be tried in a move's place, if the worker is free and the metal known."""
        if not self.queue.busy and index <= self.solved_count:
            self.aims.wish(self.before(index), move)

    # --- what may be done --------------------------------------------------------------------------------

    @property
    def can_open(self) -> bool:
        """Whether the tips can be opened (or closed) by hand now."""
        return (
            self.model is not None
            and self.move is not None
            and is_driven(self.move)
            and self.selection.now.move <= self.solved_count
            and not self.queue.busy
            and not self.asking.open
        )

    @property
    def can_run(self) -> bool:
        """Whether the plan has moves to work out."""
        return self.model is not None and bool(self.plan.moves) and not (self.queue.busy or self.asking.open)

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
    def busy_words(self) -> str:
        """What is going on, in a few words; empty when nothing is."""
        request = self.queue.current
        if request is None:
            return ""
        if request.job is Job.PREPARE:
            return "Setting out the door"
        if request.aside:
            return "Working out the plan beside"
        if self.queue.standing is Standing.STOPPING:
            return "Letting go"
        verb = "Opening the tips" if self.move is None else words_of(self.move).verbs[1]
        return verb if self.queue.standing is Standing.RUNNING else "Getting ready"

    # --- wishes ------------------------------------------------------------------------------------------

    def prepare(self) -> None:
        """Ask for the door of the plan's car, unless it is there."""
        if self.model is None:
            self.asked.emit(self.queue.issue(Job.PREPARE, self.plan))

    def run(self, last: int | None = None) -> None:
        """Ask for the moves that are not worked out yet, up to `last` (all of them)."""
        end = len(self.plan.moves) - 1 if last is None else last
        first = self.solved_count
        if not self.can_run:
            return
        if first > end:
            if self.timeline.last_of(end) is None:  # known, and not laid out yet
                self._show_records(end + 1)
            place = self.timeline.last_of(end)
            self.timeline.go(len(self.timeline) if place is None else place)
            return
        self._show_records(first)
        self.asked.emit(self.queue.issue(Job.SOLVE, self.plan, first=first, last=end))

    def run_aside(self, plan: Plan) -> None:
        """Ask for the moves of a plan that is not the one shown, as far as they are not worked out."""
        first = len(self.records(plan))
        if self.can_run and first < len(plan.moves):
            self.asked.emit(
                self.queue.issue(Job.SOLVE, plan, first=first, last=len(plan.moves) - 1, aside=True)
            )

    def run_selected_to(self, opening_m: float) -> None:
        """Ask for the selected move with another opening."""
        index, move = self.selection.now.move, self.move
        if move is None or not self.can_run:
            return
        if not is_driven(move):  # nothing is opened
            self.run(index)
            return
        units = self.view.options.units
        self.document.commit(
            self.plan.with_move(index, opened(move, opening_m)), f"Run to {length_text(opening_m, units)}"
        )
        self.run(index)

    def hold(self) -> None:
        """Open the tips for as long as they are held, on from the moment shown; a tool is let off at once."""
        if self.move is not None and not is_driven(self.move):
            self.run(self.selection.now.move)
            return
        if not self.can_open:
            return
        index = self.selection.now.move
        frame = self.timeline.frame
        inside = self.timeline.move == index and frame is not None
        seen = frame.opening_m if inside and frame is not None else 0.0
        self._show_records(index, self.timeline.position if inside else None)
        first = min(index, self.solved_count)
        self.asked.emit(self.queue.issue(Job.PUSH, self.plan, first=first, last=index, shown_from_m=seen))

    def let_go(self) -> None:
        """Stop opening at the next point of the grid; what was reached is kept."""
        if self.queue.let_go():
            self.released.emit()

    def stop(self) -> None:
        """Give up the work in hand; the moments shown so far stay to be looked at."""
        if self.queue.cancel():
            self.dropped.emit()
            self.changed.emit()

    def go_on_from_here(self) -> None:
        """Cut the plan at the moment shown, so that the next push starts there."""
        if not self.can_go_on_from_here:
            return
        index, frame = self.timeline.move, self.timeline.frame
        plan = cut_here(self.plan, self.timeline)
        old = self.record(index)
        words = length_text(opening_of(plan.moves[index]), self.view.options.units)
        self.selection.select_move(index)
        if old is not None and frame is not None and plan.moves[index] == self.plan.moves[index]:
            self.document.commit(plan, f"Went on after move {index + 1}")
            return
        self.document.commit(plan, f"Went on from {words}")
        self.run(index)

    def go_to_step(self, number: int) -> None:
        """Go to a step of any branch, to the moment at which it was left."""
        history = self.document.history
        history.note_moment(self.timeline.position)
        self.document.go(number)
        if history.moment is not None:
            self.timeline.go(history.moment)

    def change_move(self, move: Move, label: str, run: object = None) -> None:
        """Put another move in the place of the selected one; turns of one control `run` are one step."""
        index = self.selection.now.move
        self.document.commit_run(self.plan.with_move(index, move), label, run)

    def change_car(self, car: Car, label: str) -> None:
        """Put the same moves on another car, and work them out again."""
        if car == self.plan.car:
            return
        self._run_again = bool(self.plan.moves) and self.solved_count > 0 and not self.asking.open
        self.document.commit(self.plan.with_car(car), label)
        self._maybe_run_again()

    def change_tool(self, tool: Tool, label: str) -> None:
        """Use another tool in every move that has one, and work them out again."""
        moves = tuple(
            msgspec.structs.replace(move, tool=tool) if isinstance(move, Spread | Squeeze) else move
            for move in self.plan.moves
        )
        if moves == self.plan.moves:
            return
        self._run_again = self.solved_count > 0 and not self.asking.open
        self.document.commit(msgspec.structs.replace(self.plan, moves=moves), label)
        self._maybe_run_again()

    def _maybe_run_again(self) -> None:
        if self._run_again and self.can_run:
            self._run_again = False
            self.run()

    # --- answers -----------------------------------------------------------------------------------------

    def take(self, answers: list[Answer]) -> None:
        """Take in what the worker said since the last time; stale answers are dropped by their number."""
        frames: list[FramesReady] = []
        for answer in answers:
            if isinstance(answer, DoorReady):
                # A door is true for its car, whoever asked for it.
                self._keep_door(answer)
            if isinstance(answer, Aimed):
                self.aims.take(answer)
                continue
            if not self.queue.accept(answer.number):
                continue
            if isinstance(answer, FramesReady):
                frames.append(answer)
                continue
            self._append(frames)
            frames = []
            self._take_one(answer)
        self._append(frames)

    def _append(self, answers: list[FramesReady]) -> None:
        request = self.queue.current
        if not answers or request is None or request.aside:
            return
        for answer in answers:
            held = request.job is Job.PUSH and answer.move == request.last
            seen = request.shown_from_m if held else 0.0
            kept = [frame for frame in answer.frames if seen == 0.0 or frame.opening_m > seen + 1e-9]
            self.timeline.append(answer.move, kept)

    def _take_one(self, answer: Answer) -> None:
        if isinstance(answer, MoveReady):
            self._keep_record(answer)
        elif isinstance(answer, Refused):
            self.queue.finish(answer.number)
            self.said.emit(answer.sentence, answer.report)
            self.changed.emit()
        elif isinstance(answer, (Ended, Stopped)):
            if isinstance(answer, Ended):
                self.seconds = answer.seconds
            self.queue.finish(answer.number)
            self.changed.emit()
            self._maybe_run_again()

    def _keep_door(self, answer: DoorReady) -> None:
        known = answer.car in self._doors
        self._doors[answer.car] = (answer.model, answer.start)
        self._doors.move_to_end(answer.car)
        while len(self._doors) > DOORS_KEPT:
            self._doors.popitem(last=False)
        if answer.car == self.plan.car and not known:
            self._show_records()
            self.changed.emit()

    def _keep_record(self, answer: MoveReady) -> None:
        key = key_of(answer.plan, answer.move)
        self._records[key] = answer.record
        self._records.move_to_end(key)
        while len(self._records) > RECORDS_KEPT:
            self._records.popitem(last=False)
        request = self.queue.current
        if request is not None and request.aside:
            self.changed.emit()
        elif request is not None and request.job is Job.PUSH and answer.move == request.last:
            self._commit_push(answer)
        else:
            self._show_records(answer.move + 1)
            self.changed.emit()

    def _commit_push(self, answer: MoveReady) -> None:
        move = answer.plan.moves[answer.move]
        reached = opening_of(move)
        label = f"{words_of(move).verbs[2]} to {length_text(reached, self.view.options.units)}"
        if answer.plan == self.document.committed:
            self._show_records()
        else:
            self.document.commit(answer.plan, label)
        self.changed.emit()

    def show_again(self, before: int | None = None) -> None:
        """Lay the moments out again, what may be seen of them has changed; show the last before a move."""
        if before is None or self.start is None:
            self._show_records()
        else:
            moves = [record.frames for record in self.records()]
            self.timeline.show(self.start, moves, sum(len(frames) for frames in moves[:before]))
        self.changed.emit()

    # --- inside ------------------------------------------------------------------------------------------

    def know(self, plan: Plan, records: Sequence[MoveRecord]) -> None:
        """Take in what was worked out for a plan's leading moves before, so that nobody waits for it."""
        for index, record in enumerate(records):
            self._records.setdefault(key_of(plan, index), record)
        request = self.queue.current
        solving = request is not None and request.job is not Job.PREPARE
        if plan == self.plan and records and not solving:
            self._show_records()
            self.changed.emit()

    def _plan_changed(self) -> None:
        request = self.queue.current
        if request is not None and not still_wanted(request, self.plan, self.beside.plan):
            self.stop()
        self.selection.keep_within(len(self.plan.moves))
        self._show_records()
        if self.model is None:
            self.prepare()
        self.changed.emit()

    def _show_records(self, count: int | None = None, position: int | None = None) -> None:
        """Lay out the moments that may be seen: of the first `count` moves, or up to a place in the next."""
        if self.start is None:
            self.timeline.show(None, ())
            return
        if position is not None and count is not None:
            self._cut_timeline(position)
            return
        moves = [record.frames for k, record in enumerate(self.records()) if not self.asking.hides(k)]
        self.timeline.show(self.start, moves if count is None else moves[:count])

    def _cut_timeline(self, position: int) -> None:
        last = self.timeline.move
        moves = [self.timeline.frames_of(index) for index in range(last + 1)]
        before = 1 + sum(len(frames) for frames in moves[:-1])
        moves[-1] = moves[-1][: position - before + 1]
        self.timeline.show(self.start, moves)


def key_of(plan: Plan, index: int) -> Key:
    """Return what a move's outcome depends on: the car and the moves up to and including it."""
    return plan.car, plan.past(index + 1)
