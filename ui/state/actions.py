"""The window's actions: name, words and keys, one a line, in the order of the menus."""

from __future__ import annotations

Row = tuple[str, str, str]

SEPARATOR = "-"
"""A row of this name is a line between two groups."""

FILE: tuple[Row, ...] = (
    ("open", "Open a plan\u2026", "Ctrl+O"),
    ("save", "Save the plan", "Ctrl+S"),
    ("save_as", "Save the plan as\u2026", "Ctrl+Shift+S"),
    ("-", "", ""),
    ("picture", "Save a picture of the stage\u2026", "Ctrl+P"),
    ("figures", "Matching pictures from a list\u2026", "Ctrl+Alt+G"),
    ("mesh", "Save the metal of this moment\u2026", "Ctrl+Shift+E"),
    ("-", "", ""),
    ("bring_back", "Bring back the last sitting", ""),
    ("quit", "Quit", "Ctrl+Q"),
)

PLAN: tuple[Row, ...] = (
    ("undo", "Undo", "Ctrl+Z"),
    ("redo", "Redo", "Ctrl+Shift+Z"),
    ("branches", "Steps and branches", "Ctrl+H"),
    ("-", "", ""),
    ("run", "Run the plan", "Return"),
    ("go_on", "Go on from here", "G"),
    ("stop", "Stop", "Esc"),
    ("start", "Back to the start", "Home"),
    ("end", "To the last moment", "End"),
    ("play", "Play the moments", "P"),
    ("pace", "Slow motion: half, a quarter, an eighth, full", "W"),
    ("loop", "Play again and again: all, round the event, once", "Y"),
    ("stops", "Stop at an event\u2026", "J"),
    ("-", "", ""),
    ("add_spread", "Add a spread", ""),
    ("add_squeeze", "Add a squeeze", ""),
    ("add_ease", "Add: let the tool off", ""),
    ("add_flex", "Add: flex with a forcible-entry bar", ""),
    ("add_cut", "Add a cut", ""),
    ("add_spread_cut", "Add: spread the ends of a cut", ""),
    ("add_strip", "Add: strip trim, seals, glass", ""),
    ("add_press", "Add: press with a ram", ""),
    ("add_hold", "Add: take hold of a door", ""),
    ("add_latch", "Add: check a latch or hold it open", ""),
    ("add_support", "Add: put the car on blocks", ""),
    ("add_crush", "Add a crush by a rigid body", ""),
    ("add_wreck", "Put a wreck before the plan", ""),
    ("change_move", "Change the move", "Ctrl+E"),
    ("move_earlier", "Put the move earlier", "Alt+Up"),
    ("move_later", "Put the move later", "Alt+Down"),
    ("take_out", "Take the move out of the plan", "Delete"),
    ("wreck", "How the car was wrecked: work it out, watch it", "Ctrl+B"),
    ("-", "", ""),
    ("form", "Change the car and the tool", "Ctrl+T"),
    ("form_side", "Change the side and the person", "Ctrl+Shift+T"),
    ("twin", "Duplicate this car and change one thing", "Ctrl+D"),
    ("-", "", ""),
    ("likely", "How likely is this outcome?", "Ctrl+L"),
    ("flips", "What flips this outcome?", "Ctrl+Shift+L"),
    ("weigh", "Go on, or stop at the mark and cut?", "Ctrl+K"),
    ("map", "Outcome map along the door's edges", "Ctrl+M"),
    ("map_large", "Outcome map: large chart", "Ctrl+Shift+M"),
    ("-", "", ""),
    ("edge", "Ready plan: edge attack", ""),
    ("contrast", "Ready plan: behind the bend", ""),
)

TEACH: tuple[Row, ...] = (
    ("lesson_open", "Open a lesson\u2026", "Ctrl+Shift+O"),
    ("lesson", "Lesson or plan beside the stage", "K"),
    ("lesson_on", "Next step of the lesson", ""),
    ("lesson_back", "Step before", ""),
    ("questions", "Questions of the lesson", "Q"),
    ("sheets", "Sheets of lesson or plan: print, PDF\u2026", "Ctrl+Alt+P"),
    ("-", "", ""),
    ("ask", "Ask before the push", "A"),
    ("lock", "Lock the prediction", "L"),
    ("compare", "Compare prediction and outcome", "R"),
    ("-", "", ""),
    ("beside", "Two plans side by side, or one again", "B"),
    ("present", "Present to a class, or end it", "F5"),
    ("notes", "Notes for the teacher", "F7"),
    ("-", "", ""),
    ("shut", "Shut answers, ladder, arrow and map, or open them", "T"),
    ("shut_answers", "Answers shut", ""),
    ("shut_ladder", "Ladder, work and force shut", ""),
    ("shut_arrow", "Arrow before the push shut", ""),
    ("shut_map", "Outcome map and likelihoods shut", ""),
    ("-", "", ""),
    ("words", "Words of the trade", "F6"),
    ("rules", "Our own rules", ""),
    ("drills", "Model said, metal did", ""),
)

VIEW: tuple[Row, ...] = (
    ("stage_only", "Stage only", "F"),
    ("projector", "Projector: white ground, large type", "Ctrl+Shift+P"),
    ("dark", "Dark theme", ""),
    ("larger", "Larger type", "Ctrl++"),
    ("smaller", "Smaller type", "Ctrl+-"),
    ("calm", "Moments as stills, no motion", ""),
    ("right_turns", "Right button turns the picture, left one only sets tips", ""),
    ("imperial", "Pounds and inches", "U"),
    ("language", "Language: English, or German as a draft", ""),
    ("-", "", ""),
    ("colour", "Next colours", "C"),
    ("view", "Next view", "V"),
    ("see_three_quarter", "View: three-quarter from behind", "Ctrl+1"),
    ("see_front", "View: three-quarter from the front", "Ctrl+2"),
    ("see_latch", "View: close on the latch", "Ctrl+3"),
    ("see_section", "View: section from above", "Ctrl+4"),
    ("see_square", "View: square to the side", "Ctrl+5"),
    ("see_patient", "View: from the patient's seat", "H"),
    ("camera_back", "Back to where you looked from", "Backspace"),
    ("-", "", ""),
    ("see_tool_section", "Section plane", "X"),
    ("see_tool_asunder", "Parts drawn apart", "E"),
    ("alone", "The part under the pointer alone, each in turn, or all", "I"),
    ("curve", "Next curve: force, room, exit width", "Ctrl+R"),
    ("curves_large", "Force, room and exit width in a large window", "Ctrl+Shift+R"),
    ("start_shape", "Outline of the start shape", "O"),
    ("see_tool_measure", "Measure", "M"),
    ("see_tool_pen", "Pen and arrows", "N"),
    ("-", "", ""),
    ("drawer_plan", "Plan drawer", "F2"),
    ("drawer_reading", "Reading drawer", "F3"),
    ("full", "Full screen", "F11"),
    ("layout", "Columns and window as at first", "Ctrl+0"),
)

HELP: tuple[Row, ...] = (
    ("first_look", "First look: the parts of a door", ""),
    ("caution", "Show the caution again", ""),
    ("before_metal", "Before metal work on a real car", ""),
    ("card", "Model card: what this is, and who says so", "F4"),
    ("describe", "This moment in words", "F8"),
    ("here", "Will it run here", ""),
    ("log", "What happened in the program: log, report", ""),
    ("find", "Find an action by its words\u2026", "Ctrl+F"),
    ("keys", "Keys", "F1"),
)

STEER: tuple[Row, ...] = (
    ("deeper", "Tip deeper, by 2 mm", "]"),
    ("shallower", "Tip less deep, by 2 mm", "["),
    ("deeper_far", "Tip deeper, by 10 mm", "}"),
    ("shallower_far", "Tip less deep, by 10 mm", "{"),
    ("tilt_more", "Push tilted further outward", "."),
    ("tilt_less", "Push tilted further inward", ","),
    ("up", "Tip up along the edge", "Up"),
    ("down", "Tip down along the edge", "Down"),
    ("up_far", "Tip up by 50 mm", "Shift+Up"),
    ("down_far", "Tip down by 50 mm", "Shift+Down"),
    ("edge_on", "Tip one to the next edge: latch, sill, hinge, belt", "Z"),
    ("seat_on", "Tip two to its next place", "Shift+Z"),
    ("up_two", "Tip two up along its place, or rearward", "Ctrl+Up"),
    ("down_two", "Tip two down along its place, or forward", "Ctrl+Down"),
    ("moment_back", "One moment back", "Left"),
    ("moment_on", "One moment on", "Right"),
    ("event_back", "Last event, or the page before", "PgUp"),
    ("event_on", "Next event, or the next page", "PgDown"),
    ("mark_back", "Last event, in a lesson too", "Ctrl+PgUp"),
    ("mark_on", "Next event, in a lesson too", "Ctrl+PgDown"),
)
"""Actions with a key and no place in a menu."""

MENUS: tuple[tuple[str, tuple[Row, ...]], ...] = (
    ("File", FILE),
    ("Plan", PLAN),
    ("Teach", TEACH),
    ("View", VIEW),
    ("Help", HELP),
)
"""The menus in their order."""
STEERING = "Tip and moments"
"""What the actions of `STEER` are about."""

HANDS: tuple[tuple[str, str], ...] = (
    ("Space, held", "Open the tips; let go to stop"),
    ("1 to 9", "A layer: solid, see-through, off"),
    ("Left button on the door", "Put a tip there"),
    ("Left button, drawn", "Turn the picture (or the right one: menu View)"),
    ("The same with Shift", "Shift the picture"),
    ("Wheel", "Nearer, further; after a tip is put: its depth, with Shift its tilt"),
    ("Ctrl+Wheel", "Depth at any time; with Shift the tilt"),
    ("Tab, Shift+Tab", "To the next control, to the one before"),
    ("Alt and a letter", "Open a menu"),
)
"""What hand and mouse do that is no action."""

SAME_KEYS: dict[str, tuple[str, ...]] = {
    "deeper": ("]", "D"),
    "shallower": ("[", "S"),
    "deeper_far": ("}", "Shift+D"),
    "shallower_far": ("{", "Shift+S"),
    "run": ("Return", "Enter"),
    "larger": ("Ctrl++", "Ctrl+="),
}
"""Actions reached by more than one key: on some keyboards the brackets are hard to reach."""

LAYER_KEYS = 9
CHECKED = ("stage_only", "projector", "dark", "imperial", "calm", "right_turns")
SHUT_PREFIX = "shut_"
"""Actions that begin so turn one lock of `ui.state.locks`."""
