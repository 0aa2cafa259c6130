"""Type, colour and icons of the panels: four sizes, an 8 px grid, hairlines, and no hue without a meaning."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from importlib import resources

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

GRID = 8
LOWER_PX, LOWER_LEAST_PX, LOWER_SHARE = 34, 22, 0.0195
"""Type of the sentence under a stage that stands alone: a share of the width between two sizes, two lines."""
SIZES = {"small": 14, "body": 17, "head": 22, "large": 34}


@dataclass(frozen=True)
class Palette:
    """Tones of one theme, as colour names."""

    ground: str
    paper: str
    raised: str
    ink: str
    quiet: str
    hairline: str
    fill: str
    strong: str
    on_strong: str
    warn: str


LIGHT = Palette("#f1f1ef", "#fafaf9", "#ffffff", "#17191c", "#565c63", "#d3d5d6", "#c3c7ca", "#22262b",
                "#ffffff", "#f4e6c8")  # fmt: skip
DARK = Palette("#191c1f", "#1f2327", "#282d32", "#eef0f1", "#a9b0b7", "#3b4147", "#565e66", "#e8eaec",
               "#17191c", "#4a3f26")  # fmt: skip
PROJECTOR = Palette("#ffffff", "#ffffff", "#ffffff", "#000000", "#303030", "#6e6e6e", "#8c8c8c", "#000000",
                    "#ffffff", "#ffe9a8")  # fmt: skip
"""For a washed-out picture on a wall: white ground, black ink, hairlines that are seen (3:1)."""

OUTWARD = "#0072b2"
"""Blue and vermillion of the palette published by M. Okabe and K. Ito, Color Universal Design (2002)."""
INWARD = "#d55e00"


@dataclass(frozen=True)
class Look:
    """A theme at a scale of type.

    Parameters
    ----------
    dark : the dark theme
    scale : factor on all type
    projector : the theme for a picture on a wall, before the dark one
    """

    dark: bool = False
    scale: float = 1.0
    projector: bool = False

    @property
    def tones(self) -> Palette:
        """The tones of the theme."""
        return PROJECTOR if self.projector else DARK if self.dark else LIGHT

    def px(self, size: str) -> int:
        """Return a size of type in pixels."""
        return round(SIZES[size] * self.scale)

    def font(self, size: str, *, strong: bool = False) -> QFont:
        """Return the system's font at one of the four sizes."""
        font = QFont()
        font.setPixelSize(self.px(size))
        font.setWeight(QFont.Weight.DemiBold if strong else QFont.Weight.Normal)
        return font

    def colour(self, tone: str) -> QColor:
        """Return a tone of the theme by its name."""
        return QColor(getattr(self.tones, tone))

    def icon(self, name: str, tone: str = "ink") -> QIcon:
        """Return one of the program's line drawings in a tone."""
        return _icon(name, getattr(self.tones, tone), getattr(self.tones, "fill"))  # noqa: B009

    def sheet(self) -> str:
        """Return the style sheet of the window."""
        tones = self.tones
        values = {name: getattr(tones, name) for name in Palette.__dataclass_fields__}
        sizes = {name: self.px(name) for name in SIZES}
        thin, thick = (2, 3) if self.projector else (1, 2)
        boxes = {"row": round(32 * self.scale), "dot": round(16 * self.scale), "thin": thin, "thick": thick}
        return _SHEET.format(**values, **sizes, **boxes)


def lower_px(width: int, scale: float) -> int:
    """Return the type of the sentence under a stage that stands alone in a window of a width [px]."""
    return round(scale * min(LOWER_PX, max(LOWER_LEAST_PX, LOWER_SHARE * width)))


@cache
def _icon(name: str, ink: str, faint: str) -> QIcon:
    icon = QIcon()
    icon.addPixmap(drawing(name, ink), QIcon.Mode.Normal)
    icon.addPixmap(drawing(name, faint), QIcon.Mode.Disabled)
    return icon


def drawing(name: str, colour: str, size: int = 48) -> QPixmap:
    """Return a line drawing of assets/icons in one colour."""
    text = resources.files("assets").joinpath("icons", f"{name}.svg").read_text(encoding="utf-8")
    renderer = QSvgRenderer(QByteArray(text.replace("currentColor", colour).encode()))
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, size, size))
    painter.end()
    return pixmap


_SHEET = """
* {{ font-size: {small}px; }}
QMainWindow, QWidget#page {{ background: {ground}; color: {ink}; }}
QWidget {{ color: {ink}; }}
QWidget#column, QScrollArea, QScrollArea > QWidget > QWidget {{ background: {paper}; border: none; }}
QWidget#strip, QWidget#footer, QWidget#scrub {{ background: {paper}; }}
QFrame#line {{ background: {hairline}; border: none; }}
QLabel {{ background: transparent; }}
QLabel#quiet {{ color: {quiet}; }}
QLabel#heading {{ color: {quiet}; font-weight: 600; }}
QLabel#body {{ font-size: {body}px; }}
QLabel#head {{ font-size: {head}px; font-weight: 600; }}
QLabel#large {{ font-size: {large}px; font-weight: 600; }}
QLabel#veil {{ background: {ground}; font-size: {head}px; }}
QPushButton, QToolButton {{ background: transparent; border: {thin}px solid {hairline}; border-radius: 4px;
  padding: 4px 8px; min-height: {dot}px; }}
QPushButton:hover, QToolButton:hover {{ background: {raised}; border-color: {quiet}; }}
QPushButton:focus, QToolButton:focus {{ border: {thick}px solid {ink}; padding: 3px 7px; }}
QPushButton:pressed, QToolButton:pressed {{ background: {fill}; }}
QPushButton:disabled, QToolButton:disabled {{ color: {fill}; border-color: {hairline}; }}
QPushButton#primary {{ background: {strong}; color: {on_strong}; border-color: {strong}; font-size: {body}px;
  font-weight: 600; padding: 6px 16px; }}
QPushButton#primary:pressed {{ background: {quiet}; }}
QPushButton#primary:disabled {{ background: transparent; color: {fill}; border-color: {hairline}; }}
QPushButton#bare, QToolButton#bare {{ border: none; color: {ink}; padding: 4px 6px; }}
QPushButton#bare:hover, QToolButton#bare:hover {{ background: {fill}; }}
QPushButton#choice {{ border: none; border-bottom: 3px solid transparent; border-radius: 0;
  padding: 6px 2px; }}
QPushButton#choice:checked {{ border-bottom: 3px solid {ink}; font-weight: 600; }}
QPushButton#choice:hover {{ background: {raised}; }}
QPushButton#bare:focus, QToolButton#bare:focus {{ border: 2px solid {ink}; padding: 2px 4px; }}
QPushButton#choice:focus {{ background: {raised}; border: 2px solid {ink}; border-radius: 4px;
  padding: 4px 0 5px 0; }}
QPushButton#primary:focus {{ border: 3px double {on_strong}; padding: 4px 14px; }}
QCheckBox, QRadioButton {{ border: 2px solid transparent; }}
QCheckBox:focus, QRadioButton:focus {{ border: 2px solid {ink}; border-radius: 4px; }}
QScrollArea:focus, QAbstractItemView:focus {{ border: 2px solid {ink}; }}
QToolButton::menu-indicator {{ image: none; }}
QWidget#stage {{ background: {paper}; }}
QWidget#stage[framed="true"] {{ background: {ink}; }}
QFrame#card {{ background: transparent; border: none; border-left: 3px solid {hairline}; }}
QFrame#card[selected="true"] {{ background: {raised}; border-left: 3px solid {ink}; }}
QWidget#notice, QWidget#prompt[met="true"] {{ background: {warn}; }}
QWidget#prompt {{ background: {raised}; }}
QLineEdit, QDoubleSpinBox, QSpinBox, QComboBox {{ background: {raised}; color: {ink};
  border: {thin}px solid {hairline}; border-radius: 4px; padding: 2px 6px; min-height: {dot}px;
  selection-background-color: {strong}; selection-color: {on_strong}; }}
QDoubleSpinBox[wrong="true"], QComboBox[wrong="true"] {{ background: {warn};
  border: {thick}px dashed {ink}; }}
QLabel#trouble {{ background: {warn}; color: {ink}; padding: 4px 6px; border-radius: 4px; }}
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button {{ width: 0; border: none; }}
QAbstractSpinBox QLineEdit {{ border: none; padding: 0; min-height: 0; background: transparent; }}
QLineEdit:focus, QDoubleSpinBox:focus, QSpinBox:focus, QComboBox:focus {{ border: {thick}px solid {ink}; }}
QComboBox QAbstractItemView {{ background: {raised}; color: {ink}; selection-background-color: {strong};
  selection-color: {on_strong}; }}
QComboBox QAbstractItemView::item {{ min-height: {dot}px; }}
QComboBox QAbstractItemView::item:selected {{ background: {strong}; color: {on_strong}; }}
QMenuBar {{ background: {paper}; color: {ink}; }}
QMenuBar::item {{ padding: 4px 10px; background: transparent; }}
QMenuBar::item:selected, QMenu::item:selected {{ background: {strong}; color: {on_strong}; }}
QMenu {{ background: {raised}; color: {ink}; border: {thin}px solid {hairline}; }}
QMenu::item {{ padding: 4px 24px 4px 24px; }}
QMenu::item:disabled {{ color: {fill}; }}
QMenu::separator {{ height: 1px; background: {hairline}; margin: 4px 8px; }}
QListWidget#found {{ background: {paper}; border: none; outline: none; }}
QListWidget#found::item {{ border-left: 3px solid transparent; }}
QListWidget#found::item:selected {{ background: {raised}; border-left: 3px solid {ink}; }}
QTableWidget#reading {{ background: {paper}; border: none; font-size: {body}px; }}
QTableWidget#reading::item {{ padding: 4px 0; border-bottom: 1px solid {hairline}; }}
QHeaderView, QHeaderView::section {{ background: {paper}; color: {quiet}; border: none; font-size: {small}px;
  padding: 4px 8px 4px 0; }}
QDialog {{ background: {paper}; color: {ink}; }}
QFileDialog QAbstractItemView {{ background: {raised}; color: {ink}; }}
QListWidget#reading {{ background: {raised}; color: {ink}; }}
QFileDialog QAbstractItemView::item:selected, QListWidget#reading::item:selected {{
  background: {strong}; color: {on_strong}; }}
QToolTip {{ background: {raised}; color: {ink}; border: {thin}px solid {hairline}; padding: 4px; }}
QScrollBar:vertical {{ background: transparent; width: 10px; margin: 0; }}
QScrollBar::handle:vertical {{ background: {fill}; border-radius: 4px; min-height: 24px; margin: 1px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ height: 0; width: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
QCheckBox {{ spacing: 8px; }}
QSlider::groove:horizontal {{ background: {hairline}; height: 4px; border-radius: 2px; }}
QSlider::sub-page:horizontal {{ background: {quiet}; height: 4px; border-radius: 2px; }}
QSlider::handle:horizontal {{ background: {ink}; width: {dot}px; margin: -6px 0; border-radius: 4px; }}
QSlider:focus {{ border: {thick}px solid {ink}; border-radius: 4px; }}
"""
