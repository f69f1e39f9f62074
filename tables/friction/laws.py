"""Laws of the table friction. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Row, Tables, band, groups, num

NAME = "friction"
CTU, EU, EN_2003, US = "ctu-code", "eu-guidelines-2006", "en-12195-1", "cfr-49-393"
DECKS = ("plywood", "grooved-aluminium", "steel")
LESS_BY = {
    ("sawn-wood", "planed-wood"): (0.10, 0.15),
    ("planed-wood", "plastic-pallet"): (0.05, 0.10),
    ("sawn-wood", "steel-crate"): (0.0, 0.10),
    ("plywood", "grooved-aluminium"): (0.05, 0.15),
    ("grooved-aluminium", "steel"): (0.0, 0.10),
}
"""By how much the second holds less than the first, on one deck or under one cargo (CTU Code, Annex 7, Appendix 2)."""
_STEP = 0.05
_EXACT = 1e-9


def _value(tables: Tables, pair: str, source: str, state: str = "dry", quantity: str = "friction") -> float:
    """A printed figure; no number where there is none, which no band accepts."""
    found = [
        num(row["value"])
        for row in tables[NAME]
        if (row["pair"], row["source"], row["state"], row["quantity"]) == (pair, source, state, quantity)
    ]
    return found[0] if len(found) == 1 else float("nan")


def law_a_rougher_partner_holds_more(tables: Tables) -> list[str]:
    """CTU Code: sawn wood, planed wood and plastic hold less in this order on every deck, and every cargo less on plywood,
    grooved aluminium and steel in this order, by the steps of the code.
    """
    found = []
    for (more, less), (low, high) in LESS_BY.items():
        for other in (
            DECKS if more not in DECKS else ("sawn-wood", "planed-wood", "plastic-pallet", "steel-crate")
        ):
            one, two = (
                f"{other}-on-{side}" if more in DECKS else f"{side}-on-{other}" for side in (more, less)
            )
            gap = _value(tables, one, CTU) - _value(tables, two, CTU)
            found += band(NAME, (one, two), gap, low - _EXACT, high + _EXACT)
    return found


def law_water_takes_nothing_from_wood(tables: Tables) -> list[str]:
    """Where the CTU Code prints a wet figure it is the dry one; so does 49 CFR 393.108(g) make no difference."""
    found = []
    for (pair, source), rows in groups(tables[NAME], "pair", "source").items():
        wet = [row for row in rows if row["state"] == "wet"]
        for row in wet:
            dry = _value(tables, pair, source)
            found += band(NAME, (pair, source, "wet"), num(row["value"]) - dry, -_EXACT, _EXACT)
    return found


def law_figures_go_in_steps(tables: Tables) -> list[str]:
    """Both codes print twentieths, between 0.1 and 0.75."""
    found = []
    for row in tables[NAME]:
        steps = num(row["value"]) / _STEP
        what = (row["pair"], row["state"], row["source"])
        found += band(NAME, (*what, "a twentieth"), abs(steps - round(steps)), 0.0, 1e-6)
        found += band(NAME, what, num(row["value"]), 0.1, 0.75)
    return found


def law_the_older_guidelines_are_not_stricter(tables: Tables) -> list[str]:
    """European guidelines of 2006 against the CTU Code of 2014: the same, or up to a tenth more (wood on steel, on plywood)."""
    found = []
    for row in tables[NAME]:
        if row["source"] != EU or row["state"] != "dry" or row["pair"] == "steel-on-wooden-bolster":
            continue
        more = 0.05 if row["pair"].endswith("plywood") else 0.1 if row["pair"].endswith("steel") else 0.0
        gap = num(row["value"]) - _value(tables, row["pair"], CTU)
        found += band(NAME, (row["pair"], "2006 over 2014"), gap, more - _EXACT, more + _EXACT)
    bolster = _value(tables, "steel-on-wooden-bolster", EU) - _value(tables, "sawn-wood-on-plywood", EU)
    return found + band(NAME, "steel on a bolster holds like wood on wood", bolster, -_EXACT, _EXACT)


def law_moving_is_seven_tenths(tables: Tables) -> list[str]:
    """EN 12195-1 of 2003: moving friction is seven tenths of standing friction, printed in twentieths; 2010: three quarters."""
    found = []
    older = _value(tables, "any", EN_2003, "moving", "moving_share")
    found += band(NAME, "share of 2003", older, 0.7 - _EXACT, 0.7 + _EXACT)
    newer = _value(tables, "any", CTU, "moving", "moving_share")
    found += band(NAME, "share of 2010", newer - older, _STEP - _EXACT, _STEP + _EXACT)
    for row in tables[NAME]:
        if row["source"] == EU and row["state"] == "moving":
            standing = _value(tables, row["pair"], EU)
            wanted = round(older * standing / _STEP) * _STEP
            found += band(NAME, (row["pair"], "moving"), num(row["value"]) - wanted, -_EXACT, _EXACT)
    return found


def law_metal_and_cardboard(tables: Tables) -> list[str]:
    """CTU Code: paint takes a tenth from rough metal and nothing from smooth; a steel crate on steel sheet is smooth metal;
    cardboard holds alike on itself and on wood; a big bag holds like unpainted rough metal.
    """
    at = {
        pair: _value(tables, pair, CTU)
        for pair in (
            "rough-metal-on-rough-metal", "painted-rough-metal-on-itself", "painted-smooth-metal-on-itself",
            "smooth-metal-on-smooth-metal", "steel-crate-on-steel", "cardboard-on-cardboard", "cardboard-on-wood",
            "big-bag-on-wood", "sawn-wood-on-film", "sawn-wood-on-steel", "sawn-wood-on-grooved-aluminium",
        )
    }  # fmt: skip
    less = [
        ("rough-metal-on-rough-metal", "painted-rough-metal-on-itself", 0.1),
        ("painted-rough-metal-on-itself", "painted-smooth-metal-on-itself", 0.1),
        ("painted-smooth-metal-on-itself", "smooth-metal-on-smooth-metal", 0.0),
        ("smooth-metal-on-smooth-metal", "steel-crate-on-steel", 0.0),
        ("cardboard-on-cardboard", "cardboard-on-wood", 0.0),
        ("cardboard-on-wood", "big-bag-on-wood", 0.1),
        ("big-bag-on-wood", "rough-metal-on-rough-metal", 0.0),
        ("sawn-wood-on-film", "sawn-wood-on-steel", 0.0),
        ("rough-metal-on-rough-metal", "sawn-wood-on-grooved-aluminium", 0.0),
    ]
    found = []
    for one, two, gap in less:
        found += band(NAME, (one, two), at[one] - at[two], gap - _EXACT, gap + _EXACT)
    return found


def law_bounds_from_memory(tables: Tables) -> list[str]:
    """What was recalled of the CTU Code stays on the safe side of what was read: a deck that is not swept holds no more than
    the smoothest metal, an oily one half of that; smooth concrete less than rough and more than wood on plywood by a
    tenth; a mat a tenth more than half the weight, which 49 CFR 393.108(g) gives it; rubber tracks like painted metal.
    """
    unswept = _value(tables, "any", CTU, "unswept", "friction_at_most")
    metal = _value(tables, "smooth-metal-on-smooth-metal", CTU)
    wood = _value(tables, "sawn-wood-on-plywood", CTU)
    gaps = {
        "not swept": unswept - metal,
        "oily": _value(tables, "any", CTU, "oily", "friction_at_most") - unswept / 2,
        "smooth concrete": _value(tables, "smooth-concrete-on-wood", CTU) - wood - 0.1,
        "rough concrete": _value(tables, "rough-concrete-on-wood", CTU) - wood - 0.25,
        "mat": _value(tables, "friction-mat", CTU) - _value(tables, "friction-mat", US) - 0.1,
        "half the weight": _value(tables, "friction-mat", US) - 0.5,
        "tracks": _value(tables, "rubber-track-on-deck", "gdv-photo-2024-04") - metal - 0.1,
    }
    return [problem for what, gap in gaps.items() for problem in band(NAME, what, gap, -_EXACT, _EXACT)]


def law_default_is_the_least(tables: Tables) -> list[str]:
    """Of one pair in one state the lowest printed friction is ours; of the shares of moving friction that of the edition in
    force (EN 12195-1 of 2010, CTU Code).
    """
    found = []
    for (pair, state, quantity), rows in groups(tables[NAME], "pair", "state", "quantity").items():
        values = [num(row["value"]) for row in rows]
        ours = max(values) if quantity == "moving_share" else min(values)
        found += [
            f"{NAME}/claims.csv {pair}, {state}: {row['default']} on {row['value']}, ours is {ours:g}"
            for row, value in zip(rows, values, strict=True)
            if (row["default"] == "yes") != (abs(value - ours) < _EXACT)
        ]
    return found


def law_a_source_prints_its_own_rows(tables: Tables) -> list[str]:
    """Wet stands only where the CTU Code or the mat rule prints it, moving only in the European texts and for any pair."""
    states = {
        CTU: {"dry", "wet", "unswept", "oily", "moving"}, EU: {"dry", "moving"}, EN_2003: {"moving"},
        US: {"dry", "wet"}, "gdv-photo-2024-04": {"dry"},
    }  # fmt: skip
    return [
        f"{NAME}/claims.csv {row['pair']}: {row['source']} does not print {row['state']}"
        for row in tables[NAME]
        if row["state"] not in states[row["source"]] or _misplaced(row)
    ]


def _misplaced(row: Row) -> bool:
    """Whether a figure for any pair, and no other, is a bound or a share; and the European annex is the right one."""
    general = row["pair"] == "any"
    annex = {"dry": "Annex 8.2.1", "moving": "Annex 8.2.2"}
    wrong_annex = row["source"] == EU and row["locator"] != annex[row["state"]]
    return general != (row["quantity"] != "friction") or wrong_annex
