# Worksheet beam-lift.

title = How hard does my beam bend, and how far does it sag?
summary = Bending, stress, sag and end loads of a bench, a table or a plate under one load, and when a beam rolls over sideways (lateral-torsional buckling). A study aid.
story = The yard checks the beam of a bench before it stands a diesel on the middle.

## What is asked

input-load = Load
    .help = Everything that the beam carries.
input-use = What the beam is for
option-use-overhead = It is overhead and something hangs from it, or I do not know
option-use-bench = It is a bench, a table or a plate, and nothing hangs from it overhead
input-span = Span
    .help = Between the supports, or from the wall to the free end.
input-position = Load from the left support
    .help = If you leave it empty, the load is at the middle, or at the free end of a cantilever. A beam built in at both ends needs the place.
input-ends = Ends
option-ends-simple = Resting on two supports
option-ends-fixed = Built in at both ends
option-ends-cantilever = Built in at the left, free at the right
input-held_every = Held from twisting every
    .help = If you leave it empty, it is held at its supports only. A trolley or the load itself holds nothing.
input-load_sits = Where the load acts
    .help = If you leave it empty, the load is on top. That is worse, because it pushes the beam over as it turns.
option-load_sits-hung-below = hangs below the beam's middle
option-load_sits-on-top = stands or pulls on its top, or I do not know
input-section = Section
option-section-i-beam = I-beam
option-section-rectangle = Flat, plank or plate
option-section-box = Square or rectangular tube
option-section-tube = Pipe or round tube
option-section-round-bar = Round bar
option-section-known = Another: I have its figures from a section book
input-depth = Depth
    .help = Height over all.
input-width = Width
    .help = Across, over all.
input-diameter = Outside diameter
    .help = Over all.
input-wall = Wall
    .help = Thickness of the wall, with calipers.
input-flange_width = Flange width
    .help = Across the top.
input-web_thickness = Web thickness
    .help = The plate between the flanges.
input-flange_thickness = Flange thickness
    .help = At the middle of its overhang.
input-second_moment = Second moment of area
    .help = I about the level axis, from the section book.
input-outer_fibre = Middle to the farthest fiber
    .help = From the section book, the larger of both sides. On a T it is more than half the depth.
input-section_modulus = Or: section modulus
    .help = S or W about the level axis, the smaller of both sides.
input-material = Made of
option-material-steel = steel
option-material-cast_iron = cast iron
option-material-aluminium = aluminum
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
    .help = Plain structural steel: 36,000 psi (ASTM A36), if you know that it is that. If you leave it empty, the stress is compared with nothing.
input-design_factor = Design factor on yield
    .help = 3 for lifting by common practice, no source.
input-own_weight = Weight of the beam by its length
    .help = From the section book: a W8×31 weighs 31 lb/ft. If you give 0, it is left out.

## What is found

result-deflection = It sags
result-span_over_deflection = Span over sag
result-deflection_at = Sags most at, from the left
result-moment = Hardest bending
result-moment_at = Bends hardest at, from the left
result-stress = Stress in the outer fiber
result-stress_share = Part of the allowed stress
result-not_more_than = Not more than this load here
result-limited_by = What sets that limit
result-reaction_left = Left end carries
result-reaction_right = Right end carries
result-second_moment = Second moment of area

## The headline and the cautions

it-sags = { $deflection ->
        [absent] The sag is beyond the formulas.
       *[other] { $span_over_deflection ->
            [absent] It sags { $deflection } if it stays elastic.
           *[other] It sags { $deflection }, which is 1/{ $span_over_deflection } of the span.
        }
    }
its-stress = { $stress_share ->
        [absent] The stress is { $stress }. Without the yield strength nobody can say whether that is too much.
       *[other] The stress is { $stress_share } of what is allowed here.
    }
not-more = { $not_more_than ->
        [absent] { "" }
       *[other] By these formulas the beam holds not more than { $not_more_than } here, because { $limited_by }.
    }
limit-stress = its stress sets the limit
limit-rolls-over = it rolls over sideways first
limit-shears = it shears first, beside an end

reason-overhead =
    .headline = { $stress_share ->
            [absent] Do not lift from this beam on the word of this page. How hard it bends is only one of the ways in which an overhead beam fails.
           *[other] Do not lift from this beam on the word of this page. { its-stress } That is only one of the ways in which an overhead beam fails.
        } Work it out in the sheet of your own frame, which counts posts, feet, joints and a pull off plumb.
    .caution = For a beam from which something hangs, this page gives bending and sag alone. The sheet of your own frame gives the rest, or says why it cannot.
reason-past-yield =
    .headline = Do not put this load on it. The stress passes the yield point, so the beam stays bent or comes down. { its-stress } No sag is given. { not-more }
    .caution = The stress is over its limit. Do not lift from this beam.
reason-past-small-sag =
    .headline = Do not put this load on it. It sags by more than a tenth of its span, and the formulas are not valid beyond that. { its-stress } No sag is given.
    .caution = The beam sags too far for these formulas. Do not put this load on it, and do not lift from it.
reason-over-allowed-stress =
    .headline = { it-sags } { its-stress } That is too much. { not-more }
    .caution = The stress is over its limit. Do not lift from this beam.
reason-over-what-it-takes =
    .headline = { it-sags } { its-stress } But the load is more than the beam holds here. { not-more }
    .caution = The load is more than the beam holds before it yields or rolls over, with the design factor counted. Do not put this load on it, and do not lift from it.
reason-no-limit-found =
    .headline = { it-sags } { its-stress } No greatest load is given: { $why }.
    .caution = How much the beam holds was not found: { $why }.
reason-study-aid =
    .headline = { it-sags } { its-stress } { not-more } Only whoever is responsible for the beam can say what may stand on it or hang from it.
    .caution = This is a study aid. A lifting beam is designed for lifting, marked with its rating and tested. A roof beam was made to hold a roof. Ask a qualified person.
reason-rolls-over-sideways =
    .caution = A deep, thin beam rolls over sideways before it bends down. This counts on supports that keep the beam from twisting. If they only carry it, it holds less.
reason-hardly-built-in =
    .caution = Hardly any end is truly built in. Choose “resting on two supports” unless somebody designed the ends as built in.
reason-limp =
    .caution = The beam bends a lot: a trolley will roll to the middle by itself, and the load bounces.
reason-own-weight-not-counted =
    .caution = The beam's own weight is not counted. Give it for a long or heavy beam.
reason-hoist-adds =
    .caution = A hoist that starts or stops adds to the load. Count a quarter more for a power hoist (common practice, no source).

## The working

step-bending = Hardest bending
    .formula = { $ends ->
        [fixed] built in at both ends: P a b² / L² at the nearer end, and w L² / 12
        [cantilever] P × arm, and w L² / 2
       *[simple] P b x / L up to the load, P a (L − x) / L beyond it, and w x (L − x) / 2
    }
    .numbers = at { $moment_at } from the left
    .result = { $moment }
step-stress = Stress in the outer fiber
    .formula = moment × outer fiber / second moment
    .numbers = { $deflection ->
        [absent] as if it stayed elastic
       *[other] { OWN($bending) } × { OWN($outer) } / { OWN($second) }
    }
    .result = { $stress }
step-allowed = Allowed here
    .formula = yield strength / design factor
    .numbers = { DIGITS($design_factor, digits: 3) } on yield
    .result = { $allowed }
step-gives-way = What the beam holds
    .formula = moment at which it yields or rolls over (AISC 360, F2 and F11, Cb = 1) / factor
    .numbers = { OWN($holds) } / { $factor }
    .result = { $not_more_than }
step-sag = Sag
    .formula = elastic line, E × I
    .numbers = E { $modulus }, at { $deflection_at } from the left
    .result = { $deflection }

## Why a result is absent

absent-beyond-the-formulas = beyond the formulas
absent-goes-to-the-frame = a beam from which something hangs is worked out in the sheet of your own frame
absent-yield-not-known = the yield strength is not given
absent-section-not-known = a section from a book is not checked for rolling over sideways
absent-deep-box = a tube this deep and narrow, more than twice as deep as wide (our own bound), is not checked for rolling over sideways
absent-no-rule-for-the-material = rolling over sideways is checked for steel only
absent-thin-plates = flange or web is so thin that it buckles by itself
absent-load-on-a-cantilever = a load on top of a cantilever (built in at one end) is not checked for rolling over sideways

## Refusals

refused-size-missing = is missing for this section. Give it as measured, such as 6 in.
refused-second-moment-missing = is missing for this section. Give it from the section book, such as 110 in⁴.
refused-fibre-or-modulus = or the section modulus is needed. Give the distance from the middle to the farthest fiber, such as 4 in.
refused-fibre-and-modulus = and the distance to the farthest fiber say the same thing. Give one of them.
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
