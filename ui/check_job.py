"""The fast checks in a process of their own, so that the window stays free and a stop is heard at once."""

from __future__ import annotations

import threading

from PySide6.QtCore import QObject, Signal

from sim.checks.catalogue import chosen, fast_one
from sim.workers import Fault, Workers, WorkersLostError


class CheckJob(QObject):
    """Runs the fast checks one after another.

    Attributes
    ----------
    row : emitted with (family, row), from the thread that waits for them, so queued
    ended : emitted with what went wrong, or with nothing
    """

    row = Signal(object)
    ended = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._stopping = threading.Event()
        self._thread: threading.Thread | None = None

    @property
    def total(self) -> int:
        """How many checks there are."""
        return len(chosen(full=False))

    def start(self) -> None:
        """Begin, unless checks are under way."""
        if self._thread is not None and self._thread.is_alive():
            return
        self._stopping.clear()
        self._thread = threading.Thread(target=self._serve, name="checks", daemon=True)
        self._thread.start()

    def stop(self) -> None:
        """Give up what is under way."""
        self._stopping.set()

    def close(self) -> bool:
        """Give up, wait for the end, and return whether it came."""
        self._stopping.set()
        if self._thread is not None:
            self._thread.join(5.0)
        return self._thread is None or not self._thread.is_alive()

    def _serve(self) -> None:
        trouble = ""
        try:
            with Workers(fast_one, 1) as workers:
                for answer in workers.answer(range(self.total), self._stopping.is_set):
                    if answer is None:
                        continue
                    if isinstance(answer[1], Fault):
                        trouble = f"A check met a fault of the program: {answer[1].sentence}"
                        break
                    self.row.emit(answer[1])
        except WorkersLostError as problem:
            trouble = f"The checks could not be started: {problem}."
        except Exception as problem:  # noqa: BLE001 - the reader be told, whatever it was
            trouble = f"The checks met a fault of the program: {type(problem).__name__}: {problem}."
        self.ended.emit(trouble)
