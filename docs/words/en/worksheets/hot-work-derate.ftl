# Worksheet hot-work-derate.

title = What is the rating of my chain in a hot place?
summary = The rating of a lifting chain while it is hot, and the permanent loss after it cools, by two rules side by side.
story = The boat yard lifts a keel mold out of the curing oven with a 3/8 in grade 80 sling; the top links read 450 °F.

## What is asked

input-grade = Grade of the chain
    .help = As marked on the links and the tag. A mark of 4 alone may mean grade 43, which never lifts; European grade 4 is marked M.
option-grade-80 = Grade 80 (8)
option-grade-100 = Grade 100 (10)
option-grade-5 = European grade 5 (P)
option-grade-M = European grade 4 (M)
option-grade-70 = Grade 70
option-grade-43 = Grade 43
option-grade-30 = Grade 30
input-size = Size of the chain
    .help = As on the tag: 3/8 in, 10 mm.
input-rating = Rating on the tag
    .help = The working load limit of the sling as you use it, at shop temperature.
input-temperature = Temperature of the chain
    .help = Measure the hottest link. Do not measure the air, and do not guess by the color.
input-how_known = How do you know the temperature?
    .help = Remove a chain that was heated by accident from service.
option-how_known-measured = Planned and measured
option-how_known-found = It was heated by accident: torch, fire, weld, color

## What is found

result-rating_hot = Rating while hot, stricter rule
result-rating_after = Printed rating after cooling (ASME B30.9)
result-rule = Rule used
result-rating_hot_asme = ASME B30.9 while hot
result-rating_hot_en = EN 818-6 while hot

rules-agree = { rule-asme } and { rule-en } agree
share-and-rule = { $rating }: { $said }
after-lasting-loss = { $rating } by ASME; ask the chain's maker
after-no-loss = { $rating } (the rule prints no lasting loss)

## What it means

reason-heated-by-accident =
    .headline = This chain was heated by accident, so it has no rating any more. Remove it from service and ask its maker.
    .caution = { reason-heated-by-accident.headline }
reason-ties-down-only =
    .headline = Grade { $mark } chain has no lifting rating, hot or cold, and no heat rule.
    .caution = { reason-ties-down-only.headline }
reason-forbidden =
    .headline = Do not use it at { $temperature }. { $who }
    .caution = { reason-forbidden.headline }
asme-says = { rule-asme }: { $said }.
en-says = { rule-en }: { $said }.
reason-lasting-loss =
    .headline = At { $temperature } this chain permanently loses part of its rating. Keep the chain out of this heat, or ask its maker.
reason-how-not-said =
    .headline = You have not said that this heat is planned and measured. Say how you know the temperature.
    .caution = Say how you know the temperature. If a torch, a fire or a weld heated the chain, remove it from service.
reason-less-while-hot =
    .headline = At { $temperature } the chain may carry at most { $rating_hot }. Its rating when cool is { $rating }. Rule used: { $rule }.
reason-rules-differ =
    .caution = The two rules differ. The stricter one is used. Where the tag or the chain's maker says less, go by that.
reason-planned-heat-only =
    .caution = This is for a sound, tagged chain at a planned and measured temperature. A chain that was in a torch flame, a fire or a weld has no rating.
reason-measure-the-chain =
    .caution = Measure the chain itself where it is hottest, and not the air. Hooks, rings and shackles have limits of their own. Do not use shackles above { $shackles } unless the maker allows it.
reason-loss-stays =
    .caution = Part of the loss stays after cooling. Only the chain's maker can say what such a chain is fit for.

## The working

step-asme-hot = { rule-asme }, while hot
    .formula = { share-formula }
    .numbers = { share-numbers }
    .result = { $left }
step-en-hot = { rule-en }, while hot
    .formula = { share-formula }
    .numbers = { share-numbers }
    .result = { $left }
step-asme-after = { rule-asme }, afterwards
    .formula = { share-formula }
    .numbers = { share-numbers }
    .result = { $left }
share-formula = rating × share left
share-numbers = { OWN($rating) } × { $share }

## Why a result is absent

absent-none-allowed = none
absent-none-with-lasting-loss = none: this heat lowers the rating permanently
absent-too-little-said = none: the chain cannot be rated yet
absent-no-rule-allows = none that allows use
absent-no-rule-prints = no rule gives it
absent-as-the-rule-says = { $said }

## Refusals

refused-not-a-size = is not a size of the tables. Give one of: { $sizes }.
refused-more-than-three-legs = is more than any sling of this grade and size lifts: one straight leg has { $one_leg }, and three or four legs count as three. Look at the tag, the grade and the size.
chain-size = { $inches } ({ $metric } mm)
