"""How the picture is taken apart, what is measured on the metal, and the file of what was drawn.

Distances are checked against trimesh (a general-purpose mesh library), against closed forms, and against the
nodes of the mesh themselves.
"""

from __future__ import annotations

import numpy as np
import pytest
import trimesh

from meshes.occupant import BODY_PARTS
from sim.door_model import build_model
from sim.plan import Car
from ui.state import marks
from ui.state.camera_history import KEPT, CameraHistory
from ui.state.marks import Marks, MarksError, MarksState, Stroke, kept, restored
from ui.state.measuring import Measure, Metal, Spot, spot_at, taken, torn_m
from ui.state.metal_now import metal_now
from ui.state.seeing import CutPlane, Seeing, SeeingState


@pytest.fixture(scope="module")
def model():
    return build_model(Car())


class Still:
    """A moment as measuring reads it."""

    def __init__(self, points, triangles=None):
        self.points, self.triangles = points, triangles


@pytest.fixture
def moved(model):
    """Return the door bent outward: every node by its own amount."""
    points = model.start.points.copy()
    points[:, 1] += 0.2 * points[:, 0] ** 2
    return metal_now(model, Still(points))


def test_a_tool_comes_out_and_goes_away_and_leaves_the_picture_as_it_was():
    begin = Seeing()
    for tool in ("section", "asunder", "measure", "pen"):
        out = begin.toggled(tool)
        assert out.tool == tool
        assert out.toggled(tool) == begin


def test_a_plane_and_parts_drawn_apart_exclude_each_other():
    cut = Seeing().toggled("section")
    assert cut.cut == CutPlane("level", 0.36) and cut.cut.axis == 2
    apart = cut.toggled("asunder")
    assert apart.cut is None and apart.asunder_ratio == 1.0
    again = apart.with_cut(CutPlane("across", 0.8))
    assert again.asunder_ratio == 0.0 and again.cut.axis == 0
    assert Seeing().with_asunder(7.0).asunder_ratio == 1.0 and Seeing().with_asunder(-1.0) == Seeing()


def test_a_plane_stays_while_one_draws_on_the_cut():
    cut = Seeing().toggled("section").with_cut(CutPlane("across", 0.8))
    assert cut.with_tool("pen").cut == CutPlane("across", 0.8)


def test_an_unknown_tool_is_refused():
    with pytest.raises(ValueError, match="no tool named 'saw'"):
        Seeing().with_tool("saw")


def test_only_a_change_is_told():
    told, state = [], SeeingState()
    state.changed.connect(lambda: told.append(state.now))
    state.set(Seeing())
    assert not told
    state.set(Seeing(alone="bar"))
    assert [one.alone for one in told] == ["bar"]


def test_the_camera_goes_back_the_way_it_came():
    history = CameraHistory()
    assert history.back() is None and not history.can_go_back
    for place in ("a", "b", "b", "c"):
        history.leave(place)
    assert [history.back() for _ in range(4)] == ["c", "b", "a", None]
    for place in range(KEPT + 5):
        history.leave(place)
    back = [history.back() for _ in range(KEPT + 1)]
    assert back[0] == KEPT + 4 and back[-2] == 5 and back[-1] is None


def test_a_width_is_the_distance_of_the_nodes_at_any_moment(model, moved):
    start = metal_now(model, Still(model.start.points))
    one, other = 5, 700
    places = (spot_at(model.start.points[one], start), spot_at(model.start.points[other], start))
    found = taken(Measure("length", places), moved)
    apart = moved.points[one] - moved.points[other]
    assert found.value == pytest.approx(float(np.sqrt((apart**2).sum())), rel=1e-9)
    np.testing.assert_allclose(found.parts_m, np.abs(apart), rtol=1e-9)


def test_a_gap_is_an_independent_librarys_distance_to_the_other_sheet(model, moved):
    node = int(model.mesh.hem_skin[40])
    spot = spot_at(moved.points[node], moved)
    own = moved.part[(moved.triangles == spot.nodes[0]).any(axis=1)][0]
    corner = moved.points[moved.triangles[moved.part != own]]
    near = trimesh.triangles.closest_point(corner, np.tile(moved.points[node], (len(corner), 1)))
    away = np.linalg.norm(near - moved.points[node], axis=1).min()
    assert taken(Measure("gap", (spot,)), moved).value == pytest.approx(float(away), abs=1e-9)


@pytest.mark.parametrize("degrees", [0.0, 37.0, 90.0, 180.0])
def test_an_angle_is_the_one_that_was_laid_out(moved, degrees):
    turn = np.radians(degrees)
    legs = ((0.3, 5.0, 0.0), (0.0, 5.0, 0.0), (0.4 * np.cos(turn), 5.0, 0.4 * np.sin(turn)))
    spots = tuple(Spot((), (), place) for place in legs)
    assert taken(Measure("angle", spots), moved).value == pytest.approx(turn, abs=1e-7)


def test_the_distance_to_the_hip_is_that_to_its_capsules(moved):
    place = np.array([0.62, 0.30, 0.24])
    hips = [one for one in moved.occupant if one.name in BODY_PARTS["hip"]]
    share = np.linspace(0.0, 1.0, 20_001)[:, None]
    axes = [one.start + share * (one.end - one.start) for one in hips]
    away = [
        np.linalg.norm(axis - place, axis=1).min() - one.radius_m
        for axis, one in zip(axes, hips, strict=True)
    ]
    found = taken(Measure("hip", (Spot((), (), tuple(place)),)), moved)
    assert found.value == pytest.approx(min(away), abs=1e-8)  # the axis is stepped
    assert np.linalg.norm(found.line_m[1] - found.line_m[0]) == pytest.approx(found.value, abs=1e-9)


def test_torn_length_counts_each_tear_once(model):
    whole = np.asarray(model.structure.triangles)
    rest = np.asarray(model.start.points)
    assert torn_m(metal_now(model, Still(rest))) == 0.0
    metal, edge = _opened(model, whole, rest)
    assert torn_m(metal) == pytest.approx(edge, rel=1e-9)
    found = taken(Measure("tear", ()), metal)
    assert found.value == pytest.approx(edge, rel=1e-9) and len(found.line_m) == 0


def _opened(model, whole, rest):
    """Return the door with its skin opened along one edge from the hem, and that edge's length."""
    skin = model.mesh.surface.triangles_of("outer_skin")
    first, last = model.mesh.edges["latch_edge"]
    lip = int(model.mesh.hem_skin[(first + last) // 2])
    fan = np.flatnonzero((whole == lip).any(axis=1) & np.isin(whole, skin).all(axis=1))
    around = [set(whole[row].tolist()) - {lip} for row in fan]
    inner = [n for n in set.union(*around) if sum(n in pair for pair in around) == 2]
    tip = int(min(inner, key=lambda n: abs(rest[n, 2] - rest[lip, 2])))  # the one squarely behind it
    side = [
        row for row, pair in zip(fan, around, strict=True) if rest[whole[row]].mean(axis=0)[2] > rest[tip, 2]
    ]
    torn = whole.copy()
    for row in side:
        torn[row][torn[row] == lip] = len(rest)
    metal = Metal(
        np.vstack((rest, rest[lip])), torn, metal_now(model, Still(rest)).part, whole, rest, model.occupant
    )
    return metal, float(np.linalg.norm(rest[lip] - rest[tip]))


def test_what_was_drawn_comes_back_from_its_file(tmp_path, model):
    start = metal_now(model, Still(model.start.points))
    state = MarksState()
    state.add(Stroke("pen", ((0.1, 0.2, 0.3), (1e-17, 0.5, -0.25))))
    state.add(Stroke("arrow", ((0.0, 0.0, 0.0), (1.0, 0.0, 1.0 / 3.0))))
    measure = Measure("length", tuple(spot_at(model.start.points[n], start) for n in (5, 700)))
    state.measure(measure)
    path = marks.path_beside(tmp_path / "drill.toml")
    assert path.name == "drill.marks.toml"
    marks.write(path, state.now)
    found = marks.read(path)
    assert found == state.now
    assert restored(found.measures[0]) == measure and kept(measure) == found.measures[0]


def test_taking_back_and_clearing(tmp_path):
    state = MarksState()
    state.add(Stroke("pen", ((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))))
    state.measure(Measure("tear", ()))
    state.take_back("strokes")
    assert not state.now.strokes and len(state.now.measures) == 1
    state.clear("measures")
    assert state.now == Marks()
    path = tmp_path / "x.marks.toml"
    path.write_text("version = 1\n")
    marks.write(path, state.now)  # nothing drawn: no file
    assert not path.exists()


@pytest.mark.parametrize(
    "text", ["not = a file", "version = 2", "strokes = 3", 'colour = "red"', "version = 1\nmeasures = [{}]"]
)
def test_a_file_that_is_not_one_is_refused_in_one_sentence(tmp_path, text):
    path = tmp_path / "x.marks.toml"
    path.write_text(text)
    with pytest.raises(MarksError, match=r"x\.marks\.toml .*move the file away to begin anew\.$"):
        marks.read(path)
    assert path.read_text() == text


def test_a_folder_that_cannot_be_written_is_told(tmp_path):
    state = MarksState()
    state.add(Stroke("pen", ((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))))
    with pytest.raises(MarksError, match="cannot be saved beside the plan"):
        marks.write(tmp_path / "nowhere" / "x.marks.toml", state.now)
