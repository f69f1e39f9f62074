"""The printed sheets, measured in the PDF: true to scale by coordinates, every number that of its table, same to the byte."""

from __future__ import annotations

import csv
import functools
import io
import itertools
import math
import re
from collections.abc import Iterable
from pathlib import Path
from types import ModuleType
from typing import Any

import pdfplumber
import pytest
from pdfminer.pdfdocument import PDFXRefFallback

from build_scripts import paper
from build_scripts.paper import gauges, typeset, wall
from build_scripts.paper.faces import ready_faces
from build_scripts.paper.sheets import Sheet
from build_scripts.table_view import key_text
from calc.answering import answer
from calc.inspecting.hook_check import largest_throat_m
from calc.inspecting.thickness import thickness_limits
from calc.quantities import plain_number, to_si
from calc.tables import Table, number, table
from calc.words.writer import plain

ROOT = Path(__file__).resolve().parents[2]
MADE = typeset.Edition("2026.1", "abcdef12")
TRUE_MM = 0.05
"""How far a measure in the PDF may be from calc."""
POINT_MM = 25.4 / 72
ALL = [(sheet, size) for sheet in paper.sheets() for size in typeset.PAPERS]


@functools.cache
def typesetter() -> typeset.Typesetter:
    return typeset.Typesetter(ROOT)


@functools.cache
def pdf_of(name: str, size: typeset.PaperSize = "letter") -> bytes:
    sheet = next(one for one in paper.sheets() if one.name == name)
    return typesetter().set(sheet, size, MADE)


@functools.cache
def page_of(name: str, size: typeset.PaperSize = "letter") -> Any:
    document = pdfplumber.open(io.BytesIO(pdf_of(name, size)))
    assert len(document.pages) == 1, f"{name} {size} is not one page"
    return document.pages[0]


def text_of(page: Any) -> str:
    return str(page.extract_text())


def mm(points: float) -> float:
    return points * POINT_MM


def blocks(page: Any) -> list[tuple[float, float, float, float]]:
    """The black blocks: left, top, width and height [mm]; signs and frames are not among them."""
    return [
        (mm(one["x0"]), mm(one["top"]), mm(one["width"]), mm(one["height"]))
        for one in page.rects
        if one["fill"] and not one["stroke"]
    ]


def lines(page: Any) -> list[tuple[float, float, float, float]]:
    return [(mm(one["x0"]), mm(one["top"]), mm(one["x1"]), mm(one["bottom"])) for one in page.lines]


def upright(page: Any) -> list[float]:
    return sorted({round(x0, 4) for x0, _, x1, _ in lines(page) if abs(x0 - x1) < 1e-3})


def slots(found: Iterable[tuple[float, float, float, float]], left: float, width: float) -> list[float]:
    """The white heights between the pairs of blocks of one width in one column, from the top."""
    column = sorted(
        (top, height) for x, top, wide, height in found if abs(x - left) < 0.1 and abs(wide - width) < 0.01
    )
    pairs = list(zip(column[::2], column[1::2], strict=True))
    return [lower - (top + height) for (top, height), (lower, _) in pairs]


def left_edge(size: typeset.PaperSize = "letter") -> float:
    return (typeset.PAPERS[size][0] - 186.0) / 2


# ------------------------------------------------------------------------------------------ every sheet


@pytest.mark.parametrize(("sheet", "size"), ALL, ids=lambda one: getattr(one, "name", one))
def test_a_sheet_is_one_page_of_its_size_with_its_faces_and_its_words(
    sheet: Sheet, size: typeset.PaperSize
) -> None:
    page = page_of(sheet.name, size)
    wide, high = typeset.PAPERS[size][:: -1 if sheet.kind == "cards" else 1]
    assert (mm(page.width), mm(page.height)) == pytest.approx((wide, high), abs=0.02)
    said = " ".join(text_of(page).split())
    assert plain(sheet.title) in said
    assert "2026.1" in said
    assert "abcdef12" in said
    fonts = {one["fontname"].partition("+")[2] for one in page.chars}
    assert all(re.match(r"Book(Text|-Text|Head|-Head)", font.replace(" ", "")) for font in fonts), fonts
    edge = 3.0 if sheet.kind == "cards" else left_edge(size)
    letters = [one for one in page.chars if one["text"].strip()]
    assert min(mm(one["x0"]) for one in letters) > edge - 0.1
    assert max(mm(one["x1"]) for one in letters) < wide - edge + 0.1
    assert max(mm(one["bottom"]) for one in letters) < high - (3 if sheet.kind == "cards" else 8)


@pytest.mark.parametrize(("sheet", "size"), ALL, ids=lambda one: getattr(one, "name", one))
def test_every_face_is_embedded(sheet: Sheet, size: typeset.PaperSize) -> None:
    from pdfminer.pdftypes import resolve1

    document = pdfplumber.open(io.BytesIO(pdf_of(sheet.name, size)))
    fonts = resolve1(resolve1(document.pages[0].page_obj.resources)["Font"])
    for font in fonts.values():
        below = resolve1(resolve1(resolve1(font)["DescendantFonts"])[0])
        described = resolve1(below["FontDescriptor"])
        assert {"FontFile2", "FontFile3"} & set(described)
        assert "ToUnicode" in resolve1(font)


@pytest.mark.parametrize("size", typeset.PAPERS)
@pytest.mark.parametrize(
    "sheet", [one for one in paper.sheets() if one.kind == "gauge"], ids=lambda one: one.name
)
def test_a_gauge_has_the_lines_that_check_the_printer(sheet: Sheet, size: typeset.PaperSize) -> None:
    page = page_of(sheet.name, size)
    level = [x1 - x0 for x0, top, x1, bottom in lines(page) if abs(top - bottom) < 1e-3]
    assert any(abs(one - 100.0) < TRUE_MM for one in level)
    assert any(abs(one - 4 * 25.4) < TRUE_MM for one in level)
    said = " ".join(text_of(page).split())
    assert "100 mm" in said
    assert "4 in" in said
    assert "1 %, stop" in said


@pytest.mark.parametrize("sheet", paper.sheets(), ids=lambda one: one.name)
def test_what_is_true_to_scale_asks_to_be_printed_unscaled(sheet: Sheet) -> None:
    from pdfminer.pdftypes import resolve1

    document = pdfplumber.open(io.BytesIO(pdf_of(sheet.name))).doc
    wish = resolve1(document.catalog["ViewerPreferences"]).get("PrintScaling")
    assert (wish is None) == (sheet.kind == "wall")
    if wish is not None:
        assert wish.name == "None"
    assert not any(
        isinstance(table, PDFXRefFallback) for table in document.xrefs
    )  # its table of places is right


def test_a_file_written_in_another_way_is_no_gauge() -> None:
    with pytest.raises(typeset.NotSet, match="another way"):
        typeset.at_actual_size(b"%PDF-1.7")


def test_the_same_tables_and_edition_make_the_same_file() -> None:
    sheet = paper.sheets()[0]
    assert typeset.Typesetter(ROOT).set(sheet, "a4", MADE) == typeset.Typesetter(ROOT).set(sheet, "a4", MADE)
    assert b"2026-01-01" in pdf_of(sheet.name) or b"D:20260101" in pdf_of(sheet.name)


def test_all_sheets_keep_their_weight(tmp_path: Path) -> None:
    paper.build_paper(ROOT, tmp_path, number="2026.1", hash="abcdef12")
    made = sorted((tmp_path / paper.FOLDER).iterdir())
    assert {one.name for one in made} == {paper.file_name(s.name, size) for s, size in ALL}
    assert sum(one.stat().st_size for one in made) <= 4_000_000


def test_faces_are_made_once() -> None:
    assert ready_faces(ROOT) == ready_faces(ROOT)


# ------------------------------------------------------------------------------------------ the gauges


def test_slots_and_bars_of_the_chain_gauge_are_wire_and_link() -> None:
    """The pitch by size stands in tables/chain-dimensions; the wire of a metric size is that size."""
    page = page_of("gauge-chain-size")
    found = blocks(page)
    sizes = [float(size) for size in gauges.gauged_sizes()]
    assert slots(found, left_edge() + 36, 20) == pytest.approx(sizes, abs=TRUE_MM)
    bars = sorted((top, wide) for x, top, wide, _ in found if x > left_edge() + 58)
    wanted = []
    for size in gauges.gauged_sizes():
        for chains in (("grade_8", "grade_10", "grade_80"), ("din_766",), ("mid_link_80",), ("din_763",)):
            printed = {
                number(row)
                for row in table("chain-dimensions").where(size_mm=size, quantity="pitch")
                if row["chain"] in chains
            }
            wanted += sorted(printed)
    assert [wide for _, wide in bars] == pytest.approx(wanted, abs=TRUE_MM)


def test_slots_of_the_wear_gauge_are_new_wire_and_the_strictest_limit() -> None:
    found = blocks(page_of("gauge-chain-wear"))
    sizes = gauges.worn_sizes()
    assert slots(found, left_edge() + 36, 40) == pytest.approx(
        [float(size.metric_name) for size in sizes], abs=TRUE_MM
    )
    least = [thickness_limits(size)[0].value_si * 1000 for size in sizes]
    assert slots(found, left_edge() + 84, 40) == pytest.approx(least, abs=TRUE_MM)
    # DGUV 209-021: a tenth of the wire; no printed table is stricter
    assert least == pytest.approx([0.9 * float(size.metric_name) for size in sizes])


def test_the_stretch_gauge_ends_three_percent_on() -> None:
    """3 % of the strictest manual (chain-limits), over links of the table's pitch."""
    page = page_of("gauge-chain-stretch")
    found = [one - left_edge() for one in upright(page)]
    for size in gauges.gauged_sizes():
        pitch = number(gauges.pitch_rows(gauges.SHORT_LINK, size)[0])
        count = math.floor(184.0 / (pitch * 1.03))
        assert f"lay {count} links" in text_of(page)
        for wanted in (count * pitch, count * pitch * 1.03):
            assert min(abs(one - wanted) for one in found) < TRUE_MM, (size, wanted)
    assert max(found) <= 186.0


def test_the_throat_marks_stand_where_a_throat_is_out() -> None:
    """WAC 296-155-55800 Table 12: 5 percent, and not more than 1/4 in. Reckoned here by hand."""
    page = page_of("gauge-hook-throat")
    found = [one - left_edge() for one in upright(page)]
    for new_mm in [*(one * 25.4 for one in gauges.THROATS_IN), *map(float, gauges.THROATS_MM)]:
        out = min(new_mm * 1.05, new_mm + 25.4 / 4)
        assert out == pytest.approx(largest_throat_m(new_mm / 1000) * 1000)
        assert min(abs(one - out) for one in found) < TRUE_MM, new_mm
    for inch in range(1, 8):
        assert min(abs(one - inch * 25.4) for one in found) < TRUE_MM


def test_each_line_of_the_angle_gauge_points_from_the_thread_at_its_angle() -> None:
    """The thread makes with a leg the angle of the leg from the vertical: 90 less that from the horizontal."""
    page = page_of("gauge-sling-angle")
    edge = next(one for one in lines(page) if abs(one[2] - one[0] - 186.0) < 0.01 and one[1] > 55)
    x0, y0 = left_edge() + 93.0, edge[1]
    turned = []
    for one in page.lines:
        (ax, ay), (bx, by) = ((mm(x), mm(y)) for x, y in one["pts"])
        far = max(math.dist((x0, y0), (ax, ay)), math.dist((x0, y0), (bx, by)))
        if abs(far - 90.0) > 0.02:
            continue
        inner, outer = sorted(((ax, ay), (bx, by)), key=lambda place: math.dist((x0, y0), place))
        angle = math.degrees(math.atan2(outer[1] - y0, outer[0] - x0))
        assert math.degrees(math.atan2(inner[1] - y0, inner[0] - x0)) == pytest.approx(angle, abs=0.03)
        turned.append(angle)
    assert sorted(turned) == pytest.approx(range(181), abs=0.03)
    said = text_of(page)
    assert said.count("90°") == 2
    # 1 / sin 60 = 1.1547, 1 / sin 45 = 1.4142, rounded to the safe side
    letters = "".join(one["text"] for one in page.chars)
    assert letters.count("factor 1.16") == 2
    assert letters.count("factor 1.42") == 2


def test_the_numbers_of_the_angle_gauge_stand_at_their_lines() -> None:
    page = page_of("gauge-sling-angle")
    edge = next(one for one in lines(page) if abs(one[2] - one[0] - 186.0) < 0.01 and one[1] > 55)
    x0, y0 = left_edge() + 93.0, edge[1]
    seen = 0
    for word in page.extract_words():
        name = re.fullmatch(r"(\d+)°", word["text"])
        x, y = mm((word["x0"] + word["x1"]) / 2), mm((word["top"] + word["bottom"]) / 2)
        if name and y > y0 and abs(math.dist((x0, y0), (x, y)) - 77.0) < 4:
            angle = 90 - abs(math.degrees(math.atan2(y - y0, abs(x - x0))))
            assert angle == pytest.approx(int(name[1]), abs=3)
            seen += 1
    assert seen >= 19


def test_slots_of_the_rope_gauge_are_as_wide_as_the_rope() -> None:
    found = blocks(page_of("gauge-wire-rope"))
    both = slots(found, left_edge() + 30, 56) + slots(found, left_edge() + 126, 56)
    assert both == pytest.approx([plain_number(size) * 25.4 for size in gauges.rope_sizes()], abs=TRUE_MM)
    said = text_of(page_of("gauge-wire-rope"))
    for row in table("wire-rope-limits").rows:
        if row["quantity"] == "diameter_loss":
            assert f": {row['value']} {row['unit']}" in said


def test_the_clip_gauge_has_the_spacing_and_the_counts_of_the_table() -> None:
    """29 CFR 1918 Appendix II Table 1: 1/2 in rope, 3 in; 1 in rope, 6 in and 5 drop-forged clips."""
    page = page_of("gauge-clips")
    found = [one - left_edge() - 4 for one in upright(page)]
    for clips in gauges.spaced_clips():
        apart = to_si(number(clips.spacing), "in", "length") * 1000
        assert min(abs(one - apart) for one in found) < TRUE_MM
    said = text_of(page)
    assert "1/2 in and smaller: 3 in apart" in said
    assert (
        "1 in rope: 5 drop-forged clips; 6 clips of other material; turn back 26 in; torque 225 lb·ft" in said
    )


def test_a_rope_smaller_than_the_row_is_not_told_its_torque() -> None:
    """The spacing and count of 1/2 in hold for smaller rope (printed so); turn-back and torque are of 1/2 in alone."""
    said = text_of(page_of("gauge-clips"))
    assert "1/2 in rope: 3 drop-forged clips" in said


# ---------------------------------------------------------------------------------- cards and tags


def panels(size: typeset.PaperSize) -> dict[int, str]:
    """The text of each page of the pocket book, the upper row turned the right way up."""
    page = page_of("pocket-book", size)
    wide, high = page.width / 4, page.height / 2
    upper = [(place * wide, 0.0) for place in range(4)]
    lower = [(place * wide, high) for place in range(4)]
    found = {}
    for number_, (x, y) in zip((5, 4, 3, 2, 6, 7, 8, 1), [*upper, *lower], strict=True):
        said = " ".join(page.crop((x, y, x + wide, y + high)).extract_text().split())
        found[number_] = said[::-1] if y == 0 else said  # what stands on its head is read backwards
    return found


@pytest.mark.parametrize("size", typeset.PAPERS)
def test_the_pocket_book_folds_to_pages_in_order(size: typeset.PaperSize) -> None:
    """Pages 5, 4, 3, 2 stand on their heads above 6, 7, 8 and 1: cut between 4, 3 and 7, 8, they fold to a book."""
    found = panels(size)
    heads = {
        1: "Pocket book", 2: "Chain to tie down", 3: "May it lift?", 4: "Sling angles", 5: "Two legs of chain",
        6: "Wire rope clips", 7: "When is it out?", 8: "Sources",
    }  # fmt: skip
    for number_, head in heads.items():
        assert found[number_].startswith(head), (number_, found[number_][:60])
        assert found[number_].endswith(f" {number_}")
    assert "3/8 in 2,650 5,400 6,600 7,100 8,800" in found[2]
    assert "3/8 in 7,100 8,800" in found[3]
    assert "3/8 in 12,300 10,000 7,100" in found[5]
    assert "1/2 in 3 3 in 11-1/2 in 65 lb·ft" in found[6]
    assert "Hook Throat opened by out at 5%" in found[7]
    assert "90 to 120° 87%" in found[4]
    assert "400 °F (204 °C) 10% 0% 15% 0%" in found[7]


@pytest.mark.parametrize("size", typeset.PAPERS)
def test_no_word_of_a_pocket_page_crosses_a_fold(size: typeset.PaperSize) -> None:
    page = page_of("pocket-book", size)
    for one in page.chars:
        if one["text"].strip():
            assert int(one["x0"] // (page.width / 4)) == int(one["x1"] // (page.width / 4))
            assert int(one["top"] // (page.height / 2)) == int(one["bottom"] // (page.height / 2))


def test_pocket_pages_hold_the_tables_whole() -> None:
    found = panels("letter")
    for size in {row["size_in"] for row in claims("chain-tie-down")}:
        grades = ({"grade": grade} for grade in ("30", "43", "70", "80", "100"))
        assert printed_line("chain-tie-down", size, *grades) in found[2]


def test_tags_are_as_large_as_they_say_and_rate_nothing() -> None:
    page = page_of("blank-tags")
    said = text_of(page)
    assert said.count("Do not use") >= 2
    assert "repeats the maker’s tag" in " ".join(said.split())
    assert not re.search(r"\d (lb|kg|t)\b", said)
    frames = {(round(mm(one["width"]), 1), round(mm(one["height"]), 1)) for one in page.curves}
    assert (148.0, 76.0) in frames


# ---------------------------------------------------------------------------------- a changed cell


def with_changed(
    monkeypatch: pytest.MonkeyPatch,
    name: str,
    change: dict[str, str],
    *,
    to: ModuleType = gauges,
    **where: str,
) -> None:
    """One cell of a table is another, for whoever draws."""
    held = table(name)
    rows = tuple(
        {**row, **change} if all(row[key] == value for key, value in where.items()) else row
        for row in held.rows
    )
    changed = Table(name, held.columns, rows)
    assert changed.rows != held.rows
    real = table
    monkeypatch.setattr(to, "table", lambda asked: changed if asked == name else real(asked))


def test_a_changed_cell_changes_the_gauge(monkeypatch: pytest.MonkeyPatch) -> None:
    before = gauges.clip_gauge()
    with_changed(
        monkeypatch, "wire-rope-clips", {"value": "6-1/2"}, size_in="1", quantity="spacing", unit="in"
    )
    after = gauges.clip_gauge()
    assert after != before
    document = pdfplumber.open(io.BytesIO(typesetter().set(after, "letter", MADE)))
    assert any(abs(one - left_edge() - 4 - 6.5 * 25.4) < TRUE_MM for one in upright(document.pages[0]))


def test_two_sheets_that_print_two_pitches_of_one_chain_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    with_changed(
        monkeypatch, "chain-dimensions", {"value": "31"}, chain="grade_10", size_mm="10", quantity="pitch"
    )
    with pytest.raises(gauges.GaugeRefused, match="31 mm"):
        gauges.chain_size_gauge()


def test_every_size_of_a_gauge_is_named_once() -> None:
    said = text_of(page_of("gauge-chain-size"))
    for size, other in itertools.combinations(gauges.gauged_sizes(), 2):
        assert size != other
    assert said.count("Lifting chain, grades") == len(gauges.gauged_sizes())


# ---------------------------------------------------------------------------------- charts for the wall


def claims(name: str) -> list[dict[str, str]]:
    """The rows of a table, read from its file and not by calc."""
    with (ROOT / "tables" / name / "claims.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def printed_line(name: str, size: str, *columns: dict[str, str]) -> str:
    """How a row of a chart must read: the size, and for each column the cell of the file or the dash."""
    cells = []
    for where in columns:
        wanted = {"size_in": size, "unit": "lb", **where}
        found = [row["value"] for row in claims(name) if all(row[key] == one for key, one in wanted.items())]
        cells.append(found[0] if found else "–")
    return f"{size} in {' '.join(cells)}"


def lines_of(name: str) -> list[str]:
    return [" ".join(line.split()) for line in text_of(page_of(name)).splitlines()]


def test_every_limit_of_the_chain_chart_is_its_cell() -> None:
    said = lines_of("wall-chain")
    for size in {row["size_in"] for row in claims("chain-tie-down")}:
        grades = ({"grade": grade} for grade in ("30", "43", "70", "80", "100"))
        assert printed_line("chain-tie-down", size, *grades) in said
    for size in {row["size_in"] for row in claims("chain-lifting")}:
        grades = ({"grade": grade, "legs": "1"} for grade in ("80", "100"))
        assert printed_line("chain-lifting", size, *grades) in said
    assert "3/8 in 2,650 5,400 6,600 7,100 8,800" in said  # 49 CFR 393.108


def test_no_chart_lets_grade_70_unmarked_or_altered_chain_lift() -> None:
    said = lines_of("wall-chain")
    for grade, uses in (
        ("Grade 30", "no yes"),
        ("Grade 43", "no yes"),
        ("Grade 70", "no yes"),
        ("Altered", "no no"),
    ):
        assert f"{grade} {uses}" in said
    assert "Unmarked no yes" in said


def test_the_angle_chart_has_the_cells_of_two_legs_and_the_sine() -> None:
    """Factor 1 / sin(angle); a leg of two pulls half the load times that, both rounded up."""
    said = lines_of("wall-sling-angles")
    for size in {row["size_in"] for row in claims("chain-lifting")}:
        columns = (
            {"grade": grade, "legs": "2", "angle_from_horizontal": angle}
            for grade in ("80", "100")
            for angle in ("60", "45", "30")
        )
        assert printed_line("chain-lifting", size, *columns) in said
    for angle in range(90, 25, -5):
        factor = 1 / math.sin(math.radians(angle))
        found = (re.fullmatch(rf"{angle}° ([\d.]+) ([\d,]+) lb", line) for line in said)
        printed = next(filter(None, found))
        assert -1e-9 < float(printed[1]) - factor < 0.0101, angle
        assert -1e-9 < float(printed[2].replace(",", "")) - 500 * factor < 1.01, angle


def test_three_slings_are_drawn_at_their_angles() -> None:
    slopes = set()
    for one in page_of("wall-sling-angles").lines:
        (ax, ay), (bx, by) = one["pts"]
        if abs(mm(math.dist((ax, ay), (bx, by))) - 28.0) < TRUE_MM:
            slopes.add(round(math.degrees(math.atan2(abs(by - ay), abs(bx - ax))), 1))
    assert slopes == {60.0, 45.0, 30.0}


def test_the_clip_chart_has_the_cells_that_ask_for_most() -> None:
    said = lines_of("wall-clips")
    rows = [row for row in claims("wire-rope-clips") if row["default"] == "yes"]
    for size in {row["size_in"] for row in rows if row["quantity"] == "clips_drop_forged"}:
        line = next(one for one in said if one.startswith(f"{size} in "))
        for quantity, unit in (
            ("clips_drop_forged", "count"),
            ("turn_back", "in"),
            ("torque", "lbf.ft"),
            ("spacing", "in"),
        ):
            found = [
                row
                for row in rows
                if (row["size_in"], row["quantity"], row["unit"]) == (size, quantity, unit)
            ]
            if found:
                most = max(found, key=lambda row: plain_number(row["value"]))["value"]
                shown = {"count": most, "in": f"{most} in", "lbf.ft": f"{most} lb·ft"}[unit]
                assert f" {shown}" in line, (size, quantity)
    assert "1/2 in 3 4 3 in 11-1/2 in 65 lb·ft" in said
    # Printed for 1/2 in and smaller (29 CFR 1918 Appendix II Table 1); 9/16 in has no figure of its own.
    assert "3/8 in 3 4 3 in 6-1/2 in 45 lb·ft" in said
    assert "9/16 in 3 – – 12 in 95 lb·ft" in said


def test_the_hitch_chart_has_the_shares_and_the_colours() -> None:
    said = lines_of("wall-hitches")
    for row in claims("choker-factors"):
        if row["quantity"] == "share_of_choker_rating":
            assert f"{row['choke_angle_from']} to {row['choke_angle_to']}° {row['value']}%" in said
    for legs in "234":
        assert f"{legs} 2" in said
    cells = {
        (row["colour"], row["hitch"], row["angle_from_vertical"]): row["value"]
        for row in claims("web-slings")
        if row["legs"] == "1"
    }
    for colour in {row["colour"] for row in claims("web-slings")} - {"factor"}:
        wanted = [cells[colour, hitch, angle] for hitch, angle in wall.WEB_COLUMNS]
        assert f"{key_text('web-slings', 'colour', colour)} {' '.join(wanted)}" in said


def test_each_drawn_hitch_holds_what_the_worksheet_says() -> None:
    """Vertical 1; choke 3/4; basket 2 sin(angle from the horizontal); the answer of the worksheet hitch is asked for each."""
    said = text_of(page_of("wall-hitches"))
    for hitch, angle in wall.HITCHES_DRAWN:
        asked = {"sling_kind": "chain", "grade": "80", "rating": "1,000 kg", "condition": "marked-good"}
        if hitch == "choked":
            asked |= {"hitch": "choker", "choke_angle": f"{angle} deg", "edge": "padded"}
        elif hitch != "straight":
            asked |= {"hitch": "basket", "basket_angle": f"{90 - angle} deg", "edge": "padded"}
        else:
            asked |= {"hitch": "vertical"}
        found = answer("hitch", asked, "si")["results"]
        holds = found["factor_hitch"]["value"] * found["factor_angle"]["value"]
        assert holds == pytest.approx(wall.holds_of_straight(hitch, angle))
        assert f"× {math.floor(holds * 100 + 1e-9) / 100:.2f}" in said
    slopes = {
        round(math.degrees(math.atan2(abs(one["pts"][1][0] - one["pts"][0][0]), one["height"])), 1)
        for one in page_of("wall-hitches").lines
        if one["height"] > 8
    }
    assert slopes == {0.0, 30.0, 45.0}


def test_the_heat_chart_has_the_cells_of_both_grades() -> None:
    said = lines_of("wall-heat")
    rows = claims("chain-heat-asme")
    for degrees in {row["temperature_degF"] for row in rows}:
        cells = {
            (row["grade"], row["quantity"]): row["value"]
            for row in rows
            if row["temperature_degF"] == degrees
        }
        order = [
            (grade, what)
            for grade in ("80", "100")
            for what in ("reduction_while_hot", "reduction_afterwards")
        ]
        wanted = " ".join(f"{cells[key]}%" for key in order)
        assert any(line.startswith(f"{degrees} °F (") and line.endswith(f" {wanted}") for line in said), (
            degrees
        )
    for row in claims("sling-temperature-limits"):
        if row["default"] == "yes":
            printed = row["value"].replace("-", "\N{MINUS SIGN}")
            assert any(f" {printed} °{row['unit'][-1]}" in line for line in said), row


def test_the_inspection_chart_has_every_limit_that_the_book_takes() -> None:
    said = lines_of("wall-inspection")
    for name in ("hook-limits", "chain-limits", "shackle-limits", "wire-rope-limits"):
        for row in claims(name):
            if row["default"] == "yes" and row["item"] not in ("web_sling", "lifting_bar", "ship_rope"):
                unit = {"%": "%", "count": "", "ratio": "", "deg": "°"}.get(row["unit"], f" {row['unit']}")
                limit = f"out {row['sense'].removeprefix('out_')} {row['value']}{unit}"
                assert any(line.endswith(limit if row["value"] != "0" else "any at all") for line in said), (
                    row
                )
    text = " ".join(said)
    for row in claims("removal-criteria"):
        if row["rule"] not in ("yearly", "interval", "washington-list"):
            assert row["value"] in text


def test_the_tie_down_chart_has_the_rules_and_the_straps() -> None:
    said = lines_of("wall-tie-down")
    text = " ".join(said)
    rules = {(row["item"], row["rule"]): row["value"] for row in claims("tie-down-rules")}
    for key in wall.LAW_RULES:
        assert rules[key] in text, key
    for row in claims("tie-down-other"):
        if row["material"] == "synthetic_webbing" and row["unit"] == "lb":
            assert f"{row['size_in']} in {row['value']}" in said


def test_a_changed_cell_changes_the_chart(monkeypatch: pytest.MonkeyPatch) -> None:
    with_changed(
        monkeypatch, "chain-tie-down", {"value": "6,601"}, grade="70", size_in="3/8", unit="lb", to=wall
    )
    document = pdfplumber.open(io.BytesIO(typesetter().set(wall.chain_chart(), "letter", MADE)))
    assert "3/8 in 2,650 5,400 6,601 7,100 8,800" in text_of(document.pages[0])


def test_a_value_that_nobody_saw_bears_a_ring_that_is_explained(monkeypatch: pytest.MonkeyPatch) -> None:
    assert "A small ring" not in text_of(page_of("wall-chain"))
    circles = len(page_of("wall-chain").curves)
    with_changed(
        monkeypatch, "chain-tie-down", {"checked": "memory"}, grade="70", size_in="3/8", unit="lb", to=wall
    )
    document = pdfplumber.open(io.BytesIO(typesetter().set(wall.chain_chart(), "letter", MADE)))
    assert "A small ring" in text_of(document.pages[0])
    assert (
        len(document.pages[0].curves) == circles + 2
    )  # the ring, and the triangle of its caution is a polygon
