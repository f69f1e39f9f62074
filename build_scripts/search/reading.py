"""How what a reader types is read: the rules for sizes, grades and loads, and the words for each word of the trade.

A rule is a pattern and what takes its place, written so that the page's script reads it as Python does. Grades come from
the book's one reader of marks, calc.marks: a spelling that it does not understand is not understood here.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from build_scripts.wording import language
from calc.marks import may_lift, read_grade
from calc.tables import table
from calc.words.compiling import PSEUDO

ROOT = Path(__file__).resolve().parent.parent.parent
COUNTS = {
    "one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6", "seven": "7", "eight": "8", "nine": "9",
    "ten": "10", "eleven": "11", "twelve": "12", "thirteen": "13", "fifteen": "15", "sixteen": "16", "twenty": "20",
}  # fmt: skip
_PARTS_OF_AN_INCH = {
    "quarters?": "4",
    "eighths?|eights": "8",
    "sixteenths?": "16",
    "thirty ?seconds?": "32",
}
Rule = tuple[str, str, bool]
_COUNT = rf"{'|'.join(COUNTS)}|\d{{1,2}}"
_OF_AN_INCH = r"(?: of an)?(?: ?-?(?:inch(?:es)?|in\b\.?))?"
_GRADE_NAMES = {
    "thirty": "30",
    "forty ?three": "43",
    "forty": "40",
    "seventy": "70",
    "eighty": "80",
    "(?:one |a )?hundred": "100",
}
_BEFORE_A_UNIT = (
    r"(?= ?-?(?:inch|in\b|mm\b|mil|ton|leg|sling|point|strap|chain|clip|feet|foot|ft|pound|lb|binder|tie))"
)
_UNIT = r"(?:lbs?|pounds?|kgs?|kilos?|mm|cm|inch(?:es)?|in|ft|feet|tons?|tonnes?|psi|bar|kn|mpa|newtons?)\b"
_WITH_UNIT = r"\d(?:lb|kg|tonne|shortton|ton|psi|bar|kn|in|mm|cm|ft)"
_OF_MANY = r"(?:ratchet |cargo |load |chain )?(?:straps|chains|binders|tie[ -]?downs|lashings|clips)\b"


def _sizes_in_words() -> Iterator[Rule]:
    """`three eighths`, `half inch`, `inch and a quarter`, as fractions with their unit."""
    yield r"\b(?:an? |one )?inch and an? (half|quarter)\b", "one and a $1 inch", False
    yield r"\b(?:an? |one )?inch and three quarters\b", "1-3/4in ", False
    for words, parts in (("an? half", "1/2"), ("an? quarter", "1/4"), ("three quarters?", "3/4")):
        yield rf"\b({_COUNT}) and {words}{_OF_AN_INCH}\b", f"$1-{parts}in ", True
    for name, parts in _PARTS_OF_AN_INCH.items():
        yield rf"\b({_COUNT})[ -](?:{name})\b{_OF_AN_INCH}", f"$1/{parts}in ", True
    yield (
        r"\b(?:one |an? )?half[ -](?:an )?(?:inch\b|in\b\.?)|\bhalf(?= (?:chain|shackle|g\d|cable|wire|eye|rope))",
        "1/2in ",
        False,
    )
    yield r"\b(?:one |an? )?quarter[ -](?:inch\b|in\b\.?)", "1/4in ", False


def rules() -> tuple[Rule, ...]:
    """The rules in order, for a text in small letters: pattern, what takes its place, whether its first group is a count
    that may be in words.
    """
    found: list[tuple[str, str] | Rule] = [
        (r"[“”„″]|''", '"'), (r"[’‘`´]", "'"), (r"[⁄∕]", "/"), (r"[–—‑−]", "-"), (r"\u00a0", " "),
        (r"½", " 1/2"), (r"¼", " 1/4"), (r"¾", " 3/4"), (r"⅛", " 1/8"), (r"⅜", " 3/8"), (r"⅝", " 5/8"), (r"⅞", " 7/8"),
        (r"(\d),(\d{3})\b", "$1$2"),
        (r"(\d) ?/ ?(\d)", "$1/$2"),
        (r"(\d/\d+) ?(?:ths?|rds|nds)\b", "$1"),
        *_sizes_in_words(),
        *((rf"\b(?:grade|gr|g) ?-?{name}\b", f"g{number}") for name, number in _GRADE_NAMES.items()),
        (rf"\b({'|'.join(one for one in COUNTS if one != 'one')})\b{_BEFORE_A_UNIT}", "$1", True),
        (r"\bone(?= ?-?(?:inch|mm|ton|tonne|leg))", "1"),
        # So many of one thing: a bare figure before a word of many is a count, and no size.
        (rf"(?<![\w/.-])(?<!grade )(?:[2-9]|1\d|20) (?={_OF_MANY})", "how many "),
        (r"\b(?:grade|grad|gade|gr|gd|g)\.?[ -]*(\d{1,4}|[abtsmlpv])\b(?![/.'])", "g$1 "),
        (r"\b(\d{2,3})[ -]?(?:grade|gr)\b", "g$1 "),
        (r"\bminus \d+\b|\b\d+(?: ?°| ?degrees?| ?deg)? below\b(?: zero\b)?", "below zero "),
        (r"\b(\d+)(?: ?°| ?degrees?| ?deg)? ?(f|c)(?:ahrenheit|elsius)?\b", "$1temp$2 "),
        (r"\b(\d+) ?(?:°|degrees?|deg\b|degs\b)", "$1deg "),
        (r"\b(2|3|4) (?=slings\b|legs\b)", "$1leg "),
        (r"\b(?:1|one) (?:leg|chain|sling) (?:is |was |hangs |hung )?(?:slack|loose|shorter|longer)\b", "uneven legs "),
        (r"\b(?:1|single)[ -]?leg(?:s|ged)?\b", "1leg "),
        (r"\b(?:2|double)[ -]?leg(?:s|ged)?\b", "2leg "),
        (r"\b(?:4|quad)[ -]?leg(?:s|ged)?\b", "4leg "),
        (r"\b(?:3|triple)[ -]?leg(?:s|ged)?\b", "3leg "),
        (r"(?<![\d/.-])(1|3|5|7|9|11|13|15)-(2|4|8|16|32)\b(?![/\d])", "$1/$2"),
        (r"(?<![\w/.-])([1-4])[ -]+(\d{1,2}/(?:2|4|8|16|32))\b", "$1-$2"),
        (r"\b(\d/\d+)-\d{1,2}\b(?!/)", "$1in "),
        (r"\bdropp?e?d\b|\bdropt\b", "was dropped "),
        (r"(?<![\d.])\.(\d)", "0.$1"),
        (r'(\d) ?-?(?:"|inch(?:es)?\b|in\.|in\b)', "$1in "),
        (r"(\d) ?-?(?:mm|mil|millimet(?:er|re)s?)\b", "$1mm "),
        (r"(\d) ?-?(?:cm|centimet(?:er|re)s?)\b", "$1cm "),
        (r"\bm ?(\d{1,2})(?: ?x ?[\d.]+)?\b", "m$1 "),
        (r"\b(\d/\d+)[ -](?:\d{1,2} )?(?:unc|unf|coarse|fine)\b", "$1in "),
        (r"(\d) ?-?(?:metric tons?|tonnes?|te?)\b", "$1tonne "),
        (r"(\d) ?-?short tons?\b", "$1shortton "),
        (r"(\d) ?-?tons?\b", "$1ton "),
        (r"(\d) ?-?(?:lbs?|pounds?|#)(?!\w)", "$1lb "),
        (r"(\d) ?-?(?:kgs?|kilos?|kilograms?|kilogrammes?)\b", "$1kg "),
        (r"(\d) ?-?(psi|bar)\b", "$1$2 "),
        (r"\bat (30|45|60|90)\b(?! ?(?:in|mm|lb|kg|t|/))", "$1deg "),
        (r"\b(?:[a-z]|ht|pc|\d{1,4}) (?:is |are )?(?:on|stamped|marked|embossed|in) (?=(?:a |the |my |each |every )?(?:chain|link|side)s?\b)", "mark "),
        (r"\b(?:[a-z]|[a-z]?\d{1,4}) (?=means?\b)|\bwith (?:an? )?(?:[a-z]|\d{1,4}) on (?:it|them)\b", "mark "),
        (r"(?<=\d) +(?:breaks?|snaps?)(?= *$)", " breaking strength "),
        (r"(\d) ?-?(?:kn|kilonewtons?)(?![\w/])", "$1kn "),
        (r"(\d) ?-?(?:ft|feet|foot)(?![\w/])|(\d)'(?!\w)", "$1$2ft "),
        (r"(\d) ?-?(?:n|m|%|percent|hrc|k)(?![\w/])", "$1other "),
        (rf"({_WITH_UNIT})\s+(?:to|in|into|as)\s+{_UNIT}", "$1 convert "),
        (rf"\bhow many {_UNIT}(?: is| are)?(?: there)?(?: in)?\s+(?=[\d.]*{_WITH_UNIT} *$)", "convert "),
        (r"['’]s\b", " "),
        (r"(?<=[a-z])[-/](?=[a-z])", " "),
        (r"""[?!,;:()"'+=&*\[\]{}<>|~_]""", " "),
        (r"\.(?= |$)", " "),
    ]  # fmt: skip
    return tuple((*one, False) if len(one) == 2 else one for one in found)


KINDS = (
    ("size", r"^(?:(\d+)-)?(\d+)/(\d+)(?:in)?$", "fraction"),
    ("size", r"^(\d+\.\d+)(?:in)?$", "inch"),
    ("size", r"^(\d+)in$", "inch"),
    ("size", r"^(\d+(?:\.\d+)?)mm$", "mm"),
    ("size", r"^(\d+(?:\.\d+)?)cm$", "cm"),
    ("thread", r"^m(\d+)$", ""),
    ("grade", r"^g(\d+|[a-z])$", ""),
    ("legs", r"^(\d)leg$", ""),
    ("angle", r"^(\d+)deg$", ""),
    ("temperature", r"^(\d+)temp[fc]$", ""),
    ("psi", r"^(\d+)(?:psi|bar)$", ""),
    ("load", r"^(\d+(?:\.\d+)?)(shortton|ton|tonne|lb|kg|kn|ft|other)$", ""),
    ("number", r"^#?(\d+(?:\.\d+)?)$", ""),
)
"""What a word that holds a figure is, told in this order."""

TRADE_GRADES = ("proof coil", "high test", "hi test", "hitest", "bbb", "3b", "transport")
"""What the trade says for a grade of chain, beside the marks; read by calc.marks like any mark."""


def grades() -> dict[str, dict[str, list[str]]]:
    """For each spelling of a grade, what it names on chain and on a shackle."""
    spelled = [
        *(f"g{n}" for n in (3, 4, 5, 6, 7, 8, 10, 28, 30, 40, 43, 70, 80, 100, 300, 430, 700, 800, 1000)),
        *(f"g{letter}" for letter in "lmpstvab"),
        *(f"p{n}" for n in (3, 4, 7, 30, 43, 70)),
        *TRADE_GRADES,
        "alloy",
        "regular",
    ]
    found: dict[str, dict[str, list[str]]] = {}
    for text in spelled:
        bare = text[1:] if text.startswith("g") and len(text) == 2 and text[1].isalpha() else text
        both = {
            "chain": list(read_grade(bare).grades),
            "shackle": list(read_grade(bare.removeprefix("g"), "shackle").grades),
        }
        if kept := {kind: names for kind, names in both.items() if names}:
            found[text] = kept
    found["alloy"]["chain"] = sorted(_named_alloy(), key=int)
    return found


def _named_alloy() -> set[str]:
    return {row["grade"] for row in table("chain-tie-down").rows if row["grade_name"] == "alloy"}


def grade_names() -> dict[str, str]:
    """What the law calls a grade of chain, in words: 70 is transport."""
    return {row["grade"]: row["grade_name"].replace("_", " ") for row in table("chain-tie-down").rows}


def lifting_grades() -> dict[str, bool]:
    """For each grade of chain that the tables speak of, whether it is made to lift."""
    names = {row["grade"] for row in table("chain-which-may-lift").rows}
    return {name: allowed for name in sorted(names) if (allowed := may_lift(name)) is not None}


@dataclass(frozen=True)
class Words:
    """The three files of docs/words/LANG/search: words of the trade, what each page answers, what the book has not."""

    synonyms: Mapping[str, Any]
    answers: Mapping[str, Any]
    not_here: Mapping[str, Any]


def read_words(root: Path = ROOT) -> Words:
    """The words for the language of this build; the made-up language is searched in English."""
    tongue = "en" if language() == PSEUDO else language()
    folder = root / "docs" / "words" / tongue / "search"
    one, two, three = (
        tomllib.loads((folder / f"{name}.toml").read_text(encoding="utf-8"))
        for name in ("synonyms", "answers", "not-here")
    )
    return Words(one, two, three)


def concepts(words: Words) -> list[dict[str, Any]]:
    """Every word of the trade: what it is called, what kind it is, what else is typed for it."""
    made: list[dict[str, Any]] = []
    for name, part in words.synonyms["parts"].items():
        made.append({"say": name, "kind": "part", "name": part["name"], "words": [name, *part["words"]]})
    for name, said in words.not_here.items():
        made.append({"say": name, "kind": "absent", "words": [name, *said["words"]]})
    for kind, section in (("thing", "things"), ("term", "terms"), ("harmless", "harmless")):
        for name, typed in words.synonyms[section].items():
            made.append({"say": name, "kind": kind, "words": [name, *typed]})
    return made


__all__ = [
    "COUNTS",
    "KINDS",
    "Words",
    "concepts",
    "grade_names",
    "grades",
    "lifting_grades",
    "read_words",
    "rules",
]
