"""The command that makes an outcome map: files, words, refusals; on the maps that come with the program."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import pytest

from sim.map_file import read_kept
from ui import command, mapping

pytest.importorskip("PySide6")

PLANS = Path(__file__).resolve().parents[2] / "assets" / "plans"
BONDED, WELDED = PLANS / "three-doors-bonded.toml", PLANS / "three-doors-welded.toml"


@pytest.fixture(scope="module", autouse=True)
def qapp():
    """The window's own application first: pictures would else make one that windows cannot use."""
    from ui.app import prepare_application

    return prepare_application()


def rows(path: Path) -> list[dict[str, str]]:
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@pytest.fixture(scope="module")
def written(tmp_path_factory):
    out = tmp_path_factory.mktemp("maps") / "out"
    keep = out.parent / "kept.json"
    words = ["map", str(BONDED), "--out", str(out), "--other", str(WELDED), "--keep", str(keep)]
    assert command.main(words) == 0
    return out, keep


def test_it_writes_map_table_picture_and_words(written):
    out, _ = written
    assert sorted(path.name for path in out.iterdir()) == sorted(mapping.FILES)
    raw = json.loads((out / "map.json").read_text(encoding="utf-8"))
    table = rows(out / "map.csv")
    assert len(raw["cells"]) == len(table) == sum(raw["counts"].values()) == 110
    for cell, row in zip(raw["cells"], table, strict=True):
        assert (cell["word"], cell["edge"], cell["depth_m"]) == (
            row["word"],
            row["edge"],
            float(row["depth_m"]),
        )
        assert cell["runs"][0]["word"] == row["first_word"]
        assert bool(cell["why"]) == (cell["word"] == "not settled")
    assert raw["limits"] in (out / "map.txt").read_text(encoding="utf-8")
    assert raw["sentence"] in (out / "map.txt").read_text(encoding="utf-8")


def test_the_difference_is_the_cell_wise_one_of_both_tables(written, tmp_path):
    out, _ = written
    other = tmp_path / "welded"
    assert command.main(["map", str(WELDED), "--out", str(other)]) == 0
    seam = {"weld broken": "seam parting"}
    pairs = zip(rows(out / "map.csv"), rows(other / "map.csv"), strict=True)
    wanted = [
        (a["edge"], a["along_m"], a["depth_m"], a["word"], b["word"])
        for a, b in pairs
        if seam.get(a["word"], a["word"]) != seam.get(b["word"], b["word"])
    ]
    names = ("edge", "along_m", "depth_m", "before", "after")
    assert [tuple(row[name] for name in names) for row in rows(out / "difference.csv")] == wanted


def test_pictures_hold_their_words_and_are_the_same_again(written, tmp_path):
    from PySide6.QtGui import QImage

    out, _ = written
    image = QImage(str(out / "map.png"))
    assert (image.width(), image.height()) == (1600, 1000)
    assert "places along the door's edges" in image.text("Description")
    assert "not a real car" in image.text("Description")
    assert "come out otherwise" in QImage(str(out / "difference.png")).text("Description")
    again = tmp_path / "again"
    assert command.main(["map", str(BONDED), "--out", str(again)]) == 0
    assert QImage(str(again / "map.png")) == image


def test_what_is_kept_is_the_map_that_comes_with_the_program(written):
    _, keep = written
    ready = PLANS.parent / "maps" / "three-doors-bonded.json"
    assert read_kept(keep) == read_kept(ready)


@pytest.mark.parametrize(
    ("plan", "told"),
    [
        ("[[moves]]\nmove = 'ease'\n", "moves hold no spread"),
        ("[[moves]]\nmove = 'spread'\n[moves.against]\nat = 'belt'\n", "against is on the door"),
    ],
)
def test_a_plan_that_cannot_be_mapped_is_refused_in_one_sentence(plan, told, tmp_path, capsys):
    path = tmp_path / "plan.toml"
    path.write_text(f"schema_version = 1\n{plan}", encoding="utf-8")
    assert command.main(["map", str(path), "--out", str(tmp_path / "out")]) == 2
    said = capsys.readouterr().err
    assert told in said and said.count("\n") == 1 and not (tmp_path / "out").exists()


def test_doors_of_another_size_are_refused(tmp_path, capsys):
    text = BONDED.read_text(encoding="utf-8").replace("[[moves]]", "shut_face_depth_m = 0.08\n[[moves]]", 1)
    other = tmp_path / "other.toml"
    other.write_text(text, encoding="utf-8")
    words = ["map", str(BONDED), "--out", str(tmp_path / "out"), "--other", str(other)]
    assert command.main(words) == 2
    assert "one size" in capsys.readouterr().err and not (tmp_path / "out").exists()
