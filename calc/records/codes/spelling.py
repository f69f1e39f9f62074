"""Bytes as letters that a person types from paper: groups of four letters with a check letter, and the reason where one does
not fit.

The letters are those of Crockford's base 32, which has no I, L, O and U: what is read as I or L is 1, what is read as O is 0
(from memory). A check letter is a weighted sum in the field of 32, so that a wrong letter, two that changed places, and a
group in a wrong place are noticed, and the group is named. Sentences stand in page/codes.
"""

from __future__ import annotations

from collections.abc import Iterator

from calc.words.facts import Fact, Message, message

FORM = 1
"""The form of the text. A text of a higher one was printed by a newer book."""
MARK = "LW"
LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_READ_AS = {**{letter: place for place, letter in enumerate(LETTERS)}, "O": 0, "I": 1, "L": 1}
_GROUP = 4
_FIELD_POLYNOMIAL = 0b100101
"""Of the field of 32: x^5 + x^2 + 1."""
LONGEST = 6000
"""Letters of a text that is looked at, at most."""


class CodeRefused(ValueError):
    """A text cannot be taken: the message `code-refused-CODE` says why."""

    def __init__(self, code: str, **facts: Fact) -> None:
        self.code = code
        self.why: Message = message(f"code-refused-{code}", **facts)
        super().__init__(code)


def spelled(data: bytes) -> str:
    """Bytes as a text: the mark with its form, then the groups, with blanks between.

    >>> spelled(b"keel")
    'LW1 DDJPD AV0P'
    """
    return " ".join([f"{MARK}{FORM}", *groups_of(data)])


def groups_of(data: bytes) -> Iterator[str]:
    """The groups of a text, each with its check letter."""
    bits = "".join(f"{one:08b}" for one in data)
    bits += "0" * (-len(bits) % 5)
    values = [int(bits[start : start + 5], 2) for start in range(0, len(bits), 5)]
    for place, start in enumerate(range(0, len(values), _GROUP)):
        group = values[start : start + _GROUP]
        yield "".join(LETTERS[one] for one in [*group, _check(group, place)])


def read_back(text: str) -> bytes:
    """The bytes of a text, however it is broken into lines. Raises CodeRefused for one that is not as it was printed."""
    letters = "".join(text.upper().replace("-", "").split())
    if len(letters) > LONGEST:
        raise CodeRefused("not-ours")
    if not letters.startswith(MARK) or not letters[len(MARK) :][:1].isdecimal():
        raise CodeRefused("not-ours")
    if letters[len(MARK)] != str(FORM):
        raise CodeRefused("newer")
    letters = letters[len(MARK) + 1 :]
    values: list[int] = []
    for place, start in enumerate(range(0, len(letters), _GROUP + 1)):
        values += _group(letters[start : start + _GROUP + 1], place)
    bits = "".join(f"{one:05b}" for one in values)
    return bytes(int(bits[start : start + 8], 2) for start in range(0, len(bits) - 7, 8))


def _group(letters: str, place: int) -> list[int]:
    values = [_READ_AS.get(letter) for letter in letters]
    read = [value for value in values if value is not None]
    if len(read) < len(letters) or len(read) < 2 or _check(read[:-1], place) != read[-1]:
        raise CodeRefused("group", number=place + 1, group=letters)
    return read[:-1]


def _check(group: list[int], place: int) -> int:
    """The check letter of a group: its letters times 2, 4, 8, 16, and the place of the group."""
    total = place % len(LETTERS)
    for power, value in enumerate(group, 1):
        total ^= _times(value, 1 << power)
    return total


def _times(one: int, other: int) -> int:
    """Product in the field of 32."""
    product = 0
    while other:
        if other & 1:
            product ^= one
        other >>= 1
        one <<= 1
        if one & 0b100000:
            one ^= _FIELD_POLYNOMIAL
    return product


__all__ = ["FORM", "LETTERS", "LONGEST", "MARK", "CodeRefused", "groups_of", "read_back", "spelled"]
