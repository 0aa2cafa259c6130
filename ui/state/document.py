"""The document: one plan, where it is kept, and how it came to be what it is."""

from __future__ import annotations

from pathlib import Path

from sim.plan import Plan
from ui.state.history import History, Step
from ui.state.signal import Signal


class Document:
    """The plan that the window shows, and the only way to change it.

    Parameters
    ----------
    plan : the plan to begin with

    Attributes
    ----------
    changed : emitted after the plan shown (committed or previewed) has changed
    filed : emitted after the path or the saved state has changed
    """

    def __init__(self, plan: Plan | None = None) -> None:
        self._history = History(plan or Plan())
        self._preview: Plan | None = None
        self._saved = self._history.plan
        self._run: object = None
        self.path: Path | None = None
        self.text: str | None = None
        self.changed: Signal[[]] = Signal()
        self.filed: Signal[[]] = Signal()

    @property
    def plan(self) -> Plan:
        """The plan shown: the preview if there is one, else the committed one."""
        return self._history.plan if self._preview is None else self._preview

    @property
    def committed(self) -> Plan:
        """The plan without any preview."""
        return self._history.plan

    @property
    def dirty(self) -> bool:
        """Whether the committed plan differs from the one saved last."""
        return self._history.plan != self._saved

    @property
    def history(self) -> History:
        """The history, to read; change it through the document."""
        return self._history

    @property
    def steps(self) -> tuple[Step, ...]:
        """Every step of the history, those of other branches included."""
        return self._history.steps

    def commit(self, plan: Plan, label: str) -> None:
        """Make `plan` the present one and a step of the history; any preview ends."""
        shown = self.plan
        self._preview = None
        self._run = None
        if self._history.commit(plan, label) or plan != shown:
            self.changed.emit()

    def commit_run(self, plan: Plan, label: str, run: object) -> None:
        """Commit, but melt into the step before when that belongs to the same `run` of one control.

        Ten turns of the wheel are one step back, not ten.
        """
        if run is not None and run == self._run and not self._history.can_redo:
            self._preview = None
            self._history.amend(plan, label)
            self.changed.emit()
            return
        self.commit(plan, label)
        self._run = run

    def preview(self, plan: Plan | None) -> None:
        """Show `plan` without recording it; None ends the preview."""
        shown = self.plan
        self._preview = plan
        if self.plan != shown:
            self.changed.emit()

    def undo(self) -> None:
        """Go one step back."""
        self.go(max(0, self._history.steps[self._history.position].parent))

    def redo(self) -> None:
        """Go one step on again, along the branch seen last."""
        shown = self.plan
        self._preview = None
        self._run = None
        if self._history.redo() != shown:
            self.changed.emit()

    def go(self, position: int) -> None:
        """Go to any step of any branch."""
        shown = self.plan
        self._preview = None
        self._run = None
        if self._history.go(position) != shown:
            self.changed.emit()

    def open(self, plan: Plan, path: Path | None, text: str | None = None) -> None:
        """Show another plan, with a history of its own.

        Parameters
        ----------
        plan, path : what was read and where it lies (None: a ready plan of the program, saved elsewhere)
        text : the file's text, so that saving keeps its comments
        """
        self._history = History(plan, f"Opened {path.name}" if path else "Ready plan")
        self._preview = None
        self._run = None
        self._saved = plan
        self.path, self.text = path, text
        self.changed.emit()
        self.filed.emit()

    @property
    def saved(self) -> Plan:
        """The plan as it was opened or saved last."""
        return self._saved

    def restore(self, history: History, saved: Plan, path: Path | None, text: str | None) -> None:
        """Show a history as it was, with the plan that lies in its file."""
        self._history, self._saved = history, saved
        self._preview = None
        self._run = None
        self.path, self.text = path, text
        self.changed.emit()
        self.filed.emit()

    def mark_saved(self, path: Path, text: str | None = None) -> None:
        """Remember that the committed plan now lies at `path`."""
        self._saved = self._history.plan
        self.path, self.text = path, text
        self.filed.emit()
