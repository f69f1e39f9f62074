# Words of the table wire-rope-slings-metric. A key that is not here is looked for in common.ftl.

question = What may a metric wire rope sling lift?
description = Rated loads in tonnes of European wire rope slings with steel core and pressed ferrules, by rope diameter, legs and leg angle.

## Read before you use it

note-class-and-eyes = For one kind of sling only: six-strand rope with a steel core, eyes closed by pressed ferrules. Fiber core, splice by hand and other ends carry less.
note-angles-vertical-european-tables = Angles are from the vertical, as European tables print them: 45 to 60° from the vertical is 45 to 30° from the horizontal.
note-soft-bend-over-the-hook = A bend tighter than the eye was made for, round a thin pin or an edge, takes part of this away.
note-tag-governs = The tag governs.

## Cautions; table.toml says of which kind each is

caution-no-tag-no-lift = Do not lift with a sling that has no readable tag.
caution-too-flat = Over 60° from the vertical: do not lift.

## Columns

column-hitch = Hitch
    .help = How the sling is fastened.

## Words of the columns

word-legs-endless = Endless sling
word-hitch-choke = Choked
