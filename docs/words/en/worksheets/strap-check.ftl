# Worksheet strap-check.

title = Is this tie-down strap still fit?
summary = Checks label, webbing, stitching, ratchet and hooks of a ratchet or winch strap. Any damage removes it from service.
story = One of the ratchet straps that hold the gearbox pallet on the yard’s trailer.

## What is asked

input-label_readable = Can you read its label, with the limit?
    .help = In Europe and Canada a strap without its label does not count.
input-tension_on_label = Does the label give a tension (STF)?
    .help = The tension that the ratchet leaves in the strap. Without it the strap cannot be counted over the top.
input-cut = Any cut, tear, hole, worn or crushed place?
    .help = Run all of it through your hands, both faces and both edges. Pull it off the winch to the last turn.
input-width = Width of the webbing
option-width-1-3_4 = 1-3/4 in (45 mm)
option-width-2 = 2 in (50 mm)
option-width-3 = 3 in (75 mm)
option-width-4 = 4 in (100 mm)
input-cut_size = Size of all cuts together, across the webbing
    .help = Any cut removes the strap from service. The size only tells whether the truck would be stopped for it.
input-burned = Any place that is burned, melted, stiff, or eaten by acid, lye or sun?
input-stitching = Any stitching that is open, broken or frayed?
input-knot = Any knot, splice, patch or tape?
input-ratchet_works = Does the ratchet or winch lock, hold and open as it should?
    .help = Look at pawl, teeth, handle and drum. Nothing may be bent, cracked or missing.
input-hooks_bent = Any hook that is bent, twisted, opened or cracked?
input-altered = Any weld, grinding, drilling or part that is not the maker’s?
input-limit = Limit on its label
    .help = The WLL in North America, the LC in Europe.

## What is found

result-limit_if_sound = Limit on its label, if sound

## What it is judged by

part-strap = strap
criterion-no-label = No readable label
    .listed = no readable label
    .look-at = the label
    .limit = label and limit readable
criterion-cut = Cut, tear, hole or wear in the webbing
    .listed = cut, tear or hole in the webbing
    .look-at = the webbing, for cuts
    .limit = none of any size
criterion-burned = Burned, melted or eaten away
    .listed = webbing burned, melted or eaten away
    .look-at = the webbing, for heat, chemicals and sun
    .limit = none
criterion-stitching = Stitching open or frayed
    .listed = stitching open or frayed
    .look-at = the stitching
    .limit = whole
criterion-knot = Knot, splice, patch or tape
    .listed = knot, splice, patch or tape
    .look-at = any knot or mending
    .limit = none
criterion-ratchet = Ratchet or winch does not work
    .listed = faulty ratchet or winch
    .look-at = the ratchet or winch
    .limit = locks, holds and opens
criterion-hooks = Hook bent, opened or cracked
    .listed = hook bent, opened or cracked
    .look-at = the hooks
    .limit = none
criterion-altered = Welded, ground or changed
    .listed = welded, ground or changed
    .look-at = any weld or change
    .limit = none

reason-already-an-offence =
    .caution = A cut of this size is already an offense on the road: inspectors take the truck out of service for it. That list is given from memory and was not read. A smaller cut removes the strap from service all the same.
reason-no-tension-on-label =
    .caution = Without a tension (STF) on its label this strap cannot be counted over the top, unless you measure its tension.
reason-any-damage-is-out =
    .caution = The law allows no damaged part in a tie-down, and gives no size of damage that is allowed.
reason-look-each-trip =
    .caution = Look at it before each trip, again within the first 50 miles, and then every 150 miles or 3 hours.
reason-inside-every-limit =
    .headline = This strap is inside every limit that was checked. Go by the limit on its label.
absent-no-limit-given = no limit given

refused-more-than-its-webbing = is more than any label on webbing of that width says, { $most } at most. Read the label again.
refused-size-without-a-cut = is the size of a cut, but above you say that there is none. Look again, and answer both alike.

## The drawing

look-label = label
look-webbing = webbing
look-stitching = stitching
look-ratchet = ratchet
look-hooks = hooks
figure-gear = A ratchet strap laid flat, not to scale. Look at 1 the label, 2 the webbing on both faces and edges, 3 the stitching, 4 the ratchet, 5 both hooks.
