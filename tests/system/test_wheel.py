"""The built package is whole: it runs from its own folder, with its plans, and without this source tree."""

from __future__ import annotations

import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PACKAGES = ("assets", "meshes", "sim", "ui")

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def wheel(tmp_path_factory) -> Path:
    """Return the wheel, built without a network from this source tree."""
    folder = tmp_path_factory.mktemp("wheel")
    command = [
        sys.executable,
        "-P",
        "-m",
        "build",
        "--wheel",
        "--no-isolation",
        "--outdir",
        str(folder),
        str(ROOT),
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=150)
    assert done.returncode == 0, done.stdout + done.stderr
    (found,) = folder.glob("hemline-*.whl")
    return found


@pytest.fixture(scope="module")
def installed(wheel, tmp_path_factory) -> Path:
    """Return the folder that the wheel was installed to."""
    target = tmp_path_factory.mktemp("installed")
    command = [
        sys.executable,
        "-P",
        "-m",
        "pip",
        "install",
        "--no-deps",
        "--no-index",
        "--target",
        str(target),
    ]
    subprocess.run([*command, str(wheel)], capture_output=True, check=True, timeout=150)
    return target


def python(installed: Path, code: str) -> subprocess.CompletedProcess[str]:
    """Return the finished code, run where the installed package is in reach and the source tree is not."""
    path = (
        "import sys, pathlib\n"
        f"root = pathlib.Path({str(ROOT)!r})\n"
        f"sys.path[:] = [{str(installed)!r}] + [p for p in sys.path if pathlib.Path(p).resolve() != root]\n"
    )
    command = [sys.executable, "-I", "-c", path + code]
    return subprocess.run(command, cwd=installed, capture_output=True, text=True, check=False, timeout=150)


def test_it_holds_every_file_of_the_packages_and_the_licence(wheel):
    inside = set(zipfile.ZipFile(wheel).namelist())
    here = {
        file.relative_to(ROOT).as_posix()
        for package in PACKAGES
        for file in (ROOT / package).rglob("*")
        if file.is_file() and "__pycache__" not in file.parts
    }
    assert here <= inside, sorted(here - inside)
    others = {name for name in inside - here if ".dist-info/" not in name}
    assert not others, "nothing but the four packages"
    assert any(name.endswith("licenses/LICENSE") for name in inside)


def test_it_finds_its_plans(installed):
    code = (
        "from importlib.resources import files\n"
        "plans = files('assets') / 'plans'\n"
        "print(*sorted(plan.name for plan in plans.iterdir()), sep='\\n')\n"
    )
    done = python(installed, code)
    assert done.returncode == 0, done.stderr
    assert "edge-at-latch.toml" in done.stdout.splitlines()


def test_every_package_comes_from_it(installed):
    code = f"import {', '.join(PACKAGES)}\nfor module in ({', '.join(PACKAGES)}): print(module.__file__)"
    done = python(installed, code)
    assert done.returncode == 0, done.stderr
    assert all(Path(line).is_relative_to(installed) for line in done.stdout.splitlines()), done.stdout


@pytest.mark.parametrize(("word", "answer"), [("--version", "0.1.0"), ("--help", "run")])
def test_its_command_starts(installed, word, answer):
    code = f"sys.argv = ['hemline', {word!r}]\nfrom ui.command import main\nsys.exit(main())"
    done = python(installed, code)
    assert done.returncode == 0, done.stderr
    assert answer in done.stdout
    assert (installed / "bin" / "hemline").exists() or (installed / "Scripts" / "hemline.exe").exists()


def test_its_version_is_the_one_in_pyproject(installed):
    tomllib = pytest.importorskip("tomllib")
    declared = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]["version"]
    done = python(installed, "from importlib.metadata import version\nprint(version('hemline'))")
    assert done.stdout.strip() == declared, done.stderr
