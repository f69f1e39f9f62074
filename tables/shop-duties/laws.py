"""Laws of the table shop-duties. The source of each law stands in its docstring."""

from __future__ import annotations

import re

from build_scripts.laws.tools import Tables, num

NAME = "shop-duties"
PLACES = {
    "osha": ("us-federal", "us-state-plans"),
    "29cfr1975": ("us-federal",),
    "asme": ("us-standard",),
    "wac": ("us-washington",),
    "california": ("us-california",),
    "michigan": ("us-michigan",),
    "canada": ("canada-federal",),
    "ontario": ("canada-ontario",),
    "alberta": ("canada-alberta",),
    "worksafebc": ("canada-bc",),
    "pei": ("canada-provinces",),
    "prairie": ("canada-provinces",),
    "loler": ("uk",),
    "uk": ("uk",),
    "ireland": ("ireland",),
    "betrsichv": ("germany",),
    "trbs": ("germany",),
    "dguv": ("germany",),
    "bg": ("germany",),
    "eu": ("eu",),
    "as": ("australia",),
    "whs": ("australia",),
    "wa": ("australia",),
    "tasmania": ("australia",),
    "nz": ("new-zealand",),
}
MONTHS = re.compile(r"(\d+) months?")
JACK_MONTHS, PROOF_PERCENT = "6", "125"


def law_a_text_speaks_for_its_place(tables: Tables) -> list[str]:
    """A law binds where it was made: OSHA in the United States (29 CFR 1910.5), LOLER in the United Kingdom, and so on."""
    return [
        f"{NAME}/claims.csv {row['source']}: does not speak for {row['place']}"
        for row in tables[NAME]
        if row["place"] not in PLACES.get(row["source"].split("-")[0], ())
    ]


def law_the_longest_gap_is_that_of_the_other_table(tables: Tables) -> list[str]:
    """Where the same source says in the table of intervals how long a gap may be for a kind of gear (29 CFR
    1910.184(e)(3)(i), WAC 296-24-29405, TRBS 1201 and others), the longest gap named here for it is that one.
    """
    found = []
    longest: dict[tuple[str, str], float] = {}
    for row in tables["inspection-intervals"]:
        key = row["source"], row["item"]
        longest[key] = max(longest.get(key, 0.0), num(row["value"]))
    for row in tables[NAME]:
        key = row["source"], row["item"]
        named = [float(months) for months in MONTHS.findall(row["value"])]
        if row["duty"] == "inspection" and named and key in longest and max(named) != longest[key]:
            found.append(f"{NAME}/claims.csv {row['item']}, {row['source']}: {longest[key]:g} months")
    return found


def law_construction_is_said(tables: Tables) -> list[str]:
    """29 CFR Part 1926 and WAC 296-155 are for construction: a line from either says so first, but for definitions."""
    return [
        f"{NAME}/claims.csv {row['source']} {row['locator']}: begins with In construction"
        for row in tables[NAME]
        if row["source"] in ("osha-1926-251", "osha-1926-305", "wac-296-155")
        and not row["value"].startswith("In construction:")
    ]


def law_a_proof_of_own_gear_agrees_with_the_table_of_proofs(tables: Tables) -> list[str]:
    """29 CFR 1926.251(a)(4): the percent here is the factor in the table of proof tests; 1910.244(a)(2)(vi): six months."""
    factors = [
        num(row["value"])
        for row in tables["proof-tests"]
        if row["source"] == "osha-1926-251" and row["item"] == "custom_lifting_accessory"
    ]
    proof = [
        row["value"] for row in tables[NAME] if row["case"] == "proof" and row["source"] == "osha-1926-251"
    ]
    jack = [row["value"] for row in tables[NAME] if row["case"] == "one place"]
    found = []
    if factors != [num(PROOF_PERCENT) / 100] or not all(f"{PROOF_PERCENT} percent" in text for text in proof):
        found.append(f"{NAME}/claims.csv lifting_frame: {PROOF_PERCENT} percent")
    if not all(f"{JACK_MONTHS} months" in text for text in jack):
        found.append(f"{NAME}/claims.csv jack: {JACK_MONTHS} months")
    return found


def law_every_country_says_who_is_bound_alone(tables: Tables) -> list[str]:
    """Each country of the table has a line on the shop with no employee, which is what its reader is (coverage: 29 CFR
    1975.4, LOLER reg. 3, BetrSichV s. 2(3), WHS Act s. 19(5)).
    """
    alone = {row["place"].split("-")[0] for row in tables[NAME] if row["duty"] == "alone"}
    return [
        f"{NAME}/claims.csv {place}: no line on the shop with no employee"
        for place in sorted({row["place"].split("-")[0] for row in tables[NAME]} - {"ireland", "eu"})
        if place not in alone
    ]
