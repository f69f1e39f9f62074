"""Laws of the table tie-down-abroad. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables

NAME = "tie-down-abroad"
PLACE_OF = {"nsc-10": "canada", "eu-2014-47": "europe", "en-12195-2": "europe", "gov-uk-securing-loads": "uk"}


def law_a_rule_holds_where_it_was_made(tables: Tables) -> list[str]:
    """National Safety Code Standard 10 binds in Canada, directives and EN standards in Europe, the guide of the British
    agency in the United Kingdom.
    """
    return [
        f"{NAME}/claims.csv {row['rule']}: {row['source']} speaks for {PLACE_OF[row['source']]}, not for {row['place']}"
        for row in tables[NAME]
        if row["place"] != PLACE_OF[row["source"]]
    ]
