"""How hard a beam may bend before it rolls over sideways (lateral-torsional buckling).

Question of the trade: the stress is low, so why did the beam lie down on its side? A deep thin beam that nothing holds from
twisting gives way sideways long before it yields. Strengths after AISC 360, chapters F2 (I-beams) and F11 (flat bars), for
steel, with the factor for the shape of the moment Cb = 1, which is the safe side. Formulas F2-5, F2-6 read in a reprint; F2-4
and F11 recalled, held by a printed example and by the elastic theory (tests). Rolled shapes are taken without their fillets.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

ON_TOP_LENGTHENS = 1.2
"""A load that stands on top of the beam pushes it over as it turns: the length counts 1.2 times (BS 5950 notes, a copy)."""


@dataclass(frozen=True)
class IShape:
    """What an I-beam needs: radii [m], twist constant [m4], elastic and plastic modulus [m3], between flange middles [m]."""

    side_radius_m: float
    effective_radius_m: float
    twist_m4: float
    modulus_m3: float
    plastic_modulus_m3: float
    between_flanges_m: float


def i_shape(depth_m: float, flange_width_m: float, web_m: float, flange_m: float) -> IShape:
    """The shape from its sizes [m], sharp corners; twist constant as thin plates, warping Iy ho^2 / 4."""
    b, h = flange_width_m, depth_m - 2 * flange_m
    between = depth_m - flange_m
    area = 2 * b * flange_m + h * web_m
    sideways = (2 * flange_m * b**3 + h * web_m**3) / 12
    strong = (b * depth_m**3 - (b - web_m) * h**3) / 12
    modulus = strong / (depth_m / 2)
    return IShape(
        math.sqrt(sideways / area),
        math.sqrt(sideways * between / 2 / modulus),
        (2 * b * flange_m**3 + between * web_m**3) / 3,
        modulus,
        b * flange_m * between + web_m * h**2 / 4,
        between,
    )


def plates_are_compact(
    sizes_m: tuple[float, float, float, float], yield_pa: float, modulus_pa: float
) -> bool:
    """Whether flange and web of an I-beam (depth, flange width, web, flange [m]) are thick enough not to buckle by themselves:
    b / 2t up to 0.38 and h / tw up to 3.76 times the root of E / yield (AISC 360, Table B4.1b, from memory).
    """
    depth, width, web, flange = sizes_m
    root = math.sqrt(modulus_pa / yield_pa)
    return width / (2 * flange) <= 0.38 * root and (depth - 2 * flange) / web <= 3.76 * root


def i_beam_moment_nm(
    shape: IShape, free_m: float, yield_pa: float, modulus_pa: float, uneven: float = 1.0
) -> float:
    """Moment [N m] at which a compact I-beam of steel gives way, by yielding or sideways, free to twist over free_m [m].

    uneven -- Cb, 1 for an even moment. AISC 360 F2: full plastic moment up to Lp, a straight line to Lr, then elastic.
    """
    plastic = yield_pa * shape.plastic_modulus_m3
    first = 0.7 * yield_pa * shape.modulus_m3
    slender = free_m / shape.effective_radius_m
    warp = shape.twist_m4 / (shape.modulus_m3 * shape.between_flanges_m)
    short = 1.76 * shape.side_radius_m * math.sqrt(modulus_pa / yield_pa)
    ratio = 0.7 * yield_pa / modulus_pa
    reach = 1.95 * shape.effective_radius_m / ratio
    long = reach * math.sqrt(warp + math.sqrt(warp**2 + 6.76 * ratio**2))
    if free_m <= short:
        return plastic
    if free_m <= long:
        moment = plastic - (plastic - first) * (free_m - short) / (long - short)
        return min(plastic, uneven * moment)
    stress = math.pi**2 * modulus_pa / slender**2 * math.sqrt(1 + 0.078 * warp * slender**2)
    return min(plastic, uneven * stress * shape.modulus_m3)


def flat_bar_moment_nm(
    depth_m: float, width_m: float, free_m: float, yield_pa: float, modulus_pa: float
) -> float:
    """Moment [N m] at which a flat bar of steel on edge gives way, free to twist over free_m [m]. AISC 360 F11, Cb = 1.

    A bar no deeper than wide only yields.
    """
    first = yield_pa * width_m * depth_m**2 / 6
    plastic = 1.5 * first
    slender = free_m * depth_m / width_m**2
    if depth_m <= width_m or slender <= 0.08 * modulus_pa / yield_pa:
        return plastic
    if slender <= 1.9 * modulus_pa / yield_pa:
        return min(plastic, (1.52 - 0.274 * slender * yield_pa / modulus_pa) * first)
    return min(plastic, 1.9 * modulus_pa / slender * width_m * depth_m**2 / 6)


__all__ = [
    "ON_TOP_LENGTHENS",
    "IShape",
    "flat_bar_moment_nm",
    "i_beam_moment_nm",
    "i_shape",
    "plates_are_compact",
]
