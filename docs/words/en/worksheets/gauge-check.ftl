# Worksheet gauge-check.

title = Does my gauge tell the truth?
summary = The error of a scale or load gauge (dynamometer) against known weights, with its uncertainty, compared with the accuracy class that it claims.
story = The yard bought a used crane scale. It hangs ballast pigs on it that were weighed at the grain store.

## What is asked

input-known = Known weights and readings
    .help = One row a reading. Repeat a weight for its scatter.
    .row = Known weight
input-known-true_weight = Known weight
    .help = Weighed on a checked scale, or worked out from its size.
input-known-give_or_take = Give or take
    .help = Half the spread between its high and its low figure.
input-known-reading = Reading
input-readings_capacity = Full scale of the gauge
input-resolution = Smallest step it shows
input-accuracy_class = Class it claims
    .help = From its dial or its sheet, such as 1 %.
input-class_of = The class is a share of
option-class_of-full-scale = Full scale
option-class_of-reading = The reading
input-weights_from = How the known weights were found
    .help = If all were weighed on one scale, they may all be off the same way. If you leave it empty, this is assumed.
option-weights_from-one-source = All on one scale, or worked out in one way
option-weights_from-each-own = Each by itself, in its own way
input-zero_before = Reading at rest before
input-zero_after = Reading at rest after

## What is found

result-error = Error where it is worst
result-error_percent = The same, as a share of the weight
result-uncertainty = Give or take, at 95%
result-reserve = Allow this much when you plan
result-within = Against its class
result-usable_range = Range in which it was found good
result-repeatability = Scatter of one reading
result-scale_error = Scale error, fitted
result-scale_error_uncertainty = Its standard uncertainty
result-zero_offset = Zero error, fitted
result-zero_drift = Zero moved by

## The headline and the cautions

reason-inside-class =
    .headline = { worst-error } It is within its class.
reason-outside-class =
    .headline = { worst-error } It is outside its class.{ shown-good }
    .caution = Do not plan a pull by this gauge. Have it calibrated or use another.
reason-cannot-tell =
    .headline = { worst-error } These readings cannot tell whether it is within its class: the uncertainty is too large.{ shown-good }
    .caution = Use heavier known weights, weigh them better, and read each three times or more.
reason-dead =
    .headline = The readings do not follow the weights. This gauge is broken or wrongly set: it does not show the load.
    .caution = Remove the gauge from service. It can show nothing while a part is about to break.
reason-counted-as-exact =
    .headline = { worst-error-alone } A known weight came without its give-or-take, so nobody can say whether the gauge is within its class.
    .caution = Weigh the known weights on a checked scale, or work them out. Give for each how far it may be off. No weight is exact.
reason-zero-not-read =
    .headline = { worst-error-alone } The reading at rest before and after was not given, so nobody can say whether the zero moved.
    .caution = Read the gauge at rest before the weights go on and after they are off.
reason-rest-off =
    .headline = At rest the gauge shows { $rest }, more than its class allows. So its other readings cannot be trusted.
    .caution = Set the gauge to zero at rest, then hang the weights again.
reason-weights-too-light =
    .headline = The known weights are too light for this gauge: at its class it may be off by { $allowed }, nearly as much as they weigh.
    .caution = Hang heavier weights on it. A broken gauge would pass this check.
reason-few-points =
    .headline = { worst-error-alone } One or two weights do not show whether it is within its class at other loads.
    .caution = Hang three known weights or more, spread over the range in which you pull.
reason-not-read-twice =
    .headline = { worst-error-alone } No weight was read twice, so the scatter of the readings is not known.
    .caution = No weight was read twice, so the scatter is assumed to be one step of the dial. Load, unload and read again.
reason-nothing-shown-above =
    .caution = The gauge is not checked above { $heaviest }, the heaviest weight that you used. Higher up its error can be larger.
reason-zero-moved =
    .caution = The zero moved by more than the class allows. Tap the gauge, let it warm up and check again.
reason-coarse-low-down =
    .caution = A class that is a share of the full scale allows large errors low down: under { $low } the allowed error is more than a tenth of the reading.
reason-stand-clear =
    .caution = Stay clear of the known weight. Hang it low, over wood, with nothing under it that it can damage.

worst-error = At { $weight } the gauge reads { $off } { $way ->
        [high] high
       *[low] low
    }, give or take { $doubt }.
worst-error-alone = The largest error against its class is { $error }, { $error_percent } of the weight.
shown-good = { $usable_range ->
        [absent] { "" }
       *[other] { " " }It was found good from { $low } to { $high } only.
    }
standing-within = within
standing-outside = outside
standing-cannot-tell = cannot tell

## The working

step-scatter = Scatter of one reading
    .formula = pooled standard deviation of the repeats
    .numbers = { $freedom } degrees of freedom
    .result = { $repeatability }
step-point = At { OWN($weight) }
    .formula = mean reading − true weight, ± 95% uncertainty
    .numbers = { OWN($mean) } − { OWN($weight) } ± { OWN($doubt, digits: 3) }, allowed { OWN($allowed, digits: 3) }
    .result = { $error }: { $standing }
step-line = Straight line through the points
    .formula = least squares: reading = zero + scale × weight
    .numbers = zero { $zero_offset }
    .result = scale { $scale_error }{ $scale_error_uncertainty ->
            [absent] { "" }
           *[other] { " " }± { DIGITS($scale_error_uncertainty, digits: 2) }
        }

## Why a result is absent

absent-weights-not-sure = not known: a known weight came without its give-or-take
absent-zero-not-read = not known: the zero was not read before and after
absent-dead = none: the readings do not follow the weights
absent-none-within = none shown to be within
absent-not-read-twice = no weight was read twice

## Refusals

refused-over-full-scale = is over the gauge's full scale of { $full_scale }.
refused-too-coarse = is more than a quarter of the full scale. Give the smallest step it shows.

## The drawing

figure = Error of the gauge against the known weight, each with its 95% bar; the outer lines are what the class allows. { $points }
figure-point = At { $weight }: { $error }, { $standing }.
axis-known = known weight, { $unit }
axis-error = reading minus true weight, { $unit }
