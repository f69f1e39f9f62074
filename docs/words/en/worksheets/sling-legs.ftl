# Worksheet sling-legs.

title = How hard does each leg of my sling pull?
summary = The pull in each leg (leg tension) of a level lift, from the load and the sling angle, compared with the leg's rating.
story = The yard lifts a cast ballast keel by its two forged eyes with a two-leg chain sling.

## What is asked

input-load = Weight of the load
    .help = Everything that hangs from the hook: the load, its fluids, the shackles and the sling itself.
input-legs = Number of legs
    .help = Legs that go from the hook to the load.
input-known_by = What you can measure
    .help = A tape measure is more exact than an angle that you judge by eye.
option-known_by-leg_length_and_spread = Leg length and spread
option-known_by-height_and_spread = Hook height and spread
option-known_by-angle = The angle
input-leg_length = Length of each leg
    .help = From the bearing point of the hook to the pick point on the load.
input-height = Height of the hook over the pick points
    .help = Measure straight up and not along the leg.
input-spread = Spread between opposite pick points
    .help = Four legs: from corner to corner. Three legs: twice the distance from the center of gravity (balance point) to a pick point.
input-angle = Angle of the legs from the horizontal
    .help = From the level load up to the leg.
input-load_kind = Kind of load
    .help = A stiff load does not give, so two legs can end up carrying all of it. If you leave it empty, the load counts as stiff.
option-load_kind-stiff = Stiff: an engine, a plate, a frame, a beam
option-load_kind-flexible = Flexible: it gives until every leg pulls, such as a bundle or a net
input-legs_counted = Legs that count
    .help = If you leave it empty, two legs count. Three can count if the load is flexible, the legs are of equal length and the pick points are spaced evenly round the center of gravity.
input-size = Size of the chain
    .help = Such as 3/8 or 10 mm, from the tag. Metric slings: in mm.
input-leg_rating = Rating of one leg, from its tag
    .help = The rating of one leg in a straight pull (vertical hitch), or of the weakest part in it. If you also give grade and size, it must agree with the table.

## What is found

result-leg_tension = Pull in each leg
result-use_percent = Part of the rating used
result-min_leg_rating = Rating each leg needs at least
result-leg_rating = Rating of one leg
result-table_rating = Printed rating of the whole sling
result-angle = Angle from the horizontal
result-angle_from_vertical = Angle from the vertical
result-included_angle = Angle between the legs
result-angle_factor = Sling-angle factor (load angle factor)
result-side_force = Inward push of each leg on the load (compression)
result-headroom = Height of the hook over the pick points
result-legs_counted = Legs that count
result-capacity = Rating of the whole sling by our count
result-legs_counted_osha = Legs that the OSHA tables count
result-capacity_osha_count = Rating of the whole sling by the OSHA count
result-en_mode_factor = Mode factor of EN 818-4
result-capacity_en_factor = Rating of the whole sling by that factor

## The headline and the cautions

opening = { $legs ->
        [1] The leg pulls
       *[other] Each leg pulls
    } { $min_leg_rating }.

reason-too-flat =
    .headline = Under 30° from the horizontal: do not lift like this. Use longer legs.
    .caution = Never use a sling at less than 30° from the horizontal. Use longer legs or a spreader.
reason-flat =
    .caution = Between 30° and 45° a few inches of hook height change the pull a lot. Take up the slack and measure the angle again. Two legs in one hook without a ring between spread more than 90° then, and press on its tip: use a master link (ASME B30.10, from memory).
reason-no-leg-rating =
    .headline = Each leg, and each part in it, needs a lifting rating of at least that. Give the rating of your legs, or their grade and size.
reason-over-leg-rating =
    .headline = Your { $what } is rated { $leg_rating }: { $use_percent } of it. Too much.
    .caution = The pull is more than the leg's rating. Do not lift. Use heavier legs or a steeper angle.
reason-over-printed-sling =
    .headline = The printed table rates the whole sling at { $whole }, which is less than your load. Too much.
    .caution = The printed table gives { $printed } for this sling and angle. Do not go over it.
reason-over-sling-by-factor =
    .headline = By the stricter rule the whole sling lifts { $whole }, which is less than your load. Too much.
    .caution = EN 818-4 allows these legs { $factor } times the rating of one leg at this angle. Your load is more. Do not lift.
reason-inside-rating =
    .headline = Your { $what } is rated { $leg_rating }: { DIGITS($use_percent, digits: 2) } used.
reason-two-of-3-counted =
    .closing = Two of the three legs are counted, because the load is taken as stiff.
    .caution = A stiff load on three legs is not shared evenly. If the pick points are uneven, one leg can carry half, so two legs are counted. The OSHA tables count three: see the working. The worksheet for hanging loads finds the true share.
reason-two-of-4-counted =
    .closing = Two of the four legs are counted, because the load is taken as stiff.
    .caution = A stiff load on four legs can end up on two of them, so two are counted. The OSHA tables count three: see the working.
reason-two-counted-of-flexible =
    .closing = Two of the { $legs } legs are counted.
    .caution = Two legs are counted. Three can count if the load is flexible, the legs are of equal length and the pick points are spaced evenly round the center of gravity. If so, give three.
reason-sharing-needs-even-legs =
    .closing = Three legs are counted, because you say that the load is flexible.
    .caution = Three legs share only if their lengths match, the pick points are spaced evenly round the center of gravity and the load can settle. If you are not sure of one of these, count two.
reason-tag-alone =
    .caution = Only the tag's figure is known, so the stricter printed rule decides: the whole sling counts as { $factor } times one leg (EN 818-4). Give grade and size to use the sling's own table.
reason-squeeze =
    .caution = Each leg presses the load inward (compression) with { $side_force }. A thin box or an open frame may need a spreader.
reason-hook-over-balance-point =
    .caution = Put the hook directly above the center of gravity, and use legs of equal length whose pick points stand equally far from it: a leg nearer to it pulls harder. A leg that is choked, bent round an edge, or hot or cold holds less than its rating. Go by the tag on your sling. If you cannot read the tag, do not lift with the sling.

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
step-squeeze = Inward push of each leg on the load (compression)
    .formula = load / legs that count / tan(angle)
    .numbers = { OWN($load) } / { counted-legs } / tan({ PLACES($angle, places: 1) })
    .result = { $side_force }
step-use = Part of the leg's rating used
    .formula = pull / rating
    .numbers = { OWN($pull) } / { OWN($rating) }
    .result = { $use_percent }
step-capacity-by-our-count = Whole sling by our count
    .formula = legs that count × rating × sin(angle)
    .numbers = { $legs_counted } × { OWN($leg_rating) } × sin({ PLACES($angle, places: 1) }){ $bound ->
            [absent] { "" }
           *[other] { $bound }
        }
    .result = { $capacity }
never-over-printed = , and never over the printed { $printed }
never-over-factor = , and never over { $factor } × { OWN($rating) }
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
absent-not-to-be-used = not to be used as it is
absent-kind-not-said = say what the legs are to find it
absent-grade-not-said = give the grade of the chain to find it
absent-may-tie-down = its mark may mean tie-down chain
absent-no-lifting-rating = no lifting rating
absent-none-given = none given
absent-no-capacity = no leg rating given
absent-no-leg-rating = no leg rating given
absent-give-the-leg = give the length of the leg to find it
absent-give-the-spread = give the spread to find it
absent-not-printed = not printed for this angle

## Refusals

refused-one-leg-hangs-plumb = does not fit one leg, because it hangs straight down. Leave it out, or give 90°.
refused-one-leg-has-no-spread = does not fit one leg, because it has one pick point. Leave it out, or say how many legs there are.
refused-one-leg-is-as-high-as-long = does not agree with the length of the leg, { $length }. One leg hangs straight down: measure again, or leave one of the two out.
refused-higher-than-the-leg = is more than the length of the leg, { $leg }. Measure both again.
refused-ways-disagree = does not agree with the rest. It makes the angle { PLACES($other, places: 1) }, and the rest makes it { PLACES($one, places: 1) }. Measure again, or leave out what you do not trust.
refused-tag-against-table = does not agree with the printed { $printed } of this chain. Read the tag again. If it is right, a weaker part sets the limit: leave grade and size empty.
refused-too-short-to-reach = is too short to reach: half the spread alone is { $half }. Give a longer leg.
refused-shape-missing = is missing. Give the angle, or height and spread, or leg length and spread.
refused-size-missing = is missing. Give the chain's size, such as 3/8 or 10 mm.
refused-not-rated = is not rated: { $reason }.
refused-one-leg-holds-no-load-level = is too few: you need at least two legs to hold a load level. Give 2, or leave it empty.
refused-stiff-load-counts-two = is more than a stiff load allows: two legs can end up carrying all of it. Give 2, or say that the load is flexible.
refused-never-more-than-three = is more than any printed source counts. Give 3 or fewer.
refused-more-than-there-are = is more than the { $legs } legs there are. Give { $legs } or fewer.

## The drawing

figure-one-leg = One leg hangs straight down and carries { $load }. It pulls { $pull }.
figure = { $legs ->
        [2] { "" }
       *[other] Two legs are drawn; the others are behind them.{ " " }
    }A load of { $load } under one hook, the legs at { PLACES($angle, places: 1) } from the horizontal. Each leg pulls { $pull } along its length and pushes the load inward with { $squeeze }.
