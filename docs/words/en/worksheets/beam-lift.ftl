# Worksheet beam-lift.

title = How hard does my beam bend, and how far does it sag?
summary = Moment, stress, sag and reactions of an overhead beam, gantry or bench under one load, and when it rolls over, as a study aid.
story = The yard looks at a gantry beam before it hangs a diesel from its middle.

## What is asked

input-load = Load
    .help = With hoist, trolley and rigging.
input-span = Span
    .help = Between the supports, or from the wall to the free end.
input-position = Load from the left support
    .help = Left empty: the middle, or the free end of a cantilever. A beam built in at both ends needs the place.
input-ends = Ends
option-ends-simple = Resting on two supports
option-ends-fixed = Built in at both ends
option-ends-cantilever = Built in at the left, free at the right
input-held_every = Held from twisting every
    .help = Left empty: at its supports only. A trolley or the load itself holds nothing.
input-load_sits = The load
    .help = Left empty: on top, which is worse, since it pushes the beam over as it turns.
option-load_sits-hung-below = hangs below the beam's middle
option-load_sits-on-top = may stand or pull on its top
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
input-outer_fibre = Middle to the farthest fibre
    .help = From the section book, the larger of both sides. In a T it is not half the depth.
input-section_modulus = Or: section modulus
    .help = S or W about the level axis, the smaller of both sides.
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
option-material-other = something else
input-modulus = Its modulus (E)
    .help = From the data sheet of the material.
input-yield_strength = Yield strength
    .help = Plain structural steel: 36,000 psi (ASTM A36), if you know that it is that. Left empty, nothing is held against it.
input-design_factor = Design factor on yield
    .help = 3 for lifting by common practice, no source.
input-own_weight = Weight of the beam by its length
    .help = W8×31 weighs 31 lb/ft. 0 leaves it out.

## What is found

result-deflection = It sags
result-span_over_deflection = Span over sag
result-deflection_at = Sags most at, from the left
result-moment = Hardest bending
result-moment_at = Bends hardest at, from the left
result-stress = Stress in the outer fibre
result-stress_share = Part of the allowed stress
result-not_more_than = Not more than this load here
result-limited_by = Because
result-reaction_left = Left end carries
result-reaction_right = Right end carries
result-second_moment = Second moment of area

## The headline and the cautions

it-sags = { $deflection ->
        [absent] The sag is beyond the formulas.
       *[other] { $span_over_deflection ->
            [absent] It sags { $deflection } if it stays elastic.
           *[other] It sags { $deflection }, the span over { $span_over_deflection }.
        }
    }
its-stress = { $stress_share ->
        [absent] The stress is { $stress }; without the yield strength nobody can say if that is much.
       *[other] The stress is { $stress_share } of what is allowed here.
    }
not-more = { $not_more_than ->
        [absent] { "" }
       *[other] By these formulas the beam takes not more than { $not_more_than } here: { $limited_by }.
    }
limit-stress = its stress comes first
limit-rolls-over = it rolls over sideways first
limit-shears = it shears first, beside an end

reason-past-yield =
    .headline = Do not lift from this. The stress passes the yield point: the beam stays bent or comes down. { its-stress } No sag is given. { not-more }
    .caution = The stress is over its limit. Do not lift from this beam.
reason-past-small-sag =
    .headline = Do not lift from this. It sags by more than a tenth of its span, and the formulas end there. { its-stress } No sag is given.
    .caution = The beam sags too far for these formulas. Do not lift from this beam.
reason-over-allowed-stress =
    .headline = { it-sags } { its-stress } That is too much. { not-more }
    .caution = The stress is over its limit. Do not lift from this beam.
reason-over-what-it-takes =
    .headline = { it-sags } { its-stress } Yet the load is over what the beam takes here. { not-more }
    .caution = The load is over what the beam takes before it yields or rolls over, with its factor. Do not lift from this beam.
reason-no-limit-found =
    .headline = { it-sags } { its-stress } No greatest load is given: { $why }.
    .caution = How much the beam takes was not found: { $why }.
reason-study-aid =
    .headline = { it-sags } { its-stress } { not-more } Who answers for the beam says if it may lift.
    .caution = A study aid. A beam that lifts is designed for it, marked with its rating and tested; a roof beam was made for a roof. Ask a qualified person.
reason-rolls-over-sideways =
    .caution = Deep thin beams roll over sideways before they bend down. Supports are taken to hold the beam from twisting; if they only carry it, it takes less.
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
step-gives-way = Takes
    .formula = moment at which it yields or rolls over (AISC 360, F2 and F11, Cb = 1) / factor
    .numbers = { OWN($holds) } / { $factor }
    .result = { $not_more_than }
step-sag = Sag
    .formula = elastic line, E × I
    .numbers = E { $modulus }, at { $deflection_at } from the left
    .result = { $deflection }

## Why a result is absent

absent-beyond-the-formulas = beyond the formulas
absent-yield-not-known = the yield strength is not given
absent-section-not-known = a section from a book is not checked for rolling over sideways
absent-deep-box = a tube this deep and narrow is not checked for rolling over sideways
absent-no-rule-for-the-material = rolling over sideways is checked for steel only
absent-thin-plates = flange or web is so thin that it buckles by itself
absent-load-on-a-cantilever = a load on top of a cantilever is not checked for rolling over sideways

## Refusals

refused-size-missing = is missing for this section. Give it as measured, such as 6 in.
refused-second-moment-missing = is missing for this section. Give it from the section book, such as 110 in⁴.
refused-fibre-or-modulus = or the section modulus is needed. Give the distance from the middle to the farthest fibre, such as 4 in.
refused-fibre-and-modulus = and the distance to the farthest fibre say the same thing. Give one of them.
refused-modulus-missing = is missing for a material of your own. Give its modulus E, such as 10,000,000 psi.
refused-modulus-of-a-named-material = belongs to a material of your own. Choose something else as the material, or leave this empty.
refused-place-missing = is needed for a beam built in at both ends: where it bends hardest depends on it. Give the place, such as 5 ft.
refused-over-the-span = is more than the span. Give the distance between the points that hold the beam.
refused-wall-too-thick = is more than half the tube. Measure it again.
refused-web-too-wide = is wider than the flange. Measure it again.
refused-flange-too-thick = is more than half the depth. Measure it again.
refused-off-the-span = is not on the span. Give a place between the supports.

## The drawing

figure = The beam to scale over { $span }, its sag drawn { $times } times too large. It bends hardest at { $bends_at } and sags most at { $sags_at } from the left.
figure-sags = sags { $sag }
