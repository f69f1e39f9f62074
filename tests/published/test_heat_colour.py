"""Colours of hot steel as printed by W. H. Dooley, Applied Science for Metal Workers (1919), typed here from there."""

from __future__ import annotations

import pytest

from calc.answering import answer

DOOLEY_1919_DEGF = {
    "very-pale-yellow": 430, "straw-yellow": 460, "dark-straw": 480, "brownish-yellow": 500, "yellow-tinged-with-purple": 520,
    "light-purple": 530, "dark-purple": 550, "dark-blue": 570, "pale-blue": 610, "blue-tinged-with-green": 630,
    "first-sign-of-red": 957, "dull-red": 1290, "dark-cherry": 1470, "cherry-red": 1655, "bright-red": 1870,
    "dull-orange": 2010, "bright-orange": 2190, "white-heat": 2370, "bright-white": 2550, "dazzling-white": 2730,
}  # fmt: skip


@pytest.mark.parametrize("colour", DOOLEY_1919_DEGF)
def test_each_colour(colour: str) -> None:
    record = answer("heat-colour", {"colour": colour}, "us")["results"]["temperature"]
    assert record["value"] == pytest.approx(DOOLEY_1919_DEGF[colour])
    assert record["text"].startswith(f"{DOOLEY_1919_DEGF[colour]:,} °F")


def test_dazzling_white_ends_at_2910() -> None:
    record = answer("heat-colour", {"colour": "dazzling-white"}, "us")["results"]["temperature_high"]
    assert record["value"] == pytest.approx(2910)


@pytest.mark.parametrize(
    ("temperature", "words"),
    [
        ("450 F", "Blue brittleness"),  # 400 to 600 F, open notes on blue brittleness
        ("650 F", "Tempered-martensite"),  # 400 to 700 F, open notes on 500 F embrittlement
        ("900 F", "Temper brittleness"),  # 700 to 1,070 F, open notes on temper embrittlement
        (
            "550 F",
            "Grade 100 chain permanently loses",
        ),  # ASME B30.9, table 9-1.8.1-1: lasting loss from the 500 F row
        ("600 F", "Grade 80 chain permanently loses"),  # the same table: from the 600 F row
        ("1001 F", "removed from service permanently"),  # 29 CFR 1910.184(e)(6)
        ("1400 F", "417 MPa"),  # yield of annealed AISI 4140, open property pages
    ],
)
def test_each_band_of_harm(temperature: str, words: str) -> None:
    assert (
        words
        in answer("heat-colour", {"temperature": temperature}, "us")["results"]["what_happened"]["value"]
    )
