"""Cutting and stripping as moves done at once."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sim import ladder, outcome
from sim.blade_work import LINE
from sim.blades import check_width, line, section
from sim.course import AtOnce, UnderWay
from sim.cut_place import blades_of, check_cut, fitting_tie, word_of
from sim.cut_plan import Cut, DoorCut, FittingCut, PillarCut, Strip
from sim.cutting import CutDone, Parted, part, part_beam, part_ties
from sim.hidden import CAUTION, HAZARDS, fittings_of, met, names_of, stripped, without_weight_of
from sim.increment import Point
from sim.ledger import Ledger
from sim.lookout import lookout_of
from sim.model import DoorModel
from sim.network import Load, Network, State
from sim.pocket import widest_m
from sim.problems import PlanError
from sim.record import CutNote, Event
from sim.tearing import torn_model

Floats = NDArray[np.float64]

STALLED = "stalled"


def place_words(move: Cut) -> str:
    """Return where a cut is made, in words."""
    place = move.place
    if isinstance(place, PillarCut):
        return "pillar"
    if isinstance(place, DoorCut):
        return f"{place.panel} {'door' if place.sheets == 'whole door' else place.sheets}"
    return f"{place.panel} {place.fitting}"


class CutCourse(AtOnce):
    """Blades close on the metal, and it comes to rest."""

    def __init__(self, run: UnderWay) -> None:
        super().__init__(run)
        self.move: Cut = run.move
        check_cut(run.model, self.move)
        self.done: CutDone | None = None
        self.stalls_n = 0.0
        self.cautions: tuple[str, ...] = ()
        self._told = False
        self._look(run.begin.state)

    @staticmethod
    def ready(model: DoorModel, move: Any) -> object:
        """Check the numbers; whether the blades fit depends on the metal the moves before have left."""
        check_cut(model, move)
        return None

    def _look(self, state: State) -> None:
        """Raise PlanError when the cut cannot be made on this metal."""
        place, model = self.move.place, self.run.model
        if not isinstance(place, FittingCut):
            blades = blades_of(model, state, self.move)
            found = section(model.network, state.points, blades)
            check_width(found, self.move.opening_m)
            line(model.network, state.points, blades, found)
            return
        look = lookout_of(model)
        if place.fitting == "bar":
            at = self._bar(), place.along_m, self.move.opening_m
            reached = look.bar_view(state.points, model.structure, *at) is not None
        else:
            tie = model.structure.ties[fitting_tie(model, place)]
            index = model.structure.ties.index(tie)
            if not state.holding[index]:
                raise PlanError(
                    "place.fitting",
                    f"is the {place_words(self.move)}, which no longer holds; leave the cut out",
                )
            reached = tie.name in look.views(model.structure, state.points, self.move.opening_m, (tie.name,))
        if not reached:
            raise PlanError(
                "place.fitting",
                f"is the {place_words(self.move)}, which cannot be seen from outside with room for blades "
                f"that open {self.move.opening_m:g} m; open the gap to it first, or cut elsewhere",
            )

    def _bar(self) -> int:
        names = [beam.name for beam in self.run.model.structure.beams]
        place = self.move.place
        assert isinstance(place, FittingCut)
        return names.index(word_of(place.panel, "bar"))

    def change(self, rest: Point) -> tuple[DoorModel, State]:
        """Return model and state with the metal parted; as they were where the blades stall."""
        model, state, place = self.run.model, rest.state, self.move.place
        made: Parted
        if not isinstance(place, FittingCut):
            blades = blades_of(model, state, self.move)
            self.cautions = met(model, state, blades, section(model.network, state.points, blades))
            made = part(model.network, state, blades)
        elif place.fitting == "bar":
            made = part_beam(model.network, state, self._bar(), place.along_m)
        else:
            made = part_ties(model.network, state, (fitting_tie(model, place),))
        if made.done.force_n > self.move.force_n:
            self.stalls_n = made.done.force_n
            return model, state
        self.done = made.done
        return torn_model(model, made.network) if made.network is not model.network else model, made.state

    def paid(self, ledger: Ledger) -> Ledger:
        """Return the books with the blades' work entered."""
        if self.done is None:
            return ledger
        work = self.done.work_j
        return ledger.plus(work, ledger.stored_j, {LINE: work})

    def events(self, before: Point, point: Point) -> tuple[Event, ...]:
        """Return what the cut did, once; fittings that let go with it, hazards it met."""
        del before, point
        if self._told:
            return ()
        self._told = True
        where = place_words(self.move)
        out = [
            Event(CAUTION, HAZARDS.get(name, "restraint part behind trim"), 0.0, 0.0)
            for name in self.cautions
        ]
        if self.done is None:
            return (*out, Event(STALLED, "blades", 0.0, self.stalls_n))
        out.append(Event(self.done.word, where, 0.0, self.done.force_n))
        for name in self.done.freed:
            out.append(Event(ladder.tie_event(name), name, 0.0, 0.0))
        return tuple(out)

    def sentence(self) -> str:
        """Return what was parted, what still holds, and what let go."""
        where = place_words(self.move)
        if self.done is None:
            return (
                f"The blades stalled on the {where}: it would take {self.stalls_n / 1e3:.0f} kN, they give "
                f"{self.move.force_n / 1e3:.0f} kN. Nothing was parted."
            )
        done = self.done
        if isinstance(self.move.place, FittingCut):
            said = f"The {where} is cut"
        elif done.open:
            said = f"The {where} is cut open over {1e3 * done.cut_m:.0f} mm of sheet"
        elif isinstance(self.move.place, PillarCut):
            said = f"The {where} is cut short: {1e3 * done.left_m:.0f} mm of sheet still stand and hold"
        else:
            said = f"The {where} is cut short: parted over {1e3 * done.cut_m:.0f} mm, it still hangs together"
        gone = [outcome.rung_words(event.part, event.kind) for event in self.run.events]
        rest = [word for word in gone if not word.startswith((where, "restraint", "belt", "undeployed"))]
        if done.taken_kg > 0.0:
            rest.append("the piece between two cuts came out")
        if self.cautions:
            rest.append("trim still hid a restraint part there: strip and look first")
        return f"{said}{'; ' + ', '.join(rest) if rest else ''}."

    def effect(self) -> str:
        """Return what it means for the plan."""
        if self.done is None:
            return "spent"
        return super().effect()

    def result_fields(self) -> dict[str, Any]:
        """Return what the cut did, in numbers."""
        if self.done is None:
            return {"cut": CutNote(False, 0.0, 0.0, 0.0, self.stalls_n, 0.0, cautions=self.cautions)}
        d = self.done
        room = widest_m(self.run.model.structure, self.run.ends[1].points)
        numbers = (d.open, d.cut_m, d.left_m, d.work_j, d.force_n, d.taken_kg)
        return {"cut": CutNote(*numbers, d.freed, d.beams, self.cautions, room)}


class StripCourse(AtOnce):
    """Trim, seals and panes come off, and what they carried of the weight goes."""

    def __init__(self, run: UnderWay) -> None:
        super().__init__(run)
        self.ready(run.model, run.move)
        self.revealed: tuple[str, ...] = ()
        self._lifted_j = 0.0

    @staticmethod
    def ready(model: DoorModel, move: Any) -> object:
        """Check the names."""
        fittings = fittings_of(model, model.start)
        if fittings is None:
            raise PlanError(
                "what", "has nothing to strip on a single door; set car.extent to 'side', or leave it out"
            )
        return names_of(fittings, move.what)

    def change(self, rest: Point) -> tuple[DoorModel, State]:
        """Return model and state with the fittings gone."""
        move: Strip = self.run.move
        model = self.run.model
        state, self.revealed = stripped(model, rest.state, move.what)
        structure = without_weight_of(model, move.what)
        if structure is model.structure:
            return model, state
        network = Network(structure)
        levels = [net.evaluate(state.points, state, Load()).stored for net in (model.network, network)]
        self._lifted_j = levels[1].get("weight", 0.0) - levels[0].get("weight", 0.0)
        return replace(model, structure=structure, network=network), state

    def paid(self, ledger: Ledger) -> Ledger:
        """Return the books with what the hands lifted: what had sunk with the metal is taken off it."""
        lifted = self._lifted_j
        return ledger.plus(lifted, ledger.stored_j + lifted, {}, ledger.weight_j + lifted)

    def sentence(self) -> str:
        """Return what came off and what can be seen now."""
        fittings = fittings_of(self.run.model, self.run.model.start)
        assert fittings is not None
        names = names_of(fittings, self.run.move.what)
        seen = f" Now to be seen: {', '.join(self.revealed)}." if self.revealed else ""
        return f"Off: {', '.join(names)}.{seen}"
