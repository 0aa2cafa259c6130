"""What a ram's foot stands on: a thin wall that dents, with or without a sheet edge-on behind it.

The wall of a rocker or tunnel is a strip of width B between two bends, of plastic moment m = sigma t^2 / 4
and membrane force N = sigma t per width.  A rigid foot, c across the strip and d along it, pushes a roof-
shaped dent into it that runs out over a length x on either side.  By the virtual work of yield lines
[johansen-1943], with the dent w deep:

    across the strip  four hinges turn by 2 w / (B - c):           q (d + x),   q = 8 m / (B - c)
    along it          four hinges over the mean width:             2 m (B + c) / x
    twist             of the four corner panels:                   8 m
    stretch           of the strip's lines, in the length alone:   2 N w (B + 2 c) / (3 x)

The strip stretches lengthwise only: its bends can draw in across, for the walls beside it bend.  That the
dent takes the length that asks for the least force,

    x = sqrt((2 m (B + c) + 2 N w (B + 2 c) / 3) / q),

is the argument by which dents in tubes are worked out [wierzbicki-1988]; the sum is an upper bound,

    P(w) = q d + 8 m + 2 sqrt(q (2 m (B + c) + 2 N w (B + 2 c) / 3)).

A sheet that stands edge-on behind the foot, a rib or the other face of an edge, adds what it can carry
before it folds, sigma t b with Winter's effective width b; it is taken to keep that (assumed).  A foot wider
than the strip stands on the two walls beside it, edge-on both.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from sim.materials import PATCH_STEEL, Metal

ELASTIC_BOSS_RATIO = 0.5  # the foot as a round boss in a clamped round plate, least ratio of their radii
MOST_BOSS_RATIO = 0.9


@dataclass(frozen=True)
class Wall:
    """A wall under a foot.

    thickness_m, width_m : of the sheet; of the strip between its bends;  metal : of it
    across_m, along_m : of the foot's plate across the strip and along it
    rib_m : thickness of the sheet that stands edge-on behind the foot; 0 is none
    """

    thickness_m: float = 0.0015
    width_m: float = 0.130
    metal: Metal = PATCH_STEEL
    across_m: float = 0.060
    along_m: float = 0.060
    rib_m: float = 0.0

    @property
    def bridged(self) -> bool:
        """Whether the foot is wider than the strip and stands on the walls beside it."""
        return self.across_m >= self.width_m

    @property
    def plastic_moment_n(self) -> float:
        """Plastic moment of the sheet per width [N]."""
        return 0.25 * self.metal.yield_pa * self.thickness_m**2

    def terms(self) -> tuple[float, float, float, float]:
        """Return q [N/m], the constant part [N], and the root's constant [N m] and slope [N]."""
        b, c, m = self.width_m, self.across_m, self.plastic_moment_n
        q = 8.0 * m / (b - c)
        stretch = 2.0 * self.metal.yield_pa * self.thickness_m * (b + 2.0 * c) / 3.0
        return q, q * self.along_m + 8.0 * m, 2.0 * m * (b + c), stretch

    @property
    def behind_n(self) -> float:
        """Force that what stands edge-on behind the foot carries [N]."""
        if self.bridged:
            return 2.0 * squash_n(self.thickness_m, self.along_m, self.metal)
        return squash_n(self.rib_m, self.across_m, self.metal)

    def force_n(self, dent_m: float) -> float:
        """Return the force that drives a dent on at a depth [N]; it never falls."""
        if self.bridged:
            return self.behind_n
        q, fixed, bend, stretch = self.terms()
        return self.behind_n + fixed + 2.0 * math.sqrt(q * (bend + stretch * dent_m))

    def slope_n_per_m(self, dent_m: float) -> float:
        """Return its derivative by the depth [N/m]."""
        if self.bridged:
            return 0.0
        q, _, bend, stretch = self.terms()
        return stretch * math.sqrt(q / (bend + stretch * dent_m))

    def work_j(self, dent_m: float) -> float:
        """Return the energy spent on a dent, the integral of the force [J]."""
        if self.bridged:
            return self.behind_n * dent_m
        q, fixed, bend, stretch = self.terms()
        deep = bend + stretch * dent_m
        root = (deep * math.sqrt(deep) - bend * math.sqrt(bend)) / (1.5 * stretch)
        return (self.behind_n + fixed) * dent_m + 2.0 * math.sqrt(q) * root

    @property
    def stiffness_n_per_m(self) -> float:
        """Elastic stiffness under the foot [N/m].

        A clamped round plate as wide as the strip with a rigid round boss as wide as the foot,
        w = P R^2 / (16 pi D) (1 - s^2 - 4 s^2 ln(s)^2 / (1 - s^2)), s the ratio of radii
        [timoshenko-plates-1959]; what stands edge-on adds E t b over the strip's width, taken for its height
        (assumed).
        """
        young, nu = self.metal.young_pa, self.metal.poisson_ratio
        sheet = 2.0 * self.thickness_m if self.bridged else self.rib_m
        behind = young * sheet * (self.along_m if self.bridged else self.across_m) / self.width_m
        if self.bridged:
            return behind
        s = min(max(self.across_m / self.width_m, ELASTIC_BOSS_RATIO), MOST_BOSS_RATIO)
        bending = young * self.thickness_m**3 / (12.0 * (1.0 - nu**2))
        share = 1.0 - s * s - 4.0 * s * s * math.log(s) ** 2 / (1.0 - s * s)
        return behind + 16.0 * math.pi * bending / ((0.5 * self.width_m) ** 2 * share)


def squash_n(thickness_m: float, length_m: float, metal: Metal) -> float:
    """Return what a sheet pressed edge-on over a length carries before it folds [N].

    Winter's effective width of a plate held at both sides, b = rho length with
    rho = (1 - .22 / l) / l, l = .526 (length / t) sqrt(sigma / E) [winter-1947].
    """
    if thickness_m <= 0.0:
        return 0.0
    slender = 0.526 * length_m / thickness_m * math.sqrt(metal.yield_pa / metal.young_pa)
    rho = 1.0 if slender <= 0.673 else (1.0 - 0.22 / slender) / slender
    return metal.yield_pa * thickness_m * rho * length_m
