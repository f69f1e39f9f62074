# Words of the table rectangular-tube-weights. A key that is not here is looked for in common.ftl.

question = What does a foot of rectangular steel tube weigh?
description = Weight of rectangular steel tube for each foot, by both outside widths and the wall.

## Read before you use it

note-steel-alone = The steel alone. Paint, rust, weld metal and water inside come on top.
note-name-of-the-tube = Sizes and walls are those of the tube's name. A mill may roll the wall of such a tube up to a tenth thinner than its name, so the name gives the higher weight and not the strength.

## Cautions; table.toml says of which kind each is

caution-weigh-what-matters = Mills roll to a tolerance. Near a limit, weigh the part.

## Columns

column-depth_in = Longer side
    .help = Outside width of the longer side in inches.
column-width_in = Shorter side
    .help = Outside width of the shorter side in inches.
column-wall_in = Wall
    .help = Wall in inches.

## Quantities

quantity-weight_of_a_foot = Weight of a foot
