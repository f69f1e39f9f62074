# Words of the table wire-rope-slings-spliced. A key that is not here is looked for in common.ftl.

question = What may a wire rope sling spliced by hand lift?
description = Rated loads of single wire rope slings with eyes spliced by hand, bright and galvanized, by rope size, in short tons.

## Read before you use it

note-spliced-by-hand-only = For one sling hanging straight, of fiber core rope of improved plow steel, with eyes tucked by hand. A pressed ferrule holds more: it has a table of its own.
note-heads-from-the-arithmetic = Read in a reprint without the heads of its columns. Which column is which was worked out: the proof test is twice the rated load, and the finished sling breaks at 4.5 to 4.9 times the rated load.
note-galvanized-carries-less = A galvanized rope is rated a tenth lower than a bright one.
note-tag-governs = The tag governs.

## Cautions; table.toml says of which kind each is

caution-no-tag-no-lift = Do not lift with a sling that has no readable tag.
caution-tight-bend = Round a thin pin or an edge the sling carries less: see what a tight bend takes.

## Columns

column-finish = Wire
    .help = Whether the wires are bright or galvanized.

## Quantities

quantity-rated_capacity = Rated load, spliced by hand
quantity-proof_test = Proof test
quantity-minimum_breaking_force = Least breaking force of the sling
quantity-splice_efficiency = What the splice keeps

## Words of the columns

word-finish-bright = Bright
word-finish-galvanized = Galvanized
word-finish-either = Either
