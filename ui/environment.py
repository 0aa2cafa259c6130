"""The bare-machine start: find what the system lacks, make the private environment, keep it.

Shared by ``ui/start.py`` and ``tests/run.py``. Standard library only, and nothing of Hemline: this runs
before anything is installed. ``python3 -m ui.environment`` prints the Debian packages that the program and
its tests need from the system; with the names of extras it makes the private environment with these.
"""

from __future__ import annotations

import contextlib
import ctypes
import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
MARK = VENV / "ready.json"
SCRIPTS = VENV / ("Scripts" if os.name == "nt" else "bin")
PYTHON = SCRIPTS / ("python.exe" if os.name == "nt" else "python")


# Variables that would lead the private environment to another Python's packages.
OTHER_PYTHONS = frozenset({"PYTHONHOME", "PYTHONPATH", "PYTHONSTARTUP", "__PYVENV_LAUNCHER__"})


class StartError(Exception):
    """The start cannot go on; the text says why and what to do, for a person to read."""


class Need(NamedTuple):
    """A library or a program of the system, and the Debian package that brings it."""

    name: str
    package: str


# Without these, importing Qt fails and VTK's off-screen window ends the process with no message.
HEADLESS = (
    Need("libEGL.so.1", "libegl1"),
    Need("libGL.so.1", "libgl1"),
    Need("libxkbcommon.so.0", "libxkbcommon0"),
    Need("libdbus-1.so.3", "libdbus-1-3"),
    Need("libfontconfig.so.1", "libfontconfig1"),
    Need("libglib-2.0.so.0", "libglib2.0-0"),
)
# Qt's screen plugin loads these late, and its own message names none of them.
WINDOW = (
    Need("libxkbcommon-x11.so.0", "libxkbcommon-x11-0"),
    Need("libxcb-cursor.so.0", "libxcb-cursor0"),
    Need("libxcb-icccm.so.4", "libxcb-icccm4"),
    Need("libxcb-keysyms.so.1", "libxcb-keysyms1"),
    Need("libxcb-shape.so.0", "libxcb-shape0"),
    Need("libxcb-xinerama.so.0", "libxcb-xinerama0"),
    Need("libxcb-render-util.so.0", "libxcb-render-util0"),
    Need("libxcb-image.so.0", "libxcb-image0"),
    Need("libxcb-randr.so.0", "libxcb-randr0"),
)
TESTING = (Need("Xvfb", "xvfb"), Need("xdotool", "xdotool"))


def say(text: str) -> None:
    """Print one line now, also when the output goes to a file."""
    print(text, flush=True)


# --- what the system lacks -------------------------------------------------------------------------------


def linker_names(listing: str | None = None) -> frozenset[str]:
    """Return the names of the shared libraries in the system linker's list; empty where it has none."""
    if listing is None:
        command = shutil.which("ldconfig", path=f"{os.environ.get('PATH', '')}:/sbin:/usr/sbin")
        if command is None:
            return frozenset()
        listing = subprocess.run([command, "-p"], capture_output=True, text=True, check=False).stdout
    return frozenset(line.split()[0] for line in listing.splitlines() if "=>" in line)


def loads(name: str) -> bool:
    """Tell whether the library can be loaded: the second opinion where the linker's list does not hold it."""
    try:
        ctypes.CDLL(name)
    except OSError:
        return False
    return True


def missing_needs(needs: Sequence[Need], known: frozenset[str] | None = None) -> tuple[Need, ...]:
    """Return the needs that this system lacks; only Linux is looked at, other systems bring theirs."""
    if not needs or not sys.platform.startswith("linux"):
        return ()
    known = linker_names() if known is None else known
    return tuple(need for need in needs if need.name not in known and not _second_look(need.name))


def _second_look(name: str) -> bool:
    return loads(name) if ".so" in name else shutil.which(name) is not None


def missing_venv() -> tuple[Need, ...]:
    """Return the need for Python's own environment maker, which Debian keeps in a package of its own."""
    if all(importlib.util.find_spec(name) for name in ("venv", "ensurepip")):
        return ()
    major, minor = sys.version_info[:2]
    return (Need("Python's venv with pip", f"python{major}.{minor}-venv"),)


def install_line(packages: Iterable[str], *, root: bool) -> str:
    """Return the one line that installs these Debian packages."""
    before = "" if root else "sudo "
    return f"{before}apt-get update && {before}apt-get install -y {' '.join(packages)}"


def is_root() -> bool:
    """Tell whether system packages may be installed by this process."""
    return hasattr(os, "geteuid") and os.geteuid() == 0


def provide(missing: Sequence[Need], *, assume_yes: bool) -> None:
    """Install what is missing, after asking, where this process may; else say the line that does it.

    Raises
    ------
    StartError
        The packages cannot be installed from here, the answer was no, or the package manager failed.
    """
    packages = list(dict.fromkeys(need.package for need in missing))
    names = ", ".join(need.name for need in missing)
    if shutil.which("apt-get") is None:
        raise StartError(
            f"This system lacks: {names}.\n"
            "Install the packages that hold them with its package manager and start again.\n"
            f"(On Debian and Ubuntu they are called: {' '.join(packages)})"
        )
    line = install_line(packages, root=is_root())
    if not is_root():
        raise StartError(
            f"This system lacks: {names}.\nThis line installs them; then start again:\n\n    {line}\n"
        )
    say(f"This system lacks: {names}.\nThe Debian packages to install: {' '.join(packages)}")
    if not (assume_yes or agreed("Install them now?")):
        raise StartError(f"Nothing was installed. This line does it:\n\n    {line}\n")
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    for step in (["update"], ["install", "-y", "--no-install-recommends", *packages]):
        if subprocess.run(["apt-get", *step], env=quiet, check=False).returncode != 0:
            raise StartError(
                f"apt-get {step[0]} failed; its own words are above. The line again:\n\n    {line}\n"
            )
    if still := missing_needs([need for need in missing if need in (*HEADLESS, *WINDOW, *TESTING)]):
        raise StartError(f"Still missing after the installation: {', '.join(need.name for need in still)}.")


def agreed(question: str) -> bool:
    """Ask at the terminal; with no terminal nobody is there to answer, and the start goes on."""
    if sys.stdin is None or not sys.stdin.isatty():
        return True
    return input(f"{question} [Y/n] ").strip().lower() in ("", "y", "yes")


# --- the screen ------------------------------------------------------------------------------------------


def has_screen(variables: Mapping[str, str] | None = None) -> bool:
    """Tell whether a screen answers: asked first, because Qt ends the process when none does."""
    variables = os.environ if variables is None else variables
    if not sys.platform.startswith("linux"):
        return True
    if variables.get("WAYLAND_DISPLAY"):
        return True
    display = variables.get("DISPLAY", "")
    return bool(display) and _answers(display)


def _answers(display: str) -> bool:
    import socket  # here, because only a machine with a DISPLAY pays for it

    host, _, number = display.rpartition(":")
    screen = number.split(".")[0]
    if not screen.isdigit():
        return False
    local = f"/tmp/.X11-unix/X{screen}"
    tries: list[tuple[int, str | tuple[str, int]]]
    if host in ("", "unix"):
        tries = [(socket.AF_UNIX, "\0" + local), (socket.AF_UNIX, local)]
    else:
        tries = [(socket.AF_INET, (host, 6000 + int(screen)))]
    for family, address in tries:
        with socket.socket(family, socket.SOCK_STREAM) as asked:
            asked.settimeout(2.0)
            try:
                asked.connect(address)
            except OSError:
                continue
            return True
    return False


def clean_variables(*, screen: bool) -> dict[str, str]:
    """Return a child process's variables: none of another Python's, and off-screen drawing if need be."""
    variables = {name: value for name, value in os.environ.items() if name not in OTHER_PYTHONS}
    if not sys.platform.startswith("linux"):
        return variables
    if not screen:
        # Both are needed: otherwise VTK looks for a screen first and prints errors about it.
        variables["QT_QPA_PLATFORM"] = "offscreen"
        variables["VTK_DEFAULT_OPENGL_WINDOW"] = "vtkEGLRenderWindow"
    elif variables.get("DISPLAY"):
        # VTK draws through X: Qt must not take the other way to the same screen.
        variables.setdefault("QT_QPA_PLATFORM", "xcb")
    return variables


# --- the private environment -----------------------------------------------------------------------------


def ready_key(root: Path, version: str) -> str:
    """Return the hash of all that the environment was made from: pyproject.toml, the Python, the folder."""
    digest = hashlib.sha256((root / "pyproject.toml").read_bytes())
    digest.update(f"\0{version}\0{root}".encode())
    return digest.hexdigest()


def read_mark(mark: Path) -> tuple[str, frozenset[str]]:
    """Return the key and the extras in the ready mark; an absent or damaged mark gives an empty key."""
    try:
        found = json.loads(mark.read_text(encoding="utf-8"))
        return str(found["key"]), frozenset(map(str, found["extras"]))
    except (OSError, ValueError, KeyError, TypeError):
        return "", frozenset()


def write_mark(key: str, extras: Iterable[str], mark: Path) -> None:
    """Write the ready mark in one step, so that a stop half-way leaves none."""
    draft = mark.with_suffix(".part")
    draft.write_text(json.dumps({"key": key, "extras": sorted(extras)}), encoding="utf-8")
    draft.replace(mark)


def is_ready(extras: Iterable[str], *, key: str, mark: Path, python: Path) -> bool:
    """Tell whether the environment stands, made from this very state and with these extras."""
    found, have = read_mark(mark)
    return found == key and have.issuperset(extras) and python.exists()


@contextlib.contextmanager
def alone(lock: Path) -> Iterator[None]:
    """Hold back a second start until the first has finished building (where the system has such locks)."""
    try:
        import fcntl  # here, because Windows has none
    except ImportError:
        yield
        return
    try:
        handle = lock.open("w")
    except OSError as problem:
        raise StartError(
            f"{lock.parent} cannot be written. Copy the folder to a place of your own."
        ) from problem
    with handle:
        fcntl.flock(handle, fcntl.LOCK_EX)
        yield


def prepare(
    extras: Sequence[str], needs: Sequence[Need], *, assume_yes: bool = False, compiled: bool = True
) -> Path:
    """Return the environment's Python, after everything that was missing has been made.

    Parameters
    ----------
    extras
        Extras of pyproject.toml to install with the program.
    needs
        Libraries and programs of the system.
    assume_yes
        Install without asking.
    compiled
        Compile the mechanics of a new environment too, or leave that to who does it beside something else.

    Raises
    ------
    StartError
        Something is missing that cannot be installed from here, or an installation failed.
    """
    key = ready_key(ROOT, sys.version)

    def ready() -> bool:
        return is_ready(extras, key=key, mark=MARK, python=PYTHON)

    missing = missing_needs(needs)
    if not ready():
        missing += missing_venv()
    if missing:
        provide(missing, assume_yes=assume_yes)
        importlib.invalidate_caches()
    if ready():
        return PYTHON
    with alone(ROOT / ".venv.lock"):
        # Perhaps another start has built it in the meantime.
        if not ready():
            build(extras, key=key, compiled=compiled)
    return PYTHON


def build(extras: Sequence[str], *, key: str, compiled: bool = True) -> None:
    """Make the environment, install the program and its extras, ready it for quick starts, mark it last."""
    found, have = read_mark(MARK)
    wanted = have.union(extras) if found == key else frozenset(extras)
    MARK.unlink(missing_ok=True)
    if found != key:
        say(f"Making a private Python environment in {VENV} ...")
        # Without a mark the folder may be half made, or made by something else: begin anew.
        _step([sys.executable, "-m", "venv", "--clear", str(VENV)], "The environment could not be made.")
    say("Fetching and installing the packages (some hundred megabytes the first time) ...")
    what = f"{ROOT}[{','.join(sorted(wanted))}]" if wanted else str(ROOT)
    pip = [str(PYTHON), "-m", "pip", "install", "--no-input", "--disable-pip-version-check"]
    _step(
        [*pip, "--only-binary", ":all:", "--editable", what],
        "The packages could not be installed; pip's own words are above. This first start needs a network, "
        "and a Python from 3.11 to 3.14.",
    )
    say("Preparing the program for quick starts ...")
    # A fault in here costs seconds at the next start and nothing else.
    chores = [["-m", "compileall", "-q", *(str(ROOT / name) for name in ("sim", "ui", "meshes"))]]
    if compiled and (ROOT / "sim" / "warm.py").exists():
        chores.append(["-P", "-m", "sim.warm"])
    for words in chores:
        subprocess.run([str(PYTHON), *words], env=clean_variables(screen=False), check=False)
    write_mark(key, wanted, MARK)


def _step(command: Sequence[str], trouble: str) -> None:
    # A person's own setting for pip, to install for one user only, fails inside an environment.
    variables = {**clean_variables(screen=True), "PIP_USER": "0"}
    if subprocess.run(command, env=variables, check=False).returncode != 0:
        raise StartError(trouble)


if __name__ == "__main__":
    if sys.argv[1:]:
        prepare(sys.argv[1:], (), assume_yes=True, compiled=False)
    else:
        print(*(need.package for need in (*HEADLESS, *WINDOW, *TESTING)))
