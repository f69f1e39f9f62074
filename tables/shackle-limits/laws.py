"""Laws of the table shackle-limits. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.families import default_is_the_strictest, sections_limit
from build_scripts.laws.tools import Tables, num

# Section of a law or standard -> what it limits.
SHACKLE_SECTIONS = {
    ("wac-296-155", "296-155-33900 Table 19"): {("body_or_pin", "dimension_loss")},
    ("doe-std-1090", "s. 15.4.8"): {("body_or_pin", "deformation"), ("lifting_bar", "bend")},
    ("site-safe-nz", "Slinging module"): {("body_or_pin", "dimension_loss")},
    ("bs-en-13889-note", "Note on wear of shackles"): {("body_or_pin", "dimension_loss")},
    ("iso-16855", "Public abstract"): {("body_or_pin", "dimension_loss"), ("pin", "dimension_loss")},
}

law_sections = sections_limit("shackle-limits", SHACKLE_SECTIONS)
law_default_is_the_strictest = default_is_the_strictest("shackle-limits", "item")


def law_ten_percent_is_common(tables: Tables) -> list[str]:
    """Wear of a shackle: three sources in five print the same share; a pin may lose less than a body."""
    rows = tables["shackle-limits"]
    lost = [num(r["value"]) for r in rows if (r["item"], r["quantity"]) == ("body_or_pin", "dimension_loss")]
    pin = [num(r["value"]) for r in rows if r["item"] == "pin"]
    if lost.count(10) < 3 or max(lost) != 10 or not max(pin, default=99) < min(lost):
        return [
            "shackle-limits/claims.csv: ten percent is the common limit, and a pin may lose less than a body"
        ]
    return []
