"""Every rating of the book as a card: what part it is of, what tells it from others, what it is for, the printed number.

A card is shown only for a part that was named and a size that is its own, so each carries its keys as values that the
script can compare: the size in inches and in millimetres, the grade, how many legs, the angle from the horizontal.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from typing import Any

from build_scripts import ratings_index
from build_scripts.table_declaration import declared
from build_scripts.table_view import size_number
from calc.marks import may_lift
from calc.tables import Row

_HITCHES = {
    "straight": "straight",
    "vertical": "straight",
    "choke": "choker",
    "choker": "choker",
    "basket": "basket",
}
_ORDER_OF_GRADES = ("70", "80", "100", "43", "30", "8", "A", "B")
"""The order in which cards of one size stand: what is asked for most comes first."""


@dataclass(frozen=True)
class Card:
    """One rating. `inch` and `mm` are nominal sizes, 0 where there is none; angles are from the horizontal, in degrees."""

    part: str
    label: str
    answer: str
    use: str
    use_words: str
    address: str
    grade: str
    inch: float
    mm: float
    thread: str
    legs: str
    flattest: int
    steepest: int
    hitch: str
    short_tons: float
    metric: bool
    rank: int


def cards(parts: Mapping[str, Any]) -> list[Card]:
    """The cards of each part, in the order in which they are shown."""
    entries = ratings_index.entries()
    made = []
    for part, said in parts.items():
        for place, source in enumerate(said["ratings"]):
            name, _, only = source.partition(":")
            for entry in entries:
                if entry.table == name and (not only or only in entry.row.values()):
                    made.append(_card(part, place, entry))
    return made


def _card(part: str, place: int, entry: ratings_index.Entry) -> Card:
    name, row = entry.table, entry.row
    inches, thread = _of(name, row, "size_inch", "thread"), _of(name, row, "thread")
    if name == "turnbuckles":
        inches = row["thread_in"]
    metric = _of(name, row, "size_metric", "size_metric_printed")
    grade = _of(name, row, "grade")
    flattest, steepest = _angles(name, row)
    quantity = row["quantity"].removeprefix("sling_")
    hitch = _HITCHES.get(row.get("hitch", "straight"), row.get("hitch", "straight"))
    order = _ORDER_OF_GRADES.index(grade) if grade in _ORDER_OF_GRADES else len(_ORDER_OF_GRADES)
    return Card(
        part=part,
        label=entry.label,
        answer=entry.answer,
        use=declared(name).use,
        use_words=entry.use,
        address=entry.address,
        grade=grade,
        inch=size_number(inches) or 0.0 if inches and not inches.upper().startswith("M") else 0.0,
        mm=float(metric) if metric.replace(".", "", 1).isdigit() else 0.0,
        thread=thread.lower() if thread.upper().startswith("M") else "",
        legs=_of(name, row, "legs"),
        flattest=flattest,
        steepest=steepest,
        hitch=_HITCHES.get(quantity, hitch) if row["quantity"].startswith("sling_") else hitch,
        short_tons=_short_tons(row),
        metric=not inches or inches.upper().startswith("M"),
        rank=order * 10 + place + (5 if declared(name).use == "tie_down" and may_lift(grade) else 0),
    )


def _of(name: str, row: Row, *roles: str) -> str:
    return next((row[key] for key in declared(name).with_role(*roles)), "")


def _angles(name: str, row: Row) -> tuple[int, int]:
    """The flattest and the steepest leg, in degrees from the horizontal; 90 where a rating is of a straight pull."""
    if flat := _of(name, row, "angle_from_horizontal"):
        return int(flat), int(flat)
    if upright := _of(name, row, "angle_from_vertical"):
        ends = [int(end) for end in upright.split("-")]
        return 90 - ends[-1], 90 - ends[0]
    return 90, 90


def _short_tons(row: Row) -> float:
    """The rating in short tons where it is printed in them, else 0."""
    if row["unit"] != "short_ton":
        return 0.0
    return size_number(row["value"].replace(" ", "-")) or 0.0


def as_data(made: list[Card]) -> list[list[Any]]:
    """Cards as rows of values, in the order of the fields."""
    return [list(asdict(card).values()) for card in made]


def fields() -> list[str]:
    """The names of a card's values."""
    return list(Card.__dataclass_fields__)


__all__ = ["Card", "as_data", "cards", "fields"]
