# Words of the table weld-metal-weights. A key that is not here is looked for in common.ftl.

question = What does a fillet weld add to the weight?
description = Weight of fillet weld metal per foot by leg size.

## Read before you use it

note-each-figure-2-56 = Each figure is 2.56 × the leg squared, in inches; the bulge of the weld is counted in.

## Columns

column-fillet_size_in = Leg
    .help = Leg of the fillet.

## Quantities

quantity-weight_per_length = Weight per length
