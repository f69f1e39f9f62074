# Words of the table repair-welding-rules. A key that is not here is looked for in common.ftl.

question = May lifting hardware be repaired or welded?
description = What rules say about welding, heating, straightening and mending lifting gear.

## Read before you use it

note-federal-text-leaves-door = One federal text leaves a door open for crane hooks. This book does not: the hard zone at the edge of a weld cracks without warning, and no pull test finds it.
note-for-this-reader-never = For this reader: never.
note-california-washington-print-same = California and Washington print the same.
note-work-heat-treatment-plant-test = Work for a heat-treatment plant and a test house.

## Cautions; table.toml says of which kind each is

caution-no-number-brings-it-back = No number in this book lets welded or heated hardware back to work.

## Words of the columns

word-item-crane_hook = Crane hook
word-item-chain_fastener = Chain fastener
word-item-marine_gear = Marine gear
word-rule-federal-text = What the federal text says
word-rule-no-change = No change
word-rule-replacement-parts = Replacement parts
word-rule-maker-only = Maker only
word-rule-no-weld-energy = No weld
word-rule-no-makeshift = No makeshift
word-rule-altered = Altered
word-rule-weld-before-assembly = Weld before assembly
word-rule-no-temporary-repair = No temporary repair
word-rule-no-bent-hook = No bent hook
word-rule-no-shortening = No shortening
