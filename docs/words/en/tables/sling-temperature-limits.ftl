# Words of the table sling-temperature-limits. A key that is not here is looked for in common.ftl.

question = How hot or cold may a sling get?
description = Temperature limits of chain, wire rope, fiber rope, web and mesh slings and shackles, by source.

## Read before you use it

note-out-good-above-ends = “Remove from service above” holds even when the sling has cooled again.
note-alloy-chain-how-much = Alloy chain: how much is left at each heat stands in the two tables of heat on chain, the American and the European.
note-maker-table-for-the-reduction = Maker table for the reduction.
note-for-good = For good.
note-table-heat-chain-begins = Where the table of heat on chain begins.
note-no-use-above-without-reduction = No use above without a reduction chart.
note-outside-range-follow-maker = Outside the range follow the maker.
note-not-when-wet-and-frozen = Not when wet and frozen.
note-higher-than-european-limit-80 = Higher than the European limit of 80 C.
note-higher-than-american-limit-180 = Higher than the American limit of 180 F.
note-outside-range-ask-maker = Outside the range ask the maker.

## Cautions; table.toml says of which kind each is

caution-heat-not-seen = Heat you did not see still counts: look for scale, color, charred or glazed fiber.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-reduce_above = Loses rating above
quantity-remove_above = Remove from service above
quantity-strength_harmed_above = Strength harmed above
quantity-use_above = Not colder than
quantity-use_below = Not hotter than

## Words of the columns

word-item-wire_rope_sling_fibre_core = Wire rope sling, fiber core
word-item-wire_rope_sling_steel_core = Wire rope sling, steel core
word-item-fibre_rope_sling = Fiber rope sling
word-item-web_sling_nylon_or_polyester = Web sling, nylon or polyester
word-item-web_sling_polypropylene = Web sling, polypropylene
word-item-metal_mesh_sling_plain = Metal mesh sling, plain
word-item-metal_mesh_sling_coated = Metal mesh sling, coated
