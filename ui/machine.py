"""Looks at the machine: drawing, memory, cores, screen, folder. Never raises; what cannot be seen is None."""

from __future__ import annotations

import ctypes
import json
import os
import platform
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import platformdirs

from ui.state.machine import GIGA, Facts

PROBE_S = 60.0
PICTURE_WINDOWS = ("", "vtkEGLRenderWindow", "vtkOSOpenGLRenderWindow")
"""Ways the drawing library can draw without a window, tried in this order."""


def settings_folder() -> Path:
    """Return where settings go: a folder `settings` beside the program if it is there, else the user's."""
    beside = Path(__file__).resolve().parents[1] / "settings"
    return beside if beside.is_dir() else platformdirs.user_config_path("hemline")


def facts_here(folder: Path | None = None, *, pictures: bool | None = None) -> Facts:
    """Return what this process can see; the window knows by itself whether it shows pictures."""
    version, name = window_gl()
    return _facts(folder or settings_folder(), version, name, screen(), pictures)


def facts_apart(folder: Path | None = None) -> Facts:
    """Return the same, with drawing looked at by a process of its own: a bad driver may end it."""
    seen = _told([sys.executable, "-P", "-m", "ui.machine"]) or {}
    version = tuple(seen.get("version", (0, 0)))
    size = seen.get("screen")
    pictures = None if version >= (3, 2) else bool(picture_window() is not None)
    return _facts(
        folder or settings_folder(), (version[0], version[1]), str(seen.get("name", "")),
        None if size is None else (int(size[0]), int(size[1])), pictures,
    )  # fmt: skip


def _facts(
    folder: Path, version: tuple[int, int], name: str, size: tuple[int, int] | None, pictures: bool | None
) -> Facts:
    memory, free = memory_gb()
    writable, disk = can_write(folder)
    return Facts(version, name, pictures, memory, free, cores(), size, _short(folder), writable, disk)


def _short(folder: Path) -> str:
    """Return a folder without the name of its owner."""
    try:
        return str(Path("~") / folder.relative_to(Path.home()))
    except ValueError:
        return str(folder)


def cores() -> int | None:
    """Return how many cores this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count()


def memory_gb() -> tuple[float | None, float | None]:
    """Return all memory and the memory free now [GB]."""
    if os.name == "nt":
        return _windows_memory()
    total = free = None
    try:
        page = os.sysconf("SC_PAGE_SIZE")
        total = page * os.sysconf("SC_PHYS_PAGES") / GIGA
        for line in Path("/proc/meminfo").read_text(encoding="ascii").splitlines():
            if line.startswith("MemAvailable:"):
                free = float(line.split()[1]) * 1024.0 / GIGA
    except (OSError, ValueError):
        pass
    return total, free


def _windows_memory() -> tuple[float | None, float | None]:
    class Status(ctypes.Structure):
        _fields_ = [
            ("length", ctypes.c_ulong), ("load", ctypes.c_ulong),
            *((name, ctypes.c_ulonglong) for name in ("total", "free", "a", "b", "c", "d", "e")),
        ]  # fmt: skip

    status = Status(length=ctypes.sizeof(Status))
    try:
        if not ctypes.windll.kernel32.GlobalMemoryStatusEx(ctypes.byref(status)):  # type: ignore[attr-defined]
            return None, None
    except (AttributeError, OSError):
        return None, None
    return status.total / GIGA, status.free / GIGA


def can_write(folder: Path) -> tuple[bool, float | None]:
    """Return whether a folder (made where it is missing) can be written, and the room left there [GB]."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        with tempfile.NamedTemporaryFile(dir=folder):
            pass
        return True, shutil.disk_usage(folder).free / GIGA
    except OSError:
        return False, None


def window_gl() -> tuple[tuple[int, int], str]:
    """Return version and name of the drawing a window gets from Qt, (0, 0) where it gets none."""
    from PySide6.QtGui import QOffscreenSurface, QOpenGLContext, QSurfaceFormat

    context, surface = QOpenGLContext(), QOffscreenSurface()
    context.setFormat(QSurfaceFormat.defaultFormat())
    if not context.create():
        return (0, 0), ""
    surface.setFormat(context.format())
    surface.create()
    if not context.makeCurrent(surface):
        return (0, 0), ""
    made = context.format()
    name = context.functions().glGetString(0x1F01)  # GL_RENDERER
    context.doneCurrent()
    return (made.majorVersion(), made.minorVersion()), str(name or "")


def screen() -> tuple[int, int] | None:
    """Return the size of the first screen [px]."""
    from PySide6.QtGui import QGuiApplication

    found = QGuiApplication.primaryScreen()
    return None if found is None else (found.size().width(), found.size().height())


def picture_window() -> str | None:
    """Return the first way to draw a picture without a window; None where there is none.

    Each is tried in a process of its own: a drawing library without a driver ends its process with no word.
    """
    for name in PICTURE_WINDOWS:
        if _told([sys.executable, "-P", "-m", "ui.machine", "picture"], name):
            return name
    return None


def _told(command: list[str], window: str = "") -> dict[str, object] | None:
    root = str(Path(__file__).resolve().parents[1])
    variables = os.environ | {"PYTHONPATH": root}
    if window:
        variables["VTK_DEFAULT_OPENGL_WINDOW"] = window
    try:
        done = subprocess.run(
            command, capture_output=True, text=True, timeout=PROBE_S, check=False, env=variables
        )
        return dict(json.loads(done.stdout.strip().splitlines()[-1])) if done.returncode == 0 else None
    except (OSError, subprocess.SubprocessError, ValueError, IndexError):
        return None


def versions() -> str:
    """Return the versions of program, Python, system and libraries, in one line."""
    from importlib import metadata

    found = [f"Python {platform.python_version()}", f"{platform.system()} {platform.release()}"]
    for name in ("hemline", "PySide6", "vtk", "pyvista", "numpy", "numba"):
        try:
            found.append(f"{name} {metadata.version(name)}")
        except metadata.PackageNotFoundError:
            continue
    return ", ".join(found)


def _probe_window() -> dict[str, object]:
    from ui.application import prepare_application

    if "DISPLAY" not in os.environ and "WAYLAND_DISPLAY" not in os.environ and sys.platform == "linux":
        return {"version": (0, 0), "name": "", "screen": None}
    application = prepare_application()
    version, name = window_gl()
    size = screen()
    del application
    return {"version": version, "name": name, "screen": size}


def _probe_picture() -> dict[str, object]:
    import pyvista

    plotter = pyvista.Plotter(off_screen=True, window_size=[64, 64])
    plotter.add_mesh(pyvista.Sphere(), color="black")
    drawn = plotter.screenshot(return_img=True)
    plotter.close()
    if drawn is None or int(drawn.min()) == int(drawn.max()):
        raise SystemExit(1)
    return {"pictures": True}


if __name__ == "__main__":
    sys.stdout.write(json.dumps(_probe_picture() if "picture" in sys.argv else _probe_window()) + "\n")
