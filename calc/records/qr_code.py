"""A text as a QR code (ISO/IEC 18004): the pattern of dark and light squares that a phone reads back without any network.

Byte mode, or alphanumeric mode where the text has nothing but capitals, digits and a few signs; error correction level M
(15 % of the code may be lost), versions 1 to 25, one fixed mask: a reader takes any of the eight. The page runs this, so it rests on the standard library alone; tests/independent holds each square against
another encoder.
"""

from __future__ import annotations

import functools
from collections.abc import Iterator
from dataclasses import dataclass

Modules = tuple[tuple[bool, ...], ...]
"""The squares of a code by row, True for a dark one; without the quiet zone."""

Grid = list[bytearray]
"""The squares under way: 1 dark, 0 light, _OPEN not written yet."""
_OPEN = 2

QUIET_MODULES = 4
"""So many light squares stand around a code (ISO/IEC 18004, 5.3.8)."""
_ALPHANUMERIC, _BYTES, _MODE_BITS, _LEVEL_M = 0b0010, 0b0100, 4, 0b00
_CAPITALS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
"""The letters of alphanumeric mode, by their values (ISO/IEC 18004, Table 5); two of them take 11 bits, one alone 6."""
_PAD = (0xEC, 0x11)
_FORMAT_GENERATOR, _FORMAT_MASK = 0b10100110111, 0b101010000010010
_VERSION_GENERATOR = 0b1111100100101
_FIELD_POLYNOMIAL = 0x11D
"""Constants of ISO/IEC 18004: 7.4.3, 7.4.10, 7.9, 7.10 and 7.5.2."""
MASK = 0
"""The mask, 7.8.2: a square is turned over where row and column add up to an even number."""
_LONG_COUNT_FROM, _LONGEST_COUNT_FROM = 10, 27
"""From these versions the count of characters is longer: 16 bits in place of 8 for bytes; 11 in place of 9, then 13, for capitals."""


class TooLong(ValueError):
    """The text has more letters than the largest code of these versions holds."""


@dataclass(frozen=True)
class Version:
    """One size of code at level M: check words in each block, blocks as (how many, data words in each), and the places of the
    alignment patterns (ISO/IEC 18004, Table 9 and Annex E).
    """

    number: int
    check_words: int
    blocks: tuple[tuple[int, int], ...]
    alignment: tuple[int, ...] = ()

    @property
    def size(self) -> int:
        """Squares along a side."""
        return 17 + 4 * self.number

    @property
    def data_words(self) -> int:
        """Words of eight bits for the text and what goes with it."""
        return sum(count * words for count, words in self.blocks)

    def count_bits(self, mode: int) -> int:
        """Bits that the count of characters takes in a mode."""
        short, long, longest = (9, 11, 13) if mode == _ALPHANUMERIC else (8, 16, 16)
        if self.number >= _LONGEST_COUNT_FROM:
            return longest
        return long if self.number >= _LONG_COUNT_FROM else short


VERSIONS = (
    Version(1, 10, ((1, 16),)),
    Version(2, 16, ((1, 28),), (6, 18)),
    Version(3, 26, ((1, 44),), (6, 22)),
    Version(4, 18, ((2, 32),), (6, 26)),
    Version(5, 24, ((2, 43),), (6, 30)),
    Version(6, 16, ((4, 27),), (6, 34)),
    Version(7, 18, ((4, 31),), (6, 22, 38)),
    Version(8, 22, ((2, 38), (2, 39)), (6, 24, 42)),
    Version(9, 22, ((3, 36), (2, 37)), (6, 26, 46)),
    Version(10, 26, ((4, 43), (1, 44)), (6, 28, 50)),
    Version(11, 30, ((1, 50), (4, 51)), (6, 30, 54)),
    Version(12, 22, ((6, 36), (2, 37)), (6, 32, 58)),
    Version(13, 22, ((8, 37), (1, 38)), (6, 34, 62)),
    Version(14, 24, ((4, 40), (5, 41)), (6, 26, 46, 66)),
    Version(15, 24, ((5, 41), (5, 42)), (6, 26, 48, 70)),
    Version(16, 28, ((7, 45), (3, 46)), (6, 26, 50, 74)),
    Version(17, 28, ((10, 46), (1, 47)), (6, 30, 54, 78)),
    Version(18, 26, ((9, 43), (4, 44)), (6, 30, 56, 82)),
    Version(19, 26, ((3, 44), (11, 45)), (6, 30, 58, 86)),
    Version(20, 26, ((3, 41), (13, 42)), (6, 34, 62, 90)),
    Version(21, 26, ((17, 42),), (6, 28, 50, 72, 94)),
    Version(22, 28, ((17, 46),), (6, 26, 50, 74, 98)),
    Version(23, 28, ((4, 47), (14, 48)), (6, 30, 54, 78, 102)),
    Version(24, 28, ((6, 45), (14, 46)), (6, 28, 54, 80, 106)),
    Version(25, 28, ((8, 47), (13, 48)), (6, 32, 58, 84, 110)),
    Version(26, 28, ((19, 46), (4, 47)), (6, 30, 58, 86, 114)),
    Version(27, 28, ((22, 45), (3, 46)), (6, 34, 62, 90, 118)),
    Version(28, 28, ((3, 45), (23, 46)), (6, 26, 50, 74, 98, 122)),
    Version(29, 28, ((21, 45), (7, 46)), (6, 30, 54, 78, 102, 126)),
    Version(30, 28, ((19, 47), (10, 48)), (6, 26, 52, 78, 104, 130)),
    Version(31, 28, ((2, 46), (29, 47)), (6, 30, 56, 82, 108, 134)),
    Version(32, 28, ((10, 46), (23, 47)), (6, 34, 60, 86, 112, 138)),
    Version(33, 28, ((14, 46), (21, 47)), (6, 30, 58, 86, 114, 142)),
    Version(34, 28, ((14, 46), (23, 47)), (6, 34, 62, 90, 118, 146)),
    Version(35, 28, ((12, 47), (26, 48)), (6, 30, 54, 78, 102, 126, 150)),
    Version(36, 28, ((6, 47), (34, 48)), (6, 24, 50, 76, 102, 128, 154)),
    Version(37, 28, ((29, 46), (14, 47)), (6, 28, 54, 80, 106, 132, 158)),
    Version(38, 28, ((13, 46), (32, 47)), (6, 32, 58, 84, 110, 136, 162)),
    Version(39, 28, ((40, 47), (7, 48)), (6, 26, 54, 82, 110, 138, 166)),
    Version(40, 28, ((18, 47), (31, 48)), (6, 30, 58, 86, 114, 142, 170)),
)


def qr_code(text: str) -> Modules:
    """The code of a text in UTF-8, of the smallest version that holds it. Raises TooLong.

    >>> len(qr_code("H-2"))
    21
    """
    mode = _ALPHANUMERIC if text and all(letter in _CAPITALS for letter in text) else _BYTES
    count, content = (len(text), _in_pairs(text)) if mode == _ALPHANUMERIC else _in_bytes(text)
    for version in VERSIONS:
        head = f"{mode:0{_MODE_BITS}b}{count:0{version.count_bits(mode)}b}"
        if len(head) + len(content) <= 8 * version.data_words:
            return _drawn(version, _with_checks(version, _data(version, head + content)))
    raise TooLong(f"{count} letters")


def _in_bytes(text: str) -> tuple[int, str]:
    """How many bytes a text has, and their bits."""
    words = text.encode("utf-8")
    return len(words), "".join(f"{one:08b}" for one in words)


def _in_pairs(text: str) -> str:
    """The bits of a text in alphanumeric mode, two letters at a time (ISO/IEC 18004, 7.4.4)."""
    values = [_CAPITALS.index(letter) for letter in text]
    pairs = [f"{45 * one + other:011b}" for one, other in zip(values[::2], values[1::2], strict=False)]
    return "".join([*pairs, f"{values[-1]:06b}" if len(values) % 2 else ""])


def _data(version: Version, bits: str) -> bytes:
    """Mode, count and text with padding, as words of eight bits."""
    room = 8 * version.data_words
    bits += "0" * min(4, room - len(bits))
    bits += "0" * (-len(bits) % 8)
    made = bytes(int(bits[start : start + 8], 2) for start in range(0, len(bits), 8))
    return made + bytes(_PAD[place % 2] for place in range(version.data_words - len(made)))


def _with_checks(version: Version, data: bytes) -> bytes:
    """Data and check words, taken from the blocks in turn."""
    blocks, start = [], 0
    for count, words in version.blocks:
        for _ in range(count):
            blocks.append(data[start : start + words])
            start += words
    checks = [_check_words(block, version.check_words) for block in blocks]
    return bytes([*_in_turn(blocks), *_in_turn(checks)])


def _in_turn(blocks: list[bytes]) -> Iterator[int]:
    """The first word of each block, then the second of each, and so on."""
    for place in range(max(map(len, blocks))):
        yield from (block[place] for block in blocks if place < len(block))


@functools.cache
def _powers() -> tuple[tuple[int, ...], dict[int, int]]:
    """The powers of two in the field of 256, and of each the exponent."""
    powers, one = [], 1
    for _ in range(255):
        powers.append(one)
        one <<= 1
        if one & 0x100:
            one ^= _FIELD_POLYNOMIAL
    return tuple(powers), {power: exponent for exponent, power in enumerate(powers)}


def _times(one: int, other: int) -> int:
    """Product in the field of 256."""
    if not one or not other:
        return 0
    powers, exponents = _powers()
    return powers[(exponents[one] + exponents[other]) % 255]


def _check_words(block: bytes, count: int) -> bytes:
    """Reed-Solomon check words of a block."""
    powers, _ = _powers()
    generator = [1]
    for exponent in range(count):
        longer = [*generator, 0]
        for place, factor in enumerate(generator):
            longer[place + 1] ^= _times(factor, powers[exponent])
        generator = longer
    rest = [*block, *[0] * count]
    for place in range(len(block)):
        lead = rest[place]
        for step, factor in enumerate(generator):
            rest[place + step] ^= _times(lead, factor)
    return bytes(rest[len(block) :])


def _drawn(version: Version, words: bytes) -> Modules:
    """The squares of a code: its fixed patterns, then the words along the zigzag, turned over by the mask."""
    grid = _fixed_patterns(version)
    place = 0
    for row, column in _zigzag(version.size):
        if grid[row][column] == _OPEN:
            dark = place < 8 * len(words) and words[place // 8] >> (7 - place % 8) & 1 == 1
            grid[row][column] = dark != ((row + column) % 2 == 0)
            place += 1
    return tuple(tuple(square == 1 for square in row) for row in grid)


def _zigzag(size: int) -> Iterator[tuple[int, int]]:
    """The squares in the order of the words: pairs of columns from the right, up and down in turn; column 6 is left out."""
    upward = True
    for right in (*range(size - 1, 6, -2), *range(5, 0, -2)):
        for row in reversed(range(size)) if upward else range(size):
            yield row, right
            yield row, right - 1
        upward = not upward


def _fixed_patterns(version: Version) -> Grid:
    """Finders with their light frames, alignment, timing, version and format, and the one dark square; the rest is open."""
    size, last = version.size, version.size - 1
    grid = [bytearray([_OPEN]) * size for _ in range(size)]
    for place in range(size):
        grid[6][place] = grid[place][6] = place % 2 == 0
    for top, left in ((0, 0), (0, last - 6), (last - 6, 0)):
        for row in range(max(0, top - 1), min(size, top + 8)):
            for column in range(max(0, left - 1), min(size, left + 8)):
                grid[row][column] = max(abs(row - top - 3), abs(column - left - 3)) in (0, 1, 3)
    ends = {6, last - 6}
    for down in version.alignment:
        for across in version.alignment:
            if {down, across} <= ends and (down, across) != (last - 6, last - 6):
                continue
            for row in range(down - 2, down + 3):
                for column in range(across - 2, across + 3):
                    grid[row][column] = max(abs(row - down), abs(column - across)) != 1
    _write_version(grid, version)
    _write_format(grid)
    return grid


def _rest(number: int, generator: int) -> int:
    """What is left of a number that is divided by a generator, both as polynomials over two."""
    while number.bit_length() >= generator.bit_length():
        number ^= generator << (number.bit_length() - generator.bit_length())
    return number


def _write_version(grid: Grid, version: Version) -> None:
    """The number of the version, written twice from version 7 on."""
    if version.number < 7:
        return
    value = version.number << 12 | _rest(version.number << 12, _VERSION_GENERATOR)
    for place in range(18):
        far, near = version.size - 11 + place % 3, place // 3
        grid[near][far] = grid[far][near] = value >> place & 1


def _write_format(grid: Grid) -> None:
    """Level and mask, written twice, and the one square that is always dark."""
    told, size = _LEVEL_M << 3 | MASK, len(grid)
    value = (told << 10 | _rest(told << 10, _FORMAT_GENERATOR)) ^ _FORMAT_MASK
    down = (0, 1, 2, 3, 4, 5, 7, 8)
    grid[size - 8][8] = 1
    for place in range(15):
        dark = value >> place & 1
        if place < 8:
            grid[down[place]][8] = grid[8][size - 1 - place] = dark
        else:
            grid[8][down[14 - place]] = grid[size - 15 + place][8] = dark


__all__ = ["MASK", "QUIET_MODULES", "VERSIONS", "Modules", "TooLong", "Version", "qr_code"]
