"""The pocket book, one sheet folded to eight pages, and blank tags: the same tables as on the wall, small."""

from __future__ import annotations

from dataclasses import replace

from build_scripts.paper import wall
from build_scripts.paper.sheets import Grid, Panel, Sheet, Tag
from build_scripts.wording import language
from calc.lifting.leg_geometry import LOWEST_ANGLE_DEG
from calc.quantities import plain_number
from calc.tables import Row
from calc.words.facts import Fact, Number
from calc.words.writer import Spans, Writer

SCOPES = ("paper/cards", "paper/sheets")
LARGEST_CLIPS_IN = 1.0
"""The thickest rope in the pocket book [in]."""
POCKET_ANGLES = (90, 75, 60, 55, 50, 45, 40, 35, 30)
POCKET_LIMITS = 10
"""How many rows of the chart of limits the pocket book has: those of hook, ring, chain and shackle, which stand first."""


def _say(code: str, **facts: Fact) -> Spans:
    return Writer("us", language(), SCOPES).say(code, facts)


def _small_clips() -> tuple[Grid, list[Row]]:
    """The clips of thin rope, without the column of clips of other material, for which a pocket has no room."""
    grid, rows = wall.clips_grid()
    sizes = [str(line[0][0]).removesuffix(" in") for line in grid.rows]
    lines = tuple(
        (line[0], line[1], *line[3:])
        for size, line in zip(sizes, grid.rows, strict=True)
        if plain_number(size) <= LARGEST_CLIPS_IN
    )
    heads = (grid.heads[0], grid.heads[1], *grid.heads[3:])
    kept = [
        row
        for row in rows
        if plain_number(row["size_in"]) <= LARGEST_CLIPS_IN and row["quantity"] != "clips_other_material"
    ]
    return Grid(grid.title, heads, lines), kept


def _small_heat() -> tuple[Grid, list[Row]]:
    """What heat takes off a chain, with heads that are short enough for a pocket."""
    grid, rows = wall.chain_heat_grid()
    heads = (
        grid.heads[0],
        *(
            _say(f"pocket-heat-{when}", grade=grade)
            for grade in wall.LIFTING_GRADES
            for when in ("hot", "after")
        ),
    )
    return replace(grid, heads=heads), rows


def pocket_book() -> Sheet:
    """Eight panels: what they are, chain to tie down, chain to lift, angles and hitches, two legs, clips, limits and heat, sources."""
    tie_down, tie_rows = wall.tie_down_grid()
    one_leg, leg_rows = wall.one_leg_grid()
    may_lift, may_rows = wall.may_lift_grid()
    two_legs, two_rows = wall.two_leg_grid()
    clips, clip_rows = _small_clips()
    limits, limit_rows = wall.limits_grid()
    choke, choke_rows = wall.choke_grid()
    heat, heat_rows = _small_heat()
    rows = [
        *choke_rows,
        *heat_rows,
        *tie_rows,
        *leg_rows,
        *may_rows,
        *two_rows,
        *clip_rows,
        *limit_rows[:POCKET_LIMITS],
    ]
    dash = wall.said_where_empty
    panels = (
        Panel(_say("pocket-book"), lines=tuple(_say(f"pocket-fold-{n}") for n in (1, 2, 3, 4))),
        Panel(
            _say("pocket-tie-down"), (dash(tie_down),), tuple(_say(f"pocket-tie-down-{n}") for n in (1, 2))
        ),
        Panel(
            _say("pocket-may-lift"),
            (dash(may_lift), dash(_first_sizes(one_leg))),
            (_say("pocket-may-lift.never"),),
        ),
        Panel(
            _say("pocket-angles"),
            (wall.angle_grid(POCKET_ANGLES), choke),
            (
                _say("pocket-angles.basket"),
                _say("pocket-angles.never", least=Number(LOWEST_ANGLE_DEG)),
            ),
        ),
        Panel(_say("pocket-lift"), tuple(dash(part) for part in _by_grade(_first_sizes(two_legs)))),
        Panel(_say("pocket-clips"), (dash(clips),), (_say("pocket-clips.saddle"),)),
        Panel(
            _say("pocket-limits"),
            (replace(limits, rows=limits.rows[:POCKET_LIMITS]), dash(heat)),
            (_say("pocket-limits.never"),),
        ),
        Panel(_say("pocket-sources"), lines=(_say("pocket-sources.more"),)),
    )
    return Sheet(
        "pocket-book",
        "cards",
        _say("pocket-book"),
        "about/on-the-wall",
        (),
        wall.cited_once(rows),
        letters_pt=7.0,
        panels=panels,
    )


def _by_grade(grid: Grid) -> tuple[Grid, ...]:
    """The grid of two legs as one for each grade: a pocket is narrow."""
    each = (len(grid.heads) - 1) // len(wall.LIFTING_GRADES)
    return tuple(
        replace(
            grid,
            title=grid.title if start == 1 else [],
            heads=(grid.heads[0], *grid.heads[start : start + each]),
            rows=tuple((row[0], *row[start : start + each]) for row in grid.rows),
        )
        for start in range(1, len(grid.heads), each)
    )


_POCKET_SIZES = 7
"""How many sizes of lifting chain the pocket book has: up to 3/4 in."""


def _first_sizes(grid: Grid) -> Grid:
    return replace(grid, rows=grid.rows[:_POCKET_SIZES])


def blank_tags() -> Sheet:
    """Tags to write on by hand: two that say Do not use, and one that repeats what the maker's tag says."""
    stop = Tag(
        _say("tag-do-not-use"),
        tuple(_say(f"tag-line-{name}") for name in ("part", "found", "by")),
        _say("tag-do-not-use.foot"),
        stop=True,
    )
    own = Tag(
        _say("tag-inspected"),
        tuple(_say(f"tag-line-{name}") for name in ("number", "mark", "rating", "dates")),
        _say("tag-inspected.foot"),
        stop=False,
    )
    return Sheet(
        "blank-tags",
        "tags",
        _say("blank-tags"),
        "about/on-the-wall",
        (_say("blank-tags.how"),),
        (),
        tags=(stop, stop, own),
    )


CARDS = (pocket_book, blank_tags)
"""What is folded or cut out, in the order of use."""

__all__ = ["CARDS", "blank_tags", "pocket_book"]
