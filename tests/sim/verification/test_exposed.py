"""What can be seen and reached with blades, from plates whose gaps are known.

Sources
-------
Geometry alone: a gap narrower than the blades does not let them in, a wider one does.  That blades need some
30 mm of room is common practice, no source.
"""

from __future__ import annotations

import numpy as np
import pytest

from sim import lookout
from sim.door_model import build_model
from sim.exposed import GRAIN_M, OUT_M, ROOM_M, SIGHT_M, View, blocked_ways, grains, looks, view_of
from sim.lookout import OPENING_M, Lookout, lookout_of, rigid_of
from sim.plan import Car

PIN_M = 0.02  # from seat to seat


def plate(corner, first, second):
    """Return points and triangles of a parallelogram."""
    a, b, c = (np.array(v, dtype=float) for v in (corner, first, second))
    return np.array([a, a + b, a + b + c, a + c]), np.array([[0, 1, 2], [0, 2, 3]])


def cleft(gap_m, flare_m=0.0, height_m=0.8):
    """Return pin and spots of a cleft as wide as a gap at the pin, wider by a flare 100 mm further out."""
    half, low = 0.5 * gap_m, -0.5 * height_m
    up = (0.0, 0.0, height_m)
    plates = [plate((-half, -0.08, low), (gap_m, 0.0, 0.0), up)]
    for sign in (1.0, -1.0):
        plates.append(plate((sign * half, -0.08, low), (0.0, 0.08, 0.0), up))
        plates.append(plate((sign * half, 0.0, low), (sign * 0.5 * flare_m, 0.1, 0.0), up))
    spots = np.concatenate([grains(*one, np.zeros(3), 0.4) for one in plates])
    return np.array([[-0.5 * PIN_M, 0.0, 0.0], [0.5 * PIN_M, 0.0, 0.0]]), spots


def test_metal_is_read_close_enough_that_no_line_of_sight_slips_through():
    """Every point of a plate lies within half a sight's breadth of a grain."""
    points, triangles = plate((0, 0, 0), (0.31, 0.02, 0), (0.05, 0, 0.23))
    spots = grains(points, triangles, points.mean(axis=0), 1.0)
    u, v = np.random.default_rng(1).random((2, 500))
    wanted = points[0] + u[:, None] * (points[1] - points[0]) + v[:, None] * (points[3] - points[0])
    nearest = np.linalg.norm(wanted[:, None] - spots[None], axis=2).min(axis=1)
    assert nearest.max() < SIGHT_M


def plain_grains(points, triangles, place, radius_m):
    """Return the same points, plainly: every triangle's own lattice, then those that are near."""
    out = []
    for corner in points[triangles]:
        size = np.linalg.norm(corner - np.roll(corner, 1, axis=0), axis=1).max()
        count = max(int(np.ceil(size / GRAIN_M)), 1)
        shares = [(i, j, count - i - j) for i in range(count + 1) for j in range(count + 1 - i)]
        spots = np.array(shares) / count @ corner
        out.append(spots[np.linalg.norm(spots - place, axis=1) <= radius_m])
    return np.concatenate(out)


@pytest.mark.parametrize("radius_m", [0.03, 0.3, 2.0])
def test_compiled_and_plain_read_the_same_metal(radius_m):
    structure = build_model(Car(lattice_spacing_m=0.06)).structure
    place = structure.points[structure.ties[0].nodes].mean(axis=0)
    fast = grains(structure.points, structure.triangles, place, radius_m)
    plain = plain_grains(structure.points, structure.triangles, place, radius_m)
    assert len(fast) == len(plain) > 0
    np.testing.assert_allclose(fast, plain, rtol=0.0, atol=1e-14)


@pytest.mark.parametrize(("gap", "fits"), [(0.020, False), (0.028, False), (0.032, True), (0.06, True)])
def test_blades_go_in_where_the_gap_is_wider_than_they_are(gap, fits):
    pin, spots = cleft(gap)
    found = view_of(pin, spots, 1.0, OPENING_M)
    assert (found is not None) == fits
    if found is not None:
        assert isinstance(found, View)
        assert found.way_out[1] > 0.9  # straight out of the cleft
        assert abs(found.normal[0]) > 0.9  # the blades' plane lies along it


def test_a_gap_that_tapers_with_the_blades_is_enough():
    """10 mm at the pin and 30 mm from 50 mm out on: blades taper; narrower outside they do not go in."""
    pin, spots = cleft(0.014, flare_m=0.044)
    assert view_of(pin, spots, 1.0, OPENING_M) is not None
    pin, spots = cleft(0.014, flare_m=0.02)
    assert view_of(pin, spots, 1.0, OPENING_M) is None


def test_a_lid_over_the_gap_hides_it_and_a_wing_beside_it_stops_wide_blades():
    pin, spots = cleft(0.05)
    lid = grains(*plate((-0.2, 0.14, -0.4), (0.4, 0, 0), (0, 0, 0.8)), np.zeros(3), 0.5)
    assert view_of(pin, np.concatenate([spots, lid]), 1.0, OPENING_M) is None
    # a bridge across the gap 60 mm above the pin: blades that open over it do not fit, small ones do
    bridge = grains(*plate((-0.03, 0.0, 0.06), (0.06, 0, 0), (0, 0.1, 0)), np.zeros(3), 0.5)
    assert view_of(pin, np.concatenate([spots, bridge]), 1.0, 0.18) is None
    assert view_of(pin, np.concatenate([spots, bridge]), 1.0, 0.10) is not None


def test_looking_is_mirrored_with_the_car():
    pin, spots = cleft(0.05)
    flip = np.array([1.0, -1.0, 1.0])
    there = view_of(pin * flip, spots * flip, -1.0, OPENING_M)
    assert there is not None and there.way_out[1] < -0.9
    np.testing.assert_allclose(looks(-1.0) * flip, looks(1.0))


def test_the_compiled_look_is_the_plain_one():
    rng = np.random.default_rng(7)
    spots, place, ways = rng.normal(0.0, 0.1, (400, 3)), np.zeros(3), looks(1.0)
    got = np.zeros(len(ways), dtype=bool)
    by = np.zeros(len(ways), dtype=np.int64)
    blocked_ways(spots, place, ways, 0.02, 0.006, got, by)
    along = spots @ ways.T
    off = np.linalg.norm(spots[:, None] - along[:, :, None] * ways[None], axis=2)
    np.testing.assert_array_equal(got, ((along > 0.02) & (off < 0.006)).any(axis=0))
    assert 0 < got.sum() < len(ways)


def test_on_a_shut_door_nothing_is_exposed_and_swung_open_its_latch_is():
    """The door turned about its hinges as a rigid body: by five degrees no blade fits, by twenty one does."""
    model = build_model(Car(lattice_spacing_m=0.09))
    look, points = lookout_of(model), model.start.points
    assert look.views(model.structure, points, OPENING_M) == {}
    pins = [look.pin(tie, points) for tie in model.structure.ties if tie.name.endswith("hinge")]
    axis = np.mean(pins, axis=(0, 1))

    def swung(degrees):
        a = np.radians(degrees)
        turn = np.array([[np.cos(a), -np.sin(a), 0.0], [np.sin(a), np.cos(a), 0.0], [0.0, 0.0, 1.0]])
        return look.views(model.structure, (points - axis) @ turn.T + axis, OPENING_M)

    assert "latch" not in swung(2.0)
    found = swung(20.0)
    assert "latch" in found
    assert OUT_M > ROOM_M and found["latch"].way_out[1] > 0.0


class TestWhatStoodInTheWay:
    """A look is spared while what stood in the way still does, and tells the same as a look anew."""

    @staticmethod
    def told(look, model, points, *, anew):
        if anew:
            look._before.clear()
        return {
            name: (view.place.tolist(), view.way_out.tolist(), view.normal.tolist())
            for name, view in look.views(model.structure, points, OPENING_M).items()
        }

    def both(self, model, places):
        keeps, anew = (Lookout(model.structure, rigid_of(model)) for _ in range(2))
        same = [self.told(keeps, model, p, anew=False) for p in places]
        assert same == [self.told(anew, model, p, anew=True) for p in places]
        return same

    @staticmethod
    def swung(model, degrees, points):
        """Return the model's points with its front door turned about the line through its hinges."""
        front, out = slice(0, getattr(model, "first", {}).get("rear")), points.copy()
        pins = [
            tie.weights @ points[tie.nodes]
            for tie in model.structure.ties
            if tie.name in ("upper hinge", "lower hinge")
        ]
        axis, a = np.mean(pins, axis=0), np.radians(degrees)
        turn = np.array([[np.cos(a), -np.sin(a), 0.0], [np.sin(a), np.cos(a), 0.0], [0.0, 0.0, 1.0]])
        out[front] = (points[front] - axis) @ turn.T + axis
        return out

    def test_while_a_door_swings_open_and_shut(self):
        model = build_model(Car(lattice_spacing_m=0.06))
        degrees = (0, 0.1, 0.5, 2, 6, 12, 20, 30, 12, 4, 0, 0)
        told = self.both(model, [self.swung(model, d, model.start.points) for d in degrees])
        assert not told[0] and "latch" in told[6] and not told[-1]

    def test_on_a_side_whose_door_swings_while_its_pillar_moves(self):
        model = build_model(Car(lattice_spacing_m=0.09, extent="side"))
        points = model.start.points
        heights = np.clip(points[:, 2], 0.0, 1.0)[:, None]
        places = [
            self.swung(model, degrees, points) + amount * heights * [0.02, 0.1, 0.0]
            for degrees, amount in ((0, 0.0), (0, 0.5), (6, 0.5), (12, 0.6), (30, 0.6), (6, 1.0), (0, 1.0))
        ]
        told = self.both(model, places)
        assert ["latch" in views for views in told] == [False, False, True, True, True, True, False]

    def test_nothing_is_read_again_where_nothing_has_moved(self, monkeypatch):
        model = build_model(Car(lattice_spacing_m=0.06))
        look = Lookout(model.structure, rigid_of(model))
        assert look.views(model.structure, model.start.points, OPENING_M) == {}
        monkeypatch.setattr(lookout, "sown", None)
        assert look.views(model.structure, model.start.points + 1e-5, OPENING_M) == {}
