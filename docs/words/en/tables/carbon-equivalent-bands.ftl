# Words of the table carbon-equivalent-bands. A key that is not here is looked for in common.ftl.

question = How well does this steel weld?
description = Weldability by the carbon equivalent of the International Institute of Welding.

## Read before you use it

note-hook-chain-steels-come = Hook and chain steels come out at 0.5% to 0.9%: poor.
note-above-this = Above this.

## Cautions; table.toml says of which kind each is

caution-no-leave-to-weld = A good band is not permission to weld lifting hardware.

## Columns

column-rating = Rating
    .help = Word for the band.

## Quantities

quantity-carbon_equivalent_from = Carbon equivalent from
quantity-carbon_equivalent = Carbon equivalent
quantity-carbon_equivalent_to = Carbon equivalent to

## Words of the columns

word-rating-excellent = Excellent
word-rating-very_good = Very good
word-rating-good = Good
word-rating-fair = Fair
word-rating-poor = Poor
