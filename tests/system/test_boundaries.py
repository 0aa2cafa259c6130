"""The direction of imports holds, and each guard that says so turns red when it is breached."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
GRAPHICS = (
    "PySide6.QtCore",
    "shiboken6",
    "qtpy",
    "vtk",
    "vtkmodules.vtkCommonCore",
    "pyvista",
    "pyvistaqt",
    "pyqtgraph",
)


def run(*command: str, cwd: Path, **variables: str) -> subprocess.CompletedProcess[str]:
    """Return the finished command, with its output as one text."""
    return subprocess.run(
        command,
        cwd=cwd,
        env={**os.environ, **variables},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        check=False,
        timeout=150,
    )


@pytest.fixture(scope="module")
def copy(tmp_path_factory) -> Path:
    """Return a copy of the packages and their contracts, to plant breaches in."""
    root = tmp_path_factory.mktemp("copy")
    shutil.copy(ROOT / "pyproject.toml", root)
    for package in ("meshes", "sim", "ui"):
        shutil.copytree(ROOT / package, root / package, ignore=shutil.ignore_patterns("__pycache__"))
    return root


def lint_imports(root: Path) -> subprocess.CompletedProcess[str]:
    """Return the finished import linter, which looks at this root and not at the installed packages."""
    code = (
        "import sys; sys.path.insert(0, '.')\n"
        "from importlinter.cli import lint_imports\n"
        "sys.exit(lint_imports(no_cache=True))"
    )
    return run(sys.executable, "-I", "-c", code, cwd=root)


def test_the_contracts_are_kept(copy):
    done = lint_imports(copy)
    assert done.returncode == 0, done.stdout
    assert " 0 broken" in done.stdout


@pytest.mark.parametrize(
    ("file", "breach"),
    [
        ("meshes/planted.py", "import sim"),
        ("sim/planted.py", "import ui.state"),
        ("meshes/planted.py", "import numba"),
        ("meshes/planted.py", "def later():\n    import msgspec"),
        ("sim/planted.py", "from PySide6 import QtCore"),
        ("sim/planted.py", "from vtkmodules import vtkCommonCore"),
        ("meshes/planted.py", "import pyvista"),
        ("ui/state/planted.py", "import pyqtgraph"),
        ("ui/state/planted.py", "import ui.panels"),
        ("ui/panels/planted.py", "import ui.scene"),
        ("ui/scene/planted.py", "from ui import panels"),
        ("ui/environment.py", "import numpy"),
        ("ui/start.py", "import sim"),
    ],
)
def test_a_breach_turns_the_contracts_red(copy, file, breach):
    target = copy / file
    before = target.read_text(encoding="utf-8") if target.exists() else None
    target.write_text((before or "") + f"\n{breach}\n", encoding="utf-8")
    try:
        done = lint_imports(copy)
    finally:
        if before is None:
            target.unlink()
        else:
            target.write_text(before, encoding="utf-8")
    assert done.returncode == 1, done.stdout
    assert " 0 broken" not in done.stdout
    assert target.stem in done.stdout


@pytest.mark.parametrize(("blocked", "passed_count"), [("1", len(GRAPHICS)), ("", 0)])
def test_graphics_are_out_of_reach_where_they_should_be(tmp_path, blocked, passed_count):
    """The same planted tests pass in the process without graphics and fail in any other."""
    tests = tmp_path / "tests"
    tests.mkdir()
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    for name in ("conftest.py", "leftovers.py"):
        shutil.copy(ROOT / "tests" / name, tests)
    (tests / "test_planted.py").write_text(
        "import importlib, pytest\n"
        f"@pytest.mark.parametrize('name', {GRAPHICS!r})\n"
        "def test_out_of_reach(name):\n"
        "    with pytest.raises(ModuleNotFoundError, match='out of reach'):\n"
        "        importlib.import_module(name)\n"
    )
    words = ("-p", "no:pytest-qt", "-p", "no:xvfb", "-p", "no:cacheprovider", "-W", "ignore", "-q")
    done = run(
        sys.executable, "-P", "-m", "pytest", *words, cwd=tmp_path, HEMLINE_TESTS_WITHOUT_GRAPHICS=blocked
    )
    other = len(GRAPHICS) - passed_count
    assert (f"{passed_count} passed" in done.stdout) == bool(passed_count), done.stdout
    assert (f"{other} failed" in done.stdout) == bool(other), done.stdout


def test_the_window_s_frame_loads_neither_mechanics_nor_drawing():
    """They come once the frame stands: with them it would be there a second of processor time later."""
    heavy = ("numba", "scipy", "cvxopt", "vtkmodules", "pyvista", "matplotlib", "pyqtgraph", "trimesh")
    code = (
        "import sys\n"
        "sys.path.insert(0, '.')\n"
        "import ui.app\n"
        f"sys.exit(', '.join(name for name in {heavy!r} if name in sys.modules) or 0)\n"
    )
    done = run(sys.executable, "-I", "-c", code, cwd=ROOT)
    assert done.returncode == 0, done.stdout


def test_every_module_below_the_pictures_loads_without_graphics():
    """Also those that no test imports; the command line among them, which needs no Qt to print its help."""
    code = (
        "import importlib, pkgutil, sys\n"
        "sys.path.insert(0, '.')\n"
        "from tests.conftest import NoGraphics\n"
        "sys.meta_path.insert(0, NoGraphics())\n"
        "import meshes, sim, ui.state\n"
        "below = (meshes, sim, ui.state)\n"
        "names = [m.name for p in below for m in pkgutil.walk_packages(p.__path__, p.__name__ + '.')]\n"
        "for name in [*names, 'ui.command']:\n"
        "    importlib.import_module(name)\n"
    )
    done = run(sys.executable, "-I", "-c", code, cwd=ROOT)
    assert done.returncode == 0, done.stdout


def test_no_kernel_is_longer_than_its_own_limit():
    """At most 120 statements in the one file that may fuse a law for speed; 50 everywhere else."""
    limit = ("--select", "PLR0915", "--config", "lint.pylint.max-statements = 120")
    done = run(sys.executable, "-m", "ruff", "check", "--isolated", *limit, "sim/kernels.py", cwd=ROOT)
    assert done.returncode == 0, done.stdout


AT_ONCE = re.compile(
    r"removeRow\(|setParent\(None\)|shiboken6?\.delete|[Mm]enu\.clear\(\)|removeTab\(|takeCentralWidget\("
)
"""What deletes a widget, a row or an action where it stands, or leaves it to the last reference in Python."""


def test_nothing_of_the_window_is_deleted_in_the_middle_of_its_own_event():
    """A row deleted by its own key took the program down: hide it and let Qt delete it later."""
    assert AT_ONCE.search("form.removeRow(0)") and AT_ONCE.search("self.recent_menu.clear()")
    for file in (ROOT / "ui").rglob("*.py"):
        found = AT_ONCE.search(file.read_text(encoding="utf-8"))
        assert found is None, f"{file}: {found}"


def test_the_program_does_not_lean_on_its_tests():
    for package in ("meshes", "sim", "ui", "assets"):
        for file in (ROOT / package).rglob("*.py"):
            words = file.read_text(encoding="utf-8")
            assert "import tests" not in words, file
            assert "from tests" not in words, file
