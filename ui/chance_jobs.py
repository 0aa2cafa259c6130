"""The thread that has a plan run many times for the window, or what flips it looked for."""

from __future__ import annotations

from ui.box_worker import BoxWorker, worker_count
from ui.state.chances import ChanceAnswer, ChanceProgress, ChanceRequest, ChanceTrouble, Wish

LOST = "The runs were lost through a fault of the program; your plan is untouched."


class ChanceWorker(BoxWorker):
    """Has a plan run many times, or searched for what flips it."""

    what, lost, trouble = "many runs", LOST, ChanceTrouble

    def _made(self, request: ChanceRequest) -> ChanceAnswer | None:
        return self._likely(request) if request.wish is Wish.LIKELY else self._flip(request)

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
