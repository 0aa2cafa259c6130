"""One sitting at the window: the plan, what has been worked out for it, and what may be done next."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import msgspec

from sim.move_words import is_driven, opened, opening_of, words_of
from sim.plan import Car, Move, Plan, Tool
from sim.units import length_text
from ui.state.answers import (
    Aimed,
    Answer,
    DoorReady,
    Ended,
    FoundReady,
    FramesReady,
    MoveReady,
    Refused,
    Stopped,
)
from ui.state.facts import Facts
from ui.state.known import FoundCar
from ui.state.signal import Signal
from ui.state.solve_queue import Job, Request, still_wanted
from ui.state.timeline import cut_here, show_wreck

if TYPE_CHECKING:
    from sim.record import MoveRecord

AT_ITS_END = "The plan stands at its end: hold Open the tips, or run to a wider opening."


class Session(Facts):
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
        super().__init__(plan)
        self.seconds = 0.0
        self._run_again = False
        self._asked_for: object = None
        self._file = self.document.path
        self.starts: dict[str, Path] = {}
        """Where the plan lies beside which a saved start is looked for, by the start's name: of lessons."""
        self.asked: Signal[[Request]] = Signal()
        self.released: Signal[[]] = Signal()
        self.dropped: Signal[[]] = Signal()
        self.changed: Signal[[]] = Signal()
        self.said: Signal[[str, str]] = Signal()
        self.document.changed.connect(self._plan_changed)
        self.document.filed.connect(self._filed)
        self.aims.failed.connect(self.said.emit)

    # --- wishes ------------------------------------------------------------------------------------------

    def prepare(self) -> None:
        """Ask for the door of the plan's car, and for a kept start of its wreck, unless they are there."""
        wanted = (self.plan.car, self.plan.past(0), self.document.path, self._keeps(self.plan))
        lacking = self.is_wrecked and wanted != self._asked_for
        if self.model is None or (lacking and not self.queue.busy):
            self._asked_for = wanted
            self._ask(Job.PREPARE, self.plan)

    def run(self, last: int | None = None) -> None:
        """Ask for the moves that are not worked out yet, up to `last` (all of them)."""
        end = len(self.plan.moves) - 1 if last is None else last
        first = self.solved_count
        if not self.can_run:
            return
        end = self.before_push(end)
        if first > end:
            if self.timeline.last_of(end) is None:  # known, and not laid out yet
                self._show_records(end + 1)
            place, was = self.timeline.last_of(end), self.timeline.position
            self.timeline.go(len(self.timeline) if place is None else place)
            if self.timeline.position == was and last is None:
                self.said.emit(AT_ITS_END, "")
            return
        self._show_records(first)
        self._ask(Job.SOLVE, self.plan, first=first, last=end)

    def find(self) -> None:
        """Ask for the wreck alone, its moments laid out as they come."""
        if self.can_find:
            self._ask(Job.FIND, self.plan)

    def watch_wreck(self) -> None:
        """Lay out how the car was wrecked, in place of the plan's moments; the last one is its start."""
        if self.found is not None and self.found.moves:
            show_wreck(self.timeline, self.found)

    def leave_wreck(self) -> None:
        """Lay out the plan's moments again."""
        if self.timeline.shows_wreck:
            self._show_records()

    def run_aside(self, plan: Plan) -> None:
        """Ask for the moves of a plan that is not the one shown, as far as they are not worked out."""
        first = len(self.records(plan))
        if self.can_run and first < len(plan.moves):
            self._ask(Job.SOLVE, plan, first=first, last=len(plan.moves) - 1, aside=True)

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
        """Open the tips while they are held, on from the moment shown; a wreck before them comes first."""
        if not self.start_is_known:
            self.find()
            return
        if self.move is not None and not is_driven(self.move):
            self.run(self.selection.now.move)
            return
        index, frame = self.selection.now.move, self.timeline.frame
        if not self.can_open:
            return
        end = self.before_push(index)
        if end < index:  # a question stands between: its push is not run in passing
            self.run(end)
            return
        inside = self.timeline.move == index and frame is not None
        seen = frame.opening_m if inside and frame is not None else 0.0
        self._show_records(index, self.timeline.position if inside else None)
        first = min(index, self.solved_count)
        self._ask(Job.PUSH, self.plan, first=first, last=index, shown_from_m=seen)

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
        wanted = self.wanted_opening_m
        if self.move is not None and is_driven(move) and opening_of(move) == opening_of(self.move) != wanted:
            move = opened(move, wanted)  # a push that was let go early is meant to go as far as before
        self.document.commit_run(self.plan.with_move(index, move), label, run)

    def change_car(self, car: Car, label: str) -> None:
        """Put the same moves on another car, and work them out again."""
        self.change_plan(self.plan.with_car(car), label)

    def change_plan(self, plan: Plan, label: str) -> None:
        """Show another plan in this one's place, and work it out again if this one was."""
        if plan == self.plan:
            return
        self._run_again = bool(plan.moves) and self.solved_count > 0 and not self.asking.open
        self.document.commit(plan, label)
        self._maybe_run_again()

    def change_tool(self, tool: Tool, label: str) -> None:
        """Use another tool in every move that has one, and work them out again."""
        moves = tuple(
            msgspec.structs.replace(move, tool=tool) if hasattr(move, "tool") else move
            for move in self.plan.moves
        )
        self.change_plan(msgspec.structs.replace(self.plan, moves=moves), label)

    def _maybe_run_again(self) -> None:
        if self._run_again and self.can_run:
            self._run_again = False
            self.run()

    def _keeps(self, plan: Plan) -> bool:
        """Tell whether the start of a plan's wreck is kept beside the file: only if that holds this wreck."""
        saved = self.document.saved
        return self.document.path is not None and (saved.car, saved.past(0)) == (plan.car, plan.past(0))

    def _ask(
        self,
        job: Job,
        plan: Plan,
        *,
        first: int = 0,
        last: int = -1,
        shown_from_m: float = 0.0,
        aside: bool = False,
    ) -> None:
        """Hand a request to the worker, with where starts lie and whether new ones are kept there."""
        file, keeps = self.document.path, self._keeps(plan)
        lies = self.starts.get(plan.start, file) if plan.start else file
        self.asked.emit(
            self.queue.issue(
                job,
                plan,
                first=first,
                last=last,
                shown_from_m=shown_from_m,
                aside=aside,
                file=lies,
                keeps=keeps,
            )
        )

    # --- answers -----------------------------------------------------------------------------------------

    def take(self, answers: list[Answer]) -> None:
        """Take in what the worker said since the last time; stale answers are dropped by their number."""
        frames: list[FramesReady] = []
        for answer in answers:
            if isinstance(answer, DoorReady):
                # A door is true for its car, whoever asked for it.
                self._keep_door(answer)
            if isinstance(answer, FoundReady):  # so is a wrecked car for its wreck
                self._keep_found(answer)
                continue
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
            if answer.move < 0:
                if self.untouched is not None and not self.timeline.shows_wreck:
                    self.timeline.show(self.untouched, (), before=-len(request.plan.wreck) - 2)
                self.timeline.append(answer.move - 1, answer.frames)
                continue
            if self.timeline.shows_wreck:
                self._show_records(request.first)
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
        new = self._known.keep_door(answer.car, answer.model, answer.start)
        if answer.car == self.plan.car and new:
            self._show_records()
            self.changed.emit()

    def _keep_found(self, answer: FoundReady) -> None:
        untouched = self._known.door(answer.car)
        if untouched is None:
            return
        found = FoundCar(answer.start, answer.told, untouched[1], answer.moves)
        self._known.keep_found(answer.car, answer.before, found)
        request = self.queue.current
        if (answer.car, answer.before) != (self.plan.car, self.plan.past(0)):
            return
        if request is not None and request.number == answer.number and request.job is Job.FIND:
            self.watch_wreck()
        elif request is None or request.job is Job.PREPARE:
            self._show_records()
        self.changed.emit()

    def _keep_record(self, answer: MoveReady) -> None:
        self._known.keep_record(answer.plan, answer.move, answer.record)
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
        self._let_go_early = (answer.move, reached, self.wanted_opening_m)
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
        self._known.learn(plan, records)
        request = self.queue.current
        solving = request is not None and request.job is not Job.PREPARE
        if plan == self.plan and records and not solving:
            self._show_records()
            self.changed.emit()

    def _filed(self) -> None:
        """Have the start of a wrecked car kept beside its plan, too."""
        if self.is_wrecked and self.model is not None:
            self.prepare()

    def _plan_changed(self) -> None:
        if self._file != self.document.path:
            self._file = self.document.path
            self._known.forget_starts()
            self.starts.clear()
        request = self.queue.current
        if request is not None and not still_wanted(request, self.plan, self.beside.plan):
            self.stop()
        self.selection.keep_within(len(self.plan.moves))
        self._show_records()
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
        moves = [self.timeline.frames_of(index) for index in range(self.timeline.move + 1)]
        before = 1 + sum(len(frames) for frames in moves[:-1])
        moves[-1] = moves[-1][: position - before + 1]
        self.timeline.show(self.start, moves)
