"""Lessons as frozen values: the objective, the steps, the questions, and what is looked for at the end.

A lesson holds words and the names of plans.  It holds no figure: where a text needs one it names it
(`{lip.first_opening}`), and the figure comes from the plan's solved result (`ui.state.figures_in_text`).
`ui.state.lesson_file` reads and writes lessons as TOML.
"""

from __future__ import annotations

import re
from typing import Literal

import msgspec

from ui.state.tongue import tr

SCHEMA_VERSION = 1

FIGURE = re.compile(r"\{([a-z0-9_-]+)\.([a-z_]+?)(?:_of_move_(\d+))?\}")
"""A figure named in a text: the plan, the figure, and the number of the move if it is not the last push."""

Level = Literal["awareness", "operations", "technician"]
Session = Literal["tools and techniques", "strategy and tactics"]
Phase = Literal["open", "show", "try", "check"]
MAP_STEPS = ("", "one", "both")
PHASES: tuple[Phase, ...] = ("open", "show", "try", "check")
DEBRIEF_TITLE = "Debrief"
"""Title of the step that ends a lesson: its questions, and for the teacher what should have come out."""
Asks = Literal[
    "gives first",
    "at the ram",
    "ram's line",
    "for the plan",
    "skin's middle",
    "upper skin",
    "inner panel",
    "room",
    "tears",
    "latch",
    "more",
]
Measure = Literal[
    "force_n",
    "torn_length_m",
    "parted_length_m",
    "latch_demand_ratio",
    "least_clearance_m",
    "clearance_change_m",
    "clearance_m",
    "opening_m",
]


class Objective(msgspec.Struct, frozen=True):
    """Who will do what, under which condition, and how well."""

    audience: str = ""
    behaviour: str = ""
    condition: str = ""
    degree: str = ""


class Standard(msgspec.Struct, frozen=True):
    """A published requirement the lesson serves; ``edition`` goes with it, for standards move.

    checked : who has read the clause in the standard itself, and when; empty when nobody has
    """

    name: str
    edition: str = ""
    words: str = ""
    checked: str = ""


class LessonPlan(msgspec.Struct, frozen=True):
    """A plan under the name the lesson calls it by.

    file : name of a plan file without its ending, beside the lesson or among the ready plans
    """

    name: str
    file: str
    words: str = ""


class Step(msgspec.Struct, frozen=True):
    """One step of the lesson.

    phase : open, show, try or check
    plan : name of a plan of this lesson;  move : its number, from 1
    moment : "start", "end", or a kind of event ("seam parting"): the first such moment
    camera : a saved view;  colours : what the metal's colours show
    layers : how a layer is drawn: "solid", "see_through", "off"
    beside : name of a second plan to be seen beside the first
    map : "one" opens the outcome map of the step's plan, "both" what changes from it to the plan beside
    words : for the class;  notes : for the teacher;  question : name of a question
    """

    phase: Phase
    title: str
    plan: str = ""
    move: int = 1
    moment: str = "start"
    camera: str = ""
    colours: str = ""
    layers: dict[str, str] = {}
    beside: str = ""
    map: str = ""
    words: str = ""
    notes: str = ""
    question: str = ""


class Choice(msgspec.Struct, frozen=True):
    """One answer that can be given: what the class reads, and the outcome it stands for."""

    words: str
    outcome: str


class Question(msgspec.Struct, frozen=True):
    """A question whose key is what the run itself says.

    asks : which outcome is asked for;  "more" compares ``measure`` of ``plan`` and ``other``
    move : its number, from 1; 0 is the last push;  other_move : of the other plan, 0 is the same number
    choices : empty for the outcomes that belong to what is asked
    hint : for coached practice;  why : said once the answer is known
    """

    name: str
    ask: str
    plan: str
    asks: Asks = "gives first"
    move: int = 0
    measure: Measure = "force_n"
    other: str = ""
    other_move: int = 0
    choices: tuple[Choice, ...] = ()
    hint: str = ""
    why: str = ""


class Expected(msgspec.Struct, frozen=True):
    """What two plans are expected to show together; held against the results when they are made.

    first, second : names of plans;  asks : the outcome looked at
    first_is, second_is : the outcome words expected of each, "" where nothing is expected
    first_move, second_move : their numbers, from 1; 0 is the last push
    measure : with "more", of which the first plan is to have more than the second
    """

    words: str
    first: str
    second: str
    asks: Asks = "gives first"
    first_is: str = ""
    second_is: str = ""
    first_move: int = 0
    second_move: int = 0
    measure: Measure = "force_n"


class Claim(msgspec.Struct, frozen=True):
    """A sentence the lesson teaches, and who says so.

    source : a published source, "common practice, no source", or "from memory"
    """

    words: str
    source: str
    plan: str = ""


class Skill(msgspec.Struct, frozen=True):
    """One line of the evaluation: what is done, and what is looked for."""

    does: str
    looked_for: str


class Debrief(msgspec.Struct, frozen=True):
    """Questions to end with, and the points to have come out."""

    questions: tuple[str, ...] = ()
    points: tuple[str, ...] = ()


class Lesson(msgspec.Struct, frozen=True):
    """A whole lesson.

    language : of its words, as in BCP 47;  written_on, piloted_on : dates, "" when there is none
    duration_min : planned length [min]
    hazards : names of caution cards of this lesson's parts (restraints, high voltage, glass ...)
    signs : kinds of event to look for on the metal besides those its runs came to
    """

    schema_version: int = SCHEMA_VERSION
    title: str = ""
    words: str = ""
    author: str = ""
    licence: str = ""
    language: str = "en"
    written_on: str = ""
    piloted_on: str = ""
    level: Level = "operations"
    session: Session = "tools and techniques"
    duration_min: int = 20
    objective: Objective = Objective()
    standards: tuple[Standard, ...] = ()
    materials: tuple[str, ...] = ()
    references: tuple[str, ...] = ()
    hazards: tuple[str, ...] = ()
    signs: tuple[str, ...] = ()
    plans: tuple[LessonPlan, ...] = ()
    steps: tuple[Step, ...] = ()
    questions: tuple[Question, ...] = ()
    expected: tuple[Expected, ...] = ()
    claims: tuple[Claim, ...] = ()
    evaluation: tuple[Skill, ...] = ()
    debrief: Debrief = Debrief()
    limits: tuple[str, ...] = ()

    @property
    def walked(self) -> tuple[Step, ...]:
        """The steps as they are walked through: the lesson's own, then its debrief if it has one."""
        said = self.debrief
        if not (said.questions or said.points):
            return self.steps
        notes = "\n".join((tr("What should have come out:"), *said.points)) if said.points else ""
        last = Step(phase="check", title=tr(DEBRIEF_TITLE), words="\n\n".join(said.questions), notes=notes)
        return (*self.steps, last)

    def plan_of(self, name: str) -> LessonPlan:
        """Return the plan called by a name; KeyError when the lesson has none."""
        for plan in self.plans:
            if plan.name == name:
                return plan
        raise KeyError(name)

    def question_of(self, name: str) -> Question:
        """Return the question called by a name; KeyError when the lesson has none."""
        for question in self.questions:
            if question.name == name:
                return question
        raise KeyError(name)
