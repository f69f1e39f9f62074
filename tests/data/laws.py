"""What the tables must obey: laws of the trade and of arithmetic that a misread figure would break.

Each law is a plain function `law_NAME(tables) -> list of sentences` (empty: the law holds), so that the mutation tool
can call it in memory thousands of times. The source of the law itself stands in its docstring. Bands are as tight as
the printed tables allow: the widest row sets them. The laws stand in the files laws_*.py by trade; here they are
gathered, with the two that watch how rows were seen.
"""

from __future__ import annotations

import csv
import json
from collections import defaultdict
from functools import cache
from pathlib import Path

from tests.data import (
    laws_chain,
    laws_form,
    laws_hardware,
    laws_heat_and_rules,
    laws_slings,
    laws_weights_and_steel,
)
from tests.data.law_tools import FOLDER, Law, Row, Tables, descriptor, read

__all__ = ["FOLDER", "HELD_BY", "HOW_SEEN", "LAWS", "Law", "Row", "Tables", "descriptor", "read"]

# table -> (rows read in text, in a reprint, from memory); the last only where a law above holds the row.
HOW_SEEN = json.loads((Path(__file__).parent / "how_seen.json").read_text(encoding="utf-8"))


def law_how_seen_is_as_recorded(tables: Tables) -> list[str]:
    """Nobody upgrades a row from memory to text in passing: the counts are recorded, and a change is a decision."""
    found = []
    for name, rows in tables.items():
        if name != "sources":
            counts = [sum(r["checked"] == how for r in rows) for how in ("text", "copy", "memory")]
            if counts != HOW_SEEN.get(name):
                found.append(
                    f"{name}.csv: {counts} rows of text, copy, memory; recorded are {HOW_SEEN.get(name)}"
                )
    return found


@cache
def _rule_register() -> dict[str, set[tuple[str, ...]]]:
    """Keys of the rules in words, as they stood when last agreed. A guard against slips, not a second copy."""
    register: dict[str, set[tuple[str, ...]]] = defaultdict(set)
    with (Path(__file__).parent / "rule-register.csv").open(newline="", encoding="utf-8") as stream:
        for row in csv.DictReader(stream):
            register[row["table"]].add(
                (row["item"], row["rule"], row["quantity"], row["unit"], row["source"])
            )
    return register


def law_rules_are_registered(tables: Tables) -> list[str]:
    """Every rule in words keeps its name and its source; adding or dropping one is entered in rule-register.csv."""
    found = []
    for name, rows in tables.items():
        if rows and "rule" in rows[0]:
            have = {(r["item"], r["rule"], r["quantity"], r["unit"], r["source"]) for r in rows}
            found += [
                f"{name}.csv {key}: not as registered" for key in have ^ _rule_register().get(name, set())
            ]
    return found


ROOMS = (laws_chain, laws_hardware, laws_slings, laws_heat_and_rules, laws_weights_and_steel)
LAWS: tuple[Law, ...] = (
    *(law for room in ROOMS for name, law in vars(room).items() if name.startswith("law_")),
    law_how_seen_is_as_recorded,
    law_rules_are_registered,
    *laws_form.form_laws(),
)

# Tables that hold rows from memory -> the laws that hold those rows.
HELD_BY: dict[str, tuple[str, ...]] = {
    "chain-marks": ("law_marks_follow_the_grade",),
    "chain-lifting": ("law_lifting_grade_relation", "law_lifting_rises"),
    "shackles": ("law_shackle_scaling", "law_shackle_break"),
    "chain-wear": ("law_wear_adds_up", "law_wear_asme_pattern"),
    "densities": ("law_densities",),
    "chain-strength": ("law_chain_strength_relation", "law_chain_strength_agrees_with_slings"),
    "eyebolts": ("law_eyebolts_inch", "law_eyebolts_metric"),
    "wire-rope": ("law_wire_rope",),
    "choker-factors": ("law_choker_steps",),
    "design-factors": ("law_design_factors",),
    "tie-down-other": ("law_tie_down_other",),
    "pipe-sizes": ("law_pipe_sizes",),
    "steel-compositions": ("law_compositions",),
    "sling-leg-counting": ("law_leg_counting",),
    "web-slings": ("law_web_slings",),
    "chain-hooks": (),  # one row in words, "common practice, no source": no figure in it
}
