"""Is this shackle still fit?

A shackle wears at the crown and in the middle of the pin, spreads at the jaw when it was overloaded, and is worth nothing
with the wrong pin. Limits: Washington WAC 296-155-33900 Table 19, ISO 16855 and others, in tables/shackle-limits.
"""

from __future__ import annotations

from calc.figures.inspection import shackle_figure
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
from calc.inspecting.hook_check import MEASURING_SLACK, growth, loss
from calc.quantities import show_in
from calc.tables import table
from calc.worksheet import Answer, Caution, Choice, Citation, Given, Input, Result, Say, Worksheet


def _loss(given: Given, part: str) -> float | None:
    """Loss of a diameter [-], or None where one of the two readings is missing."""
    if not (given.has(f"{part}_new") and given.has(f"{part}_now")):
        return None
    new, now = given.si(f"{part}_new"), given.si(f"{part}_now")
    if now > new * (1 + MEASURING_SLACK):
        raise given.refuse(f"{part}_now", "is thicker than new. Measure both at the same place.")
    return loss(new, now)


def _spread(given: Given) -> float | None:
    if not (given.has("jaw_new") and given.has("jaw_now")):
        return None
    new, now = given.si("jaw_new"), given.si("jaw_now")
    if now < new * (1 - MEASURING_SLACK):
        return 1.0 - now / new  # pinched together: a deformation like any other
    return growth(new, now)


def _rule(item: str, name: str) -> Citation:
    row = table("shackle-rules").one(item=item, rule=name)
    return Citation(row["source"], row["locator"])


def _words(share: float | None) -> str:
    return "not measured" if share is None else show_in(share, "fraction", "%", 3, "up")


def _findings(given: Given) -> tuple[Finding, ...]:
    body, pin, spread = _loss(given, "body"), _loss(given, "pin"), _spread(given)
    hardware = rule("rigging_hardware", "any-of")
    return (
        *measured("Bow worn", limits("shackle-limits", ("body_or_pin", "body"), "dimension_loss", "fraction"), body, _words(body)),
        *measured("Pin worn", limits("shackle-limits", ("body_or_pin", "pin"), "dimension_loss", "fraction"), pin, _words(pin)),
        *measured("Jaw sprung", limits("shackle-limits", ("body_or_pin",), "deformation", "fraction"), spread, _words(spread)),
        seen("Bent or twisted to the eye", "none", known(given, "bent"), hardware),
        seen("Pin not fully home", "screwed home, shoulder on the body", unless(given, "pin_seated"), rule("shackle", "pin"), _rule("screw_pin", "fully-home")),
        seen("Wrong pin", "the maker's own, never a bolt", unless(given, "pin_original"), _rule("pin", "no-bolt")),
        seen("Crack, nick or damaged thread", "none", known(given, "cracks"), hardware),
        seen("No readable marks", "maker and rating readable", unless(given, "marks_readable"), hardware, _rule("shackle", "load-to-mark")),
        seen("Welded, heated, ground or changed", "none", known(given, "altered"), hardware, _rule("weld", "no-weld")),
    )  # fmt: skip


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    findings = _findings(given)
    verdict = judge(findings)
    body, pin = _loss(given, "body"), _loss(given, "pin")
    extra: tuple[Caution, ...] = ()
    if given.text("pin_kind") == "round":
        extra = (
            Caution("A round pin held by a cotter alone is outside the standard for lifting. Take a screw pin or a bolt-type shackle.", "warning"),
        )  # fmt: skip
    usable = verdict in ("ok", "caution") and given.has("rating")
    drawn_body = given.si("body_new") if given.has("body_new") else 0.019
    drawn_pin = given.si("pin_new") if given.has("pin_new") else 1.15 * drawn_body
    return Answer(
        verdict=verdict,
        headline=headline("shackle", findings),
        big="decides",
        results={
            "body_wear": body, "pin_wear": pin, "jaw_change": _spread(given),
            "body_limit": _least(given, "body"), "pin_limit": _least(given, "pin"),
            "rating_if_sound": given.si("rating") if usable else None, **record(findings, given, verdict),
        },
        shown={} if usable else {
            "rating_if_sound": "no mark given" if verdict in ("ok", "caution") else "none until every line is answered and passes"
        },
        tables=tables(findings),
        steps=steps_of(findings),
        cautions=cautions("shackle", verdict, findings) + extra,
        figure=shackle_figure(
            drawn_body, drawn_pin, given.si("jaw_now") if given.has("jaw_now") else None, say,
            given.has("body_new") and given.has("pin_new"),
        ),
        citations=citations_of(findings),
    )  # fmt: skip


def _least(given: Given, part: str) -> float | None:
    """The diameter [m] at which the strictest limit is met; None where the new one is not known."""
    if not given.has(f"{part}_new"):
        return None
    strictest = limits("shackle-limits", ("body_or_pin", part), "dimension_loss", "fraction")[0]
    return given.si(f"{part}_new") * (1 - strictest.value_si)


def _diameter(name: str, label: str, when: str) -> Input:
    return Input(name, label, "quantity", "length", above=0, at_most=20, required=False, help=when)


WORKSHEET = Worksheet(
    name="shackle-check",
    title="Is this shackle still fit?",
    summary="Bow, pin, jaw, thread, marks: each held against every published limit; the strictest decides.",
    inputs=(
        _diameter("body_new", "Bow when new", "From the maker's sheet, or an unworn place on the leg."),
        _diameter("body_now", "Bow now, where the load bears", "At the crown, in both directions; the smallest."),
        _diameter("pin_new", "Pin when new", "From the maker's sheet, or beside the ears."),
        _diameter("pin_now", "Pin now, where the load bears", "At its middle, turned round; the smallest."),
        _diameter("jaw_new", "Jaw when new", "Between the ears, from the maker's sheet or a new one."),
        _diameter("jaw_now", "Jaw now", "Between the ears at the pin."),
        Input("pin_kind", "Pin", "choice", default="screw",
              choices=(Choice("screw", "Screw pin"), Choice("bolt", "Bolt, nut and cotter"), Choice("round", "Round pin and cotter"))),
        Input("pin_seated", "Does the pin go fully home by hand?", "flag", required=False,
              help="Shoulder on the body, thread through the far ear."),
        Input("pin_original", "Is it the maker's own pin?", "flag", required=False),
        Input("bent", "Any bend or twist you can see?", "flag", required=False),
        Input("cracks", "Any crack, nick, or damaged thread?", "flag", required=False),
        Input("marks_readable", "Can you read the maker's mark and the rating?", "flag", required=False),
        Input("altered", "Any weld, heat colour, grinding or drilling?", "flag", required=False),
        Input("rating", "Rating on its mark", "quantity", "weight", "short_ton", "t", above=0, at_most=2000, required=False),
        SERVICE_INPUT,
        DATE_INPUT,
    ),
    results=(
        DECIDES_RESULT,
        Result("body_wear", "Bow worn by", "fraction", rounding="up"),
        Result("pin_wear", "Pin worn by", "fraction", rounding="up"),
        Result("jaw_change", "Jaw changed by", "fraction", rounding="up"),
        Result("body_limit", "Bow at which it is out", "length", rounding="up", digits=4),
        Result("pin_limit", "Pin at which it is out", "length", rounding="up", digits=4),
        Result("rating_if_sound", "Rating on its mark, if sound", "weight", "short_ton", "t", rounding="down"),
        CRITERIA_RESULT,
        NEXT_RESULT,
    ),
    compute=compute,
    example={
        "body_new": "0.752 in", "body_now": "0.731 in", "pin_new": "0.874 in", "pin_now": "0.858 in", "jaw_new": "1.26 in",
        "jaw_now": "1.28 in", "pin_kind": "screw", "pin_seated": "yes", "pin_original": "yes", "bent": "no", "cracks": "no",
        "marks_readable": "yes", "altered": "no", "rating": "4-3/4 tons", "service": "normal", "inspected_on": "2026-11-20",
    },
    example_story="The bow shackle that has held the slip's turning block for nine seasons.",
    ok_words="Inside every limit",
    citations=(Citation("osha-1926-251", "1926.251(f)(1)"),),
)  # fmt: skip
