# Words of the table square-tube-weights. A key that is not here is looked for in common.ftl.

question = What does a foot of square steel tube weigh?
description = Weight of square steel tube for each foot, by outside width and wall.

## Read before you use it

note-weight-of-the-steel-alone = The steel alone, as one dealer prints it. Paint, rust, weld metal and water inside come on top.
note-beams-say-their-weight = A beam or a channel says its weight in its name: a W12X26 weighs 26 lb for each foot.

## Cautions; table.toml says of which kind each is

caution-weigh-what-matters = Mills roll to a tolerance. Near a limit, weigh the part.

## Columns

column-outside_in = Outside
    .help = Outside width in inches.
column-wall_in = Wall
    .help = Wall in inches.

## Quantities

quantity-weight_of_a_foot = Weight of a foot
