# Words of the table shackle-limits. A key that is not here is looked for in common.ftl.

question = How much may a shackle wear?
description = Wear and deformation at which a shackle goes out of use, in percent, by source.

## Read before you use it

note-screwed-home-least-thread = Screwed home, at least one thread of the pin shows past the body (Site Safe New Zealand).
note-original-catalogue-dimension-any-point = Of the original or catalogue dimension, at any point.
note-from-new = From new.
note-bow = Bow.
note-second-hand-note-european-shackle = Second-hand note on the European shackle standard.
note-general-wastage-body-ships-loose = General wastage of the body, ships loose gear.
note-ships-loose-gear = Ships loose gear.
note-in-10-ft-of-length = In 10 ft of length.

## Cautions; table.toml says of which kind each is

caution-bent-pin = A bent pin means the whole shackle was overloaded.

## Columns

column-item = Part
    .help = What the limit is for.

## Quantities

quantity-dimension_loss = Dimension loss
quantity-deformation = Deformation
quantity-bend = Bend

## Words of the columns

word-item-body_or_pin = Body or pin
word-item-lifting_bar = Lifting bar
