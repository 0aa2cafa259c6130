"""Teaching with the window: a prediction from question to comparison, and what the teacher keeps shut."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from sim.move_words import title_of
from ui.filing import Filing
from ui.main_window import MainWindow
from ui.panels.ask_card import AskCard
from ui.state import asking_file
from ui.state.actions import SHUT_PREFIX
from ui.state.asking import Prediction, Standing
from ui.state.cards import place_of
from ui.state.lesson_file import ready_path
from ui.state.locks import LOCK_WORDS
from ui.state.questions import can_ask, competitors, is_wedged, questions
from ui.state.session import Session
from ui.state.verdict import compared, verdict

LOCK_FIRST = "Lock the prediction first (L), or put the card away."
NONE_OPEN = "There is no prediction to lock or to compare: key A asks for one before a push."
RUN_FIRST = "Run the push to its end first (Return)."


class Teaching:
    """Asks, locks and compares; turns the teacher's locks.

    Parameters
    ----------
    session, window, filing : what is asked about, where it shows, and where predictions are kept
    play_from : plays the moments on from a position
    """

    def __init__(
        self, session: Session, window: MainWindow, filing: Filing, play_from: Callable[[int], object]
    ) -> None:
        self.session, self.window, self._filing, self._play_from = session, window, filing, play_from
        self.card = AskCard()
        self.changed: Callable[[], object] = lambda: None
        """Called when what may be seen has changed."""
        self.before_asking: Callable[[], object] = lambda: None
        """Called before a card is opened: takes a second plan and its moments away."""
        self.lesson_path: Callable[[], Path | None] = lambda: None
        """Returns where the lesson lies that is open, so that predictions are kept beside it."""
        window.right_pages.addWidget(self.card)
        self._connect()

    def _connect(self) -> None:
        session, asking, card = self.session, self.session.asking, self.card
        asking.changed.connect(self._show)
        asking.kept.connect(self._keep)
        session.locks.changed.connect(self._show_locks)
        session.document.changed.connect(self._plan_changed)
        session.timeline.changed.connect(self._note_run)
        session.timeline.moved.connect(self._note_run)
        session.changed.connect(self._show_if_on)
        card.chosen.connect(asking.choose)
        card.counted.connect(asking.count)
        card.written.connect(asking.write)
        card.lock_wished.connect(self.lock)
        card.run_wished.connect(self.run)
        card.show_wished.connect(self.compare)
        card.again_wished.connect(self.ask)
        card.away_wished.connect(self.put_away)

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of teaching do, by name."""
        turns = {SHUT_PREFIX + name: lambda name=name: self.session.locks.turn(name) for name in LOCK_WORDS}
        return turns | {
            "ask": self.ask,
            "lock": self.lock,
            "compare": self.compare,
            "shut": self.session.locks.turn_all,
        }

    # --- a prediction ------------------------------------------------------------------------------------

    def ask(self) -> None:
        """Open the card on the selected move, or go back to it."""
        session, asking = self.session, self.session.asking
        if asking.standing in (Standing.OPEN, Standing.LOCKED):
            self.card.take_focus()
            return
        if session.model is None or not can_ask(session.move):
            self.window.notice.say("There is nothing to foretell of this move; select a push.")
            return
        session.stop()
        self.before_asking()
        self.window.notice.say("")
        self._ask_now()
        session.show_again()
        self.card.take_focus()

    def _ask_now(self) -> None:
        session = self.session
        move, index = session.move, session.selection.now.move
        assert move is not None
        record = session.record(index - 1) if index else None
        metal = session.start if record is None else record.frames[-1]
        assert metal is not None
        wedged = is_wedged(session.model, metal)
        kinds = competitors(metal.ladder, move, wedged=wedged)
        session.asking.ask(session.plan, index, questions(kinds, move, session.view.options.units))

    def lock(self) -> None:
        """Lock the prediction; say what is still open where something is."""
        session, asking = self.session, self.session.asking
        if not asking.open:
            self.window.notice.say(NONE_OPEN)
            return
        if not asking.lock(_now()):
            self.window.notice.say(asking.missing)
            self.card.take_focus()
            return
        self.window.notice.say("")
        session.selection.select_move(asking.now.move)
        session.show_again(before=asking.now.move)
        self.window.focus_stage()

    def _before(self) -> int:
        """Return the position of the last moment before the foretold move."""
        last = self.session.timeline.last_of(self.session.asking.now.move - 1)
        return 0 if last is None else last

    def run(self) -> None:
        """Run the plan; a foretold move that was worked out before is played, not jumped to its end."""
        session, asking = self.session, self.session.asking
        self.remind()
        known = asking.standing is Standing.LOCKED and session.record(asking.now.move) is not None
        if known and session.asking.about(session.plan):
            self._play_from(self._before())
        elif session.stands_let_go:
            session.run_selected_to(session.wanted_opening_m)
        else:
            session.run()
        self.window.focus_stage()

    def remind(self) -> None:
        """Say that nothing is run before the lock."""
        if self.session.asking.open:
            self.window.notice.say(LOCK_FIRST)

    def compare(self) -> None:
        """Put prediction and outcome side by side."""
        session, asking = self.session, self.session.asking
        if asking.standing is not Standing.LOCKED:
            self.window.notice.say(LOCK_FIRST if asking.open else NONE_OPEN)
            return
        index = asking.now.move
        record = session.record(index)
        if record is None or record.result is None or asking.now.ran_at is None:
            self.window.notice.say(RUN_FIRST)
            return
        before = [session.record(k) for k in range(index)]
        asking.show(verdict(record, [item for item in before if item is not None]), _now())
        last = session.timeline.last_of(index)
        if last is not None:
            session.timeline.go(last)

    def put_away(self) -> None:
        """Put the card away and show the reading again."""
        hidden = self.session.asking.open
        self.session.asking.end()
        if hidden:
            self.session.show_again()
        self.window.notice.say("")
        self.window.focus_stage()

    def page_turned(self) -> None:
        """Put a comparison away once the class goes on; a prediction still open or locked stays."""
        if self.session.asking.standing is Standing.SHOWN:
            self.session.asking.end()
        self.window.notice.take_back(RUN_FIRST, NONE_OPEN)

    # --- what happens meanwhile --------------------------------------------------------------------------

    def _note_run(self) -> None:
        session, asking = self.session, self.session.asking
        line = session.timeline
        if (
            asking.standing is Standing.LOCKED
            and line.move >= asking.now.move
            and line.position > self._before()
        ):
            asking.run(_now())

    def _plan_changed(self) -> None:
        session, asking = self.session, self.session.asking
        if asking.standing is Standing.OFF:
            return
        if asking.open:
            if can_ask(session.move):
                self._ask_now()
                return
        elif asking.about(session.plan):
            return
        asking.end()
        session.show_again()

    def _keep(self, prediction: Prediction) -> None:
        place = self.lesson_path() or self.session.document.path
        path = asking_file.path_beside(place, self._filing.folder, own=ready_path("").parents[1])
        try:
            asking_file.keep(path, prediction, self.session.asking.questions)
        except OSError as problem:
            self._keep_elsewhere(path, prediction, problem)

    def _keep_elsewhere(self, path: Path, prediction: Prediction, problem: OSError) -> None:
        """Write a prediction into the settings' folder where the plan's own cannot be written."""
        other = self._filing.folder / path.name
        try:
            asking_file.keep(other, prediction, self.session.asking.questions)
        except OSError:
            why = f"({problem.strerror or problem}); it holds for this sitting."
            self.window.notice.say(f"The prediction could not be written to {path.name} {why}")
        else:
            self.window.notice.say(f"{path.parent} cannot be written; the prediction is kept in {other}.")

    # --- showing -----------------------------------------------------------------------------------------

    def _show_if_on(self) -> None:
        if self.session.asking.standing is not Standing.OFF:
            self._show_card()

    def _show(self) -> None:
        self._show_card()
        self.changed()

    def _show_card(self) -> None:
        asking, pages = self.session.asking, self.window.right_pages
        on = asking.standing is not Standing.OFF
        pages.setCurrentWidget(self.card if on else self.window.reading)
        if not on:
            return
        move = asking.now.plan.moves[asking.now.move]
        units = self.session.view.options.units
        about = f"Move {asking.now.move + 1}: {title_of(move)}. {place_of(move, units)}."
        record = self.session.record(asking.now.move)
        if asking.standing is Standing.SHOWN and record is not None:
            self.card.show_comparison(compared(asking.now, asking.questions, record, units), about)
        elif asking.standing is not Standing.SHOWN:
            self.card.show_asking(asking, about)

    def _show_locks(self) -> None:
        shut = self.session.locks.shut
        for name in LOCK_WORDS:
            self.window.actions_by_name[SHUT_PREFIX + name].setChecked(name in shut)
        self.changed()


def _now() -> datetime:
    now = datetime.now().astimezone()
    return now.replace(microsecond=now.microsecond // 1000 * 1000)
