"""Between two shapes: a worksheet declared in the old vocabulary (calc.worksheet), described like a new one. Goes when the
last of them is moved.
"""

from __future__ import annotations

from typing import Any

from calc import declaration, describing
from calc import inputs as new
from calc.describing import Asked, Described, Named
from calc.worksheet import Input, Worksheet

KINDS = {
    "quantity": new.QuantityInput, "number": new.NumberInput, "count": new.CountInput, "choice": new.ChoiceInput,
    "text": new.TextInput, "flag": new.FlagInput, "point": new.PointInput, "numbers": new.NumbersInput, "rows": new.RowsInput,
    "file": new.FileInput,
}  # fmt: skip


def described(sheet: Any, language: str = "en") -> Described:
    """A worksheet of either shape with its words."""
    if isinstance(sheet, declaration.Worksheet):
        return describing.describe(sheet, language)
    return _old(sheet)


def _old(sheet: Worksheet) -> Described:
    return Described(
        sheet.name, sheet.room, sheet.rates, sheet.title, [sheet.summary], [sheet.example_story],
        tuple(_asked(one) for one in sheet.inputs),
        tuple(
            Named(
                declaration.Result(r.name, r.dimension, "plain", r.unit, r.unit_si, r.digits, tuple(k for k, _ in r.columns)),
                [r.label], tuple((key, [head]) for key, head in r.columns),
            )
            for r in sheet.results
        ),
        sheet.example,
    )  # fmt: skip


def _asked(one: Input) -> Asked:
    declared = KINDS[one.kind](
        one.name, one.required, one.default, one.shown_when, one.dimension, one.unit, one.unit_si,
        new.Bounds(one.above, one.at_least, one.below, one.at_most), tuple(c.value for c in one.choices),
        tuple(_asked(column).declared for column in one.columns), one.long, one.several,
    )  # fmt: skip
    first = one.label.split(",", maxsplit=1)[0].split("(", maxsplit=1)[0].strip()
    row = first[:-1] if first.endswith("s") and not first.endswith("ss") else first
    return Asked(
        declared, [one.label], [one.help] if one.help else [], one.accepted(), row,
        tuple((c.value, [c.label]) for c in one.choices), tuple(_asked(column) for column in one.columns),
    )  # fmt: skip
