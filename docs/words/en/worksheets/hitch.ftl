# Worksheet hitch.

title = What does my sling hold in this hitch?
summary = Capacity of one sling in a vertical, choker or basket hitch, with its angle and its bend (D/d).
story = The yard lifts a hollow mast step with one wire rope sling under it, in a basket hitch.

## What is asked

input-sling_kind = Kind of sling
option-sling_kind-wire-rope = Wire rope
option-sling_kind-chain = Alloy chain
option-sling_kind-web-sling = Web or round sling
option-sling_kind-fibre-rope = Natural fiber rope
input-rating = Vertical rating, from its tag
    .help = The figure for one straight leg. The other figures on the tag already include the hitch.
input-hitch = Hitch
option-hitch-vertical = Straight up (vertical hitch)
option-hitch-choker = Choke (choker hitch)
option-hitch-basket = Basket (basket hitch)
input-choke_angle = Angle of the choke
    .help = 180° is straight through the eye, 0° is bent right back. If you leave it empty, the worst is used.
input-basket_angle = Angle of the basket's legs from the horizontal
    .help = Give 90° if both legs are vertical.
input-object_diameter = Diameter of what it bends round
    .help = The load, a pin, or the rounding of its tightest corner.
input-sling_diameter = Thickness of the rope, or of the wire of a link
    .help = A rope is measured across the crowns of its strands.
input-edge = How it bears on the load
    .help = Corners and edges that the sling goes round.
option-edge-padded = On rounded or padded corners only
option-edge-bare = On a bare edge
input-load = Weight of the load
    .help = If you leave it empty, you see only what the hitch holds, without a verdict.

## What is found

result-capacity = It holds
result-use_percent = Part of that used by the load
result-factor_hitch = Factor of the hitch
result-factor_angle = Factor of the angle
result-factor_bend = Factor of the bend
result-bend_ratio = Diameter of the object over that of the sling (D/d)

## The headline and the cautions

put-on = { $hitch ->
        [choker] In a choker hitch
        [basket] In a basket hitch
       *[vertical] Straight up
    } { $capacity ->
        [absent] the sling may not be used as it is.
       *[other] the sling holds { $capacity }.{ $use_percent ->
            [absent] { "" }
           *[other] { " " }Your load takes { $use_percent } of that.
        }
    }
reason-too-flat =
    .headline = The legs of the basket lie under 30° from the horizontal: do not lift like this. Use a longer sling.
    .caution = Never use a sling at less than 30° from the horizontal.
reason-over-rating =
    .headline = { $capacity ->
            [absent] Your load is more than this hitch could lift, even if everything else were in order.
           *[other] { put-on } Too much.
        }
    .caution = The load is more than this hitch may lift. Do not lift.
reason-bend-not-known =
    .headline = What it holds is not known yet. Wire rope that bends round something thin keeps as little as half of its strength. Give the diameters of the rope and of what it bends round.
    .caution = Measure what the rope bends round, and the rope. Round something as thin as itself it keeps half of its strength. A sharper corner cuts it.
reason-bend-without-figure =
    .headline = What it holds is not known. { $sling_kind ->
            [chain] Chain
           *[fibre-rope] Fiber rope
        } that bends round less than { $times } times its thickness is weakened, by a figure that this book does not have. Give both thicknesses, and pad the corners to a wider bend.
    .caution = Measure what the sling bends round at its tightest corner, and the sling. Under { $times } times its thickness only its maker can say what it holds.
reason-wide-bend-from-memory =
    .caution = A bend of { $times } times the thickness of the sling and more counts as taking nothing. That is from memory of ASME B30.9, which was not read. Go by the sling’s maker.
reason-edge-not-said =
    .headline = What it holds is not known yet, because no table rates a sling on a bare edge. Say how it bears on the load.
    .caution = Say how the sling bears on the load. On a bare edge it has no rating.
reason-bare-edge =
    .headline = It bears on a bare edge: do not lift like this. Pad the edge, or rig it another way.
    .caution = Never lay a sling on a bare edge. Pad the edge so that the sling bends in a wide curve and cannot slip off the pad.
reason-no-load-given =
    .headline = { put-on } Give the weight of the load, and it is compared.
reason-inside-rating =
    .headline = { put-on }
reason-choke-weakens =
    .caution = Do not hammer a choker down to tighten it. That makes the choke angle smaller, and the sling holds less.
reason-choke-table-from-memory =
    .caution = The table of choke angles was read in two handbooks, and not in ASME B30.9 itself. Go by the tag and its maker's table.
reason-choker-rating-of-the-tag =
    .caution = If the sling's own tag gives a choker rating that is smaller, use that.
reason-basket-slides =
    .caution = A basket hitch can slide along the load. Both legs must carry the load, and it must not be able to roll out.
reason-choke-not-measured =
    .closing = The choke was not measured, so the smallest angle is assumed.
    .caution = Measure the angle of the choke. Until then it counts as bent right back, which is the worst case.
reason-pad-corners =
    .caution = Pad every corner. An edge cuts webbing or rope, and bends a chain link.
reason-tag-governs =
    .caution = Go by the tag on the sling. If you cannot read it, do not lift with the sling. A sling that works hot or cold holds less than this.

## The working

step-hitch = Hitch
    .formula = { $what }
    .result = × { $factor_hitch }
step-angle = Angle
    .formula = { $what }
    .result = × { $factor_angle }
step-bend = Bend
    .formula = { $what }
    .numbers = { $sling_kind ->
            [wire-rope] { $bend_ratio ->
                    [absent] { "" }
                   *[other] 1 − 0.5 / √(D/d)
                }
           *[other] { "" }
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
absent-bent-too-tightly = bent more tightly than this book has a figure for
absent-not-to-be-used = not to be used as it is
absent-no-load-given = no load given

## Refusals

refused-more-than-its-rope = is more than any such sling of that thickness may lift, { $most } at most (our own bound, no source). Read the tag again, and measure the sling again.
refused-thinner-than-the-rope = is less than the rope's own. Do not bend wire rope so tightly: pad the corner.

## The drawing

figure-vertical = The sling runs straight up from the load to the hook. { held-like-this }
figure-choker = The sling goes round the load and through its own eye, with an angle of choke of { PLACES($angle, places: 0) }. { held-like-this }
figure-choker-not-measured = The sling goes round the load and through its own eye. The angle of the choke was not measured; it is drawn bent right back. { held-like-this }
figure-basket = The sling runs under the load and up again, both legs at { PLACES($angle, places: 0) } from the horizontal. { held-like-this }
held-like-this = { $holds ->
        [absent] No figure is given for it like this.
       *[other] Like this it holds { $holds }.
    }
label-angle = { PLACES($angle, places: 0) }
