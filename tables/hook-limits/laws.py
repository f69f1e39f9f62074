"""Laws of the table hook-limits. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.families import default_is_the_strictest, sections_limit
from build_scripts.laws.tools import Tables, num

# Section of a law or standard -> what it limits.
HOOK_SECTIONS = {
    ("wac-296-155", "296-155-55800 Table 12"): {
        ("hook", "throat_increase"),
        ("hook", "throat_increase_largest"),
        ("hook", "twist"),
        ("hook", "section_wear"),
    },
    ("qld-pn10123", "pp. 35, 39"): {("hook", "throat_increase"), ("hook", "section_wear")},
    ("qld-pn10123", "p. 38"): {("ring", "stretch")},
    ("alberta-ohs", "s. 309, 2009 guide text"): {
        ("hook", "throat_increase"),
        ("hook", "twist"),
        ("hook", "section_wear"),
    },
}
OLDER_HOOK_TEXT = {("hook", "throat_increase"), ("hook", "twist")}
"""What the older federal text limits, wherever it stands."""

law_sections = sections_limit("hook-limits", HOOK_SECTIONS, older=OLDER_HOOK_TEXT)
law_default_is_the_strictest = default_is_the_strictest("hook-limits", "item")


def law_older_text_is_one(tables: Tables) -> list[str]:
    """The older federal hook rule (throat and twist) is one rule wherever it stands.

    29 CFR 1910.179 and 1910.184, DOE-STD-1090 and Alberta copy one text, so each of them prints the same two figures, and
    both are laxer than those of Washington and Queensland.
    """
    found = []
    by_source = {
        (r["source"], r["quantity"]): num(r["value"]) for r in tables["hook-limits"] if r["item"] == "hook"
    }
    older = ("osha-1910-184", "osha-1910-179", "doe-std-1090", "alberta-ohs")
    for quantity in ("throat_increase", "twist"):
        figures = {by_source.get((source, quantity), math.nan) for source in older}
        strict = by_source.get(("wac-296-155", quantity), math.nan)
        if len(figures) != 1 or not strict < min(figures) <= 15:
            found.append(
                f"hook-limits/claims.csv {quantity}: the older text is one figure, laxer than Washington's: {figures}"
            )
    if by_source.get(("wac-296-155", "twist")) != 0:
        found.append("hook-limits/claims.csv: any visible twist is none allowed")
    for quantity in ("throat_increase", "section_wear"):
        if by_source.get(("wac-296-155", quantity)) != by_source.get(("qld-pn10123", quantity)):
            found.append(f"hook-limits/claims.csv {quantity}: Washington and Queensland agreed when read")
    return found
