"""What was typed and says nothing is no answer, and what no part bears is no rating, whichever worksheet is asked.

1. A mark of doubt, or a word that names nothing, never gives a better verdict than an empty box.
2. A grade, a mark or a size that is not understood is refused, or is at most unknown, where the part is rated by it.
3. A rating ten times that of a part of its kind and size is refused everywhere: for sizes of the tables, and between them.
4. What a worksheet forbids is a stop, never a caution: Careful promises that it fits.
"""

from __future__ import annotations

import copy
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given

from calc.answering import declared_names, worksheet
from calc.inputs import Input
from tests.laws.test_laws import LEAVE, forbidden_yet_careful, of_law, random_inputs, settle

Raw = dict[str, Any]
Path = tuple[str | int, ...]
SAY_NOTHING = ("?", "-", "none", "n/a", "unknown")
NO_MARKS = ("?", "banana", "welded", "0")
RATED_BY_WORDS = ("grade", "size", "mark", "marks")


def texts(inputs: tuple[Input, ...], given_raw: Raw, before: Path = ()) -> Iterator[Path]:
    """Every box for a word, in rows too; not those for a pasted table."""
    for declared in inputs:
        if declared.columns:
            for number, row in enumerate(given_raw.get(declared.name) or []):
                yield from texts(declared.columns, row, (*before, declared.name, number))
        elif declared.kind == "text" and not declared.long:
            yield (*before, declared.name)


def typed(raw: Raw, path: Path, value: str | None) -> Raw:
    """The inputs with one typed anew, or left out (None)."""
    made = copy.deepcopy(raw)
    inside: Any = made
    for at in path[:-1]:
        inside = inside[at]
    inside.pop(path[-1], None)
    if value is not None:
        inside[path[-1]] = value
    return made


def verdict(name: str, raw: Raw) -> str:
    """The verdict, or that it is refused."""
    settled = settle(name, raw)
    return "refused" if settled is None else settled.verdict


WITH_WORDS = [
    name
    for name in declared_names()
    if any(True for _ in texts(worksheet(name).inputs, dict(worksheet(name).example)))
]


@pytest.mark.parametrize("name", WITH_WORDS)
def test_a_word_that_says_nothing_is_no_better_than_none(name: str) -> None:
    """A tag whose mark was typed as a question mark said Inspected, where an empty box said Do not use."""
    raw = dict(worksheet(name).example)
    for path in texts(worksheet(name).inputs, raw):
        without = verdict(name, typed(raw, path, None))
        if without == "refused":
            continue
        for word in SAY_NOTHING:
            said = verdict(name, typed(raw, path, word))
            assert said == "refused" or LEAVE[said] <= LEAVE[without], (path, word)


CANADA = {"country": "canada"}
EUROPE = {"country": "europe"}
RATED = [
    ("sling-legs", {}),
    ("load-path", {}),
    ("pull-trial", {}),
    ("drop-load", {}),
    ("tie-down", {}),
    ("tie-down", CANADA),
    ("tie-down", EUROPE),
    ("what-is-it", {}),
    ("chain-check", {}),
]


@pytest.mark.parametrize(
    ("name", "more"), RATED, ids=[f"{name}-{number}" for number, (name, _) in enumerate(RATED)]
)
def test_a_mark_that_is_not_understood_gives_no_leave(name: str, more: Raw) -> None:
    """In Canada and Europe a tie-down chain of grade banana, or of grade 30 with the limit of grade 70, was within."""
    raw = {**worksheet(name).example, **more}
    for path in texts(worksheet(name).inputs, raw):
        row: Any = raw
        for at in path[:-1]:
            row = row[at]
        marked = row.get(path[-1]) and (row.get("kind") or "chain") in ("chain", "shackle", "hook")
        if path[-1] not in RATED_BY_WORDS or not marked:
            continue
        limit = {"limit": "6,600 lb"} if name == "tie-down" else {}
        for word in NO_MARKS:
            asked = typed(raw, path, word)
            if limit:
                asked["tie_downs"] = [{**one, **limit} for one in asked["tie_downs"]]
            assert verdict(name, asked) in ("refused", "unknown", "stop"), (path, word)


def in_a_string(**part: str) -> list[tuple[str, Raw]]:
    """A part on the worksheets that take strings of parts."""
    row = {"label": "part", "condition": "marked-good", **part}
    path = {"load": "400 lb", "use": "plain", "load_kind": "stiff", "items": [row]}
    pull = {**worksheet("pull-trial").example, "items": [row]}
    return [("load-path", path), ("pull-trial", pull)]


SIZES = ("1/8", "1/4", "0.3 in", "3/8", "0.40 in", "17 mm", "3/4")


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize(
    "part",
    [
        {"kind": "shackle"},
        {"kind": "shackle", "grade": "B"},
        {"kind": "wire-rope"},
        {"kind": "wire-rope", "rope_class": "other"},
        {"kind": "eyebolt"},
        {"kind": "eyebolt-plain"},
        {"kind": "hook", "grade": "80"},
        {"kind": "hook", "grade": "100"},
        {"kind": "chain", "grade": "80"},
        {"kind": "chain", "grade": "M"},
    ],
    ids=lambda part: "-".join(part.values()),
)
def test_a_rating_that_no_part_of_its_size_bears_is_refused(part: dict[str, str], size: str) -> None:
    """A 1/8 in shackle, a 1/4 in hook and rope of 0.3 in held 35 tons: their size stands between the rows of the table."""
    for name, raw in in_a_string(**part, size=size, rating="35 short tons"):
        assert verdict(name, raw) == "refused", name


@pytest.mark.parametrize("size", ["3/8", "1/4", "13 mm", "0.45 in"])
@pytest.mark.parametrize("grade", ["30", "43", "70", "80", "100", "8", "HT"])
@pytest.mark.parametrize("country", ["us", "canada", "europe"])
@pytest.mark.parametrize("label", ["wll", "lc", None])
def test_no_tie_down_chain_is_marked_with_so_much(
    country: str, grade: str, size: str, label: str | None
) -> None:
    raw: Raw = {**worksheet("tie-down").example, "country": country}
    rows = [
        {**row, "grade": grade, "size": size, "limit": "49,000 lb", "tensioner_limit": "49,000 lb"}
        for row in raw["tie_downs"]
    ]
    if label is None:
        rows = [{key: one for key, one in row.items() if key != "label"} for row in rows]
    else:
        rows = [{**row, "label": label} for row in rows]
    assert verdict("tie-down", {**raw, "tie_downs": rows}) == "refused"


@pytest.mark.parametrize("name", declared_names())
def test_what_is_forbidden_is_a_stop(name: str) -> None:
    """A spreader at 1,520 percent said Do not lift this under the word Careful, which promises that it fits."""

    @of_law
    @given(raw=random_inputs(name))
    def law(raw: Raw) -> None:
        whole = settle(name, raw)
        assert whole is None or forbidden_yet_careful(whole) == []

    law()


OVERLOADED = [
    ("spreader", {"load": "190,000 lb"}, "over-the-bar"),
    ("spreader", {"upper_rating": "100 lbf"}, "over-the-fittings"),
    ("tripod", {"load": "70,000 lb"}, "over-the-weakest"),
    ("tripod", {"tie_rating": "1 lbf"}, "over-the-gear"),
    ("lifting-frame", {"load": "100,000 lb"}, "over-the-weakest"),
    ("lifting-lug", {"load": "90,000 lb"}, "over-the-first-way"),
    ("beam-lift", {"load": "90,000 lb"}, "past-yield"),
]


@pytest.mark.parametrize(("name", "more", "code"), OVERLOADED)
def test_a_study_of_what_is_overloaded_stops(name: str, more: Raw, code: str) -> None:
    settled = settle(name, {**worksheet(name).example, **more})
    assert settled is not None
    assert settled.verdict == "stop"
    assert code in [one.code for one in settled.reasons if one.weight == "stop"]
