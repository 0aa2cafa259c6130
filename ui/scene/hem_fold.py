"""The hem where a plane cuts it: inner flange, bond and the skin folded over them, three sheets in all.

The mechanics has two sheets that meet at the lip. What lies in the fold is drawn here at its true size: the
flange goes with the inner sheet, the fold with the skin, and the bond is there as far as it is whole.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from ui.scene.seam import Stitches

Floats = NDArray[np.float64]

BOND_M = 0.0004
"""Thickness of the bead between skin and flange: 0.2-0.5 mm, from memory."""
OPEN_RAD = np.radians(55.0)
"""How far a fold that has lost its flange is drawn opened."""
JUMP_M = 0.2
"""Stitches further apart than this do not follow each other along one hem."""


@dataclass(frozen=True)
class Fold:
    """Strips of one crossing: segments (k, 2, 3) [m] with thickness (k,); the bond apart, with its damage."""

    sheets: Floats
    thickness_m: Floats
    bond: Floats
    damage: float


def folds(
    stitches: Stitches, points: Floats, damage: Floats, place_m: float, axis: int,
    *, width_m: float, skin_m: float, inner_m: float,
) -> list[Fold]:  # fmt: skip
    """Return the folds where a hem crosses the plane."""
    skin, inner = stitches.ends(points)
    rows = (
        skin, inner, stitches.between(points, stitches.inward), stitches.between(points, stitches.deeper)
    )  # fmt: skip
    side = skin[:, axis] > place_m
    crossed = np.flatnonzero(
        (side[1:] != side[:-1]) & (np.linalg.norm(skin[1:] - skin[:-1], axis=1) < JUMP_M)
    )
    out = []
    for k in crossed.tolist():
        share = (place_m - skin[k, axis]) / (skin[k + 1, axis] - skin[k, axis])
        lip, flange, back, deep = ((1.0 - share) * row[k] + share * row[k + 1] for row in rows)
        worn = float((1.0 - share) * damage[k] + share * damage[k + 1])
        out.append(_fold(lip, flange, back - lip, deep - flange, worn, axis, width_m, skin_m, inner_m))
    return out


def _fold(
    lip: Floats, flange: Floats, back: Floats, deep: Floats, worn: float, axis: int,
    width_m: float, skin_m: float, inner_m: float,
) -> Fold:  # fmt: skip
    """Return one fold: its lip, the inner sheet's edge, and the ways skin and shut face run."""
    flat = np.ones(3)
    flat[axis] = 0.0
    b = _unit(back * flat)
    d = deep * flat
    d = _unit(d - (d @ b) * b)
    opened = OPEN_RAD * np.clip((worn - 0.5) * 2.0, 0.0, 1.0)
    step = skin_m + BOND_M
    start = flange + (0.5 * (skin_m + inner_m) + BOND_M) * d
    leg = np.cos(opened) * b + np.sin(opened) * d
    root = lip + (step + inner_m) * d
    sheets = np.array([[start, start + 0.92 * width_m * b], [lip, root], [root, root + width_m * leg]])
    under = lip + 0.5 * step * d
    bond = np.array([[under + 0.1 * width_m * b, under + 0.92 * width_m * b]])
    return Fold(sheets, np.array([inner_m, skin_m, skin_m]), bond, worn)


def _unit(vector: Floats) -> Floats:
    return np.asarray(vector / max(float(np.linalg.norm(vector)), 1e-12))
