"""Facts of the trade about rams, on the pillar alone: line, grip, spot, base.

Sources
-------
All of them common practice, no source: a ram set off square within its friction angle works and comes into
line as the part turns; past it it slips, and a seal left on makes it slip earlier; set nearer the middle it
has more to spare; a smooth head slips on a curved spot and holds on a flat one, which squeezing makes; a
pointed one holds on both and goes through thin sheet; a rocker's wall without a rib sinks. 20 degrees, 5
degrees, 10 mm and 25 kN are the estimates of the trade for these.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim import materials
from sim.crush import drawn_back
from sim.increment import Stepper
from sim.pillar import PillarBuild
from sim.plan import BaseSpot
from tests.sim.trade.ram_alone import Pillar

HIGH_M, LEANING_M = 0.6, 0.30  # where the ram is set; how far the crash pushed the pillar in above it


def degrees(rows, name="angle_rad"):
    return np.degrees([getattr(now, name) for _, now, _ in rows])


@pytest.fixture(scope="module")
def straight():
    return Pillar()


@pytest.fixture(scope="module")
def leaning():
    return Pillar().pushed_in(0.9, LEANING_M)


@pytest.fixture(scope="module")
def curved():
    return Pillar(bow_m=0.02)  # 60 mm of radius at its crown, 0.45 m up


def test_off_square_within_its_angle_it_works_and_comes_into_line_as_the_part_turns(leaning):
    """About 20 degrees off at first, less than 5 after 150 mm, holding all the way."""
    _, rows, end = leaning.pressed(0.15, 0.01, height_m=HIGH_M)
    angle, margin = degrees(rows), degrees(rows, "margin_rad")
    assert end == "held"
    assert angle[0] > 15.0
    assert angle[-1] < 5.0
    assert (np.diff(angle) < 0.0).all()
    assert margin.min() == margin[0] > 0.0
    first, last = rows[0][2].state.points, rows[-1][2].state.points
    head = leaning.mesh.surface.nodes["end_ring"]
    assert (last[head] - first[head])[:, 1].mean() > 0.15  # and the part has turned out


def test_past_its_angle_it_slips_and_squarer_it_holds(straight):
    """The same head from a low base close by, which makes the line steep, and from a far one."""
    steep = straight.set_down(foot=BaseSpot(base="tunnel_edge"), level=False)
    assert steep.margin_rad < 0.0
    _, rows, end = straight.pressed(0.02, foot=BaseSpot(base="tunnel_edge"), level=False)
    assert end == "loose"
    assert rows[-1][1].slid_m >= 0.004
    assert float(rows[-1][2].force_n.max()) < 100.0  # all the load is gone
    _, rows, end = straight.pressed(0.02, level=False)
    assert end == "held"
    assert float(rows[-1][2].force_n.max()) > 1e3


def test_a_seal_left_on_slips_first(straight):
    """A level line, to which the leaning pillar gets steeper: rubber lets go, paint not yet.

    From a low base, some 20 degrees off: paint lets go, bare and grooved does not.
    """
    _, rubber, slipped = straight.pressed(0.07, surface="rubber")
    assert slipped in ("loose", "off")
    assert rubber[-1][1].slid_m > 0.0
    assert straight.pressed(0.07, surface="painted")[2] == "held"
    low = {"height_m": 0.35, "level": False}
    assert straight.set_down(surface="painted", **low).margin_rad < 0.0
    assert straight.pressed(0.02, surface="bare", **low)[2] == "held"


def test_eased_and_set_nearer_the_middle_it_has_more_to_spare():
    """Off the middle the pillar twists away under it; the same metal, pressed as far again from nearer."""
    pillar = Pillar()
    off = pillar.pressed(0.02, off_m=0.035)[1]
    middle = Pillar().pressed(0.02)[1]
    assert degrees(off)[1] > 1.5 * degrees(middle)[1]
    _, rows, _ = pillar.pressed(0.06, off_m=0.035)
    pillar.point = eased(pillar, rows)
    again = pillar.pressed(0.01, off_m=0.035)[1]
    nearer = pillar.pressed(0.01, off_m=0.02)[1]
    assert degrees(nearer, "margin_rad")[-1] > degrees(again, "margin_rad")[-1] + 1.0


def eased(pillar, rows):
    """Return the point at rest after the ram of the last press has been let back."""
    hold = pillar.hold(off_m=0.035)
    stepper = Stepper(pillar.network.with_drives([hold.drive]), lambda: False)
    return replace(drawn_back(stepper, rows[-1][2]), travel_m=0.0, before=None)


@pytest.mark.parametrize("head", ["flat", "waffle"])
def test_a_head_that_needs_a_flat_spot_slips_on_a_curved_one_and_holds_on_a_flat_one(straight, curved, head):
    """10 mm off the crown of a bow of 60 mm radius, on paint; the flat wall at the same place."""
    assert straight.pressed(0.015, 0.0025, head=head, surface="painted", off_m=0.01)[2] == "held"
    where = {"head": head, "surface": "painted", "off_m": 0.012}
    assert curved.pressed(0.015, 0.0025, **where)[2] in ("loose", "off")


def test_points_hold_on_both(straight, curved):
    for pillar in (straight, curved):
        assert pillar.pressed(0.015, 0.0025, head="pointed", surface="painted", off_m=0.012)[2] == "held"


def test_points_go_through_thin_sheet_where_a_flat_head_does_not():
    """A stiff pillar held at both ends, a base with a stout rib, and a thin mild inner wall."""
    thin = PillarBuild(
        pressed=materials.PATCH_STEEL, pressed_m=0.0020, closing=materials.INNER_STEEL, closing_m=0.0006
    )
    pillar, where = Pillar(thin), {"height_m": 0.25, "foot": BaseSpot(rib_m=0.003)}
    hold, rows, end = pillar.pressed(0.05, head="pointed", **where)
    assert end == "through"
    assert float(rows[-1][2].force_n.max()) == pytest.approx(hold.bite()[1], rel=0.2)
    assert pillar.pressed(0.05, head="flat", **where)[2] == "held"


def test_squeezing_makes_the_flat_spot_a_smooth_head_needs():
    """30 mm of closing over the crown: what slipped now holds, and the angle is a third or less."""
    pillar = Pillar(bow_m=0.02)
    before = pillar.set_down(head="flat", surface="painted", off_m=0.01)
    pillar.squeezed(0.45, 0.03)
    after = pillar.set_down(head="flat", surface="painted", off_m=0.01)
    assert before.margin_rad < 0.0 < after.margin_rad
    assert after.angle_rad < before.angle_rad / 3.0
    assert pillar.pressed(0.01, 0.0025, head="flat", surface="painted", off_m=0.01)[2] == "held"


def test_a_wall_without_a_rib_sinks_and_one_with_does_not():
    """A pillar that holds at both ends needs more than the wall carries: 10 mm and more at 25 kN or less."""
    stiff = PillarBuild(pressed=materials.PATCH_STEEL, pressed_m=0.0020, closing_m=0.0015)
    for rib_m, sinks in ((0.0, True), (0.0012, False)):
        hold, rows, _ = Pillar(stiff).pressed(0.05, height_m=0.25, foot=BaseSpot(rib_m=rib_m))
        now, point = rows[-1][1:]
        assert float(point.force_n.max()) < 25.0e3 or not sinks
        assert (now.sink_m >= 0.010) == sinks
        assert hold.base_gives(now, hold.moved_m(point.state.points, now.line)) == sinks
