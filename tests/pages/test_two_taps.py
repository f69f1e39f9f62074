"""Thirty things that a shop wants to know, each answered by two taps on the home page: one on a task, one on a line under it.

For each question stands which task a reader would tap, the words of the line that promise its answer, where that line leads,
and what answers it there. It is not enough that a page is linked: the line must say what is asked, and the answer must stand
soon after the place that the tap leads to, as a sentence or as a number that its table prints. Of a worksheet it is the box
and the result: two taps lead to the boxes, and what is typed there is answered.
`tests/browser/pages/test_two_taps.py` taps on a phone. What is typed into the box is tested in test_search.py.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from html.parser import HTMLParser
from pathlib import Path

import pytest

_NOT_READ = ("script", "style", "option", "template")
SOON = 3_500
"""Letters within which the answer stands after the place that is led to; in a worksheet the boxes come first, all of them."""


@dataclass(frozen=True)
class Asked:
    """A question: the task and the line that are tapped, the address of the line, and what must be read there, in order."""

    text: str
    task: str
    line: str
    address: str
    answer: tuple[str, ...]


QUESTIONS = (
    Asked("What does the engine weigh?", "Weigh it", "What engines", "look-up/densities.html#engines-and-machine-tools", ("V8", "600 lb")),
    Asked("What does this plate weigh?", "Weigh it", "plate and bar weigh", "look-up/steel-weights.html", ("1/4 in", "10.2 lb")),
    Asked("What does a foot of 3 in pipe weigh?", "Weigh it", "pipe weighs", "look-up/steel-weights.html#pipe-for-each-foot", ("Schedule 40", "3 in", "7.58 lb")),
    Asked("What does oak weigh?", "Weigh it", "material weighs", "look-up/densities.html", ("Oak, air dry", "40 to 45 lb/ft³")),
    Asked("Where does the keel balance?", "Weigh it", "Find the center of gravity", "understand/balance-point-and-hook.html", ("center of gravity", "hook")),
    Asked("Is my scale right?", "Weigh it", "Does my scale tell", "work-out/gauge-check.html", ("Known weight", "Reading", "reads")),
    Asked("How many pounds is a tonne?", "Weigh it", "a tonne is 2,204.62 lb", "work-out/convert.html", ("Value with its unit", "Unit wanted")),
    Asked("What does each leg pull at 45 degrees?", "Sling it", "each leg pull", "work-out/sling-legs.html", ("Angle of the legs", "Pull in each leg")),
    Asked("What does a choker hold?", "Sling it", "choker", "work-out/hitch.html", ("Angle of the choke", "It holds")),
    Asked("Which part limits my rigging?", "Sling it", "Which part limits", "work-out/load-path.html", ("Parts, from the support", "Sets the limit")),
    Asked("Will the mast hang level?", "Sling it", "hang level", "work-out/hanging-load.html", ("Where it is fixed", "It tips")),
    Asked("Why do only two legs of four count?", "Sling it", "only two count", "understand/why-two-legs-of-four.html", ("two opposite legs",)),
    Asked("How strong is my A-frame's beam?", "Sling it", "How strong is my own A-frame", "work-out/lifting-frame.html", ("Feet apart", "Weakest point")),
    Asked("What does 3/8 grade 70 hold on a truck?", "Which chain?", "tie down", "look-up/chain-tie-down.html", ("Grade 70", "3/8 in", "6,600 lb")),
    Asked("What does 3/8 grade 80 lift?", "Which chain?", "Chain to lift", "look-up/chain-lifting.html", ("Grade 80", "3/8 in", "7,100 lb")),
    Asked("What chain is this?", "Which chain?", "What chain is this", "work-out/what-is-it.html", ("Thickness of the wire", "Marks as you see them", "Grade")),
    Asked("What does the 4 on this link mean?", "Which chain?", "mark on a link", "look-up/chain-marks.html", ("Grade 43", "4")),
    Asked("What does a 1/2 in shackle carry?", "Which chain?", "Shackles", "look-up/shackles.html", ("1/2 in", "2 short tons")),
    Asked("How many clips on a 1/2 in rope?", "Which chain?", "how many", "look-up/wire-rope-clips.html", ("1/2 in", "3")),
    Asked("Is this hook fit?", "Is it fit?", "A hook", "judge/inspect-a-hook.html", ("throat", "latch")),
    Asked("Is this chain worn out?", "Is it fit?", "A chain", "judge/inspect-a-chain.html", ("worn", "link")),
    Asked("The shackle's pin is a bolt.", "Is it fit?", "A shackle", "judge/inspect-a-shackle.html", ("pin", "bolt")),
    Asked("The web sling is cut.", "Is it fit?", "A web", "judge/inspect-a-web-sling.html", ("Any cut",)),
    Asked("The hook was dropped.", "Is it fit?", "dropped", "understand/dropped-what-now.html", ("Stop using everything", "remove from service")),
    Asked("Is my binder still good?", "Is it fit?", "binder", "judge/inspect-tie-down-gear.html", ("binder",)),
    Asked("How many chains for a 9,000 lb machine?", "Tie it down", "How many chains", "work-out/tie-down.html", ("Weight of the load", "Tie-downs the law asks for")),
    Asked("How many straps over the top?", "Tie it down", "Straps over the top", "work-out/lashing-count.html", ("Weight of the load", "Straps needed")),
    Asked("Somebody welded on the hook.", "Welded or heated?", "welded on a hook", "understand/why-a-weld-voids-a-hook.html", ("Remove it from service",)),
    Asked("May I straighten it?", "Welded or heated?", "straightened", "understand/why-straightened-is-not-restored.html", ("It has its shape back, and nothing else",)),
    Asked("The hook went blue.", "Welded or heated?", "color", "work-out/heat-colour.html", ("dark blue", "Rated hardware")),
)  # fmt: skip


class _Tasks(HTMLParser):
    """The lines that stand under each task of the home page: by its name, each address with the words of the line."""

    def __init__(self) -> None:
        super().__init__()
        self.lines: dict[str, list[tuple[str, str]]] = {}
        self._task = ""
        self._inside: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note tasks and links."""
        given = dict(attrs)
        if tag == "details" and given.get("class") == "task":
            self._task = "?"
        if self._task and tag in ("a", "b"):
            self._inside = [tag]
        if tag == "a" and self._task:
            self.lines.setdefault(self._task, []).append((given.get("href") or "", ""))

    def handle_data(self, data: str) -> None:
        """The name of a task, or the words of a line."""
        if not self._inside:
            return
        if self._inside == ["b"] and self._task == "?":
            self._task = data
        elif self._inside == ["a"]:
            address, words = self.lines[self._task][-1]
            self.lines[self._task][-1] = (address, words + data)

    def handle_endtag(self, tag: str) -> None:
        """Leave a task, or a line."""
        if tag in ("a", "b"):
            self._inside = []
        if tag == "details":
            self._task = ""


class _Words(HTMLParser):
    """The words of a page's main part, from an anchor on where one is named."""

    def __init__(self, anchor: str) -> None:
        super().__init__()
        self.words: list[str] = []
        self._anchor = anchor
        self._main = False
        self._quiet = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Begin at the main part, and anew at the anchor."""
        self._main = self._main or tag == "main"
        self._quiet += tag in _NOT_READ
        if self._anchor and dict(attrs).get("id") == self._anchor:
            self.words = []

    def handle_endtag(self, tag: str) -> None:
        """Leave what is not read."""
        self._quiet -= tag in _NOT_READ

    def handle_data(self, data: str) -> None:
        """Words that are read."""
        if self._main and not self._quiet:
            self.words.append(data)


def read_from(site: Path, address: str) -> str:
    """What is read from the place on that an address leads to."""
    file, _, anchor = address.partition("#")
    words = _Words(anchor)
    words.feed((site / file).read_text(encoding="utf-8"))
    return re.sub(r"\s+", " ", "".join(words.words))


@pytest.fixture(scope="module")
def tasks(site: Path) -> dict[str, list[tuple[str, str]]]:
    """The lines under each task of the home page."""
    found = _Tasks()
    found.feed((site / "index.html").read_text(encoding="utf-8"))
    return found.lines


def test_six_tasks_of_few_lines(site: Path, tasks: dict[str, list[tuple[str, str]]]) -> None:
    assert len(tasks) == 6
    assert all(0 < len(lines) <= 12 for lines in tasks.values())
    addresses = [address for lines in tasks.values() for address, _ in lines]
    assert [one for one in addresses if not (site / one.partition("#")[0]).is_file()] == []


def test_thirty_questions_of_all_tasks() -> None:
    assert len({one.text for one in QUESTIONS}) == 30
    assert len({one.task for one in QUESTIONS}) == 6


@pytest.mark.parametrize("one", QUESTIONS, ids=lambda one: one.text)
def test_a_line_that_says_so_leads_to_the_answer(
    site: Path, tasks: dict[str, list[tuple[str, str]]], one: Asked
) -> None:
    assert [address for address, words in tasks[one.task] if one.line in words] == [one.address]
    read = read_from(site, one.address)
    place = 0
    for words in one.answer:
        place = read.find(words, place)
        assert 0 <= place <= (len(read) if one.address.startswith("work-out/") else SOON), words
