"""What a question hands over to a worksheet, asked of the built site and answered by calc: what was typed, and nothing else."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any
from urllib.parse import parse_qsl

import pytest

from build_scripts.search import fills
from calc import answering
from calc.inputs import ChoiceInput
from tests.pages.test_search import ask

HANDED = {
    "2 leg sling 60 degrees 1500 lb": (
        "sling-legs",
        {"load": "1500 lb", "legs": "2", "known_by": "angle", "angle": "60 deg"},
    ),
    "4 leg sling 45 degrees 3,000 lbs": (
        "sling-legs",
        {"load": "3000 lb", "legs": "4", "known_by": "angle", "angle": "45 deg"},
    ),
    "two slings 45 deg 680 kg": (
        "sling-legs",
        {"load": "680 kg", "legs": "2", "known_by": "angle", "angle": "45 deg"},
    ),
    "600 kg in pounds": ("convert", {"value": "600 kg", "to": "pounds"}),
    "3/8 inch to mm": ("convert", {"value": "3/8 in", "to": "mm"}),
    "how many lbs in 2 tonnes": ("convert", {"value": "2 tonnes", "to": "lbs"}),
    "hook turned straw yellow": ("heat-colour", {"colour": "straw-yellow"}),
    "4 inch bore 3000 psi": ("ram-force", {"pressure": "3000 psi", "bore": "4 in"}),
    "drop 500 lb 6 inches": ("drop-load", {"weight": "500 lb", "drop_height": "6 in"}),
    "chain at 600 f grade 80": ("hot-work-derate", {"temperature": "600 °F", "grade": "80"}),
    "inspect g80 3/8 chain": ("chain-check", {"grade": "80", "size": "3/8 in"}),
    "move a 5000 lb lathe on rollers": ("move-it", {"load": "5000 lb"}),
    "tie down 9000 lb machine": ("tie-down", {"load": "9000 lb"}),
}
ANSWERED = (
    "2 leg sling 60 degrees 1500 lb",
    "two slings 45 deg 680 kg",
    "600 kg in pounds",
    "3/8 inch to mm",
)
"""Of which nothing more need be typed."""

NOT_THE_LOAD = (
    "3 ton jack under the keel",
    "2 leg sling rated 3000 lb at 60 degrees",
    "over 3000 lb on 2 legs at 45",
    "two 500 lb blocks on 2 legs at 45 deg",
    "1 500 lb 2 legs 60 degrees",
    "10k lb on 2 legs at 60 deg",
    "500-600 lb on 2 legs at 60 deg",
    "500 lb each on 2 legs at 60 deg",
    "shackle 5 tons and 2 legs at 60 deg",
    "hoist 2 tons on a beam",
    "half of 1500 lb on 2 legs at 60 deg",
)


def handed(answer: dict[str, Any]) -> dict[str, dict[str, str]]:
    """By worksheet, what it opens with."""
    found: dict[str, dict[str, str]] = {}
    for one in answer["results"]:
        match = re.fullmatch(r"work-out/([a-z-]+)\.html#(.*=.*)", one["address"])
        if match:
            found[match[1]] = dict(parse_qsl(match[2]))
    return found


def test_every_box_that_is_filled_is_one_of_its_worksheet() -> None:
    for name, kinds in fills.FILLS.items():
        boxes = {one.name: one for one in answering.worksheet(name).inputs}
        for filling in kinds.values():
            for box, value in filling.items():
                assert box in boxes, (name, box)
                if value != fills.TYPED:
                    chosen = boxes[box]
                    assert isinstance(chosen, ChoiceInput)
                    assert value in chosen.choices


def test_what_was_typed_stands_in_the_boxes(site: Path) -> None:
    answers = dict(zip(HANDED, ask(site, list(HANDED)), strict=True))
    for text, (name, boxes) in HANDED.items():
        found = handed(answers[text])
        assert found.get(name) == boxes, (text, found)
        assert f"work-out/{name}.html" in [
            one["address"].partition("#")[0] for one in answers[text]["results"][:3]
        ], text


def test_such_a_worksheet_answers_at_once() -> None:
    for text in ANSWERED:
        name, boxes = HANDED[text]
        assert answering.answer(name, boxes)["headline"], text


def test_nothing_is_filled_in_that_was_not_typed(site: Path) -> None:
    """Every figure in a box is a figure of the question."""
    typed = [
        *HANDED,
        *NOT_THE_LOAD,
        "tripod to lift 600 kg",
        "choker on a log",
        "2 leg chain sling 3/8 g80 at 45",
    ]
    for text, answer in zip(typed, ask(site, typed), strict=True):
        figures = set(re.findall(r"\d+(?:/\d+)?", text.replace(",", "").replace("two", "2")))
        for boxes in handed(answer).values():
            assert set(re.findall(r"\d+(?:/\d+)?", " ".join(boxes.values()))) <= figures, (text, boxes)


@pytest.mark.parametrize("text", NOT_THE_LOAD)
def test_a_number_that_may_not_be_the_whole_load_is_left_to_the_reader(site: Path, text: str) -> None:
    (answer,) = ask(site, [text])
    for name, boxes in handed(answer).items():
        assert not {"load", "weight"} & set(boxes), (name, boxes)


@pytest.mark.parametrize(
    "text",
    [
        "dropped a 1/2 shackle 500 lb",
        "3/8 g80 chain dropped 500 lb",
        "g80 chain stretched 1/2 inch inspect",
        "ram pressure 3000 psi to bend 1/2 plate",
        "over 6 inch drop 500 lb",
    ],
)
def test_a_length_that_can_be_of_something_else_is_left_to_the_reader(site: Path, text: str) -> None:
    (answer,) = ask(site, [text])
    found = handed(answer)
    assert "drop_height" not in found.get("drop-load", {})
    assert "bore" not in found.get("ram-force", {})
    assert found.get("chain-check", {}).get("size", "3/8 in") == "3/8 in"


@pytest.mark.parametrize("words", ["from vertical", "between the legs", "included angle", "from plumb"])
def test_an_angle_taken_from_elsewhere_is_left_to_the_reader(site: Path, words: str) -> None:
    (answer,) = ask(site, [f"2 leg sling 1500 lb 30 degrees {words}"])
    assert handed(answer)["sling-legs"] == {"load": "1500 lb", "legs": "2"}
