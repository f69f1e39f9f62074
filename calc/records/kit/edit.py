"""Makes a part of what was typed into its form, adds a look to it, or takes it out of use; refuses box by box.

What was out of use stays so. A part that was altered is saved only together with being taken out of use.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from calc.quantities import NotReadable
from calc.records.kit.part import Look, NoPart, Out, Part, Seen, part_of
from calc.records.kit.rating import rate
from calc.records.kit.reading import carrying_unit, day_text
from calc.records.kit.schema import FOUND, KINDS, MEASURES, OUT_CONDITIONS, SIZED_KINDS
from calc.records.kit.state import rating_seen
from calc.words.facts import Message, message
from calc.words.writer import UnitSystem

ALTERED_CRITERION = "altered"
"""The criterion of judging sheets that, found, takes a part out of use at once."""
_BAD = ("worn", "damaged")
"""Conditions that an inspection must have passed before the part is used again."""
TEXT_FIELDS = ("number", "name", "mark", "other_marks", "size", "tag")
CHOICE_FIELDS = ("kind", "condition", "bought", "place", "service")


class NotSaved(ValueError):
    """What was typed cannot be saved: what is wrong with each box, by its name."""

    def __init__(self, errors: Mapping[str, Message]) -> None:
        self.errors = dict(errors)
        super().__init__(", ".join(errors))


class _Boxes:
    """Reads boxes, and gathers what is wrong with them."""

    def __init__(self, fields: Mapping[str, str]) -> None:
        self._fields = fields
        self.errors: dict[str, Message] = {}

    def text(self, name: str) -> str:
        """What stands in a box, on one line."""
        return " ".join(self._fields.get(name, "").split())

    def read(self, name: str, reader: Callable[[str], str]) -> str:
        """What stands in a box, as `reader` keeps it; nothing where it cannot be read."""
        typed = self.text(name)
        try:
            return reader(typed)
        except NotReadable as reason:
            self.refuse(name, message("kit-not-read", typed=typed[:60], reason=reason.why))
            return ""

    def needed(self, name: str, choices: Sequence[str] = ()) -> str:
        """What must stand in a box."""
        typed = self.text(name)
        if not typed or (choices and typed not in choices):
            self.refuse(name, message("kit-needed"))
        return typed

    def refuse(self, name: str, why: Message) -> None:
        """Note what is wrong with a box; the first counts."""
        self.errors.setdefault(name, why)

    def done(self) -> None:
        """Raises NotSaved if anything was wrong."""
        if self.errors:
            raise NotSaved(self.errors)


def edited(
    fields: Mapping[str, str],
    before: Part | None,
    part_id: str,
    edition: str,
    units: UnitSystem,
    *,
    number_taken: bool = False,
) -> Part:
    """The part that the form describes: a new one, or `before` with what was typed. Raises NotSaved.

    number_taken -- another part of the kit bears the number: it is refused where it is new to this part. A part that was
        inspected stays of its kind, for its inspections would pass another.
    """
    boxes = _Boxes(fields)
    number, kind = boxes.needed("number"), boxes.needed("kind", KINDS)
    if number_taken and (before is None or before.number != number):
        boxes.refuse("number", message("kit-number-taken"))
    if before is not None and before.looks and before.kind != kind:
        boxes.refuse("kind", message("kit-kind-inspected", kind=message(f"kit-kind-{before.kind}")))
    size = boxes.read("size", lambda typed: _size(typed, boxes.text("kind"), units))
    rating = boxes.read("rating", lambda typed: carrying_unit(typed, "weight", units))
    bought_on = boxes.read("bought_on", day_text)
    new = _sizes(boxes, "new", units)
    out = before.out if before else None
    condition = boxes.text("condition")
    altered = condition in OUT_CONDITIONS
    if boxes.text("out_why") and out is None:
        day = boxes.read("out_on", day_text)
        out = Out(day or day_text("today"), boxes.text("out_why"), boxes.text("out_by"))
    if altered and out is None:
        boxes.refuse("out_why", message("kit-altered-only-out"))
    boxes.done()
    data = {
        **{name: boxes.text(name) for name in (*TEXT_FIELDS, *CHOICE_FIELDS)},
        "id": part_id,
        "size": size,
        "rating": rating,
        "bought_on": bought_on,
        "new": new,
        "looks": [look.to_data() for look in (*before.looks, *_found_bad(before, condition))]
        if before
        else [],
        "out": None if out is None else vars(out),
        "seen": {"rating": "", "edition": ""},
        "photo": fields.get("photo", ""),
    }
    return noted(_whole(data), edition)


def _found_bad(before: Part, condition: str) -> tuple[Look, ...]:
    """A look of today that found it not fit, where a part that had passed is now said to be worn or damaged: to say later
    that it is good again does not bring it back, an inspection does.
    """
    if condition not in _BAD or before.condition == condition or before.last_good is None:
        return ()
    return (Look(day_text("today"), "", "stop", "", "", {}),)


def _size(typed: str, kind: str, units: UnitSystem) -> str:
    """A size as the tables have it: a bare fraction is of an inch to every reader."""
    if kind not in SIZED_KINDS:
        return typed
    return carrying_unit(typed, "length", units, "in" if "/" in typed else "")


def _sizes(boxes: _Boxes, prefix: str, units: UnitSystem) -> dict[str, str]:
    return {
        name: boxes.read(f"{prefix}_{name}", lambda typed: carrying_unit(typed, "length", units))
        for name in MEASURES
    }


def _whole(data: Mapping[str, object]) -> Part:
    """The part, or the refusal of the box that the schema does not take."""
    try:
        return part_of(data)
    except NoPart as why:
        box = why.fault.path.partition(".")[0].partition("[")[0]
        raise NotSaved(
            {box: message("kit-too-long" if why.fault.broken == "maxLength" else "kit-not-taken")}
        ) from why


def noted(part: Part, edition: str) -> Part:
    """The part with the rating that stands beside it now, to know later that the tables changed."""
    seen = rating_seen(rate(part))
    return replace(part, seen=Seen(seen, edition if seen else ""))


def looked_at(
    fields: Mapping[str, str], part: Part, units: UnitSystem, sheet: str = "", altered: bool = False
) -> Part:
    """The part with one more look. A look that found it altered takes it out of use. Raises NotSaved."""
    boxes = _Boxes(fields)
    boxes.needed("on")
    on = boxes.read("on", day_text)
    by = boxes.needed("by")
    found = boxes.needed("found", FOUND)
    readings = _sizes(boxes, "reading", units)
    boxes.done()
    look = Look(on, by, found, sheet, boxes.text("note"), readings)
    looked = _whole({**part.to_data(), "looks": [*(one.to_data() for one in part.looks), look.to_data()]})
    return looked.taken_out(Out(on, ALTERED_CRITERION, by)) if altered else looked


def taken_out(fields: Mapping[str, str], part: Part) -> Part:
    """The part out of use, for good. Raises NotSaved."""
    boxes = _Boxes(fields)
    why, by = boxes.needed("out_why"), boxes.text("out_by")
    on = boxes.read("out_on", day_text) or day_text("today")
    boxes.done()
    return _whole(part.taken_out(Out(on, why, by)).to_data())


__all__ = ["ALTERED_CRITERION", "NotSaved", "edited", "looked_at", "noted", "taken_out"]
