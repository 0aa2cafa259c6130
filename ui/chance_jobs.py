"""The thread that has a plan run many times for the window; the runs themselves are processes of their own.

It touches no widget and no drawing object: what it has to say waits in a box, and a queued signal tells the
window to empty it.
"""

from __future__ import annotations

import os
import threading
import traceback
from queue import SimpleQueue

from PySide6.QtCore import QObject, Signal

from sim.problems import PlanError
from ui.state.chances import ChanceAnswer, ChanceProgress, ChanceRequest, ChanceTrouble, Said, Wish

LOST = "The runs were lost through a fault of the program; your plan is untouched."


class ChanceWorker(QObject):
    """Hands a wish to a thread and tells when something waits.

    Attributes
    ----------
    ready : emitted (from the thread, so queued) for everything that is put into the box
    """

    ready = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.said: SimpleQueue[Said] = SimpleQueue()
        self._newest = 0
        self._thread: threading.Thread | None = None

    def submit(self, request: ChanceRequest) -> None:
        """Begin a wish; the processes of an older one end meanwhile."""
        self._newest = request.number
        self._thread = threading.Thread(target=self._serve, args=(request,), name="many runs", daemon=True)
        self._thread.start()

    def drop(self) -> None:
        """Have what is under way end, processes and all; the window does not wait for it."""
        self._newest = -1

    def close(self) -> bool:
        """End what is under way and wait for it; return whether nothing is left."""
        self.drop()
        if self._thread is not None:
            self._thread.join(5.0)
        return self._thread is None or not self._thread.is_alive()

    def waiting(self) -> list[Said]:
        """Return everything in the box, which is empty then."""
        found = []
        while not self.said.empty():
            found.append(self.said.get())
        return found

    # --- in the thread -----------------------------------------------------------------------------------

    def _serve(self, request: ChanceRequest) -> None:
        try:
            answer = self._likely(request) if request.wish is Wish.LIKELY else self._flip(request)
        except PlanError as problem:
            self._say(ChanceTrouble(request.number, f"{str(problem)[0].upper()}{str(problem)[1:]}."))
        except Exception:  # noqa: BLE001 - a thread that dies silently would leave the window waiting
            self._say(ChanceTrouble(request.number, LOST, traceback.format_exc()))
        else:
            if answer is not None:
                self._say(answer)

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

    def _say(self, said: Said) -> None:
        self.said.put(said)
        self.ready.emit()


def worker_count() -> int:
    """Return how many processes: one core is left for the window."""
    return max(1, (os.cpu_count() or 1) - 1)
