# Worksheet convert.

title = What is that in my units?
summary = Converts one value to another unit, and to the nearest fraction of an inch.
story = The plan of the cradle is in inches, the saw stop is in millimeters.

## What is asked

input-value = Value with its unit
    .help = Such as 38-5/8 in, 4.86k lb, 1 1/2 t, 200 bar or 90 °F.
input-to = Unit wanted
    .help = Such as mm, kg, kN or psi. If you leave it empty, the usual unit of the other system is used.

## What is found

result-result = Result
result-unit = Unit
result-dimension = Kind
result-nearest_16 = Nearest sixteenth
result-nearest_32 = Nearest thirty-second
result-nearest_64 = Nearest sixty-fourth
result-others = In other units

## The headline and the cautions

reason-carried =
    .headline = { $typed } is { $carried }.
reason-mass-as-weight =
    .caution = A mass counts as its weight under standard gravity, 9.80665 m/s². A jerk pulls harder.
reason-three-tons =
    .caution = Three tons are in use: the short ton of 2,000 lb, the tonne of 2,205 lb and the long ton of 2,240 lb. Read the tag twice.

## Values

unit = { $unit }
other = { $value }
nearest-exact = { $fraction } exactly
nearest-over = { $fraction } ({ $off } over)
nearest-under = { $fraction } ({ $off } under)
absent-not-a-length = not a length

## The working

step-degrees = Degrees
    .formula = °F = °C × 9/5 + 32, and back
    .numbers = { $typed }
    .result = { $carried }
step-carry = Convert it
    .formula = value × { $wanted } in one { $one }
    .numbers = { $typed } × { $factor }
    .result = { $carried }

## Refusals

refused-unreadable = { $reason }. Give a number with its unit, such as 38-5/8 in or 4,860 lb.
refused-no-unit = has no unit. Give one, such as 38-5/8 in or 4,860 lb.
refused-two-units-ton = { $unit } can be a short ton (2,000 lb), a tonne (1,000 kg) or a long ton (2,240 lb). Say short ton, tonne or long ton.
refused-two-units-grad = { $unit } can be a degree or a gon (a hundredth of a right angle). Say degrees or gon.
refused-not-a-unit-of = is not a unit of { $kind }. Give one of: { $units }.
refused-below-absolute-zero = is below absolute zero. Give at least −459.67 °F (−273.15 °C).
refused-too-large-for-a-shop = is larger than anything in a shop. Give a value this side of 1e30.
