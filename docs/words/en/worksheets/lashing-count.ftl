# Worksheet lashing-count.

title = How many straps over the top?
summary = A quick count of straps laid over a load so that it does not slide, and what blocking or a mat would save.
story = The yard sends a gearbox on a wooden pallet, on a swept plywood deck, under ratchet straps.

## What is asked

input-load = Weight of the load
input-tension = Tension left in the strap
    .help = The STF on the label, or a measured tension. Do not give the WLL or LC: they are limits and do not say how tight the strap is.
input-limit = Limit on the same label
    .help = The WLL or LC. It only shows whether the tension was read from the right line.
input-across = From the load's top edge out to the anchor
    .help = Measured flat, across the truck. 0 if the strap runs straight down.
input-down = From the load's top edge down to the anchor
    .help = Measured straight down.
input-blocked = Is the load blocked in front?
    .help = It stands close against a headboard or stakes that can hold it.
option-blocked-no = No
option-blocked-yes = Yes, close against something that holds

## What is found

result-straps_needed = Straps needed
result-straps_if_blocked = Straps if it is blocked in front
result-straps_with_mat = Straps on friction mats and a swept deck
result-straps_by_2010 = Straps by the newer European count
result-per_tonne = Straps for each tonne (2,205 lb)
result-blocking_force = What blocking in front must hold
result-each_holds = One strap adds
result-held_alone = Share of the push that friction alone holds
result-friction = Friction
result-strap_angle = The strap's angle from the deck

## The headline and the cautions

straps-counted = { $count } { $count ->
        [one] strap
       *[other] straps
    }
reason-counted =
    .headline = { $straps_needed ->
        [one] One strap
       *[other] { $straps_needed } straps
    } over the top keep this load from sliding. Each adds only { $each_holds }. { $blocked ->
        [yes] That is with the load blocked in front.
       *[no] Block it in front, and { $straps_if_blocked } are enough.
    }
reason-friction-holds =
    .headline = Friction alone keeps this load from sliding. Use two straps at least.
reason-blocking-must-hold =
    .caution = What the load stands against must hold { $blocking_force } when you brake. A headboard with no stated strength counts as unknown.
reason-block-instead =
    .caution = If a load needs so many straps, hold it another way. Block it in front, or tie it directly from the load to the deck.
reason-many-straps =
    .caution = If a load needs so many straps, hold it another way. Block it at the sides as well, lay mats, or tie it directly.
reason-straps-flat =
    .caution = The straps lie flatter than 30° from the deck, so they press down very little. Tie the load directly, or set it on something higher.
reason-retighten =
    .caution = The load settles and the tension falls. Tighten again within the first miles: by US law within 50.
reason-limit-not-given =
    .caution = The limit of the strap was not given, so the tension could not be compared with it. Read both from the label: the tension is printed there as STF.
reason-tension-not-limit =
    .caution = A working load limit does not say how tight a strap is. A strap with a limit of 5,000 lb that was cranked to 500 lb pulls down with 500 lb on each side.
reason-slides-only =
    .caution = This counts sliding only. Whether the load tips, whether strap and anchors are strong enough, and what the law counts are worked out on the worksheet for tie-downs.

refused-more-than-by-hand = is more than a hand ratchet leaves in a strap, which is { $most } at most (common practice, no source). It is probably a limit. Give the STF of the label.
refused-limit-as-tension = is more than half of the strap's limit. Half is { $half }, and no hand ratchet leaves more. Give the STF of the label, or a measured tension.

## The working

step-friction-alone = What friction holds alone
    .formula = friction / share of the weight that is asked
    .numbers = { $friction } / { $asked }
    .result = { $held_alone }
step-one-strap = What one strap adds
    .formula = friction × how much arrives on both sides × tension × sin angle / safety factor
    .numbers = { $friction } × { $arrives } × { OWN($tension) } × { $sine } / { $safety }
    .result = { $each_holds }
step-straps = Straps, at least { $fewest }
    .formula = (share asked − friction) × weight / what one strap adds
    .numbers = ({ $asked } − { $friction }) × { OWN($load) } / { OWN($each_holds) } = { $exact }
    .result = { $straps_needed }
step-straps-2010 = The same by the European standard of 2010
    .formula = both sides taken as equally tight: { $arrives } in the place of 1.5
    .numbers = the stricter count is above
    .result = { $straps_by_2010 }

## The drawing

figure = Straps over the top against friction. At a friction of { $friction } this load needs { $straps }; on an oily deck, at 0.1, { $worst }.
axis-friction = friction under the load
axis-straps = straps
mark-straps = { $count }
