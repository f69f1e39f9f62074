"""Volume and balance point of a closed solid given as triangles (an STL file, ASCII or binary).

Question of the trade: the part was drawn on a computer; what does it weigh, and where does it balance? By the
divergence theorem a closed skin holds the sum of the signed tetrahedra between each of its triangles and a fixed
point; the same sum weighted with each tetrahedron's middle gives the balance point. A skin is closed if every edge is
shared by two triangles that run along it in opposite directions, and no triangle stands in the file twice.
"""

from __future__ import annotations

import math
import struct
from dataclasses import dataclass

from calc.words.facts import Fact, Number

LARGEST_BYTES = 12_000_000
"""A file over this is refused: about 240,000 triangles in binary; more would keep a phone busy for long."""

Vertex = tuple[float, float, float]
Triangle = tuple[Vertex, Vertex, Vertex]


class SolidError(ValueError):
    """The file is not a closed solid: the message `refused-solid-CODE` says why, with its facts."""

    def __init__(self, code: str, **facts: Fact) -> None:
        self.code = f"solid-{code}"
        self.facts = facts
        super().__init__(self.code)


@dataclass(frozen=True)
class MeshSolid:
    """A closed solid in the file's own unit of length: volume, balance point, lowest and highest corner."""

    volume: float
    centre: Vertex
    low: Vertex
    high: Vertex
    triangles: int


def read_triangles(data: bytes) -> list[Triangle]:
    """The triangles of an STL file. Raises SolidError for an empty, huge, cut off or foreign file."""
    if not data:
        raise SolidError("empty")
    if len(data) > LARGEST_BYTES:
        raise SolidError(
            "too-large", size=Number(len(data) / 1e6, places=1), limit=LARGEST_BYTES // 1_000_000
        )
    if len(data) >= 84 and len(data) == 84 + 50 * struct.unpack_from("<I", data, 80)[0]:
        return _binary(data)
    if data.lstrip()[:5].lower() == b"solid":
        return _ascii(data)
    raise SolidError("foreign")


def _binary(data: bytes) -> list[Triangle]:
    triangles = []
    for found in struct.iter_unpack("<12fH", data[84:]):
        triangles.append((found[3:6], found[6:9], found[9:12]))
    return triangles


def _ascii(data: bytes) -> list[Triangle]:
    corners: list[Vertex] = []
    for line in data.decode("utf-8", errors="replace").splitlines():
        words = line.split()
        if words and words[0].lower() == "vertex":
            try:
                x, y, z = (float(word) for word in words[1:])
            except ValueError as reason:
                raise SolidError("corner-unreadable", line=line.strip()[:40]) from reason
            corners.append((x, y, z))
    if len(corners) % 3:
        raise SolidError("cut-off")
    return [(corners[i], corners[i + 1], corners[i + 2]) for i in range(0, len(corners), 3)]


def mesh_solid(data: bytes) -> MeshSolid:
    """Read a file and find what its skin holds. Raises SolidError if the skin is open or holds nothing."""
    triangles = read_triangles(data)
    if not triangles:
        raise SolidError("without-triangles")
    low = tuple(min(corner[i] for triangle in triangles for corner in triangle) for i in range(3))
    high = tuple(max(corner[i] for triangle in triangles for corner in triangle) for i in range(3))
    if not all(math.isfinite(side) for side in (*low, *high)):
        raise SolidError("corner-not-finite")
    _refuse_doubled(triangles)
    _refuse_open(triangles)
    middle = ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2)
    volume, centre = _sum(triangles, middle)
    if abs(volume) <= 1e-12 * math.prod(
        max(top - bottom, 1e-300) for bottom, top in zip(low, high, strict=True)
    ):
        raise SolidError("flat")
    return MeshSolid(
        abs(volume), centre, (low[0], low[1], low[2]), (high[0], high[1], high[2]), len(triangles)
    )


def _refuse_doubled(triangles: list[Triangle]) -> None:
    """A triangle that stands in the file twice would have its solid weighed twice."""
    turned = set()
    for a, b, c in triangles:
        first = min(a, b, c)
        turned.add((a, b, c) if first == a else (b, c, a) if first == b else (c, a, b))
    doubled = len(triangles) - len(turned)
    if doubled:
        raise SolidError("doubled", triangles=doubled)


def _refuse_open(triangles: list[Triangle]) -> None:
    """Pair the edges: each directed edge must meet its opposite as often as it is run along."""
    edges: dict[tuple[Vertex, Vertex], int] = {}
    for a, b, c in triangles:
        for start, end in ((a, b), (b, c), (c, a)):
            if start == end:
                continue
            if edges.get((end, start), 0) > 0:
                edges[(end, start)] -= 1
            else:
                edges[(start, end)] = edges.get((start, end), 0) + 1
    loose = sum(edges.values())
    if loose:
        raise SolidError("open", edges=loose)


def _sum(triangles: list[Triangle], middle: Vertex) -> tuple[float, Vertex]:
    mx, my, mz = middle
    six_volume = sum_x = sum_y = sum_z = 0.0
    for (ax, ay, az), (bx, by, bz), (cx, cy, cz) in triangles:
        ax, ay, az = ax - mx, ay - my, az - mz
        bx, by, bz = bx - mx, by - my, bz - mz
        cx, cy, cz = cx - mx, cy - my, cz - mz
        piece = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)
        six_volume += piece
        sum_x += piece * (ax + bx + cx)
        sum_y += piece * (ay + by + cy)
        sum_z += piece * (az + bz + cz)
    if six_volume == 0.0:
        return 0.0, middle
    four = 4 * six_volume
    return six_volume / 6, (mx + sum_x / four, my + sum_y / four, mz + sum_z / four)
