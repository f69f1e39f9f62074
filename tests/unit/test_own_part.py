"""What a part of the reader's own kit brings to a worksheet, case by case; the laws are in tests/laws/test_own_parts.py."""

from __future__ import annotations

import datetime
from typing import Any

import pytest

from calc import inputs
from calc.answering import Refused, answer

TODAY = datetime.date(2026, 11, 26)
SOUND = {"own_number": "S-5", "last_look": "passed", "looked_on": "2026-11-01", "look_due": "2027-11-01"}


@pytest.fixture(autouse=True)
def _today(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(inputs, "today", lambda: TODAY)


def lifted(**own: str) -> dict[str, Any]:
    """The answer of load-path for one marked and sound shackle that the reader keeps in his kit."""
    part = {"kind": "other", "condition": "marked-good", "rating": "2000 kg", **own}
    return answer(
        "load-path", {"load": "500 kg", "use": "plain", "load_kind": "stiff", "items": [part]}, "si"
    )


def said(found: dict[str, Any]) -> str:
    return " ".join([found["headline"], *(caution["text"] for caution in found["cautions"])])


@pytest.mark.parametrize(
    ("own", "verdict", "words"),
    [
        ({}, "ok", "S-5, inspected 2026-11-01"),
        ({"last_look": "careful"}, "caution", "your kit gives a caution"),
        ({"last_look": "never", "looked_on": "", "look_due": ""}, "caution", "S-5 was never fully inspected"),
        ({"looked_on": ""}, "caution", "Nobody has said when S-5 was last inspected"),
        ({"look_due": ""}, "caution", "Nobody has said when S-5 was last inspected"),
        ({"looked_on": "2024-11-01"}, "caution", "was due by 2025-11-01"),
        ({"last_look": "not-passed"}, "unknown", "S-5, not passed on 2026-11-01"),
    ],
)
def test_the_last_inspection_of_a_part_counts(own: dict[str, str], verdict: str, words: str) -> None:
    found = lifted(**{**SOUND, **own})
    assert found["verdict"] == verdict
    assert words in said(found)


def test_a_day_that_nobody_knows_is_said() -> None:
    assert "S-5, inspected on an unknown day" in said(lifted(**{**SOUND, "looked_on": ""}))


@pytest.mark.parametrize(
    "own", [{"own_number": "S-5"}, {"looked_on": "2026-11-01"}, {"look_due": "2027-11-01"}]
)
def test_a_number_or_a_day_counts_only_with_how_the_inspection_ended(own: dict[str, str]) -> None:
    with pytest.raises(Refused) as caught:
        lifted(**own)
    assert [one.input for one in caught.value.errors] == ["items[0].last_look"]


def test_what_is_true_of_several_parts_is_said_once() -> None:
    """Twenty parts without a day were twenty cautions, and a lift sheet of two pages."""
    numbers = [f"S-{place}" for place in range(20)]
    part = {"kind": "other", "condition": "marked-good", "rating": "2000 kg", "last_look": "passed"}
    late = {"looked_on": "2025-01-10", "look_due": "2026-01-10"}
    rows = [{**part, "own_number": number} for number in numbers]
    rows += [{**part, **late, "own_number": number} for number in ("H-1", "H-2", "H-2")]
    found = answer("load-path", {"load": "500 kg", "use": "plain", "load_kind": "stiff", "items": rows}, "si")
    told = [caution["text"] for caution in found["cautions"] if "inspect" in caution["text"]]
    assert found["verdict"] == "caution"
    assert sum("Nobody has said" in one for one in told) == 1
    assert all(number in said(found) for number in numbers)
    assert "H-1 was due by 2026-01-10; H-2 was due by 2026-01-10. Inspect each" in said(found)
