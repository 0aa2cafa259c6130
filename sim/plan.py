"""Plans: a car and an ordered list of moves, as frozen values.

Everything is SI with the unit in the name; `sim.planfile` reads and writes them as TOML.
"""

from __future__ import annotations

from typing import Literal

import msgspec

from sim.car import BeadGap as BeadGap
from sim.car import Car as Car
from sim.cut_plan import Cut as Cut
from sim.cut_plan import Strip as Strip
from sim.ram_plan import BaseSpot as BaseSpot
from sim.ram_plan import EntryBar as EntryBar
from sim.ram_plan import PillarSpot as PillarSpot
from sim.ram_plan import Ram as Ram
from sim.whole_side import WholeSide as WholeSide

SCHEMA_VERSION = 1

Edge = Literal["latch_edge", "hinge_edge", "sill_edge"]
Lip = Literal["outer", "inner", "both"]
Surface = Literal["painted", "bare", "rubber"]
PanelName = Literal["front", "rear"]
BodySeat = Literal["pillar_edge", "pillar_outside", "hinge_pillar", "rocker", "roof_rail", "ground"]


class EdgePoint(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="edge", tag_field="at"):
    """A tip in the gap at the door's edge.

    edge : which edge of the door
    along_m : height above the sill (latch, hinge edge) or distance from the hinge edge (sill edge) [m]
    depth_m : from the lip inboard to the middle of the tip's pad [m]: hem lip, shut face, behind the bend
    lip_share_ratio : how much of the load that the overlap gives to the hem lip it takes, 0 .. 1; below 1
        where the hem stands less proud of the shut face
    surface : what the pad bears on: "painted" or "bare" steel, or a "rubber" seal left on
    panel : which door of a whole side; its own sill and hinge edge are meant then
    """

    edge: Edge = "latch_edge"
    along_m: float = 0.36
    depth_m: float = 0.005
    lip_share_ratio: float = 1.0
    surface: Surface = "painted"
    panel: PanelName = "front"


class BeltPoint(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="belt", tag_field="at"):
    """A tip on the belt line, inside the window opening.

    along_m : distance from the hinge edge [m];  lip : which lip of the belt it stands on
    surface, panel : as at the edge
    """

    along_m: float = 0.55
    lip: Lip = "outer"
    surface: Surface = "painted"
    panel: PanelName = "front"


class FacePoint(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="face", tag_field="at"):
    """A tip flat on a face: the outer skin from outside or the inner panel from inside.

    side : "outer", the skin from outside, or "inner", the inner panel from inside
    along_m : distance from the hinge edge [m];  height_m : above the sill [m]
    panel : which door of a whole side
    """

    side: Literal["outer", "inner"] = "outer"
    along_m: float = 0.5
    height_m: float = 0.5
    panel: PanelName = "front"


class BodyPoint(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="body", tag_field="at"):
    """A tip on the body round the door, which stands still, or on the ground under the sill.

    seat : what it stands on
    along_m : height above the sill (pillars) or distance from the hinge edge (rocker, roof rail, ground) [m]
    surface : as at the edge
    """

    seat: BodySeat = "pillar_edge"
    along_m: float = 0.36
    surface: Surface = "painted"


Place = EdgePoint | BeltPoint | FacePoint


class Tool(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A spreader by its numbers.

    name : its name
    tip_width_m : along the edge [m];  tip_depth_m : length of the pad, measured inboard [m]
    opening_m, force_n : the force-opening curve, equally long lists (ten points, NFPA 1936 style)
    arm_m : arm length from pivot to tip [m]
    friction_ratio : force across over force pressed with at which a tip slides on painted steel; serrated
        tips 0.3 to 0.6, from memory; above about 2 it bites and never slides
    hold_n_m : moment with which the crew hold the tool's direction [N m]; assumed, about 200 N at 0.5 m
    """

    name: str = "wide-tip spreader"
    tip_width_m: float = 0.05
    tip_depth_m: float = 0.03
    opening_m: tuple[float, ...] = (0.0, 0.07, 0.14, 0.21, 0.28, 0.35, 0.42, 0.49, 0.56, 0.66)
    force_n: tuple[float, ...] = (
        42e3,
        40e3,
        40e3,
        41e3,
        43e3,
        46e3,
        50e3,
        55e3,
        60e3,
        66e3,
    )
    arm_m: float = 0.45
    friction_ratio: float = 0.4
    hold_n_m: float = 100.0


class Spread(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="spread", tag_field="move"):
    """Open the tips: one on the door, the other on what stands still beside it or on the door as well.

    door : where the tip on the door stands
    against : where the other tip stands; left out (None) it is straight across the gap
    tilt_rad : direction of the push on the door's edge, 0 = along the car, a quarter turn is straight out;
        at the belt the tool fills the opening and pushes along the line between its tips, whatever this says
    lean_rad : how far the pad on the door is turned from square to the push, about the edge; above zero its
        inboard end bears first, below zero its outboard end
    tool_body : "comes" back as the arms swing, so the tip keeps to its line, or "stands" still, so the tip
        moves on its arc and draws outboard
    opening_m : how far to open [m];  tool : the spreader
    stop_at : event kinds that end the move early;  words : a line of one's own that goes with the move
    """

    door: EdgePoint | BeltPoint = EdgePoint()
    against: BodyPoint | EdgePoint | BeltPoint | FacePoint | None = None
    tilt_rad: float = 0.7854
    lean_rad: float = 0.0
    tool_body: Literal["comes", "stands"] = "comes"
    opening_m: float = 0.1
    tool: Tool = Tool()
    stop_at: tuple[str, ...] = ()
    words: str = ""


class Squeeze(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="squeeze", tag_field="move"):
    """Close the tips across the door: one on the outer skin, one on the inner panel at the same place.

    along_m : distance from the hinge edge [m];  height_m : above the sill [m]
    closing_m : how far to close [m];  tool : the spreader
    stop_at : event kinds that end the move early;  words : a line of one's own that goes with the move
    on : a place on the pillar between the doors instead: one tip on its outer wall, one on its inner
    panel : which door of a whole side
    """

    along_m: float = 0.55
    height_m: float = 0.5
    closing_m: float = 0.06
    tool: Tool = Tool()
    stop_at: tuple[str, ...] = ()
    words: str = ""
    on: PillarSpot | None = None
    panel: PanelName = "front"


class Crush(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="crush", tag_field="move"):
    """Press a rigid body into the side: how a door gets wrecked, and how its strength is tested.

    shape : "cylinder" (upright), "face" (flat, square to its line) or "pole" (upright, ends half balls)
    size_m : diameter, or width of the face [m];  tall_m : from its lower to its upper end [m]
    height_m : of its lower end above the door's lowest point [m]
    along_m : its middle, from the hinge edge [m]
    skew_rad : its line, 0 = straight inboard, positive = also towards the rear
    travel_m : how far it goes after it first touches the metal [m]
    stop_at : event kinds that end the move early;  words : a line of one's own that goes with the move
    """

    shape: Literal["cylinder", "face", "pole"] = "cylinder"
    size_m: float = 0.305
    tall_m: float = 0.56
    height_m: float = 0.127
    along_m: float = 0.5
    skew_rad: float = 0.0
    travel_m: float = 0.15
    stop_at: tuple[str, ...] = ()
    words: str = ""


class Ease(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="ease", tag_field="move"):
    """Let the tool off: the metal springs back to what is left of its shape.

    words : a line of one's own that goes with the move
    """

    words: str = ""


class Press(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="press", tag_field="move"):
    """Drive a ram out between a part and a base.

    head : what it pushes: the pillar's inner wall or a door's inner panel
    foot : what it stands on: a base of the car, or another such place;  ram : the ram
    surface : what the head bears on: "painted" or "bare" steel, or a "rubber" seal left on
    grip_ratio : friction of head and foot over what is usual there, for dirt, wet or a worn head
    extension_m : how far to drive it out [m]
    stop_at : event kinds that end the move early;  words : a line of one's own that goes with the move
    """

    head: PillarSpot | FacePoint = PillarSpot()
    foot: BaseSpot | PillarSpot | FacePoint = BaseSpot()
    ram: Ram = Ram()
    surface: Surface = "bare"
    grip_ratio: float = 1.0
    extension_m: float = 0.1
    stop_at: tuple[str, ...] = ()
    words: str = ""


class Support(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="support", tag_field="move"):
    """Put the car on blocks under its rockers and let it down on them, or take them away again.

    on : "blocks", or "wheels" alone;  words : a line of one's own that goes with the move
    """

    on: Literal["blocks", "wheels"] = "blocks"
    words: str = ""


class Hold(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="hold", tag_field="move"):
    """Take hold of a door: swing it, strap it or prop it where it is, or let it go.

    door : which one
    way : "swing" about its hinges by hand, and hold it there; "strap" it in all directions; "prop" its latch
        end up from the ground; "let go" of all that holds it
    angle_rad : how far to swing it, outboard positive;  hands_n : most the hands push with [N]
    lift_m : how far the prop's head stands above where the latch end is [m]
    words : a line of one's own that goes with the move
    """

    door: Literal["front", "rear"] = "front"
    way: Literal["swing", "strap", "prop", "let go"] = "swing"
    angle_rad: float = 0.5235987755982988
    hands_n: float = 400.0  # two people, one hand each: assumed
    lift_m: float = 0.0
    words: str = ""


class Latch(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="latch", tag_field="move"):
    """Pull at a door's handle: to see whether its latch is free, or to draw the pawl and hold it open.

    door : which one
    way : "check", which changes nothing, or "hold": from then on the pawl is out, and only the jam is left
    handle_n : pull on the handle [N];  words : a line of one's own that goes with the move
    """

    door: Literal["front", "rear"] = "front"
    way: Literal["check", "hold"] = "check"
    handle_n: float = 250.0  # a hard pull with one hand: assumed
    words: str = ""


class FramePoint(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="frame", tag_field="at"):
    """A place on the window frame.

    along_m : along it from its foot on the latch side, up, forward and down to the hinge side [m]
    panel : which door of a whole side
    """

    along_m: float = 0.4
    panel: PanelName = "front"


class Flex(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="flex", tag_field="move"):
    """Lever a window frame or an edge of the door outward with a forcible-entry bar.

    on : where the tip stands;  opening_m : how far the tip goes [m]
    tilt_rad : direction of the push, 0 = along the car away from the pillar, a quarter turn = straight
        outboard
    bar : the bar
    stop_at : event kinds that end the move early;  words : a line of one's own that goes with the move
    """

    on: FramePoint | EdgePoint = FramePoint()
    opening_m: float = 0.03
    tilt_rad: float = 1.5707963
    bar: EntryBar = EntryBar()
    stop_at: tuple[str, ...] = ()
    words: str = ""


class CutSpread(msgspec.Struct, frozen=True, forbid_unknown_fields=True, tag="spread_cut", tag_field="move"):
    """Open the tips between the raw ends of a cut across the pillar: on the cut end and the stub above it.

    height_m : of the cut above the pillar's foot, along it [m]
    tips_from : the side the tips come from;  off_m : beside the middle of that side [m]
    depth_m : how far the noses go in past the near edge where there is room [m]
    opening_m : how far to open once the tips fill the gap [m];  tool : the spreader
    stop_at : event kinds that end the move early;  words : a line of one's own that goes with the move
    """

    height_m: float = 0.9
    tips_from: Literal["front", "rear", "outer"] = "outer"
    off_m: float = 0.0
    depth_m: float = 0.05
    opening_m: float = 0.06
    tool: Tool = Tool()
    stop_at: tuple[str, ...] = ()
    words: str = ""


Move = Spread | Squeeze | Crush | Ease | Press | Flex | Support | Hold | Latch | Cut | Strip | CutSpread


class Plan(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A car and the moves made on it, in order.

    schema_version : of the file's form
    title, words : what it is called, and what it shows;  author, licence : whose it is, how it may be used
    seed : of the draws when inputs are varied
    car : the car
    moves : what is done, in order
    wreck : what wrecked it before, in order: crushes and letting off, written as moves are, under [[wreck]];
        solved first and then let off
    start : name of a saved start that stands for the wreck, a file beside the plan
    """

    schema_version: int = SCHEMA_VERSION
    title: str = ""
    words: str = ""
    author: str = ""
    licence: str = ""
    seed: int = 0
    car: Car = Car()
    moves: tuple[Move, ...] = ()
    wreck: tuple[Move, ...] = ()
    start: str = ""

    def past(self, count: int) -> tuple[object, ...]:
        """Return all that is done to the car before a move: wreck or saved start, and the moves before it."""
        found: tuple[object, ...] = (*self.wreck, "as found") if self.wreck else ()
        if self.start:
            found = (f"start {self.start}",)
        return (*found, *self.moves[:count])

    def with_move(self, index: int, move: Move) -> Plan:
        """Return the plan with one move replaced (or appended when ``index`` equals the count)."""
        moves = list(self.moves)
        moves[index : index + 1] = [move]
        return msgspec.structs.replace(self, moves=tuple(moves))

    def without_move(self, index: int) -> Plan:
        """Return the plan without one move."""
        return msgspec.structs.replace(self, moves=self.moves[:index] + self.moves[index + 1 :])

    def with_car(self, car: Car) -> Plan:
        """Return the plan on another car."""
        return msgspec.structs.replace(self, car=car)
