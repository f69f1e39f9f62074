"""What heat leaves of a lifting chain's rating: two rules side by side.

ASME B30.9, table 9-1.8.1-1 (grade 80 and 100: reduction while hot, and for good), and EN 818-6 (grades 8, 5 and 4: what is
left in a temperature band), from tables/chain-heat-asme and tables/chain-heat-en. They hold for a sound, tagged chain
whose temperature is planned and measured. What a rule says is a message of shared/chain-heat.
"""

from __future__ import annotations

import functools
from dataclasses import dataclass
from itertools import pairwise

from calc.declaration import Citation
from calc.quantities import to_si
from calc.tables import Row, number, table, value_si
from calc.words.facts import Cell, Message, Quantity, message

Band = tuple[float, float, float]
"""From and to [deg C], and the share [-] left in between."""

_EN_GRADE = {"80": "8", "5": "5", "4": "4"}
_ASME_GRADES = ("80", "100")
_SLACK_DEGC = 1e-9


@dataclass(frozen=True)
class RuleAnswer:
    """What one rule says: share of the rating left while hot and afterwards [-], None where it allows no use or is
    silent; the same as a message; whether it forbids; where it stands.
    """

    hot: float | None
    after: float | None
    said: Message
    forbids: bool = False
    citation: Citation | None = None


def asme_rule(grade: str, temperature_degc: float) -> RuleAnswer:
    """ASME B30.9 for grade 80 or 100 at a temperature [deg C]; between two rows the hotter row counts.

    The printed degrees Fahrenheit are the table's own; the degrees Celsius beside them are rounded. From -40 to 1,000 deg F.

    >>> rule = asme_rule("80", 232.0)  # 450 deg F: the row of 500 deg F
    >>> round(rule.hot, 2), round(rule.after, 2)
    (0.85, 1.0)
    """
    if grade not in _ASME_GRADES:
        return RuleAnswer(None, None, message("asme-silent", grade=grade))
    rows = table("chain-heat-asme").where(grade=grade, quantity="reduction_while_hot")
    steps = [(to_si(number_of(row, "temperature_degF"), "degF", "temperature"), row) for row in rows]
    first, last = steps[0][0], steps[-1][0]
    cold = to_si(-40.0, "degF", "temperature")
    if temperature_degc < cold - _SLACK_DEGC:
        printed_for_shackles = Citation("asme-b30-26", "2010, s. 26-1.6.1")
        return RuleAnswer(
            None, None, message("asme-too-cold", below=_degrees(cold)), True, printed_for_shackles
        )
    if temperature_degc < first - _SLACK_DEGC:
        return RuleAnswer(1.0, 1.0, message("asme-no-loss", below=_degrees(first)), False, _asme(""))
    for reached_degc, row in steps:
        if temperature_degc <= reached_degc + _SLACK_DEGC:
            return _asme_row(grade, row)
    return RuleAnswer(None, None, message("asme-too-hot", at=_degrees(last)), True, _asme(""))


def _asme_row(grade: str, row: Row) -> RuleAnswer:
    later = table("chain-heat-asme").one(
        grade=grade, temperature_degF=row["temperature_degF"], quantity="reduction_afterwards"
    )
    said = message(
        "asme-row",
        row=Cell(row["temperature_degF"], "degF"),
        hot=Cell(row["value"], "%"),
        later=Cell(later["value"], "%"),
    )
    return RuleAnswer(
        1.0 - value_si(row, "fraction"), 1.0 - value_si(later, "fraction"), said, False, _asme(row["locator"])
    )


def en_rule(grade: str, temperature_degc: float) -> RuleAnswer:
    """EN 818-6 for grade 8 (marked 80 or 8), 5 or 4 at a temperature [deg C]; a band ends with its upper figure.

    >>> en_rule("80", 300.0).hot, en_rule("80", 301.0).hot
    (0.9, 0.75)
    """
    if grade not in _EN_GRADE:
        return RuleAnswer(None, None, message("en-silent", grade=grade))
    rows = table("chain-heat-en").where(grade=_EN_GRADE[grade])
    for row in rows:
        low, high = number_of(row, "temperature_from_degC"), number_of(row, "temperature_to_degC")
        if low - _SLACK_DEGC <= temperature_degc <= high + _SLACK_DEGC:
            said = message(
                "en-band",
                low=_degrees(low),
                high=_degrees(high),
                left=Cell(row["value"], "%"),
            )
            return RuleAnswer(
                value_si(row, "fraction"), None, said, False, Citation(row["source"], row["locator"])
            )
    first, last = rows[0], rows[-1]
    said = message(
        "en-outside",
        low=_degrees(number_of(first, "temperature_from_degC")),
        high=_degrees(number_of(last, "temperature_to_degC")),
    )
    return RuleAnswer(None, None, said, True, Citation(last["source"], last["locator"]))


@functools.cache
def asme_bands(grade: str) -> tuple[Band, ...]:
    """The bands of ASME B30.9 as (from, to [deg C], share left while hot); none for a grade it does not print."""
    if grade not in _ASME_GRADES:
        return ()
    ends = [
        to_si(number_of(row, "temperature_degF"), "degF", "temperature")
        for row in table("chain-heat-asme").where(grade=grade, quantity="reduction_while_hot")
    ]
    bands: list[Band] = [(to_si(-40.0, "degF", "temperature"), ends[0], 1.0)]
    for low, high in pairwise(ends):
        bands.append((low, high, asme_rule(grade, high).hot or 0.0))
    return tuple(bands)


@functools.cache
def en_bands(grade: str) -> tuple[Band, ...]:
    """The bands of EN 818-6 as (from, to [deg C], share left while hot); none for a grade it does not print."""
    if grade not in _EN_GRADE:
        return ()
    return tuple(
        (
            number_of(row, "temperature_from_degC"),
            number_of(row, "temperature_to_degC"),
            value_si(row, "fraction"),
        )
        for row in table("chain-heat-en").where(grade=_EN_GRADE[grade])
    )


def number_of(row: Row, column: str) -> float:
    """A key column of a row as a number, in the unit that its name says."""
    return number({**row, "value": row[column]})


def _asme(locator: str) -> Citation:
    return Citation("asme-b30-9", locator or "Table 9-1.8.1-1")


def _degrees(at_degc: float) -> Quantity:
    return Quantity(at_degc, "temperature")


__all__ = ["Band", "RuleAnswer", "asme_bands", "asme_rule", "en_bands", "en_rule", "number_of"]
