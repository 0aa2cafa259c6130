"""A thread that has something run many times for the window; the runs themselves are processes of their own.

It touches no widget and no drawing object: what it has to say waits in a box, and a queued signal tells the
window to empty it.
"""

from __future__ import annotations

import os
import threading
import traceback
from queue import SimpleQueue
from typing import Any

from PySide6.QtCore import QObject, Signal

from sim.problems import PlanError


class BoxWorker(QObject):
    """Hands a wish to a thread and tells when something waits; `_made` says what comes of a wish.

    Attributes
    ----------
    ready : emitted (from the thread, so queued) for everything that is put into the box
    """

    ready = Signal()
    what, lost = "", ""
    """Name of the thread; what is said when a fault of the program ends it."""
    trouble: Any
    """Makes what is said of a wish that went wrong: number, sentence and, of a fault, the report."""

    def __init__(self) -> None:
        super().__init__()
        self.said: SimpleQueue[Any] = SimpleQueue()
        self._newest = 0
        self._thread: threading.Thread | None = None

    def submit(self, request: Any) -> None:
        """Begin a wish; the processes of an older one end meanwhile."""
        self._newest = request.number
        self._thread = threading.Thread(target=self._serve, args=(request,), name=self.what, daemon=True)
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

    def waiting(self) -> list[Any]:
        """Return everything in the box, which is empty then."""
        found = []
        while not self.said.empty():
            found.append(self.said.get())
        return found

    # --- in the thread -----------------------------------------------------------------------------------

    def _serve(self, request: Any) -> None:
        try:
            answer = self._made(request)
        except PlanError as problem:
            self._say(self.trouble(request.number, f"{str(problem)[0].upper()}{str(problem)[1:]}."))
        except Exception:  # noqa: BLE001 - a thread that dies silently would leave the window waiting
            self._say(self.trouble(request.number, self.lost, traceback.format_exc()))
        else:
            if answer is not None:
                self._say(answer)

    def _made(self, request: Any) -> Any:
        """Return what a wish came to, None when it was dropped."""
        raise NotImplementedError

    def _say(self, said: Any) -> None:
        self.said.put(said)
        self.ready.emit()


def worker_count() -> int:
    """Return how many processes: one core is left for the window."""
    return max(1, (os.cpu_count() or 1) - 1)
