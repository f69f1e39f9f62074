"""Which legs carry it, and how will it hang?

Two to eight legs of any lengths from one hook to a stiff load whose balance point may lie anywhere. Exact rigid
balance (calc.lifting.hanging); then the same on springy legs, to show how far pulls move when one leg is one link
shorter. Chain stretch from the modulus of studless mooring chain (tables/chain-modulus), a link's pitch from three
times its bar (EN 818-2, from memory): both only for that comparison.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations

from calc.figures.hanging import DrawnLeg, hanging_figure
from calc.lifting.hanging import (
    Rest,
    Vector,
    dot,
    level_lengths,
    minus,
    resting_places,
    size,
    springy_rest,
)
from calc.lifting.leg_geometry import CAREFUL_ANGLE_DEG, LOWEST_ANGLE_DEG
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, number_text
from calc.tables import number, table
from calc.worksheet import (
    Answer,
    BadInput,
    Caution,
    Citation,
    Figure,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
    worst,
)

LEVEL_WITHIN_DEG = 0.5
"""A load that tips less than this is called level."""

TIPS_FAR_DEG = 5.0
"""A load that tips more than this can slide on its rigging: careful."""

NO_LENGTH_M = 1e-9
"""A length under a nanometre is what rounding leaves of none, and is written as none."""

LINK_PITCH_IN_BARS = 3.0
"""Pitch of a lifting-chain link in bar diameters (EN 818-2, from memory)."""


@dataclass(frozen=True)
class _Load:
    """The inputs as numbers: picks, leg lengths [m], balance point [m], weight [N], ratings [kg] or None."""

    names: tuple[str, ...]
    picks: tuple[Vector, ...]
    lengths_m: tuple[float, ...]
    ratings_kg: tuple[float | None, ...]
    centre: Vector
    weight_n: float

    def with_lengths(self, lengths_m: tuple[float, ...]) -> list[Rest]:
        """Where the load would rest on legs of other lengths, upright places only."""
        places = resting_places(self.picks, lengths_m, self.centre)
        return [rest for rest in places if rest.hook_is_over(self.picks, self.centre)]


@dataclass(frozen=True)
class _Found:
    """The load at rest: pulls [N], angles from the horizontal [deg] or None if slack, tip [deg] and lean."""

    rest: Rest
    up: Vector
    tensions_n: tuple[float, ...]
    angles_deg: tuple[float | None, ...]
    tilt_deg: float
    lean: str

    @property
    def lowest_angle_deg(self) -> float:
        """Smallest angle of a tight leg from the horizontal."""
        return min(angle for angle in self.angles_deg if angle is not None)


@dataclass(frozen=True)
class _Springy:
    """Pulls on springy legs [N], and the hardest pull when one leg is one link shorter, and which leg that is."""

    tensions_n: tuple[float, ...] | None
    hardest_n: float | None
    short_leg: int | None
    pulling_leg: int | None


def _read(given: Given) -> _Load:
    rows = given.rows("picks")
    return _Load(
        tuple(row.text("label") or str(number) for number, row in enumerate(rows, 1)),
        tuple(row.point("at") for row in rows),
        tuple(row.si("length") for row in rows),
        tuple(row.si("rating") if row.has("rating") else None for row in rows),
        given.point("centre"),
        given.si("load") * STANDARD_GRAVITY_M_PER_S2,
    )


def _out_of_reach(given: Given, load: _Load, say: Say) -> BadInput:
    """The refusal for legs that cannot meet in one hook, naming the pair that is farthest from meeting."""
    shortest = None
    for i in range(len(load.picks)):
        for j in range(i):
            gap = size(minus(load.picks[i], load.picks[j])) - load.lengths_m[i] - load.lengths_m[j]
            if shortest is None or gap > shortest[0]:
                shortest = (gap, i, j)
    if shortest is not None and shortest[0] >= -1e-9:
        _gap, i, j = shortest
        return given.rows("picks")[i].refuse(
            "length",
            f"is too short: legs {load.names[j]} and {load.names[i]} cannot both reach one hook over the load. Their "
            f"picks are {say.length(size(minus(load.picks[i], load.picks[j])))} apart. Give longer legs.",
        )
    return given.refuse("picks", "cannot all reach one hook: some legs are too short. Give longer legs.")


def _found(load: _Load, rest: Rest) -> _Found:
    up = rest.up(load.centre)
    tensions = rest.tensions_n(load.weight_n, load.lengths_m)
    angles: list[float | None] = []
    for pick, length, tension in zip(load.picks, load.lengths_m, tensions, strict=True):
        sine = dot(minus(rest.hook, pick), up) / length
        angles.append(math.degrees(math.asin(max(-1.0, min(1.0, sine)))) if tension > 0 else None)
    tilt = math.degrees(math.atan2(math.hypot(up[0], up[1]), up[2]))
    return _Found(rest, up, tensions, tuple(angles), tilt, _lean(up, tilt))


def _lean(up: Vector, tilt_deg: float) -> str:
    """Which side goes low: right, left, back, front or a corner; empty if level."""
    if tilt_deg < LEVEL_WITHIN_DEG:
        return ""
    right, back = -up[0], -up[1]
    words = []
    if abs(right) > 0.4 * abs(back):
        words.append("right" if right > 0 else "left")
    if abs(back) > 0.4 * abs(right):
        words.append("back" if back > 0 else "front")
    return " and ".join(words)


def chain_stiffness_n(bar_m: float) -> float:
    """Pull per unit of stretch, EA [N], of chain of bar diameter [m]: (54.5 - 0.025 d) GPa on both sides of the link.

    DNV-OS-E301 (2010), studless R4, measured on 60 to 200 mm mooring chain and carried down to shop sizes.
    """
    constant = number(table("chain-modulus").one(chain="studless_r4", quantity="modulus_constant"))
    fall = number(table("chain-modulus").one(chain="studless_r4", quantity="modulus_fall_per_mm"))
    return (constant - fall * bar_m * 1000.0) * 1e9 * 2 * math.pi / 4 * bar_m**2


def _springy(load: _Load, rest: Rest, bar_m: float) -> _Springy:
    """Share the load by stretch; then shorten each leg by a link in turn, from where it hangs with none shortened."""
    stretch_n = chain_stiffness_n(bar_m)
    stiffness = [stretch_n / length for length in load.lengths_m]
    even = springy_rest(load.picks, load.lengths_m, load.centre, load.weight_n, stiffness, rest.hook)
    start = even.hook if even else rest.hook
    hardest: tuple[float, int, int] | None = None
    for short in range(len(load.picks)):
        lengths = tuple(
            length - (LINK_PITCH_IN_BARS * bar_m if leg == short else 0.0)
            for leg, length in enumerate(load.lengths_m)
        )
        if not _reach_each_other(load.picks, lengths):
            continue
        moved = springy_rest(load.picks, lengths, load.centre, load.weight_n, stiffness, start)
        if not moved:
            continue
        pull = max(moved.tensions_n)
        if hardest is None or pull > hardest[0]:
            hardest = (pull, short, moved.tensions_n.index(pull))
    tensions = even.tensions_n if even else None
    if hardest is None:
        return _Springy(tensions, None, None, None)
    return _Springy(tensions, *hardest)


def _reach_each_other(picks: Sequence[Vector], lengths_m: Sequence[float]) -> bool:
    """Whether any two of the legs can meet: all have a length left, and none two picks stand further apart than it."""
    return min(lengths_m) > 0 and all(
        math.dist(one[0], other[0]) < one[1] + other[1]
        for one, other in combinations(list(zip(picks, lengths_m, strict=True)), 2)
    )


def _level(load: _Load, found: _Found) -> tuple[tuple[float, ...] | None, str]:
    """Leg lengths that hang it level, and the words where there are none."""
    if found.tilt_deg < LEVEL_WITHIN_DEG:
        return load.lengths_m, "it hangs level as it is"
    lengths = level_lengths(load.picks, load.lengths_m, load.centre)
    if lengths is None:
        return None, "a leg is too short to hold the hook over the balance point"
    level = [rest for rest in load.with_lengths(lengths) if _found(load, rest).tilt_deg < LEVEL_WITHIN_DEG]
    if not level:
        return None, "no lengths will: the balance point is not between the picks, or not under them"
    return lengths, ""


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    load = _read(given)
    places = resting_places(load.picks, load.lengths_m, load.centre)
    if not places:
        raise _out_of_reach(given, load, say)
    upright = [rest for rest in places if rest.hook_is_over(load.picks, load.centre)]
    if not upright:
        return _turns_over(load, places[0], say)
    found = _found(load, upright[0])
    springy = _springy(load, found.rest, given.si("chain_size"))
    lengths, no_level = _level(load, found)
    use = _use(load, found)
    can_roll = places[0] is not found.rest
    headroom = max(dot(minus(found.rest.hook, pick), found.up) for pick in load.picks)
    return Answer(
        verdict=_verdict(found, use, can_roll),
        headline=_headline(say, load, found, use),
        big="highest_tension",
        results={
            "tensions": found.tensions_n,
            "highest_tension": max(found.tensions_n),
            "taut": [tension > 0 for tension in found.tensions_n],
            "tilt": found.tilt_deg,
            "low_side": found.lean or "level",
            "hook": found.rest.hook,
            "leg_angles": found.angles_deg,
            "lowest_leg_angle": found.lowest_angle_deg,
            "stable": not found.rest.free_to_roll,
            "headroom": headroom,
            "depth": found.rest.depth_m,
            "use_percent": use,
            "level_lengths": lengths,
            "springy_tensions": springy.tensions_n,
            "short_link_tension": springy.hardest_n,
        },
        shown=_shown(say, load, found, springy, use, lengths, no_level),
        steps=_steps(say, load, found, springy, headroom),
        cautions=_cautions(say, load, found, upright, springy, use, can_roll, lengths, no_level),
        figure=_figure(load, found, use, say),
    )


def _use(load: _Load, found: _Found) -> tuple[float, ...] | None:
    """Part of each leg's rating used; None unless every leg has a rating."""
    if any(rating is None for rating in load.ratings_kg):
        return None
    return tuple(
        tension / STANDARD_GRAVITY_M_PER_S2 / rating
        for tension, rating in zip(found.tensions_n, load.ratings_kg, strict=True)
        if rating is not None
    )


def _verdict(found: _Found, use: tuple[float, ...] | None, can_roll: bool) -> Verdict:
    verdicts: list[Verdict] = ["ok"]
    if found.lowest_angle_deg < LOWEST_ANGLE_DEG - 1e-9 or (use and max(use) > 1.0 + 1e-12):
        verdicts.append("stop")
    slack = any(tension <= 0 for tension in found.tensions_n)
    careful = found.lowest_angle_deg < CAREFUL_ANGLE_DEG - 1e-9 or found.tilt_deg > TIPS_FAR_DEG
    if careful or slack or can_roll or found.rest.free_to_roll or use is None:
        verdicts.append("caution")
    return worst(*verdicts)


def _tidy(length_m: float) -> float:
    """The length, or none where only rounding is left of it."""
    return 0.0 if abs(length_m) < NO_LENGTH_M else length_m


def _names(names: list[str]) -> str:
    if len(names) == 1:
        return f"Leg {names[0]}"
    return "Legs " + ", ".join(names[:-1]) + " and " + names[-1]


def _headline(say: Say, load: _Load, found: _Found, use: tuple[float, ...] | None) -> str:
    legs = range(len(load.names))
    tight = [load.names[leg] for leg in legs if found.tensions_n[leg] > 0]
    slack = [leg for leg in legs if found.tensions_n[leg] <= 0]
    straight = [load.names[leg] for leg in slack if leg in found.rest.touching]
    loose = [load.names[leg] for leg in slack if leg not in found.rest.touching]
    hardest = max(found.tensions_n)
    who = load.names[found.tensions_n.index(hardest)]
    pull = f"leg {who} pulls hardest, {say.force(hardest, 'up')}"
    first = f"{_names(tight)} {'carries' if len(tight) == 1 else 'carry'} it: {pull}."
    tips = f"It tips {found.tilt_deg:.1f}°, {found.lean} low." if found.lean else "It hangs level."
    words = [first, tips]
    if straight:
        words.append(f"{_names(straight)} may take a share or none: count on none.")
    if loose:
        words.append(f"{_names(loose)} {'does' if len(loose) == 1 else 'do'} nothing.")
    if found.lowest_angle_deg < LOWEST_ANGLE_DEG - 1e-9:
        words.append("A leg lies under 30° from the horizontal: do not lift like this.")
    elif use and max(use) > 1.0 + 1e-12:
        words.append("That is over a leg's rating: do not lift.")
    return " ".join(words)


_KEYS_OF_A_HANGING_LOAD = (
    "tensions", "highest_tension", "taut", "tilt", "low_side", "hook", "leg_angles", "lowest_leg_angle", "headroom",
    "depth", "use_percent", "level_lengths", "springy_tensions", "short_link_tension",
)  # fmt: skip


def _turns_over(load: _Load, rest: Rest, say: Say) -> Answer:
    """No resting place with the hook over the picks: the load is top-heavy and rolls over as it leaves the floor."""
    return Answer(
        verdict="stop",
        headline="It will roll over. The balance point is too high, or too far to one side, for these picks: nothing "
        "holds it upright. Lift from higher picks, or from picks on every side of the balance point.",
        big="highest_tension",
        results={"stable": False},
        shown=dict.fromkeys(_KEYS_OF_A_HANGING_LOAD, "it rolls over first"),
        steps=(
            Step(
                "Resting places with the hook over the picks",
                "balance of forces with no leg pushing",
                f"{len(load.picks)} legs",
                "none",
            ),
            Step(
                "Where it would come to rest",
                "balance point as low as the legs let it",
                f"turned by {_found(load, rest).tilt_deg:.0f}°",
                f"balance point {say.length(rest.depth_m)} under the hook",
            ),
        ),
        cautions=(
            Caution("Do not lift it like this. Top-heavy loads turn over in a blink, and nobody outruns one.", "prohibition"),
            Caution("Picks above the balance point, or three and more well around it, hold a load upright.", "mandatory"),
        ),
    )  # fmt: skip


def _shown(
    say: Say, load: _Load, found: _Found, springy: _Springy, use: tuple[float, ...] | None,
    lengths: tuple[float, ...] | None, no_level: str,
) -> dict[str, str | tuple[str, ...]]:  # fmt: skip
    def legs(texts: list[str]) -> tuple[str, ...]:
        return tuple(f"leg {name}: {text}" for name, text in zip(load.names, texts, strict=True))

    shown: dict[str, str | tuple[str, ...]] = {
        "tensions": legs([say.force(t, "up") if t > 0 else "slack" for t in found.tensions_n]),
        "taut": legs(["tight" if t > 0 else "slack" for t in found.tensions_n]),
        "leg_angles": legs(["slack" if a is None else f"{a:.1f}°" for a in found.angles_deg]),
        "hook": ", ".join(
            f"{say.length(_tidy(side))} {word}"
            for side, word in zip(found.rest.hook, ("right", "back", "up"), strict=True)
        ),
    }  # fmt: skip
    if use is None:
        shown["use_percent"] = "give every leg's rating to find it"
    else:
        shown["use_percent"] = legs([f"{number_text(part * 100, 3, 'up')}%" for part in use])
    shown["level_lengths"] = no_level or legs([say.length(length) for length in lengths or ()])
    not_found = "not found for these lengths"
    if springy.tensions_n is None:
        shown["springy_tensions"] = not_found
    else:
        shown["springy_tensions"] = legs(
            [say.force(t, "up") if t > 0 else "slack" for t in springy.tensions_n]
        )
    if springy.hardest_n is None:
        shown["short_link_tension"] = not_found
    return shown


def _steps(say: Say, load: _Load, found: _Found, springy: _Springy, headroom: float) -> tuple[Step, ...]:
    rest = found.rest
    steps = [
        Step(
            "Hook over the balance point",
            "the point that every leg reaches and that is farthest from the balance point",
            f"{len(load.picks)} legs, one, two and three tight tried",
            f"{say.length(rest.depth_m)} from balance point to hook",
        ),
        Step(
            "How far it tips",
            "angle between the load's own upright and the line from balance point to hook",
            "hook "
            + ", ".join(
                f"{say.one(_tidy(side), 'length')} {word}"
                for side, word in zip(minus(rest.hook, load.centre), ("right", "back", "up"), strict=True)
            )
            + " of it",
            f"{found.tilt_deg:.1f}°" + (f", {found.lean} low" if found.lean else ""),
        ),
    ]
    for name, share, length, tension in zip(
        load.names, rest.shares, load.lengths_m, found.tensions_n, strict=True
    ):
        if tension > 0:
            steps.append(
                Step(
                    f"Pull in leg {name}",
                    "weight × share × leg length / depth",
                    f"{say.one(load.weight_n, 'force')} × {share:.4f} × {say.one(length, 'length')} / "
                    f"{say.one(rest.depth_m, 'length')}",
                    say.force(tension, "up"),
                )
            )
    steps.append(
        Step("Hook over the lowest pick", "measured plumb, as it hangs", "", say.length(headroom, "up"))
    )
    if springy.tensions_n is not None and len(load.picks) > 2:
        steps.append(
            Step(
                "If the legs stretch like chain",
                "balance on springs of stiffness EA / length",
                ", ".join(load.names),
                "; ".join(say.force(tension, "up") for tension in springy.tensions_n),
            )
        )
    if springy.hardest_n is not None and springy.short_leg is not None and springy.pulling_leg is not None:
        steps.append(
            Step(
                "If one leg is one link shorter",
                "each leg in turn, the hardest pull of all",
                f"leg {load.names[springy.short_leg]} short, leg {load.names[springy.pulling_leg]} pulls",
                say.force(springy.hardest_n, "up"),
            )
        )
    return tuple(steps)


def _cautions(
    say: Say, load: _Load, found: _Found, upright: list[Rest], springy: _Springy, use: tuple[float, ...] | None,
    can_roll: bool, lengths: tuple[float, ...] | None, no_level: str,
) -> tuple[Caution, ...]:  # fmt: skip
    cautions: list[Caution] = []
    if found.lowest_angle_deg < LOWEST_ANGLE_DEG - 1e-9:
        cautions.append(
            Caution(
                "No sling goes under 30° from the horizontal. Use longer legs or a spreader.", "prohibition"
            )
        )
    elif found.lowest_angle_deg < CAREFUL_ANGLE_DEG - 1e-9:
        cautions.append(
            Caution("A leg lies between 30° and 45°: a small change of height changes its pull a lot.")
        )
    if use and max(use) > 1.0 + 1e-12:
        cautions.append(Caution("A leg is over its rating. Do not lift.", "prohibition"))
    if can_roll:
        cautions.append(
            Caution(
                "Turned over, this load would hang lower still. A knock can roll it. Rig it from higher picks."
            )
        )
    if found.rest.free_to_roll:
        cautions.append(
            Caution("The balance point is level with the picks: nothing stops the load rolling about their line. Drawn upright.")
        )  # fmt: skip
    if len(upright) > 1:
        cautions.append(
            Caution("It can also come to rest another way, on other legs, and rock from one to the other.")
        )
    cautions += _tip_cautions(say, load, found, lengths, no_level)
    if any(tension <= 0 for tension in found.tensions_n) and len(load.picks) > 2:
        cautions.append(
            Caution(
                "Slack legs carry nothing. Rate the tight ones for the whole load, or even the lengths out."
            )
        )
    if len(found.rest.touching) > 3:
        cautions.append(
            Caution("More legs are just straight than a stiff load needs. The pulls shown are the worst way to share.", "note")
        )  # fmt: skip
    if springy.hardest_n is not None and springy.hardest_n > 1.05 * max(found.tensions_n):
        cautions.append(
            Caution(f"With one leg one link short the hardest pull becomes {say.force(springy.hardest_n, 'up')}. Count the links.")
        )  # fmt: skip
    cautions.append(
        Caution(
            "Take the slack up, stop, and look before the load leaves the floor. Stand clear of the side that swings. "
            "The tag on each leg governs.",
            "mandatory",
        )
    )
    return tuple(cautions)


def _tip_cautions(
    say: Say, load: _Load, found: _Found, lengths: tuple[float, ...] | None, no_level: str
) -> list[Caution]:
    if not found.lean:
        return []
    swings = f"As it leaves the floor it tips {found.tilt_deg:.1f}° with {found.lean} low and swings to stand under the hook."
    cautions = [Caution(swings, "warning" if found.tilt_deg > TIPS_FAR_DEG else "note")]
    if lengths is not None:
        changes = "; ".join(
            f"leg {name} to {say.length(length)}"
            for name, length, now in zip(load.names, lengths, load.lengths_m, strict=True)
            if now - length > 1e-6
        )
        cautions.append(
            Caution(
                f"To hang it level, shorten {changes}. The hook then stands over the balance point.", "note"
            )
        )
    else:
        cautions.append(Caution(f"Will other lengths level it? Here {no_level}.", "note"))
    return cautions


def _figure(load: _Load, found: _Found, use: tuple[float, ...] | None, say: Say) -> Figure:
    legs = []
    for i, (pick, tension, angle) in enumerate(
        zip(load.picks, found.tensions_n, found.angles_deg, strict=True)
    ):
        kind = "leg"
        if angle is None:
            kind = "leg-slack"
        elif angle < LOWEST_ANGLE_DEG - 1e-9 or (use and use[i] > 1.0 + 1e-12):
            kind = "leg-stop"
        elif angle < CAREFUL_ANGLE_DEG - 1e-9:
            kind = "leg-careful"
        name = str(i + 1) if load.names[i] == str(i + 1) else f"{i + 1} ({load.names[i]})"
        legs.append(DrawnLeg(pick, tension, kind, name))
    return hanging_figure(legs, found.rest.hook, load.centre, found.up, found.tilt_deg, found.lean, say)


_PLACE = "From any corner you choose: right, back, up, with the load level."

WORKSHEET = Worksheet(
    name="hanging-load",
    title="Which legs carry it, and how will it hang?",
    summary="Pull in each leg, tip and headroom of a stiff load on one hook, with legs of any lengths.",
    inputs=(
        Input("load", "Weight of the load", "quantity", "weight", above=0, at_most=2_000_000,
              help="The high figure of your reckoning, fluids and rigging too."),
        Input("centre", "Balance point of the load", "point", "length", at_least=-4000, at_most=4000,
              help=_PLACE),
        Input("picks", "Legs", "rows", at_least=2, at_most=8, help="One row for each leg.", columns=(
            Input("label", "Name", "text", required=False, help="Your own word for it; else its number."),
            Input("at", "Where it is fixed", "point", "length", at_least=-4000, at_most=4000, help=_PLACE),
            Input("length", "Length of the leg", "quantity", "length", above=0, at_most=4000,
                  help="From the bearing point of the hook to the pick, pulled straight."),
            Input("rating", "Rating of the leg", "quantity", "weight", above=0, at_most=2_000_000, required=False,
                  help="Straight pull, of its weakest part, from the tag."),
        )),
        Input("chain_size", "Size of the chain", "quantity", "length", above=0, at_most=4, default="10 mm",
              help="Only for the stretch and for how long one link is."),
    ),
    results=(
        Result("highest_tension", "Hardest pull in a leg", "force", rounding="up"),
        Result("tensions", "Pull in each leg", "force", rounding="up"),
        Result("taut", "Tight or slack"),
        Result("tilt", "How far it tips", "angle"),
        Result("low_side", "Side that goes low"),
        Result("lowest_leg_angle", "Lowest leg angle from the horizontal", "angle", rounding="down"),
        Result("leg_angles", "Leg angles from the horizontal", "angle"),
        Result("headroom", "Hook over the lowest pick", "length", rounding="up"),
        Result("depth", "Balance point under the hook", "length"),
        Result("hook", "Where the hook stands over the load, in the load's own axes", "length"),
        Result("stable", "Stays as it hangs"),
        Result("use_percent", "Part of each leg's rating used", "fraction", rounding="up"),
        Result("level_lengths", "Leg lengths that hang it level", "length"),
        Result("springy_tensions", "Pulls if the legs stretch like chain", "force", rounding="up"),
        Result("short_link_tension", "Hardest pull with one leg one link short", "force", rounding="up"),
    ),
    compute=compute,
    example={
        "load": "1,450 lb",
        "centre": ["16 in", "9 in", "10 in"],
        "picks": [
            {"label": "flywheel left", "at": ["0 in", "0 in", "24 in"], "length": "42 in", "rating": "2,100 lb"},
            {"label": "flywheel right", "at": ["0 in", "18 in", "24 in"], "length": "42 in", "rating": "2,100 lb"},
            {"label": "front eye", "at": ["38 in", "9 in", "27 in"], "length": "45 in", "rating": "2,100 lb"},
        ],
        "chain_size": "7/32 in",
    },
    example_story="The yard lifts a marine diesel out of a hull by its three eyes; the flywheel end is the heavy one.",
    citations=(
        Citation("osha-sling-guidance", "general text on sling angles"),
        Citation("baker-haynes", "ch. 3 and 5, balance of a body in space"),
        Citation("dnv-os-e301", "studless R4 chain, modulus"),
    ),
)  # fmt: skip
