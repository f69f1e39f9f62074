"""What pull moves my load along the floor or a ramp, and what holds it back?

Sliding on skids or rolling on rollers (calc.hauling.moving). Two columns of friction: the high one for pulling, the low one for
holding back. A tackle with its losses, a winch by its layer of rope, turns on a post. Rollers hold back nothing, and no figure
for their friction was found that could be printed: the pull that starts the load on the level is measured.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.ramps import RampView, ramp_figure
from calc.hauling.moving import (
    NOT_KNOWN,
    SURFACES,
    Surface,
    along_ramp_n,
    hauling_pull_n,
    holding_back_n,
    pull_on_layer_n,
    slides_at_rad,
    tail_pull_n,
)
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, NumberInput, QuantityInput
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, unknown
from calc.words.facts import Absent, Number, absent, force, length, message, share
from calc.words.writer import Writer


@dataclass(frozen=True)
class Found:
    """The pulls. `surface` is None on rollers; `known` says whether the pair of materials is; `rated_n` is that of the
    weakest part, which may be at the anchor.
    """

    load_n: float
    slope_deg: float
    surface: Surface | None
    known: bool
    rated_n: float | None
    drum_m: float | None
    rope_m: float | None
    layer: int
    tackled: bool
    by_winch: bool
    start_pull_n: float
    keep_pull_n: float
    hold_back_n: float
    hauling_pull_n: float
    anchor_pull_n: float
    winch_has_n: float | Absent
    winch_share: float | Absent
    rating_share: float | Absent
    tail_pull_n: float | Absent
    slides_at_deg: float

    @property
    def most_n(self) -> float:
        """The larger of the pull that starts it and that which holds it back [N]."""
        return max(self.start_pull_n, self.hold_back_n)


def _surface(given: Given) -> Surface:
    """Friction of the pair; on rollers the measured pull, and nothing that holds."""
    if given.text("way") == "rollers":
        pull = given.si("level_pull") / (given.si("load") * STANDARD_GRAVITY_M_PER_S2)
        if exceeds(pull, 1.0):
            raise given.refuse("level_pull", "more-than-the-load")
        return Surface(pull, pull, 0.0)
    return SURFACES.get(given.text("pair"), NOT_KNOWN)


def find(given: Given) -> Found:
    """The pulls on load, line, anchor, winch and tail; see WORKSHEET for inputs and results."""
    surface = _surface(given)
    load_n = given.si("load") * STANDARD_GRAVITY_M_PER_S2
    slope = math.radians(given.si("slope"))
    parts, sheaves = given.count("parts"), given.count("sheaves")
    if parts > sheaves + 1:
        raise given.refuse("sheaves", "too-few", parts=parts)
    start = along_ramp_n(load_n, slope, surface.start)
    hold = holding_back_n(load_n, slope, surface.hold)
    pulls = max(start, hold)
    hauling = hauling_pull_n(pulls, parts, sheaves)
    anchor = pulls + hauling if sheaves else pulls
    rated = given.maybe("rating")
    rated_n = None if rated is None else rated * STANDARD_GRAVITY_M_PER_S2
    winch = _winch_has_n(given)
    return Found(
        load_n=load_n,
        slope_deg=given.si("slope"),
        surface=None if given.text("way") == "rollers" else surface,
        known=surface is not NOT_KNOWN,
        rated_n=rated_n,
        drum_m=given.maybe("drum"),
        rope_m=given.maybe("rope"),
        layer=given.count("layer"),
        tackled=parts > 1 or sheaves > 0,
        by_winch=given.text("hauled_by") == "winch",
        start_pull_n=start,
        keep_pull_n=along_ramp_n(load_n, slope, surface.keep),
        hold_back_n=hold,
        hauling_pull_n=hauling,
        anchor_pull_n=anchor,
        winch_has_n=winch,
        winch_share=winch if isinstance(winch, Absent) else hauling / winch,
        rating_share=absent("not-given") if rated_n is None else anchor / rated_n,
        tail_pull_n=_tail_n(given, hold),
        slides_at_deg=math.degrees(slides_at_rad(surface.hold)),
    )


def _winch_has_n(given: Given) -> float | Absent:
    """What the winch pulls on its layer [N]."""
    if given.text("hauled_by") != "winch" or not given.has("winch_rating"):
        return absent("no-winch")
    return pull_on_layer_n(given.si("winch_rating"), given.si("drum"), given.si("rope"), given.count("layer"))


def _tail_n(given: Given, hold_n: float) -> float | Absent:
    if not given.has("turns"):
        return absent("no-turns")
    return tail_pull_n(hold_n, given.si("turns"), given.si("post_friction"))


def judge(found: Found) -> tuple[Reason, ...]:
    """What is overloaded or not known; then what goes with every move."""
    reasons: list[Reason] = []
    held = message("held-by-itself")
    if found.hold_back_n > 0:
        held = message("held-by-a-line", hold_back=force(found.hold_back_n, "demand"))
    if isinstance(found.winch_share, Absent):
        reasons.extend([unknown("winch-not-known", held=held)] if found.by_winch else [])
    elif exceeds(found.winch_share, 1.0):
        reasons.append(over("winch-too-weak"))
    if isinstance(found.rating_share, Absent):
        reasons.append(unknown("rating-not-known", held=held))
    elif exceeds(found.rating_share, 1.0):
        reasons.append(over("rigging-overloaded", used=share(found.rating_share)))
    if found.slope_deg > 0:
        code = "rolls-away" if found.surface is None else "keep-a-line-on-it"
        reasons.append(caution(code, held=held))
    if not found.known:
        reasons.append(caution("pair-not-known", held=held))
    reasons.append(note("the-pulls", held=held))
    reasons.append(note("jams-pull-more", "warning"))
    reasons.append(note("nobody-below", "prohibition"))
    reasons.append(
        note("hands-off-rollers" if found.surface is None else "no-grease-on-a-slope", "prohibition")
    )
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    load = force(found.load_n)
    lines = []
    if found.surface is None:
        lines.append(step("start-rolling", weight=load))
    else:
        lines.append(step("start", weight=load, friction=Number(found.surface.start, 2)))
        lines.append(step("keep", weight=load, friction=Number(found.surface.keep, 2)))
    lines.append(step("hold", weight=load, friction=Number(found.surface.hold if found.surface else 0.0, 2)))
    if found.tackled:
        lines.append(step("tackle", pull=force(found.most_n)))
    if not isinstance(found.winch_has_n, Absent):
        lines.append(step("layer", bare=length(found.drum_m or 0.0), thick=length(found.rope_m or 0.0)))
    if not isinstance(found.tail_pull_n, Absent):
        lines.append(step("tail"))
    return tuple(lines)


def draw(found: Found, writer: Writer) -> Figure:
    """The load on its ramp."""
    view = RampView(found.slope_deg, found.start_pull_n, found.hold_back_n, found.surface is None)
    caption = writer.text("figure", slope=Number(found.slope_deg, 3))
    return ramp_figure(view, caption, writer)


_WINCH = {"hauled_by": ("winch",)}
_SLIDES, _ROLLS = {"way": ("slides",)}, {"way": ("rollers",)}

WORKSHEET = Worksheet(
    name="move-it",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=500_000), sense="demand"),
        QuantityInput("slope", dimension="angle", bounds=Bounds(at_least=0, at_most=30), sense="demand"),
        ChoiceInput("way", choices=("slides", "rollers")),
        ChoiceInput("pair", choices=tuple(SURFACES), required=False, shown_when=_SLIDES),
        QuantityInput(
            "level_pull",
            dimension="force",
            bounds=Bounds(above=0, at_most=500_000),
            required=False,
            shown_when=_ROLLS,
            sense="demand",
        ),
        CountInput("parts", bounds=Bounds(at_least=1, at_most=8)),
        CountInput("sheaves", bounds=Bounds(at_least=0, at_most=10), sense="demand"),
        QuantityInput(
            "rating",
            dimension="weight",
            bounds=Bounds(above=0, at_most=1_000_000),
            required=False,
            sense="capacity",
        ),
        ChoiceInput("hauled_by", choices=("winch", "other")),
        QuantityInput(
            "winch_rating",
            dimension="force",
            bounds=Bounds(above=0, at_most=500_000),
            required=False,
            shown_when=_WINCH,
            sense="capacity",
        ),
        QuantityInput(
            "drum", dimension="length", bounds=Bounds(above=0, at_most=100), required=False, shown_when=_WINCH
        ),
        QuantityInput(
            "rope", dimension="length", bounds=Bounds(above=0, at_most=3), required=False, shown_when=_WINCH
        ),
        CountInput(
            "layer",
            bounds=Bounds(at_least=1, at_most=12),
            default="12",
            required=False,
            shown_when=_WINCH,
            sense="demand",
        ),
        NumberInput("turns", bounds=Bounds(at_least=0, at_most=10), required=False),
        NumberInput("post_friction", bounds=Bounds(at_least=0.05, at_most=0.4), required=False),
    ),
    results=(
        Result("start_pull", "force", "demand"),
        Result("keep_pull", "force", "demand"),
        Result("hold_back", "force", "demand"),
        Result("slides_at", "angle", "capacity"),
        Result("hauling_pull", "force", "demand"),
        Result("anchor_pull", "force", "demand"),
        Result("rating_share", "fraction", "demand"),
        Result("winch_has", "force", "capacity"),
        Result("winch_share", "fraction", "demand"),
        Result("tail_pull", "force", "demand"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="start_pull",
    rates=False,
    example={
        "load": "1,800 lb",
        "slope": "6°",
        "way": "slides",
        "pair": "wood-on-wood",
        "parts": "3",
        "sheaves": "3",
        "rating": "3,500 lb",
        "hauled_by": "winch",
        "winch_rating": "2,000 lb",
        "drum": "2-1/2 in",
        "rope": "1/4 in",
        "layer": "3",
        "turns": "2",
        "post_friction": "0.15",
    },
    citations=(
        Citation("openstax-university-physics", "Table 6.1 and 6.2"),
        Citation("eu-cargo-securing", "8.2"),
        Citation("navedtra-14043", "mechanical advantage"),
        Citation("baker-haynes", "chapter 9"),
        Citation("tm-9-2320-279-10-2", "Table 2-7"),
    ),
)
