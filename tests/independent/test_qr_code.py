"""The QR code of a tag against segno, another encoder, square by square, and read back by a decoder (zxing-cpp)."""

from __future__ import annotations

import numpy as np
import pytest
import segno
import zxingcpp

from calc.records.qr_code import MASK, QUIET_MODULES, VERSIONS, Modules, Version, qr_code


@pytest.mark.parametrize("version", VERSIONS, ids=lambda one: one.number)
def test_each_version_is_that_of_another_encoder(version: Version) -> None:
    """Filled to the last bit: what fills up a shorter text differs between encoders, and readers pass over it."""
    text = ("Mark 3/8 8 T, 7,100 lb; " * 100)[: version.data_words - (3 if version.number >= 10 else 2)]
    other = segno.make(text.encode(), mode="byte", error="m", mask=MASK, boost_error=False, micro=False)
    assert other.version == version.number
    assert tuple(tuple(bool(square) for square in row) for row in other.matrix) == qr_code(text)


@pytest.mark.parametrize("version", VERSIONS, ids=lambda one: one.number)
def test_capitals_are_packed_in_pairs_as_another_encoder_does(version: Version) -> None:
    room = 8 * version.data_words - 4 - (13 if version.number >= 27 else 11 if version.number >= 10 else 9)
    count = 2 * (room // 11) + (room % 11 >= 6)
    text = ("LW1 K7Q4M 9X2PZ " * 220)[:count]
    other = segno.make(
        text,
        mode="alphanumeric",
        error="m",
        mask=MASK,
        version=version.number,
        boost_error=False,
        micro=False,
    )
    ours = qr_code(text)
    assert tuple(tuple(bool(square) for square in row) for row in other.matrix) == ours
    assert read(ours) == [text]


def read(code: Modules) -> list[str]:
    light = ~np.pad(np.array(code), QUIET_MODULES)
    return [
        one.text
        for one in zxingcpp.read_barcodes(np.kron(light.astype("uint8") * 255, np.ones((4, 4), "uint8")))
    ]


@pytest.mark.parametrize("length", [*range(1, 330, 13), 331, 700, 997])
def test_a_decoder_reads_the_text_back(length: int) -> None:
    text = ("H-2\nMark: 8 T é 7,100 lb\n" * 60).encode()[:length].decode("utf-8", "ignore")
    assert read(qr_code(text)) == [text]


def test_a_code_is_read_with_a_tenth_of_its_words_lost() -> None:
    """Level M stands 15 %: a scratch across the code."""
    code = [list(row) for row in qr_code("H-2\nMark: 3/8 8 T\nMaker’s rating: 7,100 lb")]
    side = len(code)
    for row in range(side // 2, side // 2 + 2):
        for column in range(9, side - 9):
            code[row][column] = False
    assert read(tuple(map(tuple, code))) == ["H-2\nMark: 3/8 8 T\nMaker’s rating: 7,100 lb"]
