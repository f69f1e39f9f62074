"""How hot does the steel get beside a weld bead, and how far from it?

Rosenthal's field of an arc that moves steadily along a wide plate (D. Rosenthal, Welding Journal, 1941): a point of
heat on the top face, constant properties, no loss to the air. The plate may be thick, thin or in between: its two
faces are mirrors, so the arc is repeated at every even multiple of the thickness. Far from the arc the same field is
summed as a cosine series of moving lines of heat, which needs fewer terms. Both forms are exact and meet.

Coordinates ride with the arc: `along` is positive ahead of it, `aside` across the bead on the face, `deep` into the
plate. The field is singular at the arc itself and poor inside the molten pool; read it below about 0.8 of melting.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.heating.bessel import k0_scaled, k1_scaled

_MOST_TRIES = 80
_NEGLIGIBLE = 17.0
"""A term smaller than its nearest one by exp(-17), 4e-8, is left out."""


@dataclass(frozen=True)
class MovingArc:
    """A steady arc on a plate: net power [W], travel [m/s], plate thickness [m], conductivity [W/(m K)] and
    diffusivity [m2/s] of the steel.
    """

    net_power_w: float
    travel_m_per_s: float
    thickness_m: float
    conductivity_w_per_mk: float
    diffusivity_m2_per_s: float

    @property
    def drag_per_m(self) -> float:
        """Travel over twice the diffusivity [1/m]."""
        return self.travel_m_per_s / (2 * self.diffusivity_m2_per_s)


@dataclass(frozen=True)
class _Local:
    """The field at one place: rise [K] over its scale, and its slopes along travel (first, second), aside and deep."""

    rise: float
    along: float
    along_twice: float
    aside: float
    deep: float


def _by_images(arc: MovingArc, along: float, aside: float, deep: float) -> _Local:
    """The field as a sum of thick-body fields, one for each mirror image of the arc."""
    k, double = arc.drag_per_m, 2 * arc.thickness_m
    flat = along * along + aside * aside
    rise = slope = bend = to_side = down = 0.0
    most = _NEGLIGIBLE + k * (along + math.sqrt(flat + deep * deep))
    count, nearest = 0, 0.0
    while not count or k * (along + math.sqrt(flat + nearest * nearest)) <= most:
        for image in (count, -count) if count else (0,):
            height = deep - image * double
            distance = math.sqrt(flat + height * height)
            exponent = k * (along + distance)
            if exponent > most:
                continue
            part = math.exp(-exponent) / distance
            ratio = along / distance
            first = -k * (1 + ratio) - ratio / distance
            second = -(k / distance) * (1 - ratio * ratio) - (1 - 2 * ratio * ratio) / (distance * distance)
            outward = -part * (k + 1 / distance) / distance
            rise += part
            slope += part * first
            bend += part * (first * first + second)
            to_side += outward * aside
            down += outward * height
        count += 1
        nearest = count * double - deep
    scale = arc.net_power_w / (2 * math.pi * arc.conductivity_w_per_mk)
    return _Local(scale * rise, scale * slope, scale * bend, scale * to_side, scale * down)


def _by_cosines(arc: MovingArc, along: float, aside: float, deep: float) -> _Local:
    """The same field as moving lines of heat: the even line of a thin plate, and cosines through the thickness."""
    k, thickness = arc.drag_per_m, arc.thickness_m
    distance = math.hypot(along, aside)
    ratio = along / distance
    rise = slope = bend = to_side = down = 0.0
    count, wave, sharp = 0, 0.0, k
    while (sharp - k) * distance <= _NEGLIGIBLE:
        damp = math.exp(-sharp * distance - k * along) * (2.0 if count else 1.0)
        k0, k1 = damp * k0_scaled(sharp * distance), damp * k1_scaled(sharp * distance)
        shape = math.cos(wave * deep)
        fall = sharp * k1
        rise += shape * k0
        slope += shape * (-k * k0 - ratio * fall)
        curved = (
            sharp * sharp * ratio * ratio * (k0 + k1 / (sharp * distance))
            - fall * (1 - ratio * ratio) / distance
        )
        bend += shape * (k * k * k0 + 2 * k * ratio * fall + curved)
        to_side -= shape * fall * aside / distance
        down -= wave * math.sin(wave * deep) * k0
        count += 1
        wave = count * math.pi / thickness
        sharp = math.sqrt(k * k + wave * wave)
    scale = arc.net_power_w / (2 * math.pi * arc.conductivity_w_per_mk * thickness)
    return _Local(scale * rise, scale * slope, scale * bend, scale * to_side, scale * down)


def _local(arc: MovingArc, along: float, aside: float, deep: float) -> _Local:
    """The field by whichever sum is shorter here; about 17 / (drag x thickness) images stand against 6 thickness / distance
    cosines.
    """
    thickness = arc.thickness_m
    if 20.0 * thickness < math.hypot(along, aside) * (1.0 + 17.0 / (arc.drag_per_m * thickness)):
        return _by_cosines(arc, along, aside, deep)
    return _by_images(arc, along, aside, deep)


def temperature_rise_k(arc: MovingArc, along_m: float, aside_m: float, deep_m: float) -> float:
    """Rise over the start temperature [K] at a place that rides with the arc; not at the arc itself."""
    return _local(arc, along_m, aside_m, deep_m).rise


def thick_peak_rise_k(arc: MovingArc, radius_m: float) -> float:
    """Peak rise [K] at a radius from the arc's line in a body without a back face.

    Where the rise is greatest, the arc is kR/(1 + kR) of the distance R ahead, k = travel / (2 diffusivity); so the
    radius is R sqrt(1 - (kR/(1 + kR))^2) and the rise q/(2 pi lambda R) exp(-kR/(1 + kR)). [derived from Rosenthal]

    >>> round(thick_peak_rise_k(MovingArc(3000.0, 3e-3, 0.2, 41.0, 41.0 / 4.4e6), 0.010))
    423
    """
    distance = _thick_distance(arc, radius_m)
    lag = arc.drag_per_m * distance / (1 + arc.drag_per_m * distance)
    return arc.net_power_w / (2 * math.pi * arc.conductivity_w_per_mk * distance) * math.exp(-lag)


def _thick_distance(arc: MovingArc, radius_m: float) -> float:
    """Distance R from the arc at the hottest moment of a point at a radius, by Newton's rule.

    radius^2 = R^2 (1 + 2 kR) / (1 + kR)^2 rises with R, so the start from above falls evenly to the answer.
    """
    k = arc.drag_per_m
    distance = radius_m * math.sqrt(1 + k * radius_m) + radius_m * radius_m * k / 2
    step = distance
    while abs(step) > 1e-12 * distance:
        w = k * distance
        value = distance * math.sqrt(1 + 2 * w) / (1 + w)
        slope = (1 + 3 * w + w * w) / ((1 + w) ** 2 * math.sqrt(1 + 2 * w))
        step = (value - radius_m) / slope
        distance -= step
    return distance


def _thick_lag(arc: MovingArc, radius_m: float) -> float:
    """How far behind the arc [m] a point at a radius is hottest, in a body without a back face."""
    distance = _thick_distance(arc, radius_m)
    return arc.drag_per_m * distance * distance / (1 + arc.drag_per_m * distance)


def thin_peak_rise_k(arc: MovingArc, aside_m: float) -> float:
    """Peak rise [K] beside a line of heat through a thin plate, by golden section on Rosenthal's thin-plate field."""
    k, scale = arc.drag_per_m, arc.net_power_w / (2 * math.pi * arc.conductivity_w_per_mk * arc.thickness_m)

    def cold(along: float) -> float:
        distance = math.hypot(along, aside_m)
        return -math.exp(-k * (along + distance)) * k0_scaled(k * distance)

    low, high = -4 * aside_m - 4 * k * aside_m * aside_m, 0.0
    golden = (math.sqrt(5) - 1) / 2
    for _ in range(80):
        first, second = high - golden * (high - low), low + golden * (high - low)
        if cold(first) < cold(second):
            high = second
        else:
            low = first
    return -scale * cold((low + high) / 2)


@dataclass(frozen=True)
class Peak:
    """The hottest moment of a place: its rise [K], how far behind the arc [m] it comes, and how the rise falls with
    a step aside and a step down [K/m].
    """

    rise_k: float
    behind_m: float
    aside_slope: float
    deep_slope: float


def peak(arc: MovingArc, aside_m: float, deep_m: float, guess_behind_m: float | None = None) -> Peak:
    """The hottest moment at a place of the section, aside and deep [m] but not at the arc; `guess_behind_m` speeds the
    search up.

    The rise climbs to one summit and falls again. A single arc is hottest first; its mirror images are hottest
    later, so the summit lies behind the thick-body one. Newton's rule on the slope, kept inside a bracket.
    """
    front = -_thick_lag(arc, math.hypot(aside_m, deep_m))
    back = -math.inf
    along = 1.2 * front - 1e-9 if guess_behind_m is None or -guess_behind_m >= front else -guess_behind_m
    tries, settled = 0, False
    while not settled and tries < _MOST_TRIES:
        place = _local(arc, along, aside_m, deep_m)
        if place.along > 0:
            back = along
        else:
            front = along
        # the slope of the logarithm is nearly straight, so Newton's rule works on that
        slope = place.along / place.rise
        bend = place.along_twice / place.rise - slope * slope
        new = along - slope / bend if bend < 0 else math.inf
        if not back < new <= front:
            new = (back + front) / 2 if math.isfinite(back) else 2 * along
        # the rise is flat at its summit: a last step of 1e-4 moves it by some 1e-8
        settled = abs(new - along) < 1e-4 * abs(new)
        along, tries = new, tries + 1
    return Peak(place.rise, -along, place.aside, place.deep)


@dataclass(frozen=True)
class Isotherm:
    """Where one peak temperature lies on the section: points (aside, deep) [m] from the top face down, and whether the
    line runs out through the back face.
    """

    points: tuple[tuple[float, float], ...]
    through: bool


def _along_ray(
    arc: MovingArc, rise_k: float, angle_deg: float, radius_m: float, behind_m: float | None
) -> tuple[float, float]:
    """Distance from the arc's line along a ray [m] at which the peak rise has fallen to `rise_k`, and the lag there."""
    across, down = math.cos(math.radians(angle_deg)), math.sin(math.radians(angle_deg))
    low, high = 0.0, math.inf
    tries, settled = 0, False
    while not settled and tries < _MOST_TRIES:
        summit = peak(arc, radius_m * across, radius_m * down, behind_m)
        behind_m = summit.behind_m
        if summit.rise_k > rise_k:
            low = radius_m
        else:
            high = radius_m
        power = radius_m * (summit.aside_slope * across + summit.deep_slope * down) / summit.rise_k
        new = radius_m * math.exp(math.log(rise_k / summit.rise_k) / power) if power < -1e-9 else high
        if not low < new < high:
            new = (low + high) / 2 if math.isfinite(high) else 2 * low
        settled = abs(new - radius_m) < 1e-4 * radius_m
        radius_m, tries = new, tries + 1
    return radius_m, behind_m or 0.0


def surface_distance_m(arc: MovingArc, rise_k: float) -> float:
    """Distance from the bead's middle, along the top face [m], out to where the peak rise is `rise_k` [K].

    rise_k -- over nought; to one part in ten thousand

    >>> round(surface_distance_m(MovingArc(3000.0, 3e-3, 0.2, 41.0, 41.0 / 4.4e6), 700.0) * 1e3, 2)
    7.36
    """
    return _along_ray(arc, rise_k, 0.0, _first_guess(arc, rise_k), None)[0]


def _first_guess(arc: MovingArc, rise_k: float) -> float:
    """A far-field radius [m] to start from: 2 H / (pi e rho c rise) squared in a thick body (derived)."""
    heat = arc.net_power_w / arc.travel_m_per_s
    capacity = arc.conductivity_w_per_mk / arc.diffusivity_m2_per_s
    return math.sqrt(2 * heat / (math.pi * math.e * capacity * rise_k))


def isotherm(arc: MovingArc, rise_k: float, rays: int = 8) -> Isotherm:
    """The line on the section where the peak rise is `rise_k` [K], from the top face to below the bead or to the back."""
    radius, behind = _along_ray(arc, rise_k, 0.0, _first_guess(arc, rise_k), None)
    points = [(radius, 0.0)]
    for count in range(1, rays + 1):
        angle = 90.0 * count / rays
        across, down = math.cos(math.radians(angle)), math.sin(math.radians(angle))
        reach = arc.thickness_m / down
        if radius >= reach and peak(arc, reach * across, arc.thickness_m, behind).rise_k >= rise_k:
            points.append((_back_face(arc, rise_k, points[-1][0]), arc.thickness_m))
            return Isotherm(tuple(points), through=True)
        radius, behind = _along_ray(arc, rise_k, angle, min(radius, reach), behind)
        if radius > reach:
            points.append((_back_face(arc, rise_k, points[-1][0]), arc.thickness_m))
            return Isotherm(tuple(points), through=True)
        points.append((radius * across if count < rays else 0.0, radius * down))
    return Isotherm(tuple(points), through=False)


def _back_face(arc: MovingArc, rise_k: float, widest_m: float) -> float:
    """How far aside [m] a peak rise reaches on the back face, by halving; at most `widest_m`."""
    low, high, behind = 0.0, widest_m, None
    for _ in range(12):
        middle = (low + high) / 2
        summit = peak(arc, middle, arc.thickness_m, behind)
        behind = summit.behind_m
        if summit.rise_k > rise_k:
            low = middle
        else:
            high = middle
    return (low + high) / 2


__all__ = [
    "Isotherm",
    "MovingArc",
    "Peak",
    "isotherm",
    "peak",
    "surface_distance_m",
    "temperature_rise_k",
    "thick_peak_rise_k",
    "thin_peak_rise_k",
]
