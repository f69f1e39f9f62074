"""The view of an answer: every kind of node, made safe; a region for each part of the page; the record's own states."""

import json
from typing import Any
from urllib.parse import parse_qs

import pytest

from build_scripts.answer_view import columns_of, nodes_of, regions, to_html, value_text, view, view_json
from calc.answering import answer_in_spans, declared, worksheet
from calc.quantities import read_quantity, to_si
from calc.trees import markup
from calc.words.writer import UnitSystem, Writer, plain

SHEETS = declared()


def text_of(node: Any) -> Any:
    return node if isinstance(node, str) else "".join(map(text_of, node[2:]))


def find(node: Any, **wanted: Any) -> Any:
    """Every element whose attributes hold what is wanted, outermost first."""
    if isinstance(node, str):
        return []
    named = {key.replace("_", "-"): value for key, value in wanted.items()}
    own = [node] if named.items() <= node[1].items() else []
    return own + [found for child in node[2:] for found in find(child, **wanted)]


def viewed(name: Any, **changed: Any) -> Any:
    example = {**worksheet(name).example, **changed}
    return view(answer_in_spans(name, example), "../")


@pytest.mark.parametrize(
    ("nodes", "html"),
    [
        (["a < b & c > d"], "a &lt; b &amp; c &gt; d"),
        (['say "5\'-3"'], 'say "5\'-3"'),
        ([["p", {}]], "<p></p>"),
        (
            [["p", {"class": "x"}, "1 < 2 ", ["b", {}, "&"]], "tail"],
            '<p class="x">1 &lt; 2 <b>&amp;</b></p>tail',
        ),
        (
            [["dd", {"data-value": '["a \\"b\\" <c>"]'}]],
            '<dd data-value="[&quot;a \\&quot;b\\&quot; &lt;c&gt;&quot;]"></dd>',
        ),
        ([["figure", {"hidden": ""}]], '<figure hidden=""></figure>'),
        (
            [["svg", {}, ["path", {"d": "M0 0"}], ["circle", {"r": "1"}]]],
            '<svg><path d="M0 0"/><circle r="1"/></svg>',
        ),
        ([], ""),
    ],
)
def test_nodes_as_html(nodes: Any, html: str) -> None:
    assert to_html(nodes) == html


@pytest.mark.parametrize(
    ("spans", "html"),
    [
        ("plain 3/8 text", "plain 3/8 text"),
        ("", ""),
        ([], ""),
        (["a", "b <"], "ab &lt;"),
        ([["f", "3/8"]], '<span class="frac">3/8</span>'),
        ([["f", "1-3/8"]], '1<span class="frac-dash">-</span><span class="frac">3/8</span>'),
        ([["f", "1,234-1/2"]], '1,234<span class="frac-dash">-</span><span class="frac">1/2</span>'),
        (
            ["in ", ["n", [["f", "3/8"], " in"]], "."],
            'in <span class="value"><span class="frac">3/8</span> in</span>.',
        ),
    ],
)
def test_spans_as_nodes(spans: Any, html: str) -> None:
    assert to_html(nodes_of(spans)) == html
    assert "".join(map(text_of, nodes_of(spans))) == plain(spans)


@pytest.mark.parametrize("name", list(SHEETS))
def test_every_part_of_an_answer_stands_in_a_region(name: Any) -> None:
    record = answer_in_spans(name, SHEETS[name].example)
    seen = view(record, "../")
    assert seen["spoken"] == plain(record["headline"])
    for region, node in seen["regions"].items():
        assert node[1]["data-view"] == region
    results = [one for node in seen["regions"].values() for one in find(node) if "data-result" in one[1]]
    assert {one[1]["data-result"] for one in results} == set(record["results"])
    for one in results:
        wanted = record["results"][one[1]["data-result"]]
        assert one[1]["data-value"] == value_text(wanted["value"])
        assert one[1]["data-unit"] == wanted["unit"]
    text = {region: text_of(node) for region, node in seen["regions"].items()}
    assert plain(record["headline"]) in text["answer"]
    assert plain(record["big"]["text"]) in text["foot"]
    for step in record["steps"]:
        for part in step.values():
            assert plain(part) in text["steps"]
    for caution in record["cautions"]:
        assert plain(caution["text"]) in text["cautions"]
    for source in record["sources"]:
        assert source["title"] in text["sources"]
        assert source["locator"] in text["sources"]
    assert json.loads(json.dumps(seen, allow_nan=False)) == seen


def test_the_state_of_a_row_is_the_record_s() -> None:
    rows = viewed("hook-check")["regions"]["findings-criteria"][2:]
    record = answer_in_spans("hook-check", worksheet("hook-check").example)
    assert [row[1]["data-outcome"] for row in rows] == record["results"]["criteria"]["states"]
    head, *cells = rows[0][2:]
    assert head[:2] == ["th", {"scope": "row", "class": "cell-criterion"}]
    assert [cell[1]["class"] for cell in cells] == [
        "cell-limit",
        "cell-reading",
        "cell-outcome",
        "cell-source",
    ]


def test_a_row_without_a_state_has_no_colour() -> None:
    record = answer_in_spans("hook-check", worksheet("hook-check").example)
    record["results"]["criteria"]["states"] = [""] * len(record["results"]["criteria"]["rows"])
    made = regions(record, columns_of("hook-check"), "", Writer(scopes=("page/answer",)))
    assert all(row[1] == {} for row in made["findings-criteria"][2:])


def test_a_record_has_its_next_date_twice_and_other_sheets_have_none() -> None:
    made = viewed("hook-check")["regions"]
    assert made["next-date"][0] == "dd"
    assert text_of(made["next-date"]) == text_of(find(made["numbers"], data_result="next_inspection")[0])
    assert "next-date" not in viewed("sling-legs")["regions"]


def test_an_answer_without_a_drawing_hides_its_place() -> None:
    assert viewed("convert")["regions"]["figure"] == [
        "figure",
        {"class": "work-figure", "data-view": "figure", "data-figure": "", "hidden": ""},
    ]


def test_the_drawing_is_the_one_calc_writes() -> None:
    record = answer_in_spans("sling-legs", worksheet("sling-legs").example)
    _, _, drawing, caption = viewed("sling-legs")["regions"]["figure"]
    assert drawing[0] == "svg"
    assert markup(drawing) == markup(record["figure"]["drawing"])
    assert text_of(caption) == record["figure"]["caption"]


def test_a_caution_opens_with_its_word() -> None:
    (first, *_) = viewed("hook-check")["regions"]["cautions"][2:]
    assert first[1]["data-kind"] == "prohibition"
    assert text_of(first).startswith("Stop. ")


def test_a_source_leads_to_its_card() -> None:
    link = viewed("sling-legs")["regions"]["sources"][2][2]
    assert link[1]["href"].startswith("../about/sources.html#")


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (2.0, "2"),
        (2.5, "2.5"),
        (3, "3"),
        (None, "null"),
        (True, "true"),
        ("3/8", "3/8"),
        ([1.5, "a"], '[1.5, "a"]'),
        (1e21, "1e+21"),
    ],
)
def test_a_value_as_a_script_writes_it(value: Any, text: str) -> None:
    assert value_text(value) == text


def test_a_request_in_json_is_answered_or_refused_in_whole_sentences() -> None:
    asked: dict[str, Any] = {
        "worksheet": "sling-legs",
        "inputs": {"load": "1000 lb", "legs": "2", "angle": "30"},
        "root": "../",
    }
    seen = json.loads(view_json(json.dumps(asked)))
    assert seen["ok"] is True
    assert seen == view(answer_in_spans("sling-legs", asked["inputs"]), "../")
    (error,) = json.loads(
        view_json(json.dumps({**asked, "inputs": {"load": "x", "legs": "2", "angle": "30"}}))
    )["errors"]
    assert error["input"] == "load"
    assert error["said"].startswith("“x” ")


def test_the_words_are_those_of_the_language_asked_for() -> None:
    asked = {"worksheet": "hook-check", "inputs": dict(worksheet("hook-check").example)}
    english, changed = (
        json.loads(view_json(json.dumps({**asked, "language": language})))["regions"]
        for language in ("en", "en-XA")
    )
    assert "Stop." in text_of(english["cautions"])
    assert "Stop." not in text_of(changed["cautions"])
    assert text_of(english["answer"]) != text_of(changed["answer"])


# ---- numbers that go on to another worksheet


def weighed(units: UnitSystem = "us", *, placed: bool = True) -> Any:
    """The keel's cradle, its parts placed or not."""
    parts = [dict(part) for part in worksheet("load-weight").example["parts"]]
    places = (["43 in", "19 in", "1/8 in"], ["20 in", "19 in", "1/8 in"], ["-2 ft", "19 in", "3 in"])
    for part, at in zip(parts, places, strict=True):
        part |= {"at": at} if placed else {}
    return answer_in_spans("load-weight", {"parts": parts}, units)


def test_what_is_handed_over_is_asked_for_there_and_as_far_on_the_safe_side() -> None:
    handed = [(sheet, one) for sheet in SHEETS.values() for one in sheet.hands_over]
    assert handed
    for sheet, one in handed:
        result = sheet.by_name[one.result]
        asked = {given.name: given for given in SHEETS[one.worksheet].inputs}[one.input.split("[")[0]]
        assert asked.dimension == result.dimension
        assert asked.sense == result.sense
        assert (asked.kind == "point") == ("[" in one.input)


@pytest.mark.parametrize("units", ["us", "si"])
def test_handed_over_numbers_read_back_no_lighter_and_where_they_stood(units: UnitSystem) -> None:
    record = weighed(units)
    places = {one["worksheet"]: one["inputs"] for one in record["next"]}
    assert list(places) == ["sling-legs", "hitch", "hanging-load", "load-path"]
    high = record["results"]["weight_high"]
    for inputs in places.values():
        read = read_quantity(inputs["load"], "weight", "lb")
        wanted = to_si(high["value"], high["unit"], "weight")
        assert wanted <= read.value_si <= wanted * 1.01
    for number, axis in enumerate("xyz"):
        wanted = record["results"][f"centre_{axis}"]
        read = read_quantity(places["hanging-load"][f"centre[{number}]"], "length", "in")
        assert read.value_si == pytest.approx(to_si(wanted["value"], wanted["unit"], "length"), rel=0.005)


def test_only_the_reader_s_own_numbers_are_handed_over() -> None:
    record = weighed()
    shown = view(record, "../")["regions"]["next"]
    (first, *_) = [link[1]["href"] for link in find(shown) if link[0] == "a"]
    address, _, fields = first.partition("#")
    assert address == "../work-out/sling-legs.html"
    assert parse_qs(fields) == {
        "load": [record["next"][0]["inputs"]["load"]],
        "from": [record["next"][0]["from"]],
    }
    example = view(record, "../", example=True)["regions"]["next"]
    assert [link for link in find(example) if link[0] == "a"] == []
    assert "hidden" in example[1]


def test_an_absent_balance_point_is_not_handed_over() -> None:
    record = weighed(placed=False)
    (hanging,) = [one for one in record["next"] if one["worksheet"] == "hanging-load"]
    assert list(hanging["inputs"]) == ["load"]


def test_nothing_goes_on_from_a_stop_or_from_what_is_not_known() -> None:
    for name, sheet in SHEETS.items():
        record = answer_in_spans(name, sheet.example)
        if record["verdict"] in ("stop", "unknown"):
            assert record["next"] == [], name
