"""A window in a process of its own, for the test that kills it: works until then, or comes back."""

import json
import sys
import time
from pathlib import Path

import msgspec

from sim.move_words import opened
from ui.app import App, prepare_application
from ui.scene.cameras import Shot
from ui.state.marks import Stroke
from ui.state.measuring import Measure, Spot

WAIT_S = 150.0


class Child:
    """The window, its events, and what can be told of it in JSON."""

    def __init__(self, folder: Path) -> None:
        self.application = prepare_application()
        self.app = App(folder=folder)
        self.app.window.resize(1280, 720)
        self.app.start()

    def until(self, true) -> None:
        """Let the window live until something is true."""
        end = time.monotonic() + WAIT_S
        while not true():
            if time.monotonic() > end:
                raise TimeoutError
            self.application.processEvents()
            time.sleep(0.005)

    def live(self, seconds: float) -> None:
        """Let the window live for a while."""
        end = time.monotonic() + seconds
        self.until(lambda: time.monotonic() > end)

    def settle(self) -> None:
        """Let the window live until nothing is worked out any more."""
        self.live(0.2)
        self.until(lambda: not self.app.session.queue.busy)

    def told(self) -> dict:
        """Return what must be the same after a crash."""
        session, walk = self.app.session, self.app.acting.lessons.walk
        shot, asking = self.app.side.view.stage.shot, session.asking
        return {
            "plan": msgspec.to_builtins(session.plan),
            "steps": [step.label for step in session.document.steps],
            "parents": [step.parent for step in session.document.steps],
            "position": session.document.history.position,
            "moment": session.timeline.position,
            "moments": len(session.timeline),
            "opening_m": session.timeline.frame.opening_m,
            "force_n": session.timeline.frame.force_n,
            "lesson": walk.path.name if walk.path else "",
            "lesson_step": walk.position,
            "asking": asking.standing.value,
            "chosen": dict(asking.now.chosen),
            "hands": sorted(map(str, asking.now.hands.items())),
            "locked_at": str(asking.now.locked_at),
            "shut": sorted(session.locks.shut),
            "camera": [*shot.position, *shot.focus, shot.angle_deg],
            "layers": {name: mode.value for name, mode in session.view.options.layers.items()},
            "title": self.app.window.windowTitle(),
            "open": msgspec.to_builtins(self.app.keeping.view.now()),
        }

    def say(self, words: dict) -> None:
        """Tell the parent."""
        sys.stdout.write(json.dumps(words) + "\n")
        sys.stdout.flush()

    def work(self) -> None:
        """Do things as a teacher does, tell how it all stands, and wait to be killed."""
        app, session = self.app, self.app.session
        self.until(lambda: session.model is not None and app.side is not None)
        app.filing.caution_read()
        self.settle()
        self._look() if sys.argv[1] == "look" else self._teach()
        self.live(1.0)  # a pair's camera stands back once its views have their size
        app.side.view.stage.shot = Shot((1.9, 1.7, 1.0), (0.8, 0.0, 0.4), 31.0)
        self.live(0.3)
        told = self.told()
        self.live(1.5)
        self.say(told)
        self.live(WAIT_S)

    def _teach(self) -> None:
        """Run a short push, open a lesson, lock a prediction on a second push, go back to a moment."""
        app, session = self.app, self.app.session
        session.run_selected_to(0.010)
        self.settle()
        pushed = session.document.history.position
        app.acting.act("lesson_01-first-bite")
        self.settle()
        app.acting.lessons.walk.go(2)
        self.settle()
        session.go_to_step(pushed)
        app.acting.act("add_spread")
        app.acting.act("ask")
        for question in session.asking.questions:
            session.asking.choose(question.key, question.choices[0].key)
        session.asking.count("first", session.asking.questions[0].choices[0].key, 7)
        app.acting.act("lock")
        app.acting.act("shut_map")
        app.acting.next_layer("skin")
        session.timeline.go(3)

    def _look(self) -> None:
        """Run a push and another beside it; cut, measure, draw, and open the form on its second page."""
        app, session = self.app, self.app.session
        session.run_selected_to(0.010)
        self.settle()
        app.see.marks.measure(Measure("gap", (Spot((0, 1, 2), (0.2, 0.3, 0.5), (0.0, 0.0, 0.0)),)))
        app.see.marks.add(Stroke("arrow", ((0.5, 0.0, 0.2), (0.6, 0.0, 0.4))))
        app.see.toggle("section")
        app.window.see.way_wished.emit("across")
        other = session.plan.with_move(0, opened(session.plan.moves[0], 0.0075))
        assert app.acting.beside.put_beside(other)
        self.settle()
        session.beside.go(3)
        app.acting.act("form_side")

    def back(self) -> None:
        """Come back, and tell how everything stands and what it took."""
        app = self.app
        self.until(lambda: app.side is not None and app.first_frame_s > 0.0 and not app.keeping.coming)
        self.until(lambda: not app.session.queue.busy)
        used = time.process_time()
        self.live(0.5)
        self.say(self.told() | {"cpu_s": used, "notice": app.window.notice.words.text()})
        app.window.close()


if __name__ == "__main__":
    child = Child(Path(sys.argv[2]))
    child.back() if sys.argv[1] == "back" else child.work()
