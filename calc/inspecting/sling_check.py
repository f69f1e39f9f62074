"""Is this wire rope or web sling still fit?

Wire rope: broken wires, worn outer wires, lost diameter, shape, heat, end fittings. Synthetic web: cuts, heat, chemicals,
stitching, tag. Limits: 29 CFR 1910.184(f)(5) and (i)(9), Michigan R 408.40834, DGUV 209-061 and others, in
tables/wire-rope-limits. Chain: see chain-check.
"""

from __future__ import annotations

from calc.figures.inspection import rope_figure, web_figure
from calc.inspecting.criteria import (
    CRITERIA_RESULT,
    DATE_INPUT,
    DECIDES_RESULT,
    NEXT_RESULT,
    SERVICE_INPUT,
    Finding,
    Limit,
    cautions,
    citations_of,
    headline,
    judge,
    known,
    limit_of,
    limits,
    measured,
    record,
    rule,
    seen,
    steps_of,
    strictness,
    tables,
    unless,
)
from calc.inspecting.hook_check import MEASURING_SLACK, loss
from calc.quantities import show, show_in
from calc.tables import table
from calc.worksheet import Answer, Caution, Choice, Citation, Given, Input, Result, Say, Worksheet

_DIAMETER_ROWS = (
    (5 / 16, "rope_to_5_16_in"), (1 / 2, "rope_3_8_to_1_2_in"), (3 / 4, "rope_9_16_to_3_4_in"),
    (1 + 1 / 8, "rope_7_8_to_1_1_8_in"), (1 + 1 / 2, "rope_1_1_4_to_1_1_2_in"),
)  # fmt: skip
_HEAT_ROWS = {
    ("wire-rope", "fibre"): "wire_rope_sling_fibre_core", ("wire-rope", "steel"): "wire_rope_sling_steel_core",
    ("web", "nylon-or-polyester"): "web_sling_nylon_or_polyester", ("web", "polypropylene"): "web_sling_polypropylene",
}  # fmt: skip
WIRE, WEB = ("wire-rope",), ("web",)


def _percent(share: float | None) -> str:
    return "not measured" if share is None else show_in(share, "fraction", "%", 3, "up")


def _count(given: Given, name: str) -> tuple[float | None, str]:
    if not given.has(name):
        return None, "not counted"
    return float(given.count(name)), f"{given.count(name)}"


def _diameter_loss(given: Given) -> tuple[float, float] | None:
    """Diameter when new [m] and what is lost of it [-]; None where one of the two readings is missing."""
    if not (given.has("diameter_new") and given.has("diameter_now")):
        return None
    new, now = given.si("diameter_new"), given.si("diameter_now")
    if now > new * (1.08 + MEASURING_SLACK):
        raise given.refuse(
            "diameter_now", "is thicker than that rope when new. Measure over the crowns; a swollen place is a birdcage."
        )  # fmt: skip
    return new, loss(new, now)


def _diameter_limits(new_m: float) -> tuple[Limit, ...]:
    """Losses of diameter [-] for a rope of this size, strictest first."""
    found = list(limits("wire-rope-limits", "ship_rope", "diameter_loss_with_lay_stretch", "fraction"))
    found += limits("wire-rope-limits", "ship_rope", "diameter_loss_even", "fraction")
    item = next((name for largest, name in _DIAMETER_ROWS if new_m / 0.0254 <= largest + 1e-6), None)
    if item is not None:
        row = limit_of(table("wire-rope-limits").one(item=item, quantity="diameter_loss"), "length")
        found.append(
            Limit(row.value_si / new_m, row.printed, row.source, row.locator, row.checked, row.sense)
        )
    return tuple(sorted(found, key=strictness))


def _heat(given: Given, material: str) -> tuple[Finding, ...]:
    """The hottest it has been against the limit for its kind and material; left out where it is not known."""
    if not given.has("hottest"):
        return ()
    item = _HEAT_ROWS[(given.text("kind"), material)]
    rows = [
        row for row in table("sling-temperature-limits").where(item=item) if row["quantity"] != "use_above"
    ]
    found = sorted((limit_of(row, "temperature") for row in rows), key=lambda limit: limit.value_si)
    hottest = given.si("hottest")
    return tuple(
        Finding(
            "Hotter than it may get", limit.printed, show(hottest, "temperature"),
            "fail" if hottest > limit.value_si else "pass", (limit.citation,), decides=position == 0,
        )
        for position, limit in enumerate(found)
    )  # fmt: skip


def _wire_findings(given: Given) -> tuple[Finding, ...]:
    lay, lay_words = _count(given, "broken_in_lay")
    strand, strand_words = _count(given, "broken_in_strand")
    if lay is not None and strand is not None and strand > lay:
        raise given.refuse(
            "broken_in_strand", "is more than in the whole lay. Count the worst strand of that lay."
        )
    at_fitting, at_fitting_words = _count(given, "broken_at_fitting")
    worn = given.si("outer_wire_wear") if given.has("outer_wire_wear") else None
    shape = rule("wire_rope_sling", "shape")
    found = (
        *measured("Broken wires in one lay", limits("wire-rope-limits", "sling", "broken_wires_in_one_lay", ""), lay, lay_words),
        *measured("Broken wires in one strand of a lay",
                  limits("wire-rope-limits", "sling", "broken_wires_in_one_strand_in_one_lay", ""), strand, strand_words),
        *measured("Broken wires at an end fitting",
                  limits("wire-rope-limits", "standing_rope", "broken_wires_at_end_fitting", ""), at_fitting, at_fitting_words),
        *measured("Outer wires worn", limits("wire-rope-limits", "sling", "outer_wire_wear", "fraction"), worn, _percent(worn)),
        seen("Kink, crush or birdcage", "none", known(given, "shape_damage"), shape),
        seen("Heat damage", "none", known(given, "heat"), shape),
        seen("Corrosion or pitting", "none", known(given, "corrosion"), shape),
        seen("End fitting cracked, bent or worn", "none", known(given, "fitting_damage"), shape),
    )  # fmt: skip
    if given.has("broken_in_eight_diameters") and given.has("wires_in_rope"):
        share = given.si("broken_in_eight_diameters") / given.si("wires_in_rope")
        if share > 1:
            raise given.refuse("broken_in_eight_diameters", "is more than all the wires of the rope.")
        eight = limits(
            "wire-rope-limits",
            ("construction_rope", "ship_rope"),
            "broken_wires_in_eight_diameters",
            "fraction",
        )
        found += measured("Broken wires in eight diameters", eight, share, _percent(share))
    diameter = _diameter_loss(given)
    if diameter is not None:
        found += measured("Diameter lost", _diameter_limits(diameter[0]), diameter[1], _percent(diameter[1]))
    return (*found, *_heat(given, given.text("core")))


def _web_findings(given: Given) -> tuple[Finding, ...]:
    any_of = rule("web_sling", "any-of")
    cut = given.si("cut_share") if given.has("cut_share") else None
    dguv = limits("wire-rope-limits", "web_sling", "cut_or_broken_yarn", "fraction")
    none = Limit(0.0, "no cut at all", any_of.source, any_of.locator, "text")
    return (
        *measured("Cut, tear, snag or puncture", (none, *dguv), cut, "not looked at" if cut is None else f"{_percent(cut)} of the width"),
        seen("Melted, charred or glazed", "none", known(given, "heat"), any_of),
        seen("Acid or caustic burn, stiff or faded web", "none", known(given, "chemical"), any_of),
        seen("Load stitching broken or worn", "none", known(given, "stitch_damage"), any_of),
        seen("Fitting bent, cracked or worn", "none", known(given, "fitting_damage"), any_of),
        *_heat(given, given.text("material")),
    )  # fmt: skip


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    wire = given.text("kind") == "wire-rope"
    hardware = rule("rigging_hardware", "any-of")
    repair = Citation("osha-1910-184", "1910.184(c)(2), (c)(13), (i)(8)")
    findings = (
        *(_wire_findings(given) if wire else _web_findings(given)),
        seen("No readable tag", "a tag you can read", unless(given, "tag_readable"), repair),
        seen("Knotted, mended, welded or changed", "none", known(given, "altered"), repair, hardware),
    )
    verdict = judge(findings)
    usable = verdict in ("ok", "caution") and given.has("rating")
    diameter = _diameter_loss(given) if wire else None
    new = given.si("diameter_new") if given.has("diameter_new") else None
    return Answer(
        verdict=verdict,
        headline=headline("sling", findings),
        big="decides",
        results={
            "worst_share": _worst_share(findings), "diameter_loss": diameter[1] if diameter else None,
            "rating_if_sound": given.si("rating") if usable else None, **record(findings, given, verdict),
        },
        shown={} if usable else {
            "rating_if_sound": "no tag rating given" if verdict in ("ok", "caution") else "none until every line is answered and passes"
        },
        tables=tables(findings),
        steps=steps_of(findings),
        cautions=cautions("sling", verdict, findings) + _kind_cautions(wire),
        figure=rope_figure(new, say) if wire else web_figure(),
        citations=citations_of(findings),
    )  # fmt: skip


def _worst_share(findings: tuple[Finding, ...]) -> str:
    """How many of the deciding criteria passed."""
    deciding = [finding for finding in findings if finding.decides]
    passed = sum(finding.outcome in ("pass", "near") for finding in deciding)
    return f"{passed} of {len(deciding)} criteria passed"


def _kind_cautions(wire: bool) -> tuple[Caution, ...]:
    if wire:
        return (
            Caution("Never run a bare hand along a rope: a broken wire goes in like a hook. Wear leather, use a rag, let the snags show.", "prohibition"),
            Caution("Broken wires inside do not show. Bend the rope by hand in the worst lay and look into the valleys.", "warning"),
        )  # fmt: skip
    return (
        Caution(
            "Sunlight weakens web without a mark. A sling that went stiff, pale or powdery is out.", "warning"
        ),
        Caution("Protect web from every edge. A cut under load runs through at once.", "mandatory"),
    )


def _flag(name: str, label: str, kinds: tuple[str, ...], when: str = "") -> Input:
    return Input(name, label, "flag", required=False, shown_when={"kind": kinds}, help=when)


def _number(name: str, label: str, most: float, when: str = "", least: float = 0) -> Input:
    return Input(
        name,
        label,
        "count",
        at_least=least,
        at_most=most,
        required=False,
        shown_when={"kind": WIRE},
        help=when,
    )


WORKSHEET = Worksheet(
    name="sling-check",
    title="Is this wire rope or web sling still fit?",
    summary="Broken wires, wear, kinks, heat, cuts, stitching, tag: each held against the published limits.",
    inputs=(
        Input("kind", "Kind", "choice", default="wire-rope",
              choices=(Choice("wire-rope", "Wire rope"), Choice("web", "Web or round sling"))),
        _number("broken_in_lay", "Broken wires in the worst lay", 500, "One lay: one strand once round the rope."),
        _number("broken_in_strand", "Of these, in the worst strand", 200),
        _number("broken_at_fitting", "Broken wires at an end fitting", 200),
        _number("broken_in_eight_diameters", "Broken wires in eight rope diameters", 1000),
        _number("wires_in_rope", "Wires in the whole rope", 2000, "6x19 classes have 114 or so, 6x37 classes 216 or so.", 7),
        Input("outer_wire_wear", "Outer wires worn by", "quantity", "fraction", "%", "%", at_least=0, at_most=100,
              required=False, shown_when={"kind": WIRE}, help="Share of one wire's own diameter that is worn flat."),
        Input("diameter_new", "Rope diameter when new", "quantity", "length", above=0, at_most=8, required=False,
              shown_when={"kind": WIRE}),
        Input("diameter_now", "Rope diameter now", "quantity", "length", above=0, at_most=8, required=False,
              shown_when={"kind": WIRE}, help="Over the crowns, at the thinnest place."),
        Input("core", "Core", "choice", default="fibre", shown_when={"kind": WIRE},
              choices=(Choice("fibre", "Fibre, or not known"), Choice("steel", "Steel"))),
        _flag("shape_damage", "Any kink, crush, birdcage or flat?", WIRE),
        _flag("corrosion", "Any rust pits or stiff, dry places?", WIRE),
        Input("cut_share", "Deepest cut or tear, share of the width", "quantity", "fraction", "%", "%", at_least=0,
              at_most=100, required=False, shown_when={"kind": WEB}, help="None: 0. Snags and punctures count."),
        _flag("chemical", "Any acid or caustic burn, stiff or faded web?", WEB),
        _flag("stitch_damage", "Any load stitch broken or worn?", WEB),
        Input("material", "Material", "choice", default="polypropylene", shown_when={"kind": WEB},
              choices=(Choice("nylon-or-polyester", "Nylon or polyester"), Choice("polypropylene", "Polypropylene, or not known"))),
        Input("heat", "Any heat mark, melted or glazed place?", "flag", required=False),
        Input("fitting_damage", "Any end fitting cracked, bent or worn?", "flag", required=False),
        Input("tag_readable", "Can you read the tag?", "flag", required=False),
        Input("altered", "Any knot, mend, clip, weld or change?", "flag", required=False),
        Input("hottest", "Hottest it has been", "quantity", "temperature", at_least=-459, at_most=3000, required=False),
        Input("rating", "Rating on its tag", "quantity", "weight", above=0, at_most=2_000_000, required=False),
        SERVICE_INPUT,
        DATE_INPUT,
    ),
    results=(
        DECIDES_RESULT,
        Result("worst_share", "In all"),
        Result("diameter_loss", "Rope thinner by", "fraction", rounding="up"),
        Result("rating_if_sound", "Rating on its tag, if sound", "weight", rounding="down", digits=4),
        CRITERIA_RESULT,
        NEXT_RESULT,
    ),
    compute=compute,
    example={
        "kind": "wire-rope", "broken_in_lay": "3", "broken_in_strand": "2", "broken_at_fitting": "0",
        "outer_wire_wear": "10 %",
        "diameter_new": "1/2 in", "diameter_now": "0.493 in", "core": "steel", "shape_damage": "no", "corrosion": "no",
        "heat": "no", "fitting_damage": "no", "tag_readable": "yes", "altered": "no", "rating": "4,400 lb",
        "service": "severe", "inspected_on": "2026-11-25",
    },
    example_story="The wire rope sling that steps masts, at its quarterly look-over.",
    ok_words="Inside every limit",
    citations=(Citation("osha-1910-184", "1910.184(f)(5), (i)(9)"),),
)  # fmt: skip
