"""The drawing of a load as it hangs: names of legs that fall on one spot stand together and inside the sheet."""

import math
import re
from typing import Any

import pytest

from calc.answering import answer

WORDS = re.compile(r'<text[^>]* x="([-\d.]+)" y="([-\d.]+)" text-anchor="(\w+)">([^<]+)</text>')


def words(picks: Any, load: str = "870 lb", centre: Any = ("31", "0", "5")) -> Any:
    raw = {
        "load": load,
        "centre": list(centre),
        "picks": picks,
        "balance_tolerance": "1 in",
        "chain_size": "1/4 in",
    }
    svg = answer("hanging-load", raw, "us")["figure"]["svg"]
    return [(float(x), float(y), anchor, text) for x, y, anchor, text in WORDS.findall(svg)]


def span(x: Any, anchor: Any, text: Any, letter: float = 6.5) -> Any:
    """From and to of a label, reckoned at `letter` drawing units a letter (the page sets 13 px type on them)."""
    room = letter * len(text)
    start = x - room * {"start": 0, "middle": 0.5, "end": 1}[anchor]
    return start, start + room


def pick(x: Any, y: Any, z: Any, length: Any) -> Any:
    return {"at": [str(x), str(y), str(z)], "length": str(length)}


IN_LINE = [pick(0, 0, 10, 50), pick(20, 0, 10, 42), pick(42, 0, 10, 42), pick(62, 0, 10, 50)]
EIGHT = [pick(x, y, 20, 120) for x in (0, 41, 79, 120) for y in (0, 61)]


def test_picks_behind_one_another_share_one_label() -> None:
    said = [text for *_, text in words(IN_LINE)]
    assert said.count("1–4") == 1
    eight = [text for *_, text in words(EIGHT, centre=("60", "30.5", "7"))]
    assert {"1, 2", "7, 8", "1, 3, 5, 7", "2, 4, 6, 8"} <= set(eight)


def test_equal_pulls_behind_one_another_are_said_once() -> None:
    picks = [pick(0, 0, 40, 31), pick(0, 18, 40, 31), pick(38, 9, 0, 71)]
    said = [text for *_, text in words(picks, centre=("16", "9", "10"))]
    assert len([text for text in said if text.endswith(" each")]) == 1


TALL = [pick(8, 0, 0, 20), pick(-8, 0, 0, 20)]
RING = [
    pick(round(40 * math.cos(0.2 + place * math.pi / 4), 3), round(40 * math.sin(0.2 + place * math.pi / 4), 3), 0, 80)
    for place in range(8)
]  # fmt: skip
WIDE = [pick(160, 0, 0, 181), pick(-160, 0, 0, 181)]


@pytest.mark.parametrize(
    ("picks", "centre"),
    [
        (IN_LINE, ("31", "0", "5")),
        (EIGHT, ("60", "30.5", "7")),
        (TALL, ("0", "0", "-160")),
        (RING, ("0", "0", "-16")),
        (WIDE, ("12", "0", "-4")),
    ],
)
def test_labels_stand_on_the_sheet_and_clear_of_each_other(picks: Any, centre: Any) -> None:
    placed = words(picks, centre=centre)
    for place, (x, y, anchor, text) in enumerate(placed):
        start, end = span(x, anchor, text)
        assert 0 < start < end < 420, text
        assert 0 < y < 330, text
        for other_x, other_y, other_anchor, other in placed[:place]:
            other_start, other_end = span(other_x, other_anchor, other)
            assert start > other_end or end < other_start or abs(y - other_y) > 11, (text, other)


def test_pulls_stand_outside_their_legs() -> None:
    placed = words(WIDE, centre=("12", "0", "-4"))
    pulls = [(x, anchor) for x, _, anchor, text in placed if text.endswith("lb")]
    assert sorted(anchor for _, anchor in pulls) == ["end", "start"]


def test_a_pull_that_would_run_off_the_sheet_stands_on_the_other_side() -> None:
    picks = [pick(-3, 0, 0, 300), pick(3, 2, 0, 300), pick(0, -150, 0, 335)]
    placed = words(picks, load="123456 lb", centre=("0", "-2", "-10"))
    assert all(span(x, anchor, text)[0] > 0 for x, _, anchor, text in placed)


def test_unlike_pulls_behind_one_another_carry_their_leg_numbers() -> None:
    picks = [pick(40, 0, 0, 80), pick(-20, 32, 0, 68), pick(-24, -36, 8, 76)]
    said = [text for *_, text in words(picks, centre=("4", "2", "-20"))]
    assert [text[:3] for text in said if re.match(r"\d: ", text)] == ["2: ", "3: "]
