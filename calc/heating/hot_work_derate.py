"""What may my rated chain carry in a hot place?

Two rules side by side (calc.heating.chain_heat): ASME B30.9, table 9-1.8.1-1, and EN 818-6. 29 CFR 1910.184(e)(6): over
600 F the maker's reduction, over 1,000 F out for good. This is for a sound, tagged chain whose temperature is planned and
measured. Chain that a torch, a fire or a weld reached is another matter: it cannot be rated.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.heat_rules import HeatRules, heat_rules_figure
from calc.heating.chain_heat import RuleAnswer, asme_bands, asme_rule, en_bands, en_rule
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput, TextInput
from calc.inspecting.chain_marks import chain_sizes, size_named
from calc.inspecting.chain_ratings import lifting_ratings
from calc.lifting.condition import ALTERED, GOOD, condition_input, condition_of, judge_condition
from calc.lifting.grade_input import GradeInput
from calc.ratings import TIE_DOWN_ONLY_GRADES
from calc.reasons import Reason, caution, note, stop, unknown
from calc.tables import table, value_si
from calc.words.facts import Absent, Fact, Listing, Message, Number, absent, degrees, message, weight
from calc.words.writer import Writer

Outcome = Literal["ties-down-only", "heated-by-accident", "forbidden", "lasting-loss", "less-while-hot"]
"""What becomes of the rating: the first three leave none, a lasting loss stops, and else less is left while hot."""
_EUROPEAN_4 = "M"
"""How grade 4 of EN 818 is chosen: by its letter, for the number is stamped on grade 43 too."""
LEGS_COUNT = 3.0
"""Rating of a sling of three or four legs over that of one, at most (OSHA, Guidance on Safe Sling Use, Tables 1 and 2)."""
ROUNDS = 1.01
"""How far above that a tag may be by rounding to another unit (our own mark, no source)."""
_ALSO = {"80": "8", "100": "10"}
"""The European grade that the same choice stands for."""
_BARRED: tuple[Outcome, ...] = ("ties-down-only", "heated-by-accident", "forbidden")


@dataclass(frozen=True)
class _Rules:
    """What both rules say of a grade at a temperature."""

    asme: RuleAnswer
    en: RuleAnswer

    @property
    def forbid(self) -> bool:
        """Whether either allows no use."""
        return self.asme.forbids or self.en.forbids

    def share_left(self) -> float:
        """What the stricter rule leaves while hot [-]; one of them must print a share."""
        return min(rule.hot for rule in (self.asme, self.en) if rule.hot is not None)

    def governing(self) -> Message:
        """The stricter rule, by name."""
        asme, en = self.asme.hot, self.en.hot
        if asme is None:
            return message("rule-en")
        if en is None or exceeds(en, asme):
            return message("rule-asme")
        return message("rule-en" if exceeds(asme, en) else "rules-agree")


@dataclass(frozen=True)
class Found:
    """What heat leaves of the rating."""

    grade: str
    rating_kg: float
    temperature_degc: float
    rules: _Rules
    outcome: Outcome
    condition: str
    planned: bool
    rating_hot_kg: float | Absent
    rating_after_kg: float | Absent
    rule: Message | Absent
    rating_hot_asme_kg: float | Absent
    rating_hot_en_kg: float | Absent

    @property
    def barred(self) -> bool:
        """Whether there is no rating, hot or cold."""
        return _barred(self.outcome, self.condition)


def find(given: Given) -> Found:
    """Both rules and the stricter of them; see WORKSHEET for inputs and results."""
    temperature, rating = given.si("temperature"), given.si("rating")
    grade = "4" if given.text("grade") == _EUROPEAN_4 else given.text("grade")
    _refuse_a_misread_tag(given, grade, rating)
    rules = _Rules(asme_rule(grade, temperature), en_rule(grade, temperature))
    outcome, condition = _outcome(given, grade, rules), condition_of(given)
    barred = _barred(outcome, condition)
    planned = given.text("how_known") == "measured"
    told = not barred and planned and condition == GOOD
    speaks = outcome != "heated-by-accident" and condition not in ALTERED
    none = _none(outcome, barred)
    return Found(
        grade=grade,
        rating_kg=rating,
        temperature_degc=temperature,
        rules=rules,
        outcome=outcome,
        condition=condition,
        planned=planned,
        rating_hot_kg=rating * rules.share_left() if told and outcome == "less-while-hot" else none,
        rating_after_kg=_after_kg(rating, rules.asme) if told else none,
        rule=absent("no-rule-allows") if barred else rules.governing(),
        rating_hot_asme_kg=_hot_kg(rating, rules.asme, told, speaks),
        rating_hot_en_kg=_hot_kg(rating, rules.en, told, speaks),
    )


def _refuse_a_misread_tag(given: Given, grade: str, rating_kg: float) -> None:
    """Refuse a size of no chain, and a rating that no sling of that grade and size has: a nought too many, another part's tag."""
    size = size_named(given.text("size"))
    if size is None:
        raise given.refuse("size", "not-a-size", sizes=Listing(tuple(one.said for one in chain_sizes())))
    printed = [
        one.working_load_limit_kg
        for name in (grade, _ALSO.get(grade, grade))
        for one in lifting_ratings(name, size)
    ]
    if printed and exceeds(rating_kg, LEGS_COUNT * ROUNDS * max(printed)):
        one_leg = weight(max(printed), "capacity")
        raise given.refuse("rating", "more-than-three-legs", one_leg=one_leg)


def _barred(outcome: Outcome, condition: str) -> bool:
    """Whether there is no rating, hot or cold: by what the rules say, or because the chain was altered."""
    return outcome in _BARRED or condition in ALTERED


def _none(outcome: Outcome, barred: bool) -> Absent:
    """Why no rating is told: none is allowed, the heat takes some for good, or too little was said of the chain."""
    if barred:
        return absent("none-allowed")
    return absent("none-with-lasting-loss" if outcome == "lasting-loss" else "too-little-said")


def _outcome(given: Given, grade: str, rules: _Rules) -> Outcome:
    """What becomes of the rating; the grade comes first, then how the heat is known, then what the rules say of it."""
    if grade in TIE_DOWN_ONLY_GRADES:
        return "ties-down-only"
    if given.text("how_known") == "found":
        return "heated-by-accident"
    if rules.forbid:
        return "forbidden"
    after = rules.asme.after
    return "lasting-loss" if after is not None and exceeds(1.0, after) else "less-while-hot"


def _hot_kg(rating_kg: float, rule: RuleAnswer, told: bool, speaks: bool) -> float | Absent:
    """What a rule prints while hot [kg]; its words where it leaves nothing or no rating may be told; none where no rule
    speaks of such a chain.
    """
    if not speaks:
        return absent("none-allowed")
    if not told or rule.hot is None:
        return absent("as-the-rule-says", said=rule.said)
    return rating_kg * rule.hot


def _after_kg(rating_kg: float, asme: RuleAnswer) -> float | Absent:
    """The printed rating after cooling [kg]."""
    return absent("no-rule-prints") if asme.after is None else rating_kg * asme.after


def judge(found: Found) -> tuple[Reason, ...]:
    """Heat never leaves more; where a rule forbids, or nobody planned the heat, it leaves nothing."""
    reasons = [_of_the_outcome(found), *judge_condition(found.condition)]
    if not found.planned and found.outcome != "heated-by-accident":
        reasons.append(unknown("how-not-said"))
    if not found.barred:
        reasons.append(note("rules-differ"))
    reasons.append(note("planned-heat-only", "prohibition"))
    reasons.append(note("measure-the-chain", "mandatory", shackles=_shackles_stop()))
    if found.outcome != "less-while-hot":
        reasons.append(note("loss-stays", "warning"))
    return tuple(reasons)


def _of_the_outcome(found: Found) -> Reason:
    if found.outcome == "ties-down-only":
        return stop("ties-down-only", mark=found.grade)
    if found.outcome == "forbidden":
        return stop("forbidden", who=_who_forbids(found.rules))
    return caution("less-while-hot") if found.outcome == "less-while-hot" else stop(found.outcome)


def _who_forbids(rules: _Rules) -> Listing:
    both = (("asme-says", rules.asme), ("en-says", rules.en))
    return Listing(tuple(message(code, said=rule.said) for code, rule in both if rule.forbids), "space")


def _shackles_stop() -> Fact:
    """Up to which heat shackles are rated, as its table prints it."""
    row = table("sling-temperature-limits").one(item="shackle", quantity="use_below")
    return degrees(value_si(row, "temperature"))


def work(found: Found) -> tuple[Step, ...]:
    """Each printed share of the rating."""
    if found.barred or (
        isinstance(found.rating_hot_asme_kg, Absent) and isinstance(found.rating_hot_en_kg, Absent)
    ):
        return ()
    asme, en = found.rules.asme, found.rules.en
    shares = (("asme-hot", asme.hot), ("en-hot", en.hot), ("asme-after", asme.after))
    return tuple(
        step(code, share=Number(left), left=weight(found.rating_kg * left, "capacity"))
        for code, left in shares
        if left is not None
    )


def shown(found: Found) -> dict[str, Fact]:
    """Ratings with what the rule says of them."""
    said: dict[str, Fact] = {}
    for name, value, rule in (
        ("rating_hot_asme", found.rating_hot_asme_kg, found.rules.asme),
        ("rating_hot_en", found.rating_hot_en_kg, found.rules.en),
    ):
        if not isinstance(value, Absent):
            said[name] = message("share-and-rule", rating=weight(value, "capacity"), said=rule.said)
    if not isinstance(found.rating_after_kg, Absent):
        code = "after-lasting-loss" if found.outcome == "lasting-loss" else "after-no-loss"
        said["rating_after"] = message(code, rating=weight(found.rating_after_kg, "capacity"))
    return said


def draw(found: Found, writer: Writer) -> Figure | None:
    """Both rules over the heat, where the chain has a rating to lose."""
    if found.barred:
        return None
    rules = HeatRules(asme_bands(found.grade), en_bands(found.grade), found.temperature_degc)
    return heat_rules_figure(rules, writer)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the rules stand that speak of this chain."""
    return tuple(rule.citation for rule in (found.rules.asme, found.rules.en) if rule.citation)


WORKSHEET = Worksheet(
    name="hot-work-derate",
    inputs=(
        GradeInput("grade", choices=("80", "100", "5", _EUROPEAN_4, "70", "43", "30")),
        TextInput("size"),
        QuantityInput(
            "rating", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000), sense="capacity"
        ),
        QuantityInput(
            "temperature",
            dimension="temperature",
            bounds=Bounds(at_least=-459.67, at_most=2800),
            sense="demand",
        ),
        ChoiceInput("how_known", choices=("measured", "found"), required=False),
        condition_input(),
    ),
    results=(
        Result("rating_hot", "weight", "capacity"),
        Result("rating_after", "weight", "capacity", printed=True),
        Result("rule"),
        Result("rating_hot_asme", "weight", "capacity", printed=True),
        Result("rating_hot_en", "weight", "capacity", printed=True),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    shown=shown,
    shares=("shared/chain-heat", "shared/condition"),
    large="rating_hot",
    example={
        "grade": "80",
        "size": "3/8",
        "rating": "7,100 lb",
        "temperature": "450 °F",
        "how_known": "measured",
        "condition": "marked-good",
    },
    citations=(Citation("osha-1910-184", "1910.184(e)(6)"),),
)
