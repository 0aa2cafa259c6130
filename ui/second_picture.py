"""The picture of the plan beside: its own metal, dressed and seen as the first plan's is."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sim.plan import Move, Spread, Squeeze
from ui.state.locks import LADDER
from ui.state.reading import clearance_told
from ui.state.session import Session
from ui.state.slid import aim_now, as_now

if TYPE_CHECKING:
    from sim.record import Aim, Frame
    from ui.stage_side import StageSide

AIMS_KEPT = 200


class SecondPicture:
    """Draws the plan that stands beside the one shown.

    Parameters
    ----------
    session : both plans and their clock
    """

    def __init__(self, session: Session) -> None:
        self.session = session
        self._model: object = None
        self._aims: dict[tuple[int, Move], tuple[Frame, Aim]] = {}

    def draw(self, side: StageSide, stage: Any) -> None:
        """Draw the moment of the plan beside, seen as the first stage is."""
        from vtkmodules.vtkRenderingCore import vtkCamera  # loaded by then

        session, beside = self.session, self.session.beside
        assert beside.plan is not None
        model, start = session.model_of(beside.plan), session.start_of(beside.plan)
        found = session.found_of(beside.plan)
        frame = beside.frame(1) or start
        first = side.view.stage
        if model is not self._model:
            self._model = model
            here = vtkCamera()
            here.DeepCopy(first.renderer.GetActiveCamera())
            stage.set_model(model)  # a stage's first model takes the camera home: it is shared
            first.renderer.GetActiveCamera().DeepCopy(here)
            side.dress_stage(stage)
        stage.take_apart(*first.apart)
        if frame is None:
            return
        moved = frame is not start
        stage.show_points(frame.points, frame)
        stage.show_start_ghost(moved, None if found is None else found.start.points)
        stage.show_clearance(clearance_told(frame, start) if moved else None)
        stage.show_path(frame if moved and frame.force_n > 0.0 and not session.hides(LADDER) else None)
        self._draw_tips(stage, frame)

    def _draw_tips(self, stage: Any, frame: Frame) -> None:
        session, beside = self.session, self.session.beside
        assert beside.plan is not None
        index = max(beside.move(1), 0)
        move = beside.plan.moves[index] if index < len(beside.plan.moves) else None
        model = session.model_of(beside.plan)
        if not isinstance(move, Spread | Squeeze) or model is None:
            stage.show_aim(None)
            return
        key = id(frame), move
        if key not in self._aims or self._aims[key][0] is not frame:
            if len(self._aims) >= AIMS_KEPT:
                self._aims.clear()
            from sim import aim as aims  # the mechanics come when the window stands

            line = aims.line(model, as_now(model, move, frame), frame.points)
            self._aims[key] = frame, aim_now(line, frame, model.outboard_sign)
        aim = self._aims[key][1]
        stage.show_aim(None if aim.problems else aim, move.tool, share=False)
