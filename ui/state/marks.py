"""What a teacher draws on the picture, and where it is kept: a file beside the plan.

Strokes lie in space, on a plane that faced the viewer when they were drawn: from there they look as drawn,
and they stay where they were put when the view is turned.
"""

from __future__ import annotations

import contextlib
import os
import tempfile
from pathlib import Path
from typing import Literal

import msgspec
import tomlkit

from ui.state.measuring import Kind, Measure, Spot
from ui.state.signal import Signal

Point = tuple[float, float, float]
ENDING = ".marks.toml"
VERSION = 1


class MarksError(Exception):
    """A file of marks that cannot be read or written, told in one sentence."""


class Stroke(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A line drawn by hand, or an arrow from its first point to its last; points [m]."""

    kind: Literal["pen", "arrow"]
    points_m: tuple[Point, ...]


class KeptMeasure(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A measurement as it is kept."""

    kind: Kind
    places_m: tuple[Point, ...]
    nodes: tuple[tuple[int, ...], ...]
    shares: tuple[tuple[float, ...], ...]


class Marks(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """All that was drawn and measured on the pictures of one plan."""

    version: int = VERSION
    strokes: tuple[Stroke, ...] = ()
    measures: tuple[KeptMeasure, ...] = ()


def kept(measure: Measure) -> KeptMeasure:
    """Return a measurement as it is kept."""
    spots = measure.spots
    return KeptMeasure(
        measure.kind, tuple(s.place_m for s in spots), tuple(s.nodes for s in spots),
        tuple(s.shares for s in spots),
    )  # fmt: skip


def restored(found: KeptMeasure) -> Measure:
    """Return a kept measurement."""
    rows = zip(found.nodes, found.shares, found.places_m, strict=True)
    return Measure(found.kind, tuple(Spot(nodes, shares, place) for nodes, shares, place in rows))


def path_beside(plan: Path) -> Path:
    """Return where the marks of a plan file lie."""
    return plan.with_name(plan.stem + ENDING)


def read(path: Path) -> Marks:
    """Return the marks in a file; raises MarksError for one that is not such a file."""
    try:
        found = msgspec.toml.decode(path.read_bytes(), type=Marks)
    except (OSError, msgspec.MsgspecError, UnicodeError) as trouble:
        raise MarksError(
            f"The marks in {path.name} cannot be read ({trouble}); move the file away to begin anew."
        ) from trouble
    counts = [len(one.places_m) == len(one.nodes) == len(one.shares) for one in found.measures]
    if found.version > VERSION or not all(counts):
        raise MarksError(
            f"The marks in {path.name} are of another version; move the file away to begin anew."
        )
    return found


def write(path: Path, marks: Marks) -> None:
    """Write marks whole or not at all; a plan without any has no file. Raises MarksError."""
    text = tomlkit.dumps(msgspec.to_builtins(marks))
    name = ""
    try:
        if not marks.strokes and not marks.measures:
            path.unlink(missing_ok=True)
            return
        handle, name = tempfile.mkstemp(dir=path.parent, prefix=path.name)
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
        Path(name).replace(path)
    except OSError as trouble:
        if name:
            with contextlib.suppress(OSError):
                Path(name).unlink(missing_ok=True)
        raise MarksError(
            f"The marks cannot be saved beside the plan ({trouble.strerror}); save it elsewhere."
        ) from trouble


class MarksState:
    """Holds what is drawn and measured, and tells when that changes."""

    def __init__(self) -> None:
        self._now = Marks()
        self.changed: Signal[[]] = Signal()

    @property
    def now(self) -> Marks:
        """The marks now on the picture."""
        return self._now

    def set(self, marks: Marks) -> None:
        """Put other marks on it."""
        if marks != self._now:
            self._now = marks
            self.changed.emit()

    def add(self, stroke: Stroke) -> None:
        """Draw one more."""
        self.set(msgspec.structs.replace(self._now, strokes=(*self._now.strokes, stroke)))

    def measure(self, measure: Measure) -> None:
        """Take one more measurement."""
        self.set(msgspec.structs.replace(self._now, measures=(*self._now.measures, kept(measure))))

    def take_back(self, what: Literal["strokes", "measures"]) -> None:
        """Take the last stroke or measurement away."""
        self.set(msgspec.structs.replace(self._now, **{what: getattr(self._now, what)[:-1]}))

    def clear(self, what: Literal["strokes", "measures"]) -> None:
        """Take all strokes or measurements away."""
        self.set(msgspec.structs.replace(self._now, **{what: ()}))
