# Words of the table sling-leg-counting. A key that is not here is looked for in common.ftl.

question = How many legs of a sling really carry?
description = Legs that count, by source: two at most, three at most, or a mode factor.

## Read before you use it

note-stiff-load-four-legs = On a stiff load with four legs two opposite ones can carry all of it. This book counts two of two, of three and of four. Three may count on a load that you know to be flexible.
note-three-legs-us-navy = Three legs: the US Navy counts two, which is stricter. We count two as well: where the picks stand unevenly, one leg of three carries half of the load.
note-three-four-legs-never-rated = Three and four legs are never rated above two.
note-three-four-legs-rated-three = Three and four legs are rated as three.
note-45-degrees-vertical-held-printed = To 45 degrees from the vertical. Held by the printed European sling tables.
note-45-60-degrees-vertical-held = From 45 to 60 degrees from the vertical. Held by the printed European sling tables.

## Cautions; table.toml says of which kind each is

caution-unequal-legs = Legs of unequal length: count two.

## Quantities

quantity-legs_counted = Legs counted
quantity-mode_factor_0_45 = Mode factor, 0 to 45° from the vertical
quantity-mode_factor_45_60 = Mode factor, 45 to 60° from the vertical

## Words of the columns

word-legs-3 = 3 legs
word-legs-4 = 4 legs
