"""The windows that belong to lessons: questions, sheets, words, local rules, the drill log."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING

from sim import kept
from sim.builds import car_words
from sim.problems import PlanError
from sim.results import MODEL_VERSION
from ui.filing import Filing
from ui.main_window import MainWindow
from ui.panels.pieces import dress
from ui.state import drill_log, glossary, overlay
from ui.state.lesson_walk import LessonWalk
from ui.state.practice import Mode, Practice, items_of
from ui.state.session import Session
from ui.state.tongue import bare

if TYPE_CHECKING:
    from ui.lesson_paper import LessonPaper
    from ui.panels.lesson_sheets import DrillSheet, RuleSheet, WordSheet
    from ui.panels.practice import PracticeSheet

NO_LESSON = "No lesson is open; the menu Teach opens one."
NO_QUESTIONS = "This lesson asks nothing that a run could answer; its check is at the end of its steps."


class LessonWindows:
    """Makes each window when it is first opened, and keeps what is written in it.

    Parameters
    ----------
    session, window, filing : what is asked about, over what they open, and where the user's files lie
    walk : the lesson in hand
    """

    def __init__(self, session: Session, window: MainWindow, filing: Filing, walk: LessonWalk) -> None:
        self.session, self.window, self._filing, self.walk = session, window, filing, walk
        self.practice: Practice | None = None
        self._seen = ""
        self._paper: LessonPaper | None = None
        self._words: WordSheet | None = None
        self._rules: RuleSheet | None = None
        self._drills: DrillSheet | None = None
        self._asked: PracticeSheet | None = None

    def local_words(self) -> str:
        """Return the service's own rules for the lesson's page, with author and date; empty for none."""
        ours = self._overlay()
        if ours is None or not (ours.stop_rules or ours.hazards):
            return ""
        return "\n\n".join((*ours.stop_rules, *ours.hazards, ours.signed))

    def open_sheets(self) -> None:
        """Ask which sheet goes on paper, of the lesson or of the plan that was run."""
        if self._paper is None:
            # Imported here: drawing and printing are not needed before the first sheet.
            from ui.lesson_paper import LessonPaper

            self._paper = LessonPaper(self.window, self.session, self.walk, self._filing.folder)
        self._paper.open()

    def open_practice(self) -> None:
        """Open the questions of the lesson."""
        if self.walk.lesson is None:
            self.window.notice.say(NO_LESSON)
            return
        if not self.walk.lesson.questions:
            self.window.notice.say(NO_QUESTIONS)
            return
        if self._asked is None:
            from ui.panels.practice import PracticeSheet

            sheet = self._asked = PracticeSheet(self.window)
            sheet.mode_wished.connect(lambda word: self._begin(Mode(word)))
            sheet.answered.connect(lambda outcome: self.practice and self.practice.answer(outcome))
            sheet.hint_wished.connect(lambda: self.practice and self.practice.ask_hint())
            sheet.on_wished.connect(lambda: self.practice and self.practice.on())
            sheet.finished.connect(lambda _: self.session.locks.veil(on=False))
        self._begin(Mode.COACHED)
        dress(self._asked, self.window.look)
        self._asked.show()

    def _begin(self, mode: Mode) -> None:
        assert self.walk.lesson is not None and self._asked is not None
        practice = Practice(items_of(self.walk.lesson, self.walk.results), mode)
        self.practice = practice
        practice.changed.connect(lambda: self._show_practice(practice))
        self._show_practice(practice)

    def _show_practice(self, practice: Practice) -> None:
        assert self._asked is not None
        testing = practice.mode is Mode.TEST and not practice.done
        self._asked.show_practice(practice)
        self._asked.hold(on=testing)
        self.session.locks.veil(on=testing)

    def open_words(self) -> None:
        """Open the words of the trade, the service's own among them."""
        if self._words is None:
            from ui.panels.lesson_sheets import WordSheet

            self._words = WordSheet(self.window)
            self._words.sought.connect(self._seek)
        self._seek(self._words.search.text())
        dress(self._words, self.window.look)
        self._words.show()

    def _seek(self, word: str) -> None:
        assert self._words is not None
        ours = self._overlay()
        terms = glossary.with_local(glossary.terms(), dict(ours.words) if ours is not None else {})
        self._words.show_terms(glossary.search(glossary.in_tongue(terms), word))

    def _overlay(self) -> overlay.Overlay | None:
        try:
            return overlay.load(self._filing.folder)
        except PlanError as problem:
            self.window.notice.say(f"The local rules were not read: {problem}.")
            return None

    def open_rules(self) -> None:
        """Open the service's own rules; an example where there are none yet."""
        if self._rules is None:
            from ui.panels.lesson_sheets import RuleSheet

            self._rules = RuleSheet(self.window)
            self._rules.kept.connect(self._keep_rules)
        self._show_rules("What is put in force replaces what was; the old file is kept beside it.")
        dress(self._rules, self.window.look)
        self._rules.show()

    def _show_rules(self, said: str) -> None:
        assert self._rules is not None
        path = self._filing.folder / overlay.FILE_NAME
        ours = self._overlay()
        self._seen = overlay.fingerprint(self._filing.folder)
        text = path.read_text(encoding="utf-8") if path.is_file() else overlay.example(_today())
        self._rules.show_rules(ours.signed if ours is not None else "No local rules are in force", text, said)

    def _keep_rules(self, text: str) -> None:
        assert self._rules is not None
        try:
            old = overlay.put(text, self._filing.folder, seen=self._seen)
        except PlanError as problem:
            self._rules.show_rules("Not put in force", "", f"{problem}.")
            return
        self._show_rules(f"In force. The rules before them lie in {old.name}." if old else "In force.")

    def open_drills(self) -> None:
        """Open the drill log."""
        if self._drills is None:
            from ui.panels.lesson_sheets import DrillSheet

            self._drills = DrillSheet(self.window)
            self._drills.written.connect(self._write_drill)
            self._drills.delete_wished.connect(self._delete_drills)
        self._drills.build.setText(car_words(self.session.plan.car))
        self._show_drills()
        dress(self._drills, self.window.look)
        self._drills.show()

    def _said(self) -> str:
        """Return what gave first in the run shown, "" where nothing was run."""
        records = self.session.records()
        moves = [move for move in kept.told(records) if move.seats] if records else []
        return moves[-1].first if moves else ""

    def _show_drills(self) -> None:
        assert self._drills is not None
        drills, said = drill_log.load(self._filing.folder), self._said()
        about = f"The model says of this plan: first to give, {said}." if said else "Run the plan first."
        self._drills.show_drills(drill_log.rate_words(drills), about, drills, can_write=bool(said))

    def _write_drill(self, did: str, build: str, note: str) -> None:
        plan, lesson = self.session.plan, self.walk.lesson
        drill = drill_log.Drill(
            _today(),
            bare(lesson.title) if lesson is not None else "",
            plan.title,
            kept.plan_sha256(plan),
            MODEL_VERSION,
            self._said(),
            did,
            build,
            note,
        )
        folder = self._filing.folder
        if not drill_log.save((*drill_log.load(folder), drill), folder):
            self.window.notice.say(f"The drill log could not be written in {folder}.")
        self._show_drills()

    def _delete_drills(self) -> None:
        if not drill_log.delete(self._filing.folder):
            self.window.notice.say("The drill log could not be deleted.")
        self._show_drills()


def _today() -> str:
    return datetime.datetime.now().astimezone().date().isoformat()
