# Worksheet temper-loss.

title = How much strength does hardened steel lose when it is heated again?
summary = Strength and hardness of a hardened and tempered test piece, before and after it is heated again (over-tempering).
story = The yard's apprentice heated a bent 4140 test bar with the torch to straighten it. It glowed a faint red for five minutes.

## What is asked

input-steel = Steel
    .help = Two steels that have published tempering data. Your hook may be made of neither.
option-steel-4140 = AISI 4140
option-steel-1340 = AISI 1340
input-tempered_at = First tempered at
    .help = What the heat treater set, for an hour.
input-heated_to = Heated again to
    .help = The hottest it got.
input-minutes = Held for
    .help = Time at that heat: 10 seconds to 24 hours, the range of the rule's own tests.
input-heats = How often was it heated again?
    .help = Each time it is heated it loses some more, so leave none out.
option-heats-one = Once
option-heats-several = More than once
input-more_heats = The later heats, one after another
    .help = One row for each heat after the first.
    .row = More heat
input-more_heats-heated_to = Heated again to
    .help = The hottest it got.
input-more_heats-minutes = Held for
    .help = Time at that heat: 10 seconds to 24 hours, the range of the rule's own tests.

## What is found

result-strength_after = Strength after, middle of the band
result-strength_after_low = Strength after, low
result-strength_after_high = Strength after, high
result-strength_before = Strength before
result-hardness_before = Hardness before (Rockwell C)
result-hardness_after = Hardness after (Rockwell C)

rockwell-about = about { $low } HRC
rockwell-span = { $low } to { $high } HRC

## What it means

reason-tempered-again =
    .headline = The strength of a test piece of { $steel } falls from { $strength_before } to between { $strength_after_low } and { $strength_after_high }. This is for a test piece. It does not say how strong your hook is.
reason-hardened-again =
    .headline = Out of range: at { $hottest } the effect of tempering is gone. If it cools fast, the steel is hard and brittle. If it cools slowly, its yield falls to about { $soft } (annealed { $steel }).
reason-hotter-than-tested =
    .headline = Out of range: the rule was tested up to { $limit }.
reason-softer-than-measured =
    .headline = Out of range: this heat makes the { $steel } test piece softer than { $soft }, the softest that was measured.
reason-a-test-piece =
    .caution = This is a test piece of known steel. Your hook's steel, its tempering and the heat it met are not known. A heated hook cannot be rated: remove it from service.
reason-brittle-too =
    .caution = Steel can also become brittle. In some ranges heat makes hardened steel brittle although its strength is still high.
reason-an-hour-is-taken =
    .caution = The data do not give the tempering time. One hour is assumed.

## The working

step-parameter-before = Tempering parameter before
    .formula = T (20 + log t) / 1000, T in kelvin, t in hours
    .numbers = { $kelvin } × (20 + log 1) / 1000
    .result = { $parameter }
step-parameter-of-a-heat = Heat of { $heat }, alone
    .formula = T (20 + log t) / 1000
    .numbers = { $kelvin } × (20 + log { $hours }) / 1000
    .result = { $parameter }
step-band = Band
    .formula = constant 15 to 20, plus and minus the scatter of the data
    .numbers = scatter { $scatter }
    .result = { $strength_after_low } to { $strength_after_high }
step-strength-before = Strength before
    .formula = from the test pieces
    .numbers = tempered at { $at }
    .result = { $strength_before }

## Why a result is absent

absent-turned-to-austenite = out of range: the steel turned to austenite
absent-hotter-than-tested = out of range of the rule's own tests
absent-softer-than-measured = out of range: under { $soft }
absent-outside-rockwell = outside the Rockwell C table

## Refusals

refused-outside-the-data = is out of range: the { $steel } data run from { $coolest } to { $hottest }.
refused-heated-once = does not go with a piece that was heated once. Choose more than once, or leave the rows out.
refused-too-short = is out of range: the rule was tested from { $seconds } seconds up. Give { $seconds } s or more.

## The drawing

figure-tempered-at = tempered for an hour at, { $unit }
figure-before = before
figure-after = after
figure = Tensile strength of { $steel } test pieces against the temperature they were tempered at: the hotter, the softer. The piece starts at { $before } and ends between { $low } and { $high }.
figure-off-the-curve = Tensile strength of { $steel } test pieces against the temperature they were tempered at: the hotter, the softer. The piece starts at { $before }; the new heat takes it off this curve.
