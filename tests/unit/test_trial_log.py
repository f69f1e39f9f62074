"""trial-log: straight, bent, set, bleed, throat; messy logs; refusals."""

import base64
from collections.abc import Sequence
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.pulling.departure import find_departure, standing_out
from calc.pulling.dial_step import step_shown_m
from calc.pulling.lasting_set import gap_scatter
from calc.pulling.log_reading import COLUMNS, NotALog, decode, read_log
from calc.words.writer import Writer
from tests.saying import one_reading

STRAIGHT: list[tuple[float, float]] = [
    (force, 50.0 + 0.0213 * force) for force in (0, 1.7, 3.1, 4.9, 6.4, 8.2, 9.7, 11.3, 12.9)
]


GOOD_PART = {"condition": "marked-good", "part": "no-throat"}


def rows(pairs: Sequence[tuple[float, float | None]], **last: str) -> list[dict[str, str]]:
    found = [
        {"force": f"{force:.9f} kN"} | ({} if gap is None else {"gap": f"{one_reading(gap)} mm"})
        for force, gap in pairs
    ]
    found[-1].update(last)
    return found


def ask(readings: Any = None, **changes: Any) -> dict[str, Any]:
    raw = GOOD_PART if readings is None else {**GOOD_PART, "readings": readings}
    return answer("trial-log", {**raw, **changes}, "si")


def pasted(text: str | bytes, units: Any = "si") -> dict[str, Any]:
    data = text.encode() if isinstance(text, str) else text
    return answer("trial-log", {**GOOD_PART, "file": base64.b64encode(data).decode()}, units)


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


def refusal(**raw: Any) -> str:
    with pytest.raises(Refused) as caught:
        answer("trial-log", raw, "si")
    return " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


def test_straight_up_and_back() -> None:
    record = ask(rows([*STRAIGHT, (0.2, 50.004)]))
    assert record["verdict"] == "ok"
    assert value(record, "stiffness") == pytest.approx(1000 / 0.0213)
    assert value(record, "departs_at") is None
    assert value(record, "permanent_set") == pytest.approx(0.004 - 0.0213 * 0.2, abs=1e-9)
    assert value(record, "bleed_down") is None
    assert "No pull in a shop" in record["cautions"][-1]["text"]


def test_nothing_after_letting_off_is_unknown() -> None:
    record = ask(rows(STRAIGHT))
    assert record["verdict"] == "unknown"
    assert "nobody knows whether it came back" in record["headline"]
    assert ask(rows([*STRAIGHT, (0.1, None)]))["verdict"] == "unknown"


def test_a_bend_is_found_and_stops() -> None:
    forces = [force for force, _ in STRAIGHT] + [14.1, 15.2]
    bent = [(force, 50.0 + 0.0213 * force + 0.09 * max(0.0, force - 8.0)) for force in forces]
    record = ask(rows(bent))
    assert record["verdict"] == "stop"
    assert value(record, "departs_low") <= 8.0 <= value(record, "departs_high")
    assert value(record, "departs_at") == pytest.approx(8.0, abs=0.05)
    assert "left the straight line" in record["headline"]
    assert "leave it at" in record["figure"]["caption"]
    assert value(record, "stiffness") == pytest.approx(1000 / 0.0213, rel=1e-3)
    assert record["big"]["key"] == "departs_at"


def test_permanent_set_stops() -> None:
    record = ask(rows([*STRAIGHT, (0.0, 50.11)]))
    assert record["verdict"] == "stop"
    assert "stayed open by" in record["headline"]
    assert value(record, "permanent_set") == pytest.approx(0.11)


def test_throat_change() -> None:
    def throat(now: str) -> dict[str, Any]:
        readings = rows([*STRAIGHT, (0.0, 50.0)], throat=now)
        readings[0]["throat"] = "31.0 mm"
        return ask(readings)

    assert value(throat("31.4 mm"), "throat_change_percent") == pytest.approx(100 * 0.4 / 31)
    assert throat("31.4 mm")["verdict"] == "ok"
    assert throat("31.9 mm")["verdict"] == "caution"
    assert throat("32.6 mm")["verdict"] == "stop"
    assert "throat opened 5.17%" in throat("32.6 mm")["headline"]


def test_bleed_down() -> None:
    def hold(last_force: str) -> dict[str, Any]:
        readings = rows([*STRAIGHT, (12.8, 50.27), (12.7, 50.27), (0.0, 50.0)])
        for number, reading in enumerate(readings):
            reading["time"] = f"{number} min"
        readings[-2]["force"] = last_force
        return ask(readings)

    record = hold("12.7 kN")
    assert value(record, "bleed_down") == pytest.approx(0.1)
    assert "force against time" in record["figure"]["caption"]
    assert not any("stretches slowly" in caution["text"] for caution in record["cautions"])
    assert any("stretches slowly" in caution["text"] for caution in hold("12.0 kN")["cautions"])


def test_a_slip_of_reading_is_set_aside_and_told() -> None:
    pairs = [(0.7 * i, 50 + 0.0213 * 0.7 * i) for i in range(20)]
    pairs[9] = (pairs[9][0], pairs[9][1] + 0.2)
    record = ask(rows([*pairs, (0.0, 50.0)]))
    assert value(record, "readings_aside") == 1
    assert value(record, "departs_at") is None
    assert any("left out as misread" in caution["text"] for caution in record["cautions"])


def test_a_true_bend_is_never_set_aside() -> None:
    force = [0.7 * i for i in range(20)]
    gap = [0.02 * f + 0.3 * max(0.0, f - 9.0) for f in force]
    assert standing_out(force, gap) == ()


def test_equal_forces_do_not_upset_the_chord() -> None:
    assert (
        standing_out(
            [1.0, 2.0, 2.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0],
            [0.1, 0.2, 0.2, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8],
        )
        == ()
    )


def test_a_bend_that_starts_at_once_and_doubled_ends() -> None:
    found = find_departure([1.0, 1.0, 1.1, 2.0, 3.0, 4.0, 4.0], [0.1, 0.1, 0.11, 0.2, 0.9, 1.6, 1.6])
    assert found.bend is not None
    assert found.bend.at_n == pytest.approx(2.0, abs=0.02)
    flat = find_departure([1.0, 1.0, 1.0, 2.0, 3.0, 4.0], [0.1, 0.1, 0.1, 2.0, 3.9, 5.8])
    assert flat.bend is None


# ------------------------------------------------------------------------------------------ messy logs

MESSY = "Trial of the mooring hook\nTime [min]\tForce (lb)\tNote\tGap, mm\n" + "\n".join(
    f"{minute}:00\t{force:,}\t{'ok' if minute % 2 else ''}\t{50 + 0.00011 * force:.4f}".replace("\t1,480\t", '\t"1,480"\t')
    for minute, force in enumerate((0, 290, 610, 890, 1210, 1480, 1790, 2110, 2390))
)  # fmt: skip


def test_a_spreadsheet_paste() -> None:
    record = pasted(MESSY + "\nbroke for coffee\t\t\t\n12:30\t0\t\t50.0001\n")
    assert record["verdict"] == "ok"
    assert value(record, "stiffness") == pytest.approx(4.4482216 / 0.00011, rel=1e-3)
    assert value(record, "top_force") == pytest.approx(2390 * 4.4482216 / 1000)


@pytest.mark.parametrize(
    ("text", "force_n", "gap_m", "time_s"),
    [
        ("force (kN); gap (mm); time (s)\n1,7; 50,02; 3", 1700, 0.05002, 3), ("load,opening,time\n1.7,50.02,1:02:03", 1700, 0.05002, 3723),
        ("1.7 50.02", 1700, 0.05002, None), ("pull [t]\tgap [in]\n2\t1 1/2", 19613.3, 0.0381, None),
        ('Force (lb),Gap (in)\n"1,200","2.001"', 1200 * 4.4482216152605, 2.001 * 0.0254, None),
        ("Force/kN,Gap/mm\n1.7 kN,-", 1700, None, None),
        ("Force kN, gap mm\n12, 50.1", 12000, 0.0501, None), ("Force in kN\tGap in mm\n12\t50.1", 12000, 0.0501, None),
        ("Force_kN;Gap_mm\n12;50,1", 12000, 0.0501, None), ("Force: kN\tGap: mm\n12\t50.1", 12000, 0.0501, None),
        ("Force lb, gap in\n2900, 2", 2900 * 4.4482216152605, 0.0508, None), ("pull (short tons)\n2", 17792.886461042, None, None),
        ("Dial gap in\tLoad cell: kilonewtons\n2\t12", 12000, 0.0508, None), ("force (kN)\tthroat opening (mm)\n12\t30", 12000, None, None),
        ("Force (kN)\tTime (mm:ss)\n12\t2:30", 12000, None, 150),
    ],
)  # fmt: skip
def test_headings_units_and_separators(
    text: str, force_n: float, gap_m: float | None, time_s: float | None
) -> None:
    (reading,) = read_log(text, si=True)
    assert reading.force_n == pytest.approx(force_n)
    assert reading.gap_m == (None if gap_m is None else pytest.approx(gap_m))
    assert reading.time_s == time_s


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (
            "force (barleycorns)\n1.7",
            "in the heading “force (barleycorns)” the word “barleycorns” is not understood",
        ),
        ("Force side kN\tgap\n1.7\t50", "the word “side” is not understood"),
        ("Force (kN) no 2\tgap\n1.7\t50", "the word “no” is not understood"),
        ("Force (tons)\tgap\n1.7\t50", "the word “tons” is not understood"),
        ("Force #\tgap\n1.7\t50", "the word “#” is not understood"),
        ("Force in mm\tgap\n1.7\t50", "the word “mm” is not understood"),
        ("Force, kN, gap, mm\n12, 50.1", "the word “kN” is not understood"),
        ("Time (min:s)\tForce (kN, Mpa)\n1\t2", "the word “Mpa” is not understood"),
        ("Force (kN)\tForce (lb)\n12\t2697", "two headings name the force"),
        ("Weight (kN)\tgap (mm)\n12\t50.1", "the headings name no force"),
        ("All in kN and mm\nforce\tgap\n12\t50.1", "the unit “kN” stands above"),
        ("Trial in kN\n12\t50.1", "the unit “kN” stands above"),
        ("Force\tGap\nkN\tmm\n12\t50.1", "line 2, force: “kN”"),
        ("force (lb)\tgap (in)\n1.500\t2.001\n2.750\t2.002", "can be read as 1,500 lb or as 1.5 lb"),
        ("force (kN);gap (mm)\n1,500;50,004", "can be read as 1,500 kN or as 1.5 kN"),
        ("force (kN);gap (mm)\n1,5;50,004", "commas or points that can be read two ways: 50,004"),
        (
            "force (kN);gap (mm)\n1,5;50,04\n2.7;50,05",
            "some numbers have a decimal point and some a decimal comma",
        ),
    ],
)
def test_a_log_that_is_not_understood_in_full_is_refused(text: str, says: str) -> None:
    """A force in kN taken for pounds was called straight and back at 12 lb."""
    for si in (True, False):
        with pytest.raises(NotALog) as caught:
            read_log(text, si)
        assert says in Writer(scopes=worksheet("trial-log").scopes).plain(caught.value.why)


def test_the_marks_of_a_column_are_read_together() -> None:
    """A load cell writes 0.000, 1.250, 2.500: the nought says that the point is a decimal point."""
    log = read_log("force (kN)\tgap (mm)\n0.000\t50.000\n1.250\t50.027\n2.500\t50.053", False)
    assert [reading.force_n for reading in log] == [0.0, 1250.0, 2500.0]
    assert [reading.gap_m for reading in log] == pytest.approx([0.05, 0.050027, 0.050053])
    log = read_log("force (kN);gap (mm)\n0,000;50,0\n1,250;50,027", False)
    assert [reading.force_n for reading in log] == [0.0, 1250.0]
    assert log[1].gap_m == pytest.approx(0.050027)
    assert read_log("force (kN)\ttime\n12", True) == read_log("force (kN)\n12", True)


def test_us_bare_numbers_and_encodings() -> None:
    (reading,) = read_log("100\t2.5", si=False)
    assert reading.force_n == pytest.approx(444.822, abs=1e-3)
    assert reading.gap_m == pytest.approx(0.0635)
    assert decode("é".encode("utf-16")) == "é"
    assert decode("é".encode("latin-1")) == "é"
    assert decode("é".encode()) == "é"


@pytest.mark.parametrize(
    ("text", "code", "words"),
    [
        (
            "force\tgap\nmuch\t3",
            "cell-unreadable",
            "line 2, force: “much” has no number in front of the unit",
        ),
        ("force\tgap\n1\twide", "cell-unreadable", "line 2, gap: “wide” has no number in front of the unit"),
        ("force\tgap\n-3\t3", "below-zero", "line 2: the force is below zero"),
        ("1\t2\n" * 5001, "too-many-lines", "has 5,001 lines; give at most 5,000"),
    ],
)
def test_logs_that_cannot_be_read(text: str, code: str, words: str) -> None:
    with pytest.raises(NotALog, match=code) as caught:
        read_log(text, si=True)
    writer = Writer(scopes=worksheet("trial-log").scopes)
    assert writer.plain(caught.value.why) == words


def test_every_column_of_a_log_has_a_name() -> None:
    writer = Writer(scopes=worksheet("trial-log").scopes)
    assert [writer.text(f"log-column-{name}") for name in COLUMNS] == ["force", "gap", "throat", "time"]


def test_all_signs_of_yielding_are_named_together() -> None:
    readings = rows([*STRAIGHT, (0.0, 50.11)], throat="32.6 mm")
    readings[0]["throat"] = "31.0 mm"
    headline = ask(readings)["headline"]
    assert "it stayed open by 0.110 mm" in headline
    assert "because it yielded: it stayed open by" in headline


@pytest.mark.parametrize(
    ("message", "raw"),
    [
        ("pasted: is missing. Paste", {}), ("readings: are missing", {"kept_as": "readings"}),
        ("file: is missing", {"kept_as": "file"}), ("pasted: line 3", {"pasted": "force\tgap\n1\t2\nmany\t2\n"}),
        ("pasted: has 200,001 characters", {"pasted": "1" * 200_001}),
        ("up to 200,000 characters", {"pasted": "1" * 200_001}),
        ("has 1 useful", {"readings": rows([(3.0, 50.0)])}),
        ("has 4 useful", {"readings": rows([(1.0, 50.1), (1.0, 50.1), (2.0, 50.2), (3.0, 50.3)])}),
        ("at four different", {"readings": rows([*[(1.0, 50.1)] * 6, (2.0, 50.2), (3.0, 50.3)])}),
        ("no gap that grows", {"readings": rows([(f, 60 - g / 10) for f, g in STRAIGHT])}),
        ("Was the dial stuck", {"readings": rows([(1.0 + i, 50.0 if i < 5 else 50.0 + (i - 4) * 0.4) for i in range(11)])}),
        ("no force over zero", {"readings": rows([(0.0, 50.0)])}),
        ("readings[1].force: is too small", {"readings": [{"force": "1 kN"}, {"force": "-1 kN"}]}),
        ("readings[0].gap", {"readings": [{"force": "1 kN", "gap": "wide"}]}),
        ("file: line 2", {"file": base64.b64encode(b"force\tgap\nx\t1").decode()}),
        ("file: has 1 useful", {"file": base64.b64encode(b"force\tgap\n1\t1").decode()}),
        ("no force over zero", {"file": base64.b64encode(b"some words\n").decode()}),
        ("readings", {"readings": []}),
    ],
)  # fmt: skip
def test_bad_input(message: str, raw: dict[str, Any]) -> None:
    assert message in refusal(**raw)


def test_a_thousand_points_falling_loads_and_doubled_times() -> None:
    lines = ["force (kN)\tgap (mm)\ttime (s)"]
    for i in range(1000):
        force = 12.0 * i / 999 - (0.3 if i % 97 == 5 else 0.0)
        lines.append(f"{max(0.0, force):.4f}\t{50 + 0.0213 * max(0.0, force):.5f}\t{i // 2}")
    record = pasted("\n".join(lines))
    assert record["verdict"] == "unknown"  # nothing was read after letting off
    assert value(record, "stiffness") == pytest.approx(1000 / 0.0213, rel=1e-3)


@given(
    comp=st.floats(0.002, 0.4), top=st.floats(1.0, 200.0), n=st.integers(7, 25), share=st.floats(0.3, 0.75),
    ratio=st.floats(3.0, 8.0),
)  # fmt: skip
def test_a_clean_bend_is_never_passed(comp: float, top: float, n: int, share: float, ratio: float) -> None:
    forces = [top * i / n for i in range(n + 1)]
    pairs: list[tuple[float, float | None]] = [
        (f, 50 + comp * f + comp * (ratio - 1) * max(0.0, f - share * top)) for f in forces
    ]
    assert ask(rows(pairs))["verdict"] == "stop"


def test_example_and_us_figure() -> None:
    record = answer("trial-log", worksheet("trial-log").example)
    assert record["verdict"] == "ok"
    assert "stay on it" in record["figure"]["caption"]


LOG = "\n".join(["Force (kN)\tGap (mm)", *(f"{force}\t{gap:.5f}" for force, gap in STRAIGHT), "0.2\t50.004"])


def test_pasted_typed_and_filed_logs_say_the_same() -> None:
    typed = ask(rows([*STRAIGHT, (0.2, 50.004)]))
    as_text = ask(pasted=LOG)
    assert as_text["results"] == pasted(LOG)["results"]
    for name in ("stiffness", "permanent_set", "top_force"):
        assert value(as_text, name) == pytest.approx(value(typed, name), abs=1e-6)


def test_a_pasted_log_keeps_its_first_empty_cell_and_its_length() -> None:
    """Blanks at the start of a line are an empty cell: the log of a column order time, force, gap."""
    text = "Time (s)\tForce (kN)\tGap (mm)\n" + "\n".join(f"\t{force}\t{gap:.5f}" for force, gap in STRAIGHT)
    assert value(ask(pasted=text + "\n\n"), "stiffness") == pytest.approx(1000 / 0.0213, rel=1e-3)


def test_the_way_that_was_said_goes_first() -> None:
    both = {"pasted": LOG, "readings": rows([(2 * force, gap) for force, gap in STRAIGHT])}
    assert value(ask(kept_as="pasted", **both), "top_force") == pytest.approx(12.9)
    assert value(ask(kept_as="readings", **both), "top_force") == pytest.approx(25.8)
    assert value(ask(kept_as="file", **both), "top_force") == pytest.approx(12.9)  # no file: what there is


def test_a_refused_log_is_not_repeated_in_the_error() -> None:
    for raw in (
        {"pasted": "force\tgap\n1\t2"},
        {"readings": rows([(3.0, 50.0)])},
        {"file": base64.b64encode(b"force\tgap\n1\t1").decode()},
    ):
        with pytest.raises(Refused) as caught:
            answer("trial-log", raw, "si")
        assert [error.given for error in caught.value.errors] == [""]


def test_a_pull_that_held_rates_nothing() -> None:
    record = ask(rows([*STRAIGHT, (0.2, 50.004)]))
    assert record["verdict_words"] == "Worked out"
    assert "That gives it no rating" in record["headline"]


@pytest.mark.parametrize(
    ("condition", "verdict"),
    [
        ("welded", "stop"),
        ("heated", "stop"),
        ("bent", "stop"),
        ("home-made", "stop"),
        ("unmarked", "unknown"),
        ("worn", "unknown"),
        ("", "unknown"),
        ("marked-good", "ok"),
    ],
)
def test_what_the_part_is_goes_before_how_it_pulled(condition: str, verdict: str) -> None:
    """A welded hook was straight and back, with the sign of a part within its rating."""
    record = ask(rows([*STRAIGHT, (0.2, 50.004)]), condition=condition)
    assert record["verdict"] == verdict
    assert record["big"]["key"] == "permanent_set"


def dial(forces: Sequence[float], gaps: Sequence[float], **changes: Any) -> dict[str, Any]:
    readings = [{"force": f"{f} lb", "gap": f"{g:.4f} in"} for f, g in zip(forces, gaps, strict=True)]
    return ask(readings, **changes)


def test_a_gap_that_stayed_open_at_no_load_stops() -> None:
    """2.0000 in before, 2.0030 after, 0.010 in elastic: it was called straight and back, because slack had bent the line."""
    forces = [0, 300, 600, 900, 1200, 1500, 1800, 2100, 2400, 2700, 3000, 0]
    gaps = [2 + 0.0107 * f / 3000 + 0.0021 * min(1, f / 300) for f in forces[:-1]]
    record = dial(forces, [*gaps, 2.0030])
    assert record["verdict"] == "stop"
    assert value(record, "permanent_set") == pytest.approx(0.003 * 25.4)
    assert dial(forces, [*gaps, 2.0000])["verdict"] == "ok"
    assert "taking up slack" in " ".join(one["text"] for one in dial(forces, [*gaps, 2.0])["cautions"])


def test_the_first_pull_is_never_forgotten() -> None:
    """The first pull stays open by 0.016 in, a second and higher one runs straight from there: it held, was said."""
    first = [0, 500, 1000, 1500, 2000]
    second = [0, 500, 1000, 1500, 2000, 2500, 3000, 0]
    gaps = [2 + 0.00000413 * f for f in first] + [2.016 + 0.00000413 * f for f in second]
    record = dial([*first, *second], gaps)
    assert record["verdict"] == "stop"
    assert value(record, "permanent_set") == pytest.approx(0.016 * 25.4)


def test_a_second_pull_that_was_not_let_off_is_unknown() -> None:
    forces = [0, 500, 1000, 1500, 2000, 0, 500, 1000, 1500, 2000, 2500, 3000]
    record = dial(forces, [2 + 0.00000413 * f for f in forces])
    assert record["verdict"] == "unknown"
    assert "Nothing was read after the pull was released" in record["headline"]
    assert dial([*forces, 0], [*(2 + 0.00000413 * f for f in forces), 2.0])["verdict"] == "ok"


def test_what_steel_does_not_do_is_unknown() -> None:
    shorter = ask(rows([*STRAIGHT, (0.0, 49.75)]))
    assert shorter["verdict"] == "unknown"
    assert "The dial slipped" in shorter["headline"]
    closed = rows([*STRAIGHT, (0.0, 50.0)], throat="28.0 mm")
    closed[0]["throat"] = "31.0 mm"
    assert ask(closed)["verdict"] == "unknown"
    assert "9.68% smaller" in ask(closed)["headline"]


def test_a_throat_that_was_not_read_is_unknown_where_there_is_one() -> None:
    log = rows([*STRAIGHT, (0.0, 50.0)])
    assert ask(log, part="no-throat")["verdict"] == "ok"
    assert ask(log, part="hook")["verdict"] == "unknown"
    assert ask(log, part="")["verdict"] == "unknown"


def test_a_set_is_read_only_at_a_force_that_was_read_before() -> None:
    late = [pair for pair in STRAIGHT if pair[0] > 1.0]
    record = ask(rows([*late, (0.0, 50.0)]))
    assert record["verdict"] == "unknown"
    assert "read at a force at which it was not read before" in record["headline"]
    record = ask(rows([*STRAIGHT[:1], *late, (0.85, 50.0213 * 1.0)]))
    assert value(record, "permanent_set") == pytest.approx(50.0213 - 50 - 0.0213 * 0.85, abs=1e-6)
    just_under = [(0.05, 50.0), *late]
    assert ask(rows([*just_under, (0.0, 50.0)]))["verdict"] == "ok"


def test_few_rough_readings_cannot_show_a_set() -> None:
    forces = [0, 600, 1200, 1800, 2400, 3000, 0]
    rough = [2.0, 2.0025, 2.0035, 2.0065, 2.0075, 2.0105, 2.0005]
    record = dial(forces, rough)
    assert record["verdict"] == "unknown"
    assert "could not show a permanent set under" in record["headline"]
    assert value(record, "set_shown") > value(record, "set_doubt")


def test_times_without_a_gap_after_letting_off_are_no_letting_off() -> None:
    record = ask(rows([*STRAIGHT, (0.2, None), (0.1, 50.002), (0.0, 50.0)]))
    assert value(record, "permanent_set") == pytest.approx((0.002 + 0.0) / 2 - 0.0213 * 0.05, abs=1e-6)


def test_the_step_of_a_dial_is_found_from_its_readings() -> None:
    assert step_shown_m([0.050, 0.05002, 0.05008]) == pytest.approx(2e-5)
    assert step_shown_m([0.05, 0.0512345678]) == 0.0


def test_a_dated_title_above_the_headings_is_no_reading() -> None:
    title = "Bollard hook, 14 March\nGauge no. 2, force side\n"
    assert read_log(title + "time (s)\tforce (kN)\tgap (mm)\n5\t1.5\t50", True) == read_log(
        "time (s)\tforce (kN)\tgap (mm)\n5\t1.5\t50", True
    )


def test_pulls_of_one_reading_each_share_one_line() -> None:
    rise = [(1000.0 * i, 0.05 + 1.234567e-7 * i + 1e-7 * (-1) ** i) for i in range(6)]
    assert gap_scatter(rise, range(6)) == gap_scatter(rise, [0] * 6)
