# Words of the table chain-old-grades. A key that is not here is looked for in common.ftl.

question = Is this old chain fit for anything?
description = How to recognize chain that is past lifting, and what to do with it.

## Read before you use it

note-old-chain-without-grade = Old chain without a grade mark may be iron, mild steel or alloy. Looks and a file do not settle it.
note-history-only-nobody-anneals-back = History only. Nobody anneals it back into service today.
note-heat-takes-out-strength-maker = Heat takes out the strength that the maker put in.
note-applies-queensland-european-tables-start = Applies in Queensland. European tables start at 4 mm.

## Cautions; table.toml says of which kind each is

caution-cut-it-up = Remove it from service and cut it up, so that nobody else finds it.

## Words of the columns

word-item-class_a_gear = Class A gear
word-item-proof_coil = Proof coil
word-item-unmarked_chain = Unmarked chain
word-item-repaired_chain = Repaired chain
word-item-small_chain = Small chain
word-rule-never-hoist = Never hoist
word-rule-no-lifting = No lifting
word-rule-tie-down-grade-30 = For tying down
word-rule-too-small = Too small
