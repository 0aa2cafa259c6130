"""What is said of a ram that slipped: first that it slipped, then how far off square it stood."""

import math

import numpy as np
import pytest

from sim.press_words import off_square_words
from sim.record import RamNow


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
