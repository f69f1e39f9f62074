# Worksheet load-path.

title = Which part limits my rigging?
summary = The load that all the parts from the overhead support to the load can carry together, and which part sets the limit (lowest WLL).
story = The yard checks the rigging with which it will lift a diesel: hoist, ring, two chain legs and two shackles.

## What is asked

input-load = Weight of the load
    .help = Everything that hangs below: the load, its fluids and the rigging.
input-items = Parts, from the support down to the load
    .help = Give every part once, in order: hoist, hook, ring, legs, shackles, eyebolts.
    .row = Part

## What is found

result-capacity = Limit of the whole rigging
result-governing = Sets the limit
result-share = Part of each rating used
result-pulls = Pull on each part
result-blocked = May not be used

## The headline and the cautions

holds = The whole rigging may lift { $capacity }. The part “{ $governing }” sets the limit.
none-or-more = { $more ->
        [0] { "" }
        [one] { " " }One more part may not be used either.
       *[other] { " " }{ $more } more parts may not be used either.
    }
reason-legs-flat =
    .caution = A leg lies between 30° and 45° from the horizontal: a few inches of hook height change its pull a lot. Take up the slack and measure the angle again. Two legs in one hook without a ring between spread more than 90° then, and press on its tip: use a master link (ASME B30.10, from memory).
reason-part-forbidden =
    .headline = Do not lift: { $why }.{ none-or-more }
    .caution = Not allowed: { $why }. Take that part out of the rigging.
reason-part-without-rating =
    .headline = The whole rigging cannot be rated: { $why }.{ none-or-more } Do not lift until every part is known.
    .caution = Still to find out: { $why }. Find it out, or take that part out of the rigging.
reason-part-overloaded =
    .headline = Do not lift: the load is more than the part “{ $part }” could carry, even if everything else were in order.
    .caution = The load is more than the part “{ $part }” could carry at most.
reason-altered-part =
    .caution = If an altered part holds a pull, that proves only that pull. Cracks, hardening and fatigue give no warning.
reason-over-string =
    .headline = { holds } Your load is { $used } of that. Do not lift.
    .caution = The load is over what the rigging may lift. Do not lift.
reason-inside-string =
    .headline = { holds } Your load takes { $used } of it.
reason-legs-too-flat =
    .headline = Do not lift like this: the legs of the part “{ $part }” lie under 30° from the horizontal. Use longer legs.
    .caution = Never use a sling at less than 30° from the horizontal. Use longer legs.
reason-legs-too-flat-beside =
    .caution = { reason-legs-too-flat.caution }
reason-alike-in-line =
    .caution = Two parts one after the other do not add up. Each carries the whole load, so the weaker one sets the limit.
reason-legs-share-by-angle =
    .caution = Legs share the load by their angle. The one ring or hook above them still carries all of it.
reason-stiff-load-hangs-on-two =
    .closing = Of three or more legs two are counted, because a stiff load can hang on two.
reason-three-counted =
    .closing = Three legs are counted, because you say that the load is flexible.
    .caution = Three legs share only if their lengths match, the pick points are spaced evenly round the center of gravity and the load can settle. If you are not sure of one of these, say that the load is stiff.
reason-tag-alone =
    .caution = Only the figure on the sling's tag is known, so the stricter printed rule decides: the whole sling counts as { $factor } times one leg (EN 818-4). Give the size of its chain to use its own table.
reason-stands-upright =
    .caution = An eyebolt must stand upright, with its shoulder tight on the load and its eye in the plane of the pull. If it does not, do not lift with it.
reason-rating-from-memory =
    .closing = One figure here was not read in its own source: compare it with the mark or the maker's table.
    .caution = A rating that was looked up here, or the share that an eyebolt keeps at an angle, was not read in its own source. Go by the mark on the part and its maker's table.
reason-marks-govern =
    .caution = Go by the mark or tag on each part. Inspect each part before the lift, because a table is for sound parts only.

## The working

step-pull-alone = Pull on “{ $part }”
    .formula = load
    .result = { $pull }
step-pull-of-legs = Pull on “{ $part }”
    .formula = load / (legs that count × sin angle); { $counted } of { $legs } count
    .numbers = { OWN($load) } / ({ $counted } × sin { $angle })
    .result = { $pull }
step-no-rating = Rating of “{ $part }”
    .formula = mark, table and condition
    .numbers = { $condition }
    .result = none
step-rating = Rating of “{ $part }”
    .formula = straight rating × what its use leaves
    .numbers = { $reckoned }
    .result = { $rating }
not-looked-at = not looked at
did-not-pass = its last inspection did not pass
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
