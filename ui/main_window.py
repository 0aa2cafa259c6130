"""The window: the stage in the middle, the plan and the reading beside it, and every action with its key."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import (
    QAction,
    QActionGroup,
    QCloseEvent,
    QDragEnterEvent,
    QDropEvent,
    QKeySequence,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMainWindow,
    QMenu,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from ui.panels.car_form import CarForm
from ui.panels.caution import CautionPage
from ui.panels.legend import Scale
from ui.panels.look import GRID, Look
from ui.panels.lower import Lower
from ui.panels.notice import NoticeBar
from ui.panels.pieces import FittedLabel, button, dress, fill, label, line
from ui.panels.plan import PlanPanel
from ui.panels.reading import ReadingPanel
from ui.panels.ready_menus import lessons_menu, plans_menu
from ui.panels.room import beside_stage, first_size
from ui.panels.scrub import ScrubBar
from ui.panels.section import SectionPanel
from ui.panels.see_row import SeeRow
from ui.panels.stages import Stages
from ui.panels.strip import LayerStrip, Readout
from ui.state.actions import (
    CHECKED,
    LAYER_KEYS,
    MENUS,
    SAME_KEYS,
    SEPARATOR,
    SHUT_PREFIX,
    STEER,
)
from ui.state.tongue import caution, tr
from ui.state.view_options import ViewOptions

FORM_WIDER = 1.25
"""How much wider the left column is while the car and the tool are changed in it."""
READING_ALONE = 1.45
"""How much wider the reading is where the plan does not stand beside the stage too."""
PAIR_PX = 1600
"""Below this width [px at scale 1] the plan gives its room to the second of two views."""
SECTION_SHARE = 6 / 11
"""How much of the left column's height is the section's, where its drawing has room there."""
STEPS_LISTED = 30
WRAPPED_FROM = 1.75
"""From this scale of type on the line on the limits takes two lines rather than be cut."""


class MainWindow(QMainWindow):
    """All panels in their places; knows no document and no scene.

    Attributes
    ----------
    acted : emitted with the name of an action
    layer_key : emitted with the number of a layer's key, 1 to 9
    recent_wished, step_wished : emitted with the index of a recent file, of a step of the history
    dropped : emitted with the path of a file dropped on the window
    resized, closing : emitted with no more than that
    """

    acted = Signal(str)
    layer_key = Signal(int)
    recent_wished = Signal(int)
    step_wished = Signal(int)
    dropped = Signal(str)
    resized = Signal()
    closing = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setWindowTitle("Hemline")
        self.setMinimumSize(QSize(800, 600))
        self.resize(first_size(self.screen().availableSize()))
        self.setAcceptDrops(True)
        self.actions_by_name: dict[str, QAction] = {}
        self.plan, self.section, self.form = PlanPanel(), SectionPanel(), CarForm()
        self.reading, self.scrub, self.notice = ReadingPanel(), ScrubBar(), NoticeBar()
        self.layers, self.readout, self.caution = LayerStrip(), Readout(), CautionPage()
        self.readout.offer_wished.connect(lambda: self.acted.emit("weigh"))
        self.see = SeeRow()
        self.look = Look()
        self._stage: QWidget | None = None
        self._build()
        self._menus()
        self._keys()

    # --- building ----------------------------------------------------------------------------------------

    def _build(self) -> None:
        self.pages = QStackedWidget()
        self.pages.addWidget(self._work_page())
        self.pages.addWidget(self.caution)
        self._footer = self._make_footer()
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self.notice, self.pages, line(), self._footer):
            column.addWidget(part)
        column.setStretchFactor(self.pages, 1)
        whole = QWidget()
        whole.setObjectName("page")
        whole.setLayout(column)
        self.setCentralWidget(whole)

    def _work_page(self) -> QWidget:
        self._left, self._right = self._left_column(), QWidget()
        right = QHBoxLayout(self._right)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(0)
        right.addWidget(line(upright=True))
        self.right_pages = QStackedWidget()
        self.right_pages.addWidget(self.reading)
        right.addWidget(self.right_pages, 1)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self._left)
        row.addLayout(self._middle(), 1)
        row.addWidget(self._right)
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(row, 1)
        column.addWidget(line())
        column.addWidget(self.scrub)
        return page

    def _left_column(self) -> QWidget:
        left = QWidget()
        self.left_pages = QStackedWidget()
        plan = QWidget()
        plan.setObjectName("column")
        column = QVBoxLayout(plan)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.plan, 5)  # SECTION_SHARE
        column.addWidget(self.section, 6)
        self.left_pages.addWidget(plan)
        self.left_pages.addWidget(self.form)
        self.left_pages.currentChanged.connect(lambda _: self.resized.emit())
        row = QHBoxLayout(left)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.left_pages, 1)
        row.addWidget(line(upright=True))
        return left

    def _middle(self) -> QVBoxLayout:
        self._waiting = label("Setting out the door \u2026", "quiet")
        self._waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._lower = Lower()
        self._holder = QVBoxLayout()
        self._holder.addWidget(self._waiting)
        middle = self._middle_column = QVBoxLayout()
        middle.setSpacing(0)
        middle.addWidget(self.layers)
        middle.addWidget(self.see)
        middle.addLayout(self._holder, 1)
        middle.addWidget(self.readout)
        middle.addWidget(self._lower)
        return middle

    def _make_footer(self) -> QWidget:
        footer = QWidget()
        footer.setObjectName("footer")
        row = QHBoxLayout(footer)
        row.setContentsMargins(2 * GRID, 2, 2 * GRID, 2)
        row.setSpacing(2 * GRID)
        self._drawers = {
            name: button(words, "bare") for name, words in (("plan", "Plan"), ("reading", "Reading"))
        }
        for name, made in self._drawers.items():
            made.clicked.connect(lambda _=False, name=name: self.acted.emit(f"drawer_{name}"))
        self._limits = limits = label(caution("line").replace("\n\n", "\n"), "")
        self.solver = FittedLabel()  # the line on the limits is never cut: this takes the room that is left
        self.solver.setObjectName("quiet")
        self.solver.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(self._drawers["plan"])
        row.addWidget(limits)
        row.addWidget(self.solver, 1)
        row.addWidget(self._drawers["reading"])
        return footer

    def _menus(self) -> None:
        bar = self.menuBar()
        for title, table in MENUS:
            menu = bar.addMenu(f"&{tr(title)}")
            for name, words, keys in table:
                if name == SEPARATOR:
                    menu.addSeparator()
                    continue
                menu.addAction(self._action(name, words, keys))
            if title == "File":
                self.recent_menu = QMenu(tr("Recent plans"), self)
                menu.insertMenu(self.actions_by_name["save"], self.recent_menu)
            if title == "Teach":
                menu.insertMenu(self.actions_by_name["lesson_open"], lessons_menu(self, self._action))
            if title == "Plan":
                self.steps_menu = QMenu(tr("Back to a moment of the work"), self)
                self._steps = QActionGroup(self.steps_menu)
                menu.insertMenu(self.actions_by_name["run"], self.steps_menu)
                menu.insertMenu(self.actions_by_name["edge"], plans_menu(self, self._action))
        for name, action in self.actions_by_name.items():
            action.setCheckable(name in CHECKED or name.startswith(SHUT_PREFIX))

    def _action(self, name: str, words: str, keys: str) -> QAction:
        action = QAction(tr(words), self)
        wanted = SAME_KEYS.get(name, (keys,) if keys else ())
        action.setShortcuts([QKeySequence(key) for key in wanted])
        action.triggered.connect(lambda: self.acted.emit(name))
        self.actions_by_name[name] = action
        self.addAction(action)
        return action

    def _keys(self) -> None:
        for name, words, key in STEER:
            self._action(name, words, key).setAutoRepeat(True)
        for number in range(1, LAYER_KEYS + 1):
            action = QAction(tr(f"Layer {number}"), self)
            action.setShortcut(QKeySequence(str(number)))
            action.triggered.connect(lambda _=False, number=number: self.layer_key.emit(number))
            self.addAction(action)

    # --- showing -----------------------------------------------------------------------------------------

    def set_prompt(self, prompt: QWidget) -> None:
        """Put what is asked or cautioned in its place below the stage."""
        self._middle_column.insertWidget(self._middle_column.indexOf(self.readout), prompt)

    def set_stage(self, stage: QWidget) -> None:
        """Put the 3D view in its place."""
        self._holder.removeWidget(self._waiting)
        self._waiting.hide()
        self._stages = Stages(stage)
        self._holder.addWidget(self._stages)
        self._stage = stage
        self.focus_stage()

    def show_no_stage(self, words: str) -> None:
        """Say in the stage's place why there is none."""
        self._waiting.setText(words)
        self._waiting.setWordWrap(True)

    @property
    def stages(self) -> Stages:
        """The 3D view and the one beside it, once there is one."""
        return self._stages

    def focus_stage(self) -> None:
        """Give the keys to the stage: a field or a list that was clicked would keep them."""
        if self._stage is not None and self.at_work:
            self._stage.setFocus()

    def set_look(self, look: Look) -> None:
        """Give every part the look."""
        self.look = look
        wraps = look.scale >= WRAPPED_FROM
        self._limits.setWordWrap(wraps)
        self._footer.layout().setStretch(1, 4 if wraps else 0)
        self.setStyleSheet(look.sheet())
        dress(self, look)

    def show_layout(self, options: ViewOptions) -> None:
        """Put columns, drawers and strips where this size and these options want them."""
        width = self.width()
        left, right = options.columns(width)
        scale = self.look.scale
        paired = self._stage is not None and self._stages.paired
        left = left and not (paired and width < PAIR_PX * scale)
        share = min(1.35, max(1.0, width / 1500))
        wide = 1.0 if self.left_pages.currentIndex() == 0 else FORM_WIDER
        # a drawer that stands alone beside the stage may grow with the type
        shown = right or self.right_pages.currentWidget() is not self.reading
        growth, most = (0.45, 0.34) if shown or paired else (0.9, 0.58)
        beside, part = (1.0, 0.34) if left or paired else (READING_ALONE, 0.42)
        room = width - self.layers.least_px()
        wished = (
            min(272 * wide * share * (1 + growth * (scale - 1)), most * width) * left,
            min(320 * beside * share * (1 + 0.45 * (scale - 1)), part * width) * shown,
        )
        given = list(beside_stage(room, *wished))
        if left and self.left_pages.currentWidget() is self.form:  # the stage's icons give way to fields
            given[0] = max(given[0], min(round(wished[0]), self.form.least_px()))
        for column, px in zip((self._left, self._right), given, strict=True):
            column.setFixedWidth(px)
            column.setVisible(px > 0)
        alone = options.stage_only
        for part in (self.layers, self.readout, self.scrub, self.solver):
            part.setVisible(not alone)
        self.menuBar().setVisible(not alone)
        if self._stage is not None:
            self._stages.set_alone(alone)
        self._lower.show_alone(alone)
        self.reading.set_room(self.height() / scale)
        self.section.set_room(SECTION_SHARE * self.left_pages.height())
        self.scrub.set_narrow(width < 1200 or (options.projector and width < 1800))
        drawers = not alone and not paired and not (left and right)
        for made in self._drawers.values():
            made.setVisible(drawers)

    def show_options(self, options: ViewOptions) -> None:
        """Show which of the options in the menus are on."""
        states = (
            options.stage_only,
            options.projector,
            options.theme == "dark",
            options.units.value == "imperial",
            options.calm,
            options.right_turns,
        )
        for name, on in zip(CHECKED, states, strict=True):
            self.actions_by_name[name].setChecked(on)

    def show_lower_third(self, words: str) -> None:
        """Show the sentence under the stage when it stands alone."""
        self._lower.show_words(words)

    def show_scale(self, scale: Scale) -> None:
        """Show what the colours mean, above the stage and for the class below it."""
        self.layers.legend.show_scale(scale)
        self._lower.show_scale(scale)

    def show_able(self, able: dict[str, bool]) -> None:
        """Enable the named actions, or not."""
        for name, can in able.items():
            self.actions_by_name[name].setEnabled(can)

    def show_page(self, name: str) -> None:
        """Show the work, or a text to read ("caution", "before-metal")."""
        if name == "work":
            self.pages.setCurrentIndex(0)
            self.focus_stage()
            return
        self.caution.show_text(name, "I have read this" if name == "caution" else "Back to the stage")
        self.pages.setCurrentIndex(1)

    @property
    def at_work(self) -> bool:
        """Whether the stage is shown, and not a text."""
        return self.pages.currentIndex() == 0

    def show_recent(self, names: tuple[str, ...]) -> None:
        """List the recent files."""
        fill(self.recent_menu, names, self.recent_wished.emit)

    def show_steps(self, labels: tuple[str, ...], position: int) -> None:
        """List the last steps of the history, the present one marked."""
        first = max(0, len(labels) - STEPS_LISTED)
        labels, position = labels[first:], position - first
        actions = fill(self.steps_menu, labels, lambda index: self.step_wished.emit(first + index))
        self._steps.deleteLater()
        group = self._steps = QActionGroup(self.steps_menu)
        for index, action in enumerate(actions):
            action.setCheckable(True)
            action.setChecked(index == position)
            group.addAction(action)

    # --- Qt ----------------------------------------------------------------------------------------------

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Tell that the size is another one."""
        super().resizeEvent(event)
        self.resized.emit()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take a file, nothing else."""
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Open the first file dropped."""
        for url in event.mimeData().urls():
            if url.isLocalFile():
                event.acceptProposedAction()
                self.dropped.emit(url.toLocalFile())
                return

    def closeEvent(self, event: QCloseEvent) -> None:
        """Let the view be closed before Qt deletes it."""
        self.closing.emit()
        if self._stage is not None:
            self._stages.close_views()
            self._stage = None
        super().closeEvent(event)
