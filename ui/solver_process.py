"""The solver of whole sides, in a process of its own: same requests, same answers, and a window that is free.

Factoring a side's matrix holds Python's lock for some 40 ms at a time; a thread that does it again and again
would leave the window the moments between. A single door takes a tenth of that and stays in the thread.
What cannot travel between processes (a model, its factored matrix) does not: the window sets its side out by
itself, and a touch on metal that was pushed before comes without the quick guess.
"""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import signal
import threading
import time
import traceback
from collections.abc import Callable
from pathlib import Path
from typing import Any

from sim.workers import end_with_parent, one_thread
from ui.state.aims import TouchWish
from ui.state.answers import Answer, DoorReady, ElasticReady, Ended, Refused, Stopped, Untouched
from ui.state.solve_queue import Request

FAULT = "Something went wrong inside the program; your plan is untouched. The report says where."
LOST = "The solver's process ended by itself; your plan is untouched. Run it again to start another."
NEWEST, TOUCH, LET_GO = range(3)
"""Places of the flags that both processes see: numbers of what counts, and when the tips were let go."""
END_S = 3.0
KILLED_S = 20.0
"""How long a process that was killed may take to be gone: on a machine with other work, seconds."""


class SolverProcess:
    """Starts the process when it is first wanted, and hands requests and answers across.

    Parameters
    ----------
    say : takes each answer, called in the thread that listens
    folder : where settings are remembered, and starts that wrecks left
    """

    def __init__(self, say: Callable[[Answer], None], folder: Path | None) -> None:
        self._say, self._folder = say, folder
        self._context = multiprocessing.get_context("spawn")
        self._flags: Any = self._context.RawArray("d", 3)
        self._process: Any = None
        self._pipe: Any = None
        self._listener: threading.Thread | None = None
        self._waiting: set[int] = set()
        self._changing = threading.Lock()  # the window may close while the thread that asks still starts it

    @property
    def alive(self) -> bool:
        """Whether the process runs."""
        return self._process is not None and self._process.is_alive()

    def start(self) -> None:
        """Start the process unless it runs: it loads the mechanics meanwhile."""
        with self._changing:
            if self.alive:
                return
            self._pipe, theirs = self._context.Pipe()
            self._process = self._context.Process(
                target=serve, args=(theirs, self._flags, self._folder), daemon=True
            )
            with one_thread():
                self._process.start()
            theirs.close()
            self._listener = threading.Thread(
                target=self._listen, args=(self._pipe, self._process), name="solver's answers", daemon=True
            )
            self._listener.start()

    def submit(self, item: Request | TouchWish) -> None:
        """Hand over a request or a wish for a touch."""
        self.start()
        if isinstance(item, Request):
            self._waiting.add(item.number)
        with contextlib.suppress(OSError):  # a process that has just died: who listens tells
            self._pipe.send(item)

    def flag(self, place: int, value: float) -> None:
        """Let both processes know what counts now."""
        self._flags[place] = value

    def close(self) -> bool:
        """End the process and who listens to it; return whether both have ended."""
        with self._changing:
            if self._process is None or self._listener is None:
                return True
            with contextlib.suppress(OSError):
                self._pipe.send(None)
            self._listener.join(END_S)  # it sees the process out: two who wait for it can miss its end
            if self._listener.is_alive() or self._process.is_alive():
                self._process.kill()  # it holds nothing that would have to be put away
                self._listener.join(KILLED_S)
            self._process.join(KILLED_S)
            ended = not self._process.is_alive() and not self._listener.is_alive()
            self._process = None
            return ended

    def _listen(self, pipe: Any, process: Any) -> None:
        """Pass answers on until the process ends; what was still asked of it is refused then."""
        while True:
            try:
                answer = pipe.recv()
            except (EOFError, OSError):
                break
            if answer is None:
                break
            if isinstance(answer, Refused | Stopped | Ended):
                self._waiting.discard(answer.number)
            self._say(answer)
        pipe.close()
        process.join(END_S)  # gone before it is told, so that the next request starts another
        for number in sorted(self._waiting):
            self._say(Refused(number, LOST))
        self._waiting.clear()


def serve(pipe: Any, flags: Any, folder: Path | None) -> None:
    """Answer requests until there is none: the body of the process."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the window is told to stop, and ends its solver
    threading.Thread(target=end_with_parent, daemon=True).start()
    from ui.bench import Bench
    from ui.start_files import StartFiles

    def say(answer: Answer) -> None:
        if not isinstance(answer, DoorReady | ElasticReady):
            pipe.send(answer)

    bench = Bench(say, StartFiles(folder))
    while True:
        try:
            item = pipe.recv()
        except (EOFError, OSError):
            return
        if item is None:
            pipe.send(None)
            os._exit(0)  # nothing has to be put away, and taking the mechanics apart takes its time
        answered(bench, item, say, flags)


def answered(bench: Any, item: Request | TouchWish, say: Callable[[Answer], None], flags: Any) -> None:
    """Have one request answered; whatever goes wrong is said and ends nothing."""
    touching, number = isinstance(item, TouchWish), item.number
    place = TOUCH if touching else NEWEST

    def dropped() -> bool:
        return bool(flags[place] != number if touching else flags[place] > number)

    def let_go_for() -> float:
        return time.monotonic() - flags[LET_GO] if flags[LET_GO] else 0.0

    if dropped():
        say(Untouched(number) if touching else Stopped(number))
        return
    try:
        if isinstance(item, TouchWish):
            bench.touch(item, dropped)
        else:
            bench.do(item, dropped, let_go_for)
    except Exception:  # noqa: BLE001 - the solver must live on, the reader be told
        say(fault(item, traceback.format_exc()))


def fault(item: Request | TouchWish, report: str) -> Answer:
    """Return what is said of a request that went wrong through the program's own fault."""
    if isinstance(item, TouchWish):
        return Untouched(item.number, report)
    return Refused(item.number, FAULT, report)
