"""Two plans side by side in the window: the second view, its camera and its clock, and what stands beside."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QTimer

from sim.plan import Plan
from ui.filing import Filing
from ui.main_window import MainWindow
from ui.panels.pair import PairPage
from ui.second_picture import SecondPicture
from ui.state.beside import put_on, refusal, row_of, shared_moves, start_sha256
from ui.state.locks import ANSWERS, ASK_FIRST
from ui.state.pair_words import PairWords, caption, pair_words
from ui.state.session import Session

if TYPE_CHECKING:
    from ui.showing import Showing
    from ui.stage_side import StageSide

ROOMY_RATIO = 0.82
"""Width over height of a view in which the whole door is seen; in a narrower one the camera stands back."""
NEAREST, FURTHEST = 1.0, 0.45
SETTLED_MS = 80
"""After so long the columns have made room and the views have their sizes."""
FROM_FILE = "A plan from a file\u2026"
NOT_NOW = "First compare prediction and outcome, or put the card away."
NO_MOVES = "There is nothing to compare yet: add a move first."
TWIN = "Twin of this car, one thing changed"
NO_OTHER = "There is no other plan to put beside this one: open or change one first."


class BesideSide:
    """Puts a second plan beside the one shown, and draws it by the same clock from the same camera.

    Parameters
    ----------
    session, window, filing : the first plan, where both show, and where other plans come from
    """

    def __init__(self, session: Session, window: MainWindow, filing: Filing) -> None:
        self.session, self.window, self._filing = session, window, filing
        self.page = PairPage()
        self._side: StageSide | None = None
        self._showing: Showing | None = None
        self._view: Any = None
        self._picture = SecondPicture(session)
        self._offers: list[tuple[str, Plan]] = []
        self._twin: Plan | None = None
        self._remade: Callable[[Plan], Plan | None] = lambda _plan: None
        self._asked: tuple[Plan, int] | None = None
        self.gone: Callable[[], object] = lambda: None
        """Called when one plan is shown again."""
        self._chosen = 0
        self._refused = ""
        self._seen: tuple[object, ...] = ()
        self._nearness = NEAREST
        self._stands_back = False
        window.right_pages.addWidget(self.page)
        self.page.chosen.connect(self.choose)
        self.page.run_wished.connect(self.run)
        self.page.put_on_wished.connect(self.put_on_this_car)
        self.page.away_wished.connect(self.away)
        session.changed.connect(self._more_known)
        session.document.changed.connect(self._plan_changed)
        session.timeline.moved.connect(self._timeline_moved)
        session.beside.moved.connect(self._clock_moved)

    def stage_ready(self, side: StageSide, showing: Showing) -> None:
        """Take the stage whose camera is shared, once it is there."""
        self._side, self._showing = side, showing
        showing.show_second = self.show

    @property
    def page_on(self) -> bool:
        """Whether the pair is what the right column shows."""
        return self.window.right_pages.currentWidget() is self.page

    # --- which plan --------------------------------------------------------------------------------------

    def turn(self) -> None:
        """Put two plans side by side, or go back to one."""
        if self.page_on:
            self.away()
            return
        if self.session.asking.unspoken:
            self.window.notice.say(NOT_NOW)
            return
        if self._side is None or self.session.model is None:
            return
        if self.session.unasked(self.session.plan) is not None:
            self.window.notice.say(ASK_FIRST)
            return
        self._offers = self._others()
        if not self._offers:
            self.window.notice.say(NO_OTHER)
            return
        self.session.asking.end()
        self.window.right_pages.setCurrentWidget(self.page)
        self.choose(0)

    def put_beside(self, plan: Plan) -> bool:
        """Put a given plan on the right; return whether it could be."""
        session = self.session
        if session.asking.unspoken or self._side is None or session.model is None:
            return False
        self._offers = [(plan.title, plan), *self._others()]
        self.session.asking.end()
        self.window.right_pages.setCurrentWidget(self.page)
        self.choose(0)
        return True

    def why_not(self) -> str:
        """Return why nothing may be put beside the plan shown now, in a sentence; "" where it may."""
        session = self.session
        if session.asking.unspoken:
            return NOT_NOW
        if session.unasked(session.plan) is not None:
            return ASK_FIRST
        return "" if session.plan.moves else NO_MOVES

    def put_twin(self, twin: Plan, remade: Callable[[Plan], Plan | None]) -> None:
        """Put a twin of the plan shown on the right, each from its own start, and work both out.

        Parameters
        ----------
        remade : makes it anew when the plan shown is another; None where that has no such twin
        """
        if self.why_not() or self._side is None or self.session.model is None:
            return
        self._twin, self._remade = twin, remade
        self._offers, self._chosen = [(TWIN, twin), *self._others()], 0
        self.session.asking.end()
        self.window.right_pages.setCurrentWidget(self.page)
        self._put(twin)
        self.run()

    def away(self) -> None:
        """Show one plan again."""
        if not self.page_on:
            return
        self._twin = None
        self.gone()
        self.session.beside.show(None)
        if (
            self.session.works_aside
        ):  # nobody looks at it any more, and the tips could not be opened meanwhile
            self.session.stop()
        self._refused = ""
        self.window.right_pages.setCurrentWidget(self.window.reading)
        self._pair(False)
        self._draw_later()
        self.window.focus_stage()

    def _others(self) -> list[tuple[str, Plan]]:
        """Return the plans on offer: the ready ones, then the steps of the work, newest first."""
        assert self._showing is not None
        plan = self.session.plan
        found: list[tuple[str, Plan]] = []
        for made in self._showing.ready.values():
            moved = put_on(made, plan)
            if moved.moves != plan.moves and self.session.unasked(moved) is None:
                found.append((made.title, moved))
        steps = self.session.document.steps
        for number in range(len(steps) - 1, -1, -1):
            other = steps[number].plan
            known = any(other.car == o.car and other.moves == o.moves for _, o in found)
            may_be_seen = other.moves and not known and self.session.unasked(other) is None
            if may_be_seen and (other.car, other.moves) != (plan.car, plan.moves):
                found.append((f"Step {number + 1}: {steps[number].label}", other))
        return found

    def choose(self, index: int) -> None:
        """Put one of the plans on offer on the right; the last entry asks for a file."""
        if index >= len(self._offers):
            read = self._filing.ask_plan()
            if read is not None:
                self._offers.insert(0, (read.title or "A plan from a file", read))
                index = 0
            else:
                index = self._chosen
        self._chosen = index
        self._put(self._offers[index][1])
        self.window.focus_stage()

    def put_on_this_car(self) -> None:
        """Put the moves of the plan that was refused on the car shown."""
        name, plan = self._offers[self._chosen]
        self._offers[self._chosen] = (name, put_on(plan, self.session.plan))
        self._put(self._offers[self._chosen][1])

    def _put(self, plan: Plan) -> None:
        session = self.session
        first, second = self._start(session.plan, plan), self._start(plan, session.plan)
        unasked = (session.unasked(session.plan), session.unasked(plan)) != (None, None)
        self._asked = None
        twin = plan is self._twin  # it has a start of its own on purpose
        why = refusal(session.plan, plan, first, first if twin else second)
        self._refused = ASK_FIRST if unasked else why
        session.beside.show(None if self._refused else plan, first, second if twin else "")
        self.window.notice.say("")
        self._more_known()
        if session.records() and not self._refused:
            session.run_aside(plan)
        self._draw_later()

    def _start(self, plan: Plan, other: Plan) -> str:
        """Return the hash of the metal from which a plan goes its own way; of another car, its own."""
        session = self.session
        assert session.model is not None
        alike = (plan.car, plan.past(0)) == (other.car, other.past(0))
        shared = shared_moves(plan, other) if alike else 0
        records = session.records(plan)
        known = records[shared - 1].end_state if 0 < shared <= len(records) else None
        model = session.model_of(plan)
        state = known if shared or plan.wreck or plan.start or model is None else model.start
        return start_sha256(plan.car, state, plan.past(shared))

    # --- working out -------------------------------------------------------------------------------------

    def run(self) -> None:
        """Work out what is not known of either plan, the one shown first."""
        session = self.session
        if len(session.records()) < len(session.plan.moves):
            session.run()
        elif session.beside.plan is not None:
            session.run_aside(session.beside.plan)

    def _plan_changed(self) -> None:
        if not self.page_on:
            return
        name, plan = self._offers[self._chosen]
        if plan is self._twin:
            plan = self._twin = self._remade(self.session.plan) or plan
            self._offers[self._chosen] = (name, plan)
        self._put(plan)

    def _more_known(self) -> None:
        """Lay the moments of both out as far as they are known; go on with the other plan."""
        session, beside = self.session, self.session.beside
        if beside.plan is None or session.start is None:
            return
        both = session.records(), session.records(beside.plan)
        key = tuple(id(record) for records in both for record in records)
        other = session.start_of(beside.plan)  # a twin's own, once its car has been set out
        if other is not None and (key != self._seen or beside.rows is None):
            self._seen = key
            beside.lay_out(row_of(session.start, both[0]), row_of(other, both[1]))
            self._draw_later()
        asked = beside.plan, len(both[1])
        whole = len(both[0]) == len(session.plan.moves)
        if both[0] and whole and session.can_run and asked != self._asked:
            self._asked = asked  # once: what was refused is not asked for again and again
            session.run_aside(beside.plan)

    def _clock_moved(self) -> None:
        self.session.timeline.go(self.session.beside.place(0))
        self._draw_later()

    def _timeline_moved(self) -> None:
        """Keep the clock with the first plan's moment, however that came to be shown."""
        line, beside = self.session.timeline, self.session.beside
        if beside.rows is None or beside.place(0) == line.position or len(line) != len(beside.rows[0].frames):
            return
        beside.go_to_tick(beside.rows[0].ticks[line.position])

    # --- drawing -----------------------------------------------------------------------------------------

    def _draw_later(self) -> None:
        if self._showing is not None:
            self._showing.later("layout", "moment")

    def _second_view(self) -> Any:
        """Return the second view, made when it is first wanted; it looks through the first one's camera."""
        if self._view is None:
            assert self._side is not None
            first = self._side.view
            self._view = type(first)(self.window)
            self.window.stages.add(self._view)
            camera = first.renderer.GetActiveCamera()
            self._view.renderer.SetActiveCamera(camera)
            self._view.renderer.camera_set = True
            watch = camera.AddObserver("ModifiedEvent", self._camera_moved)
            # VTK holds who watches, unseen by Python's collector: both would keep each other for good
            self.window.closing.connect(lambda: camera.RemoveObserver(watch))
            self._side.more_stages.append(self._view.stage)
        return self._view

    def _pair(self, on: bool) -> None:
        """Show two views or one; two are half as wide, so the camera stands further off."""
        stages = self.window.stages
        if on == stages.paired or self._side is None:
            return
        stages.show_pair(on)
        self._draw_later()
        QTimer.singleShot(SETTLED_MS, self._stand_back)

    def _stand_back(self) -> None:
        """Let the camera stand back as far as a narrow view needs, and come as near again afterwards."""
        if self._side is None:
            return
        view, paired = self._side.view, self.window.stages.paired
        ratio = view.width() / max(1, view.height()) / ROOMY_RATIO
        wanted = min(NEAREST, max(FURTHEST, ratio)) if paired else NEAREST
        self._stands_back = self._stands_back and paired
        if self._stands_back:
            self._nearness = wanted
        if wanted != self._nearness:
            view.renderer.GetActiveCamera().Dolly(wanted / self._nearness)
            self._nearness = wanted
            view.request_frame()

    def keep_camera(self) -> None:
        """Leave the camera where it is while the pair that comes is shown: it was put where it stood."""
        self._stands_back = True

    def _camera_moved(self, *_event: object) -> None:
        """Draw both views again: they look through one camera."""
        if self._side is None or not self.page_on:
            return
        first = self._side.view
        first.request_frame()
        self._view.request_frame()
        if first.stage.apart != self._view.stage.apart:
            self._draw_later()

    def show(self) -> None:
        """Draw the second plan's moment and say what stands beside both."""
        if not self.page_on:
            return
        session, beside = self.session, self.session.beside
        units = session.view.options.units
        self.page.show_choices([*(name for name, _ in self._offers), FROM_FILE], self._chosen)
        if beside.plan is None or session.model is None:
            self._pair(False)
            alike = self._offers[self._chosen][1].car == session.plan.car
            self.page.show_words(
                PairWords(refused=self._refused, can_put_on=bool(self._refused) and not alike)
            )
            return
        drawn = session.model_of(beside.plan) is not None  # a twin's car may not be set out yet
        if drawn:
            view = self._second_view()
            self._pair(True)
            assert self._side is not None
            self._picture.draw(self._side, view.stage)
            self._stand_back()
        else:
            self._pair(False)
        records = session.records(), session.records(beside.plan)
        shared = shared_moves(session.plan, beside.plan)
        shut = session.hides(ANSWERS)
        words = pair_words(session.plan, beside, records, shared, units, shut)
        self.page.show_words(words)
        if not drawn:
            return
        self.window.stages.show_captions(
            *(
                caption(
                    words.names[side], beside.frame(side), units,
                    held=bool(records[side]) and beside.ended(side) and not beside.at_end, shut=shut,
                    rests=beside.tool_rests(side),
                )
                for side in (0, 1)
            )
        )  # fmt: skip
