"""Every source named as [key] in code or tests is listed, with what of it was seen."""

import re
import tomllib
from pathlib import Path

ROOT = Path(__file__).parents[3]
KEY = re.compile(r"\[([a-z][a-z-]*-(?:19|20)\d\d)\]")


def test_every_source_named_is_listed_and_every_one_listed_says_what_was_seen():
    listed = tomllib.loads((ROOT / "tests" / "sources.toml").read_text(encoding="utf-8"))
    named = {
        key: path.relative_to(ROOT).as_posix()
        for folder in ("sim", "meshes", "tests")
        for path in (ROOT / folder).rglob("*.py")
        for key in KEY.findall(path.read_text(encoding="utf-8"))
    }
    assert named
    assert {key: path for key, path in named.items() if key not in listed} == {}
    for key, entry in listed.items():
        assert entry.keys() == {"title", "authors", "where", "used_for", "seen"}, key
        assert entry["seen"].startswith(("found", "memory", "computed")), key
