"""What the worker does with a request: set out doors, run moves, push while the tips are held."""

from __future__ import annotations

import contextlib
import dataclasses
import time
from collections import OrderedDict
from collections.abc import Callable, Iterator
from pathlib import Path

from meshes.part import MeshError
from sim import aim
from sim.door_model import DoorModel
from sim.elastic import Elastic
from sim.ledger import Ledger
from sim.move_words import opened
from sim.moves import course_of
from sim.newton import CancelledError
from sim.plan import Car, Plan, Spread, Squeeze
from sim.problems import PlanError
from sim.record import Frame, MoveRecord
from sim.run import Begin, MoveRun, start_frame
from sim.starts import find_start
from sim.wreck import as_found, begin_of, model_of, wrecked
from ui.start_files import Moves, StartFiles
from ui.state.aims import Before, TouchWish
from ui.state.answers import (
    Answer,
    DoorReady,
    ElasticReady,
    Ended,
    FoundReady,
    FramesReady,
    MoveReady,
    Refused,
    Stopped,
    Touched,
    Untouched,
)
from ui.state.solve_queue import Job, Request

GRACE_S = 0.2
"""After letting go, an increment under way may take this long to reach the grid; then it is given up."""
BEGINS_KEPT = 24
DOORS_KEPT = 4
RESTS_KEPT = 8

Prefix = tuple[Car, tuple[object, ...]]


class Held:
    """A push that was let go and can be gone on with: its run, and its frames still to come."""

    def __init__(self, key: Prefix, run: MoveRun, frames: Iterator[Frame]) -> None:
        self.key, self.run, self.frames = key, run, frames
        self.shown: list[Frame] = []


class Bench:
    """Doors set out, states reached, and the run in hand; lives in the worker thread.

    Parameters
    ----------
    say : takes each answer
    starts : where starts that wrecks left are kept
    """

    def __init__(self, say: Callable[[Answer], None], starts: StartFiles | None = None) -> None:
        self._say = say
        self._starts = starts or StartFiles()
        self._watched: OrderedDict[Prefix, Moves] = OrderedDict()
        self._stamps: dict[str, object] = {}
        self._doors: OrderedDict[Car, tuple[DoorModel, Frame]] = OrderedDict()
        self._begins: OrderedDict[Prefix, Begin] = OrderedDict()
        self._rests: OrderedDict[Before, tuple[Begin, Elastic]] = OrderedDict()
        self._held: Held | None = None
        self._dropped: Callable[[], bool] = bool
        self._let_go_for: Callable[[], float] = float

    def do(self, request: Request, dropped: Callable[[], bool], let_go_for: Callable[[], float]) -> None:
        """Answer a request; always ends with one of Ended, Stopped or Refused.

        Parameters
        ----------
        dropped : whether the request no longer counts; asked before every factorisation and every step
        let_go_for : for how long the held tips have been let go [s]
        """
        began = time.perf_counter()
        self._dropped, self._let_go_for = dropped, let_go_for
        try:
            model = self._door(request)
            self._mind_start(request)
            if request.job is Job.PREPARE:
                self._look_for_start(request, model)
            elif request.job is Job.FIND:
                self._find(request, model, watch=True)
            elif request.job is Job.SOLVE:
                self._solve(request, model, request.first, request.last)
            elif request.job is Job.PUSH:
                self._solve(request, model, request.first, request.last - 1)
                self._push(request, model)
        except CancelledError:
            self._held = None
            self._say(Stopped(request.number))
        except (PlanError, MeshError) as problem:
            self._say(Refused(request.number, _sentence(problem)))
        else:
            self._say(Ended(request.number, time.perf_counter() - began))

    def set_out(self, request: Request) -> bool:
        """Set out the request's car and say so; return False, having said why, where it cannot be.

        A request that asks for no more than that is ended.
        """
        self._dropped = bool
        try:
            self._door(request)
        except (PlanError, MeshError) as problem:
            self._say(Refused(request.number, _sentence(problem)))
            return False
        if request.job is Job.PREPARE and not (request.plan.wreck or request.plan.start):
            self._say(Ended(request.number))
            return False
        return True

    def look_ahead(self, plan: Plan) -> None:
        """Set out the car of a plan that may be shown next, and say so; nothing where it cannot be."""
        with contextlib.suppress(PlanError, MeshError):
            self._door(Request(0, Job.PREPARE, plan))

    def touch(self, wish: TouchWish, dropped: Callable[[], bool]) -> None:
        """Try a push; says the metal's elastic answer once known, and ends with Touched or Untouched."""
        car, moves = wish.before
        door = self._doors.get(car)
        begin = None if door is None else self._begin_after(car, moves, door[0])
        if dropped() or door is None or begin is None or not isinstance(wish.move, Spread | Squeeze):
            self._say(Untouched(wish.number))
            return
        model = door[0]
        try:
            if wish.before not in self._rests:
                rest = aim.at_rest(model, begin, dropped)
                self._rests[wish.before] = rest, aim.answer_of(model, rest)
                while len(self._rests) > RESTS_KEPT:
                    self._rests.popitem(last=False)
            rest, answer = self._rests[wish.before]
            self._say(ElasticReady(wish.number, wish.before, answer))
            touch = aim.touch(model, wish.move, rest, cancelled=dropped)
        except (CancelledError, PlanError):
            self._say(Untouched(wish.number))
        else:
            self._say(Touched(wish.number, wish.before, wish.move, touch))

    def _door(self, request: Request) -> DoorModel:
        car = request.plan.car
        if car not in self._doors:
            model = model_of(request.plan)
            self._doors[car] = model, start_frame(model)
            while len(self._doors) > DOORS_KEPT:
                self._doors.popitem(last=False)
        model, start = self._doors[car]
        self._doors.move_to_end(car)
        self._say(DoorReady(request.number, car, model, start))
        return model

    def _begin(self, plan: Plan, index: int, model: DoorModel) -> Begin | None:
        return self._begin_after(plan.car, plan.past(index), model)

    def _begin_after(self, car: Car, past: tuple[object, ...], model: DoorModel) -> Begin | None:
        return self._begins.get((car, past)) if past else Begin(model.start, Ledger())

    # --- wrecked cars ------------------------------------------------------------------------------------

    def _mind_start(self, request: Request) -> None:
        """Forget what was made from a saved start whose name means another file now."""
        plan = request.plan
        if not plan.start:
            return
        path = find_start(plan.start, _folder(request))
        stamp = path.resolve(), path.stat().st_mtime_ns
        if self._stamps.get(plan.start) != stamp:
            self._stamps[plan.start] = stamp
            mine = plan.past(0)[0]
            for key in [key for key in self._begins if key[1] and key[1][0] == mine]:
                del self._begins[key]

    def _look_for_start(self, request: Request, model: DoorModel) -> None:
        """Tell how the car was found, if that is known or takes no wreck to be solved."""
        plan = request.plan
        if plan.wreck and self._begin(plan, 0, model) is None:
            kept = self._starts.read(plan, model, request.file)
            if kept is not None:
                self._keep_found(plan, as_found(plan, model, kept[0]), kept[1])
        elif plan.start and self._begin(plan, 0, model) is None:
            begin = begin_of(plan, model, folder=_folder(request), cancelled=self._is_dropped)
            self._keep_found(plan, begin, ())
        begin = self._begin(plan, 0, model)
        if (plan.wreck or plan.start) and begin is not None:
            self._starts.put_beside(plan, model, request.file if request.keeps else None, None)
            self._tell_found(request, begin)

    def _find(self, request: Request, model: DoorModel, *, watch: bool = False) -> None:
        """Solve the wreck, or read the saved start, that the plan's first move finds, unless it is known.

        With ``watch`` a wreck whose moments are not at hand is solved again.
        """
        plan = request.plan
        if watch or self._begin(plan, 0, model) is None:
            self._look_for_start(request, model)
        begin, key = self._begin(plan, 0, model), (plan.car, plan.past(0))
        if begin is None or (watch and plan.wreck and key not in self._watched):
            self._tell_found(request, self._wreck(request, model))

    def _wreck(self, request: Request, model: DoorModel) -> Begin:
        plan = request.plan
        moves: list[list[Frame]] = [[] for _ in plan.wreck]

        def take(frame: Frame) -> None:
            moves[frame.move_index].append(_light(frame))
            self._say(FramesReady(request.number, frame.move_index, (_light(frame),)))

        rest = wrecked(plan, model, cancelled=self._is_dropped, on_frame=take)
        begin = self._keep_found(plan, as_found(plan, model, rest), tuple(tuple(frames) for frames in moves))
        self._starts.keep(plan, model, rest, moves)
        self._starts.put_beside(plan, model, request.file if request.keeps else None, rest)
        return begin

    def _keep_found(self, plan: Plan, begin: Begin, moves: Moves) -> Begin:
        self._keep(plan, -1, begin)
        if moves:
            self._watched[plan.car, plan.past(0)] = moves
            while len(self._watched) > DOORS_KEPT:
                self._watched.popitem(last=False)
        return begin

    def _tell_found(self, request: Request, begin: Begin) -> None:
        plan = request.plan
        assert begin.found is not None
        start = start_frame(self._doors[plan.car][0], begin)
        key = plan.car, plan.past(0)
        self._say(FoundReady(request.number, *key, start, begin.found, self._watched.get(key, ())))

    def _keep(self, plan: Plan, index: int, begin: Begin) -> None:
        key = plan.car, plan.past(index + 1)
        self._begins[key] = begin
        self._begins.move_to_end(key)
        while len(self._begins) > BEGINS_KEPT:
            self._begins.popitem(last=False)

    def _solve(self, request: Request, model: DoorModel, first: int, last: int) -> None:
        """Run moves to the openings of the plan; earlier ones too, where their ends are no longer kept."""
        plan = request.plan
        while first > 0 and self._begin(plan, first, model) is None:
            first -= 1
        if plan.wreck or plan.start:
            self._find(request, model)
        if first <= last:
            self._held = None
        for index in range(first, last + 1):
            begin = self._begin(plan, index, model)
            assert begin is not None
            run = self._run(model, plan, index, begin, self._is_dropped)
            shown: list[Frame] = []
            for frame in run:
                shown.append(_light(frame))
                self._say(FramesReady(request.number, index, (shown[-1],)))
            self._keep(plan, index, run.end)
            record = MoveRecord(tuple(shown), run.result(with_residual=False), run.end.state)
            self._say(MoveReady(request.number, index, plan, record))

    def _run(
        self, model: DoorModel, plan: Plan, index: int, begin: Begin, stop: Callable[[], bool]
    ) -> MoveRun:
        try:
            return MoveRun(model, plan.moves[index], begin, index, cancelled=stop)
        except PlanError as problem:
            raise problem.inside(f"moves[{index}]") from problem

    def _is_dropped(self) -> bool:
        return self._dropped()

    def _is_over(self) -> bool:
        """Tell whether a held push is to be given up; asks about the request of now, also in an older run."""
        return self._dropped() or self._let_go_for() > GRACE_S

    def _push(self, request: Request, model: DoorModel) -> None:
        plan, index = request.plan, request.last
        move = plan.moves[index]
        wide = plan.with_move(index, opened(move, course_of(move).limit_m(model, move)))
        held = self._taken_up(request, wide)
        if held is None:
            begin = self._begin(plan, index, model)
            assert begin is not None
            run = self._run(model, wide, index, begin, self._is_over)
            held = Held((wide.car, wide.past(index + 1)), run, iter(run))
        self._hold(request, held)

    def _taken_up(self, request: Request, wide: Plan) -> Held | None:
        """Return the push that was let go last, if it is this very one at this very opening."""
        held, self._held = self._held, None
        if held is None or held.key != (wide.car, wide.past(request.last + 1)):
            return None
        same = held.run.frames and abs(held.run.frames[-1].opening_m - request.shown_from_m) < 1e-9
        return held if same else None

    def _hold(self, request: Request, held: Held) -> None:
        whole = True
        try:
            for frame in held.frames:
                held.shown.append(_light(frame))
                self._say(FramesReady(request.number, request.last, (held.shown[-1],)))
                if self._let_go_for() and frame.opening_m > 0.0:
                    break
        except CancelledError:
            if self._dropped():
                raise
            whole = False  # let go inside a long increment: what was reached before it counts
        frames = held.run.frames
        if not frames or frames[-1].opening_m <= 0.0:
            return
        held.run.settle()
        reached = opened(request.plan.moves[request.last], frames[-1].opening_m)
        plan = request.plan.with_move(request.last, reached)
        self._keep(plan, request.last, held.run.end)
        record = MoveRecord(tuple(held.shown), held.run.result(with_residual=False), held.run.end.state)
        self._held = held if whole else None
        self._say(MoveReady(request.number, request.last, plan, record))


def _folder(request: Request) -> Path | None:
    """Return where a plan's saved start is looked for."""
    return None if request.file is None else request.file.parent


def _light(frame: Frame) -> Frame:
    """Return a frame without the state of its metal: most of its memory, and nothing that is shown."""
    return dataclasses.replace(frame, state=None)


def _sentence(problem: PlanError | MeshError) -> str:
    text = str(problem)
    return text[0].upper() + text[1:] + ("" if text.endswith(".") else ".")
