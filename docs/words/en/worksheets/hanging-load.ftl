# Worksheet hanging-load.

title = Which legs carry it, and how will it hang?
summary = The pull in each leg (leg tension), the tilt and the headroom of a stiff load on one hook, with legs of any length.
story = The yard lifts a marine diesel out of a hull by its three eyes. The flywheel end is the heavy one.

## What is asked

input-load = Weight of the load
    .help = Use the high figure of your estimate, with fluids and rigging.
input-centre = Center of gravity (balance point) of the load
    .help = Measured from any corner you choose: right, back, up, with the load level.
input-balance_tolerance = How far off the center of gravity may be
    .help = Either way. If you worked it out from drawings: 2% of the distance between the pick points (our own figure, no source). If you guessed it: give several inches. A tank that is partly full needs more: its fluid runs to the low side.
input-picks = Legs
    .help = One row for each leg.
    .row = Leg
input-picks-label = Name
    .help = Your own word for it. If you leave it empty, its number is used.
input-picks-at = Where it is fixed
    .help = Measured from any corner you choose: right, back, up, with the load level.
input-picks-length = Length of the leg
    .help = From the bearing point of the hook to the pick, pulled straight.
input-picks-rating = Rating of the leg
    .help = Lifting rating in a straight pull, of its weakest part, from the tag. Chain of grade 70, 43 or 30 has none.
input-chain_size = Size of the chain
    .help = Used for the stretch and the length of one link. For legs of rope or web give chain of the same rating.

## What is found

result-highest_tension = Hardest pull in a leg
result-tensions = Pull in each leg
result-taut = Tight or slack
result-worst_tension = Hardest pull in a leg, at its worst
result-worst_tensions = Pull in each leg, at its worst
result-worst_tilt = How far it can tip
result-tilt = How far it tips
result-low_side = Side that goes low
result-lowest_leg_angle = Lowest leg angle from the horizontal
result-leg_angles = Leg angles from the horizontal
result-headroom = Hook over the lowest pick
result-depth = Center of gravity below the hook
result-hook = Where the hook stands over the load, in the load's own axes
result-stable = Stable as it hangs
result-use_percent = Part of each leg's rating used, at its worst
result-needed_rating = Rating that a leg needs at least
result-needed_ratings = Rating that each leg needs at least
result-level_lengths = Leg lengths that hang it level
result-springy_tensions = Pulls if the legs stretch like chain
result-short_link_tension = Hardest pull with one leg one link short

## The headline and the cautions

# How it hangs: who carries it, how it tips, who does nothing.
hangs = { $tight ->
        [0] { "" }
        [one] Leg { $tight } carries it.{ " " }
       *[other] Legs { $tight } carry it.{ " " }
    }{ $either ->
        [0] { "" }
       *[other] Legs { $either } are all just straight. It is not known which of them carry it and which go slack.{ " " }
    }Leg { $hardest } pulls hardest, { $hardest_pull }. { it-tips }{ $straight ->
        [0] { "" }
        [one] { " " }Leg { $straight } can carry a share or nothing, so count on nothing.
       *[other] { " " }Legs { $straight } can carry a share or nothing, so count on nothing.
    }{ $loose ->
        [0] { "" }
        [one] { " " }Leg { $loose } carries nothing.
       *[other] { " " }Legs { $loose } carry nothing.
    }
it-tips = { $low_side ->
        [level] It hangs level.
       *[other] It tips { PLACES($tilt, places: 1) }, { $low_side } low.
    }
# What it is judged by.
at-its-worst = With one leg a link short, or the center of gravity off by { $balance_tolerance }, a leg can pull { $needed_rating }.
reason-tips-too-far =
    .headline = { hangs } It can tip { PLACES($worst_tilt, places: 1) }: do not lift like this. Change the leg lengths so that the hook is above the center of gravity.
    .caution = It can tip { PLACES($worst_tilt, places: 1) }. Beyond 10° things slide off the load, and hooks slide on their pick points.
reason-rolls-over-if-off =
    .headline = It can roll over. If the center of gravity is off by { $balance_tolerance }, nothing holds it upright. Lift from higher pick points, or find the center of gravity more exactly.
    .caution = Do not lift it like this. A top-heavy load turns over faster than anybody can step away.
reason-leg-too-flat =
    .headline = { hangs } A leg lies under 30° from the horizontal: do not lift like this.
    .caution = Never use a sling at less than 30° from the horizontal. Use longer legs or a spreader.
reason-leg-flat =
    .caution = A leg lies between 30° and 45°: a small change of height changes its pull a lot. Two legs in one hook without a ring between spread more than 90° then, and press on its tip: use a master link (ASME B30.10, from memory).
reason-leg-over-rating =
    .headline = { hangs } { at-its-worst } { $over ->
            [one] That is over the rating of leg { $over }: do not lift.
           *[other] That is over the rating of legs { $over }: do not lift.
        }
    .caution = A leg is over its rating at its worst. Do not lift.
reason-over-sling-by-factor =
    .headline = By the stricter rule a sling of these legs lifts { $whole }, which is less than your load. Too much.
    .caution = EN 818-4 allows these legs { $factor } times the rating of one leg at this angle, of unlike legs that of their mean. Your load is more. Do not lift.
reason-ratings-missing =
    .headline = { hangs } { at-its-worst } { $unrated ->
            [one] Give the rating of leg { $unrated }.
           *[other] Give the rating of legs { $unrated }.
        }
    .caution = Do not lift with a leg of unknown rating, even if it is slack. It must catch the load if another leg slips.
reason-link-not-found =
    .headline = { hangs } The pulls with one leg a link short could not be worked out for that chain. Check its size and the lengths of the legs.
    .caution = The pulls with one leg a link short are not known. Do not lift until they are.
reason-inside-ratings =
    .headline = { hangs } { at-its-worst } Every leg is rated for its own worst pull.
reason-could-hang-lower =
    .caution = This load would hang lower if it turned over, so a knock can roll it. Lift it from higher pick points.
reason-free-to-roll =
    .caution = The center of gravity is level with the pick points, so nothing keeps the load from rolling about their line. It is drawn upright.
reason-rocks =
    .caution = It can also come to rest another way, on other legs, and then rock from one to the other.
reason-tips =
    .caution = As it leaves the floor it tips { PLACES($tilt, places: 1) }, { $low_side } low, and swings until its center of gravity is under the hook.
reason-tips-far =
    .caution = { reason-tips.caution }
reason-level-by-shortening =
    .caution = To hang it level, shorten { $changes }. The hook is then above the center of gravity.
reason-cannot-be-levelled =
    .caution = It cannot be made to hang level with other leg lengths: { $why }.
leg-to-length = leg { $leg } to { $length }
reason-slack-legs =
    .caution = Slack legs carry nothing. Choose tight legs that are strong enough for the whole load, or make the lengths fit.
reason-more-straight-than-needed =
    .caution = More legs are straight than a stiff load can share. Which of them go slack is not known, so each is shown with the most that it can pull.
reason-rope-legs-differ =
    .caution = Legs of rope or web may differ in length by { $by } (from memory, as for wire rope slings in ASME B30.9). The worst pull counts that, too.
reason-one-link-short =
    .caution = With one leg one link short the hardest pull becomes { $short_link }. Count the links.
reason-take-up-the-slack =
    .caution = Take up the slack, stop, and look before the load leaves the floor. Stay clear of the side that swings. A leg that is choked, bent round an edge, or hot or cold holds less than its rating. Go by the tag on each leg.
reason-rolls-over =
    .headline = It will roll over. The center of gravity is too high or too far to one side for these pick points, so nothing holds it upright. Lift from higher pick points, or from pick points on every side of the center of gravity.
    .caution = Do not lift it like this. A top-heavy load turns over faster than anybody can step away.
reason-what-holds-it-upright =
    .caution = Pick points above the center of gravity hold a load upright. So do three or more that are well spread round it.

## Words of results

level = level
side-right = right
side-left = left
side-back = back
side-front = front
side-both = { $one } and { $other }
tight = tight
slack = slack
tight-or-slack = tight or slack
tenths = { PLACES($angle, places: 1) }
of-leg = leg { $leg }: { $amount }
hook-place = { $right } right, { $back } back, { $up } up
level-as-it-is = it hangs level as it is

## The working

step-hook = Hook over the center of gravity
    .formula = the point that every leg reaches and that is farthest from the center of gravity
    .numbers = { $legs } legs, one, two and three tight tried
    .result = { $depth } from center of gravity to hook
step-tips = How far it tips
    .formula = angle between the load's own upright and the line from center of gravity to hook
    .numbers = hook { OWN($right) } right, { OWN($back) } back, { OWN($up) } up of it
    .result = { PLACES($tilt, places: 1) }{ $low_side ->
            [level] { "" }
           *[other] , { $low_side } low
        }
step-pull = Pull in leg { $leg }
    .formula = weight × share × leg length / depth
    .numbers = { OWN($weight) } × { PLACES($share, places: 4) } × { OWN($length) } / { OWN($depth) }
    .result = { $pull }
step-headroom = Hook over the lowest pick
    .formula = measured vertically, as it hangs
    .result = { $headroom }
step-stretch = If the legs stretch like chain
    .formula = balance on springs of stiffness EA / length
    .numbers = { $legs }
    .result = { $pulls }
step-one-link-short = If one leg is one link shorter
    .formula = each leg in turn, the hardest pull of all
    .numbers = leg { $short } short, leg { $pulling } pulls
    .result = { $short_link_tension }
step-no-upright-rest = Resting places with the hook over the picks
    .formula = balance of forces with no leg pushing
    .numbers = { $legs } legs
    .result = none
step-rest-turned-over = Where it would come to rest
    .formula = center of gravity as low as the legs let it
    .numbers = turned by { PLACES($turned, places: 0) }
    .result = center of gravity { $under } under the hook

## Why a result is absent

absent-rolls-over-first = it rolls over first
absent-slack = slack
absent-rating-missing = its rating is missing
absent-tight-or-slack = tight or slack
absent-leg-too-short-to-level = a leg is too short to hold the hook over the center of gravity
absent-no-lengths-level-it = the center of gravity is not between the picks, or not under them
absent-not-found = none was found for these lengths

## Refusals

refused-too-thin-for-its-rating = is thinner than any lifting chain rated { $rating } (our own bound, no source). Measure the chain again, or read the tag again.
refused-too-short-to-meet = is too short: legs { $one } and { $other } cannot both reach one hook over the load. Their picks are { $apart } apart. Give longer legs.
refused-cannot-all-reach = cannot all reach one hook: some legs are too short. Give longer legs.

## The drawing

figure = The load as it hangs, from the front and from the right. Pulls: { $pulls }.{ $slack ->
        [0] { "" }
       *[other] { " " }Slack and dashed: leg { $slack }.
    } { it-tips } The block only stands in for the load's shape.
figure-leg = leg { $leg } { $pull }
figure-leg-number = { $number }
figure-leg-name = { $number } ({ $name })
figure-front = From the front
figure-right = From the right
figure-pull-each = { $pull } each
figure-pull-of-leg = { $leg }: { $pull }
