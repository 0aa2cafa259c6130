"""Which class makes which type of move: one line each.

To add a move: a tagged struct in `sim/plan.py` (in the union ``Move``), a module of its own with a class
after `sim.course.Course` (driven: the shortest is `sim/crushing.py`; done at once: a child of
`sim.course.AtOnce` with its own ``change`` and words), its line in ``COURSES``, and its entry in
`sim/move_words.py`: title, numbers, verbs and the field that says how far it goes.
"""

from __future__ import annotations

from typing import Any

from sim.course import AtOnce, Course, UnderWay
from sim.crushing import CrushCourse
from sim.cut_course import CutCourse, StripCourse
from sim.easing import EaseCourse
from sim.flexing import FlexCourse
from sim.holding import HoldCourse, SupportCourse
from sim.latching import LatchCourse
from sim.plan import Crush, Cut, CutSpread, Ease, Flex, Hold, Latch, Press, Spread, Squeeze, Strip, Support
from sim.pocketing import CutSpreadCourse
from sim.pressing import PressCourse
from sim.spreading import SpreadCourse, SqueezeCourse

COURSES: dict[type, type[Course]] = {
    Spread: SpreadCourse,
    Squeeze: SqueezeCourse,
    Crush: CrushCourse,
    Ease: EaseCourse,
    Press: PressCourse,
    Support: SupportCourse,
    Hold: HoldCourse,
    Latch: LatchCourse,
    Flex: FlexCourse,
    Cut: CutCourse,
    Strip: StripCourse,
    CutSpread: CutSpreadCourse,
}


def course_of(move: Any) -> type[Course]:
    """Return the class that makes a move; a type without its line is done at once and changes nothing."""
    return COURSES.get(type(move), AtOnce)


def made_ready(run: UnderWay) -> Course:
    """Return a move ready to be made; PlanError when it cannot be."""
    return course_of(run.move)(run)
