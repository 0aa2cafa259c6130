"""The one worker thread: it takes numbered requests, runs the mechanics, and hands answers to the window.

Compiled kernels and the sparse factorisation run here and nowhere else. The worker touches no widget and no
drawing object; answers wait in a box, and one queued signal a batch tells the window to empty it.
"""

from __future__ import annotations

import contextlib
import ctypes
import sys
import threading
import time
import traceback
from queue import SimpleQueue

from PySide6.QtCore import QObject, Signal

from ui.state.aims import TouchWish
from ui.state.answers import Answer, Refused, Stopped, Untouched
from ui.state.solve_queue import Request

SWITCH_INTERVAL_S = 0.0005
"""How long the worker may keep Python's lock while the window waits for it."""

FAULT = "Something went wrong inside the program; your plan is untouched. The report says where."


def give_back() -> None:
    """Give freed memory back to the system where its C library keeps it: nearly 100 MB after a run."""
    with contextlib.suppress(OSError, AttributeError, TypeError):
        ctypes.CDLL(None).malloc_trim(0)


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

    Attributes
    ----------
    ready : emitted (from the worker thread, so queued) when answers wait in the box
    """

    ready = Signal()

    def __init__(self) -> None:
        super().__init__()
        sys.setswitchinterval(SWITCH_INTERVAL_S)
        self.answers = Answers()
        self._requests: SimpleQueue[Request | TouchWish | None] = SimpleQueue()
        self._newest = 0
        self._newest_touch = 0
        self._let_go_at = 0.0
        self._thread = threading.Thread(target=self._serve, name="mechanics", daemon=True)
        self._thread.start()

    # --- called by the window ----------------------------------------------------------------------------

    def submit(self, request: Request) -> None:
        """Take a request; whatever runs for an older one is given up."""
        self._let_go_at = 0.0
        self._newest = request.number
        self._newest_touch = 0
        self._requests.put(request)

    def try_touch(self, wish: TouchWish) -> None:
        """Take a wish for a touch; an older one is given up, and this one as soon as there is a request."""
        self._newest_touch = wish.number
        self._requests.put(wish)

    def let_go(self) -> None:
        """End the held push at the next point of the grid."""
        self._let_go_at = time.perf_counter()

    def drop(self) -> None:
        """Give up whatever runs or waits."""
        self._newest += 1

    def close(self) -> bool:
        """End the thread; return whether it ended."""
        self._newest = sys.maxsize
        self._newest_touch = 0
        self._requests.put(None)
        self._thread.join(5.0)
        return not self._thread.is_alive()

    # --- in the thread -----------------------------------------------------------------------------------

    def _serve(self) -> None:
        bench = None
        while (request := self._requests.get()) is not None:
            number = request.number
            touching = isinstance(request, TouchWish)
            if number != self._newest_touch if touching else number < self._newest:
                self._say(Untouched(number) if touching else Stopped(number))
                continue
            try:
                # Imported in the thread and not at the top: the window shows before the mechanics are loaded.
                from ui.bench import Bench

                bench = bench or Bench(self._say)
                if isinstance(request, TouchWish):
                    bench.touch(request, lambda number=number: number != self._newest_touch)
                else:
                    bench.do(request, lambda number=number: number < self._newest, self._is_let_go)
            except Exception:  # noqa: BLE001 - the thread must live on, the reader be told
                report = traceback.format_exc()
                self._say(Untouched(number, report) if touching else Refused(number, FAULT, report))
            give_back()

    def _is_let_go(self) -> float:
        """Return for how long the tips have been let go [s]; 0 while they are held."""
        return time.perf_counter() - self._let_go_at if self._let_go_at else 0.0

    def _say(self, answer: Answer) -> None:
        if self.answers.put(answer):
            self.ready.emit()
