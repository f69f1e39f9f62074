# Worksheet spreader.

title = Does my spreader bar fold between its slings?
summary = Thrust in a spreader bar by the angle of its slings, when the bar buckles (Euler, AISC 360 E3), and what pulls on its end fittings. A study aid.
story = The yard looks at a square tube from which it means to hang an engine by both ends.

## What is asked

input-load = Load under the bar
    .help = Its weight, with the lower slings and all rigging.
input-length = Length of the bar
    .help = Between the eyes of its two ends.
input-sling_angle = Angle of the upper slings from the horizontal
    .help = The angle between the bar and its upper sling. At 60° and more the slings press little on the bar.
input-off_middle = Center of gravity off the middle
    .help = Measured along the bar. Nobody meets the middle exactly, so give at least how far you can be wrong.
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

result-part_used = Part used of what the bar holds
result-thrust = Push of the slings on the bar (thrust)
result-buckles_at = Thrust that the bar alone holds, factor counted
result-not_more_than = Not more than this load here (no rating)
result-sling_pull = Pull in the more heavily loaded upper sling
result-end_pull = Pull at the heavier lower end
result-fittings_used = Part used of the rating of the end fittings
result-euler = Thrust at which a perfectly straight bar would buckle (Euler)
result-slenderness = Length over least radius (slenderness)
result-headroom = Height of the hook over the bar
result-bar_weight = Weight of the bar itself

## The headline and the cautions

pressed = The slings press the bar together with { $thrust }. That and its bending use { $part_used } of what the bar holds.
no-more = { $not_more_than ->
        [absent] { "" }
       *[other] { " " }By these formulas bar and fittings hold not more than { $not_more_than } here, and perhaps less.
    }

reason-slings-too-flat =
    .headline = Do not lift like this. The slings are flatter than 30° and press the bar together with { $thrust }.
    .caution = Use longer slings, so that they stand at 60° or more.
reason-wall-too-thin =
    .headline = Nobody can say what this bar holds: its wall is so thin that it buckles by itself. Do not lift with it.
    .caution = The wall is too thin for these formulas.
reason-over-the-bar =
    .headline = Do not lift this. { pressed } That is too much.{ no-more }
    .caution = The load is more than the bar holds. Do not lift it with this bar.
reason-over-the-fittings =
    .headline = Do not lift this. An end fitting is pulled with { $fittings_used } of its rating.
    .caution = The pull on an end fitting is over its rating.
reason-fittings-not-checked =
    .headline = { pressed }{ no-more } The end fittings were not checked, and they can be weaker. This is no rating.
    .caution = The end fittings were not checked. Compare each with its mark, or work out a lug of your own on the worksheet for lugs.
reason-unrated =
    .headline = { pressed }{ no-more } It is a figure to study, not a rating: a spreader without a plate has none.
    .caution = This spreader is unrated. A rated spreader is designed by an engineer, tested under a proof load by somebody who is responsible for the test, and marked with its limit, its own weight, its maker and its number.
reason-slings-flat =
    .headline = { pressed }{ no-more } The slings are flatter than 45°. This is no rating.
    .caution = Under 45° a little less angle presses the bar much harder. Use longer slings.
reason-slender =
    .caution = The bar is very slender (length over least radius over 200, AISC 360-10 E2, from memory). A knock or a bend that is hard to see takes much of its strength.
reason-hangs-tilted =
    .caution = A load off the middle hangs tilted, since the hook stands over its center of gravity. The whole thrust of the heavier end is counted.
reason-small-factor =
    .headline = { pressed }{ no-more } A factor under 3 is not for lifting. This is no rating.
    .caution = Common practice for lifting is a factor of 3. Smaller factors are for buildings, where loads do not jerk.
reason-lower-slings-plumb =
    .caution = The lower slings must hang plumb. If they lean in toward each other, they press the bar as well. A bar that hangs by its middle (lifting beam) bends, and it is not checked here.
reason-starting-adds =
    .caution = The load is counted 1.10 times for the bar, since starting and stopping add to it.
reason-not-counted =
    .caution = These formulas leave out dents, bends, holes, rust, bad welds and lugs, and a load that jerks or catches.

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
