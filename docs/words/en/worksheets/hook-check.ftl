# Worksheet hook-check.

title = Is this hook still fit?
summary = Checks the throat opening, wear, twist, latch, cracks and marks against every published limit (removal criteria). The strictest decides.
story = The throat of the yard's sling hook looks wider than that of the new spare beside it.

## What is asked

input-throat_new = Throat when new
    .help = From the maker's sheet, or a new hook of the same mark and size.
input-throat_now = Throat now
    .help = Measure where it is narrowest, from tip to neck. Hold the latch open.
input-section_new = Thickness of the bowl (saddle) when new
    .help = From the maker's sheet, or measured at an unworn place beside it.
input-section_now = Thickness of the bowl now
    .help = Measure where the load rests, in line with the pull.
input-twist = Twist or bend out of the flat
    .help = Lay it on a flat plate or sight along it. If you can see any twist, the hook fails. If there is none, give 0.
input-latch = Latch
option-latch-closes = Closes the throat and springs back
option-latch-does-not-close = Does not close, bent or stuck
option-latch-missing = Missing
option-latch-none-made = Made without one
input-cracks = Any crack?
    .help = Clean it first. Look in the bowl, at the neck, in the threads and round the pin.
input-marks_readable = Can you read the maker's mark and the grade or rating?
input-altered = Any weld, heat color, grinding, drilling or bending back?
    .help = Weld spatter and arc strikes count. So does a hook made in a shop.
input-hook_on = What the hook hangs on
    .help = It decides when the hook must be inspected again. If you leave it empty, the shortest interval is used.
option-hook_on-sling = A sling or loose gear
option-hook_on-crane = A crane or hoist

## What is found

result-throat_increase_percent = Throat opened by
result-throat_increase = Throat opened by, in length
result-throat_limit = Throat limit
result-wear_percent = Section worn by
result-section_limit = Thickness limit

## What it is judged by

part-hook = hook
criterion-throat-opened = Throat opened
    .listed = throat opened
    .look-at = the throat
criterion-throat-opened-in-length = Throat opened, in length
    .listed = throat opened, in length
criterion-section-worn = Section worn
    .listed = section worn
    .look-at = the wear in the bowl
criterion-twisted = Twisted or bent out of the flat
    .listed = twisted or bent out of the flat
    .look-at = any twist
criterion-latch = Latch does not close
    .listed = latch does not close
    .look-at = the latch
    .limit = closes the throat
criterion-crack = Crack
    .listed = crack
    .look-at = any crack
    .limit = none
criterion-no-marks = No readable marks
    .listed = no readable marks
    .look-at = the marks
    .limit = maker and grade or rating readable
criterion-altered = Welded, heated, ground or changed
    .listed = welded, heated, ground or changed
    .look-at = any weld, heat or change
    .limit = none

reason-made-without-latch =
    .caution = A hook without a latch holds the sling only while the load is on it. If the sling can go slack, use a hook with a latch.
reason-where-the-new-throat-stands =
    .caution = Find the new throat in the maker's sheet, or measure a new hook of the same mark and size. Some makers set punch marks across the throat to measure from. Do not set them yourself.

## Refusals

refused-throat-now-smaller-than-new = is smaller than the new throat. A throat does not shrink. Measure both at the same place. If that is right, the hook was bent: remove it from service.
refused-section-now-thicker-than-new = is thicker than the new section. Measure both at the same place.

## The drawing

label-throat = throat
label-throat-measured = throat { $throat }
label-section = thickness
label-back = back
label-latch = latch
label-tip = tip
label-neck = neck
figure = A hook seen flat. Measure the throat at its narrowest, from the tip to the neck, and the thickness of the bowl where the load rests. { $now ->
        [absent] Sight along it from the side: any twist or bend out of the flat removes it from service.
       *[other] Full line: now, { DIGITS($now, digits: 4) } open. Dashed: as new, { DIGITS($new, digits: 4) } open.
    }
