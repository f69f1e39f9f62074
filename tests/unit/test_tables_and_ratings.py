"""The table reader and the typed look-ups."""

from pathlib import Path

import pytest

from calc import ratings, tables
from calc.tables import NoSuchRow, NoSuchTable, Table


def test_a_table_is_read_with_its_columns() -> None:
    chain = tables.table("chain-tie-down")
    assert {"grade", "size_in", "value", "unit", "source", "locator", "checked"} <= set(chain.columns)
    assert tables.table_names()[0] == "chain-tie-down"


def test_a_quantity_has_a_sense_and_a_dimension() -> None:
    assert tables.meaning("chain-wear", "minimum_thickness") == tables.Meaning("out_under", "length")
    assert tables.meaning("hook-limits", "twist") == tables.Meaning("by_row", "angle")
    with pytest.raises(NoSuchRow, match="table chain-wear has no quantity colour; it has minimum_thickness"):
        tables.meaning("chain-wear", "colour")


def test_no_such_table_names_those_that_exist() -> None:
    with pytest.raises(NoSuchTable, match="there is no table rope-gold; there are .*chain-tie-down"):
        tables.table("rope-gold")


SMALL = Table("small", ("grade", "size", "value", "unit"), (
    {"grade": "7", "size": "1", "value": "1,200", "unit": "lb"},
    {"grade": "7", "size": "2", "value": "x", "unit": "lb"},
    {"grade": "8", "size": "2", "value": "3/8", "unit": "in"},
))  # fmt: skip


def test_one_row_or_a_reason() -> None:
    assert SMALL.one(grade="8")["value"] == "3/8"
    assert SMALL.values("size") == ("1", "2")
    with pytest.raises(NoSuchRow, match="2 rows for grade 7; name more columns"):
        SMALL.one(grade="7")
    with pytest.raises(NoSuchRow, match="no row for grade 9. It has grade: 7, 8"):
        SMALL.one(grade="9")
    with pytest.raises(NoSuchRow, match="no row for grade 8, size 1$"):
        SMALL.one(grade="8", size="1")
    with pytest.raises(NoSuchRow, match="no column colour; it has grade, size"):
        SMALL.where(colour="red")


def test_values_become_numbers() -> None:
    assert tables.number(SMALL.rows[0]) == 1200
    assert tables.value_si(SMALL.rows[2], "length") == pytest.approx(0.009525)
    with pytest.raises(NoSuchRow, match="value “x”"):
        tables.number(SMALL.rows[1])


@pytest.mark.parametrize("typed", ["3/8", "3/8 in", '3/8"', "0.375", "10 mm", "  3/8 "])
def test_a_size_is_found_however_it_is_written(typed: str) -> None:
    assert ratings.inch_size("chain-lifting", typed, grade="80") == "3/8"


@pytest.mark.parametrize(
    ("typed", "reason"),
    [("10", "not in this table; sizes are 7/32 in .5.5 mm."), ("11 mm", "not in this table"), ("big", "no number"),
     ("3/8 lb", "unit of weight")],
)  # fmt: skip
def test_a_size_that_is_not_there_lists_what_is(typed: str, reason: str) -> None:
    with pytest.raises(ratings.NotRated, match=reason):
        ratings.inch_size("chain-lifting", typed, grade="80")


def test_lifting_ratings_as_osha_prints_them() -> None:
    """OSHA, Guidance on Safe Sling Use, Table 1 (grade 80) and Table 2 (grade 100)."""
    assert ratings.chain_lifting_leg("80", "3/8").printed == "7,100 lb"
    assert ratings.chain_lifting_leg("100", "13 mm").working_load_limit_kg == pytest.approx(
        15000 * 0.45359237
    )
    printed = ratings.chain_lifting_printed("80", "1/2", 2, 60.0)
    assert printed is not None
    assert printed.printed == "20,800 lb"
    four = ratings.chain_lifting_printed("80", "3/8", 4, 45.0)
    assert four is not None
    assert four.printed == "15,100 lb"
    assert ratings.chain_lifting_printed("80", "1/2", 2, 59.0) is None


def test_grades_that_do_not_lift() -> None:
    """ASTM A413, scope: grades 30, 43 and 70 are for uses other than overhead lifting."""
    for grade in ("30", "43", "70"):
        with pytest.raises(ratings.NotRated, match="ties loads down only"):
            ratings.chain_lifting_leg(grade, "3/8")
    with pytest.raises(ratings.NotRated, match="grade 120 is not in the lifting tables"):
        ratings.chain_lifting_leg("120", "3/8")


def test_tie_down_ratings_by_law() -> None:
    """49 CFR 393.108, chain table (from memory of the printed table)."""
    assert ratings.chain_tie_down("70", "3/8").printed == "6,600 lb"
    with pytest.raises(ratings.NotRated, match="grade 12 is not in the tie-down table; it has grades 30, 43"):
        ratings.chain_tie_down("12", "3/8")


def test_shackles() -> None:
    """RR-C-271, grade A, 5/8 in bow: 3-1/4 short tons (from memory of the printed table)."""
    assert ratings.shackle("A", "5/8").working_load_limit_kg == pytest.approx(6500 * 0.45359237)


@pytest.mark.parametrize("typed", ["10 mm", "10", " 10mm ", "1 cm"])
def test_a_metric_size_is_found(typed: str) -> None:
    """DGUV Information 209-021, grade 8 after EN 818-4: 10 mm lifts 3,150 kg on one leg."""
    if typed == "1 cm":
        with pytest.raises(ratings.NotRated, match="not in the table of grade 8"):
            ratings.metric_chain_leg("8", typed)
        return
    assert ratings.metric_chain_leg("8", typed).printed == "3,150 kg"


@pytest.mark.parametrize(
    ("grade", "typed", "reason"),
    [("8", "3/8 in", "not in the table of grade 8; sizes are 4, 6, 7, 8, 10, 13"), ("8", "11 mm", "not in the table"),
     ("5", "thick", "no number.*; sizes are 6, 8"), ("4", "10 kg", "unit of weight"),
     ("80", "10 mm", "grade 80 is not in the metric lifting table; it has grades 4, 5, 8")],
)  # fmt: skip
def test_a_metric_size_that_is_not_there(grade: str, typed: str, reason: str) -> None:
    with pytest.raises(ratings.NotRated, match=reason):
        ratings.metric_chain_leg(grade, typed)


@pytest.mark.parametrize(
    ("grade", "legs", "angle", "printed"),
    [("8", 2, 45.0, "4,250 kg"), ("8", 2, 88.0, "4,250 kg"), ("8", 2, 44.99, "3,150 kg"), ("8", 2, 30.0, "3,150 kg"),
     ("8", 3, 60.0, "6,700 kg"), ("8", 4, 37.0, "4,750 kg"), ("4", 2, 51.0, "2,240 kg"), ("4", 2, 31.0, "1,600 kg")],
)  # fmt: skip
def test_metric_slings_as_printed(grade: str, legs: int, angle: float, printed: str) -> None:
    """DGUV Information 209-021, tables after DIN EN 818-4 (grade 8) and -5 (grade 4), 10 mm; angles there from vertical."""
    found = ratings.metric_chain_printed(grade, "10 mm", legs, angle)
    assert found is not None
    assert found.printed == printed


def test_metric_slings_flatter_than_the_table() -> None:
    assert ratings.metric_chain_printed("8", "10 mm", 2, 29.99) is None
    assert ratings.mode_factor(2, 29.99) is None


def test_counting_of_legs_by_the_printed_tables() -> None:
    """OSHA, Guidance on Safe Sling Use, Tables 1 and 2: three and four legs as three. EN 818-4, mode factors (memory):
    1.4 and 2.1 to 45 degrees from the vertical, 1 and 1.5 to 60.
    """
    assert [ratings.legs_counted_by_osha(legs).value for legs in (2, 3, 4)] == [2, 3, 3]
    for legs, steep, flat in ((2, 1.4, 1.0), (3, 2.1, 1.5), (4, 2.1, 1.5)):
        for angle, factor in ((45.0, steep), (90.0, steep), (44.9, flat), (30.0, flat)):
            found = ratings.mode_factor(legs, angle)
            assert found is not None
            assert found.value == factor
    assert ratings.legs_counted_by_osha(4).source == "osha-sling-guidance"


def test_tables_are_read_from_the_package_once_they_lie_there(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    (tmp_path / "index.json").write_text("{}", encoding="utf-8")
    monkeypatch.setattr(tables, "_PACKED", str(tmp_path))
    assert tables._folder.__wrapped__() == str(tmp_path)
    monkeypatch.setattr(tables, "_PACKED", str(tmp_path / "nowhere"))
    assert tables._folder.__wrapped__() == tables._CHECKOUT
