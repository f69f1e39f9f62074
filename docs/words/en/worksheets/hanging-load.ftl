# Worksheet hanging-load.

title = Which legs carry it, and how will it hang?
summary = Pull in each leg, tip and headroom of a stiff load on one hook, with legs of any lengths.
story = The yard lifts a marine diesel out of a hull by its three eyes; the flywheel end is the heavy one.

## What is asked

input-load = Weight of the load
    .help = The high figure of your reckoning, fluids and rigging too.
input-centre = Balance point of the load
    .help = From any corner you choose: right, back, up, with the load level.
input-balance_tolerance = How far off the balance point may be
    .help = Each way. Reckoned from drawings: 2% of the spread between the picks (our own mark, no source). Guessed: a hand's breadth or more.
input-picks = Legs
    .help = One row for each leg.
    .row = Leg
input-picks-label = Name
    .help = Your own word for it; else its number.
input-picks-at = Where it is fixed
    .help = From any corner you choose: right, back, up, with the load level.
input-picks-length = Length of the leg
    .help = From the bearing point of the hook to the pick, pulled straight.
input-picks-rating = Rating of the leg
    .help = Lifting rating in a straight pull, of its weakest part, from the tag. Chain of grades 70, 43 and 30 has none.
input-chain_size = Size of the chain
    .help = For the stretch and for how long one link is. Legs of rope or web: give chain of the same rating.

## What is found

result-highest_tension = Hardest pull in a leg
result-tensions = Pull in each leg
result-taut = Tight or slack
result-worst_tension = Hardest pull in a leg, at its worst
result-worst_tensions = Pull in each leg, at its worst
result-worst_tilt = How far it may tip
result-tilt = How far it tips
result-low_side = Side that goes low
result-lowest_leg_angle = Lowest leg angle from the horizontal
result-leg_angles = Leg angles from the horizontal
result-headroom = Hook over the lowest pick
result-depth = Balance point under the hook
result-hook = Where the hook stands over the load, in the load's own axes
result-stable = Stays as it hangs
result-use_percent = Part of each leg's rating used, at its worst
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
       *[other] Legs { $either } are all just straight: which of them carry it and which go slack is not known.{ " " }
    }Leg { $hardest } pulls hardest, { $highest_tension }. { it-tips }{ $straight ->
        [0] { "" }
        [one] { " " }Leg { $straight } may take a share or none: count on none.
       *[other] { " " }Legs { $straight } may take a share or none: count on none.
    }{ $loose ->
        [0] { "" }
        [one] { " " }Leg { $loose } does nothing.
       *[other] { " " }Legs { $loose } do nothing.
    }
it-tips = { $low_side ->
        [level] It hangs level.
       *[other] It tips { PLACES($tilt, places: 1) }, { $low_side } low.
    }
# What it is judged by.
at-its-worst = With one leg a link short, or the balance point off by { $balance_tolerance }, a leg may pull { $worst_tension }.
reason-tips-too-far =
    .headline = { hangs } It may tip { PLACES($worst_tilt, places: 1) }: do not lift like this. Move the hook over the balance point by other leg lengths.
    .caution = It may tip { PLACES($worst_tilt, places: 1) }. Beyond 10° things slide on it and hooks slide on their picks.
reason-rolls-over-if-off =
    .headline = It can roll over: the balance point may be off by { $balance_tolerance }, and then nothing holds it upright. Lift from higher picks, or find the balance point better.
    .caution = Do not lift it like this. Top-heavy loads turn over in a blink, and nobody outruns one.
reason-leg-too-flat =
    .headline = { hangs } A leg lies under 30° from the horizontal: do not lift like this.
    .caution = No sling goes under 30° from the horizontal. Use longer legs or a spreader.
reason-leg-flat =
    .caution = A leg lies between 30° and 45°: a small change of height changes its pull a lot.
reason-leg-over-rating =
    .headline = { hangs } { at-its-worst } { $over ->
            [one] That is over a leg's rating, leg { $over }: do not lift.
           *[other] That is over a leg's rating, legs { $over }: do not lift.
        }
    .caution = A leg is over its rating at its worst. Do not lift.
reason-ratings-missing =
    .headline = { hangs } { at-its-worst } { $unrated ->
            [one] Give the rating of leg { $unrated }.
           *[other] Give the rating of legs { $unrated }.
        }
    .caution = A leg without a known rating does not lift, even one that is slack: it catches the load if another slips.
reason-link-not-found =
    .headline = { hangs } What one leg a link short does to the pulls was not found for legs of that chain. Check its size and the lengths of the legs.
    .caution = The pulls with one leg a link short are not known. Do not lift until they are.
reason-inside-ratings =
    .headline = { hangs } { at-its-worst } Every leg is rated for its own worst pull.
reason-could-hang-lower =
    .caution = Turned over, this load would hang lower still. A knock can roll it. Rig it from higher picks.
reason-free-to-roll =
    .caution = The balance point is level with the picks: nothing stops the load rolling about their line. Drawn upright.
reason-rocks =
    .caution = It can also come to rest another way, on other legs, and rock from one to the other.
reason-tips =
    .caution = As it leaves the floor it tips { PLACES($tilt, places: 1) } with { $low_side } low and swings to stand under the hook.
reason-tips-far =
    .caution = { reason-tips.caution }
reason-level-by-shortening =
    .caution = To hang it level, shorten { $changes }. The hook then stands over the balance point.
reason-cannot-be-levelled =
    .caution = Will other lengths level it? Here { $why }.
leg-to-length = leg { $leg } to { $length }
reason-slack-legs =
    .caution = Slack legs carry nothing. Rate the tight ones for the whole load, or even the lengths out.
reason-more-straight-than-needed =
    .caution = More legs are just straight than a stiff load needs. Which of them go slack is not known, so each is shown with the most that it may pull.
reason-one-link-short =
    .caution = With one leg one link short the hardest pull becomes { $short_link_tension }. Count the links.
reason-take-up-the-slack =
    .caution = Take the slack up, stop, and look before the load leaves the floor. Stand clear of the side that swings. The tag on each leg governs.
reason-rolls-over =
    .headline = It will roll over. The balance point is too high, or too far to one side, for these picks: nothing holds it upright. Lift from higher picks, or from picks on every side of the balance point.
    .caution = Do not lift it like this. Top-heavy loads turn over in a blink, and nobody outruns one.
reason-what-holds-it-upright =
    .caution = Picks above the balance point, or three and more well around it, hold a load upright.

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

step-hook = Hook over the balance point
    .formula = the point that every leg reaches and that is farthest from the balance point
    .numbers = { $legs } legs, one, two and three tight tried
    .result = { $depth } from balance point to hook
step-tips = How far it tips
    .formula = angle between the load's own upright and the line from balance point to hook
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
    .formula = measured plumb, as it hangs
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
    .formula = balance point as low as the legs let it
    .numbers = turned by { PLACES($turned, places: 0) }
    .result = balance point { $under } under the hook

## Why a result is absent

absent-rolls-over-first = it rolls over first
absent-slack = slack
absent-rating-missing = its rating is missing
absent-tight-or-slack = tight or slack
absent-leg-too-short-to-level = a leg is too short to hold the hook over the balance point
absent-no-lengths-level-it = no lengths will: the balance point is not between the picks, or not under them
absent-not-found = not found for these lengths

## Refusals

refused-too-thin-for-its-rating = is thinner than any lifting chain rated { $rating }. Measure the chain again, or read the tag again.
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
