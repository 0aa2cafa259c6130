"""The one worker thread: it takes numbered requests, runs the mechanics, and hands answers to the window.

What is asked of a single door is worked out in the thread; of a whole side the thread sets out the model that
is drawn, and the rest is done by the solver's process (`ui.solver_process`). The worker touches no widget and
no drawing object; answers wait in a box, and one queued signal a batch tells the window to empty it.
"""

from __future__ import annotations

import contextlib
import ctypes
import sys
import threading
import time
import traceback
from dataclasses import dataclass
from pathlib import Path
from queue import SimpleQueue
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from sim.plan import Plan
from ui.solver_process import LET_GO, NEWEST, TOUCH, SolverProcess, answered, fault
from ui.state.aims import TouchWish
from ui.state.answers import Answer, Stopped, Untouched
from ui.state.solve_queue import Request

if TYPE_CHECKING:
    from ui.bench import Bench

SWITCH_INTERVAL_S = 0.0005
"""How long the worker may keep Python's lock while the window waits for it."""


def give_back() -> None:
    """Give freed memory back to the system where its C library keeps it: nearly 100 MB after a run."""
    with contextlib.suppress(OSError, AttributeError, TypeError):
        ctypes.CDLL(None).malloc_trim(0)


@dataclass(frozen=True)
class Ahead:
    """A plan that may be shown next; ``number`` is of the request after which it was thought of."""

    number: int
    plan: Plan


class Answers:
    """The box between the threads; the first answer put into an empty box rings."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._waiting: list[Answer] = []

    def put(self, answer: Answer) -> bool:
        """Add an answer; return whether the box was empty."""
        with self._lock:
            self._waiting.append(answer)
            return len(self._waiting) == 1

    def empty(self) -> list[Answer]:
        """Return everything in the box, which is empty then."""
        with self._lock:
            waiting, self._waiting = self._waiting, []
            return waiting


class Worker(QObject):
    """Hands requests to the thread and tells when answers wait.

    Parameters
    ----------
    folder : where settings are remembered, and starts that wrecks left

    Attributes
    ----------
    ready : emitted (from the worker thread, so queued) when answers wait in the box
    """

    ready = Signal()

    def __init__(self, folder: Path | None = None) -> None:
        super().__init__()
        self._folder = folder
        sys.setswitchinterval(SWITCH_INTERVAL_S)
        self.answers = Answers()
        self._requests: SimpleQueue[Request | TouchWish | Ahead | None] = SimpleQueue()
        self._flags = [0.0, 0.0, 0.0]
        self._solver = SolverProcess(self._say, folder)
        self._bench: Bench | None = None
        self._thread = threading.Thread(target=self._serve, name="mechanics", daemon=True)
        self._thread.start()

    # --- called by the window ----------------------------------------------------------------------------

    def submit(self, request: Request) -> None:
        """Take a request; whatever runs for an older one is given up."""
        self._flag(LET_GO, 0.0)
        self._flag(NEWEST, request.number)
        self._flag(TOUCH, 0)
        self._requests.put(request)

    def try_touch(self, wish: TouchWish) -> None:
        """Take a wish for a touch; an older one is given up, and this one as soon as there is a request."""
        self._flag(TOUCH, wish.number)
        self._requests.put(wish)

    def look_ahead(self, plan: Plan) -> None:
        """Have a plan's car set out before it is asked for, if nothing is asked for until then."""
        self._requests.put(Ahead(int(self._flags[NEWEST]), plan))

    def let_go(self) -> None:
        """End the held push at the next point of the grid."""
        self._flag(LET_GO, time.monotonic())

    def drop(self) -> None:
        """Give up whatever runs or waits."""
        self._flag(NEWEST, self._flags[NEWEST] + 1)

    def close(self) -> bool:
        """End the thread, and the solver's process if there is one; return whether nothing is left."""
        self._flag(NEWEST, sys.maxsize)
        self._flag(TOUCH, 0)
        self._requests.put(None)
        self._thread.join(5.0)
        return self._solver.close() and not self._thread.is_alive()

    def _flag(self, place: int, value: float) -> None:
        self._flags[place] = value
        self._solver.flag(place, value)

    # --- in the thread -----------------------------------------------------------------------------------

    def _serve(self) -> None:
        while (item := self._requests.get()) is not None:
            if isinstance(item, Ahead):
                if self._flags[NEWEST] <= item.number:
                    self._have_bench().look_ahead(item.plan)
                continue
            if self._is_dropped(item):
                self._say(Untouched(item.number) if isinstance(item, TouchWish) else Stopped(item.number))
                continue
            try:
                self._do(item)
            except Exception:  # noqa: BLE001 - the thread must live on, the reader be told
                self._say(fault(item, traceback.format_exc()))
            give_back()

    def _have_bench(self) -> Bench:
        # Imported in the thread and not at the top: the window shows before the mechanics are loaded.
        from ui.bench import Bench
        from ui.start_files import StartFiles

        self._bench = self._bench or Bench(self._say, StartFiles(self._folder))
        return self._bench

    def _do(self, item: Request | TouchWish) -> None:
        bench = self._have_bench()
        as_built = isinstance(item, TouchWish) and not item.before[1]
        if as_built or not _is_of_a_side(item):  # a side as it was built is known here, too
            answered(bench, item, self._say, self._flags)
        elif isinstance(item, TouchWish) or bench.set_out(item):
            self._solver.submit(item)
        else:
            self._solver.start()  # it will be wanted: it loads the mechanics meanwhile

    def _is_dropped(self, item: Request | TouchWish) -> bool:
        if isinstance(item, TouchWish):
            return self._flags[TOUCH] != item.number
        return self._flags[NEWEST] > item.number

    def _say(self, answer: Answer) -> None:
        if self.answers.put(answer):
            self.ready.emit()


def _is_of_a_side(item: Request | TouchWish) -> bool:
    car = item.before[0] if isinstance(item, TouchWish) else item.plan.car
    return car.extent == "side"
