# Words of the table master-links. A key that is not here is looked for in common.ftl.

question = What may a master link of grade 80 carry?
description = Working load limit, size and weight of oblong master links of grade 80, and the largest grade 80 chain each one takes on one and on two legs.

## Read before you use it

note-rating-of-the-whole-sling = A master link carries at least what the whole sling may lift, not what one leg may.
note-mark-of-the-link = The limit on the tag and the mark on the link govern.
note-one-sheet = The figures are from one sheet, after EN 1677-4 and ASTM A952. Makers differ: links of one wire are not one link. The wire printed for 3/4 in does not go with its weight; it is left out.

## Cautions; table.toml says of which kind each is

caution-hook-fits = See that the hook it hangs in fits freely: the link is at least 1.2 times as wide inside as the widest part of the hook.

## Quantities

quantity-largest_chain_one_leg = Largest chain, one leg
quantity-largest_chain_two_legs = Largest chain, two legs
quantity-inside_length = Inside length
quantity-inside_width = Inside width
quantity-wire = Wire
quantity-weight_of_link = Weight
