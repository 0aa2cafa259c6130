"""Where the viewer stands: the saved views, all with up kept up."""

from __future__ import annotations

from dataclasses import dataclass, replace

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
    "three_quarter": Shot((2.45, 2.42, 1.12), (0.53, -0.02, 0.44), 27.0),
    "latch": Shot((1.72, 1.05, 0.72), (0.94, -0.02, 0.40), 26.0),
    "hinge": Shot((-1.15, 1.55, 0.80), (0.12, -0.02, 0.36), 28.0),
    "patient": Shot((1.02, -0.44, 0.80), (0.60, 0.0, 0.30), 72.0),
    "section": Shot((0.93, 0.10, 1.42), (0.93, -0.03, 0.36), 22.0, (0.0, 1.0, 0.0)),
    "top": Shot((0.52, 0.02, 3.4), (0.52, 0.0, 0.4), 26.0, (0.0, 1.0, 0.0)),
}
"""Named views; "patient" is for models that have no head to look out of; "home" is the three-quarter one."""
SHOTS["home"] = SHOTS["three_quarter"]
SIDE_SHOTS = SHOTS | {
    "three_quarter": Shot((3.05, 3.65, 1.35), (0.98, -0.06, 0.36), 25.0),
    "front": Shot((-1.35, 3.75, 1.35), (0.92, -0.06, 0.36), 25.0),
    "top": Shot((1.0, 0.02, 5.6), (1.0, -0.1, 0.4), 28.0, (0.0, 1.0, 0.0)),
    "square": Shot((1.0, 5.6, 0.55), (1.0, 0.0, 0.42), 26.0),
}
"""The same views where both doors stand on the stage, and the one square to them."""
SIDE_SHOTS["home"] = SIDE_SHOTS["three_quarter"]
SHOTS["front"] = Shot((-1.45, 2.35, 1.05), (0.46, -0.02, 0.44), 27.0)
SHOTS["square"] = Shot((0.52, 3.6, 0.50), (0.52, 0.0, 0.40), 25.0)
WIDE = ("three_quarter", "front", "square", "top", "home")
"""Views of the side that have to show all of it."""
WIDE_ASPECT = 1.3
"""Width over height of the picture that these views fill; in a narrower one they look from further off."""


def fitted(shot: Shot, aspect: float) -> Shot:
    """Return a wide shot with its angle opened for a picture narrower than `WIDE_ASPECT`."""
    factor = max(1.0, WIDE_ASPECT / max(aspect, 0.3))
    half = np.arctan(np.tan(np.radians(0.5 * shot.angle_deg)) * factor)
    return replace(shot, angle_deg=float(np.degrees(2.0 * half)))


SECTION_HEIGHT_M = 0.36
"""Height of the cut in the section view when none is given: the middle of the latch."""
NEAR_SHARE = 0.14
"""Nothing nearer than this share of the distance to the focus is drawn."""
FAR_M = 6.0
"""Nothing further behind the focus than this is drawn."""


def from_seat(head: Floats, sign: float) -> Shot:
    """Return the view out of the occupant's head [m], towards the middle of the door."""
    eyes = (float(head[0]) - 0.15, float(head[1]) + 0.05 * sign, float(head[2]) + 0.02)
    return Shot(eyes, (0.58, -0.05 * sign, 0.36), 78.0)
