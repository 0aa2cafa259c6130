"""Saving the metal of the moment shown: the ending decides, and what cannot be written is said."""

import dataclasses
from types import SimpleNamespace

import meshio
import numpy as np
import pytest

pytest.importorskip("PySide6")

from sim.door_model import build_model
from sim.plan import Car
from sim.run import start_frame
from ui.filing import MESHES, NOT_KEPT, Filing


@pytest.fixture
def filing(tmp_path):
    model = build_model(Car(lattice_spacing_m=0.09))
    timeline = SimpleNamespace(frame=None)
    session = SimpleNamespace(model=model, start=start_frame(model), timeline=timeline)
    said = []
    window = SimpleNamespace(notice=SimpleNamespace(say=said.append))
    found = Filing(session, window, None, tmp_path / "settings")
    found.said = said
    return found


@pytest.mark.parametrize("ending", MESHES.values())
def test_every_format_offered_can_be_written(filing, ending, tmp_path):
    filing.save_mesh(tmp_path / f"door{ending}")
    assert (tmp_path / f"door{ending}").stat().st_size > 1000
    assert filing.said == []


def test_the_moment_shown_is_the_one_written(filing, tmp_path):
    shown = dataclasses.replace(
        filing.session.start, points=filing.session.start.points + np.array([0.0, 0.01, 0.0])
    )
    filing.session.timeline.frame = shown
    filing.save_mesh(tmp_path / "door.vtu")
    moved = meshio.read(tmp_path / "door.vtu").point_data["displacement_m"]
    assert moved[:, 1] == pytest.approx(0.01, abs=1e-12)


@pytest.mark.parametrize("name", ["door.obj", "no-folder/door.vtu"])
def test_what_cannot_be_written_is_said(filing, name, tmp_path):
    filing.save_mesh(tmp_path / name)
    (words,) = filing.said
    assert "was not written" in words and name.rpartition("/")[2] in words


def test_settings_that_cannot_be_kept_are_told_once(filing, tmp_path):
    (tmp_path / "file").write_text("mine", encoding="utf-8")
    filing.folder = tmp_path / "file" / "settings"
    for theme in ("dark", "light"):
        filing._remember(dataclasses.replace(filing.settings, theme=theme))
    (words,) = filing.said
    assert words.startswith(NOT_KEPT) and str(filing.folder) in words
    assert filing.settings.theme == "light"  # it holds for this sitting
