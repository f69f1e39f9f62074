"""How hard can the steel beside a bead become?

Carbon equivalent of the International Institute of Welding, with the weldability bands of the table
carbon-equivalent-bands. Hardness of full martensite by three fits (Yurioka 1987, Duren 1981, Maynier 1978) and of
the zone beside a bead by Yurioka 1987 with the cooling time. The coefficients are from memory; the three fits check
one another, and results are only given as a range over them and over the steel's composition limits.
"""

from __future__ import annotations

import functools
import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from calc.quantities import from_si
from calc.tables import number, table
from calc.words.facts import Absent, Fact, Number, absent, message

ELEMENTS = (
    ("carbon", "C"),
    ("manganese", "Mn"),
    ("silicon", "Si"),
    ("chromium", "Cr"),
    ("nickel", "Ni"),
    ("molybdenum", "Mo"),
    ("vanadium", "V"),
    ("copper", "Cu"),
)
"""Elements that count, and their signs."""
LOWEST_CARBON_PCT, HIGHEST_CARBON_PCT = 0.10, 0.50
"""Carbon range in which hardness is answered [percent]: where the three martensite fits agree within 10 percent."""
MOST_ALLOY_PCT = 5.0
"""Greatest manganese + nickel + chromium + molybdenum [percent] (limit of Maynier 1978)."""

Composition = Mapping[str, float]
"""Percent by weight of each element of ELEMENTS; a missing one counts as none."""


@dataclass(frozen=True)
class Steel:
    """The composition limits of a steel [percent by weight]."""

    name: str
    low: Composition
    high: Composition

    def corners(self) -> Iterator[Composition]:
        """Leanest, middle and richest composition."""
        yield self.low
        yield {element: (self.low[element] + self.high[element]) / 2 for element in self.high}
        yield self.high


def steel_names() -> tuple[str, ...]:
    """The steels of the table steel-compositions."""
    return table("steel-compositions").values("steel")


@functools.cache
def steel(name: str) -> Steel:
    """The limits of a steel of the table; where only one limit is printed, the other is none at all."""
    low: dict[str, float] = {}
    high: dict[str, float] = {}
    signs = dict(ELEMENTS)
    for row in table("steel-compositions").where(steel=name):
        sign = signs.get(row["element"])
        if sign:
            (low if row["quantity"] == "minimum" else high)[sign] = number(row)
    for sign in high:
        low.setdefault(sign, 0.0)
    for sign, least in low.items():
        high.setdefault(sign, least)
    return Steel(name, low, high)


def carbon_equivalent_pct(steel_pct: Composition) -> float:
    """C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15 [percent] (International Institute of Welding).

    >>> round(carbon_equivalent_pct({"C": 0.405, "Mn": 0.875, "Cr": 0.95, "Mo": 0.2}), 3)  # the middle of AISI 4140
    0.781
    """
    part = _reader(steel_pct)
    return (
        part("C")
        + part("Mn") / 6
        + (part("Cr") + part("Mo") + part("V")) / 5
        + (part("Ni") + part("Cu")) / 15
    )


def weldability(carbon_equivalent: float) -> str:
    """The band of the table carbon-equivalent-bands: excellent, very_good, good, fair or poor.

    carbon_equivalent -- [percent], from 0 up; between two printed bands (0.35 and 0.36) the worse one counts

    >>> weldability(0.355), weldability(0.78)
    ('very_good', 'poor')
    """
    for upper, rating in _bands():
        if carbon_equivalent <= upper + 1e-12:
            return rating
    return "poor"


@functools.cache
def _bands() -> tuple[tuple[float, str], ...]:
    rows = table("carbon-equivalent-bands").where(quantity="carbon_equivalent_to")
    return tuple((number(row), row["rating"]) for row in rows)


def in_range(steel_pct: Composition) -> bool:
    """Whether the hardness fits may be used for a composition: by its carbon, and by the sum of its alloys.

    >>> in_range({"C": 0.5}), in_range({"C": 0.51}), in_range({"C": 0.3, "Mn": 2.0, "Ni": 3.1})
    (True, False, False)
    """
    part = _reader(steel_pct)
    alloy = part("Mn") + part("Ni") + part("Cr") + part("Mo")
    return LOWEST_CARBON_PCT <= part("C") <= HIGHEST_CARBON_PCT and alloy <= MOST_ALLOY_PCT


def martensite_yurioka_hv(steel_pct: Composition) -> float:
    """Hardness of full martensite [HV] = 884 C (1 - 0.3 C2) + 294 (Yurioka 1987; memory)."""
    carbon = _reader(steel_pct)("C")
    return 884 * carbon * (1 - 0.3 * carbon * carbon) + 294


def martensite_duren_hv(steel_pct: Composition) -> float:
    """Hardness of full martensite [HV] = 802 C + 305 (Duren 1981; memory)."""
    return 802 * _reader(steel_pct)("C") + 305


def martensite_maynier_hv(steel_pct: Composition, cooling_k_per_s: float = 30.0) -> float:
    """Hardness of full martensite [HV] = 127 + 949 C + 27 Si + 11 Mn + 8 Ni + 16 Cr + 21 log10(K/h) (Maynier 1978; memory).

    cooling_k_per_s -- cooling rate at 700 C [K/s]
    """
    part = _reader(steel_pct)
    alloy = 949 * part("C") + 27 * part("Si") + 11 * part("Mn") + 8 * part("Ni") + 16 * part("Cr")
    return 127 + alloy + 21 * math.log10(cooling_k_per_s * 3600)


def zone_yurioka_hv(steel_pct: Composition, cooling_time_s: float) -> float:
    """Greatest hardness of the zone beside a bead [HV] that cools from 800 to 500 C in a time [s] (Yurioka 1987; memory).

    Held between full martensite and bainite, which the arctangent alone would overshoot.
    """
    part = _reader(steel_pct)
    carbon = part("C")
    counted = carbon if carbon <= 0.3 else carbon / 6 + 0.25
    chromium = part("Cr")
    harden_1 = (
        counted
        + part("Si") / 24
        + part("Mn") / 6
        + part("Cu") / 15
        + part("Ni") / 12
        + chromium * (1 - 0.16 * math.sqrt(chromium)) / 8
        + part("Mo") / 4
    )
    harden_2 = (
        carbon
        + part("Si") / 24
        + part("Mn") / 5
        + part("Cu") / 10
        + part("Ni") / 18
        + chromium / 5
        + part("Mo") / 2.5
        + part("V") / 5
    )
    harden_3 = counted + part("Mn") / 3.6 + part("Cu") / 20 + part("Ni") / 9 + chromium / 5 + part("Mo") / 4
    hard = martensite_yurioka_hv(steel_pct)
    soft = min(hard, 145 + 130 * math.tanh(2.65 * harden_2 - 0.69))
    all_martensite = math.exp(10.6 * harden_1 - 4.8)
    all_bainite = math.exp(6.2 * harden_3 + 0.74)
    if all_bainite <= all_martensite:
        return hard if cooling_time_s <= all_martensite else soft
    x = 4 * math.log(cooling_time_s / all_martensite) / math.log(all_bainite / all_martensite) - 2
    between = (hard + soft) / 2 - (hard - soft) / 2.2 * math.atan(x)
    return min(hard, max(soft, between))


def hard_zone_hv(made_of: Steel, cooling_time_s: float) -> tuple[float, float] | None:
    """Range of the hardness beside a bead [HV]: softest and hardest over fits and composition limits.

    From the zone fit (which counts the cooling time) and the martensite fits (which bound it above). None where a
    composition lies outside the fits' range.
    """
    corners = tuple(made_of.corners())
    if not all(in_range(corner) for corner in corners):
        return None
    rate = 300.0 / cooling_time_s
    zone = [zone_yurioka_hv(corner, cooling_time_s) for corner in corners]
    full = [
        fit
        for corner in corners
        for fit in (
            martensite_duren_hv(corner),
            martensite_maynier_hv(corner, rate),
            martensite_yurioka_hv(corner),
        )
    ]
    mixed = max(zone) < martensite_yurioka_hv(corners[-1]) * 0.98
    return min(zone), max(zone) if mixed else max(full)


@dataclass(frozen=True)
class HardZone:
    """Least and greatest hardness of the zone beside a bead [HV]."""

    least_hv: float
    greatest_hv: float


@dataclass(frozen=True)
class Hardening:
    """How a steel, or any of several, hardens: carbon equivalent least, middle and greatest [percent], weldability at both
    ends, and the hardness of the zone or why there is none.
    """

    least_pct: float
    middle_pct: float
    greatest_pct: float
    best_weldability: str
    worst_weldability: str
    zone: HardZone | Absent


def hardening_of(steels: Sequence[Steel], cooling_time_s: float | Absent) -> Hardening:
    """How the steels harden when the zone cools from 800 to 500 C in a time [s]; one steel, or all it may be."""
    equivalents = [[carbon_equivalent_pct(corner) for corner in one.corners()] for one in steels]
    least = min(row[0] for row in equivalents)
    greatest = max(row[2] for row in equivalents)
    middle = equivalents[0][1] if len(steels) == 1 else (least + greatest) / 2
    zone = _zone(steels, cooling_time_s)
    return Hardening(least, middle, greatest, weldability(least), weldability(greatest), zone)


def _zone(steels: Sequence[Steel], cooling_time_s: float | Absent) -> HardZone | Absent:
    if isinstance(cooling_time_s, Absent):
        return absent("no-cooling-time")
    zones = [zone for one in steels if (zone := hard_zone_hv(one, cooling_time_s))]
    if not zones:
        return absent(
            "outside-the-fits",
            least=Number(LOWEST_CARBON_PCT, 2),
            greatest=Number(HIGHEST_CARBON_PCT, 2),
            alloy=Number(MOST_ALLOY_PCT),
        )
    return HardZone(min(low for low, _ in zones), max(high for _, high in zones))


def rockwell_c(vickers: float) -> float | None:
    """Rockwell C of a Vickers hardness [HV] by the table hardness-conversion (ASTM E140); None outside it.

    >>> rockwell_c(653.0), rockwell_c(700.0)
    (58.0, None)
    """
    return between(_hardness_rows("vickers", "astm-e140", "HV"), vickers)


def rockwell_fact(vickers: float) -> Fact:
    """Rockwell C of a Vickers hardness [HV] to be read: a whole number, or under or over the ends of the table."""
    rows = _hardness_rows("vickers", "astm-e140", "HV")
    if vickers < rows[0][0]:
        return message("under-rockwell", end=Number(rows[0][1], places=0))
    found = between(rows, vickers)
    if found is None:
        return message("over-rockwell", end=Number(rows[-1][1], places=0))
    return Number(found, places=0)


@functools.cache
def _hardness_rows(quantity: str, source: str, unit: str) -> list[tuple[float, float]]:
    rows = table("hardness-conversion").where(quantity=quantity, source=source, unit=unit)
    return sorted((number(row), float(row["rockwell_c"])) for row in rows)


def between(rows: list[tuple[float, float]], x: float) -> float | None:
    """Straight line between the two rows (x, y) around x; None outside them. Rows rise in x."""
    return held_between(rows, x) if rows[0][0] <= x <= rows[-1][0] else None


def held_between(rows: list[tuple[float, float]], x: float) -> float:
    """Straight line between the two rows (x, y) around x, which is held to their ends. Rows rise in x.

    >>> held_between([(1.0, 2.0), (3.0, 6.0)], 2.0), held_between([(1.0, 2.0), (3.0, 6.0)], 9.0)
    (4.0, 6.0)
    """
    x = min(max(x, rows[0][0]), rows[-1][0])
    after = next(i for i in range(1, len(rows)) if rows[i][0] >= x)
    (x0, y0), (x1, y1) = rows[after - 1], rows[after]
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0)


def rockwell_of_strength(strength_pa: float) -> tuple[float, float] | None:
    """Rockwell C that goes with a tensile strength [Pa], lowest and highest of the two published columns; None outside."""
    found: list[float] = []
    for source in ("astm-a370", "astm-e140"):
        rows = _hardness_rows("tensile_strength", source, "MPa")
        hardness = between(rows, from_si(strength_pa, "MPa", "pressure"))
        if hardness is not None:
            found.append(hardness)
    return (min(found), max(found)) if found else None


def _reader(steel_pct: Composition) -> Callable[[str], float]:
    """Reads a share by its sign; an element that is not given counts as none."""
    return lambda sign: steel_pct.get(sign, 0.0)


__all__ = [
    "ELEMENTS",
    "HIGHEST_CARBON_PCT",
    "LOWEST_CARBON_PCT",
    "Composition",
    "HardZone",
    "Hardening",
    "Steel",
    "between",
    "carbon_equivalent_pct",
    "hard_zone_hv",
    "hardening_of",
    "held_between",
    "in_range",
    "martensite_duren_hv",
    "martensite_maynier_hv",
    "martensite_yurioka_hv",
    "rockwell_c",
    "rockwell_fact",
    "rockwell_of_strength",
    "steel",
    "steel_names",
    "weldability",
    "zone_yurioka_hv",
]
