"""A twin of a whole side by real keys and mouse: one thing changed, both solved, shown and told apart.

Sources
-------
None: it compares the program with itself.
"""

from __future__ import annotations

import shutil

import msgspec
import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from sim.plan import Car, EdgePoint, Plan, Spread
from tests.ui.walking import at_the_window
from ui.app import App, prepare_application

pytestmark = [pytest.mark.gl, pytest.mark.slow, pytest.mark.timeout(400)]

SIDE = Plan(
    title="Rear edge",
    car=Car(extent="side", lattice_spacing_m=0.08),
    moves=(Spread(door=EdgePoint(panel="rear", depth_m=0.05, along_m=0.34), opening_m=0.0025),),
)


@pytest.fixture(scope="session")
def qapp():
    return prepare_application()


@pytest.fixture
def hand(qapp, qtbot, tmp_path):
    """Return a hand at a window with the caution read."""
    with at_the_window(App(folder=tmp_path / "settings"), qtbot) as found:
        found.push(found.app.window.caution.done)
        yield found


def changes_one_thing(hand):
    """Ctrl+D brings the twin's form, the keys on its first choice; another one is taken by mouse and key."""
    app = hand.app
    hand.press("ctrl+d")
    form = app.twins.form
    assert app.window.left_pages.currentWidget() is form
    assert form.side.rows["rear_latch"].isVisibleTo(form)  # it reaches down to what a side alone has
    assert not form.side.rows["extent"].isVisibleTo(form)
    seam = form.fields.boxes["seam"]
    assert seam.hasFocus()
    hand.look("form")
    hand.click(seam)
    hand.do("key", "Down")
    hand.do("key", "Return")
    hand.qtbot.waitUntil(lambda: app.session.beside.plan is not None, timeout=20_000)


def test_a_twin_of_a_whole_side_answers_while_it_is_solved_and_is_told_apart(hand):
    app, session = hand.app, hand.app.session
    session.document.open(SIDE, None)
    hand.qtbot.waitUntil(lambda: session.is_set_out(SIDE.car), timeout=120_000)
    hand.settle()
    changes_one_thing(hand)
    twin = session.beside.plan
    assert twin == SIDE.with_car(msgspec.structs.replace(SIDE.car, seam="welded"))
    # keys and mouse are obeyed while the solver works
    assert session.queue.busy
    hand.click(app.side.view)
    hand.do("key", "o")
    hand.qtbot.waitUntil(lambda: not app.see.seeing.now.start_shape, timeout=5_000)
    assert session.queue.busy
    hand.look("solving")
    hand.qtbot.waitUntil(lambda: len(session.records(twin)) == 1, timeout=300_000)
    hand.settle()
    hand.press("End")
    hand.look("solved")
    left, right = session.records()[0], session.records(twin)[0]
    assert (session.beside.frame(0), session.beside.frame(1)) == (left.frames[-1], right.frames[-1])
    assert left.result.start_sha256 != right.result.start_sha256
    words = hand.read(app.acting.beside.page)
    assert "One thing differs" in words
    assert [(one.first, one.second) for one in app.acting.beside.page._shown.rows] == [("bonded", "welded")]
    assert app.window.stages.paired
