"""What runs say to what is asked: every kind of ask on traces typed by hand, counted by eye."""

import pytest
from scipy import stats

from sim import answers
from sim.answers import answer
from sim.asks import Alike, Apart, Figure, Happens, Order, Seat, Together, Told, Versus, check_asks
from sim.problems import PlanError
from sim.record import Event
from sim.traces import MoveTrace, RunTrace


def event(kind: str, opening_m: float = 0.01, part: str = "") -> Event:
    return Event(kind, part, opening_m, 1000.0)


def move(*events: Event, failed: int = 0, **curves: tuple[float, ...]) -> MoveTrace:
    count = len(next(iter(curves.values()))) if curves else 3
    opening = tuple(0.01 * k for k in range(count))
    return MoveTrace(
        "spread",
        ("hem lip", "pillar edge"),
        events,
        curves={"opening_m": opening, **curves},
        failed_count=failed,
    )


def run(*moves: MoveTrace, index: int = 0) -> RunTrace:
    return RunTrace(index, {}, moves)


SEAM, LATCH = event("seam parting"), event("latch free", 0.02)
FAILED = RunTrace(0, {}, (), "could not be made")


def one(ask, *runs: RunTrace):
    """Return the answer to one ask of plan "a"."""
    return answer([ask], {"a": runs})[0]


def test_order_looks_at_what_came_first_in_the_whole_plan():
    ask = Order(words="w", of="a", event=("seam parting",), before=("latch free",))
    runs = [
        run(move(SEAM, LATCH)),
        run(move(LATCH, SEAM)),
        run(move(SEAM)),
        run(move()),
        run(move(LATCH), move(SEAM)),
    ]
    assert one(ask, *runs).count == 2


def test_happens_by_kind_and_by_part():
    ask = Happens(words="w", of="a", event=("folding out",), part="skin")
    skin, inner = event("folding out", part="outer skin"), event("folding out", part="inner panel")
    assert one(ask, run(move(skin)), run(move(inner)), run(move(inner, skin)), run(move())).count == 2


def test_only_the_moves_that_are_named_are_read():
    ask = Happens(words="w", of="a", event=("latch free",), moves=(2,))
    assert one(ask, run(move(LATCH), move()), run(move(), move(LATCH))).count == 1


def test_a_run_that_failed_or_did_not_converge_is_unsure_and_never_dropped():
    ask = Happens(words="w", of="a", event=("latch free",))
    got = one(ask, run(move(LATCH)), FAILED, run(move(LATCH, failed=1)), run(move()))
    assert (got.count, got.unsure, got.total) == (1, 2, 4)
    # against it at the low end, for it at the high end: Clopper and Pearson's interval by the beta quantiles
    assert got.low == pytest.approx(stats.beta.ppf(0.025, 1, 4), rel=1e-9)
    assert got.high == pytest.approx(stats.beta.ppf(0.975, 4, 1), rel=1e-9)
    early = Happens(words="w", of="a", event=("latch free",), moves=(1,))
    assert one(early, run(move(LATCH), move(failed=1))).unsure == 0  # what failed came later


def test_seat_by_a_piece_of_its_words():
    assert one(Seat(words="w", of="a", on="hem"), run(move())).count == 1
    assert one(Seat(words="w", of="a", on="bend"), run(move())).count == 0


def figure(at: str = "end", **other):
    return Told(words="w", of="a", figure=("clearance_m",), at=at, **other)


@pytest.mark.parametrize(
    ("at", "value"),
    [("start", 0.1), ("end", 0.3), ("least", 0.04), ("most", 0.3), ("rise", 0.2), ("dip", 0.06)],
)
def test_figures_along_all_moves(at, value):
    moves = move(clearance_m=(0.1, 0.04, 0.06)), move(clearance_m=(0.06, 0.3, 0.3))
    assert answers.read(moves, figure(at)) == pytest.approx(value)


def test_a_figure_at_an_event_is_that_of_the_frame_that_reached_it():
    told = Told(words="w", of="a", figure=("latch_demand_ratio",), at_event=("seam parting",))
    moves = (move(SEAM, latch_demand_ratio=(0.1, 0.2, 0.9)),)
    assert answers.read(moves, told) == 0.2
    assert answers.read((move(latch_demand_ratio=(0.1, 0.2, 0.9)),), told) is None
    below = Figure(words="w", of="a", figure=("latch_demand_ratio",), at_event=("seam parting",), below=0.5)
    nothing = run(move(latch_demand_ratio=(0.1, 0.2)))
    got = one(below, run(*moves), nothing)
    assert (got.count, got.unsure) == (1, 0)  # what never parted did not part below half


def test_the_first_part_of_the_way_counts_over_all_moves():
    # two moves of 20 mm each: a third of the way is 13 mm, the first two frames
    moves = move(clearance_m=(0.10, 0.09, 0.05)), move(clearance_m=(0.05, 0.02, 0.01))
    third = figure("dip", until_ratio=1 / 3)
    assert answers.read(moves, third) == pytest.approx(0.01)
    assert answers.read(moves, figure("dip")) == pytest.approx(0.09)


def test_figures_add_up_and_shares_of_the_work_are_of_all_moves():
    both = Told(words="w", of="a", figure=("parted_length_m", "torn_length_m"))
    assert answers.read(
        (move(parted_length_m=(0.0, 0.2), torn_length_m=(0.0, 0.03)),), both
    ) == pytest.approx(0.23)
    share = Told(words="w", of="a", lines=("seam peel", "tear"))
    books = {"work of the tips": 10.0, "seam peel": 2.0, "tear": 1.0}
    twice = (MoveTrace("spread", ledger_j=books), MoveTrace("ease", ledger_j={"work of the tips": 2.0}))
    assert answers.read(twice, share) == pytest.approx(3.0 / 12.0)


def test_what_cuts_left_and_what_force_fell_in_jerks_are_numbers_of_a_move():
    cut = MoveTrace("cut", cut={"open": 0.0, "left_m": 0.1, "cut_m": 0.3, "room_m": 0.0})
    left = Told(words="w", of="a", figure=("cut_left_m",))
    assert answers.read((cut, move()), left) == 0.1
    assert answers.read((move(),), left) is None
    drops = Told(words="w", of="a", figure=("force_drops_n",))
    # peak 4: falls above 0.6 are 2.0 and 1.0
    assert answers.read((move(force_n=(0.0, 4.0, 2.0, 3.0, 2.5, 1.5)),), drops) == pytest.approx(3.0)


def test_bounds_are_not_part_of_what_lies_between_them():
    ask = Figure(words="w", of="a", figure=("clearance_m",), above=0.0, below=0.1)
    runs = [run(move(clearance_m=(0.0, value))) for value in (0.0, 0.05, 0.1)]
    assert one(ask, *runs).count == 1


def test_plans_are_held_against_each_other_draw_by_draw():
    a = [run(move(force_n=(0.0, value))) for value in (3.0, 1.0, 9.0)]
    b = [run(move(force_n=(0.0, value))) for value in (1.0, 3.0, 8.0)]
    more = Versus(words="w", of="a", against="b", figure=("force_n",), at="most", times=1.5)
    got = answer([more], {"a": a, "b": b})[0]
    assert got.count == 1
    failed = answer([more], {"a": a, "b": [FAILED, *b[1:]]})[0]
    assert (failed.count, failed.unsure) == (0, 1)


def test_alike_is_by_what_gives_first():
    a = [run(move(SEAM, LATCH)), run(move(LATCH)), run(move())]
    b = [run(move(event("tip slipping"), SEAM)), run(move(SEAM)), run(move())]
    assert answer([Alike(words="w", of="a", against="b")], {"a": a, "b": b})[0].count == 2


def test_asks_together_and_apart():
    seam = Happens(words="s", of="a", event=("seam parting",), name="seam")
    latch = Happens(words="l", of="a", event=("latch free",), name="latch")
    runs = [run(move(SEAM, LATCH)), run(move(SEAM)), run(move(SEAM)), run(move(LATCH))]
    asks = [
        seam,
        latch,
        Together(words="t", these=("seam", "latch")),
        Apart(words="d", one="seam", other="latch"),
    ]
    got = answer(asks, {"a": runs})
    assert [one.count for one in got[:3]] == [3, 2, 1]
    assert got[3].middle == pytest.approx(0.25)
    assert got[3].low == pytest.approx(got[0].low - got[1].high)
    assert got[3].high == pytest.approx(got[0].high - got[1].low)


def test_what_is_told_has_its_middle_and_range_and_no_word():
    runs = [run(move(clearance_m=(0.0, value))) for value in (0.1, 0.3, 0.2)]
    got = one(figure(), *runs, FAILED)
    assert (got.middle, got.least, got.most) == (0.2, 0.1, 0.3)
    assert (got.count, got.unsure, got.total, got.word) == (3, 1, 4, "")


def test_unequal_counts_are_refused():
    with pytest.raises(PlanError, match="equally many"):
        answer([figure()], {"a": [run(move())], "b": []})


@pytest.mark.parametrize(
    ("ask", "field"),
    [
        (Happens(words="w", of="c", event=("latch free",)), "of"),
        (Happens(words="w", of="a", event=("latch opens",)), "event"),
        (Happens(words="w", of="a", event=()), "event"),
        (Happens(words=" ", of="a", event=("latch free",)), "words"),
        (Happens(words="w", of="a", event=("latch free",), moves=(0,)), "moves"),
        (Order(words="w", of="a", event=("latch free",), before=("x",)), "before"),
        (Told(words="w", of="a", figure=("force",)), "figure"),
        (Told(words="w", of="a"), "figure"),
        (Told(words="w", of="a", figure=("force_n",), lines=("tear",)), "figure"),
        (Told(words="w", of="a", lines=("tearing",)), "lines"),
        (Told(words="w", of="a", figure=("force_n",), until_ratio=0.0), "until_ratio"),
        (Figure(words="w", of="a", figure=("force_n",)), "above"),
        (Versus(words="w", of="a", against="c", figure=("force_n",)), "against"),
        (Together(words="w", these=("nobody",)), "these"),
        (Apart(words="w", one="nobody", other="nobody"), "one"),
    ],
)
def test_asks_that_cannot_be_are_refused_by_their_field(ask, field):
    with pytest.raises(PlanError) as found:
        check_asks([ask], ["a", "b"])
    assert found.value.field == f"asks[0].{field}"


def test_a_name_belongs_to_one_ask():
    named = Happens(words="w", of="a", event=("latch free",), name="n")
    with pytest.raises(PlanError, match="another ask has"):
        check_asks([named, named], ["a"])
