"""The door's mesh: an outer skin and an inner pan that touch along the hem and share no node."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from meshes import section
from meshes.door_shape import FRAME_TOP_SHARE, DoorShape
from meshes.lattice import Lattice, quad_patch, split_cells
from meshes.nearest import nearest_on_triangles
from meshes.part import FloatArray, Frozen, IntArray, Surface, frozen_floats, frozen_ids

__all__ = ["DoorMesh", "DoorShape", "build_door"]

PARTS = ("outer_skin", "shut_face", "inner_panel", "latch_patch", "hinge_patch")
INNER_PARTS = PARTS[1:]
"""Parts of the inner structure: together one manifold pan, open at the belt."""

CORE_NODES = 5
"""Nodes in which the latch's force enters its patch."""

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
    columns, rows = shape.counts
    skin = quad_patch(shape.corners_at_depth(0.0), columns, rows, shape.skin_bulge)
    panel = quad_patch(shape.corners_at_depth(shape.shut_face_depth_m), columns, rows)
    hem_skin = _hem_chain(skin)
    wall, depth, wall_points = _wall(skin, panel, hem_skin, shape)
    points = np.concatenate((skin.points, panel.points, wall_points))
    chains, own = _beams(shape, points, wall, skin, len(points))
    points = np.concatenate((points, own))
    triangles, part = _triangles(shape, points, skin, panel, wall)
    sets = _node_sets(shape, points, skin, panel, wall)
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
        _edge_slices(rows, columns),
    )


def _hem_chain(lattice: Lattice) -> IntArray:
    """Return the boundary nodes down the hinge edge, along the sill and up the latch edge, (k,)."""
    edge = lattice.boundary
    return np.concatenate((edge["left"][::-1], edge["bottom"][1:-1], edge["right"]))


def _edge_slices(rows: int, columns: int) -> dict[str, tuple[int, int]]:
    return {
        "hinge_edge": (0, rows),
        "sill_edge": (rows, rows + columns),
        "latch_edge": (rows + columns, 2 * rows + columns),
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
    shape: DoorShape, points: FloatArray, skin: Lattice, panel: Lattice, wall: IntArray
) -> tuple[IntArray, IntArray]:
    """Return all triangles with outward normals, and the part of each."""
    walls = split_cells(wall)
    part = np.concatenate(
        (np.full(len(skin.triangles), 0), np.full(len(walls), 1), np.full(len(panel.triangles), 2))
    )
    wall_part = part[len(skin.triangles) : len(skin.triangles) + len(walls)]
    names = ("latch_patch", "hinge_patch", "hinge_patch")
    for part_name, columns in zip(names, _fittings(shape, points, wall), strict=True):
        wall_part[np.isin(walls, wall[:, columns]).all(axis=1)] = PARTS.index(part_name)
    skin_out = skin.triangles[:, ::-1]  # anticlockwise in (x, z) looks along -y
    triangles = np.concatenate((skin_out, walls, panel.triangles + len(skin.points)))
    return triangles, part


def _patch_columns(
    points: FloatArray, wall: IntArray, edge: tuple[int, int], height_m: float, patch_m: float
) -> IntArray:
    """Return the hem indices nearest to a height that span about the patch's height, two at least."""
    index = np.arange(edge[0], edge[1] + 1)
    heights = points[wall[0, index], 2]
    intervals = max(1, round(patch_m / float(np.ptp(heights)) * (len(index) - 1)))
    away = np.round(np.abs(heights - height_m), 9)
    return index[np.sort(np.argsort(away, kind="stable")[: intervals + 1])]


def _fittings(shape: DoorShape, points: FloatArray, wall: IntArray) -> tuple[IntArray, IntArray, IntArray]:
    """Return the hem indices of the patches of latch, lower hinge and upper hinge."""
    columns, rows = shape.counts
    slices = _edge_slices(rows, columns)
    hinge, latch = slices["hinge_edge"], slices["latch_edge"]
    return (
        _patch_columns(points, wall, latch, shape.latch_height_m, shape.latch_patch_m),
        _patch_columns(points, wall, hinge, shape.lower_hinge_height_m, shape.hinge_patch_m),
        _patch_columns(points, wall, hinge, shape.upper_hinge_height_m, shape.hinge_patch_m),
    )


def _node_sets(
    shape: DoorShape, points: FloatArray, skin: Lattice, panel: Lattice, wall: IntArray
) -> dict[str, IntArray]:
    columns, rows = shape.counts
    slices = _edge_slices(rows, columns)
    shift = len(skin.points)
    latch, lower, upper = (wall[:, found] for found in _fittings(shape, points, wall))
    middle = len(wall) // 2
    front, rear = (
        _patch_columns(points, wall, slices[edge], shape.bar_height_m, 0.0)
        for edge in ("hinge_edge", "latch_edge")
    )
    return {
        "hem_lip": _hem_chain(skin),
        "inner_bend": wall[-1],
        "latch_plate": latch.ravel(),
        "latch_core": _core(points, latch, shape.latch_height_m),
        "lower_hinge": lower.ravel(),
        "upper_hinge": upper.ravel(),
        "lower_hinge_core": _core(points, lower, shape.lower_hinge_height_m),
        "upper_hinge_core": _core(points, upper, shape.upper_hinge_height_m),
        "belt_outer_lip": skin.boundary["top"],
        "belt_inner_lip": panel.boundary["top"] + shift,
        "skin_mid": _middle(skin),
        "inner_mid": _middle(panel) + shift,
        "bar_foot_front": wall[:2, front].ravel(),
        "bar_foot_rear": wall[:2, rear].ravel(),
        "frame_foot_front": wall[middle, :2],
        "frame_foot_rear": wall[middle, -2:],
    }


def _core(points: FloatArray, patch: IntArray, height_m: float) -> IntArray:
    """Return the nodes of a patch nearest to its middle: half-way down the shut face, at the given height."""
    ids = patch.ravel()
    depth = -points[ids, 1]
    away = np.hypot(depth - 0.5 * depth.max(), points[ids, 2] - height_m)
    return np.sort(ids[np.argsort(np.round(away, 9), kind="stable")[:CORE_NODES]])


def _middle(lattice: Lattice) -> IntArray:
    """Return the nodes of a sheet near its middle in (x, z)."""
    flat = lattice.points[:, [0, 2]]
    centre = 0.5 * (flat.min(axis=0) + flat.max(axis=0))
    away = np.linalg.norm(flat - centre, axis=1)
    return np.flatnonzero(away <= max(MIDDLE_RADIUS_M, float(np.sort(away)[3])))


def _beams(
    shape: DoorShape, points: FloatArray, wall: IntArray, skin: Lattice, first_free: int
) -> tuple[dict[str, IntArray], FloatArray]:
    """Return the chains, and the positions of the nodes that belong to them alone."""
    bar = _bar_points(shape)
    frame = _frame_points(shape, points, wall)
    bar_ids = first_free + np.arange(len(bar))
    frame_ids = first_free + len(bar) + np.arange(len(frame))
    rear, front = wall[len(wall) // 2, -2:], wall[len(wall) // 2, :2]
    outer = skin.boundary["top"]
    inner = outer + len(skin.points)
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
