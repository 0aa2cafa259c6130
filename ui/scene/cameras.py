"""Where the viewer stands: the saved views, all with up kept up."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Shot:
    """A camera: position and focus [m] in the door's axes of a right-hand door, view angle [degrees]."""

    position: tuple[float, float, float]
    focus: tuple[float, float, float]
    angle_deg: float = 30.0
    up: tuple[float, float, float] = (0.0, 0.0, 1.0)

    def mirrored(self, sign: float) -> Shot:
        """Return the same shot of the door on the other side when ``sign`` is -1."""
        def flip(p: tuple[float, float, float]) -> tuple[float, float, float]:
            return (p[0], sign * p[1], p[2])

        return Shot(flip(self.position), flip(self.focus), self.angle_deg, flip(self.up))


SHOTS = {
    "three_quarter": Shot((2.05, 2.75, 1.25), (0.52, -0.02, 0.42)),
    "latch": Shot((1.72, 1.05, 0.72), (0.94, -0.02, 0.40), 26.0),
    "hinge": Shot((-1.15, 1.55, 0.80), (0.12, -0.02, 0.36), 28.0),
    "patient": Shot((0.86, -0.62, 0.66), (0.62, 0.0, 0.30), 74.0),
    "section": Shot((0.93, 0.10, 1.42), (0.93, -0.03, 0.36), 22.0, (0.0, 1.0, 0.0)),
    "top": Shot((0.52, 0.02, 3.4), (0.52, 0.0, 0.4), 26.0, (0.0, 1.0, 0.0)),
}
"""Named views; "home" is the three-quarter one."""
SHOTS["home"] = SHOTS["three_quarter"]
SECTION_HEIGHT_M = 0.36
"""Height of the cut in the section view when none is given: the middle of the latch."""
