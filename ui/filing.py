"""Files and memory: open, save, recent plans, pictures, and what is remembered between two sessions."""

from __future__ import annotations

import contextlib
import dataclasses
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog

from sim.plan import Plan
from sim.units import Units
from ui.main_window import MainWindow
from ui.panels.sheets import PictureSheet
from ui.refusal import one_sentence, told_in_window
from ui.showing import Showing, alike
from ui.state import settings as remembered
from ui.state.ready_plans import ready_path, told
from ui.state.session import Session
from ui.state.tongue import TONGUES, tr

if TYPE_CHECKING:
    from ui.stage_side import StageSide

PATTERN = "Plans (*.toml)"
MESHES = {
    "Mesh with its numbers (*.vtu)": ".vtu",
    "Shapes with their parts (*.glb)": ".glb",
    "Plain shape (*.stl)": ".stl",
    "Table of the nodes (*.csv)": ".csv",
    "Untouched shells for a solver (*.inp)": ".inp",
}
"""What the metal of a moment can be saved as, and the ending of each."""


NOT_KEPT = "Neither choices nor this sitting can be kept: free some space, or ask for the right to write in"
WELCOME = "New here? Menu Help, First look, shows the parts of a door step by step; F1 lists every key."


class Filing:
    """Brings plans in and out; says in a sentence what cannot be done.

    Parameters
    ----------
    session, window, showing : what is opened and saved, and where it shows
    folder : where settings are remembered
    """

    def __init__(self, session: Session, window: MainWindow, showing: Showing, folder: Path) -> None:
        self.session, self.window, self._showing, self.folder = session, window, showing, folder
        self._settings_trouble = remembered.set_aside_broken(folder)
        self.settings = remembered.load(folder)
        self.side: StageSide | None = None
        self.open_lesson: Callable[[Path], bool] = lambda _: False
        """Opens a file that is a lesson and no plan."""
        self._told_unkept = False
        self._pictures: PictureSheet | None = None
        self._left: dict[str, Plan] = {}

    # --- memory ------------------------------------------------------------------------------------------

    def take_settings(self) -> None:
        """Put the remembered choices in force, and show the caution if it was never read here."""
        kept = self.settings
        units = Units.IMPERIAL if kept.imperial else Units.METRIC
        options = dataclasses.replace(
            self.session.view.options,
            theme=kept.theme,
            projector=kept.projector,
            units=units,
            text_ratio=kept.text_ratio,
            calm=kept.calm,
            right_turns=kept.right_turns,
        )
        self.session.view.set(options)
        self.session.locks.restore(kept.shut)
        self.window.show_recent(kept.recent)
        self.window.notice.say(self._settings_trouble)
        if not kept.caution_read:
            self.window.show_page("caution")

    def remember_view(self) -> None:
        """Remember theme, type and units for the next time."""
        options = self.session.view.options
        imperial = options.units is Units.IMPERIAL
        self._remember(
            dataclasses.replace(
                self.settings,
                theme=options.theme,
                projector=options.projector,
                imperial=imperial,
                text_ratio=options.text_ratio,
                calm=options.calm,
                right_turns=options.right_turns,
                shut=tuple(sorted(self.session.locks.own)),
            )
        )

    def turn_language(self) -> None:
        """Speak the next language from the next start on; the new one says so in its own words."""
        codes = list(TONGUES)
        code = (
            codes[(codes.index(self.settings.language) + 1) % len(codes)]
            if (self.settings.language in codes)
            else codes[0]
        )
        self._remember(dataclasses.replace(self.settings, language=code))
        self.window.notice.say(f"{TONGUES[code]}: at the next start, beim n\u00e4chsten Start.")

    def caution_read(self) -> None:
        """Go to work; the caution counts as read in this folder."""
        self.window.show_page("work")
        if not self.settings.caution_read and self.window.notice.isHidden():  # nothing said is written over
            self.window.notice.say(WELCOME)
        self._remember(dataclasses.replace(self.settings, caution_read=True))

    def _remember(self, settings: remembered.Settings) -> None:
        if settings == self.settings:
            return
        self.settings = settings
        kept = remembered.save(settings, self.folder)
        if not kept and not self._told_unkept:
            self._told_unkept = True
            self.window.notice.say(f"{NOT_KEPT} {self.folder}")

    # --- plans -------------------------------------------------------------------------------------------

    def open_first(self, path: Path | None) -> None:
        """Show the first plan: the one asked for, else the ready edge attack."""
        from ui import files

        self._showing.ready.update({name: files.ready_plan(name) for name in files.READY})
        if path is None or not self.open(path):
            self.session.document.open(self._showing.ready["edge"], None)

    def show_ready(self, name: str) -> None:
        """Show a ready plan as it was left: a step of the history, so that no work is lost."""
        words = {"edge": "Ready plan: edge attack", "contrast": "Ready plan: the contrast"}
        plan = self.session.plan
        for other, ready in self._showing.ready.items():
            if alike(ready, plan):
                self._left[other] = plan
        wanted = self._left.get(name, self._showing.ready[name])
        self.session.selection.select_move(0)
        self.session.document.commit(wanted, words[name])
        self._showing.later("plan")

    def show_ready_file(self, name: str) -> None:
        """Show one of all ready plans, by its file's name: a step of the history, so that no work is lost."""
        from ui import files

        plan, _ = files.read(ready_path(name))
        self.session.selection.select_move(0)
        self.session.document.commit(plan, f"Ready plan: {plan.title}")
        self._showing.later("plan")
        self.window.notice.say(told(name))

    def open(self, path: Path) -> bool:
        """Show the plan in a file; return False, having said why, where it cannot be."""
        from ui import files

        if files.is_lesson(path):
            opened = self.open_lesson(path)  # which says why where it is not
            if opened:
                self._remember(self.settings.with_recent(path))
                self.window.show_recent(self.settings.recent)
            return opened
        try:
            plan, text = files.read(path)
        except files.FileTrouble as trouble:
            self.window.notice.say(str(trouble))
            self._remember(self.settings.without_recent(path))
            return False
        self.window.notice.say("")
        self.session.selection.select_move(0)
        self.session.document.open(plan, path, text)
        self._remember(self.settings.with_recent(path))
        self.window.show_recent(self.settings.recent)
        return True

    def open_recent(self, index: int) -> None:
        """Open one of the recent files."""
        self.open(Path(self.settings.recent[index]))

    def ask_open(self) -> None:
        """Ask which file to open."""
        name, _ = QFileDialog.getOpenFileName(self.window, tr("Open a plan"), self._place(), tr(PATTERN))
        if name:
            self.open(Path(name))

    def ask_plan(self) -> Plan | None:
        """Ask for a plan's file and return what it holds, without showing it; None where there is none."""
        from ui import files

        name, _ = QFileDialog.getOpenFileName(self.window, tr("Open a plan"), self._place(), tr(PATTERN))
        if not name:
            return None
        try:
            return files.read(Path(name))[0]
        except files.FileTrouble as trouble:
            self.window.notice.say(str(trouble))
            return None

    def save(self) -> None:
        """Save the plan where it came from, or ask where."""
        path = self.session.document.path
        if path is None:
            self.save_as()
        else:
            self._write(path)

    def save_as(self) -> None:
        """Ask where to save the plan."""
        name, _ = QFileDialog.getSaveFileName(self.window, tr("Save the plan"), self._place(), tr(PATTERN))
        if name:
            self._write(Path(name if name.endswith(".toml") else f"{name}.toml"))

    def _write(self, path: Path) -> None:
        from ui import files

        document = self.session.document
        try:
            text = files.write(document.committed, path, document.text)
        except files.FileTrouble as trouble:
            self.window.notice.say(str(trouble))
            return
        document.mark_saved(path, text)
        self._remember(self.settings.with_recent(path))
        self.window.show_recent(self.settings.recent)

    def keep_unsaved(self) -> None:
        """Keep a plan that was never saved in the settings' folder, at the head of the recent ones."""
        if not self.session.document.dirty:
            return
        path = self.folder / "last-unsaved.toml"
        with contextlib.suppress(OSError):  # a folder that cannot be made shows in the writing
            self.folder.mkdir(parents=True, exist_ok=True)
        self._write(path)

    def _place(self) -> str:
        path = self.session.document.path
        return str(path) if path is not None else str(Path.home() / "plan.toml")

    # --- pictures ----------------------------------------------------------------------------------------

    def ask_picture(self) -> None:
        """Open the sheet that asks for a picture's size and caption."""
        if self._pictures is None:
            self._pictures = PictureSheet(self.window, self.save_picture)
        self._pictures.show()

    def save_picture(self, width: int, height: int, caption: str, name: str) -> None:
        """Save the stage as a PNG picture of a size."""
        if self.side is None:
            return
        try:
            self.side.save_picture((width, height), caption, Path(name))
        except OSError as problem:
            self.window.notice.say(told_in_window(Path(name), "written", problem))
        else:
            self.window.notice.say(f"Picture saved: {name}")

    # --- the metal for other programs --------------------------------------------------------------------

    def ask_mesh(self) -> None:
        """Ask where to save the metal of the moment shown, and in which format."""
        name, chosen = QFileDialog.getSaveFileName(
            self.window,
            tr("Save the metal of this moment"),
            str(Path.home() / "door.vtu"),
            ";;".join(tr(words) for words in MESHES),
        )
        chosen = next((words for words in MESHES if tr(words) == chosen), chosen)
        if name:
            path = Path(name)
            self.save_mesh(path if path.suffix else path.with_suffix(MESHES[chosen]))

    def save_mesh(self, path: Path) -> None:
        """Write the metal of the moment shown, in the format of the file's ending."""
        from sim import exports

        model = self.session.model
        frame = self.session.timeline.frame or self.session.start
        if model is None or frame is None:
            return
        try:
            exports.write_moment(path, model, frame)
        except OSError as problem:
            self.window.notice.say(told_in_window(path, "written", problem))
        except ValueError as problem:
            self.window.notice.say(f"{path.name} was not written: {one_sentence(str(problem))}")
