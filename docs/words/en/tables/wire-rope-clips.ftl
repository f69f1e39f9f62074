# Words of the table wire-rope-clips. A key that is not here is looked for in common.ftl.

question = How many clips on a wire rope, how far apart, how tight?
description = Count, spacing, turn-back and torque of U-bolt clips by rope size and source.

## Read before you use it

note-saddle-live-side-u = Saddle on the live side, U-bolt on the dead side.
note-printed-spacing-six-rope = The printed spacing is six rope diameters.
note-up-1-2-federal = Up to 1/2 in the federal table asks for 3 clips. A Canadian clip table prints 2 for 5/16 to 7/16 in: use 3, and turn back more rope than it prints for 2.
note-us-navy-text-counts = A US Navy text counts clips as 3 × diameter in inches + 1, rounded up: one fewer than the federal table from 1 in up. Take the larger count.
note-more-clips-longer-tail = Where a source asks for one clip more, its tail is longer in the same measure. Take the larger count and the longer tail together.
note-after-first-load-tighten = After the first load, tighten again to the torque.
note-printed-1-2-smaller = Printed for 1/2 in and smaller.
note-holds-1-2-smaller = Holds for 1/2 in and smaller.
note-type-of-clip-not-stated = Type of clip not stated.
note-2-clips-3-clips-turn = For 2 clips. With 3 clips turn back 11-1/2 in, as for 1/2 in rope.
note-dry-bolts = Dry bolts.

## Cautions; table.toml says of which kind each is

caution-no-clips-in-sling-eyes = Eyes in slings are not made with clips (29 CFR 1926.251(c)(4)(iii)).
caution-clip-on-backwards = One clip on backwards crushes the live side.

## Quantities

quantity-clips_drop_forged = Clips, drop forged
quantity-clips_other_material = Clips, other material
quantity-spacing = Spacing
quantity-turn_back = Turn-back
quantity-torque = Torque

## Words of the columns

word-source-worksafe-nb-15 = WorkSafe New Brunswick
word-source-army-tm = US Army
