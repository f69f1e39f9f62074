"""Laws of form: how a cell must be written, wherever it stands.

They know nothing of chain or rope. They know that a table has its own closed list of words, that a source numbers its
own sections and prints in its own units, that a locator names the row it points at, and to what step a source prints.
One law of each kind is made for each table, so that a change in one table asks only that table's laws.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from functools import cache
from typing import Any

from tests.data.law_tools import Law, Tables, descriptor, exact

# --------------------------------------------------------------------------- words, patterns and keys of the schema


@cache
def _schema(name: str) -> dict[str, Any]:
    return next(r["schema"] for r in descriptor()["resources"] if r["name"] == name)


@cache
def _cell_problem(name: str, column: str, cell: str) -> str:
    field = next(f for f in _schema(name)["fields"] if f["name"] == column)
    rules = field.get("constraints", {})
    if rules.get("required") and not cell:
        return f"{name}.csv, column {column}: is empty"
    if "enum" in rules and cell not in rules["enum"]:
        return f"{name}.csv, column {column}: {cell} is not a word of this column"
    if "pattern" in rules and not re.fullmatch(rules["pattern"], cell):
        return f"{name}.csv, column {column}: {cell} is not written as this column is"
    if field["type"] == "number" and not re.fullmatch(r"-?[0-9]+(\.[0-9]+)?", cell):
        return f"{name}.csv, column {column}: {cell} is not a number"
    return ""


def _form_words(name: str, tables: Tables) -> list[str]:
    """The Data Package schema: every word is one of its column's words, every key stands once, every source has a card."""
    rows, key = tables[name], _schema(name)["primaryKey"]
    found = [
        problem
        for row in rows
        for column, cell in row.items()
        if (problem := _cell_problem(name, column, cell))
    ]
    if len({tuple(row[column] for column in key) for row in rows}) != len(rows):
        found.append(f"{name}.csv: two rows have the same key")
    cards = {card["key"] for card in tables["sources"]}
    return found + [f"{name}.csv: no card for {row['source']}" for row in rows if row["source"] not in cards]


# --------------------------------------------------------------------------- where a source keeps its figures
# A source numbers its own sections. Law texts open with their own number, a standard with its table or clause. Taken
# from the numbering of each source, so a row that is handed to another source stands at a place that one does not have.
PLACES = {
    "aashto-m269": r"Table 2(, .* complete with eye or stub end pulls)?",
    "alberta-ohs": r"s\. (292|309)\b.*",
    "arc-energy-notes": r"Factor k, [A-Z]+",
    "army-tb-55-1900": r"s\. 5-5\.4",
    "army-tm": r"TM 55-.*",
    "asme-b30-26": r"2010, s\. 26-1\..*",
    "asme-b30-9": r"Table 9-1\.8\.1-1, .*|Choker angle table, pattern|6x19 .*",
    "asme-b36-10": r"Inch columns, size .*",
    "astm-a370": r"Conversion table, HRC [0-9]+",
    "astm-a391": r"scope|Design factor",
    "astm-a413": r"s\. 1\.1 scope",
    "astm-a489": r"Shoulder eyebolt, .* in, pull in line",
    "astm-a973": r"Grade 100, .*|Design factor",
    "astm-e140": r"Conversion table, HRC [0-9]+",
    "baker-haynes": r"Ch\. 7, .*",
    "bg-bau-ubt3074": r"ubt3074",
    "brahimi-2017": r"Review of fasteners",
    "bs-en-13889-note": r"Note on wear of shackles",
    "building-material-list": r"Density list",
    "california-t8": r"504[0-9]\(.*",
    "canada-crc-1494": r"C\.R\.C\. 1494.*",
    "canada-sor-2007-128": r"s\. 322|Schedule 5|Unitised strapping",
    "ce-bands": r"Band .*",
    "cfr-49-393": r"393\.1[0-9][0-9].*",
    "chain-steel-patents": r"Range for .* patent.*",
    "chain-stiffness-note": r"Axial stiffness",
    "dguv-109-005": r"App\. 1",
    "dguv-109-017": r"Annex [CE].*",
    "dguv-201-030": r"s\. 6\.3.*",
    "dguv-209-021": r"(Grade 8 page|grade 8 page|Section 2), after (DIN )?EN 818-[456]|after DIN 685:2020-08",
    "dguv-209-061": r"s\. 4",
    "dguv-215-313": r"Table 1",
    "din-580": r"Lifting eye bolt M.*",
    "dnv-os-e301": r"20(10, studless|18, stud link) .*",
    "doe-std-1090": r"s\. 1[125]\..*|ch\. 11, .*|Table 15-2|Chain slings",
    "dooley-1919": r"Colours of (heated steel|tempering)",
    "dupont-marder": r"Measured efficiency",
    "ec3-1-2": r"Table 3\.1, [0-9]+ C",
    "electrode-ranges": r"E[0-9]+ .* in",
    "ema-4wd": r"para 4\.25",
    "ema-disaster-rescue": r"para 3\.15",
    "embrittlement-notes": r"500 F embrittlement|Blue brittleness.*|Temper embrittlement",
    "en-1492-1": r"Scope|Table of limits, ([a-z]+|factor for any colour)",
    "en-818-2": r"Working load limits, .* mm",
    "en-818-3": r"Table 5, .* mm|scope",
    "en-818-4": r"Annex B",
    "en-818-6": r"Grade 8, as quoted by a chain maker",
    "eu-2006-42": r"Annex I 4\.1\.2\.5",
    "general-range": r"Common practice, no source",
    "gere": r"Density table",
    "gost-en-818-4": r"p\. IV, letter [MPSTV]",
    "hydrogen-notes": r"Failed fasteners|Letter on hydrogen cracking",
    "india-dock-1990": r"Schedule I \(2\)\(a\)",
    "iowa-im-452": r"Pay weights|Weld metal weights",
    "en-12524": r"Table of design values, .*",
    "iso-16855": r"Public abstract",
    "iso-4042": r"1999 extract",
    "lloyds-lame": r"Ch\. 8, Table 8\.5\.1, .* t",
    "michigan-r408": r"R 408\..*",
    "mil-std-209": r"5\.1\..*",
    "navedtra-14026": r"p\. 1-[0-9]",
    "navedtra-14080": r"p\. 3-24; 14081 p\. 13-19|ch\. 3.*",
    "navedtra-14251": r"ch\. 6",
    "nd-0027": r"s\. (7|14)\..*",
    "openstax-physics": r"(Density|Elastic Moduli) table",
    "osha-1910-179": r"1910\.179\(.*",
    "osha-1910-184": r"1910\.184\(.*|Table N-184-1",
    "osha-1917": r"1917\..*|Appendix I",
    "osha-1918": r"App\. II Table [12].*",
    "osha-1919": r"1919\..*",
    "osha-1926-251": r"1926\.251\(.*|Table H-1",
    "osha-sling-guidance": r"Tables? [12](, .*| and 2)|Text on angles",
    "qld-pn10123": r"pp?\. 3[0-9](, 39)?",
    "rr-c-271": r"Type I .*|edition F, .*|Shackles, grade [AB], .*",
    "site-safe-nz": r"Slinging module",
    "steel-ranges": r"Range for [0-9]{4}",
    "stenbacka-2012": r"Review, DC electrode negative",
    "temper-data-pages": r"AISI [0-9]{4}, .*",
    "utility-rr-c-271d": r"Shackle table, .* in",
    "wac-296-155": r"296-155-.*",
    "wac-296-24": r"296-24-.*",
    "wac-296-304": r"296-304-.*",
    "wac-296-54": r"296-54-.*",
    "wac-296-56": r"296-56-.*",
    "wac-296-78": r"296-78-.*",
    "wac-296-874": r"296-874-.*",
    "worksafe-nb-15": r"Clip table",
}


@cache
def _place_is_of(source: str, locator: str) -> bool:
    return re.fullmatch(PLACES.get(source, "(?!)"), locator) is not None


def _form_places(name: str, tables: Tables) -> list[str]:
    """Every locator is a place that its source has (PLACES)."""
    return [
        f"{name}.csv: {row['source']} has no place called {row['locator']}"
        for row in tables[name]
        if not _place_is_of(row["source"], row["locator"])
    ]


# --------------------------------------------------------------------------- the locator names its row
NAMED_IN_LOCATOR = {
    "carbon-equivalent-bands": ("rating",),
    "chain-grade-stress": ("letter",),
    "chain-heat-asme": ("temperature_degF",),
    "chain-lifting": ("size_in",),
    "chain-strength": ("size_mm",),
    "chain-tie-down": ("grade",),
    "eyebolts": ("thread",),
    "fibre-rope-slings": ("sling",),
    "hardness-conversion": ("rockwell_c",),
    "pipe-sizes": ("pipe_size", "schedule"),
    "shackles": ("size_in",),
    "shackles-dee": ("swl_t",),
    "steel-compositions": ("steel",),
    "steel-hot-strength": ("temperature_degC",),
    "turnbuckles": ("thread_in",),
    "web-slings": ("colour",),
    "weld-parameters": ("electrode", "size_in"),
}


@cache
def _names(locator: str, cell: str) -> bool:
    return re.search(rf"(?<![0-9./-]){re.escape(cell.replace('_', ' '))}(?![0-9/-])", locator) is not None


def _form_locators(name: str, tables: Tables) -> list[str]:
    """Where the locator names the line of a printed table it names the line the row is about."""
    return [
        f"{name}.csv: the locator {row['locator']} does not name {column} {row[column]}"
        for row in tables[name]
        for column in NAMED_IN_LOCATOR.get(name, ())
        if not _names(row["locator"], row[column])
    ]


# --------------------------------------------------------------------------- units
LENGTH = {"in", "mm", "cm", "ft", "m"}
TEMPERATURE = {"degF", "degC"}

# What a quantity is decides which units it may have (the dimension of the thing, nothing else).
UNITS_OF_QUANTITY: dict[str, set[str]] = {
    "allowed": {"text"},
    "bend": LENGTH,
    "body_diameter": LENGTH,
    "bending_factor": {"ratio"},
    "brinell": {"HBW"},
    "broken_wires_at_end_fitting": {"count"},
    "broken_wires_in_eight_diameters": {"%"},
    "broken_wires_in_one_lay": {"count"},
    "broken_wires_in_one_lay_past_end_fitting": {"count"},
    "broken_wires_in_one_strand_in_one_lay": {"count"},
    "carbon_equivalent_from": {"%"},
    "carbon_equivalent_to": {"%"},
    "clips_drop_forged": {"count"},
    "clips_other_material": {"count"},
    "counted_share_of_limit": {"ratio"},
    "counted_share_of_strength": {"ratio"},
    "current_high": {"A"},
    "current_low": {"A"},
    "cut_or_broken_yarn": {"%"},
    "deformation": {"%"},
    "density_high": {"lb/ft3", "kg/m3"},
    "density_low": {"lb/ft3", "kg/m3"},
    "design_factor": {"ratio"},
    "design_factor_over_people": {"ratio"},
    "diameter_loss": LENGTH,
    "diameter_loss_even": {"%"},
    "diameter_loss_with_lay_stretch": {"%"},
    "dimension_loss": {"%"},
    "downward_share_of_weight": {"ratio"},
    "elongation": {"%"},
    "forward_share_of_weight": {"ratio"},
    "hardness_above": {"HRC", "HV"},
    "hardness_at_most": {"HRC", "HV"},
    "hardness_from": {"HRC", "HV"},
    "inside_length": LENGTH,
    "jaw_width": LENGTH,
    "legs_counted": {"count"},
    "length_at_most": LENGTH,
    "load_without_set": {"ratio"},
    "manufacturing_proof_force": {"kN"},
    "mark": {"text"},
    "maximum": {"%"},
    "maximum_wear": LENGTH,
    "mean_stress_at_minimum_break": {"N/mm2"},
    "measured_efficiency": {"ratio"},
    "measured_efficiency_high": {"ratio"},
    "measured_efficiency_low": {"ratio"},
    "measured_efficiency_mean": {"ratio"},
    "minimum": {"%"},
    "minimum_bend_deflection": {"mm"},
    "minimum_breaking_force": {"kN", "lbf"},
    "minimum_thickness": LENGTH,
    "mode_factor": {"ratio"},
    "mode_factor_0_45": {"ratio"},
    "mode_factor_45_60": {"ratio"},
    "modulus_constant": {"GPa"},
    "modulus_factor": {"ratio"},
    "modulus_fall_per_mm": {"GPa/mm"},
    "nominal_breaking_force": {"short_ton", "lbf"},
    "one_more_per": LENGTH,
    "one_per": LENGTH,
    "outer_wire_wear": {"ratio"},
    "outside_diameter": LENGTH,
    "pin_diameter": LENGTH,
    "proof_addition": {"ton", "short_ton", "t"},
    "proof_factor": {"ratio"},
    "proportional_limit_factor": {"ratio"},
    "rearward_share_of_weight": {"ratio"},
    "reduce_above": TEMPERATURE,
    "reduction_afterwards": {"%"},
    "reduction_of_area": {"%"},
    "reduction_while_hot": {"%"},
    "relative_to_saw": {"ratio"},
    "remaining": {"%"},
    "remove_above": TEMPERATURE,
    "required_share_of_weight": {"ratio"},
    "resisted_share_of_weight": {"ratio"},
    "rule": {"text"},
    "section_wear": {"%"},
    "share_of_choker_rating": {"%"},
    "share_of_vertical_rating": {"ratio"},
    "sideways_share_of_weight": {"ratio"},
    "sling_choker": {"short_ton"},
    "sling_vertical": {"short_ton"},
    "spacing": {"in", "cm"},
    "stiffness_over_diameter_squared": {"GPa"},
    "strength_harmed_above": TEMPERATURE,
    "strength_lost": {"%"},
    "stretch": {"%"},
    "temperature": TEMPERATURE,
    "temperature_from": TEMPERATURE,
    "temperature_high": TEMPERATURE,
    "temperature_low": TEMPERATURE,
    "temperature_to": TEMPERATURE,
    "tensile_strength": {"MPa", "ksi"},
    "tensile_strength_above": {"MPa"},
    "termination_factor": {"ratio"},
    "thickness_loss": {"%"},
    "throat_increase": {"%"},
    "throat_increase_largest": LENGTH,
    "tie_downs": {"count"},
    "tie_downs_for_first": {"count"},
    "torque": {"lbf.ft"},
    "turn_back": LENGTH,
    "twist": {"deg"},
    "use_above": TEMPERATURE,
    "use_below": TEMPERATURE,
    "vickers": {"HV"},
    "wall_thickness": LENGTH,
    "weight_at_least": {"lb", "kg"},
    "weight_at_most": {"lb", "kg"},
    "weight_per_length": {"lb/ft"},
    "working_load": {"kN", "lbf"},
    "working_load_limit": {"lb", "kg", "t", "short_ton"},
    "yield_factor": {"ratio"},
    "yield_strength": {"MPa"},
    "youngs_modulus": {"GPa"},
}

US, SI, NEITHER = "US", "SI", "neither"
SYSTEM_OF_UNIT = {
    **dict.fromkeys(("lb", "lbf", "short_ton", "ton", "in", "ft", "degF", "lb/ft3", "lb/ft", "lbf.ft", "ksi"), US),
    **dict.fromkeys(
        ("kg", "t", "kN", "mm", "cm", "m", "degC", "kg/m3", "N/mm2", "MPa", "GPa", "GPa/mm", "A"), SI
    ),
    **dict.fromkeys(("text", "%", "ratio", "count", "deg", "HRC", "HV", "HBW"), NEITHER),
}  # fmt: skip

# American law and handbooks print US units, European and Commonwealth ones SI. Those that print both are not listed.
SYSTEM_OF_SOURCE = {
    **dict.fromkeys(
        (
            "army-tb-55-1900", "army-tm", "asme-b30-26", "asme-b36-10", "astm-a391", "astm-a413", "astm-a489",
            "astm-a973", "baker-haynes", "building-material-list", "california-t8", "doe-std-1090", "general-range",
            "gere", "iowa-im-452", "michigan-r408", "mil-std-209", "navedtra-14026", "navedtra-14080",
            "navedtra-14251", "osha-1910-179", "osha-1910-184", "osha-1917", "osha-1919", "osha-1926-251",
            "osha-sling-guidance", "rr-c-271", "utility-rr-c-271d", "wac-296-24", "wac-296-304", "wac-296-54",
            "wac-296-56", "wac-296-78", "wac-296-874", "worksafe-nb-15",
        ),
        US,
    ),
    **dict.fromkeys(
        (
            "alberta-ohs", "bg-bau-ubt3074", "brahimi-2017", "bs-en-13889-note", "canada-sor-2007-128",
            "chain-stiffness-note", "dguv-109-017", "dguv-201-030", "dguv-209-021", "dguv-209-061", "dguv-215-313",
            "din-580", "dnv-os-e301", "ec3-1-2", "en-1492-1", "en-818-2", "en-818-3", "en-818-4", "en-818-6",
            "eu-2006-42", "gost-en-818-4", "india-dock-1990", "en-12524", "iso-16855", "iso-4042", "lloyds-lame",
            "nd-0027", "openstax-physics", "qld-pn10123", "site-safe-nz", "temper-data-pages", "electrode-ranges",
        ),
        SI,
    ),
}  # fmt: skip

# Sources that print one column in one unit only, though the unit next door is of the same system.
ONLY_UNIT = {
    ("proof-tests", "proof_addition", "osha-1919"): "ton",
    ("proof-tests", "proof_addition", "osha-1917"): "short_ton",
    ("wire-rope", "nominal_breaking_force", "army-tm"): "lbf",
    ("wire-rope", "nominal_breaking_force", "asme-b30-9"): "short_ton",
    ("embrittlement", "hardness_above", "iso-4042"): "HV",
    ("embrittlement", "hardness_above", "hydrogen-notes"): "HRC",
    ("embrittlement", "hardness_at_most", "hydrogen-notes"): "HRC",
    ("embrittlement", "hardness_from", "hydrogen-notes"): "HRC",
}


def _form_units(name: str, tables: Tables) -> list[str]:
    """The unit is one the quantity can have, and one the source prints in (UNITS_OF_QUANTITY, SYSTEM_OF_SOURCE)."""
    found = []
    for row in tables[name]:
        quantity, unit, source = row["quantity"], row["unit"], row["source"]
        system = SYSTEM_OF_UNIT.get(unit)
        if unit not in UNITS_OF_QUANTITY.get(quantity, ()):
            found.append(f"{name}.csv: {quantity} is not measured in {unit}")
        elif system not in (NEITHER, SYSTEM_OF_SOURCE.get(source, system)):
            found.append(f"{name}.csv: {source} does not print in {unit}")
        elif unit != ONLY_UNIT.get((name, quantity, source), unit):
            found.append(f"{name}.csv: {source} prints {quantity} in another unit than {unit}")
    return found


# --------------------------------------------------------------------------- the step to which a source prints
# (table, quantity, unit) -> the smallest step of that printed column.
PRINTED_STEP = {
    ("arc-efficiency", "relative_to_saw", "ratio"): "0.1",
    ("chain-heat-asme", "reduction_afterwards", "%"): "5",
    ("chain-heat-asme", "reduction_while_hot", "%"): "5",
    ("chain-heat-en", "remaining", "%"): "5",
    ("chain-lifting", "working_load_limit", "lb"): "100",
    ("chain-lifting-metric", "working_load_limit", "kg"): "10",
    ("chain-modulus", "modulus_constant", "GPa"): "0.1",
    ("chain-tie-down", "working_load_limit", "kg"): "10",
    ("chain-tie-down", "working_load_limit", "lb"): "50",
    ("chain-wear", "maximum_wear", "in"): "1/64",
    ("design-factors", "design_factor", "ratio"): "0.5",
    ("design-factors", "design_factor_over_people", "ratio"): "1",
    ("embrittlement", "hardness_above", "HV"): "5",
    ("embrittlement", "temperature_from", "degF"): "50",
    ("embrittlement", "temperature_to", "degF"): "10",
    ("embrittlement", "tensile_strength_above", "MPa"): "100",
    ("eyebolts", "working_load_limit", "kg"): "10",
    ("eyebolts", "working_load_limit", "lb"): "10",
    ("fibre-rope-slings", "working_load_limit", "lb"): "50",
    ("hook-limits", "section_wear", "%"): "5",
    ("hook-limits", "stretch", "%"): "5",
    ("hook-limits", "throat_increase", "%"): "5",
    ("hook-limits", "twist", "deg"): "5",
    ("proof-tests", "proof_addition", "short_ton"): "5",
    ("proof-tests", "proof_addition", "ton"): "5",
    ("shackle-limits", "deformation", "%"): "5",
    ("shackles", "minimum_breaking_force", "lbf"): "500",
    ("shackles", "working_load_limit", "short_ton"): "1/60",  # thirds, quarters or tenths
    ("sling-temperature-limits", "reduce_above", "degC"): "10",
    ("sling-temperature-limits", "reduce_above", "degF"): "50",
    ("sling-temperature-limits", "remove_above", "degF"): "50",
    ("sling-temperature-limits", "strength_harmed_above", "degF"): "50",
    ("sling-temperature-limits", "use_above", "degC"): "10",
    ("sling-temperature-limits", "use_above", "degF"): "10",
    ("sling-temperature-limits", "use_below", "degC"): "10",
    ("sling-temperature-limits", "use_below", "degF"): "10",
    ("steel-hot-strength", "yield_factor", "ratio"): "0.01",
    ("tie-down-numbers", "length_at_most", "ft"): "5",
    ("tie-down-numbers", "one_more_per", "ft"): "5",
    ("tie-down-numbers", "one_per", "ft"): "5",
    ("tie-down-numbers", "weight_at_least", "lb"): "100",
    ("tie-down-numbers", "weight_at_most", "kg"): "100",
    ("tie-down-numbers", "weight_at_most", "lb"): "100",
    ("tie-down-other", "working_load_limit", "kg"): "10",
    ("turnbuckles", "minimum_breaking_force", "lbf"): "1000",
    ("turnbuckles", "working_load", "lbf"): "100",
    ("weld-parameters", "current_high", "A"): "5",
    ("weld-parameters", "current_low", "A"): "5",
    ("wire-rope", "nominal_breaking_force", "lbf"): "100",
    ("wire-rope-clips", "spacing", "in"): "1/4",
    ("wire-rope-clips", "torque", "lbf.ft"): "5",
    ("wire-rope-clips", "turn_back", "in"): "1/2",
    ("wire-rope-heat", "remaining", "%"): "5",
    ("wire-rope-limits", "broken_wires_in_eight_diameters", "%"): "5",
    ("wire-rope-limits", "cut_or_broken_yarn", "%"): "5",
    ("wire-rope-limits", "diameter_loss", "in"): "1/64",
    ("wire-rope-limits", "strength_lost", "%"): "5",
}  # fmt: skip

_WELL_WRITTEN = re.compile(
    r"-?([1-9][0-9]{0,2}(,[0-9]{3})*|[1-9][0-9]*|0)(\.[0-9]+)?|([1-9][0-9]*-)?[1-9][0-9]*/[1-9][0-9]*"
)


@cache
def _badly_written(value: str) -> bool:
    """Leading zero, comma astray, a fraction not in lowest terms or above one (some wear tables keep to 64ths)."""
    if not _WELL_WRITTEN.fullmatch(value):
        return True
    if "/" not in value:
        return False
    above, below = (int(part) for part in value.rpartition("-")[2].split("/"))
    lowest = Fraction(above, below)
    return above >= below or (below != 64 and (lowest.numerator, lowest.denominator) != (above, below))


def law_numbers_are_well_written(tables: Tables) -> list[str]:
    """Numbers are written as shops and standards write them: commas in place, no leading zero, fractions in lowest terms."""
    return [
        f"{name}.csv: {row['value']} is not written as a number of this book is"
        for name, rows in tables.items()
        if name != "sources"
        for row in rows
        if row["unit"] != "text" and _badly_written(row["value"])
    ]


def _form_steps(name: str, tables: Tables) -> list[str]:
    """A column goes in the step to which its source prints it (PRINTED_STEP)."""
    found = []
    for row in tables[name]:
        step = PRINTED_STEP.get((name, row["quantity"], row["unit"]))
        if step and not _badly_written(row["value"]) and exact(row["value"]) % exact(step):
            found.append(f"{name}.csv {row['quantity']}: {row['value']} {row['unit']} is no step of {step}")
    return found


FORMS: tuple[Callable[[str, Tables], list[str]], ...] = (
    _form_words,
    _form_places,
    _form_locators,
    _form_units,
    _form_steps,
)


def _law(form: Callable[[str, Tables], list[str]], name: str) -> Law:
    def law(tables: Tables) -> list[str]:
        return form(name, tables)

    law.__name__ = f"law{form.__name__}_of_{name.replace('-', '_')}"
    law.__doc__ = form.__doc__
    return law


def _applies(form: Callable[[str, Tables], list[str]], name: str) -> bool:
    """Whether the form has anything to say of that table."""
    if form is _form_locators:
        return name in NAMED_IN_LOCATOR
    return form is not _form_steps or any(table == name for table, _, _ in PRINTED_STEP)


def form_laws() -> tuple[Law, ...]:
    """Every law of form for every table but the list of sources."""
    names = [r["name"] for r in descriptor()["resources"] if r["name"] != "sources"]
    by_table = (_law(form, name) for name in names for form in FORMS if _applies(form, name))
    return (*by_table, law_numbers_are_well_written)
