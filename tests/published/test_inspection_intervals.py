"""The interval until the next full inspection against the printed laws and standards."""

from __future__ import annotations

import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.dates import months_later
from calc.inspecting.record import HARDWARE, PLACES, longest_gap

CHAIN, ROPE, WEB, CRANE = ("chain_sling",), ("wire_rope_sling",), ("web_sling",), ("crane_hook",)
GEAR = (CHAIN, ROPE, WEB, CRANE, HARDWARE)


@pytest.mark.parametrize(
    ("items", "place", "service", "months", "source"),
    [
        (CHAIN, "us-federal", "normal", 12, "osha-1910-184"),  # 29 CFR 1910.184(e)(3)(i)
        (CHAIN, "uk", "normal", 6, "loler-1998"),  # LOLER 1998, reg. 9(3): six months for lifting accessories
        (ROPE, "uk", "normal", 6, "loler-1998"),
        (CRANE, "uk", "normal", 12, "loler-1998"),  # and twelve for other lifting equipment
        (CRANE, "us-federal", "normal", 1, "osha-1910-179"),  # 29 CFR 1910.179(j)(2)(iii)
        (ROPE, "us-washington", "normal", 1, "wac-296-24"),  # WAC 296-24-29405
        (HARDWARE, "us-washington", "normal", 12, "wac-296-155"),  # WAC 296-155-55800 Table 12
        (HARDWARE, "us-washington", "severe", 3, "wac-296-155"),
        (WEB, "us-federal", "severe", 3, "asme-b30-9"),
        (WEB, "australia", "normal", 3, "as-4497-1353"),
        (CHAIN, "australia", "normal", 6, "as-3775-1"),  # AS 3775.1: up to 25 lifts a week
        (CHAIN, "australia", "severe", 1, "as-3775-1"),  # over 200
        (CHAIN, "canada-ontario", "normal", 12, "ontario-851"),
        (CHAIN, "germany", "normal", 12, "trbs-1201"),
    ],
)
def test_printed_intervals(
    items: tuple[str, ...], place: str, service: str, months: int, source: str
) -> None:
    found, cited = longest_gap(items, place, service)
    assert found == months
    assert source in [one.source for one in cited]


@pytest.mark.parametrize("items", GEAR)
def test_what_is_not_said_is_never_looked_at_later(items: tuple[str, ...]) -> None:
    for service in ("normal", "severe", "special", ""):
        anywhere = longest_gap(items, "", service)[0]
        for place in PLACES:
            here = longest_gap(items, place, service)[0]
            assert anywhere <= here <= 12
            assert longest_gap(items, place, "")[0] <= here
            assert longest_gap(items, place, "severe")[0] <= min(3, longest_gap(items, place, "normal")[0])
            assert longest_gap((*items, "chain_sling"), place, service)[0] <= here


@given(st.dates(datetime.date(1980, 1, 1), datetime.date(2400, 1, 1)), st.integers(1, 12))
def test_months_later(day: datetime.date, months: int) -> None:
    due = months_later(day, months)
    assert (due.year * 12 + due.month) - (day.year * 12 + day.month) == months
    assert due.day == day.day or (due.day < day.day and (due + datetime.timedelta(days=1)).day == 1)
