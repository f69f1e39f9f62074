"""load-weight: reading, bounds, sums, refusals."""

from __future__ import annotations

import base64
import struct
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.answering import Refused, answer, described
from calc.lifting.densities import TIMBER, density_ranges
from calc.lifting.load_weight import WORKSHEET
from calc.lifting.shapes import SHAPES, ShapeError, turned, turned_box
from calc.lifting.stl import LARGEST_BYTES
from calc.words.writer import UnitSystem, Writer, plain
from tests.saying import one_reading

PLATE = {
    "shape": "plate",
    "material": "steel",
    "length": "86 in",
    "width": "38 5/8 in",
    "thickness": "1/4 in",
}
TETRA = [
    ((0.0, 0.0, 0.0), (0.0, 31.0, 0.0), (23.0, 0.0, 0.0)),
    ((0.0, 0.0, 0.0), (23.0, 0.0, 0.0), (0.0, 0.0, 47.0)),
    ((0.0, 0.0, 0.0), (0.0, 0.0, 47.0), (0.0, 31.0, 0.0)),
    ((23.0, 0.0, 0.0), (0.0, 31.0, 0.0), (0.0, 0.0, 47.0)),
]


def run(*parts: dict[str, Any], units: UnitSystem = "si", **more: Any) -> dict[str, Any]:
    rows = [{"count": "1", "tolerance": "2", **part} for part in parts]
    return answer("load-weight", {"parts": rows, **more}, units)


def value(record: dict[str, Any], key: str) -> Any:
    return record["results"][key]["value"]


def refused(*parts: dict[str, Any], **more: Any) -> dict[str, str]:
    with pytest.raises(Refused) as caught:
        run(*parts, **more)
    return {error.input: error.message for error in caught.value.errors}


def binary_stl(triangles: list[Any]) -> str:
    body = b"".join(struct.pack("<12fH", 0, 0, 0, *(c for v in t for c in v), 0) for t in triangles)
    return base64.b64encode(b"\0" * 80 + struct.pack("<I", len(triangles)) + body).decode()


def ascii_stl(triangles: list[Any]) -> str:
    lines = ["solid part"]
    for triangle in triangles:
        lines += ["facet normal 0 0 0", "outer loop"]
        lines += ["vertex " + " ".join(str(c) for c in corner) for corner in triangle]
        lines += ["endloop", "endfacet"]
    return base64.b64encode("\n".join([*lines, "endsolid part"]).encode()).decode()


def solid(data: str, **more: str) -> dict[str, Any]:
    return answer("load-weight", {"solid": data, "solid_unit": "mm", "solid_material": "lead"} | more, "si")


def test_shop_plate_weighs_what_shops_reckon() -> None:
    # 3/8 x 57-3/4 x 97 in steel plate: about 595 to 600 lb. Common practice, no source.
    shop = {**PLATE, "length": "97 in", "width": "57 3/4 in", "thickness": "3/8 in"}
    assert 595 <= value(run(shop, units="us"), "weight") <= 600


PLACES = (
    ["43 in", "19 5/16 in", "1/8 in"],
    ["66 in", "19 5/16 in", "1/8 in"],
    ["26 in", "19 5/16 in", "3 1/4 in"],
)
"""Where the parts of the example stand; it does not say so itself."""


def placed_example() -> dict[str, Any]:
    rows = zip(WORKSHEET.example["parts"], PLACES, strict=True)
    return {"parts": [{**row, "at": place} for row, place in rows]}


def test_places_are_never_the_examples() -> None:
    """A reader who changed the plate and left its place got the example's balance point."""
    record = answer("load-weight", WORKSHEET.example, "us")
    assert all("at" not in row for row in WORKSHEET.example["parts"])
    assert value(record, "centre_x") is None
    assert "give the place of each part" in record["results"]["centre_x"]["text"]


def test_worksheet_example_answers_in_both_unit_systems() -> None:
    us = answer("load-weight", placed_example(), "us")
    si = answer("load-weight", placed_example(), "si")
    assert value(us, "weight") * 0.45359237 == pytest.approx(value(si, "weight"), rel=1e-12)
    assert us["figure"]["svg"].startswith("<svg")
    assert "center of gravity lies" in us["figure"]["caption"]


def test_worksheet_example_by_hand() -> None:
    # Cubic inches / 1,728 × lb/ft³; moments about the left end. Steel: middle of 7,800 kg/m³ (OpenStax College Physics,
    # density table) and 493 lb/ft³ (Baker and Haynes, ch. 7); oak: middle of 40 and 45 lb/ft³ (Gere, density table).
    steel = (7800 * 0.3048**3 / 0.45359237 + 493) / 2
    plate = 86 * 38.625 / 4 / 1728 * steel
    hole = 3.141592653589793 * 9**2 / 4 / 1728 * steel
    bolster = 48 * 8 * 6 / 1728 * 42.5
    weight = plate - hole + bolster
    us = answer("load-weight", placed_example(), "us")
    assert value(us, "weight") == pytest.approx(weight, rel=1e-9)
    assert value(us, "centre_x") == pytest.approx((plate * 43 - hole * 66 + bolster * 26) / weight, rel=1e-9)
    assert value(us, "centre_y") == pytest.approx(38.625 / 2, rel=1e-9)
    assert value(us, "centre_z") == pytest.approx(((plate - hole) / 8 + bolster * 3.25) / weight, rel=1e-9)


def test_low_and_high_come_from_density_and_allowance() -> None:
    found = run({**PLATE, "material": "oak-air-dry", "tolerance": "3 %"})
    volume = 86 * 38.625 * 0.25 * 0.0254**3
    pcf = 0.45359237 / 0.3048**3  # Gere, density table: oak, air dry, 40 to 45 lb/ft3
    assert value(found, "weight_low") == pytest.approx(volume * 0.97 * 40 * pcf, rel=1e-9)
    assert value(found, "weight_high") == pytest.approx(volume * 1.03 * 45 * pcf, rel=1e-9)


def test_a_hole_has_the_density_of_what_it_is_cut_from() -> None:
    block = {
        "shape": "box",
        "material": "oak-air-dry",
        "length": "1100 mm",
        "width": "700 mm",
        "height": "300 mm",
        "tolerance": "0",
    }
    hole = {
        "shape": "box",
        "material": "oak-air-dry",
        "length": "500 mm",
        "width": "300 mm",
        "height": "300 mm",
        "tolerance": "0",
        "minus": "yes",
    }
    found = run(block, hole)
    assert value(found, "weight_low") / value(found, "weight_high") == pytest.approx(40 / 45, rel=1e-9)


def test_a_hole_in_another_material_widens_the_range() -> None:
    block = {"shape": "lump", "weight": "100 kg", "tolerance": "10 %"}
    hole = {
        "shape": "disc",
        "material": "oak-air-dry",
        "diameter": "300 mm",
        "thickness": "40 mm",
        "minus": "yes",
    }
    other = {"shape": "lump", "weight": "13 kg", "tolerance": "1 %", "minus": "yes"}
    found = run(block, hole, other)
    volume = 3.141592653589793 / 4 * 0.3**2 * 0.04
    pcf = 0.45359237 / 0.3048**3
    high = 110 - 13 * 0.99 - volume * 0.98 * 40 * pcf
    low = 90 - 13 * 1.01 - volume * 1.02 * 45 * pcf
    assert value(found, "weight_high") == pytest.approx(high, rel=1e-9)
    assert value(found, "weight_low") == pytest.approx(low, rel=1e-9)


def test_a_sum_may_begin_with_what_is_taken_away() -> None:
    found = run(
        {"shape": "lump", "weight": "7 kg", "minus": "yes"},
        {"shape": "lump", "weight": "31 kg"},
        {"shape": "lump", "weight": "11 kg"},
    )
    (sums,) = [one["numbers"] for one in found["steps"] if one["label"] == "All together"]
    assert sums == "− 7 kg + 31 kg + 11 kg"


def test_low_weight_is_never_below_zero() -> None:
    found = run(
        {"shape": "lump", "weight": "100 kg", "tolerance": "50"},
        {"shape": "lump", "weight": "90 kg", "minus": "yes", "tolerance": "50"},
    )
    assert value(found, "weight_low") == 0


def test_more_taken_away_than_there_is_is_refused() -> None:
    assert "takes away" in refused({"shape": "lump", "weight": "1 kg", "minus": "yes"})["parts"]


def test_count_multiplies_and_names_the_row() -> None:
    found = run({"shape": "lump", "weight": "7 kg", "count": "13", "label": "Ballast pig"})
    assert value(found, "weight") == pytest.approx(91)
    assert "Ballast pig × 13" in found["results"]["parts"]["text"]


def test_balance_point_is_the_weighed_middle() -> None:
    found = run(
        {"shape": "lump", "weight": "30 kg", "at": ["100 mm", "200 mm", "300 mm"]},
        {"shape": "lump", "weight": "70 kg", "at": ["1100 mm", "-300 mm", "50 mm"]},
    )
    assert value(found, "centre_x") == pytest.approx(800)
    assert value(found, "centre_y") == pytest.approx(-150)
    assert value(found, "centre_z") == pytest.approx(125)


def test_balance_point_is_unknown_if_a_part_has_no_place() -> None:
    found = run({"shape": "lump", "weight": "30 kg", "at": ["1 m", "0", "0"]}, {**PLATE})
    assert value(found, "centre_x") is None
    assert "give the place" in found["results"]["centre_x"]["text"]
    assert "not drawn" in found["figure"]["caption"]


def test_one_part_without_a_place_has_no_balance_point() -> None:
    """One plate without a place balanced at 0, 0, 0, "to the right"."""
    found = run(PLATE)
    assert [value(found, f"centre_{axis}") for axis in "xyz"] == [None] * 3
    assert "not drawn" in found["figure"]["caption"]


def test_one_part_alone_balances_by_its_own_shape() -> None:
    cone = {
        "shape": "cone",
        "material": "lead",
        "diameter": "120 mm",
        "height": "400 mm",
        "at": ["0", "0", "0"],
    }
    assert value(run(cone), "centre_z") == pytest.approx(-100)
    assert value(run({**cone, "along": "-z"}), "centre_z") == pytest.approx(100)
    assert value(run({**cone, "along": "x"}), "centre_x") == pytest.approx(-100)


def test_part_with_a_place_adds_its_own_offset() -> None:
    cone = {
        "shape": "cone",
        "material": "lead",
        "diameter": "120 mm",
        "height": "400 mm",
        "at": ["0", "0", "1 m"],
    }
    assert value(run(cone), "centre_z") == pytest.approx(900)


def test_turning_carries_the_axes() -> None:
    assert turned((1.0, 2.0, 3.0), "x") == (1.0, 2.0, 3.0)
    assert turned((1.0, 2.0, 3.0), "-y") == (2.0, -1.0, 3.0)
    assert turned((1.0, 2.0, 3.0), "z") == (2.0, 3.0, 1.0)
    assert turned_box((1.0, 2.0, 3.0), "-z") == (2.0, 3.0, 1.0)


def test_beam_by_weight_per_length() -> None:
    found = run({"shape": "i-beam", "weight_per_length": "31 lb/ft", "length": "12 ft"}, units="us")
    assert value(found, "weight") == pytest.approx(372)
    assert value(found, "weight_high") == pytest.approx(372 * 1.02)


def test_angle_by_weight_per_length_keeps_its_own_balance_point() -> None:
    sizes = {
        "shape": "angle",
        "material": "steel",
        "width": "90 mm",
        "depth": "130 mm",
        "thickness": "11 mm",
        "length": "2 m",
        "at": ["0", "0", "0"],
    }
    by_length = run({**sizes, "weight_per_length": "18 kg/m"})
    assert value(by_length, "weight") == pytest.approx(36)
    assert value(by_length, "centre_y") == pytest.approx(value(run(sizes), "centre_y"))
    assert value(by_length, "centre_y") < -10


@pytest.mark.parametrize("shape", sorted(set(SHAPES) - {"lump"}))
def test_each_shape_asks_for_what_it_lacks(shape: str) -> None:
    messages = refused({"shape": shape, "material": "steel"})
    (where,) = messages
    assert where == f"parts[0].{SHAPES[shape].needs[0]}"
    assert "is missing" in messages[where]


def test_lump_asks_for_its_weight_and_solids_for_their_material() -> None:
    assert "is missing" in refused({"shape": "lump"})["parts[0].weight"]
    assert "Pick what it is made of" in refused({**PLATE, "material": ""})["parts[0].material"]


@pytest.mark.parametrize(
    ("row", "where"),
    [
        (
            {"shape": "ring", "outside_diameter": "3 in", "inside_diameter": "3 in", "thickness": "1/2 in"},
            "inside_diameter",
        ),
        ({"shape": "tube", "outside_diameter": "3 in", "wall": "1.6 in", "length": "1 ft"}, "wall"),
        (
            {"shape": "square-tube", "width": "3 in", "depth": "2 in", "wall": "1.1 in", "length": "1 ft"},
            "wall",
        ),
        (
            {"shape": "angle", "width": "3 in", "depth": "2 in", "thickness": "2 in", "length": "1 ft"},
            "thickness",
        ),
        (
            {
                "shape": "channel",
                "depth": "6 in",
                "flange_width": "2 in",
                "web_thickness": "1/4 in",
                "flange_thickness": "3 in",
                "length": "1 ft",
            },
            "flange_thickness",
        ),
        (
            {
                "shape": "i-beam",
                "depth": "6 in",
                "flange_width": "2 in",
                "web_thickness": "2 in",
                "flange_thickness": "1/2 in",
                "length": "1 ft",
            },
            "web_thickness",
        ),
        ({"shape": "cylinder", "diameter": "6 in", "length": "2 in", "wall": "1 in"}, "wall"),
        ({"shape": "sphere", "diameter": "6 in", "wall": "3 in"}, "wall"),
        ({"shape": "hemisphere", "diameter": "6 in", "wall": "3 in"}, "wall"),
        ({"shape": "dished-head", "outside_diameter": "8 in", "height": "2 in", "wall": "2 in"}, "wall"),
        ({"shape": "box", "length": "8 in", "width": "7 in", "height": "2 in", "wall": "1 in"}, "wall"),
        ({"shape": "torus", "mean_diameter": "3 in", "diameter": "3.1 in"}, "diameter"),
    ],
)
def test_sizes_that_do_not_fit_name_the_box(row: dict[str, str], where: str) -> None:
    messages = refused({"material": "steel", **row})
    assert set(messages) == {f"parts[0].{where}"}


@pytest.mark.parametrize("given_text", ["0", "-3 in", "5 kg", "text", "1e400 in", "200000 in"])
def test_bad_sizes_are_refused(given_text: str) -> None:
    assert set(refused({**PLATE, "width": given_text})) == {"parts[0].width"}


def test_no_rows_and_too_many_rows() -> None:
    assert "no rows" in refused()["parts"]
    assert value(run(*([{"shape": "lump", "weight": "3 kg"}] * 100)), "weight") == pytest.approx(300)
    assert "101 rows" in refused(*([{"shape": "lump", "weight": "3 kg"}] * 101))["parts"]


def test_unknown_shape_and_material_list_what_there_is() -> None:
    messages = refused({"shape": "blob", "material": "unobtainium"})
    assert "dished-head" in messages["parts[0].shape"]
    assert "steel" in messages["parts[0].material"]


def test_every_material_has_a_rising_range_with_sources() -> None:
    for found in density_ranges().values():
        assert 0 < found.low_kg_per_m3 <= found.middle_kg_per_m3 <= found.high_kg_per_m3
        assert found.citations


def test_timber_is_what_bears_the_name_of_a_wood() -> None:
    words = ("wood", "oak", "pine", "fir", "strand-board")
    assert {key for key in density_ranges() if any(word in key for word in words)} == TIMBER


def test_the_box_of_the_file_says_how_large_it_may_be() -> None:
    box = next(one for one in described("load-weight").inputs if one.declared.name == "solid")
    assert f"up to {LARGEST_BYTES // 1_000_000} MB" in plain(box.help)


def test_that_the_rigging_is_not_in_the_weight_is_said_beside_it() -> None:
    """The weight goes on to the legs by one tap; only the help of that sheet said that the sling hangs from it too."""
    assert "not in this weight" in " ".join(caution["text"] for caution in run(PLATE)["cautions"])


def test_cautions_fit_the_load() -> None:
    def texts(record: dict[str, Any]) -> str:
        return " ".join(caution["text"] for caution in record["cautions"])

    assert "Drain it" in texts(
        run(
            {
                "shape": "tube",
                "material": "steel",
                "outside_diameter": "3 in",
                "wall": "1/4 in",
                "length": "3 ft",
            }
        )
    )
    assert "Timber" in texts(run({**PLATE, "material": "oak-air-dry"}))
    assert "sharp corners" in texts(
        run({"shape": "i-beam", "weight_per_length": "20 lb/ft", "length": "5 ft"})
    )
    assert "taken as exact" in texts(run({**PLATE, "tolerance": "0"}))
    plain = texts(run(PLATE))
    assert not any(words in plain for words in ("Drain it", "Timber", "sharp corners", "taken as exact"))
    assert run(PLATE)["verdict"] == "caution"


def test_headline_says_the_range_only_where_there_is_one() -> None:
    assert "Add mud, water" in run({"shape": "lump", "weight": "300 kg", "tolerance": "0"})["headline"]
    assert "high figure" in run(PLATE)["headline"]


def test_figure_draws_round_parts_round_and_holes_dashed() -> None:
    svg = run(
        {
            "shape": "round-bar",
            "material": "steel",
            "diameter": "300 mm",
            "length": "400 mm",
            "along": "y",
            "at": ["0", "0", "0"],
        },
        {
            "shape": "round-bar",
            "material": "steel",
            "diameter": "100 mm",
            "length": "400 mm",
            "along": "y",
            "at": ["0", "0", "0"],
            "minus": "yes",
        },
        {"shape": "lump", "weight": "4 kg", "at": ["1 m", "0", "0"]},
    )["figure"]["svg"]
    assert 'circle class="area load"' in svg
    assert "line hidden" in svg
    assert 'class="pick"' in svg


def test_figure_of_a_flat_load_looks_from_above() -> None:
    flat = run(
        {**PLATE, "at": ["0", "0", "0"]},
        {
            "shape": "disc",
            "material": "steel",
            "diameter": "300 mm",
            "thickness": "20 mm",
            "at": ["0", "0", "15 mm"],
        },
    )["figure"]
    assert "from above" in flat["caption"]
    assert 'circle class="area load"' in flat["svg"]
    assert "from the front" in run({**PLATE, "along": "y", "at": ["0", "0", "0"]})["figure"]["caption"]


def test_figure_of_many_parts_has_no_numbers() -> None:
    caption = run(*([{"shape": "lump", "weight": "3 kg", "at": ["0", "0", "0"]}] * 8))["figure"]["caption"]
    assert "and 2 more" in caption


@pytest.mark.parametrize("name", ["count", "tolerance"])
def test_how_many_and_how_sure_are_asked(name: str) -> None:
    """Thirteen alike, the number left out, weighed as one; an allowance left out became the smallest usual one."""
    assert "is missing" in refused({**PLATE, name: ""})[f"parts[0].{name}"]


@pytest.mark.parametrize(
    ("row", "size"),
    [
        ({"shape": "square-tube", "width": "2 in", "wall": "1/4 in", "length": "1 ft"}, "depth"),
        ({"shape": "angle", "width": "2 in", "thickness": "1/4 in", "length": "1 ft"}, "depth"),
        ({"shape": "dished-head", "outside_diameter": "20 in", "wall": "1/4 in"}, "height"),
    ],
)
def test_a_size_left_out_is_not_taken_for_the_smallest(row: dict[str, str], size: str) -> None:
    assert "is missing" in refused({"material": "steel", **row})[f"parts[0].{size}"]


def test_a_wall_that_a_shape_has_not_makes_nothing_hollow() -> None:
    assert "Drain it" not in str(run({**PLATE, "wall": "1/8 in"})["cautions"])


def test_strand_board_can_be_wet_too() -> None:
    assert "Timber" in str(run({**PLATE, "material": "oriented-strand-board"})["cautions"])


def test_the_low_share_is_rounded_to_its_safe_side() -> None:
    """-2.04 % is told as -2.1 %, not -2.0 %: the weight could be lower."""
    found = run({"shape": "lump", "weight": "100 kg", "tolerance": "2.04 %"})
    (line,) = [one for one in found["steps"] if one["label"] == "How wrong it may be"]
    assert line["numbers"] == "−2.1% to +2.1%"


def test_a_section_and_its_weight_by_the_foot_must_agree() -> None:
    w8x31 = {
        "shape": "i-beam",
        "material": "steel",
        "depth": "8 in",
        "flange_width": "8 in",
        "web_thickness": "0.285 in",
        "flange_thickness": "0.435 in",
        "length": "1 ft",
    }
    both = run({**w8x31, "weight_per_length": "31 lb/ft"}, units="us")
    assert value(both, "weight") == pytest.approx(31)
    assert value(both, "weight_high") == pytest.approx(31 * 1.02)
    light = run({**w8x31, "weight_per_length": "29 lb/ft"}, units="us")
    assert value(light, "weight_high") > 29 * 1.02
    where = "parts[0].weight_per_length"
    assert "does not agree with the sizes" in refused({**w8x31, "weight_per_length": "13 lb/ft"})[where]


def test_a_balance_point_outside_every_part_is_refused() -> None:
    """Something taken away where nothing is: 11 kg at one metre, 20 kg taken away there, balances at minus a metre."""
    messages = refused(
        {"shape": "lump", "weight": "31 kg", "at": ["0", "0", "0"]},
        {"shape": "lump", "weight": "11 kg", "at": ["1 m", "0", "0"]},
        {"shape": "lump", "weight": "20 kg", "at": ["1 m", "0", "0"], "minus": "yes"},
    )
    assert "balance outside all of the parts" in messages["parts"]
    cone = {
        "shape": "cone",
        "material": "lead",
        "diameter": "120 mm",
        "height": "400 mm",
        "at": ["0", "0", "1 m"],
    }
    assert (
        value(
            run(cone, {"shape": "lump", "weight": "1 g", "at": ["0", "0", "0.8 m"], "minus": "yes"}), "weight"
        )
        > 0
    )


# ------------------------------------------------------------------------------------------------ drawn solids


@pytest.mark.parametrize("write", [binary_stl, ascii_stl])
def test_drawn_tetrahedron(write: Any) -> None:
    found = solid(write(TETRA))
    volume = 23 * 31 * 47 / 6 * 1e-9  # a corner of a box: one sixth of it
    low = 11300  # OpenStax, density table: lead
    assert value(found, "weight_low") == pytest.approx(volume * low, rel=1e-6)
    assert value(found, "centre_x") == pytest.approx(23 / 4, rel=1e-6)
    assert value(found, "centre_z") == pytest.approx(47 / 4, rel=1e-6)


def test_drawn_solid_in_inches_and_inside_out() -> None:
    turned_out = [(a, c, b) for a, b, c in TETRA]
    found = solid(binary_stl(turned_out), solid_unit="in")
    assert value(found, "weight") == pytest.approx(
        value(solid(binary_stl(TETRA)), "weight") * 25.4**3, rel=1e-6
    )


def test_drawn_solid_joins_the_parts() -> None:
    found = run(
        {"shape": "lump", "weight": "5 kg", "at": ["0", "0", "0"]},
        solid=binary_stl(TETRA),
        solid_unit="mm",
        solid_material="lead",
    )
    assert len(value(found, "parts")) == 2
    assert 0 < value(found, "centre_x") < 23 / 4


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (base64.b64encode(b"not a solid at all").decode(), "neither"),
        (base64.b64encode(b"\0" * 84 + b"x" * 49).decode(), "neither"),
        (binary_stl([]), "no triangles"),
        (base64.b64encode(b"solid nothing").decode(), "no triangles"),
        (binary_stl(TETRA[:3]), "not closed"),
        (binary_stl([*TETRA, *TETRA]), "has triangles that stand in it more than once .4.:"),
        (binary_stl([*TETRA, (TETRA[2][1], TETRA[2][2], TETRA[2][0])]), "more than once .1.:"),
        (binary_stl([*TETRA, (TETRA[1][2], TETRA[1][0], TETRA[1][1])]), "more than once .1.:"),
        (binary_stl([TETRA[0], (TETRA[0][0], TETRA[0][2], TETRA[0][1])]), "no volume"),
        (binary_stl([((0.0, 0.0, 0.0),) * 3]), "no volume"),
        (binary_stl([((float("nan"), 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))]), "finite"),
        (base64.b64encode(b"solid a\nvertex 1 2 3\nvertex 1 2 4").decode(), "cut off"),
        (base64.b64encode(b"solid a\nvertex 1 2 x").decode(), "cannot be read"),
        (base64.b64encode(b"solid a\nvertex 1 2").decode(), "cannot be read"),
    ],
)
def test_broken_solids_are_refused(data: str, words: str) -> None:
    with pytest.raises(Refused, match=words) as caught:
        solid(data)
    assert caught.value.errors[0].input == "solid"


def test_solid_too_large_or_empty_is_refused() -> None:
    with pytest.raises(Refused, match="too large"):
        solid(base64.b64encode(b"\0" * (LARGEST_BYTES + 1)).decode())
    with pytest.raises(Refused, match="is empty"):
        answer("load-weight", {"solid": b"", "solid_unit": "mm", "solid_material": "lead"}, "si")


def test_solid_asks_for_its_unit_and_material() -> None:
    with pytest.raises(Refused, match="bare numbers") as caught:
        answer("load-weight", {"solid": binary_stl(TETRA), "solid_material": "lead"}, "si")
    assert caught.value.errors[0].input == "solid_unit"
    with pytest.raises(Refused, match="Pick what it is made of"):
        answer("load-weight", {"solid": binary_stl(TETRA), "solid_unit": "mm"}, "si")


# ------------------------------------------------------------------------------------------------ several shells


def cube(
    side: float, at: tuple[float, float, float] = (0.0, 0.0, 0.0), inside_out: bool = False
) -> list[Any]:
    """The twelve triangles of a cube, its low corner at a point."""
    corners = [
        (at[0] + side * (i & 1), at[1] + side * (i >> 1 & 1), at[2] + side * (i >> 2 & 1)) for i in range(8)
    ]
    faces = [(0, 2, 3, 1), (4, 5, 7, 6), (0, 1, 5, 4), (2, 6, 7, 3), (0, 4, 6, 2), (1, 3, 7, 5)]
    halves = [half for a, b, c, d in faces for half in ((a, b, c), (a, c, d))]
    found = [(corners[a], corners[b], corners[c]) for a, b, c in halves]
    return [(a, c, b) for a, b, c in found] if inside_out else found


LEAD = 11300 * 1e-9
"""Lead [kg/mm3] (OpenStax, density table)."""


@pytest.mark.parametrize("first", [False, True])
@pytest.mark.parametrize("second", [False, True])
def test_a_body_inside_out_weighs_what_it_weighs(first: bool, second: bool) -> None:
    """A 100 mm cube and a separate one of 80 mm turned inside out: was 3.83 kg for 11.9 of steel, balance outside the part."""
    found = solid(binary_stl(cube(100, inside_out=first) + cube(80, (200, 0, 0), second)))
    assert value(found, "weight_low") == pytest.approx((100**3 + 80**3) * LEAD, rel=1e-6)
    middle = (100**3 * 50 + 80**3 * 240) / (100**3 + 80**3)
    assert value(found, "centre_x") == pytest.approx(middle, rel=1e-6)


@pytest.mark.parametrize("turned_over", [False, True])
def test_a_hollow_and_a_body_inside_it_count_by_depth(turned_over: bool) -> None:
    nested = cube(100) + cube(60, (10, 20, 20), True) + cube(20, (20, 30, 30))
    triangles = [(a, c, b) for a, b, c in nested] if turned_over else nested
    found = solid(binary_stl(triangles))
    volume = 100**3 - 60**3 + 20**3
    assert value(found, "weight_low") == pytest.approx(volume * LEAD, rel=1e-6)
    assert value(found, "centre_x") == pytest.approx(
        (100**3 * 50 - 60**3 * 40 + 20**3 * 30) / volume, rel=1e-6
    )


def test_a_body_inside_a_body_that_runs_alike_is_refused() -> None:
    with pytest.raises(Refused, match="a hollow or is drawn in twice"):
        solid(binary_stl(cube(100) + cube(60, (20, 20, 20))))


def test_bodies_beside_and_in_the_notch_of_one_another_are_not_inside() -> None:
    touching = solid(binary_stl(cube(100) + cube(80, (100, 0, 0), True)))
    assert value(touching, "weight_low") == pytest.approx((100**3 + 80**3) * LEAD, rel=1e-6)
    # Two cubes that share one edge, and one in the free corner of the box round both.
    pair = cube(100) + cube(100, (100, 100, 0))
    assert value(solid(binary_stl(pair)), "weight_low") == pytest.approx(2 * 100**3 * LEAD, rel=1e-6)
    notch = [*pair, *cube(50, (120, 20, 20), True)]
    assert value(solid(binary_stl(notch)), "weight_low") == pytest.approx(
        (2 * 100**3 + 50**3) * LEAD, rel=1e-6
    )


def test_a_body_in_the_free_corner_of_anothers_box_is_a_body() -> None:
    beyond = cube(2, (20, 28, 44))
    volume = 23 * 31 * 47 / 6 + 2**3
    assert value(solid(binary_stl(TETRA + beyond)), "weight_low") == pytest.approx(volume * LEAD, rel=1e-6)


def test_a_small_body_whose_corner_lies_on_the_skin_is_told_by_another_point() -> None:
    corner_on_skin = cube(100) + cube(40, (0, 0, 0), True)
    # Three of its faces lie on the skin of the large one; its other corners lie inside.
    assert value(solid(binary_stl(corner_on_skin)), "weight_low") == pytest.approx(
        (100**3 - 40**3) * LEAD, rel=1e-6
    )


def cut_in_four(triangles: list[Any]) -> list[Any]:
    """The same skin of four times as many triangles."""

    def half_way(one: Any, other: Any) -> tuple[float, ...]:
        return tuple((a + b) / 2 for a, b in zip(one, other, strict=True))

    found = []
    for a, b, c in triangles:
        ab, bc, ca = half_way(a, b), half_way(b, c), half_way(c, a)
        found += [(a, ab, ca), (ab, b, bc), (ca, bc, c), (ab, bc, ca)]
    return found


def test_bodies_that_share_their_skin_and_too_many_bodies_are_refused() -> None:
    with pytest.raises(Refused, match="holds no volume"):
        solid(binary_stl(cube(100) + cube(100, inside_out=True)))
    with pytest.raises(Refused, match="a hollow or is drawn in twice"):
        solid(binary_stl(cube(100) + cut_in_four(cube(100, inside_out=True))))
    many = [half for place in range(501) for half in cube(1, (2.0 * place, 0, 0))]
    with pytest.raises(Refused, match="501 separate bodies"):
        solid(binary_stl(many))


@settings(max_examples=40, deadline=None)
@given(st.lists(st.tuples(st.floats(1, 40), st.floats(-90, 90), st.booleans()), min_size=1, max_size=5))
def test_the_balance_point_of_bodies_lies_within_their_hull(bodies: list[tuple[float, float, bool]]) -> None:
    drawn = [
        half
        for place, (side, y, turned_over) in enumerate(bodies)
        for half in cube(side, (100.0 * place, y, 0.0), turned_over)
    ]
    found = solid(binary_stl(drawn))
    xs, ys = (
        [corner[0] for half in drawn for corner in half],
        [corner[1] for half in drawn for corner in half],
    )
    assert min(xs) <= value(found, "centre_x") <= max(xs)
    assert min(ys) <= value(found, "centre_y") <= max(ys)
    assert value(found, "weight_low") == pytest.approx(sum(side**3 for side, _, _ in bodies) * LEAD, rel=1e-4)


# ------------------------------------------------------------------------------------------------ properties


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.tuples(st.floats(0.1, 5000), st.floats(-20, 20), st.floats(-20, 20)), min_size=1, max_size=6),
    st.floats(-9, 9),
)
def test_moving_the_corner_moves_the_balance_point(
    lumps: list[tuple[float, float, float]], shift: float
) -> None:
    def at(move: float) -> dict[str, Any]:
        return run(
            *(
                {
                    "shape": "lump",
                    "weight": f"{one_reading(w)} kg",
                    "at": [f"{one_reading(x + move)} m", f"{one_reading(y)} m", "1 m"],
                }
                for w, x, y in lumps
            )
        )

    before, after = at(0.0), at(shift)
    assert value(after, "centre_x") - value(before, "centre_x") == pytest.approx(1000 * shift, abs=1e-6)
    assert value(after, "weight") == pytest.approx(value(before, "weight"))
    assert (
        min(y for _, _, y in lumps) - 1e-9
        <= value(before, "centre_y") / 1000
        <= max(y for _, _, y in lumps) + 1e-9
    )


@settings(max_examples=60, deadline=None)
@given(st.floats(0.001, 30), st.floats(0.001, 30), st.floats(0.001, 3))
def test_us_and_si_inputs_agree(length: float, width: float, thickness: float) -> None:
    metres = run(
        {
            **PLATE,
            "length": f"{one_reading(length)} m",
            "width": f"{one_reading(width)} m",
            "thickness": f"{one_reading(thickness)} m",
        },
        units="us",
    )
    inches = run(
        {
            **PLATE,
            "length": f"{one_reading(length / 0.0254)} in",
            "width": f"{one_reading(width / 0.3048)} ft",
            "thickness": f"{one_reading(thickness / 0.0254)} in",
        },
        units="us",
    )
    assert value(metres, "weight") == pytest.approx(value(inches, "weight"), rel=1e-9)
    assert value(metres, "weight_low") < value(metres, "weight") < value(metres, "weight_high")


# ------------------------------------------------------------------------------------------------ edges of the shapes


@pytest.mark.parametrize(
    ("shape", "dims", "message"),
    [
        (
            "ring",
            {"outside_diameter": 3, "inside_diameter": 3, "thickness": 1},
            "must be less than the outside diameter",
        ),
        (
            "tube",
            {"outside_diameter": 3, "wall": 1.6, "length": 1},
            "must be at most half the outside diameter",
        ),
        ("square-tube", {"width": 3, "wall": 1.6, "length": 1}, "must be at most half the smaller side"),
        ("angle", {"width": 3, "thickness": 3, "length": 1}, "must be less than both legs"),
        (
            "channel",
            {"depth": 6, "flange_width": 2, "web_thickness": 1, "flange_thickness": 3, "length": 1},
            "must be less than half the depth",
        ),
        (
            "i-beam",
            {"depth": 6, "flange_width": 2, "web_thickness": 2, "flange_thickness": 1, "length": 1},
            "must be less than the flange width",
        ),
        (
            "cylinder",
            {"diameter": 6, "length": 2, "wall": 1},
            "must be less than half the diameter and half the length",
        ),
        ("sphere", {"diameter": 6, "wall": 3}, "must be less than half the diameter"),
        ("hemisphere", {"diameter": 6, "wall": 3}, "must be less than half the diameter"),
        (
            "dished-head",
            {"outside_diameter": 8, "wall": 2},
            "must be less than half the outside diameter and the height",
        ),
        (
            "box",
            {"length": 8, "width": 7, "height": 2, "wall": 1},
            "must be less than half the smallest side",
        ),
        ("torus", {"mean_diameter": 3, "diameter": 3.1}, "must be at most the mean diameter"),
    ],
)
def test_what_does_not_fit_is_said_in_words(shape: str, dims: dict[str, float], message: str) -> None:
    with pytest.raises(ShapeError) as caught:
        SHAPES[shape].solid(dims)
    assert Writer(scopes=("worksheets/load-weight",)).text(f"refused-{caught.value.code}") == f"{message}."
    assert caught.value.dim in dims


def test_walls_that_just_fit() -> None:
    # A wall of half the side leaves no hollow: the tube weighs as the full bar.
    square = SHAPES["square-tube"].solid({"width": 0.06, "wall": 0.03, "length": 2.0})
    assert square.volume_m3 == pytest.approx(0.06**2 * 2.0)
    assert square.box_m == (2.0, 0.06, 0.06)
    pipe = SHAPES["tube"].solid({"outside_diameter": 0.06, "wall": 0.03, "length": 2.0})
    assert pipe.volume_m3 == pytest.approx(
        SHAPES["round-bar"].solid({"diameter": 0.06, "length": 2.0}).volume_m3
    )
    full_ring = SHAPES["torus"].solid({"mean_diameter": 0.3, "diameter": 0.3})
    assert full_ring.box_m == pytest.approx((0.3, 0.6, 0.6))


@pytest.mark.parametrize(
    ("shape", "dims", "box"),
    [
        ("cylinder", {"diameter": 0.6, "length": 0.5, "wall": 0.24}, (0.5, 0.6, 0.6)),
        ("box", {"length": 0.8, "width": 0.7, "height": 0.5, "wall": 0.24}, (0.8, 0.7, 0.5)),
        ("sphere", {"diameter": 0.5, "wall": 0.24}, (0.5, 0.5, 0.5)),
        ("hemisphere", {"diameter": 0.5, "wall": 0.24}, (0.25, 0.5, 0.5)),
        ("dished-head", {"outside_diameter": 0.8, "wall": 0.19}, (0.2, 0.8, 0.8)),
    ],
)
def test_thick_hollow_parts_keep_their_box(
    shape: str, dims: dict[str, float], box: tuple[float, float, float]
) -> None:
    solid = SHAPES[shape].solid(dims)
    assert solid.box_m == pytest.approx(box)
    assert 0 < solid.volume_m3 < box[0] * box[1] * box[2]


def test_what_stands_large_is_the_figure_to_lift_by() -> None:
    """The headline says to lift by the high figure; the middle one stood large."""
    record = answer("load-weight", WORKSHEET.example)
    assert record["big"]["key"] == "weight_high"
