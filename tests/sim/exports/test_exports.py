"""Moments as files: what other libraries read back is what the model holds, in the units the names say.

meshio and trimesh, two general-purpose libraries, read every file back and compute areas on their own.
"""

import csv
import dataclasses
import io

import meshio
import numpy as np
import pytest
import trimesh

from sim import exports
from sim.door_model import build_model
from sim.frames import seam_mask
from sim.ledger import Ledger
from sim.plan import Car, EdgePoint, Spread
from sim.record import MoveRecord
from sim.run import Begin, MoveRun, start_frame
from sim.split import split
from sim.tear import Candidate

CAR = Car(lattice_spacing_m=0.09)
SINGLE = 1.0e-6
"""Relative step of the 32-bit floats that STL and GLB hold, with a factor of ten for a sum of thousands."""


@pytest.fixture(scope="module")
def model():
    return build_model(CAR)


@pytest.fixture(scope="module")
def record(model):
    run = MoveRun(model, Spread(door=EdgePoint(), opening_m=0.01), Begin(model.start, Ledger()))
    for _ in run:
        pass
    return MoveRecord(run.frames, run.result(with_residual=False))


@pytest.fixture(scope="module")
def pushed(record):
    return record.frames[-1]


def torn(model, frame):
    """Return the frame with the skin opened along one edge of the hem, as a tear leaves it."""
    triangles = model.structure.triangles
    node = int(model.mesh.hem_skin[len(model.mesh.hem_skin) // 2])
    fan = [int(t) for t in np.flatnonzero((triangles == node).any(axis=1))]
    side = fan[:1]
    tip = next(int(n) for n in triangles[side[0]] if n != node and n not in model.mesh.hem_skin)
    cut = split(model.structure, Candidate(node, tip, tuple(side), 0.05, 1.0))
    points = np.concatenate([frame.points, frame.points[node][None] + 0.01])
    return node, dataclasses.replace(frame, points=points, triangles=cut.triangles)


def area(points, triangles) -> float:
    """Half the cross products, summed: typed here and not taken from the program."""
    a, b, c = (points[triangles[:, k]] for k in range(3))
    return 0.5 * float(np.linalg.norm(np.cross(b - a, c - a), axis=1).sum())


def table(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(text)))


class TestMoment:
    def test_vtu_holds_nodes_displacement_parts_and_seam(self, model, pushed, tmp_path):
        exports.write_moment(tmp_path / "m.vtu", model, pushed)
        mesh = meshio.read(tmp_path / "m.vtu")
        nodes, seam = len(pushed.points), int(seam_mask(model.network).sum())
        assert len(mesh.points) == nodes + seam
        np.testing.assert_array_equal(mesh.points[:nodes], pushed.points)
        moved = mesh.point_data["displacement_m"]
        np.testing.assert_allclose(moved[:nodes], pushed.points - model.start.points, rtol=0.0, atol=1e-15)
        assert np.abs(moved[nodes:]).max() > 1e-3
        cells = mesh.cells_dict
        np.testing.assert_array_equal(cells["triangle"], model.structure.triangles)
        assert len(cells["vertex"]) == seam
        assert len(cells["line"]) == sum(len(beam.nodes) - 1 for beam in model.structure.beams)
        data = mesh.cell_data_dict
        np.testing.assert_array_equal(data["load_ratio"]["triangle"], pushed.load)
        np.testing.assert_array_equal(data["seam_damage_ratio"]["vertex"], pushed.seam_damage)
        assert np.isnan(data["seam_damage_ratio"]["triangle"]).all()
        names = exports.part_names(model)
        for k, name in enumerate(model.mesh.surface.part_names):
            assert names[k] == name
            mine = cells["triangle"][data["part_index"]["triangle"] == k]
            np.testing.assert_array_equal(mine, model.mesh.surface.triangles_of(name))
        # the seam's lengths add up to the hem
        length = data["seam_length_m"]["vertex"].sum()
        assert length == pytest.approx(float(model.mesh.hem_station_m[-1]), rel=1e-9)  # a sum of 100 terms

    def test_seam_points_lie_on_the_hem(self, model):
        places = exports.seam_points(model, model.start.points)
        lip = model.start.points[model.mesh.hem_skin]
        station = model.structure.bonds.station[seam_mask(model.network)]
        for axis in range(3):
            expected = np.interp(station, model.mesh.hem_station_m, lip[:, axis])
            np.testing.assert_allclose(places[:, axis], expected, rtol=0.0, atol=1e-12)

    @pytest.mark.parametrize("ending", [".stl", ".glb"])
    def test_shapes_keep_area_and_place(self, ending, model, pushed, tmp_path):
        path = tmp_path / f"m{ending}"
        exports.write_moment(path, model, pushed)
        read = trimesh.load_scene(path).to_geometry()
        assert len(read.faces) == len(model.structure.triangles)
        assert read.area == pytest.approx(area(pushed.points, model.structure.triangles), rel=SINGLE)
        used = pushed.points[np.unique(model.structure.triangles)]
        low, high = used.min(axis=0), used.max(axis=0)
        if ending == ".glb":  # y up by its standard: (x, z, -y)
            low, high = np.array([low[0], low[2], -high[1]]), np.array([high[0], high[2], -low[1]])
        np.testing.assert_allclose(read.bounds, [low, high], rtol=0.0, atol=SINGLE)

    def test_glb_keeps_the_parts_by_name(self, model, pushed, tmp_path):
        exports.write_moment(tmp_path / "m.glb", model, pushed)
        scene = trimesh.load_scene(tmp_path / "m.glb")
        surface = model.mesh.surface
        wanted = {name: len(surface.triangles_of(name)) for name in surface.part_names}
        assert {n: len(g.faces) for n, g in scene.geometry.items()} == {n: k for n, k in wanted.items() if k}

    def test_closed_shape_keeps_its_volume(self, model, tmp_path):
        """The door is open at the belt; with a lid over both lips trimesh can tell its volume."""
        frame = start_frame(model)
        exports.write_moment(tmp_path / "m.stl", model, frame)
        read = trimesh.load_mesh(tmp_path / "m.stl")
        volume = float(
            np.einsum("ij,ij->", np.cross(*read.triangles.transpose(1, 0, 2)[:2]), read.triangles[:, 2])
        )
        p, t = frame.points, model.structure.triangles
        own = float(np.einsum("ij,ij->", np.cross(p[t[:, 0]], p[t[:, 1]]), p[t[:, 2]]))
        assert volume / 6.0 == pytest.approx(own / 6.0, rel=10 * SINGLE)
        assert own != 0.0

    def test_tables_carry_units_and_the_same_numbers(self, model, pushed):
        rows = table(exports.nodes_csv(model, pushed))
        assert len(rows) == len(pushed.points)
        assert [float(rows[5][f"{axis}_m"]) for axis in "xyz"] == pushed.points[5].tolist()
        assert all(name.endswith("_m") for name in rows[0] if name not in ("node_index", "parts"))
        seam = table(exports.seam_csv(model, pushed))
        assert [float(row["damage_ratio"]) for row in seam] == pushed.seam_damage.tolist()
        lip = {int(node) for node in model.mesh.hem_skin}
        assert all("outer_skin" in rows[node]["parts"] for node in lip)
        bar = model.structure.beams[0]
        assert all(bar.name in rows[int(node)]["parts"] for node in bar.nodes)

    def test_torn_metal_keeps_where_it_came_from(self, model, pushed, tmp_path):
        node, frame = torn(model, pushed)
        rest = exports.rest_points(model, frame)
        np.testing.assert_array_equal(rest[-1], model.start.points[node])
        np.testing.assert_array_equal(rest[:-1], model.start.points)
        exports.write_moment(tmp_path / "m.vtu", model, frame)
        mesh = meshio.read(tmp_path / "m.vtu")
        np.testing.assert_array_equal(mesh.cells_dict["triangle"], frame.triangles)
        moved = mesh.point_data["displacement_m"][len(frame.points) - 1]
        np.testing.assert_allclose(moved, frame.points[-1] - rest[-1], rtol=0.0, atol=1e-15)
        for ending in (".stl", ".glb", ".csv"):
            exports.write_moment(tmp_path / f"m{ending}", model, frame)

    def test_an_unknown_ending_is_refused(self, model, pushed, tmp_path):
        with pytest.raises(ValueError, match=r"ends in \.obj; use one of \.vtu"):
            exports.write_moment(tmp_path / "m.obj", model, pushed)
        assert not list(tmp_path.iterdir())


def test_shells_at_rest_carry_section_and_metal(model, tmp_path):
    exports.write_shells(tmp_path / "s.vtu", model)
    mesh = meshio.read(tmp_path / "s.vtu")
    s = model.structure
    assert area(mesh.points, mesh.cells_dict["triangle"]) == pytest.approx(
        area(s.points, s.triangles), rel=1e-12
    )
    data = {name: blocks["triangle"] for name, blocks in mesh.cell_data_dict.items()}
    # steel of 7850 kg/m3 (textbook): the sheets' mass from the file is area times thickness times density
    a, b, c = (mesh.points[mesh.cells_dict["triangle"][:, k]] for k in range(3))
    areas = 0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1)
    mass = float((areas * data["thickness_m"] * data["density_kg_per_m3"]).sum())
    skin = model.mesh.surface.part_index("outer_skin")
    alone = areas[data["part_index"] == skin].sum() * CAR.skin_thickness_m * 7850.0
    assert alone < mass < 25.0  # a bare front door in steel weighs 12-20 kg: from memory
    assert set(data["young_pa"]) == {210.0e9}


def test_all_files_are_written_and_none_else(model, record, pushed, tmp_path):
    exports.write_all(tmp_path, model, [record], pushed)
    assert sorted(p.name for p in tmp_path.iterdir()) == sorted(exports.FILES)
    assert all(path.stat().st_size > 50 for path in tmp_path.iterdir())
    start = meshio.read(tmp_path / "start.vtu")
    assert not start.point_data["displacement_m"].any()
    rows = table((tmp_path / "parts.csv").read_text(encoding="utf-8"))
    assert [row["part"] for row in rows] == list(exports.part_names(model))
