"""Every source named as [key] in code or tests is listed, with what of it was seen."""

import re
from pathlib import Path

from sim.checks.sources import all_sources

ROOT = Path(__file__).parents[3]
KEY = re.compile(r"\[([a-z][a-z0-9-]*-(?:19|20)\d\d)\]")


def test_every_source_named_is_listed_and_every_one_listed_says_what_was_seen():
    listed = all_sources()
    named = {
        key: path.relative_to(ROOT).as_posix()
        for folder in ("sim", "meshes", "tests", "ui")
        for path in (ROOT / folder).rglob("*.py")
        for key in KEY.findall(path.read_text(encoding="utf-8"))
    }
    assert named
    assert {key: path for key, path in named.items() if key not in listed} == {}
    for key, source in listed.items():
        assert all(vars(source).values()), key
        assert source.seen.startswith(("found", "memory", "computed")), key


def test_the_list_has_one_home():
    assert [p.relative_to(ROOT).as_posix() for p in ROOT.glob("*/sources.toml")] == ["assets/sources.toml"]
