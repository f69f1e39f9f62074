"""What every lifting worksheet owes its reader: the cautions that fit and no others, working that a pencil can follow,
and figures never rounded to the unsafe side.

Each case names its cautions in full, by kind and by a few of their words, so that a caution lost, doubled, of another
kind or shown where it does not belong is found. Numbers in the working are reckoned here from the inputs, and written
with the handbook's own writer of numbers, which has its own tests (test_quantities).
"""

from __future__ import annotations

import base64
import math
import re
from dataclasses import dataclass
from typing import Any

import pytest

from calc.answering import Refused, answer, described, worksheet
from calc.describing import Asked
from calc.inputs import Given, Input, read_inputs
from calc.lifting.densities import density_ranges
from calc.lifting.lug_strength import (
    Lug,
    double_plane_n,
    effective_side_m,
    foot_load,
    foot_stress_pa,
    net_tension_n,
    shear_plane_m,
    single_plane_n,
    split_width_m,
    weld_stress_pa,
)
from calc.lifting.shapes import SHAPES
from calc.lifting.weighing import weigh_part, weigh_solid
from calc.quantities import number_text
from calc.tables import table
from calc.telling import reading
from calc.words.writer import UnitSystem, Writer, plain
from tests.asking import asked
from tests.saying import Say

G = 9.80665
SAY = Say("si")


@dataclass(frozen=True)
class Case:
    """A worksheet, its inputs, the verdict and every caution as `kind: some of its words`."""

    name: str
    sheet: str
    given: dict[str, Any]
    verdict: str
    cautions: tuple[str, ...]


def raw(sheet: str, given: dict[str, Any], units: UnitSystem = "si") -> Any:
    """What the worksheet finds in SI, and says."""
    return asked(sheet, counted(sheet, given), units)


def counted(sheet: str, given: dict[str, Any]) -> dict[str, Any]:
    """The parts of a load-weight with their number and allowance: one each and 2 %, unless a case says otherwise."""
    if sheet != "load-weight" or "parts" not in given:
        return given
    return {**given, "parts": [{"count": "1", "tolerance": "2", **row} for row in given["parts"]]}


def read(sheet: str, given: dict[str, Any]) -> Given:
    """The inputs of a worksheet as read, for one of its own functions."""
    declared = worksheet(sheet)
    return read_inputs(
        declared.inputs, counted(sheet, given), reading(declared, Writer("si", scopes=declared.scopes))
    )


def number(found: Any, key: str) -> float:
    """A result that is a number."""
    value = found.results[key]
    assert isinstance(value, float)
    return value


def step(found: Any, label: str) -> tuple[str, str]:
    """Numbers and result of one line of the working."""
    lines = [(one.numbers, one.result) for one in found.steps if one.label == label]
    assert len(lines) == 1, [one.label for one in found.steps]
    return lines[0]


# ------------------------------------------------------------------------------------------ hitch

HITCH = {
    "sling_kind": "wire-rope",
    "hitch": "vertical",
    "rating": "1000 kg",
    "load": "400 kg",
    "condition": "marked-good",
}
WIDE = {"object_diameter": "200 mm", "sling_diameter": "20 mm"}
OF_CHAIN = {"sling_kind": "chain", "grade": "80", **WIDE}
CHOKED = {**HITCH, "hitch": "choker", "choke_angle": "120", "edge": "padded"}
BASKET = {**HITCH, "hitch": "basket", "basket_angle": "60", "edge": "padded"}
SIZED = {"rating": "1237 kg"}
BENT = {"object_diameter": "80 mm", "sling_diameter": "20 mm"}
TAG = "mandatory: Go by the tag on the sling"
SLIDES = "warning: A basket hitch can slide along the load"
PAD = "mandatory: Pad every corner"
HAMMER = "warning: Do not hammer a choke"
CHOKE_READ = "note: The table of choke angles was read in two handbooks"
BEND = "mandatory: Measure what the rope bends round"
WIDE_READ = "note: A bend of"
EDGE = "mandatory: Say how the sling bears on the load"
WORST_CHOKE = "warning: Measure the angle of the choke"

HITCHES = (
    Case("straight, no load", "hitch", {**HITCH, "load": None}, "unknown", (TAG,)),
    Case("straight web", "hitch", {**HITCH, "sling_kind": "web-sling"}, "ok", (TAG,)),
    Case("straight rope", "hitch", {**HITCH, **BENT}, "ok", (TAG,)),
    Case(
        "not looked at",
        "hitch",
        {**HITCH, "condition": None},
        "unknown",
        ("mandatory: Read the mark or tag", TAG),
    ),
    Case(
        "bent",
        "hitch",
        {**HITCH, "condition": "bent"},
        "stop",
        ("prohibition: Straightening a bent part does not", TAG),
    ),
    Case(
        "just over",
        "hitch",
        {**HITCH, "load": "1001 kg"},
        "stop",
        ("prohibition: The load is more than this hitch may lift", TAG),
    ),
    Case("choked rope", "hitch", CHOKED, "unknown", (BEND, HAMMER, CHOKE_READ, PAD, TAG)),
    Case("choked rope, bend known", "hitch", {**CHOKED, **BENT}, "caution", (HAMMER, CHOKE_READ, PAD, TAG)),
    Case(
        "choked rope, angle not measured",
        "hitch",
        {**CHOKED, **BENT, "load": "180 kg", "choke_angle": None},
        "caution",
        (HAMMER, WORST_CHOKE, CHOKE_READ, PAD, TAG),
    ),
    Case(
        "choked web",
        "hitch",
        {**CHOKED, "sling_kind": "web-sling"},
        "caution",
        (HAMMER, CHOKE_READ, "note: If the sling's own tag gives a choker rating that is smaller", PAD, TAG),
    ),
    Case(
        "choked chain",
        "hitch",
        {**CHOKED, **OF_CHAIN},
        "caution",
        (HAMMER, CHOKE_READ, PAD, WIDE_READ, TAG),
    ),
    Case(
        "choked natural fiber",
        "hitch",
        {**CHOKED, "load": "390 kg", "sling_kind": "fibre-rope", **WIDE},
        "caution",
        (HAMMER, CHOKE_READ, PAD, WIDE_READ, TAG),
    ),
    Case("basket of chain", "hitch", {**BASKET, **OF_CHAIN}, "ok", (SLIDES, PAD, WIDE_READ, TAG)),
    Case(
        "basket of chain, edge not said",
        "hitch",
        {**BASKET, **OF_CHAIN, "edge": None},
        "unknown",
        (EDGE, SLIDES, PAD, WIDE_READ, TAG),
    ),
    Case(
        "basket of chain on a bare edge",
        "hitch",
        {**BASKET, **OF_CHAIN, "edge": "bare"},
        "stop",
        ("prohibition: Never lay a sling on a bare edge", SLIDES, PAD, WIDE_READ, TAG),
    ),
    Case(
        "basket just too low",
        "hitch",
        {**BASKET, "basket_angle": "29.9", **OF_CHAIN},
        "stop",
        ("prohibition: Never use a sling at less than 30°", SLIDES, PAD, WIDE_READ, TAG),
    ),
    Case("basket of rope", "hitch", BASKET, "unknown", (BEND, SLIDES, PAD, TAG)),
    Case("basket of rope, bend known", "hitch", {**BASKET, **BENT}, "ok", (SLIDES, PAD, TAG)),
)


@pytest.mark.parametrize("angle", ["51", "52", "53.4", "56"])
def test_hitch_working(angle: str) -> None:
    found = raw("hitch", {**BASKET, "basket_angle": angle, **BENT})
    sine = number_text(math.sin(math.radians(float(angle))), 3, "down")
    assert step(found, "Hitch") == ("", "× 2")
    assert step(found, "Angle") == ("", f"× {sine}")
    assert step(found, "Bend") == ("1 − 0.5 / √(D/d)", "× 0.750")
    holds = 1000 * 2 * math.sin(math.radians(float(angle))) * 0.75
    assert step(found, "Holds") == (f"1,000 kg × 2 × {sine} × 0.750", SAY.weight(holds, "down"))
    assert [one.formula for one in found.steps[:2]] == [
        "two legs of a basket",
        f"legs at {float(angle):.0f}° from the horizontal",
    ]
    assert "4 times" in found.steps[2].formula


def test_hitch_words_of_what_is_not_counted() -> None:
    straight = raw("hitch", {**HITCH, **BENT})
    assert [one.formula for one in straight.steps[:3]] == ["straight", "straight", "no bend counted"]
    assert straight.results["bend_ratio"] is None
    assert straight.shown["bend_ratio"] == "no bend counted"
    rope = raw("hitch", CHOKED)
    assert [one.formula for one in rope.steps] == ["choke", "angle of choke 120°"]
    assert (
        rope.shown["factor_bend"] == rope.shown["capacity"] == rope.shown["use_percent"] == "bend not known"
    )
    assert "No figure is given" in rope.figure.caption
    bent = raw("hitch", {**CHOKED, **BENT})
    assert "bend_ratio" not in bent.shown
    assert "use_percent" not in bent.shown
    fibre = raw("hitch", {**CHOKED, "sling_kind": "fibre-rope"})
    assert fibre.steps[0].formula == "choke on natural fiber rope"
    # 29 CFR 1918 App. II Table 2: the smallest share of a choke, 250 of 550 lb.
    assert fibre.results["factor_hitch"] == pytest.approx(250 / 550)


def test_hitch_cites_each_share() -> None:
    def cited(**more: str) -> list[str]:
        return [citation.source for citation in raw("hitch", {**HITCH, **more}).citations]

    choke = table("choker-factors").one(quantity="share_of_vertical_rating")
    assert cited() == []
    assert cited(hitch="basket", basket_angle="60", **BENT) == ["nd-0027"]
    assert cited(hitch="choker", **OF_CHAIN)[0] == choke["source"]
    assert len(cited(hitch="choker", **OF_CHAIN)) == 2
    assert cited(hitch="choker", **BENT)[-1] == "nd-0027"
    first = raw("hitch", {**HITCH, "hitch": "choker", "sling_kind": "fibre-rope"}).citations[0]
    assert (first.source, first.locator) == ("osha-1918", "App. II Tables")


def test_hitch_headline_says_how_it_is_put_on_and_never_too_much() -> None:
    for hitch, words in (
        ("vertical", "Straight up"),
        ("choker", "In a choker hitch"),
        ("basket", "In a basket hitch"),
    ):
        found = raw(
            "hitch",
            {**BASKET, **SIZED, "load": None, "hitch": hitch, "choke_angle": "130", **OF_CHAIN},
        )
        held = number(found, "capacity")
        assert found.headline == (
            f"{words} the sling holds {SAY.weight(held, 'down')}. Give the weight of the load, and it is compared."
        )
    # 1,237 kg cut to three figures for a rating is 1,230, and a share of it is rounded up.
    assert "1,230 kg" in raw("hitch", {**HITCH, **SIZED, "load": None}).headline
    assert raw("hitch", {**HITCH, **SIZED, "load": "401.7 kg"}).headline.endswith(
        " Your load takes 32.5% of that."
    )
    assert raw("hitch", {**HITCH, **SIZED, "load": "1237.1 kg"}).headline.endswith(
        "takes 101% of that. Too much."
    )
    assert "100% of that" in raw("hitch", {**HITCH, **SIZED, "load": "1237 kg"}).headline


# ------------------------------------------------------------------------------------------ beam-lift

BEAM = {
    "ends": "simple", "material": "steel", "design_factor": "3", "own_weight": "0", "load_sits": "hung-below",
    "yield_strength": "240 MPa", "use": "bench",
}  # fmt: skip
FLAT = {
    **BEAM, "load": "730 kg", "span": "3.1 m", "section": "rectangle", "width": "61 mm", "depth": "117 mm",
    "yield_strength": "240 MPa",
}  # fmt: skip
I_BEAM = {
    **BEAM, "load": "730 kg", "span": "3.1 m", "section": "i-beam", "depth": "200 mm", "flange_width": "100 mm",
    "web_thickness": "6 mm", "flange_thickness": "9 mm",
}  # fmt: skip
STUDY = "mandatory: This is a study aid"
ROLLS = "warning: A deep, thin beam rolls over sideways"
HOIST = "note: A hoist that starts or stops"
NOT_COUNTED = "note: own weight is not counted"

BEAMS = (
    Case("flat", "beam-lift", FLAT, "ok", (STUDY, ROLLS, NOT_COUNTED, HOIST)),
    Case("I-beam with its weight", "beam-lift", {**I_BEAM, "own_weight": "22 kg/m"}, "ok", (STUDY, ROLLS, HOIST)),
    Case("tube", "beam-lift", {**FLAT, "section": "tube", "diameter": "160 mm", "wall": "8 mm"}, "ok",
         (STUDY, NOT_COUNTED, HOIST)),
    Case("over", "beam-lift", {**FLAT, "load": "1.5 t"}, "stop",
         ("prohibition: over its limit. Do not lift", "prohibition: more than the beam holds", STUDY, ROLLS, NOT_COUNTED, HOIST)),
    Case("built in", "beam-lift", {**FLAT, "ends": "fixed", "position": "1.5 m"}, "caution",
         (STUDY, ROLLS, "warning: truly built in", NOT_COUNTED, HOIST)),
    Case("limp", "beam-lift", {**FLAT, "depth": "36 mm", "load": "130 kg"}, "caution",
         (STUDY, ROLLS, "warning: The beam bends a lot", NOT_COUNTED, HOIST)),
)  # fmt: skip


def test_beam_counts_its_own_weight() -> None:
    # W L / 4 + w L² / 8, and P L³ / 48 E I + 5 w L⁴ / 384 E I: any strength-of-materials text.
    found = raw("beam-lift", {**FLAT, "own_weight": "57 kg/m"})
    second = 0.061 * 0.117**3 / 12
    moment = 730 * G * 3.1 / 4 + 57 * G * 3.1**2 / 8
    sag = (730 * G * 3.1**3 / 48 + 5 * 57 * G * 3.1**4 / 384) / (200e9 * second)
    assert found.results["moment"] == pytest.approx(moment)
    assert found.results["deflection"] == pytest.approx(sag)


@pytest.mark.parametrize(
    ("load_kg", "yield_mpa"), [(730.0, 240.0), (733.1, 241.7), (737.7, 243.1), (744.4, 244.9)]
)
def test_beam_working(load_kg: float, yield_mpa: float) -> None:
    found = raw(
        "beam-lift",
        {
            **FLAT,
            "load": f"{load_kg} kg",
            "yield_strength": f"{yield_mpa} MPa",
            "position": "1.1 m",
            "design_factor": "2.7",
        },
    )
    second, a = 0.061 * 0.117**3 / 12, 1.1
    b = 3.1 - a
    moment = load_kg * G * a * b / 3.1
    stress = moment * 0.0585 / second
    # Greatest sag of a simple span at sqrt((L² − a²) / 3) from the far support, for the shorter part a.
    from_right = math.sqrt((3.1**2 - a**2) / 3)
    sag = load_kg * G * a * (3.1**2 - a**2) ** 1.5 / (9 * math.sqrt(3) * 3.1 * 200e9 * second)
    assert step(found, "Hardest bending")[0] == f"at {SAY.length(1.1)} from the left"
    assert step(found, "Hardest bending")[1] == SAY.of(moment, "torque", "up")
    numbers, result = step(found, "Stress in the outer fiber")
    assert numbers == (
        f"{SAY.one(moment, 'torque')} × {SAY.one(0.0585, 'length')} / {SAY.one(second, 'second_moment')}"
    )
    assert result == SAY.of(stress, "pressure", "up", reading=("psi", "MPa"))
    numbers, result = step(found, "Allowed here")
    assert numbers == "2.70 on yield"
    assert result == SAY.of(yield_mpa * 1e6 / 2.7, "pressure", "down", reading=("psi", "MPa"))
    numbers, result = step(found, "Sag")
    young = SAY.of(200e9, "pressure", reading=("psi", "GPa"))
    assert numbers == f"E {young}, at {SAY.length(3.1 - from_right)} from the left"
    assert result == SAY.of(sag, "length", "up")
    ratio, share = (
        number_text(3.1 / sag, 3, "down"),
        number_text(stress / (yield_mpa * 1e6 / 2.7) * 100, 3, "up"),
    )
    assert found.headline.startswith(
        f"It sags {SAY.of(sag, 'length', 'up')}, which is 1/{ratio} of the span. The stress is {share}% of what is allowed here"
    )
    assert [(one.source, bool(one.locator)) for one in found.citations] == [
        (table("youngs-modulus").one(material="steel", quantity="youngs_modulus")["source"], True)
    ]


@pytest.mark.parametrize(
    ("ends", "words"),
    [("simple", "beyond it"), ("fixed", "built in"), ("cantilever", "P × arm")],
)
def test_beam_formula_is_that_of_its_ends(ends: str, words: str) -> None:
    assert words in raw("beam-lift", {**FLAT, "ends": ends, "position": "1.5 m"}).steps[0].formula


def test_beam_from_a_section_book() -> None:
    known = {"section": "known", "second_moment": "1940 cm4", "outer_fibre": "100 mm"}
    found = raw("beam-lift", {**FLAT, **known})
    assert found.results["stress"] == pytest.approx(730 * G * 3.1 / 4 * 0.1 / 1940e-8)


@pytest.mark.parametrize(
    "sizes",
    [{"section": "box", "width": "80 mm", "depth": "110 mm", "wall": "40 mm"},
     {"section": "tube", "diameter": "90 mm", "wall": "45 mm"},
     {**I_BEAM, "web_thickness": "100 mm"}, {**I_BEAM, "flange_thickness": "100 mm"},
     {**I_BEAM, "flange_thickness": "80 mm"}],
)  # fmt: skip
def test_a_full_section_is_the_bound_of_a_hollow_one(sizes: dict[str, str]) -> None:
    assert number(raw("beam-lift", {**FLAT, **sizes}), "stress") > 0


# ------------------------------------------------------------------------------------------ load-path


def part(**more: str) -> dict[str, str]:
    return {"kind": "other", "condition": "marked-good", **more}


def string(*parts: dict[str, str], load: str = "1000 kg") -> dict[str, Any]:
    return {"load": load, "use": "plain", "items": list(parts)}


MARK = "mandatory: Go by the mark or tag on each part"
LIE_FLAT = "warning: between 30° and 45°"
NO_ADD = "note: do not add"
LEGS_SHARE = "note: Legs share the load by their angle"
PROVES = "warning: proves only that pull"

STRINGS = (
    Case("one part", "load-path", string(part(rating="2 t")), "ok", (MARK,)),
    Case("two kinds", "load-path", string(part(rating="2 t"), part(kind="ring", grade="80", rating="3 t")), "ok", (MARK,)),
    Case("two alike", "load-path", string(part(rating="2 t"), part(rating="3 t")), "ok", (NO_ADD, MARK)),
    Case("alike but not in line", "load-path",
         string(part(rating="2 t"), part(kind="ring", grade="80", rating="3 t"), part(rating="3 t")), "ok", (MARK,)),
    Case("over", "load-path", string(part(rating="999 kg")), "stop", ("prohibition: over what the rigging may lift", MARK)),
    Case("legs", "load-path", string(part(rating="2 t", legs="2", angle="60")), "ok", (LEGS_SHARE, MARK)),
    Case("low legs", "load-path", string(part(rating="9 t", legs="2", angle="29.9")), "stop",
         ("prohibition: Never use a sling at less than 30°", LEGS_SHARE, MARK)),
    Case("careful legs", "load-path", string(part(rating="9 t", legs="2", angle="44.9")), "caution", (LIE_FLAT, LEGS_SHARE, MARK)),
    Case("worn", "load-path", string(part(condition="worn", rating="9 t"), part(kind="ring", grade="80", rating="2 t")), "unknown",
         ("prohibition: is worn", MARK)),
    Case("no mark", "load-path", string(part(condition="unmarked", rating="9 t")), "unknown",
         ("prohibition: has no readable mark", MARK)),
    *(Case(condition, "load-path", string(part(condition=condition, rating="9 t")), "stop",
           (f"prohibition: {words}", PROVES, MARK))
      for condition, words in (("welded", "was welded"), ("heated", "was heated"), ("bent", "is bent, twisted or stretched"),
                               ("home-made", "is home-made"))),
    Case("tie-down chain", "load-path", string(part(kind="chain", grade="70", size="3/8")), "stop",
         ("prohibition: has no lifting rating", MARK)),
    Case("hook by its chain", "load-path", string(part(kind="hook", grade="80", size="3/8")), "caution",
         ("warning: not read in its own source", MARK)),
)  # fmt: skip


def test_string_working() -> None:
    parts = (
        part(label="ring", kind="ring", grade="80", rating="2345 kg"),
        part(label="legs", kind="chain", grade="80", rating="1234 kg", legs="4", angle="53"),
        part(label="old hook", kind="hook", condition="worn"),
    )
    found = raw("load-path", string(*parts, load="1007 kg"))
    sine = math.sin(math.radians(53))
    assert step(found, "Pull on “ring”") == ("", SAY.weight(1007, "up"))
    assert step(found, "Rating of “ring”") == ("2,345 kg (as marked)", SAY.weight(2345, "down"))
    assert step(found, "Pull on “legs”") == ("1,007 kg / (2 × sin 53°)", SAY.weight(1007 / (2 * sine), "up"))
    assert step(found, "Rating of “old hook”") == ("worn", "none")
    assert found.steps[0].formula == "load"
    assert "2 of 4" in found.steps[2].formula
    assert found.shown["share"] == (
        f"ring: {number_text(1007 / 2345 * 100, 3, 'up')}%",
        f"legs: {number_text(1007 / (1.4 * 1234) * 100, 3, 'up')}%",
        "old hook: may not be used",
    )
    pulls = (1007, 1007 / (2 * sine), 1007)
    assert found.shown["pulls"] == tuple(
        f"{name}: {SAY.weight(pull, 'up')}"
        for name, pull in zip(("ring", "legs", "old hook"), pulls, strict=True)
    )
    words = "the part “old hook” is worn, and must pass its limits of wear first"
    blocked = answer("load-path", string(*parts, load="1007 kg"), "si")["results"]["blocked"]
    assert blocked["items"] == [words]
    assert found.shown["capacity"] == "no capacity while a part may not be used"


def test_string_pull_by_legs_and_angle() -> None:
    upright = raw("load-path", string(part(label="legs", rating="2 t", legs="2", angle="90")))
    assert step(upright, "Pull on “legs”")[0] == "1,000 kg / (2 × sin 90°)"
    leaning = raw("load-path", string(part(label="legs", rating="2 t", legs="2", angle="52.36")))
    assert step(leaning, "Pull on “legs”")[0] == "1,000 kg / (2 × sin 52.4°)"


def test_string_draws_the_part_that_gives_first() -> None:
    def bars(first: str, second: str) -> str:
        figure = raw(
            "load-path", string(part(label="a", rating=first), part(label="b", kind="hoist", rating=second))
        ).figure
        assert figure is not None
        return str(figure.svg)

    for svg, first, other in ((bars("2 t", "3 t"), "tint", "steel"), (bars("3 t", "2 t"), "steel", "tint")):
        assert 0 < svg.find(f'"area {first}"') < svg.find(f'"area {other}"')
        assert svg.count('"area tint"') == svg.count('"area steel"') == 1


def test_string_headline() -> None:
    for rating in (2343.1, 2345.7, 2347.2, 2349.9):
        kept = raw("load-path", string(part(label="ring", rating=f"{rating} kg"), load="1007 kg"))
        used = number_text(1007 / rating * 100, 3, "up")
        assert kept.headline == (
            f"The whole rigging may lift {SAY.weight(rating, 'down')}. The part “ring” sets the limit. Your load takes {used}% of it."
        )
    held = raw("load-path", string(part(label="ring", rating="2345 kg"), load="1007 kg"))
    share = number_text(1007 / 2345 * 100, 3, "up")
    assert held.headline == (
        f"The whole rigging may lift {SAY.weight(2345, 'down')}. The part “ring” sets the limit. Your load takes {share}% of it."
    )
    over = raw("load-path", string(part(label="ring", rating="2345 kg"), load="2351 kg"))
    assert over.headline.endswith("The part “ring” sets the limit. Your load is 101% of that. Do not lift.")
    one = raw("load-path", string(part(label="a", condition="worn")))
    assert one.headline.startswith("The whole rigging cannot be rated: the part “a” is worn")
    assert "may not be used either" not in one.headline
    three = raw("load-path", string(*(part(label=name, condition="worn") for name in "abc")))
    assert three.headline.endswith(
        " 2 more parts may not be used either. Do not lift until every part is known."
    )
    tie = raw("load-path", string(part(label="a", kind="chain", grade="70", size="3/8")))
    assert tie.headline == (
        "Do not lift: the mark of the part “a” can mean grade 70, which is for tying loads down and has no lifting rating."
    )


def test_string_working_names_each_share_and_its_source() -> None:
    rope = part(
        label="rope",
        kind="wire-rope",
        rating="3000 kg",
        hitch="choked-and-bent",
        choke_angle="100",
        bend_ratio="4",
    )
    found = raw("load-path", {**string(rope), "use": "not-straight"})
    numbers, result = step(found, "Rating of “rope”")
    assert numbers.startswith(
        "3,000 kg (as marked) × 0.750 (choke) × 0.870 (angle of choke 100°) × 0.750 (bend 4"
    )
    assert result == SAY.weight(3000 * 0.75 * 0.87 * 0.75, "down")
    assert len(found.citations) >= 2
    assert len(set(found.citations)) == len(found.citations)


# ------------------------------------------------------------------------------------------ lifting-lug

LUG = {
    "load": "700 kg", "thickness": "21 mm", "hole": "27 mm", "pin": "26 mm", "side_edge": "28 mm", "end_edge": "31 mm",
    "height": "62 mm", "weld_leg": "8 mm", "weld_length": "81 mm", "yield_strength": "36,000 psi",
    "tensile_strength": "58,000 psi", "weld_strength": "70,000 psi", "angle_in_plane": "0", "angle_out_of_plane": "0",
    "design_factor": "3", "pin_is": "marked", "welded_to": "wall", "wall_thickness": "25 mm", "wall_span": "150 mm",
    "wall_yield": "36,000 psi",
}  # fmt: skip
DESIGN = "mandatory: This is a study aid and not a design"
LUG_MEMORY = "warning: from memory of ASME BTH-1"
KNOW_NOTHING = "note: The formulas leave out bad welds"

BY_ITS_MARK = "note: Go by the mark on the shackle for the shackle and its pin"
WALL_BOUND = "warning: The figure of the wall is an upper bound"
LUG_ENDS = (BY_ITS_MARK, WALL_BOUND, KNOW_NOTHING)
LUG_SAYS = (DESIGN, LUG_MEMORY)
OWN_PIN = {"pin_is": "own", "jaw": "12 mm", "between_jaws": "24 mm", "pin_yield": "250 MPa"}

LUGS = (
    Case("in line", "lifting-lug", LUG, "ok", (*LUG_SAYS, *LUG_ENDS)),
    Case("over", "lifting-lug", {**LUG, "load": "12 t"}, "stop",
         ("prohibition: Do not use this lug", *LUG_SAYS, *LUG_ENDS)),
    Case("across", "lifting-lug", {**LUG, "angle_out_of_plane": "0.5"}, "caution",
         (*LUG_SAYS, "warning: weak across its plane", *LUG_ENDS)),
    Case("loose pin", "lifting-lug", {**LUG, "pin": "24.2 mm"}, "caution",
         (*LUG_SAYS, "warning: The pin is loose", *LUG_ENDS)),
    Case("pin at nine tenths", "lifting-lug", {**LUG, "pin": "24.4 mm"}, "ok", (*LUG_SAYS, *LUG_ENDS)),
    Case("small factor", "lifting-lug", {**LUG, "design_factor": "2.9"}, "caution",
         (*LUG_SAYS, BY_ITS_MARK, WALL_BOUND, "warning: Use a factor under 3 only where the loads are well known and every lift is controlled", KNOW_NOTHING)),
    Case("wide and thin", "lifting-lug", {**LUG, "side_edge": "84.1 mm"}, "caution",
         (*LUG_SAYS, "warning: The plate is wide and thin beside the hole", *LUG_ENDS)),
    Case("just not too wide", "lifting-lug", {**LUG, "side_edge": "84 mm"}, "ok", (*LUG_SAYS, *LUG_ENDS)),
    Case("thin for its pin", "lifting-lug", {**LUG, "thickness": "12.9 mm"}, "caution",
         (*LUG_SAYS, "warning: thinner than half its pin", *LUG_ENDS)),
    Case("half as thick as its pin", "lifting-lug", {**LUG, "thickness": "13 mm"}, "ok", (*LUG_SAYS, *LUG_ENDS)),
    Case("small weld", "lifting-lug", {**LUG, "weld_leg": "7.9 mm"}, "caution",
         (*LUG_SAYS, "warning: The least leg here is 7.94 mm", *LUG_ENDS)),
    Case("the wall is the thinner part", "lifting-lug", {**LUG, "weld_leg": "5 mm", "wall_thickness": "12 mm"}, "ok",
         (*LUG_SAYS, *LUG_ENDS)),
    Case("own pin", "lifting-lug", {**LUG, **OWN_PIN}, "caution",
         (*LUG_SAYS, "warning: A pin of your own has no mark", WALL_BOUND, KNOW_NOTHING)),
    Case("nothing of pin and wall", "lifting-lug", {**LUG, "pin_is": None, "welded_to": None}, "unknown",
         (*LUG_SAYS, "mandatory: The pin was not checked", "mandatory: What the lug is welded to was not checked", KNOW_NOTHING)),
)  # fmt: skip


@pytest.mark.parametrize("end", ["round", "square"])
@pytest.mark.parametrize(("load_kg", "design_factor"), [(701.3, 2.75), (707.7, 3.125), (714.9, 3.333)])
def test_lug_working(end: str, load_kg: float, design_factor: float) -> None:
    # The strengths are those of lug_strength, which has its own tests; here each must reach its own line.
    more = {"load": f"{load_kg} kg", "design_factor": f"{design_factor}", "end_shape": end, "angle_in_plane": "17",
            "angle_out_of_plane": "5", "yield_strength": "251 MPa", "tensile_strength": "403 MPa", "weld_strength": "483 MPa"}  # fmt: skip
    found = raw("lifting-lug", {**LUG, **more})
    lug = Lug(
        0.021,
        0.027,
        0.026,
        0.028,
        0.031,
        0.062,
        0.008,
        0.081,
        251e6,
        403e6,
        483e6,
        design_factor,
        end == "round",
    )
    pull, load_n = foot_load(17.0, 5.0), load_kg * G
    assert found.results["tear_out"] == pytest.approx(min(single_plane_n(lug), double_plane_n(lug)))
    factor = number_text(design_factor, 3)
    loose = number_text(1 - 0.275 * math.sqrt(1 - (26 / 27) ** 2), 3, "down")
    ultimate, plain = (
        f"{SAY.one(403e6, 'pressure')} / (1.2 × {factor})",
        f"{SAY.one(251e6, 'pressure')} / {factor}",
    )

    def mm(length_m: float) -> str:
        return SAY.one(length_m, "length", "down", 3)

    assert step(found, "Tears across the hole (net-section tension)") == (
        f"{loose} × {ultimate} × 2 × 21 mm × {mm(effective_side_m(lug))}",
        SAY.force(net_tension_n(lug), "down"),
    )
    assert step(found, "Splits at the end (single-plane fracture)") == (
        f"{loose} × {ultimate} × {mm(split_width_m(lug))} × 21 mm",
        SAY.force(single_plane_n(lug), "down"),
    )
    assert step(found, "Shears out at the end (double-plane shear)") == (
        f"0.70 × {ultimate} × 2 × {mm(shear_plane_m(lug))} × 21 mm",
        SAY.force(double_plane_n(lug), "down"),
    )
    assert step(found, "Pin crushes the hole (pin bearing)") == (
        f"1.25 × {plain} × 26 mm × 21 mm",
        SAY.force(1.25 * 251e6 / design_factor * 0.026 * 0.021, "down"),
    )
    for label, allowed_pa, stress_pa in (
        ("Bends at the foot", 251e6 / design_factor, foot_stress_pa(lug, pull, load_n)),
        ("Weld", 0.6 * 483e6 / (1.2 * design_factor), weld_stress_pa(lug, pull, load_n)),
    ):
        allowed, stress = SAY.one(allowed_pa, "pressure", "down"), SAY.one(stress_pa, "pressure", "up")
        assert step(found, label) == (
            f"{SAY.one(load_n, 'force', 'up')} × {allowed} / {stress}",
            SAY.force(load_n * allowed_pa / stress_pa, "down"),
        )
    first = number(found, "capacity_estimate")
    share = number_text(load_n / first * 100, 3, "up")
    assert f"the limit is {SAY.force(first, 'down')}, with the design factor counted" in found.headline
    assert f"Your load is {share}% of that." in found.headline


def test_lug_headline_names_the_first_way_and_the_share() -> None:
    found = raw("lifting-lug", {**LUG, "load": "701 kg"})
    ways = {way: number(found, way) for way in ("net_tension", "tear_out", "bearing", "out_of_plane", "weld")}
    first = min(ways.values())
    assert found.results["capacity_estimate"] == first
    share = number_text(701 * G / first * 100, 3, "up")
    assert f"the limit is {SAY.force(first, 'down')}, with the design factor counted" in found.headline
    assert f"Your load is {share}% of that." in found.headline
    assert str(found.results["governing"]) in found.headline


def test_lug_working_ends_in_the_loads_of_the_results() -> None:
    found = raw("lifting-lug", {**LUG, "angle_in_plane": "17", "angle_out_of_plane": "5"})
    lines = {one.label: one.result for one in found.steps}
    for label, way in (("Tears across the hole (net-section tension)", "net_tension"), ("Pin crushes the hole (pin bearing)", "bearing"),
                       ("Bends at the foot", "out_of_plane"), ("Weld", "weld")):  # fmt: skip
        assert lines[label] == SAY.force(number(found, way), "down")
    tears = number(found, "tear_out")
    assert SAY.force(tears, "down") in (
        lines["Splits at the end (single-plane fracture)"],
        lines["Shears out at the end (double-plane shear)"],
    )


# ------------------------------------------------------------------------------------------ sling-legs

GOOD = {"condition": "marked-good"}
SLING = {"load": "2000 kg", "legs": "2", "angle": "60", "leg_rating": "1.5 t", "leg_kind": "web", **GOOD}
CHAIN = {"load": "2000 kg", "legs": "2", "angle": "60", "grade": "80", "size": "3/8", **GOOD}
OVER_POINT = "mandatory: Put the hook directly above the center of gravity"
SQUEEZE = "note: Each leg presses the load inward"
CAREFUL = "warning: Between 30° and 45°"
LOW = "prohibition: Never use a sling at less than 30°"
LEG_OVER = "prohibition: The pull is more than the leg's rating"
MATCH = "warning: Three legs share only if"
TAG_ALONE = "note: Only the tag's figure is known"
NOT_LOOKED = "mandatory: Read the mark or tag"

SLINGS = (
    Case(
        "one leg",
        "sling-legs",
        {"load": "2000 kg", "legs": "1", "leg_rating": "2.1 t", "leg_kind": "web", **GOOD},
        "ok",
        (OVER_POINT,),
    ),
    Case(
        "one leg at its rating",
        "sling-legs",
        {"load": "2100 kg", "legs": "1", "leg_rating": "2.1 t", "leg_kind": "web", **GOOD},
        "ok",
        (OVER_POINT,),
    ),
    Case("two legs", "sling-legs", SLING, "ok", (TAG_ALONE, SQUEEZE, OVER_POINT)),
    Case(
        "not looked at",
        "sling-legs",
        {**SLING, "condition": None},
        "unknown",
        (NOT_LOOKED, TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "welded",
        "sling-legs",
        {**SLING, "condition": "welded"},
        "stop",
        ("prohibition: No shop test", TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "no rating",
        "sling-legs",
        {"load": "2000 kg", "legs": "2", "angle": "60", **GOOD},
        "unknown",
        (SQUEEZE, OVER_POINT),
    ),
    Case("at 45°", "sling-legs", {**SLING, "angle": "45"}, "ok", (TAG_ALONE, SQUEEZE, OVER_POINT)),
    Case(
        "under 45°",
        "sling-legs",
        {**SLING, "angle": "44.9", "leg_rating": "2 t"},
        "caution",
        (CAREFUL, TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "under 45°, over by the stricter law",
        "sling-legs",
        {**SLING, "angle": "44.9"},
        "stop",
        (CAREFUL, "prohibition: 1.0 times the rating of one leg", TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "at 30°",
        "sling-legs",
        {**SLING, "angle": "30", "leg_rating": "2.1 t"},
        "caution",
        (CAREFUL, TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "under 30°",
        "sling-legs",
        {**SLING, "angle": "29.9", "leg_rating": "3 t"},
        "stop",
        (LOW, SQUEEZE, OVER_POINT),
    ),
    Case(
        "just over",
        "sling-legs",
        {**SLING, "leg_rating": "1154 kg"},
        "stop",
        (LEG_OVER, TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "three",
        "sling-legs",
        {**SLING, "legs": "3"},
        "ok",
        ("note: A stiff load on three legs", TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "four",
        "sling-legs",
        {**SLING, "legs": "4"},
        "ok",
        ("note: A stiff load on four legs", TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "four, three counted",
        "sling-legs",
        {**SLING, "legs": "4", "load_kind": "flexible", "legs_counted": "3"},
        "caution",
        (MATCH, TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "three, two counted",
        "sling-legs",
        {**SLING, "legs": "3", "load_kind": "flexible", "legs_counted": "2"},
        "ok",
        ("note: Two legs are counted", TAG_ALONE, SQUEEZE, OVER_POINT),
    ),
    Case(
        "a mark 4",
        "sling-legs",
        {**CHAIN, "grade": "4", "size": "13"},
        "unknown",
        ("mandatory: does not say whether the chain may lift", SQUEEZE, OVER_POINT),
    ),
    Case(
        "tie-down chain",
        "sling-legs",
        {**CHAIN, "grade": "70"},
        "stop",
        ("prohibition: Use chain of grade 80 or 100", SQUEEZE, OVER_POINT),
    ),
    Case(
        "tie-down chain, one leg",
        "sling-legs",
        {"load": "2 t", "legs": "1", "grade": "43", "size": "3/8", **GOOD},
        "stop",
        ("prohibition: Use chain of grade 80 or 100", OVER_POINT),
    ),
    Case("chain", "sling-legs", CHAIN, "ok", (SQUEEZE, OVER_POINT)),
    # OSHA, Guidance on Safe Sling Use, Table 1: 3/8 in, two legs at 60 degrees: 12,300 lb.
    Case(
        "chain at the printed sling",
        "sling-legs",
        {**CHAIN, "load": "12300 lb"},
        "stop",
        (LEG_OVER, SQUEEZE, OVER_POINT),
    ),
    Case(
        "chain over the printed sling only",
        "sling-legs",
        {**CHAIN, "angle": "45", "load": "10020 lb"},
        "stop",
        ("prohibition: The printed table gives", SQUEEZE, OVER_POINT),
    ),
)


@pytest.mark.parametrize(
    ("load_kg", "rating_kg"), [(2017.3, 1430.7), (2021.8, 1434.2), (2033.4, 1437.9), (2046.6, 1441.4)]
)
def test_sling_working(load_kg: float, rating_kg: float) -> None:
    found = raw(
        "sling-legs",
        {
            "load": f"{load_kg} kg",
            "legs": "2",
            "leg_length": "1.9 m",
            "spread": "1.7 m",
            "leg_rating": f"{rating_kg} kg",
            "leg_kind": "wire-rope",
            **GOOD,
        },
    )
    load, rated = SAY.one(load_kg, "weight"), SAY.one(rating_kg, "weight", "down")
    assert found.steps[0].formula == "atan(√(leg² − half spread²) / half the spread)"
    height = math.sqrt(1.9**2 - 0.85**2)
    angle = math.degrees(math.asin(height / 1.9))
    pull = load_kg / 2 * 1.9 / height
    assert step(found, "Angle from the horizontal") == (
        f"atan({SAY.one(height, 'length')} / {SAY.one(0.85, 'length')})",
        f"{angle:.1f}°",
    )
    assert step(found, "Sling-angle factor") == (f"1 / sin({angle:.1f}°)", f"{1.9 / height:.3f}")
    assert step(found, "Pull in each leg") == (
        f"{load} / 2 legs × {1.9 / height:.3f}",
        SAY.force(pull * G, "up"),
    )
    squeeze = load_kg / 2 * 0.85 / height
    assert step(found, "Inward push of each leg on the load (compression)") == (
        f"{load} / 2 legs / tan({angle:.1f}°)",
        SAY.force(squeeze * G, "up"),
    )
    used = number_text(pull / rating_kg * 100, 3, "up")
    assert step(found, "Part of the leg's rating used") == (
        f"{SAY.one(pull, 'weight')} / {SAY.one(rating_kg, 'weight')}",
        f"{used}%",
    )
    sine = height / 1.9
    assert step(found, "By the count of the OSHA tables") == (
        f"2 × {rated} × sin({angle:.1f}°)",
        SAY.weight(2 * rating_kg * sine, "down"),
    )
    # Only the tag is known: the stricter of statics and the mode factor counts.
    assert step(found, "Whole sling by our count") == (
        f"2 × {rated} × sin({angle:.1f}°), and never over 1.4 × {rated}",
        SAY.weight(1.4 * rating_kg, "down"),
    )
    # EN 818-4: two legs at not more than 45 degrees from the vertical, mode factor 1.4.
    assert step(found, "By the mode factor of EN 818-4") == (
        f"1.4 × {rated}",
        SAY.weight(1.4 * rating_kg, "down"),
    )
    assert SAY.force(squeeze * G, "up") in next(
        one.text for one in found.cautions if "presses the load inward" in one.text
    )
    assert found.results["headroom"] == pytest.approx(height)
    assert found.results["included_angle"] == pytest.approx(180 - 2 * angle)
    assert found.results["angle_from_vertical"] == pytest.approx(90 - angle)


def test_sling_known_by_height() -> None:
    found = raw("sling-legs", {"load": "2017 kg", "legs": "2", "height": "1.3 m", "spread": "1.7 m"})
    assert (
        step(found, "Angle from the horizontal")[0]
        == f"atan({SAY.one(1.3, 'length')} / {SAY.one(0.85, 'length')})"
    )
    assert found.steps[0].formula == "atan(height / half the spread)"
    assert found.results["angle"] == pytest.approx(math.degrees(math.atan2(1.3, 0.85)))
    by_angle = raw("sling-legs", {"load": "2017 kg", "legs": "2", "angle": "57", "spread": "1.7 m"})
    assert by_angle.figure != raw("sling-legs", {"load": "2017 kg", "legs": "2", "angle": "57"}).figure
    assert by_angle.results["headroom"] == pytest.approx(0.85 * math.tan(math.radians(57)))
    assert "headroom" not in by_angle.shown
    upright = raw("sling-legs", {"load": "2017 kg", "legs": "2", "angle": "90", "spread": "1.7 m"})
    assert upright.results["headroom"] is None
    assert upright.shown["headroom"] == "give the spread to find it"


def test_sling_of_one_leg() -> None:
    found = raw(
        "sling-legs",
        {
            "load": "2017 kg",
            "legs": "1",
            "leg_length": "1.9 m",
            "leg_rating": "2.5 t",
            "leg_kind": "web",
            **GOOD,
        },
    )
    assert step(found, "Pull in each leg") == ("2,017 kg / 1 leg × 1.000", SAY.force(2017 * G, "up"))
    assert found.headline.startswith("The leg pulls ")
    assert found.results["headroom"] == pytest.approx(1.9)
    assert found.results["included_angle"] is None
    for name in (
        "capacity",
        "capacity_osha_count",
        "capacity_en_factor",
        "legs_counted_osha",
        "en_mode_factor",
    ):
        assert found.results[name] is None
        assert found.shown[name] == "one leg: nothing to share"
    assert found.shown["included_angle"] == "one leg: no angle between"
    bare = raw("sling-legs", {"load": "1 t", "legs": "1", "angle": "90"})
    assert bare.results["angle"] == 90
    assert bare.shown["headroom"] == "give the length of the leg to find it"


def test_sling_headline() -> None:
    pull = 2000 / 2 / math.sin(math.radians(60))
    # In the unit of the rating that it is held against.
    first = f"Each leg pulls {SAY.of(pull, 'weight', 'up')}."
    used = number_text(pull / 1500 * 100, 2, "up")
    rated = SAY.of(1500, "weight", "down")
    assert raw("sling-legs", SLING).headline == f"{first} Your leg is rated {rated}: {used}% used."
    over = raw("sling-legs", {**SLING, "leg_rating": "1154 kg"})
    assert over.headline.endswith(": 101% of it. Too much.")
    assert raw("sling-legs", {**SLING, "leg_rating": None}).headline == (
        f"{first} Each leg, and each part in it, needs a lifting rating of at least that. "
        "Give the rating of your legs, or their grade and size."
    )
    tie = raw("sling-legs", {**CHAIN, "grade": "70"})
    assert tie.headline == f"{first} Grade 70 chain is for tying loads down. It has no lifting rating."
    low = raw("sling-legs", {**SLING, "angle": "29"})
    assert low.headline.endswith("Under 30° from the horizontal: do not lift like this. Use longer legs.")
    assert "Your 3/8 in grade 80 chain is rated" in raw("sling-legs", CHAIN).headline
    assert "Your 3/8 in grade 80 chain is rated" in raw("sling-legs", {**CHAIN, "size": "3/8 in"}).headline
    assert "Your 3/8 in grade 80 chain is rated" in raw("sling-legs", {**CHAIN, "size": "10 mm"}).headline
    assert (
        "Your 10 mm grade 8 chain is rated"
        in raw("sling-legs", {**CHAIN, "grade": "8", "size": "10"}).headline
    )


def test_sling_words_in_place_of_a_rating() -> None:
    none = raw("sling-legs", {**SLING, "leg_rating": None}).shown
    assert (
        none["capacity"] == none["capacity_osha_count"] == none["capacity_en_factor"] == "no leg rating given"
    )
    assert (none["leg_rating"], none["use_percent"]) == ("none given", "no leg rating given")
    assert none["table_rating"] == "not printed for this angle"
    tie = raw("sling-legs", {**CHAIN, "grade": "70"}).shown
    assert tie["capacity"] == tie["capacity_osha_count"] == tie["capacity_en_factor"] == "no lifting rating"
    assert tie["leg_rating"] == tie["use_percent"] == "no lifting rating"
    flat = raw("sling-legs", {**SLING, "angle": "20"})
    assert flat.shown["capacity"] == flat.shown["en_mode_factor"] == "too flat: not rated"
    assert flat.results["capacity"] is None
    chain = raw("sling-legs", CHAIN)
    assert "12,300" in str(chain.shown["table_rating"])
    assert {"capacity", "leg_rating", "use_percent", "en_mode_factor"}.isdisjoint(chain.shown)


def test_sling_count_never_passes_the_printed_sling() -> None:
    # OSHA, Guidance on Safe Sling Use, Table 1, 3/8 in: 7,100 lb a leg; two legs at 60 degrees 12,300 lb. By statics
    # 2 x 7,100 x sin 60 = 12,298 lb; at 45 degrees 10,041 lb against a printed 10,000 lb.
    found = raw("sling-legs", {**CHAIN, "load": "3000 lb", "angle": "45"}, "us")
    pound = 0.45359237
    assert number(found, "capacity") / pound == pytest.approx(10000)
    assert number(found, "capacity_osha_count") / pound == pytest.approx(2 * 7100 * math.sin(math.pi / 4))
    numbers = next(one.numbers for one in found.steps if one.label == "Whole sling by our count")
    assert numbers.startswith("2 × 7,100 lb × sin(45.0°), and never over the printed 10,000")
    sources = [cited.source for cited in found.citations]
    assert len(sources) == 3


# ------------------------------------------------------------------------------------------ load-weight


def piece(**more: Any) -> dict[str, Any]:
    return {
        "shape": "plate",
        "material": "steel",
        "length": "1.3 m",
        "width": "0.7 m",
        "thickness": "12 mm",
        **more,
    }


HIGH = "mandatory: Use the high figure"
RIGGING = "mandatory: shackles and any beam are not in this weight"
WRONG = "warning: The estimate leaves out thicker plate"
HOLDS_WATER = "warning: can hold water or oil"
SHARP = "note: worked out with sharp corners"
WET = "warning: Timber that is wet or green can weigh half as much again as dry timber"
EXACT = "note: taken as exact"
LUMP = {"shape": "lump", "weight": "731 kg"}

WEIGHTS = (
    Case("plate", "load-weight", {"parts": [piece()]}, "caution", (HIGH, WRONG, RIGGING)),
    Case("hollow", "load-weight", {"parts": [piece(), {"shape": "box", "material": "steel", "length": "1 m", "width": "0.5 m",
         "height": "0.4 m", "wall": "5 mm"}]}, "caution", (HIGH, WRONG, RIGGING, HOLDS_WATER)),
    *(Case(shape, "load-weight", {"parts": [{"shape": shape, "material": "steel", "length": "2 m", **sizes}]}, "caution", cautions)
      for shape, sizes, cautions in (
          ("square-tube", {"width": "80 mm", "depth": "80 mm", "wall": "5 mm"}, (HIGH, WRONG, RIGGING, HOLDS_WATER, SHARP)),
          ("angle", {"width": "80 mm", "depth": "80 mm", "thickness": "8 mm"}, (HIGH, WRONG, RIGGING, SHARP)),
          ("channel", {"depth": "200 mm", "flange_width": "75 mm", "web_thickness": "8 mm", "flange_thickness": "11 mm"},
           (HIGH, WRONG, RIGGING, SHARP)),
          ("i-beam", {"depth": "200 mm", "flange_width": "75 mm", "web_thickness": "8 mm", "flange_thickness": "11 mm"},
           (HIGH, WRONG, RIGGING, SHARP)),
          ("round-bar", {"diameter": "50 mm"}, (HIGH, WRONG, RIGGING)))),
    *(Case(material, "load-weight", {"parts": [piece(material=material)]}, "caution", (HIGH, WRONG, RIGGING, WET))
      for material in ("wood", "oak-air-dry", "southern-pine-air-dry", "douglas-fir-larch", "plywood")),
    Case("exact", "load-weight", {"parts": [piece(), {**LUMP, "tolerance": "0"}]}, "caution", (HIGH, WRONG, RIGGING, EXACT)),
    Case("given weight", "load-weight", {"parts": [LUMP]}, "caution", (HIGH, WRONG, RIGGING)),
)  # fmt: skip


def test_weight_working() -> None:
    # Density of steel: the handbook's range; here only its own low and high are used, not their values.
    steel = density_ranges()["steel"]
    plate = piece(label="base", count="3", at=["1 m", "2 m", "3 m"])
    hole = {"shape": "disc", "material": "steel", "diameter": "0.3 m", "thickness": "12 mm", "minus": "yes", "tolerance": "3 %",
            "label": "hole", "at": ["1.2 m", "2 m", "3 m"]}  # fmt: skip
    found = raw(
        "load-weight", {"parts": [plate, hole, {**LUMP, "label": "winch", "at": ["0", "0.5 m", "4 m"]}]}
    )
    volume, taken = 3 * 1.3 * 0.7 * 0.012, math.pi / 4 * 0.3**2 * 0.012
    middle = (steel.low_kg_per_m3 + steel.high_kg_per_m3) / 2
    low, high = volume * 0.98 * steel.low_kg_per_m3, volume * 1.02 * steel.high_kg_per_m3
    assert step(found, "base × 3") == (
        f"{SAY.one(volume, 'volume')} × {SAY.one(middle, 'density')} ({steel.name})",
        f"{SAY.weight(volume * middle)}; {SAY.one(low, 'weight', 'down')} to {SAY.one(high, 'weight', 'up')}",
    )
    low, high = taken * 0.97 * steel.low_kg_per_m3, taken * 1.03 * steel.high_kg_per_m3
    assert step(found, "Take away: hole") == (
        f"{SAY.one(taken, 'volume')} × {SAY.one(middle, 'density')} ({steel.name})",
        f"{SAY.weight(taken * middle)}; {SAY.one(low, 'weight', 'down')} to {SAY.one(high, 'weight', 'up')}",
    )
    assert step(found, "winch") == (
        "",
        f"{SAY.weight(731)}; {SAY.one(731 * 0.98, 'weight', 'down')} to {SAY.one(731 * 1.02, 'weight', 'up')}",
    )
    assert [one.formula for one in found.steps[:3]] == ["volume × density", "volume × density", "given"]
    total = (volume - taken) * middle + 731
    words = " ".join(
        (
            SAY.one(volume * middle, "weight"),
            "−",
            SAY.one(taken * middle, "weight"),
            "+",
            SAY.one(731, "weight"),
        )
    )
    assert step(found, "All together") == (words, SAY.weight(total))
    # What is cut out of steel has the steel's own density: the net volume counts once, thinnest less widest hole.
    least = (0.98 * volume - 1.03 * taken) * steel.low_kg_per_m3 + 731 * 0.98
    most = (1.02 * volume - 0.97 * taken) * steel.high_kg_per_m3 + 731 * 1.02
    assert step(found, "How wrong it may be") == (
        f"{number_text((least / total - 1) * 100, 2)}% to +{number_text((most / total - 1) * 100, 2, 'up')}%",
        f"{SAY.weight(least, 'down')} to {SAY.weight(most, 'up')}",
    )
    assert found.headline == (
        f"It weighs about {SAY.weight(total)}. Use the high figure, {SAY.weight(most, 'up')}, "
        f"to choose the sling. It is very unlikely to be lighter than {SAY.weight(least, 'down')}."
    )
    assert SAY.weight(most, "up") in found.cautions[0].text
    weights, places = (
        (volume * middle, -taken * middle, 731),
        ((1.0, 1.2, 0.0), (2.0, 2.0, 0.5), (3.0, 3.0, 4.0)),
    )
    for axis, where in zip("xyz", places, strict=True):
        terms = " + ".join(
            f"{SAY.one(w, 'weight')} × {SAY.one(x, 'length')}" for w, x in zip(weights, where, strict=True)
        )
        place = sum(w * x for w, x in zip(weights, where, strict=True)) / total
        assert step(found, f"Center of gravity, {axis}") == (
            f"({terms}) / {SAY.one(total, 'weight')}",
            SAY.length(place),
        )
        assert found.results[f"centre_{axis}"] == pytest.approx(place)
    assert found.shown["parts"] == (
        f"base × 3: {SAY.weight(volume * middle)}",
        f"hole, taken away: {SAY.weight(taken * middle)}",
        f"winch: {SAY.weight(731)}",
    )
    assert len(found.citations) == len(set(found.citations)) == len(steel.citations)


def test_weight_by_the_foot_working() -> None:
    beam = {"shape": "i-beam", "weight_per_length": "46.1 kg/m", "length": "3.7 m", "count": "2"}
    found = raw("load-weight", {"parts": [beam]})
    numbers, result = step(found, "I-beam, row 1 × 2")
    assert numbers == f"{SAY.one(46.1, 'weight_per_length')} × {SAY.one(3.7, 'length')}"
    assert result.startswith(SAY.weight(2 * 46.1 * 3.7))
    assert found.steps[0].formula == "weight by length × length"
    assert [one.label for one in found.steps] == ["I-beam, row 1 × 2", "How wrong it may be"]
    assert found.results["weight_low"] == pytest.approx(2 * 46.1 * 3.7 * 0.98)
    assert found.citations == ()


@pytest.mark.parametrize(
    ("sizes", "box"),
    [({"shape": "i-beam"}, (3.7, 0.1, 0.1)), ({"shape": "i-beam", "flange_width": "0.23 m", "depth": "0.31 m"}, (3.7, 0.23, 0.31)),
     ({"shape": "angle", "width": "0.08 m", "depth": "0.13 m"}, (3.7, 0.08, 0.13)), ({"shape": "angle", "depth": "0.13 m"}, (3.7, 0.1, 0.13)),
     ({"shape": "channel", "flange_width": "0.09 m"}, (3.7, 0.09, 0.1))],
)  # fmt: skip
def test_weight_by_the_foot_is_drawn_by_what_sizes_there_are(
    sizes: dict[str, str], box: tuple[float, ...]
) -> None:
    # What was not given is drawn 100 mm; the weight is that by the foot alone.
    rows = {"parts": [{"weight_per_length": "46.1 kg/m", "length": "3.7 m", **sizes}]}
    found = weigh_part(read("load-weight", rows).rows("parts")[0], 1)
    assert found.standing.box_m == pytest.approx(box)
    assert found.weight.plain_kg == pytest.approx(46.1 * 3.7)
    assert raw("load-weight", rows).results["weight"] == pytest.approx(46.1 * 3.7)


@pytest.mark.parametrize(
    ("along", "place"),
    [("x", (0.8, 2.0, 3.0)), ("-x", (1.2, 2.0, 3.0)), ("y", (1.0, 1.8, 3.0)), ("-y", (1.0, 2.2, 3.0)), ("z", (1.0, 2.0, 2.8)),
     ("-z", (1.0, 2.0, 3.2))],
)  # fmt: skip
def test_weight_of_a_cone_balances_a_quarter_up_whichever_way_it_points(
    along: str, place: tuple[float, ...]
) -> None:
    # 0.8 m high, its box's middle at 1, 2, 3 m: the balance point is 0.2 m from there toward the base.
    cone = {
        "shape": "cone",
        "material": "steel",
        "diameter": "0.5 m",
        "height": "0.8 m",
        "at": ["1 m", "2 m", "3 m"],
        "along": along,
    }
    found = raw("load-weight", {"parts": [cone]})
    assert [found.results[f"centre_{axis}"] for axis in "xyz"] == pytest.approx(place)


def test_weight_of_what_was_weighed_needs_no_high_figure() -> None:
    exact = {**LUMP, "tolerance": "0"}
    assert raw("load-weight", {"parts": [exact]}).headline == (
        f"It weighs about {SAY.weight(731)}. Add mud, water and anything else that is on it before you lift."
    )
    # An allowance of 0.11 % either way is a spread of 0.22 %: over the fifth of a percent that goes unsaid.
    assert "Add mud, water" in raw("load-weight", {"parts": [{**LUMP, "tolerance": "0.09 %"}]}).headline
    assert "Use the high" in raw("load-weight", {"parts": [{**LUMP, "tolerance": "0.11 %"}]}).headline


def test_weight_without_places_has_no_balance_point_and_says_what_to_give() -> None:
    found = raw("load-weight", {"parts": [piece(at=["1 m", "2 m", "3 m"]), LUMP]})
    for axis in "xyz":
        assert found.results[f"centre_{axis}"] is None
        assert found.shown[f"centre_{axis}"] == "give the place of each part to find it"
    assert not any(one.label.startswith("Balance point") for one in found.steps)
    # One part alone needs its place too; it balances where its shape says, a cone a quarter of its height up.
    cone: dict[str, Any] = {"shape": "cone", "material": "steel", "diameter": "0.5 m", "height": "0.8 m"}
    assert raw("load-weight", {"parts": [cone]}).results["centre_z"] is None
    cone["at"] = ["0", "0", "0"]
    assert raw("load-weight", {"parts": [cone]}).results["centre_z"] == pytest.approx(-0.2)
    lying = raw("load-weight", {"parts": [{**cone, "along": "x"}]})
    assert (lying.results["centre_x"], lying.results["centre_z"]) == (pytest.approx(-0.2), 0.0)
    assert set(lying.shown) == {"parts"}


def test_weight_of_a_drawn_solid_working() -> None:
    # A box of 2 x 3 x 5 cm from twelve triangles, written here by hand.
    corners = [(x, y, z) for x in (1, 3) for y in (2, 5) for z in (4, 9)]
    faces = [(0, 1, 3, 2), (4, 6, 7, 5), (0, 4, 5, 1), (2, 3, 7, 6), (0, 2, 6, 4), (1, 5, 7, 3)]
    lines = ["solid"]
    for a, b, c, d in faces:
        for triangle in ((a, b, c), (a, c, d)):
            lines += [
                "facet",
                "outer loop",
                *("vertex {} {} {}".format(*corners[i]) for i in triangle),
                "endloop",
                "endfacet",
            ]
    data = base64.b64encode("\n".join(lines).encode()).decode()
    found = raw("load-weight", {"solid": data, "solid_unit": "cm", "solid_material": "steel"})
    steel = density_ranges()["steel"]
    volume, middle = 30e-6, (steel.low_kg_per_m3 + steel.high_kg_per_m3) / 2
    sizes = " × ".join(SAY.one(side, "length") for side in (0.02, 0.03, 0.05))
    numbers, result = step(found, f"Drawn solid of 12 triangles, {sizes} over all")
    assert numbers == f"{SAY.one(volume, 'volume')} × {SAY.one(middle, 'density')} ({steel.name})"
    low, high = volume * steel.low_kg_per_m3, volume * steel.high_kg_per_m3
    assert (
        result
        == f"{SAY.weight(volume * middle)}; {SAY.one(low, 'weight', 'down')} to {SAY.one(high, 'weight', 'up')}"
    )
    assert found.steps[0].formula == "volume × density"
    assert (found.results["centre_x"], found.results["centre_y"], found.results["centre_z"]) == (
        pytest.approx(0.02),
        pytest.approx(0.035),
        pytest.approx(0.065),
    )
    assert found.results["weight_high"] == pytest.approx(high)
    assert found.shown["parts"] == (f"Drawn solid: {SAY.weight(volume * middle)}",)
    typed = {"solid": data, "solid_unit": "cm", "solid_material": "steel"}
    part = weigh_solid(read("load-weight", typed))
    assert part.standing.box_m == pytest.approx((0.02, 0.03, 0.05))
    assert (part.minus, part.standing.round_along, part.weight.density) == (False, "", steel)
    assert (part.weight.low_kg, part.weight.high_kg) == (pytest.approx(low), pytest.approx(high))


# ------------------------------------------------------------------------------------------ hanging-load


def hung(
    picks: list[tuple[float, float, float]],
    lengths: list[float],
    centre: tuple[float, float, float],
    names: str = "",
    **more: Any,
) -> dict[str, Any]:
    """Inputs of hanging-load: 1,000 kg, legs rated 1 t each unless `ratings` says otherwise."""
    ratings = more.pop("ratings", ["1 t"] * len(picks))
    rows = [
        {"at": [f"{side} m" for side in pick], "length": f"{length} m", "rating": rating, "label": name}
        for pick, length, rating, name in zip(
            picks, lengths, ratings, names.split() or [""] * len(picks), strict=True
        )
    ]
    usual = {"balance_tolerance": "0.001 mm", "leg_kind": "wire-rope", "chain_size": "1 mm", **GOOD}
    return {"load": "1000 kg", "picks": rows, "centre": [f"{side} m" for side in centre], **usual, **more}


PAIR = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
SQUARE = [(1.1, 0.9, 0.0), (-1.1, 0.9, 0.0), (-1.1, -0.9, 0.0), (1.1, -0.9, 0.0)]
ROCKS = [(-0.6, 0.9, 0.0), (-0.6, 0.1, 0.1), (0.5, 0.2, 0.3), (0.4, -0.4, -0.2)]
SLACK_UP = "mandatory: Take up the slack"
ROPE_LEGS = "note: Legs of rope or web may differ in length"
LEVEL_BY = "note: To hang it level, shorten"
CARRY_NOTHING = "warning: Slack legs carry nothing"
JUST_STRAIGHT = "note: More legs are straight than a stiff load can share"
OVER_LEG = "prohibition: A leg is over its rating"
FLAT_LEG = "prohibition: Never use a sling at less than 30°"
BETWEEN = "warning: A leg lies between 30° and 45°"
LINK = "warning: With one leg one link short"
CAN_ROLL = "warning: would hang lower if it turned over"

HANGING = (
    Case(
        "level pair",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.3)),
        "ok",
        (
            ROPE_LEGS,
            SLACK_UP,
        ),
    ),
    Case(
        "one rating missing",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["1 t", None]),
        "unknown",
        ("mandatory: Do not lift with a leg of unknown rating", ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "one over, one unrated",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["50 kg", None]),
        "stop",
        (OVER_LEG, "mandatory: Do not lift with a leg of unknown rating", ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "just over",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["1 t", "577 kg"]),
        "stop",
        (OVER_LEG, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "tips under 5°",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.17, 0.0, -0.3)),
        "ok",
        ("note: it tips 4.8°, right low", LEVEL_BY, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "tips over 5°",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.19, 0.0, -0.3)),
        "caution",
        ("warning: it tips 5.3°, right low", LEVEL_BY, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "leg just under 45°",
        "hanging-load",
        hung(PAIR, [1.41, 1.41], (0.0, 0.0, -0.3)),
        "caution",
        (BETWEEN, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "leg just over 45°",
        "hanging-load",
        hung(PAIR, [1.415, 1.415], (0.0, 0.0, -0.3)),
        "ok",
        (
            ROPE_LEGS,
            SLACK_UP,
        ),
    ),
    Case(
        "leg just over 30°",
        "hanging-load",
        hung(PAIR, [1.156, 1.156], (0.0, 0.0, -0.3), chain_size="4 mm"),
        "caution",
        (BETWEEN, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "leg under 30°",
        "hanging-load",
        hung(PAIR, [1.15, 1.15], (0.0, 0.0, -0.3), ratings=["2 t"] * 2),
        "stop",
        (FLAT_LEG, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "a link changes much",
        "hanging-load",
        hung(PAIR, [1.2, 1.2], (0.0, 0.0, -0.3), chain_size="16 mm"),
        "caution",
        (BETWEEN, LINK, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "may tip too far",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.3, 0.0, -0.3), balance_tolerance="80 mm"),
        "stop",
        ("prohibition: Beyond 10° things slide", "warning: right low", LEVEL_BY, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "may roll over",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.05), balance_tolerance="60 mm"),
        "stop",
        (
            "prohibition: A top-heavy load turns over",
            "mandatory: Pick points above the center of gravity",
            ROPE_LEGS,
            SLACK_UP,
        ),
    ),
    Case(
        "even square",
        "hanging-load",
        hung(SQUARE, [2.3] * 4, (0.0, 0.0, -0.4)),
        "ok",
        (JUST_STRAIGHT, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "square, one short",
        "hanging-load",
        hung(SQUARE, [2.3, 2.3, 2.3, 2.26], (0.0, 0.0, -0.4)),
        "caution",
        ("note: left and back low", LEVEL_BY, CARRY_NOTHING, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "top-heavy square",
        "hanging-load",
        hung(SQUARE, [2.3] * 4, (0.0, 0.0, 0.3)),
        "caution",
        (CAN_ROLL, JUST_STRAIGHT, ROPE_LEGS, SLACK_UP),
    ),
    Case(
        "free to roll",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, 0.0)),
        "stop",
        (
            "prohibition: A top-heavy load turns over",
            "mandatory: Pick points above the center of gravity",
            "warning: The center of gravity is level with the pick points",
            ROPE_LEGS,
            SLACK_UP,
        ),
    ),
    Case(
        "outside the picks",
        "hanging-load",
        hung(PAIR, [3.0, 3.0], (1.5, 0.0, -0.3), ratings=["2 t"] * 2),
        "stop",
        (
            "prohibition: Beyond 10° things slide",
            "warning: right low",
            "note: the center of gravity is not between the picks",
            ROPE_LEGS,
            SLACK_UP,
        ),
    ),
    Case(
        "a leg too short to level",
        "hanging-load",
        hung(PAIR, [2.6, 0.9], (-0.05, 0.0, -1.0), ratings=["2 t"] * 2),
        "stop",
        (
            "prohibition: Beyond 10° things slide",
            "warning: right low",
            "note: a leg is too short to hold the hook",
            ROPE_LEGS,
            SLACK_UP,
        ),
    ),
    Case(
        "rolls over",
        "hanging-load",
        hung(PAIR, [2.0, 2.0], (0.0, 0.0, 0.3)),
        "stop",
        ("prohibition: A top-heavy load turns over", "mandatory: Pick points above the center of gravity"),
    ),
)


def test_hanging_working() -> None:
    # Two legs of 2 m to picks at 1 m either side: the hook stands at the middle, sqrt(3) m up, and straight up is the
    # line from the balance point to it. The two pulls along the legs must add up to the weight along that line.
    found = raw("hanging-load", hung(PAIR, [2.0, 2.0], (0.19, 0.0, -0.3), "bow stern"))
    rise = math.sqrt(3)
    depth = math.hypot(0.19, rise + 0.3)
    level, upright = -0.19 / depth, (rise + 0.3) / depth
    weight = 1000 * G
    both, difference = weight * upright * 2 / rise, -weight * level * 2
    bow, stern = (both + difference) / 2, (both - difference) / 2
    tips = math.degrees(math.atan2(0.19, rise + 0.3))
    assert found.results["tensions"] == pytest.approx((bow, stern))
    assert found.results["tilt"] == pytest.approx(tips)
    assert found.results["depth"] == pytest.approx(depth)
    # As it hangs, a leg's angle is between it and the level; the lowest pick is bow's, the heavy side.
    angles = [math.degrees(math.asin((rise * upright + side * level) / 2)) for side in (-1, 1)]
    assert found.results["leg_angles"] == pytest.approx(angles)
    assert found.results["headroom"] == pytest.approx(2 * math.sin(math.radians(angles[0])))
    assert step(found, "Hook over the center of gravity") == (
        "2 legs, one, two and three tight tried",
        f"{SAY.length(depth)} from center of gravity to hook",
    )
    assert step(found, "How far it tips") == (
        f"hook {SAY.one(-0.19, 'length')} right, 0 mm back, {SAY.one(rise + 0.3, 'length')} up of it",
        f"{tips:.1f}°, right low",
    )
    for name, pull in (("bow", bow), ("stern", stern)):
        share = pull * depth / weight / 2
        assert step(found, f"Pull in leg {name}") == (
            f"9.807 kN × {share:.4f} × 2,000 mm / {SAY.one(depth, 'length')}",
            SAY.force(pull, "up"),
        )
    assert step(found, "Hook over the lowest pick") == (
        "",
        SAY.length(2 * math.sin(math.radians(angles[0])), "up"),
    )
    assert found.headline == (
        f"Legs bow and stern carry it. Leg bow pulls hardest, {SAY.weight(bow / G, 'up')}. It tips {tips:.1f}°, right low. With one leg "
        f"a link short, or the center of gravity off by {SAY.length(1e-6)}, a leg can pull "
        f"{SAY.weight(number(found, 'worst_tension') / G, 'up')}. Every leg is rated for its own worst pull."
    )
    assert found.shown["tensions"] == (
        f"leg bow: {SAY.force(bow, 'up')}",
        f"leg stern: {SAY.force(stern, 'up')}",
    )
    assert found.shown["taut"] == ("leg bow: tight", "leg stern: tight")
    assert found.shown["leg_angles"] == tuple(
        f"leg {name}: {angle:.1f}°" for name, angle in zip(("bow", "stern"), angles, strict=True)
    )
    assert found.shown["hook"] == f"0 mm (0 in) right, 0 mm (0 in) back, {SAY.length(rise)} up"
    worst = found.results["worst_tensions"]
    assert worst == pytest.approx((bow, stern), rel=0.02)
    assert min(worst[0] - bow, worst[1] - stern) >= 0
    assert found.shown["use_percent"] == tuple(
        f"leg {name}: {number_text(pull / G / 10, 3, 'up')}%"
        for name, pull in zip(("bow", "stern"), worst, strict=True)
    )
    # Level, the hook stands straight over the balance point: as high as the leg that reaches least high there.
    high = min(math.sqrt(4 - 0.81**2), math.sqrt(4 - 1.19**2))
    new = math.hypot(0.81, high)
    assert found.results["level_lengths"] == pytest.approx((new, 2.0))
    assert f"shorten leg bow to {SAY.length(new)}." in found.cautions[1].text
    # Two legs share by statics alone: no line for stretch; the link's line names the short leg and the hard one.
    assert not any(one.label == "If the legs stretch like chain" for one in found.steps)
    assert step(found, "If one leg is one link shorter")[0] == "leg stern short, leg bow pulls"


def test_hanging_words_of_slack_legs() -> None:
    short = raw("hanging-load", hung(SQUARE, [2.3, 2.3, 2.3, 2.26], (0.0, 0.0, -0.4)))
    assert short.headline.startswith("Legs 2 and 4 carry it. Leg 2 pulls hardest, ")
    assert "It tips 0.8°, left and back low. Legs 1 and 3 carry nothing. With one leg" in short.headline
    pulls = short.results["tensions"]
    assert isinstance(pulls, tuple)
    assert short.shown["tensions"] == (
        "leg 1: slack",
        f"leg 2: {SAY.force(float(pulls[1] or 0), 'up')}",
        "leg 3: slack",
        f"leg 4: {SAY.force(float(pulls[3] or 0), 'up')}",
    )
    assert short.shown["taut"] == ("leg 1: slack", "leg 2: tight", "leg 3: slack", "leg 4: tight")
    assert [text.split(": ")[1] == "slack" for text in short.shown["leg_angles"]] == [
        True,
        False,
        True,
        False,
    ]
    assert [one.label for one in short.steps if one.label.startswith("Pull in leg")] == [
        "Pull in leg 2",
        "Pull in leg 4",
    ]
    springy = short.results["springy_tensions"]
    assert isinstance(springy, tuple)
    assert step(short, "If the legs stretch like chain") == (
        "1, 2, 3, 4",
        "; ".join(SAY.force(float(pull or 0), "up") for pull in springy),
    )
    even = raw("hanging-load", hung(SQUARE, [2.3] * 4, (0.0, 0.0, -0.4)))
    assert even.headline.startswith(
        "Legs 1, 2, 3 and 4 are all just straight. It is not known which of them carry it and which go slack. Leg 1 pulls hardest, "
    )
    assert even.shown["taut"] == tuple(f"leg {leg}: tight or slack" for leg in range(1, 5))
    assert even.shown["level_lengths"] == "it hangs level as it is"
    # Rounding leaves some 1e-15 m of the hook's place; none of it is written.
    assert str(even.shown["hook"]).startswith("0 mm (0 in) right, 0 mm (0 in) back, ")
    assert step(even, "How far it tips")[0].startswith("hook 0 mm right, 0 mm back, ")
    assert step(even, "How far it tips")[1] == "0.0°"
    one = raw("hanging-load", hung(PAIR, [3.0, 3.0], (1.5, 0.0, -0.3), ratings=["2 t"] * 2))
    assert one.headline.startswith("Leg 1 carries it. Leg 1 pulls hardest, ")
    assert " Leg 2 carries nothing. It can tip " in one.headline
    three = raw(
        "hanging-load",
        hung([(0.0, 0.0, 0.6), (0.0, 0.46, 0.6), (0.97, 0.23, 0.69)], [1.07, 1.09, 1.16], (0.33, 0.21, 0.25)),
    )
    assert three.headline.startswith("Legs 1, 2 and 3 carry it")
    over = raw("hanging-load", hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["1 t", "577 kg"]))
    assert over.headline.endswith(" That is over the rating of leg 2: do not lift.")
    flat = raw("hanging-load", hung(PAIR, [1.15, 1.15], (0.0, 0.0, -0.3), ratings=["0.5 t"] * 2))
    assert flat.headline.endswith("A leg lies under 30° from the horizontal: do not lift like this.")


def test_hanging_words_of_springy_legs() -> None:
    found = raw("hanging-load", hung(SQUARE, [2.3, 2.3, 2.3, 2.26], (0.0, 0.0, -0.4), chain_size="10 mm"))
    pulls = found.results["springy_tensions"]
    assert isinstance(pulls, tuple)
    assert [pull == 0 for pull in pulls] == [True, False, True, False]
    assert found.shown["springy_tensions"] == tuple(
        f"leg {leg}: {SAY.force(float(pull or 0), 'up') if pull else 'slack'}"
        for leg, pull in enumerate(pulls, 1)
    )
    assert "short_link_tension" not in found.shown


def test_hanging_of_a_feather() -> None:
    # 50 grams: every pull is under a newton, and the words are those of a heavy load.
    light = {**hung(PAIR, [2.0, 2.0], (0.0, 0.0, -0.3)), "load": "0.05 kg"}
    found = raw("hanging-load", light)
    assert found.verdict == "ok"
    assert found.headline.startswith("Legs 1 and 2 carry it")
    assert found.shown["taut"] == ("leg 1: tight", "leg 2: tight")
    assert found.results["taut"] == (True, True)
    assert all(
        "slack" not in text
        for text in (*found.shown["tensions"], *found.shown["leg_angles"], *found.shown["springy_tensions"])
    )
    assert found.results["low_side"] == "level"


@pytest.mark.parametrize("moved", [0.0, 0.05, -0.08])
def test_hanging_one_link_short_takes_the_worst_leg(moved: float) -> None:
    # Each leg in turn typed in three bars shorter; the hardest pull of all is the one shown.
    picks = [(0.0, 0.0, 0.6), (0.0, 0.46, 0.6), (0.97, 0.23, 0.69)]
    lengths, centre = [1.37, 1.41, 1.46], (0.33 + moved, 0.21, 0.25)
    hardest = []
    for leg in range(3):
        shorter = [length - (0.03 if leg == other else 0.0) for other, length in enumerate(lengths)]
        hardest.append(
            number(raw("hanging-load", hung(picks, shorter, centre, chain_size="10 mm")), "highest_tension")
        )
    found = raw("hanging-load", hung(picks, lengths, centre, chain_size="10 mm"))
    assert number(found, "short_link_tension") == pytest.approx(max(hardest), rel=2e-3)
    assert step(found, "If one leg is one link shorter")[0].startswith(
        f"leg {hardest.index(max(hardest)) + 1} short"
    )


def test_hanging_that_rolls_over_says_so_in_every_place() -> None:
    found = raw("hanging-load", hung(PAIR, [2.0, 2.0], (0.0, 0.0, 0.3)))
    assert found.headline.startswith("It will roll over.")
    assert {name: value for name, value in found.results.items() if value is not None} == {"stable": False}
    names = {result.name for result in worksheet("hanging-load").results} - {"stable"}
    assert found.shown == dict.fromkeys(names, "it rolls over first")
    assert step(found, "Resting places with the hook over the picks") == ("2 legs", "none")
    depth = math.sqrt(3) + 0.3
    assert step(found, "Where it would come to rest") == (
        "turned by 180°",
        f"center of gravity {SAY.length(depth)} under the hook",
    )


def test_hanging_rocks_between_places() -> None:
    found = raw("hanging-load", hung(ROCKS, [1.9, 1.7, 1.4, 2.1], (-0.2, 0.1, 0.1)))
    kinds = {caution.text.split(",")[0]: caution.kind for caution in found.cautions}
    assert kinds["It can also come to rest another way"] == "warning"


def test_hanging_one_link_short_is_three_bars_off_one_leg() -> None:
    # EN 818-2 (from memory): a link's pitch is three bars. The pull must be that of the sheet itself with the one leg
    # typed in shorter, on the same springs: so stiff here that statics alone gives it within a thousandth.
    found = raw("hanging-load", hung(PAIR, [1.3, 1.3], (0.0, 0.0, -0.3), chain_size="20 mm"))
    short = raw("hanging-load", hung(PAIR, [1.24, 1.3], (0.0, 0.0, -0.3), chain_size="20 mm"))
    assert number(found, "short_link_tension") == pytest.approx(number(short, "highest_tension"), rel=1e-3)
    assert number(found, "short_link_tension") > 1.02 * number(found, "highest_tension")
    assert (
        SAY.force(number(found, "short_link_tension"), "up")
        == step(found, "If one leg is one link shorter")[1]
    )


def test_hanging_legs_are_drawn_by_use() -> None:
    def kinds(**more: Any) -> list[str]:
        figure = raw(
            "hanging-load", hung(more.pop("picks", PAIR), more.pop("lengths"), more.pop("centre"), **more)
        ).figure
        assert figure is not None
        return [
            kind
            for kind in ("leg-slack", "leg-stop", "leg-careful")
            if f'"{kind}' in figure.svg or f" {kind}" in figure.svg
        ]

    low = (0.0, 0.0, -0.3)
    assert kinds(lengths=[2.0, 2.0], centre=low) == []
    assert kinds(lengths=[2.0, 2.0], centre=low, ratings=["1 t", "577 kg"]) == ["leg-stop"]
    assert kinds(lengths=[1.15, 1.15], centre=low, ratings=["2 t"] * 2) == ["leg-stop"]
    assert kinds(lengths=[1.3, 1.3], centre=low) == ["leg-careful"]
    assert kinds(picks=SQUARE, lengths=[2.3, 2.3, 2.3, 2.26], centre=(0.0, 0.0, -0.4)) == ["leg-slack"]
    named = raw("hanging-load", hung(PAIR, [2.0, 2.0], low, "bow stern")).figure
    assert named is not None
    assert "1 (bow)" in named.caption + named.svg
    assert "1 (1)" not in str(raw("hanging-load", hung(PAIR, [2.0, 2.0], low)).figure)


# ------------------------------------------------------------------------------------------ refusals

TUBE = {**FLAT, "section": "tube", "diameter": "90 mm"}
REFUSALS = [
    (
        "beam-lift",
        {k: v for k, v in FLAT.items() if k != "depth"},
        "depth",
        "is missing for this section. Give it as measured",
    ),
    ("beam-lift", {**TUBE, "wall": "46 mm"}, "wall", "is more than half the tube"),
    (
        "beam-lift",
        {**FLAT, "section": "box", "width": "120 mm", "wall": "59 mm"},
        "wall",
        "is more than half the tube",
    ),
    (
        "beam-lift",
        {**FLAT, "section": "box", "width": "80 mm", "wall": "40.1 mm"},
        "wall",
        "is more than half the tube",
    ),
    ("beam-lift", {**I_BEAM, "web_thickness": "101 mm"}, "web_thickness", "is wider than the flange"),
    (
        "beam-lift",
        {**I_BEAM, "flange_thickness": "101 mm"},
        "flange_thickness",
        "is more than half the depth",
    ),
    ("beam-lift", {**I_BEAM, "material": "other"}, "modulus", "is missing for a material of your own"),
    ("beam-lift", {**FLAT, "position": "3.2 m"}, "position", "is not on the span"),
    ("beam-lift", {**FLAT, "position": "3.1 m"}, "position", "is not on the span"),
    ("beam-lift", {**FLAT, "position": "3.2 m", "ends": "cantilever"}, "position", "is not on the span"),
    (
        "hitch",
        {**BASKET, "object_diameter": "19.9 mm", "sling_diameter": "20 mm"},
        "object_diameter",
        "is less than the rope's own",
    ),
    ("lifting-lug", {**LUG, "pin": "27.1 mm"}, "pin", "does not go into the hole"),
    (
        "lifting-lug",
        {**LUG, "yield_strength": "401 MPa", "tensile_strength": "400 MPa"},
        "yield_strength",
        "is over the tensile strength",
    ),
    ("lifting-lug", {**LUG, "height": "13.4 mm"}, "height", "puts the hole into the weld"),
    (
        "sling-legs",
        {**SLING, "legs_counted": "3"},
        "legs_counted",
        "is more than the 2 legs there are. Give 2 or fewer.",
    ),
    ("sling-legs", {"load": "1 t", "legs": "1", "angle": "89"}, "angle", "does not fit one leg"),
    (
        "sling-legs",
        {"load": "1 t", "legs": "2", "leg_length": "0.85 m", "spread": "1.7 m"},
        "leg_length",
        f"is too short to reach: half the spread alone is {SAY.length(0.85)}.",
    ),
    ("sling-legs", {"load": "1 t", "legs": "2"}, "angle", "is missing. Give the angle, or height and spread"),
    ("sling-legs", {**CHAIN, "size": None}, "size", "is missing. Give the chain's size"),
    ("sling-legs", {**CHAIN, "size": "3/7"}, "size", "is not rated: "),
    ("sling-legs", {**CHAIN, "grade": "8", "size": "11"}, "size", "is not rated: "),
    ("load-weight", {"parts": []}, "parts", "has no rows. Give at least one part, or a drawn solid."),
    ("load-weight", {"parts": [LUMP, {**LUMP, "minus": "yes"}]}, "parts", "takes away as much as there is"),
    (
        "load-weight",
        {"parts": [{"shape": "angle", "material": "steel"}]},
        "parts[0].width",
        "is missing. This shape needs it: Angle. Or give the weight by the foot.",
    ),
    (
        "load-weight",
        {"parts": [{"shape": "disc", "material": "steel", "diameter": "1 m"}]},
        "parts[0].thickness",
        "is missing. This shape needs it: Disc (round plate).",
    ),
    (
        "load-weight",
        {"parts": [piece(material=None)]},
        "parts[0].material",
        "is missing. Pick what it is made of",
    ),
    (
        "load-weight",
        {
            "parts": [
                {
                    "shape": "ring",
                    "material": "steel",
                    "outside_diameter": "1 m",
                    "inside_diameter": "1 m",
                    "thickness": "1 cm",
                }
            ]
        },
        "parts[0].inside_diameter",
        "must be less than the outside diameter.",
    ),
    (
        "load-weight",
        {"solid": "AAAA", "solid_material": "steel"},
        "solid_unit",
        "is missing: the file holds bare numbers",
    ),
    (
        "load-weight",
        {"solid": "AAAA", "solid_unit": "mm"},
        "solid_material",
        "is missing. Pick what it is made of",
    ),
    (
        "load-weight",
        {"solid": "AAAA", "solid_unit": "mm", "solid_material": "steel"},
        "solid",
        "is neither an ASCII nor a whole binary",
    ),
    (
        "hanging-load",
        hung(PAIR, [0.9, 0.9], (0.0, 0.0, -0.3), "bow stern"),
        "picks[1].length",
        f"legs bow and stern cannot both reach one hook over the load. Their picks are {SAY.length(2.0)} apart.",
    ),
    (
        "hanging-load",
        hung([(0.0, 1.0, 0.0), (0.9, -0.5, 0.0), (-0.9, -0.5, 0.0)], [0.95] * 3, (0.0, 0.0, -0.3)),
        "picks",
        "cannot all reach one hook",
    ),
    # The pair that is farthest from meeting is named: 1 and 3, 5 m apart on legs of 2 m.
    (
        "hanging-load",
        hung([(0.0, 0.0, 0.0), (3.0, 0.0, 0.0), (5.0, 0.0, 0.0)], [2.0, 0.9, 2.0], (1.0, 0.0, -0.3)),
        "picks[2].length",
        "legs 1 and 3 cannot both reach",
    ),
]


@pytest.mark.parametrize(("sheet", "given", "box", "words"), REFUSALS, ids=lambda value: str(value)[:40])
def test_refusals_name_the_box_and_say_what_would_do(
    sheet: str, given: dict[str, Any], box: str, words: str
) -> None:
    with pytest.raises(Refused) as caught:
        raw(sheet, given)
    assert [error.input for error in caught.value.errors] == [box]
    assert words in caught.value.errors[0].message
    assert re.search(r"[.”]$", caught.value.errors[0].message)


# ------------------------------------------------------------------------------------------ boxes


def lengths_of(boxes: tuple[Asked, ...]) -> dict[str, tuple[float | None, float | None, bool]]:
    """The lengths among boxes: over what, at most what [in], and whether they must be given."""
    found = [box for box in boxes if box.declared.kind == "quantity" and box.declared.dimension == "length"]
    assert all(
        box.label and box.help and box.declared.unit == "in" and box.declared.unit_si == "mm"
        for box in found
        if box.declared.name not in ("span", "position", "held_every")
    )
    return {one.name: (one.bounds.above, one.bounds.at_most, one.required) for one in map(declared_by, found)}


def declared_by(box: Asked) -> Input:
    return box.declared


def test_boxes_of_a_beam() -> None:
    inputs = described("beam-lift").inputs
    sizes = ("depth", "width", "diameter", "wall", "flange_width", "web_thickness", "flange_thickness")
    assert lengths_of(inputs) == {
        **dict.fromkeys(sizes, (0, 200, False)),
        "span": (0, 200, True),
        "position": (0, 200, False),
        "held_every": (0, 200, False),
        "outer_fibre": (0, 200, False),
    }
    boxes = [one for one in map(declared_by, inputs) if "section" in one.shown_when]
    asked = {one.name: set(one.shown_when["section"]) for one in boxes}
    assert asked == {
        "depth": {"i-beam", "rectangle", "box"}, "width": {"rectangle", "box"}, "diameter": {"tube", "round-bar"},
        "wall": {"box", "tube"}, "flange_width": {"i-beam"}, "web_thickness": {"i-beam"}, "flange_thickness": {"i-beam"},
        "second_moment": {"known"}, "outer_fibre": {"known"}, "section_modulus": {"known"},
        "held_every": {"i-beam", "rectangle"}, "load_sits": {"i-beam", "rectangle"},
    }  # fmt: skip


def test_boxes_of_a_lug() -> None:
    assert lengths_of(described("lifting-lug").inputs) == {
        **dict.fromkeys(("hole", "pin", "side_edge", "end_edge", "height", "weld_length"), (0, 200, True)),
        **dict.fromkeys(("jaw", "between_jaws", "wall_thickness", "wall_span"), (0, 200, False)),
        "thickness": (0, 12, True), "weld_leg": (0, 4, True),
    }  # fmt: skip


def test_boxes_of_a_part_to_weigh() -> None:
    boxes = {box.declared.name: box for box in described("load-weight").inputs}
    columns = boxes["parts"].columns
    needs = {name: {shape.name for shape in SHAPES.values() if name in (*shape.needs, *shape.may_have)}
             for name in ("length", "width", "depth", "height", "thickness", "diameter", "outside_diameter", "inside_diameter",
                          "bottom_diameter", "top_diameter", "mean_diameter", "wall", "side", "across_flats", "flange_width",
                          "web_thickness", "flange_thickness")}  # fmt: skip
    assert all(needs.values())
    assert lengths_of(columns) == dict.fromkeys(needs, (0, 4000, False))
    inputs = [box.declared for box in columns]
    asked = {one.name: set(one.shown_when["shape"]) for one in inputs if one.shown_when}
    assert asked == {
        **needs,
        "weight_per_length": {"angle", "channel", "i-beam"},
        "weight": {"lump"},
        "material": set(SHAPES) - {"lump"},
    }
    by_foot = next(one for one in inputs if one.name == "weight_per_length")
    weight = next(one for one in inputs if one.name == "weight")
    assert (
        by_foot.kind,
        by_foot.dimension,
        by_foot.bounds.above,
        by_foot.bounds.at_most,
        by_foot.required,
    ) == (
        "quantity",
        "weight_per_length",
        0,
        10_000,
        False,
    )
    assert (weight.kind, weight.dimension, weight.bounds.above, weight.bounds.at_most, weight.required) == (
        "quantity",
        "weight",
        0,
        2_000_000,
        False,
    )
    assert all(box.label and (box.help or box.declared.name == "shape") for box in columns)
    names = {row["material"]: row["material_name"] for row in table("densities").rows}
    material = next(box for box in columns if box.declared.name == "material")
    for box in (material, boxes["solid_material"]):
        assert {value: plain(words) for value, words in box.options} == names
        labels = [plain(words).lower() for _, words in box.options]
        assert labels == sorted(labels)


# ------------------------------------------------------------------------------------------ all of them

CASES = (*HITCHES, *BEAMS, *STRINGS, *LUGS, *SLINGS, *WEIGHTS, *HANGING)


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.sheet}, {case.name}")
def test_verdict_and_cautions(case: Case) -> None:
    found = raw(case.sheet, case.given)
    assert found.verdict == case.verdict
    wanted = [line.split(": ", 1) for line in case.cautions]
    assert [
        (caution.kind, words in caution.text)
        for caution, (_, words) in zip(found.cautions, wanted, strict=True)
    ] == [(kind, True) for kind, _ in wanted], [(caution.kind, caution.text) for caution in found.cautions]


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.sheet}, {case.name}")
def test_an_answer_is_whole(case: Case, units: UnitSystem) -> None:
    found = raw(case.sheet, case.given, units)
    declared = {result.name: result for result in worksheet(case.sheet).results}
    assert found.big in declared
    # Nothing is found that the worksheet does not declare, and what is not found has words in its place.
    assert set(found.results) <= set(declared)
    assert set(found.shown) <= set(declared)
    for name in declared:
        value = found.results.get(name)
        assert value is not None or found.shown.get(name), name
        if isinstance(found.shown.get(name), tuple) and isinstance(value, list | tuple):
            assert len(found.shown[name]) == len(value)
    texts = [found.headline, *(caution.text for caution in found.cautions)]
    assert all(re.search(r"[.”]$", text) and "  " not in text for text in texts), texts
    for one in found.steps:
        assert one.label
        assert one.result
        assert one.formula or one.numbers
    keys = table("sources").values("key")
    assert all(cited.source in keys and cited.locator for cited in found.citations)
    written = [
        *texts,
        *(part for one in found.steps for part in (one.label, one.formula, one.numbers, one.result)),
    ]
    shown = [
        text for value in found.shown.values() for text in ([value] if isinstance(value, str) else value)
    ]
    assert all(isinstance(text, str) and "None" not in text for text in [*written, *shown])
    # A load that rolls over has no place to be drawn in.
    assert (found.figure is None) == found.headline.startswith("It will roll over")
    if found.figure is not None:
        assert "None" not in found.figure.svg + found.figure.caption
    answer(case.sheet, counted(case.sheet, case.given), units)


@pytest.mark.parametrize(
    ("name", "raw", "why"),
    [
        # OSHA Guidance on Safe Sling Use, Table 1: 3/8 in grade 80, two legs at 45 degrees, 10,000 lb.
        ("sling-legs", {**GOOD, "legs": "2", "known_by": "angle", "angle": "45", "load": "10,020 lb", "grade": "80", "size": "3/8"},
         "rates the whole sling at 10,000 lb"),
        ("load-path", {"load": "1,010 lb", "use": "plain", "items": [
            {"label": "flat legs", "kind": "chain", "condition": "marked-good", "grade": "80", "size": "3/8", "legs": "2",
             "angle": "29"}]}, "Do not lift like this: the legs of the part “flat legs” lie under 30° from the horizontal"),
    ],
)  # fmt: skip
def test_a_stop_says_why_in_its_headline(name: str, raw: dict[str, Any], why: str) -> None:
    found = answer(name, raw, "us")
    assert found["verdict"] == "stop"
    assert why in found["headline"]
    assert "used" not in found["headline"]
