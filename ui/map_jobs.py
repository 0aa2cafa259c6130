"""The thread that has an outcome map made for the window; the runs themselves are processes of their own.

It touches no widget and no drawing object: what it has to say waits in a box, and a queued signal tells the
window to empty it.
"""

from __future__ import annotations

import threading
import traceback
from pathlib import Path
from queue import SimpleQueue

from PySide6.QtCore import QObject, Signal

from sim.problems import PlanError
from ui.chance_jobs import worker_count
from ui.state.maps import MapReady, MapRequest, MapStep, MapTrouble, Said

LOST = "The map was lost through a fault of the program; your plan is untouched."


class MapWorker(QObject):
    """Hands a wish to a thread and tells when something waits.

    Parameters
    ----------
    folder : where runs are kept as they come, so that a map that was stopped is gone on with

    Attributes
    ----------
    ready : emitted (from the thread, so queued) for everything that is put into the box
    """

    ready = Signal()

    def __init__(self, folder: Path) -> None:
        super().__init__()
        self.said: SimpleQueue[Said] = SimpleQueue()
        self._folder = folder
        self._newest = 0
        self._thread: threading.Thread | None = None

    def submit(self, request: MapRequest) -> None:
        """Begin a map; the processes of an older one end meanwhile."""
        self._newest = request.number
        self._thread = threading.Thread(target=self._serve, args=(request,), name="outcome map", daemon=True)
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

    def _serve(self, request: MapRequest) -> None:
        try:
            answer = self._made(request)
        except PlanError as problem:
            self._say(MapTrouble(request.number, f"{str(problem)[0].upper()}{str(problem)[1:]}."))
        except Exception:  # noqa: BLE001 - a thread that dies silently would leave the window waiting
            self._say(MapTrouble(request.number, LOST, traceback.format_exc()))
        else:
            if answer is not None:
                self._say(answer)

    def _made(self, request: MapRequest) -> MapReady | None:
        from sim.map_file import MapStore
        from sim.map_run import MapRun

        run = MapRun(
            request.ask,
            MapStore(self._folder),
            worker_count=worker_count(),
            cancelled=lambda: self._newest != request.number,
        )
        told = -1
        for progress in run:
            if progress.done != told:
                told = progress.done
                self._say(MapStep(request.number, told, progress.total, progress.seconds_left))
        return MapReady(request.number, run.answer) if run.whole else None

    def _say(self, said: Said) -> None:
        self.said.put(said)
        self.ready.emit()
