"""No word is cut: at twice the type, on the small screens of old projectors, in every language."""

import json

import pytest

pytest.importorskip("PySide6")

from PySide6.QtWidgets import QAbstractSpinBox, QLabel, QPushButton, QSizePolicy

from tests.ui.windows import closing
from ui.app import App, prepare_application
from ui.state import tongue


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


def cut(window):
    """Return the words of labels, buttons and boxes with less room than they need [px needed, there]."""
    found = []
    for part in [*window.findChildren(QLabel), *window.findChildren(QPushButton)]:
        if not part.isVisible() or not part.text():
            continue
        if isinstance(part, QLabel):
            if part.wordWrap() or part.sizePolicy().horizontalPolicy() is QSizePolicy.Policy.Ignored:
                continue
            need = max(part.fontMetrics().horizontalAdvance(line) for line in part.text().splitlines())
            room = part.contentsRect().width()
        else:
            need, room = part.fontMetrics().horizontalAdvance(part.text()), part.width()
        # the words must also lie inside every widget that holds them
        right = part.mapTo(window, part.rect().bottomRight()).x()
        holder = part.parentWidget()
        while holder is not None and holder is not window:
            right = min(right, holder.mapTo(window, holder.rect().bottomRight()).x())
            holder = holder.parentWidget()
        room = min(room, right - part.mapTo(window, part.rect().topLeft()).x() + 1)
        if need > room + 1:
            found.append((part.text(), need, room))
    for box in window.findChildren(QAbstractSpinBox):
        line = box.lineEdit()
        need, room = line.fontMetrics().horizontalAdvance(line.text()), line.contentsRect().width() - 4
        if box.isVisible() and need > room:
            found.append((line.text(), need, room))
    return found


@pytest.fixture
def english_again():
    yield
    tongue.speak(tongue.ENGLISH)


@pytest.mark.usefixtures("english_again")
@pytest.mark.parametrize("language", list(tongue.TONGUES))
@pytest.mark.parametrize(("width", "height", "ratio"), [(1024, 768, 1.0), (1280, 720, 1.0), (1024, 768, 2.0),
                                                        (1280, 720, 2.0)])  # fmt: skip
def test_no_word_is_cut(qapp, qtbot, tmp_path, language, width, height, ratio):
    kept = {"language": language, "caution_read": True, "text_ratio": ratio}
    (tmp_path / "settings.json").write_text(json.dumps(kept))
    with closing(App(folder=tmp_path), qtbot) as app:
        app.window.resize(width, height)
        app.window.show()
        app.filing.open_first(None)
        found = {}
        for page in ("reading", "plan", "lesson", "form", "form_side"):
            if page == "plan":
                app.acting.act("drawer_plan")
            elif page == "lesson":
                app.acting.act("lesson_01-first-bite")
            elif page.startswith("form"):
                app.acting.act(page)
            qtbot.waitUntil(lambda: app.session.model and not app.session.queue.busy, timeout=60_000)
            app.showing.show_dirty()
            for _ in range(20):  # the layout follows in events of its own, on a busy machine later
                qtbot.wait(30)
                if not cut(app.window):
                    break
            assert app.window.width() == width, "the window asks for more room than the screen has"
            if words := cut(app.window):
                found[page] = words
        assert found == {}
