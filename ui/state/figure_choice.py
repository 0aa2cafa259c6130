"""A list of figures put together in the window: moments taken as they are shown, views, sizes and styles.

What is taken holds for the plan as it was then; a list is written with its plans and their results beside it,
so that the same pictures can be made again anywhere.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

import msgspec
import tomlkit

from sim import kept
from sim.move_words import title_of
from sim.plan import Plan
from sim.planfile import load_plan, save_plan
from sim.problems import PlanError
from sim.units import length_text
from ui.state.cards import place_of
from ui.state.figure_list import FigureList, Size, State, View, figures
from ui.state.lesson_results import FOLDER, plan_path
from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, SHOWN_WORDS, Shown

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.record import MoveRecord
    from ui.state.session import Session

CAMERA_NAMES = {
    "three_quarter": "Three-quarter from behind",
    "latch": "Close on the latch",
    "hinge": "Close on the hinges",
    "patient": "From the patient's seat",
    "section": "Section from above",
    "top": "From above",
}
"""The saved views a list may ask for, as they are chosen."""
SIZE_CHOICES = (
    Size("slide", 1600, 900),
    Size("screen", 1920, 1080),
    Size("small", 960, 600),
    Size("a4", 2480, 1754),
)
FILE_NAME = "figures.toml"
Named = TypeVar("Named", State, View)


@dataclass(frozen=True)
class Taken:
    """A moment that was taken: its plan, and what was worked out of it then.

    state : as it stands in the list;  plan : the plan;  model, records : None and () where nothing was run
    told : what it is, in words
    """

    state: State
    plan: Plan
    told: str
    model: DoorModel | None = None
    records: tuple[MoveRecord, ...] = ()


@dataclass(frozen=True)
class Choice:
    """Everything chosen so far; every combination becomes one picture."""

    taken: tuple[Taken, ...] = ()
    views: tuple[View, ...] = ()
    sizes: tuple[Size, ...] = (SIZE_CHOICES[0],)
    styles: tuple[str, ...] = ("colour",)
    formats: tuple[str, ...] = ("png",)
    title: str = ""
    author: str = ""
    licence: str = ""

    @property
    def listed(self) -> FigureList:
        """The list as it is written."""
        return FigureList(
            title=self.title,
            author=self.author,
            licence=self.licence,
            styles=self.styles,  # type: ignore[arg-type]
            formats=self.formats,  # type: ignore[arg-type]
            views=self.views,
            states=tuple(taken.state for taken in self.taken),
            sizes=self.sizes,
        )

    @property
    def count(self) -> int:
        """How many pictures it makes."""
        return sum(1 for _ in figures(self.listed))

    @property
    def missing(self) -> str:
        """What has yet to be chosen, in a sentence; empty when nothing is."""
        for there, words in (
            (self.taken, "Take a moment first: go to it on the stage, then press the button."),
            (self.views, "Add a view first."),
            (self.sizes, "Tick at least one size."),
            (self.styles, "Tick at least one style."),
            (self.formats, "Tick at least one kind of file."),
        ):
            if not there:
                return words
        return ""

    @property
    def told(self) -> str:
        """How many of what, in a sentence."""
        parts = (
            (len(self.taken), "moment"),
            (len(self.views), "view"),
            (len(self.sizes), "size"),
            (len(self.styles), "style"),
        )
        product = " \u00d7 ".join(f"{n} {word}{'' if n == 1 else 's'}" for n, word in parts)
        return f"{product} = {self.count} picture{'' if self.count == 1 else 's'}"

    def with_moment(self, session: Session) -> Choice:
        """Return the choice with the moment shown; itself where no move is planned or it is in already."""
        taken = taken_now(session, len(self.taken))
        if taken is None or any(
            (one.plan, replace_name(one.state)) == (taken.plan, replace_name(taken.state))
            for one in self.taken
        ):
            return self
        return replace(self, taken=(*self.taken, taken))

    def with_view(self, view: View) -> Choice:
        """Return the choice with another view, named by what it is; itself where it is in already."""
        if any(replace_name(one) == replace_name(view) for one in self.views):
            return self
        base = "-".join(part for part in (view.camera, view.colours) if part).replace("_", "-")
        base += "-dark" if view.theme == "dark" else ""
        names = {one.name for one in self.views}
        name = next(n for n in (base, *(f"{base}-{k}" for k in range(2, 999))) if n not in names)
        return replace(self, views=(*self.views, msgspec.structs.replace(view, name=name)))


def replace_name(one: Named) -> Named:
    """Return a state or a view without its name, to be compared."""
    return msgspec.structs.replace(one, name="")


def taken_now(session: Session, number: int) -> Taken | None:
    """Return the moment shown; None where no move is planned.

    Parameters
    ----------
    number : how many were taken before: its name begins with the next
    """
    plan, line = session.plan, session.timeline
    index = session.selection.now.move if line.move < 0 else line.move
    if index >= len(plan.moves):
        return None
    units, frames = session.view.options.units, line.frames_of(index) if line.move >= 0 else ()
    frame, moment, opening = line.frame, "end", None
    if line.move < 0 or frame is None or not frames or frame is frames[0]:
        moment, where = "start", "before the push"
    elif session.result_here is not None:
        where = f"at the end, {length_text(frame.opening_m, units)}"
    else:
        kinds = [event.kind for event in frame.events]
        earlier = {event.kind for one in frames if one.opening_m < frame.opening_m for event in one.events}
        first = next((kind for kind in kinds if kind not in earlier), "")
        moment, opening = (first, None) if first else ("end", round(frame.opening_m, 6))
        where = f"{f'{first}, ' if first else ''}{length_text(frame.opening_m, units)} open"
    slug = re.sub(r"[^a-z0-9]+", "-", (plan.title or "plan").lower()).strip("-")[:40].strip("-") or "plan"
    state = State(
        name=f"m{number + 1}",
        plan=slug,
        move=index + 1,
        moment=moment,
        opening_m=opening,
        words=f"{title_of(plan.moves[index])}, {place_of(plan.moves[index], units)}; {where}.",
    )
    told = f"{where[:1].upper()}{where[1:]}: {plan.title or 'plan'}, move {index + 1}"
    records = session.records()
    whole = len(records) == len(plan.moves)
    return Taken(state, plan, told, session.model if whole else None, tuple(records) if whole else ())


def view_words(view: View) -> str:
    """Return a view in words."""
    words = [CAMERA_NAMES.get(view.camera, view.camera), COLOUR_WORDS[view.colours].lower()]
    words += [word for word, on in (("dark", view.theme == "dark"), ("names", view.labels)) if on]
    words += [f"{LAYER_WORDS[layer]} {SHOWN_WORDS[Shown(mode)]}" for layer, mode in view.layers.items()]
    return ", ".join(words)


def view_of(session: Session, camera: str, colours: str, *, dark: bool, labels: bool) -> View:
    """Return a view with the layers as the stage shows them now."""
    options = session.view.options
    layers = {name: mode.value for name, mode in options.layers.items() if mode is not Shown.SOLID}
    theme = "dark" if dark else "light"
    return View("", camera, colours, layers, theme=theme, labels=labels)  # type: ignore[arg-type]


def opened(path: Path, listed: FigureList) -> Choice:
    """Return a list that was read as a choice; PlanError where one of its plans cannot be read."""
    taken = []
    for k, state in enumerate(listed.states):
        try:
            place = plan_path(path, state.plan)
            plan = load_plan(place)
        except PlanError as error:
            raise error.inside(f"states[{k}]") from error
        at = f"{state.opening_m * 1e3:.0f} mm open" if state.opening_m is not None else state.moment
        told = f"{at[:1].upper()}{at[1:]}: {plan.title or state.plan}, move {state.move}"
        taken.append(Taken(state, plan, told))
    return Choice(
        tuple(taken), listed.views, listed.sizes, listed.styles, listed.formats,
        listed.title, listed.author, listed.licence,
    )  # fmt: skip


def write(choice: Choice, folder: Path) -> Path:
    """Write the list, its plans, and what was worked out of them, into a folder; return where the list is.

    Raises
    ------
    OSError, PlanError
        When the folder cannot be written.
    """
    folder.mkdir(parents=True, exist_ok=True)
    names: dict[str, Plan] = {}
    states = []
    for taken in choice.taken:
        name = _free(taken.state.plan, taken.plan, names)
        names[name] = taken.plan
        place = folder / f"{name}.toml"
        save_plan(taken.plan, place)
        # a file holds rounded numbers: what was worked out stands for it only where it is the same plan
        if taken.model is not None and taken.records and load_plan(place) == taken.plan:
            kept.put(taken.plan, taken.model, taken.records, folder / FOLDER, name)
        states.append(msgspec.structs.replace(taken.state, plan=name))
    listed = msgspec.structs.replace(choice.listed, states=tuple(_numbered(states)))
    path = folder / FILE_NAME
    path.write_text(dumps(listed), encoding="utf-8")
    return path


def _free(wanted: str, plan: Plan, names: dict[str, Plan]) -> str:
    """Return a file's name that no other plan has."""
    tries = (wanted, *(f"{wanted}-{k}" for k in range(2, 999)))
    return next(name for name in tries if names.get(name, plan) == plan and name != FILE_NAME[:-5])


def _numbered(states: Sequence[State]) -> list[State]:
    """Return states of whom no two have one name."""
    names: set[str] = set()
    found = []
    for k, state in enumerate(states):
        name = state.name if state.name not in names else f"m{k + 1}-{len(names)}"
        names.add(name)
        found.append(msgspec.structs.replace(state, name=name))
    return found


def dumps(listed: FigureList) -> str:
    """Return a list as TOML, without what is as it would be anyway."""
    plain = {"schema_version": listed.schema_version} | msgspec.to_builtins(listed)
    for field, empty in (("views", View("")), ("states", State("", "")), ("sizes", Size(""))):
        bare = msgspec.to_builtins(empty)
        plain[field] = [
            {key: value for key, value in item.items() if key in ("name", "plan") or value != bare[key]}
            for item in plain[field]
        ]
    return tomlkit.dumps({key: value for key, value in plain.items() if value not in ("", None)})
