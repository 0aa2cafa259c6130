"""The application: makes every object and is the only place that connects them."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication

from ui.acting import WHILE_READING, Acting
from ui.application import prepare_application as prepare_application
from ui.chance_jobs import ChanceWorker
from ui.curve_side import CurveSide
from ui.figures_side import figures_action
from ui.filing import Filing
from ui.help_side import HelpSide
from ui.jobs import Worker
from ui.keeping import Keeping
from ui.listening import listen
from ui.machine import settings_folder
from ui.main_window import MainWindow
from ui.panels.early_keys import EarlyKeys
from ui.panels.hold import HoldKey
from ui.panels.room import fills
from ui.showing import Showing
from ui.stage_choice import draw_from_the_start, stage_view
from ui.state.session import Session
from ui.state.settings import load
from ui.state.tongue import speak
from ui.state.view_options import LAYER_WORDS
from ui.twin_side import TwinSide

LAYER_NAMES = tuple(LAYER_WORDS)
SEEN_MS = 100
"""A window takes so long to be given the keys and to show it; loading the stage stops all drawing."""


class App:
    """The running program: session, window, worker, and every connection between them.

    Parameters
    ----------
    path : plan file to open; None for the ready edge attack
    folder : where settings are remembered; None for the user's own
    """

    def __init__(self, path: Path | None = None, folder: Path | None = None) -> None:
        folder = folder or settings_folder()
        speak(load(folder).language)  # before the first word is shown
        self.session, self.window, self.worker = Session(), MainWindow(), Worker(folder)
        self.hold_key = HoldKey(self.window)
        self.early_keys = EarlyKeys(self.window, self._waits, lambda: not self.window.at_work, WHILE_READING)
        self.side = self.see = None
        self._stage_stands = False
        self.first_frame_s = 0.0
        self._began = time.perf_counter()
        self._path = path
        self._refresh, self._player = QTimer(self.window), QTimer(self.window)
        self._refresh.setSingleShot(True)
        self._refresh.setInterval(0)
        self.showing = Showing(self.session, self.window, self._refresh.start)
        self.filing = Filing(self.session, self.window, self.showing, folder)
        self.acting = Acting(self.session, self.window, self.filing, self._player)
        self.keeping = Keeping(self.session, self.window, self.acting, self.showing, folder)
        self.twins = TwinSide(self.session, self.window, self.acting.beside)
        self.keeping.view.twins = self.twins
        self.acting.more |= {"bring_back": self.keeping.bring_back, "twin": self.twins.turn}
        self.help = HelpSide(self.session, self.window, folder)
        self.acting.more |= self.help.actions()
        self.acting.more |= {"figures": figures_action(self.window, self.session)}
        self.curves = CurveSide(self.session, self.window, self.acting.go_inside_move)
        self.acting.more |= self.curves.actions()
        self.chance_worker = ChanceWorker()
        self.filing.take_settings()
        self._connect_state()
        self._connect_chances()
        self._connect_window()
        self._connect_panels()
        self.showing.later("look", "options", "layout", "plan", "moment")
        self.showing.show_dirty()

    # --- connections -------------------------------------------------------------------------------------

    def _connect_state(self) -> None:
        session, worker, later = self.session, self.worker, self.showing.later
        session.asked.connect(worker.submit)
        session.released.connect(worker.let_go)
        session.dropped.connect(worker.drop)
        session.aims.wished.connect(worker.try_touch)
        session.aims.changed.connect(lambda: later("aim"))
        session.said.connect(self.window.notice.say)
        session.document.changed.connect(lambda: later("plan", "moment"))
        session.document.filed.connect(lambda: later("plan"))
        session.changed.connect(lambda: later("plan", "moment"))
        session.changed.connect(self.early_keys.look)
        session.queue.changed.connect(lambda: later("plan", "able"))
        session.timeline.changed.connect(lambda: later("moment"))
        session.timeline.moved.connect(lambda: later("moment"))
        session.selection.changed.connect(lambda: later("plan", "moment"))
        session.view.changed.connect(lambda: later("look", "options", "layout", "plan", "moment"))
        session.view.changed.connect(self.filing.remember_view)
        session.locks.changed.connect(self.filing.remember_view)
        worker.ready.connect(self._take_answers, Qt.ConnectionType.QueuedConnection)

    def _connect_chances(self) -> None:
        chances, worker = self.acting.chances, self.chance_worker
        chances.asked.connect(worker.submit)
        chances.dropped.connect(worker.drop)
        chances.changed.connect(self.acting.tell_many)
        # an answer belongs to its plan: runs of a plan that was changed meanwhile end
        self.session.document.changed.connect(self.acting.drop_other_runs)
        worker.ready.connect(self._take_chances, Qt.ConnectionType.QueuedConnection)

    def _connect_window(self) -> None:
        window, acting, filing = self.window, self.acting, self.filing
        window.acted.connect(acting.act)
        window.layer_key.connect(lambda number: acting.next_layer(LAYER_NAMES[number - 1]))
        window.layers.layer_wished.connect(acting.next_layer)
        window.layers.colour_wished.connect(acting.show_colours)
        window.layers.tools.beside_wished.connect(lambda: acting.act("beside"))
        window.recent_wished.connect(filing.open_recent)
        window.step_wished.connect(self.session.go_to_step)
        window.dropped.connect(lambda name: filing.open(Path(name)))
        window.resized.connect(lambda: self.showing.later("look", "layout"))
        window.closing.connect(self._close)
        window.caution.read.connect(filing.caution_read)
        window.notice.copy_wished.connect(lambda text: QGuiApplication.clipboard().setText(text))
        self.hold_key.pressed.connect(acting.hold)
        self.hold_key.released.connect(acting.let_go)
        self._refresh.timeout.connect(self.showing.show_dirty)
        self._refresh.timeout.connect(self.early_keys.look)
        self._player.timeout.connect(acting.player.play_on)

    def _connect_panels(self) -> None:
        window, session, acting = self.window, self.session, self.acting
        window.plan.ready_wished.connect(self.filing.show_ready)
        window.plan.picked.connect(acting.pick_move)
        window.form.car_wished.connect(session.change_car)
        window.form.tool_wished.connect(session.change_tool)
        window.form.trouble.connect(window.notice.say)
        window.section.depth_turned.connect(lambda way: acting.act("deeper" if way > 0 else "shallower"))
        window.section.tilt_turned.connect(lambda way: acting.act("tilt_more" if way > 0 else "tilt_less"))
        window.reading.moment_wished.connect(acting.go_inside_move)
        scrub = window.scrub
        scrub.pressed.connect(acting.hold)
        scrub.released.connect(acting.let_go)
        scrub.released.connect(window.focus_stage)  # the button is shut until the metal rests: Return runs on
        scrub.run_wished.connect(acting.run_to)
        acting.lessons.look_ahead = self.worker.look_ahead
        acting.presenter.changed = lambda: self.showing.later("moment")
        self.showing.more += [
            acting.plan_side.show_wreck,
            acting.plan_side.show,
            acting.prompts.show,
            self.curves.show,
        ]
        self.showing.page_words = lambda: acting.maps.class_words
        self.showing.class_words = lambda: acting.presenter.class_words
        acting.teaching.changed = lambda: self.showing.later("options", "layout", "plan", "moment")
        scrub.position_wished.connect(lambda position: session.line.go(position))
        named = ((window.plan.form_wished, "form"), (window.form.done, "form"), (scrub.start_wished, "start"),
                 (scrub.stop_wished, "stop"), (scrub.play_wished, "play"),
                 (scrub.go_on_wished, "go_on"), (window.reading.ask_wished, "ask"))  # fmt: skip
        for signal, name in named:
            signal.connect(lambda *_, name=name: acting.act(name))

    # --- running -----------------------------------------------------------------------------------------

    def start(self) -> None:
        """Show the shell at once; what takes its time is loaded in the first idle moment."""
        draw_from_the_start(self.window)
        self.window.show()
        QTimer.singleShot(0, self._load_plan)

    def _load_plan(self) -> None:
        self.session.prepare()
        QTimer.singleShot(SEEN_MS, self.window, self._load_stage)

    def _load_stage(self) -> None:
        # Imported here: the drawing library alone takes longer than the shell may.
        from ui.see_side import SeeSide
        from ui.stage_side import StageSide

        self.filing.open_first(self._path)
        view = stage_view(self.window)
        if view is None:
            self.keeping.begin(None, self._path)
            self._stands()
            return
        self.side = StageSide(view, self.window, self.session)
        for part in (self.showing, self.acting, self.filing):
            part.side = self.side
        self.side.aimed = lambda: self.showing.later("aim")
        self.see = self.acting.see = SeeSide(view, self.window, self.session, self.side)
        view.hovered.connect(self.see.hover)
        view.clicked.connect(self.see.click)
        view.frameSwapped.connect(self._drawn)
        self.window.set_stage(view)
        self.acting.beside.stage_ready(self.side, self.showing)
        self.acting.maps.stage_ready(self.side)
        self.keeping.begin(self.side, self._path)
        self.help.watch(view)
        self._stands()

    def _stands(self) -> None:
        self._stage_stands = True
        self.showing.later("options", "layout", "plan", "moment")
        self.early_keys.look()

    def _waits(self) -> bool:
        """Tell whether keys at the work have to wait: for the stage, or for the first door."""
        # a door that is drawn for the first time turns the picture its own way: a key may turn it after that
        unready = self.session.model is None and self.session.queue.busy
        return not self._stage_stands or unready or self._refresh.isActive()

    def _drawn(self) -> None:
        if self.session.model is not None and not self.first_frame_s:
            self.first_frame_s = time.perf_counter() - self._began

    def _take_answers(self) -> None:
        self.session.take(self.worker.answers.empty())

    def _take_chances(self) -> None:
        for said in self.chance_worker.waiting():
            self.acting.chances.take(said)

    def _close(self) -> None:
        self._player.stop()
        self._refresh.stop()
        self.early_keys.stop()
        self.filing.keep_unsaved()
        self.keeping.close()
        self.session.stop()
        self.worker.close()
        self.chance_worker.close()


def main(arguments: Sequence[str] = ()) -> int:
    """Open the window and return the exit code.

    Parameters
    ----------
    arguments : the path of a plan file to open, or nothing for the ready demo
    """
    # The plotting libraries look for a binding by themselves; say which one.
    os.environ.setdefault("QT_API", "pyside6")
    os.environ.setdefault("PYQTGRAPH_QT_LIB", "PySide6")
    application = prepare_application()
    app = App(Path(arguments[0]) if arguments else None)
    listen(app.help.log, app.window.notice.say)
    app.start()
    if fills(app.window.screen().availableSize()):
        app.window.showMaximized()  # with a frame round it the window would reach past the screen
    return application.exec()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
