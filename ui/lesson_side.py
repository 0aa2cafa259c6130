"""The lesson's side of the window: its panel, what a step shows on the stage, and the windows with it."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QFileDialog

from sim import kept
from sim.plan import Plan
from sim.problems import PlanError
from ui.beside_side import BesideSide
from ui.filing import Filing
from ui.lesson_windows import NO_LESSON, LessonWindows
from ui.main_window import MainWindow
from ui.panels.lesson import LessonPanel, StepWords
from ui.state.asking import Standing
from ui.state.lesson import Step
from ui.state.lesson_file import load_lesson, ready_lessons, ready_path
from ui.state.lesson_notes import notes_of
from ui.state.lesson_results import PlanResult, moment_at, starts_of
from ui.state.lesson_walk import LessonWalk
from ui.state.session import Session
from ui.state.tongue import tr
from ui.state.view_options import COLOUR_WORDS, Shown
from ui.state.yet_to_ask import YetToAsk

if TYPE_CHECKING:
    from ui.stage_side import StageSide


FIRST_LOOK = "00-parts-of-a-door"
"""The ready lesson for whoever has never seen a door from inside."""


class LessonSide:
    """Holds the lesson in hand and connects its panel and windows.

    Parameters
    ----------
    session, window, filing : what is shown, where, and where the user's files lie
    side : gives the stage, None before it is there
    ask : opens the card of a prediction on the selected move
    play_from : plays the moments on from a position
    beside : puts a second plan beside the one shown
    """

    def __init__(
        self,
        session: Session,
        window: MainWindow,
        filing: Filing,
        side: Callable[[], StageSide | None],
        ask: Callable[[], object],
        play_from: Callable[[int], object],
        beside: BesideSide,
    ) -> None:
        self.session, self.window, self._side = session, window, side
        self._play_from, self._pair = play_from, beside
        self.walk, self.panel = LessonWalk(), LessonPanel()
        self.windows = LessonWindows(session, window, filing, self.walk)
        self._notes: bool | None = None
        """Whether the teacher has notes shown in the class's window; None while nobody has said."""
        self._waiting, self._beside, self._before, self._found = False, False, 0, False
        self._shown_as: tuple[object, bool, bool] | None = None
        self.show_map: Callable[[str, Plan | None], object] = lambda _wanted, _other: None
        """Opens the outcome map a step asks for, or puts it away: what is wanted, and the plan beside."""
        self.remind: Callable[[], object] = lambda: None
        """Says that a prediction is open."""
        self._laying = False
        self._asks = YetToAsk(session, self.walk)
        session.timeline.moved.connect(self._note_push)
        self.look_ahead: Callable[[Plan], object] = lambda _plan: None
        """Has the car of a plan set out before a step asks for it."""
        window.left_pages.addWidget(self.panel)
        filing.open_lesson = self.open
        panel = self.panel
        panel.picked.connect(self._pick)
        panel.back_wished.connect(lambda: self._go(-1))
        panel.on_wished.connect(lambda: self._go(1))
        panel.away_wished.connect(self.walk.close)
        panel.plan_wished.connect(lambda: self._turn_to(lesson=False))
        panel.notes_wished.connect(self._turn_notes)
        panel.ask_wished.connect(ask)
        panel.beside_wished.connect(self._look_beside)
        panel.run_wished.connect(session.run)
        self.walk.changed.connect(self._step_changed)
        session.changed.connect(self._place)
        session.changed.connect(self._renew)
        session.changed.connect(self._show_if_open)
        session.view.changed.connect(self._show_if_open)
        session.asking.changed.connect(self._show_panel)

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of lessons do, by name."""
        ready = {f"lesson_{name}": lambda name=name: self.open(ready_path(name)) for name in ready_lessons()}
        return ready | {
            "lesson_open": self.ask_open,
            "first_look": lambda: self.open(ready_path(FIRST_LOOK)),
            "lesson": self.turn,
            "lesson_on": lambda: self._go(1),
            "lesson_back": lambda: self._go(-1),
            "lesson_away": self.walk.close,
            "questions": self.windows.open_practice,
            "sheets": self.windows.open_sheets,
            "words": self.windows.open_words,
            "rules": self.windows.open_rules,
            "drills": self.windows.open_drills,
        }

    # --- opening -----------------------------------------------------------------------------------------

    def ask_open(self) -> None:
        """Ask which lesson to open."""
        name, _ = QFileDialog.getOpenFileName(
            self.window, tr("Open a lesson"), str(ready_path("").parent), tr("Lessons (*.toml)")
        )
        if name:
            self.open(Path(name))

    def open(self, path: Path, position: int = 0) -> bool:
        """Open a lesson; return False, having said why, where it cannot be."""
        try:
            view = self.session.view
            self.walk.units = view.options.units
            # before the first of its plans is shown
            self.session.starts.update(starts_of(load_lesson(path), path))
            self._asks.seen.clear()
            self.walk.open(path, position)
            view.set(dataclasses.replace(view.options, drawer="plan"))
        except PlanError as problem:
            self.window.notice.say(f"{path.name} was not opened: {problem}.")
            return False
        unknown = ", ".join(self.walk.unknown)
        self.window.notice.say(
            f"Fields of this lesson that Hemline does not know: {unknown}." if unknown else ""
        )
        return True

    def turn(self) -> None:
        """Show the lesson in the left column, or the plan again."""
        if not self.walk.is_open:
            self.window.notice.say(NO_LESSON)
            return
        self._turn_to(lesson=self.window.left_pages.currentWidget() is not self.panel)

    def _go(self, way: int) -> None:
        """Go to the next step or the one before."""
        if not self.walk.is_open:
            self.window.notice.say(NO_LESSON)
            return
        self._pick(self.walk.position + way)

    def _pick(self, position: int) -> None:
        """Go to a step; not on while a card is open, for its words tell what is asked."""
        if position > self.walk.position and self.session.asking.open:
            self.remind()
            return
        self.walk.go(position)

    def _turn_to(self, *, lesson: bool) -> None:
        pages = self.window.left_pages
        pages.setCurrentWidget(self.panel if lesson else pages.widget(0))
        self.window.focus_stage()

    # --- the step on the stage ---------------------------------------------------------------------------

    def _step_changed(self) -> None:
        if not self.walk.is_open:
            self.show_map("", None)
            self._turn_to(lesson=False)
            return
        self._beside = False
        if self._pair.page_on:
            self._pair.away()
        self._turn_to(lesson=True)
        self._show_step(self.walk.result)

    def _show_step(self, result: PlanResult | None) -> None:
        step, session = self.walk.step, self.session
        assert step is not None
        self._waiting = result is not None
        if result is not None and result.plan != session.plan:
            session.selection.select_move(max(0, step.move - 1))
            session.document.commit(result.plan, f"Lesson: {step.title}")
        self._show_view(step)
        self._show_panel()
        self._place()
        other = self.walk.results.get(step.beside)
        self.show_map(step.map, None if other is None else other.plan)
        if result is None:
            self._look_ahead()

    def put_beside(self) -> bool:
        """Put the step's own second plan beside the first; return whether it has one that can stand there."""
        step = self.walk.step
        if step is None or not step.beside or self._pair.page_on:
            return False
        if self.walk.results[step.beside].plan.car != self.session.plan.car:
            return False
        self._look_beside()
        return self._pair.page_on

    def _look_beside(self) -> None:
        """Put the step's second plan beside the first; where the cars differ, show it in its place."""
        step = self.walk.step
        if step is None or not step.beside:
            return
        other = self.walk.results[step.beside]
        if other.plan.car == self.session.plan.car and not self._beside:
            if self._pair.page_on:
                self._pair.away()
                return
            self._know(other)
            if self._pair.put_beside(other.plan):
                return
        self._beside = not self._beside
        self._show_step(self.walk.results[step.beside] if self._beside else self.walk.result)

    def _show_view(self, step: Step) -> None:
        view = self.session.view
        options = view.options
        layers, colours = step.layers, step.colours
        if self.walk.position < self._before:  # gone back: as it was when the class came here first
            layers, colours = self._walked_to(self.walk.position)
        self._before = self.walk.position
        for layer, mode in layers.items():
            if layer in options.layers:
                options = options.with_layer(layer, Shown(mode))
        if colours:
            options = dataclasses.replace(options, colour_mode=colours)
        view.set(options)
        self._look_again()

    def _walked_to(self, position: int) -> tuple[dict[str, str], str]:
        """Return layers and colours as the steps up to one leave them, from solid and plain metal."""
        layers = {name: Shown.SOLID.value for step in self.walk.steps for name in step.layers}
        colours = next(iter(COLOUR_WORDS))
        for step in self.walk.steps[: position + 1]:
            layers |= step.layers
            colours = step.colours or colours
        return layers, colours

    def _place(self) -> None:
        """Lay the kept moments out and show the step's, once the door is there."""
        step, session = self.walk.step, self.session
        found = session.found is not None
        # how a wrecked car was found comes after its kept moments, and lays all of them out
        self._waiting |= found and not self._found and self.walk.is_open
        self._found = found
        if not self._waiting or step is None or session.model is None:
            return
        result = self._shown_result(step)
        if result is None or result.plan != session.plan:
            return
        self._waiting, self._laying = False, True
        self._know(result)
        session.selection.select_move(max(0, step.move - 1))
        self._go_to_moment(step)
        self._laying = False
        self._show_if_open()
        self._note_push()
        self._look_ahead()
        # a door that is drawn for the first time looks from its own place: ours comes after that
        QTimer.singleShot(0, self.window, lambda: QTimer.singleShot(0, self.window, self._look_again))

    def _look_ahead(self) -> None:
        """Have the car of the next step with a plan set out meanwhile, so that its picture comes at once."""
        coming = [
            self.walk.results[step.plan] for step in self.walk.steps[self.walk.position + 1 :] if step.plan
        ]
        if coming and not self.session.is_set_out(coming[0].plan.car):
            self.look_ahead(coming[0].plan)

    def _look_again(self) -> None:
        """Go to the view of the step shown."""
        step, side = self.walk.step, self._side()
        if step is not None and step.camera and side is not None:
            side.show_view(step.camera)

    def _know(self, result: PlanResult) -> None:
        """Give the session what was kept of a plan, if it is fresh."""
        model = self.session.model
        if result.fresh and result.kept is not None and model is not None:
            records = kept.moments(result.folder, result.file, result.kept, model)
            self.session.know(result.plan, records)

    def _renew(self) -> None:
        """Tell the figures of a run that was made because the kept result was stale."""
        step, session = self.walk.step, self.session
        result = None if step is None else self._shown_result(step)
        if result is None or result.fresh or result.plan != session.plan:
            return
        if self.walk.renew(result.called, session.records()):
            self._show_panel()

    def _shown_result(self, step: Step) -> PlanResult | None:
        return self.walk.results.get(step.beside if self._beside else step.plan)

    def _go_to_moment(self, step: Step) -> None:
        line, index = self.session.timeline, max(0, step.move - 1)
        if step.moment == "start" and self.session.start is not None:
            # what comes is not laid out before somebody runs it: its marks alone would tell
            line.show(self.session.start, [record.frames for record in self.session.records()[:index]])
            return
        last, frames = line.last_of(index), line.frames_of(index)
        if step.moment == "start" or last is None:
            before = line.last_of(index - 1) if index else 0
            line.go(before or 0)
            return
        line.go(last - len(frames) + 1 + moment_at(frames, step.moment))

    def play(self) -> bool:
        """Play the move of a step that stands before it, if it is known; return whether it is played."""
        step, session = self.walk.step, self.session
        index = 0 if step is None else max(0, step.move - 1)
        laid_out = session.timeline.last_of(index) is not None
        if step is None or step.moment != "start" or laid_out or session.asking.standing is not Standing.OFF:
            return False
        if index >= session.solved_count:
            return False
        self._asks.push_begins(index)
        session.show_again(before=index)
        self._play_from(session.timeline.position)
        return True

    def _note_push(self) -> None:
        """Note that something of the step's push has been seen."""
        step, session = self.walk.step, self.session
        if step is None or self._waiting or self._laying or session.timeline.move < max(0, step.move - 1):
            return  # while kept moments are laid out nobody sees them
        result = self._shown_result(step)
        if result is not None and result.plan == session.plan:
            self._asks.saw(result.called, session.timeline.move + 1)

    # --- the panel ---------------------------------------------------------------------------------------

    def _turn_notes(self) -> None:
        self._notes = not self._notes_shown
        self._show_panel()

    @property
    def _notes_shown(self) -> bool:
        """Whether notes stand in the window: on a wall not before the teacher asks for them."""
        return not self.session.view.options.projector if self._notes is None else self._notes

    def _show_if_open(self) -> None:
        if not self.walk.is_open:
            return
        shown = self._as_shown()
        if shown != self._shown_as:
            self.walk.units = self.session.view.options.units
            self._show_panel()

    def _as_shown(self) -> tuple[object, bool, bool]:
        return self.session.view.options.units, self._notes_shown, self._is_to_come

    @property
    def _is_to_come(self) -> bool:
        """Whether the step stands before a push that nobody has run yet."""
        step = self.walk.step
        if step is None or not step.plan or step.moment != "start":
            return False
        return self.session.timeline.last_of(max(0, step.move - 1)) is None

    def _show_panel(self) -> None:
        walk = self.walk
        if walk.lesson is None:
            return
        self._shown_as = self._as_shown()
        notes = notes_of(walk, to_come=self._is_to_come, unspoken=self.session.asking.unspoken)
        steps = tuple(
            StepWords(
                step.title,
                step.phase,
                walk.fill(step.words) if k == walk.position else "",
                notes if k == walk.position else "",
                bool(step.question),
                self._beside_title(step),
            )
            for k, step in enumerate(walk.steps)
        )
        self.panel.show_lesson(
            walk.lesson.title,
            f"{walk.lesson.level}, {walk.place_words}",
            steps,
            walk.position,
            notes=self._notes_shown,
            stale=walk.stale_words,
            local=self.windows.local_words(),
        )

    def _beside_title(self, step: Step) -> str:
        result = self.walk.results.get(step.plan if self._beside else step.beside)
        lone = result is None or not step.beside or step.map  # a map stands for both plans
        return "" if lone or result is None else result.plan.title
