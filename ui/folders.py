"""Folders for results: checked beforehand, written aside, and put in their place once all is there."""

from __future__ import annotations

import contextlib
import shutil
import tempfile
from collections.abc import Iterator, Sequence
from pathlib import Path

from ui.refusal import Refusal, file_trouble


def check_folder(out: Path, ours: Sequence[str]) -> None:
    """Raise Refusal when the results may not go there: a file, or a folder with something else in it."""
    try:
        if not out.exists():
            return
        if not out.is_dir():
            raise Refusal(f"--out {out}: is a file; name a folder.")
        others = sorted(p.name for p in out.iterdir() if p.name not in ours)
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    if others:
        raise Refusal(f"--out {out}: holds other files such as {others[0]}; name an empty or a new folder.")


def check_file(word: str, path: Path, endings: Sequence[str], what: str) -> None:
    """Raise Refusal when a file may not go there: another ending, no such folder, a folder of that name.

    Parameters
    ----------
    word : the option or argument, as it is called;  path : the file
    endings : what its name may end in, with the dot, small;  what : what it is, as "a PDF"
    """
    if path.suffix.lower() not in endings:
        wanted = ", ".join(endings[:-1]) + " or " * (len(endings) > 1) + endings[-1]
        raise Refusal(f"{word} {path}: is not {what}; give it a name ending in {wanted}.")
    try:
        if not path.absolute().parent.is_dir():
            raise Refusal(f"{word} {path}: lies in a folder that does not exist; check the path.")
        if path.is_dir():
            raise Refusal(f"{word} {path}: is a folder; name a file.")
    except OSError as error:
        raise Refusal(f"{word} {path}: {file_trouble(error)}") from error


@contextlib.contextmanager
def fresh_folder(out: Path) -> Iterator[Path]:
    """Give a hidden folder beside ``out`` that takes its place once all is written, or leaves no trace."""
    target = out.absolute()
    made = [folder for folder in (target.parent, *target.parent.parents) if not folder.exists()]
    hidden: Path | None = None
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        hidden = Path(tempfile.mkdtemp(prefix=f".{target.name}-", dir=target.parent))
        yield hidden
        hidden.chmod(0o755)
        put_in_place(hidden, target)
        hidden, made = None, []
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    finally:
        if hidden is not None:
            shutil.rmtree(hidden, ignore_errors=True)
        for folder in made:
            with contextlib.suppress(OSError):
                folder.rmdir()


def put_in_place(hidden: Path, target: Path) -> None:
    """Rename the finished folder to its name; an earlier run's folder is put aside first and removed last."""
    if not target.exists():
        hidden.rename(target)
        return
    aside = hidden.with_name(hidden.name + "-old")
    target.rename(aside)
    try:
        hidden.rename(target)
    except OSError:
        aside.rename(target)
        raise
    shutil.rmtree(aside, ignore_errors=True)
