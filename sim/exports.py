"""A moment of a run as files for other programs: VTU, GLB, STL and tables, everything SI.

Lengths are metres, x rearward, y to the right, z up; names of arrays and headings of tables carry the unit.
Seam points are no nodes of the sheets: they stand behind the nodes in the list of points, each a vertex of
its own.  The sheets at rest, with section and metal, are `write_shells`; springs and beams go only into the
input of `sim.feinput`.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from meshes.files import write_glb, write_stl
from meshes.part import Surface
from sim.feinput import shell_input
from sim.frames import seam_mask, seam_share_m
from sim.model import DoorModel
from sim.record import Frame, MoveRecord
from sim.results import LIMITS_LINE, series_csv
from sim.run import start_frame

if TYPE_CHECKING:
    import meshio

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NO_PART = -1


def rest_points(model: DoorModel, frame: Frame) -> Floats:
    """Return where every node of a frame stood at rest, shape (n, 3) [m].

    A node that a tear has made stood where the node stood whose place it took in its triangles.
    """
    rest = np.array(model.start.points)
    if len(frame.points) == len(rest) or frame.triangles is None:
        return rest[: len(frame.points)]
    origin = np.arange(len(frame.points))
    before, now = model.surface.triangles.ravel(), frame.triangles.ravel()
    new = now >= len(rest)
    origin[now[new]] = before[new]
    return rest[origin]


def surface_of(model: DoorModel, frame: Frame) -> Surface:
    """Return the sheets at one moment, with their parts named."""
    surface = model.surface
    triangles = surface.triangles if frame.triangles is None else frame.triangles
    return Surface(frame.points, triangles, surface.triangle_part, surface.part_names)


def seam_points(model: DoorModel, points: Floats) -> Floats:
    """Return where the seam's points are on the skin's side, shape (k, 3) [m]."""
    bonds, mask = model.structure.bonds, seam_mask(model.network)
    weights = np.maximum(bonds.coefficients[mask, 0], 0.0)
    places: Floats = np.einsum("ks,ksi->ki", weights, points[bonds.nodes[mask]])
    return places


def _links(model: DoorModel) -> tuple[Ints, Ints]:
    """Return the beams' links, shape (k, 2), and the number of the beam of each, shape (k,)."""
    pairs = [np.stack([beam.nodes[:-1], beam.nodes[1:]], axis=1) for beam in model.structure.beams]
    index = [np.full(len(pair), k) for k, pair in enumerate(pairs)]
    return np.concatenate(pairs), np.concatenate(index)


def moment_mesh(model: DoorModel, frame: Frame) -> meshio.Mesh:
    """Return one moment as a mesh of triangles, beam links and seam points.

    Point data: displacement_m.  Cell data: part_index (sheets in the order of `part_names`, then beams),
    load_ratio (membrane force over yield force), thickness_m, seam_damage_ratio (0 whole, 1 parted) and
    seam_length_m; NaN where a cell has none.
    """
    import meshio

    surface, rest = surface_of(model, frame), rest_points(model, frame)
    links, beam = _links(model)
    seam = seam_points(model, frame.points)
    count, first = len(seam), len(frame.points)
    sizes = (len(surface.triangles), len(links), count)
    mask = seam_mask(model.network)
    thickness = np.array([section.thickness_m for section in model.structure.sections])
    blank = [np.full(size, np.nan) for size in sizes]
    beams_at = len(surface.part_names)
    return meshio.Mesh(
        np.concatenate([frame.points, seam]),
        [
            ("triangle", surface.triangles),
            ("line", links),
            ("vertex", first + np.arange(count)[:, None]),
        ],
        point_data={"displacement_m": np.concatenate([frame.points - rest, seam - seam_points(model, rest)])},
        cell_data={
            "part_index": [surface.triangle_part, beams_at + beam, np.full(count, NO_PART)],
            "load_ratio": [frame.load, *blank[1:]],
            "thickness_m": [thickness[model.structure.triangle_section], *blank[1:]],
            "seam_damage_ratio": [*blank[:2], frame.seam_damage],
            "seam_length_m": [*blank[:2], seam_share_m(model)[mask]],
        },
    )


def part_names(model: DoorModel) -> tuple[str, ...]:
    """Return what each part_index stands for: the sheets, then the beams."""
    return (*model.surface.part_names, *(beam.name for beam in model.structure.beams))


def shell_mesh(model: DoorModel) -> meshio.Mesh:
    """Return the sheets at rest with what a shell solver needs of each: section and metal."""
    import meshio

    s = model.structure
    used, place = np.unique(model.surface.triangles, return_inverse=True)
    sections = [s.sections[k] for k in s.triangle_section]
    return meshio.Mesh(
        np.asarray(s.points)[used],
        [("triangle", place.reshape(-1, 3))],
        point_data={"node_index": used},
        cell_data={
            "part_index": [model.surface.triangle_part],
            "thickness_m": [np.array([item.thickness_m for item in sections])],
            "form_ratio": [np.array([item.form_ratio for item in sections])],
            "young_pa": [np.array([item.metal.young_pa for item in sections])],
            "poisson_ratio": [np.array([item.metal.poisson_ratio for item in sections])],
            "yield_pa": [np.array([item.metal.yield_pa for item in sections])],
            "density_kg_per_m3": [np.array([item.metal.density_kg_per_m3 for item in sections])],
        },
    )


# tables ---------------------------------------------------------------------------------------------------


def _table(heading: Sequence[str], rows: Sequence[Sequence[Any]]) -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(heading)
    writer.writerows(rows)
    return out.getvalue()


def nodes_csv(model: DoorModel, frame: Frame) -> str:
    """Return a row per node: where it is, how it has moved, and the parts it belongs to."""
    surface, moved = surface_of(model, frame), frame.points - rest_points(model, frame)
    parts: list[list[str]] = [[] for _ in frame.points]
    for name in surface.part_names:
        for node in surface.nodes_of((name,)):
            parts[node].append(name)
    for beam in model.structure.beams:
        for node in beam.nodes:
            parts[node].append(beam.name)
    heading = ["node_index", "x_m", "y_m", "z_m", "moved_x_m", "moved_y_m", "moved_z_m", "parts"]
    rows = [
        [k, *map(float, frame.points[k]), *map(float, moved[k]), "; ".join(parts[k])]
        for k in range(len(frame.points))
    ]
    return _table(heading, rows)


def seam_csv(model: DoorModel, frame: Frame) -> str:
    """Return a row per seam point: its place along the hem, where it is and how much of it is gone."""
    bonds, mask = model.structure.bonds, seam_mask(model.network)
    places, length = seam_points(model, frame.points), seam_share_m(model)[mask]
    kinds = [bonds.kinds[k] for k in bonds.kind[mask]]
    heading = ["seam_index", "kind", "station_m", "length_m", "x_m", "y_m", "z_m", "damage_ratio"]
    rows = [
        [k, kinds[k], float(at), float(length[k]), *map(float, places[k]), float(frame.seam_damage[k])]
        for k, at in enumerate(bonds.station[mask])
    ]
    return _table(heading, rows)


def parts_csv(model: DoorModel) -> str:
    """Return a row per part_index."""
    sheets = len(model.surface.part_names)
    rows = [[k, name, "sheet" if k < sheets else "beam"] for k, name in enumerate(part_names(model))]
    return _table(["part_index", "part", "kind"], rows)


# files ----------------------------------------------------------------------------------------------------


def _vtu(path: Path, model: DoorModel, frame: Frame) -> None:
    moment_mesh(model, frame).write(path, file_format="vtu")


def _glb(path: Path, model: DoorModel, frame: Frame) -> None:
    write_glb(surface_of(model, frame), path)


def _stl(path: Path, model: DoorModel, frame: Frame) -> None:
    write_stl(surface_of(model, frame), path)


def _csv(path: Path, model: DoorModel, frame: Frame) -> None:
    path.write_text(nodes_csv(model, frame), encoding="utf-8")


def _inp(path: Path, model: DoorModel, _: Frame) -> None:
    path.write_text(shell_input(model.structure, f"{model.car.name}. {LIMITS_LINE}"), encoding="utf-8")


WRITERS: dict[str, Callable[[Path, DoorModel, Frame], None]] = {
    ".vtu": _vtu,
    ".glb": _glb,
    ".stl": _stl,
    ".csv": _csv,
    ".inp": _inp,
}
"""What writes a moment, by the file's ending; `.inp` is the untouched door whatever the moment."""


def write_shells(path: Path, model: DoorModel) -> None:
    """Write the sheets at rest as VTU."""
    shell_mesh(model).write(path, file_format="vtu")


def write_moment(path: Path, model: DoorModel, frame: Frame) -> None:
    """Write one moment in the format of the path's ending.

    Raises
    ------
    ValueError
        When the ending is none of `WRITERS`.
    OSError
        When the place cannot be written.
    """
    writer = WRITERS.get(path.suffix.lower())
    if writer is None:
        raise ValueError(f"{path.name} ends in {path.suffix or 'nothing'}; use one of {', '.join(WRITERS)}")
    writer(path, model, frame)


MOMENT_FILES = (".vtu", ".glb", ".stl", "-nodes.csv", "-seam.csv")
FILES = (
    *(f"{stem}{end}" for stem in ("start", "moment") for end in MOMENT_FILES),
    "parts.csv",
    "series.csv",
    "shells.vtu",
    "shells.inp",
)
"""What `write_all` writes."""


def write_all(folder: Path, model: DoorModel, records: Sequence[MoveRecord], frame: Frame) -> None:
    """Write the start, one moment, the tables and the untouched shells into a folder.

    Raises
    ------
    OSError
        When the folder cannot be written.
    """
    first = records[0] if records else None
    wrecked = first is not None and first.result is not None and bool(first.result.found)
    start = first.frames[0] if first is not None and wrecked else start_frame(model)
    for stem, shown in (("start", start), ("moment", frame)):
        for end in (".vtu", ".glb", ".stl"):
            write_moment(folder / f"{stem}{end}", model, shown)
        (folder / f"{stem}-nodes.csv").write_text(nodes_csv(model, shown), encoding="utf-8")
        (folder / f"{stem}-seam.csv").write_text(seam_csv(model, shown), encoding="utf-8")
    (folder / "parts.csv").write_text(parts_csv(model), encoding="utf-8")
    (folder / "series.csv").write_text(series_csv(records), encoding="utf-8")
    write_shells(folder / "shells.vtu", model)
    write_moment(folder / "shells.inp", model, frame)
