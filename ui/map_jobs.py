"""The thread that has an outcome map made for the window."""

from __future__ import annotations

from pathlib import Path

from ui.box_worker import BoxWorker, worker_count
from ui.state.maps import MapReady, MapRequest, MapStep, MapTrouble

LOST = "The map was lost through a fault of the program; your plan is untouched."


class MapWorker(BoxWorker):
    """Has a map made.

    Parameters
    ----------
    folder : where runs are kept as they come, so that a map that was stopped is gone on with
    """

    what, lost, trouble = "outcome map", LOST, MapTrouble

    def __init__(self, folder: Path) -> None:
        super().__init__()
        self._folder = folder

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
