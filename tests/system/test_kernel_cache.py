"""Compiled code is made anew when any text it is made from changes, and only then."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from sim.compiled import below

ROOT = Path(__file__).resolve().parents[2]
LOW = "from sim.compiled import kernel\n\nFACTOR = 2.0\n\n\n@kernel\ndef low(x):\n    return 3.0 * x\n"
MIDDLE = "from sim.low import FACTOR\nfrom sim.low import low as inner\n"
TOP = (
    "from sim.compiled import kernel\nfrom sim.middle import FACTOR, inner\n\n\n"
    "@kernel\ndef top(x):\n    return FACTOR * inner(x)\n"
)
ASK = (
    "from sim.top import top\n"
    "print(top(1.0), sum(top.stats.cache_hits.values()), sum(top.stats.cache_misses.values()))"
)


@pytest.fixture
def package(tmp_path):
    """Return a small package whose compiled function inlines one of another module, two imports away."""
    room = tmp_path / "sim"
    room.mkdir()
    (room / "__init__.py").write_text("")
    (room / "compiled.py").write_text((ROOT / "sim" / "compiled.py").read_text(encoding="utf-8"))
    for name, text in (("low", LOW), ("middle", MIDDLE), ("top", TOP)):
        (room / f"{name}.py").write_text(text)
    return room


def answer(package):
    """Return value, cache hits and misses of a fresh process."""
    done = subprocess.run(
        [sys.executable, "-P", "-B", "-c", ASK],
        env={**os.environ, "PYTHONPATH": str(package.parent)},
        capture_output=True,
        text=True,
        check=False,
        timeout=150,
    )
    assert done.returncode == 0, done.stderr
    value, hits, misses = done.stdout.split()
    return float(value), int(hits), int(misses)


def edit(file, old, new):
    """Change a text without changing the file's size or its time."""
    before = file.stat()
    text = file.read_text()
    assert text.count(old) == 1 and len(old) == len(new)
    file.write_text(text.replace(old, new))
    os.utime(file, ns=(before.st_atime_ns, before.st_mtime_ns))


def test_an_edit_of_inlined_code_or_of_a_frozen_constant_is_noticed(package):
    assert answer(package) == (6.0, 0, 1)
    assert answer(package) == (6.0, 1, 0)
    edit(package / "low.py", "3.0 * x", "5.0 * x")
    assert answer(package) == (10.0, 0, 1)
    edit(package / "low.py", "FACTOR = 2.0", "FACTOR = 7.0")
    assert answer(package) == (35.0, 0, 1)
    assert answer(package) == (35.0, 1, 0)


def test_a_file_that_is_only_touched_is_not_compiled_anew(package):
    answer(package)
    for name in ("low", "middle", "top"):
        os.utime(package / f"{name}.py", (1.0e9, 1.0e9))
    assert answer(package) == (6.0, 1, 0)


@pytest.mark.parametrize(
    "line",
    [
        "from sim.bond import END",
        "from sim.bond import (\n    END,\n)",
        "import sim.bond",
        "from sim import bond",
        "from sim import (\n    bond,\n)",
    ],
)
def test_every_way_to_import_a_module_is_seen(line):
    assert below(f"import numpy\n{line}\n") == ["bond"]


def test_everything_compiled_goes_through_the_one_decorator():
    for file in (ROOT / "sim").glob("*.py"):
        text = file.read_text(encoding="utf-8")
        plain = re.findall(r"^\s*(?:from numba import|import numba|@njit|@jit|@numba)", text, re.MULTILINE)
        assert len(plain) == (file.name == "compiled.py"), file
