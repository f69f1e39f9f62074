"""Volume and balance point of a closed solid given as triangles (an STL file, ASCII or binary).

Question of the trade: the part was drawn on a computer; what does it weigh, and where does it balance? By the
divergence theorem a closed skin holds the sum of the signed tetrahedra between each of its triangles and a fixed
point; the same sum weighted with each tetrahedron's middle gives the balance point. A skin is closed if every edge is
shared by two triangles that run along it in opposite directions, and no triangle stands in the file twice.

A file may hold several closed shells, and any of them may be drawn inside out. So not the way that its triangles run says
whether a shell is a body or a hollow, but where it stands: inside no other it is a body, inside one a hollow, inside two a
body again. A shell that runs the same way as the one around it may be a hollow turned inside out or a body drawn into
another; nobody can tell which, and the file is refused.
"""

from __future__ import annotations

import math
import struct
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from calc.words.facts import Fact, Number

LARGEST_BYTES = 12_000_000
"""A file over this is refused: about 240,000 triangles in binary; more would keep a phone busy for long."""

MOST_SHELLS = 500
"""Closed shells in one file; more are refused (our own limit: each is held against each)."""

_ON_SKIN = 1e-6
"""A point lies on a triangle if it sees its corners in one plane and all round it, to this part."""

_TRIED_POINTS = 12
"""Points of a shell that are tried to tell whether it stands inside another."""

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
    least = 1e-12 * math.prod(max(top - bottom, 1e-300) for bottom, top in zip(low, high, strict=True))
    volume, centre = _whole([shell for shell in _shells(triangles) if abs(shell.volume) > least])
    return MeshSolid(volume, centre, (low[0], low[1], low[2]), (high[0], high[1], high[2]), len(triangles))


def _refuse_doubled(triangles: list[Triangle]) -> None:
    """A triangle that stands in the file twice would have its solid weighed twice."""
    turned = set()
    for a, b, c in triangles:
        first = min(a, b, c)
        turned.add((a, b, c) if first == a else (b, c, a) if first == b else (c, a, b))
    doubled = len(triangles) - len(turned)
    if doubled:
        raise SolidError("doubled", triangles=doubled)


def _refuse_open(triangles: Sequence[Triangle]) -> None:
    """A skin with edges that have no partner holds no volume."""
    loose = _loose_edges(triangles)
    if loose:
        raise SolidError("open", edges=loose)


def _loose_edges(triangles: Sequence[Triangle]) -> int:
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
    return sum(edges.values())


# ------------------------------------------------------------------------------------------ shells


@dataclass(frozen=True)
class _Shell:
    """One closed shell: its volume, below zero where it runs inside out, the middle of that volume, and its lowest and highest
    corner.
    """

    triangles: Sequence[Triangle]
    volume: float
    centre: Vertex
    low: Vertex
    high: Vertex

    def reaches_round(self, other: _Shell) -> bool:
        """Whether the other's box lies within this one's."""
        over_low = all(mine <= its for mine, its in zip(self.low, other.low, strict=True))
        return over_low and all(mine >= its for mine, its in zip(self.high, other.high, strict=True))

    def points(self) -> Iterator[Vertex]:
        """Some points of its skin: corners, then middles of triangles."""
        few = self.triangles[:: max(1, len(self.triangles) // _TRIED_POINTS)][:_TRIED_POINTS]
        yield from (triangle[0] for triangle in few)
        for a, b, c in few:
            yield (a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3


def _shells(triangles: Sequence[Triangle]) -> list[_Shell]:
    """The closed shells of a skin: triangles that hang together by edges. Where more than two meet in an edge two bodies may
    only touch: they are parted there if each is closed by itself.
    """
    parted = _pieces(triangles, 2)
    if any(_loose_edges(piece) for piece in parted):
        parted = _pieces(triangles, len(triangles))
    if len(parted) > MOST_SHELLS:
        raise SolidError("too-many-shells", shells=len(parted), limit=MOST_SHELLS)
    return [_shell(piece) for piece in parted]


def _pieces(triangles: Sequence[Triangle], most: int) -> list[list[Triangle]]:
    """Groups of triangles that hang together by edges in which no more than `most` of them meet."""
    by_edge: dict[tuple[Vertex, Vertex], list[int]] = {}
    for number, (a, b, c) in enumerate(triangles):
        for start, end in ((a, b), (b, c), (c, a)):
            by_edge.setdefault((start, end) if start < end else (end, start), []).append(number)
    leader = list(range(len(triangles)))

    def led_by(number: int) -> int:
        while leader[number] != number:
            leader[number] = leader[leader[number]]
            number = leader[number]
        return number

    for meeting in by_edge.values():
        if len(meeting) <= most:
            for other in meeting[1:]:
                leader[led_by(other)] = led_by(meeting[0])
    groups: dict[int, list[Triangle]] = {}
    for number, triangle in enumerate(triangles):
        groups.setdefault(led_by(number), []).append(triangle)
    return list(groups.values())


def _shell(triangles: Sequence[Triangle]) -> _Shell:
    xs, ys, zs = zip(*(corner for triangle in triangles for corner in triangle), strict=True)
    low, high = (min(xs), min(ys), min(zs)), (max(xs), max(ys), max(zs))
    middle = ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2)
    volume, centre = _sum(triangles, middle)
    return _Shell(triangles, volume, centre, low, high)


def _whole(shells: Sequence[_Shell]) -> tuple[float, Vertex]:
    """Volume and balance point of all shells together, hollows taken away."""
    if not shells:
        raise SolidError("flat")
    volume = 0.0
    moments = [0.0, 0.0, 0.0]
    for shell in shells:
        around = [other for other in shells if other is not shell and _stands_inside(shell, other)]
        nearest = min(around, key=lambda other: abs(other.volume), default=None)
        if nearest is not None and (nearest.volume > 0) == (shell.volume > 0):
            raise SolidError("nested-alike")
        held = abs(shell.volume) * (-1.0 if len(around) % 2 else 1.0)
        volume += held
        for axis in range(3):
            moments[axis] += held * shell.centre[axis]
    return volume, (moments[0] / volume, moments[1] / volume, moments[2] / volume)


def _stands_inside(inner: _Shell, outer: _Shell) -> bool:
    """Whether one shell stands inside another, by the first of its points that does not lie on the other's skin."""
    if not outer.reaches_round(inner):
        return False
    for point in inner.points():
        turns = abs(_turns_round(point, outer.triangles))
        if turns < 0.1:
            return False
        if turns > 0.9:
            return True
    raise SolidError("nested-alike")


def _turns_round(point: Vertex, triangles: Sequence[Triangle]) -> float:
    """How often a shell goes round a point: the sum of the solid angles of its triangles over 4 pi (van Oosterom and Strackee,
    1983); one inside, none outside, about a half on its skin.
    """
    px, py, pz = point
    total = 0.0
    for (ax, ay, az), (bx, by, bz), (cx, cy, cz) in triangles:
        ax, ay, az = ax - px, ay - py, az - pz
        bx, by, bz = bx - px, by - py, bz - pz
        cx, cy, cz = cx - px, cy - py, cz - pz
        a, b, c = math.hypot(ax, ay, az), math.hypot(bx, by, bz), math.hypot(cx, cy, cz)
        six_volume = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)
        ab, bc, ca = ax * bx + ay * by + az * bz, bx * cx + by * cy + bz * cz, cx * ax + cy * ay + cz * az
        beside = a * b * c + ab * c + bc * a + ca * b
        if abs(six_volume) <= _ON_SKIN * a * b * c and beside <= _ON_SKIN * a * b * c:
            return 0.5
        total += math.atan2(six_volume, beside)
    return total / (2 * math.pi)


def _sum(triangles: Sequence[Triangle], middle: Vertex) -> tuple[float, Vertex]:
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
