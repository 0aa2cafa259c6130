"""The outcome map on the stage: its band on the metal, and which of its cells lies at a place."""

from __future__ import annotations

from typing import Any

from ui.main_window import MainWindow
from ui.state.session import Session


class MapOnStage:
    """What the stage's side knows of the map."""

    view: Any
    _session: Session
    _window: MainWindow
    _stage: Any
    _model: object
    map: Any = None
    """The outcome map's side, once there is one: it says what lies under the pointer on its band."""
    _mapped: object = None
    """The car the map was last told of."""

    def show_map(self, panel: Any, grid: Any, drawn: Any) -> bool:
        """Draw the map's band on the metal as it is shown; what is drawn on it stays where it is None.

        Returns whether it could be drawn: not before the stage has taken the car it belongs to.
        """
        frame, model = self._session.timeline.frame, self._session.model
        if frame is None or model is None or model is not self._model:
            return False
        self._stage.band.set_out(panel, grid, frame.points, model.outboard_sign)
        if drawn is not None:
            images, words = drawn
            self._stage.band.paper(images)
            scale = self._session.view.options.text_scale(self._window.width())
            self._stage.band.name(words, self._stage.theme, scale)
        self.view.request_frame()
        return True

    def map_follows(self) -> None:
        """Lay the band on a car that the stage has just taken."""
        if self.map is not None and self._mapped is not self._model:
            self._mapped = self._model
            self.map.show_band()

    def hide_map(self) -> None:
        """Take the band away."""
        if self._stage.band.shown:
            self._stage.band.hide()
            self.view.request_frame()

    def map_cell(self, point: Any) -> int | None:
        """Return the cell of the band at a place on the metal."""
        found: int | None = self._stage.band.cell_at(point)
        return found
