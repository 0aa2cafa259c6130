"""Pictures with no window: before and after side by side, the sentence, the colours, the limits.

VTK draws the scene at the wanted size, lines and all; every word is drawn by Qt on top, so that it stays
sharp. Call `ui.scene.headless.prepare` before importing this where there is no screen.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pyvista
from numpy.typing import ArrayLike, NDArray
from PySide6.QtCore import QBuffer, QByteArray, QCoreApplication, QIODevice, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QFontMetricsF, QGuiApplication, QImage, QPainter
from vtkmodules.util.numpy_support import vtk_to_numpy
from vtkmodules.vtkRenderingCore import vtkWindowToImageFilter

from sim.record import Aim, Frame
from sim.textfiles import write_whole
from ui.scene.colours import THEMES, ColourMode, Theme
from ui.scene.copying import copy_to
from ui.scene.legend import draw_bar
from ui.scene.stage import Stage
from ui.state.tongue import tr

Bytes = NDArray[np.uint8]

LIMITS = "Teaching model \N{EN DASH} not a real car \N{EN DASH} local procedure first"
TRUE_SCALE = "True scale"
MOST_DRAWN_PX = 10e6
"""Pixels drawn for one panel at most; each takes some 70 bytes where the processor draws."""
SMOOTHING = 2
"""The scene is drawn this many times as large and shrunk, for smooth edges without a graphics card."""
MARGIN = 32
PANEL_GAP = 24

_application: QGuiApplication | None = None


@dataclass(frozen=True)
class PictureWords:
    """What stands on a picture.

    sentence : what happened, in words;  title : above;  caption : below, small
    before, after : over the two halves;  version : of the model, beside the limits line
    scale : of what is drawn, at the foot; nothing where no metal is drawn
    """

    sentence: str = ""
    title: str = ""
    caption: str = ""
    before: str = "Before"
    after: str = "After"
    version: str = ""
    scale: str = TRUE_SCALE

    def told(self) -> PictureWords:
        """Return them in the language spoken."""
        return PictureWords(**{name: tr(words) for name, words in vars(self).items()})


def picture(
    model,
    before: ArrayLike | Frame,
    after_frame: Frame,
    words: PictureWords,
    size: tuple[int, int] = (1600, 900),
    *,
    scale: float = 1.0,
    theme: Theme | str = "light",
    mode: ColourMode | str = "material",
    view: str = "three_quarter",
    aim: Aim | None = None,
    tool: object | None = None,
    prepare: Callable[[Stage], None] | None = None,
) -> QImage:
    """Return the figure of a move: both shapes from the same place, the sentence and what belongs to it.

    Parameters
    ----------
    model
        A door model.
    before, after_frame
        Positions [m], shape (n, 3), or the frame at the beginning; and the frame at the end.
    size, scale
        Size in logical pixels, and how many real pixels each is wide.
    aim, tool
        Tips, line of action and outward or inward share, shown in the first half only.
    prepare
        Called with the stage before the first half is drawn, to set layers or the camera.
    """
    theme = THEMES[theme] if isinstance(theme, str) else theme
    sheet = Sheet(size, scale, theme)
    panels = sheet.panels(words)
    plotter = plotter_for(panels[0], scale)
    try:
        stage = stage_on(plotter, model, theme, mode, factor_of(panels[0], scale) * sheet.line_unit)
        stage.view_preset(view)
        if prepare is not None:
            prepare(stage)
        if isinstance(before, Frame):
            stage.show_points(before.points, before)
        else:
            stage.show_points(before)
        stage.show_aim(aim, tool)
        first = grab(plotter)
        stage.show_aim(None)
        stage.show_points(after_frame.points, after_frame)
        stage.show_start_ghost(True)
        second = grab(plotter)
        stage.close()
    finally:
        plotter.close()
    return sheet.compose(panels, (first, second), words, ColourMode(mode))


def screenshot(
    stage: Stage, size: tuple[int, int], caption: str = "", *, scale: float = 1.0, version: str = ""
) -> QImage:
    """Return what a stage shows, at another size, with a caption and the limits line."""
    sheet = Sheet(size, scale, stage.theme)
    words = PictureWords(caption=caption, version=version).told()
    panel = sheet.whole(words)
    plotter = plotter_for(panel, scale)
    try:
        twin = stage_on(plotter, None, stage.theme, stage.mode, factor_of(panel, scale) * sheet.line_unit)
        copy_to(stage, twin)
        image = grab(plotter)
        twin.close()
    finally:
        plotter.close()
    return sheet.compose((panel,), (image,), words, stage.mode)


def save_png(image: QImage, path: Path) -> None:
    """Write an image as PNG, whole; raises OSError, with its number, when it cannot be written."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG", 80)
    buffer.close()
    write_whole(Path(path), data.data())


def factor_of(panel: QRectF, scale: float) -> float:
    """Return how much larger a panel is drawn than it is shown; large ones less, to spare memory."""
    area = max(1.0, panel.width() * panel.height() * scale**2)
    return scale * float(np.clip((MOST_DRAWN_PX / area) ** 0.5, 1.0, SMOOTHING))


def plotter_for(panel: QRectF, scale: float):
    """Return an off-screen plotter for one panel, drawn larger than it is shown."""
    factor = factor_of(panel, scale)
    size = [max(64, round(panel.width() * factor)), max(64, round(panel.height() * factor))]
    return pyvista.Plotter(off_screen=True, window_size=size, lighting="none")


def stage_on(plotter, model, theme: Theme, mode: ColourMode | str, factor: float) -> Stage:
    """Return a stage on a plotter, dressed; empty where there is no model."""
    stage = Stage(plotter)
    stage.set_line_scale(factor)
    stage.set_theme(theme)
    stage.set_colour_mode(mode)
    if model is not None:
        stage.set_model(model)
    return stage


def grab(plotter) -> Bytes:
    """Return what the plotter draws now, shape (height, width, 3)."""
    plotter.render_window.SetMultiSamples(0)
    plotter.render_window.Render()
    reader = vtkWindowToImageFilter()
    reader.SetInput(plotter.render_window)
    reader.ReadFrontBufferOff()
    reader.Update()
    data = reader.GetOutput()
    width, height, _ = data.GetDimensions()
    flat: Bytes = vtk_to_numpy(data.GetPointData().GetScalars())
    return flat.reshape(height, width, -1)[::-1]


def _ensure_application() -> None:
    """Start Qt's text machinery if no window has; and bring a typeface where the machine has none."""
    global _application  # noqa: PLW0603
    if QCoreApplication.instance() is None:
        _application = QGuiApplication([])
    if not QFontDatabase.families():
        import matplotlib

        QFontDatabase.addApplicationFont(str(Path(matplotlib.get_data_path()) / "fonts/ttf/DejaVuSans.ttf"))
        QFontDatabase.addApplicationFont(
            str(Path(matplotlib.get_data_path()) / "fonts/ttf/DejaVuSans-Bold.ttf")
        )


class Sheet:
    """The page: where everything stands, and the painter."""

    def __init__(self, size: tuple[int, int], scale: float, theme: Theme) -> None:
        _ensure_application()
        self.width, self.height = size
        self.scale, self.theme = scale, theme
        self.unit = max(0.6, min(self.width / 1600.0, self.height / 900.0))
        self.line_unit = max(1.0, self.unit)
        self.image = QImage(round(self.width * scale), round(self.height * scale), QImage.Format.Format_RGB32)
        self.image.setDevicePixelRatio(scale)
        self.margin = MARGIN * self.unit

    def font(self, size: float, *, bold: bool = False) -> QFont:
        """Return the one typeface at a size in logical pixels."""
        family = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont).family()
        font = QFont(family)
        font.setPixelSize(max(9, round(size * self.unit)))
        font.setBold(bold)
        return font

    def _text_height(self, words: str, font: QFont, width: float) -> float:
        if not words:
            return 0.0
        box = QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 1e4), Qt.TextFlag.TextWordWrap, words)
        return box.height()

    def rows(self, words: PictureWords) -> tuple[float, float]:
        """Return where the drawn part begins and ends, between title and sentence."""
        inner = self.width - 2 * self.margin
        top = (
            self.margin
            + self._text_height(words.title, self.font(22), inner)
            + (8 * self.unit if words.title else 0)
        )
        low = self.height - self.margin - 40 * self.unit
        low -= self._text_height(words.caption, self.font(17), inner) + (
            8 * self.unit if words.caption else 0
        )
        low -= self._text_height(words.sentence, self.font(34), inner) + (
            20 * self.unit if words.sentence else 0
        )
        return top, low

    def panels(self, words: PictureWords) -> tuple[QRectF, QRectF]:
        """Return the places of the two halves."""
        top, low = self.rows(words)
        top += 34 * self.unit
        gap = PANEL_GAP * self.unit
        width = 0.5 * (self.width - 2 * self.margin - gap)
        left = QRectF(self.margin, top, width, low - top)
        return left, left.translated(width + gap, 0.0)

    def whole(self, words: PictureWords) -> QRectF:
        """Return the place of a single picture."""
        _, low = self.rows(words)
        return QRectF(0.0, 0.0, self.width, low)

    def compose(
        self, panels: tuple[QRectF, ...], images: tuple[Bytes, ...], words: PictureWords, mode: ColourMode
    ) -> QImage:
        """Return the finished page."""
        self.image.fill(QColor(self.theme.paper))
        painter = QPainter(self.image)
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.SmoothPixmapTransform)
        try:
            for panel, image in zip(panels, images, strict=True):
                painter.drawImage(panel, shrunk(image, panel, self.scale))
            if len(panels) == 2:
                self._heads(painter, panels, words)
            self._words(painter, words, mode)
        finally:
            painter.end()
        self.image.setText(
            "Description", " ".join(w for w in (words.title, words.sentence, words.caption, LIMITS) if w)
        )
        return self.image

    def _heads(self, painter: QPainter, panels: tuple[QRectF, ...], words: PictureWords) -> None:
        painter.setPen(QColor(self.theme.text))
        painter.setFont(self.font(22, bold=True))
        for panel, head in zip(panels, (words.before, words.after), strict=True):
            place = QRectF(panel.left(), panel.top() - 34 * self.unit, panel.width(), 30 * self.unit)
            painter.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, head)

    def _words(self, painter: QPainter, words: PictureWords, mode: ColourMode) -> None:
        inner = self.width - 2 * self.margin
        painter.setPen(QColor(self.theme.text))
        painter.setFont(self.font(22))
        painter.drawText(QRectF(self.margin, self.margin, inner, 1e3), Qt.TextFlag.TextWordWrap, words.title)
        _, at = self.rows(words)
        if words.sentence:
            at += 16 * self.unit
            at += self._paragraph(painter, words.sentence, self.font(34), at, self.theme.text) + 4 * self.unit
        if words.caption:
            at += 8 * self.unit
            self._paragraph(painter, words.caption, self.font(17), at, self.theme.muted)
        self._foot(painter, words, mode)

    def _paragraph(self, painter: QPainter, words: str, font: QFont, top: float, colour: str) -> float:
        inner = self.width - 2 * self.margin
        height = self._text_height(words, font, inner)
        painter.setFont(font)
        painter.setPen(QColor(colour))
        painter.drawText(QRectF(self.margin, top, inner, height + 2), Qt.TextFlag.TextWordWrap, words)
        return height

    def _foot(self, painter: QPainter, words: PictureWords, mode: ColourMode) -> None:
        line = self.height - self.margin - 24 * self.unit
        inner = self.width - 2 * self.margin
        painter.setPen(QColor(self.theme.muted))
        painter.setFont(self.font(17))
        limits = f"{tr(LIMITS)}   {words.version}" if words.version else tr(LIMITS)
        place = QRectF(self.margin, line, inner, 24 * self.unit)
        painter.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, limits)
        painter.drawText(place, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, words.scale)
        if mode is not ColourMode.MATERIAL:
            wide = min(420 * self.unit, 0.3 * self.width)
            right = self.width - self.margin - 130 * self.unit
            bar = QRectF(right - wide, line - 20 * self.unit, wide, 12 * self.unit)
            draw_bar(painter, bar, mode, self.font(14), QColor(self.theme.text))


def shrunk(image: Bytes, panel: QRectF, scale: float) -> QImage:
    """Return a drawn image at its final size."""
    data = np.ascontiguousarray(image[..., :3])
    height, width, _ = data.shape
    whole = QImage(data.data, width, height, 3 * width, QImage.Format.Format_RGB888).copy()
    return whole.scaled(
        round(panel.width() * scale),
        round(panel.height() * scale),
        Qt.AspectRatioMode.IgnoreAspectRatio,
        Qt.TransformationMode.SmoothTransformation,
    )
