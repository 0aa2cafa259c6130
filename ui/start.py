"""Start Hemline on a machine that has nothing but Python.

    python3 ui/start.py              the window with the ready demo; with no screen, the demo as pictures
    python3 ui/start.py ARGUMENTS    the same as the command ``hemline ARGUMENTS``
    python3 ui/start.py --yes ...    install missing system packages without asking

The first start makes a private environment in .venv and needs a network; later starts need none.
"""

# First of all, this script's own folder leaves the path: a file in it could hide one of Python's modules.
import sys

sys.path[0 : 0 if getattr(sys.flags, "safe_path", False) else 1] = [
    (__file__.replace("\\", "/").rpartition("/")[0] or ".") + "/.."
]

if sys.version_info < (3, 11):
    sys.exit(
        "Hemline needs Python 3.11 or newer; this is Python %d.%d. "
        "Install a newer Python and start this file with it." % sys.version_info[:2]
    )

import os
import subprocess

from ui import environment

DEMO = os.path.join("assets", "plans", "edge-at-latch.toml")


def main(arguments):
    """Return the exit code, after the environment has been made and the program has run in it."""
    assume_yes = "--yes" in arguments
    arguments = [word for word in arguments if word != "--yes"]
    screen = environment.has_screen()
    needs = environment.HEADLESS + (environment.WINDOW if screen else ())
    environment.prepare((), needs, assume_yes=assume_yes)
    program = str(environment.SCRIPTS / ("hemline.exe" if os.name == "nt" else "hemline"))
    variables = environment.clean_variables(screen=screen)
    if arguments or screen:
        if os.name == "nt":
            return subprocess.call([program] + arguments, env=variables)
        os.execve(program, [program] + arguments, variables)
    return demo_without_screen(program, variables)


def demo_without_screen(program, variables):
    """Return the exit code of the demo drawn to pictures, and say where they are."""
    root = str(environment.ROOT)
    out = os.path.join(root, "out", "edge-at-latch")
    environment.say("No screen answers here, so the demo is drawn to pictures instead of a window.")
    command = [program, "run", os.path.join(root, DEMO), "--out", out]
    code = subprocess.call(command, env=variables, cwd=root)
    if code == 0:
        environment.say("The pictures and the results are in " + out)
    return code


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except environment.StartError as problem:
        sys.exit("\n" + str(problem))
    except KeyboardInterrupt:
        sys.exit("\nStopped.")
