# Words of the table chain-limits. A key that is not here is looked for in common.ftl.

question = How much may a chain stretch or wear?
description = Stretch and loss of thickness at which a chain goes out of use, in percent, by source.

## Read before you use it

note-table-least-thickness-chain = The table of least thickness by chain size counts as well; the stricter of the two decides.
note-sling-grown-more-than-overloaded = A sling grown by more than this has been overloaded.
note-inside-length-chain-link = Inside length, of the chain or of one link.
note-over-five-links = Over five links.
note-mean-of-two-measures = Mean of two measures.
note-of-the-diameter = Of the diameter.
note-of-the-thickness = Of the thickness.

## Cautions; table.toml says of which kind each is

caution-worst-link = Measure the worst link, not the average one.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-elongation = Grown longer by
quantity-thickness_loss = Thickness lost
