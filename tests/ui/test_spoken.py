"""The window in another language: no word that is translated is left in English on any control."""

import json

import pytest

pytest.importorskip("PySide6")

from PySide6.QtWidgets import QAbstractButton, QLabel

from ui.app import App, prepare_application
from ui.state import tongue


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


@pytest.fixture
def german(qapp, qtbot, tmp_path):
    """Return the program at work in German; no stage is made."""
    (tmp_path / "settings.json").write_text(json.dumps({"language": "de", "caution_read": True}))
    made = App(folder=tmp_path)
    made.window.resize(1024, 700)
    made.window.show()
    made.filing.open_first(None)
    made.showing.show_dirty()
    qtbot.wait(20)
    yield made
    made.window.close()
    made.window.deleteLater()
    qtbot.wait(10)
    tongue.speak(tongue.ENGLISH)


def shown(window):
    """Return every word that controls and actions carry."""
    for child in [*window.findChildren(QLabel), *window.findChildren(QAbstractButton)]:
        yield from (child.text(), child.toolTip(), child.accessibleName())
    for action in window.actions():
        yield action.text()
    for action in window.menuBar().actions():
        yield action.text().replace("&", "")


def test_no_control_is_left_in_english(german):
    german.acting.act("form")
    german.acting.act("lesson_01-first-bite")
    german.acting.act("ask")
    held = {source for source, said in tongue.translations("de").items() if source != said}
    assert [text for text in shown(german.window) if text in held] == []
    assert german.window.actions_by_name["quit"].text() == "Beenden"


def test_the_limits_line_stands_in_both_languages(german):
    words = [text for text in shown(german.window) if "kein echtes Auto" in text]
    assert any("Teaching model - not a real car - local procedure first" in text for text in words)


def test_the_language_is_remembered_for_the_next_start(german):
    german.acting.act("language")
    assert "English" in german.window.notice.words.text()
    kept = json.loads((german.filing.folder / "settings.json").read_text())
    assert kept["language"] == "en"


def test_german_words_fit_the_columns(german, qtbot):
    """At the narrow width of an old projector the plan's column is no wider than its room."""
    german.acting.act("drawer_plan")
    german.showing.show_dirty()
    qtbot.wait(20)
    plan = german.window.plan
    assert plan.isVisible()
    assert plan.minimumSizeHint().width() <= german.window.left_pages.width()
