"""Tips in the pocket of a pillar cut twice: as wide as the pillar they fold it at its foot.

On the pillar's usual lattice (and 30 mm); on 20 mm the teeth of the cut give first (DEVELOPERS.md).

Sources
-------
A second cut just under the first makes a pocket for a spreader's tips, which push the pillar down and out:
common practice, no source.
Moment of a force about a point, statics; plastic moment and effective width [winter-1947] as in
`tests/sim/verification/test_soft_foot.py`, whose pillar is the same.
"""

from functools import lru_cache

import pytest

from tests.sim.trade.pillar_cut import SHAPE, SOFT, opened
from tests.sim.verification.test_soft_foot import moments

NARROW_M, WIDE_M = 0.05, 0.1  # the pillar is 79 mm wide there
OPENED_M = 0.02
opened = lru_cache(opened)


@pytest.fixture(scope="module", autouse=True)
def settled():
    for width in (NARROW_M, WIDE_M):
        made = opened(width, OPENED_M)
        assert made.failed == 0 and made.gap_ratio < 0.02


def test_wider_than_the_pillar_they_push_its_corners_and_fold_it_at_its_foot():
    wide = opened(WIDE_M, OPENED_M)
    assert wide.foot_share > 0.8
    assert wide.end_m[1] > OPENED_M and wide.end_m[1] > 5.0 * abs(wide.end_m[2])
    assert abs(wide.stub_m[2]) < 0.005


def test_narrower_they_stand_on_the_walls_between_its_corners_and_the_raw_ends_crumple():
    narrow = opened(NARROW_M, OPENED_M)
    assert narrow.foot_share < 0.05
    assert -narrow.end_m[2] > 0.5 * OPENED_M and abs(narrow.end_m[1]) < 0.25 * OPENED_M


def test_what_folds_it_is_the_moment_of_the_tips_line_about_its_foot():
    """30 % below the moment at which the buckled wall yields, for the line presses as well as it bends."""
    first, plastic = moments(SHAPE.foot_width_m, SHAPE.foot_depth_m, SOFT.pressed_m, SOFT.closing_m)
    wide, narrow = (opened(width, OPENED_M) for width in (WIDE_M, NARROW_M))
    assert 0.7 * first < (wide.force_n * wide.arm_m).max() < plastic
    assert (narrow.force_n * narrow.arm_m).max() < 0.25 * first
