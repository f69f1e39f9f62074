# Words of the table chain-lifting-choked. A key that is not here is looked for in common.ftl.

question = What may alloy chain lift in a choke?
description = Rated loads of grade 80 chain slings choked round a load: one leg, two legs and three or four, by leg angle.

## Read before you use it

note-choke-angle-open = For an angle of choke of 120° and more: the chain runs nearly straight through its hook. A tighter choke carries less.
note-four-fifths-of-straight = A choked chain carries four fifths of a straight one. Printed limits are rounded to the nearest 100 lb, some of them upwards.
note-cells-not-read = A case that stands empty was not read. Two legs of 9/32 in at 60° were read as 5,000 lb and are left out: four fifths of the straight limit is less.

## Cautions; table.toml says of which kind each is

caution-too-flat = Under 30° from the horizontal: do not lift.
caution-flattest-leg = Take the angle of the flattest leg.

## Columns

column-angle_from_horizontal = Leg angle from horizontal
    .help = Angle between a leg and the horizontal.
column-hitch = Hitch
    .help = How the sling is fastened.

## Words of the columns

word-hitch-choke = Choked
