"""What is said of a ram that slipped: first that it slipped, then how far off square it stood."""

import math
from types import SimpleNamespace

import numpy as np
import pytest

from sim.press_words import off_square_words
from sim.pressing import PressCourse
from sim.record import Event, RamNow, Rung


def ram(angle_deg, holds_deg, *, rolled=False):
    """Return a ram that stands so far off square; a head on its rim holds at no angle."""
    angle = math.radians(angle_deg)
    margin = math.radians(holds_deg) - angle
    line = np.array([0.0, 1.0, 0.0])
    return RamNow(np.zeros((2, 3)), line, line, 0.08, 1, 5e4, angle, margin, 0.1, rolled, 0.0, 0.01)


@pytest.mark.parametrize(
    ("at", "said"),
    [
        (ram(25.6, 16.7), " (26 degrees, it holds up to 17)"),
        (ram(31.2, 31.0), " (just past the 31 degrees it holds)"),
        (ram(24.0, 0.0, rolled=True), " (24 degrees) and the head rolled onto its rim"),
        (None, ""),
    ],
)
def test_the_angle_is_said_so_that_it_makes_sense(at, said):
    assert off_square_words(at) == said


@pytest.mark.parametrize("off", [True, False])
def test_the_ladder_names_the_head_in_the_moment_it_slips(off):
    """After the slip nothing presses, so without its own rung the ladder would not know of it."""
    told = {}
    run = SimpleNamespace(push=None, emit=lambda *_, **k: told.update(k))
    hold = SimpleNamespace(off=off, now=lambda _: ram(25.6, 16.7))
    point = SimpleNamespace(force_n=np.zeros(0))
    course = SimpleNamespace(run=run, hold=hold, seats=("head", "foot"))
    course._rungs = lambda at, now: PressCourse._rungs(course, at, now)
    PressCourse._emit(course, point, 1, (Event("seat slipping", "head", 0.0025, 900.0),))
    assert told["rungs"] == (Rung("head", "seat slipping", 1.0),)
