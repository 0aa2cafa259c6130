"""What a structure stands among: gravity, ground, the car on its wheels, rigid neighbours, props.

Everything here is told in the car's own axes, in which the body stands still.  What the body does on its
wheels is told by four *body nodes*, an origin and a point a metre along each axis, held rigid by six stiff
bars: the body's displacement at a place is a weighted sum of theirs, so whatever stands on the ground is tied
to a place of the car by weights alone.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Literal

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Lying = Literal["on its wheels", "this side up", "this side down"]
Support = Literal["wheels", "blocks"]

GRAVITY_M_S2 = 9.81  # standard value, rounded
GROUND_N_PER_M = 2.0e6  # penalty per node: 265 N on one node sinks 0.13 mm
GROUND_FRICTION_RATIO = 0.5  # steel edge on asphalt or concrete, 0.4-0.7, from memory
EDGE_N_PER_M = 2.0e6  # penalty of an edge on a neighbour, per node, as sheet on sheet
CHECK_N_M = 25.0  # moment that moves an open door: checks and hinges 15 to 50 N m, from memory
CHECK_N_PER_M = 2.0e4  # give of a check seen at the latch end, assumed
BODY_ARM_M = 1.0  # from the body's origin to its other three nodes


@dataclass(frozen=True)
class Carried:
    """A mass hung on nodes: glass, regulator, trim.

    nodes : shape (k,);  weights : shape (k,), summing to one
    """

    name: str
    kg: float
    nodes: Ints
    weights: Floats


@dataclass(frozen=True)
class Ground:
    """A plane that presses and never pulls, with friction: all points with normal.x < level are under it.

    normal : unit vector, shape (3,), up from the ground;  level_m : of the plane along it [m]
    """

    normal: Floats
    level_m: float
    friction_ratio: float = GROUND_FRICTION_RATIO
    stiffness_n_per_m: float = GROUND_N_PER_M


@dataclass(frozen=True)
class Stand:
    """What the car stands on at one place: a wheel on its spring, or a block.

    place : shape (3,), in the car's axes [m];  up_n_per_m, across_n_per_m : stiffness [N/m]
    carried_n : share of the car's weight at rest [N]; it presses and never pulls
    friction_ratio : force across over force carried at which it slides
    """

    name: str
    place: Floats
    up_n_per_m: float
    across_n_per_m: float
    carried_n: float
    friction_ratio: float


@dataclass(frozen=True)
class Body:
    """The car's body as a rigid one on its stands.

    nodes : shape (4,), origin and one point along each axis;  origin : shape (3,) [m]
    arm_m : shape (3,), how far along its axis each of the three stands, below zero on a left-hand side's y
    mass_kg : of the car without what is modelled as sheet
    """

    nodes: Ints
    origin: Floats
    arm_m: Floats
    mass_kg: float
    stands: tuple[Stand, ...]

    def weights(self, places: Floats) -> Floats:
        """Return the weights of the body nodes whose sum moves as the body does at places, shape (k, 4)."""
        arms = (np.atleast_2d(places) - self.origin) / self.arm_m
        out: Floats = np.column_stack([1.0 - arms.sum(axis=1), arms])
        return out

    def moved(self, points: Floats, rest: Floats, places: Floats) -> Floats:
        """Return how far the body has moved at places, shape (k, 3) [m]."""
        out: Floats = self.weights(places) @ (points[self.nodes] - rest[self.nodes])
        return out


@dataclass(frozen=True)
class Prop:
    """A mean of nodes held to a place, or kept by a strut from going back along one way.

    weights : shape (k,), of nodes (body nodes among them where it stands on the ground)
    place : shape (3,) [m], where the mean is held
    way : unit vector it pushes along, or None: it holds in all three directions
    """

    name: str
    nodes: Ints
    weights: Floats
    place: Floats
    stiffness_n_per_m: float
    way: Floats | None = None


@dataclass(frozen=True)
class Check:
    """A door's check: dry friction that keeps it where it has been opened to (`sim.check`).

    nodes, weights : the latch end it acts on, weights summing to one;  hinges : names of the door's hinges
    """

    nodes: Ints
    weights: Floats
    hinges: tuple[str, str]
    moment_n_m: float = CHECK_N_M
    stiffness_n_per_m: float = CHECK_N_PER_M


@dataclass(frozen=True)
class Edges:
    """Nodes that may press on triangles of other parts.

    nodes, node_body : shape (k,), and which part each belongs to
    rows, row_body : rows of the structure's own triangles, and whose they are
    rigid, rigid_body : triangles (m, 3) of nodes that stand still, and whose they are
    All triangles face outwards.
    """

    nodes: Ints
    node_body: Ints
    rows: Ints
    row_body: Ints
    rigid: Ints
    rigid_body: Ints
    stiffness_n_per_m: float = EDGE_N_PER_M

    def triangles(self, own: Ints) -> tuple[Ints, Ints]:
        """Return all triangles (m, 3) by their nodes and whose they are, from the structure's triangles."""
        return np.concatenate([own[self.rows], self.rigid]), np.concatenate([self.row_body, self.rigid_body])


@dataclass(frozen=True)
class Near:
    """What was near what when one last looked round (`sim.search`).

    points : shape (n, 3), where everything stood then
    ground : nodes near the ground, shape (k,), sorted
    pairs, pair_body : node and triangle near each other (m, 4), and whose the triangle is, sorted by node
    coupled : nodes whose pairs are in the network's pattern: those that press, and their neighbours, sorted
    """

    points: Floats
    ground: Ints
    pairs: Ints
    pair_body: Ints
    coupled: Ints = field(default_factory=lambda: np.zeros(0, np.int64))


@dataclass(frozen=True)
class Surround:
    """Everything of the above that acts on a structure.

    gravity_m_s2 : shape (3,), in the car's axes
    """

    gravity_m_s2: Floats
    carried: tuple[Carried, ...] = ()
    ground: Ground | None = None
    body: Body | None = None
    props: tuple[Prop, ...] = ()
    checks: tuple[Check, ...] = ()
    edges: Edges | None = None
    near: Near | None = field(default=None, repr=False)

    def with_prop(self, prop: Prop) -> Surround:
        """Return it with a prop more, in place of one of the same name."""
        return replace(self, props=(*(p for p in self.props if p.name != prop.name), prop))

    def without_prop(self, name: str) -> Surround:
        """Return it without a prop."""
        return replace(self, props=tuple(p for p in self.props if p.name != name))


def gravity(lying: Lying, outboard_sign: float) -> Floats:
    """Return gravity in the car's axes, shape (3,) [m/s^2], by how the car lies."""
    way = {
        "on its wheels": (0.0, 0.0, -1.0),
        "this side up": (0.0, -outboard_sign, 0.0),
        "this side down": (0.0, outboard_sign, 0.0),
    }
    return GRAVITY_M_S2 * np.array(way[lying])
