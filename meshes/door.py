"""The door's mesh: an outer skin and an inner pan that touch along the hem and share no node."""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from meshes import section
from meshes.door_shape import FRAME_TOP_SHARE, DoorShape
from meshes.graded import Sides, graded_patch, graded_shares, graded_unit
from meshes.lattice import Lattice, bilinear, split_cells
from meshes.nearest import nearest_on_triangles
from meshes.part import FloatArray, Frozen, IntArray, Surface, frozen_floats, frozen_ids

__all__ = ["DoorMesh", "DoorShape", "build_door"]

PARTS = ("outer_skin", "shut_face", "inner_panel", "latch_patch", "hinge_patch", "latch_wrap")
INNER_PARTS = PARTS[1:]
"""Parts of the inner structure: together one manifold pan, open at the belt."""

FRAME_FOOT_M = 0.05
"""How far the window frame's feet reach down the shut face below the belt."""

FOOT_SPOTS = 9
"""Points along either side of a fitting's foot whose load is shared onto nodes."""

MIDDLE_RADIUS_M = 0.12
"""Nodes nearer than this to the middle of the panel speak for "the middle of the panel"."""


@dataclass(frozen=True, eq=False)
class DoorMesh(Frozen):
    """The meshed door; every array is read-only, lengths in metres, ids are node ids of `surface`.

    Parameters
    ----------
    surface
        Skin and inner structure with named parts, node sets and chains (bar, belt strips, window frame).
    shape
        The dimensions it was built from.
    hem_skin, hem_inner
        The coincident node pairs along the hem, shape (k,): from the belt down the hinge edge, along the
        sill, up the latch edge to the belt.
    hem_station_m
        Length along the hem [m] of each pair, from 0, shape (k,).
    wall
        Nodes of the shut face, shape (n_rows, k): row 0 is `hem_inner`, the last row the inner bend.
    wall_depth_m
        Depth [m] of each row below the lip, shape (n_rows,).
    edges
        First and last index (both belonging to the edge) into the hem arrays of "hinge_edge", "sill_edge" and
        "latch_edge"; corners belong to both edges that meet there.
    """

    surface: Surface
    shape: DoorShape
    hem_skin: IntArray
    hem_inner: IntArray
    hem_station_m: FloatArray
    wall: IntArray
    wall_depth_m: FloatArray
    edges: Mapping[str, tuple[int, int]]

    def __post_init__(self) -> None:
        """Freeze the arrays and check that they fit one another."""
        limit, count = self.surface.node_count, len(self.hem_skin)
        rows = len(self.wall_depth_m)
        for name, shape in (("hem_skin", (count,)), ("hem_inner", (count,)), ("wall", (rows, count))):
            object.__setattr__(self, name, frozen_ids(getattr(self, name), shape, name, limit))
        for name, length in (("hem_station_m", count), ("wall_depth_m", rows)):
            object.__setattr__(self, name, frozen_floats(getattr(self, name), (length,), name))
        object.__setattr__(self, "edges", dict(self.edges))

    def mirrored(self) -> DoorMesh:
        """Return the left-hand door: the mirror image in y = 0, every name and order kept."""
        return dataclasses.replace(self, surface=self.surface.mirrored())

    @property
    def outboard_sign(self) -> float:
        """+1 for the right-hand door, -1 for its mirror image: sign of y on the way out of the car."""
        bend = self.surface.points[self.wall[-1], 1]
        return 1.0 if float(bend.mean()) < 0 else -1.0

    def fitting_weights(
        self, edge: str, height_m: float, depth_m: float, half_height_m: float, half_depth_m: float
    ) -> tuple[IntArray, FloatArray]:
        """Return nodes and weights (sum 1) of a rigid fitting's foot on the shut face, on any lattice.

        Parameters
        ----------
        height_m, depth_m
            Middle of the foot: height z (upright edges), depth below the lip.
        half_height_m, half_depth_m
            Half its sides.

        Returns
        -------
        nodes, weights
            Shapes (k,): the rectangle's points shared onto the nodes of the triangles they lie on.
        """
        spots = (np.arange(FOOT_SPOTS) + 0.5) / FOOT_SPOTS * 2.0 - 1.0
        station = self.edge_station(edge, height_m)
        points = [
            self.section_point(station + half_height_m * up, depth_m + half_depth_m * deep)[1]
            for up in spots
            for deep in spots
        ]
        triangle, weights, _ = self.locate(np.array(points), ("shut_face", "latch_patch", "hinge_patch"))
        nodes, place = np.unique(self.surface.triangles[triangle], return_inverse=True)
        total = np.bincount(place.ravel(), weights.ravel())
        kept = total > 1e-12
        return nodes[kept], total[kept] / total[kept].sum()

    def fitting_centre(self, edge: str, height_m: float) -> FloatArray:
        """Return the point [m], shape (3,), half-way down the shut face of the hinge or latch edge."""
        station = self.edge_station(edge, height_m)
        return self.section_point(station, 0.5 * self.shape.shut_face_depth_m)[1]

    def edge_station(self, edge: str, along_m: float) -> float:
        """Return the length along the hem [m] at a height z (upright edges) or a distance x (sill edge)."""
        return section.edge_station(self, edge, along_m)

    def edge_of_station(self, station_m: float) -> str:
        """Return the name of the edge a length along the hem [m] belongs to."""
        return section.edge_of_station(self, station_m)

    def section_point(self, station_m: float, depth_m: float) -> tuple[str, FloatArray]:
        """Return ("hem_lip" | "shut_face" | "inner_face", point [m] of shape (3,)) of a tip at a depth."""
        return section.section_point(self, station_m, depth_m)

    def section_outline(self, station_m: float) -> dict[str, FloatArray]:
        """Return named polylines (inwards, outboard) [m], each (k, 2), of the section across the hem."""
        return section.section_outline(self, station_m)

    def locate(
        self, points: npt.ArrayLike, parts: tuple[str, ...] = PARTS
    ) -> tuple[IntArray, FloatArray, FloatArray]:
        """Return the nearest triangle of each point, its barycentric weights and the distance.

        Parameters
        ----------
        points
            Positions [m], shape (k, 3).
        parts
            Names of the parts searched.

        Returns
        -------
        triangle_ids, weights, distances
            Rows of `surface.triangles` (k,), barycentric weights of their nodes (k, 3), distances [m] (k,).
        """
        wanted = [self.surface.part_index(part) for part in parts]
        ids = np.flatnonzero(np.isin(self.surface.triangle_part, wanted))
        queries = np.asarray(points, dtype=np.float64)
        triangles = self.surface.triangles[ids]
        found, weights, distance = nearest_on_triangles(queries, self.surface.points, triangles)
        return ids[found], weights, distance


def build_door(shape: DoorShape) -> DoorMesh:
    """Return the mesh of a right-hand front door; raises MeshError as `DoorShape.check` does."""
    shape.check()
    unit = _unit(shape)
    skin = graded_patch(shape.corners_at_depth(0.0), unit, shape.skin_bulge)
    panel = graded_patch(shape.corners_at_depth(shape.shut_face_depth_m), unit)
    hem_skin = _hem_chain(skin)
    wall, depth, wall_points = _wall(skin, panel, hem_skin, shape)
    points = np.concatenate((skin.points, panel.points, wall_points))
    chains, own = _beams(shape, points, unit, wall, len(points))
    points = np.concatenate((points, own))
    triangles, part = _triangles(shape, points, unit, skin, panel, wall)
    sets = _node_sets(shape, points, unit, skin, panel, wall)
    surface = Surface(points, triangles, part, PARTS, sets, chains)
    steps = np.linalg.norm(np.diff(points[hem_skin], axis=0), axis=1)
    return DoorMesh(
        surface,
        shape,
        hem_skin,
        wall[0],
        np.concatenate(([0.0], np.cumsum(steps))),
        wall,
        depth,
        _edge_slices(unit),
    )


def _unit(shape: DoorShape) -> Lattice:
    """Return the lattice skin and inner panel are laid out on; fittings end on nodes at any spacing."""
    a, b, c, d = shape.flat_corners
    size, height = shape.grading, shape.height_m

    def ends(middle_m: float, patch_m: float) -> list[float]:
        return [(middle_m - 0.5 * patch_m) / height, (middle_m + 0.5 * patch_m) / height]

    hinges = ends(shape.lower_hinge_height_m, shape.hinge_patch_m)
    hinges += ends(shape.upper_hinge_height_m, shape.hinge_patch_m)
    latch = ends(shape.latch_height_m, shape.latch_patch_m)
    right = graded_shares(b, c, size, latch)
    sides = Sides(
        graded_shares(a, d, size, hinges), right, graded_shares(a, b, size), graded_shares(d, c, size)
    )
    return graded_unit(shape.flat_corners, sides, size, _wrap_nodes(shape, right))


def _wrap_nodes(shape: DoorShape, right: FloatArray) -> FloatArray | None:
    """Return the (s, t) of the rows in which the latch's patch goes round the inner bend, shape (k, 2)."""
    if shape.latch_wrap_m <= 0.0:
        return None
    size = shape.grading
    depths = np.linspace(0.0, shape.latch_wrap_m, 65)
    asked = 1.0 / np.minimum(size.coarse_m, size.fine_m + size.growth * depths)
    count = math.ceil(float(np.sum(0.5 * (asked[1:] + asked[:-1]) * np.diff(depths))))
    ends = right[_near(right * shape.height_m, shape.latch_height_m, shape.latch_patch_m)][[0, -1]]
    nodes = []
    for part in np.arange(1, count + 1) / count:
        share = 1.0 - _wrap_share(shape, float(ends.mean())) * part
        spacing = float(
            size(bilinear(shape.flat_corners, np.array([share]), np.array([float(ends.mean())])))[0]
        )
        rows = np.linspace(float(ends[0]), float(ends[1]), max(1, round(shape.latch_patch_m / spacing)) + 1)
        nodes += [[1.0 - _wrap_share(shape, t) * part, t] for t in rows]
    return np.array(nodes)


def _wrap_share(shape: DoorShape, t: FloatArray | float) -> FloatArray | float:
    """Return the wrap's width as a share of the inner panel's at a height share."""
    a, b, c, d = shape.corners_at_depth(shape.shut_face_depth_m)[:, 0]
    width: FloatArray | float = (1.0 - t) * (b - a) + t * (c - d)
    return shape.latch_wrap_m / width


def _near(heights_m: FloatArray, middle_m: float, patch_m: float) -> npt.NDArray[np.bool_]:
    near: npt.NDArray[np.bool_] = np.abs(heights_m - middle_m) <= 0.5 * patch_m + 1e-9
    return near


def _hem_chain(lattice: Lattice) -> IntArray:
    """Return the boundary nodes down the hinge edge, along the sill and up the latch edge, (k,)."""
    edge = lattice.boundary
    return np.concatenate((edge["left"][::-1], edge["bottom"][1:-1], edge["right"]))


def _edge_slices(unit: Lattice) -> dict[str, tuple[int, int]]:
    left, bottom, right = (len(unit.boundary[side]) - 1 for side in ("left", "bottom", "right"))
    return {
        "hinge_edge": (0, left),
        "sill_edge": (left, left + bottom),
        "latch_edge": (left + bottom, left + bottom + right),
    }


def _wall(
    skin: Lattice, panel: Lattice, hem: IntArray, shape: DoorShape
) -> tuple[IntArray, FloatArray, FloatArray]:
    """Return the node grid of the shut face, the depth of its rows, and the positions of its own nodes."""
    intervals, count = shape.wall_intervals, len(hem)
    share = np.arange(intervals + 1) / intervals
    lip, bend = skin.points[hem], panel.points[hem]
    own = lip + share[:-1, None, None] * (bend - lip)
    first = len(skin.points) + len(panel.points)
    grid = np.empty((intervals + 1, count), dtype=np.int64)
    grid[:-1] = first + np.arange(intervals * count).reshape(intervals, count)
    grid[-1] = len(skin.points) + hem
    return grid, share * shape.shut_face_depth_m, own.reshape(-1, 3)


def _triangles(
    shape: DoorShape, points: FloatArray, unit: Lattice, skin: Lattice, panel: Lattice, wall: IntArray
) -> tuple[IntArray, IntArray]:
    """Return all triangles with outward normals, and the part of each."""
    walls = split_cells(wall)
    part = np.concatenate(
        (np.full(len(skin.triangles), 0), np.full(len(walls), 1), np.full(len(panel.triangles), 2))
    )
    wall_part = part[len(skin.triangles) : len(skin.triangles) + len(walls)]
    names = ("latch_patch", "hinge_patch", "hinge_patch")
    for part_name, columns in zip(names, _fittings(shape, points, unit, wall), strict=True):
        wall_part[np.isin(walls, wall[:, columns]).all(axis=1)] = PARTS.index(part_name)
    if shape.latch_wrap_m > 0.0:
        centre = unit.points[unit.triangles].mean(axis=1)
        wrapped = centre[:, 0] > 1.0 - _wrap_share(shape, centre[:, 1])
        wrapped &= _near(centre[:, 1] * shape.height_m, shape.latch_height_m, shape.latch_patch_m)
        part[len(skin.triangles) + len(walls) :][wrapped] = PARTS.index("latch_wrap")
    skin_out = skin.triangles[:, ::-1]  # anticlockwise in (x, z) looks along -y
    triangles = np.concatenate((skin_out, walls, panel.triangles + len(skin.points)))
    return triangles, part


def _patch_columns(
    points: FloatArray, wall: IntArray, edge: tuple[int, int], height_m: float, patch_m: float
) -> IntArray:
    """Return the hem indices of an edge within a patch's height."""
    index = np.arange(edge[0], edge[1] + 1)
    return index[_near(points[wall[0, index], 2], height_m, patch_m)]


def _fittings(
    shape: DoorShape, points: FloatArray, unit: Lattice, wall: IntArray
) -> tuple[IntArray, IntArray, IntArray]:
    """Return the hem indices of the patches of latch, lower hinge and upper hinge."""
    slices = _edge_slices(unit)
    hinge, latch = slices["hinge_edge"], slices["latch_edge"]
    return (
        _patch_columns(points, wall, latch, shape.latch_height_m, shape.latch_patch_m),
        _patch_columns(points, wall, hinge, shape.lower_hinge_height_m, shape.hinge_patch_m),
        _patch_columns(points, wall, hinge, shape.upper_hinge_height_m, shape.hinge_patch_m),
    )


def _node_sets(
    shape: DoorShape, points: FloatArray, unit: Lattice, skin: Lattice, panel: Lattice, wall: IntArray
) -> dict[str, IntArray]:
    shift = len(skin.points)
    latch, lower, upper = (wall[:, found].ravel() for found in _fittings(shape, points, unit, wall))
    return {
        "hem_lip": _hem_chain(skin),
        "inner_bend": wall[-1],
        "latch_plate": latch,
        "lower_hinge": lower,
        "upper_hinge": upper,
        "belt_outer_lip": skin.boundary["top"],
        "belt_inner_lip": panel.boundary["top"] + shift,
        "skin_mid": _middle(skin),
        "inner_mid": _middle(panel) + shift,
    }


def _middle(lattice: Lattice) -> IntArray:
    """Return the nodes of a sheet near its middle in (x, z)."""
    flat = lattice.points[:, [0, 2]]
    centre = 0.5 * (flat.min(axis=0) + flat.max(axis=0))
    away = np.linalg.norm(flat - centre, axis=1)
    return np.flatnonzero(away <= max(MIDDLE_RADIUS_M, float(np.sort(away)[3])))


def _beams(
    shape: DoorShape, points: FloatArray, unit: Lattice, wall: IntArray, first_free: int
) -> tuple[dict[str, IntArray], FloatArray]:
    """Return the chains, and the positions of the nodes that belong to them alone."""
    bar = _bar_points(shape)
    frame = _frame_points(shape, points, wall)
    bar_ids = first_free + np.arange(len(bar))
    frame_ids = first_free + len(bar) + np.arange(len(frame))
    middle = wall[len(wall) // 2]
    height = points[middle, 2]
    foot = height >= shape.height_m - FRAME_FOOT_M - 1e-9
    half = len(middle) // 2
    rear = middle[half:][foot[half:]]
    front = middle[:half][foot[:half]]
    outer = unit.boundary["top"]
    inner = outer + len(unit.points)
    chains = {
        "bar": bar_ids,
        "belt_outer_strip": outer,
        "belt_inner_strip": inner,
        "frame": np.concatenate((rear, frame_ids, front)),
    }
    return chains, np.concatenate((bar, frame))


def _bar_points(shape: DoorShape) -> FloatArray:
    """Return the bar's nodes: level, front to rear, a constant gap behind the skin, shape (k, 3)."""
    corner = shape.corners_at_depth(0.0)
    share = shape.bar_height_m / shape.height_m
    front = corner[0, 0] + share * (corner[3, 0] - corner[0, 0]) + shape.bar_end_gap_m
    rear = corner[1, 0] + share * (corner[2, 0] - corner[1, 0]) - shape.bar_end_gap_m
    x = np.linspace(front, rear, max(4, round((rear - front) / shape.spacing_m) + 1))
    points = shape.skin_point(x, np.full_like(x, shape.bar_height_m))
    points[:, 1] -= shape.bar_inset_m
    return points


def _frame_points(shape: DoorShape, points: FloatArray, wall: IntArray) -> FloatArray:
    """Return the window frame's own nodes from the latch-side foot up, forward and down to the hinge side."""
    middle = len(wall) // 2
    rear, front = points[wall[middle, -1]], points[wall[middle, 0]]
    up = np.array([0.0, -shape.frame_lean_m, shape.frame_height_m])
    corners = np.stack(
        (
            rear,
            rear + up - [FRAME_TOP_SHARE * shape.length_m, 0.0, 0.0],
            front + up + [shape.frame_rake_m, 0.0, 0.0],
            front,
        )
    )
    lengths = np.linalg.norm(np.diff(corners, axis=0), axis=1)
    counts = np.maximum(2, np.round(lengths / shape.spacing_m).astype(int))
    legs = [
        corners[i] + np.arange(n)[:, None] / n * (corners[i + 1] - corners[i]) for i, n in enumerate(counts)
    ]
    return np.concatenate(legs)[1:]
