"""A sheet of paper as plain values: what stands on it, as HTML that a text document understands.

No Qt here, so that what a sheet says can be tested without a screen; `ui.printing` puts it on paper.
Sheets are read in black and white: they carry no colour, and no meaning in a tone alone.
"""

from __future__ import annotations

import html
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from sim.plan import BeltPoint, Ease, EdgePoint, Plan, Press
from sim.results import LIMITS_LINE, MODEL_VERSION
from ui.state.tongue import tr

NOT_THE_ORDER = "Training order is not incident order."
FULL_PX = 672
"""Width of the body of an A4 page [CSS px]; letter is a little wider, so that pictures fit on both."""
BOX = "\N{WHITE SQUARE}"
BEFORE = "Before metal work: scene protected, car steady, energy isolated, patient covered and cared for."
ON_METAL = (
    "seam",
    "a weld",
    "latch",
    "striker out of its fork",
    "a hinge",
    "foot of the bar",
    "sheet, by tearing",
    "head or foot of the ram",
    "base",
    "nothing",
    "could not be seen",
)
LOCAL_FIRST = "Your service's procedure and licensed, hands-on practice come first."
TURN = "<!--over-->"
"""Where a page that does not fit on one side of paper goes over to the other side."""
SOFT = "#ececea"
LINE = "#9aa0a5"
QUIET = "#51575d"


@dataclass(frozen=True)
class Picture:
    """A picture on a sheet.

    name : by which the sheet calls it;  plan : the lesson's name of the plan
    move, moment : which moment, as in a lesson's step;  camera, colours, layers : how it is looked at
    aim : whether the push about to be made is drawn
    """

    name: str
    plan: str
    move: int = 0
    moment: str = "end"
    camera: str = "three_quarter"
    colours: str = "material"
    layers: tuple[tuple[str, str], ...] = ()
    aim: bool = False
    size: tuple[int, int] = (640, 350)


DOORS_OFF = (("skin", "off"), ("seam", "off"), ("inner", "off"), ("trim_glass", "off"))
"""A ram works behind the doors: they are left out of its pictures."""


def open_doors(plan: Plan) -> tuple[tuple[str, str], ...]:
    """Return how the layers of a plan's pictures are drawn: without doors where a ram ends the plan."""
    pushes = [move for move in plan.moves if not isinstance(move, Ease)]
    return DOORS_OFF if pushes and isinstance(pushes[-1], Press) else ()


def camera_of(plan: Plan) -> str:
    """Return the view that shows what a plan's last push works on, and on a wrecked car the whole of it."""
    pushes = [move for move in plan.moves if not isinstance(move, Ease)]
    door = getattr(pushes[-1], "door", None) if pushes else None
    if plan.wreck or plan.start or not isinstance(door, EdgePoint | BeltPoint):
        return "three_quarter"
    if isinstance(door, BeltPoint):
        return "top"
    return {"latch_edge": "latch", "hinge_edge": "hinge"}.get(door.edge, "three_quarter")


@dataclass(frozen=True)
class Sheet:
    """One kind of sheet, filled in.

    kind : what it is ("Bridge sheet");  title : what it is about
    pages : the body of each page, HTML;  foot : beside the limits line
    """

    kind: str
    title: str
    pages: tuple[str, ...]
    pictures: tuple[Picture, ...] = ()
    foot: str = field(default_factory=lambda: f"Hemline, model {MODEL_VERSION}")

    @property
    def limits(self) -> str:
        """The line that stands on every page."""
        return LIMITS_LINE

    def page(self, index: int) -> str:
        """Return one page's HTML, whole."""
        return f"<html><body>{self.pages[index]}</body></html>"

    @property
    def plain(self) -> str:
        """Everything on the sheet as words alone."""
        text = "\n".join(self.pages)
        out, inside = [], False
        for char in text:
            inside = char == "<" or (inside and char != ">")
            if not inside and char != ">":
                out.append(char)
        return html.unescape(" ".join("".join(out).split()))


# --- small parts of HTML


def said(text: str) -> str:
    """Return words as HTML in the language spoken, line breaks kept."""
    return html.escape(tr(text.strip()), quote=False).replace("\n", "<br/>")


def heading(text: str) -> str:
    """Return a heading inside a page."""
    return gap(3) + f'<h2 style="font-size:11.5pt; margin-top:5px; margin-bottom:4px;">{said(text)}</h2>'


def title(text: str) -> str:
    """Return the title of a page."""
    return f'<h1 style="font-size:17pt; margin-top:0px; margin-bottom:7px;">{said(text)}</h1>'


def paragraph(text: str, *, quiet: bool = False, size: str = "10pt", above: int = 0, below: int = 6) -> str:
    """Return a paragraph."""
    colour = f" color:{QUIET};" if quiet else ""
    style = f"font-size:{size};{colour} margin-top:{above}px; margin-bottom:{below}px;"
    return f'<p style="{style}">{said(text)}</p>'


def strong(text: str, size: str = "12pt") -> str:
    """Return a paragraph that is read first."""
    return f'<p style="font-size:{size}; margin-top:2px; margin-bottom:6px;"><b>{said(text)}</b></p>'


def bullets(items: Iterable[str], size: str = "10pt") -> str:
    """Return a list."""
    style = f"font-size:{size}; margin-bottom:3px;"
    lines = "".join(f'<li style="{style}">{said(item)}</li>' for item in items)
    return f'<ul style="margin-top:2px; margin-bottom:6px; margin-left:-18px;">{lines}</ul>' if lines else ""


def image(name: str, width: int) -> str:
    """Return a picture at a width in hundredths of an inch's ninety-sixth (CSS pixels)."""
    return f'<img src="{name}" width="{width}"/>'


def table(
    heads: Sequence[str],
    rows: Iterable[Sequence[str]],
    widths: Sequence[int],
    *,
    size: str = "9pt",
    pad: int = 5,
) -> str:
    """Return a ruled table; cells are HTML already, widths are in per cent."""
    head = "".join(
        f'<td width="{wide}%" bgcolor="{SOFT}"><b>{said(word)}</b></td>'
        for word, wide in zip(heads, widths, strict=True)
    )
    body = "".join("<tr>" + "".join(f"<td>{cell}</td>" for cell in row) + "</tr>" for row in rows)
    top = f"<thead><tr>{head}</tr></thead>" if any(heads) else ""
    return (
        f'<table width="100%" border="1" cellspacing="0" cellpadding="{pad}" '
        f'style="border-collapse:collapse; border-color:{LINE}; border-style:solid; font-size:{size};">'
        f"{top}{body}</table>"
    )


def beside(cells: Sequence[tuple[int, str]], *, pad: int = 0) -> str:
    """Return parts beside each other without rules: (width in per cent, HTML)."""
    body = "".join(f'<td width="{wide}%" valign="top">{cell}</td>' for wide, cell in cells)
    return f'<table width="100%" border="0" cellspacing="0" cellpadding="{pad}"><tr>{body}</tr></table>'


def fields(names: Sequence[str], widths: Sequence[int] | None = None, *, first: str = "") -> str:
    """Return places to write in, each with its name above; the first may be filled in already."""
    wide = widths or [100 // len(names)] * len(names)
    filled = f'<span style="font-size:15pt;"><b>{said(first)}</b></span>' if first else "<br/>"
    cells = "".join(
        f'<td width="{share}%"><span style="font-size:8pt; color:{QUIET};">{said(name)}</span><br/>'
        f"{'<br/>' if k else filled}</td>"
        for k, (name, share) in enumerate(zip(names, wide, strict=True))
    )
    return (
        f'<table width="100%" border="1" cellspacing="0" cellpadding="4" '
        f'style="border-collapse:collapse; border-color:{LINE}; border-style:solid;"><tr>{cells}</tr></table>'
    )


def rules(count: int) -> str:
    """Return empty lines to write on."""
    row = f'<tr><td style="border-bottom:1px solid {LINE};"><br/></td></tr>'
    return f'<table width="100%" border="0" cellspacing="0" cellpadding="5">{row * count}</table>'


def boxed(inside: str) -> str:
    """Return a part with a soft ground: what must be read."""
    return (
        f'<table width="100%" border="0" cellspacing="0" cellpadding="8"><tr>'
        f'<td bgcolor="{SOFT}">{inside}</td></tr></table>'
    )


def gap(points: int = 6) -> str:
    """Return empty space."""
    return f'<p style="font-size:{points}pt; margin-top:0px; margin-bottom:0px;">&nbsp;</p>'
