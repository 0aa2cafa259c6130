"""Three hundred random legal pushes: does each reach its opening or say why not, with its books closed?

    python tests/benchmarks/random_pushes.py [--count 300] [--first 0] [--workers 2]

Prints the share that is in order and every push that is not, with what happened.  The tests run some of them.
"""

from __future__ import annotations

import argparse
import sys
import time
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from sim import warm
from sim.workers import Fault, Workers
from tests.sim.runs.random_pushes import Ended, ended, push_of, words_of


def main() -> None:
    """Run them and print what came out."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=300)
    parser.add_argument("--first", type=int, default=0)
    parser.add_argument("--workers", type=int, default=2)
    asked = parser.parse_args()
    numbers = list(range(asked.first, asked.first + asked.count))
    began, found = time.perf_counter(), []
    with Workers(ended, asked.workers, warm.main) as workers:
        for said in workers.answer(numbers):
            if said is None:
                continue
            index, answer = said
            if isinstance(answer, Fault):
                words = words_of(*push_of(numbers[index]))
                answer = Ended(numbers[index], words, fault=answer.sentence)
            found.append(answer)
            if answer.problems:
                print(
                    f"{answer.number}: {'; '.join(answer.problems)}\n    {answer.words}; {answer.events}",
                    flush=True,
                )
    good = sum(not answer.problems for answer in found)
    there = sum(bool(answer.reached or answer.named) for answer in found)
    print(f"{len(found)} pushes in {time.perf_counter() - began:.0f} s")
    print(f"reached their opening or a named end: {there}; nothing wrong at all: {good}")
    print("events:", Counter(kind for answer in found for kind in answer.events))


if __name__ == "__main__":
    main()
