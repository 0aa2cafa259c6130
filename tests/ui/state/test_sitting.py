"""A sitting written and read again is the same sitting; a file that is none says so in one sentence."""

from datetime import UTC, datetime

import msgspec
import pytest

from sim.plan import Plan
from ui.state.asking import Standing
from ui.state.marks import Marks, Stroke
from ui.state.questions import Choice, Question
from ui.state.seeing import CutPlane, Seeing
from ui.state.session import Session
from ui.state.sitting import (
    KeptBeside,
    KeptCamera,
    KeptLesson,
    KeptView,
    SittingError,
    decoded,
    encoded,
    picture_of,
    restore_asking,
    restore_document,
    seeing_of,
    sitting_of,
    tried_again,
)
from ui.state.verdict import Verdict

AT = datetime(2026, 5, 4, 9, 30, tzinfo=UTC)


def worked() -> Session:
    """Return a session with two branches, a locked prediction and two locks."""
    session = Session(Plan(title="first"))
    for title in ("second", "third"):
        session.document.commit(Plan(title=title), f"Made {title}")
    session.document.undo()
    session.document.commit(Plan(title="other"), "Made another branch")
    session.locks.turn("map")
    question = Question("first", "What gives first?", (Choice("a", "this"), Choice("b", "that")))
    session.asking.ask(session.plan, 0, (question,))
    session.asking.choose("first", "b")
    session.asking.count("first", "b", 12)
    assert session.asking.lock(AT)
    session.asking.run(AT)
    session.asking.show(Verdict(True, ("a",), "out", 0.01, 900.0, 0.002), AT)
    return session


def test_a_sitting_read_again_is_the_same():
    before = sitting_of(
        worked(), KeptLesson("/lessons/one.toml", 2), KeptCamera((1, 2, 3), (0, 0, 0), (0, 0, 1), 27.0)
    )
    after = decoded(encoded(before, AT), "one.json")
    assert after.written_at == AT
    assert msgspec.structs.replace(after, written_at=None) == before
    assert tried_again(after).tries == 1


def test_what_else_stood_open_is_held_and_a_sitting_without_it_is_read_as_before():
    seeing = Seeing("measure", CutPlane("across", 0.4), start_shape=False)
    marks = Marks(strokes=(Stroke("pen", ((0.0, 0.0, 0.0), (0.1, 0.0, 0.2))),))
    beside = KeptBeside(Plan(title="contrast"), ("skin_thickness_m", 0.0009), 3, 1)
    view = KeptView(1, picture_of(seeing, marks), beside)
    before = sitting_of(worked(), view=view)
    after = decoded(encoded(before, AT), "one.json")
    assert after.view == view
    assert seeing_of(after.view.picture) == seeing
    gone = msgspec.structs.replace(after.view.picture, tool="no longer there", alone="nor this")
    assert seeing_of(gone) == Seeing(None, seeing.cut, start_shape=False)
    older = {key: value for key, value in msgspec.json.decode(encoded(before, AT)).items() if key != "view"}
    assert decoded(msgspec.json.encode(older), "one.json").view is None


def test_a_session_takes_up_a_sitting_where_it_was_left():
    before = worked()
    sitting = decoded(encoded(sitting_of(before), AT), "one.json")
    after = Session()
    restore_document(after, sitting)
    restore_asking(after, sitting)
    old, new = before.document.history, after.document.history
    assert new.steps == old.steps
    assert (new.position, new.path, new.towards) == (old.position, old.path, old.towards)
    assert after.document.dirty == before.document.dirty
    assert after.locks.shut == {"map"}
    assert after.asking.standing is Standing.SHOWN
    assert after.asking.now == before.asking.now
    assert after.asking.questions == before.asking.questions
    # and the tree can still be walked
    after.document.undo()
    assert after.plan.title == "second"


@pytest.mark.parametrize("cut", [0, 1, 40, -1])
def test_a_file_cut_short_is_no_sitting(cut):
    data = encoded(sitting_of(worked()), AT)
    with pytest.raises(SittingError, match=r"one\.json is damaged"):
        decoded(data[:cut], "one.json")


def test_steps_that_do_not_hang_together_are_refused():
    sitting = sitting_of(worked())
    wrong = msgspec.structs.replace(sitting, position=99)
    with pytest.raises(SittingError, match="damaged"):
        decoded(encoded(wrong, AT), "one.json")
    older = msgspec.structs.replace(sitting, form=99)
    with pytest.raises(SittingError, match="another version"):
        decoded(encoded(older, AT), "one.json")
