"""The same doors and shapes as in the scene's tests; and the application that later tests go on with."""

import pytest

from tests.ui.scene.conftest import frame, model

__all__ = ["frame", "model"]


@pytest.fixture(scope="session", autouse=True)
def _application(qapp):
    """Make the application with widgets first: pictures alone would make one without."""
    return qapp
