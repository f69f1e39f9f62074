# Worksheet spreader.

title = Does my spreader bar fold between its slings?
summary = Thrust in a spreader bar by the angle of its slings, when the bar buckles (Euler, AISC 360 E3), and what pulls on its end fittings. A study aid.
story = The yard looks at a square tube from which it means to hang an engine by both ends.

## What is asked

input-load = Load under the bar
    .help = With the lower slings and all rigging.
input-length = Length of the bar
    .help = Between the eyes of its two ends.
input-sling_angle = Upper slings, from the level
    .help = The angle between the bar and its upper sling. At 60° and more the bar is pressed little.
input-off_middle = Center of gravity off the middle
    .help = Along the bar. Nobody hits the middle: give what you could be wrong by.
input-eyes_off = Eyes off the bar's middle line
    .help = From where the two slings of an end cross to the middle line of the bar, up or down.
input-design_factor = Design factor
    .help = 3 for lifting by common practice, no source; 1.67 is the least for buildings.
input-fittings = End fittings
option-fittings-not-checked = not checked here, or lugs of my own
option-fittings-marked = shackles or eyes marked with a rating
input-upper_rating = Rating of an upper fitting
    .help = For the direction in which the sling pulls it.
input-lower_rating = Rating of a lower fitting
    .help = For a pull straight down.

## What is found

result-part_used = Of the bar is used
result-thrust = The slings press the bar together with
result-buckles_at = The bar alone buckles at, with its factor
result-not_more_than = Not more than this load here (no rating)
result-sling_pull = Pull in the harder pulled upper sling
result-end_pull = Pull at the heavier lower end
result-fittings_used = Of the fittings is used
result-euler = A perfectly straight bar would buckle at (Euler)
result-slenderness = Length over least radius (slenderness)
result-headroom = Hook over the bar
result-bar_weight = The bar itself weighs

## The headline and the cautions

pressed = The slings press the bar together with { $thrust }, and { $part_used } of what it takes is used.
no-more = { $not_more_than ->
        [absent] { "" }
       *[other] Bar and fittings carry not more than { $not_more_than } here by these formulas, and perhaps less.
    }

reason-slings-too-flat =
    .headline = Do not lift like this. The slings are flatter than 30°: they press the bar together with { $thrust }.
    .caution = Use longer slings, so that they stand at 60° or more.
reason-wall-too-thin =
    .headline = Nobody can say what this bar carries: its wall is so thin that it buckles by itself. Do not lift with it.
    .caution = The wall is too thin for these formulas.
reason-over-the-bar =
    .headline = Do not lift this. { pressed } That is too much. { no-more }
    .caution = The bar is asked for more than it takes. Do not lift this load with it.
reason-over-the-fittings =
    .headline = Do not lift this. { pressed } But { $fittings_used } of the rating of an end fitting is used.
    .caution = An end fitting is asked for more than its rating.
reason-fittings-not-checked =
    .headline = { pressed } { no-more } The end fittings were not checked, and they may be weaker. This is no rating.
    .caution = The end fittings were not checked. Hold each against its mark, or a lug of your own against its own worksheet.
reason-unrated =
    .headline = { pressed } { no-more } It is a figure to study, not a rating: a spreader without a plate has none.
    .caution = This spreader is unrated. A rated one is designed by an engineer, proved with a test load by somebody who answers for the test, and marked with its load, its own weight, its maker and its number.
reason-slings-flat =
    .headline = { pressed } { no-more } The slings are flat. This is no rating.
    .caution = Under 45° a little less angle presses the bar much harder. Use longer slings.
reason-slender =
    .caution = The bar is very slender (length over least radius over 200, AISC 360-10 E2, from memory). A knock or a bend that is hard to see takes much of its strength.
reason-hangs-tilted =
    .caution = A load off the middle hangs tilted, since the hook stands over its center of gravity. The whole thrust of the heavier end is counted.
reason-small-factor =
    .headline = { pressed } { no-more } A factor under 3 is not for lifting. This is no rating.
    .caution = Common practice for lifting is a factor of 3. Less is for buildings, whose loads do not jerk.
reason-lower-slings-plumb =
    .caution = The lower slings must hang plumb. If they lean in toward each other, they press the bar as well. A bar hung by its middle is another thing (lifting beam): it bends and is not checked here.
reason-starting-adds =
    .caution = The load is counted 1.10 times for the bar, since starting and stopping add to it.
reason-not-counted =
    .caution = These formulas know nothing of a bar that is bent or dented, of holes, rust, bad welds, lugs, or a load that jerks or catches.

## The working

step-end = Pull at the heavier end
    .formula = 1.10 × load × (1/2 + off the middle / length)
    .numbers = 1.10 × { OWN($load) } × { $share }
    .result = { $end_pull }
step-sling = Pull in the upper sling
    .formula = (end + half the bar) / sin b
    .numbers = { OWN($hangs) } / sin { $angle }
    .result = { $sling_pull }
step-thrust = Thrust in the bar
    .formula = (end + half the bar) / tan b
    .numbers = { OWN($hangs) } / tan { $angle }
    .result = { $thrust }
step-bends = Bending of the bar
    .formula = own weight × L / 8 + thrust × eyes off the middle line
    .numbers = { OWN($bar_weight) } × { OWN($length) } / 8 + { OWN($thrust) } × { OWN($eyes_off) }
    .result = { $moment }
step-euler = Straight bar (Euler)
    .formula = π² E A / (L / r)²
    .numbers = L / r = { $slender }
    .result = { $euler }
step-buckles = Bar alone
    .formula = Fcr × A / factor, AISC 360-22 E3, K = 1
    .numbers = factor { $factor }
    .result = { $buckles_at }
step-used = Thrust and bending together
    .formula = AISC 360-22 H1-1, bending grown by 1 / (1 − 1.6 P / Pe)
    .numbers = { OWN($thrust) } / { OWN($buckles_at) }, and its bending
    .result = { $used }
step-fittings = End fittings
    .formula = the greater of upper and lower pull, without the 1.10, over its rating
    .numbers = { OWN($sling_pull) } / 1.10 / { OWN($upper) }, { OWN($end_pull) } / 1.10 / { OWN($lower) }
    .result = { $fittings_used }

## Why a result is absent

absent-slings-too-flat = the slings are too flat
absent-fittings-not-checked = the end fittings were not checked

## Refusals

refused-off-the-bar = is beyond the end of the bar. Give less than half of its length, { $half }.

## The drawing

figure = The spreader to scale, { $long } long, pressed together with { $thrust } by its slings.
