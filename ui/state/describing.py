"""The state shown, in words alone: for a screen reader, as a caption, and as the alt text of a picture.

Tool, place, moment, verdict and clearance; what is kept shut stays out of it.
"""

from __future__ import annotations

from sim.builds import car_words, labelled
from sim.move_words import is_driven, title_of, words_of
from sim.outcome import rung_words, tip_stands
from sim.record import Frame
from sim.results import LIMITS_LINE
from sim.units import Units, force_text, length_text
from ui.state.cards import place_of
from ui.state.figure_words import chunks
from ui.state.folds import coloured, fold_words
from ui.state.locks import ANSWERS, LADDER
from ui.state.prompts import prompts
from ui.state.reading import edges_words
from ui.state.room_now import NONE_YET, in_the_way_at, way_words
from ui.state.session import Session
from ui.state.tongue import tr
from ui.state.view_options import COLOUR_WORDS, LAYER_WORDS, SHOWN_WORDS, Shown
from ui.state.wording import in_units, told
from ui.state.wreck_card import wreck_words

AT_START = "Nothing has been pushed yet."
KEPT_SHUT = "What happened is kept shut."


def described(session: Session) -> str:
    """Return the state shown in a few sentences."""
    parts = (
        _car(session),
        _move(session),
        _moment(session),
        _outcome(session),
        _cautions(session),
        _edges(session),
        _room(session),
    )
    return " ".join(part for part in (*parts, _picture(session), f"{LIMITS_LINE}.") if part)


def written_inside(session: Session, title: str) -> dict[str, str]:
    """Return what stands inside a picture saved of the moment shown, in the language spoken."""
    return chunks(session.plan, title, tr(described(session)))


def _car(session: Session) -> str:
    plan = session.plan
    title = f"{plan.title}. " if plan.title else ""
    name = car_words(plan.car)
    return f"{title}{labelled(plan.car, name[:1].upper() + name[1:])}, {plan.car.side} side."


def _index(session: Session) -> int:
    """Return the index of the move that the moment belongs to; of the selected one at the start."""
    return session.selection.now.move if session.timeline.move < 0 else session.timeline.move


def _move(session: Session) -> str:
    moves, index = session.plan.moves, _index(session)
    if index >= len(moves):
        return "No move is planned."
    move, units = moves[index], session.view.options.units
    tool = getattr(move, "tool", None)
    with_tool = (
        "" if tool is None else f", with a {tool.name}, tips {length_text(tool.tip_width_m, units)} wide"
    )
    place = place_of(move, units)
    return f"Move {index + 1} of {len(moves)}: {title_of(move)}{with_tool}. {place[:1].upper()}{place[1:]}."


def _moment(session: Session) -> str:
    line, units = session.timeline, session.view.options.units
    frame = line.frame
    if frame is None:
        return "The door is being set out."
    if line.move < 0:
        return wreck_words(session) or AT_START
    seat = f" {tip_stands(frame.seat.seat)}" if frame.seat is not None else ""
    return f"Moment {line.position + 1} of {len(line)}: {_travel(session, frame, units)}.{seat}"


def _travel(session: Session, frame: Frame, units: Units) -> str:
    move = session.plan.moves[session.timeline.move]
    told = not (session.hides(LADDER) or session.tool_rests)
    force = f", force {force_text(frame.force_n, units)}" if told else ""
    if not is_driven(move):
        return f"{words_of(move).verbs[2]}{force}"
    return f"{words_of(move).verbs[2]} to {length_text(frame.opening_m, units)}{force}"


def _outcome(session: Session) -> str:
    line, units = session.timeline, session.view.options.units
    if line.move < 0 or line.frame is None:
        return ""
    if session.hides(ANSWERS):
        return KEPT_SHUT
    result = session.result_here
    if result is not None:
        return in_units(told(result.sentence, result.plan_effect), units)
    seen = [
        f"{rung_words(event.part, event.kind)} at {length_text(event.opening_m, units)}"
        for frame in line.frames_of(line.move)
        for event in frame.events
        if frame.opening_m <= line.frame.opening_m
    ]
    return f"So far: {'; '.join(seen)}." if seen else "So far nothing has given."


def _cautions(session: Session) -> str:
    """Return the cautions of the moment: what has happened, or what is to be asked before any force."""
    cards = prompts(session)
    met = [card.name for card in cards if card.happened]
    if met:
        return f"Caution: {'; '.join(name[:1].lower() + name[1:] for name in met)}."
    return f"{cards[0].name}: {cards[0].words}" if cards else ""


def _edges(session: Session) -> str:
    frame = session.timeline.frame
    words = "" if frame is None or session.hides(ANSWERS) else edges_words(frame.sharp_edge_count)
    return f"{words}." if words else ""


def _room(session: Session) -> str:
    frame, start, units = session.timeline.frame, session.start, session.view.options.units
    if frame is None or not 0.0 <= abs(frame.clearance.distance_m) < 10.0:
        return ""
    if session.hides(ANSWERS):
        return ""
    room = frame.clearance
    part = room.body_part.replace("_", " ")
    words = f"Metal to occupant: {length_text(room.distance_m, units)}, at the {part}"
    change = 0.0 if start is None else room.distance_m - start.clearance.distance_m
    if start is None or session.timeline.move < 0:
        words = f"{words}."
    elif abs(change) < 0.0005:
        words = f"{words}, as at the start."
    else:
        way = "more" if change > 0 else "less"
        words = f"{words}, {length_text(abs(change), units)} {way} than at the start."
    if frame.exit_width_m is None:
        return words
    blocked = in_the_way_at(session.model, frame)
    told = f"{words} {_exit(frame.exit_width_m, units)}"
    return told if blocked is None else f"{told} {way_words(blocked, units)}"


def _exit(width_m: float, units: Units) -> str:
    return f"Exit width: {length_text(width_m, units) if width_m > 0.0 else NONE_YET}."


def _picture(session: Session) -> str:
    options = session.view.options
    other = [
        f"{LAYER_WORDS[layer]} {SHOWN_WORDS[mode]}"
        for layer, mode in options.layers.items()
        if mode is not Shown.SOLID
    ]
    layers = f"; {', '.join(other)}" if other else ""
    words = f"Colours: {COLOUR_WORDS[coloured(session)].lower()}{layers}."
    return f"{words} {fold_words(session)}".rstrip()
