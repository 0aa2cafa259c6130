"""The crew's own tools in the window: kept, taken off and chosen in the form."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from ui.main_window import MainWindow
from ui.state.tool_list import ToolList, ToolTrouble


class ToolSide:
    """Connects the list of tools with the form.

    Parameters
    ----------
    window : where the list shows
    folder : of the user's settings
    """

    def __init__(self, window: MainWindow, folder: Path) -> None:
        self.window = window
        self.list = ToolList(folder)
        fields = window.form.tool_fields
        fields.keep_wished.connect(lambda tool: self._do(lambda: self.list.keep(tool)))
        fields.drop_wished.connect(lambda name: self._do(lambda: self.list.drop(name)))
        self.list.changed.connect(self._show)
        self._show()
        if self.list.troubles:
            window.notice.say(" ".join(self.list.troubles))

    def _do(self, what: Callable[[], object]) -> None:
        try:
            what()
        except ToolTrouble as trouble:
            self.window.notice.say(str(trouble))
        else:
            self.window.notice.say("")

    def _show(self) -> None:
        self.window.form.tool_fields.show_kept(self.list.tools)
