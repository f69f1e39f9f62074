# Words of the table pipe-sizes. A key that is not here is looked for in common.ftl.

question = How big is a pipe really, and what does it weigh?
description = Outside diameter and wall of steel pipe, schedule 40 and 80.

## Read before you use it

note-weight-lb-each-foot = Weight in lb for each foot = 10.69 × (outside diameter − wall) × wall, in inches, for steel of 490 lb/ft³.
note-not-seen-text-standard = Not seen in the text of the standard. Every size agrees with an independent open-source library of pipe sizes to a tenth of a millimeter.

## Cautions; table.toml says of which kind each is

caution-full-pipe = A pipe full of water or slag weighs more than the pipe.

## Columns

column-pipe_size = Nominal pipe size
    .help = Name of the size, not a dimension.
column-schedule = Schedule
    .help = Wall schedule.

## Quantities

quantity-outside_diameter = Outside diameter
quantity-wall_thickness = Wall thickness
