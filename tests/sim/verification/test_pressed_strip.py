"""A rigid body pressed into a strip and on springs, against the beam formula and springs in a row.

Beam: F = 48 E I w / L^3 for a simply supported beam loaded at its middle (textbook, from memory); the strip's
Poisson ratio is 0, so that plate and beam are one.  It is bent to a radius of metres, far above the
cylinder's: the two touch along one line.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim.checks.specimens import held, metal, never, rows, sheet
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Network
from sim.newton import TOLERANCE_N
from sim.rigid import Barrier, first_touch
from sim.structure import Tie

LENGTH_M, WIDTH_M, THICKNESS_M = 0.24, 0.03, 0.001
OUTWARD = np.array([0.0, 1.0, 0.0])


def upright(lattice):
    """Return a flat lattice turned into the plane y = 0: along x, its width upright."""
    points = lattice.points[:, [0, 2, 1]]
    return replace(lattice, points=points, triangles=np.array(lattice.triangles))


def strip(columns, count=2):
    """Return a strip simply supported at both ends."""
    s = sheet(upright(rows(LENGTH_M, WIDTH_M, columns, count)), THICKNESS_M, metal(nu=0.0))
    x, z = s.points[:, 0], s.points[:, 2]
    ends = np.flatnonzero((np.abs(x) < 1e-9) | (np.abs(x - LENGTH_M) < 1e-9))
    one = np.flatnonzero((np.abs(x) < 1e-9) & (np.abs(z) < 1e-9))
    return held(s, (ends, "y"), (one, "xz"), (np.flatnonzero(np.abs(z) < 1e-9), "z"))


def cylinder(s, radius_m, *, box=False, reach_m=0.0, pressure=1.0e11):
    """Return a rigid body over the strip's middle, touching it."""
    middle = np.array([0.5 * LENGTH_M, 1.0, 0.5 * WIDTH_M])
    core = np.array([reach_m, 0.01, 0.1]) if box else np.array([0.0, 0.0, 0.1])
    every = np.arange(len(s.triangles))
    barrier = Barrier(core, radius_m, box, middle, -OUTWARD, every, pressure_n_per_m3=pressure)
    return barrier.drawn_back(-first_touch(barrier, s.points, s.triangles))


def pressed(s, barrier, travels):
    """Return the points of a press to each travel in turn."""
    stepper = Stepper(Network(s).with_barrier(barrier), never, viscous_n_per_m=0.0)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    out = [point]
    for travel in travels:
        out.append(stepper.advance(out[-1], travel))
    assert stepper.tally.failed == 0
    return out


@pytest.mark.parametrize("columns", [20, 21, 32])
def test_a_cylinder_bends_a_strip_by_the_beam_formula(columns):
    """Within 3 %: hinge springs of 20 segments, and a reading point a third of a cell beside the middle.

    An even count of columns has nodes at the middle and an odd one has none: the body finds the sheet.
    """
    s = strip(columns)
    w = 4.0e-4
    end = pressed(s, cylinder(s, 0.02), [w])[-1]
    inertia = WIDTH_M * THICKNESS_M**3 / 12.0
    # what the metal gave way by: the travel less what the penalty lets the body in
    deepest = float(np.max(end.evaluation.read["barrier push"])) / (
        1.0e11 * float(np.median(Network(s).rest.area)) / 9.0
    )
    assert deepest < 0.02 * w
    expected = 48.0 * 210.0e9 * inertia * w / LENGTH_M**3
    assert float(end.force_n[0]) == pytest.approx(expected, rel=0.03)


def bed(stiffness_n_per_m=2.0e4):
    """Return a stiff plate with a spring along y at every node and nothing else."""
    s = sheet(upright(rows(LENGTH_M, WIDTH_M, 12, 2)), 0.02, metal())
    hold = np.full(3, np.inf)
    ties = tuple(
        Tie(f"spring {k}", np.array([k]), np.ones(1), stiffness_n_per_m, hold) for k in range(len(s.points))
    )
    return replace(s, ties=ties)


def test_a_flat_face_on_a_bed_of_springs_is_springs_in_a_row():
    """F = w / (1 / sum(k) + 1 / (pressure x area)), linear in w; the plate hardly bends between."""
    s, pressure = bed(), 1.0e10
    face = cylinder(s, 0.001, box=True, reach_m=0.2, pressure=pressure)
    travels = [2e-4, 4e-4, 8e-4]
    points = pressed(s, face, travels)[1:]
    springs, under = 2.0e4 * len(s.points), pressure * float(Network(s).rest.area.sum())
    for travel, point in zip(travels, points, strict=True):
        force = float(point.force_n[0])
        assert force == pytest.approx(travel / (1.0 / springs + 1.0 / under), rel=2e-3)
    forces = [float(p.force_n[0]) for p in points]
    assert forces[1] / forces[0] == pytest.approx(2.0, rel=1e-5)
    assert forces[2] / forces[1] == pytest.approx(2.0, rel=1e-5)


def test_pressing_in_and_drawing_back_gives_all_of_it_back():
    """Elastic metal, no friction, no damping: force retraced, no energy left in the books or out of them."""
    s = strip(20)
    way = np.linspace(0.0, 8e-4, 9)[1:]
    points = pressed(s, cylinder(s, 0.02), [*way, *way[-2::-1], 0.0])
    out, back = points[1 : len(way)], points[len(way) + 1 : 2 * len(way)]
    for a, b in zip(out, reversed(back), strict=True):
        assert float(a.force_n[0]) == pytest.approx(float(b.force_n[0]), abs=TOLERANCE_N)
    peak = max(p.ledger.work_j for p in points)
    assert abs(points[-1].ledger.work_j) < 1e-3 * peak
    assert abs(points[-1].ledger.stored_j) < 1e-3 * peak
    assert float(points[-1].force_n[0]) < 1e-3 * max(float(p.force_n[0]) for p in points)
    assert max(abs(p.ledger.gap_j) for p in points) < 0.02 * peak


def test_a_body_pressed_from_the_other_side_mirrors_the_answer():
    s = strip(21)
    one = cylinder(s, 0.02)
    flip = np.array([1.0, -1.0, 1.0])
    other = replace(one, centre=one.centre * flip, direction=one.direction * flip)
    a, b = (pressed(s, body, [4e-4])[-1] for body in (one, other))
    assert float(a.force_n[0]) == pytest.approx(float(b.force_n[0]), rel=1e-9)
    np.testing.assert_allclose(a.state.points, b.state.points * flip, atol=1e-12)
