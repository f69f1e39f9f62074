# Worksheet beam-lift.

title = How hard does my beam bend, and how far does it sag?
summary = Moment, stress and sag of an overhead beam, gantry or bench under one load, as a study aid.
story = The yard looks at a gantry beam before it hangs a diesel from its middle.

## What is asked

input-load = Load
    .help = With hoist, trolley and rigging.
input-span = Span
    .help = Between the supports, or from the wall to the free end.
input-position = Load from the left support
    .help = Left empty: the middle, or the free end of a cantilever.
input-ends = Ends
option-ends-simple = Resting on two supports
option-ends-fixed = Built in at both ends
option-ends-cantilever = Built in at the left, free at the right
input-section = Section
option-section-i-beam = I-beam
option-section-rectangle = Flat, plank or plate
option-section-box = Square or rectangular tube
option-section-tube = Pipe or round tube
option-section-round-bar = Round bar
option-section-known = From a section book
input-depth = Depth
    .help = Upright, over all.
input-width = Width
    .help = Level, over all.
input-diameter = Outside diameter
    .help = Over all.
input-wall = Wall
    .help = With calipers.
input-flange_width = Flange width
    .help = Across the top.
input-web_thickness = Web thickness
    .help = The upright part.
input-flange_thickness = Flange thickness
    .help = At the middle of its overhang.
input-second_moment = Second moment of area
    .help = I about the level axis, from the section book.
input-material = Made of
option-material-steel = steel
option-material-cast_iron = cast iron
option-material-aluminium = aluminium
option-material-brass = brass
option-material-glass = glass
option-material-hardwood = hardwood
option-material-concrete = concrete
option-material-nylon = nylon
option-material-lead = lead
option-material-granite = granite
input-yield_strength = Yield strength
    .help = Left empty for steel: 36,000 psi. Any other material: its own.
input-design_factor = Design factor on yield
    .help = 3 for lifting by common practice, no source.
input-own_weight = Weight of the beam by the foot
    .help = W8×31 weighs 31 lb/ft.

## What is found

result-deflection = It sags
result-span_over_deflection = Span over sag
result-deflection_at = Sags most at, from the left
result-moment = Hardest bending
result-moment_at = Bends hardest at, from the left
result-stress = Stress in the outer fibre
result-stress_share = Part of the allowed stress
result-second_moment = Second moment of area

## The headline and the cautions

it-sags = It sags { $deflection }, the span over { $span_over_deflection }.
no-sag = The stress is { $stress_share } of what is allowed here. No sag is given.

reason-past-yield =
    .headline = Do not lift from this. The stress passes the yield point: the beam stays bent or comes down. { no-sag }
    .caution = { do-not-lift }
reason-past-small-sag =
    .headline = Do not lift from this. It sags by more than a tenth of its span, and the formulas end there. { no-sag }
    .caution = { do-not-lift }
reason-over-allowed-stress =
    .headline = { it-sags } The stress is { $stress_share } of what is allowed here: too much.
    .caution = { do-not-lift }
do-not-lift = The stress is over its limit. Do not lift from this beam.
reason-study-aid =
    .headline = { it-sags } The stress is { $stress_share } of what is allowed here. Who answers for the beam says if it may lift.
    .caution = A study aid. A beam that lifts is designed for it, marked with its rating and tested; a roof beam was made for a roof. Ask a qualified person.
reason-rolls-over-sideways =
    .caution = Deep thin beams roll over sideways before they bend down. This sheet does not count that.
reason-hardly-built-in =
    .caution = Hardly any end is truly built in. Take simple ends unless somebody designed it so.
reason-limp =
    .caution = The beam is limp: a trolley will roll to the middle by itself, and the load bounces.
reason-own-weight-not-counted =
    .caution = The beam's own weight is not counted. Give it for a long or heavy beam.
reason-hoist-adds =
    .caution = A hoist that starts or stops adds to the load. Count a quarter more for a power hoist (common practice, no source).

## The working

step-bending = Hardest bending
    .formula = { $ends ->
        [fixed] built in at both ends: P a b² / L² at the near end, and w L² / 12
        [cantilever] P × arm, and w L² / 2
       *[simple] P b / L × x less what the load takes, and w x (L − x) / 2
    }
    .numbers = at { $moment_at } from the left
    .result = { $moment }
step-stress = Stress in the outer fibre
    .formula = moment × outer fibre / second moment
    .numbers = { $deflection ->
        [absent] as if it stayed elastic
       *[other] { OWN($bending) } × { OWN($outer) } / { OWN($second) }
    }
    .result = { $stress }
step-allowed = Allowed here
    .formula = yield strength / design factor
    .numbers = { DIGITS($design_factor, digits: 3) } on yield
    .result = { $allowed }
step-sag = Sag
    .formula = elastic line, E × I
    .numbers = E { $modulus }, at { $deflection_at } from the left
    .result = { $deflection }

## Why a result is absent

absent-beyond-the-formulas = beyond the formulas

## Refusals

refused-size-missing = is missing for this section. Give it as measured, such as 6 in.
refused-wall-too-thick = is more than half the tube. Measure it again.
refused-web-too-wide = is wider than the flange. Measure it again.
refused-flange-too-thick = is more than half the depth. Measure it again.
refused-yield-missing = is missing for this material. Give its own, such as 20,000 psi.
refused-off-the-span = is not on the span. Give a place between the supports.

## The drawing

figure = The beam to scale over { $span }, its sag drawn { $times } times too large. It bends hardest at { $bends_at } and sags most at { $sags_at } from the left.
figure-sags = sags { $sag }
