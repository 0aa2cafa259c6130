"""The same doors and shapes as in the scene's tests."""

from tests.ui.scene.conftest import frame, model

__all__ = ["frame", "model"]
