"""How the cost of an answer grows with what is asked, and the book with its pages: printed by the bench.

Answers are timed in this Python, by the processor's clock, so that a busy machine does not count; the page's Python takes
some three times as long. The parts of the site are counted, not timed.
"""

from __future__ import annotations

import base64
import csv
import math
import struct
import time
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from calc.answering import answer, worksheet

LEGS = (2, 3, 4, 6, 8)
ROWS = (10, 100, 1000, 4999)
PARTS = (1, 10, 100)
TRIANGLES = (100, 10_000, 200_000)
"""Nearly the largest file that is taken."""
AT_LEAST_S = 0.3
"""An answer is asked again until so much time has been spent on it."""


def answer_ms(name: str, inputs: Mapping[str, Any]) -> float:
    """The processor's time of one answer [ms]."""
    answer(name, inputs, "us")
    begun, times = time.process_time(), 0
    while times == 0 or time.process_time() - begun < AT_LEAST_S:
        answer(name, inputs, "us")
        times += 1
    return 1000 * (time.process_time() - begun) / times


def legs(count: int) -> dict[str, Any]:
    """A load hung on so many legs in a ring, each a little longer than the last."""
    turn = 2 * math.pi / count
    picks = [
        {
            "label": f"eye {number + 1}",
            "at": [
                f"{30 * math.cos(turn * number):.1f} in",
                f"{30 * math.sin(turn * number):.1f} in",
                "24 in",
            ],
            "length": f"{70 + number / 4} in",
            "rating": "2,100 lb",
        }
        for number in range(count)
    ]
    return dict(worksheet("hanging-load").example) | {"centre": ["1 in", "2 in", "9 in"], "picks": picks}


def log(rows: int) -> dict[str, Any]:
    """A pasted log of a pull up, a hold and a way down, of so many rows."""
    head = "Force (lb)\tGap (in)\tThroat (in)\tTime (min)"
    up = [(2900 * step / (rows - 1), 2 + 0.0097 * step / (rows - 1), step / 60) for step in range(rows - 3)]
    last = rows / 60
    lines = [f"{force:.0f}\t{gap:.5f}\t\t{at:.3f}" for force, gap, at in up]
    lines[0] = "0\t2.0000\t1.160\t0"
    ends = (
        f"2880\t2.0097\t\t{last:.3f}",
        f"2870\t2.0097\t\t{last + 11:.3f}",
        f"0\t2.0001\t1.161\t{last + 12:.3f}",
    )
    return dict(worksheet("trial-log").example) | {"pasted": "\n".join([head, *lines, *ends])}


def parts(count: int) -> dict[str, Any]:
    """A load of so many parts."""
    first = dict(worksheet("load-weight").example)["parts"]
    return {"parts": [first[number % len(first)] | {"minus": "no"} for number in range(count)]}


def ball(triangles: int) -> bytes:
    """A closed ball of about so many triangles, as a binary STL file."""
    around = max(3, round(math.sqrt(triangles / 2)))
    rings = max(2, triangles // (2 * around))

    def point(ring: int, step: int) -> tuple[float, float, float]:
        if ring in {0, rings}:
            return (0.0, 0.0, 10.0 if ring == 0 else -10.0)
        down, turn = math.pi * ring / rings, 2 * math.pi * (step % around) / around
        return (
            10 * math.sin(down) * math.cos(turn),
            10 * math.sin(down) * math.sin(turn),
            10 * math.cos(down),
        )

    faces = []
    for ring in range(rings):
        for step in range(around):
            corners = (
                point(ring, step),
                point(ring + 1, step),
                point(ring + 1, step + 1),
                point(ring, step + 1),
            )
            if ring < rings - 1:
                faces.append((corners[0], corners[1], corners[2]))
            if ring > 0:
                faces.append((corners[0], corners[2], corners[3]))
    body = b"".join(
        struct.pack("<12fH", 0, 0, 0, *(number for corner in face for number in corner), 0) for face in faces
    )
    return b"\0" * 80 + struct.pack("<I", len(faces)) + body


def solid(triangles: int) -> dict[str, Any]:
    """A drawn ball of about so many triangles."""
    drawn = base64.b64encode(ball(triangles)).decode()
    return {"parts": [], "solid": drawn, "solid_unit": "in", "solid_material": "steel"}


def growing() -> list[tuple[str, str]]:
    """What each answer costs, by how much is asked."""
    asked = (
        ("hanging-load, by legs", "hanging-load", legs, LEGS),
        ("trial-log, by rows", "trial-log", log, ROWS),
        ("load-weight, by parts", "load-weight", parts, PARTS),
        ("load-weight, by triangles of a solid", "load-weight", solid, TRIANGLES),
    )
    return [
        (what, ", ".join(f"{count:,}: {answer_ms(name, make(count)):.1f}" for count in counts) + " ms")
        for what, name, make, counts in asked
    ]


def of_the_book(root: Path, site: Path) -> list[tuple[str, str]]:
    """How many pages and rows the book has, and the bytes of what is searched."""
    pages = sum(1 for _ in site.rglob("*.html"))
    rows = 0
    for claims in (root / "tables").glob("*/claims.csv"):
        with claims.open(encoding="utf-8", newline="") as file:
            rows += sum(1 for _ in csv.reader(file)) - 1
    searched = sum(path.stat().st_size for path in (site / "scripts").glob("search*.js"))
    return [
        ("pages, rows of tables", f"{pages:,} pages, {rows:,} rows"),
        ("search", f"{searched / 1e3:.0f} kB = {searched / pages:,.0f} bytes a page"),
    ]
