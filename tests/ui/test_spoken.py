"""The window in another language: no word that is translated is left in English on any control."""

import json

import pytest

pytest.importorskip("PySide6")

from PySide6.QtWidgets import QAbstractButton, QLabel

from tests.ui.windows import at_work
from ui.app import App, prepare_application
from ui.panels.plan import MoveCard
from ui.state import tongue
from ui.state.cards import Card
from ui.state.phrases import Phrases


@pytest.fixture(scope="module")
def qapp():
    return prepare_application()


@pytest.fixture
def german(qapp, qtbot, tmp_path):
    """Return the program at work in German; no stage is made."""
    (tmp_path / "settings.json").write_text(json.dumps({"language": "de", "caution_read": True}))
    with at_work(App(folder=tmp_path), qtbot, size=(1024, 700)) as made:
        yield made
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


def left_in_english(window):
    """Return every text of the window that has a German one, or is a sentence of the program's without it."""
    phrases = Phrases(tongue.catalogue("de"))
    return [text for text in shown(window) if text and phrases.tell(text.replace("&", "")).text != text]


@pytest.mark.parametrize("step", [3, 5])
def test_a_kept_push_is_told_in_german_in_every_panel(german, qtbot, step):
    """The edge push of a lesson, then its contrast behind the bend: sentence, cards, seats, ladder."""
    german.acting.act("lesson_01-first-bite")
    for _ in range(step):
        german.acting.act("lesson_on")
    qtbot.waitUntil(lambda: german.session.model and not german.session.queue.busy, timeout=60_000)
    german.acting.act("end")
    german.showing.show_dirty()
    assert left_in_english(german.window) == []


def test_a_card_s_outcome_is_told_before_it_is_cut(german):
    """Half an English sentence is no template: what is too long for a card is cut in German."""
    sentence = (
        "The outer skin came away over 244 mm; the latch carried a third of what it can hold at most; "
        "clearance unchanged. Then it came off."
    )
    card = next(iter(german.window.plan.findChildren(MoveCard)))
    card.show_card(Card("Spread at the latch edge", "5 mm deep", sentence, "", selected=False), 60)
    assert "Die Außenhaut löste sich über 244\u00a0mm." in [part.text() for part in card.findChildren(QLabel)]


def test_a_refusal_is_told_in_german(german):
    german.window.notice.say("It cannot be done so: moves[0].tool.tip_width_m is 0.9 m; use 0.005 to 0.15 m.")
    words = german.window.notice.words.text()
    assert words.startswith(
        "So geht es nicht: moves[0].tool.tip_width_m ist 0.9 m; 0.005 bis 0.15 m verwenden."
    )


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
