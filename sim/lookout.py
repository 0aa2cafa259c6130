"""Looking for latches and hinges while a move runs: what comes to light, told once."""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from sim.bond import END
from sim.cut_place import blades_of
from sim.cut_plan import Cut, PillarCut
from sim.exposed import ALONG_PIN, NEAR_M, SIGHT_M, View, grains, looks, room_for, sown, view_of
from sim.hinge_body import (
    NEAREST_M,
    Knuckle,
    carried_by,
    carrier_rows,
    hinge_view,
    in_recess,
    knuckle_of,
    set_back,
)
from sim.model import DoorModel
from sim.network import Network
from sim.pillar import WELD_KIND
from sim.record import STOP, Event
from sim.sight import Blockers, blockers, in_the_way
from sim.state import State
from sim.structure import Structure, Tie

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Metal = tuple[tuple[Floats, Ints], ...]

FAR_M = 0.30  # round a fitting: metal further off is not in the way
FOOT_M = 0.3  # a spot lower than this, above the sill, is one of the foot
FOOT_HEIGHTS_M = (0.02, 0.05, 0.09)  # above the foot, where room for a last cut is looked for
OPENING_M = 0.18  # blades one looks with while a move runs: 0.14-0.21 m, from memory


def looked_for(tie: Tie) -> bool:
    """Tell whether a tie is a latch or a hinge and not a bar's foot."""
    return tie.name.endswith(("latch", "hinge"))


class Lookout:
    """Looks for latches and hinges among what stands round them; made once for a car.

    Parameters
    ----------
    structure : as it was before anything
    rigid : points (n, 3) [m] and triangles (m, 3) of what stands still
    recessed : whether doors turn about their knuckles, which then stand in the recess behind the shut line
    """

    def __init__(self, structure: Structure, rigid: Metal, *, recessed: bool = False) -> None:
        self._recessed = recessed
        self.sign = structure.outboard_sign
        self.rigid = rigid
        self._places: dict[str, Floats] = {}
        self._still: dict[str, Floats] = {}
        self._before: dict[str, Blockers | None] = {}  # spares looks, and changes none: sim/sight.py
        for tie in structure.ties:
            if looked_for(tie):
                own = tie.weights > 0.0
                seat = tie.weights[own] @ structure.points[tie.nodes[own]] / tie.weights[own].sum()
                self._places[tie.name] = nearest(seat, rigid)
                self._still[tie.name] = self._rigid_near(seat)
        self._knuckles = self._hinges(structure)
        hung = (tie for tie in structure.ties if tie.name in self._knuckles)
        self._carriers = {tie.name: carrier_rows(structure, tie) for tie in hung}

    def _hinges(self, structure: Structure) -> dict[str, Knuckle]:
        """Return the knuckle of every hinge at rest; the line through a door's two hinges is their axis."""
        pins = {tie.name: self.pin(tie, structure.points) for tie in structure.ties if looked_for(tie)}
        out = {}
        for tie in structure.ties:
            word, _, _ = tie.name.rpartition("upper hinge" if "upper" in tie.name else "lower hinge")
            pair = [f"{word}{name} hinge" for name in ("upper", "lower")]
            if tie.name not in pair or not all(name in pins for name in pair):
                continue
            up = pins[pair[0]][0] - pins[pair[1]][0]
            found = knuckle_of(pins[tie.name][0], pins[tie.name][1], up, self.sign)
            out[tie.name] = in_recess(found) if self._recessed else found
            if not (tie.weights < 0.0).any():
                self._still[tie.name] = set_back(self._still[tie.name], found)
        return out

    def _rigid_near(self, place: Floats) -> Floats:
        return np.concatenate([np.zeros((0, 3)), *(grains(*one, place, FAR_M + 0.1) for one in self.rigid)])

    def pin(self, tie: Tie, points: Floats) -> Floats:
        """Return both seats of a fitting now, shape (2, 3) [m]."""
        seats = []
        for mine in (tie.weights > 0.0, tie.weights < 0.0):
            if mine.any():
                seats.append(tie.weights[mine] @ points[tie.nodes[mine]] / tie.weights[mine].sum())
            else:
                seats.append(self._places[tie.name])
        return np.array(seats)

    def views(
        self, structure: Structure, points: Floats, opening_m: float, names: Sequence[str] | None = None
    ) -> dict[str, View]:
        """Return how each fitting that is exposed can be reached, by the name of its tie."""
        out = {}
        for tie in structure.ties:
            if not looked_for(tie) or (names is not None and tie.name not in names):
                continue
            look = self._hinge_view if tie.name in self._knuckles else self._pin_view
            found = look(tie, structure, points, opening_m)
            if found is not None:
                out[tie.name] = found
        return out

    def _pin_view(self, tie: Tie, structure: Structure, points: Floats, opening_m: float) -> View | None:
        ends, ways = self.pin(tie, points), looks(self.sign)
        places = ends[0] + np.outer(ALONG_PIN, ends[1] - ends[0])
        middle = ends.mean(axis=0)
        before = self._before.get(tie.name)
        if before is not None and before.triangle_count == len(structure.triangles):
            spots, read = before.now(points, structure.triangles)
            read &= (before.row < 0) | (np.linalg.norm(spots - middle, axis=1) <= FAR_M)
            if (read & in_the_way(spots, places, ways, NEAR_M, SIGHT_M)).all():
                return None
        moving, came = sown(points, structure.triangles, middle, FAR_M)
        spots = np.concatenate([moving, self._still[tie.name]])
        by = np.zeros((len(places), len(ways)), dtype=np.int64)
        found = view_of(ends, spots, self.sign, opening_m, by)
        self._before[tie.name] = blockers(by, came[:, 0], came, spots, len(structure.triangles))
        return found

    def _hinge_view(self, tie: Tie, structure: Structure, points: Floats, opening_m: float) -> View | None:
        knuckle = carried_by(structure, tie, points, self._knuckles[tie.name])
        carrier, places, ways = self._carriers[tie.name], knuckle.places(), knuckle.ways()
        before = self._before.get(tie.name)
        if before is not None and before.triangle_count == len(structure.triangles):
            spots, read = before.now(points, structure.triangles)
            moves = before.row >= 0
            read &= ~moves | (np.linalg.norm(spots - knuckle.middle, axis=1) <= FAR_M)
            back = moves & carrier[before.row]
            spots[back] = set_back(spots[back], knuckle)
            if (read & in_the_way(spots, places, ways, NEAREST_M, SIGHT_M)).all():
                return None
        mine, own = sown(points, structure.triangles[~carrier], knuckle.middle, FAR_M)
        pillar, its = sown(points, structure.triangles[carrier], knuckle.middle, FAR_M)
        spots = np.concatenate([mine, set_back(pillar, knuckle), self._still[tie.name]])
        by = np.zeros((len(places), len(ways)), dtype=np.int64)
        found = hinge_view(knuckle, spots, opening_m, by)
        rows = np.concatenate([np.flatnonzero(~carrier)[own[:, 0]], np.flatnonzero(carrier)[its[:, 0]]])
        came = np.concatenate([own, its])
        self._before[tie.name] = blockers(by, rows, came, spots, len(structure.triangles))
        return found

    def bar_view(
        self, points: Floats, structure: Structure, beam: int, along_m: float, opening_m: float
    ) -> View | None:
        """Return how a bar can be reached at a place along it; None where it cannot."""
        nodes = structure.beams[beam].nodes
        away = np.abs(structure.points[nodes, 0] - structure.points[nodes[0], 0] - along_m)
        place = points[nodes[int(away.argmin())]]
        ends = np.array([place, place])
        spots = np.concatenate([grains(points, structure.triangles, place, FAR_M), self._rigid_near(place)])
        return view_of(ends, spots, self.sign, opening_m)


def nearest(place: Floats, metal: Metal) -> Floats:
    """Return the point of some metal nearest to a place, shape (3,) [m]; the place itself without any."""
    best, gap = place, np.inf
    for points, triangles in metal:
        row, weights, distance = nearest_on_triangles(place[None], points, triangles)
        if float(distance[0]) < gap:
            best, gap = weights[0] @ points[triangles[row[0]]], float(distance[0])
    return best


def rigid_of(model: DoorModel) -> Metal:
    """Return what stands still round a model, points and triangles."""
    return tuple((np.asarray(s.points), np.asarray(s.triangles)) for s in model.rigid.values())


_made: deque[tuple[object, bool, Lookout]] = deque(maxlen=2)


def foot_room(model: DoorModel, network: Network, state: State, opening_m: float) -> bool:
    """Tell whether spots at the pillar's foot have popped and blades from outside have room round it."""
    side: Any = getattr(model, "side", None)
    if side is None or not popped_at_foot(network.structure, state):
        return False
    now = replace(model, structure=network.structure)
    for height in FOOT_HEIGHTS_M:
        for came in ("outer", "front", "rear"):
            move = Cut(PillarCut(height, came), opening_m=opening_m)
            blades = blades_of(now, state, move)
            if room_for(network, state.points, blades, rigid_of(model)):
                return True
    return False


def popped_at_foot(structure: Structure, state: State) -> bool:
    """Tell whether a spot weld at the pillar's foot has let go."""
    return foot_spots(structure, state)[0] > 0


def foot_spots(structure: Structure, state: State) -> tuple[int, int]:
    """Return how many of the spot welds at the pillar's foot have let go, and how many there are."""
    bonds = structure.bonds
    welds = bonds.of(WELD_KIND)
    # of the torn sheet's own nodes, where it was before anything moved
    low = welds & (structure.points[bonds.nodes[:, 0], 2] < FOOT_M)
    return int((low & (state.worst >= bonds.law[:, END])).sum()), int(low.sum())


def lookout_of(model: DoorModel) -> Lookout:
    """Return the lookout of a car, set up once and good for all its metal will become."""
    key, recessed = getattr(model, "side", None) or model.body, model.car.hinge_depth_m > 0.0
    for one, back, made in tuple(_made):
        if one is key and back == recessed:
            return made
    made = Lookout(model.structure, rigid_of(model), recessed=recessed)
    _made.append((key, recessed, made))
    return made


EXPOSED, FOOT = "exposed", "pillar foot"
"""Kind of event: a striker or hinge can be seen and the blades fit; the part that is no tie."""
MOVED_M = 0.01  # the foot is looked at again once the metal has moved this far


class Watch:
    """What has come to light in a move: each fitting is told once, and none that was in sight before."""

    def __init__(self, model: DoorModel, state: State) -> None:
        self._model = model
        self._look = lookout_of(model)
        self._told = set(self._look.views(model.structure, state.points, OPENING_M))
        self._foot_looked: Floats | None = None
        if foot_room(model, model.network, state, OPENING_M):
            self._told.add(FOOT)

    def events(self, network: Network, state: State, at_m: float, force_n: float) -> tuple[Event, ...]:
        """Return what has come to light and still holds."""
        structure = network.structure
        holding = [t.name for t, on in zip(structure.ties, state.holding, strict=True) if on]
        names = [name for name in holding if name not in self._told]
        found = list(self._look.views(structure, state.points, OPENING_M, names)) if names else []
        if FOOT not in self._told and self._due(state.points):
            self._foot_looked = state.points
            if foot_room(self._model, network, state, OPENING_M):
                found.append(FOOT)
        self._told.update(found)
        return tuple(Event(EXPOSED, name, at_m, force_n) for name in found)

    def _due(self, points: Floats) -> bool:
        last = self._foot_looked
        if last is None:
            return True
        count = min(len(last), len(points))
        return bool(np.abs(points[:count] - last[:count]).max() > MOVED_M)


DUE = (EXPOSED, "skin tearing")


def due(events: Sequence[Event], told: Sequence[Event]) -> tuple[Event, ...]:
    """Return the mark of the moment, once a move: at the first fitting in sight or the first sheet torn."""
    if any(event.kind == STOP for event in told):
        return ()
    for event in events:
        if event.kind in DUE:
            why = f"{event.part} exposed" if event.kind == EXPOSED else f"{event.part} tearing"
            return (Event(STOP, why, event.opening_m, event.force_n),)
    return ()
