# Words of the table tie-down-gear. A key that is not here is looked for in common.ftl.

question = What do lashing chains and binders hold?
description = Lashing capacity of European grade 8 lashing chain, and working load limits of lever binders.

## Read before you use it

note-read-the-label = Read the label or mark on your own part. These figures serve to see whether it can be right.
note-lc-is-half-of-break = The lashing capacity (LC) of chain is half of what breaks it. In the United States the limit of chain is a quarter to a third.
note-weaker-than-grade-70 = The first size is that of grade 70 chain, which holds more than the binder; the second that of grade 43 chain.

## Cautions; table.toml says of which kind each is

caution-lc-is-no-wll = A lashing capacity is not a working load limit. Never count it where the law asks for a WLL, and never lift by it.

## Columns

column-item = Gear
    .help = What is rated.
column-size = Size
    .help = Wire of the chain; of a binder, the chain sizes that it fits.

## Quantities

quantity-lashing_capacity = Lashing capacity (LC)

## Words of the columns

word-item-lashing_chain_grade_8 = Lashing chain, grade 8
word-item-lever_binder = Lever binder with spring
