"""Dimensions of the teaching door: an invented low saloon's front door, every length a parameter."""

from __future__ import annotations

import dataclasses
import math
from dataclasses import dataclass

import numpy as np

from meshes.graded import Grading
from meshes.lattice import ROW_RATIO, bilinear, patch_counts
from meshes.part import FloatArray, MeshError

MAX_NODES = 12_000
"""Most nodes of the two sheets: beyond this a move takes minutes on a plain desktop machine."""

MIN_ROWS = 6
"""Least number of node rows over the height: fewer cannot show a fold beside a flat."""

BELT_BULGE_SHARE = 0.85
"""Share of half a sine wave the barrel runs through from sill to belt: the belt keeps part of the bulge."""

FRAME_TOP_SHARE = 0.06
"""Window frame: share of the door's length by which the latch-side upright leans forward at its top."""

_RANGES: dict[str, tuple[float, float]] = {
    "length_m": (0.5, 1.8),
    "sill_length_m": (0.4, 1.8),
    "height_m": (0.3, 1.2),
    "latch_lean_m": (-0.2, 0.2),
    "crown_m": (0.0, 0.1),
    "barrel_m": (0.0, 0.1),
    "hem_width_m": (0.004, 0.03),
    "shut_face_depth_m": (0.03, 0.25),
    "shut_face_inset_m": (0.0, 0.06),
    "bar_height_m": (0.02, 1.1),
    "bar_inset_m": (0.0, 0.2),
    "bar_end_gap_m": (0.0, 0.2),
    "latch_height_m": (0.02, 1.1),
    "lower_hinge_height_m": (0.02, 1.1),
    "upper_hinge_height_m": (0.02, 1.1),
    "latch_patch_m": (0.02, 0.3),
    "hinge_patch_m": (0.02, 0.3),
    "latch_wrap_m": (0.0, 0.2),
    "frame_height_m": (0.05, 0.8),
    "frame_rake_m": (-0.3, 1.2),
    "frame_lean_m": (-0.1, 0.4),
    "spacing_m": (0.005, 0.2),
    "fine_ratio": (0.3, 1.0),
    "growth_ratio": (0.05, 1.0),
}


@dataclass(frozen=True)
class DoorShape:
    """Dimensions of the door, all in metres; the defaults are invented and belong to no vehicle.

    Parameters
    ----------
    length_m
        Hinge edge to latch edge, measured at the belt.
    sill_length_m
        Hinge edge to latch edge, measured at the sill.
    height_m
        Sill edge to belt.
    latch_lean_m
        How far rearward the latch edge's belt end stands of its sill end.
    crown_m, barrel_m
        Outward bulge of the skin fore and aft, and over the height; both vanish at the three hemmed edges.
    hem_width_m
        Width of the folded lip.
    shut_face_depth_m
        Lip to inner bend, inboard; the inner panel is the plane y = -shut_face_depth_m.
    shut_face_inset_m
        How far the shut face leans towards the middle of the door over that depth.
    bar_height_m, bar_inset_m, bar_end_gap_m
        Height of the bar, gap from skin to bar, gap from either edge to the bar's end.
    latch_height_m, lower_hinge_height_m, upper_hinge_height_m
        Heights of the middle of the latch and of the hinges.
    latch_patch_m, hinge_patch_m
        Heights of the stiff patches of the shut face that carry them.
    frame_height_m, frame_rake_m, frame_lean_m
        Window frame: top above the belt, front upright's top rearward of its foot (below zero where it leans
        forward, as a rear door's does along the pillar), top inboard of the feet.
    latch_wrap_m
        How far the latch's patch reaches round the inner bend onto the inner panel.
    spacing_m
        Wanted distance between neighbouring nodes, away from the latch and hinge edges.
    fine_ratio
        Spacing along the latch and hinge edges, where tips, fittings and seam meet, over `spacing_m`.
    growth_ratio
        Spacing gained per metre of distance from those edges.
    """

    length_m: float = 1.05
    sill_length_m: float = 0.98
    height_m: float = 0.66
    latch_lean_m: float = 0.02
    crown_m: float = 0.018
    barrel_m: float = 0.035
    hem_width_m: float = 0.010
    shut_face_depth_m: float = 0.100
    shut_face_inset_m: float = 0.012
    bar_height_m: float = 0.30
    bar_inset_m: float = 0.020
    bar_end_gap_m: float = 0.030
    latch_height_m: float = 0.36
    lower_hinge_height_m: float = 0.16
    upper_hinge_height_m: float = 0.50
    latch_patch_m: float = 0.16
    hinge_patch_m: float = 0.07
    latch_wrap_m: float = 0.06
    frame_height_m: float = 0.40
    frame_rake_m: float = 0.48
    frame_lean_m: float = 0.12
    spacing_m: float = 0.045
    fine_ratio: float = 0.45
    growth_ratio: float = 0.15

    def check(self) -> None:
        """Raise MeshError with parameter, allowed range and remedy if the door cannot be meshed."""
        for item in dataclasses.fields(self):
            low, high = _RANGES[item.name]
            _require(item.name, getattr(self, item.name), low, high)
        self._check_outline()
        self._check_section()
        self._check_heights()
        self._check_spacing()

    def _check_outline(self) -> None:
        length = self.length_m
        _require("sill_length_m", self.sill_length_m, 0.7 * length, 1.15 * length, "bring it near length_m")
        _require("frame_rake_m", self.frame_rake_m, -0.3, 0.8 * self.length_m, "rake the window frame less")

    def _check_section(self) -> None:
        depth = self.shut_face_depth_m
        _require(
            "hem_width_m",
            self.hem_width_m,
            0.0,
            0.5 * depth,
            "the lip must be narrower than half the shut face: narrow it or raise shut_face_depth_m",
        )
        _require("shut_face_inset_m", self.shut_face_inset_m, 0.0, 0.5 * depth, "lean the shut face less")
        _require("bar_inset_m", self.bar_inset_m, 0.0, 0.8 * depth, "bring the bar nearer to the skin")

    def _check_heights(self) -> None:
        for name, half in (
            ("latch_height_m", 0.5 * self.latch_patch_m),
            ("lower_hinge_height_m", 0.5 * self.hinge_patch_m),
            ("upper_hinge_height_m", 0.5 * self.hinge_patch_m),
            ("bar_height_m", 0.02),
        ):
            _require(
                name,
                getattr(self, name),
                half,
                self.height_m - half,
                "keep the whole fitting between sill and belt",
            )
        lowest = self.lower_hinge_height_m + self.hinge_patch_m
        _require(
            "upper_hinge_height_m",
            self.upper_hinge_height_m,
            lowest,
            self.height_m,
            "keep the hinge patches apart: raise this one or lower lower_hinge_height_m",
        )

    def _check_spacing(self) -> None:
        if self.row_count < MIN_ROWS:
            raise MeshError(
                "spacing_m",
                f"{self.spacing_m} m gives {self.row_count} rows over the height, "
                f"{MIN_ROWS} or more are needed; use a smaller spacing_m",
            )
        if self.spacing_m > self.shut_face_depth_m:
            raise MeshError(
                "spacing_m",
                f"{self.spacing_m} m is more than the shut face is deep "
                f"({self.shut_face_depth_m} m), which then cannot hold two rows; "
                "use a smaller spacing_m",
            )
        if self.sheet_node_count > MAX_NODES:
            raise MeshError(
                "spacing_m",
                f"{self.spacing_m} m gives {self.sheet_node_count} nodes, "
                f"{MAX_NODES} are allowed; use a larger spacing_m",
            )

    @property
    def row_count(self) -> int:
        """Node rows of the skin from sill to belt, away from the finer edges."""
        return patch_counts(self.length_m, self.height_m, self.spacing_m)[1] + 1

    @property
    def wall_intervals(self) -> int:
        """Intervals of the shut face from lip to inner bend: an even number, so a row lies half-way."""
        return 2 * max(1, round(0.5 * self.shut_face_depth_m / (self.fine_ratio * self.spacing_m)))

    @property
    def sheet_node_count(self) -> int:
        """About how many nodes outer skin and inner structure have together (bar and frame come on top)."""
        grading = self.grading
        s, t = np.meshgrid((np.arange(60) + 0.5) / 60, (np.arange(40) + 0.5) / 40)
        flat = bilinear(self.flat_corners, s.ravel(), t.ravel())
        inside = self.length_m * self.height_m * float(np.mean(grading(flat) ** -2.0)) / ROW_RATIO
        hem = 2.0 * self.height_m / grading.fine_m + self.sill_length_m / self.spacing_m
        border = hem + self.length_m / self.spacing_m
        return round(2.0 * inside + border + self.wall_intervals * hem)

    @property
    def flat_corners(self) -> FloatArray:
        """Corners of the outline in the hem's plane, (x, z) [m], shape (4, 2), as in `corners_at_depth`."""
        return self.corners_at_depth(0.0)[:, [0, 2]]

    @property
    def grading(self) -> Grading:
        """The spacing asked for over the door: finer along the latch and hinge edges."""
        a, b, c, d = self.flat_corners
        fine = self.fine_ratio * self.spacing_m
        return Grading(self.spacing_m, fine, self.growth_ratio, np.array([[a, d], [b, c]]))

    def corners_at_depth(self, depth_m: float) -> FloatArray:
        """Return the corners [m] of the door's outline at a depth below the hem plane, shape (4, 3).

        Order: sill hinge, sill latch, belt latch, belt hinge. The three hemmed edges are moved inwards,
        parallel to themselves, in proportion to the depth; the belt stays at its height.
        """
        shift = self.shut_face_inset_m * depth_m / self.shut_face_depth_m
        height = self.height_m
        front = self.sill_length_m + self.latch_lean_m - self.length_m
        hinge_shift = shift * math.hypot(front, height) / height
        latch_shift = shift * math.hypot(self.latch_lean_m, height) / height
        low = shift / height
        hinge = [front * low + hinge_shift, front + hinge_shift]
        latch = [
            self.sill_length_m + self.latch_lean_m * low - latch_shift,
            self.sill_length_m + self.latch_lean_m - latch_shift,
        ]
        return np.array(
            [
                [hinge[0], -depth_m, shift],
                [latch[0], -depth_m, shift],
                [latch[1], -depth_m, height],
                [hinge[1], -depth_m, height],
            ]
        )

    def edge_distance(self, x_m: FloatArray, z_m: FloatArray) -> FloatArray:
        """Return how far fore and aft points lie from the nearer of latch and hinge edge [m], shape (n,)."""
        a, b, c, d = self.flat_corners[:, 0]
        share = np.asarray(z_m, dtype=np.float64) / self.height_m
        front, rear = a + share * (d - a), b + share * (c - b)
        nearer: FloatArray = np.minimum(np.abs(x_m - front), np.abs(rear - x_m))
        return nearer

    def skin_bulge(self, s: FloatArray, t: FloatArray) -> FloatArray:
        """Return how far [m] the skin stands out of the hem plane at (s, t), each from 0 to 1, shape (n,)."""
        crown = 4.0 * s * (1.0 - s) * (1.0 - (1.0 - t) ** 2)
        barrel = (1.0 - (2.0 * s - 1.0) ** 4) * np.sin(np.pi * BELT_BULGE_SHARE * t)
        result: FloatArray = self.crown_m * crown + self.barrel_m * barrel
        return result

    def skin_point(self, x_m: FloatArray, z_m: FloatArray) -> FloatArray:
        """Return the points of the undeformed skin at (x, z) inside the outline, shape (n, 3)."""
        corner = self.corners_at_depth(0.0)
        t = np.asarray(z_m, dtype=np.float64) / self.height_m
        zero = np.zeros_like(t)
        front, rear = bilinear(corner, zero, t)[..., 0], bilinear(corner, zero + 1.0, t)[..., 0]
        s = (np.asarray(x_m) - front) / (rear - front)
        return np.stack((np.asarray(x_m) + zero, self.skin_bulge(s, t), np.asarray(z_m) + zero), axis=-1)


def _require(
    name: str, value: float, low: float, high: float, remedy: str = "choose a value in that range"
) -> None:
    """Raise MeshError unless low <= value <= high."""
    if not (math.isfinite(value) and low <= value <= high):
        unit = "" if name.endswith("_ratio") else " m"
        raise MeshError(name, f"is {value}{unit}, allowed are {low:.4g} to {high:.4g}{unit}; {remedy}")
