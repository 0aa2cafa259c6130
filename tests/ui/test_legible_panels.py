"""Words of the panels beside the first screen and of the small windows, measured like those of the first.

Source
------
[wcag-2.2] 1.4.3, as in `test_legible`; what cannot be used now is left out, as it is there.
"""

import json

import pytest

pytest.importorskip("PySide6")

from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from tests.ui.test_legible import TEXT, contrast_of, part_of, shot_of, words_of
from tests.ui.windows import at_work
from ui.app import App, prepare_application

THEMES = {
    "light": {},
    "dark": {"theme": "dark"},
    "projector": {"projector": True},
}
SHEETS = (
    "find",
    "keys",
    "picture",
    "describe",
    "card",
    "questions",
    "sheets",
    "words",
    "rules",
    "drills",
    "notes",
)


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


@pytest.fixture(params=list(THEMES))
def app(request, qapp, qtbot, tmp_path):
    """Return the program at work with its ready plan in a theme; no stage is made."""
    (tmp_path / "settings.json").write_text(json.dumps({"caution_read": True} | THEMES[request.param]))
    with at_work(App(folder=tmp_path), qtbot, size=(1920, 1080), solved=True) as made:
        yield made


def faint_and_small(window, least_px):
    """Return the words that stand out too little from their ground, and those that are too small."""
    shot, faint, small = shot_of(window), {}, {}
    words = words_of(window)
    fields = [f for kind in (QLineEdit, QComboBox) for f in window.findChildren(kind) if f.isVisible()]
    words += [
        f for f in fields if f.isEnabled() and (f.text() if isinstance(f, QLineEdit) else f.currentText())
    ]
    for widget in words:
        part = part_of(shot, window, widget)
        told = widget.currentText() if isinstance(widget, QComboBox) else widget.text()
        if widget.visibleRegion().boundingRect().height() < widget.height() or not told.strip():
            continue  # scrolled out of what is seen, or an empty field
        found = contrast_of(part)
        if found < TEXT:
            faint[told] = round(float(found), 2)
        if widget.fontInfo().pixelSize() < least_px:
            small[told] = widget.fontInfo().pixelSize()
    return len(words), faint, small


def least_px(app):
    return 24 if app.session.view.options.projector else 14


def test_words_of_every_page_of_the_window_are_read(app, qtbot):
    found = {}
    for page in ("form", "form_side", "lesson", "ask", "locked", "branches"):
        if page.startswith("form"):
            app.acting.act(page)
        elif page == "lesson":
            app.acting.act("lesson_01-first-bite")
            qtbot.waitUntil(lambda: not app.session.queue.busy, timeout=60_000)
            app.acting.lessons.walk.go(2)
        elif page == "ask":
            app.acting.act("ask")
        elif page == "locked":
            asking = app.session.asking
            for question in asking.questions:
                asking.choose(question.key, question.choices[0].key)
            app.acting.act("lock")
        else:
            app.session.asking.end()
            app.acting.act("branches")
        qtbot.waitUntil(lambda: not app.session.queue.busy, timeout=60_000)
        app.showing.show_dirty()
        qtbot.wait(40)
        count, faint, small = faint_and_small(app.window, least_px(app))
        assert count > 15
        if faint or small:
            found[page] = faint, small
    assert found == {}


def test_words_of_every_small_window_are_read(app, qtbot):
    app.acting.act("lesson_01-first-bite")
    qtbot.waitUntil(lambda: not app.session.queue.busy, timeout=60_000)
    found, seen = {}, 0
    for name in SHEETS:
        app.acting.act(name)
        qtbot.wait(30)
        opened = [w for w in app.window.findChildren(QWidget) if w.isWindow() and w.isVisible()]
        assert opened, name
        for sheet in opened:
            count, faint, small = faint_and_small(sheet, least_px(app))
            seen += count
            if faint or small:
                found[name] = faint, small
            sheet.close()
    assert found == {}
    assert seen > 100
