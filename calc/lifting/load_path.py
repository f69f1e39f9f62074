"""Which part of my rigging gives first?

A string of parts from the overhead support to the load. Every part carries the whole load, or its leg's share of it;
none adds to another. The string holds what its weakest part holds, and one part that may not be used stops it
(calc.lifting.path_items).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from calc.figures.paths import PathBar, path_figure
from calc.lifting.leg_geometry import CAREFUL_ANGLE_DEG, LOWEST_ANGLE_DEG, legs_that_count
from calc.lifting.path_items import CONDITIONS, ItemRating, PathItem, path_item_inputs, rate_item, read_items
from calc.quantities import number_text
from calc.worksheet import (
    Answer,
    Caution,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
    worst,
)


@dataclass(frozen=True)
class PathPart:
    """One part under the load: what one of them feels [kg], what load on the string it allows [kg] or None."""

    rating: ItemRating
    pull_kg: float
    allows_kg: float | None

    @property
    def item(self) -> PathItem:
        """The part itself."""
        return self.rating.item

    @property
    def share(self) -> float | None:
        """Part of its usable rating that the load takes [-]; None if it may not be used."""
        return self.pull_kg / self.rating.rating_kg if self.rating.rating_kg else None


def part_under(item: PathItem, load_kg: float) -> PathPart:
    """A part with the load on the string: each of its legs that count takes load / (legs x sin angle)."""
    rating = rate_item(item)
    share_of_load = 1.0 / (legs_that_count(item.legs) * math.sin(math.radians(item.angle_deg)))
    allows = None if rating.rating_kg is None else rating.rating_kg / share_of_load
    return PathPart(rating, load_kg * share_of_load, allows)


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    load_kg = given.si("load")
    parts = [part_under(item, load_kg) for item in read_items(given)]
    blocked = [part for part in parts if part.rating.blocked]
    usable = [(part.allows_kg, part) for part in parts if part.allows_kg is not None]
    weakest = min(usable, key=lambda pair: pair[0]) if usable and not blocked else None
    capacity = weakest[0] if weakest else None
    governing = weakest[1] if weakest else _worst_blocked(blocked)
    return Answer(
        verdict=_verdict(parts, load_kg, capacity),
        headline=_headline(
            say,
            load_kg,
            capacity,
            governing,
            blocked,
            next((part for part in parts if _low_legs(part, LOWEST_ANGLE_DEG)), None),
        ),
        big="capacity",
        results={
            "capacity": capacity,
            "governing": governing.item.label,
            "share": [part.share for part in parts],
            "blocked": [part.rating.reason for part in blocked],
            "pulls": [part.pull_kg for part in parts],
        },
        shown=_shown(say, parts, capacity, blocked),
        steps=tuple(step for part in parts for step in _steps(say, load_kg, part)),
        cautions=_cautions(parts, load_kg, capacity),
        figure=path_figure([PathBar(part.item.label, part.share, part is governing) for part in parts]),
        citations=tuple(dict.fromkeys(c for part in parts for c in part.rating.citations)),
    )


def _worst_blocked(blocked: list[PathPart]) -> PathPart:
    """The part to name first: one that is forbidden before one that cannot be rated."""
    return min(blocked, key=lambda part: part.rating.verdict != "stop")


def _low_legs(part: PathPart, below_deg: float) -> bool:
    return part.item.angle_deg < below_deg - 1e-9


def _verdict(parts: list[PathPart], load_kg: float, capacity: float | None) -> Verdict:
    verdicts: list[Verdict] = [part.rating.verdict for part in parts]
    if capacity is not None and load_kg > capacity * (1 + 1e-12):
        verdicts.append("stop")
    if any(_low_legs(part, LOWEST_ANGLE_DEG) for part in parts):
        verdicts.append("stop")
    if any(_low_legs(part, CAREFUL_ANGLE_DEG) for part in parts) or any(p.rating.from_memory for p in parts):
        verdicts.append("caution")
    return worst(*verdicts)


def _headline(
    say: Say,
    load_kg: float,
    capacity: float | None,
    governing: PathPart,
    blocked: list[PathPart],
    low: PathPart | None,
) -> str:
    if capacity is None:
        first = governing.rating.reason
        more = f" {len(blocked) - 1} more may not be used either." if len(blocked) > 1 else ""
        end = "Do not lift" if governing.rating.verdict == "stop" else "The whole string cannot be rated"
        return f"{end}: {first}.{more}"
    first = f"The whole string holds {say.weight(capacity, 'down')}: {governing.item.label} gives first."
    share = number_text(load_kg / capacity * 100, 3, "up")
    if load_kg > capacity * (1 + 1e-12):
        return f"{first} Your load is {share}% of that. Do not lift."
    if low:
        return f"{first} But {low.item.label} lies under 30° from the horizontal: do not lift like this."
    return f"{first} Your load takes {share}% of it."


def _shown(
    say: Say, parts: list[PathPart], capacity: float | None, blocked: list[PathPart]
) -> dict[str, str | tuple[str, ...]]:
    shares = []
    for part in parts:
        share = "may not be used" if part.share is None else f"{number_text(part.share * 100, 3, 'up')}%"
        shares.append(f"{part.item.label}: {share}")
    shown: dict[str, str | tuple[str, ...]] = {
        "share": tuple(shares),
        "blocked": tuple(part.rating.reason for part in blocked),
        "pulls": tuple(f"{part.item.label}: {say.weight(part.pull_kg, 'up')}" for part in parts),
    }
    if capacity is None:
        shown["capacity"] = "no capacity while a part may not be used"
    return shown


def _steps(say: Say, load_kg: float, part: PathPart) -> tuple[Step, ...]:
    item, rating = part.item, part.rating
    counted = legs_that_count(item.legs)
    alone = counted == 1 and item.angle_deg == 90.0
    pull = Step(
        f"Pull on {item.label}",
        "load" if alone else f"load / (legs that count, {counted} of {item.legs}, × sin angle)",
        ""
        if alone
        else f"{say.one(load_kg, 'weight')} / ({counted} × sin {number_text(item.angle_deg, 3)}°)",
        say.weight(part.pull_kg, "up"),
    )
    if rating.rating_kg is None or rating.straight_kg is None:
        return pull, Step(
            f"Rating of {item.label}", "mark, table and condition", CONDITIONS[item.condition], "none"
        )
    shares = "".join(f" × {share.share:.3f} ({share.words})" for share in rating.shares)
    return pull, Step(
        f"Rating of {item.label}",
        "straight rating × what its use leaves",
        f"{say.one(rating.straight_kg, 'weight')} ({rating.printed}){shares}",
        say.weight(rating.rating_kg, "down"),
    )


def _cautions(parts: list[PathPart], load_kg: float, capacity: float | None) -> tuple[Caution, ...]:
    cautions: list[Caution] = []
    for part in parts:
        if part.rating.blocked:
            cautions.append(Caution(f"{part.rating.reason}. Take it out of the string.", "prohibition"))
    if any(part.item.condition in ("welded", "heated", "bent", "home-made") for part in parts):
        cautions.append(
            Caution(
                "A pull that an altered part survives proves only that pull. Cracks, hardness and fatigue give no warning.",
            )
        )
    if capacity is not None and load_kg > capacity * (1 + 1e-12):
        cautions.append(Caution("The load is over what the string holds. Do not lift.", "prohibition"))
    if any(_low_legs(part, LOWEST_ANGLE_DEG) for part in parts):
        cautions.append(
            Caution("No sling goes under 30° from the horizontal. Use longer legs.", "prohibition")
        )
    kinds = [part.item.kind for part in parts]
    if any(first == second for first, second in pairwise(kinds)):
        cautions.append(
            Caution("Two parts one after the other do not add: each carries the whole load, and the weaker one gives.", "note")
        )  # fmt: skip
    if any(part.item.legs > 1 for part in parts):
        cautions.append(
            Caution(
                "Legs share only by their angle, and the one ring or hook above them still carries the whole load.",
                "note",
            )
        )
    if any(part.rating.from_memory for part in parts):
        cautions.append(
            Caution("A rating marked here as from memory was not seen in its source. Read the mark on the part instead.")
        )  # fmt: skip
    cautions.append(
        Caution(
            "The mark or tag on each part governs. Look each part over before the lift: a table knows only sound parts.",
            "mandatory",
        )
    )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="load-path",
    title="Which part of my rigging gives first?",
    summary="What a string of parts holds from the overhead support to the load, and which part limits or stops it.",
    inputs=(
        Input("load", "Weight of the load", "quantity", "weight", above=0, at_most=2_000_000,
              help="All that hangs below: the load, its fluids and the rigging."),
        Input("items", "Parts, from the support down to the load", "rows", columns=path_item_inputs(), at_least=1, at_most=40,
              help="Every part once, in order: hoist, hook, ring, legs, shackles, eyebolts."),
    ),
    results=(
        Result("capacity", "The whole string holds", "weight", rounding="down"),
        Result("governing", "Gives first"),
        Result("share", "Part of each rating used", "fraction", rounding="up"),
        Result("pulls", "Pull on each part", "weight", rounding="up"),
        Result("blocked", "May not be used"),
    ),
    compute=compute,
    example={
        "load": "3,900 lb",
        "items": [
            {"label": "chain hoist", "kind": "hoist", "condition": "marked-good", "rating": "3 tons"},
            {"label": "top ring", "kind": "ring", "condition": "marked-good", "rating": "12,300 lb"},
            {"label": "sling legs", "kind": "chain", "condition": "marked-good", "grade": "80", "size": "9/32", "legs": "2",
             "angle": "60°"},
            {"label": "shackles", "kind": "shackle", "condition": "marked-good", "rating": "2 tons", "legs": "2",
             "angle": "60°"},
        ],
    },
    example_story="The yard checks the string it means to lift a diesel with: hoist, ring, two chain legs, two shackles.",
    citations=(
        Citation("osha-1926-251", "1926.251(b)(2), fittings rated at least as their chain"),
        Citation("astm-a413", "s. 1.1 scope, grades that do not lift"),
    ),
)  # fmt: skip
