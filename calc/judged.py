"""What a judging sheet found, as one more look at a part of the kit; and what a part gives to a worksheet's boxes.

The look comes from the sheet's own reasons and findings, worked out here from what was typed, never from what a page shows. A
sheet that found the part altered takes it out of use for good. A part hands its mark, size and rating over, and that it is
marked and good only where its inspection is in date and nothing stands against it: without that no worksheet passes it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from calc.answering import worksheet
from calc.inputs import read_inputs
from calc.inspecting.inspection import Inspected
from calc.lifting.condition import GOOD
from calc.reasons import verdict_of
from calc.records.kit.edit import looked_at
from calc.records.kit.part import Part
from calc.records.kit.reading import carrying_unit
from calc.records.kit.state import State
from calc.telling import reading
from calc.words.writer import UnitSystem, Writer

ALTERED_CRITERIA = ("altered", "welds", "heat", "homemade-links", "heat-damage", "welded-on")
"""Criteria of judging sheets that, found, mean that a part is no longer what its maker tested."""
MEASURED_INPUTS: Mapping[str, str] = {
    "throat": "throat_now",
    "section": "section_now",
    "body": "body_now",
    "pin": "pin_now",
    "thickness": "thickness_now",
    "reach": "reach_now",
}
"""The box of a judging sheet that holds each reading of a kit."""
NEW_INPUTS: Mapping[str, str] = {
    "throat": "throat_new",
    "section": "section_new",
    "body": "body_new",
    "pin": "pin_new",
    "reach": "reach_new",
}
_ROW = "items[+]"
"""A row that is added to those that stand there."""
_PATH_KINDS = {"chain-sling": "chain", "crane-hook": "other"}
_TIE_DOWN_KINDS = {"tie-down-chain": "chain", "strap": "web"}


def judged(name: str, raw: Mapping[str, Any], part: Part, units: UnitSystem) -> Part:
    """The part with the look that worksheet `name` judged. Raises BadInput, or NotSaved for a look without day or name."""
    sheet = worksheet(name)
    given = read_inputs(sheet.inputs, raw, reading(sheet, Writer(units, "en", sheet.scopes)))
    found = sheet.find(given)
    inspected: Inspected = found.inspected
    failed = {one.criterion for one in inspected.findings if one.outcome == "fail" and one.decides}
    day = given.date("inspected_on")
    fields = {
        "on": "" if day is None else day.isoformat(),
        "by": given.text("inspected_by"),
        "found": verdict_of(sheet.judge(found)),
        **{f"reading_{measure}": given.typed.get(box, "") for measure, box in MEASURED_INPUTS.items()},
    }
    new = {
        measure: part.new.get(measure, "")
        or carrying_unit(given.typed.get(NEW_INPUTS.get(measure, ""), ""), "length", units)
        for measure in MEASURED_INPUTS
    }
    altered = bool(failed.intersection(ALTERED_CRITERIA))
    return looked_at(fields, replace(part, new=new), units, name, altered)


def handed_over(state: State) -> dict[str, dict[str, str]]:
    """What a part gives to the boxes of other worksheets, by the worksheet and the name of the box; nothing for one that may
    not be used. Its label carries its number and its last inspection into the answer.
    """
    part = state.part
    if not state.usable:
        return {}
    last = part.last_good
    label = f"{part.number} ({last.on if last else '-'})"
    in_date = last is not None and not state.due.overdue and part.condition == GOOD
    good = {"condition": GOOD} if in_date else {}
    if state.rated.ties_down:
        return _to_tie_down(part, good)
    row = {"label": label, "kind": _PATH_KINDS.get(part.kind, part.kind), **good}
    row |= {"grade": part.mark, "size": part.size, "rating": part.rating}
    row = {name: value for name, value in row.items() if value}
    return {"load-path": {f"{_ROW}.{name}": value for name, value in row.items()}}


def _to_tie_down(part: Part, good: Mapping[str, str]) -> dict[str, dict[str, str]]:
    kind = _TIE_DOWN_KINDS.get(part.kind)
    if kind is None:
        return {}
    row = {
        "kind": kind,
        "limit": part.rating,
        **good,
    }
    if kind == "chain":
        row |= {"grade": part.mark, "size": part.size}
    return {"tie-down": {f"tie_downs[+].{name}": value for name, value in row.items() if value}}


__all__ = ["ALTERED_CRITERIA", "MEASURED_INPUTS", "NEW_INPUTS", "handed_over", "judged"]
