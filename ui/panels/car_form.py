"""The form of the car and the tool: what is changed in it is solved again with the same moves."""

from __future__ import annotations

from collections.abc import Sequence

import msgspec
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import (
    QBoxLayout,
    QButtonGroup,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from sim.plan import Car, Move, Tool
from sim.problems import PlanError
from sim.units import Units, force, length
from ui.panels.car_fields import CarFields
from ui.panels.look import GRID, Look
from ui.panels.pieces import button, column_area, label
from ui.panels.side_fields import SideFields
from ui.panels.tool_fields import ToolFields
from ui.state import side_fields
from ui.state.car_fields import change_words, changed
from ui.state.curve_form import POINT_COUNT, CurveError, as_text, from_text
from ui.state.tongue import tr
from ui.state.tool_list import TOOL_WORDS

PAGES = ("Door and tool", "The side and the person")
STACKED_FROM = 1.2
"""Scale of type from which the two pages' names stand one above the other."""
DOOR_PAGE, SIDE_PAGE = range(2)


class CarForm(QWidget):
    """The form in the left column.

    Attributes
    ----------
    car_wished : emitted with the changed car and a label
    tool_wished : emitted with the changed tool and a label
    trouble : emitted with a sentence when what was typed cannot be used
    done : emitted when the form is to be put away
    """

    car_wished = Signal(object, str)
    tool_wished = Signal(object, str)
    trouble = Signal(str)
    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._car, self._tool, self._units = Car(), Tool(), Units.METRIC
        self.fields = CarFields()
        self.seam, self.metal = self.fields.boxes["seam"], self.fields.boxes["metal"]
        self.skin = self.fields.numbers["skin_thickness_m"]
        self.tool_fields = ToolFields()
        self.tip_width = self.tool_fields.numbers["tip_width_m"]
        self.rows = [(QLineEdit(), QLineEdit()) for _ in range(POINT_COUNT)]
        self._heads = label("", "quiet"), label("", "quiet")
        self.use = button("Use this curve")
        back = button("Back to the plan", "primary")
        self.side_fields = SideFields()
        self.pages = QStackedWidget()
        self.pages.addWidget(column_area(tr("Car and tool"), self._door_page()))
        side, column = _column()
        column.addWidget(self.side_fields)
        column.addStretch(1)
        self.pages.addWidget(column_area(tr(PAGES[SIDE_PAGE]), side))
        foot = QHBoxLayout()
        foot.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        foot.addWidget(back)
        foot.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addLayout(self._choice_of_page())
        outer.addWidget(self.pages, 1)
        outer.addLayout(foot)
        self._connect()
        back.clicked.connect(self.done)

    def _door_page(self) -> QWidget:
        inside, column = _column()
        column.addWidget(label("The car", "heading"))
        column.addWidget(self.fields)
        column.addSpacing(GRID)
        column.addWidget(label("The tool", "heading"))
        column.addWidget(self.tool_fields)
        column.addSpacing(GRID)
        column.addWidget(label("Force the tool can give at each opening", "heading", wrap=True))
        column.addLayout(self._curve())
        column.addWidget(self.use, 0, Qt.AlignmentFlag.AlignRight)
        column.addStretch(1)
        return inside

    def _choice_of_page(self) -> QBoxLayout:
        row = self._page_row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        row.setContentsMargins(2 * GRID, GRID // 2, 2 * GRID, 0)
        row.setSpacing(0)
        self.page_buttons = QButtonGroup(self)
        for number, words in enumerate(PAGES):
            made = button(words, "choice")
            made.setCheckable(True)
            self.page_buttons.addButton(made, number)
            row.addWidget(made, 0, Qt.AlignmentFlag.AlignLeft)
        self.page_buttons.idClicked.connect(self.turn_to)
        self.turn_to(DOOR_PAGE)
        return row

    def set_look(self, look: Look) -> None:
        """Give the pages' names their room: they are bold where they are chosen."""
        way = QBoxLayout.Direction
        self._page_row.setDirection(way.TopToBottom if look.scale >= STACKED_FROM else way.LeftToRight)
        metrics = QFontMetrics(look.font("small", strong=True))
        for made in self.page_buttons.buttons():
            made.setMinimumWidth(metrics.horizontalAdvance(made.text()) + GRID)

    def least_px(self) -> int:
        """Return how narrow it may be: its fields whole, and the bar that moves them."""
        area = self.pages.currentWidget()
        assert isinstance(area, QScrollArea)
        return area.widget().minimumSizeHint().width() + area.verticalScrollBar().sizeHint().width()

    def turn_to(self, page: int) -> bool:
        """Show one of the two pages; return whether it was shown already."""
        before = self.pages.currentIndex()
        self.page_buttons.button(page).setChecked(True)
        self.pages.setCurrentIndex(page)
        return before == page

    def _curve(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setVerticalSpacing(2)
        for column, head in enumerate(self._heads):
            grid.addWidget(head, 0, column, Qt.AlignmentFlag.AlignRight)
        for index, pair in enumerate(self.rows, 1):
            for column, field in enumerate(pair):
                field.setMinimumWidth(40)
                field.setAlignment(Qt.AlignmentFlag.AlignRight)
                field.setAccessibleName(tr(f"{'Opening' if column == 0 else 'Force'} of point {index}"))
                grid.addWidget(field, index, column)
        return grid

    def _connect(self) -> None:
        self.fields.wished.connect(self._wish_car)
        self.side_fields.wished.connect(self._wish_side)
        self.tool_fields.wished.connect(self._wish_number)
        self.tool_fields.taken.connect(lambda tool: self.tool_wished.emit(tool, f"Took the {tool.name}"))
        self.use.clicked.connect(self._wish_curve)

    def show_form(self, car: Car, tool: Tool, units: Units, moves: Sequence[Move] = ()) -> None:
        """Show a car and a tool; what the fields say is not taken for a wish meanwhile."""
        self._car, self._tool, self._units = car, tool, units
        self.fields.show_car(car, units)
        self.side_fields.show_car(car, units, moves)
        self.tool_fields.show_tool(tool, units)
        self._heads[0].setText(f"opening, {length(0.0, units)[1]}")
        self._heads[1].setText(f"force, {force(0.0, units)[1]}")
        for pair, texts in zip(self.rows, as_text(tool, units), strict=False):
            for field, words in zip(pair, texts, strict=True):
                if not field.hasFocus():
                    field.setText(words)

    def _wish_car(self, name: str, value: object) -> None:
        try:
            car = changed(self._car, name, value)
            side_fields.check_fit(car, name, self._units)
        except PlanError as problem:
            self.trouble.emit(side_fields.trouble_words(problem, self._units))
            self.fields.show_car(self._car, self._units)
            return
        self.trouble.emit("")
        self.car_wished.emit(car, change_words(name))

    def _wish_side(self, name: str, value: object) -> None:
        try:
            car = side_fields.changed(self._car, name, value, self._units)
        except PlanError as problem:
            self.side_fields.show_trouble(name, side_fields.trouble_words(problem, self._units))
            return
        self.side_fields.show_trouble(name, "")
        if car != self._car:
            self.car_wished.emit(car, side_fields.change_words(name))

    def _wish_number(self, name: str, value: float) -> None:
        tool = msgspec.structs.replace(self._tool, **{name: value})
        self.tool_wished.emit(tool, f"Changed the tool's {TOOL_WORDS[name].lower()}")

    def _wish_curve(self) -> None:
        rows = [(opening.text(), push.text()) for opening, push in self.rows]
        try:
            tool = from_text(self._tool, rows, self._units)
        except CurveError as problem:
            self.trouble.emit(str(problem))
            return
        self.trouble.emit("")
        self.tool_wished.emit(tool, "Changed the tool's curve")


def _column() -> tuple[QWidget, QVBoxLayout]:
    inside = QWidget()
    inside.setObjectName("column")
    column = QVBoxLayout(inside)
    column.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
    return inside, column
