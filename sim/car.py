"""The car of a plan, by its numbers: everything is SI with the unit in the name."""

from __future__ import annotations

from typing import Literal

import msgspec

from sim.whole_side import WholeSide


class BeadGap(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A length of hem without its bead: only the folded hem holds there.

    start_m : from the belt end of the hinge edge, down it, along the sill and up the latch edge [m]
    length_m : of the gap [m]
    """

    start_m: float = 1.7
    length_m: float = 0.1


class Car(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """The car: an invented low saloon's right front door, by its numbers.

    name : what it is called
    build : the ready build the car was taken from ("hemline builds" lists them); what else is said changes it
    seam : "bonded" (a bead all along the hem), "welded" (spots at weld_pitch_m) or "mixed" (both)
    seam_energy_j_per_m : energy to part one metre of bonded hem [J/m]
    seam_strength_n_per_m : highest opening force per metre [N/m]
    bead_gaps : lengths of hem where the bead is missing
    seam_variation_ratio : standard deviation over mean of the seam's energy and strength along the hem
    seam_correlation_m : distance over which the seam's quality changes [m];  seam_seed : which hem it is
    weld_pitch_m : spots stand half a pitch from the hem's ends and a pitch apart, rounded to fit [m]
    weld_peel_n, weld_shear_n : what one spot holds [N];  weld_energy_j : energy to pull one out [J]
    skin_thickness_m, inner_thickness_m : of the outer skin and of the inner panel [m]
    metal : of skin and inner panel; "composite" (skin alone) comes with its ready build only
    latch : "full", "half" (secondary position), "open" (held open) or "jammed" (the handle is pulled on a
        striker wedged in the fork: whether the latch frees itself is a matter of the forces)
    latch_wedge_n : force that wedges the striker in the fork [N];  handle_n : pull on the handle [N]
    latch_strength_ratio, hinge_strength_ratio : over the floors of UN R11 / GTR 1 (hinge sets
        often hold 15-40 kN, an estimate of the trade; 2.25 is 25 kN)
    hinge_depth_m : how far in from the lip a door turns about its hinges [m]; 0: half-way down the shut face
    fitting_give_m : way latch and hinges bend at the force they hold before they let go [m]; 0: none
    bar : whether the door has its reinforcement
    bar_foot_strength_n : force at which a foot of the bar lets go of the shut face [N]
    hem_width_m : of the hem's fold [m];  shut_face_depth_m : of the door's end face, lip to inner bend [m]
    lattice_spacing_m : size of the network's triangles [m]
    rail_wall_m : wall of the roof rail, which then gives [m]; 0 is a rail that stands still
    rail_yield_pa : its yield stress [Pa];  rail_held : the pillars whose joint with it still holds
    side : which side of the car; one is the mirror image of the other
    extent : "door" is the front door alone, all round it rigid; "side" both doors and the pillar between them
    whole_side : numbers of the whole side, read where extent is "side"
    """

    name: str = "low saloon, bonded steel door"
    build: str = ""
    seam: Literal["bonded", "welded", "mixed"] = "bonded"
    metal: Literal["steel", "alloy", "composite"] = "steel"
    skin_thickness_m: float = 0.0007  # 0.65-0.8 mm, from memory
    inner_thickness_m: float = 0.0008  # 0.6-0.8 mm, from memory
    # adhesive 20-40 J/m on a 10 mm hem and its fold 25-40 J/m, estimate of the trade, no source
    seam_energy_j_per_m: float = 60.0
    seam_strength_n_per_m: float = 5000.0  # T-peel of hem adhesives 3-8 N/mm, from memory
    bead_gaps: tuple[BeadGap, ...] = ()
    seam_variation_ratio: float = 0.0
    seam_correlation_m: float = 0.1  # assumed: bead guns and clamps leave marks about a hand apart
    seam_seed: int = 0
    weld_pitch_m: float = 0.05  # 40-60 mm, from memory
    # between the least strengths of [aws-welds-2013] and three times them, from memory
    weld_peel_n: float = 1500.0
    weld_shear_n: float = 3000.0
    weld_energy_j: float = 3.0  # assumed: pull-out over about two millimetres
    latch: Literal["full", "half", "open", "jammed"] = "full"
    latch_wedge_n: float = 0.0
    handle_n: float = 250.0  # assumed: a hard pull with one hand
    latch_strength_ratio: float = 1.25
    hinge_strength_ratio: float = 2.25
    hinge_depth_m: float = 0.0  # a knuckle's axis is 20 to 40 mm in from the outer face, from memory
    fitting_give_m: float = 0.0  # a leaf unfolds, a striker bends over: 10 to 20 mm, assumed
    bar: bool = True
    bar_foot_strength_n: float = 25.0e3
    hem_width_m: float = 0.010
    shut_face_depth_m: float = 0.100
    lattice_spacing_m: float = 0.045
    side: Literal["right", "left"] = "right"
    extent: Literal["door", "side"] = "door"
    whole_side: WholeSide = WholeSide()
    rail_wall_m: float = 0.0
    rail_yield_pa: float = 350.0e6  # high-strength sheet, assumed: 260-600 MPa is usual, from memory
    rail_held: Literal["both", "front", "rear"] = "both"
