"""The drawings that explain: each is computed from the same functions as the worksheets, and named for the pages."""

from __future__ import annotations

from collections.abc import Callable

from calc.figures.heat_lessons import HEAT_LESSONS
from calc.figures.judging_lessons import JUDGING_LESSONS
from calc.figures.lifting_lessons import LIFTING_LESSONS
from calc.worksheet import Figure, Say

LESSONS: dict[str, Callable[[Say], Figure]] = {**LIFTING_LESSONS, **JUDGING_LESSONS, **HEAT_LESSONS}
"""Drawings of the explanation pages, by name."""

__all__ = ["LESSONS"]
