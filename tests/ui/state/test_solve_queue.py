"""Whatever order answers come in, only the newest request's count."""

from hypothesis import given
from hypothesis import strategies as st

from sim.plan import Plan
from ui.state.solve_queue import Job, SolveQueue, Standing

# Every interleaving of wishes and (possibly late) answers: a number is an answer to the request of that rank.
steps = st.lists(
    st.one_of(
        st.sampled_from(["solve", "push", "let go", "cancel"]),
        st.tuples(st.sampled_from(["answer", "finish"]), st.integers(0, 9)),
    ),
    max_size=30,
)


@given(steps)
def test_only_the_newest_request_counts_in_any_interleaving(found):
    queue = SolveQueue()
    issued, live = [], None
    for step in found:
        if step in ("solve", "push"):
            job = Job.SOLVE if step == "solve" else Job.PUSH
            live = queue.issue(job, Plan()).number
            issued.append(live)
        elif step == "let go":
            queue.let_go()
        elif step == "cancel":
            assert queue.cancel() == (live is not None)
            live = None
        else:
            what, rank = step
            number = issued[rank] if rank < len(issued) else 10_000
            taken = queue.accept(number) if what == "answer" else queue.finish(number)
            assert taken == (number == live)
            if what == "finish" and taken:
                live = None
        assert queue.busy == (live is not None)
        assert (queue.standing is Standing.IDLE) == (live is None)
    assert issued == sorted(set(issued))


def test_a_push_is_held_until_it_is_let_go_and_its_last_answers_still_count():
    queue = SolveQueue()
    number = queue.issue(Job.PUSH, Plan()).number
    assert queue.holding
    assert queue.accept(number)
    assert queue.standing is Standing.RUNNING
    assert queue.let_go()
    assert not queue.let_go()
    assert not queue.holding
    assert queue.accept(number)
    assert queue.standing is Standing.STOPPING
    assert queue.finish(number)


def test_a_solve_is_not_let_go():
    queue = SolveQueue()
    queue.issue(Job.SOLVE, Plan())
    assert not queue.let_go()


def test_every_change_of_standing_is_told():
    queue, told = SolveQueue(), []
    queue.changed.connect(lambda: told.append(queue.standing))
    number = queue.issue(Job.SOLVE, Plan()).number
    queue.accept(number)
    queue.accept(number)
    queue.finish(number)
    assert told == [Standing.WAITING, Standing.RUNNING, Standing.IDLE]
