"""Which part of my own frame gives way first?

A beam on A-frames, on posts or on walls, with a hoist that never pulls quite plumb: each part held against what it takes
(calc.lifting.frame_checks). A study aid that rates nothing: "not more than" is a bound from above.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Row, Step, Worksheet, step
from calc.figures.frames import FrameView, LitPart, frame_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, NumberInput, QuantityInput
from calc.lifting.beam_buckling import i_shape
from calc.lifting.beams import SECTION_FORMS, Beam, Section, SectionName, book_section
from calc.lifting.frame_checks import (
    FREE_STANDING,
    KINDS,
    ON_POSTS,
    Check,
    CheckName,
    Frame,
    Joint,
    Kind,
    Stand,
    check_row,
    checks_of,
    foot_thrust_n,
    legs_k,
    not_more_than_kg,
    weakest_of,
)
from calc.lifting.frame_strength import (
    Post,
    bolts_hold_n,
    book_contradicts,
    cone_holds_n,
    fillet_holds_n,
    tips_at_deg,
)
from calc.lifting.overhead_beam import (
    MOST_BY_FILLETS,
    STEEL_KG_PER_M3,
    OverheadBeam,
    box_is_thin,
    free_length_m,
    section_area_m2,
    tube_is_thin,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, stop, unknown
from calc.words.facts import Absent, Message, Number, Quantity, absent, length, message, share
from calc.words.writer import Writer

STEEL_MODULUS_PA = 200e9
"""Modulus of steel [Pa], 29,000 ksi in US tables (from memory of the AISC Manual)."""

LIMP = 450.0
"""Span over sag below which a trolley rolls by itself (ANSI MH27.1 asks span/450, from memory)."""

COMMON_FACTOR = 3.0
"""Design factor of common lifting (ASME BTH-1, category B, from memory)."""

BOOK_AGREES = 0.03
"""Part by which depth and the two section moduli of a book may miss each other [-]: books round to three figures."""

WIDEST_FLANGE = 1.2
"""Flange width over depth of an I-beam, at most [-]: that of the widest rolled ones is 1.1 (European tables, from memory)."""

THICKEST_WEB = 0.5
"""Web over flange width of an I-beam, at most [-]: rolled ones have 0.2 at most (from memory); more leaves a trolley no flange."""

BOOK_ROUNDS = 0.98
"""Part of the plates' twist constant under which a book's contradicts the sizes [-]: fillets only add, three figures round."""

SECTIONS: tuple[SectionName, ...] = ("i-beam", "rectangle", "box", "tube", "known")

LIT: dict[CheckName, LitPart] = {
    "bends": "beam",
    "rolls": "beam",
    "sideways": "beam",
    "shears": "beam",
    "flange": "beam",
    "web": "beam",
    "posts": "posts",
    "feet": "feet",
    "tips": "feet",
    "wheels": "feet",
    "joint": "joint",
}


def _kind(given: Given) -> Kind:
    return next(kind for kind in KINDS if kind == given.text("kind"))


def _need(given: Given, *names: str) -> tuple[float, ...]:
    """Sizes that this section, post or joint needs; the first that is missing is asked for."""
    for name in names:
        if not given.has(name):
            raise given.refuse(name, "size-missing")
    return tuple(given.si(name) for name in names)


def _beam_section(given: Given) -> tuple[SectionName, tuple[float, ...], Section, float]:
    """Kind, sizes, section and weight by its length [kg/m] of the beam."""
    name = next(one for one in SECTIONS if one == given.text("section"))
    if name == "known":
        return name, (), _book_section(given), _need(given, "own_weight")[0]
    sizes = _need(given, *SECTION_FORMS[name].needs)
    _refuse_misfits(given, name, sizes)
    own_kg_per_m = section_area_m2(name, *sizes) * STEEL_KG_PER_M3
    return name, sizes, SECTION_FORMS[name].of(*sizes), own_kg_per_m


def _book_section(given: Given) -> Section:
    """A section of a book by its second moment and the moduli of both sides, which must make up its depth between them."""
    second, top, bottom, depth = _need(given, "second_moment", "modulus_top", "modulus_bottom", "depth")
    if abs(second / top + second / bottom - depth) > BOOK_AGREES * depth:
        made = length(second / top + second / bottom)
        raise given.refuse("modulus_top", "moduli-miss-the-depth", made=made, depth=length(depth))
    return book_section(second, second / min(top, bottom))


def _book_twist_m4(given: Given, sizes: tuple[float, ...]) -> float | None:
    """Twist constant of a section book [m4], None where none is given; it must fit the plates that the sizes make."""
    twist = given.maybe("twist_constant") if given.text("section") == "i-beam" else None
    if twist is None:
        return None
    depth, width, web, flange = sizes
    plates = i_shape(depth, width, web, flange).twist_m4
    if not BOOK_ROUNDS * plates <= twist <= MOST_BY_FILLETS * plates:
        raise given.refuse(
            "twist_constant", "twist-misses-the-sizes", plates=Quantity(plates, "second_moment")
        )
    return twist


def _refuse_misfits(given: Given, name: SectionName, sizes: tuple[float, ...]) -> None:
    if name in ("box", "tube") and sizes[-1] > min(sizes[:-1]) / 2:
        raise given.refuse("wall", "wall-too-thick")
    if name == "i-beam":
        depth, width, web, flange = sizes
        if width > WIDEST_FLANGE * depth:
            raise given.refuse("flange_width", "lies-on-its-side")
        if web > THICKEST_WEB * width:
            raise given.refuse("web_thickness", "web-too-wide")
        if 2 * flange >= depth:
            raise given.refuse("flange_thickness", "flange-too-thick")


def _place(given: Given, kind: Kind) -> float | None:
    """Where the load hangs [m]; None: anywhere."""
    place, span = given.maybe("position"), given.si("span")
    if place is not None and (place > span or (place == span and kind != "bracket")):
        raise given.refuse("position", "off-the-span")
    return place


def _free_m(given: Given, name: SectionName, kind: Kind) -> float | Absent:
    span, held = given.si("span"), given.maybe("held_every")
    if held is not None and held > span:
        raise given.refuse("held_every", "over-the-span")
    if name in ("i-beam", "rectangle") and given.text("ends_hold") != "held":
        return absent("ends-not-held")
    return free_length_m(span, held, given.text("hung_from") != "on-top", kind == "bracket")


def _post(given: Given, kind: Kind, length_m: float, beam: OverheadBeam) -> tuple[Post, bool]:
    """One post or leg, and whether its wall is so thin that it buckles by itself."""
    ratio = beam.modulus_pa / beam.yield_pa
    form = given.text("post_section")
    if form == "book":
        area, radius, modulus = _need(given, "post_area", "post_radius", "post_modulus")
        second, thin = area * radius**2, False
        if book_contradicts(area, radius, modulus):
            raise given.refuse("post_modulus", "book-contradicts")
    else:
        width, wall = _need(given, "post_width", "post_wall")
        if wall > width / 2:
            raise given.refuse("post_wall", "wall-too-thick")
        sizes = (width, width, wall) if form == "square-tube" else (width, wall)
        name: SectionName = "box" if form == "square-tube" else "tube"
        area, second = section_area_m2(name, *sizes), SECTION_FORMS[name].of(*sizes).second_moment_m4
        modulus = second / (width / 2)
        thin = box_is_thin(width, wall, ratio) if name == "box" else tube_is_thin(width, wall, ratio)
    k = legs_k(kind, second, length_m, beam.section.second_moment_m4, given.si("span"))
    return Post(area, second, modulus, k * length_m), thin


def _stand(given: Given, kind: Kind, beam: OverheadBeam, own_kg_per_m: float) -> tuple[Stand | None, bool]:
    """What the beam stands on, None on walls; and whether its posts are too thin to be checked."""
    if kind not in ON_POSTS:
        return None, False
    (height,) = _need(given, "height")
    apart, frame_kg = _need(given, "feet_apart", "frame_weight") if kind in FREE_STANDING else (0.0, 0.0)
    if apart > 2 * height:
        raise given.refuse("feet_apart", "feet-too-wide")
    length_m = math.hypot(height, apart / 2) if kind == "a-frames" else height
    post, thin = _post(given, kind, length_m, beam)
    wheel_n = None
    if kind in FREE_STANDING and given.text("stands_on") == "wheels":
        (wheel_n,) = _need(given, "wheel_rating")
    tied = given.text("feet_tied") == "tied"
    if kind == "a-frames" and given.text("stands_on") != "feet" and not tied:
        raise given.refuse("feet_tied", "wheels-roll-apart")
    post_kg = post.area_m2 * length_m * STEEL_KG_PER_M3
    legs, span = 4 if kind == "a-frames" else 2, given.si("span")
    parts_kg = own_kg_per_m * span + legs * post_kg
    upright = post.second_moment_m4 * legs / 2 / length_m
    ratio = beam.section.second_moment_m4 / span / upright
    return Stand(height, post, post_kg, frame_kg, apart, tied, wheel_n, parts_kg, ratio), thin


def _joint(given: Given, kind: Kind) -> Joint | None:
    by = given.text("fastened_by")
    if by == "not-checked":
        return None
    if by == "anchors" and kind in FREE_STANDING:
        raise given.refuse("fastened_by", "stands-free")
    needs_arm = kind == "bracket" or kind in ON_POSTS
    arm_m = _need(given, "plate_height")[0] if needs_arm else 0.0
    if by == "weld":
        return Joint("weld", fillet_holds_n(*_need(given, "weld_strength", "weld_leg", "weld_length")), arm_m)
    if by == "bolts":
        diameter, count = _need(given, "bolt_diameter", "fastener_count")
        return Joint("bolts", bolts_hold_n(given.text("bolt_grade"), diameter, round(count)), arm_m)
    concrete, deep, count = _need(given, "concrete_strength", "embedment", "fastener_count")
    return Joint("anchors", cone_holds_n(concrete, deep, round(count)), arm_m)


@dataclass(frozen=True)
class Found:
    """What the load asks of each part of the frame."""

    frame: Frame
    load_kg: float
    every_check: tuple[Check, ...]
    cannot_tell: Absent | None
    folds: bool
    wheels_unmarked: bool
    weakest: Message | Absent
    weakest_share: float | Absent
    not_more_than_kg: float | Absent
    checks: tuple[Row, ...]
    deflection_m: float | Absent
    span_over_deflection: float | Absent
    moment_nm: float
    end_reaction_n: float
    foot_thrust_n: float | Absent
    tips_at_deg: float | Absent
    beam_weight_kg: float


def _frame(given: Given) -> tuple[Frame, bool]:
    """The frame as given, and whether its posts are too thin."""
    kind = _kind(given)
    name, sizes, section, own_kg_per_m = _beam_section(given)
    hung_from = given.text("hung_from")
    if hung_from == "trolley" and name != "i-beam":
        raise given.refuse("hung_from", "trolley-needs-a-flange")
    beam = OverheadBeam(
        name=name,
        sizes=sizes,
        section=section,
        least_modulus_m3=section.second_moment_m4 / section.outer_fibre_m,
        free_m=_free_m(given, name, kind),
        yield_pa=given.si("yield_strength"),
        modulus_pa=STEEL_MODULUS_PA,
        book_twist_m4=_book_twist_m4(given, sizes),
    )
    stand, thin = _stand(given, kind, beam, own_kg_per_m)
    frame = Frame(
        kind=kind,
        beam=beam,
        span_m=given.si("span"),
        place_m=_place(given, kind),
        own_kg_per_m=own_kg_per_m,
        hoist_kg=given.si("hoist_weight"),
        pull_rad=math.radians(given.si("side_pull")),
        flange_m=sizes[3] if name == "i-beam" and hung_from != "on-top" else None,
        web_m=sizes[2] if name == "i-beam" else 0.0,
        flange_width_m=sizes[1] if name == "i-beam" else 0.0,
        factor=given.si("design_factor"),
        stand=stand,
        joint=_joint(given, kind),
    )
    return frame, thin


def find(given: Given) -> Found:
    """The part used of every part of the frame; see WORKSHEET for inputs and results."""
    frame, thin_posts = _frame(given)
    load_kg = given.si("load")
    checks = absent("thin-posts") if thin_posts else checks_of(frame, load_kg)
    folds = frame.kind in FREE_STANDING and given.text("joint") != "stiff"
    unmarked = frame.kind in FREE_STANDING and given.text("stands_on") == "wheels-unmarked"
    no_leave = folds or unmarked
    first = checks if isinstance(checks, Absent) else weakest_of(checks)
    sag = _sag_m(frame, load_kg)
    return Found(
        frame=frame,
        load_kg=load_kg,
        every_check=() if isinstance(checks, Absent) else checks,
        cannot_tell=checks if isinstance(checks, Absent) else None,
        folds=folds,
        wheels_unmarked=unmarked,
        weakest=first if isinstance(first, Absent) else message(f"check-{first.name}"),
        weakest_share=_weakest_share(frame, first),
        not_more_than_kg=absent("thin-posts") if thin_posts else not_more_than_kg(frame),
        checks=()
        if isinstance(checks, Absent) or no_leave
        else tuple(check_row(one.name, one.asked, one.takes, one.used) for one in checks),
        deflection_m=sag,
        span_over_deflection=sag if isinstance(sag, Absent) else frame.span_m / sag,
        moment_nm=frame.moment_nm(load_kg),
        end_reaction_n=frame.end_n(load_kg),
        foot_thrust_n=_thrust(frame, load_kg),
        tips_at_deg=_tips(frame, load_kg),
        beam_weight_kg=frame.own_kg_per_m * frame.span_m,
    )


def _weakest_share(frame: Frame, first: Check | Absent) -> float | Absent:
    """The part used of the weakest point; none where the joint, which nobody checked, may be weaker."""
    if isinstance(first, Absent):
        return first
    return absent("joint-not-checked") if frame.joint is None else first.used


def _sag_m(frame: Frame, load_kg: float) -> float | Absent:
    """Greatest sag [m], without the allowance for starting; none past yielding."""
    if exceeds(frame.moment_nm(load_kg), frame.beam.yields_nm()):
        return absent("past-yield")
    wall = frame.kind == "bracket"
    place = frame.place_m if frame.place_m is not None else frame.span_m * (1.0 if wall else 0.5)
    beam = Beam(
        span_m=frame.span_m,
        ends="cantilever" if wall else "simple",
        load_n=(load_kg + frame.hoist_kg) * STANDARD_GRAVITY_M_PER_S2,
        position_m=place,
        even_n_per_m=frame.own_n_per_m,
        stiffness_nm2=STEEL_MODULUS_PA * frame.beam.section.second_moment_m4,
    )
    sag = beam.greatest_sag()[1]
    return absent("past-small-sag") if exceeds(10 * sag, frame.span_m) else sag


def _thrust(frame: Frame, load_kg: float) -> float | Absent:
    if frame.kind != "a-frames" or frame.stand is None:
        return absent("no-leaning-legs")
    return foot_thrust_n(frame, frame.stand, load_kg)


def _tips(frame: Frame, load_kg: float) -> float | Absent:
    stand = frame.stand
    if frame.kind not in FREE_STANDING or stand is None:
        return absent("held-by-the-building")
    return tips_at_deg(load_kg + frame.hoist_kg, stand.steady_kg / 2, stand.feet_apart_m, stand.height_m)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid rates nothing; what is too much is a stop."""
    frame = found.frame
    reasons: list[Reason] = []
    if found.folds:
        reasons.append(stop("folds"))
    if found.cannot_tell is not None:
        reasons.append(Reason("cannot-tell", "unknown", {"why": found.cannot_tell}, large="moment"))
    if found.wheels_unmarked:
        reasons.append(unknown("wheels-unmarked"))
    if any(exceeds(one.used, 1.0) for one in found.every_check):
        reasons.append(over("over-the-weakest"))
    reasons.append(note("unrated", "mandatory"))
    if frame.joint is None:
        reasons.append(unknown("joint-not-checked"))
    else:
        reasons.append(note("joint-upper-bound", "warning"))
    reasons.extend(_standing_reasons(frame))
    limp = found.span_over_deflection
    if isinstance(limp, Absent) or limp < LIMP:
        reasons.append(caution("limp"))
    if frame.factor < COMMON_FACTOR:
        reasons.append(caution("small-factor"))
    if frame.flange_m is not None:
        reasons.append(note("four-wheels", "warning"))
    reasons.append(note("starting-adds"))
    reasons.append(note("not-counted"))
    return tuple(reasons)


def _standing_reasons(frame: Frame) -> list[Reason]:
    stand = frame.stand
    if stand is None:
        return [note("the-wall-not-checked", "warning")]
    if frame.kind not in FREE_STANDING:
        return [note("the-wall-not-checked", "warning"), note("top-and-foot", "warning")]
    reasons = [note("tips-along", "warning")]
    if frame.kind == "gantry":
        reasons.append(note("sole-not-checked", "warning"))
    if stand.misfits:
        reasons.append(caution("weight-misfits", parts=Quantity(stand.parts_kg, "weight")))
    if frame.kind == "a-frames" and not stand.tied:
        reasons.append(caution("tie-the-feet"))
    if stand.wheel_n is not None:
        reasons.append(note("never-roll-loaded", "prohibition"))
    return reasons


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working: what hangs, how it bends, then each check."""
    frame = found.frame
    hangs = Quantity(frame.hangs_n(found.load_kg), "force", "demand")
    lines = [
        step("hangs", hangs=hangs),
        step(
            "bending",
            hangs=hangs,
            arm=length(frame.arm_m()),
            own=Quantity(frame.own_kg_per_m, "weight_per_length", "demand"),
        ),
    ]
    for one in found.every_check:
        lines.append(step(f"{one.name}", asked=one.asked, takes=one.takes, used=share(one.used)))
    if not isinstance(found.not_more_than_kg, Absent):
        lines.append(step("most", factor=Number(frame.factor_used, 3)))
    return tuple(lines)


def draw(found: Found, writer: Writer) -> Figure:
    """The frame to scale, the weakest part lit."""
    frame, stand = found.frame, found.frame.stand
    place = frame.place_m if frame.place_m is not None else frame.span_m / 2
    first = weakest_of(found.every_check) if found.every_check else None
    view = FrameView(
        span_m=frame.span_m,
        place_m=frame.span_m if frame.kind == "bracket" and frame.place_m is None else place,
        height_m=stand.height_m if stand else 0.0,
        feet_apart_m=stand.feet_apart_m if stand else 0.0,
        one_wall=frame.kind == "bracket",
        leaning_legs=frame.kind == "a-frames",
        load_n=frame.hangs_n(found.load_kg),
        lit=LIT[first.name] if first else "none",
        over=first is not None and exceeds(first.used, 1.0),
    )
    weakest = writer.text(f"check-{first.name}") if first else ""
    caption = writer.text("figure", span=length(frame.span_m), weakest=found.weakest)
    return frame_figure(view, caption, weakest, writer)


_ALONG = Bounds(above=0, at_most=200)
_SIZE = Bounds(above=0, at_most=100)
_POSTS = {"kind": ON_POSTS}
_FREE = {"kind": FREE_STANDING}
_BOOK = {"section": ("known",)}
_ROLLS = {"section": ("i-beam", "rectangle")}


def _length(name: str, shown: Mapping[str, tuple[str, ...]], bounds: Bounds = _SIZE) -> QuantityInput:
    return QuantityInput(name, dimension="length", bounds=bounds, required=False, shown_when=shown)


def _feet(name: str, shown: Mapping[str, tuple[str, ...]]) -> QuantityInput:
    return QuantityInput(
        name, dimension="length", unit="ft", unit_si="m", bounds=_ALONG, required=False, shown_when=shown
    )


def _modulus(name: str, shown: Mapping[str, tuple[str, ...]]) -> QuantityInput:
    bounds = Bounds(above=0, at_most=100_000)
    return QuantityInput(
        name, dimension="volume", unit="in3", unit_si="cm3", bounds=bounds, required=False, shown_when=shown
    )


def _beam_size(name: str) -> QuantityInput:
    used = tuple(one for one in SECTIONS if name in SECTION_FORMS[one].needs and one != "known")
    return _length(name, {"section": (*used, "known") if name == "depth" else used})


_LOAD = Bounds(above=0, at_most=200_000)

WORKSHEET = Worksheet(
    name="lifting-frame",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=_LOAD, sense="demand"),
        QuantityInput(
            "hoist_weight", dimension="weight", bounds=Bounds(at_least=0, at_most=20_000), sense="demand"
        ),
        QuantityInput(
            "side_pull",
            dimension="angle",
            bounds=Bounds(at_least=3, at_most=45),
            sense="demand",
        ),
        ChoiceInput("kind", choices=KINDS),
        QuantityInput("span", dimension="length", unit="ft", unit_si="m", bounds=_ALONG),
        _feet("position", {}),
        ChoiceInput("hung_from", choices=("trolley", "below", "on-top")),
        ChoiceInput("section", choices=SECTIONS),
        *(
            _beam_size(name)
            for name in (
                "depth",
                "width",
                "diameter",
                "wall",
                "flange_width",
                "web_thickness",
                "flange_thickness",
            )
        ),
        QuantityInput(
            "twist_constant",
            dimension="second_moment",
            bounds=Bounds(above=0, at_most=100_000),
            required=False,
            shown_when={"section": ("i-beam",)},
            sense="capacity",
        ),
        QuantityInput(
            "second_moment",
            dimension="second_moment",
            bounds=Bounds(above=0, at_most=1_000_000),
            required=False,
            shown_when=_BOOK,
        ),
        _modulus("modulus_top", _BOOK),
        _modulus("modulus_bottom", _BOOK),
        QuantityInput(
            "own_weight",
            dimension="weight_per_length",
            bounds=Bounds(above=0, at_most=10_000),
            required=False,
            shown_when=_BOOK,
        ),
        ChoiceInput("ends_hold", choices=("held", "only-resting"), required=False, shown_when=_ROLLS),
        _feet("held_every", _ROLLS),
        QuantityInput(
            "yield_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(at_least=20_000, at_most=65_000),
        ),
        NumberInput("design_factor", bounds=Bounds(at_least=1.67, at_most=10), sense="demand"),
        _feet("height", _POSTS),
        ChoiceInput("joint", choices=("stiff", "loose"), required=False, shown_when=_FREE),
        ChoiceInput(
            "post_section",
            choices=("square-tube", "pipe", "book"),
            default="square-tube",
            required=False,
            shown_when=_POSTS,
        ),
        _length("post_width", {"kind": ON_POSTS, "post_section": ("square-tube", "pipe")}),
        _length("post_wall", {"kind": ON_POSTS, "post_section": ("square-tube", "pipe")}),
        QuantityInput(
            "post_area",
            dimension="area",
            unit="in2",
            unit_si="cm2",
            bounds=Bounds(above=0, at_most=1_000),
            required=False,
            shown_when={"kind": ON_POSTS, "post_section": ("book",)},
        ),
        _length("post_radius", {"kind": ON_POSTS, "post_section": ("book",)}),
        _modulus("post_modulus", {"kind": ON_POSTS, "post_section": ("book",)}),
        _feet("feet_apart", _FREE),
        ChoiceInput(
            "feet_tied", choices=("tied", "loose"), required=False, shown_when={"kind": ("a-frames",)}
        ),
        ChoiceInput(
            "stands_on",
            choices=("feet", "wheels", "wheels-unmarked"),
            default="wheels-unmarked",
            required=False,
            shown_when=_FREE,
        ),
        QuantityInput(
            "wheel_rating",
            dimension="force",
            bounds=Bounds(above=0, at_most=100_000),
            required=False,
            shown_when={"kind": FREE_STANDING, "stands_on": ("wheels",)},
            sense="capacity",
        ),
        QuantityInput(
            "frame_weight",
            dimension="weight",
            bounds=Bounds(above=0, at_most=50_000),
            required=False,
            shown_when=_FREE,
        ),
        ChoiceInput(
            "fastened_by", choices=("not-checked", "bolts", "weld", "anchors"), default="not-checked"
        ),
        ChoiceInput(
            "bolt_grade",
            choices=("a307", "a325"),
            default="a307",
            required=False,
            shown_when={"fastened_by": ("bolts",)},
        ),
        _length("bolt_diameter", {"fastened_by": ("bolts",)}, Bounds(above=0, at_most=3)),
        CountInput(
            "fastener_count",
            bounds=Bounds(at_least=1, at_most=40),
            required=False,
            shown_when={"fastened_by": ("bolts", "anchors")},
        ),
        _length("weld_leg", {"fastened_by": ("weld",)}, Bounds(above=0, at_most=2)),
        _length("weld_length", {"fastened_by": ("weld",)}),
        QuantityInput(
            "weld_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(at_least=10_000, at_most=150_000),
            required=False,
            shown_when={"fastened_by": ("weld",)},
        ),
        _length("embedment", {"fastened_by": ("anchors",)}, Bounds(above=0, at_most=20)),
        QuantityInput(
            "concrete_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(at_least=1_500, at_most=8_000),
            required=False,
            shown_when={"fastened_by": ("anchors",)},
        ),
        _length(
            "plate_height",
            {"kind": (*ON_POSTS, "bracket"), "fastened_by": ("bolts", "weld", "anchors")},
        ),
    ),
    results=(
        Result("weakest"),
        Result("weakest_share", "fraction", "demand"),
        Result("not_more_than", "weight", "capacity"),
        Result("checks", columns=("check", "asked", "takes", "used")),
        Result("deflection", "length", "demand"),
        Result("span_over_deflection", sense="capacity"),
        Result("moment", "torque", "demand"),
        Result("end_reaction", "force", "demand"),
        Result("foot_thrust", "force", "demand"),
        Result("tips_at", "angle", "capacity"),
        Result("beam_weight", "weight"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="weakest_share",
    rates=False,
    example={
        "load": "900 lb",
        "hoist_weight": "60 lb",
        "side_pull": "3°",
        "kind": "a-frames",
        "span": "10 ft",
        "hung_from": "trolley",
        "section": "i-beam",
        "depth": "8 in",
        "flange_width": "5-1/4 in",
        "web_thickness": "1/4 in",
        "flange_thickness": "5/16 in",
        "ends_hold": "held",
        "yield_strength": "36,000 psi",
        "design_factor": "3",
        "height": "9 ft",
        "joint": "stiff",
        "post_section": "square-tube",
        "post_width": "3 in",
        "post_wall": "1/4 in",
        "feet_apart": "5 ft",
        "feet_tied": "tied",
        "stands_on": "feet",
        "frame_weight": "520 lb",
        "fastened_by": "bolts",
        "bolt_grade": "a325",
        "bolt_diameter": "5/8 in",
        "fastener_count": "4",
        "plate_height": "6 in",
    },
    citations=(
        Citation("aisc-360", "F2, F3, F11, E3, G2, H1 and J3; F3 and H1 from memory"),
        Citation("gere", "bending and shear of beams"),
    ),
)
