# Worksheet load-path.

title = Which part of my rigging gives first?
summary = What a string of parts holds from the overhead support to the load, and which part limits or stops it.
story = The yard checks the string it means to lift a diesel with: hoist, ring, two chain legs, two shackles.

## What is asked

input-load = Weight of the load
    .help = All that hangs below: the load, its fluids and the rigging.
input-items = Parts, from the support down to the load
    .help = Every part once, in order: hoist, hook, ring, legs, shackles, eyebolts.
    .row = Part

## What is found

result-capacity = The whole string holds
result-governing = Gives first
result-share = Part of each rating used
result-pulls = Pull on each part
result-blocked = May not be used

## The headline and the cautions

holds = The whole string holds { $capacity }: { $governing } gives first.
none-or-more = { $more ->
        [0] { "" }
       *[other] { " " }{ $more } more may not be used either.
    }
reason-legs-flat =
    .caution = A leg lies between 30° and 45° from the horizontal: a few inches of hook height change its pull a lot. Measure the angle again with the slack out.
reason-part-forbidden =
    .headline = Do not lift: { $why }.{ none-or-more }
    .caution = { $why }. Take it out of the string.
reason-part-without-rating =
    .headline = The whole string cannot be rated: { $why }.{ none-or-more } Do not lift until every part is known.
    .caution = { $why }. Find it out, or take the part out of the string.
reason-part-overloaded =
    .headline = Do not lift: the load is more than { $part } could take even if all else were in order. What else is not known does not matter.
    .caution = The load is over what { $part } could take at most.
reason-altered-part =
    .caution = A pull that an altered part survives proves only that pull. Cracks, hardness and fatigue give no warning.
reason-over-string =
    .headline = { holds } Your load is { $used } of that. Do not lift.
    .caution = The load is over what the string holds. Do not lift.
reason-inside-string =
    .headline = { holds } Your load takes { $used } of it.
reason-legs-too-flat =
    .headline = Do not lift like this: { $part } lies under 30° from the horizontal. Use longer legs.
    .caution = No sling goes under 30° from the horizontal. Use longer legs.
reason-legs-too-flat-beside =
    .caution = { reason-legs-too-flat.caution }
reason-alike-in-line =
    .caution = Two parts one after the other do not add: each carries the whole load, and the weaker one gives.
reason-legs-share-by-angle =
    .caution = Legs share only by their angle, and the one ring or hook above them still carries the whole load.
reason-stiff-load-hangs-on-two =
    .closing = Of three legs and more two are counted, since a stiff load can hang on two.
reason-three-counted =
    .closing = Three legs are counted, because you say that the load is flexible.
    .caution = Three legs share only if their lengths match, their picks stand evenly round the center of gravity, and the load can settle. If any of that is not sure, say that the load is stiff.
reason-tag-alone =
    .caution = Of a sling whose tag alone is known, the stricter of the printed laws decides: the whole sling counts as { $factor } times one leg (EN 818-4). Give the size of its chain to go by its own table.
reason-stands-upright =
    .caution = An eyebolt is taken to stand upright, its shoulder tight on the load and its eye in the plane of the pull. Standing otherwise it may not lift.
reason-rating-from-memory =
    .closing = One figure here was not read in its own source: hold it against the mark or the maker's table.
    .caution = A rating looked up here, or what an angle leaves of an eyebolt, was not read in its own source. The mark on the part and its maker's table govern.
reason-marks-govern =
    .caution = The mark or tag on each part governs. Look each part over before the lift: a table knows only sound parts.

## The working

step-pull-alone = Pull on { $part }
    .formula = load
    .result = { $pull }
step-pull-of-legs = Pull on { $part }
    .formula = load / (legs that count, { $counted } of { $legs }, × sin angle)
    .numbers = { OWN($load) } / ({ $counted } × sin { $angle })
    .result = { $pull }
step-no-rating = Rating of { $part }
    .formula = mark, table and condition
    .numbers = { $condition }
    .result = none
step-rating = Rating of { $part }
    .formula = straight rating × what its use leaves
    .numbers = { $reckoned }
    .result = { $rating }
not-looked-at = not looked at
straight-rating = { OWN($straight) } ({ $printed })
times-share = { $before } × { PLACES($share, places: 3) } ({ $what })
of-part = { $part }: { $amount }

## Why a result is absent

absent-part-may-not-be-used = no capacity while a part may not be used
absent-may-not-be-used = may not be used
absent-legs-too-flat = no capacity while legs lie under 30° from the horizontal

## The drawing

figure = Parts from the overhead support down to the load: { $parts }.
bar = { $share ->
        [absent] { $part } { $share }
       *[other] { $part } { $share } used
    }
figure-support = Overhead support
figure-load = Load
figure-whole-rating = whole rating
