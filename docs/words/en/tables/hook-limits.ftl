# Words of the table hook-limits. A key that is not here is looked for in common.ftl.

question = How far may a hook open, twist or wear?
description = Throat opening, twist and wear at which a hook goes out of use, by source.

## Read before you use it

note-crack-latch-not-close = A crack, a latch that does not close, or a lock that does not lock removes a hook from service at once, whatever it measures.
note-not-more-than-1-4 = And not more than 1/4 in.
note-measured-at-the-narrowest-point = Measured at the narrowest point.
note-any-visible-bend-or-twist = Any visible bend or twist.
note-plane-unbent-hook = From the plane of the unbent hook.
note-hook-load-pin-unless-maker = Hook or load pin, unless the maker says otherwise.
note-wear-bite-hook = Wear in the bite of the hook.
note-loss-of-section-area = Loss of section area.
note-crane-hook-look-daily-record = Crane hook. Look daily, record monthly.
note-crane-hook = Crane hook.

## Cautions; table.toml says of which kind each is

caution-opened-was-overloaded = A hook that opened was overloaded: every part in its load path is suspect.
caution-never-bent-back = A hook is never bent back, built up or welded.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-throat_increase = Throat opened by
quantity-throat_increase_largest = Throat opened by, at most
quantity-twist = Twisted by
quantity-section_wear = Section worn by
quantity-stretch = Stretched by

## Words of the columns

word-item-ring = Ring
