# Worksheet hook-check.

title = Is this hook still fit?
summary = Throat, wear, twist, latch, cracks, marks: each held against every published limit; the strictest decides.
story = The latched sling hook on the yard's engine sling looks wider than the new spare beside it.

## What is asked

input-throat_new = Throat when new
    .help = From the maker's sheet, or a new hook of the same mark and size.
input-throat_now = Throat now
    .help = At the narrowest, tip to neck, with a caliper or inside jaws. Hold the latch open.
input-section_new = Thickness in the saddle when new
    .help = From the maker's sheet, or an unworn place beside it.
input-section_now = Thickness in the saddle now
    .help = Where the load bears, in line with the pull.
input-twist = Twist or bend out of the flat
    .help = Lay it on a flat plate or sight along it. Any you can see takes it out. None: 0.
input-latch = Latch
option-latch-closes = Closes the throat and springs back
option-latch-does-not-close = Does not close, bent or stuck
option-latch-missing = Missing
option-latch-none-made = Made without one
input-cracks = Any crack?
    .help = Clean it first. Look in the saddle, at the neck, in the threads, round the pin.
input-marks_readable = Can you read the maker's mark and the grade or rating?
input-altered = Any weld, heat colour, grinding, drilling or bending back?
    .help = Weld spatter and arc strikes count. So does a hook made in a shop.
input-hook_on = What the hook hangs on
    .help = It sets when the hook must be looked over again. Left open, the shortest interval counts.
option-hook_on-sling = A sling or loose gear
option-hook_on-crane = A crane or hoist

## What is found

result-throat_increase_percent = Throat opened by
result-throat_increase = Throat opened by, in length
result-throat_limit = Throat at which it is out
result-wear_percent = Section worn by
result-section_limit = Thickness at which it is out

## What it is judged by

part-hook = hook
criterion-throat-opened = Throat opened
    .listed = throat opened
    .look-at = the throat
criterion-throat-opened-in-length = Throat opened, in length
    .listed = throat opened, in length
criterion-section-worn = Section worn
    .listed = section worn
    .look-at = the wear in the saddle
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
    .caution = A hook made without a latch holds only while the load is on it. Where the sling can go slack, use one with a latch.
reason-where-the-new-throat-stands =
    .caution = The throat when new is in the maker's sheet, or on a new hook of the same mark and size beside this one. Punch marks across the throat give later checks a fixed start; only the maker puts them there.

## Refusals

refused-throat-now-smaller-than-new = is smaller than the new throat. A throat does not shrink: measure both at the same place, or the hook was bent and is out.
refused-section-now-thicker-than-new = is thicker than the new section. Measure both at the same place.

## The drawing

label-throat = throat
label-throat-measured = throat { $throat }
label-section = section
label-back = back
figure = A hook seen flat. Measure the throat at its narrowest, from the tip to the neck, and the thickness in the saddle where the load sits. { $now ->
        [absent] Sight along it from the side: any twist or bend out of the flat takes it out of use.
       *[other] Full line: now, { DIGITS($now, digits: 4) } open. Dashed: as new, { DIGITS($new, digits: 4) } open.
    }
