"""What the actions do: every menu entry, key and button comes down to one of these."""

from __future__ import annotations

import dataclasses
import time
from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer

from sim.units import Units
from ui.beside_side import BesideSide
from ui.branch_side import BranchSide
from ui.filing import Filing
from ui.lesson_side import LessonSide
from ui.main_window import MainWindow
from ui.map_side import MapSide
from ui.panels.car_form import SIDE_PAGE
from ui.panels.finder import Finder, KeySheet
from ui.panels.two_ways import TwoWays
from ui.plan_side import PlanSide
from ui.player import Player
from ui.presenter import Presenter
from ui.prompt_side import PromptSide
from ui.state.chances import ChanceAnswer, Chances, Wish, progress_words
from ui.state.finder import entries
from ui.state.lesson_file import ready_titles
from ui.state.locks import ANSWERS, ASK_FIRST, MAP
from ui.state.ready_plans import ACTION as READY
from ui.state.session import Session
from ui.state.two_ways import NO_SPREAD, WORKING, can_weigh, lines, rows
from ui.state.view_options import COLOUR_WORDS
from ui.state.wording import in_units
from ui.teaching import Teaching
from ui.tool_side import ToolSide

if TYPE_CHECKING:
    from ui.card_side import CardSide
    from ui.see_side import SeeSide
    from ui.stage_side import StageSide

WHILE_READING = (
    "quit",
    "full",
    "projector",
    "dark",
    "larger",
    "smaller",
    "caution",
    "before_metal",
    "card",
    "find",
    "keys",
    "here",
    "log",
)
"""Actions that also work while a text covers the stage."""
CLICK_S = 0.4
"""A button held for less than this was clicked, not held [s]."""
HOLD_ON = "Hold the button or the space bar: the tips open as long as it is down. Return runs the whole move."
STAGE_ALONE = "The stage alone: F or Esc brings everything back."
"""What is said when menus and columns go."""
TELLING = ("questions", "sheets", "figures")
"""Actions whose windows tell what a run came to: not before the lock."""


class Acting:
    """Does what is asked for by name.

    Parameters
    ----------
    session, window, filing : what is acted on
    player : ticks while the moments are played
    """

    def __init__(self, session: Session, window: MainWindow, filing: Filing, player: QTimer) -> None:
        self.session, self.window, self.filing = session, window, filing
        self.chances, self._asked_many, self._asked_move = Chances(), Wish.LIKELY, 0
        self._two_ways: TwoWays | None = None
        self.player = Player(session, window, player)
        self.teaching = Teaching(session, window, filing, self.player.play_from)
        self.beside = BesideSide(session, window, filing)
        self.branches = BranchSide(session, window)
        self.maps = MapSide(session, window, filing.folder)
        self.maps.before_opening = self.beside.away
        self.plan_side = PlanSide(session, window)
        self.prompts = PromptSide(session, window)
        self.lessons = LessonSide(
            session, window, filing, lambda: self.side, self.teaching.ask, self.player.play_from, self.beside
        )
        self.lessons.show_map, self.lessons.remind = self.maps.for_step, self.teaching.remind
        self.teaching.before_asking = lambda: (self.beside.away(), self.maps.away())
        self.teaching.lesson_path = lambda: self.lessons.walk.path
        self.lessons.walk.changed.connect(self.teaching.page_turned)
        self.tools = ToolSide(window, filing.folder)
        self.presenter = Presenter(session, window, self.lessons, self.teaching)
        self.side: StageSide | None = None
        self.see: SeeSide | None = None
        self._keys: KeySheet | None = None
        self._finder: Finder | None = None
        self._card: CardSide | None = None
        self._held_at = 0.0
        self._before_form = 0
        """Which page of the left column the form of car and tool stands in place of: a lesson comes back."""
        self.more: dict[str, Callable[[], object]] = {}
        """Actions of parts that are made after this one."""

    def act(self, name: str) -> None:
        """Do what an action says; most keep out of the way while a text is being read."""
        if not self.window.at_work and name not in WHILE_READING:
            return
        self.window.notice.take_back(HOLD_ON)
        if name in TELLING and self.session.asking.open:
            self.teaching.remind()
            return
        if name in TELLING and self.session.asks_now():
            self.window.notice.say(ASK_FIRST)
            return
        getattr(self, f"_do_{name}", lambda: self._do_named(name))()

    def _do_named(self, name: str) -> None:
        session, side = self.session, self.side
        line = session.line
        plain: dict[str, Callable[[], object]] = {}
        for part in (
            self.teaching, self.lessons, self.branches, self.player, self.presenter, self.maps,
            self.plan_side,
        ):  # fmt: skip
            plain |= part.actions()
        plain |= {
            "beside": lambda: self.lessons.put_beside() or self.beside.turn(),
            "undo": session.document.undo, "redo": session.document.redo,
            "run": lambda: self.lessons.play() or self.teaching.run(),
            "go_on": session.go_on_from_here, "end": lambda: line.go(len(line)),
            "moment_back": lambda: line.go(line.position - 1),
            "moment_on": lambda: line.go(line.position + 1),
            "mark_back": lambda: line.go_to_mark(-1), "mark_on": lambda: line.go_to_mark(1),
            "event_back": lambda: self._page(-1), "event_on": lambda: self._page(1),
            "open": self.filing.ask_open, "save": self.filing.save, "save_as": self.filing.save_as,
            "language": self.filing.turn_language,
            "picture": self.filing.ask_picture, "mesh": self.filing.ask_mesh, "quit": self.window.close,
            "edge": lambda: self.filing.show_ready("edge"),
            "contrast": lambda: self.filing.show_ready("contrast"),
            "caution": lambda: self.window.show_page("caution"),
            "before_metal": lambda: self.window.show_page("before-metal"),
        }  # fmt: skip
        if self.see is not None:
            plain |= self.see.actions()
        plain |= self.more
        if name.startswith(READY):
            plain[name] = lambda: self.filing.show_ready_file(name.removeprefix(READY))
        if name in plain:
            plain[name]()
        elif side is not None:
            steer = {
                "deeper": lambda: side.deepen(1), "shallower": lambda: side.deepen(-1),
                "deeper_far": lambda: side.deepen(1, far=True),
                "shallower_far": lambda: side.deepen(-1, far=True),
                "tilt_more": lambda: side.tilt(1), "tilt_less": lambda: side.tilt(-1),
                "up": lambda: side.slide(1),
                "down": lambda: side.slide(-1), "up_far": lambda: side.slide(1, far=True),
                "down_far": lambda: side.slide(-1, far=True), "view": side.next_view,
                "edge_on": side.next_edge, "seat_on": side.next_seat,
                "up_two": lambda: side.slide_second(1), "down_two": lambda: side.slide_second(-1),
            }  # fmt: skip
            steer.get(name, lambda: None)()

    def _page(self, way: int) -> None:
        """Turn a page: of the lesson if one is open, of the plan while it is presented, else to an event."""
        if self.lessons.walk.is_open or self.presenter.on:
            self.presenter.go(way)
        else:
            self.session.line.go_to_mark(way)

    def _do_form(self) -> None:
        self._turn_form(self.window.form.pages.currentIndex())

    def _do_form_side(self) -> None:
        self._turn_form(SIDE_PAGE)

    def _turn_form(self, page: int) -> None:
        """Open the form of car and tool on a page, in its drawer where there is one; put it away again."""
        form, pages = self.window.form, self.window.left_pages
        out, opened = self.session.view.options.columns(self.window.width())[0], pages.currentWidget() is form
        if form.turn_to(page) and opened and out:
            pages.setCurrentIndex(self._before_form)
        else:
            self._before_form = self._before_form if opened else pages.currentIndex()
            pages.setCurrentWidget(form)
            if not out:
                self.set_view(drawer="plan", stage_only=False)
        self.window.focus_stage()

    def _do_stop(self) -> None:
        if self.session.can_stop:
            self.session.stop()
        elif self.chances.busy:
            self.chances.stop()
            self.window.notice.say("")
        elif self.maps.stop() or (self.see is not None and self.see.put_away()):
            pass
        elif self.session.view.options.stage_only:
            self.set_view(stage_only=False)
        else:
            self.session.selection.let_wheel_go()

    def _do_likely(self) -> None:
        self._ask_many(Wish.LIKELY)

    def _do_flips(self) -> None:
        self._ask_many(Wish.FLIP)

    def _do_weigh(self) -> None:
        index = self.session.timeline.move
        index = index if index >= 0 else self.session.selection.now.move
        moves = self.session.plan.moves
        if not can_weigh(moves[index] if index < len(moves) else None):
            self.window.notice.say(NO_SPREAD)
            return
        self._ask_many(Wish.CUT, index)

    def _ask_many(self, wish: Wish, move: int = 0) -> None:
        """Say what is known of the plan shown, or have it run many times."""
        plan, path = self.session.plan, self.session.document.path
        if self.session.hides(MAP) or (wish is Wish.CUT and self.session.hides(ANSWERS)):
            self.window.notice.say(self._why_shut())
            return
        known = self.chances.answer(wish, plan, move=move)
        if known is not None:
            self._tell_answer(known)
        elif self.chances.can_ask(plan):
            self._asked_many, self._asked_move = wish, move
            self.chances.ask(wish, plan, move=move, folder=None if path is None else path.parent)

    def _tell_answer(self, known: ChanceAnswer) -> None:
        units = self.session.view.options.units
        told = known.lines if known.ways is None else lines(known.ways, units)
        sentence = in_units(known.sentence, units)
        self.window.notice.say(sentence, "\n".join(told))
        if told and known.ways is not None:
            self._two_ways = self._two_ways or TwoWays(self.window)
            self._two_ways.show_ways(sentence, rows(known.ways, units))

    def _why_shut(self) -> str:
        if self.session.asking.unspoken:
            return "What may happen is kept shut until prediction and outcome have been compared."
        return ASK_FIRST if self.session.map_waits() else "What may happen is kept shut; key T opens it."

    def tell_many(self) -> None:
        """Say how far the many runs are, and what came out when they end."""
        chances, notice = self.chances, self.window.notice
        if chances.busy:
            if self._asked_many is Wish.CUT:
                notice.say(WORKING)
                return
            words = "starting" if chances.progress is None else progress_words(chances.progress)
            notice.say(f"Running the plan many times: {words}. Esc stops it.")
        elif chances.trouble is not None:
            notice.say(chances.trouble.sentence, chances.trouble.report)
        else:
            # asked before it was shut: kept, and told when it is asked again
            shut = self.session.hides(MAP) or (self._asked_many is Wish.CUT and self.session.hides(ANSWERS))
            plan, move = self.session.plan, self._asked_move
            known = None if shut else chances.answer(self._asked_many, plan, move=move)
            if known is None:
                notice.say("")
            else:
                self._tell_answer(known)

    def drop_other_runs(self) -> None:
        """End the many runs of a plan that is no longer the one shown."""
        request = self.chances.current
        if request is not None and request.plan != self.session.plan:
            self.chances.stop()

    def _do_start(self) -> None:
        self.player.halt()
        self.session.leave_wreck()
        self.session.selection.select_move(0)
        self.session.line.go(0)
        if self.side is not None:
            self.side.show_view("home")

    def hold(self) -> None:
        """Open the tips for as long as they are held."""
        if self.window.at_work:
            self._held_at = time.monotonic()
            self.player.halt()
            self.teaching.remind()
            self.session.hold()

    def let_go(self) -> None:
        """Stop opening the tips; after a mere click say that they are to be held."""
        short = time.monotonic() - self._held_at < CLICK_S
        if short and self.session.queue.holding and not self.session.asking.open:
            self.window.notice.say(HOLD_ON)
        else:
            self.window.notice.take_back(HOLD_ON)
        self.session.let_go()

    def pick_move(self, index: int) -> None:
        """Select a move and show its end."""
        self.session.leave_wreck()
        self.session.selection.select_move(index)
        place = self.session.timeline.last_of(index)
        self.session.timeline.go(len(self.session.timeline) if place is None else place)

    def go_inside_move(self, index: int) -> None:
        """Show a moment of the move that is shown."""
        line = self.session.timeline
        last = line.last_of(line.move)
        if last is not None:
            line.go(last - len(line.frames_of(line.move)) + 1 + index)

    def set_view(self, **changes: object) -> None:
        """Change some of the view's options."""
        self.session.view.set(dataclasses.replace(self.session.view.options, **changes))  # type: ignore[arg-type]

    def show_colours(self, mode: str) -> None:
        """Colour the metal by a mode chosen from the list."""
        self.set_view(colour_mode=mode)
        self.window.focus_stage()

    def run_to(self, opening_m: float) -> None:
        """Run the selected move to an opening."""
        self.session.run_selected_to(opening_m)
        self.window.focus_stage()

    def next_layer(self, layer: str) -> None:
        """Show a layer in its following mode."""
        self.session.view.set(self.session.view.options.with_next(layer))

    def _do_stage_only(self) -> None:
        on = not self.session.view.options.stage_only
        self.set_view(stage_only=on)
        if on:
            self.window.notice.hint(STAGE_ALONE)
        else:
            self.window.notice.take_back(STAGE_ALONE)

    def _do_projector(self) -> None:
        self.set_view(projector=not self.session.view.options.projector)

    def _do_larger(self) -> None:
        self.session.view.set(self.session.view.options.with_text(1))

    def _do_smaller(self) -> None:
        self.session.view.set(self.session.view.options.with_text(-1))

    def _do_calm(self) -> None:
        self.set_view(calm=not self.session.view.options.calm)

    def _do_right_turns(self) -> None:
        self.set_view(right_turns=not self.session.view.options.right_turns)

    def _do_dark(self) -> None:
        self.set_view(theme="light" if self.session.view.options.theme == "dark" else "dark")

    def _do_imperial(self) -> None:
        metric = self.session.view.options.units is Units.METRIC
        self.set_view(units=Units.IMPERIAL if metric else Units.METRIC)

    def _do_colour(self) -> None:
        modes = tuple(COLOUR_WORDS)
        self.set_view(
            colour_mode=modes[(modes.index(self.session.view.options.colour_mode) + 1) % len(modes)]
        )

    def _do_drawer_plan(self) -> None:
        self._drawer("plan")

    def _do_drawer_reading(self) -> None:
        self._drawer("reading")

    def _drawer(self, name: str) -> None:
        self.set_view(drawer=None if self.session.view.options.drawer == name else name)

    def _do_full(self) -> None:
        self.window.setWindowState(self.window.windowState() ^ Qt.WindowState.WindowFullScreen)

    def _do_card(self) -> None:
        if self._card is None:
            # Imported here: the checks behind the card are not needed before it is opened.
            from ui.card_side import CardSide

            self._card = CardSide(self.window, self.filing.folder)
        self._card.open()

    def _do_find(self) -> None:
        if self._finder is None:
            actions = self.window.actions_by_name
            lessons = [(f"lesson_{name}", title) for name, title in ready_titles()]
            self._finder = Finder(self.window, entries(lessons), lambda name: actions[name].isEnabled())
            self._finder.chosen.connect(self.act)
        self._finder.ask()

    def _do_keys(self) -> None:
        self._keys = self._keys or KeySheet(self.window)
        self._keys.show()
