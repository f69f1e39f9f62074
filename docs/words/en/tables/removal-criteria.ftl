# Words of the table removal-criteria. A key that is not here is looked for in common.ftl.

question = When must lifting gear come out of use?
description = What ends a hook, chain, rope, sling or shackle at once, and how often to look.

## Read before you use it

note-measured-limits-stand-their = The measured limits stand in their own tables: hook, chain, shackle and rope limits, and link thickness.
note-words-bent-twisted-stretched-cracked = The words for bent, twisted, stretched and cracked parts were lost in the copy; they count too.

## Cautions; table.toml says of which kind each is

caution-in-doubt-out-of-use = In doubt means out of use until a qualified person has seen it.

## Words of the columns

word-item-chain_fitting = Chain fitting
word-item-swivel = Swivel
word-rule-cracked = Cracked
word-rule-bent = Bent
word-rule-latch = Latch
word-rule-thin = Thin
word-rule-washington-list = Any of these
word-rule-yearly = Yearly
word-rule-shape = Shape
word-rule-any-of = Any of these
word-rule-pin = Pin
word-rule-stiff = Stiff
