"""What a judging sheet found, as one more look at a part of the kit; and what a part gives to a worksheet's boxes.

The look comes from the sheet's own reasons and findings, worked out here from what was typed, never from what a page shows. A
sheet that found the part altered takes it out of use for good. A part hands its mark, size and rating over, and that it is
marked and good only where its inspection is in date and nothing stands against it: without that no worksheet passes it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from calc.answering import worksheet
from calc.hauling.tie_down_items import CONDITIONS as TIE_DOWN_CONDITIONS
from calc.inputs import read_inputs
from calc.inspecting.inspection import Inspected
from calc.lifting.condition import ALTERED, CONDITIONS, GOOD
from calc.lifting.own_part import CAREFUL, NEVER, NOT_PASSED, PASSED
from calc.reasons import verdict_of
from calc.records.kit.edit import ALTERED_CRITERION, looked_at
from calc.records.kit.part import Part
from calc.records.kit.reading import carrying_unit
from calc.records.kit.schema import KINDS, TIE_DOWN_KINDS
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
_PATH_KINDS = {"chain-sling": "chain", "crane-hook": "other"}
_TIE_DOWN_KINDS = {"tie-down-chain": "chain", "strap": "web"}
_LEG_KINDS = {"chain-sling": "chain", "wire-rope": "wire-rope", "web-sling": "web"}
_HITCH_KINDS = {
    "chain-sling": "chain",
    "wire-rope": "wire-rope",
    "web-sling": "web-sling",
    "fibre-rope": "fibre-rope",
}
_UNGRADED = ("wire-rope", "web", "web-sling", "fibre-rope")
"""What worksheets call parts that bear no grade."""
_SAID_BY_DAYS = frozenset(("kit-not-looked-at", "kit-overdue"))
"""Cautions of the kit that a worksheet finds by itself in the days that it is told."""


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


def taken_from(state: State) -> dict[str, str]:
    """What every worksheet is told of an own part: its number, how its last full inspection ended, its day, and the next
    (calc.lifting.own_part). Nothing that stands against it in the kit is left out: a part that may not be used has not passed.
    """
    part, looked = state.part, state.part.counted
    against = {one.code for one in state.reasons if one.weight == "caution"} - _SAID_BY_DAYS
    if not looked and state.verdict != "stop":
        last_look = NEVER
    elif state.verdict == "stop" or not looked[0].good:
        last_look = NOT_PASSED
    else:
        last_look = CAREFUL if against else PASSED
    return {
        "own_number": part.number,
        "last_look": last_look,
        "looked_on": looked[0].on if looked and not looked[0].ahead else "",
        "look_due": "" if state.due.on is None else state.due.on.isoformat(),
    }


def boxes_for(name: str, state: State) -> dict[str, str] | None:
    """What a part puts into the boxes of worksheet `name` (of one row, where its rows are parts), empty ones too, so that
    nothing of another part stays; None where the worksheet has no place for it. Its condition counts as good only while its
    inspection is in date; else the reader is asked.
    """
    part, takes = state.part, _TAKES.get(name)
    if takes is None or part.kind not in takes.kinds:
        return None
    told = taken_from(state)
    in_date = told["last_look"] in (PASSED, CAREFUL) and not state.due.overdue
    condition = part.condition if part.condition != GOOD or (in_date and state.usable) else ""
    kind = takes.kinds[part.kind]
    graded = kind not in _UNGRADED
    given = {
        "label": part.number,
        takes.kind: kind,
        "grade": part.mark if graded else "",
        takes.size: part.size,
        takes.rating: part.rating,
        "condition": condition if condition in takes.conditions else "",
    }
    return told | {box: value for box, value in given.items() if box in takes.boxes}


def on_tag(state: State) -> dict[str, str]:
    """What a part gives to the worksheet of tags; empty boxes too, so that nothing of another part stays. The tag of a part
    that may not be used says so.
    """
    part, looked = state.part, state.part.counted
    finding = ""
    if part.condition in ALTERED or (part.out is not None and part.out.why == ALTERED_CRITERION):
        finding = "altered"
    elif state.verdict == "stop" or (looked and looked[0].found == "stop"):
        finding = "failed"
    elif part.condition == "unmarked":
        finding = "unmarked"
    elif looked and looked[0].good:
        finding = "passed"
    return {
        "own_number": part.number,
        "finding": finding,
        "mark": part.mark,
        "rating": part.rating,
        "inspected_on": looked[0].on if looked and not looked[0].ahead else "",
        "months": str(state.due.months),
        "inspected_by": looked[0].by if looked else "",
    }


def kinds_taken(name: str) -> Mapping[str, str]:
    """The kinds of part that worksheet `name` has a place for, with what it calls them."""
    return _TAKES[name].kinds if name in _TAKES else {}


@dataclass(frozen=True)
class _Takes:
    """What a worksheet takes of a part: what it calls each kind, and its boxes for kind, size and rating."""

    kinds: Mapping[str, str]
    boxes: tuple[str, ...]
    kind: str = "kind"
    size: str = "size"
    rating: str = "rating"
    conditions: tuple[str, ...] = CONDITIONS


_PARTS = _Takes(
    {kind: _PATH_KINDS.get(kind, kind) for kind in KINDS if kind not in TIE_DOWN_KINDS},
    ("label", "kind", "grade", "size", "rating", "condition"),
)
_TAKES: Mapping[str, _Takes] = {
    "load-path": _PARTS,
    "pull-trial": _PARTS,
    "sling-legs": _Takes(
        _LEG_KINDS, ("leg_kind", "grade", "size", "leg_rating", "condition"), "leg_kind", rating="leg_rating"
    ),
    "hanging-load": _Takes(
        _LEG_KINDS, ("leg_kind", "grade", "chain_size", "condition"), "leg_kind", size="chain_size"
    ),
    "hitch": _Takes(_HITCH_KINDS, ("sling_kind", "grade", "rating", "condition"), "sling_kind"),
    "tie-down": _Takes(
        _TIE_DOWN_KINDS,
        ("kind", "grade", "size", "limit", "condition"),
        rating="limit",
        conditions=TIE_DOWN_CONDITIONS,
    ),
}
"""The worksheets that take a part of the kit."""


def handed_over(state: State) -> dict[str, dict[str, str]]:
    """What a part gives to the worksheet for parts of its use, by the names of its boxes in a row of its own; nothing for one
    that may not be used.
    """
    if not state.usable:
        return {}
    name, rows = ("tie-down", "tie_downs") if state.rated.ties_down else ("load-path", "items")
    boxes = boxes_for(name, state)
    if boxes is None:
        return {}
    return {name: {f"{rows}[+].{box}": value for box, value in boxes.items() if value}}


__all__ = [
    "ALTERED_CRITERIA",
    "MEASURED_INPUTS",
    "NEW_INPUTS",
    "boxes_for",
    "handed_over",
    "judged",
    "kinds_taken",
    "on_tag",
    "taken_from",
]
