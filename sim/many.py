"""Many runs of one plan with the numbers that are not known well varied: compact records, one answer.

Every run is a plan of its own, solved in a worker process.  A run that cannot be made, breaks or does not
settle is counted as that and never dropped.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Any

import msgspec

from meshes.part import MeshError
from sim.likely import NOT_SETTLED, TOO_FEW, Likelihood, tally
from sim.move_words import is_driven
from sim.plan import Plan
from sim.problems import PlanError
from sim.record import Event, MoveRecord
from sim.workers import Fault, Workers

if TYPE_CHECKING:
    from sim.vary import Draw

RUNS = 64
"""Runs of a door: all 64 alike put the true share above 0.94."""
SIDE_RUNS = 16
"""Runs of a whole side, whose plans take several times as long: all 16 alike put it above 0.79."""

GIVES = (
    "seam parting",
    "weld broken",
    "latch free",
    "striker out",
    "hinge free",
    "bar foot free",
    "skin tearing",
    "tip shearing through",
    "seat slipping",
    "base giving",
)
"""Kinds of event in which a part gives; the others tell how metal or tool moved."""
MANY_GIVES = (*GIVES, "spot popped")
"""The same where many runs are read: a spot of the pillar's foot or head too."""
NOTHING_GAVE = "nothing gave"
EFFECTS = ("gained", "spent", "lost ground", "stop here")
ALWAYS_TOLD = ("seam parting", "skin tearing", "latch free", "hinge free")
"""What the metal may do that is told also when it never did."""
SETTLED, UNSETTLED, FAILED = "settled", NOT_SETTLED, "failed"


class Tried(msgspec.Struct, frozen=True):
    """One run in few numbers.

    values : what was drawn, by its path in the plan
    standing : "settled", "not settled" (increments did not converge) or "failed" (could not be made)
    metal, effect : the outcome in words;  first : what gave first, "nothing gave" when nothing did
    first_part, first_opening_m, first_force_n : where and at what
    peak_force_n, peak_latch_ratio : most during the judged move
    force_drops_n : what the force loses in jerks, see `force_drops`
    why : of a run that failed, in a sentence
    """

    index: int
    values: dict[str, float]
    standing: str
    metal: tuple[str, ...] = ()
    effect: str = ""
    first: str = ""
    first_part: str = ""
    first_opening_m: float | None = None
    first_force_n: float | None = None
    opening_m: float = 0.0
    peak_force_n: float = 0.0
    peak_latch_ratio: float = 0.0
    parted_length_m: float = 0.0
    torn_length_m: float = 0.0
    skin_mid_outboard_m: float = 0.0
    inner_mid_outboard_m: float = 0.0
    least_clearance_m: float = 0.0
    ledger_closure_ratio: float = 0.0
    failed_increments: int = 0
    why: str = ""
    force_drops_n: float = 0.0


@dataclass(frozen=True)
class Progress:
    """How far many runs are; ``seconds_left`` is None until the first one has ended."""

    done: int
    total: int
    uncertain: int
    seconds: float
    seconds_left: float | None


@dataclass(frozen=True)
class Answer:
    """What many runs say.

    plan : as it was asked;  preview : whether a coarser lattice stood in for the plan's own
    move_index : the move that is judged
    short : whether each run ended where a part gave, so that nothing is known of what came after
    metal, effect, first : how likely each outcome is, in the two families and for what gives first
    """

    plan: Plan
    preview: bool
    move_index: int
    runs: tuple[Tried, ...]
    metal: tuple[Likelihood, ...]
    effect: tuple[Likelihood, ...]
    first: tuple[Likelihood, ...]
    short: bool = False

    @property
    def uncertain(self) -> tuple[Tried, ...]:
        """The runs that failed or did not settle."""
        return tuple(run for run in self.runs if run.standing != SETTLED)


def runs_of(plan: Plan) -> int:
    """Return how many runs are made of a plan when nobody says."""
    return SIDE_RUNS if plan.car.extent == "side" else RUNS


def judged(plan: Plan) -> int:
    """Return the index of the move whose outcome is told: the last one that pushes.

    Raises
    ------
    PlanError
        When no move pushes.
    """
    pushes = [k for k, move in enumerate(plan.moves) if is_driven(move)]
    if not pushes:
        raise PlanError("moves", "hold no push, so there is nothing to tell; add a spread or a squeeze")
    return pushes[-1]


def stopping(plan: Plan, kinds: Sequence[str]) -> Plan:
    """Return the plan up to its judged move, which ends at the first event of some kinds."""
    index = judged(plan)
    move: Any = plan.moves[index]
    stop = tuple(dict.fromkeys((*move.stop_at, *kinds)))
    plan = msgspec.structs.replace(plan, moves=plan.moves[: index + 1])
    return plan.with_move(index, msgspec.structs.replace(move, stop_at=stop))


def shortened(plan: Plan) -> Plan:
    """Return the plan up to its judged move, which ends where a part gives, and so tells what gives first."""
    return stopping(plan, MANY_GIVES)


def first_give(events: Sequence[Event], kinds: Sequence[str] = GIVES) -> Event | None:
    """Return the first event in which a part gives."""
    return next((event for event in events if event.kind in kinds), None)


def force_drops(force_n: Sequence[float]) -> float:
    """Return the sum of the falls from one increment to the next that are above 15 % of the peak [N]."""
    falls = [a - b for a, b in pairwise(force_n)]
    return sum(fall for fall in falls if fall > 0.15 * max(force_n))


def warmed() -> None:
    """Compile every kernel once; what a worker does before its first job."""
    from sim import warm

    warm.main()


def try_draw(draw: Draw) -> Tried:
    """Return one run in few numbers; the job of a worker."""
    from sim.run import solve_plan  # who only reads kept figures needs no mechanics

    try:
        _, records = solve_plan(draw.plan, with_residual=False)
    except (PlanError, MeshError) as error:
        return Tried(draw.index, dict(draw.values), FAILED, why=str(error))
    return summed_up(draw, records, judged(draw.plan))


def summed_up(draw: Draw, records: Sequence[MoveRecord], move_index: int) -> Tried:
    """Return the judged move of a solved plan in few numbers."""
    record = records[move_index]
    result = record.result
    assert result is not None
    failed = sum(r.result.solver.failed_count for r in records[: move_index + 1] if r.result is not None)
    give = first_give(result.events, MANY_GIVES)
    return Tried(
        draw.index,
        dict(draw.values),
        UNSETTLED if failed or NOT_SETTLED in result.metal else SETTLED,
        result.metal,
        result.plan_effect,
        NOTHING_GAVE if give is None else give.kind,
        "" if give is None else give.part,
        None if give is None else give.opening_m,
        None if give is None else give.force_n,
        record.frames[-1].opening_m,
        max(frame.force_n for frame in record.frames),
        result.latch_demand_ratio,
        result.parted_length_m,
        result.torn_length_m,
        result.skin_mid_outboard_m,
        result.inner_mid_outboard_m,
        min(r.result.clearance_m["least"] for r in records[: move_index + 1] if r.result is not None),
        result.ledger_closure_ratio,
        failed,
        force_drops_n=force_drops([frame.force_n for frame in record.frames]),
    )


def tried_or_failed(draw: Draw, answer: Tried | Fault) -> Tried:
    """Return a worker's answer; a fault becomes a run that failed."""
    if isinstance(answer, Fault):
        return Tried(draw.index, dict(draw.values), FAILED, why=answer.sentence)
    return answer


class Many:
    """Many runs under way: iterate for the progress, then read `answer`.

    Parameters
    ----------
    plan : the plan;  count : how many runs
    worker_count : how many processes
    coarse : solve on the coarse lattice of a preview
    short : end each run where a part gives: what gives first is known then, in a fraction of the time
    job : solves one draw; a function at the top of a module
    prepare : called once in each worker before its first run

    Raises
    ------
    PlanError
        When no move of the plan pushes, or its seed is below 0.
    """

    def __init__(
        self,
        plan: Plan,
        count: int = RUNS,
        *,
        worker_count: int = 1,
        coarse: bool = False,
        short: bool = False,
        cancelled: Callable[[], bool] = bool,
        job: Callable[[Draw], Tried] = try_draw,
        prepare: Callable[[], None] = warmed,
    ) -> None:
        from sim.vary import draws, preview

        self.plan, self.coarse, self.short = plan, coarse, short
        self.move_index = judged(plan)
        solved = shortened(plan) if short else plan
        self.draws = draws(preview(solved) if coarse else solved, count)
        self.workers: Workers[Draw, Tried] = Workers(job, min(worker_count, count), prepare)
        self._cancelled = cancelled
        self._tried: dict[int, Tried] = {}

    def __iter__(self) -> Iterator[Progress]:
        """Yield the progress at least every tick; ends early, with no process left, when cancelled."""
        began = time.perf_counter()
        total = len(self.draws)
        with self.workers:
            for said in self.workers.answer(self.draws, self._cancelled):
                if said is not None:
                    index, answer = said
                    self._tried[index] = tried_or_failed(self.draws[index], answer)
                seconds, done = time.perf_counter() - began, len(self._tried)
                left = seconds * (total - done) / done if done else None
                uncertain = sum(run.standing != SETTLED for run in self._tried.values())
                yield Progress(done, total, uncertain, seconds, left)

    @property
    def whole(self) -> bool:
        """Whether every run has ended."""
        return len(self._tried) == len(self.draws)

    @property
    def answer(self) -> Answer:
        """What the runs say, in the order they were drawn.

        Raises
        ------
        ValueError
            When not every run has ended.
        """
        if not self.whole:
            raise ValueError(f"{len(self._tried)} of {len(self.draws)} runs have ended")
        runs = tuple(self._tried[k] for k in range(len(self.draws)))
        return answered(self.plan, runs, self.move_index, coarse=self.coarse, short=self.short)


def answered(
    plan: Plan, runs: tuple[Tried, ...], move_index: int, *, coarse: bool = False, short: bool = False
) -> Answer:
    """Return what some runs say."""
    settled = [run if run.standing == SETTLED else None for run in runs]
    metal = [None if run is None else run.metal for run in settled]
    first = [None if run is None else (run.first,) for run in settled]
    effect = [None if run is None else (run.effect,) for run in settled]
    words = dict.fromkeys([*ALWAYS_TOLD, *(word for run in metal if run is not None for word in run)])
    firsts = dict.fromkeys([*ALWAYS_TOLD, NOTHING_GAVE, *(run[0] for run in first if run is not None)])
    return Answer(
        plan,
        coarse,
        move_index,
        runs,
        tally(words, metal),
        tally(EFFECTS, effect),
        tally(firsts, first),
        short,
    )


# words ----------------------------------------------------------------------------------------------------

GIVE_WORDS: Mapping[str, str] = {
    "seam parting": "the seam",
    "weld broken": "a weld",
    "latch free": "the latch",
    "striker out": "the striker, out of its fork,",
    "hinge free": "a hinge",
    "bar foot free": "a foot of the bar",
    "skin tearing": "a sheet, by tearing,",
    "tip shearing through": "the sheet under the tip",
    "seat slipping": "the seat of the ram, by slipping,",
    "base giving": "the base",
    "spot popped": "a spot of the pillar",
}


def sentence(answer: Answer) -> str:
    """Return the one answer in words, without counts."""
    top, effect = answer.first[0], answer.effect[0]
    begin = "On a coarse lattice, as a preview only: w" if answer.preview else "W"
    begin += "ith what is not known well varied, "
    if top.word in (NOT_SETTLED, TOO_FEW):
        rivals = [GIVE_WORDS.get(item.what, "nothing") for item in answer.first if item.count]
        named = " or ".join(rivals) or "nothing yet"
        what = f"what gives first is {NOT_SETTLED}" + (f" ({named})" if rivals else "")
        if top.word == TOO_FEW and top.count == top.total:
            what = f"the runs are too few to say what gives first (so far {named} each time)"
        elif top.word == TOO_FEW:
            what = f"the runs are too few to say what gives first (so far {named})"
    elif top.what == NOTHING_GAVE:
        what = f"nothing gives, {top.word}"
    else:
        what = f"{GIVE_WORDS[top.what]} gives first, {top.word}"
    rest = f"for the plan: {effect.what}, {effect.word}"
    if effect.word in (NOT_SETTLED, TOO_FEW):
        rest = f"for the plan: {effect.word}"
    if answer.short:
        rest = "the runs ended there"
    count = len(answer.uncertain)
    if not count:
        return f"{begin}{what}; {rest}."
    runs = "one run" if count == 1 else f"{count} runs"
    return f"{begin}{what}; {rest}; {runs} of {len(answer.runs)} failed or did not settle and count as such."


def counts(answer: Answer) -> str:
    """Return the counts behind the words, a line each, for whoever asks."""
    lines = []
    families = (("gives first", answer.first), ("the metal", answer.metal), ("for the plan", answer.effect))
    for title, family in families[:1] if answer.short else families:
        for item in family:
            share = f"true share {100 * item.low:.0f} to {100 * item.high:.0f} %"
            unsure = f", {item.unsure} unsure" if item.unsure else ""
            lines.append(f"{title}: {item.what}: {item.count} of {item.total}{unsure} ({share}): {item.word}")
    return "\n".join(lines)
