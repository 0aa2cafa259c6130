"""One increment of a move: halved until its books close, jumps measured, ties let go one at a time."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from sim.factor import NotPositiveError
from sim.fall import at_rest
from sim.ladder import tie_ratios
from sim.ledger import Ledger, spent
from sim.losses import balanced_n, carried_drag_j, friction_terms_j
from sim.network import Evaluation, Load, Network, State
from sim.newton import Equilibrium, equilibrate
from sim.surrounding import EDGE_ROWS, looked

Floats = NDArray[np.float64]

# drag per node and increment: enough for a door that swings free on its hinges
VISCOUS_N_PER_M = 5.0
HALVINGS = 5
SNAP_HALVINGS = 5  # a snap is pinned to a thirty-second of a grid step before its jump is measured
# gap of one step allowed before it is halved: a floor plus a share of its work
GAP_FLOOR_J, GAP_SHARE = 0.03, 0.01
ENERGY_MADE_J = 1.0  # a step that gains more than this counts as failed
BRANCH_HALVINGS = 20
RELEASE_TOLERANCE = 0.02  # how close to its limit a tie is let go
STALL_TOLERANCE = 0.01
ON_GRID_M = 1.0e-12  # a point this near an increment's end has reached it


@dataclass(frozen=True)
class Freed:
    """A tie that has let go: what it carried at that moment.

    ratio : force over limit on its ellipsoid;  reaction_n : shape (3,), what it pulled on the door with [N]
    tool_n : force of the tips just before [N]
    """

    name: str
    ratio: float
    reaction_n: Floats
    tool_n: float


@dataclass(frozen=True)
class Point:
    """A converged point of a move.

    travel_m : of the tips;  force_n : per drive;  ledger : books so far
    before : points of the last accepted point, for extrapolation;  before_travel_m : its travel
    """

    state: State
    evaluation: Evaluation
    travel_m: float
    force_n: Floats
    ledger: Ledger
    iterations: int = 0
    before: Floats | None = None
    before_travel_m: float = 0.0
    freed: tuple[Freed, ...] = ()


@dataclass
class Tally:
    """What the solver did, counted as it goes."""

    increments: int = 0
    iterations: int = 0
    failed: int = 0
    halved: int = 0
    jumps: int = 0


def grid_m(limit_m: float, step_m: float) -> tuple[float, ...]:
    """Return the travels at which a move's increments end [m]: every ``step_m``, the last at ``limit_m``."""
    count = max(1, math.ceil(limit_m / step_m - 1.0e-9))
    return tuple(min((k + 1) * step_m, limit_m) for k in range(count))


@dataclass
class Stepper:
    """Carries a network from one tip position to the next."""

    network: Network
    cancelled: Callable[[], bool]
    viscous_n_per_m: float = VISCOUS_N_PER_M
    tally: Tally = field(default_factory=Tally)

    def load(self, travel_m: float, state: State) -> Load:
        """Return the load of one step that starts from a state."""
        return Load((travel_m,) * self.network.travel_count, None, self.viscous_n_per_m, state.points)

    def look(self, state: State) -> State:
        """Return the state that knows what it may touch; the network looks round again where it must."""
        if self.network.structure.surround is not None:
            self.network, state = looked(self.network, state)
        return state

    def first_point(self, state: State, ledger: Ledger) -> Point:
        """Return the point before any travel."""
        state = self.look(state)
        ev = self.network.evaluate(state.points, state, self.load(0.0, state))
        ledger = ledger.knowing(section.group for section in self.network.structure.sections)
        return Point(state, ev, 0.0, ev.drive_force.copy(), ledger)

    def _guess(self, start: Point, travel_m: float) -> Floats:
        span = start.travel_m - start.before_travel_m
        if start.before is None or span <= 0.0:
            return start.state.points
        ratio = min((travel_m - start.travel_m) / span, 1.5)
        guess: Floats = start.state.points + ratio * (start.state.points - start.before)
        return guess

    def balanced(self, state: State, load: Load, guess: Floats) -> Equilibrium:
        """Return where the metal balances a load, sought from a guess (n, 3) [m]; iterations are counted."""
        answer = equilibrate(self.network, state, load, guess, cancelled=self.cancelled)
        self.tally.iterations += answer.iteration_count
        return answer

    def counted(self, point: Point, since: int) -> Point:
        """Return the end of an increment of the grid, counted with its iterations.

        Parameters
        ----------
        since : the tally's iterations when it began
        """
        self.tally.increments += 1
        return replace(point, iterations=self.tally.iterations - since)

    def accept(
        self, start: Point, travel_m: float, ev: Evaluation, lines: dict[str, float], work: float
    ) -> Point:
        """Return the point a solved step ends in: state committed, work and spent energies in the books."""
        state = self.network.commit(start.state, ev)
        stored = ev.stored_j
        if not _same_contacts(state, start.state):
            # a contact that was pressing when it slid off takes its energy with it
            load = self.load(travel_m, state)
            left = max(stored - self.network.evaluate(ev.points, state, load).stored_j, 0.0)
            lines["released in a jump"] = lines.get("released in a jump", 0.0) + left
            stored -= left
        ledger = start.ledger.plus(work, stored, lines, ev.stored.get("weight", 0.0))
        return Point(
            state, ev, travel_m, ev.drive_force.copy(), ledger, 0, start.state.points, start.travel_m
        )

    def _passage(self, start: Point, travel_m: float, ev: Evaluation) -> tuple[float, dict[str, float]]:
        """Return the tips' work up to ``ev`` and what drag and friction of the last step still take [J]."""
        drives = self.network.drives
        carried, knee = friction_terms_j(drives, start.evaluation, start.state, ev)
        before = balanced_n(drives, start.force_n, start.evaluation)
        work = 0.5 * float(np.sum(before + ev.drive_force)) * (travel_m - start.travel_m) + knee
        lines = {"friction": carried}
        if start.before is not None:
            points = start.state.points
            moved = points - start.before, ev.points - points
            lines["viscous"] = carried_drag_j(*moved, self.viscous_n_per_m)
        return work, lines

    def advance(self, start: Point, travel_m: float, depth: int = 0) -> Point:
        """Return the point at ``travel_m``; halves the step while it does not converge or its books gape."""
        state = self.look(start.state)
        if state is not start.state:
            start = replace(start, state=state)
        answer = self.balanced(start.state, self.load(travel_m, start.state), self._guess(start, travel_m))
        ev = answer.evaluation
        if not answer.converged:
            if depth < HALVINGS:
                return self._halves(start, travel_m, depth)
            self.tally.failed += 1
        load = self.load(travel_m, start.state)
        own = spent(self.network, start.state, ev, load)
        work, carried = self._passage(start, travel_m, ev)
        lines = _sum(own, carried)
        gap = work - (ev.stored_j - start.ledger.stored_j) - sum(lines.values())
        if abs(gap) > GAP_FLOOR_J + GAP_SHARE * abs(work):
            if depth < SNAP_HALVINGS:
                return self._pin_snap(start, travel_m, depth)
            branch, jump = self._jump(start, travel_m, ev)
            if jump > 0.0:
                self.tally.jumps += 1
                work, carried = self._passage(start, travel_m, branch)
                lines = _sum(own, carried)
                lines["released in a jump"] = jump
            elif gap < -ENERGY_MADE_J:  # more energy came out than went in: no verdict may stand on it
                self.tally.failed += 1
        return self._settle_ties(start, self.accept(start, travel_m, ev, lines, work), depth)

    def _halves(self, start: Point, travel_m: float, depth: int) -> Point:
        self.tally.halved += 1
        middle = self.advance(start, 0.5 * (start.travel_m + travel_m), depth + 1)
        if middle.freed:
            return middle
        return self.advance(middle, travel_m, depth + 1)

    def _pin_snap(self, start: Point, travel_m: float, depth: int) -> Point:
        """Return the end of a step whose books gape, taken in halves.

        When the first half is smooth the snap lies in the second, which is halved at once, not tried whole.
        """
        jumps = self.tally.jumps
        self.tally.halved += 1
        middle = self.advance(start, 0.5 * (start.travel_m + travel_m), depth + 1)
        if middle.freed:
            return middle
        if self.tally.jumps == jumps and depth + 1 < SNAP_HALVINGS:
            return self._pin_snap(middle, travel_m, depth + 1)
        return self.advance(middle, travel_m, depth + 1)

    def _jump(self, start: Point, travel_m: float, ev: Evaluation) -> tuple[Evaluation, float]:
        """Return where the branch of a small step ended and the energy its snap released, both computed.

        The branch that snapped is followed once more by its own definite tangent to the end of the step; the
        potential's drop from there to where the metal came to rest is what the jump let go.
        """
        load = self.load(travel_m, start.state)
        held = self.network.evaluate(start.state.points, start.state, load)
        try:
            values = self.network.stiffness_values(held, start.state, load, held.springs)
            self.network.factor.refactor(values)
        except NotPositiveError:
            return ev, 0.0
        step = self.network.factor.solve(-self.network.residual(held).ravel()).reshape(-1, 3)
        # next to its end a branch is so soft that the whole step leaves it: shorter, until it leads down, but
        # not below where the step began, for on the branch the tips only put in (or, eased, take out F dx)
        floor = self._begun_j(start) + min(0.0, self._given_j(start, travel_m))
        for _ in range(BRANCH_HALVINGS):
            branch = self.network.evaluate(start.state.points + step, start.state, load)
            if floor <= branch.potential_j <= held.potential_j:
                break
            step *= 0.5
        else:
            branch = held
        return branch, max(branch.potential_j - ev.potential_j, 0.0)

    def _given_j(self, start: Point, travel_m: float) -> float:
        """Return what would be put in along a step at the force it begins with [J]."""
        return float(np.sum(start.force_n)) * (travel_m - start.travel_m)

    def _begun_j(self, start: Point) -> float:
        """Return the potential where a step begins [J]."""
        at = self.load(start.travel_m, start.state)
        return self.network.evaluate(start.state.points, start.state, at).potential_j

    def _settle_ties(self, start: Point, end: Point, depth: int) -> Point:
        """Let go of ties past their limit, worst first, at a fixed tip; the energy is booked."""
        ratio = tie_ratios(self.network, end.state, end.evaluation)
        if not len(ratio) or ratio.max() < 1.0:
            return end
        if ratio.max() > 1.0 + RELEASE_TOLERANCE and depth < HALVINGS:
            return self._halves(start, end.travel_m, depth)
        point = self.let_go(end)
        return point if self.network.structure.surround is None else at_rest(self, point)

    def let_go(self, end: Point) -> Point:
        """Return the point after every tie past its limit has let go, worst first, at fixed tips."""
        ratio = tie_ratios(self.network, end.state, end.evaluation)
        freed: list[Freed] = []
        point = end
        while len(ratio) and ratio.max() >= 1.0:
            index = int(ratio.argmax())
            tie = self.network.structure.ties[index]
            tool = float(np.max(point.force_n, initial=0.0))
            freed.append(
                Freed(tie.name, float(ratio[index]), -point.evaluation.tie_force[index].copy(), tool)
            )
            point = self._release(point, index, tie.group)
            ratio = tie_ratios(self.network, point.state, point.evaluation)
        return replace(point, freed=tuple(freed))

    def rested(self, state: State, load: Load) -> tuple[Equilibrium, dict[str, float]]:
        """Return where the metal comes to rest at the same tips, counted, and what that spent [J]."""
        answer = self.balanced(state, load, state.points)
        if not answer.converged:  # it has nowhere else to begin: on from where it got
            answer = self.balanced(state, load, answer.evaluation.points)
        self.tally.failed += not answer.converged
        return answer, spent(self.network, state, answer.evaluation, load)

    def _release(self, point: Point, index: int, group: str) -> Point:
        """Return the point after one tie has let go and the rest has come to rest at the same tips."""
        own = float(point.evaluation.tie_stored[index])
        state = self.network.release_tie(point.state, index)
        load = self.load(point.travel_m, state)
        answer, lines = self.rested(state, load)
        ev = answer.evaluation
        drop = (point.ledger.stored_j - own) - ev.stored_j - sum(lines.values())
        self.tally.jumps += 1
        lines["released in a jump"] = max(drop, 0.0)
        lines[group] = lines.get(group, 0.0) + own
        after = replace(point, state=state, ledger=point.ledger)
        return self.accept(replace(after, travel_m=point.travel_m), point.travel_m, ev, lines, 0.0)

    def come_to_rest(self, point: Point) -> Point:
        """Return the point after the metal has come to rest, the travel held; ties past their limit let go.

        No tool works: what is stored less is spent or released in a jump (what drag stopped is part of that),
        what is stored more is work of whatever was changed.
        """
        if self.network.structure.surround is not None:
            return at_rest(self, replace(point, freed=()))
        load = self.load(point.travel_m, point.state)
        answer, lines = self.rested(point.state, load)
        ev = answer.evaluation
        lines.pop("viscous", None)
        drop = point.ledger.stored_j - ev.stored_j - sum(lines.values())
        lines["released in a jump"] = max(drop, 0.0)
        end = self.accept(replace(point, freed=()), point.travel_m, ev, lines, max(-drop, 0.0))
        return self._settle_ties(point, replace(end, iterations=answer.iteration_count), HALVINGS)


def _sum(own: dict[str, float], carried: dict[str, float]) -> dict[str, float]:
    """Return both together; a line that would give energy back stays at nothing, and the gap shows it."""
    return {**own, **{name: max(own.get(name, 0.0) + more, 0.0) for name, more in carried.items()}}


def _same_contacts(a: State, b: State) -> bool:
    edges = a.kept.get(EDGE_ROWS), b.kept.get(EDGE_ROWS)
    if edges[0] is not None and edges[1] is not None and not np.array_equal(edges[0][:, :4], edges[1][:, :4]):
        return False
    return np.array_equal(a.on_rim, b.on_rim) and np.array_equal(a.touching, b.touching)


def cut_on(point: Point, travel_m: float) -> Point:
    """Return the point after the tip has cut on through the sheet to ``travel_m`` at its shear force.

    The force no longer grows, so the metal stays as it is and all the work goes into the tear.
    """
    work = float(np.sum(point.force_n)) * (travel_m - point.travel_m)
    ledger = point.ledger.plus(work, point.ledger.stored_j, {"tear": work})
    return replace(point, travel_m=travel_m, ledger=ledger, freed=(), iterations=0)


def stall_point(stepper: Stepper, start: Point, end: Point, limit: Callable[[float], float]) -> Point:
    """Return the point at which the tips' force meets what the tool can give, between two points."""
    low, high = start, end
    for _ in range(12):
        cap = limit(0.5 * (low.travel_m + high.travel_m))
        f_low, f_high = float(np.max(low.force_n)), float(np.max(high.force_n))
        if f_high <= cap * (1.0 + STALL_TOLERANCE):
            return high
        share = np.clip((cap - f_low) / max(f_high - f_low, 1.0e-9), 0.1, 0.9)
        middle = stepper.advance(low, low.travel_m + float(share) * (high.travel_m - low.travel_m))
        if float(np.max(middle.force_n)) > limit(middle.travel_m):
            high = middle
        else:
            low = middle
        if high.travel_m - low.travel_m < 1.0e-6:
            break
    return low
