"""The books of every move of every ready plan that is kept solved: closed, and drag small or told.

Sources
-------
None: conservation of energy, and the program's own limit for its drag.
"""

import json
from pathlib import Path

import pytest

KEPT = sorted((Path(__file__).parents[3] / "assets/lessons/solved").glob("*.json"))
LEAST_J = 10.0  # of less work the gap may be 2 % of this: friction is booked by steps


@pytest.mark.parametrize("file", KEPT, ids=lambda file: file.stem)
def test_kept_books_close_to_2_percent_and_drag_stays_under_5_or_is_told(file):
    results = json.loads(file.read_text(encoding="utf-8"))["results"]
    assert results
    for number, result in enumerate(results, 1):
        books = result["ledger_j"]
        work = abs(books["work of the tips"])
        assert abs(books["gap"]) <= 0.02 * max(work, LEAST_J), (number, books)
        told = any("drag took" in note for note in result["notes"])
        assert told == (books["viscous"] > 0.05 * max(work, 1.0)), (number, books, result["notes"])
