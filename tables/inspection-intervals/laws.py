"""Laws of the table inspection-intervals. The source of each law stands in its docstring."""

from __future__ import annotations

from itertools import pairwise

from build_scripts.laws.tools import Tables, groups, num

NAME = "inspection-intervals"
RISING_USE = ("lifts_1_to_5", "lifts_6_to_25", "lifts_26_to_200", "lifts_over_200")
A_YEAR, HALF_A_YEAR, A_QUARTER, A_MONTH = 12, 6, 3, 1
BY_USE = {
    "lifts_1_to_5": A_YEAR,
    "lifts_6_to_25": HALF_A_YEAR,
    "lifts_26_to_200": A_QUARTER,
    "lifts_over_200": A_MONTH,
}
MONTHLY = {("osha-1910-179", "crane_hook"), ("wac-296-24", "wire_rope_sling")}
SYNTHETIC_QUARTERLY = {"as-4497-1353"}
PLACE_OF = {
    "as-3775-1": "australia",
    "as-4497-1353": "australia",
    "asme-b30-26": "us-standard",
    "asme-b30-9": "us-standard",
    "bg-bau-ubt3074": "germany",
    "california-t8": "us-california",
    "cfr-49-396": "us-federal",
    "loler-1998": "uk",
    "michigan-r408": "us-michigan",
    "ontario-851": "canada-ontario",
    "osha-1910-179": "us-federal",
    "osha-1910-184": "us-federal",
    "osha-1926-251": "us-federal",
    "trbs-1201": "germany",
    "vdi-2700-3-1": "germany",
    "wac-296-155": "us-washington",
    "wac-296-24": "us-washington",
}
GEAR_OF = {
    "as-3775-1": {"chain_sling"},
    "as-4497-1353": {"web_sling"},
    "asme-b30-26": {"rigging_hardware"},
    "asme-b30-9": {"web_sling"},
    "bg-bau-ubt3074": {"chain_sling"},
    "california-t8": {"chain_sling"},
    "cfr-49-396": {"vehicle_anchor"},
    "loler-1998": {"chain_sling", "wire_rope_sling", "web_sling", "rigging_hardware", "crane_hook"},
    "michigan-r408": {"chain_sling"},
    "ontario-851": {"chain_sling", "wire_rope_sling", "web_sling", "rigging_hardware", "crane_hook"},
    "osha-1910-179": {"crane_hook"},
    "osha-1910-184": {"chain_sling"},
    "osha-1926-251": {"chain_sling"},
    "trbs-1201": {"chain_sling", "wire_rope_sling", "web_sling"},
    "vdi-2700-3-1": {"tie_down_strap", "tie_down_chain"},
    "wac-296-155": {"web_sling", "rigging_hardware"},
    "wac-296-24": {"chain_sling", "wire_rope_sling"},
}
CLASSES = {
    "as-3775-1": set(RISING_USE),
    "asme-b30-9": {"normal", "severe"},
    "bg-bau-ubt3074": {"normal", "severe"},
    "wac-296-155": {"normal", "severe"},
}


def law_a_year_is_the_longest(tables: Tables) -> list[str]:
    """No law or standard read lets lifting gear go longer than a year (29 CFR 1910.184(e)(3)(i), LOLER reg. 9(3))."""
    return [
        f"{NAME}/claims.csv {row['item']}, {row['place']}: {row['value']} months, between 1 and 12 are possible"
        for row in tables[NAME]
        if num(row["value"]) not in (A_MONTH, A_QUARTER, HALF_A_YEAR, A_YEAR)
    ]


def law_british_accessories_at_half_the_gap(tables: Tables) -> list[str]:
    """LOLER reg. 9(3): six months for lifting accessories, twelve for other lifting equipment, such as a crane and its hook."""
    return [
        f"{NAME}/claims.csv uk, {row['item']}: six months for accessories, twelve for the crane's own hook"
        for row in tables[NAME]
        if row["place"] == "uk"
        and num(row["value"]) != (A_YEAR if row["item"] == "crane_hook" else HALF_A_YEAR)
    ]


def law_harder_service_is_looked_at_sooner(tables: Tables) -> list[str]:
    """Severe service has the shorter gap: a quarter in the United States (ASME B30.9; WAC 296-155-55800 Table 12), half a
    year in Germany (BG BAU); by lifts a week the gap falls step by step from a year to a month (AS 3775.1).
    """
    found = []
    for (item, place, source), rows in groups(tables[NAME], "item", "place", "source").items():
        by_service = {row["service"]: num(row["value"]) for row in rows}
        if "severe" in by_service:
            shorter = HALF_A_YEAR if place == "germany" else A_QUARTER
            if by_service.get("normal") != A_YEAR or by_service["severe"] != shorter:
                found.append(
                    f"{NAME}/claims.csv {item}, {place}: a year in normal, {shorter} months in severe service"
                )
        lifts = [by_service[band] for band in RISING_USE if band in by_service]
        if lifts and (len(lifts) != len(RISING_USE) or any(low <= high for low, high in pairwise(lifts))):
            found.append(f"{NAME}/claims.csv {item}, {source}: the gap falls as lifts a week rise")
        found += [
            f"{NAME}/claims.csv {item}, {source}: {band} is {months} months"
            for band, months in BY_USE.items()
            if by_service.get(band, months) != months
        ]
    return found


def law_a_yearly_text_is_yearly(tables: Tables) -> list[str]:
    """A text that knows no class of service says a year, but for the British half year, the Australian quarter for web, the
    monthly look at crane hooks (29 CFR 1910.179(j)(2)(iii)) and at rope slings in Washington (WAC 296-24-29405).
    """
    found = []
    for row in tables[NAME]:
        if row["service"] != "any" or row["place"] == "uk":
            continue
        wanted = A_YEAR
        if (row["source"], row["item"]) in MONTHLY:
            wanted = A_MONTH
        if row["source"] in SYNTHETIC_QUARTERLY:
            wanted = A_QUARTER
        if num(row["value"]) != wanted:
            found.append(
                f"{NAME}/claims.csv {row['item']}, {row['source']}: {wanted} months, not {row['value']}"
            )
    return found


def law_a_source_speaks_for_its_place_and_gear(tables: Tables) -> list[str]:
    """A law holds where it was made and for the gear its section names (29 CFR 1910.184(e), WAC 296-24-29405, and so on);
    every gear that a source names, and every class of service it knows, has its row.
    """
    found = []
    for (source,), rows in groups(tables[NAME], "source").items():
        found += [
            f"{NAME}/claims.csv {source}: speaks for {PLACE_OF[source]}, not for {row['place']}"
            for row in rows
            if row["place"] != PLACE_OF[source]
        ]
        if {row["item"] for row in rows} != GEAR_OF[source]:
            found.append(f"{NAME}/claims.csv {source}: names {sorted(GEAR_OF[source])}")
        for (item,), same in groups(rows, "item").items():
            if {row["service"] for row in same} != CLASSES.get(source, {"any"}):
                found.append(
                    f"{NAME}/claims.csv {source}, {item}: has a row for each class of service it knows"
                )
    return found
