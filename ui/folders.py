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
    if not out.exists():
        return
    if not out.is_dir():
        raise Refusal(f"--out {out}: is a file; name a folder.")
    try:
        others = sorted(p.name for p in out.iterdir() if p.name not in ours)
    except OSError as error:
        raise Refusal(f"--out {out}: {file_trouble(error)}") from error
    if others:
        raise Refusal(f"--out {out}: holds other files such as {others[0]}; name an empty or a new folder.")


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
