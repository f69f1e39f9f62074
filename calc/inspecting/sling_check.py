"""Is this wire rope or web sling still fit?

Wire rope: broken wires, worn outer wires, lost diameter, shape, heat, end fittings. Synthetic web: cuts, heat, chemicals,
stitching, tag. Limits: 29 CFR 1910.184(f)(5) and (i)(9), Michigan R 408.40834, DGUV 209-061 and others, in
tables/wire-rope-limits. Chain: see chain-check.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.inspection import rope_figure, web_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput
from calc.inspecting.inspection import (
    CRITERIA_RESULT,
    DECIDES_RESULT,
    NEXT_RESULT,
    PART_INPUT,
    RECORD_INPUTS,
    RECORD_RESULTS,
    WORDS,
    Inspected,
    Limit,
    Measure,
    Question,
    by_rules,
    cites,
    inspect,
    inspection_citations,
    inspection_steps,
    judge_inspected,
    limit_of,
    limits,
    no_is_bad,
    question,
    rating_if_sound,
    rule,
    strictest_first,
    yes_is_bad,
)
from calc.inspecting.measuring import lost
from calc.quantities import from_si, plain_number, to_si
from calc.reasons import Reason, note
from calc.tables import Row as Claim
from calc.tables import table, value_si
from calc.words.facts import Absent, Message, absent, message, weight
from calc.words.writer import Writer

WIRE, WEB = ("wire-rope",), ("web",)
_GEAR = {"wire-rope": "wire_rope_sling", "web": "web_sling"}
_ROPE_SWELLS_BY = 0.08
"""A new rope runs over its nominal size by up to this share [-]."""
_DIAMETER_ROWS = (
    ("rope_to_5_16_in", "3/8"),
    ("rope_3_8_to_1_2_in", "9/16"),
    ("rope_9_16_to_3_4_in", "7/8"),
    ("rope_7_8_to_1_1_8_in", "1-1/4"),
)
"""Each row of lost diameter, and the rope [in] from which the next one holds: a rope between two rows, as a metric one is,
takes the stricter."""
_LARGEST_ROPES = "rope_1_1_4_to_1_1_2_in"
"""The row of the largest ropes; one that is larger still takes it too, which is stricter than none."""
_HEAT_ROWS = {
    ("wire-rope", "fibre"): "wire_rope_sling_fibre_core",
    ("wire-rope", "steel"): "wire_rope_sling_steel_core",
    ("web", "nylon-or-polyester"): "web_sling_nylon_or_polyester",
    ("web", "polypropylene"): "web_sling_polypropylene",
}


def _kind(*kinds: str) -> Callable[[Given], bool]:
    return lambda given: given.text("kind") in kinds


_is_wire, _is_web = _kind(*WIRE), _kind(*WEB)


def _limits(quantity: str, *items: str, dimension: str = "") -> Callable[[Given], tuple[Limit, ...]]:
    return lambda _given: limits("wire-rope-limits", items, quantity, dimension)


def _counted(name: str) -> Callable[[Given], float | None]:
    return lambda given: given.maybe(name)


_IN_A_LAY = ("broken_in_lay", "broken_in_strand")


def _in_strand(given: Given) -> float | None:
    """Broken wires in the worst strand, of those in the lay."""
    lay, strand = given.maybe("broken_in_lay"), given.maybe("broken_in_strand")
    if lay is not None and strand is not None and strand > lay:
        raise given.refuse("broken_in_strand", "more-in-strand-than-in-lay")
    return strand


def _in_eight_diameters(given: Given) -> float | None:
    """Broken wires over all the wires of the rope [-]; none broken is none of any number. A lay is no longer than eight
    diameters (about six to seven; from memory), so that the worst eight hold what the worst lay holds.
    """
    broken, wires = given.maybe("broken_in_eight_diameters"), given.maybe("wires_in_rope")
    in_lay = max(given.maybe(name) or 0.0 for name in _IN_A_LAY)
    if broken is not None and broken < in_lay:
        raise given.refuse("broken_in_eight_diameters", "fewer-than-in-a-lay")
    if not broken:
        return broken
    if wires is None:
        return None
    if broken > wires:
        raise given.refuse("broken_in_eight_diameters", "more-than-all-wires")
    return broken / wires


def _diameter_lost(given: Given) -> float | None:
    return lost(given, "diameter_new", "diameter_now", _ROPE_SWELLS_BY) if _is_wire(given) else None


def diameter_limits(new_m: float | None) -> tuple[Limit, ...]:
    """Losses of diameter [-] for a rope of this size when new [m], strictest first; None: those that hold for any size."""
    found = [
        *limits("wire-rope-limits", ("ship_rope",), "diameter_loss_with_lay_stretch", "fraction"),
        *limits("wire-rope-limits", ("ship_rope",), "diameter_loss_even", "fraction"),
    ]
    if new_m is None:
        return strictest_first(found)
    new_in = from_si(new_m, "in", "length")
    item = next(
        (item for item, to_in in _DIAMETER_ROWS if new_in < plain_number(to_in) - 1e-6), _LARGEST_ROPES
    )
    row = limit_of(table("wire-rope-limits").one(item=item, quantity="diameter_loss"), "length")
    found.append(Limit(row.value_si / new_m, row.printed, row.sense, row.citations))
    return strictest_first(found)


def _claims_of_heat(given: Given) -> tuple[Claim, ...]:
    """What is printed of heat and cold for a sling of this kind and material."""
    material = given.text("core") if _is_wire(given) else given.text("material")
    return table("sling-temperature-limits").where(item=_HEAT_ROWS[(given.text("kind"), material)])


def _heat_limits(given: Given) -> tuple[Limit, ...]:
    """How hot a sling of this kind and material may get; over it, it is out."""
    claims = _claims_of_heat(given)
    found = (limit_of(claim, "temperature") for claim in claims if claim["quantity"] != "use_above")
    return tuple(Limit(one.value_si, one.printed, "out_over", one.citations) for one in found)


def _cut_limits(given: Given) -> tuple[Limit, ...]:
    """Any cut is out by the law here; the looser European limit stands beside it."""
    none = Limit(0.0, message("no-cut-at-all"), "out_at", (rule("web_sling", "any-of"),))
    return (none, *_limits("cut_or_broken_yarn", "web_sling", dimension="fraction")(given))


def _hottest(given: Given) -> float | None:
    """How hot it gets [deg C]; refused where even that is colder than the sling may be used."""
    hottest = given.maybe("hottest")
    for claim in _claims_of_heat(given):
        if claim["quantity"] == "use_above" and hottest is not None:
            coldest = limit_of(claim, "temperature")
            if hottest < coldest.value_si - 1e-9:
                raise given.refuse("hottest", "colder-than-allowed", coldest=coldest.printed)
    return hottest


_SHAPE, _ANY_OF = by_rules(("wire_rope_sling", "shape")), by_rules(("web_sling", "any-of"))
_REPAIR = Citation("osha-1910-184", "1910.184(c)(2), (c)(13), (i)(8)")

CRITERIA = (
    Measure("broken-in-lay", _limits("broken_wires_in_one_lay", "sling"), _counted("broken_in_lay"), "",
            missing="not-counted", applies=_is_wire),
    Measure("broken-in-strand", _limits("broken_wires_in_one_strand_in_one_lay", "sling"), _in_strand, "",
            missing="not-counted", applies=_is_wire),
    Measure("broken-at-fitting", _limits("broken_wires_at_end_fitting", "standing_rope"), _counted("broken_at_fitting"), "",
            missing="not-counted", applies=_is_wire),
    Measure("outer-wires-worn", _limits("outer_wire_wear", "sling", dimension="fraction"), _counted("outer_wire_wear"),
            "fraction", applies=_is_wire),
    Question("shape", yes_is_bad("shape_damage"), _SHAPE, _is_wire),
    Question("heat-damage", yes_is_bad("heat"), _SHAPE, _is_wire),
    Question("corrosion", yes_is_bad("corrosion"), _SHAPE, _is_wire),
    Question("end-fitting", yes_is_bad("fitting_damage"), _SHAPE, _is_wire),
    Measure("broken-in-eight-diameters",
            _limits("broken_wires_in_eight_diameters", "construction_rope", "ship_rope", dimension="fraction"),
            _in_eight_diameters, "fraction", missing="not-counted", applies=_is_wire),
    Measure("diameter-lost", lambda given: diameter_limits(given.maybe("diameter_new")), _diameter_lost, "fraction",
            applies=_is_wire),
    Measure("cut", _cut_limits, _counted("cut_share"), "fraction", missing="not-looked-at", applies=_is_web),
    Question("melted", yes_is_bad("heat"), _ANY_OF, _is_web),
    Question("chemical", yes_is_bad("chemical"), _ANY_OF, _is_web),
    Question("stitching", yes_is_bad("stitch_damage"), _ANY_OF, _is_web),
    Question("web-fitting", yes_is_bad("fitting_damage"), _ANY_OF, _is_web),
    Measure("too-hot", _heat_limits, _hottest, "temperature", missing="not-said", warns_near=False),
    Question("no-tag", no_is_bad("tag_readable"), cites(_REPAIR)),
    Question("altered", yes_is_bad("altered"), lambda: (_REPAIR, rule("rigging_hardware", "any-of"))),
)  # fmt: skip


@dataclass(frozen=True)
class Found:
    """What looking the sling over came to."""

    inspected: Inspected
    wire: bool
    diameter_new_m: float | None
    worst_share: Message
    diameter_loss: float | Absent
    rating_if_sound_kg: float | Absent


def find(given: Given) -> Found:
    """Look the sling over; see WORKSHEET for inputs and results."""
    _hold_the_tag(given)
    inspected = inspect("sling", (_GEAR[given.text("kind")],), CRITERIA, given)
    thinner = _diameter_lost(given)
    return Found(
        inspected=inspected,
        wire=_is_wire(given),
        diameter_new_m=given.maybe("diameter_new"),
        worst_share=_worst_share(inspected),
        diameter_loss=absent("not-known") if thinner is None else thinner,
        rating_if_sound_kg=rating_if_sound(inspected, given.maybe("rating"), "no-tag-rating-given"),
    )


def _hold_the_tag(given: Given) -> None:
    """Refuse a tag that rates a sling over what its rope breaks at: four legs of a design factor of 5 come to less."""
    new, rating = given.maybe("diameter_new"), given.maybe("rating")
    if not _is_wire(given) or new is None or rating is None:
        return
    if exceeds(rating, breaks := breaks_at_kg(new)):
        raise given.refuse("rating", "over-what-the-rope-breaks-at", breaks=weight(breaks))


def breaks_at_kg(diameter_m: float) -> float:
    """What a rope of the strongest kind of the table breaks at [kg]: that of its size or the next larger one. Beyond the
    table it grows with the square of the diameter, which is more than ropes do.

    >>> round(breaks_at_kg(0.0127)), round(breaks_at_kg(0.0508))
    (12066, 187606)
    """
    rows = table("wire-rope").where(rope="6x19_eips_iwrc", quantity="nominal_breaking_force")
    printed = [(to_si(plain_number(row["size_in"]), "in", "length"), value_si(row, "weight")) for row in rows]
    thick = [breaks for size, breaks in printed if size > diameter_m * (1 - _ROPE_SWELLS_BY)]
    largest, breaks = max(printed)
    return min(thick, default=breaks * (diameter_m / largest) ** 2)


def _worst_share(inspected: Inspected) -> Message:
    """How many of the deciding criteria passed."""
    deciding = [finding for finding in inspected.findings if finding.decides]
    passed = sum(finding.outcome in ("pass", "near") for finding in deciding)
    return message("criteria-passed", passed=passed, all=len(deciding))


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons that every inspection shares, and what is said of ropes or of webs."""
    if found.wire:
        extra = (note("never-bare-handed", "prohibition"), note("broken-inside", "warning"))
    else:
        extra = (note("sunlight", "warning"), note("protect-from-edges", "mandatory"))
    return (*judge_inspected(found.inspected), *extra)


def draw(found: Found, writer: Writer) -> Figure:
    """The sling with where to look."""
    return rope_figure(found.diameter_new_m, writer) if found.wire else web_figure(writer)


def _broken(name: str, most: float, least: float = 0) -> CountInput:
    return CountInput(
        name,
        bounds=Bounds(at_least=least, at_most=most),
        required=False,
        shown_when={"kind": WIRE},
        sense="capacity" if name == "wires_in_rope" else "demand",
    )


def _percent(name: str, kinds: tuple[str, ...]) -> QuantityInput:
    return QuantityInput(
        name,
        dimension="fraction",
        bounds=Bounds(at_least=0, at_most=100),
        required=False,
        shown_when={"kind": kinds},
        sense="demand",
    )


def _diameter(name: str) -> QuantityInput:
    return QuantityInput(
        name,
        dimension="length",
        bounds=Bounds(above=0, at_most=8),
        required=False,
        shown_when={"kind": WIRE},
        sense="capacity" if name == "diameter_now" else "plain",
    )


WORKSHEET = Worksheet(
    name="sling-check",
    inputs=(
        PART_INPUT,
        ChoiceInput("kind", choices=(*WIRE, *WEB)),
        _broken("broken_in_lay", 500),
        _broken("broken_in_strand", 200),
        _broken("broken_at_fitting", 200),
        _broken("broken_in_eight_diameters", 1000),
        _broken("wires_in_rope", 2000, 7),
        _percent("outer_wire_wear", WIRE),
        _diameter("diameter_new"),
        _diameter("diameter_now"),
        ChoiceInput("core", choices=("fibre", "steel"), default="fibre", shown_when={"kind": WIRE}),
        question("shape_damage", kind=WIRE),
        question("corrosion", kind=WIRE),
        _percent("cut_share", WEB),
        question("chemical", kind=WEB),
        question("stitch_damage", kind=WEB),
        ChoiceInput(
            "material",
            choices=("nylon-or-polyester", "polypropylene"),
            default="polypropylene",
            shown_when={"kind": WEB},
        ),
        question("heat"),
        question("fitting_damage"),
        question("tag_readable"),
        question("altered"),
        QuantityInput(
            "hottest",
            dimension="temperature",
            bounds=Bounds(at_least=-459, at_most=3000),
            required=False,
            sense="demand",
        ),
        QuantityInput(
            "rating",
            dimension="weight",
            bounds=Bounds(above=0, at_most=2_000_000),
            required=False,
            sense="capacity",
        ),
        *RECORD_INPUTS,
    ),
    results=(
        DECIDES_RESULT,
        Result("worst_share"),
        Result("diameter_loss", "fraction", "demand"),
        Result("rating_if_sound", "weight", "capacity", digits=4),
        CRITERIA_RESULT,
        *RECORD_RESULTS,
        NEXT_RESULT,
    ),
    find=find,
    judge=judge,
    work=lambda found: inspection_steps(found.inspected),
    draw=draw,
    cite=lambda found: inspection_citations(found.inspected),
    large="decides",
    example={
        "part_name": "mast sling",
        "kind": "wire-rope",
        "broken_in_lay": "3",
        "broken_in_strand": "2",
        "broken_at_fitting": "0",
        "broken_in_eight_diameters": "3",
        "wires_in_rope": "216",
        "outer_wire_wear": "10 %",
        "diameter_new": "1/2 in",
        "diameter_now": "0.493 in",
        "core": "steel",
        "shape_damage": "no",
        "corrosion": "no",
        "heat": "no",
        "fitting_damage": "no",
        "tag_readable": "yes",
        "altered": "no",
        "hottest": "110 °F",
        "rating": "4,400 lb",
        "place": "us-washington",
        "service": "severe",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(Citation("osha-1910-184", "1910.184(f)(5), (i)(9)"),),
    shares=(WORDS,),
)
