"""The thread that has a plan run many times for the window, or what flips it looked for."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from ui.box_worker import BoxWorker, worker_count
from ui.state.chances import ChanceAnswer, ChanceProgress, ChanceRequest, ChanceTrouble, Wish

if TYPE_CHECKING:
    from sim.plan import Plan
    from sim.stop_and_cut import StopAndCut

LOST = "The runs were lost through a fault of the program; your plan is untouched."


class ChanceWorker(BoxWorker):
    """Has a plan run many times, or searched for what flips it."""

    what, lost, trouble = "many runs", LOST, ChanceTrouble

    def _made(self, request: ChanceRequest) -> ChanceAnswer | None:
        if request.wish is Wish.CUT:
            return self._cut(request)
        return self._likely(request) if request.wish is Wish.LIKELY else self._flip(request)

    def _cut(self, request: ChanceRequest) -> ChanceAnswer | None:
        """Have both ways worked out in one process, which ends when the wish is dropped."""
        from sim.workers import Fault, Workers

        with Workers(both_ways, 1) as workers:
            job = (request.plan, request.move, request.folder)
            for answer in workers.answer([job], lambda: self._newest != request.number):
                if answer is None:
                    continue
                found = answer[1]
                if isinstance(found, str):
                    self._say(ChanceTrouble(request.number, f"{found[:1].upper()}{found[1:]}."))
                    return None
                if isinstance(found, Fault):
                    self._say(ChanceTrouble(request.number, found.sentence, found.report))
                    return None
                return ChanceAnswer(request.number, found.sentence(), ways=found)
        return None

    def _likely(self, request: ChanceRequest) -> ChanceAnswer | None:
        from sim import many

        runs = many.Many(
            request.plan,
            request.count,
            worker_count=worker_count(),
            coarse=request.coarse,
            cancelled=lambda: self._newest != request.number,
        )
        told = -1
        for progress in runs:
            if progress.done != told:
                told = progress.done
                self._say(ChanceProgress(request.number, told, progress.total, progress.seconds_left))
        if not runs.whole:
            return None
        answer = runs.answer
        return ChanceAnswer(request.number, many.sentence(answer), tuple(many.counts(answer).splitlines()))

    def _flip(self, request: ChanceRequest) -> ChanceAnswer | None:
        from sim import flip

        search = flip.FlipSearch(
            request.plan,
            worker_count=worker_count(),
            coarse=request.coarse,
            cancelled=lambda: self._newest != request.number,
        )
        told = (-1, -1)
        for step in search:
            if (step.done, step.total) != told:
                told = (step.done, step.total)
                self._say(ChanceProgress(request.number, step.done, step.total))
        if not search.whole:
            return None
        answer = search.answer
        lines = tuple(flip.flip_words(item) for item in answer.flips)
        return ChanceAnswer(request.number, flip.sentence(answer), lines)


def both_ways(job: tuple[Plan, int, Path | None]) -> StopAndCut | str:
    """Return what going on with a spread costs against stopping to cut, or why it cannot be told.

    Called in a process of its own.
    """
    from meshes.part import MeshError
    from sim.problems import PlanError
    from sim.stop_and_cut import stop_and_cut

    plan, move, folder = job
    try:
        return stop_and_cut(plan, move, folder=folder)
    except (PlanError, MeshError) as problem:
        return str(problem).rstrip(".")
