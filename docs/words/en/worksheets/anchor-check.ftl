# Worksheet anchor-check.

title = Is this anchor on the truck still fit?
summary = Checks who fitted the anchor point, its limit, its ring and seat, the deck, and the edge that the tie-down crosses.
story = The second ring on the left side of the yard’s trailer.

## What is asked

input-origin = Who put the anchor there?
    .help = A ring that somebody welded on has no known limit.
option-origin-maker = The maker of truck or trailer
option-origin-bolted = Bolted on: a rated anchor, as the vehicle’s maker allows
option-origin-welded-on = Somebody else welded it on
option-origin-rope-hook = It is a hook for the rope of a tarpaulin
input-limit_known = Do you know its limit, from the plate or the book?
input-bent = Is the ring bent, cracked, torn or worn?
input-loose = Is it loose, or does a bolt or weld move?
input-deck_damaged = Is the deck or frame around it cracked, torn, rotten or rusted through?
input-one_each = Does it hold only one tie-down?
input-edges_covered = Is every edge that the tie-down crosses round, or covered by a protector?
    .help = If the tie-down touches no edge, answer yes.
input-protectors_worn = Is a protector cut through, crushed or missing?
    .help = If none is used, answer no.
input-limit = Limit on the plate or in the book

## What is found

result-limit_if_sound = Limit of the anchor, if sound

## What it is judged by

part-anchor = anchor
criterion-welded-on = Welded on by somebody else
    .listed = welded on by somebody else
    .look-at = who put it there
    .limit = fitted by the vehicle’s maker, or as that maker allows
criterion-rope-hook = Hook for the rope of a tarpaulin
    .listed = hook for the rope of a tarpaulin
    .look-at = what it was made for
    .limit = made to hold a load
criterion-no-limit = Limit not known
    .listed = limit not known
    .look-at = its limit
    .limit = on the plate or in the book
criterion-bent = Bent, cracked, torn or worn
    .listed = bent, cracked, torn or worn
    .look-at = the ring
    .limit = none
criterion-loose = Loose
    .listed = loose
    .look-at = whether it is loose
    .limit = firm
criterion-deck = Deck or frame around it damaged
    .listed = deck or frame around it damaged
    .look-at = the deck around it
    .limit = whole
criterion-shared = More than one tie-down on it
    .listed = more than one tie-down on it
    .look-at = how many tie-downs it holds
    .limit = one
criterion-bare-edges = Bare edge under the tie-down
    .listed = bare edge under the tie-down
    .look-at = the edges that the tie-down crosses
    .limit = round or covered
criterion-worn-protectors = Protector cut, crushed or missing
    .listed = protector cut, crushed or missing
    .look-at = the edge protectors
    .limit = whole

reason-welded-has-no-limit =
    .caution = Do not use a ring that somebody welded on. Nobody knows what the weld holds, and its heat changed the steel beside it. US law bars any weld on the frame of a commercial truck that the frame’s maker does not allow.
reason-lifting-mark-misleads =
    .caution = Do not use a lifting mark on an anchor. Lifting and tying down use different factors. Go by a limit that is given for tying down.
reason-look-each-trip =
    .caution = Look at it before each trip, again within the first 50 miles, and then every 150 miles or 3 hours.
reason-out =
    .headline = Do not use this anchor as it is: { $failed }.
    .caution = Do not use this anchor until the fault is put right, by the maker of the vehicle or as that maker allows. Never use a ring again that is bent, cracked, torn or worn.
reason-inside-every-limit =
    .headline = This anchor is inside every limit that was checked. Go by the limit on its plate or in the book.
decides-out = Not fit: { $named }{ and-more }
absent-out-of-use = none: not fit
absent-no-limit-given = no limit given

## The drawing

look-ring = ring
look-seat = seat
look-plate = deck
look-edge = edge and protector
figure-gear = An anchor on the deck and a tie-down over the load’s edge, not to scale. Look at 1 the ring, 2 its seat, 3 the deck around it, 4 the edge and its protector.
