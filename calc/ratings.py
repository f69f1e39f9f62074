"""Typed look-ups over the rating tables.

Question of the trade: what is this chain rated for, for which use, and where is that printed? The maker's tag or mark
on the part governs; a table serves hardware whose mark is readable and names its grade.
"""

from __future__ import annotations

import functools
from dataclasses import dataclass

from calc.quantities import NotReadable, fraction_text, from_si, read_quantity, unit_text
from calc.tables import Row, number, table, value_si
from calc.words.facts import Cell, Fact, Listing, message
from calc.words.writer import in_english

LIFTING_GRADES = ("80", "100")
"""Grades of chain that the lifting tables rate (OSHA, Guidance on Safe Sling Use, Tables 1 and 2)."""

METRIC_LIFTING_GRADES = ("4", "5", "8")
"""Grades of metric sling chain that the European tables rate (DGUV Information 209-021 and 201-030, after EN 818-4, -5)."""

FLATTEST_PRINTED_FROM_VERTICAL_DEG = 60.0
STEEP_BAND_FROM_VERTICAL_DEG = 45.0
"""The two bands of the European sling tables: to 45 and from there to 60 degrees from the vertical."""

TIE_DOWN_ONLY_GRADES = ("30", "43", "70")
"""Grades that tie loads down and never lift (ASTM A413, scope)."""


class NotRated(ValueError):
    """The tables give no rating for this use: the message `not-rated-CODE` says why and what exists."""

    def __init__(self, code: str, **facts: Fact) -> None:
        self.why = message(f"not-rated-{code}", **facts)
        super().__init__(code)

    def __str__(self) -> str:
        return in_english(self.why).removeprefix("not-rated-")


@dataclass(frozen=True)
class Rating:
    """A rating as printed: its value [kg], the text of the cell with its unit, and where it stands."""

    working_load_limit_kg: float
    printed: str
    source: str
    locator: str
    checked: str
    cell: Cell


def rating_of(row: Row) -> Rating:
    """The rating in a table row whose value is a weight."""
    return Rating(
        value_si(row, "weight"),
        f"{row['value']} {unit_text(row['unit'])}",
        row["source"],
        row["locator"],
        row["checked"],
        Cell(row["value"], row["unit"]),
    )


@functools.lru_cache(maxsize=1024)
def inch_size(table_name: str, typed: str, **conditions: str) -> str:
    """The table's own inch size for what was typed: `3/8`, `3/8 in`, `0.375`, `10 mm`.

    A bare number that is a metric size of the table (10) is refused where it is not an inch size too, so that no
    twin size is picked in silence.
    Raises NotRated with the sizes that exist.
    """
    rows = table(table_name).where(**conditions)
    for row in rows:
        if typed.strip().rstrip('"').removesuffix("in").strip() == row["size_in"]:
            return row["size_in"]
    try:
        reading = read_quantity(typed, "length", "in")
    except NotReadable as reason:
        raise NotRated(
            "size-not-readable", size=typed, reason=reason.why, sizes=_both_sizes(rows)
        ) from reason
    for row in rows:
        as_metric = row.get("size_mm", "")
        if reading.unit == "mm" and as_metric and abs(float(as_metric) - reading.value_si * 1000) < 1e-6:
            return row["size_in"]
        if (
            reading.unit != "mm"
            and fraction_text(from_si(reading.value_si, "in", "length"), 64) == row["size_in"]
        ):
            return row["size_in"]
    raise NotRated("size-not-listed", size=typed, sizes=_both_sizes(rows))


def _both_sizes(rows: tuple[Row, ...]) -> Listing:
    pairs = dict.fromkeys((row["size_in"], row.get("size_mm", "")) for row in rows)
    return Listing(
        tuple(
            message("size-in-and-mm", inch=Cell(inch), metric=metric)
            if metric
            else message("size-in", inch=Cell(inch))
            for inch, metric in pairs
        )
    )


@functools.lru_cache(maxsize=1024)
def chain_lifting_leg(grade: str, size: str) -> Rating:
    """Working load limit of one vertical leg of alloy lifting chain, for grade 80 or 100 and a size as typed.

    Raises NotRated: grades 30, 43 and 70 have no lifting rating (ASTM A413, scope).
    """
    if grade in TIE_DOWN_ONLY_GRADES:
        raise NotRated("ties-down-only", grade=grade)
    if grade not in LIFTING_GRADES:
        raise NotRated("grade-not-lifting", grade=grade, grades=Listing(LIFTING_GRADES, "and"))
    size_in = inch_size("chain-lifting", size, grade=grade)
    return rating_of(
        table("chain-lifting").one(
            grade=grade, size_in=size_in, legs="1", angle_from_horizontal="90", unit="lb"
        )
    )


@functools.lru_cache(maxsize=1024)
def chain_lifting_printed(
    grade: str, size: str, legs: int, angle_from_horizontal_deg: float
) -> Rating | None:
    """The printed cell of a whole chain sling at exactly a printed angle (60, 45 or 30 degrees); None elsewhere."""
    size_in = inch_size("chain-lifting", size, grade=grade)
    column = {1: "1", 2: "2"}.get(legs, "3-4")
    for row in table("chain-lifting").where(grade=grade, size_in=size_in, legs=column, unit="lb"):
        if abs(float(row["angle_from_horizontal"]) - angle_from_horizontal_deg) < 1e-6:
            return rating_of(row)
    return None


@functools.lru_cache(maxsize=1024)
def metric_size(grade: str, typed: str) -> str:
    """The metric table's own size for what was typed: `10 mm` or `10`.

    Inches are refused: metric sling chain is tagged in millimetres, and near-twins (3/8 in, 10 mm) are not one chain.
    Raises NotRated with the sizes that exist, or where the grade is not a metric one.
    """
    if grade not in METRIC_LIFTING_GRADES:
        raise NotRated("grade-not-metric", grade=grade, grades=Listing(METRIC_LIFTING_GRADES))
    sizes = tuple(dict.fromkeys(row["size_mm"] for row in table("chain-lifting-metric").where(grade=grade)))
    try:
        reading = read_quantity(typed, "length", "mm")
    except NotReadable as reason:
        raise NotRated(
            "metric-size-not-readable", size=typed, reason=reason.why, sizes=Listing(sizes)
        ) from reason
    if reading.unit == "mm":
        for size in sizes:
            if abs(float(size) - reading.value_si * 1000) < 1e-6:
                return size
    raise NotRated("metric-size-not-listed", size=typed, grade=grade, sizes=Listing(sizes))


@functools.lru_cache(maxsize=1024)
def metric_chain_leg(grade: str, size: str) -> Rating:
    """Working load limit of one straight leg of metric sling chain of grade 4, 5 or 8, as printed. Raises NotRated."""
    size_mm = metric_size(grade, size)
    return rating_of(
        table("chain-lifting-metric").one(grade=grade, size_mm=size_mm, legs="1", hitch="straight")
    )


def angle_band_from_vertical(angle_from_horizontal_deg: float) -> str | None:
    """The band of the European tables for legs at an angle [deg from horizontal]: `0-45` or `45-60` from the vertical;
    None for flatter legs, which they do not rate.
    """
    from_vertical = 90.0 - angle_from_horizontal_deg
    if from_vertical <= STEEP_BAND_FROM_VERTICAL_DEG + 1e-9:
        return "0-45"
    return "45-60" if from_vertical <= FLATTEST_PRINTED_FROM_VERTICAL_DEG + 1e-9 else None


@functools.lru_cache(maxsize=1024)
def metric_chain_printed(grade: str, size: str, legs: int, angle_from_horizontal_deg: float) -> Rating | None:
    """The printed cell of a whole metric sling of 2 to 4 legs at an angle; None past 60 degrees from the vertical."""
    size_mm, band = metric_size(grade, size), angle_band_from_vertical(angle_from_horizontal_deg)
    if band is None:
        return None
    return rating_of(
        table("chain-lifting-metric").one(
            grade=grade,
            size_mm=size_mm,
            legs="2" if legs == 2 else "3-4",
            hitch="straight",
            angle_from_vertical=band,
        )
    )


@dataclass(frozen=True)
class Counting:
    """How a printed source counts the legs of a sling: legs (OSHA) or times one leg (EN), and where that stands."""

    value: float
    source: str
    locator: str


def legs_counted_by_osha(legs: int) -> Counting:
    """How many of 2, 3 or 4 legs the OSHA sling tables rate (Guidance on Safe Sling Use, Tables 1 and 2)."""
    return _counting(legs, "legs_counted", "osha-sling-guidance")


def mode_factor(legs: int, angle_from_horizontal_deg: float) -> Counting | None:
    """What 2, 3 or 4 legs may lift over what one may (EN 818-4, mode factors); None past 60 degrees from the vertical."""
    band = angle_band_from_vertical(angle_from_horizontal_deg)
    return None if band is None else _counting(legs, f"mode_factor_{band.replace('-', '_')}", "en-818-4")


@functools.lru_cache(maxsize=1024)
def _counting(legs: int, quantity: str, source: str) -> Counting:
    row = table("sling-leg-counting").one(legs=str(legs), quantity=quantity, source=source)
    return Counting(number(row), row["source"], row["locator"])


@functools.lru_cache(maxsize=1024)
def chain_tie_down(grade: str, size: str) -> Rating:
    """Working load limit of a tie-down chain by law (49 CFR 393.108), for grade 30, 43, 70, 80 or 100."""
    grades = table("chain-tie-down").values("grade")
    if grade not in grades:
        raise NotRated("grade-not-tie-down", grade=grade, grades=Listing(grades))
    size_in = inch_size("chain-tie-down", size, grade=grade)
    return rating_of(table("chain-tie-down").one(grade=grade, size_in=size_in, unit="lb"))


@functools.lru_cache(maxsize=1024)
def shackle(grade: str, size: str) -> Rating:
    """Working load limit of a forged anchor or chain shackle by the diameter of its bow (RR-C-271), grade A or B."""
    size_in = inch_size("shackles", size, grade=grade)
    return rating_of(
        table("shackles").one(grade=grade, size_in=size_in, quantity="working_load_limit", unit="short_ton")
    )


__all__ = [
    "LIFTING_GRADES", "METRIC_LIFTING_GRADES", "TIE_DOWN_ONLY_GRADES", "Counting", "NotRated", "Rating",
    "angle_band_from_vertical", "chain_lifting_leg", "chain_lifting_printed", "chain_tie_down", "inch_size",
    "legs_counted_by_osha", "metric_chain_leg", "metric_chain_printed", "metric_size", "mode_factor", "rating_of", "shackle",
]  # fmt: skip
