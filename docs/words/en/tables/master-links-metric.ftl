# Words of the table master-links-metric. A key that is not here is looked for in common.ftl.

question = What breaks a master link of grade 10?
description = Least breaking force of oblong master links for grade 10 (grade 100) chain in millimetres, with the sizes and weights that fit together on the sheet.

## Read before you use it

note-breaks-is-not-carries = A link carries far less than what breaks it. The mark on the link and the tag of the sling say what it carries. A link without a mark carries nothing.
note-not-for-two-legs = The sheet names the single link for two legs too. Its breaking force is only that of one leg of chain, so it stands here for one leg.
note-sizes-left-out = Where the size and the weight on the sheet do not fit together, one of them is misprinted, and both are left out.

## Cautions; table.toml says of which kind each is

caution-hook-fits = See that the hook it hangs in fits freely: the link is at least 1.2 times as wide inside as the widest part of the hook.

## Columns

column-chain_mm = Chain
    .help = Size of the grade 10 chain that the link belongs to.

## Quantities

quantity-inside_length = Inside length
quantity-inside_width = Inside width
quantity-wire = Wire
quantity-lower_inside_length = Lower links, inside length
quantity-lower_inside_width = Lower links, inside width
quantity-lower_wire = Lower links, wire
quantity-weight_of_link = Weight with its lower links
