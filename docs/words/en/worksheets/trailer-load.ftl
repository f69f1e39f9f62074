# Worksheet trailer-load.

title = Where must the load be on the trailer?
summary = The weight on the ball (tongue weight) and on the axles, from the place of the load, compared with the plates of hitch, trailer, axles and tires.
story = The yard's loader is on its two-axle trailer, with its center of gravity a little ahead of the axles.

## What is asked

input-empty_weight = Weight of the empty trailer
    .help = From a scale, or its papers.
input-empty_tongue = Load of the empty trailer on the ball
    .help = Put the tongue on a scale, trailer level, at the height at which it tows.
input-axle_to_ball = From the middle of the axles to the ball
    .help = With two axles and an equalizer, measure from midway between them.
input-loads = Loads
    .help = Give a row for each thing, by its center of gravity (balance point).
    .row = Load
input-loads-name = Load
    .help = Your own word for it.
input-loads-weight = Weight
input-loads-stands = Its center of gravity is
option-loads-stands-ahead = Ahead of the middle of the axles
option-loads-stands-behind = Behind it
input-loads-distance = How far from the middle of the axles
input-condition = Plates and condition of hitch, coupler, axles and tires
    .help = Look at all of them for cracks and wear. Look at tire pressure and age, at the latch, and whether the ball is the right size.
option-condition-good = Plates readable, inspected and found good
option-condition-damaged = Something is cracked, worn, bent or mended
input-hitch_tongue_rating = Hitch: most on the ball
    .help = The lowest plate of receiver, mount, ball and coupler. The car's own book may give less.
input-hitch_gross_rating = Hitch: most it may tow
    .help = The lowest plate of receiver, mount, ball and coupler. The car's own book may give less.
input-trailer_gross_rating = Trailer: most it may weigh loaded
    .help = GVWR on its plate.
input-axles_rating = Axles: most they may carry together
    .help = GAWR on the plate, of all axles added up.
input-tires_rating = One tire: most it may carry
    .help = From its side wall, at the pressure it has. For two tires side by side, give the figure for two (dual).
input-tire_count = Number of tires on the road

## What is found

result-tongue_weight = Load on the ball
result-tongue_share = Part of the loaded trailer on the ball
result-axle_weight = Load on the axles
result-gross_weight = Weight of the loaded trailer
result-most_used = Largest part used of any plate
result-used = Part used of each plate
result-move_ahead = How far to move the whole load ahead (minus: back)

load-by-place = load { $place }
of-plate = { $part }: { $amount }
rated-hitch_tongue = hitch, load on the ball
rated-hitch_gross = hitch, weight towed
rated-trailer_gross = trailer, loaded weight
rated-axles = axles
rated-tires = tires

## The headline and the cautions

ok = Within the plates

reason-tongue-lifts =
    .headline = The tongue would lift off the ball. Do not tow it like this. Move the load ahead.
    .caution = If the trailer lifts the rear of the tow vehicle, the rear tires lose grip. The trailer sways and can turn over.
reason-damaged =
    .headline = Something on hitch or trailer is damaged. Do not tow with it.
    .caution = A damaged part has no rating any more. Repair it first, with parts and work that its maker allows.
reason-not-looked-at =
    .headline = You have not said yet that hitch and trailer were inspected and found good.
    .caution = Inspect hitch, coupler, latch, axles and tires, and read their plates.
reason-plate-not-read =
    .headline = A plate is still to be read: { $part }.
    .caution = Still to be read: { $part }. The weakest part decides, so no load is allowed while one plate is unknown.
reason-over-plate =
    .headline = Over the limit on a plate: { $part }. The load on it is { $bears }, and the plate allows { $rating }.
    .caution = Over the limit on a plate: { $part }. Do not tow with this load.
reason-inside-plates =
    .headline = The load on the ball is { $tongue_weight }, which is { $tongue_share } of the loaded trailer. The load on the axles is { $axle_weight }. Every plate allows that.
reason-tongue-light =
    .closing = By custom the load on the ball is too small.
    .caution = By custom { $least } to { $most } of the weight of the loaded trailer is on the ball. With less the trailer can sway. That is custom and not law. Move the load ahead, or follow the trailer's own book.
reason-tongue-heavy =
    .closing = By custom the load on the ball is too large.
    .caution = By custom { $least } to { $most } of the weight of the loaded trailer is on the ball. With more, the front wheels of the tow vehicle lose grip. That is custom and not law. Move the load back, or follow the trailer's own book.
reason-axles-share =
    .caution = Axles and tires share the load equally only if the trailer stands level, its equalizer works, and the load stands midway between left and right. Weigh each axle if you can.
reason-chains-too =
    .caution = Use safety chains, crossed under the tongue, each strong enough for the whole trailer. US law asks for them on a commercial trailer, and its tongue must not be able to drop to the ground.
reason-tie-it-down =
    .caution = Then tie the load down, so that it stays where it is. Try the trailer’s brakes and the cable that sets them if it breaks away. The plates here say nothing about brakes.

refused-more-than-half-the-trailer = is more than half of the empty trailer, { $empty }, and no trailer puts so much on the ball (our own bound, no source). Weigh both again.
refused-not-less-than-towed = is not less than what the hitch may tow, { $gross }. A plate has two lines: the load on the ball, and the weight towed. Read both.
refused-of-all-tires = of each tire makes all of them together more than three times what the axles may carry, { $axles } (our own bound, no source). Give what one tire may carry.
refused-ahead-of-the-ball = is ahead of the ball, which is { $ball } from the axles. Measure from the middle of the axles to the load's center of gravity.

absent-plate-missing = a plate is still to be read
absent-plate-not-read = plate not read
absent-stands-well = it is where it should be

## The working

step-load = Load on the ball from “{ $name }”
    .formula = weight × distance ahead of the axles / distance to the ball
    .numbers = { OWN($weight) } × { OWN($ahead) } / { OWN($axle_to_ball) }
    .result = { $puts }
step-tongue = Load on the ball
    .formula = empty tongue + what the loads put there
    .numbers = { OWN($empty_tongue) } and the lines above
    .result = { $tongue_weight }
step-axles = Load on the axles
    .formula = all − ball
    .numbers = { OWN($gross_weight) } − { OWN($tongue_weight) }
    .result = { $axle_weight }
step-share = Share on the ball
    .formula = ball / all
    .numbers = { OWN($tongue_weight) } / { OWN($gross_weight) }
    .result = { $tongue_share }

## The drawing

figure = A trailer from the side, { $ball } from the middle of its axles to the ball. Loads: { $loads }. The load on the ball is { $tongue }, and on the axles { $axles }.
load-drawn = { $name }, { $weight }, { $ahead } { $stands ->
        [ahead] ahead of the axles
       *[behind] behind the axles
    }
figure-ball = ball
figure-axles = axles
