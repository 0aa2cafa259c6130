"""One sitting at the window as plain values: all that must be there again after the program was killed.

Plans, the tree of steps, the moment shown, the prediction, the lesson's step, the locks, the look and the
camera. Solved results are no part of it: they are kept by their hash, or solved again.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

import msgspec

from sim.plan import Plan
from ui.state.asking import Prediction, Standing
from ui.state.history import History, Step
from ui.state.marks import Marks
from ui.state.questions import Question
from ui.state.seeing import TOOLS, CutPlane, Seeing, Way
from ui.state.verdict import Verdict
from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, Shown, ViewOptions

if TYPE_CHECKING:
    from ui.state.asking import Asking
    from ui.state.session import Session

FORM = 1
"""Version of this form; another one is not read."""

Vector = tuple[float, float, float]


class SittingError(Exception):
    """A file that is no sitting, told in one sentence."""


class KeptStep(msgspec.Struct, frozen=True):
    """A step of the history; `plan` is a place in the sitting's list of plans."""

    label: str
    plan: int
    parent: int
    towards: int | None = None
    moment: int | None = None


class KeptAsking(msgspec.Struct, frozen=True):
    """A prediction, and how far it is; `plan` is a place in the sitting's list of plans."""

    standing: str
    plan: int
    move: int
    questions: tuple[Question, ...]
    chosen: dict[str, str]
    own_words: str
    hands: tuple[tuple[str, str, int], ...]
    locked_at: datetime | None
    ran_at: datetime | None
    shown_at: datetime | None
    verdict: Verdict | None


class KeptCamera(msgspec.Struct, frozen=True):
    """Where the viewer stands [m], and the view angle [degrees]."""

    position: Vector
    focus: Vector
    up: Vector
    angle_deg: float


class KeptLesson(msgspec.Struct, frozen=True):
    """Which lesson is open, at which step, and whether its page is the one in the left column."""

    path: str
    step: int
    in_front: bool = True


class KeptLook(msgspec.Struct, frozen=True):
    """What of the look the settings do not remember."""

    layers: dict[str, str]
    colour_mode: str
    drawer: str | None
    stage_only: bool


class KeptPicture(msgspec.Struct, frozen=True):
    """How the picture was taken apart, and what was drawn and measured on it.

    way, place_m : of the plane that cuts, None for none
    """

    tool: str | None = None
    way: Way | None = None
    place_m: float = 0.0
    asunder_ratio: float = 0.0
    start_shape: bool = True
    alone: str | None = None
    marks: Marks = Marks()


class KeptBeside(msgspec.Struct, frozen=True):
    """The plan that stood beside the one shown.

    change : of a twin, the field that was changed on its car and what it was made
    place : of the clock of both;  known : how many of its leading moves were worked out
    """

    plan: Plan
    change: tuple[str, bool | int | float | str] | None = None
    place: int = 0
    known: int = 0


class KeptView(msgspec.Struct, frozen=True):
    """What else stood open: a page of the car's form, None for none; the picture's tools; the plan beside."""

    form_page: int | None = None
    picture: KeptPicture | None = None
    beside: KeptBeside | None = None


class Sitting(msgspec.Struct, frozen=True):
    """The whole of it.

    saved, path, text : the plan as it lies in its file (a place in `plans`), where that is, and its text
    moment : index of the moment shown;  moves_shown : how many leading moves were laid out
    selected : the selected move;  shut : what the teacher keeps shut
    tries : how often it has been brought back without the window coming to rest: what ends the program is
        not tried for ever
    """

    form: int
    plans: tuple[Plan, ...]
    steps: tuple[KeptStep, ...]
    position: int
    saved: int
    path: str | None
    text: str | None
    moment: int
    moves_shown: int
    selected: int
    shut: tuple[str, ...]
    look: KeptLook
    asking: KeptAsking | None = None
    lesson: KeptLesson | None = None
    camera: KeptCamera | None = None
    written_at: datetime | None = None
    tries: int = 0
    view: KeptView | None = None

    @property
    def plan(self) -> Plan:
        """The plan shown."""
        return self.plans[self.steps[self.position].plan]

    def history(self) -> History:
        """Return the tree of steps; ValueError where its parts do not fit each other."""
        steps = [Step(step.label, self.plans[step.plan], step.parent) for step in self.steps]
        return History.rebuilt(
            steps,
            self.position,
            {k: step.towards for k, step in enumerate(self.steps) if step.towards is not None},
            {k: step.moment for k, step in enumerate(self.steps) if step.moment is not None},
        )

    def prediction(self) -> Prediction | None:
        """Return the prediction, None where none was made."""
        kept = self.asking
        if kept is None:
            return None
        return Prediction(
            self.plans[kept.plan], kept.move, kept.chosen, kept.own_words,
            {(question, choice): count for question, choice, count in kept.hands},
            kept.locked_at, kept.ran_at, kept.shown_at, kept.verdict,
        )  # fmt: skip


class _Plans:
    """A list in which each plan stands once: most steps of a tree share nothing, many share all."""

    def __init__(self) -> None:
        self.all: list[Plan] = []
        self._places: dict[int, int] = {}

    def place(self, plan: Plan) -> int:
        if id(plan) not in self._places:
            self._places[id(plan)] = len(self.all)
            self.all.append(plan)
        return self._places[id(plan)]


def sitting_of(
    session: Session,
    lesson: KeptLesson | None = None,
    camera: KeptCamera | None = None,
    view: KeptView | None = None,
) -> Sitting:
    """Return the sitting as it is now: references to what never changes, so that this takes no time."""
    document, options, line = session.document, session.view.options, session.timeline
    history, plans = document.history, _Plans()
    towards, moments = history.towards, dict(history.moments)
    moments[history.position] = line.position
    steps = tuple(
        KeptStep(step.label, plans.place(step.plan), step.parent, towards.get(k), moments.get(k))
        for k, step in enumerate(history.steps)
    )
    asking = _asking(session.asking, plans)
    saved = plans.place(document.saved)
    return Sitting(
        FORM, tuple(plans.all), steps, history.position, saved,
        None if document.path is None else str(document.path), document.text,
        line.position, line.last_move + 1, session.selection.now.move, tuple(sorted(session.locks.own)),
        KeptLook(
            {name: mode.value for name, mode in options.layers.items()},
            options.colour_mode, options.drawer, options.stage_only,
        ),
        asking, lesson, camera, view=view,
    )  # fmt: skip


def picture_of(seeing: Seeing, marks: Marks) -> KeptPicture:
    """Return how the picture is taken apart, as it is kept."""
    cut = seeing.cut
    return KeptPicture(
        seeing.tool, None if cut is None else cut.way, 0.0 if cut is None else cut.place_m,
        seeing.asunder_ratio, seeing.start_shape, seeing.alone, marks,
    )  # fmt: skip


def seeing_of(kept: KeptPicture) -> Seeing:
    """Return how the picture was taken apart; a tool or a layer that there is no more is left out."""
    return Seeing(
        kept.tool if kept.tool in TOOLS else None,
        None if kept.way is None else CutPlane(kept.way, kept.place_m),
        kept.asunder_ratio,
        kept.start_shape,
        kept.alone if kept.alone in LAYER_WORDS else None,
    )


def _asking(asking: Asking, plans: _Plans) -> KeptAsking | None:
    if asking.standing is Standing.OFF:
        return None
    now = asking.now
    return KeptAsking(
        asking.standing.value, plans.place(now.plan), now.move, asking.questions, dict(now.chosen),
        now.own_words, tuple((q, c, n) for (q, c), n in now.hands.items()),
        now.locked_at, now.ran_at, now.shown_at, now.verdict,
    )  # fmt: skip


def tried_again(sitting: Sitting) -> Sitting:
    """Return the sitting, tried once more."""
    return msgspec.structs.replace(sitting, tries=sitting.tries + 1)


def encoded(sitting: Sitting, at: datetime) -> bytes:
    """Return a sitting as JSON, with the time of its writing."""
    return msgspec.json.encode(msgspec.structs.replace(sitting, written_at=at))


def decoded(data: bytes, name: str) -> Sitting:
    """Return the sitting in a file's bytes.

    Raises
    ------
    SittingError
        Where the bytes are no sitting, or one of another form.
    """
    try:
        found = msgspec.json.decode(data, type=Sitting)
        if found.form != FORM:
            raise SittingError(f"{name} was written by another version of Hemline.")
        _ = found.plan, found.history(), found.plans[found.saved], found.prediction()
    except (msgspec.MsgspecError, ValueError, IndexError) as trouble:
        raise SittingError(f"{name} is damaged ({trouble}).") from trouble
    return found


def look_of(kept: KeptLook, options: ViewOptions) -> ViewOptions:
    """Return options with the kept look; a layer or a mode that there is no more is left as it is."""
    modes = {mode.value: mode for mode in Shown}
    for layer, mode in kept.layers.items():
        if layer in options.layers and mode in modes:
            options = options.with_layer(layer, modes[mode])
    colours = kept.colour_mode if kept.colour_mode in COLOUR_WORDS else options.colour_mode
    return replace(options, colour_mode=colours, drawer=kept.drawer, stage_only=kept.stage_only)


def restore_document(session: Session, sitting: Sitting) -> None:
    """Put plan, tree, selection, look and locks of a sitting in force."""
    path = None if sitting.path is None else Path(sitting.path)
    session.document.restore(sitting.history(), sitting.plans[sitting.saved], path, sitting.text)
    session.selection.select_move(sitting.selected)
    session.view.set(look_of(sitting.look, session.view.options))
    session.locks.restore(sitting.shut)


def restore_moment(session: Session, sitting: Sitting) -> bool:
    """Lay out the moments that were shown and go to the one of then; False where some are not worked out."""
    records = session.worked_out()
    if session.start is None or len(records) < sitting.moves_shown:
        return False
    frames = [record.frames for record in records[: sitting.moves_shown]]
    session.timeline.show(session.start, frames, sitting.moment)
    return True


def restore_asking(session: Session, sitting: Sitting) -> None:
    """Put the prediction of a sitting back where it was."""
    prediction = sitting.prediction()
    if prediction is not None and sitting.asking is not None:
        session.asking.restore(Standing(sitting.asking.standing), sitting.asking.questions, prediction)
