# Words of the table angle-weights. A key that is not here is looked for in common.ftl.

question = What does a foot of steel angle weigh?
description = Weight of rolled steel angle for each foot, by both legs and thickness.

## Read before you use it

note-steel-alone = The steel alone, without weld metal, paint or rust. A brace of two angles weighs twice as much.

## Cautions; table.toml says of which kind each is

caution-weigh-what-matters = Mills roll to a tolerance. Near a limit, weigh the part.

## Columns

column-long_leg_in = Longer leg
    .help = Outside length of the longer leg in inches.
column-short_leg_in = Shorter leg
    .help = Outside length of the shorter leg in inches; the same as the longer one on an equal angle.
column-thickness_in = Thickness
    .help = Thickness of both legs in inches.

## Quantities

quantity-weight_of_a_foot = Weight of a foot
