"""Where sheet was folded: plastic work per area, against closed forms, the ledger and its replay from shapes.

Sources
-------
[johansen-1943] a yield line turns at the sheet's plastic moment, Y t^2 / 4 per metre of line
[timoshenko-gere-1961] past yield the moment of a rectangular section comes to 1.5 times that at first yield
"""

import dataclasses

import numpy as np
import pytest

from sim import kept_frames
from sim.door_model import build_model
from sim.folded import Replay, _flow, fold_work
from sim.plan import Car, EdgePoint, Plan, Spread
from sim.record import folded
from sim.run import solve_plan
from tests.once import once

PLAN = Plan(
    title="short push",
    car=Car(lattice_spacing_m=0.09),
    moves=(Spread(door=EdgePoint(depth_m=0.005), opening_m=0.03),),
)


@pytest.fixture(scope="module")
def model():
    return build_model(PLAN.car)


@pytest.fixture(scope="module")
def frames():
    """Return the moments of a push on the lip, without what nothing here looks at."""

    def made():
        return tuple(dataclasses.replace(f, state=None) for f in solve_plan(PLAN)[1][0].frames)

    return once(made, "folded", PLAN)


def bent(network, curvature):
    """Return the plastic work per area of every triangle bent to a curvature kxx and no other [1/m]."""
    count = len(network.structure.triangles)
    plastic, hardening = np.zeros((count, 7, 3)), np.zeros((count, 7))
    for share in np.linspace(0.0, 1.0, 40)[1:]:
        way = np.tile([share * curvature, 0.0, 0.0], (count, 1))
        _flow(
            np.zeros((count, 3)), way, network.thickness, network.form_ratio, network.metal,
            network.heights, network.weights, plastic, hardening,
        )  # fmt: skip
    return fold_work(network, hardening)


def test_a_sheet_bent_far_takes_its_plastic_moment_times_its_turn(model):
    """Plane strain: the moment is 2 / sqrt(3) of Y t^2 / 4 [johansen-1943]; hardening adds what it adds."""
    network = model.network
    skin = np.flatnonzero(model.surface.triangle_part == model.surface.part_index("outer_skin"))
    skin = skin[network.form_ratio[skin] == 1.0]
    young, poisson, yielding, hardening = network.metal[skin[0]]
    thickness = network.thickness[skin[0]]
    first = 2.0 * yielding * (1.0 - poisson**2) / (young * thickness)
    curvature = 40.0 * first
    got = bent(network, curvature)[skin]
    moment = 2.0 / np.sqrt(3.0) * yielding * thickness**2 / 4.0
    strain = curvature * thickness / 2.0
    more = hardening / yielding * strain / 3.0  # mean over the height, of flow stress over yield, less one
    # the elastic core and springing back take about 1.5 first curvatures of 40: 4 %
    assert got == pytest.approx(moment * curvature * (1.0 + more), rel=0.06)


def test_a_sheet_bent_below_yield_remembers_nothing(model):
    network = model.network
    least = np.min(2.0 * network.metal[:, 2] / network.metal[:, 0] / network.thickness / network.form_ratio)
    assert not bent(network, 0.8 * least).any()


def test_all_of_it_is_what_the_ledger_books_as_folding(model, frames):
    """The ledger sums each step's loss by itself; 5 %: what a snap took on its branch it books there."""
    last = frames[-1]
    booked = sum(last.ledger_j[f"folding {sheet}"] for sheet in ("skin", "inner"))
    assert booked > 1.0
    assert model.network.rest.area @ folded(last) == pytest.approx(booked, rel=0.05)


def test_it_only_grows(frames):
    work = np.array([folded(frame) for frame in frames])
    assert (np.diff(work, axis=0) >= -1e-9).all()
    assert work[-1].max() > 100.0


def test_it_is_kept_to_a_step_of_its_logarithm(model, frames, tmp_path):
    path = tmp_path / "moments.npz"
    record = dataclasses.make_dataclass("Record", ["frames"])(frames)
    path.write_bytes(kept_frames.packed(model, [record]))
    found = kept_frames.unpacked(path, model)[0]
    for mine, theirs in zip(found, frames, strict=True):
        assert mine.replayed is None
        off = 0.5 * kept_frames.FOLD_STEP * (theirs.fold_j_per_m2 + kept_frames.FOLD_FINE_J_PER_M2)
        assert (np.abs(mine.fold_j_per_m2 - theirs.fold_j_per_m2) <= 1.05 * off).all()


def test_moments_kept_without_it_are_read_from_their_shapes(model, frames, tmp_path):
    """Rounding of places hides a little stretch and makes none up: nine tenths of it, in the same place."""
    path = tmp_path / "moments.npz"
    bare = tuple(dataclasses.replace(frame, fold_j_per_m2=None) for frame in frames)
    record = dataclasses.make_dataclass("Record", ["frames"])(bare)
    path.write_bytes(kept_frames.packed(model, [record]))
    found = kept_frames.unpacked(path, model)[0]
    assert found[-1].fold_j_per_m2 is None
    whole, read = folded(frames[-1]), folded(found[-1])
    area = model.network.rest.area
    assert 0.9 * (area @ whole) < area @ read < 1.0 * (area @ whole)
    # seen or not seen as creased: the same on all but a tenth of what is creased
    creased = whole > 200.0
    assert area[creased != (read > 200.0)].sum() < 0.1 * area[creased].sum()


def test_a_torn_sheet_is_replayed_by_its_own_triangles(model, frames):
    """A node split in two bends nothing: the same shape torn open takes the same work."""
    triangles = np.array(model.structure.triangles)
    points = frames[-1].points
    middle = points[triangles].mean(axis=1)[:, 2]
    node = int(model.structure.names["skin_mid"][0])
    torn = triangles.copy()
    upper = (triangles == node).any(axis=1) & (middle > points[node, 2])
    torn[upper] = np.where(triangles[upper] == node, len(points), triangles[upper])
    assert 0 < upper.sum() < (triangles == node).any(axis=1).sum()
    more = np.vstack([points, points[node]])
    whole = Replay(model.network, [points, points], [None, None]).work(1)
    cut = Replay(model.network, [points, more], [None, torn]).work(1)
    np.testing.assert_allclose(cut, whole, rtol=0.0, atol=1e-9)
