# Words of the table chain-dimensions. A key that is not here is looked for in common.ftl.

question = How big is a link of this chain, and what does the chain weigh?
description = Pitch, width and weight of lifting chain of grade 8, 80 and 10, and of DIN 766, DIN 763 and mid-link chain, by the size of its wire.

## Read before you use it

note-pitch-is-three-wires = Lifting chain has a pitch (the inside length of a link) of three wires. A longer link is another chain.
note-weigh-it = The weight of a length and its pitch together tell what a chain is made of: weigh a piece before you believe a label.
note-sheets-part = Sheets differ by a few percent. Two weights of 8 mm chain that do not fit the steel in them were left out.
note-din-766-never-lifts = DIN 766 chain is not lifting chain.
note-longer-links-never-lift = Long-link chain (DIN 763) and mid-link chain are not lifting chain, of whatever grade: a long link bends round a corner. One line of DIN 763, 12 mm, did not fit its own series and was left out, and so was long-link chain of grade 80, whose weights are not those of its links.

## Cautions; table.toml says of which kind each is

caution-not-by-measuring = Do not rate an unmarked chain by measuring it.

## Columns

column-chain = Chain
    .help = Kind of chain.

## Quantities

quantity-pitch = Pitch
quantity-inside_width_min = Inside width, least
quantity-inside_width_max = Inside width, greatest
quantity-outside_width_max = Outside width, greatest
quantity-outside_width = Outside width
quantity-weight_of_a_length = Weight of a length
quantity-weight_of_100_ft = Weight of 100 ft

## Words of the columns

word-chain-grade_8 = Grade 8, short link
word-chain-grade_10 = Grade 10, short link
word-chain-grade_80 = Grade 80, inch sizes
word-chain-din_766 = DIN 766, short link
word-chain-din_763 = DIN 763, long link
word-chain-mid_link_80 = Grade 80, mid link
