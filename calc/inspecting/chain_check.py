"""Is this chain still fit?

Chain wears thin where the links bear on each other, and stretches when it was overloaded. Limits: least thickness by
size (29 CFR 1910.184 Table N-184-1, Washington Table 13), share of thickness and stretch (DGUV 209-021 after DIN 685,
Queensland PN10123 and others), all in tables/chain-wear and tables/chain-limits.
"""

from __future__ import annotations

import dataclasses
import re

from calc.figures.inspection import link_figure
from calc.inspecting.chain_marks import THICKEST_OVER_NOMINAL, ChainSize, chain_sizes, may_lift, size_named
from calc.inspecting.chain_ratings import lifting_ratings, tie_down_ratings
from calc.inspecting.criteria import (
    CRITERIA_RESULT,
    DATE_INPUT,
    DECIDES_RESULT,
    NEXT_RESULT,
    SERVICE_INPUT,
    Finding,
    Limit,
    at_least,
    cautions,
    citations_of,
    headline,
    judge,
    limit_of,
    limits,
    measured,
    record,
    rule,
    seen,
    steps_of,
    tables,
    unless,
)
from calc.inspecting.hook_check import MEASURING_SLACK, growth, loss
from calc.inspecting.nominal_wire import nominal_m
from calc.quantities import show_in
from calc.ratings import Rating
from calc.tables import table
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Verdict,
    Worksheet,
    worst,
)

DAMAGE = {
    "crack": "Crack", "nick": "Nick", "gouge": "Gouge", "bent": "Bent link", "twist": "Twisted link",
    "stretched": "Stretched link", "heat": "Heat colour or burn", "weld": "Weld or mend", "spatter": "Weld spatter or arc strike",
    "pitting": "Pitting or deep rust", "stiff": "Links that do not hinge", "homemade": "Bolt, wire or shop-made link",
}  # fmt: skip
_WORD_STEMS = {
    "crack": "crack", "nick": "nick", "gouge": "gouge", "bent": "bent", "bend": "bent", "twist": "twist", "stretch": "stretched",
    "heat": "heat", "burn": "heat", "weld": "weld", "mend": "weld", "spatter": "spatter", "arc": "spatter", "pit": "pitting",
    "rust": "pitting", "corro": "pitting", "stiff": "stiff", "seiz": "stiff", "home": "homemade", "shop": "homemade",
    "bolt": "homemade",
}  # fmt: skip
SHORTEST_PITCH, LONGEST_PITCH = 2.5, 4.5
"""Inside length of a link over its wire [-] beyond which a count of links must be wrong (short link is 3, coil chain
about 3.7; from memory)."""
UNMARKED = "unmarked"


def damages(given: Given) -> tuple[str, ...] | None:
    """The damage found, as keys of DAMAGE; empty for none; None where the box was left empty."""
    if not given.has("damage"):
        return None
    found: list[str] = []
    for word in re.findall(r"[a-z]+", given.text("damage").lower().replace("-", "")):
        if word in ("none", "no", "and", "or", "of", "the", "link", "links", "colour", "color"):
            continue
        stem = next((key for start, key in _WORD_STEMS.items() if word.startswith(start)), None)
        if stem is None:
            raise given.refuse(
                "damage",
                f"has “{word}”, which is not on the list. Give none, or some of: {', '.join(DAMAGE)}.",
            )
        if stem not in found:
            found.append(stem)
    return tuple(found)


def thickness_limits(size: ChainSize) -> tuple[Limit, ...]:
    """Every least thickness for a size [m]: printed ones, wear taken from the size, and shares of the thickness."""
    found = []
    for row in table("chain-wear").rows:
        if row["size_in"] not in size.inch_names or row["unit"] == "mm":
            continue  # the millimetre rows are the same table's inch rows, rounded
        limit = limit_of(row, "length")
        if row["quantity"] == "maximum_wear":
            whole = limit_of({**row, "value": row["size_in"], "unit": "in"}, "length").value_si
            limit = dataclasses.replace(
                limit, value_si=whole - limit.value_si, printed=f"{limit.printed} of wear"
            )
        found.append(limit)
    for share in limits("chain-limits", "chain", "thickness_loss", "fraction"):
        least = nominal_m(size) * (1 - share.value_si)
        found.append(dataclasses.replace(share, value_si=least, printed=f"{share.printed} of the thickness"))
    return tuple(sorted(found, key=lambda limit: -limit.value_si))


def _size(given: Given) -> ChainSize:
    size = size_named(given.text("size"))
    if size is None:
        known = ", ".join(size.words for size in chain_sizes())
        raise given.refuse("size", f"is not a size of the tables. Give one of: {known}.")
    return size


def _thickness(given: Given, size: ChainSize) -> float | None:
    if not given.has("thickness_now"):
        return None
    now = given.si("thickness_now")
    if now > size.thickest_m * THICKEST_OVER_NOMINAL:
        raise given.refuse(
            "thickness_now", f"is thicker than {size.words} chain is made. Check the size and where you measured."
        )  # fmt: skip
    return now


def _stretch(given: Given, size: ChainSize) -> float | None:
    """Growth of the reach [-], or None where one of the two readings is missing."""
    if given.has("links") and given.has("reach_now"):
        pitch = given.si("reach_now") / given.count("links")
        if not SHORTEST_PITCH <= pitch / nominal_m(size) <= LONGEST_PITCH:
            raise given.refuse(
                "links",
                "does not go with that length and size. Count the links between the two points you measured, and "
                "measure from the inside of the first bearing to the inside of the last.",
            )
    if not (given.has("reach_new") and given.has("reach_now")):
        return None
    new, now = given.si("reach_new"), given.si("reach_now")
    if now < new * (1 - MEASURING_SLACK):
        raise given.refuse(
            "reach_now", "is shorter than the new length. Measure over the same number of links, pulled straight."
        )  # fmt: skip
    return growth(new, now)


def _damage_findings(found: tuple[str, ...] | None) -> tuple[Finding, ...]:
    citation = rule("chain_sling", "washington-list")
    if not found:
        return (seen("Damage", "none on any link", None if found is None else False, citation),)
    return tuple(seen(DAMAGE[name], "none on any link", True, citation) for name in found)


def _rating(given: Given, size: ChainSize) -> tuple[Rating | None, str, Verdict]:
    """The rating if sound, words where there is none, and the verdict on the use itself."""
    grade = given.text("grade")
    if given.text("use") == "tie_down":
        ratings = tie_down_ratings("30" if grade == UNMARKED else grade, size)
        if not ratings:
            return (
                None,
                "the law's table has no limit for this grade and size: the maker's mark governs",
                "unknown",
            )
        return ratings[0], "", "caution" if grade == UNMARKED else "ok"
    if grade == UNMARKED or may_lift(grade) is False:
        return None, f"no lifting use: {grade if grade == UNMARKED else f'grade {grade}'}", "stop"
    ratings = lifting_ratings(grade, size)
    if not ratings:
        return None, "no table rates this grade and size: its tag governs", "unknown"
    return min(ratings, key=lambda one: one.working_load_limit_kg), "", "ok"


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    size = _size(given)
    now = _thickness(given, size)
    stretch = _stretch(given, size)
    rating, rating_words, use_verdict = _rating(given, size)
    thinnest = thickness_limits(size)
    findings: tuple[Finding, ...] = (
        *at_least(
            "Worn thin", thinnest, now,
            "not measured" if now is None else say.of(now, "length", digits=4), nominal_m(size),
        ),
        *measured(
            "Stretched", limits("chain-limits", "chain", "elongation", "fraction"), stretch,
            "not measured" if stretch is None else show_in(stretch, "fraction", "%", 3, "up"),
        ),
        *_damage_findings(damages(given)),
    )  # fmt: skip
    if given.text("use") == "lift":
        findings += (
            seen("No readable tag", "a tag you can read", unless(given, "tag_readable"), rule("chain_sling", "washington-list")),
        )  # fmt: skip
    verdict = worst(judge(findings), use_verdict)
    usable = rating if verdict in ("ok", "caution") else None
    shown = {} if stretch is not None else {"stretch_percent": "not measured"}
    if usable is None:
        shown["rating_if_sound"] = rating_words or "none until every line is answered and passes"
    return Answer(
        verdict=verdict,
        headline=_headline(findings, use_verdict, rating_words, usable, say),
        big="decides",
        results={
            "wear": None if now is None else loss(nominal_m(size), now),
            "min_thickness": thinnest[0].value_si,
            "loosest_min_thickness": thinnest[-1].value_si,
            "stretch_percent": stretch,
            "pitch_now": given.si("reach_now") / given.count("links")
            if given.has("links") and given.has("reach_now")
            else None,
            "rating_if_sound": usable.working_load_limit_kg if usable else None,
            **record(findings, given, verdict, rating_words if use_verdict == "stop" else ""),
        },
        shown=shown | ({} if now is not None else {"wear": "not measured"}),
        tables=tables(findings),
        steps=steps_of(findings),
        cautions=_use_cautions(given, use_verdict) + cautions("chain", verdict, findings),
        figure=link_figure(nominal_m(size), None, say, f"new {say.one(nominal_m(size), 'length')}", now),
        citations=citations_of(findings) + ((Citation(rating.source, rating.locator),) if rating else ()),
    )


def _headline(
    findings: tuple[Finding, ...], use_verdict: Verdict, rating_words: str, usable: Rating | None, say: Say
) -> str:
    if use_verdict == "stop":
        return f"Stop: {rating_words}. " + headline("chain", findings)
    first = headline("chain", findings)
    if usable is None:
        return first if not rating_words else f"{first} {rating_words[:1].upper()}{rating_words[1:]}."
    return f"{first} Printed rating if sound: {say.of(usable.working_load_limit_kg, 'weight', 'down', 4)}."


def _use_cautions(given: Given, use_verdict: Verdict) -> tuple[Caution, ...]:
    if use_verdict == "stop":
        return (
            Caution("Only chain that is marked and tagged for lifting lifts: grade 80 or 100, or European 4, 5 or 8.", "prohibition"),
        )  # fmt: skip
    if given.text("grade") == UNMARKED:
        return (Caution("Unmarked chain counts as grade 30 when it ties a load down.", "note"),)
    return ()


WORKSHEET = Worksheet(
    name="chain-check",
    title="Is this chain still fit?",
    summary="Wear, stretch and damage held against every published limit; the strictest decides.",
    inputs=(
        Input("grade", "Grade mark", "choice",
              choices=(*(Choice(g, f"Grade {g}") for g in ("80", "100", "70", "43", "30", "8", "5", "4")),
                       Choice(UNMARKED, "No readable mark")), help="As stamped on the links."),
        Input("size", "Size", "text", help="Such as 3/8 or 10 mm, from the tag or the marks."),
        Input("use", "Used to", "choice", default="lift",
              choices=(Choice("lift", "Lift"), Choice("tie_down", "Tie loads down"))),
        Input("thickness_now", "Thinnest reading of the wire", "quantity", "length", above=0, at_most=4, required=False,
              help="Where links bear on each other, at the end of the link. Turn the caliper; take the smallest of all links."),
        Input("reach_new", "Length when new, over some links", "quantity", "length", above=0, at_most=4000,
              required=False, help="From the tag, or over the same number of links in an unused part."),
        Input("reach_now", "Length now, over the same links", "quantity", "length", above=0, at_most=4000,
              required=False, help="Pulled straight, from bearing to bearing. Measure the worst five links too."),
        Input("links", "Number of links in that length", "count", at_least=1, at_most=10000, required=False),
        Input("damage", "Damage found", "text", required=False, several=True,
              help="none, or some of: " + ", ".join(DAMAGE) + ". Look at every link, twice."),
        Input("tag_readable", "Can you read the sling's tag?", "flag", required=False,
              shown_when={"use": ("lift",)}),
        SERVICE_INPUT,
        DATE_INPUT,
    ),
    results=(
        DECIDES_RESULT,
        Result("wear", "Wire worn by", "fraction", rounding="up"),
        Result("min_thickness", "Thickness at which it is out", "length", rounding="up", digits=4),
        Result("loosest_min_thickness", "The loosest published limit", "length", digits=4),
        Result("stretch_percent", "Stretched by", "fraction", rounding="up"),
        Result("pitch_now", "Inside length of a link now", "length", digits=4),
        Result("rating_if_sound", "Printed rating of one straight leg, if sound", "weight", rounding="down", digits=4),
        CRITERIA_RESULT,
        NEXT_RESULT,
    ),
    compute=compute,
    example={
        "grade": "80", "size": "3/8", "use": "lift", "thickness_now": "0.369 in", "reach_new": "24.4 in",
        "reach_now": "24.6 in", "links": "20", "damage": "none", "tag_readable": "yes", "service": "normal",
        "inspected_on": "2026-11-24",
    },
    example_story="The two-leg chain sling that lifts the yard's keels, at its yearly look-over.",
    ok_words="Inside every limit",
    citations=(Citation("osha-1910-184", "1910.184(e)"),),
)  # fmt: skip
