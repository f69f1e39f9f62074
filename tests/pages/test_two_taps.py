"""Thirty things that a shop wants to know, each answered on a page that two taps on the home page reach: one on a task,
one on a line under it. What is typed into the box is tested in test_search.py."""

from __future__ import annotations

from html.parser import HTMLParser
from pathlib import Path

QUESTIONS = {
    "What does the engine weigh?": "work-out/load-weight.html",
    "What does this plate weigh?": "look-up/steel-weights.html",
    "What does a foot of 3 in pipe weigh?": "look-up/steel-weights.html",
    "What does oak weigh?": "look-up/densities.html",
    "Where does the keel balance?": "understand/balance-point-and-hook.html",
    "Is my scale right?": "work-out/gauge-check.html",
    "How many pounds is a tonne?": "work-out/convert.html",
    "What does each leg pull at 45 degrees?": "work-out/sling-legs.html",
    "What does a choker hold?": "work-out/hitch.html",
    "Which part limits my rigging?": "work-out/load-path.html",
    "Will the mast hang level?": "work-out/hanging-load.html",
    "Why do only two legs of four count?": "understand/why-two-legs-of-four.html",
    "How strong is my A-frame's beam?": "work-out/lifting-frame.html",
    "What does 3/8 grade 70 hold on a truck?": "look-up/chain-tie-down.html",
    "What does 3/8 grade 80 lift?": "look-up/chain-lifting.html",
    "What chain is this?": "work-out/what-is-it.html",
    "What does the 4 on this link mean?": "look-up/chain-marks.html",
    "What does a 1/2 in shackle carry?": "look-up/shackles.html",
    "How many clips on a 1/2 in rope?": "look-up/wire-rope-clips.html",
    "Is this hook fit?": "judge/inspect-a-hook.html",
    "Is this chain worn out?": "judge/inspect-a-chain.html",
    "The shackle's pin is a bolt.": "judge/inspect-a-shackle.html",
    "The web sling is cut.": "judge/inspect-a-web-sling.html",
    "The hook was dropped.": "understand/dropped-what-now.html",
    "Is my binder still good?": "judge/inspect-tie-down-gear.html",
    "How many chains for a 9,000 lb machine?": "work-out/tie-down.html",
    "How many straps over the top?": "work-out/lashing-count.html",
    "Somebody welded on the hook.": "understand/why-a-weld-voids-a-hook.html",
    "May I straighten it?": "look-up/repair-welding-rules.html",
    "The hook went blue.": "work-out/heat-colour.html",
}


class _Tasks(HTMLParser):
    """The links that stand under each task of the home page."""

    def __init__(self) -> None:
        super().__init__()
        self.links: list[set[str]] = []
        self._inside = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note tasks and links."""
        given = dict(attrs)
        if tag == "details" and given.get("class") == "task":
            self.links.append(set())
            self._inside = True
        if tag == "a" and self._inside:
            self.links[-1].add(given.get("href") or "")

    def handle_endtag(self, tag: str) -> None:
        """Leave a task."""
        if tag == "details":
            self._inside = False


def test_thirty_questions_are_answered_in_two_taps(site: Path) -> None:
    tasks = _Tasks()
    tasks.feed((site / "index.html").read_text(encoding="utf-8"))
    assert len(tasks.links) == 6
    assert all(0 < len(links) <= 12 for links in tasks.links)
    reached = set().union(*tasks.links)
    assert len(QUESTIONS) == 30
    assert {text: page for text, page in QUESTIONS.items() if page not in reached} == {}
    assert [link for link in reached if not (site / link.partition("#")[0]).is_file()] == []
