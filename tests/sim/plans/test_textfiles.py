"""Text files are read with a sentence where they cannot be, and written whole or not at all."""

import errno
import os
from pathlib import Path

import pytest

from sim.problems import PlanError
from sim.textfiles import LARGEST_BYTES, read_text, write_whole


def test_a_mark_at_the_head_of_the_file_is_no_part_of_the_text(tmp_path):
    path = tmp_path / "plan.toml"
    path.write_bytes(b"\xef\xbb\xbfschema_version = 1\n")  # as some editors save it
    assert read_text(path, "plan") == "schema_version = 1\n"


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda _: None, "does not exist; check the path"),
        (lambda path: path.mkdir(), "is a folder; name the list's file"),
        (lambda path: path.write_bytes(b"\xff\xfe\x00"), "save the list as UTF-8 text"),
        (lambda path: path.write_bytes(b" " * (LARGEST_BYTES + 1)), "far too large for a list"),
        (lambda path: path.symlink_to(path), "cannot be read (Too many levels of symbolic links)"),
    ],
    ids=["none", "folder", "bytes", "large", "loop"],
)
def test_what_cannot_be_read_is_said_in_one_sentence_that_names_the_file(tmp_path, make, words):
    path = tmp_path / "it.toml"
    make(path)
    with pytest.raises(PlanError) as told:
        read_text(path, "list")
    assert told.value.field == str(path)
    assert words in told.value.message
    assert "Errno" not in str(told.value) and "codec" not in str(told.value)


def test_a_file_is_written_whole(tmp_path):
    path = tmp_path / "out.csv"
    write_whole(path, "a,\N{MULTIPLICATION SIGN}\n")
    write_whole(tmp_path / "out.png", b"\x89")
    assert path.read_bytes() == "a,\N{MULTIPLICATION SIGN}\n".encode()
    assert sorted(p.name for p in tmp_path.iterdir()) == ["out.csv", "out.png"]


def test_with_no_room_the_old_file_stays_and_nothing_half_written(tmp_path, monkeypatch):
    path = tmp_path / "out.csv"
    path.write_text("old")
    honest = Path.write_bytes

    def half(self, data):
        honest(self, data[: len(data) // 2])
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(Path, "write_bytes", half)
    with pytest.raises(OSError, match="No space left"):
        write_whole(path, "new and longer")
    assert path.read_text() == "old"
    assert [p.name for p in tmp_path.iterdir()] == ["out.csv"]
