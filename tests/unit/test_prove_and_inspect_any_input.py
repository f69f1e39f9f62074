"""Any input to the proving and inspecting sheets is answered or refused by name: no other error, no number without bound."""

import json
import math
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from calc.answering import Refused, answer, described
from tests.saying import one_reading

SHEETS = (
    "what-is-it", "hook-check", "chain-check", "shackle-check", "sling-check", "ram-force", "gauge-check", "drop-load", "pull-trial",
    "trial-log",
)  # fmt: skip
QUANTITIES = [
    "",
    "0",
    "1",
    "-3",
    "0.375 in",
    "13 mm",
    "2.7 kg",
    "4,100 lb",
    "3 kN",
    "210 bar",
    "9 min",
    "1e9",
    "1e-9 m",
    "12°",
    "7 %",
    "x",
    "yes",
]


def raw_value(declared: Any) -> st.SearchStrategy[Any]:
    if declared.kind == "choice":
        return st.sampled_from([*declared.choices, "", "nonsense"])
    if declared.kind == "flag":
        return st.sampled_from(["yes", "no", "", "perhaps"])
    if declared.kind == "rows":
        row = st.fixed_dictionaries({column.name: raw_value(column) for column in declared.columns})
        return st.lists(row, max_size=9)
    if declared.kind == "file":
        return st.just("")
    if declared.kind == "text":
        return st.sampled_from(
            ["", "3/8", "10 mm", "80", "G70 3/8", "none", "weld", "2026-11-23", "\u00e9\u00e9", "8 T"]
        )
    if declared.kind == "count":
        return st.sampled_from(["", "0", "1", "2", "20", "1.5", "-1", "many"])
    return st.sampled_from(QUANTITIES)


@pytest.mark.parametrize("name", SHEETS)
@settings(max_examples=60)
@given(data=st.data())
def test_answered_or_refused(name: str, data: st.DataObject) -> None:
    sheet = described(name)
    asked = [one.declared for one in sheet.inputs]
    inputs = dict(sheet.example)
    changed = data.draw(
        st.lists(st.sampled_from([declared.name for declared in asked]), max_size=4, unique=True)
    )
    for declared in asked:
        if declared.name in changed:
            inputs[declared.name] = data.draw(raw_value(declared))
    try:
        record = answer(name, inputs, data.draw(st.sampled_from(["us", "si"])))
    except Refused as refusal:
        assert all(error.input and error.message for error in refusal.errors)
        return
    text = json.dumps(record, allow_nan=False)
    assert "nan" not in record["headline"].lower().split()
    for result in record["results"].values():
        values = result["value"] if isinstance(result["value"], list) else [result["value"]]
        assert all(math.isfinite(value) for value in values if isinstance(value, float))
    assert record["verdict"] in ("ok", "caution", "stop", "unknown")
    assert record["figure"] is None or "nan" not in record["figure"]["svg"]
    assert text


@settings(max_examples=400)
@example(log=[(0.0, 0.0), (0.0, 0.0), (0.0, 0.0), (1.0, 0.0), (1e-202, 1.0), (2.0, 1.0)])
@example(log=[(0.0, 0.0), (0.0, 0.0), (0.0, 0.0), (1.0, 2.3e-308), (2.0, 0.0), (3.0, 1.0)])
@given(log=st.lists(st.tuples(st.floats(0, 50), st.floats(-5, 5)), min_size=6, max_size=14))
def test_any_log_is_answered_or_refused(log: list[tuple[float, float]]) -> None:
    try:
        record = answer(
            "trial-log",
            {
                "readings": [
                    {"force": f"{one_reading(f)} kN", "gap": f"{one_reading(g)} mm", "time": f"{n % 3} min"}
                    for n, (f, g) in enumerate(log)
                ]
            },
            "si",
        )
    except Refused:
        return
    json.dumps(record, allow_nan=False)
