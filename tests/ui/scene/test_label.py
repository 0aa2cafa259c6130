"""Words in the scene: one at the edge of the picture is never cut."""

import numpy as np
import pytest

from ui.scene.colours import THEMES, rgb
from ui.scene.label import SIZE_PX, Label

pytestmark = pytest.mark.gl
LIGHT = THEMES["light"]


@pytest.mark.parametrize(("share", "kept"), [(0.5, True), (0.999, True), (1.4, True), (4.0, False)])
@pytest.mark.parametrize("on_top", [True, False])
def test_a_word_at_the_edge_is_moved_into_the_picture_and_one_far_outside_stays_away(
    stage, share, kept, on_top
):
    renderer = stage.cast.renderer
    label = Label(renderer, on_top=on_top, kept_in=True)
    wide, high = renderer.GetSize()
    renderer.SetDisplayPoint(share * wide, 0.5 * high, 0.9)
    renderer.DisplayToWorld()
    found = np.array(renderer.GetWorldPoint())
    label.say("outward", found[:3] / found[3], rgb(LIGHT.text), LIGHT)
    renderer.GetRenderWindow().Render()
    actor = label._above.GetPositionCoordinate().GetValue() if on_top else label._inside.GetPosition()
    renderer.SetWorldPoint(*actor, 1.0)
    renderer.WorldToDisplay()
    x = renderer.GetDisplayPoint()[0]
    half = 0.5 * 0.5 * SIZE_PX * len("outward")  # letters are at least half as wide as the type is high
    assert (x + half <= wide) is kept
    assert share > 0.9 or x == pytest.approx(share * wide, abs=1.0)
    label.remove()
