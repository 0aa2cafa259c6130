"""Lists of figures: which states, from which views, at which sizes and in which styles, as a TOML text.

Every combination becomes one picture with a caption and a text for those who do not see it.  The same list
gives the same pictures; what came out differently since the last time is told (`verdict_changes`).
"""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Literal

import msgspec

from sim.kept import Kept
from sim.planfile import check_version
from sim.problems import PlanError
from sim.textfiles import read_text
from sim.typed import converted, parsed
from ui.state.lesson_file import CAMERAS
from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, Shown

SCHEMA_VERSION = 1
Style = Literal["colour", "grey", "before"]
Format = Literal["png", "svg"]
Theme = Literal["light", "dark"]
STYLE_WORDS: Mapping[str, str] = {
    "colour": "in colour",
    "grey": "in grey, for a copier",
    "before": "before the push, to foretell on",
}
LEAST_PX, MOST_PX = 200, 8000


class View(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """Where from and how a state is looked at.

    ghost : outline of the start;  path : load path;  room : line to the occupant;  labels : names of parts
    """

    name: str
    camera: str = "three_quarter"
    colours: str = "material"
    layers: dict[str, str] = {}
    ghost: bool = True
    path: bool = False
    room: bool = False
    theme: Theme = "light"
    labels: bool = False


class State(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A moment of a plan.

    plan : name of a plan file without its ending, beside the list or among the ready plans
    move : its number, from 1;  moment : "start", "end" or a kind of event;  words : begins the caption
    opening_m : the moment nearest to this opening [m], in place of `moment`
    """

    name: str
    plan: str
    move: int = 1
    moment: str = "end"
    words: str = ""
    opening_m: float | None = None


class Size(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """Width and height [px]."""

    name: str
    width_px: int = 1600
    height_px: int = 1000


class FigureList(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A whole list."""

    schema_version: int = SCHEMA_VERSION
    title: str = ""
    author: str = ""
    licence: str = ""
    styles: tuple[Style, ...] = ("colour",)
    formats: tuple[Format, ...] = ("png",)
    views: tuple[View, ...] = ()
    states: tuple[State, ...] = ()
    sizes: tuple[Size, ...] = (Size("screen"),)


@dataclass(frozen=True)
class Figure:
    """One picture of a list."""

    state: State
    view: View
    size: Size
    style: str

    @property
    def name(self) -> str:
        """The name of its files, without an ending."""
        return "--".join((self.state.name, self.view.name, self.size.name, self.style))


def figures(listed: FigureList) -> Iterator[Figure]:
    """Yield every picture of a list, a state's pictures together."""
    for state, view, size, style in itertools.product(
        listed.states, listed.views, listed.sizes, listed.styles
    ):
        yield Figure(state, view, size, style)


def load(path: Path) -> FigureList:
    """Return the list in a file; PlanError, naming field and remedy, where it cannot be read."""
    return loads(read_text(path, "list"))


def loads(text: str) -> FigureList:
    """Return the list in a TOML text.

    Raises
    ------
    PlanError
        Syntax, missing or newer version, unknown field, a name that leads nowhere or stands twice.
    """
    raw = parsed(text, "list")
    check_version(raw, SCHEMA_VERSION)
    return _checked(converted(raw, FigureList, "list"))


def _checked(listed: FigureList) -> FigureList:
    for field in ("views", "states", "sizes", "styles", "formats"):
        if not getattr(listed, field):
            raise PlanError(field, f"are missing; add at least one of the {field}")
    for field in ("views", "states", "sizes"):
        names = [item.name for item in getattr(listed, field)]
        for k, name in enumerate(names):
            if not re.fullmatch(r"[a-z0-9_-]+", name):
                raise PlanError(f"{field}[{k}].name", f"is {name!r}; use small letters, digits, - and _")
            if name in names[:k]:
                raise PlanError(f"{field}[{k}].name", f"{name!r} stands there twice; use another name")
    for k, view in enumerate(listed.views):
        _among(f"views[{k}].camera", view.camera, CAMERAS)
        _among(f"views[{k}].colours", view.colours, COLOUR_WORDS)
        for layer, mode in view.layers.items():
            _among(f"views[{k}].layers", layer, LAYER_WORDS)
            _among(f"views[{k}].layers.{layer}", mode, [shown.value for shown in Shown])
    for k, size in enumerate(listed.sizes):
        for side in ("width_px", "height_px"):
            if not LEAST_PX <= getattr(size, side) <= MOST_PX:
                raise PlanError(
                    f"sizes[{k}].{side}", f"is {getattr(size, side)}; use {LEAST_PX} to {MOST_PX}"
                )
    return listed


def _among(path: str, value: str, known: Any) -> None:
    if value not in known:
        raise PlanError(path, f"is {value!r}; use one of: {', '.join(repr(word) for word in known)}")


# what was drawn, and what changed -------------------------------------------------------------------------


class Drawn(msgspec.Struct, frozen=True):
    """What a picture was made from: written beside the pictures, read again the next time.

    verdict : what gave first and what it meant;  sha256 : of the picture's pixels
    """

    name: str
    plan: str
    plan_sha256: str
    model_version: str
    verdict: str
    caption: str
    alt: str
    sha256: str


def verdict_of(kept: Kept, move: int) -> str:
    """Return a move's verdict in a few words."""
    told = kept.moves[move - 1]
    return f"{told.first}; {told.effect}"


def verdict_changes(before: Mapping[str, Drawn], now: Mapping[str, Drawn]) -> tuple[str, ...]:
    """Return what differs from the last time, verdicts first; empty when nothing does."""
    verdicts, pictures = [], []
    for name, drawn in now.items():
        old = before.get(name)
        if old is None:
            continue
        if old.verdict != drawn.verdict:
            line = f"VERDICT CHANGED: {drawn.plan}: {old.verdict}, now {drawn.verdict}"
            if line not in verdicts:
                verdicts.append(line)
        if old.sha256 != drawn.sha256:
            pictures.append(f"another picture: {name}")
    gone = [f"no longer in the list: {name}" for name in before if name not in now]
    return (*verdicts, *pictures, *gone)
