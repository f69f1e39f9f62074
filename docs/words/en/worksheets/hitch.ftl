# Worksheet hitch.

title = What does my sling hold in this hitch?
summary = Capacity of one sling straight, choked or in a basket, with its angle and its bend.
story = The yard lifts a hollow mast step with one wire rope sling laid under it as a basket.

## What is asked

input-sling_kind = Kind of sling
option-sling_kind-wire-rope = Wire rope
option-sling_kind-chain = Alloy chain
option-sling_kind-web-sling = Web or round sling
option-sling_kind-fibre-rope = Natural fibre rope
input-rating = Vertical rating, from its tag
    .help = For one straight leg. Other figures on the tag already count the hitch.
input-hitch = Hitch
option-hitch-vertical = Straight up
option-hitch-choker = Choke
option-hitch-basket = Basket
input-choke_angle = Angle of the choke
    .help = 180° runs straight through the eye, 0° bends right back. Left empty: the worst.
input-basket_angle = Angle of the basket's legs from the horizontal
    .help = 90° if both legs hang plumb.
input-object_diameter = Diameter of what it bends round
    .help = The load, a pin or a corner's round.
input-sling_diameter = Diameter of the rope
    .help = Across the crowns of the strands.
input-edge = How it bears on the load
    .help = Corners and edges that the sling goes round.
option-edge-padded = On rounded or padded corners only
option-edge-bare = On a bare edge
input-load = Weight of the load
    .help = Left empty: only what it holds, and no verdict.

## What is found

result-capacity = It holds
result-use_percent = Part of that used
result-factor_hitch = Factor of the hitch
result-factor_angle = Factor of the angle
result-factor_bend = Factor of the bend
result-bend_ratio = Object over rope diameter

## The headline and the cautions

put-on = Put on { $hitch ->
        [choker] in a choke
        [basket] in a basket
       *[vertical] straight up
    }, it holds { $capacity }.
reason-too-flat =
    .headline = The legs of the basket lie under 30° from the horizontal: do not lift like this. Use a longer sling.
    .caution = No sling goes under 30° from the horizontal.
reason-over-rating =
    .headline = { put-on } Your load takes { $use_percent } of it. Too much.
    .caution = The load is over what this hitch holds. Do not lift.
reason-bend-not-known =
    .headline = Nobody knows yet what it holds: wire rope round something thin holds as little as half. Give the diameters of the rope and of what it bends round.
    .caution = Measure what the rope bends round, and the rope. Round anything as thin as itself it holds half; a corner that is sharper still cuts it.
reason-edge-not-said =
    .headline = Nobody knows yet what it holds: no table rates this sling on an edge. Say how it bears on the load.
    .caution = Say how the sling bears on the load. On an edge it has no rating.
reason-bare-edge =
    .headline = It bears on a bare edge: do not lift like this. Pad the edge, or rig it another way.
    .caution = No sling bears on a bare edge. Pad it so that the sling bends in a wide curve and cannot slip off the pad.
reason-no-load-given =
    .headline = { put-on } Give the weight of the load to compare it.
reason-inside-rating =
    .headline = { put-on } Your load takes { DIGITS($use_percent, digits: 2) } of it.
reason-choke-weakens =
    .caution = Do not hammer a choke down to tighten it: that makes its angle small and its hold weak.
reason-choke-table-from-memory =
    .caution = The choke-angle table was read in two handbooks, not in ASME B30.9 itself; the tag and its maker's table govern.
reason-choker-rating-of-the-tag =
    .caution = Use the choker rating on the sling's own tag if it gives one and it is smaller.
reason-basket-slides =
    .caution = A basket can slide along the load. Both legs must bear, and the load must not roll out.
reason-choke-not-measured =
    .closing = The choke was not measured, so the smallest angle is assumed.
    .caution = Measure the angle of the choke. Until then it counts as bent right back, which leaves least.
reason-pad-corners =
    .caution = Pad every corner. An edge cuts a web or a rope at once, and bends a chain link.
reason-tag-governs =
    .caution = The tag on the sling governs. No readable tag: do not lift with it.

## The working

step-hitch = Hitch
    .formula = { $what }
    .result = × { $factor_hitch }
step-angle = Angle
    .formula = { $what }
    .result = × { $factor_angle }
step-bend = Bend
    .formula = { $what }
    .numbers = { $bend_ratio ->
            [absent] { "" }
           *[other] 1 − 0.5 / √(D/d)
        }
    .result = × { $factor_bend }
step-holds = Holds
    .formula = rating × hitch × angle × bend
    .numbers = { OWN($rating) } × { $factor_hitch } × { $factor_angle } × { $factor_bend }
    .result = { $capacity }

share-straight = straight
share-basket = two legs of a basket
share-basket-angle = legs at { PLACES($angle, places: 0) } from the horizontal
share-no-bend-counted = no bend counted

## Why a result is absent

absent-no-bend-counted = no bend counted
absent-bend-not-known = bend not known
absent-not-to-be-used = not to be used as it stands
absent-no-load-given = no load given

## Refusals

refused-thinner-than-the-rope = is less than the rope's own. Wire rope is not bent so hard; pad the corner.

## The drawing

figure-vertical = The sling runs straight up from the load to the hook. { held-like-this }
figure-choker = The sling goes round the load and through its own eye, with an angle of choke of { PLACES($angle, places: 0) }. { held-like-this }
figure-choker-not-measured = The sling goes round the load and through its own eye. The angle of the choke was not measured; it is drawn bent right back. { held-like-this }
figure-basket = The sling runs under the load and up again, both legs at { PLACES($angle, places: 0) } from the horizontal. { held-like-this }
held-like-this = { $holds ->
        [absent] What it holds like this is not given.
       *[other] Put on like this it holds { $holds }.
    }
label-angle = { PLACES($angle, places: 0) }
