# Worksheet sling-legs.

title = How hard does each leg of my sling pull?
summary = The pull in each leg of a level lift, from the load and the sling angle, held against the leg's rating.
story = The yard lifts a cast ballast keel by its two forged eyes with a two-leg chain sling.

## What is asked

input-load = Weight of the load
    .help = All that hangs from the sling: the load, its fluids, the shackles and the sling itself.
input-legs = Number of legs
    .help = Legs that go from the hook to the load.
input-known_by = What you can measure
    .help = A tape is surer than an angle by eye.
option-known_by-leg_length_and_spread = Leg length and spread
option-known_by-height_and_spread = Hook height and spread
option-known_by-angle = The angle
input-leg_length = Length of each leg
    .help = From the bearing point of the hook to the pick point on the load.
input-height = Height of the hook over the pick points
    .help = Straight up, not along the leg.
input-spread = Spread between opposite pick points
    .help = Four legs: corner to corner. Three legs: twice the distance from the balance point to a pick.
input-angle = Angle of the legs from the horizontal
    .help = From the level load up to the leg.
input-legs_counted = Legs that count
    .help = Left empty: 2 of 2, 3 of 3, 2 of 4.
input-grade = Grade of the chain
    .help = As marked on the links. Grades 70, 43 and 30 never lift. A mark 8 is read by the metric tables.
option-grade-80 = Grade 80
option-grade-100 = Grade 100
option-grade-8 = Grade 8, metric sling (EN 818)
option-grade-5 = Grade 5, metric sling (EN 818)
option-grade-4 = Grade 4, metric sling (EN 818)
option-grade-70 = Grade 70, tie-down only
option-grade-43 = Grade 43, tie-down only
option-grade-30 = Grade 30, tie-down only
input-size = Size of the chain
    .help = Such as 3/8 or 10 mm, from the tag. Metric slings: in mm.
input-leg_rating = Or: rating of one leg, from its tag
    .help = The straight-pull rating of one leg, or of the weakest part in it.

## What is found

result-leg_tension = Pull in each leg
result-use_percent = Part of the rating used
result-min_leg_rating = Rating each leg needs at least
result-leg_rating = Rating of one leg
result-table_rating = Printed rating of the whole sling
result-angle = Angle from the horizontal
result-angle_from_vertical = Angle from the vertical
result-included_angle = Angle between the legs
result-angle_factor = Sling-angle factor
result-side_force = Squeeze on the load, from each leg
result-headroom = Height of the hook over the pick points
result-legs_counted = Legs that count
result-capacity = Whole sling by our count
result-legs_counted_osha = Legs that the OSHA tables count
result-capacity_osha_count = Whole sling by that count
result-en_mode_factor = Mode factor of EN 818-4
result-capacity_en_factor = Whole sling by that factor

## The headline and the cautions

opening = { $legs ->
        [1] The leg pulls
       *[other] Each leg pulls
    } { $leg_tension }.

reason-too-flat =
    .headline = Under 30° from the horizontal: do not lift like this. Use longer legs.
    .caution = No sling goes under 30° from the horizontal. Use longer legs or a spreader.
reason-flat =
    .caution = Between 30° and 45° a few inches of hook height change the pull a lot. Measure the angle again with the slack out.
reason-ties-down-only =
    .headline = Grade { $mark } chain ties loads down. It has no lifting rating.
    .caution = Grade { $mark } chain ties loads down. It has no lifting rating. Take chain of grade 80 or 100 with a readable tag.
reason-no-leg-rating =
    .headline = Every leg, and every part in it, needs a lifting rating of at least that.
reason-over-leg-rating =
    .headline = Your { $what } is rated { $leg_rating }: { $use_percent } of it. Too much.
    .caution = The pull is over the leg's rating. Do not lift. Use heavier legs or a steeper angle.
reason-over-printed-sling =
    .headline = The printed table rates the whole sling { $whole }, under your load. Too much.
    .caution = The printed table stops at { $printed } for this sling and angle. Stay under it.
reason-inside-rating =
    .headline = Your { $what } is rated { $leg_rating }: { DIGITS($use_percent, digits: 2) } used.
reason-two-of-four-counted =
    .caution = Four legs on a stiff load: two of them can end up carrying it all, so two are counted. The OSHA tables count three: see the working.
reason-sharing-needs-even-legs =
    .caution = More than two legs share only if their lengths match and the load can settle. On a stiff load count two.
reason-squeeze =
    .caution = The legs squeeze the load with { $side_force } each. A thin box or an open frame may need a spreader.
reason-hook-over-balance-point =
    .caution = The hook must stand right over the balance point, and the tag on your sling governs. No readable tag: do not lift with it.

chain-inch = { $size } in grade { $grade } chain
chain-metric = { $size } mm grade { $grade } chain
a-leg = leg

## The working

step-angle-by-height_and_spread = Angle from the horizontal
    .formula = atan(height / half the spread)
    .numbers = atan({ OWN($height) } / { OWN($half) })
    .result = { PLACES($angle, places: 1) }
step-angle-by-leg_length_and_spread = Angle from the horizontal
    .formula = atan(√(leg² − half spread²) / half the spread)
    .numbers = atan({ OWN($height) } / { OWN($half) })
    .result = { PLACES($angle, places: 1) }
step-factor = Sling-angle factor
    .formula = 1 / sin(angle)
    .numbers = 1 / sin({ PLACES($angle, places: 1) })
    .result = { PLACES($angle_factor, places: 3) }
step-pull = Pull in each leg
    .formula = load / legs that count × factor
    .numbers = { OWN($load) } / { counted-legs } × { PLACES($angle_factor, places: 3) }
    .result = { $leg_tension }
step-squeeze = Squeeze on the load, from each leg
    .formula = load / legs that count / tan(angle)
    .numbers = { OWN($load) } / { counted-legs } / tan({ PLACES($angle, places: 1) })
    .result = { $side_force }
step-use = Part of the leg's rating used
    .formula = pull / rating
    .numbers = { OWN($pull) } / { OWN($rating) }
    .result = { $use_percent }
step-capacity-by-our-count = Whole sling by our count
    .formula = legs that count × rating × sin(angle)
    .numbers = { $legs_counted } × { OWN($leg_rating) } × sin({ PLACES($angle, places: 1) }){ $printed ->
            [absent] { "" }
           *[other] , and never over the printed { $printed }
        }
    .result = { $capacity }
step-capacity-by-osha = By the count of the OSHA tables
    .formula = legs that count × rating × sin(angle)
    .numbers = { $legs_counted_osha } × { OWN($leg_rating) } × sin({ PLACES($angle, places: 1) })
    .result = { $capacity_osha_count }
step-capacity-by-en = By the mode factor of EN 818-4
    .formula = mode factor × rating
    .numbers = { PLACES($en_mode_factor, places: 1) } × { OWN($leg_rating) }
    .result = { $capacity_en_factor }
counted-legs = { $legs_counted ->
        [one] 1 leg
       *[other] { $legs_counted } legs
    }

## Why a result is absent

absent-one-leg = one leg: nothing to share
absent-one-leg-no-angle = one leg: no angle between
absent-too-flat = too flat: not rated
absent-no-lifting-rating = no lifting rating
absent-none-given = none given
absent-no-capacity = no leg rating given
absent-no-leg-rating = no leg rating given
absent-give-the-leg = give the length of the leg to find it
absent-give-the-spread = give the spread to find it
absent-not-printed = not printed for this angle

## Refusals

refused-one-leg-hangs-plumb = does not fit one leg, which hangs straight down. Leave it out, or give 90°.
refused-too-short-to-reach = is too short to reach: half the spread alone is { $half }. Give a longer leg.
refused-shape-missing = is missing. Give the angle, or height and spread, or leg length and spread.
refused-size-missing = is missing. Give the chain's size, such as 3/8 or 10 mm.
refused-not-rated = is not rated: { $reason }.
refused-more-than-there-are = is more than the { $legs } legs there are. Give { $legs } or fewer.

## The drawing

figure-one-leg = One leg hangs straight down and carries { $load }. It pulls { $pull }.
figure = { $legs ->
        [2] { "" }
       *[other] Two legs are drawn; the others stand behind them.{ " " }
    }A load of { $load } under one hook, the legs at { PLACES($angle, places: 1) } from the horizontal. Each leg pulls { $pull } along its length and squeezes the load with { $squeeze }.
