"""A second stage that shows what a first one does: for pictures at another size."""

from __future__ import annotations

from ui.scene.stage import Stage


def copy_to(mine: Stage, other: Stage) -> None:
    """Show on another stage what one shows, from the same camera."""
    if mine.door is None:
        return
    other.set_theme(mine.theme)
    other.set_model(mine.door.model)
    for layer, mode in mine.layer_modes.items():
        other.set_layer(layer, mode)
    other.set_colour_mode(mine.mode)
    other.show_points(mine.door.points, mine.frame)
    other.highlight(mine.picked)
    theirs, said = other.notes, mine.notes
    theirs.arrow_words, theirs.length_words = said.arrow_words, said.length_words
    other.show_aim(said.aim, said.tool, share=said.share)
    other.show_tools(*said.solids)
    other.show_clearance(said.clearance)
    other.show_path(said.path_frame)
    other.show_start_ghost("start" in mine.cast)
    other.shot = mine.shot
    other.take_apart(*mine.apart)
    other.show_marks(mine.marks.strokes, mine.marks.measures)
