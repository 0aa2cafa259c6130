"""Matching pictures from the window: what is chosen, and the process that draws them."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QProcess, QProcessEnvironment
from PySide6.QtWidgets import QFileDialog

from sim.problems import PlanError
from ui.main_window import MainWindow
from ui.panels.figures import FiguresSheet
from ui.panels.pieces import dress
from ui.refusal import one_sentence, told_in_window
from ui.state import figure_list
from ui.state.figure_choice import SIZE_CHOICES, Choice, opened, view_of, write
from ui.state.session import Session
from ui.state.tongue import VARIABLE, spoken, tr

if TYPE_CHECKING:
    from collections.abc import Callable

LOST = "The pictures could not be made"
NO_MOVE = "There is no move to take a moment of: add a spread first."
BOTH_IN = "This one is in the list already."
DRAWS_ALONE = {"QT_QPA_PLATFORM": "offscreen"}


class FiguresSide:
    """Holds the list and its window; made when it is first opened.

    Parameters
    ----------
    window, session : over what it opens, and whose moments are taken
    """

    def __init__(self, window: MainWindow, session: Session) -> None:
        self.window, self.session = window, session
        self.choice, self._said = Choice(), ""
        self._process: QProcess | None = None
        self._done, self._told, self._out = 0, "", Path()
        self._stopped = False
        sheet = self.sheet = FiguresSheet(window)
        sheet.moment_wished.connect(self._take_moment)
        sheet.view_wished.connect(self._add_view)
        sheet.moment_unwanted.connect(self._drop_moment)
        sheet.view_unwanted.connect(self._drop_view)
        sheet.ticked.connect(self._tick)
        sheet.open_wished.connect(self._ask_list)
        sheet.make_wished.connect(self._ask_folder)
        sheet.stop_wished.connect(self.stop)
        window.closing.connect(self.close)

    def open(self) -> None:
        """Show the window over the stage's edge."""
        dress(self.sheet, self.window.look)
        self.sheet.show()
        self.sheet.adjustSize()
        self._show()
        self.sheet.raise_()

    # --- what is chosen ----------------------------------------------------------------------------------

    def _change(self, choice: Choice, said: str = "") -> None:
        self.choice, self._said = choice, said
        self._show()

    def _take_moment(self) -> None:
        before = self.choice
        after = before.with_moment(self.session)
        nothing = BOTH_IN if self.session.plan.moves else NO_MOVE
        self._change(after, nothing if after is before else "")

    def _add_view(self, camera: str, colours: str, dark: bool, names: bool) -> None:
        before = self.choice
        after = before.with_view(view_of(self.session, camera, colours, dark=dark, labels=names))
        self._change(after, BOTH_IN if after is before else "")

    def _drop_moment(self, index: int) -> None:
        kept = tuple(one for k, one in enumerate(self.choice.taken) if k != index)
        self._change(replace(self.choice, taken=kept))

    def _drop_view(self, index: int) -> None:
        kept = tuple(one for k, one in enumerate(self.choice.views) if k != index)
        self._change(replace(self.choice, views=kept))

    def _tick(self, group: str, names: tuple[str, ...]) -> None:
        if group == "sizes":
            own = {size.name: size for size in (*SIZE_CHOICES, *self.choice.sizes)}
            self._change(replace(self.choice, sizes=tuple(own[name] for name in names)))
        elif group == "styles":
            self._change(replace(self.choice, styles=names))
        else:
            self._change(replace(self.choice, formats=names))

    def _show(self) -> None:
        self.sheet.show_choice(self.choice, self._said, running=self.running)

    # --- files -------------------------------------------------------------------------------------------

    def _ask_list(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self.sheet, tr("Open a list of figures"), str(Path.home()), tr("Lists of figures (*.toml)")
        )
        if name:
            self.read(Path(name))

    def read(self, path: Path) -> None:
        """Take a list from a file in place of the one shown; say in a sentence where it cannot be read."""
        try:
            self._change(opened(path, figure_list.load(path)))
        except PlanError as problem:
            words = one_sentence(str(problem))
            self._change(self.choice, f"{path.name} was not opened: {words}")

    def _ask_folder(self) -> None:
        name = QFileDialog.getExistingDirectory(self.sheet, tr("Folder for the pictures"), str(Path.home()))
        if name:
            self.make(Path(name))

    # --- making ------------------------------------------------------------------------------------------

    @property
    def running(self) -> bool:
        """Whether pictures are being made."""
        return self._process is not None

    def make(self, out: Path) -> None:
        """Write the list into a folder and have its pictures drawn there."""
        try:
            path = write(self.choice, out)
        except PlanError as problem:
            self._change(self.choice, f"{LOST}: {one_sentence(str(problem))}")
            return
        except OSError as problem:
            self._change(self.choice, told_in_window(out, "written", problem))
            return
        process = self._process = QProcess(self.window)
        around = QProcessEnvironment.systemEnvironment()
        for name, value in DRAWS_ALONE.items():
            around.insert(name, value)
        around.insert(VARIABLE, spoken())
        around.insert("PYTHONPATH", str(Path(__file__).resolve().parents[1]))
        process.setProcessEnvironment(around)
        process.readyReadStandardError.connect(self._hear)
        process.readyReadStandardOutput.connect(self._hear)
        process.finished.connect(self._end)
        self._done, self._told, self._out, self._stopped = 0, "", out, False
        self._said = f"Making the pictures: 0 of {self.choice.count}"
        process.start(sys.executable, ["-m", "ui.command", "figures", str(path), "--out", str(out)])
        self._show()

    def _hear(self) -> None:
        process = self._process
        if process is None:
            return
        names = bytes(process.readAllStandardError().data()).decode("utf-8", "replace").splitlines()
        self._told += bytes(process.readAllStandardOutput().data()).decode("utf-8", "replace")
        for name in names:
            self._done += "--" in name
            self._told += "" if "--" in name else f"{name}\n"
        if names:
            last = names[-1] if "--" in names[-1] else f"working out {names[-1].strip()}"
            self._said = f"Making the pictures: {self._done} of {self.choice.count}, {last}"
            self._show()

    def _end(self, code: int, _status: object = None) -> None:
        self._hear()
        process, self._process = self._process, None
        if process is not None:
            process.deleteLater()
        lines = [line for line in self._told.splitlines() if line.strip()]
        if self._stopped:
            self._said = f"Stopped after {self._done} of {self.choice.count} pictures: {self._out}"
        elif code == 0:
            changed = [line for line in lines if line.startswith(("VERDICT", "Nothing has"))]
            many = "picture" if self._done == 1 else "pictures"
            made = f"{self._done} {many} with captions and alt texts: {self._out}."
            self._said = " ".join((made, *changed))
        else:
            self._said = f"{LOST}: {lines[-1] if lines else 'the process that draws ended by itself.'}"
        self._show()

    def stop(self) -> None:
        """Give up the pictures under way; those that are made stay."""
        if self._process is not None:
            self._stopped = True
            self._process.kill()

    def close(self) -> None:
        """End with the window."""
        process, self._process = self._process, None
        if process is not None:
            process.finished.disconnect()
            process.kill()
            process.waitForFinished(3000)


def figures_action(window: MainWindow, session: Session) -> Callable[[], None]:
    """Return what opens the window of matching pictures, made at the first call."""
    made: list[FiguresSide] = []

    def show() -> None:
        if not made:
            made.append(FiguresSide(window, session))
        made[0].open()

    return show
