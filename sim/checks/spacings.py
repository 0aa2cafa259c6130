"""The two ready attacks, shallow and deep, to their full opening on three lattices.

A figure that a crew is shown has to be the metal's and not the lattice's: the same things give in the same
order, the highest forces agree within 15 %, and the length of seam that has parted agrees within a fifth all
along the push.  The energy kept per length of seam [turon-2007] is what makes the length a matter of the
metal; how the lattice resolves the metal round the tips is what can spoil it.
"""

from __future__ import annotations

from sim import outcome
from sim.checks import facts
from sim.checks.facts import Done
from sim.checks.row import ITSELF, Row
from sim.checks.ways import plan_path
from sim.plan import Car, Spread
from sim.planfile import load_plan
from sim.run import STEP_M

LATTICES_M = (0.045, 0.036, 0.030)
"""The usual spacing and two finer ones."""
ATTACKS = {"on the lip": "edge-at-latch", "behind the bend": "behind-the-bend"}
"""Ready plans by where their tips are."""
OPENING_M = 0.1
ON_THE_WAY_MM = (20, 30, 40, 50, 60, 70, 80, 90, 100)
FORCES, LENGTHS = 1.15, 1.20
CLEAR_RATIO = 1.5  # of the motion that counts: less past it is at its limit
AHEAD = "on the usual lattice the seam runs ahead, by 5 mm of opening at 20 mm and by 8 at 40"
SNAP = "the seam runs up to the belt in one snap, at 50 mm on the usual lattice and at 55 mm on the finest"
OFF = {20: AHEAD, 30: AHEAD, 40: AHEAD, 50: SNAP}
"""Where on the way the lengths are known to be further apart, and why."""


def attack(where: str) -> Spread:
    """Return the push of a ready plan, to its full opening."""
    (move,) = load_plan(plan_path(ATTACKS[where])).moves
    assert isinstance(move, Spread)
    assert move.opening_m == OPENING_M
    return move


def pushes(where: str) -> tuple[Done, ...]:
    """Return an attack solved on the three lattices."""
    return tuple(facts.done(Car(lattice_spacing_m=spacing), attack(where)) for spacing in LATTICES_M)


def _told(push: Done) -> dict[str, float]:
    """Return when each kind of event first came [m], without what is nothing metal and tips do.

    A mark to stop at is none.  A sheet that ends little past the motion that counts as folding hangs on the
    last digits, so folding is taken where it is well past it.
    """
    result, limit = push.result, CLEAR_RATIO * outcome.limit("moved_m")
    moved = max(abs(result.skin_mid_outboard_m), abs(result.inner_mid_outboard_m))
    first: dict[str, float] = {}
    for event in sorted(result.events, key=lambda event: event.opening_m):
        at_its_limit = event.kind.startswith("folding") and moved < limit
        if event.kind != "stop here" and not at_its_limit:
            first.setdefault(event.kind, event.opening_m)
    return first


def story(push: Done) -> str:
    """Return what metal and tips did, in order, each kind once.

    What comes within a step of the grid of what came first is of one moment with it and has no order: the
    tips' first hold ends and the seam begins to part in one snap.
    """
    moments: list[tuple[float, list[str]]] = []
    for kind, at in _told(push).items():
        if moments and at - moments[-1][0] <= STEP_M + 1e-9:
            moments[-1][1].append(kind)
        else:
            moments.append((at, [kind]))
    return ", ".join(" and ".join(sorted(kinds)) for _, kinds in moments)


def peak_n(push: Done) -> float:
    """Return the highest force of a push, between the steps of the grid too [N]."""
    return max(*push.force_n, *(event.force_n for event in push.result.events))


def parted_m(push: Done, opening_m: float) -> float:
    """Return how much of the seam has parted at an opening [m]."""
    return [parted for at, parted in push.parted_m if at <= opening_m + 1e-9][-1]


def _apart(figures: list[float]) -> float:
    return max(figures) / min(figures)


def _words() -> str:
    return ", ".join(f"{1e3 * spacing:g}" for spacing in LATTICES_M) + " mm door"


def same_story(where: str, spacing_m: float) -> Row:
    """Return what an attack does in order on a lattice, against the finest."""
    told = dict(zip(LATTICES_M, pushes(where), strict=True))
    return Row(
        f"{where}, {1e3 * OPENING_M:g} mm: what happens, in order, as on the finest lattice",
        ITSELF,
        story(told[LATTICES_M[-1]]),
        story(told[spacing_m]),
        relation="same",
        spacing=f"{1e3 * spacing_m:g} mm door",
    )


def same_peak(where: str) -> Row:
    """Return how far the lattices are apart in the highest force."""
    return Row(
        f"{where}, {1e3 * OPENING_M:g} mm: highest force, most over least of three lattices",
        ITSELF,
        FORCES,
        _apart([peak_n(push) for push in pushes(where)]),
        relation="at most",
        spacing=_words(),
    )


def same_parted(opening_mm: int) -> Row:
    """Return how far the lattices are apart in the seam that has parted, tips on the lip."""
    return Row(
        f"on the lip, {opening_mm} mm: seam parted, most over least of three lattices",
        "turon-2007",
        LENGTHS,
        _apart([parted_m(push, 1e-3 * opening_mm) for push in pushes("on the lip")]),
        relation="at most",
        spacing=_words(),
        known=OFF.get(opening_mm, ""),
    )


def same_motion(where: str) -> Row:
    """Return how far the lattices are apart in how far the skin's middle has gone out at the end."""
    out = [1e3 * push.result.skin_mid_outboard_m for push in pushes(where)]
    return Row(
        f"{where}, {1e3 * OPENING_M:g} mm: skin's middle out, most less least of three lattices",
        ITSELF,
        1e3 * outcome.limit("moved_m"),  # less cannot be seen on the metal
        max(out) - min(out),
        "mm",
        relation="at most",
        spacing=_words(),
    )
