"""The one application object, made with the drawing format the stage needs."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QSurfaceFormat
from PySide6.QtWidgets import QApplication

from ui.singletons import keep_singletons


def prepare_application(words: list[str] | None = None) -> QApplication:
    """Return the application object, made with the drawing format that the stage needs."""
    keep_singletons()
    found = QApplication.instance()
    if isinstance(found, QApplication):
        return found
    wanted = QSurfaceFormat()
    wanted.setRenderableType(QSurfaceFormat.RenderableType.OpenGL)
    wanted.setVersion(3, 2)
    wanted.setProfile(QSurfaceFormat.OpenGLContextProfile.CoreProfile)
    wanted.setSamples(0)
    wanted.setDepthBufferSize(24)
    QSurfaceFormat.setDefaultFormat(wanted)
    QApplication.setAttribute(Qt.ApplicationAttribute.AA_ShareOpenGLContexts)
    application = QApplication(words or ["hemline"])
    application.setApplicationName("Hemline")
    application.setStyle("Fusion")
    return application
