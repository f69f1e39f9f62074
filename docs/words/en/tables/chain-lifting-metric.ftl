# Words of the table chain-lifting-metric. A key that is not here is looked for in common.ftl.

question = What may a metric chain sling lift?
description = Rated loads in kilograms of European chain slings of grade 4, 5, 8 and 10, by size, legs, hitch and leg angle.

## Read before you use it

note-angles-vertical-european-tables = Angles are from the vertical here, as European tables print them: 0 to 45° from the vertical is 90 to 45° from the horizontal, and 45 to 60° is 45 to 30°.
note-legs-count-1-4 = Two legs count as 1.4 legs up to 45° and as one beyond it; three or four legs as 2.1 and 1.5.
note-printed-loads-rounded-set = Printed loads are rounded to set steps: 10 mm grade 8 on two legs prints 4,250 kg, where the sum gives 4,410.
note-grade-8-grade-80 = Grade 8 here is grade 80 in American marks. European grade 4 is not American grade 43.
note-grade-10-one-leg = Grade 10 here is grade 100 in American marks. One supplier's sheets print it for one straight leg alone. For more legs, a choke or another size, read the tag.
note-endless-doubled-not-shown = An endless chain laid double has no row: the figure printed for it is that of four straight parts, and no text says what is left of it in a choke. Choked, count 1.6 times one leg.
note-read-3-250-series-preferred = Read as 3,250. The series of preferred numbers has 3,350 here; the lower figure is kept.
note-size-printed-brackets-not-preferred = Size printed in brackets: not a preferred size.

## Cautions; table.toml says of which kind each is

caution-too-flat = Over 60° from the vertical: do not lift.

## Columns

column-hitch = Hitch
    .help = How the sling is fastened.

## Words of the columns

word-legs-endless = Endless sling
word-hitch-choke = Choked
