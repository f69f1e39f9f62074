"""Laws of the table embrittlement. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column, num


def law_embrittlement(tables: Tables) -> list[str]:
    """Bands run upwards; C and F of one note agree (to the degree, or to the five of a rounded C); all in 150 to 600 C.

    One letter on hydrogen cracking gives both sides of its border: above 39 is the next whole figure to at most 38.
    """
    found = []
    rows = tables["embrittlement"]
    at = {(r["phenomenon"], r["case"], r["unit"], r["quantity"]): num(r["value"]) for r in rows}
    for (phenomenon, case, unit, quantity), value in at.items():
        other = {"temperature_from": "temperature_to", "temperature_to": "temperature_from"}.get(quantity)
        if other is None:
            continue
        end = at.get((phenomenon, case, unit, other), math.nan)
        if not (value < end if quantity == "temperature_from" else value > end):
            found.append(
                f"embrittlement/claims.csv {phenomenon} {case}: band must run upwards and have two ends"
            )
        in_c = value if unit == "degC" else (value - 32) / 1.8
        found += band("embrittlement", (phenomenon, case, quantity), in_c, 145, 600)
        pair = at.get((phenomenon, case, "degF" if unit == "degC" else "degC", quantity))
        if pair is not None and unit == "degC":
            exact_c = (pair - 32) / 1.8
            rounded_to = 1 if value % 5 else 5  # a Celsius figure that ends in 0 or 5 was rounded to it
            found += band(
                "embrittlement", (phenomenon, quantity), value - exact_c, -0.9 * rounded_to, 0.9 * rounded_to
            )
        if pair is None and case == "usual":
            found.append(f"embrittlement/claims.csv {phenomenon} {quantity}: needs C and F")
    hydrogen = {
        case: at.get(("hydrogen_embrittlement", case, unit, what), math.nan) for case, unit, what in HYDROGEN
    }
    if hydrogen["high_susceptibility"] != hydrogen["structural_bolts"] + 1:
        found.append("embrittlement/claims.csv hydrogen: at most 38 and above 39 are one border")
    in_mpa = column(tables["hardness-conversion"], "rockwell_c", unit="MPa", source="astm-e140")
    in_hv = column(tables["hardness-conversion"], "rockwell_c", unit="HV")
    found += band(
        "embrittlement", "1,200 MPa", hydrogen["fasteners"], in_mpa.get("38", 0), in_mpa.get("39", 0)
    )
    found += band(
        "embrittlement", "320 HV", hydrogen["process_investigation"], in_hv.get("32", 0), in_hv.get("34", 0)
    )
    found += band(
        "embrittlement", "365 HV", hydrogen["written_agreement"], in_hv.get("36", 0), in_hv.get("38", 0)
    )
    found += band("embrittlement", "failed fasteners", hydrogen["failed_fasteners"], 34, 38)
    return found


HYDROGEN = (
    ("fasteners", "MPa", "tensile_strength_above"),
    ("high_susceptibility", "HRC", "hardness_above"),
    ("structural_bolts", "HRC", "hardness_at_most"),
    ("failed_fasteners", "HRC", "hardness_from"),
    ("process_investigation", "HV", "hardness_above"),
    ("written_agreement", "HV", "hardness_above"),
)
