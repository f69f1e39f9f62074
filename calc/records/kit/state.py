"""How does a part of the kit stand: may it be used, and what is to be done about it?

Judged once, into reasons. Out of use is final; a look that said stop stands until a better one, and is told for good. A
part that nobody looked at, or whose next look is overdue, is careful at best; one without a rating cannot be rated.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc import inputs
from calc.declaration import Citation
from calc.lifting.condition import ALTERED, GOOD
from calc.reasons import Reason, Verdict, caution, note, stop, unknown, verdict_of, within
from calc.records.kit.due import Due, due
from calc.records.kit.part import Look, Part
from calc.records.kit.rating import Rated, rate
from calc.records.kit.wear import Wear, wear
from calc.words.facts import length, message

_NO_DAY = "0000-00-00"
_NEVER = "9999-99-99"


@dataclass(frozen=True)
class State:
    """What is known of a part today, and the reasons that follow from it."""

    part: Part
    rated: Rated
    due: Due
    wear: tuple[Wear, ...]
    reasons: tuple[Reason, ...]

    @property
    def verdict(self) -> Verdict:
        """What the reasons add up to."""
        return verdict_of(self.reasons)

    @property
    def usable(self) -> bool:
        """Whether a rating may be shown as one to use."""
        return self.verdict in ("ok", "caution")

    @property
    def order(self) -> str:
        """What the kit is sorted by: those to be looked at first, then by the day of the next look, those out of use last."""
        if self.part.out is not None:
            return f"{_NEVER} {self.part.number}"
        day = _NO_DAY if self.due.on is None else self.due.on.isoformat()
        return f"{day} {self.part.number}"

    @property
    def citations(self) -> tuple[Citation, ...]:
        """Where its rating and its next look stand."""
        return tuple(dict.fromkeys((*self.rated.citations, *self.due.citations)))


def state_of(part: Part) -> State:
    """How a part stands today."""
    rated, next_look, worn = rate(part), due(part), wear(part)
    reasons = (
        *_out(part),
        *_condition(part),
        *_rating(part, rated),
        *_looks(part, next_look),
        *_worn(worn),
    )
    if verdict_of(reasons) == "unknown" and not any(one.weight == "unknown" for one in reasons):
        reasons = (within("kit-in-use"), *reasons)
    return State(part, rated, next_look, worn, reasons)


def _out(part: Part) -> tuple[Reason, ...]:
    if part.out is None:
        return ()
    return (stop("kit-out", date=part.out.on, why=part.out.why),)


def _condition(part: Part) -> tuple[Reason, ...]:
    if part.condition == GOOD:
        return ()
    code = f"kit-condition-{part.condition or 'not-looked-at'}"
    return (stop(code) if part.condition in (*ALTERED, "damaged") else unknown(code),)


def _rating(part: Part, rated: Rated) -> tuple[Reason, ...]:
    found: list[Reason] = []
    if rated.why is not None:
        found.append((stop if rated.forbidden else unknown)("kit-no-rating", why=rated.why))
    if rated.ties_down:
        found.append(note("kit-ties-down-only", "prohibition"))
    if part.seen.rating and rated.quantity is not None and rated.basis is not None:
        now = rating_seen(rated)
        if now != part.seen.rating:
            found.append(
                caution(
                    "kit-rating-changed", was=part.seen.rating, edition=part.seen.edition, now=rated.quantity
                )
            )
    return tuple(found)


def rating_seen(rated: Rated) -> str:
    """A rating as it is noted beside a part when it is saved, to know later that the tables changed: kilograms, to a gram."""
    return "" if rated.kg is None else f"{rated.kg:.3f} kg"


def _looks(part: Part, next_look: Due) -> tuple[Reason, ...]:
    looked = part.counted
    found: list[Reason] = []
    if (ahead := next((look for look in part.looked if look.ahead), None)) is not None:
        found.append(caution("kit-look-ahead", date=ahead.on, today=inputs.today().isoformat()))
    if looked and looked[0].found in ("stop", "unknown"):
        found.append(_of_last(looked[0]))
    elif any(look.found == "stop" for look in looked):
        found.append(caution("kit-once-stopped", date=_last_stop(looked).on))
    if looked and looked[0].found == "caution":
        found.append(caution("kit-look-careful", date=looked[0].on))
    if next_look.on is None:
        found.append(caution("kit-not-looked-at"))
    elif next_look.overdue:
        found.append(caution("kit-overdue", date=next_look.on.isoformat()))
    elif next_look.soon:
        found.append(note("kit-soon", "mandatory", date=next_look.on.isoformat()))
    return tuple(found)


def _of_last(look: Look) -> Reason:
    code = "kit-look-stopped" if look.found == "stop" else "kit-look-unfinished"
    return (stop if look.found == "stop" else unknown)(code, date=look.on)


def _last_stop(looked: tuple[Look, ...]) -> Look:
    return next(look for look in looked if look.found == "stop")


def _worn(worn: tuple[Wear, ...]) -> tuple[Reason, ...]:
    found: list[Reason] = []
    for one in worn:
        named = message(f"kit-measure-{one.measure}")
        now = length(one.now_m, digits=4)
        if one.out:
            found.append(stop("kit-worn-out", measure=named, now=now))
        elif one.near:
            found.append(caution("kit-worn", measure=named, now=now))
    return tuple(found)


__all__ = ["State", "rating_seen", "state_of"]
