"""How a rigid load hangs from one hook by legs of any lengths.

Question of the trade: which legs go tight, how hard does each pull, and how far does the load tip? In the load's own
axes the hook may be at any point h within the reach of every leg, |h - p_i| <= L_i. Gravity turns the load so that
its balance point c hangs as far under the hook as it can: |h - c| is greatest there. At such a point (the conditions
of Karush, Kuhn and Tucker)

    h - c = sum of m_i (h - p_i),   m_i >= 0, and m_i = 0 for a slack leg,

which is balance of forces: a tight leg pulls T_i = W m_i L_i / |h - c|. One, two and three tight legs are tried, each
in closed form (the far end of a leg's reach, a circle of two spheres, the corner of three). A point counts as a resting
place if h cannot move so that c goes lower: always with three tight legs that stand in space, and with one or two if
the m_i sum to more than one. Derived here; the tests hold it against a numeric search over all attitudes and against a
load let down slowly on stiff springs.
"""

from __future__ import annotations

import functools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

Vector = tuple[float, float, float]

CLOSE = 1e-9
"""Lengths that differ by less than this part of the longest leg are taken as equal, a smaller share of a leg as none."""


def minus(a: Vector, b: Vector) -> Vector:
    """Difference a - b."""
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def along(a: Vector, b: Vector, t: float) -> Vector:
    """Sum a + t b."""
    return a[0] + t * b[0], a[1] + t * b[1], a[2] + t * b[2]


def dot(a: Vector, b: Vector) -> float:
    """Scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vector, b: Vector) -> Vector:
    """Vector product."""
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def size(a: Vector) -> float:
    """Length of a vector."""
    return math.hypot(*a)


def unit(a: Vector) -> Vector:
    """A vector of length one along `a`, which is not zero."""
    length = size(a)
    return a[0] / length, a[1] / length, a[2] / length


@dataclass(frozen=True)
class Rest:
    """A place where the load rests.

    hook -- in load axes [m]; shares -- m_i of each leg [-]; the worst of the ways to share where lengths agree exactly
    most, least -- the largest and the smallest m_i of each leg in any way to share [-]
    touching -- legs at their full length, tight or not; depth_m -- how far the balance point hangs under the hook
    free_to_roll -- the load can turn about the line of its picks and stay where it is put
    """

    hook: Vector
    shares: tuple[float, ...]
    touching: tuple[int, ...]
    depth_m: float
    most: tuple[float, ...]
    least: tuple[float, ...]
    free_to_roll: bool = False

    def up(self, centre: Vector) -> Vector:
        """The direction straight up, in load axes."""
        return unit(minus(self.hook, centre))

    def tensions_n(self, weight_n: float, lengths_m: Sequence[float]) -> tuple[float, ...]:
        """Pull in each leg [N]."""
        return tuple(
            weight_n * share * length / self.depth_m
            for share, length in zip(self.shares, lengths_m, strict=True)
        )

    def largest_n(self, weight_n: float, lengths_m: Sequence[float]) -> tuple[float, ...]:
        """The largest pull in each leg in any way to share [N]."""
        return tuple(
            weight_n * share * length / self.depth_m
            for share, length in zip(self.most, lengths_m, strict=True)
        )

    def hook_is_over(self, picks: Sequence[Vector], centre: Vector) -> bool:
        """Whether the load is upright with the hook over the picks that carry it."""
        carrying = [pick for pick, share in zip(picks, self.shares, strict=True) if share > 0]
        mean_z = sum(pick[2] for pick in carrying) / len(carrying)
        return self.up(centre)[2] > CLOSE and self.hook[2] > mean_z


def resting_places(picks: Sequence[Vector], lengths_m: Sequence[float], centre: Vector) -> list[Rest]:
    """Every place where the load rests, deepest first; empty if no point is within reach of all legs.

    picks, centre -- in load axes [m]; lengths_m -- over zero. Any number of legs.

    >>> rest = resting_places([(3.0, 0.0, 0.0), (-3.0, 0.0, 0.0)], [5.0, 5.0], (0.0, 0.0, -1.0))[0]
    >>> rest.hook, rest.depth_m
    ((0.0, 0.0, 4.0), 5.0)
    """
    scale = max(lengths_m)
    groups: list[tuple[Vector, list[dict[int, float]]]] = []
    reaches = [(pick, length + CLOSE * scale) for pick, length in zip(picks, lengths_m, strict=True)]
    for hook, shares in _stationary(picks, lengths_m, centre, scale):
        if any(math.dist(hook, pick) > reach for pick, reach in reaches):
            continue
        for known, ways in groups:
            if math.dist(known, hook) < 1e-7 * scale:
                ways.append(shares)
                break
        else:
            groups.append((hook, [shares]))
    rests = [_rest(hook, ways, picks, lengths_m, centre, scale) for hook, ways in groups]
    return sorted((rest for rest in rests if rest), key=lambda rest: -rest.depth_m)


def _rest(
    hook: Vector,
    ways: list[dict[int, float]],
    picks: Sequence[Vector],
    lengths_m: Sequence[float],
    centre: Vector,
    scale: float,
) -> Rest | None:
    """The resting place at `hook`, or None if the load would leave it."""
    # A share that only rounding gives is none: such a leg neither carries nor steadies.
    carrying = sorted({leg for way in ways for leg, share in way.items() if share > CLOSE})
    most = max(sum(way.values()) for way in ways)
    free = False
    if not _stand_in_space([minus(hook, picks[leg]) for leg in carrying], scale):
        if most < 1.0 - 1e-7:
            return None
        free = most < 1.0 + 1e-7
    worst = max(ways, key=lambda way: max(share * lengths_m[leg] for leg, share in way.items()))
    touching = tuple(
        leg for leg, pick in enumerate(picks) if math.dist(hook, pick) > lengths_m[leg] - 1e-7 * scale
    )
    shares = {id(way): tuple(_share(way, leg) for leg in range(len(picks))) for way in ways}
    of_each_leg = list(zip(*shares.values(), strict=True))
    return Rest(
        hook,
        shares[id(worst)],
        touching,
        size(minus(hook, centre)),
        tuple(max(leg) for leg in of_each_leg),
        tuple(min(leg) for leg in of_each_leg),
        free,
    )


def _share(way: dict[int, float], leg: int) -> float:
    """A leg's share in a way to share; what only rounding gives is none."""
    share = way.get(leg, 0.0)
    return share if share > CLOSE else 0.0


def _stand_in_space(legs: list[Vector], scale: float) -> bool:
    """Whether three of the legs do not lie in one plane."""
    return any(abs(dot(a, cross(b, c))) > 1e-9 * scale**3 for a, b, c in combinations(legs, 3))


def _stationary(
    picks: Sequence[Vector], lengths_m: Sequence[float], centre: Vector, scale: float
) -> Iterator[tuple[Vector, dict[int, float]]]:
    """Every hook point with a balance of one, two or three legs, none of them pushing; reach not yet checked."""
    for i, (pick, length) in enumerate(zip(picks, lengths_m, strict=True)):
        yield _one_leg(i, pick, length, centre, scale)
    circles, corners = _meetings(tuple(picks), tuple(lengths_m), scale)
    for circle in circles:
        yield from _two_legs(circle, picks[circle.i], centre, scale)
    for corner in corners:
        yield from _three_legs(corner, picks[corner.i], centre)


@dataclass(frozen=True)
class _Circle:
    """Where the reaches of two legs meet: legs i and j, `distance` of their picks [m], `axis` from i to j, the circle's foot
    on the axis `on_axis` from i, and its radius [m].
    """

    i: int
    j: int
    distance: float
    axis: Vector
    on_axis: float
    radius: float
    foot: Vector


@dataclass(frozen=True)
class _Corner:
    """Where the reaches of three legs meet: at x, y and plus or minus `height` along ex, ey, ez from the pick of leg i [m];
    the pick of j lies `a_on_x` along ex, that of k at b_on_x, b_on_y. `hooks` are the two points, each with its z.
    """

    i: int
    j: int
    k: int
    axes: tuple[Vector, Vector, Vector]
    x: float
    y: float
    a_on_x: float
    b_on_x: float
    b_on_y: float
    hooks: tuple[tuple[float, Vector], tuple[float, Vector]]


@functools.lru_cache(maxsize=16)
def _meetings(
    picks: tuple[Vector, ...], lengths_m: tuple[float, ...], scale: float
) -> tuple[tuple[_Circle, ...], tuple[_Corner, ...]]:
    """Where the reaches of any two and of any three legs meet, which does not hang on the balance point: a worksheet asks
    for many of these.
    """
    legs = range(len(picks))
    circles = [_circle(i, j, picks, lengths_m, scale) for i, j in combinations(legs, 2)]
    corners = [_corner(i, j, k, picks, lengths_m, scale) for i, j, k in combinations(legs, 3)]
    return tuple(one for one in circles if one), tuple(one for one in corners if one)


def _one_leg(
    i: int, pick: Vector, length: float, centre: Vector, scale: float
) -> tuple[Vector, dict[int, float]]:
    """One leg straight over the balance point. A pick at the balance point itself: the load stays as it is put."""
    away = minus(pick, centre)
    distance = size(away)
    direction = unit(away) if distance > CLOSE * scale else (0.0, 0.0, 1.0)
    return along(pick, direction, length), {i: (length + distance) / length}


def _circle(
    i: int, j: int, picks: Sequence[Vector], lengths_m: Sequence[float], scale: float
) -> _Circle | None:
    between = minus(picks[j], picks[i])
    distance = size(between)
    if distance < CLOSE * scale:
        return None
    axis = unit(between)
    on_axis = (distance**2 + lengths_m[i] ** 2 - lengths_m[j] ** 2) / (2 * distance)
    radius_squared = lengths_m[i] ** 2 - on_axis**2
    if radius_squared <= (CLOSE * scale) ** 2:
        return None
    return _Circle(i, j, distance, axis, on_axis, math.sqrt(radius_squared), along(picks[i], axis, on_axis))


def _two_legs(
    circle: _Circle, pick_i: Vector, centre: Vector, scale: float
) -> Iterator[tuple[Vector, dict[int, float]]]:
    """Two tight legs: the hook is on the circle where their reaches meet, at the point farthest from the balance
    point or nearest to it. A balance point on the line of the picks: every point is as far; the upper one is taken.
    """
    axis, radius, on_axis = circle.axis, circle.radius, circle.on_axis
    to_centre = minus(centre, pick_i)
    centre_on_axis = dot(to_centre, axis)
    off = along(to_centre, axis, -centre_on_axis)
    directions: tuple[Vector, ...]
    if size(off) > CLOSE * scale:
        directions = (unit((-off[0], -off[1], -off[2])), unit(off))
    else:
        directions = (_most_upward(axis),)
    for direction in directions:
        off_direction = dot(off, direction)
        # h - c = m_i (h - p_i) + m_j (h - p_j), along the axis and along the direction.
        total = (radius - off_direction) / radius
        share_j = (total * on_axis - (on_axis - centre_on_axis)) / circle.distance
        share_i = total - share_j
        if share_i >= -CLOSE and share_j >= -CLOSE:
            yield along(circle.foot, direction, radius), {circle.i: share_i, circle.j: share_j}


def _most_upward(axis: Vector) -> Vector:
    """The direction square to `axis` that points most upward (to the right if the axis stands upright)."""
    wanted = (0.0, 0.0, 1.0) if abs(axis[2]) < 1.0 - 1e-12 else (1.0, 0.0, 0.0)
    return unit(along(wanted, axis, -dot(wanted, axis)))


def _corner(
    i: int, j: int, k: int, picks: Sequence[Vector], lengths_m: Sequence[float], scale: float
) -> _Corner | None:
    a, b = minus(picks[j], picks[i]), minus(picks[k], picks[i])
    if size(cross(a, b)) <= CLOSE * scale * max(size(a), size(b)):
        return None
    ex = unit(a)
    b_on_x = dot(b, ex)
    ey = unit(along(b, ex, -b_on_x))
    ez = cross(ex, ey)
    length_i, length_j, length_k = lengths_m[i], lengths_m[j], lengths_m[k]
    b_on_y = dot(b, ey)
    x = (length_i**2 - length_j**2 + dot(a, a)) / (2 * size(a))
    y = (length_i**2 - length_k**2 + dot(b, b) - 2 * b_on_x * x) / (2 * b_on_y)
    height_squared = length_i**2 - x * x - y * y
    if height_squared <= (CLOSE * scale) ** 2:
        return None
    height = math.sqrt(height_squared)
    foot = along(along(picks[i], ex, x), ey, y)
    hooks = (height, along(foot, ez, height)), (-height, along(foot, ez, -height))
    return _Corner(i, j, k, (ex, ey, ez), x, y, size(a), b_on_x, b_on_y, hooks)


def _three_legs(corner: _Corner, pick_i: Vector, centre: Vector) -> Iterator[tuple[Vector, dict[int, float]]]:
    """Three tight legs: the hook is at one of the two points where their reaches meet."""
    ex, ey, ez = corner.axes
    x, y = corner.x, corner.y
    to_centre = minus(centre, pick_i)
    cx, cy, cz = dot(to_centre, ex), dot(to_centre, ey), dot(to_centre, ez)
    for z, hook in corner.hooks:
        # With t = sum of m: the z part gives t, then x and y give m_j and m_k.
        total = (z - cz) / z
        share_k = (total * y - (y - cy)) / corner.b_on_y
        share_j = (total * x - (x - cx) - share_k * corner.b_on_x) / corner.a_on_x
        share_i = total - share_j - share_k
        if share_i >= -CLOSE and share_j >= -CLOSE and share_k >= -CLOSE:
            yield hook, {corner.i: share_i, corner.j: share_j, corner.k: share_k}


def level_lengths(
    picks: Sequence[Vector], lengths_m: Sequence[float], centre: Vector
) -> tuple[float, ...] | None:
    """Leg lengths [m] that hold the hook straight over the balance point: as long as can be had by shortening legs
    only. None if a leg does not reach there at all.

    >>> level_lengths([(3.0, 0.0, 0.0), (-3.0, 0.0, 0.0)], [5.0, 6.0], (0.0, 0.0, -1.0))
    (5.0, 5.0)
    """
    heights = []
    for pick, length in zip(picks, lengths_m, strict=True):
        aside = math.hypot(pick[0] - centre[0], pick[1] - centre[1])
        if length <= aside:
            return None
        heights.append(pick[2] + math.sqrt(length**2 - aside**2))
    hook = (centre[0], centre[1], min(heights))
    return tuple(size(minus(hook, pick)) for pick in picks)


# ------------------------------------------------------------------------------------------ springy legs


@dataclass(frozen=True)
class SpringyRest:
    """Where the load rests on springy legs: hook in load axes [m], pull in each leg [N]."""

    hook: Vector
    tensions_n: tuple[float, ...]


def springy_rest(
    picks: Sequence[Vector],
    lengths_m: Sequence[float],
    centre: Vector,
    weight_n: float,
    stiffness_n_per_m: Sequence[float],
    start: Vector,
) -> SpringyRest | None:
    """Let the load down on legs that stretch, from the hook point `start` [load axes, m].

    The energy -W |h - c| + sum of k (stretch)^2 / 2, stretch only where a leg is tight, is made least by Newton's
    method with a shortened step where a full one does not go down. None if it does not settle.
    """
    hook = start
    energy, pull, stiffness = _springy(hook, picks, lengths_m, centre, weight_n, stiffness_n_per_m)
    for _ in range(200):
        if size(pull) < 1e-10 * weight_n:
            break
        step = _downhill(stiffness, pull)
        reach = 0.25 * max(lengths_m)
        t = min(1.0, reach / max(size(step), 1e-300))
        while t > 1e-14:
            tried = along(hook, step, t)
            after = _springy(tried, picks, lengths_m, centre, weight_n, stiffness_n_per_m)
            if after[0] < energy or (
                size(after[1]) < size(pull) and after[0] <= energy + 1e-12 * abs(energy)
            ):
                break
            t /= 2
        else:
            break
        hook, (energy, pull, stiffness) = tried, after
    settled = size(pull) < 1e-6 * weight_n
    return SpringyRest(hook, _pulls(hook, picks, lengths_m, stiffness_n_per_m)) if settled else None


def _pulls(
    hook: Vector, picks: Sequence[Vector], lengths_m: Sequence[float], stiffness_n_per_m: Sequence[float]
) -> tuple[float, ...]:
    return tuple(
        k * max(0.0, size(minus(hook, pick)) - length)
        for pick, length, k in zip(picks, lengths_m, stiffness_n_per_m, strict=True)
    )


Matrix = tuple[Vector, Vector, Vector]


def _springy(
    hook: Vector,
    picks: Sequence[Vector],
    lengths_m: Sequence[float],
    centre: Vector,
    weight_n: float,
    stiffness_n_per_m: Sequence[float],
) -> tuple[float, Vector, Matrix]:
    """Energy [J], its slope [N] and the slope's slope [N/m] at a hook point."""
    arm = minus(hook, centre)
    depth = size(arm)
    ux, uy, uz = arm[0] / depth, arm[1] / depth, arm[2] / depth
    energy = -weight_n * depth
    gx, gy, gz = -weight_n * ux, -weight_n * uy, -weight_n * uz
    bend = -weight_n / depth
    xx, yy, zz = bend * (1 - ux * ux), bend * (1 - uy * uy), bend * (1 - uz * uz)
    xy, xz, yz = -bend * ux * uy, -bend * ux * uz, -bend * uy * uz
    for pick, length, k in zip(picks, lengths_m, stiffness_n_per_m, strict=True):
        leg = minus(hook, pick)
        reach = size(leg)
        stretch = reach - length
        if stretch <= 0:
            continue
        nx, ny, nz = leg[0] / reach, leg[1] / reach, leg[2] / reach
        pull = k * stretch
        energy += pull * stretch / 2
        gx, gy, gz = gx + pull * nx, gy + pull * ny, gz + pull * nz
        across = pull / reach
        lengthwise = k - across
        xx += across + lengthwise * nx * nx
        yy += across + lengthwise * ny * ny
        zz += across + lengthwise * nz * nz
        xy += lengthwise * nx * ny
        xz += lengthwise * nx * nz
        yz += lengthwise * ny * nz
    return energy, (gx, gy, gz), ((xx, xy, xz), (xy, yy, yz), (xz, yz, zz))


def _downhill(stiffness: Matrix, pull: Vector) -> Vector:
    """Newton's step, with the diagonal raised until it goes down the slope."""
    raised = 0.0
    largest = max(abs(stiffness[i][i]) for i in range(3)) or 1.0
    while True:
        (a, b, c), (_, d, e), (_, _, f) = stiffness
        a, d, f = a + raised, d + raised, f + raised
        minor = a * d - b * b
        whole = a * (d * f - e * e) - b * (b * f - e * c) + c * (b * e - d * c)
        if a > 0 and minor > 1e-14 * largest**2 and whole > 1e-18 * largest**3:
            gx, gy, gz = pull
            return (
                -((d * f - e * e) * gx + (c * e - b * f) * gy + (b * e - c * d) * gz) / whole,
                -((c * e - b * f) * gx + (a * f - c * c) * gy + (b * c - a * e) * gz) / whole,
                -((b * e - c * d) * gx + (b * c - a * e) * gy + minor * gz) / whole,
            )
        raised = max(10 * raised, 1e-6 * largest)


__all__ = [
    "CLOSE",
    "Rest",
    "SpringyRest",
    "Vector",
    "along",
    "cross",
    "dot",
    "level_lengths",
    "minus",
    "resting_places",
    "size",
    "springy_rest",
    "unit",
]
