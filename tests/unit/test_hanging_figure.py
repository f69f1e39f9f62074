"""The drawing of a load as it hangs: names of legs that fall on one spot stand together and inside the sheet."""

import re

import pytest

from calc.answering import answer

WORDS = re.compile(r'<text[^>]* x="([-\d.]+)" y="([-\d.]+)"[^>]*>([^<]+)</text>')


def words(picks, load="870 lb", centre=("31", "0", "5")):
    raw = {"load": load, "centre": list(centre), "picks": picks}
    svg = answer("hanging-load", raw, "us")["figure"]["svg"]
    return [(float(x), float(y), text) for x, y, text in WORDS.findall(svg)]


def pick(x, y, z, length):
    return {"at": [str(x), str(y), str(z)], "length": str(length)}


IN_LINE = [pick(0, 0, 10, 50), pick(20, 0, 10, 42), pick(42, 0, 10, 42), pick(62, 0, 10, 50)]
EIGHT = [pick(x, y, 20, 120) for x in (0, 41, 79, 120) for y in (0, 61)]


def test_picks_behind_one_another_share_one_label():
    said = [text for _, _, text in words(IN_LINE)]
    assert said.count("1–4") == 1
    eight = [text for _, _, text in words(EIGHT, centre=("60", "30.5", "7"))]
    assert {"1, 2", "7, 8", "1, 3, 5, 7", "2, 4, 6, 8"} <= set(eight)


def test_equal_pulls_behind_one_another_are_said_once():
    picks = [pick(0, 0, 40, 31), pick(0, 18, 40, 31), pick(38, 9, 0, 71)]
    said = [text for _, _, text in words(picks, centre=("16", "9", "10"))]
    assert len([text for text in said if text.endswith(" each")]) == 1


@pytest.mark.parametrize(("picks", "centre"), [(IN_LINE, ("31", "0", "5")), (EIGHT, ("60", "30.5", "7"))])
def test_labels_stand_on_the_sheet_and_clear_of_each_other(picks, centre):
    placed = words(picks, centre=centre)
    for place, (x, y, text) in enumerate(placed):
        assert 0 < x < 420, text
        assert 0 < y < 330, text
        for other_x, other_y, other in placed[:place]:
            assert abs(x - other_x) > 6 or abs(y - other_y) > 11, (text, other)
