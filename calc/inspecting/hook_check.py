"""Is this hook still fit?

A hook opens at the throat, twists and wears in the saddle before it breaks; a cracked, welded or heated one gives no
sign at all. Limits: WAC 296-155-55800 Table 12 and Queensland PN10123 (5 percent), 29 CFR 1910.184 and others
(15 percent), all in tables/hook-limits.
"""

from __future__ import annotations

from calc.figures.inspection import hook_figure
from calc.inspecting.criteria import (
    CRITERIA_RESULT,
    DATE_INPUT,
    DECIDES_RESULT,
    NEXT_RESULT,
    SERVICE_INPUT,
    Finding,
    cautions,
    citations_of,
    headline,
    judge,
    known,
    limits,
    measured,
    record,
    rule,
    seen,
    steps_of,
    tables,
    unless,
)
from calc.quantities import show_in
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Worksheet,
)

ITEMS = ("hook", "crane_hook")
MEASURING_SLACK = 0.01
"""A throat or section that measures up to this share under (throat) or over (section) its new size is a reading
error, not a change; beyond it one of the two readings is wrong (our own mark, no source)."""


def growth(new: float, now: float) -> float:
    """How much a length has grown [-], never below nothing."""
    return max(0.0, now / new - 1.0)


def loss(new: float, now: float) -> float:
    """How much of a length is gone [-], never below nothing."""
    return max(0.0, 1.0 - now / new)


def _throat(given: Given) -> tuple[float | None, float | None]:
    """Growth of the throat [-] and [m], or None where one of the two readings is missing."""
    if not (given.has("throat_new") and given.has("throat_now")):
        return None, None
    new, now = given.si("throat_new"), given.si("throat_now")
    if now < new * (1 - MEASURING_SLACK):
        raise given.refuse(
            "throat_now",
            "is smaller than the new throat. A throat does not shrink: measure both at the same place, or the hook was bent and is out.",
        )
    return growth(new, now), max(0.0, now - new)


def _wear(given: Given) -> float | None:
    """Loss of section [-], or None where one of the two readings is missing."""
    if not (given.has("section_new") and given.has("section_now")):
        return None
    new, now = given.si("section_new"), given.si("section_now")
    if now > new * (1 + MEASURING_SLACK):
        raise given.refuse("section_now", "is thicker than the new section. Measure both at the same place.")
    return loss(new, now)


def _findings(given: Given, say: Say) -> tuple[Finding, ...]:
    throat, throat_m = _throat(given)
    wear = _wear(given)
    twist = given.si("twist") if given.has("twist") else None
    throat_words = _words(throat)
    length_words = "not measured" if throat_m is None else say.of(throat_m, "length", "up")
    latch = given.text("latch")
    latch_bad = None if not latch else latch in ("does-not-close", "missing")
    hardware = rule("rigging_hardware", "any-of")
    return (
        *measured("Throat opened", limits("hook-limits", ITEMS, "throat_increase", "fraction"), throat, throat_words),
        *measured(
            "Throat opened, in length", limits("hook-limits", ITEMS, "throat_increase_largest", "length"), throat_m,
            length_words,
        ),
        *measured(
            "Section worn", limits("hook-limits", ITEMS, "section_wear", "fraction"), wear,
            _words(wear),
        ),
        *measured(
            "Twisted or bent out of the flat", limits("hook-limits", ITEMS, "twist", "angle"), twist,
            "not looked at" if twist is None else show_in(twist, "angle", "deg", 3, "up"),
        ),
        seen("Latch does not close", "closes the throat", latch_bad, rule("hook", "latch")),
        seen("Crack", "none", known(given, "cracks"), rule("hook", "cracked")),
        seen("No readable marks", "maker and grade or rating readable", unless(given, "marks_readable"), hardware),
        seen("Welded, heated, ground or changed", "none", known(given, "altered"), hardware),
    )  # fmt: skip


def _words(share: float | None) -> str:
    return "not measured" if share is None else show_in(share, "fraction", "%", 3, "up")


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    findings = _findings(given, say)
    verdict = judge(findings)
    throat, throat_m = _throat(given)
    wear = _wear(given)
    new = given.si("throat_new") if given.has("throat_new") else None
    extra: tuple[Caution, ...] = ()
    if given.text("latch") == "none-made":
        extra = (
            Caution(
                "A hook made without a latch holds only while the load is on it. Where the sling can go slack, use one with a latch.",
                "warning",
            ),
        )
    if new is None:
        extra += (
            Caution(
                "The throat when new is in the maker's sheet, or on a new hook of the same mark and size beside this one. Punch marks across the throat give later checks a fixed start; only the maker puts them there.",
                "note",
            ),
        )
    return Answer(
        verdict=verdict,
        headline=headline("hook", findings),
        big="decides",
        results={
            "throat_increase_percent": throat,
            "throat_increase": throat_m,
            "throat_limit": None if new is None else _largest_throat(new),
            "wear_percent": wear,
            "section_limit": given.si("section_new") * (1 - _strictest("section_wear", "fraction"))
            if given.has("section_new")
            else None,
            **record(findings, given, verdict),
        },
        shown={"throat_increase_percent": "not measured"} if throat is None else {},
        tables=tables(findings),
        steps=steps_of(findings),
        cautions=cautions("hook", verdict, findings) + extra,
        figure=hook_figure(
            new,
            given.si("throat_now") if given.has("throat_now") else None,
            given.si("section_now") if given.has("section_now") else None,
            say,
        ),
        citations=citations_of(findings),
    )


def _strictest(quantity: str, dimension: str) -> float:
    return limits("hook-limits", ITEMS, quantity, dimension)[0].value_si


def _largest_throat(new_m: float) -> float:
    """The throat at which the strictest limit is met [m]: 5 percent, and not more than 1/4 in."""
    by_share = new_m * (1 + _strictest("throat_increase", "fraction"))
    return min(by_share, new_m + _strictest("throat_increase_largest", "length"))


WORKSHEET = Worksheet(
    name="hook-check",
    title="Is this hook still fit?",
    summary="Throat, wear, twist, latch, cracks, marks: each held against every published limit; the strictest decides.",
    inputs=(
        Input("throat_new", "Throat when new", "quantity", "length", above=0, at_most=40, required=False,
              help="From the maker's sheet, or a new hook of the same mark and size."),
        Input("throat_now", "Throat now", "quantity", "length", above=0, at_most=80, required=False,
              help="At the narrowest, tip to neck, with a caliper or inside jaws. Hold the latch open."),
        Input("section_new", "Thickness in the saddle when new", "quantity", "length", above=0, at_most=40,
              required=False, help="From the maker's sheet, or an unworn place beside it."),
        Input("section_now", "Thickness in the saddle now", "quantity", "length", above=0, at_most=40,
              required=False, help="Where the load bears, in line with the pull."),
        Input("twist", "Twist or bend out of the flat", "quantity", "angle", at_least=0, at_most=90, required=False,
              help="Lay it on a flat plate or sight along it. Any you can see takes it out. None: 0."),
        Input("latch", "Latch", "choice", required=False,
              choices=(Choice("closes", "Closes the throat and springs back"),
                       Choice("does-not-close", "Does not close, bent or stuck"), Choice("missing", "Missing"),
                       Choice("none-made", "Made without one"))),
        Input("cracks", "Any crack?", "flag", required=False,
              help="Clean it first. Look in the saddle, at the neck, in the threads, round the pin."),
        Input("marks_readable", "Can you read the maker's mark and the grade or rating?", "flag", required=False),
        Input("altered", "Any weld, heat colour, grinding, drilling or bending back?", "flag", required=False,
              help="Weld spatter and arc strikes count. So does a hook made in a shop."),
        SERVICE_INPUT,
        DATE_INPUT,
    ),
    results=(
        DECIDES_RESULT,
        Result("throat_increase_percent", "Throat opened by", "fraction", rounding="up"),
        Result("throat_increase", "Throat opened by, in length", "length", rounding="up"),
        Result("throat_limit", "Throat at which it is out", "length", rounding="down", digits=4),
        Result("wear_percent", "Section worn by", "fraction", rounding="up"),
        Result("section_limit", "Thickness at which it is out", "length", rounding="up", digits=4),
        CRITERIA_RESULT,
        NEXT_RESULT,
    ),
    compute=compute,
    example={
        "throat_new": "1.16 in", "throat_now": "1.24 in", "section_new": "0.92 in", "section_now": "0.89 in",
        "twist": "0", "latch": "closes", "cracks": "no", "marks_readable": "yes", "altered": "no", "service": "normal",
        "inspected_on": "2026-11-23",
    },
    example_story="The latched sling hook on the yard's engine sling looks wider than the new spare beside it.",
    ok_words="Inside every limit",
    citations=(Citation("osha-1910-184", "1910.184(e)(9), (f)(5)"),),
)  # fmt: skip
