"""hook-check against the printed removal criteria."""

from typing import Any

import pytest

from calc.answering import answer

BASE = {"latch": "closes", "cracks": "no", "marks_readable": "yes", "altered": "no", "twist": "0", "section_new": "1 in",
        "section_now": "1 in"}  # fmt: skip


def criteria(**changes: Any) -> list[str]:
    lines: list[str] = answer("hook-check", {**BASE, **changes})["results"]["criteria"]["value"]
    return lines


@pytest.mark.parametrize(
    ("throat_now", "washington", "federal"),
    [("4.19 in", "near", "pass"), ("4.21 in", "fail", "pass"), ("4.61 in", "fail", "fail")],
)
def test_throat(throat_now: str, washington: str, federal: str) -> None:
    """WAC 296-155-55800 Table 12: 5 percent, at most 1/4 in. 29 CFR 1910.184(e)(9)(ii): more than 15 percent."""
    lines = criteria(throat_new="4 in", throat_now=throat_now)
    assert lines[0].startswith("Throat opened: limit 5%")
    assert lines[0].endswith(washington)
    federal_line = next(line for line in lines if "limit 15%" in line)
    assert federal_line.endswith(federal) or (federal == "pass" and federal_line.endswith("near"))


def test_quarter_inch_cap() -> None:
    """WAC 296-155-55800 Table 12: not over 1/4 in, which comes before 5 percent from a 5 in throat up."""
    lines = criteria(throat_new="6 in", throat_now="6.26 in")
    assert lines[0].endswith("near")
    assert any(
        line.startswith("Throat opened, in length: limit 1/4 in") and line.endswith("fail") for line in lines
    )


def test_twist_and_wear() -> None:
    """Twist: WAC Table 12 any visible; 29 CFR 1910.184 more than 10 degrees. Wear: WAC Table 12 and Alberta s. 309, 10 percent."""
    lines = criteria(throat_new="2 in", throat_now="2 in", twist="11", section_now="0.89 in")
    assert sum(line.startswith("Twisted") and line.endswith("fail") for line in lines) == 2
    assert any(line.startswith("Section worn: limit 10%") and line.endswith("fail") for line in lines)
