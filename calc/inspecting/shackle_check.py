"""Is this shackle still fit?

A shackle wears at the crown and in the middle of the pin, spreads at the jaw when it was overloaded, and is worth nothing
with the wrong pin. Limits: Washington WAC 296-155-33900 Table 19, ISO 16855 and others, in tables/shackle-limits.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.inspection import ShackleShape, shackle_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
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
    inspect,
    inspection_citations,
    inspection_steps,
    judge_inspected,
    limits,
    no_is_bad,
    question,
    rating_if_sound,
    rule,
    yes_is_bad,
)
from calc.inspecting.measuring import MEASURING_SLACK, growth, lost
from calc.inspecting.record import HARDWARE
from calc.quantities import plain_number, to_si
from calc.reasons import Reason, stop
from calc.tables import table, value_si
from calc.words.facts import Absent, Quantity, absent, message
from calc.words.writer import Writer

_HARDWARE = ("rigging_hardware", "any-of")
_THICKER = 1.1
"""A bow measures up to this ratio [-] of its nominal size (our own mark, no source)."""
_ROUND_PIN = ("round_pin", "outside-standard", "shackle-rules")


def _limits(quantity: str, *items: str) -> tuple[Limit, ...]:
    return limits("shackle-limits", ("body_or_pin", *items), quantity, "fraction")


def _body(given: Given) -> float | None:
    return lost(given, "body_new", "body_now")


def _pin(given: Given) -> float | None:
    return lost(given, "pin_new", "pin_now")


def _jaw(given: Given) -> float | None:
    """Change of the jaw [-]; pinched together is a deformation like any other."""
    if not (given.has("jaw_new") and given.has("jaw_now")):
        return None
    new, now = given.si("jaw_new"), given.si("jaw_now")
    return 1.0 - now / new if now < new * (1 - MEASURING_SLACK) else growth(new, now)


def _is_round(given: Given) -> bool:
    """A round pin held by a cotter alone is outside the standard: it bars the use, whatever the shackle's state."""
    return given.text("pin_kind") == "round"


CRITERIA = (
    Measure("bow-worn", lambda _: _limits("dimension_loss", "body"), _body, "fraction"),
    Measure("pin-worn", lambda _: _limits("dimension_loss", "pin"), _pin, "fraction"),
    Measure("jaw-sprung", lambda _: _limits("deformation"), _jaw, "fraction"),
    Question("bent", yes_is_bad("bent"), by_rules(_HARDWARE)),
    Question(
        "pin-not-home",
        no_is_bad("pin_seated"),
        by_rules(("shackle", "pin"), ("screw_pin", "fully-home", "shackle-rules")),
    ),
    Question(
        "pin-kind",
        lambda given: False if given.has("pin_kind") else None,
        by_rules(_ROUND_PIN),
        lambda given: not _is_round(given),
    ),
    Question("wrong-pin", no_is_bad("pin_original"), by_rules(("pin", "no-bolt", "shackle-rules"))),
    Question("crack", yes_is_bad("cracks"), by_rules(_HARDWARE)),
    Question(
        "no-marks",
        no_is_bad("marks_readable"),
        by_rules(_HARDWARE, ("shackle", "load-to-mark", "shackle-rules")),
    ),
    Question("altered", yes_is_bad("altered"), by_rules(_HARDWARE, ("weld", "no-weld", "shackle-rules"))),
)


@dataclass(frozen=True)
class Found:
    """What looking the shackle over came to, and the sizes at which it is out."""

    inspected: Inspected
    shape: ShackleShape
    body_wear: float | Absent
    pin_wear: float | Absent
    jaw_change: float | Absent
    body_limit_m: float | Absent
    pin_limit_m: float | Absent
    rating_if_sound_kg: float | Absent


def find(given: Given) -> Found:
    """Look the shackle over; see WORKSHEET for inputs and results."""
    _hold_together(given)
    against = message("no-lifting-with-round-pin") if _is_round(given) else None
    inspected = inspect("shackle", HARDWARE, CRITERIA, given, against)

    def read(value: float | None) -> float | Absent:
        return absent("not-known") if value is None else value

    return Found(
        inspected=inspected,
        shape=ShackleShape(given.maybe("body_new"), given.maybe("pin_new"), given.maybe("jaw_now")),
        body_wear=read(_body(given)),
        pin_wear=read(_pin(given)),
        jaw_change=read(_jaw(given)),
        body_limit_m=read(_least_m(given, "body")),
        pin_limit_m=read(_least_m(given, "pin")),
        rating_if_sound_kg=rating_if_sound(inspected, given.maybe("rating"), "no-mark-given"),
    )


def _hold_together(given: Given) -> None:
    """Refuse what no shackle is: a pin thinner than the bow, and a mark over the highest printed for such a bow."""
    body, pin, rating = (given.maybe(name) for name in ("body_new", "pin_new", "rating"))
    if body is None:
        return
    if pin is not None and pin < body * (1 - MEASURING_SLACK):
        raise given.refuse("pin_new", "pin-new-thinner-than-bow")
    highest = highest_printed_kg(body)
    if rating is not None and highest is not None and exceeds(rating, highest):
        raise given.refuse("rating", "over-every-table", highest=_tons(highest))


def _tons(mass_kg: float) -> Quantity:
    return Quantity(mass_kg, "weight", units=("short_ton", "t"))


def highest_printed_kg(body_m: float) -> float | None:
    """The highest rating [kg] that is printed for a bow this thick, of any grade; None for one thicker than all.

    >>> round(highest_printed_kg(0.0191))
    6350
    """
    rows = table("shackles").where(quantity="working_load_limit")
    thick = [row for row in rows if to_si(plain_number(row["size_in"]), "in", "length") * _THICKER >= body_m]
    if not thick:
        return None
    least = min(plain_number(row["size_in"]) for row in thick)
    return max(value_si(row, "weight") for row in thick if plain_number(row["size_in"]) == least)


def _least_m(given: Given, part: str) -> float | None:
    """The diameter [m] at which the strictest limit is met; None where the new one is not known."""
    new = given.maybe(f"{part}_new")
    return None if new is None else new * (1 - _limits("dimension_loss", part)[0].value_si)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons that every inspection shares, and that a round pin does not lift."""
    barred = (stop("round-pin"),) if found.inspected.against else ()
    return (*barred, *judge_inspected(found.inspected))


def cite(found: Found) -> tuple[Citation, ...]:
    """The places of the limits, and of what bars a round pin."""
    barred = (rule(*_ROUND_PIN),) if found.inspected.against else ()
    return (*barred, *inspection_citations(found.inspected))


def draw(found: Found, writer: Writer) -> Figure:
    """The shackle with what to measure."""
    return shackle_figure(found.shape, writer)


_MORE_IS_LEFT = ("body_now", "pin_now")


def _diameter(name: str) -> QuantityInput:
    return QuantityInput(
        name,
        dimension="length",
        bounds=Bounds(above=0, at_most=20),
        required=False,
        sense="capacity" if name in _MORE_IS_LEFT else "plain",
    )


WORKSHEET = Worksheet(
    name="shackle-check",
    inputs=(
        PART_INPUT,
        *(_diameter(f"{part}_{when}") for part in ("body", "pin", "jaw") for when in ("new", "now")),
        ChoiceInput("pin_kind", choices=("screw", "bolt", "round"), required=False),
        question("pin_seated"),
        question("pin_original"),
        question("bent"),
        question("cracks"),
        question("marks_readable"),
        question("altered"),
        QuantityInput(
            "rating",
            dimension="weight",
            unit="short_ton",
            unit_si="t",
            bounds=Bounds(above=0, at_most=2000),
            required=False,
            sense="capacity",
        ),
        *RECORD_INPUTS,
    ),
    results=(
        DECIDES_RESULT,
        Result("body_wear", "fraction", "demand"),
        Result("pin_wear", "fraction", "demand"),
        Result("jaw_change", "fraction", "demand"),
        Result("body_limit", "length", "out_under", digits=4),
        Result("pin_limit", "length", "out_under", digits=4),
        Result("rating_if_sound", "weight", "capacity", unit="short_ton", unit_si="t"),
        CRITERIA_RESULT,
        *RECORD_RESULTS,
        NEXT_RESULT,
    ),
    find=find,
    judge=judge,
    work=lambda found: inspection_steps(found.inspected),
    draw=draw,
    cite=cite,
    large="decides",
    example={
        "part_name": "turning block shackle",
        "body_new": "0.752 in",
        "body_now": "0.731 in",
        "pin_new": "0.874 in",
        "pin_now": "0.858 in",
        "jaw_new": "1.26 in",
        "jaw_now": "1.28 in",
        "pin_kind": "screw",
        "pin_seated": "yes",
        "pin_original": "yes",
        "bent": "no",
        "cracks": "no",
        "marks_readable": "yes",
        "altered": "no",
        "rating": "4-3/4 short tons",
        "place": "us-washington",
        "service": "normal",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(Citation("osha-1926-251", "1926.251(f)(1)"),),
    shares=(WORDS,),
)
