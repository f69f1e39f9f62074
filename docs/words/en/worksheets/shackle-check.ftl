# Worksheet shackle-check.

title = Is this shackle still fit?
summary = Checks bow, pin, jaw, thread and marks against every published limit (removal criteria). The strictest decides.
story = An anchor (bow) shackle has held the turning block of the yard's slip for nine seasons.

## What is asked

input-body_new = Bow when new
    .help = From the maker's sheet, or an unworn place on the leg.
input-body_now = Bow now, where the load bears
    .help = Measure at the crown in both directions and give the smaller reading.
input-pin_new = Pin when new
    .help = From the maker's sheet, or measured beside the lugs.
input-pin_now = Pin now, where the load bears
    .help = Measure at its middle, turn it, and give the smallest reading.
input-jaw_new = Jaw when new
    .help = The gap between the lugs, from the maker's sheet or a new shackle.
input-jaw_now = Jaw now
    .help = Measure between the lugs, at the pin.
input-pin_kind = Pin
option-pin_kind-screw = Screw pin
option-pin_kind-bolt = Bolt, nut and cotter
option-pin_kind-round = Round pin and cotter
input-pin_seated = Does the pin go all the way in by hand?
    .help = Its shoulder must sit on the body, with the thread through the far lug.
input-pin_original = Is it the maker's own pin?
input-bent = Any bend or twist you can see?
input-cracks = Any crack, nick, or damaged thread?
input-marks_readable = Can you read the maker's mark and the rating?
input-altered = Any weld, heat color, grinding or drilling?
input-rating = Rating on its mark

## What is found

result-body_wear = Bow worn by
result-pin_wear = Pin worn by
result-jaw_change = Jaw changed by
result-body_limit = Bow limit
result-pin_limit = Pin limit
result-rating_if_sound = Rating on its mark, if sound

## What it is judged by

part-shackle = shackle
criterion-bow-worn = Bow worn
    .listed = bow worn
    .look-at = the wear of the bow
criterion-pin-worn = Pin worn
    .listed = pin worn
    .look-at = the wear of the pin
criterion-jaw-sprung = Jaw opened or closed
    .listed = jaw opened or closed
    .look-at = the jaw
criterion-bent = Visibly bent or twisted
    .listed = visibly bent or twisted
    .look-at = any bend
    .limit = none
criterion-pin-not-home = Pin not all the way in
    .listed = pin not all the way in
    .look-at = how the pin seats
    .limit = screwed all the way in, shoulder on the body
criterion-pin-kind = Kind of pin
    .listed = kind of pin
    .look-at = what kind of pin it has
    .limit = no round pin held by a cotter alone
criterion-wrong-pin = Wrong pin
    .listed = wrong pin
    .look-at = whose pin it is
    .limit = the maker's own, never a bolt
criterion-crack = Crack, nick or damaged thread
    .listed = crack, nick or damaged thread
    .look-at = any crack or nick
    .limit = none
criterion-no-marks = No readable marks
    .listed = no readable marks
    .look-at = the marks
    .limit = maker and rating readable
criterion-altered = Welded, heated, ground or changed
    .listed = welded, heated, ground or changed
    .look-at = any weld, heat or change
    .limit = none

no-lifting-with-round-pin = a shackle with a round pin may not lift
reason-round-pin =
    .headline = Do not lift with this shackle. Its round pin is held by a cotter alone.
    .caution = The standard for lifting does not cover a round pin held by a cotter alone. Use a screw-pin or a bolt-type shackle.
absent-no-mark-given = no mark given

## Refusals

refused-pin-new-thinner-than-bow = is thinner than the bow. A shackle's pin is thicker than its bow when new: look whether it is the right pin, and measure both again.
refused-over-every-table = is more than any table prints for a bow that thick, { $highest }. Read the mark again, and measure the bow again.
refused-body-now-thicker-than-new = is thicker than new. Measure both at the same place.
refused-pin-now-thicker-than-new = is thicker than new. Measure both at the same place.

## The drawing

label-bow = bow
label-pin = pin
label-jaw = jaw
figure = A shackle seen flat. Measure the bow at its crown where the load bears, the pin at its middle, and the jaw between the lugs. { $bow ->
        [absent] Drawn in usual proportion.
       *[other] Bow { DIGITS($bow, digits: 4) }, pin { DIGITS($pin, digits: 4) }.
    }
