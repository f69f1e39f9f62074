# Worksheet drop-load.

title = How hard does a load jerk its sling when it drops?
summary = The peak pull (shock load) when a load falls a little before its sling comes taut, compared with the rating.
story = The yard's diesel hangs over its bed when a twisted link in the sling turns straight, and the load drops 3 in.

## What is asked

input-weight = Weight of the load
input-drop_height = How far it drops before the sling is taut
    .help = From slack, a slipping hitch or a link that flips. Give 0 if it was released on a taut sling.
input-stretch = Stretch of the sling under that weight at rest
    .help = Give it if you measured it. If not, give the chain's size and length.
input-grade = Grade of the chain
option-grade-80 = Grade 80
option-grade-100 = Grade 100
option-grade-70 = Grade 70
option-grade-43 = Grade 43
option-grade-30 = Grade 30
option-grade-8 = Grade 8
option-grade-5 = Grade 5
option-grade-M = Grade 4, marked M
option-grade-not-chain = Not a chain, but a rope or web sling with a tag
input-size = Size of the chain
    .help = Such as 3/8 or 10 mm.
input-length = Length of the chain
input-rating = Or: rating of the sling, from its tag

## What is found

result-peak_force = Peak pull, at most
result-peak_force_low = Peak pull, if it stretches like large mooring chain
result-factor = Times its weight
result-use_percent = Share of the rating
result-rating = Rating
result-static_stretch = Stretch at rest
result-peak_stretch = Stretch at the peak
result-speed = Speed when the sling comes taut

## The headline and the cautions

opening = Dropped { $drop_height }, the load pulls up to { $factor } times its weight: { $peak_force }.

reason-ties-down-only =
    .headline = Grade { $mark } chain has no lifting rating at all.
    .caution = { take-slack-up }
reason-over-rating =
    .headline = { share-of-rating }
    .caution = { take-slack-up }
reason-under-rating =
    .headline = { share-of-rating }
reason-no-rating =
    .headline = No rating is known to compare it with. Rigging is rated for steady loads and not for jerks.
    .caution = Give the chain's grade and size, or the rating on the tag.
reason-grade-not-said =
    .headline = You have not said whether it is chain, and of which grade. Tie-down chain has no lifting rating, whatever its tag says.
    .caution = Read the mark on the chain and choose its grade. Choose “not a chain” for a rope or web sling.
reason-inspect-the-string =
    .caution = After any drop, do not use the rigging until every part is inspected: hook, latch, links and pins.
reason-breaks-without-warning =
    .caution = A jerk breaks cold, cracked or hardened steel far below the force worked out here, and the steel does not stretch first.
reason-modulus-of-large-chain =
    .caution = No published figure was found for the stretch of chain in shop sizes. The pull lies between { $peak_force_low } (measured on large mooring chain) and { $peak_force } (two bars of solid steel, stiffer than any link). The larger one is used. Crane, hook and floor give a little, which softens the jerk.

share-of-rating = That is { $use_percent } of the { $rating } that the sling is rated for, and a rating is for a steady pull.
take-slack-up = Take up the slack slowly before the load leaves the floor. Never snatch the load, and never let it run down freely.

## The working

step-stretch-given = Stretch at rest
    .formula = as given
    .numbers = { OWN($static_stretch) }
    .result = { $static_stretch }
step-stretch-of-chain = Stretch at rest
    .formula = weight × length / (modulus × 2 × π d²/4)
    .numbers = { OWN($pull) } × { OWN($long) } / ({ $modulus } × 2 × π/4 × ({ OWN($wire) })²)
    .result = { $static_stretch }
step-factor = Drop factor
    .formula = 1 + √(1 + 2 × drop / stretch)
    .numbers = 1 + √(1 + 2 × { OWN($drop_height) } / { OWN($static_stretch) })
    .result = { DIGITS($factor, digits: 4) }
step-peak = Peak pull
    .formula = factor × weight
    .numbers = { DIGITS($factor, digits: 4) } × { OWN($pull) }
    .result = { $peak_force }

## Why a result is absent

absent-stretch-given = not needed: the stretch is given
absent-no-lifting-rating = no lifting rating
absent-none-given = none given
absent-grade-not-said = none that counts: the grade was not said
absent-not-of-this-part = none for a sling in this condition
absent-no-rating = no rating to compare it with

## Refusals

refused-not-a-size = is not a size of the tables. Give one of: { $sizes }.
refused-less-than-steel = is less than a chain of solid steel would stretch: { $least }. Measure again, or leave out the size and length of the chain.
refused-more-than-chain = is more than a chain of that size and length stretches: { $most } at most. Measure again, or leave out the stretch.
refused-tag-against-table = does not agree with the { $printed } that the table prints for a chain of that grade and size. Check the tag, the grade and the size.
refused-more-than-such-chain = is more than any chain of that grade and size carries: { $most } at most (our own bound, no source). Check the tag, the grade and the size.
refused-stretch-missing = is needed, or the chain's size and length. Give one of them.
refused-length-missing = is needed to find how far the chain stretches. Give its length.
chain-size = { $inch } ({ $metric })

## The drawing

figure = Pull against travel: the load falls { $drop } free, then the sling pulls harder the more it stretches, up to { $pull } at { $peak }. At rest it would stretch { $rest } under { $load } (dashed).
axis-travel = travel past taut, { $unit }
axis-pull = pull, { $unit }
mark-weight = weight
