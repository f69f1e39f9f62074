"""Reads what people type for a length, a load or an angle, and writes what people read.

Question of the trade: a tape reads 38-5/8, a scale 4.86k, a plan 1'-3 1/2"; what is that in one unit, and how is the
answer written so that a shop reads it right? Factors come from Pint (calc/unit_factors.py, exact by definition for
the inch, the pound and standard gravity: NIST Special Publication 811, 2008 edition, Appendix B).

Inside calc every number is a plain float in one SI unit per dimension: metre, kilogram, newton, pascal, newton
metre, joule, degree, degree Celsius (calc.unit_factors.SI_UNITS has the whole list).
"""

from __future__ import annotations

import functools
import math
import re
from dataclasses import dataclass, replace
from fractions import Fraction

from calc.unit_factors import SI_UNITS, UNIT_FACTORS
from calc.words.facts import Cell, Fact, message

STANDARD_GRAVITY_M_PER_S2 = 9.80665
"""Standard acceleration of free fall [m/s2], exact by convention (NIST SP 811, Appendix B.8)."""

# What people write for a unit, lower case unless case carries meaning. One spelling may name two units of
# different dimension (`t`, `kg`, `lb`, `ton`): the box that is filled in decides.
ALIASES: dict[str, dict[str, str]] = {
    "length": {
        '"': "in",
        "inch": "in",
        "inches": "in",
        "'": "ft",
        "foot": "ft",
        "feet": "ft",
        "yard": "yd",
        "yards": "yd",
        "mile": "mi",
        "miles": "mi",
        "mil": "thou",
        "mils": "thou",
        "micron": "um",
        "microns": "um",
        "µm": "um",
        "μm": "um",
        "millimeter": "mm",
        "millimetre": "mm",
        "millimeters": "mm",
        "millimetres": "mm",
        "centimeter": "cm",
        "centimetre": "cm",
        "centimeters": "cm",
        "centimetres": "cm",
        "meter": "m",
        "metre": "m",
        "meters": "m",
        "metres": "m",
        "kilometer": "km",
        "kilometre": "km",
    },
    "area": {
        "sqin": "in2",
        "sq.in": "in2",
        "sqft": "ft2",
        "sq.ft": "ft2",
        "sqmm": "mm2",
        "sqcm": "cm2",
        "sqm": "m2",
    },
    "volume": {
        "cuin": "in3",
        "cu.in": "in3",
        "cuft": "ft3",
        "cu.ft": "ft3",
        "cuyd": "yd3",
        "gallon": "gal",
        "gallons": "gal",
        "gals": "gal",
        "impgal": "imp_gal",
        "quart": "qt",
        "quarts": "qt",
        "cc": "cm3",
        "ml": "cm3",
        "l": "L",
        "liter": "L",
        "litre": "L",
        "liters": "L",
        "litres": "L",
    },
    "second_moment": {},
    "weight": {
        "ounce": "oz",
        "ounces": "oz",
        "pound": "lb",
        "pounds": "lb",
        "lbs": "lb",
        "#": "lb",
        "lbm": "lb",
        "shortton": "short_ton",
        "shorttons": "short_ton",
        "uston": "short_ton",
        "ustons": "short_ton",
        "longton": "long_ton",
        "longtons": "long_ton",
        "gram": "g",
        "grams": "g",
        "kilo": "kg",
        "kilos": "kg",
        "kgs": "kg",
        "kilogram": "kg",
        "kilograms": "kg",
        "tonne": "t",
        "tonnes": "t",
        "metricton": "t",
        "metrictons": "t",
        "te": "t",
    },
    "force": {
        "poundforce": "lbf",
        "lbsf": "lbf",
        "kips": "kip",
        "newton": "N",
        "newtons": "N",
        "n": "N",
        "dan": "daN",
        "kn": "kN",
        "kilonewton": "kN",
        "kilonewtons": "kN",
        "mn": "MN",
        "kp": "kgf",
    },
    "pressure": {
        "lb/in2": "psi",
        "lbf/in2": "psi",
        "psig": "psi",
        "pa": "Pa",
        "kpa": "kPa",
        "bars": "bar",
        "mpa": "MPa",
        "gpa": "GPa",
        "n/mm2": "N/mm2",
        "kg/cm2": "kgf/cm2",
    },
    "torque": {
        "in-lb": "lbf.in",
        "in.lb": "lbf.in",
        "lb-in": "lbf.in",
        "lb.in": "lbf.in",
        "in-lbf": "lbf.in",
        "lbf-in": "lbf.in",
        "in.lbf": "lbf.in",
        "ft-lb": "lbf.ft",
        "ft.lb": "lbf.ft",
        "lb-ft": "lbf.ft",
        "lb.ft": "lbf.ft",
        "ft-lbf": "lbf.ft",
        "lbf-ft": "lbf.ft",
        "ft.lbf": "lbf.ft",
        "ftlb": "lbf.ft",
        "inlb": "lbf.in",
        "nm": "N.m",
        "n.m": "N.m",
        "n-m": "N.m",
        "knm": "kN.m",
        "kn.m": "kN.m",
        "kn-m": "kN.m",
        "nmm": "N.mm",
        "n.mm": "N.mm",
        "kip-ft": "kip.ft",
    },
    "energy": {
        "j": "J",
        "joule": "J",
        "joules": "J",
        "kj": "kJ",
        "ft-lb": "ft.lbf",
        "ft.lb": "ft.lbf",
        "ft-lbf": "ft.lbf",
        "ftlb": "ft.lbf",
        "in-lb": "in.lbf",
        "in.lb": "in.lbf",
        "in-lbf": "in.lbf",
        "btu": "BTU",
        "kwh": "kWh",
    },
    "power": {"w": "W", "watt": "W", "watts": "W", "kw": "kW", "horsepower": "hp"},
    "speed": {"ipm": "in/min", "fpm": "ft/min", "fps": "ft/s", "kmh": "km/h", "kph": "km/h", "knots": "kn"},
    "time": {
        "sec": "s",
        "secs": "s",
        "second": "s",
        "seconds": "s",
        "mins": "min",
        "minute": "min",
        "minutes": "min",
        "hr": "h",
        "hrs": "h",
        "hour": "h",
        "hours": "h",
        "days": "day",
    },
    "angle": {
        "°": "deg",
        "degree": "deg",
        "degrees": "deg",
        "degs": "deg",
        "radian": "rad",
        "radians": "rad",
        "gon": "grad",
        "gons": "grad",
    },
    "temperature": {
        "celsius": "degC",
        "centigrade": "degC",
        "fahrenheit": "degF",
        "kelvin": "K",
        "kelvins": "K",
        "rankine": "degR",
        "deg celsius": "degC",
        "deg fahrenheit": "degF",
        "°celsius": "degC",
        "°fahrenheit": "degF",
        "degrees c": "degC",
        "degrees f": "degF",
        "degrees celsius": "degC",
        "degrees fahrenheit": "degF",
        "°f": "degF",
        "f": "degF",
        "°c": "degC",
        "c": "degC",
        "°": "",
        "degf": "degF",
        "degc": "degC",
        "k": "K",
        "deg f": "degF",
        "deg c": "degC",
    },
    "temperature_difference": {
        "celsius": "delta_degC",
        "fahrenheit": "delta_degF",
        "kelvin": "K",
        "kelvins": "K",
        "°f": "delta_degF",
        "f": "delta_degF",
        "degf": "delta_degF",
        "deg f": "delta_degF",
        "°c": "delta_degC",
        "c": "delta_degC",
        "degc": "delta_degC",
        "deg c": "delta_degC",
        "°": "",
        "k": "K",
    },
    "density": {
        "pcf": "lb/ft3",
        "lb/cuft": "lb/ft3",
        "lbs/ft3": "lb/ft3",
        "g/cc": "g/cm3",
        "kg/l": "g/cm3",
        "kg/dm3": "g/cm3",
        "pci": "lb/in3",
    },
    "weight_per_length": {"plf": "lb/ft", "lbs/ft": "lb/ft", "lbs/in": "lb/in"},
    "weight_per_area": {"psf": "lb/ft2", "lbs/ft2": "lb/ft2"},
    "stiffness": {"lb/in": "lbf/in", "n/m": "N/m", "n/mm": "N/mm", "kn/mm": "kN/mm"},
    "heat_input": {"kj/in": "kJ/in", "kj/mm": "kJ/mm", "j/mm": "J/mm"},
    "force_rate": {"lb/min": "lbf/min", "lb/s": "lbf/s", "kn/min": "kN/min", "n/s": "N/s"},
    "voltage": {"v": "V", "volt": "V", "volts": "V"},
    "current": {"a": "A", "amp": "A", "amps": "A"},
    "fraction": {"percent": "%"},
}

TWO_MEANINGS: dict[str, dict[str, str]] = {
    "weight": {"ton": "ton", "tons": "ton", "t": "ton"},
    "force": {"ton": "ton", "tons": "ton", "t": "ton"},
    "angle": {"grad": "grad", "grads": "grad"},
}
"""What people write for more than one unit, lower case, and the code of the refusal (`unreadable-two-units-CODE`): ton is a
short ton, a tonne or a long ton, and so is T; a small t is a tonne. Grad is a degree in some languages and a gon in others.
"""

UNIT_WORDS: dict[str, str] = {
    "um": "µm",
    "in2": "in²",
    "ft2": "ft²",
    "mm2": "mm²",
    "cm2": "cm²",
    "m2": "m²",
    "in3": "in³",
    "ft3": "ft³",
    "yd3": "yd³",
    "mm3": "mm³",
    "cm3": "cm³",
    "m3": "m³",
    "in4": "in⁴",
    "mm4": "mm⁴",
    "cm4": "cm⁴",
    "m4": "m⁴",
    "imp_gal": "imp gal",
    "lbf": "lb",
    "short_ton": "short ton",
    "long_ton": "long ton",
    "tonf": "short ton",
    "N/mm2": "N/mm²",
    "kgf/cm2": "kgf/cm²",
    "lbf.in": "lb·in",
    "lbf.ft": "lb·ft",
    "kip.ft": "kip·ft",
    "N.m": "N·m",
    "kN.m": "kN·m",
    "N.mm": "N·mm",
    "kgf.m": "kgf·m",
    "ft.lbf": "ft·lb",
    "in.lbf": "in·lb",
    "deg": "°",
    "degF": "°F",
    "degC": "°C",
    "degR": "°R",
    "delta_degF": "°F",
    "delta_degC": "°C",
    "lb/ft3": "lb/ft³",
    "lb/in3": "lb/in³",
    "kg/m3": "kg/m³",
    "g/cm3": "g/cm³",
    "t/m3": "t/m³",
    "lb/ft2": "lb/ft²",
    "kg/m2": "kg/m²",
    "lbf/in": "lb/in",
    "lbf/min": "lb/min",
    "lbf/s": "lb/s",
    "ratio": "",
    "grad": "gon",
}
"""How a unit is written for a reader, where that differs from its symbol. A pull in pounds reads `lb`."""

# The pair of units a reader sees for a dimension, unless a worksheet asks for others: (US, SI).
READING_UNITS: dict[str, tuple[str, str]] = {
    "length": ("in", "mm"),
    "area": ("in2", "mm2"),
    "volume": ("ft3", "m3"),
    "second_moment": ("in4", "cm4"),
    "weight": ("lb", "kg"),
    "force": ("lbf", "kN"),
    "pressure": ("psi", "bar"),
    "torque": ("lbf.ft", "N.m"),
    "energy": ("ft.lbf", "J"),
    "power": ("hp", "kW"),
    "speed": ("in/min", "mm/min"),
    "time": ("min", "min"),
    "angle": ("deg", "deg"),
    "temperature": ("degF", "degC"),
    "temperature_difference": ("delta_degF", "delta_degC"),
    "density": ("lb/ft3", "kg/m3"),
    "weight_per_length": ("lb/ft", "kg/m"),
    "weight_per_area": ("lb/ft2", "kg/m2"),
    "stiffness": ("lbf/in", "N/mm"),
    "heat_input": ("kJ/in", "kJ/mm"),
    "force_rate": ("lbf/min", "kN/min"),
    "voltage": ("V", "V"),
    "current": ("A", "A"),
    "fraction": ("%", "%"),
}

_VULGAR = {
    "½": "1/2",
    "⅓": "1/3",
    "⅔": "2/3",
    "¼": "1/4",
    "¾": "3/4",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅚": "5/6",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}
_SIGNS = {
    "−": "-",
    "–": "-",
    "—": "-",
    "‐": "-",
    "‑": "-",
    "′": "'",
    "’": "'",
    "‘": "'",
    "″": '"',
    "”": '"',
    "“": '"',
    "⁄": "/",
    "²": "2",
    "³": "3",
    "⁴": "4",
    "·": ".",
    "º": "°",
    "˚": "°",
}
_SPACES = "\u00a0\u2007\u2009\u202f\t\r\n"

_NUMBER = r"""
    (?P<whole>\d+)[ ]*-[ ]*(?P<n1>\d+)/(?P<d1>\d+)      # 38-5/8
  | (?P<whole2>\d+)[ ]+(?P<n2>\d+)/(?P<d2>\d+)          # 38 5/8
  | (?P<n3>\d+)/(?P<d3>\d+)                             # 3/8
  | (?P<decimal>(?:\d[\d.,]*(?:[ ]\d{3}(?![\d/,.]))*|[.,]\d+)(?:[eE][+-]?\d+)?)   # 4,860  4.86  4 860  1e3
"""
_TOKEN = re.compile(
    rf"""[ ]*(?:
      (?P<number>{_NUMBER})
    | (?P<thousand>[kK](?=[ ]|$))
    | (?P<unit>["'] | [A-Za-zµμ°%\#]+(?:[234](?![A-Za-z0-9]))?
        (?:[./_-][A-Za-z]+(?:[234](?![A-Za-z0-9]))?)*\.?(?![A-Za-z0-9]*\.))
    )""",
    re.VERBOSE,
)


class NotReadable(ValueError):
    """What was typed cannot be read: the message `unreadable-CODE` of the catalogue says why, with its facts."""

    def __init__(self, code: str, **facts: Fact) -> None:
        self.why = message(f"unreadable-{code}", **facts)
        super().__init__(code)

    def __str__(self) -> str:
        from calc.words.writer import in_english

        text = in_english(self.why)
        return text.removeprefix("unreadable-")


class TwoReadings(NotReadable):
    """The mark in a number can stand before decimals or between thousands, and both make sense in the unit. `smaller`: the
    smaller of the two; `larger_si`: the larger.
    """

    def __init__(self, decimal: float, unit: str, dimension: str) -> None:
        self.smaller = Reading(to_si(decimal, unit, dimension), unit, dimension)
        self.larger_si = to_si(decimal * 1000.0, unit, dimension)
        thousand = Cell(f"{decimal * 1000.0:,.0f}", unit)
        super().__init__("thousand-or-decimal", thousand=thousand, decimal=Cell(f"{decimal:g}", unit))


class PercentOrShare(TwoReadings):
    """A bare number under 1 in a box of percent can be a share of a hundred or of one."""

    def __init__(self, value: float) -> None:
        self.smaller = Reading(to_si(value, "%", "fraction"), "%", "fraction")
        self.larger_si = to_si(value, "ratio", "fraction")
        as_percent, as_share = Cell(f"{value:.4g}", "%"), Cell(f"{value * 100:.4g}", "%")
        NotReadable.__init__(self, "percent-or-share", percent=as_percent, share=as_share)


@dataclass(frozen=True)
class _Term:
    """A number and its unit as written; `typed` is there where the mark in it can be read two ways."""

    value: float
    unit: str = ""
    typed: str = ""


@dataclass(frozen=True)
class Reading:
    """A value as read: its SI value, and the unit that was typed or assumed."""

    value_si: float
    unit: str
    dimension: str


def two_units(text: str, dimension: str) -> str | None:
    """The code of the refusal of a unit that has more than one meaning in a box of `dimension`; None where it has one.

    >>> two_units("T", "weight"), two_units("t", "weight"), two_units("Grad", "angle")
    ('ton', None, 'grad')
    """
    return None if text == "t" else TWO_MEANINGS.get(dimension, {}).get(text.lower().rstrip("."))


def find_unit(text: str, dimension: str) -> str | None:
    """The handbook's symbol for the unit written `text` in a box of `dimension`; None where there is none, or more than one."""
    if two_units(text, dimension):
        return None
    known = UNIT_FACTORS[dimension]
    if text in known:
        return text
    aliases = ALIASES[dimension]
    for candidate in (text, text.lower(), text.lower().rstrip("."), text.lower().replace(" ", "")):
        if candidate in aliases:
            return aliases[candidate]
        if candidate in known:
            return candidate
    return None


def dimension_of(text: str) -> list[str]:
    """Every dimension in which `text` names a unit, in the order of the unit table."""
    return [dimension for dimension in UNIT_FACTORS if find_unit(text, dimension)]


def to_si(value: float, unit: str, dimension: str) -> float:
    """Carry `value` in `unit` to the SI unit of `dimension`. A mass where a force is meant weighs under standard gravity, and back."""
    factors = UNIT_FACTORS[dimension]
    if unit in factors:
        factor, offset = factors[unit]
        return value * factor + offset
    if dimension == "force" and unit in UNIT_FACTORS["weight"]:
        return value * UNIT_FACTORS["weight"][unit][0] * STANDARD_GRAVITY_M_PER_S2
    if dimension == "weight" and unit in UNIT_FACTORS["force"]:
        return value * UNIT_FACTORS["force"][unit][0] / STANDARD_GRAVITY_M_PER_S2
    raise NotReadable("not-unit-of", unit=unit, dimension=message(f"dimension-{dimension}"))


def from_si(value_si: float, unit: str, dimension: str) -> float:
    """Carry an SI value of `dimension` to `unit`."""
    factors = UNIT_FACTORS[dimension]
    if unit in factors:
        factor, offset = factors[unit]
        return (value_si - offset) / factor
    if dimension == "force" and unit in UNIT_FACTORS["weight"]:
        return value_si / STANDARD_GRAVITY_M_PER_S2 / UNIT_FACTORS["weight"][unit][0]
    if dimension == "weight" and unit in UNIT_FACTORS["force"]:
        return value_si * STANDARD_GRAVITY_M_PER_S2 / UNIT_FACTORS["force"][unit][0]
    raise NotReadable("not-unit-of", unit=unit, dimension=message(f"dimension-{dimension}"))


@functools.lru_cache(maxsize=4096)
def plain_number(text: str) -> float:
    """Read a number as a shop writes it, without a unit: `38-5/8`, `3/8`, `4,860`, `4.86k`, `1,5`."""
    terms = _terms(_tidy(text), "fraction")
    if len(terms) != 1 or terms[0].unit:
        raise NotReadable("not-plain-number", typed=text)
    return terms[0].value


def read_quantity(
    text: str | float, dimension: str, default_unit: str, point_is_decimal: bool = False
) -> Reading:
    """Read what was typed into a box.

    text -- `38 5/8 in`, `5'-3"`, `1 1/2 t`, `4,860 lb`, `4.86k lb`, `30°`; a bare number takes `default_unit`
    dimension -- a key of calc.unit_factors.UNIT_FACTORS
    point_is_decimal -- it is known from elsewhere that 1.500 is one and a half
    Raises NotReadable with a sentence for the reader.
    """
    if isinstance(text, (int, float)):
        if not math.isfinite(text):
            raise NotReadable("not-finite")
        _not_a_share(_Term(float(text)), dimension, default_unit)
        return Reading(to_si(float(text), default_unit, dimension), default_unit, dimension)
    tidy = _tidy(text)
    if _DASHED.fullmatch(tidy):
        raise NotReadable("dash-two-ways")
    terms = _with_inches(_terms(tidy, dimension), dimension)
    if len(terms) > 1 and any(not term.unit for term in terms):
        raise NotReadable("number-without-unit")
    first_unit = _unit_for(terms[0].unit, dimension, default_unit)
    if len(terms) == 1:
        _not_a_share(terms[0], dimension, default_unit)
        _one_reading(terms[0], first_unit, dimension, point_is_decimal)
        total_si = to_si(terms[0].value, first_unit, dimension)
    else:
        total_si = _sum_of_parts(terms, dimension, default_unit)
    if not math.isfinite(total_si):
        raise NotReadable("too-large-number")
    return Reading(total_si, first_unit, dimension)


_DASHED = re.compile(r"\d[\d.,]*[ ]*-[ ]*\d[\d.,]*(?:[ ]*[^\d/ ].*)?")
"""`6-2`: feet and inches, a fraction that lost its second half, or from 6 to 2."""
_MARK_AND_THREE_DIGITS = re.compile(r"[1-9]\d{0,2}[.,]\d{3}")
"""`1.500`: one and a half, or fifteen hundred as it is written on the continent; `1,500` the other way round."""
_COMMA_AND_NOT_THREE = re.compile(r"[1-9]\d{0,2},(?:\d{1,2}|\d{4,})")
"""`4,86`: a decimal comma, or a digit that was lost between thousands; `4,8600` likewise, with one too many."""
_NO_DECIMAL_COMMA = frozenset(("lb", "lbf", "psi"))
"""Units in which nobody writes a decimal comma: a digit was lost or is one too many."""
_POINT_IS_DECIMAL = frozenset(
    (
        *(
            "in",
            "ft",
            "yd",
            "mi",
            "thou",
            "m",
            "km",
            "in2",
            "ft2",
            "m2",
            "in3",
            "ft3",
            "m3",
            "in4",
            "deg",
            "rad",
            "%",
            "ratio",
        ),
        *("g/cm3", "t/m3", "lb/in3", "kJ/in", "kJ/mm", "V", "A"),
    )
)
"""Units in which a point with three digits is a decimal point: a caliper reads 1.125 in, and nobody writes 1,125 in so. In
all others (weights, forces, pressures, millimetres ...) it is asked back.
"""
_COMMA_IS_ASKED_BACK = frozenset(
    ("t", "short_ton", "long_ton", "kN", "MN", "kip", "tf", "tonf", "in", "m", "%", "bar", "MPa")
)
"""Units so large that a comma with three digits is as likely a decimal comma. In all others it stands between thousands, and
the reader is shown what was understood.
"""


def _one_reading(term: _Term, unit: str, dimension: str, point_is_decimal: bool = False) -> None:
    """Refuse `1.500 kg` and `1,500 t`, naming both readings, and `4,86 lb`, in which a digit is likely lost."""
    if not term.typed:
        return
    if _COMMA_AND_NOT_THREE.fullmatch(term.typed):
        if unit in _NO_DECIMAL_COMMA:
            raise NotReadable("comma-and-not-three", decimal=Cell(term.typed.replace(",", "."), unit))
        return
    asked = (
        unit in _COMMA_IS_ASKED_BACK
        if "," in term.typed
        else unit not in _POINT_IS_DECIMAL and not point_is_decimal
    )
    if asked:
        raise TwoReadings(math.copysign(float(term.typed.replace(",", ".")), term.value), unit, dimension)


def _not_a_share(term: _Term, dimension: str, default_unit: str) -> None:
    """Refuse a bare `1/3` or `0.4` in a box of percent: is it a share of one, or of a hundred?"""
    if dimension == "fraction" and default_unit == "%" and not term.unit and 0 < abs(term.value) < 1:
        raise PercentOrShare(term.value)


def _with_inches(terms: list[_Term], dimension: str) -> list[_Term]:
    """A number behind feet is inches: `6 ft 2`."""
    if dimension == "length" and len(terms) == 2 and not terms[1].unit and 0 <= terms[1].value < 12:
        feet, inches = terms
        if find_unit(feet.unit, "length") == "ft":
            return [feet, replace(inches, unit="in")]
    return terms


def _sum_of_parts(terms: list[_Term], dimension: str, default_unit: str) -> float:
    """Add `5 ft 3 in`: parts in falling units, all on the side of zero of the first."""
    side = -1.0 if terms[0].value < 0 else 1.0
    total_si = 0.0
    larger_unit_si = math.inf
    for term in terms:
        unit = _unit_for(term.unit, dimension, default_unit)
        _one_reading(term, unit, dimension)
        unit_si = to_si(1.0, unit, dimension)
        if dimension == "temperature" or unit_si >= larger_unit_si:
            raise NotReadable("not-added-up")
        larger_unit_si = unit_si
        total_si += side * abs(term.value) * unit_si
    return total_si


def may_be_thousand(text: str) -> bool:
    """Whether a bare number can be read with its point as a decimal point or between thousands.

    >>> may_be_thousand("1.500"), may_be_thousand("0.375"), may_be_thousand("1.50")
    (True, False, False)
    """
    return "." in text and bool(_MARK_AND_THREE_DIGITS.fullmatch(text.strip().lstrip("+-")))


_NEEDS_ECHO = re.compile(
    r"\d[, ]\d | \d/\d | (?:^|[^\d])[,.]\d | \d[kK](?=[ ]|$) | \d[ ]?[A-Za-z'\"]+[ ]?-?[ ]?\d | [1-9]\.\d{3}(?!\d)",
    re.VERBOSE,
)


def needs_echo(text: str) -> bool:
    """Whether a reader should be shown how it was read: a thousands mark, a comma, a k, a fraction, mixed units.

    >>> needs_echo("1,500 kg"), needs_echo("5'-3"), needs_echo("1500 kg"), needs_echo("1½ t")
    (True, True, False, True)
    """
    return bool(_NEEDS_ECHO.search(_tidy(text)))


def _tidy(text: str) -> str:
    tidy = text.strip()
    for space in _SPACES:
        tidy = tidy.replace(space, " ")
    if not tidy.isascii():  # what most people type is: a load on four legs has twenty such boxes
        for vulgar, plain in _VULGAR.items():
            tidy = re.sub(rf"(\d)\s*{vulgar}", rf"\1 {plain}", tidy).replace(vulgar, plain)
        for sign, plain in _SIGNS.items():
            tidy = tidy.replace(sign, plain)
    tidy = tidy.replace("''", '"')
    return re.sub(r" +", " ", tidy).strip()


def _terms(tidy: str, dimension: str) -> list[_Term]:
    """Split tidy text into numbers with their units as written."""
    if not tidy:
        raise NotReadable("empty")
    sign = 1.0
    if tidy[0] in "+-":
        sign = -1.0 if tidy[0] == "-" else 1.0
        tidy = tidy[1:].lstrip()
    terms: list[_Term] = []
    position = 0
    while position < len(tidy):
        if terms and terms[-1].unit and (join := re.compile(r"[ ]*-[ ]*(?=\d)").match(tidy, position)):
            position = join.end()
        match = _TOKEN.match(tidy, position)
        if not match:
            raise NotReadable("from-here-on", rest=tidy[position:].strip())
        position = match.end()
        if match["number"] is not None:
            terms.append(_Term(_number(match), typed=_doubtful(match)))
        elif not terms:
            raise NotReadable("no-number-before-unit")
        elif match["thousand"] and not terms[-1].unit and not dimension.startswith("temperature"):
            terms[-1] = _Term(terms[-1].value * 1000.0)
        else:
            written = match["unit"] or match["thousand"]
            terms[-1] = replace(terms[-1], unit=f"{terms[-1].unit} {written}".strip())
    if not terms:
        raise NotReadable("no-number")
    terms[0] = replace(terms[0], value=sign * terms[0].value)
    return terms


def _doubtful(match: re.Match[str]) -> str:
    """The number as typed if its mark can be read two ways, else nothing."""
    typed = match["decimal"] or ""
    return typed if _MARK_AND_THREE_DIGITS.fullmatch(typed) or _COMMA_AND_NOT_THREE.fullmatch(typed) else ""


def _number(match: re.Match[str]) -> float:
    for whole, numerator, denominator in (("whole", "n1", "d1"), ("whole2", "n2", "d2"), (None, "n3", "d3")):
        if match[numerator] is not None:
            if int(match[denominator]) == 0:
                raise NotReadable("divides-by-zero")
            part = Fraction(int(match[numerator]), int(match[denominator]))
            return float(part + (int(match[whole]) if whole else 0))
    return _decimal(match["decimal"])


def _decimal(text: str) -> float:
    body, _, exponent = text.lower().partition("e")
    if " " in body and not re.fullmatch(r"[1-9]\d{0,2}( \d{3})+", body):
        raise NotReadable("spaces-two-ways", typed=text)
    body = body.replace(" ", "")
    power = f"e{exponent}" if exponent else ""
    if re.fullmatch(r"\d+(\.\d*)?|\.\d+", body):
        return float(body + power)
    if re.fullmatch(r"[1-9]\d{0,2}(,\d{3})+(\.\d*)?", body):
        return float(body.replace(",", "") + power)
    if re.fullmatch(r"[1-9]\d{0,2}(\.\d{3})+,\d+", body):
        return float(body.replace(".", "").replace(",", ".") + power)
    if re.fullmatch(r"0?,\d+|\d+,(\d{1,2}|\d{4,})", body):
        return float(body.replace(",", ".") + power)
    raise NotReadable("marks-two-ways", typed=text)


def _unit_for(written: str, dimension: str, default_unit: str) -> str:
    if not written:
        return default_unit
    if code := two_units(written, dimension):
        raise NotReadable(f"two-units-{code}", unit=written)
    unit = find_unit(written, dimension)
    if unit is not None:
        return unit or default_unit
    if dimension == "force" and (mass := find_unit(written, "weight")):
        return mass
    if dimension == "weight" and (force := find_unit(written, "force")):
        return force
    elsewhere = dimension_of(written)
    if elsewhere:
        raise NotReadable(
            "unit-of-another",
            unit=written,
            other=message(f"dimension-{elsewhere[0]}"),
            wanted=message(f"dimension-{dimension}"),
        )
    raise NotReadable("unknown-unit", unit=written)


# ---------------------------------------------------------------------------------------------- writing


SMALLEST_ROUNDED = 1e-290
"""Below this a step of rounding would leave the range of normal floating-point numbers."""


def round_to(value: float, digits: int, direction: str = "nearest") -> float:
    """Round to `digits` significant digits; `direction` is nearest, up (a demand) or down (a capacity).

    Values nearer nought than SMALLEST_ROUNDED come back as they are: they carry no digits to spare, and no shop has them.
    """
    if abs(value) < SMALLEST_ROUNDED or not math.isfinite(value):
        return value
    step = 10.0 ** (math.floor(math.log10(abs(value))) - digits + 1)
    scaled = value / step
    nearest = round(scaled)
    if direction == "nearest" or abs(scaled - nearest) < 1e-9 * max(1.0, abs(scaled)):
        steps = nearest
    else:
        steps = math.ceil(scaled) if direction == "up" else math.floor(scaled)
    return float(f"{steps * step:.{max(digits - 1, 0)}e}")


def number_text(value: float, digits: int = 3, direction: str = "nearest") -> str:
    """Write a number for a reader: thousands commas, `digits` significant digits, no exponent."""
    rounded = round_to(value, digits, direction)
    if rounded == 0:
        return "0"
    places = max(0, digits - 1 - math.floor(math.log10(abs(rounded))))
    text = f"{rounded:,.{places}f}"
    if "." in text and abs(rounded - round(rounded)) < 1e-12 * max(1.0, abs(rounded)):
        text = f"{round(rounded):,}"
    return text.replace("-", "−")


def typed_text(value: float, unit: str, digits: int, direction: str) -> str:
    """A value as a reader would type it into a box: no commas, which a box may read in two ways, and an ASCII minus.

    >>> typed_text(12_340.2, "lb", 3, "up"), typed_text(-3.04, "in", 3, "nearest")
    ('12400 lb', '-3.04 in')
    """
    number = number_text(value, digits, direction).replace(",", "").replace("−", "-")
    return f"{number} {unit}"


def fixed_text(value: float, places: int, direction: str = "nearest") -> str:
    """Write a number with so many decimal places, whatever its size; `direction` as in round_to.

    >>> fixed_text(204.44, 0), fixed_text(204.44, 0, "up"), fixed_text(-40.0, 1), fixed_text(-0.2, 0)
    ('204', '205', '−40.0', '0')
    """
    steps = value * 10.0**places
    if direction != "nearest" and abs(steps - round(steps)) >= 1e-9 * max(1.0, abs(steps)):
        value = (math.ceil(steps) if direction == "up" else math.floor(steps)) / 10.0**places
    text = f"{value:,.{places}f}"
    return (
        text.removeprefix("-") if not any(digit in text for digit in "123456789") else text.replace("-", "−")
    )


def fraction_steps(value_in: float, denominator: int = 16) -> tuple[str, str]:
    """Inches as a tape shows them, to the nearest 1/`denominator`: the whole with its sign, and the fraction or nothing.

    >>> fraction_steps(38.625), fraction_steps(0.375), fraction_steps(-2.0)
    (('38', '5/8'), ('', '3/8'), ('−2', ''))
    """
    steps = round(abs(value_in) * denominator)
    whole, rest = divmod(steps, denominator)
    sign = "−" if value_in < 0 and steps else ""
    if rest == 0:
        return f"{sign}{whole:,}", ""
    return f"{sign}{whole:,}" if whole else sign, str(Fraction(rest, denominator))


def fraction_text(value_in: float, denominator: int = 16) -> str:
    """Write inches as a tape shows them: 38.625 -> `38-5/8`, to the nearest 1/`denominator`."""
    whole, part = fraction_steps(value_in, denominator)
    if not part:
        return whole
    return f"{whole}-{part}" if whole not in ("", "−") else f"{whole}{part}"


def unit_text(unit: str) -> str:
    """The unit as a reader sees it."""
    return UNIT_WORDS.get(unit, unit)


_COUNTED = ("short_ton", "long_ton", "tonf")
_UP_TO_ONE = re.compile(r"-?(1|[0-9]+/[0-9]+)")


def with_unit(text: str, unit: str) -> str:
    """A written number with its unit behind it; degrees of angle and percent stand close, tons have a plural."""
    if unit in ("deg", "%"):
        return f"{text}{unit_text(unit)}"
    plural = "s" if unit in _COUNTED and not _UP_TO_ONE.fullmatch(text) else ""
    return f"{text} {unit_text(unit)}{plural}".strip()


def show_in(value_si: float, dimension: str, unit: str, digits: int = 3, direction: str = "nearest") -> str:
    """Write an SI value in one unit. Inches over 1/4 in read in sixteenths, like a tape."""
    value = from_si(value_si, unit, dimension)
    if unit == "in" and direction == "nearest" and abs(value) >= 0.25 and digits <= 3:
        return f"{fraction_text(value)} in"
    return with_unit(number_text(value, digits, direction), unit)


def show(
    value_si: float,
    dimension: str,
    units: str = "us",
    reading: tuple[str, str] | None = None,
    digits: int = 3,
    direction: str = "nearest",
) -> str:
    """Write an SI value for a reader in both systems: `2,770 lb (12.3 kN)`; `units` (us or si) says which first."""
    us_unit, si_unit = reading or READING_UNITS[dimension]
    us_text = show_in(value_si, dimension, us_unit, digits, direction)
    if us_unit == si_unit:
        return us_text
    si_text = show_in(value_si, dimension, si_unit, digits, direction)
    return f"{us_text} ({si_text})" if units == "us" else f"{si_text} ({us_text})"


__all__ = [
    "READING_UNITS",
    "SI_UNITS",
    "STANDARD_GRAVITY_M_PER_S2",
    "TWO_MEANINGS",
    "UNIT_FACTORS",
    "NotReadable",
    "Reading",
    "TwoReadings",
    "dimension_of",
    "find_unit",
    "fixed_text",
    "fraction_steps",
    "fraction_text",
    "from_si",
    "may_be_thousand",
    "needs_echo",
    "number_text",
    "plain_number",
    "read_quantity",
    "round_to",
    "show",
    "show_in",
    "to_si",
    "two_units",
    "unit_text",
    "with_unit",
]
