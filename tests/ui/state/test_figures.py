"""Lists of figures: every combination once, faults named, and what has changed since the last time."""

import msgspec
import pytest

from sim.problems import PlanError
from tests.ui.state.lesson_tools import result
from ui.scene.cameras import SHOTS
from ui.state.figure_list import Drawn, figures, loads, verdict_changes, verdict_of
from ui.state.figure_words import CAMERA_WORDS, caption
from ui.state.lesson_file import CAMERAS

LIST = """schema_version = 1
styles = ["colour", "grey"]
[[states]]
name = "a"
plan = "first-bite-lip"
[[states]]
name = "b"
plan = "first-bite-bend"
[[views]]
name = "latch"
camera = "latch"
[[sizes]]
name = "slide"
[[sizes]]
name = "sheet"
width_px = 800
"""


def test_every_state_is_drawn_from_every_view_in_every_size_and_style():
    names = [figure.name for figure in figures(loads(LIST))]
    assert len(names) == len(set(names)) == 2 * 1 * 2 * 2
    assert names[0] == "a--latch--slide--colour"


@pytest.mark.parametrize(
    ("old", "new", "field"),
    [
        ("schema_version = 1", "schema_version = 2", "schema_version"),
        ('camera = "latch"', 'camera = "moon"', "views[0].camera"),
        ('name = "b"', 'name = "a"', "states[1].name"),
        ("width_px = 800", "width_px = 8", "sizes[1].width_px"),
        ('"grey"', '"sepia"', "styles[1]"),
        ("width_px = 800", "wide_px = 800", "sizes[1].wide_px"),
    ],
)
def test_a_fault_is_named_with_its_field(old, new, field):
    with pytest.raises(PlanError) as caught:
        loads(LIST.replace(old, new))
    assert caught.value.field == field


def test_every_camera_that_can_be_asked_for_is_there_and_has_words():
    assert set(CAMERAS) <= set(SHOTS)
    assert set(CAMERA_WORDS) == set(CAMERAS)


def drawn(**changes):
    plain = Drawn("a--latch", "lip", "0" * 64, "2", "seam parting; spent", "c", "t", "1" * 64)
    return msgspec.structs.replace(plain, **changes)


def test_changed_verdicts_and_pictures_are_told():
    before = {"a--latch": drawn(), "b--latch": drawn(name="b--latch")}
    now = {"a--latch": drawn(verdict="latch free; gained", sha256="2" * 64)}
    assert verdict_changes(before, now) == (
        "VERDICT CHANGED: lip: seam parting; spent, now latch free; gained",
        "another picture: a--latch",
        "no longer in the list: b--latch",
    )
    assert verdict_changes(before, before) == ()


def test_a_caption_says_what_it_is_not_and_of_which_plan_and_version():
    told = result()
    words = caption(told.plan, "", told.move().sentence, told.kept.plan_sha256)
    assert "Teaching model - not a real car - local procedure first." in words
    assert told.kept.plan_sha256[:12] in words and "model version" in words
    assert verdict_of(told.kept, 1) == "seam parting; spent"
