"""Files of another kind, and places that take nothing: one sentence with the remedy, and nothing lost."""

import sys
from importlib import resources
from pathlib import Path

import pytest
from PySide6.QtCore import qInstallMessageHandler

from sim.plan import Plan
from ui import files
from ui.listening import FAULT, listen
from ui.state.events_log import EventsLog

ASSETS = Path(str(resources.files("assets")))


@pytest.mark.parametrize(
    ("name", "remedy"),
    [("scenarios/first-bite.toml", "hemline scenario"), ("figures/first-bite.toml", "Matching pictures")],
)
def test_a_file_of_another_kind_is_told_what_opens_it(name, remedy):
    with pytest.raises(files.FileTrouble, match=remedy):
        files.read(ASSETS / name)


def test_a_lesson_is_known_and_a_plan_is_of_no_other_kind():
    assert files.is_lesson(ASSETS / "lessons/01-first-bite.toml")
    assert files.other_kind(ASSETS / "plans/edge-at-latch.toml") is None


def test_a_place_that_takes_nothing_is_told_and_the_plan_stays(tmp_path):
    (tmp_path / "file").write_text("mine", encoding="utf-8")
    with pytest.raises(
        files.FileTrouble, match=r"p.toml was not written: it lies under something that is not"
    ):
        files.write(Plan(), tmp_path / "file" / "p.toml", None)
    assert (tmp_path / "file").read_text(encoding="utf-8") == "mine"


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="this system has no disk that is always full")
def test_a_full_disk_is_told(monkeypatch, tmp_path):
    monkeypatch.setattr(Path, "with_name", lambda _path, _name: Path("/dev/full"))
    monkeypatch.setattr(Path, "unlink", lambda _path, **_: None)
    with pytest.raises(files.FileTrouble, match="the disk is full; free some space and try again"):
        files.write(Plan(), tmp_path / "p.toml", None)


def test_a_fault_nobody_caught_is_told_in_a_sentence(monkeypatch, capsys):
    told = []
    monkeypatch.setattr(sys, "excepthook", sys.__excepthook__)
    log = EventsLog(())
    listen(log, told.append)
    qInstallMessageHandler(None)
    try:
        raise ValueError("planted")
    except ValueError:
        sys.excepthook(*sys.exc_info())
    assert told == [FAULT]
    assert "planted" in capsys.readouterr().err
