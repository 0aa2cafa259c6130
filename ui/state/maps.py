"""Outcome maps in the window: what was asked, how far it is, which are known, and which two are compared.

Plain values between the window and whoever runs the cells; answers to an older wish are dropped by number.
"""

from __future__ import annotations

from dataclasses import dataclass
from importlib import resources
from pathlib import Path

from sim.map_file import MapStore, kept_in, read_kept
from sim.outcome_map import Ask, MapDifference, OutcomeMap, difference
from sim.problems import PlanError
from ui.state.signal import Signal


def ready_folder() -> Path:
    """Return where the maps lie that come with the program."""
    return Path(str(resources.files("assets").joinpath("maps")))


def ready_map(ask: Ask) -> OutcomeMap | None:
    """Return the map that comes with the program and answers what is asked; None when there is none."""
    return kept_in(ready_folder(), ask)


@dataclass(frozen=True)
class MapRequest:
    """One frozen wish; ``number`` rises with every request."""

    number: int
    ask: Ask


@dataclass(frozen=True)
class MapStep:
    """How far the runs are; ``seconds_left`` is None while that cannot be told."""

    number: int
    done: int
    total: int
    seconds_left: float | None = None


@dataclass(frozen=True)
class MapReady:
    """A whole map."""

    number: int
    outcome: OutcomeMap


@dataclass(frozen=True)
class MapTrouble:
    """The map could not be made: why, in a sentence, and details for a fault report."""

    number: int
    sentence: str
    report: str = ""


Said = MapStep | MapReady | MapTrouble


class Maps:
    """Wishes and answers, with no Qt and no process.

    Parameters
    ----------
    folder : where runs are kept as they come; a map made in an earlier sitting is found there

    Attributes
    ----------
    asked : emitted with each request to hand over;  dropped : when the runs under way are to end
    changed : emitted when something else may be shown
    """

    def __init__(self, folder: Path | None = None) -> None:
        self._store = None if folder is None else MapStore(folder)
        self._number = 0
        self._known: dict[str, OutcomeMap] = {}
        self._looked: set[str] = set()
        self.current: MapRequest | None = None
        self.progress: MapStep | None = None
        self.trouble: MapTrouble | None = None
        self.asked: Signal[[MapRequest]] = Signal()
        self.dropped: Signal[[]] = Signal()
        self.changed: Signal[[]] = Signal()

    def known(self, ask: Ask) -> OutcomeMap | None:
        """Return the map of what is asked, if it comes with the program or was made before."""
        key = ask.key
        if key not in self._known and key not in self._looked:
            self._looked.add(key)
            found = ready_map(ask)
            if found is None and self._store is not None:
                found = self._store.whole(ask)
            if found is not None:
                self._known[key] = found
        return self._known.get(key)

    def others(self, ask: Ask) -> tuple[OutcomeMap, ...]:
        """Return the maps of the same cells that one can be compared with: the ready ones, then one's own."""
        for path in sorted(ready_folder().glob("*.json")) if ready_folder().is_dir() else ():
            if path.name not in self._looked:
                self._looked.add(path.name)
                found = read_kept(path)
                if found is not None:
                    self._known.setdefault(found.key, found)
        return tuple(m for m in self._known.values() if m.ask.grid == ask.grid and m.key != ask.key)

    def compared(self, ask: Ask, other: OutcomeMap | None) -> MapDifference | None:
        """Return what changes between the map of what is asked and another; None where one is not known."""
        first = self.known(ask)
        if first is None or other is None:
            return None
        try:
            return difference(first, other)
        except PlanError:
            return None

    @property
    def busy(self) -> bool:
        """Whether a map is being made."""
        return self.current is not None

    def make(self, ask: Ask) -> None:
        """Have a map made; one that is under way is dropped, its runs stay kept."""
        self.stop()
        self._number += 1
        self.trouble = None
        self.current = MapRequest(self._number, ask)
        self.asked.emit(self.current)
        self.changed.emit()

    def stop(self) -> None:
        """End the runs under way; those that have ended are kept, and a later wish goes on from them."""
        if self.current is None:
            return
        self.current = self.progress = None
        self.dropped.emit()
        self.changed.emit()

    def take(self, said: Said) -> bool:
        """Take in what was said; return whether it still counts."""
        request = self.current
        if request is None or said.number != request.number:
            return False
        if isinstance(said, MapStep):
            self.progress = said
        else:
            self.current = self.progress = None
            if isinstance(said, MapReady):
                self._known[request.ask.key] = said.outcome
            else:
                self.trouble = said
        self.changed.emit()
        return True


def differs_in(one: OutcomeMap, other: OutcomeMap) -> str:
    """Return the name by which another map is told from one: its car, and its tool where that differs too."""
    words = other.ask.plan.car.name
    mine, theirs = one.ask.move, other.ask.move
    if mine.tool != theirs.tool:
        words += f"; {theirs.tool.name}, {1e3 * theirs.tool.tip_width_m:.0f} mm wide"
    if mine.tilt_rad != theirs.tilt_rad:
        words += "; another tilt"
    return words
