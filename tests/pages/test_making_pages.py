"""The functions that make pages: what a page may call, how values are shown, and how a wrong call is refused."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from fractions import Fraction
from pathlib import Path

import jinja2
import pytest

from build_scripts import pages, ratings_index
from build_scripts.look_up_pages import lead_links_on, mark_of, page_of, split_front_matter
from build_scripts.markup import caution, rich
from build_scripts.pages import (
    IN_ORDER_OF_USE,
    ROOT,
    Book,
    PageError,
    _Writer,
    recalled_line,
    tight_blocks,
)
from build_scripts.sheet_form import Box, form_inputs
from build_scripts.table_declaration import declarations, declared
from build_scripts.table_view import companions, key_text, view
from build_scripts.table_words import MissingWords
from calc.answering import declared as worksheets
from calc.answering import described
from calc.tables import NoSuchRow, table, table_names

TEMPLATES = Path(__file__).resolve().parents[2] / "build_scripts" / "templates"

# Exact by definition: NIST Special Publication 811 (2008), Appendix B.
KG_PER_LB = Decimal("0.45359237")
MM_PER_IN = Decimal("25.4")


@pytest.fixture(scope="module")
def book() -> Book:
    """The functions of a page."""
    return Book(
        jinja2.Environment(loader=jinja2.FileSystemLoader(TEMPLATES), undefined=jinja2.StrictUndefined)
    )


def test_a_cell_is_the_printed_one(book: Book) -> None:
    """49 CFR 393.108: grade 70, 3/8 in: 6,600 lb, 2,990 kg."""
    assert book.cell("chain-tie-down", grade="70", size_in="3/8", unit="lb") == "6,600 lb"
    assert book.cell("chain-tie-down", grade="70", size_in="3/8", unit="kg") == "2,990 kg"


@pytest.mark.parametrize(
    ("conditions", "said"),
    [
        ({"grade": "70", "size_in": "3/8"}, "has 2 rows"),
        ({"grade": "71", "size_in": "3/8", "unit": "lb"}, "no row for grade 71"),
        ({"colour": "red"}, "no column colour"),
    ],
)
def test_a_cell_that_is_not_one_is_refused(book: Book, conditions: dict[str, str], said: str) -> None:
    with pytest.raises(PageError, match=said):
        book.cell("chain-tie-down", **conditions)


def test_wrong_calls_are_refused_by_name(book: Book) -> None:
    with pytest.raises(PageError, match="there is no table chain-tiedown"):
        book.cell("chain-tiedown", grade="70")
    with pytest.raises(PageError, match="no result leg_pull; it has leg_tension"):
        book.answer("sling-legs", "leg_pull")
    with pytest.raises(PageError, match="there is no worksheet slinglegs"):
        book.sheet("../", "slinglegs")
    with pytest.raises(PageError, match="load: is missing"):
        book.answer("sling-legs", "leg_tension", legs="2", known_by="angle", angle="45")
    with pytest.raises(PageError, match="no row for key cfr-49"):
        book.source("../", "cfr-49")
    with pytest.raises(ValueError, match="no kind of caution danger"):
        caution("danger", "x")
    with pytest.raises(NoSuchRow):
        view("chain-tie-down", grade="71")


def test_an_answer_is_the_one_calc_gives(book: Book) -> None:
    """2,000 lb on two legs at 30 degrees: each leg pulls the load, 2,000 lb (1 / (2 sin 30) = 1)."""
    said = book.answer("sling-legs", "leg_tension", load="2000 lb", legs="2", known_by="angle", angle="30")
    assert said.startswith('<span class="value">2,000 lb</span> (')


def test_fractions_are_set_and_still_read_as_typed() -> None:
    set_text = rich("1-3/8 in and 9/32, not 24/7 or a/b or 80 9/32")
    assert '1<span class="frac-dash">-</span><span class="frac">3/8</span> in' in set_text
    assert '<span class="frac">9/32</span>, not 24/7 or a/b or 80 <span class="frac">9/32</span>' in set_text
    assert rich("<b> & 1/2") == '&lt;b&gt; &amp; <span class="frac">1/2</span>'


def _value(text: str) -> Fraction:
    whole, _, part = text.replace(",", "").partition("-")
    return Fraction(whole) + (Fraction(part) if part else 0)


# One unit in another, exactly: pounds are defined in kilograms, inches in millimetres, pound-force by standard gravity.
LBF_IN_KN = Fraction(KG_PER_LB) * Fraction("9.80665") / 1000
EXACT = {
    ("lb", "kg"): Fraction(KG_PER_LB),
    ("short_ton", "kg"): 2000 * Fraction(KG_PER_LB),
    ("short_ton", "lb"): Fraction(2000),
    ("kg", "lb"): 1 / Fraction(KG_PER_LB),
    ("t", "lb"): 1000 / Fraction(KG_PER_LB),
    ("lbf", "kN"): LBF_IN_KN,
    ("kN", "lbf"): 1 / LBF_IN_KN,
    ("in", "mm"): Fraction(MM_PER_IN),
    ("mm", "in"): 1 / Fraction(MM_PER_IN),
}


def _converted() -> list[tuple[str, str, Fraction, Fraction]]:
    """Table, sense, exact value and shown value of every companion in a unit of EXACT."""
    found = []
    for name in (name for name in table_names() if name != "sources"):
        for row in table(name).rows:
            for made in companions(name, row):
                number, unit = made.text.split(" ")
                if (row["unit"], unit) in EXACT:
                    exact = _value(row["value"]) * EXACT[row["unit"], unit]
                    found.append((name, declared(name).sense(row), exact, _value(number)))
    return found


def test_what_a_part_may_carry_is_never_shown_above_the_printed_rating() -> None:
    shown = [pair for pair in _converted() if pair[1] == "capacity"]
    assert len(shown) > 600
    assert [pair for pair in shown if not pair[3] <= pair[2] < pair[3] * Fraction(101, 100)] == []
    assert {"turnbuckles", "wire-rope", "chain-strength", "shackles"} <= {name for name, *_ in shown}


def test_a_least_thickness_is_never_shown_below_the_printed_one() -> None:
    shown = [pair for pair in _converted() if pair[1] in ("out_under", "demand")]
    assert len([pair for pair in shown if pair[0] == "chain-wear"]) == 47
    assert [pair for pair in shown if not pair[2] <= pair[3] < pair[2] * Fraction(102, 100)] == []


def test_a_limit_is_never_shown_above_the_printed_one() -> None:
    shown = [pair for pair in _converted() if pair[1] in ("out_at", "out_over")]
    assert {"chain-wear", "wire-rope-limits", "hook-limits"} <= {name for name, *_ in shown}
    assert [pair for pair in shown if not pair[3] <= pair[2] < pair[3] * Fraction(102, 100)] == []


def test_the_rating_search_shows_no_more_than_is_printed() -> None:
    """Wire rope 0.65 short ton is 589.67 kg, 2.5 short tons are 2,267.96 kg."""
    answers = {entry.label: entry.answer for entry in ratings_index.entries() if entry.table == "wire-rope"}
    rope = "Rope 6x19 EIPS, wire core"
    assert answers[f"{rope}, 1/4 in, sling vertical"] == "0.65 short ton (≈\u00a0589 kg)"
    assert answers[f"{rope}, 1/2 in, sling vertical"] == "2.5 short tons (≈\u00a02,260 kg)"


def test_a_plain_length_is_converted_to_the_nearest() -> None:
    row = table("shackles-dee").one(swl_t="1", quantity="jaw_width")
    assert row["value"] == "20"
    assert companions("shackles-dee", row)[0].text == "0.787 in"  # 20 / 25.4 is 0.7874


def test_a_caution_is_of_the_kind_that_its_table_says() -> None:
    """What forbids says Stop, whatever words it uses: the kind is data, not read out of the sentence."""
    kinds = {(d.name, one.key): one.kind for d in declarations().values() for one in d.cautions}
    for name, key in (
        ("web-slings", "no-label-no-lift"),
        ("wire-rope", "no-tag-no-lift"),
        ("chain-old-grades", "cut-it-up"),
        ("temper-colours", "tint-or-glow-ends-it"),
        ("steel-hot-strength", "not-for-rated-hardware"),
    ):
        assert kinds[name, key] == "prohibition"
    assert kinds["chain-lifting", "flattest-leg"] == "mandatory"
    assert next(kind for kind, _ in view("web-slings").cautions) == "prohibition"


def test_a_word_that_has_no_words_stops_the_build() -> None:
    with pytest.raises(MissingWords, match=r"chain-hooks\.ftl: has no words for word-item-open_hook; write"):
        key_text("chain-hooks", "item", "open_hook")


def test_every_value_of_a_table_is_on_its_page_once() -> None:
    for name in (name for name in table_names() if name != "sources"):
        seen = view(name)
        shown = [one for wide in seen.wides for line in wide.lines for cell in line.cells for one in cell]
        assert sum(one.rows for one in shown) == seen.rows, name
        assert sum(claim.count for claim in seen.claims) == seen.rows, name


def test_keys_read_as_the_trade_says_them() -> None:
    assert key_text("chain-tie-down", "grade", "70") == "Grade 70"
    assert key_text("chain-tie-down", "size_in", "1-1/4") == "1-1/4 in"
    assert key_text("chain-lifting", "legs", "3-4") == "3 or 4 legs"
    assert key_text("chain-lifting", "angle_from_horizontal", "45") == "45°"
    assert key_text("chain-lifting-metric", "angle_from_vertical", "0-45") == "0 to 45°"
    assert key_text("chain-lifting-metric", "legs", "endless") == "Endless sling"
    assert key_text("eyebolts", "thread", "1") == "1 in"
    assert key_text("eyebolts", "thread", "M12") == "M12"
    assert key_text("chain-hooks", "rule", "matched-to-chain") == "Matched to chain"


def test_a_size_that_is_a_key_reads_as_a_size() -> None:
    assert key_text("wire-rope-limits", "item", "rope_7_8_to_1_1_8_in") == "Rope 7/8 to 1-1/8 in"


def test_a_heading_says_from_where_an_angle_is_taken() -> None:
    headings = {
        c.heading
        for name in ("chain-lifting", "chain-lifting-metric")
        for w in view(name).wides
        for c in w.columns
    }
    assert "2 legs, 45° from the horizontal" in headings
    assert "2 legs, straight, 45 to 60° from the vertical" in headings


def test_a_row_head_does_not_say_the_name_of_its_column_again() -> None:
    for name, first in (("hardness-conversion", "20"), ("shackles-dee", "1 t"), ("rope-bending", "1")):
        assert view(name).wides[0].lines[0].heads[0] == first, name


def test_where_units_of_different_kinds_share_a_column_each_value_carries_its_own() -> None:
    """Percent, degrees and inches in one list of limits: a bare number would mean nothing."""
    wide = view("hook-limits").wides[0]
    assert wide.listed
    assert wide.columns[0].small == ""
    assert {shown.unit for line in wide.lines for cell in line.cells for shown in cell} == {"%", "°", "in"}


def test_what_sources_say_of_one_thing_stands_together() -> None:
    for name in ("densities", "design-factors", "sling-temperature-limits"):
        heads = [line.heads[0] for line in view(name).wides[0].lines]
        runs = [head for head, before in zip(heads, ["", *heads], strict=False) if head != before]
        assert len(runs) == len(set(runs)), name


def test_a_table_without_ratings_does_not_say_for_lifting() -> None:
    for name in ("proof-tests", "hook-limits", "rope-bending", "records-to-keep"):
        assert view(name).use == "lifting_gear", name
    for name in ("chain-lifting", "shackles", "wire-rope", "web-slings"):
        assert view(name).use == "lift", name
    assert view("chain-tie-down").use == "tie_down"


def test_a_temperature_is_converted_to_whole_degrees_on_the_safe_side() -> None:
    """180 °F is 82.2 °C, not hotter; 1,000 °F is 537.8 °C, out above it; -20 °F is -28.9 °C, not colder."""
    row = table("sling-temperature-limits").where(quantity="use_below", value="180")[0]
    assert companions("sling-temperature-limits", row)[0].text == "82 °C"
    row = table("sling-temperature-limits").where(quantity="remove_above", value="1,000")[0]
    assert companions("sling-temperature-limits", row)[0].text == "537 °C"
    row = table("sling-temperature-limits").where(quantity="use_above", value="-20")[0]
    assert companions("sling-temperature-limits", row)[0].text == "−28 °C"


def test_ropes_of_one_size_are_ratings_of_their_own() -> None:
    """49 CFR 393.108: webbing of 2 in holds 2,000 lb, wire rope of 3/8 in 3,000 lb; each goes by its own name."""
    made = {e.label: e.answer for e in ratings_index.entries() if e.table == "tie-down-other"}
    assert made["Synthetic webbing, 2 in"] == "2,000 lb (910 kg)"
    assert made["Wire rope 6x37 fiber core, 3/8 in"] == "3,000 lb (1,360 kg)"
    assert len(made) == len(table("tie-down-other").where(unit="lb"))


def test_two_ratings_under_one_name_stop_the_build(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(ratings_index, "row_text", lambda name, row: "chain")
    with pytest.raises(ratings_index.AmbiguousRating, match="two ratings go by the name chain"):
        ratings_index.entries()


def test_every_rating_leads_to_a_cell_of_its_table() -> None:
    made = ratings_index.entries()
    assert len({entry.label + entry.table for entry in made}) == len(made)
    for entry in made:
        page, place = entry.address.removeprefix("look-up/").split(".html#")
        row = place.removeprefix(mark_of(entry.table)).removeprefix("c-")
        assert page == page_of(entry.table).name
        assert entry.answer.startswith(table(entry.table).rows[int(row)]["value"])


def every_box(boxes: Iterable[Box]) -> list[Box]:
    """The boxes one by one: those that a part of the reader's own fills together stand in one."""
    return [one for box in boxes for one in (box.axes if box.kind == "own-part" else (box,))]


def test_a_form_has_every_input_of_its_worksheet_by_path() -> None:
    """But for what the page does not ask: a list that only the command line takes."""
    off = [
        (name, one.declared.name)
        for name in worksheets()
        for one in described(name).inputs
        if not one.declared.on_page
    ]
    assert off == [("chain-check", "damage")]
    for name in worksheets():
        sheet = described(name)
        boxes = every_box(form_inputs(sheet))
        inputs = [asked.declared for asked in sheet.inputs if asked.declared.on_page]
        assert [box.path for box in boxes] == [one.name for one in inputs]
        for box, one in zip(boxes, inputs, strict=True):
            if one.kind == "rows":
                assert box.blank is not None
                columns = [inner.name for inner in every_box(box.blank.inputs)]
                assert columns == [c.name for c in one.columns]
                assert box.rows or one.bounds.at_least == 0, f"{sheet.name} has no example row for {one.name}"
                assert (
                    not box.rows
                    or every_box(box.rows[0].inputs)[0].path == f"{one.name}[0].{one.columns[0].name}"
                )


def test_worksheets_are_listed_in_the_order_of_use() -> None:
    assert set(IN_ORDER_OF_USE) <= set(worksheets())
    assert len(set(IN_ORDER_OF_USE)) == len(IN_ORDER_OF_USE)


def test_front_matter_and_blocks() -> None:
    assert split_front_matter('---\ntitle: A: b\ngroup: "x"\n---\nrest') == (
        {"title": "A: b", "group": "x"},
        "rest",
    )
    assert split_front_matter("rest") == ({}, "rest")
    assert tight_blocks("a\n\n<div>\n\nb\n</div>\n\nc") == "a\n\n<div>\nb\n</div>\n\nc"


def test_what_nobody_read_is_said_in_the_first_line_of_a_page() -> None:
    """Recalled figures are named above the answer, not below the table; a table that was read has no such line."""
    for name in table_names():
        seen = [row["checked"] for row in table(name).rows if "checked" in row]
        line = recalled_line(view(name)) if name != "sources" else ""
        count = seen.count("memory")
        assert bool(line) == (count > 0), name
        assert not count or "ecalled" in line, name
        assert not count or 'aria-label="not seen in text"' in line, name
        assert not 0 < count < len(seen) or f"{count} of {len(seen)}" in line, name


def test_a_value_and_a_printed_figure_are_written_in_both_units(book: Book) -> None:
    """Grade 80 on 10 mm: 125,664 N. NIST-IR 6118, page 5: 27 J at -15 C."""
    calls = book.functions("understand/cold.md")
    assert "126 kN" in calls["value"]("grade-break", grade="80")
    assert "27 J" in calls["printed"]("charpy-a36-energy")
    said = calls["printed_in"]("charpy-a36-energy")
    assert 'href="../about/sources.html#nist-ir-6118"' in said
    assert "page 5" in said
    assert "read in a reprint" in said
    for name in ("value", "printed", "printed_in"):
        with pytest.raises(PageError, match="elephant"):
            calls[name]("elephant")


def test_an_old_address_leads_to_the_page_that_took_its_place(tmp_path: Path) -> None:
    writer = _Writer(tmp_path, ROOT)
    new = {
        "title": "New",
        "description": "What it says.",
        "moved_from": "understand/old.md work-out/older.md",
    }
    writer.written["understand/new.md"] = new
    writer._moved()
    for old, link in (
        ("understand/old.md", "../understand/new.html"),
        ("work-out/older.md", "../understand/new.html"),
    ):
        meta, text = split_front_matter((tmp_path / old).read_text(encoding="utf-8"))
        assert meta["leads_to"] == link
        assert f'<a href="{link}">New</a>' in text
        assert writer.written[old]["unlisted"]
    assert writer._grouped("work-out") == {}


def test_no_old_address_is_a_page_again() -> None:
    docs = ROOT / "docs"
    for path in docs.rglob("*.md"):
        meta, _ = split_front_matter(path.read_text(encoding="utf-8"))
        for old in meta.get("moved_from", "").split():
            assert not (docs / old).exists(), f"{path.name} says that it took the place of {old}"


def test_the_card_of_a_source_names_the_pages_that_explain_with_it() -> None:
    cited = pages._cited_by_explaining_pages()
    assert [one["address"] for one in cited["nist-ir-6118"]] == ["understand/cold.html"]
    assert "understand/bending-wire-rope.html" in [one["address"] for one in cited["sheave-pages"]]


def test_a_link_to_a_table_leads_to_the_page_that_holds_it() -> None:
    text = "[Wear](../look-up/shackle-limits.md) [Row](../look-up/shackle-limits.md#c-3) [Shackles](../look-up/shackles.md)"
    assert lead_links_on(text, "judge/inspect-a-shackle.md") == (
        "[Wear](../look-up/shackles.md#of-shackle-limits) [Row](../look-up/shackles.md#shackle-limits-c-3) "
        "[Shackles](../look-up/shackles.md)"
    )
    assert (
        lead_links_on('<a href="look-up/chain-wear.html">', "index.md")
        == '<a href="look-up/chain-lifting.html#of-chain-wear">'
    )
    assert lead_links_on("[Rules](shackle-rules.md)", "look-up/shackles.md") == "[Rules](#of-shackle-rules)"
    assert (
        lead_links_on("[Out](https://example.org/a.html)", "index.md") == "[Out](https://example.org/a.html)"
    )


def test_a_table_stands_on_the_one_page_that_names_it(book: Book) -> None:
    with pytest.raises(PageError, match="stands on look-up/shackles.md"):
        book.functions("look-up/hooks.md")["table"]("shackle-limits")


def test_every_table_is_on_a_page_that_people_wrote() -> None:
    """A table that no page names is shown by itself, which a reader has to search for."""
    for name in (name for name in table_names() if name != "sources"):
        assert (ROOT / "docs" / "look-up" / f"{page_of(name).name}.md").is_file(), (
            f"no page in docs/look-up names {name}"
        )


def test_prose_gives_a_value_in_the_units_of_the_reader(book: Book) -> None:
    """49 CFR 393.108 prints 6,600 lb and 2,990 kg; OSHA's sling tables print 7,100 lb alone."""
    calls = book.functions("understand/cold.md")
    assert calls["cell"]("chain-lifting", grade="80", size_in="3/8", legs="1", unit="lb") == (
        '<span class="us-only">7,100 lb</span><span class="si-only">≈ 3,220 kg (7,100 lb)</span>'
    )
    assert calls["answer"](
        "sling-legs", "leg_tension", units="us", load="2000 lb", legs="2", known_by="angle", angle="60"
    ).startswith('<span class="value">1,160 lb')
    both = calls["answer"](
        "sling-legs", "leg_tension", load="2000 lb", legs="2", known_by="angle", angle="60"
    )
    assert both.startswith('<span class="us-only"><span class="value">1,160 lb')
