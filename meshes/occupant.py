"""The seated occupant: capsules of measured size, and the distance from metal to them: never injury.

Body sizes: C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel (ANSUR II),
NATICK/TR-15/007: percentiles of its public data (4082 men, 1986 women). Soldiers are fitter than the public,
so a real occupant may well be larger. Sizes not taken from there are marked "assumed" beside their value.
"""

from __future__ import annotations

import dataclasses
import math
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from meshes.door_shape import DoorShape
from meshes.nearest import nearest_on_triangles
from meshes.part import FloatArray, Frozen, IntArray, MeshError, frozen_floats
from meshes.side_shape import SideShape


@dataclass(frozen=True)
class BodySize:
    """Sizes of a seated person [m], as ANSUR II (NATICK/TR-15/007) measures them, sitting erect.

    Parameters
    ----------
    sitting_height_m, eye_height_m, shoulder_height_m, elbow_height_m
        Above the seat; the shoulder (acromion) is derived: sitting height - stature + acromial height.
    hip_breadth_m, shoulder_breadth_m
        Greatest breadths, sitting; the shoulders over the deltoids.
    buttock_knee_m
        Back of the buttock to the front of the knee.
    popliteal_height_m
        Sole to the underside of the thigh at the knee.
    thigh_clearance_m
        Seat to the top of the thigh.
    """

    sitting_height_m: float
    eye_height_m: float
    shoulder_height_m: float
    elbow_height_m: float
    hip_breadth_m: float
    shoulder_breadth_m: float
    buttock_knee_m: float
    popliteal_height_m: float
    thigh_clearance_m: float


BODY_SIZES = {
    "male_p5": BodySize(0.860, 0.750, 0.552, 0.197, 0.333, 0.459, 0.569, 0.390, 0.157),
    "male_p50": BodySize(0.918, 0.804, 0.603, 0.246, 0.378, 0.509, 0.617, 0.430, 0.180),
    "male_p95": BodySize(0.977, 0.860, 0.653, 0.291, 0.431, 0.567, 0.669, 0.471, 0.207),
    "female_p5": BodySize(0.803, 0.698, 0.515, 0.189, 0.348, 0.406, 0.541, 0.350, 0.145),
    "female_p50": BodySize(0.857, 0.748, 0.564, 0.233, 0.397, 0.450, 0.589, 0.387, 0.167),
    "female_p95": BodySize(0.912, 0.799, 0.609, 0.276, 0.456, 0.499, 0.646, 0.428, 0.191),
}
"""Percentiles of ANSUR II, each dimension taken alone: nobody is at one percentile in all of them."""

HEAD_RADIUS_M = 0.085
"""Assumed: about half a head's breadth and length together; the survey's head sizes are not used."""
NECK_RADIUS_M = 0.060
"""Assumed: a neck of some 0.38 m girth."""
CHEST_RADIUS_M = 0.130
"""Assumed: half the trunk between arms that hang down."""
ARM_RADIUS_M = 0.050
"""Assumed: an upper arm of some 0.31 m girth."""
LEG_RADIUS_M = 0.055
"""Assumed: a calf of some 0.35 m girth."""
STEEPEST_LEG_RATIO = 0.985
"""Assumed: drop over length of a lower leg that hangs from too high a seat: 10 degrees off the vertical."""
KNEE_SETBACK_M = 0.060
"""Assumed: axis of the knee behind its front."""

BODY_PARTS = {
    "head": ("head",),
    "trunk": ("neck", "chest", "near_arm"),
    "hip": ("pelvis",),
    "thigh": ("near_thigh",),
    "lower leg": ("near_lower_leg",),
}
"""Capsules of each body part that clearance is told for; the near arm hangs beside the trunk."""

SEATS = ("front", "rear")
MAX_LEAN_RAD = float(np.radians(60.0))
MAX_INBOARD_RAD = float(np.radians(45.0))


@dataclass(frozen=True)
class Posture:
    """How the occupant sits beside the door; assumed, inside remembered ranges for front seats of saloons.

    Parameters
    ----------
    hip_gap_m
        Inner panel to the near surface of the hip, 0.08 to 0.15 m remembered.
    hip_x_m, hip_z_m
        Axis of the hips in the door's axes.
    torso_angle_rad
        Backward lean of the trunk from the vertical (25 degrees).
    torso_inboard_rad
        Lean of the trunk away from the door, about the hips.
    thigh_angle_rad
        Rise of the thigh from hip to knee (15 degrees).
    heel_drop_m
        Hip axis to heel, vertically.
    """

    hip_gap_m: float = 0.12
    hip_x_m: float = 0.62
    hip_z_m: float = 0.24
    torso_angle_rad: float = float(np.radians(25.0))
    thigh_angle_rad: float = float(np.radians(15.0))
    heel_drop_m: float = 0.27
    torso_inboard_rad: float = 0.0

    def check(self) -> None:
        """Raise MeshError, naming the parameter and the allowed range, for a posture out of range."""
        ranges = {
            "hip_gap_m": (0.0, 0.5),
            "hip_x_m": (-0.5, 2.0),
            "hip_z_m": (-0.2, 1.0),
            "torso_angle_rad": (-0.2, 1.2),
            "thigh_angle_rad": (-0.3, 0.8),
            "heel_drop_m": (0.05, 0.5),
            "torso_inboard_rad": (0.0, MAX_INBOARD_RAD),
        }
        for item in dataclasses.fields(self):
            low, high = ranges[item.name]
            if not low <= getattr(self, item.name) <= high:
                raise MeshError(item.name, f"is {getattr(self, item.name)}, allowed are {low} to {high}")


@dataclass(frozen=True, eq=False)
class Capsule(Frozen):
    """All points within `radius_m` [m] of the segment from `start` to `end`, each [m] of shape (3,)."""

    name: str
    start: FloatArray
    end: FloatArray
    radius_m: float

    def __post_init__(self) -> None:
        """Check and freeze."""
        for item in ("start", "end"):
            object.__setattr__(self, item, frozen_floats(getattr(self, item), (3,), f"{self.name} {item}"))
        if not (np.isfinite(self.radius_m) and self.radius_m > 0):
            raise MeshError("radius_m", f"of {self.name} is {self.radius_m} m, must be above zero")

    def mirrored(self) -> Capsule:
        """Return the mirror image in y = 0."""
        flip = np.array([1.0, -1.0, 1.0])
        return dataclasses.replace(self, start=self.start * flip, end=self.end * flip)


def seated_occupant(
    door: DoorShape, size: BodySize | None = None, posture: Posture | None = None
) -> tuple[Capsule, ...]:
    """Return head, neck, chest, pelvis, near arm, near thigh and near lower leg beside a right-hand door.

    Raises
    ------
    MeshError
        If the posture is out of range, or the legs cannot reach the heel's height.
    """
    body = BODY_SIZES["male_p50"] if size is None else size
    pose = Posture() if posture is None else posture
    pose.check()
    near_hip = -door.shut_face_depth_m - pose.hip_gap_m
    hip = np.array([pose.hip_x_m, near_hip - 0.5 * body.hip_breadth_m, pose.hip_z_m])
    return (*_upper_body(body, pose, hip), *_legs(body, pose, hip))


def side_occupant(
    side: SideShape,
    *,
    seat: str = "front",
    size: str = "male_p50",
    lean_rad: float | None = None,
    hip_gap_m: float = Posture.hip_gap_m,
    inboard_rad: float = 0.0,
) -> tuple[Capsule, ...]:
    """Return the capsules of an occupant of a right-hand side.

    Parameters
    ----------
    seat
        "front" or "rear".
    size
        A name of `BODY_SIZES`.
    lean_rad
        Backward lean of the trunk from the vertical, 0 to 60 degrees; none: 25 degrees.
    hip_gap_m
        Inner panel to the near surface of the hip.
    inboard_rad
        Lean of the trunk away from the door, 0 to 45 degrees.

    Raises
    ------
    MeshError
        If seat or size is unknown, or a lean is out of range.
    """
    if seat not in SEATS:
        raise MeshError("seat", f"is {seat!r}, allowed are {SEATS}")
    if size not in BODY_SIZES:
        raise MeshError("size", f"is {size!r}, allowed are {tuple(BODY_SIZES)}")
    lean = Posture.torso_angle_rad if lean_rad is None else lean_rad
    if not (np.isfinite(lean) and 0.0 <= lean <= MAX_LEAN_RAD):
        raise MeshError("lean_rad", f"is {lean} rad, allowed are 0 to {MAX_LEAN_RAD:.4g} rad (60 degrees)")
    back = side.rear_hip_x_m if seat == "rear" else 0.0
    body = BODY_SIZES[size]
    pose = Posture(
        hip_x_m=Posture.hip_x_m + back,
        hip_z_m=side.hip_height_m - side.sill_height_m,
        torso_angle_rad=lean,
        heel_drop_m=min(side.heel_drop_m, _longest_drop_m(body, Posture.thigh_angle_rad)),
        hip_gap_m=hip_gap_m,
        torso_inboard_rad=inboard_rad,
    )
    return seated_occupant(side.front, body, pose)


def part_clearance(
    points: FloatArray, triangles: IntArray, capsules: tuple[Capsule, ...]
) -> dict[str, float]:
    """Return the least distance [m] from metal to each body part of `BODY_PARTS`, negative inside.

    Parameters
    ----------
    points, triangles
        As in `sheet_clearance`.
    """
    distance = dict(
        zip((item.name for item in capsules), sheet_clearance(points, triangles, capsules), strict=True)
    )
    return {
        part: float(min(distance[name] for name in names if name in distance))
        for part, names in BODY_PARTS.items()
        if any(name in distance for name in names)
    }


def _upper_body(body: BodySize, pose: Posture, hip: FloatArray) -> list[Capsule]:
    """Return head, neck, chest and near arm; heights above the seat run along the leaning trunk."""
    back, inward = pose.torso_angle_rad, pose.torso_inboard_rad
    along = np.array([np.sin(back), -np.cos(back) * np.sin(inward), np.cos(back) * np.cos(inward)])
    outward = np.array([0.0, np.cos(inward), np.sin(inward)])
    side = (0.5 * body.shoulder_breadth_m - ARM_RADIUS_M) * outward

    def above_seat(height_m: float) -> FloatArray:
        point: FloatArray = hip + (height_m - 0.5 * body.thigh_clearance_m) * along
        return point

    head_top = body.sitting_height_m - HEAD_RADIUS_M
    head_low = 2 * body.eye_height_m - body.sitting_height_m + HEAD_RADIUS_M  # eyes half-way down the head
    shoulder = body.shoulder_height_m
    return [
        Capsule("head", above_seat(head_low), above_seat(head_top), HEAD_RADIUS_M),
        Capsule("neck", above_seat(shoulder), above_seat(head_low), NECK_RADIUS_M),
        Capsule(
            "chest",
            above_seat(0.5 * body.thigh_clearance_m + CHEST_RADIUS_M),
            above_seat(shoulder - CHEST_RADIUS_M),
            CHEST_RADIUS_M,
        ),
        Capsule(
            "near_arm",
            above_seat(shoulder - ARM_RADIUS_M) + side,
            above_seat(body.elbow_height_m + ARM_RADIUS_M) + side,
            ARM_RADIUS_M,
        ),
    ]


def _legs(body: BodySize, pose: Posture, hip: FloatArray) -> list[Capsule]:
    """Return pelvis, near thigh and near lower leg."""
    radius = 0.5 * body.thigh_clearance_m
    side = np.array([0.0, 0.5 * body.hip_breadth_m - radius, 0.0])
    forward = np.array([-np.cos(pose.thigh_angle_rad), 0.0, np.sin(pose.thigh_angle_rad)])
    knee = hip + side + _thigh_length_m(body) * forward
    shin_length = _shin_length_m(body)
    drop = knee[2] - (hip[2] - pose.heel_drop_m)
    if not 0.0 < drop < shin_length:
        raise MeshError(
            "heel_drop_m",
            f"puts the heel {drop:.3g} m below the knee, the lower leg is "
            f"{shin_length:.3g} m; lower heel_drop_m or thigh_angle_rad",
        )
    toward = np.array([-np.sqrt(shin_length**2 - drop**2), 0.0, -drop]) / shin_length
    return [
        Capsule("pelvis", hip - side, hip + side, radius),
        Capsule("near_thigh", hip + side, knee, radius),
        Capsule("near_lower_leg", knee, knee + (shin_length - LEG_RADIUS_M) * toward, LEG_RADIUS_M),
    ]


def _longest_drop_m(body: BodySize, thigh_angle_rad: float) -> float:
    """Return how far below the hip [m] a heel can reach; a short leg stays off a low floor."""
    knee_m = _thigh_length_m(body) * math.sin(thigh_angle_rad)
    return STEEPEST_LEG_RATIO * _shin_length_m(body) - knee_m


def _thigh_length_m(body: BodySize) -> float:
    return body.buttock_knee_m - 0.5 * body.thigh_clearance_m - KNEE_SETBACK_M


def _shin_length_m(body: BodySize) -> float:
    return body.popliteal_height_m + 0.5 * body.thigh_clearance_m


def clearance(points: npt.ArrayLike, capsules: tuple[Capsule, ...]) -> FloatArray:
    """Return the distances [m] from points (k, 3) to the capsules, (k, n_capsules); negative inside."""
    query = np.asarray(points, dtype=np.float64)
    start, end, radius = _stacked(capsules)
    along = end - start
    length_squared = np.maximum((along * along).sum(1), np.finfo(np.float64).tiny)
    share = np.clip(((query[:, None] - start) * along).sum(2) / length_squared, 0.0, 1.0)
    gap: FloatArray = np.linalg.norm(query[:, None] - start - share[..., None] * along, axis=2) - radius
    return gap


def sheet_clearance(points: FloatArray, triangles: IntArray, capsules: tuple[Capsule, ...]) -> FloatArray:
    """Return the least distances [m] from whole triangles to the surfaces of capsules, shape (n_capsules,).

    Negative where the metal is inside; an axis that pierces the sheet gives minus the radius.

    Parameters
    ----------
    points, triangles
        Node positions [m] (n, 3) and node ids (m, 3), m >= 1.
    """
    start, end, radius = _stacked(capsules)
    _, _, from_ends = nearest_on_triangles(np.concatenate((start, end)), points, triangles)
    least = np.minimum(from_ends[: len(radius)], from_ends[len(radius) :])
    least = np.minimum(least, clearance(points[np.unique(triangles)], capsules).min(axis=0) + radius)
    corner = points[triangles]
    for first in range(3):
        crossing = _crossing_gaps(start, end, corner[:, first], corner[:, (first + 1) % 3])
        least = np.minimum(least, crossing.min(axis=1))
    least[_pierces(start, end, corner)] = 0.0
    result: FloatArray = least - radius
    return result


def _stacked(capsules: tuple[Capsule, ...]) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return starts (n, 3), ends (n, 3) and radii (n,) [m]."""
    if not capsules:
        raise MeshError("capsules", "hold none; pass at least one")
    return (
        np.array([item.start for item in capsules]),
        np.array([item.end for item in capsules]),
        np.array([item.radius_m for item in capsules]),
    )


def _crossing_gaps(
    start: FloatArray, end: FloatArray, other_start: FloatArray, other_end: FloatArray
) -> FloatArray:
    """Return the distances [m] of all pairs of segments that are nearest inside both, shape (k, m).

    Infinite for all other pairs: there an end is nearest, which the caller has from the ends themselves.
    """
    u, v = (end - start)[:, None], (other_end - other_start)[None]
    offset = start[:, None] - other_start[None]
    uu, vv, uv = (u * u).sum(2), (v * v).sum(2), (u * v).sum(2)
    uw, vw = (u * offset).sum(2), (v * offset).sum(2)
    det = uu * vv - uv * uv
    skew = det > 1e-12 * uu * vv
    scale = 1.0 / np.where(skew, det, 1.0)
    s, t = (uv * vw - vv * uw) * scale, (uu * vw - uv * uw) * scale
    inside = skew & (s >= 0) & (s <= 1) & (t >= 0) & (t <= 1)
    gap = np.linalg.norm(offset + s[..., None] * u - t[..., None] * v, axis=2)
    return np.where(inside, gap, np.inf)


def _pierces(start: FloatArray, end: FloatArray, corner: FloatArray) -> npt.NDArray[np.bool_]:
    """Return which segments (k,) pass through one of the triangles, corner shape (m, 3, 3)."""
    ab, ac = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    normal = np.cross(ab, ac)
    along, offset = (end - start)[:, None], start[:, None] - corner[None, :, 0]
    fall = (along * normal).sum(2)
    level = fall == 0.0
    share = -(offset * normal).sum(2) / np.where(level, 1.0, fall)
    hit = offset + share[..., None] * along
    area = (normal * normal).sum(1)
    second = (np.cross(hit, ac) * normal).sum(2) / area
    third = (np.cross(ab, hit) * normal).sum(2) / area
    inside = (second >= 0) & (third >= 0) & (second + third <= 1) & (share >= 0) & (share <= 1) & ~level
    found: npt.NDArray[np.bool_] = inside.any(axis=1)
    return found
