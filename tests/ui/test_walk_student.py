"""A student's first five minutes with nobody beside them: mouse alone, on a machine that never ran it.

Nothing is told beforehand: each next thing to do stands somewhere on the window when it is due.

Sources
-------
Where the push goes on the lip and where it goes at another edge: common practice, no source. The verdict is
the run's own.
"""

from __future__ import annotations

import shutil

import numpy as np
import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from sim.plan import BodyPoint, EdgePoint
from tests.ui.walking import at_the_window
from ui.app import App, prepare_application
from ui.state.asking import Standing
from ui.state.questions import FIRST, WAY, WHY

pytestmark = [pytest.mark.gl, pytest.mark.slow, pytest.mark.timeout(300)]


@pytest.fixture(scope="session")
def qapp():
    return prepare_application()


@pytest.fixture
def hand(qapp, qtbot, tmp_path):
    """Return a hand at a window that is started for the first time."""
    with at_the_window(App(folder=tmp_path / "settings"), qtbot) as found:
        yield found


def reads_the_caution(hand):
    window = hand.app.window
    assert "A teaching model" in hand.read()
    hand.push(window.caution.done)
    hand.look("first")
    assert "First look" in hand.read(window.notice)


def hem_point(model, height_m, inward_m):
    """Return a point on the skin, inward of the latch edge's lip [m]."""
    x = model.mesh.section_point(model.mesh.edge_station("latch_edge", height_m), 0.0)[1][0]
    return model.mesh.shape.skin_point(np.array([x - inward_m]), np.array([height_m]))[0]


def places_both_tips(hand, height_m):
    """The readout names the hem under the pointer; the hint says what a click does next."""
    app, session, view = hand.app, hand.app.session, hand.app.side.view
    assert "set tip one" in hand.read(app.window.readout)
    place = hand.on_stage(hem_point(session.model, height_m, 0.006))
    hand.point(view, place)
    assert "Hem: hem lip" in hand.read(app.window.readout)
    hand.click(view, place)
    hand.settle()
    assert isinstance(session.move.door, EdgePoint)
    assert session.move.door.along_m == pytest.approx(height_m, abs=0.006)  # a pixel is 1.5 mm on the door
    hand.look("tip-one")
    assert "tip two" in hand.read(app.window.readout)
    pillar = session.model.body.seat_point("pillar_outside", height_m) + np.array([0.015, 0.0, 0.0])
    hand.click(view, hand.on_stage(pillar))
    hand.settle()
    assert isinstance(session.move.against, BodyPoint)
    assert session.move.against.seat == "pillar_outside"
    hand.look("tip-two")


def foretells(hand, first):
    """The button stands where the reader looks; nothing can be locked before each question has its answer."""
    app, asking = hand.app, hand.app.session.asking
    hand.push(hand.button("Ask before the push"))
    assert asking.standing is Standing.OPEN
    card = app.acting.teaching.card
    hand.look("card")
    for question, key in ((FIRST, first), (WAY, "stays"), (WHY, "skin")):
        assert not card.lock.isEnabled()
        row = card._rows[question, key]
        hand.scroll_to(row)
        hand.push(row)
    hand.push(hand.button("Lock"))
    assert asking.standing is Standing.LOCKED
    hand.look("locked")


def stops_where_something_gives(hand):
    """From the list under the stage: no need to run the push to its end."""
    scrub = hand.app.window.scrub
    hand.push(scrub.halt)
    hand.look("stops")
    hand.pick_from(scrub._stops, "The seam parts: the skin comes off its edge")
    assert hand.app.session.move.stop_at == ("seam parting",)


def runs_and_compares(hand):
    app, session = hand.app, hand.app.session
    hand.push(hand.button("Run the push"))
    hand.qtbot.waitUntil(lambda: session.asking.now.ran_at is not None, timeout=120_000)
    hand.settle()
    hand.look("ran")
    hand.push(hand.button("Compare"))
    words = hand.read(app.acting.teaching.card)
    hand.look("compared")
    assert "Foretold" in words and "The seam parts" in words
    assert "as foretold" in words.lower()
    hand.push(hand.button("Put away"))


def reads_the_sentence(hand):
    """One sentence, and under it why: what is nearest to giving."""
    app = hand.app
    hand.look("sentence")
    said = hand.app.session.result_here.sentence
    assert app.window.reading.sentence.text() == said
    words = hand.read(app.window.reading)
    assert "Nearest to giving" in words
    return said


def tries_another_seat(hand, height_m):
    app, session, view = hand.app, hand.app.session, hand.app.side.view
    hand.click(view, hand.on_stage(hem_point(session.model, height_m, 0.006)))
    hand.settle()
    hand.look("other-seat")
    assert session.move.door.along_m == pytest.approx(height_m, abs=0.006)
    # tip two stood beside tip one: it comes along, for no tool reaches up the door by that much
    assert session.move.against.along_m == pytest.approx(session.move.door.along_m, abs=0.006)
    assert session.result_here is None
    # this time a few millimetres by hand: the button opens the tips as long as it is held
    hand.hold_until(app.window.scrub.open, lambda: len(session.timeline) > 2)
    assert 0.0 < session.timeline.frame.opening_m < 0.03
    hand.look("other-ran")
    return app.window.reading.sentence.text()


def takes_it_back(hand, said, height_m):
    """Undo by its menu: the first seat stands again with what it came to, and nothing is worked out anew."""
    app, session = hand.app, hand.app.session
    solves = []
    session.asked.connect(solves.append)
    for _ in range(4):
        if abs(session.move.door.along_m - height_m) < 0.006:
            break
        hand.menu("Plan", "Undo")
    assert session.move.door.along_m == pytest.approx(height_m, abs=0.006)
    hand.look("undone")
    assert app.window.reading.sentence.text() == said


def test_first_start_to_a_second_try(hand):
    reads_the_caution(hand)
    places_both_tips(hand, 0.36)
    stops_where_something_gives(hand)
    foretells(hand, "seam parting")
    runs_and_compares(hand)
    said = reads_the_sentence(hand)
    other = tries_another_seat(hand, 0.50)
    assert other != said
    takes_it_back(hand, said, 0.36)
