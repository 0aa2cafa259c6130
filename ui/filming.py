"""A solved plan as a strip of pictures: the tools at each moment, and what happened by then."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from sim.plan import Plan
from sim.record import Frame, MoveRecord
from sim.units import Units, force_text, length_text
from ui.state.wording import event_words

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from ui.scene.picture import PictureWords


def moments(records: Sequence[MoveRecord]) -> list[Frame]:
    """Return the frames of a strip: of every move that took a way, and the end; or of all where none did."""
    frames = [frame for record in records for frame in record.frames]
    moving = [frame for frame in frames if frame.opening_m > 0.0]
    if not moving:
        return frames
    return [frames[0], *moving, *([] if moving[-1] is frames[-1] else frames[-1:])]


def head_of(frame: Frame, before: Sequence[Frame], units: Units = Units.METRIC) -> str:
    """Return the line over one picture: how far, with what force, and what has happened since the last."""
    if frame.opening_m <= 0.0:
        return "Start" if frame.move_index == 0 else f"Move {frame.move_index + 1}"
    kinds = dict.fromkeys(event_words(event) for one in before for event in one.events)
    move = f"Move {frame.move_index + 1}, " if frame.move_index else ""
    words = f"{move}{length_text(frame.opening_m, units)}, {force_text(frame.force_n, units)}"
    return f"{words}: {', '.join(kinds)}" if kinds else words


def draw_film(
    path: Path, plan: Plan, model: DoorModel, records: Sequence[MoveRecord], words: PictureWords
) -> None:
    """Write the strip of a solved plan as PNG; raises OSError where it cannot be written."""
    from ui.scene.film import chosen, film
    from ui.scene.picture import save_png
    from ui.tools_shown import solids_at

    frames = moments(records)
    places = chosen(len(frames))
    heads = [
        head_of(frames[place], frames[1 + places[k - 1] : place + 1] if k else [])
        for k, place in enumerate(places)
    ]

    def prepare(stage, frame: Frame) -> None:
        stage.show_tools(*solids_at(model, plan, frame.move_index, frame))

    shown = [frames[place] for place in places]
    save_png(film(model, shown, heads, words, prepare=prepare), path)
