"""Computed values that the explaining pages name: `{{ value("grade-break", grade="80") }}` writes one in both units."""

from __future__ import annotations

from collections.abc import Callable

from build_scripts.lessons.bent_parts import (
    SHEAVE_LIFE,
    bent_over_pulled,
    example_eyebolt,
    example_pins,
    hoist_side_pull,
    hook_shapes,
    pin_bending_pa,
    rope_strength_left,
)
from build_scripts.lessons.chain_strength import (
    PROOF_OVER_RATING,
    WIRE_M,
    both_sides_m2,
    brittle_energy_j_per_m,
    least_break_n,
    mean_stress_pa,
    pull_for_set_n,
    rating_n,
    stretch_model,
)
from build_scripts.lessons.frames import LEG_M, part_left, tips_deg
from build_scripts.lessons.parts import mild_yield_pa
from build_scripts.lessons.printed import printed
from build_scripts.lessons.steel import tetragonal
from build_scripts.lessons.steel_states import (
    AS_FORGED,
    BATH_DEGC,
    DIFFUSIVITY_M2_PER_S,
    bend_strain,
    chain_lifts,
    crack_depth_ratio,
    fatigue_limit_mpa,
    hydrogen_hours,
    quenched_hv,
)
from build_scripts.lessons.strength import factor_bites
from calc.lifting.frame_strength import fillet_holds_n
from calc.lifting.lug_holding import least_fillet_m
from calc.lifting.lug_strength import throat_m
from calc.pulling.plastic_bending import RECTANGLE, ROUND_BAR
from calc.pulling.statistics_of_few import failure_bound
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.ratings import shackle
from calc.words.facts import Fact, Number, Quantity, degrees, force, length, weight

Value = Callable[..., Fact]
_STRESS = ("ksi", "MPa")
_SHACKLE_PIN_M = 0.75 * 0.0254
_BAR_M = 0.010


def _stress(value_pa: float, digits: int = 2) -> Quantity:
    return Quantity(value_pa, "pressure", digits=digits, units=_STRESS)


def _grade_stress(value_pa: float) -> Quantity:
    return Quantity(value_pa, "pressure", places=0, units=("N/mm2", "N/mm2"))


def _share(value: float, places: int = 0) -> Quantity:
    return Quantity(value, "fraction", places=places)


def _capacity(value_n: float) -> Quantity:
    return weight(value_n / STANDARD_GRAVITY_M_PER_S2, "capacity")


def _energy_share(grade: str, other: str) -> Quantity:
    one, two = stretch_model(grade), stretch_model(other)
    return _share(one.energy_j_per_m(one.break_n) / two.energy_j_per_m(two.break_n))


def _brittle_part() -> Number:
    tough = stretch_model("80")
    return Number(tough.energy_j_per_m(tough.break_n) / brittle_energy_j_per_m(tough.break_n), 2)


def _bill(with_jerk: bool) -> Number:
    left = 4.0
    for _, bite in factor_bites():
        left /= bite
    return Number(left / (2.0 if with_jerk else 1.0), places=1)


def _hook_gain() -> Quantity:
    rod, deep = hook_shapes()
    return _share(rod.inside_times / deep.inside_times - 1)


def _pin(name: str) -> float:
    return next(pin.double_shear_break_n for pin in example_pins() if pin.name == name)


def _shackle_n() -> float:
    return shackle("A", "5/8").working_load_limit_kg * STANDARD_GRAVITY_M_PER_S2


def _pin_bend(diameter_in: str, loose: str) -> Quantity:
    bent = pin_bending_pa(_shackle_n(), float(diameter_in) * 0.0254, _SHACKLE_PIN_M, loose == "yes")
    return _stress(bent)


VALUES: dict[str, Value] = {
    "both-sides": lambda: Quantity(both_sides_m2(WIRE_M), "area", digits=4, units=("mm2", "mm2")),
    "wire": lambda: length(WIRE_M),
    "grade-break": lambda grade: force(least_break_n(grade, WIRE_M)),
    "grade-stress-rated": lambda grade: _grade_stress(mean_stress_pa(rating_n(grade), WIRE_M)),
    "grade-stress-break": lambda grade: _grade_stress(float(grade) * 10e6),
    "rating": lambda grade: _capacity(rating_n(grade)),
    "rated-break": lambda grade: force(
        printed("factor-grade-43" if grade == "43" else "factor-other-grades").si * rating_n(grade)
    ),
    "proof": lambda grade: force(PROOF_OVER_RATING * rating_n(grade)),
    "growth-at-rating": lambda grade: _share(stretch_model(grade).stretch(rating_n(grade)), 1),
    "growth-over-yard": lambda grade: length(0.9144 * stretch_model(grade).stretch(rating_n(grade))),
    "energy-share": _energy_share,
    "brittle-part": _brittle_part,
    "pull-for-set": lambda percent: Number(
        pull_for_set_n(stretch_model("80"), float(percent) / 100) / rating_n("80"), 2
    ),
    "factor-left": lambda jerk="no": _bill(jerk == "yes"),
    "lifts-times": lambda share: Number((1 / float(share)) ** 3, 2),
    "chain-lifts-ratio": lambda one, other: Number(
        chain_lifts(mean_stress_pa(rating_n(one), WIRE_M) / 1e6)
        / chain_lifts(mean_stress_pa(rating_n(other), WIRE_M) / 1e6),
        2,
    ),
    "forged-limit": lambda tensile_mpa: _stress(fatigue_limit_mpa(float(tensile_mpa), AS_FORGED) * 1e6),
    "eyebolt-rating": lambda: _capacity(example_eyebolt().rating_n),
    "eyebolt-in-line": lambda: _stress(example_eyebolt().in_line_pa(0.0)),
    "eyebolt-without": lambda angle: _stress(example_eyebolt().without_shoulder_pa(float(angle))),
    "eyebolt-with": lambda angle: _stress(example_eyebolt().with_shoulder_pa(float(angle))),
    "eyebolt-times": lambda: Number(
        bent_over_pulled(example_eyebolt().eye_height_m / example_eyebolt().shank_m), 2
    ),
    "mild-yield": lambda: _stress(mild_yield_pa()),
    "shackle-rating": lambda: _capacity(_shackle_n()),
    "shackle-at": lambda angle: _capacity(_shackle_n() * printed(f"shackle-at-{angle}").si),
    "pin-shear": lambda name: force(_pin(name), "capacity", 2),
    "pin-shear-over": lambda name: Number(_pin(name) / _shackle_n(), 2),
    "pin-bending": _pin_bend,
    "hook-inside": lambda which: Number(hook_shapes()[int(which)].inside_times, 2),
    "hook-gain": _hook_gain,
    "bath": lambda: degrees(BATH_DEGC),
    "rope-left": lambda ratio: _share(rope_strength_left(float(ratio))),
    "rope-life": lambda big, small: Number(SHEAVE_LIFE[int(big)] / SHEAVE_LIFE[int(small)], 2),
    "bend-strain": lambda ratio, times="1": _share(int(times) * bend_strain(float(ratio))),
    "hydrogen-bar": lambda: length(_BAR_M),
    "hydrogen-time": lambda warmth: Quantity(
        hydrogen_hours(_BAR_M, DIFFUSIVITY_M2_PER_S[warmth]) * 3600, "time", digits=1, units=("h", "h")
    ),
    "hydrogen-hot": lambda: degrees(200.0),
    "quenched": lambda carbon: Number(quenched_hv(float(carbon)), 2),
    "crystal-longer": lambda carbon: _share(tetragonal(float(carbon)) - 1, 1),
    "crack-ratio": lambda proof: Number(crack_depth_ratio(float(proof)), 2),
    "bad-of-hundred": lambda passes: Number(failure_bound(int(passes)) * 100, places=0),
    "hoist-sideways": lambda angle: _share(hoist_side_pull(float(angle)).sideways),
    "hoist-chain": lambda angle: _share(hoist_side_pull(float(angle)).chain - 1, 1),
    "hoist-swing": lambda angle: _share(hoist_side_pull(float(angle)).swinging - 1),
    "hinge-over-first": lambda shape: Number((RECTANGLE if shape == "flat" else ROUND_BAR).full, 2),
    "stays-after": lambda share: _share(RECTANGLE.stays(RECTANGLE.core_at_moment(float(share))), 2),
    "beam-left": lambda feet: _share(part_left(float(feet))),
    "beam-free": lambda feet: length(float(feet) * 0.3048),
    "tips-at": lambda ratio: Quantity(tips_deg(float(ratio)), "angle", "capacity"),
    "weld-leg": lambda: length(LEG_M),
    "weld-throat": lambda: length(throat_m(LEG_M), "capacity"),
    "weld-inch": lambda: force(fillet_holds_n(70_000 * 6894.757293168361, LEG_M, 0.0254) / 2, "capacity"),
    "least-fillet": lambda inches: length(least_fillet_m(float(inches) * 0.0254)),
    "iron-changes": lambda: degrees(727.0),
}
"""What a page may name, and how it is computed."""


def value(name: str, /, **given: str) -> Fact:
    """A value by name; KeyError where there is none of it."""
    return VALUES[name](**given)


__all__ = ["VALUES", "value"]
