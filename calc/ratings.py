"""Typed look-ups over the rating tables.

Question of the trade: what is this chain rated for, for which use, and where is that printed? The maker's tag or mark
on the part governs; a table serves hardware whose mark is readable and names its grade.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.quantities import NotReadable, fraction_text, from_si, read_quantity, to_si, unit_text
from calc.tables import NoSuchRow, Row, number, table, value_si

LIFTING_GRADES = ("80", "100")
"""Grades of chain that the lifting tables rate (OSHA, Guidance on Safe Sling Use, Tables 1 and 2)."""

TIE_DOWN_ONLY_GRADES = ("30", "43", "70")
"""Grades that tie loads down and never lift (ASTM A413, scope)."""


class NotRated(ValueError):
    """The tables give no rating for this use; the message says why and what exists."""


@dataclass(frozen=True)
class Rating:
    """A rating as printed: its value [kg], the text of the cell with its unit, and where it stands."""

    working_load_limit_kg: float
    printed: str
    source: str
    locator: str
    checked: str


def rating_of(row: Row) -> Rating:
    """The rating in a table row whose value is a weight."""
    return Rating(
        value_si(row, "weight"),
        f"{row['value']} {unit_text(row['unit'])}",
        row["source"],
        row["locator"],
        row["checked"],
    )


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
        raise NotRated(f"size “{typed}” {reason}; sizes are {_both_sizes(rows)}") from reason
    for row in rows:
        as_metric = row.get("size_mm", "")
        if reading.unit == "mm" and as_metric and abs(float(as_metric) - reading.value_si * 1000) < 1e-6:
            return row["size_in"]
        if (
            reading.unit != "mm"
            and fraction_text(from_si(reading.value_si, "in", "length"), 64) == row["size_in"]
        ):
            return row["size_in"]
    raise NotRated(f"size “{typed}” is not in this table; sizes are {_both_sizes(rows)}")


def _both_sizes(rows: tuple[Row, ...]) -> str:
    pairs = dict.fromkeys((row["size_in"], row.get("size_mm", "")) for row in rows)
    return ", ".join(f"{inch} in ({metric} mm)" if metric else f"{inch} in" for inch, metric in pairs)


def chain_lifting_leg(grade: str, size: str) -> Rating:
    """Working load limit of one vertical leg of alloy lifting chain, for grade 80 or 100 and a size as typed.

    Raises NotRated: grades 30, 43 and 70 have no lifting rating (ASTM A413, scope).
    """
    if grade in TIE_DOWN_ONLY_GRADES:
        raise NotRated(f"grade {grade} chain has no lifting rating; it ties loads down only")
    if grade not in LIFTING_GRADES:
        raise NotRated(
            f"grade {grade} is not in the lifting tables; they have grades {' and '.join(LIFTING_GRADES)}"
        )
    size_in = inch_size("chain-lifting", size, grade=grade)
    return rating_of(
        table("chain-lifting").one(
            grade=grade, size_in=size_in, legs="1", angle_from_horizontal="90", unit="lb"
        )
    )


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


def chain_tie_down(grade: str, size: str) -> Rating:
    """Working load limit of a tie-down chain by law (49 CFR 393.108), for grade 30, 43, 70, 80 or 100."""
    grades = table("chain-tie-down").values("grade")
    if grade not in grades:
        raise NotRated(f"grade {grade} is not in the tie-down table; it has grades {', '.join(grades)}")
    size_in = inch_size("chain-tie-down", size, grade=grade)
    return rating_of(table("chain-tie-down").one(grade=grade, size_in=size_in, unit="lb"))


def shackle(grade: str, size: str) -> Rating:
    """Working load limit of a forged anchor or chain shackle by the diameter of its bow (RR-C-271), grade A or B."""
    size_in = inch_size("shackles", size, grade=grade)
    return rating_of(
        table("shackles").one(grade=grade, size_in=size_in, quantity="working_load_limit", unit="short_ton")
    )


@dataclass(frozen=True)
class Density:
    """A material's density: its name, low and high [kg/m3], and where that stands."""

    material: str
    low_kg_per_m3: float
    high_kg_per_m3: float
    source: str
    locator: str


def materials() -> dict[str, str]:
    """Every material of the density table: its key and its name."""
    return {row["material"]: row["material_name"] for row in table("densities").rows}


def density(material: str) -> Density:
    """The density of a material by its key; raises NoSuchRow with the materials that exist."""
    low = table("densities").one(material=material, quantity="density_low")
    high = table("densities").one(material=material, quantity="density_high")
    return Density(
        low["material_name"], to_si(number(low), low["unit"], "density"), to_si(number(high), high["unit"], "density"),
        low["source"], low["locator"],
    )  # fmt: skip


__all__ = [
    "LIFTING_GRADES", "TIE_DOWN_ONLY_GRADES", "Density", "NoSuchRow", "NotRated", "Rating", "chain_lifting_leg",
    "chain_lifting_printed", "chain_tie_down", "density", "inch_size", "materials", "rating_of", "shackle",
]  # fmt: skip
