"""The viewer's place before a stage: where the camera stands, and how near and far is drawn."""

from __future__ import annotations

from collections.abc import Callable

from ui.scene.cameras import FAR_M, NEAR_SHARE, Shot


class Viewer:
    """What a stage knows of its camera; it has a renderer and asks for frames."""

    renderer: object
    request_frame: Callable[[], None]

    @property
    def shot(self) -> Shot:
        """Where the camera stands now."""
        camera = self.renderer.GetActiveCamera()  # type: ignore[attr-defined]
        return Shot(camera.GetPosition(), camera.GetFocalPoint(), camera.GetViewAngle(), camera.GetViewUp())

    @shot.setter
    def shot(self, shot: Shot) -> None:
        camera = self.renderer.GetActiveCamera()  # type: ignore[attr-defined]
        camera.SetPosition(*shot.position)
        camera.SetFocalPoint(*shot.focus)
        camera.SetViewUp(*shot.up)
        camera.SetViewAngle(shot.angle_deg)
        self.renderer.camera_set = True  # type: ignore[attr-defined]
        self.set_clipping()
        self.request_frame()

    def set_clipping(self) -> None:
        """Set how near and far is drawn, tightly, so that lines on metal neither sink nor shine through."""
        camera = self.renderer.GetActiveCamera()  # type: ignore[attr-defined]
        distance = camera.GetDistance()
        camera.SetClippingRange(NEAR_SHARE * distance, distance + FAR_M)
